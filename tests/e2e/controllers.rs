//! Own controllers: limits typed once and kept, a controller chosen for a system, and its settings told inside or outside.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// How a setting stands, by the mark that the screen carries.
async fn safety(page: &Page, setting: &str) -> Result<String, Failure> {
    let css = format!("[data-finding={setting}]");
    page.find(&css).await?;
    let found = page
        .script(
            "return document.querySelector(arguments[0]).dataset.safety",
            vec![css.into()],
        )
        .await?;
    Ok(found.as_str().unwrap_or_default().to_owned())
}

/// Enters a split on a hut, and opens its plan.
async fn plan(page: &Page) -> Result<(), Failure> {
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.choose("#answer-sensing", "coil-temperature").await?;
    page.touch("See the plan").await
}

#[tokio::test]
async fn limits_are_typed_once_and_held_against_a_plan() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("Settings").await?;
    page.touch("Add a controller").await?;
    page.type_into("#answer-controller-name", "Grey box")
        .await?;
    page.choose("#answer-controller-output", "phase-cut")
        .await?;
    for (field, typed) in [
        ("temperature_point_lowest", "30"),
        ("temperature_point_highest", "150"),
        ("temperature_range_lowest", "5"),
        ("temperature_range_highest", "40"),
        ("minimum_output_lowest", "95"),
        ("minimum_output_highest", "100"),
        ("start_boost_lowest", "0"),
        ("start_boost_highest", "0"),
    ] {
        page.type_into(&format!("#answer-{field}"), typed).await?;
    }
    // What is wrong is told at its field, and kept.
    page.type_into("#answer-supply_lowest", "mains").await?;
    page.until_text("#error-supply_lowest", "number").await?;
    page.until_text("#error-supply_highest", "Enter this one too")
        .await?;
    let wide = page
        .script(
            "return document.documentElement.scrollWidth > innerWidth",
            Vec::new(),
        )
        .await?;
    assert_eq!(wide, false);
    page.reload().await?;
    assert_eq!(page.value("#answer-supply_lowest").await?, "mains");
    assert_eq!(page.value("#answer-minimum_output_lowest").await?, "95");
    page.type_into("#answer-supply_lowest", "").await?;
    page.touch("Settings").await?;
    page.until_text("main .list__name", "Grey box").await?;
    page.touch("Add a controller").await?;
    page.type_into("#answer-controller-name", "Blue box")
        .await?;
    page.choose("#answer-controller-output", "pulse-width")
        .await?;

    page.touch("Sites").await?;
    plan(&page).await?;
    let choice = "#answer-controller";
    page.find(choice).await?;
    assert!(!page.has("[data-finding]").await?);
    let named = |name: &str| {
        format!(
            "return [...document.querySelectorAll('{choice} option')].find(one => one.innerText === '{name}').value"
        )
    };
    let grey = page.script(&named("Grey box"), Vec::new()).await?;
    page.choose(choice, grey.as_str().unwrap_or_default())
        .await?;
    assert_eq!(safety(&page, "motor_output").await?, "safe");
    assert_eq!(safety(&page, "full_speed_point").await?, "safe");
    // A fan that cannot be slowed further holds less far; one that gets no boost may stand still.
    assert_eq!(safety(&page, "minimum_output").await?, "check");
    page.until_text("[data-finding=minimum_output]", "95\u{a0}%")
        .await?;
    page.until_text("[data-finding=minimum_output]", "hold limit is warmer")
        .await?;
    assert_eq!(safety(&page, "start_boost").await?, "unsafe");
    page.until_text("[data-finding=start_boost]", "Not safe")
        .await?;
    assert_eq!(safety(&page, "supply_voltage").await?, "check");
    page.until_text("[data-finding=supply_voltage]", "Look it up")
        .await?;
    page.reload().await?;
    assert_eq!(safety(&page, "start_boost").await?, "unsafe");

    let blue = page.script(&named("Blue box"), Vec::new()).await?;
    page.choose(choice, blue.as_str().unwrap_or_default())
        .await?;
    page.until_text("[data-finding=motor_output]", "use another controller")
        .await?;
    assert_eq!(safety(&page, "motor_output").await?, "unsafe");

    // A controller that is gone leaves its systems without one.
    page.touch("Its limits").await?;
    page.touch("Remove this controller").await?;
    page.touch_at(".confirm .button--first").await?;
    page.until_text("h1", "Settings").await?;
    page.back().await?;
    page.find(choice).await?;
    assert_eq!(page.value(choice).await?, "");
    assert!(!page.has("[data-finding]").await?);
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

/// What an older or a newer version of the app kept is read as far as it is understood, and not lost.
#[tokio::test]
async fn other_forms_of_what_is_kept_survive() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.script(
        r#"localStorage.setItem('winterset.preferences', JSON.stringify(
            { theme: 'dark', gloves: true, controllers: [{ id: 'a', name: 'Later', sketch: [1], entries: { colour: { typed: 'grey' } } }] }))"#,
        Vec::new(),
    )
    .await?;
    page.go("about:blank").await?;
    page.go(&format!("{}#/settings/controllers/a", server.address()))
        .await?;
    page.until_text("h1", "Later").await?;
    page.type_into("#answer-rated_current", "4,5").await?;
    page.until(
        "everything is kept",
        "const kept = JSON.parse(localStorage.getItem('winterset.preferences'));
         const one = kept.controllers[0];
         return kept.gloves === true && kept.theme === 'dark' && one.sketch[0] === 1
             && one.entries.colour.typed === 'grey' && one.entries.rated_current.typed === '4,5'",
    )
    .await?;
    page.close().await
}

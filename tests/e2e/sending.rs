//! Sending a system by code and by file, and what becomes of one that arrives beside one of the same name.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// A site with a system that has a plan; the browser stands on the plan.
async fn a_system(page: &Page, server: &Server, name: &str) -> Result<(), Failure> {
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.type_into("#answer-site-name", "Hill").await?;
    page.touch("Add a system").await?;
    page.type_into("#answer-system-name", name).await?;
    page.choose("#answer-refrigerant", "R-134a").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.touch("See the plan").await?;
    page.find("[data-verdict]").await?;
    Ok(())
}

/// Chooses a file that holds a text, as the system's own dialog would.
async fn open_file(page: &Page, text: &str) -> Result<(), Failure> {
    page.find("#open-file").await?;
    page.script(
        "const box = document.querySelector('#open-file');
         const held = new DataTransfer();
         held.items.add(new File([arguments[0]], 'system.json', { type: 'application/json' }));
         box.files = held.files;
         box.dispatchEvent(new Event('change', { bubbles: true }));",
        vec![text.into()],
    )
    .await?;
    Ok(())
}

/// A record as another phone would send it, with the name and answers given.
fn record(name: &str, answers: &[(&str, &str, Option<&str>)]) -> String {
    let entries: serde_json::Map<_, _> = answers
        .iter()
        .map(|(key, typed, unit)| {
            let entry = match unit {
                Some(unit) => serde_json::json!({ "typed": typed, "unit": unit }),
                None => serde_json::json!({ "typed": typed }),
            };
            ((*key).to_owned(), entry)
        })
        .collect();
    serde_json::json!({ "version": 1, "name": name, "entries": entries }).to_string()
}

/// How many systems the sites of this browser hold.
async fn systems(page: &Page) -> Result<u64, Failure> {
    let count = page
        .script(
            "return Object.keys(localStorage).filter(key => key.startsWith('winterset.site.'))
                 .reduce((sum, key) => sum + JSON.parse(localStorage.getItem(key)).systems.length, 0)",
            Vec::new(),
        )
        .await?;
    Ok(count.as_u64().unwrap_or_default())
}

async fn is_wider_than_the_phone(page: &Page) -> Result<bool, Failure> {
    let wide = page
        .script(
            "return document.documentElement.scrollWidth > innerWidth",
            Vec::new(),
        )
        .await?;
    Ok(wide == true)
}

#[tokio::test]
async fn a_link_is_shown_as_a_code_that_reads_at_arms_length() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    a_system(&page, &server, "North wall").await?;
    assert!(!page.has("[data-code]").await?);
    page.touch("Show QR code").await?;
    page.find("[data-code] svg path").await?;
    let module = page
        .script(
            "const svg = document.querySelector('[data-code] svg');
             return svg.getBoundingClientRect().width / svg.viewBox.baseVal.width",
            Vec::new(),
        )
        .await?;
    assert!(
        module.as_f64().is_some_and(|module| module > 2.4),
        "{module}"
    );
    let colours = page
        .script(
            "const of = css => getComputedStyle(document.querySelector(css)).fill;
             return [of('.code__ground'), of('.code__ink')]",
            Vec::new(),
        )
        .await?;
    assert_eq!(
        colours,
        serde_json::json!(["rgb(255, 255, 255)", "rgb(0, 0, 0)"])
    );
    assert!(!is_wider_than_the_phone(&page).await?);
    page.picture("360-light-code").await?;
    page.touch("Hide QR code").await?;
    assert!(!page.has("[data-code]").await?);
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn a_link_that_is_too_long_for_a_code_says_so() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    // Digits of e in base 36, mixed by a rule: nothing that packs into less.
    let long: String = (0..1500u32)
        .scan(12_345u32, |state, _| {
            *state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            char::from_digit((*state >> 20) % 36, 36)
        })
        .collect();
    a_system(&page, &server, &long).await?;
    page.touch("Show QR code").await?;
    page.until_text("[data-code]", "too long for a QR code")
        .await?;
    page.close().await
}

#[tokio::test]
async fn what_arrives_in_a_file_is_merged_answer_by_answer() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    a_system(&page, &server, "North wall").await?;
    let plan = page.address().await?;
    let name = page
        .script(
            "return document.querySelector('a[download]').download",
            Vec::new(),
        )
        .await?;
    assert_eq!(name, "winterset-North-wall.json");

    page.go(&server.address()).await?;
    let sent = record(
        "north wall ",
        &[
            ("refrigerant", "R-134a", None),
            ("cooling_capacity", "9", Some("kW")),
            ("outdoor_low", "-30", Some("C")),
            ("elevation", "6200", Some("ft")),
        ],
    );
    open_file(&page, &sent).await?;
    page.until_text("h1", "north wall").await?;
    page.find("[data-differences='3']").await?;
    page.until_text("[data-difference=cooling_capacity]", "36000")
        .await?;
    page.until_text("[data-difference=cooling_capacity]", "9\u{a0}kW")
        .await?;
    assert!(!is_wider_than_the_phone(&page).await?);
    page.whole_picture("360-light-differences").await?;
    // The capacity stays as it is here; the rest is taken.
    page.touch_at("[data-difference=cooling_capacity] input[value=keep]")
        .await?;
    page.touch("Merge").await?;
    page.find("[data-verdict]").await?;
    assert_eq!(page.address().await?, plan);
    assert_eq!(systems(&page).await?, 1);
    page.go(&format!("{plan}/inputs")).await?;
    assert_eq!(page.value("#answer-cooling_capacity").await?, "36000");
    assert_eq!(page.value("#answer-outdoor_low").await?, "-30");
    assert_eq!(page.value("#unit-outdoor_low").await?, "C");
    assert_eq!(page.value("#answer-elevation").await?, "6200");
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn an_answer_is_not_given_up_for_none_and_both_can_be_kept() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    a_system(&page, &server, "North wall").await?;
    page.go(&server.address()).await?;
    open_file(
        &page,
        &record("North wall", &[("refrigerant", "R-134a", None)]),
    )
    .await?;
    page.find("[data-differences='2']").await?;
    assert!(
        page.has("[data-difference=outdoor_low] input[value=keep]:checked")
            .await?
    );
    page.touch("Save apart").await?;
    page.until(
        "the new system is open",
        "return location.hash.split('/').length > 3",
    )
    .await?;
    assert_eq!(systems(&page).await?, 2);
    page.close().await
}

#[tokio::test]
async fn a_file_that_holds_no_system_is_told_and_the_same_system_is_told_to_be_the_same()
-> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    a_system(&page, &server, "North wall").await?;
    let own = page
        .script(
            "const key = Object.keys(localStorage).find(key => key.startsWith('winterset.site.'));
             return JSON.stringify(JSON.parse(localStorage.getItem(key)).systems[0])",
            Vec::new(),
        )
        .await?;
    page.go(&server.address()).await?;
    for bad in ["", "{}", "no system", "{\"entries\": 7}"] {
        open_file(&page, bad).await?;
        page.until_text("[role=alert]", "holds no system").await?;
    }
    open_file(&page, &"x".repeat(70_000)).await?;
    page.until_text("[role=alert]", "more than a system")
        .await?;
    assert_eq!(systems(&page).await?, 1);
    open_file(&page, own.as_str().unwrap_or_default()).await?;
    page.until_text("[data-same]", "the same as the system")
        .await?;
    assert!(!page.has("[data-differences]").await?);
    page.close().await
}

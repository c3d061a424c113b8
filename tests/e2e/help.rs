//! Help one touch from each number and each question; the first run, the home screen and many sites.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

#[tokio::test]
async fn each_number_and_each_question_says_what_it_is() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;

    let bare = page
        .script(
            "return [...document.querySelectorAll('[data-field]')]
                 .filter(row => !/^(system-name)$/.test(row.dataset.field))
                 .filter(row => row.querySelectorAll('.row__find dd').length !== 4
                     || [...row.querySelectorAll('.row__find dd')].some(one => one.textContent.length < 10))
                 .map(row => row.dataset.field)",
            Vec::new(),
        )
        .await?;
    assert_eq!(bare, serde_json::json!([]));
    page.touch("How to find it: Condensing over ambient")
        .await?;
    page.until(
        "the help is open",
        "return document.querySelector('[data-find=over_ambient]').open",
    )
    .await?;
    let said = page.text("[data-find=over_ambient] dl").await?;
    assert!(said.contains("Assumed: 27"), "{said}");
    // An answer typed beside open help leaves it open.
    page.type_into("#answer-over_ambient", "25").await?;
    let open = page
        .script(
            "return document.querySelector('[data-find=over_ambient]').open",
            Vec::new(),
        )
        .await?;
    assert_eq!(open, true);

    page.touch("See the plan").await?;
    page.find("[data-value]").await?;
    page.unfold_all().await?;
    let bare = page
        .script(
            "return [...document.querySelectorAll('details[data-value]')]
                 .filter(one => ['what', 'measure', 'typical'].some(key => !one.querySelector(`[data-help=${key}] dd`)?.textContent))
                 .map(one => one.dataset.value)",
            Vec::new(),
        )
        .await?;
    assert_eq!(bare, serde_json::json!([]));
    // So does each value that a rung answers.
    let bare = page
        .script(
            "const said = [...document.querySelectorAll('[data-rung-help] h3')].map(one => one.textContent);
             return [...document.querySelectorAll('.answer dt')].map(one => one.textContent).filter(name => !said.includes(name))",
            Vec::new(),
        )
        .await?;
    assert_eq!(bare, serde_json::json!([]));
    page.until_text("[data-rung-help]", "gauge on the high side")
        .await?;
    page.reload().await?;
    page.touch_at("[data-value=full-speed-coil] summary")
        .await?;
    page.until_text("[data-value=full-speed-coil] [data-help=measure]", "sensor")
        .await?;
    page.close().await
}

#[tokio::test]
async fn each_number_of_a_worksheet_says_how_it_is_measured() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    for sheet in ["saturation", "flooding", "liquid-line", "winter-start"] {
        page.go(&format!("{}#/worksheets/{sheet}", server.address()))
            .await?;
        page.find("details[data-value]").await?;
        page.unfold_all().await?;
        page.find("[data-help=measure] dd").await?;
        let bare = page
            .script(
                "return [...document.querySelectorAll('[data-value]')]
                     .filter(one => ['measure', 'typical'].some(key => !one.querySelector(`[data-help=${key}] dd`)?.textContent))
                     .map(one => one.dataset.value)",
                Vec::new(),
            )
            .await?;
        assert_eq!(bare, serde_json::json!([]), "{sheet}");
    }
    page.close().await
}

#[tokio::test]
async fn the_first_screen_says_what_this_is_and_how_it_stays() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    let about = page.text(".about").await?;
    assert_eq!(about.matches('.').count(), 1, "{about}");
    page.until_offline_ready().await?;
    page.until_text("[role=status]", "Works offline now.")
        .await?;
    // Some browsers offer it here by themselves, some leave it to words.
    page.find("[data-install] button").await?;

    // Where the browser has its own question, a button asks it.
    page.script(
        "const event = new Event('beforeinstallprompt', { cancelable: true });
         event.prompt = () => { document.title = 'asked' };
         window.dispatchEvent(event);
         return event.defaultPrevented",
        Vec::new(),
    )
    .await?;
    page.touch("Add to the home screen").await?;
    page.until("the browser asks", "return document.title === 'asked'")
        .await?;

    page.touch("Do not show this again").await?;
    page.until(
        "the hint is gone",
        "return !document.querySelector('[data-install]')",
    )
    .await?;
    page.reload().await?;
    page.until_text("[role=status]", "Works offline now.")
        .await?;
    assert!(!page.has("[data-install]").await?);
    page.touch("demo site").await?;
    page.until(
        "the demo site is open",
        "return location.hash.startsWith('#/site/')",
    )
    .await?;
    page.close().await
}

#[tokio::test]
async fn many_sites_are_searched_and_the_last_one_stands_first() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    let names = ["Brewery", "Hut", "Archive", "Flowers", "Cave", "Dairy"];
    for name in names {
        page.go(&server.address()).await?;
        page.touch("New site").await?;
        page.type_into("#answer-site-name", name).await?;
        page.until_text("h1", name).await?;
    }
    let listed = "return [...document.querySelectorAll('.list__name')].map(name => name.innerText)";
    page.go(&server.address()).await?;
    page.find("#answer-find-site").await?;
    let order = page.script(listed, Vec::new()).await?;
    assert_eq!(
        order,
        serde_json::json!(["Dairy", "Cave", "Flowers", "Archive", "Hut", "Brewery"])
    );
    page.touch("Hut").await?;
    page.until_text("h1", "Hut").await?;
    page.go(&server.address()).await?;
    page.until(
        "the site opened last stands first",
        "return document.querySelector('.list__name')?.innerText === 'Hut'",
    )
    .await?;
    page.type_into("#answer-find-site", "RCH").await?;
    page.until(
        "one site is found",
        "return document.querySelectorAll('.list__name').length === 1",
    )
    .await?;
    assert_eq!(
        page.script(listed, Vec::new()).await?,
        serde_json::json!(["Archive"])
    );
    page.type_into("#answer-find-site", "nothing").await?;
    page.until_text("[role=status]", "No site of this name")
        .await?;
    page.close().await
}

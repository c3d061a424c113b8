//! The whole way through: enter a system, read its plan, lose the network, come back, change it, send it to another phone.

use serde_json::Value;
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// Everything that a plan shows as a value, with the verdict.
async fn plan(page: &Page) -> Result<Value, Failure> {
    page.find("[data-verdict]").await?;
    page.find("[role=radio]").await?;
    page.unfold_all().await?;
    page.script(
        "return {
             verdict: document.querySelector('[data-verdict]').innerText,
             values: [...document.querySelectorAll('[data-value]')].map(line =>
                 [line.dataset.value, line.querySelector('.value').textContent]),
             rungs: [...document.querySelectorAll('[role=radio]')].map(rung => rung.getAttribute('aria-label')),
         }",
        Vec::new(),
    )
    .await
}

#[tokio::test]
async fn a_plan_outlives_the_network_and_travels_in_a_link() -> Result<(), Failure> {
    let mut server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;

    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.type_into("#answer-site-name", "Hillside radio hut")
        .await?;
    page.touch("Add a system").await?;
    page.type_into("#answer-system-name", "Split, north wall")
        .await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.choose("#answer-duty", "room-cooling").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.choose("#answer-metering", "txv-balanced").await?;
    page.choose("#answer-motor", "permanent-split-capacitor")
        .await?;
    page.choose("#answer-bearing", "ball").await?;
    page.touch("See the plan").await?;
    let first = plan(&page).await?;
    assert!(
        first["verdict"].to_string().contains("\u{2212}18\u{a0}°F"),
        "{first:#}"
    );
    assert!(
        first["values"]
            .as_array()
            .is_some_and(|values| values.len() > 12),
        "{first:#}"
    );
    assert!(
        first["rungs"]
            .as_array()
            .is_some_and(|rungs| rungs.len() > 8),
        "{first:#}"
    );
    let address = page.address().await?;
    page.until_offline_ready().await?;
    page.close().await?;

    server.end()?;
    assert!(!server.is_reachable());

    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&address).await?;
    assert_eq!(plan(&page).await?, first);

    page.touch("Inputs:").await?;
    assert_eq!(page.value("#answer-cooling_capacity").await?, "36000");
    page.type_into("#answer-outdoor_low", "5").await?;
    page.type_into("#answer-elevation", "6200").await?;
    page.reload().await?;
    assert_eq!(page.value("#answer-elevation").await?, "6200");
    page.touch("See the plan").await?;
    page.until_text("[data-verdict]", "5\u{a0}°F").await?;
    let changed = plan(&page).await?;
    assert_ne!(changed, first);

    page.touch("Copy link").await?;
    page.until_text("[role=status]", "Link copied").await?;
    let link = page.pasted("#answer-outdoor-now").await?;
    assert!(link.contains("#/share/"), "{link}");
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await?;

    server.start_again()?;
    let other = Profile::new()?;
    let page = Page::open(&driver, &other, Screen::PHONE).await?;
    page.go(&link).await?;
    page.until_text("h1", "Split, north wall").await?;
    assert_eq!(verdict(&page).await?, changed["verdict"]);
    assert_eq!(
        kept(&page).await?,
        0,
        "nothing is saved before it is asked for"
    );
    page.touch_at("main .button--first").await?;
    page.until(
        "the plan is open",
        "return location.hash.startsWith('#/site/')",
    )
    .await?;
    assert_eq!(plan(&page).await?, changed);
    assert_eq!(kept(&page).await?, 1);
    page.close().await
}

/// The verdict alone, which a link shows before it is saved.
async fn verdict(page: &Page) -> Result<Value, Failure> {
    page.find("[data-verdict]").await?;
    page.script(
        "return document.querySelector('[data-verdict]').innerText",
        Vec::new(),
    )
    .await
}

/// How many sites the browser keeps.
async fn kept(page: &Page) -> Result<u64, Failure> {
    let count = page
        .script(
            "return Object.keys(localStorage).filter(key => key.startsWith('winterset.site.')).length",
            Vec::new(),
        )
        .await?;
    Ok(count.as_u64().unwrap_or_default())
}

#[tokio::test]
async fn a_link_that_is_not_wanted_leaves_nothing() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.type_into("#answer-system-name", "Unwanted").await?;
    page.choose("#answer-refrigerant", "R-134a").await?;
    page.touch("See the plan").await?;
    page.touch("Copy link").await?;
    page.until_text("[role=status]", "Link copied").await?;
    page.back().await?;
    let link = page.pasted("#answer-system-name").await?;
    page.close().await?;

    let other = Profile::new()?;
    let page = Page::open(&driver, &other, Screen::PHONE).await?;
    page.go(&link).await?;
    page.until_text("h1", "Unwanted").await?;
    page.touch("Discard").await?;
    page.until_text("h1", "Winterset").await?;
    assert_eq!(kept(&page).await?, 0);
    page.close().await
}

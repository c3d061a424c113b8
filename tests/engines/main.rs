//! The main journey in other engines than Chromium's, by nothing but the WebDriver standard.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken step should stop its test

use winterset_tests::browser::{Driver, Engine, Failure, Page, Server};

/// Chooses in a list; not every driver opens one by a click on a choice.
async fn choose(page: &Page, css: &str, value: &str) -> Result<(), Failure> {
    page.find(css).await?;
    page.script(
        "const list = document.querySelector(arguments[0]);
         list.value = arguments[1];
         list.dispatchEvent(new Event('change', { bubbles: true }))",
        vec![css.into(), value.into()],
    )
    .await
    .map(|_| ())
}

/// The style of what a selector finds, as the engine worked it out.
async fn style(page: &Page, css: &str, property: &str) -> Result<String, Failure> {
    page.find(css).await?;
    let style = page
        .script(
            "return getComputedStyle(document.querySelector(arguments[0])).getPropertyValue(arguments[1])",
            vec![css.into(), property.into()],
        )
        .await?;
    Ok(style.as_str().unwrap_or_default().to_owned())
}

/// From an empty phone to a plan with what follows from it, a worksheet, and the same with no network.
async fn journey(engine: Engine) -> Result<(), Failure> {
    let mut server = Server::start()?;
    let driver = Driver::of(engine)?;
    let page = Page::open_in(engine, &driver).await?;
    page.go(&server.address()).await?;
    page.until_text(".about", "head pressure").await?;
    page.script(
        "window.wrong = []; addEventListener('error', event => wrong.push(event.message))",
        Vec::new(),
    )
    .await?;
    page.touch("New site").await?;
    page.type_into("#answer-site-name", "Hillside radio hut")
        .await?;
    page.touch("Add a system").await?;
    page.until_text("h1", "Inputs").await?;
    choose(&page, "#answer-refrigerant", "R-410A").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.until_text(".live", "°F").await?;
    page.touch("See the plan").await?;

    // The plan, its pictures and what the worker works out.
    page.until_text("[data-verdict]", "\u{2212}18\u{a0}°F")
        .await?;
    page.find("[data-advice=whole]").await?;
    let verdict = page.text("[data-verdict]").await?;
    let rung = page.text(".answer__sentence").await?;
    page.touch_at("[role=radio]").await?;
    page.until(
        "another rung answers",
        &format!("return document.querySelector('.answer__sentence').innerText !== {rung:?}"),
    )
    .await?;
    page.touch_at("[data-part=cycle] > summary").await?;
    page.find(".diagram__dome").await?;
    // An assumed value is told from an entered one by its form.
    for (property, wanted) in [
        ("text-decoration-line", "underline"),
        ("text-decoration-style", "dashed"),
    ] {
        assert_eq!(
            style(&page, ".used .value--assumed", property).await?,
            wanted
        );
    }
    let overflow = page
        .script(
            "return document.documentElement.scrollWidth > innerWidth",
            Vec::new(),
        )
        .await?;
    assert_eq!(overflow, false);

    // What was typed is there after loading anew.
    let plan = page.address().await?;
    page.touch_at(".places a[href='#/worksheets']").await?;
    page.touch_at("main a[href='#/worksheets/saturation']")
        .await?;
    page.type_into("#answer-temperature", "90").await?;
    page.until_text("main .sheet", "275").await?;
    let wrong = page.script("return wrong", Vec::new()).await?;
    assert_eq!(wrong, serde_json::json!([]));
    page.until_offline_ready().await?;
    page.reload().await?;
    page.find("#answer-temperature").await?;
    assert_eq!(page.value("#answer-temperature").await?, "90");

    server.end()?;
    assert!(!server.is_reachable());
    // Loaded anew from what the phone keeps: another page first, so that the address is gone to and not only its end.
    page.go("about:blank").await?;
    page.go(&plan).await?;
    page.until_text("h1", "System without a name").await?;
    page.find("[data-advice=whole]").await?;
    assert_eq!(page.text("[data-verdict]").await?, verdict);
    page.close().await
}

#[tokio::test]
async fn firefox_goes_the_whole_way() -> Result<(), Failure> {
    journey(Engine::Gecko).await
}

#[tokio::test]
async fn webkit_goes_the_whole_way() -> Result<(), Failure> {
    journey(Engine::WebKit).await
}

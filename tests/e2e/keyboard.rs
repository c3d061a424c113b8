//! The whole job by keyboard alone: the focus is seen, starts where the screen starts, and what changes is said.

use serde_json::json;
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

const TAB: &str = "\u{e004}";
const ENTER: &str = "\u{e007}";
const LEFT: &str = "\u{e012}";
const DOWN: &str = "\u{e015}";

/// More steps than any screen has.
const MOST: usize = 250;

/// What is wrong with how the focus shows, or with what moves although the person asked for calm; empty where nothing is.
const SHOWN: &str = "
    const used = document.activeElement;
    if (used === document.body) return '';
    const near = [used, used.nextElementSibling, used.parentElement].filter(Boolean);
    const seen = near.some(one => {
        const style = getComputedStyle(one);
        return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
    });
    if (!seen) return 'no ring: ' + used.outerHTML.slice(0, 200);
    if (document.getAnimations().length > 0) return 'moving: ' + used.outerHTML.slice(0, 200);
    return '';
";

/// Goes on with the Tab key until what a selector finds has the focus, which is seen at every step.
async fn tab_to(page: &Page, css: &str) -> Result<(), Failure> {
    page.find(css).await?;
    for _ in 0..MOST {
        page.press(TAB).await?;
        assert_eq!(page.script(SHOWN, Vec::new()).await?, "");
        let there = page
            .script(
                "return document.activeElement.matches(arguments[0])",
                vec![json!(css)],
            )
            .await?;
        if there == true {
            return Ok(());
        }
    }
    Err(format!("the Tab key does not come to {css}").into())
}

/// A new screen takes the focus to its title.
async fn arrived(page: &Page, title: &str) -> Result<(), Failure> {
    page.until_text("h1", title).await?;
    page.until_focused("h1").await
}

/// What is inside something that speaks up when it changes.
async fn spoken(page: &Page, css: &str) -> Result<String, Failure> {
    page.find(css).await?;
    let text = page
        .script(
            "const said = document.querySelector(arguments[0]);
             const live = said.closest('[role=status], [role=alert], [aria-live=polite], [aria-live=assertive]');
             return live ? live.textContent : null",
            vec![json!(css)],
        )
        .await?;
    text.as_str()
        .map(str::to_owned)
        .ok_or_else(|| format!("{css} is in no live region").into())
}

/// Presses a key and waits until something that speaks up says something else.
async fn changes(page: &Page, key: &str, css: &str) -> Result<(), Failure> {
    let before = spoken(page, css).await?;
    page.press(key).await?;
    page.until(
        &format!("{css} says something new"),
        &format!(
            "return document.querySelector({}).textContent !== {}",
            json!(css),
            json!(before)
        ),
    )
    .await
}

#[tokio::test]
async fn the_whole_job_goes_by_keyboard() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let desk = Profile::new()?;
    let page = Page::open(&driver, &desk, Screen::DESK).await?;
    page.tell(
        "Emulation.setEmulatedMedia",
        json!({ "features": [{ "name": "prefers-reduced-motion", "value": "reduce" }] }),
    )
    .await?;
    page.go(&server.address()).await?;
    arrived(&page, "Winterset").await?;

    tab_to(&page, "main .button--first").await?;
    page.press(ENTER).await?;
    arrived(&page, "Site without a name").await?;
    tab_to(&page, "#answer-site-name").await?;
    page.press("Hillside radio hut").await?;
    tab_to(&page, "main .button--first").await?;
    page.press(ENTER).await?;
    arrived(&page, "Inputs").await?;

    tab_to(&page, "#answer-refrigerant").await?;
    page.press("R-410A").await?;
    assert_eq!(page.value("#answer-refrigerant").await?, "R-410A");
    tab_to(&page, "#answer-cooling_capacity").await?;
    page.press("36000").await?;
    tab_to(&page, "#answer-outdoor_low").await?;
    page.press("cold").await?;
    page.until_text("#error-outdoor_low", "number").await?;
    assert!(spoken(&page, "#error-outdoor_low").await?.len() > 10);
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.until_text(".live", "°F").await?;
    assert!(spoken(&page, ".live p").await?.contains("18"));
    tab_to(&page, ".live .button--first").await?;
    page.press(ENTER).await?;
    arrived(&page, "System without a name").await?;
    page.find("[data-verdict]").await?;

    let chosen = "[role=radio][aria-checked=true]";
    tab_to(&page, chosen).await?;
    changes(&page, DOWN, ".answer__sentence").await?;
    page.until_focused(chosen).await?;
    tab_to(&page, ".chart__slider").await?;
    changes(&page, LEFT, "[data-reading=curves]").await?;

    tab_to(&page, "#answer-outdoor-now, [data-act=copy-link]").await?;
    tab_to(&page, "[data-act=copy-link]").await?;
    page.press(ENTER).await?;
    page.until_text("[role=status]", "Link copied").await?;

    // A question asked in place takes the focus, and gives it back.
    tab_to(&page, "[data-act=ask]").await?;
    page.press(ENTER).await?;
    page.until_focused("[role=alertdialog] button").await?;
    page.press(ENTER).await?;
    page.until_focused("[data-act=ask]").await?;

    tab_to(&page, ".places a[href='#/worksheets']").await?;
    page.press(ENTER).await?;
    arrived(&page, "Worksheets").await?;
    tab_to(&page, "main a[href='#/worksheets/saturation']").await?;
    page.press(ENTER).await?;
    arrived(&page, "Saturation").await?;
    tab_to(&page, "#answer-temperature").await?;
    changes(&page, "90", "main .sheet").await?;
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn nothing_moves_for_those_who_asked_for_calm() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.tell(
        "Emulation.setEmulatedMedia",
        json!({ "features": [{ "name": "prefers-reduced-motion", "value": "reduce" }] }),
    )
    .await?;
    page.go(&server.address()).await?;
    page.touch("demo site").await?;
    page.touch_at("main .list a").await?;
    page.find("[data-verdict]").await?;
    let moving = page
        .script(
            "const moves = style => style.transitionDuration.split(',').some(time => parseFloat(time) > 0)
                 || style.animationName !== 'none' || style.scrollBehavior === 'smooth';
             return [...document.querySelectorAll('*')].filter(one => moves(getComputedStyle(one))).map(one => one.outerHTML.slice(0, 200))",
            Vec::new(),
        )
        .await?;
    assert_eq!(moving, json!([]));
    page.close().await
}

#[tokio::test]
async fn the_focus_stays_near_what_went_with_a_touch() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let desk = Profile::new()?;
    let page = Page::open(&driver, &desk, Screen::DESK).await?;
    page.go(&format!("{}#/worksheets/saturation", server.address()))
        .await?;
    tab_to(&page, "#answer-temperature").await?;
    page.press("90").await?;
    tab_to(&page, "[data-act=ask]").await?;
    page.press(ENTER).await?;
    page.until_focused("[role=alertdialog] button").await?;
    page.press(TAB).await?;
    page.press(ENTER).await?;
    page.until_focused("h1").await?;

    page.choose("#answer-refrigerant", "blend").await?;
    tab_to(&page, "#answer-refrigerant + * button, button.button").await?;
    page.press(ENTER).await?;
    page.until_focused("select#answer-refrigerant").await?;

    page.go(&server.address()).await?;
    page.until_offline_ready().await?;
    page.find("[data-install]").await?;
    // The driver takes keys in a field for files for names of files, so that Tab does not lead past it.
    page.script(
        "document.querySelector('[data-install] button:last-child').focus()",
        Vec::new(),
    )
    .await?;
    page.press(ENTER).await?;
    page.until_focused("h1").await?;
    page.close().await
}

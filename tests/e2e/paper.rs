//! A plan on paper: black on white, a page or two, with what is worked by and nothing else.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// What of the page shows, by a style sheet's name for each part.
async fn shows(page: &Page, css: &str) -> Result<bool, Failure> {
    let shown = page
        .script(
            "return [...document.querySelectorAll(arguments[0])].some(one => one.getClientRects().length > 0)",
            vec![css.into()],
        )
        .await?;
    Ok(shown == true)
}

#[tokio::test]
async fn a_plan_prints_on_two_pages_whatever_the_theme() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&format!("{}#/settings", server.address())).await?;
    page.touch_choice("Dark").await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.type_into("#answer-site-name", "Hillside radio hut")
        .await?;
    page.touch("Add a system").await?;
    page.type_into("#answer-system-name", "Split, north wall")
        .await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.touch("See the plan").await?;
    page.find("[role=radio]").await?;
    page.find("[data-test-values]").await?;
    assert!(!shows(&page, "[data-test-values]").await?);
    // The dialog of the browser would stop everything; that it is asked for is enough.
    page.script(
        "window.print = () => { document.title = 'printing' }",
        Vec::new(),
    )
    .await?;
    page.touch("Print").await?;
    page.until("the browser prints", "return document.title === 'printing'")
        .await?;

    let paper = page.paper().await?;
    page.as_paper(true).await?;
    for part in [
        "h1",
        ".head__up",
        "[data-verdict]",
        "[data-value]",
        ".caution",
        "[data-test-values] td",
    ] {
        assert!(shows(&page, part).await?, "{part} is not on paper");
    }
    for part in [
        "nav",
        "button",
        "input",
        ".used",
        "[data-advice]",
        "[role=radio]",
        ".curves",
        ".working",
    ] {
        assert!(!shows(&page, part).await?, "{part} is on paper");
    }
    let colours = page
        .script(
            "return [...document.querySelectorAll('main *')]
                 .filter(one => one.getClientRects().length > 0 && !one.closest('svg'))
                 .map(one => getComputedStyle(one).color + ' on ' + getComputedStyle(one).backgroundColor)
                 .filter(one => !/^rgb\\(0, 0, 0\\) on (rgba\\(0, 0, 0, 0\\)|rgb\\(255, 255, 255\\))$/.test(one))",
            Vec::new(),
        )
        .await?;
    assert_eq!(colours, serde_json::json!([]));
    let row = page.text("[data-test-values] tbody tr").await?;
    assert!(row.contains('%') && row.contains("rpm"), "{row}");
    page.whole_picture("paper-plan").await?;
    page.as_paper(false).await?;

    let pages = String::from_utf8_lossy(&paper)
        .matches("/Type /Page\n")
        .count();
    assert!((1..=2).contains(&pages), "{pages} pages");
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

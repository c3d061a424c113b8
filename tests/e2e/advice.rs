//! What takes long on a plan: it tells how far it is, stops when asked to, and goes on when asked again.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// Touches a button as soon as it is there, quicker than a person.
const STOP: &str = "
    window.quick = new MutationObserver(() => {
        const stop = document.querySelector('[data-act=stop]');
        if (!stop) return;
        quick.disconnect();
        window.share = document.querySelector('[aria-busy=true] progress').value;
        stop.click();
    });
    quick.observe(document.body, { childList: true, subtree: true });
";

#[tokio::test]
async fn the_comparison_stops_and_goes_on() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("demo site").await?;
    page.find("main .list a").await?;
    page.script(STOP, Vec::new()).await?;
    page.touch_at("main .list a").await?;
    page.find("[data-act=work-out]").await?;
    assert!(page.script("return share", Vec::new()).await?.as_f64() < Some(1.0));
    page.until_text("[role=status]", "not worked out").await?;
    assert!(!page.has("[data-advice]").await?);

    page.touch_at("[data-act=work-out]").await?;
    page.find("[data-advice=whole]").await?;
    let said = page.text("[data-advice=whole]").await?;

    // What was worked out is there at once on the way back.
    page.touch_at(".places a[href='#/worksheets']").await?;
    page.until_text("h1", "Worksheets").await?;
    page.script(STOP, Vec::new()).await?;
    page.back().await?;
    assert_eq!(page.text("[data-advice=whole]").await?, said);
    assert!(!page.has("[data-act=work-out]").await?);
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

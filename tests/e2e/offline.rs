//! The app opens with no network at all, under its strict policy.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

#[tokio::test]
async fn opens_without_a_server() -> Result<(), Failure> {
    let mut server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;

    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.find("main").await?;
    page.until_offline_ready().await?;
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await?;

    server.end()?;
    assert!(!server.is_reachable());

    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.find("main").await?;
    page.until_text("main", "Works offline now").await?;
    page.close().await
}

#[tokio::test]
async fn a_lost_file_is_fetched_again() -> Result<(), Failure> {
    let mut server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.until_offline_ready().await?;
    let lose = "return caches.keys().then(names => caches.open(names[0])).then(cache => cache.delete('manifest.webmanifest'))";

    assert_eq!(page.script(lose, Vec::new()).await?, true);
    page.reload().await?;
    page.until_text("main", "Works offline now").await?;

    assert_eq!(page.script(lose, Vec::new()).await?, true);
    server.end()?;
    page.go(&format!("{}#/settings", server.address())).await?;
    page.reload().await?;
    page.until_text("main", "could not be kept").await?;
    page.close().await
}

#[tokio::test]
async fn the_policy_holds_off_what_is_not_the_apps_own() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.find("main").await?;

    // From a timer, since what a driver itself evaluates stands outside the page's policy.
    page.script(
        "setTimeout(() => {
             const script = document.createElement('script');
             script.textContent = 'window.inline = true';
             document.body.append(script);
             try { (0, eval)('window.evaluated = true'); } catch { /* refused, as it should be */ }
             window.tried = true;
         }, 0);",
        Vec::new(),
    )
    .await?;
    page.until("the timer has run", "return window.tried === true")
        .await?;
    for stranger in ["inline", "evaluated"] {
        let script = format!("return window.{stranger} === true");
        let ran = page.script(&script, Vec::new()).await?;
        assert_eq!(ran, serde_json::Value::Bool(false), "{stranger}");
    }
    page.close().await
}

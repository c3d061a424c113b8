//! Runs the cases of `crates/bench` in a browser, from the page that `cargo xtask bench` has put into a folder. Prints a line a case:
//! its index, as given on the command line, and microseconds. With `pace` in place of an index it measures how soon the app itself answers a key.

mod pace;

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server, told};

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<(), Failure> {
    if std::env::args().nth(1).as_deref() == Some("pace") {
        return pace::print().await;
    }
    let folder = told("WINTERSET_DIST")?;
    let server = Server::of(folder.as_ref(), "/")?;
    let driver = Driver::start()?;
    let profile = Profile::new()?;
    let page = Page::open(&driver, &profile, Screen::DESK).await?;
    page.go(&server.address()).await?;
    page.until("the cases are there", "return 'cases' in window")
        .await?;
    for index in std::env::args().skip(1) {
        let index: usize = index.parse()?;
        let microseconds = page
            .script(
                "return cases.microseconds(arguments[0])",
                vec![index.into()],
            )
            .await?;
        println!("{index} {microseconds}");
    }
    page.close().await
}

//! Weather files: picked on the phone, read in pieces with a way out, kept as hours, and used in plans.

use std::path::{Path, PathBuf};

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// A made year, which the reference checks hold against numpy.
fn year() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/data/weather_year.epw")
}

/// The design low that numpy finds in it, °C.
fn design_low() -> Result<f64, Failure> {
    let file = year().with_extension("json");
    let found: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(file)?)?;
    found["exceeded_996_C"]
        .as_f64()
        .ok_or_else(|| "no design low".into())
}

/// The same as the app offers it: to the tenth, on the cold side, in °F.
fn offered() -> Result<String, Failure> {
    let fahrenheit = design_low()? * 1.8 + 32.0;
    Ok(format!("{}", (fahrenheit * 10.0 + 1e-6).floor() / 10.0))
}

async fn pick(page: &Page, file: &Path) -> Result<(), Failure> {
    page.pick("#answer-weather", file).await
}

async fn hut(page: &Page, server: &Server) -> Result<(), Failure> {
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await
}

/// Back over so many screens to that of the site.
async fn to_site(page: &Page, screens: u32) -> Result<(), Failure> {
    for _ in 0..screens {
        let from = page.address().await?;
        page.back().await?;
        page.until(
            "the screen before is there",
            &format!("return location.href !== '{from}'"),
        )
        .await?;
    }
    page.find("#answer-weather").await.map(|_| ())
}

#[tokio::test]
async fn a_file_gives_the_site_its_winter() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    hut(&page, &server).await?;
    page.touch("See the plan").await?;
    page.find("[data-advice=whole]").await?;
    page.until_text("[data-advice]", "Over a usual year")
        .await?;
    let usual = page.text(".methods").await?;
    to_site(&page, 2).await?;
    pick(&page, &year()).await?;
    let low = offered()?;
    let shown = low.replace('-', "\u{2212}");
    page.until_text("[data-weather=kept]", &format!("{shown}\u{a0}°F"))
        .await?;
    let kept = page
        .script(
            "return Object.values(localStorage).reduce((most, text) => Math.max(most, text.length), 0)",
            Vec::new(),
        )
        .await?;
    assert!(kept.as_u64().is_some_and(|most| most < 4000), "{kept}");

    // The plan goes over these hours, and says so; the site's low stays what was entered.
    page.reload().await?;
    page.find("[data-weather=kept]").await?;
    page.touch_at("main .list__one").await?;
    page.find("[data-advice=whole]").await?;
    page.until_text("[data-advice]", "weather file").await?;
    assert_ne!(page.text(".methods").await?, usual);
    page.until_text("[data-verdict]", "\u{2212}18\u{a0}°F")
        .await?;

    // Its design low is offered where the site's low is asked for, and for all systems at once.
    page.touch("Inputs:").await?;
    page.until_text("h1", "Inputs").await?;
    page.touch_at("[data-act=use-low]").await?;
    page.until(
        "the design low is entered",
        &format!("return document.querySelector('#answer-outdoor_low').value === '{low}'"),
    )
    .await?;
    assert!(!page.has("[data-act=use-low]").await?);
    page.type_into("#answer-outdoor_low", "-30").await?;
    to_site(&page, 2).await?;
    page.touch_choice(&format!("Use {shown}")).await?;
    page.touch_at(".confirm .button--first").await?;
    page.until_text("[data-part=weather]", "Every system here")
        .await?;

    page.touch("Remove the winter hours").await?;
    page.touch_at(".confirm .button--first").await?;
    page.until(
        "the hours are gone",
        "return !document.querySelector('[data-weather=kept]')",
    )
    .await?;
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn what_is_no_year_is_told_and_can_be_picked_again() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.find("#answer-weather").await?;
    let folder = tempfile::tempdir()?;
    let whole = std::fs::read_to_string(year())?;
    let month: String = whole.lines().take(8 + 744).collect::<Vec<_>>().join("\n");
    let broken = whole.replacen(",-9.0,", ",warm,", 1);
    for (name, text, said) in [
        ("empty.epw", "", "LOCATION"),
        ("letter.epw", "Dear site,", "LOCATION"),
        ("month.epw", &month, "744\u{a0}h"),
        ("cut.epw", &format!("{month}\n2001,1,1"), "columns"),
        ("broken.epw", &broken, "outdoor temperature"),
    ] {
        let file = folder.path().join(name);
        std::fs::write(&file, text)?;
        pick(&page, &file).await?;
        page.until_text("[data-weather=wrong]", said).await?;
        assert!(!page.has("[data-weather=kept]").await?, "{name}");
    }
    pick(&page, &year()).await?;
    page.find("[data-weather=kept]").await?;
    assert_eq!(page.text("[data-weather=wrong]").await?, "");
    page.close().await
}

/// A file by the minute takes long enough to be left on the way.
#[tokio::test]
async fn a_long_file_can_be_left() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.find("#answer-weather").await?;
    let whole = std::fs::read_to_string(year())?;
    let (head, rows): (Vec<&str>, Vec<&str>) = whole
        .lines()
        .partition(|line| !line.starts_with(|first: char| first.is_ascii_digit()));
    let head = head
        .join("\n")
        .replace("DATA PERIODS,1,1,", "DATA PERIODS,1,12,");
    let mut long = head + "\n";
    for row in rows {
        for _ in 0..12 {
            long.push_str(row);
            long.push('\n');
        }
    }
    let folder = tempfile::tempdir()?;
    let file = folder.path().join("long.epw");
    std::fs::write(&file, long)?;
    // Touched by the page itself at the first progress, so that the test does not race the reading; how far it came is kept.
    page.script(
        "window.came = [];
         new MutationObserver(() => {
             const bar = document.querySelector('[data-part=weather] progress');
             if (bar) window.came.push(bar.value);
             if (bar && bar.value > 0.1 && !window.left) {
                 window.left = true;
                 document.querySelector('[data-act=cancel]').click();
             }
         }).observe(document.body, { subtree: true, childList: true, attributes: true })",
        Vec::new(),
    )
    .await?;
    pick(&page, &file).await?;
    page.until("the reading was left", "return window.left === true")
        .await?;
    page.find("#answer-weather").await?;
    tokio::time::sleep(std::time::Duration::from_millis(500)).await;
    assert!(!page.has("[data-weather=kept]").await?);
    let came = page
        .script("return Math.max(...window.came)", Vec::new())
        .await?;
    assert!(came.as_f64().is_some_and(|share| share < 0.5), "{came}");

    // Read to its end it is a year like any other.
    pick(&page, &file).await?;
    page.find("[data-weather=kept]").await?;
    page.close().await
}

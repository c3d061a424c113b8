//! How long a person waits: from a key to the screen that shows what it did, and the longest that the page answers nothing while it works, both
//! with the processor slowed as an old phone's would be.

use std::path::Path;
use std::time::Duration;

use serde_json::{Value, json};
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// How many times slower than this machine.
const SLOWED: u32 = 4;

/// Between two keys, as a quick thumb types.
const BETWEEN: Duration = Duration::from_millis(180);

/// Notes the time from each key to the end of the drawing that follows it, and the longest gap between two turns of the page.
const WATCH: &str = "
    window.waits = [];
    let pressed = 0;
    const drawn = () => {
        const from = pressed;
        requestAnimationFrame(() => {
            const after = new MessageChannel();
            after.port1.onmessage = () => waits.push(performance.now() - from);
            after.port2.postMessage(0);
        });
    };
    addEventListener('keydown', event => {
        pressed = event.timeStamp;
        if (event.target.matches('[role=radio]')) drawn();
    }, true);
    addEventListener('input', drawn, true);

    window.longest = 0;
    let last = performance.now();
    const turns = new MessageChannel();
    turns.port1.onmessage = () => {
        const now = performance.now();
        longest = Math.max(longest, now - last);
        last = now;
        setTimeout(() => { last = performance.now(); turns.port2.postMessage(0); }, 0);
    };
    turns.port2.postMessage(0);
";

/// A page that is watched.
struct Watched {
    page: Page,
    address: String,
}

impl Watched {
    async fn open(driver: &Driver, server: &Server, phone: &Profile) -> Result<Self, Failure> {
        let page = Page::open(driver, phone, Screen::PHONE).await?;
        page.go(&server.address()).await?;
        page.find("main").await?;
        page.script(WATCH, Vec::new()).await?;
        let rate = json!({ "rate": SLOWED });
        page.tell("Emulation.setCPUThrottlingRate", rate).await?;
        Ok(Self {
            page,
            address: server.address(),
        })
    }

    async fn go(&self, behind: &str, whole: &str) -> Result<(), Failure> {
        self.page.go(&format!("{}{behind}", self.address)).await?;
        self.page.find(whole).await.map(|_| ())
    }

    /// Presses keys one at a time in a field and prints what they took.
    async fn keys(&self, what: &str, css: &str, keys: &[&str]) -> Result<(), Failure> {
        self.page.find(css).await?;
        self.page
            .script(
                "document.querySelector(arguments[0]).focus(); waits.length = 0",
                vec![css.into()],
            )
            .await?;
        for key in keys {
            self.page.press(key).await?;
            tokio::time::sleep(BETWEEN).await;
        }
        tokio::time::sleep(2 * BETWEEN).await;
        let waits = self.page.script("return waits", Vec::new()).await?;
        let mut waits: Vec<f64> = waits
            .as_array()
            .into_iter()
            .flatten()
            .filter_map(Value::as_f64)
            .collect();
        waits.sort_by(f64::total_cmp);
        let median = waits.get(waits.len() / 2).copied().unwrap_or(f64::NAN);
        let worst = waits.last().copied().unwrap_or(f64::NAN);
        println!("| {what} | {median:.0} | {worst:.0} |");
        Ok(())
    }

    /// Starts to look for the longest gap anew.
    async fn calm(&self) -> Result<(), Failure> {
        self.page
            .script("longest = 0", Vec::new())
            .await
            .map(|_| ())
    }

    async fn longest(&self, what: &str) -> Result<(), Failure> {
        let longest = self.page.script("return longest", Vec::new()).await?;
        println!(
            "| {what} | - | {:.0} |",
            longest.as_f64().unwrap_or(f64::NAN)
        );
        Ok(())
    }
}

/// Digits and the way back, so that the answer is right, wrong and empty on the way.
const TYPED: &[&str] = &[
    "1", "2", "0", "0", "0", "\u{e003}", "\u{e003}", "5", "0", "0", "\u{e003}", "\u{e003}",
    "\u{e003}", "8", "0", "0",
];

const DOWN: &str = "\u{e015}";

/// Enters a system with this refrigerant; its address.
async fn system(watched: &Watched, refrigerant: &str) -> Result<String, Failure> {
    let page = &watched.page;
    watched.go("#/", "main").await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", refrigerant).await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.until_text(".live", "°F").await?;
    let address = page.address().await?;
    let behind = address.find('#').map_or("", |at| &address[at..]);
    Ok(behind.trim_end_matches("/inputs").to_owned())
}

/// Prints a line a measurement: what, the median and the worst, in ms.
pub async fn print() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let watched = Watched::open(&driver, &server, &phone).await?;
    let clear = "\u{e009}a\u{e000}\u{e003}";
    println!("| processor slowed {SLOWED} times, ms | median | worst |\n| --- | ---: | ---: |");
    for refrigerant in ["R-134a", "R-410A", "R-448A"] {
        let system = system(&watched, refrigerant).await?;
        watched
            .page
            .type_into("#answer-cooling_capacity", "")
            .await?;
        let what = format!("{refrigerant}: a key in the inputs");
        watched
            .keys(&what, "#answer-cooling_capacity", TYPED)
            .await?;
        watched.page.press(clear).await?;
        watched.page.press("36000").await?;
        watched.page.until_text(".live", "°F").await?;

        watched.calm().await?;
        watched.go(&system, "[role=radio]").await?;
        watched.page.find("[data-advice=whole]").await?;
        let what = format!("{refrigerant}: a plan opens, until its bands are there");
        watched.longest(&what).await?;
        let what = format!("{refrigerant}: a key on the plan (outdoors now)");
        watched
            .keys(
                &what,
                "#answer-outdoor-now",
                &["2", "0", "\u{e003}", "5", "\u{e003}", "\u{e003}", "8"],
            )
            .await?;
        let what = format!("{refrigerant}: a rung of the ladder");
        watched
            .keys(&what, "[role=radio][aria-checked=true]", &[DOWN; 5])
            .await?;
    }
    for (sheet, field) in [
        ("saturation", "temperature"),
        ("superheat", "suction-pressure"),
        ("liquid-line", "liquid-pressure"),
        ("flooding", "elevation"),
        ("winter-start", "elevation"),
    ] {
        watched.go(&format!("#/worksheets/{sheet}"), ".row").await?;
        let css = format!("#answer-{field}, .row input.entry");
        let what = format!("a key in the worksheet {sheet}");
        watched
            .keys(
                &what,
                &css,
                &[
                    "1", "2", "0", "\u{e003}", "5", "\u{e003}", "\u{e003}", "8", "0",
                ],
            )
            .await?;
    }
    watched.go("#/", "main").await?;
    watched.page.touch("New site").await?;
    watched.page.find("#answer-weather").await?;
    watched.calm().await?;
    let year = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/data/weather_year.epw");
    watched.page.pick("#answer-weather", &year).await?;
    watched.page.find("[data-weather=kept]").await?;
    watched.longest("a year of weather is read").await?;
    watched.page.close().await
}

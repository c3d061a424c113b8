//! A page in a browser, used as a person would.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use thirtyfour::components::SelectElement;
use thirtyfour::prelude::ElementQueryable;
use thirtyfour::support::base64_decode;
use thirtyfour::{By, Capabilities, WebDriver, WebElement};

use super::{Driver, Engine, Failure};

/// How long anything may take to appear.
const PATIENCE: Duration = Duration::from_secs(15);

/// How long to wait before looking again.
const PAUSE: Duration = Duration::from_millis(50);

/// What a browser keeps between one opening and the next, as on a phone of one person.
pub struct Profile {
    folder: tempfile::TempDir,
}

impl Profile {
    /// A new phone, with nothing on it.
    pub fn new() -> Result<Self, Failure> {
        Ok(Self {
            folder: tempfile::tempdir()?,
        })
    }

    fn path(&self) -> &Path {
        self.folder.path()
    }
}

/// The size of a window in CSS pixels.
#[derive(Clone, Copy, Debug)]
pub struct Screen {
    /// Width.
    pub width: u32,
    /// Height.
    pub height: u32,
}

impl Screen {
    /// A small phone.
    pub const PHONE: Screen = Screen {
        width: 360,
        height: 640,
    };
    /// A desk.
    pub const DESK: Screen = Screen {
        width: 1280,
        height: 800,
    };
}

/// A browser with one page.
pub struct Page {
    browser: WebDriver,
}

impl Page {
    /// Opens a browser with a profile.
    pub async fn open(driver: &Driver, profile: &Profile, screen: Screen) -> Result<Self, Failure> {
        Self::open_set(driver, profile, screen, json!({})).await
    }

    /// Opens a browser in which the person has set text to this size, in CSS pixels; 16 is usual.
    pub async fn open_with_text(
        driver: &Driver,
        profile: &Profile,
        screen: Screen,
        size: u32,
    ) -> Result<Self, Failure> {
        let set = json!({ "webkit.webprefs.default_font_size": size });
        Self::open_set(driver, profile, screen, set).await
    }

    /// Opens a browser of another engine with a new profile, as wide as it goes down to towards a phone.
    pub async fn open_in(engine: Engine, driver: &Driver) -> Result<Self, Failure> {
        let browser = WebDriver::new(driver.address(), engine.capabilities()?).await?;
        let Screen { width, height } = Screen::PHONE;
        browser.set_window_rect(0, 0, width, height).await?;
        Ok(Self { browser })
    }

    async fn open_set(
        driver: &Driver,
        profile: &Profile,
        screen: Screen,
        set: Value,
    ) -> Result<Self, Failure> {
        let arguments = [
            "--headless=new".to_owned(),
            "--no-sandbox".to_owned(),
            "--disable-gpu".to_owned(),
            "--disable-quic".to_owned(),
            "--no-first-run".to_owned(),
            "--disable-background-networking".to_owned(),
            "--disable-component-update".to_owned(),
            "--disable-sync".to_owned(),
            "--hide-scrollbars".to_owned(),
            format!("--user-data-dir={}", profile.path().display()),
            format!("--window-size={},{}", screen.width, screen.height),
        ];
        let capabilities = json!({
            "goog:chromeOptions": {
                "args": arguments,
                "prefs": set,
                "mobileEmulation": {
                    "deviceMetrics": {
                        "width": screen.width, "height": screen.height, "pixelRatio": 2.0, "touch": screen.width < 600, "mobile": screen.width < 600
                    }
                }
            },
            "goog:loggingPrefs": { "browser": "ALL" }
        });
        let capabilities: Capabilities = serde_json::from_value(capabilities)?;
        let browser = WebDriver::new(driver.address(), capabilities).await?;
        Ok(Self { browser })
    }

    /// Makes the window another size, as turning a phone does.
    pub async fn resize(&self, screen: Screen) -> Result<(), Failure> {
        let metrics = json!({
            "width": screen.width, "height": screen.height, "deviceScaleFactor": 2.0, "mobile": screen.width < 1000
        });
        self.tell("Emulation.setDeviceMetricsOverride", metrics)
            .await
            .map(|_| ())
    }

    /// Tells the browser something in its own protocol, and gives what it answers.
    pub async fn tell(&self, command: &str, details: Value) -> Result<Value, Failure> {
        Ok(self.browser.cdp().send_raw(command, details).await?)
    }

    /// Goes to an address. A change behind `#` alone does not load the page anew.
    pub async fn go(&self, address: &str) -> Result<(), Failure> {
        Ok(self.browser.goto(address).await?)
    }

    /// The address now.
    pub async fn address(&self) -> Result<String, Failure> {
        Ok(self.browser.current_url().await?.to_string())
    }

    /// Loads the page anew.
    pub async fn reload(&self) -> Result<(), Failure> {
        Ok(self.browser.refresh().await?)
    }

    /// One step back, as by the phone's own back button.
    pub async fn back(&self) -> Result<(), Failure> {
        Ok(self.browser.back().await?)
    }

    /// The first element that a CSS selector finds, as soon as it is there.
    pub async fn find(&self, css: &str) -> Result<WebElement, Failure> {
        self.browser
            .query(By::Css(css))
            .wait(PATIENCE, PAUSE)
            .first()
            .await
            .map_err(|error| format!("{css}: {error}").into())
    }

    /// Whether a CSS selector finds anything now.
    pub async fn has(&self, css: &str) -> Result<bool, Failure> {
        Ok(!self.browser.find_all(By::Css(css)).await?.is_empty())
    }

    /// The button or link that carries this text, as soon as it is there.
    pub async fn named(&self, text: &str) -> Result<WebElement, Failure> {
        let path = format!(
            "//*[self::button or self::a or self::summary][contains(normalize-space(.), \"{text}\") or @aria-label=\"{text}\"]"
        );
        self.browser
            .query(By::XPath(path))
            .wait(PATIENCE, PAUSE)
            .first()
            .await
            .map_err(|error| format!("{text}: {error}").into())
    }

    /// Touches the button or link that carries this text.
    pub async fn touch(&self, text: &str) -> Result<(), Failure> {
        let element = self.named(text).await?;
        self.touch_it(&element, text).await
    }

    /// Touches the label of a choice.
    pub async fn touch_choice(&self, text: &str) -> Result<(), Failure> {
        let path =
            format!("//*[self::label or self::button][contains(normalize-space(.), \"{text}\")]");
        let element = self
            .browser
            .query(By::XPath(path))
            .wait(PATIENCE, PAUSE)
            .first()
            .await
            .map_err(|error| format!("{text}: {error}"))?;
        self.touch_it(&element, text).await
    }

    /// Touches what a CSS selector finds.
    pub async fn touch_at(&self, css: &str) -> Result<(), Failure> {
        let element = self.find(css).await?;
        self.touch_it(&element, css).await
    }

    async fn touch_it(&self, element: &WebElement, name: &str) -> Result<(), Failure> {
        element.scroll_into_view().await?;
        element
            .click()
            .await
            .map_err(|error| format!("{name}: {error}").into())
    }

    /// What a person reads there, as soon as it is there.
    pub async fn text(&self, css: &str) -> Result<String, Failure> {
        Ok(self.find(css).await?.text().await?)
    }

    /// What is typed in a field.
    pub async fn value(&self, css: &str) -> Result<String, Failure> {
        Ok(self
            .find(css)
            .await?
            .prop("value")
            .await?
            .unwrap_or_default())
    }

    /// Types into a field in place of what is there, key by key.
    pub async fn type_into(&self, css: &str, text: &str) -> Result<(), Failure> {
        let element = self.find(css).await?;
        // Selecting all and typing over it is what a person does; clearing by script would skip the page's own events.
        element.send_keys("\u{e009}a\u{e000}\u{e003}").await?;
        if !text.is_empty() {
            element.send_keys(text).await?;
        }
        Ok(())
    }

    /// Picks a file in a field for files.
    pub async fn pick(&self, css: &str, file: &Path) -> Result<(), Failure> {
        let path = file.to_str().ok_or("a path that is no text")?;
        Ok(self.find(css).await?.send_keys(path).await?)
    }

    /// Presses a key where the focus is.
    pub async fn press(&self, key: &str) -> Result<(), Failure> {
        Ok(self.browser.active_element().await?.send_keys(key).await?)
    }

    /// Pastes into a field what was copied, and tells what came.
    pub async fn pasted(&self, css: &str) -> Result<String, Failure> {
        self.type_into(css, "").await?;
        self.find(css).await?.send_keys("\u{e009}v\u{e000}").await?;
        self.value(css).await
    }

    /// Chooses by value in a list of choices.
    pub async fn choose(&self, css: &str, value: &str) -> Result<(), Failure> {
        let list = SelectElement::new(&self.find(css).await?).await?;
        Ok(list.select_by_value(value).await?)
    }

    /// Opens whatever is folded up on the screen, and what is folded up in that.
    pub async fn unfold_all(&self) -> Result<(), Failure> {
        self.until(
            "nothing is folded up",
            "const shut = [...document.querySelectorAll('details:not([open])')];
             shut.forEach(one => one.open = true);
             return shut.length === 0",
        )
        .await
    }

    /// Waits until nothing on the screen is still being worked out.
    pub async fn until_worked_out(&self) -> Result<(), Failure> {
        self.until(
            "everything is worked out",
            "return !document.querySelector('[aria-busy=true]')",
        )
        .await
    }

    /// Waits until a script answers true.
    pub async fn until(&self, what: &str, script: &str) -> Result<(), Failure> {
        let start = Instant::now();
        loop {
            if self.script(script, Vec::new()).await? == Value::Bool(true) {
                return Ok(());
            }
            if start.elapsed() > PATIENCE {
                return Err(format!("waited in vain until {what}").into());
            }
            tokio::time::sleep(PAUSE).await;
        }
    }

    /// Waits until what a selector finds has the focus.
    pub async fn until_focused(&self, css: &str) -> Result<(), Failure> {
        let script = format!("return document.activeElement.matches({})", json!(css));
        self.until(&format!("{css} has the focus"), &script).await
    }

    /// Waits until a text stands at a place.
    pub async fn until_text(&self, css: &str, text: &str) -> Result<(), Failure> {
        let script = format!(
            "return [...document.querySelectorAll({})].some(found => found.innerText.includes({}))",
            json!(css),
            json!(text)
        );
        self.until(&format!("{css} says {text}"), &script).await
    }

    /// Waits until the service worker answers for this page and says that every file is kept.
    pub async fn until_offline_ready(&self) -> Result<(), Failure> {
        self.until(
            "the service worker keeps every file",
            "const worker = navigator.serviceWorker.controller;
             if (worker?.state !== 'activated') return false;
             return new Promise(done => {
                 navigator.serviceWorker.addEventListener(
                     'message', event => done(event.data.kind === 'status' && event.data.whole), { once: true });
                 worker.postMessage({ kind: 'status' });
             });",
        )
        .await
    }

    /// Runs a script in the page.
    pub async fn script(&self, script: &str, arguments: Vec<Value>) -> Result<Value, Failure> {
        let answer = self.browser.execute(script, arguments).await?;
        Ok(answer.json().clone())
    }

    /// What the console says is wrong since it was last asked.
    pub async fn console_errors(&self) -> Result<Vec<String>, Failure> {
        let log = self.browser.browser_log().await?;
        let errors = log
            .into_iter()
            .filter(|entry| entry.level == "SEVERE")
            .map(|entry| entry.message)
            .collect();
        Ok(errors)
    }

    /// Keeps a picture of the window under `target/screenshots/`.
    pub async fn picture(&self, name: &str) -> Result<PathBuf, Failure> {
        keep_picture(name, &self.browser.screenshot_as_png().await?)
    }

    /// Keeps a picture of the whole screen, also of what a person would scroll to.
    pub async fn whole_picture(&self, name: &str) -> Result<PathBuf, Failure> {
        let height = self
            .script(
                "return Math.min(12000, document.documentElement.scrollHeight)",
                Vec::new(),
            )
            .await?;
        let width = self.script("return innerWidth", Vec::new()).await?;
        let picture = self
            .browser
            .cdp()
            .send_raw(
                "Page.captureScreenshot",
                json!({
                    "captureBeyondViewport": true,
                    "clip": { "x": 0, "y": 0, "width": width, "height": height, "scale": 1 }
                }),
            )
            .await?;
        let bytes = base64_decode(
            picture["data"]
                .as_str()
                .ok_or("the browser gave no picture")?,
        )?;
        keep_picture(name, &bytes)
    }

    /// What the screen is printed as, on A4: a PDF.
    pub async fn paper(&self) -> Result<Vec<u8>, Failure> {
        let printed = self
            .browser
            .cdp()
            .send_raw(
                "Page.printToPDF",
                json!({ "paperWidth": 8.27, "paperHeight": 11.69, "preferCSSPageSize": false }),
            )
            .await?;
        Ok(base64_decode(
            printed["data"]
                .as_str()
                .ok_or("the browser printed nothing")?,
        )?)
    }

    /// Shows the screen as it would be printed, or as a screen again.
    pub async fn as_paper(&self, paper: bool) -> Result<(), Failure> {
        let media = if paper { "print" } else { "" };
        self.tell("Emulation.setEmulatedMedia", json!({ "media": media }))
            .await
            .map(|_| ())
    }

    /// Closes the browser; the profile stays.
    pub async fn close(self) -> Result<(), Failure> {
        Ok(self.browser.clone().quit().await?)
    }
}

impl Drop for Page {
    fn drop(&mut self) {
        // A test that stopped half-way leaves its browser to the driver, which ends it; waiting for it here would block the test.
        // One that was closed is past leaving.
        let _ = self.browser.clone().leak();
    }
}

fn keep_picture(name: &str, bytes: &[u8]) -> Result<PathBuf, Failure> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/screenshots");
    std::fs::create_dir_all(&folder)?;
    let file = folder.join(format!("{name}.png"));
    std::fs::write(&file, bytes)?;
    Ok(file)
}

//! A page in a browser, used as a person would.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use base64::Engine;
use fantoccini::elements::Element;
use fantoccini::wd::WebDriverCompatibleCommand;
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};

use super::{Driver, Failure};

/// How long anything may take to appear.
const PATIENCE: Duration = Duration::from_secs(15);

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
    client: Client,
}

impl Page {
    /// Opens a browser with a profile.
    pub async fn open(driver: &Driver, profile: &Profile, screen: Screen) -> Result<Self, Failure> {
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
                "mobileEmulation": {
                    "deviceMetrics": {
                        "width": screen.width, "height": screen.height, "pixelRatio": 2.0, "touch": screen.width < 600, "mobile": screen.width < 600
                    }
                }
            },
            "goog:loggingPrefs": { "browser": "ALL" }
        });
        let Value::Object(capabilities) = capabilities else {
            return Err("capabilities".into());
        };
        let client = ClientBuilder::new(HttpConnector::new())
            .capabilities(capabilities)
            .connect(driver.address())
            .await?;
        Ok(Self { client })
    }

    /// Goes to an address. A change behind `#` alone does not load the page anew.
    pub async fn go(&self, address: &str) -> Result<(), Failure> {
        Ok(self.client.goto(address).await?)
    }

    /// The address now.
    pub async fn address(&self) -> Result<String, Failure> {
        Ok(self.client.current_url().await?.to_string())
    }

    /// Loads the page anew.
    pub async fn reload(&self) -> Result<(), Failure> {
        Ok(self.client.refresh().await?)
    }

    /// One step back, as by the phone's own back button.
    pub async fn back(&self) -> Result<(), Failure> {
        Ok(self.client.back().await?)
    }

    /// The first element that a CSS selector finds, as soon as it is there.
    pub async fn find(&self, css: &str) -> Result<Element, Failure> {
        self.client
            .wait()
            .at_most(PATIENCE)
            .for_element(Locator::Css(css))
            .await
            .map_err(|error| format!("{css}: {error}").into())
    }

    /// Whether a CSS selector finds anything now.
    pub async fn has(&self, css: &str) -> Result<bool, Failure> {
        Ok(!self.client.find_all(Locator::Css(css)).await?.is_empty())
    }

    /// The button or link that carries this text, as soon as it is there.
    pub async fn named(&self, text: &str) -> Result<Element, Failure> {
        let path = format!(
            "//*[self::button or self::a or self::summary][contains(normalize-space(.), \"{text}\") or @aria-label=\"{text}\"]"
        );
        self.client
            .wait()
            .at_most(PATIENCE)
            .for_element(Locator::XPath(&path))
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
            .client
            .wait()
            .at_most(PATIENCE)
            .for_element(Locator::XPath(&path))
            .await
            .map_err(|error| format!("{text}: {error}"))?;
        self.touch_it(&element, text).await
    }

    /// Touches what a CSS selector finds.
    pub async fn touch_at(&self, css: &str) -> Result<(), Failure> {
        let element = self.find(css).await?;
        self.touch_it(&element, css).await
    }

    async fn touch_it(&self, element: &Element, name: &str) -> Result<(), Failure> {
        self.script(
            "arguments[0].scrollIntoView({block: 'center'})",
            vec![serde_json::to_value(element)?],
        )
        .await?;
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

    /// Presses a key where the focus is.
    pub async fn press(&self, key: &str) -> Result<(), Failure> {
        Ok(self.client.active_element().await?.send_keys(key).await?)
    }

    /// Pastes into a field what was copied, and tells what came.
    pub async fn pasted(&self, css: &str) -> Result<String, Failure> {
        self.type_into(css, "").await?;
        self.find(css).await?.send_keys("\u{e009}v\u{e000}").await?;
        self.value(css).await
    }

    /// Chooses by value in a list of choices.
    pub async fn choose(&self, css: &str, value: &str) -> Result<(), Failure> {
        Ok(self.find(css).await?.select_by_value(value).await?)
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
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
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

    /// Waits until the service worker keeps every file and answers for this page.
    pub async fn until_offline_ready(&self) -> Result<(), Failure> {
        self.until(
            "the service worker is in charge",
            "return navigator.serviceWorker.controller?.state === 'activated'",
        )
        .await
    }

    /// Runs a script in the page.
    pub async fn script(&self, script: &str, arguments: Vec<Value>) -> Result<Value, Failure> {
        Ok(self.client.execute(script, arguments).await?)
    }

    /// What the console says is wrong since it was last asked.
    pub async fn console_errors(&self) -> Result<Vec<String>, Failure> {
        let log = self.client.issue_cmd(Log).await?;
        let errors = log
            .as_array()
            .into_iter()
            .flatten()
            .filter(|entry| entry["level"] == "SEVERE")
            .map(|entry| entry["message"].to_string())
            .collect();
        Ok(errors)
    }

    /// Keeps a picture of the window under `target/screenshots/`.
    pub async fn picture(&self, name: &str) -> Result<PathBuf, Failure> {
        keep_picture(name, &self.client.screenshot().await?)
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
            .client
            .issue_cmd(DevTools(
                "Page.captureScreenshot",
                json!({
                    "captureBeyondViewport": true,
                    "clip": { "x": 0, "y": 0, "width": width, "height": height, "scale": 1 }
                }),
            ))
            .await?;
        let bytes = base64_of(&picture)?;
        keep_picture(name, &bytes)
    }

    /// Closes the browser; the profile stays.
    pub async fn close(self) -> Result<(), Failure> {
        Ok(self.client.close().await?)
    }
}

/// The browser's console log, which the standard has no command for.
#[derive(Debug)]
struct Log;

impl WebDriverCompatibleCommand for Log {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!("session/{}/se/log", session.unwrap_or_default()))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        (
            http::Method::POST,
            Some(json!({ "type": "browser" }).to_string()),
        )
    }
}

fn keep_picture(name: &str, bytes: &[u8]) -> Result<PathBuf, Failure> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/screenshots");
    std::fs::create_dir_all(&folder)?;
    let file = folder.join(format!("{name}.png"));
    std::fs::write(&file, bytes)?;
    Ok(file)
}

fn base64_of(picture: &Value) -> Result<Vec<u8>, Failure> {
    let text = picture["data"]
        .as_str()
        .ok_or("the browser gave no picture")?;
    Ok(base64::engine::general_purpose::STANDARD.decode(text)?)
}

/// A command of the browser's own protocol, passed on by its driver.
#[derive(Debug)]
struct DevTools(&'static str, Value);

impl WebDriverCompatibleCommand for DevTools {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!(
            "session/{}/goog/cdp/execute",
            session.unwrap_or_default()
        ))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        let body = json!({ "cmd": self.0, "params": self.1 });
        (http::Method::POST, Some(body.to_string()))
    }
}

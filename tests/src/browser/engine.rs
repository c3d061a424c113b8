//! The engines of other browsers than Chromium, driven by nothing but the WebDriver standard.

use std::net::{TcpListener, TcpStream};
use std::process::Command;
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use thirtyfour::Capabilities;

use super::{Failure, told};

/// How long a driver may take to listen.
const PATIENCE: Duration = Duration::from_secs(20);

/// An engine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Firefox.
    Gecko,
    /// What an iPhone's browsers are made on; here GTK's.
    WebKit,
}

impl Engine {
    /// Its driver, on a port that was just free.
    pub(super) fn command(self) -> Result<(Command, u16), Failure> {
        let port = TcpListener::bind(("127.0.0.1", 0))?.local_addr()?.port();
        let program = match self {
            Engine::Gecko => "WINTERSET_GECKODRIVER",
            Engine::WebKit => "WINTERSET_WEBKITDRIVER",
        };
        let mut command = Command::new(told(program)?);
        command.arg(format!("--port={port}"));
        Ok((command, port))
    }

    /// What a browser of it is asked for.
    pub(super) fn capabilities(self) -> Result<Capabilities, Failure> {
        let path = |name: &str| -> Result<String, Failure> {
            let path = told(name)?.into_string();
            path.map_err(|_| format!("{name} is no text").into())
        };
        let asked: Value = match self {
            Engine::Gecko => json!({
                "moz:firefoxOptions": { "binary": path("WINTERSET_FIREFOX")?, "args": ["-headless"] }
            }),
            Engine::WebKit => json!({
                "webkitgtk:browserOptions": { "binary": path("WINTERSET_MINIBROWSER")?, "args": ["--automation"] }
            }),
        };
        Ok(serde_json::from_value(asked)?)
    }
}

/// Waits until something listens.
pub(super) fn until_it_listens(port: u16) -> Result<(), Failure> {
    let start = Instant::now();
    while TcpStream::connect(("127.0.0.1", port)).is_err() {
        if start.elapsed() > PATIENCE {
            return Err(format!("nothing listens on port {port}").into());
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    Ok(())
}

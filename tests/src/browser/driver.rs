//! The driver process.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use super::engine::{Engine, until_it_listens};
use super::{Failure, told};

/// A running driver.
pub struct Driver {
    process: Child,
    port: u16,
}

/// How often one is started anew that ends before it says its port.
const ATTEMPTS: u32 = 3;

impl Driver {
    /// Starts one on a free port.
    pub fn start() -> Result<Self, Failure> {
        // The port is taken over IPv4 first; where another process holds the same one over IPv6, the driver gives up and the next finds another.
        let mut attempt = 1;
        loop {
            match Self::start_once() {
                Err(_) if attempt < ATTEMPTS => attempt += 1,
                outcome => return outcome,
            }
        }
    }

    /// Starts that of another engine.
    pub fn of(engine: Engine) -> Result<Self, Failure> {
        let (mut command, port) = engine.command()?;
        let process = command
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()?;
        // Held already, so that it is ended if it does not come to listen.
        let driver = Self { process, port };
        until_it_listens(port)?;
        Ok(driver)
    }

    fn start_once() -> Result<Self, Failure> {
        let mut process = Command::new(told("WINTERSET_CHROMEDRIVER")?)
            .arg("--port=0")
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()?;
        let out = process.stdout.take().ok_or("the driver has no output")?;
        let mut lines = BufReader::new(out).lines();
        let port: u16 = lines
            .by_ref()
            .map_while(Result::ok)
            .find_map(|line| {
                line.split("successfully on port ")
                    .nth(1)?
                    .trim_end_matches('.')
                    .parse()
                    .ok()
            })
            .ok_or("the driver did not say its port")?;
        std::thread::spawn(move || lines.for_each(drop));
        Ok(Self { process, port })
    }

    /// Where it listens.
    pub fn address(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    /// Asks it to end, with every browser that it has started.
    fn shut_down(&self) -> std::io::Result<()> {
        let mut wire = TcpStream::connect(("localhost", self.port))?;
        wire.set_read_timeout(Some(Duration::from_secs(10)))?;
        write!(
            wire,
            "GET /shutdown HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
        )?;
        wire.read_to_end(&mut Vec::new())?;
        Ok(())
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // A driver that is gone already is what was wanted, and one that does not listen is ended without asking.
        let _ = self.shut_down();
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

//! The driver process.

use std::io::{BufRead, BufReader};
use std::process::{Child, Command, Stdio};

use super::{Failure, told};

/// A running chromedriver.
pub struct Driver {
    process: Child,
    address: String,
}

impl Driver {
    /// Starts one on a free port.
    pub fn start() -> Result<Self, Failure> {
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
        Ok(Self {
            process,
            address: format!("http://localhost:{port}"),
        })
    }

    /// Where it listens.
    pub fn address(&self) -> &str {
        &self.address
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // A driver that is gone already is what was wanted.
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

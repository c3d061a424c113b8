//! A process that serves the built app, and that can be ended for real.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

use super::{Failure, told};

/// The folder of the built app.
pub fn built() -> Result<PathBuf, Failure> {
    Ok(told("WINTERSET_DIST")?.into())
}

/// A running server.
pub struct Server {
    process: Option<Child>,
    folder: PathBuf,
    base: String,
    port: u16,
}

impl Server {
    /// Serves the app on a free port.
    pub fn start() -> Result<Self, Failure> {
        Self::of(&built()?, "/")
    }

    /// Serves a folder on a free port, at a path that starts and ends with a slash.
    pub fn of(folder: &Path, base: &str) -> Result<Self, Failure> {
        let mut server = Self {
            process: None,
            folder: folder.to_owned(),
            base: base.to_owned(),
            port: 0,
        };
        server.start_again()?;
        Ok(server)
    }

    /// The app's address.
    pub fn address(&self) -> String {
        format!("http://localhost:{}{}", self.port, self.base)
    }

    /// Ends the process and waits until it is gone.
    pub fn end(&mut self) -> Result<(), Failure> {
        if let Some(mut process) = self.process.take() {
            process.kill()?;
            process.wait()?;
        }
        Ok(())
    }

    /// Whether anything listens at the address.
    pub fn is_reachable(&self) -> bool {
        std::net::TcpStream::connect(("localhost", self.port)).is_ok()
    }

    /// Serves again on the port it had.
    pub fn start_again(&mut self) -> Result<(), Failure> {
        self.end()?;
        let mut process = Command::new(told("WINTERSET_SERVER")?)
            .arg("serve-dist")
            .arg(&self.folder)
            .args(["--port", &self.port.to_string()])
            .args(["--base-path", &self.base])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .spawn()?;
        let out = process.stdout.take().ok_or("the server has no output")?;
        let mut lines = BufReader::new(out).lines();
        let port = lines.by_ref().map_while(Result::ok).find_map(|line| {
            let (port, _) = line.split("localhost:").nth(1)?.split_once('/')?;
            port.parse().ok()
        });
        // Whatever it says later has to go somewhere.
        std::thread::spawn(move || lines.for_each(drop));
        self.process = Some(process);
        self.port = port.ok_or("the server did not say its port")?;
        Ok(())
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        // A server that is gone already is what was wanted.
        let _ = self.end();
    }
}

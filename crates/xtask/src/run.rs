//! Running other programs.

use std::process::{Child, Command, Stdio};
use std::time::Instant;

use crate::error::Error;

/// Says what is being done, in one line.
pub fn say(text: &str) {
    eprintln!("• {text}");
}

/// Whether a program starts and ends well, with its output thrown away.
pub fn works(command: &mut Command) -> bool {
    command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

/// What a program prints on its standard output, where it ends well.
pub fn output(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).output().ok()?;
    output
        .status
        .success()
        .then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Runs a program with its output shown, and says what it was doing where it fails.
pub fn step(doing: &str, mend: Option<&str>, command: &mut Command) -> Result<(), Error> {
    taken(doing, mend, command).map(|_| ())
}

/// The same, with its standard output given instead of shown.
pub fn output_of_step(
    doing: &str,
    mend: Option<&str>,
    command: &mut Command,
) -> Result<String, Error> {
    taken(doing, mend, command.stdout(Stdio::piped()))
}

fn taken(doing: &str, mend: Option<&str>, command: &mut Command) -> Result<String, Error> {
    say(doing);
    let start = Instant::now();
    let tool = command.get_program().to_string_lossy().into_owned();
    let failed = |status: String| Error::Failed {
        tool: tool.clone(),
        status,
        doing: doing.to_owned(),
        mend: mend.map(str::to_owned),
    };
    let ended = command
        .stdin(Stdio::null())
        .spawn()
        .and_then(Child::wait_with_output)
        .map_err(|error| failed(error.to_string()))?;
    if !ended.status.success() {
        return Err(failed(ended.status.to_string()));
    }
    let seconds = start.elapsed().as_secs();
    if seconds >= 2 {
        say(&format!("{doing}: done in {seconds} s"));
    }
    Ok(String::from_utf8_lossy(&ended.stdout).into_owned())
}

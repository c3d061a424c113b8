//! Standard output.

use std::io::{ErrorKind, Write};

/// Writes a text. A reader that has seen enough and left, as `head` does, is no error.
pub fn print(text: &str) -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() == ErrorKind::BrokenPipe => Ok(()),
        other => other,
    }
}

//! JSON Lines in, JSON Lines out: one answer a request, in the same order. The form is described in the crate's README and held by its
//! tests.

mod advice;
mod answer;
mod body;
mod controller;
mod json;
mod plan;
mod record;
mod refrigerants;
mod request;
mod wire_error;

use std::io::{BufRead, Write};

use winterset_profile::System;

use crate::error::Error;
pub use wire_error::WireError;

/// Answers every line until the input ends. A line that cannot be answered is answered by its error.
pub fn run(mut input: impl BufRead, mut output: impl Write) -> Result<(), Error> {
    let mut line = Vec::new();
    loop {
        line.clear();
        if input.read_until(b'\n', &mut line)? == 0 {
            return Ok(());
        }
        let text = line.trim_ascii();
        // An empty line asks nothing.
        if text.is_empty() {
            continue;
        }
        let answer = match request::read(text).and_then(answer::to) {
            Ok(answer) => answer,
            Err(error) => error.into_json(),
        };
        serde_json::to_writer(&mut output, &answer).map_err(std::io::Error::from)?;
        output.write_all(b"\n")?;
        output.flush()?;
    }
}

/// A saved record of its own, taken as strictly as one in a request.
pub fn system(text: &[u8]) -> Result<System, WireError> {
    record::read(&json::read(text)?)
}

type Outcome<T> = Result<T, WireError>;

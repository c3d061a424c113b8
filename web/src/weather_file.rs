//! Reads a weather file that a person picked, a piece at a time, so that the screen stays alive and the reading can be left.

use std::cell::Cell;
use std::rc::Rc;

use gloo_timers::future::TimeoutFuture;
use js_sys::Uint8Array;
use uom::si::f64::Time;
use wasm_bindgen_futures::JsFuture;
use web_sys::File;
use winterset_calc::weather::epw::{EpwError, Reader};
use winterset_profile::{NotAYear, WinterHours};

/// Bytes of a piece: some hundred rows, a few milliseconds of work on a phone.
const PIECE: f64 = 32_768.0;

/// Why a file gives no hours.
#[derive(Clone, Debug, PartialEq)]
pub enum FileError {
    /// The browser does not hand it out.
    Unreadable,
    /// It is no weather file, or a broken one.
    Epw(EpwError),
    /// It does not cover a year.
    NotAYear(Time),
}

impl From<EpwError> for FileError {
    fn from(error: EpwError) -> Self {
        Self::Epw(error)
    }
}

impl From<NotAYear> for FileError {
    fn from(error: NotAYear) -> Self {
        Self::NotAYear(error.covered)
    }
}

/// The hours in a file; `progress` hears how much is read, a share of one. Nothing once `gone` is set.
pub async fn read(
    file: File,
    gone: Rc<Cell<bool>>,
    progress: impl Fn(f64),
) -> Option<Result<WinterHours, FileError>> {
    let mut reader = Reader::new();
    let size = file.size();
    let mut at = 0.0;
    while at < size {
        let end = (at + PIECE).min(size);
        let bytes = piece(&file, at, end).await;
        // What the person does comes between two pieces.
        TimeoutFuture::new(0).await;
        if gone.get() {
            return None;
        }
        let taken = bytes.and_then(|bytes| Ok(reader.push_bytes(&bytes)?));
        if let Err(error) = taken {
            return Some(Err(error));
        }
        at = end;
        progress(at / size);
    }
    TimeoutFuture::new(0).await;
    if gone.get() {
        return None;
    }
    Some(counted(reader))
}

async fn piece(file: &File, from: f64, to: f64) -> Result<Vec<u8>, FileError> {
    let unreadable = |_| FileError::Unreadable;
    let slice = file.slice_with_f64_and_f64(from, to).map_err(unreadable)?;
    let buffer = JsFuture::from(slice.array_buffer())
        .await
        .map_err(unreadable)?;
    Ok(Uint8Array::new(&buffer).to_vec())
}

fn counted(reader: Reader) -> Result<WinterHours, FileError> {
    Ok(WinterHours::of(&reader.finish()?)?)
}

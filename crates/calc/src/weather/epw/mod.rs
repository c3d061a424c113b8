//! Reader of weather files in the open EPW format.
//!
//! A file is lines of cells parted by commas: a header that starts with `LOCATION` and ends with `DATA PERIODS`, then one row
//! an hour (or several, as `DATA PERIODS` says) with the dry-bulb temperature in column 7, relative humidity in 9, pressure in
//! 10 and wind speed in 22. Rows usually have 35 columns; 22 are enough here. A cell that is empty, or at or above its
//! missing code (99.9, 999, 999999, 999), holds nothing.
//!
//! Lines end in a line feed, with or without a carriage return. Text that is not UTF-8 is read as Latin-1, since place names
//! of older files are. The date cells are not read: hours are counted whatever their order.
//!
//! Source: EnergyPlus documentation, Auxiliary Programs: EPW data dictionary.

mod error;
mod header;
mod row;

use std::borrow::Cow;

pub use error::{Column, EpwError};

use super::{Location, Record, Weather};

/// What some editors put before the first character of UTF-8.
const BYTE_ORDER_MARK: &[u8] = b"\xef\xbb\xbf";

/// Longest line taken, in bytes; a usual header line has a few hundred.
const LONGEST_LINE: usize = 65_536;

/// Most lines of the header; the format has eight.
const HEADER_LINES: usize = 64;

/// Most rows: a leap year by the minute.
const MOST_ROWS: usize = 527_040;

/// Fewest hours with a temperature that say anything.
const FEWEST_HOURS: u32 = 24;

/// Reads a whole file.
///
/// # Errors
/// See [`EpwError`].
pub fn read(text: &str) -> Result<Weather, EpwError> {
    let mut reader = Reader::new();
    reader.push(text)?;
    reader.finish()
}

/// Reads a file piece by piece, so that a caller can show progress and stop between two pieces.
///
/// Pieces may end anywhere, in the middle of a line or of a character too. After an error every further call gives the same
/// error.
#[derive(Clone, Debug, Default)]
pub struct Reader {
    /// The start of a line whose end has not come yet.
    carry: Vec<u8>,
    line: usize,
    location: Option<Location>,
    records_per_hour: Option<u32>,
    records: Vec<Record>,
    failed: Option<EpwError>,
}

impl Reader {
    /// A reader at the start of a file.
    pub fn new() -> Self {
        Self::default()
    }

    /// Takes the next piece of text.
    ///
    /// # Errors
    /// See [`EpwError`].
    pub fn push(&mut self, text: &str) -> Result<(), EpwError> {
        self.push_bytes(text.as_bytes())
    }

    /// Takes the next piece of the file as it is stored.
    ///
    /// # Errors
    /// See [`EpwError`].
    pub fn push_bytes(&mut self, bytes: &[u8]) -> Result<(), EpwError> {
        if let Some(error) = &self.failed {
            return Err(error.clone());
        }
        let result = self.split(bytes);
        self.failed = result.as_ref().err().cloned();
        result
    }

    /// Rows of weather taken so far; a file usually has 8760.
    pub fn rows(&self) -> usize {
        self.records.len()
    }

    /// Where the file was made for, once its first line has been taken.
    pub fn location(&self) -> Option<&Location> {
        self.location.as_ref()
    }

    /// What was read, after the last piece.
    ///
    /// # Errors
    /// See [`EpwError`].
    pub fn finish(mut self) -> Result<Weather, EpwError> {
        if let Some(error) = self.failed {
            return Err(error);
        }
        let rest = std::mem::take(&mut self.carry);
        if !rest.is_empty() {
            self.take(&rest)?;
        }
        let Some(location) = self.location else {
            return Err(EpwError::NotALocation {
                line: self.line.max(1),
                found: String::new(),
            });
        };
        let Some(records_per_hour) = self.records_per_hour else {
            return Err(EpwError::NoDataPeriods { line: self.line });
        };
        let known = self.records.iter().filter(|row| row.dry_bulb.is_some());
        let hours = known.count() / records_per_hour as usize;
        if hours < FEWEST_HOURS as usize {
            return Err(EpwError::TooFewHours {
                found: u32::try_from(hours).unwrap_or(u32::MAX),
                needed: FEWEST_HOURS,
            });
        }
        Ok(Weather::new(location, records_per_hour, self.records))
    }

    fn split(&mut self, bytes: &[u8]) -> Result<(), EpwError> {
        let mut pieces = bytes.split(|byte| *byte == b'\n').peekable();
        while let Some(piece) = pieces.next() {
            if self.carry.len() + piece.len() > LONGEST_LINE {
                return Err(EpwError::LineTooLong {
                    line: self.line + 1,
                    longest: LONGEST_LINE,
                });
            }
            if pieces.peek().is_none() {
                self.carry.extend_from_slice(piece);
            } else if self.carry.is_empty() {
                self.take(piece)?;
            } else {
                let mut whole = std::mem::take(&mut self.carry);
                whole.extend_from_slice(piece);
                self.take(&whole)?;
            }
        }
        Ok(())
    }

    /// Takes one whole line.
    fn take(&mut self, bytes: &[u8]) -> Result<(), EpwError> {
        self.line += 1;
        let text = decoded(bytes.strip_prefix(BYTE_ORDER_MARK).unwrap_or(bytes));
        let line = text.trim();
        if line.is_empty() {
            return Ok(());
        }
        if self.records_per_hour.is_some() {
            return self.take_row(line);
        }
        if self.location.is_none() {
            self.location = Some(header::location(self.line, line)?);
        } else if let Some(cells) = header::data_periods(line) {
            self.records_per_hour = Some(header::records_per_hour(self.line, cells)?);
        } else if self.line >= HEADER_LINES {
            return Err(EpwError::NoDataPeriods { line: self.line });
        }
        Ok(())
    }

    fn take_row(&mut self, line: &str) -> Result<(), EpwError> {
        if self.records.len() >= MOST_ROWS {
            return Err(EpwError::TooManyRows {
                line: self.line,
                most: MOST_ROWS,
            });
        }
        self.records.push(row::record(self.line, line)?);
        Ok(())
    }
}

/// UTF-8, or else Latin-1, in which every byte is the character of its number.
fn decoded(bytes: &[u8]) -> Cow<'_, str> {
    match std::str::from_utf8(bytes) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => Cow::Owned(bytes.iter().copied().map(char::from).collect()),
    }
}

#[cfg(test)]
mod tests;

//! What stands round an answer that this phone can give.

/// The labels round the elevation that a phone gives, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct FromPhone {
    pub ask: &'static str,
    pub note: &'static str,
    pub asking: &'static str,
    pub filled: &'static str,
    /// Filled in, and how far the phone says it may be off.
    pub filled_within: fn(&str) -> String,
    pub no_altitude: &'static str,
    pub refused: &'static str,
    pub not_found: &'static str,
    pub unavailable: &'static str,
}

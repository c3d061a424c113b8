//! What stands on a printed plan alone.

/// The labels of a printed plan, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct Paper {
    pub print: &'static str,
    pub test_values: &'static str,
    /// With the name of the method.
    pub test_values_note: fn(&str) -> String,
    pub not_ready: &'static str,
    pub none: &'static str,
}

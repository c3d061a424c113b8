//! What stands round sending a system and receiving one: headings, buttons, short notes.

/// The labels round what is sent and what arrives, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct Sending {
    pub show_code: &'static str,
    pub hide_code: &'static str,
    /// The code in words, for who cannot see it; the system's name goes in.
    pub code: fn(&str) -> String,
    pub code_note: &'static str,
    /// Too long for a code; how many characters the link has and how many fit go in.
    pub code_too_long: fn(usize, usize) -> String,
    pub save_file: &'static str,
    pub file_note: &'static str,
    pub open_file: &'static str,
    pub open_file_note: &'static str,
    pub file_unreadable: &'static str,
    pub file_too_large: &'static str,
    pub file_holds_nothing: &'static str,
    pub differences: &'static str,
    /// Beside the system of this name.
    pub differences_note: fn(&str) -> String,
    pub same: &'static str,
    pub here: &'static str,
    pub arrived: &'static str,
    pub keep: &'static str,
    pub take: &'static str,
    /// The question over keeping and taking at a field.
    pub keep_or_take: fn(&str) -> String,
    pub merge: &'static str,
    pub save_apart: &'static str,
    pub no_answer: &'static str,
}

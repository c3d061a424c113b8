//! What stands round a site's weather file.

/// The labels round a site's weather file, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct WeatherLabels {
    pub head: &'static str,
    pub note: &'static str,
    pub choose: &'static str,
    pub choose_another: &'static str,
    pub reading: &'static str,
    pub cancel: &'static str,
    /// The place, which may have no name, and its design low.
    pub counted: fn(&str, &str) -> String,
    /// The design low as the site's low of so many systems.
    pub use_low: fn(&str, usize) -> String,
    pub use_low_question: &'static str,
    pub low_used: &'static str,
    /// The design low, offered where the site's low of one system is asked for.
    pub offer: fn(&str) -> String,
    pub remove: &'static str,
    pub remove_question: &'static str,
    pub unreadable: &'static str,
    /// The hours that a file covers which is no year.
    pub not_a_year: fn(&str) -> String,
    /// What the methods are compared over, by the place.
    pub methods_note: fn(&str) -> String,
}

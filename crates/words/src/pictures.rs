//! What stands round the pictures of a plan: a second method beside the first, what a curve reads, the diagram of the cycle.

/// The labels round the pictures of a plan, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct Pictures {
    /// Which method stands beside the first on the ladder.
    pub beside: &'static str,
    /// No method beside it.
    pub beside_none: &'static str,
    /// A method at a rung, after the outdoor temperature has been said: method, fan, head pressure, whether it holds.
    pub beside_at: fn(&str, &str, &str, bool) -> String,
    /// A rung with two methods: outdoor temperature, and each method in a sentence.
    pub both_at: fn(&str, &str, &str) -> String,
    pub value: &'static str,
    /// Stands for a value that a method does not have.
    pub no_value: &'static str,

    /// The marker on the curves.
    pub marker: &'static str,
    pub marker_note: &'static str,
    /// Where the curves are read: an outdoor temperature.
    pub read_at: fn(&str) -> String,
    /// What is read of one method: head pressure, share of fan speed or time.
    pub reads: fn(&str, &str) -> String,
}

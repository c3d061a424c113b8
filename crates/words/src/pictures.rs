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
    /// Head pressure against the need, and how it stands.
    pub against: &'static str,
    pub holds: &'static str,
    pub falls_short: &'static str,
    /// Stands for a value that a method does not have.
    pub no_value: &'static str,

    /// The marker on the curves.
    pub marker: &'static str,
    pub marker_note: &'static str,
    /// Where the curves are read: an outdoor temperature.
    pub read_at: fn(&str) -> String,
    /// What is read of one method: head pressure, share of fan speed or time.
    pub reads: fn(&str, &str) -> String,

    pub diagram: &'static str,
    pub diagram_note: &'static str,
    pub enthalpy: &'static str,
    /// Pressure along a logarithmic scale, in a unit.
    pub logarithmic: fn(&str) -> String,
    pub dome: &'static str,
    pub cycle: &'static str,
    pub state: &'static str,
    pub known: &'static str,
    pub low: &'static str,
    /// The known point at an outdoor temperature.
    pub known_at: fn(&str) -> String,
    /// The site's low at an outdoor temperature, under a method.
    pub low_at: fn(&str, &str) -> String,
    /// The states of the cycle in its order, from the compressor's inlet.
    pub states: [&'static str; 4],
    /// A cycle in a sentence: which one, suction pressure, head pressure, temperature at the compressor's outlet.
    pub cycle_in_words: fn(&str, &str, &str, &str) -> String,
    /// A cycle that cannot be drawn since the compressor stands: which one.
    pub no_cycle: fn(&str) -> String,
}

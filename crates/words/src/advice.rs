//! What stands round the advice of a plan: headings and short notes.

/// The labels round what follows from a plan, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct Advice {
    pub methods: &'static str,
    pub methods_note: &'static str,
    /// Where the person stopped the comparison on its way.
    pub stopped: &'static str,
    /// The way to have it after all.
    pub work_out: &'static str,
    pub hold_limit: &'static str,
    pub holds: &'static str,
    pub falls_short: &'static str,
    pub starts_an_hour: &'static str,
    pub fan_energy: &'static str,
    pub compressor_energy: &'static str,
    pub recommended: &'static str,
    pub lowers_need: &'static str,
    pub nothing_lowers: &'static str,
    /// The need and the hold limit of speed control with a change made.
    pub with_it: fn(&str, &str) -> String,
    pub order: &'static str,
    pub nothing_to_order: &'static str,
    pub sensor_place: &'static str,
    pub place_does: &'static str,
    pub winter_start: &'static str,
    pub fan_motor: &'static str,
    pub compressor_off: &'static str,
    pub accuracy: &'static str,
    /// A method, and the span of its hold limit to both sides.
    pub give_or_take: fn(&str, &str) -> String,
    pub shared_bank: &'static str,
    pub shared_note: &'static str,
    /// Said where fewer than two of the systems come to a plan.
    pub two_plans: &'static str,
    pub first_circuit: &'static str,
    pub second_circuit: &'static str,
    /// Outdoor temperature, the circuit that leads, the fans' speed, and the other circuit with its head pressure.
    pub shared_rung: fn(&str, &str, &str, &str, &str) -> String,
    pub drawn_down: &'static str,
    /// The question whose answer narrows the span most.
    pub measure_first: fn(&str) -> String,
}

/// A part to order as written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ordered {
    /// What it is.
    pub name: String,
    /// What it must be able to do, or how much of it.
    pub value: String,
}

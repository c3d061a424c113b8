//! Round the pictures of a plan.

use crate::pictures::Pictures;

pub(super) const PICTURES: Pictures = Pictures {
    beside: "Beside it",
    beside_none: "No other method",
    beside_at: |method, fan, head, holds| {
        let against = if holds { "holds" } else { "below the need" };
        format!("{method}: fan {fan}, head pressure {head}, {against}.")
    },
    both_at: |outdoor, first, second| format!("At {outdoor}. {first} {second}"),
    against: "against the need",
    holds: "holds",
    falls_short: "below the need",
    no_value: "none",

    marker: "Marker, outdoor temperature",
    marker_note: "Touch a curve to read it, or move the marker with the arrow keys.",
    read_at: |outdoor| format!("At {outdoor}"),
    reads: |head, fan| format!("{head}, fan {fan}"),

    diagram: "Pressure-enthalpy diagram",
    diagram_note: "One round of the refrigerant, from 1 through the compressor, the condenser, the metering device and the evaporator. Touch a point to read it. Enthalpy is counted from liquid at 0 °C (32 °F), which has 200 kJ/kg (86 Btu/lb).",
    enthalpy: "Enthalpy",
    logarithmic: |unit| format!("Pressure, {unit}, logarithmic"),
    dome: "two phases",
    cycle: "Cycle",
    state: "Point of the cycle",
    known: "Known point",
    low: "Site's low",
    known_at: |outdoor| format!("Known point, {outdoor} outdoors"),
    low_at: |outdoor, method| format!("Site's low, {outdoor} outdoors, {}", method.to_lowercase()),
    states: [
        "Compressor inlet",
        "Compressor outlet",
        "Condenser outlet",
        "Evaporator inlet",
    ],
    cycle_in_words: |cycle, suction, head, discharge| {
        format!(
            "{cycle}: evaporates at {suction}, condenses at {head}, and leaves the compressor at {discharge}."
        )
    },
    no_cycle: |cycle| {
        format!("{cycle}: low pressure has stopped the compressor, so there is no cycle to draw.")
    },
};

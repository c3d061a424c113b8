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
    value: "Value",
    no_value: "none",

    marker: "Marker, outdoor temperature",
    marker_note: "Touch a curve to read it, or move the marker with the arrow keys.",
    read_at: |outdoor| format!("At {outdoor}"),
    reads: |head, fan| format!("{head}, fan {fan}"),
};

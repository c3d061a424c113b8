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
};

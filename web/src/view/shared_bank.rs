//! Two circuits of a site on one fan bank, in sentences.

use winterset_calc::advice::{Leads, SharedBank};
use winterset_calc::{Plan, Quantity};
use winterset_words::Units;

use super::outdoor::Outdoor;
use super::sheet::Writer;
use super::words;

/// What comes of both at one outdoor temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// In a sentence.
    pub sentence: String,
    /// Whether the circuit that does not lead is drawn below its need.
    pub draws_down: bool,
}

/// Both circuits along outdoor temperature, each plan with its name. Where one has no answer a rung is left out.
pub fn lines(first: (&Plan, &str), second: (&Plan, &str), units: Units) -> Vec<Line> {
    let bank = SharedBank {
        first: first.0,
        second: second.0,
    };
    let rungs = Outdoor::of(first.0, units).rungs();
    rungs
        .into_iter()
        .filter_map(|outdoor| {
            let shared = bank.at(outdoor).ok()?;
            let (leader, other) = match shared.leads {
                Leads::First => (first, second),
                Leads::Second => (second, first),
            };
            let writer = Writer::new(other.0, units);
            let show = |quantity| writer.show(quantity).to_string();
            Some(Line {
                sentence: (words().advice().shared_rung)(
                    &writer.brief(outdoor),
                    leader.1,
                    &show(Quantity::Ratio(shared.fan_speed_fraction)),
                    other.1,
                    &show(Quantity::Pressure(shared.other().0.pressure)),
                ),
                draws_down: shared.draws_other_down(),
            })
        })
        .collect()
}

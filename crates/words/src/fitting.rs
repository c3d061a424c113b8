//! What is said about fitting and wiring a method, whatever the language.

use winterset_calc::fitting::{Arrangement, Fans, Item, Part, Work};

use crate::units::Units;

/// The labels round fitting and wiring, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct FittingLabels {
    pub fit: &'static str,
    pub note: &'static str,
    pub arrangement: &'static str,
    /// Where nothing is fitted.
    pub nothing: &'static str,
    /// A step by its number and how many there are.
    pub step: fn(usize, usize) -> String,
    /// The sketch of the refrigerant's side.
    pub places: &'static str,
    /// The sketch of the wiring.
    pub wiring: &'static str,
    pub in_words: &'static str,
    /// What the sketch of the refrigerant's side shows, from its list.
    pub shown: fn(&str) -> String,
    /// What the current passes, from its list.
    pub passes: fn(&str) -> String,
    /// What steers a part, from its list.
    pub steered: fn(&str, &str) -> String,
    /// The motors that are switched ahead of a part, and what closes their contactor, from its list.
    pub switched: fn(&str, &str, &str) -> String,
    /// The part that gives the motor a signal, while the motor stays on its full supply.
    pub beside: fn(&str) -> String,
    /// The motor keeps its run capacitor.
    pub capacitor_stays: &'static str,
    pub defers: &'static str,
}

/// Everything that is said about fitting and wiring in one language.
pub trait FittingWords: Sync {
    /// The labels.
    fn labels(&self) -> &'static FittingLabels;
    /// An arrangement.
    fn arrangement(&self, arrangement: Arrangement) -> &'static str;
    /// A part of the wiring, small, as it stands beside a sketch.
    fn part(&self, part: Part, fans: Fans) -> String;
    /// A thing on the refrigerant's side, small, as it stands beside a sketch.
    fn item(&self, item: Item) -> String;
    /// What is done at a step, in a few words.
    fn work(&self, work: Work) -> &'static str;
    /// How it is done, in sentences.
    fn how(&self, work: Work, units: Units) -> String;
}

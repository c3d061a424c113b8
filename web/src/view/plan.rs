//! The plan of a record, made once for the same answers whoever asks.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use winterset_calc::{Field, Plan, Quantity};
use winterset_profile::{Entry, FieldError, Problem, System};
use winterset_words::{Shown, Units, screen};

use super::words;

/// A plan, or every field that stands in its way.
pub type Planned = Rc<Result<Plan, Vec<FieldError>>>;

/// Answers with the plan they led to.
type Made = (BTreeMap<String, Entry>, Planned);

/// Plans kept at hand: those of the systems on one screen, and the one being edited.
const KEPT: usize = 12;

thread_local! {
    static MADE: RefCell<Vec<Made>> = const { RefCell::new(Vec::new()) };
}

/// The plan of a system. The same answers are planned once, so that a name typed or a screen turned costs nothing.
pub fn of(system: &System) -> Planned {
    MADE.with_borrow_mut(|made| {
        let at_hand = made
            .iter()
            .position(|(entries, _)| *entries == system.entries);
        let (entries, planned) = match at_hand {
            Some(index) => made.remove(index),
            None => (system.entries.clone(), Rc::new(system.plan())),
        };
        made.insert(0, (entries, planned.clone()));
        made.truncate(KEPT);
        planned
    })
}

/// The plan of a system where it was made before, or costs no more than reading the answers because one of them is missing or wrong.
pub fn at_hand(system: &System) -> Option<Planned> {
    let made = MADE.with_borrow(|made| {
        let same = made.iter().find(|(entries, _)| *entries == system.entries);
        same.map(|(_, planned)| planned.clone())
    });
    made.or_else(|| Some(Rc::new(Err(system.read().err()?))))
}

/// What is wrong at one field, in a sentence; a field that merely waits for its first answer is not wrong yet.
pub fn error_at(system: &System, planned: &Planned, field: Field, units: Units) -> Option<String> {
    let errors = planned.as_ref().as_ref().err()?;
    let error = errors.iter().find(|error| error.field == field)?;
    if error.problem == Problem::Missing && system.entries.is_empty() {
        return None;
    }
    Some(words().problem(field, &error.problem, units))
}

/// What a plan says in a few words, or that there is none yet.
pub fn headline(system: &System, units: Units) -> String {
    said(&of(system), units)
}

/// The same of a plan that is at hand.
pub fn said(planned: &Planned, units: Units) -> String {
    match planned.as_ref() {
        Ok(plan) => words().verdict(plan.verdict, plan, units),
        Err(errors) => (screen().planless_for)(errors.len()),
    }
}

/// The one strong number of a plan: the hold limit that its verdict speaks of.
pub fn strong_number(plan: &Plan, units: Units) -> Shown {
    units.brief(
        &Quantity::Temperature(plan.verdict.limit()),
        plan.atmosphere.value,
    )
}

/// A plan that a component holds: the same one as long as it is not made anew.
#[derive(Clone)]
pub struct Held(pub Planned);

impl PartialEq for Held {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

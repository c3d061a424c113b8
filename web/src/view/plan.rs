//! The plan of a record, made once for the same answers whoever asks, and what it says in a few words.

use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::rc::Rc;
use std::thread::LocalKey;

use winterset_calc::{Field, InputError, Plan, Planning, Quantity};
use winterset_profile::{Entry, FieldError, Problem, System};
use winterset_words::{Shown, Units, screen};

use super::words;
use crate::components::made::{Kept, Making};

/// A plan, or every field that stands in its way.
pub type Planned = Rc<Result<Plan, Vec<FieldError>>>;

/// The answers that a plan is made from: a name typed or a screen turned costs nothing.
#[derive(Clone, Default, PartialEq)]
pub struct Answers(BTreeMap<String, Entry>);

impl Answers {
    /// Those of a system.
    pub fn of(system: &System) -> Self {
        Self(system.entries.clone())
    }

    fn read(&self) -> Result<Planning, Vec<FieldError>> {
        let mut system = System::new("", "");
        system.entries.clone_from(&self.0);
        system.read().map(Planning::of)
    }
}

thread_local! {
    static MADE: Kept<Answers> = const { Kept::most(12) };
}

impl Making for Answers {
    type Made = Planned;

    fn kept() -> &'static LocalKey<Kept<Self>> {
        &MADE
    }

    fn begin(&self) -> impl FnMut() -> ControlFlow<Planned> + 'static {
        let mut read = self.read();
        move || match &mut read {
            Ok(planning) => match planning.step() {
                ControlFlow::Continue(()) => ControlFlow::Continue(()),
                ControlFlow::Break(made) => ControlFlow::Break(Rc::new(made.map_err(named))),
            },
            Err(errors) => ControlFlow::Break(Rc::new(Err(std::mem::take(errors)))),
        }
    }

    /// What is missing or wrong is found by reading alone.
    fn at_hand(&self) -> Option<Planned> {
        MADE.with(|kept| kept.find(self))
            .or_else(|| Some(Rc::new(Err(self.read().err()?))))
    }
}

fn named(errors: Vec<InputError>) -> Vec<FieldError> {
    errors.into_iter().map(FieldError::from).collect()
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

/// What a plan says in a few words, or why there is none yet.
pub fn said(planned: Option<&Planned>, units: Units) -> String {
    match planned.map(AsRef::as_ref) {
        Some(Ok(plan)) => words().verdict(plan.verdict, plan, units),
        Some(Err(errors)) => (screen().planless_for)(errors.len()),
        None => screen().working_out.to_owned(),
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

impl Held {
    /// The plan, where there is one.
    pub fn plan(&self) -> Option<&Plan> {
        self.0.as_ref().as_ref().ok()
    }
}

impl PartialEq for Held {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

//! Two circuits of a site on one fan bank, in sentences.

use std::ops::ControlFlow;
use std::rc::Rc;
use std::thread::LocalKey;

use uom::si::f64::ThermodynamicTemperature;
use winterset_calc::advice::{Leads, SharedBank};
use winterset_calc::{Plan, Quantity};
use winterset_words::{Language, Units};
use yew::AttrValue;

use super::outdoor::Outdoor;
use super::plan::{Answers, Held, Planned};
use super::sheet::Writer;
use super::words;
use crate::components::made::{Kept, Making};

/// The plans of some systems, in their order.
#[derive(Clone, PartialEq)]
pub struct Plans(pub Vec<Answers>);

thread_local! {
    static PLANS: Kept<Plans> = const { Kept::most(1) };
    static LINES: Kept<Bank> = const { Kept::most(1) };
}

impl Making for Plans {
    type Made = Rc<[Planned]>;

    fn kept() -> &'static LocalKey<Kept<Self>> {
        &PLANS
    }

    fn begin(&self) -> impl FnMut() -> ControlFlow<Self::Made> + 'static {
        let mut next = self.0.clone().into_iter();
        let mut made = Vec::new();
        let mut planning: Option<Box<dyn FnMut() -> ControlFlow<Planned>>> = None;
        move || {
            if let Some(step) = &mut planning {
                if let ControlFlow::Break(planned) = step() {
                    made.push(planned);
                    planning = None;
                }
                return ControlFlow::Continue(());
            }
            let Some(answers) = next.next() else {
                return ControlFlow::Break(std::mem::take(&mut made).into());
            };
            match answers.at_hand() {
                Some(planned) => made.push(planned),
                None => planning = Some(Box::new(answers.begin())),
            }
            ControlFlow::Continue(())
        }
    }
}

/// One of the two circuits.
#[derive(Clone, PartialEq)]
pub struct Circuit {
    /// Its plan.
    pub plan: Held,
    /// Its name.
    pub name: AttrValue,
}

/// What comes of both at one outdoor temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// In a sentence.
    pub sentence: String,
    /// Whether the circuit that does not lead is drawn below its need.
    pub draws_down: bool,
}

/// Two circuits on one bank, to be followed along outdoor temperature.
#[derive(Clone, PartialEq)]
pub struct Bank {
    /// The one.
    pub first: Circuit,
    /// The other.
    pub second: Circuit,
    /// Units to write in.
    pub units: Units,
    /// Language to write in.
    pub language: Language,
}

impl Making for Bank {
    type Made = Rc<[Line]>;

    fn kept() -> &'static LocalKey<Kept<Self>> {
        &LINES
    }

    /// A step a rung; where one circuit has no answer a rung is left out.
    fn begin(&self) -> impl FnMut() -> ControlFlow<Self::Made> + 'static {
        let bank = self.clone();
        let first = bank.first.plan.plan();
        let rungs = first.map(|plan| Outdoor::of(plan, bank.units).rungs());
        let mut rungs = rungs.into_iter().flatten();
        let mut lines = Vec::new();
        move || match (rungs.next(), bank.plans()) {
            (Some(outdoor), Some(plans)) => {
                lines.extend(bank.line(plans, outdoor));
                ControlFlow::Continue(())
            }
            _ => ControlFlow::Break(std::mem::take(&mut lines).into()),
        }
    }
}

impl Bank {
    fn plans(&self) -> Option<(&Plan, &Plan)> {
        Some((self.first.plan.plan()?, self.second.plan.plan()?))
    }

    fn line(
        &self,
        (first, second): (&Plan, &Plan),
        outdoor: ThermodynamicTemperature,
    ) -> Option<Line> {
        let shared = SharedBank { first, second }.at(outdoor).ok()?;
        let (leader, other, plan) = match shared.leads {
            Leads::First => (&self.first.name, &self.second.name, second),
            Leads::Second => (&self.second.name, &self.first.name, first),
        };
        let writer = Writer::new(plan, self.units);
        let show = |quantity| writer.show(quantity).to_string();
        Some(Line {
            sentence: (words().advice().shared_rung)(
                &writer.brief(outdoor),
                leader,
                &show(Quantity::Ratio(shared.fan_speed_fraction)),
                other,
                &show(Quantity::Pressure(shared.other().0.pressure)),
            ),
            draws_down: shared.draws_other_down(),
        })
    }
}

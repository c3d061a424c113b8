//! How a method is fitted and wired, written and drawn.

use winterset_calc::fitting::{Arrangement, Choice, CoilPlace, Control, Fitting, Item, Part, Work};
use winterset_calc::{Field, Method, Plan};
use winterset_words::Units;
use yew::AttrValue;

use super::sheet::Writer;
use super::words;
use crate::components::sheet::Line;
use crate::components::sketches::{self, Drawing};
use crate::store::Fitted;

/// A drawing with what it says.
#[derive(Clone, Debug, PartialEq)]
pub struct Sketch {
    /// Stable name.
    pub name: AttrValue,
    /// What it is a sketch of.
    pub title: AttrValue,
    /// The same in sentences.
    pub says: AttrValue,
    /// The drawing.
    pub drawing: Drawing,
}

/// A step of the work, written.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Its number and how many there are.
    pub number: String,
    /// What is done.
    pub name: &'static str,
    /// How, in sentences.
    pub how: String,
    /// What can hurt, and what to do about it: title and text.
    pub cautions: Vec<(&'static str, &'static str)>,
    /// What it is shown by.
    pub sketch: Option<Sketch>,
    /// The values of the plan that are entered at it.
    pub values: Vec<Line>,
    /// Whether it waits for an answer of the inputs.
    pub waits: Option<Field>,
}

/// What is fitted: what a person chose, else what the plan speaks for. A method that this system cannot have is not taken.
pub fn choice(plan: &Plan, fitted: Option<&Fitted>) -> Choice {
    let usual = Choice::of(plan);
    let Some(fitted) = fitted else { return usual };
    Choice {
        method: Method::from_key(&fitted.method)
            .filter(|method| plan.applies(*method))
            .unwrap_or(usual.method),
        arrangement: Arrangement::from_key(&fitted.arrangement).unwrap_or(usual.arrangement),
    }
}

/// Writes one fitting.
pub struct Scribe<'a> {
    plan: &'a Plan,
    fitting: Fitting,
    units: Units,
}

impl<'a> Scribe<'a> {
    /// What is said of a choice.
    pub fn new(plan: &'a Plan, choice: Choice, units: Units) -> Self {
        Self {
            plan,
            fitting: plan.fitting(choice),
            units,
        }
    }

    /// The steps in their order, each sketch at the first step that it serves.
    pub fn steps(&self) -> Vec<Step> {
        let steps = &self.fitting.steps;
        let first = |serves: fn(&Work) -> bool| steps.iter().position(|step| serves(&step.work));
        let circuit = first(|work| {
            matches!(
                work,
                Work::FitFlooding
                    | Work::FitBaffle
                    | Work::StrapSensor(_)
                    | Work::FitTransducer
                    | Work::FitSwitches(_)
            )
        });
        let wiring = first(|work| matches!(work, Work::Wire(..)));
        steps
            .iter()
            .enumerate()
            .map(|(index, step)| Step {
                number: (words().fitting().labels().step)(index + 1, steps.len()),
                name: words().fitting().work(step.work),
                how: words().fitting().how(step.work, self.units),
                cautions: step
                    .cautions
                    .iter()
                    .map(|caution| words().caution(*caution))
                    .map(|said| (said.title, said.text))
                    .collect(),
                sketch: if Some(index) == circuit {
                    Some(self.circuit())
                } else if Some(index) == wiring {
                    self.wiring()
                } else {
                    None
                },
                values: self.values(step.work),
                waits: match step.work {
                    Work::WireReversingValve { valve: None, .. } => Some(Field::ReversingValve),
                    Work::StrapSensor(CoilPlace::Nowhere) => Some(Field::Sensing),
                    _ => None,
                },
            })
            .collect()
    }

    /// Both sketches; none where nothing is fitted.
    pub fn sketches(&self) -> Vec<Sketch> {
        if self.fitting.steps.is_empty() {
            return Vec::new();
        }
        [Some(self.circuit()), self.wiring()]
            .into_iter()
            .flatten()
            .collect()
    }

    fn values(&self, work: Work) -> Vec<Line> {
        let writer = Writer::new(self.plan, self.units);
        match work {
            Work::EnterValues => writer
                .settings()
                .into_iter()
                .flat_map(|step| step.lines)
                // What is sensed, and what is wired, has had its own step.
                .filter(|line| line.working.is_some())
                .collect(),
            Work::SetSwitches if self.fitting.control == Control::Staged => writer.stages(),
            Work::SetSwitches => vec![writer.on_off()],
            _ => Vec::new(),
        }
    }

    fn circuit(&self) -> Sketch {
        let t = words().fitting().labels();
        let fans = self.plan.input.fans.value;
        let item = |item: Item| words().fitting().item(item);
        let circuit = &self.fitting.circuit;
        Sketch {
            name: "circuit".into(),
            title: t.places.into(),
            says: (t.shown)(&listed(circuit.items(fans).into_iter().map(item))).into(),
            drawing: sketches::circuit(circuit, fans, item),
        }
    }

    fn wiring(&self) -> Option<Sketch> {
        let t = words().fitting().labels();
        let wiring = self.fitting.wiring.as_ref()?;
        let fans = wiring.fans;
        let part = |part: &Part| words().fitting().part(*part, fans);
        let hub = part(&wiring.hub);
        let passed = wiring.line.iter();
        let passed = passed.filter(|part| **part != Part::SwitchedMotors);
        let sentences = [
            Some((t.passes)(&listed(passed.map(part)))),
            wiring.hub_is_beside().then(|| (t.beside)(&hub)),
            (!wiring.switches.is_empty()).then(|| {
                let switches = listed(wiring.switches.iter().map(part));
                (t.switched)(&part(&Part::SwitchedMotors), &hub, &switches)
            }),
            Some((t.steered)(&hub, &listed(wiring.signals.iter().map(part)))),
            wiring.has_capacitor.then(|| t.capacitor_stays.to_owned()),
        ];
        Some(Sketch {
            name: "wiring".into(),
            title: t.wiring.into(),
            says: sentences
                .into_iter()
                .flatten()
                .collect::<Vec<_>>()
                .join(" ")
                .into(),
            drawing: sketches::wiring(wiring, |one, fans| words().fitting().part(one, fans)),
        })
    }
}

/// Names one after another. They may hold commas of their own.
fn listed(names: impl Iterator<Item = String>) -> String {
    names.collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use winterset_profile::System;

    fn planned(text: &str) -> Plan {
        System::from_json(text).unwrap().plan().unwrap()
    }

    #[test]
    fn each_sketch_stands_at_one_step() {
        for text in [
            include_str!("../../../tests/systems/archive-vault.json"),
            include_str!("../../../tests/systems/brewery-cellar.json"),
            include_str!("../../../tests/systems/flower-cooler.json"),
            include_str!("../../../tests/systems/radio-hut.json"),
        ] {
            let plan = planned(text);
            let scribe = Scribe::new(&plan, Choice::of(&plan), Units::default());
            let steps = scribe.steps();
            let drawn: Vec<_> = steps
                .iter()
                .filter_map(|step| step.sketch.clone())
                .collect();
            assert_eq!(drawn, scribe.sketches());
        }
    }

    #[test]
    fn what_was_chosen_for_another_system_is_not_taken() {
        let plan = planned(include_str!("../../../tests/systems/radio-hut.json"));
        let fitted = |method: &str, arrangement: &str| Fitted {
            method: method.to_owned(),
            arrangement: arrangement.to_owned(),
        };
        let usual = Choice::of(&plan);
        assert_eq!(choice(&plan, None), usual);
        // One fan is not staged.
        assert_eq!(choice(&plan, Some(&fitted("staged", "x"))), usual);
        let chosen = choice(&plan, Some(&fitted("on_off", "heat-pump")));
        assert_eq!(
            (chosen.method, chosen.arrangement),
            (Method::OnOff, Arrangement::HeatPump)
        );
    }
}

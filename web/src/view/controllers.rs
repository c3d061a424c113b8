//! A technician's own controllers: their limits as questions, and how the settings sheet of a plan stands to them.

use uom::si::f64::Pressure;
use winterset_calc::own_controller::{MotorOutput, Safety};
use winterset_calc::{Plan, air};
use winterset_profile::{Controller, ControllerField, Entry, Scale};
use winterset_words::{Units, symbol_of};
use yew::AttrValue;

use super::words;
use crate::components::field::{Choice, Round};

/// The limits in sections, each under its head.
pub fn sections() -> [(&'static str, &'static [ControllerField]); 4] {
    use ControllerField as F;
    let t = words().controllers().labels();
    [
        (
            t.pressure_input,
            &[
                F::PressurePointLowest,
                F::PressurePointHighest,
                F::PressureRangeLowest,
                F::PressureRangeHighest,
            ],
        ),
        (
            t.temperature_input,
            &[
                F::TemperaturePointLowest,
                F::TemperaturePointHighest,
                F::TemperatureRangeLowest,
                F::TemperatureRangeHighest,
            ],
        ),
        (
            t.settings,
            &[
                F::MinimumOutputLowest,
                F::MinimumOutputHighest,
                F::StartBoostLowest,
                F::StartBoostHighest,
            ],
        ),
        (
            t.supply,
            &[F::SupplyLowest, F::SupplyHighest, F::RatedCurrent],
        ),
    ]
}

/// The kinds of motor output.
pub fn outputs() -> Vec<Choice> {
    MotorOutput::ALL
        .into_iter()
        .map(|output| {
            (
                output.key().into(),
                words().controllers().output(output).into(),
            )
        })
        .collect()
}

/// What gauge pressure stands on while a limit is typed, before any plan tells where: sea level.
fn sea_level() -> Pressure {
    air::atmosphere(Default::default())
}

/// A limit as it stands on the screen.
pub struct Limit {
    /// What stands round it.
    pub round: Round,
    /// The answer as typed.
    pub typed: AttrValue,
    /// The unit beside it.
    pub unit: AttrValue,
    /// The units that can stand there.
    pub units: Vec<Choice>,
    /// Whether values below zero make sense.
    pub signed: bool,
}

/// The limits of a controller, in the order of [`ControllerField::ALL`].
pub fn limits(controller: &Controller, units: Units) -> Vec<(ControllerField, Limit)> {
    let (_, wrong) = controller.read(sea_level());
    ControllerField::ALL
        .iter()
        .map(|field| {
            let scale = scale(controller, *field, units);
            let said = words().controllers();
            let wrong = wrong.iter().find(|wrong| wrong.field == *field);
            let error = wrong.map(|wrong| said.problem(&wrong.problem, scale, sea_level()));
            let around = said.field(*field);
            let round = Round {
                key: field.key().into(),
                ask: around.ask.into(),
                help: Some(around.help.into()),
                error: error.map(AttrValue::from),
                ..Round::default()
            };
            let typed = controller.entry(*field).map(|entry| entry.typed.clone());
            let scales = field.measure().scales().iter();
            let limit = Limit {
                round,
                typed: typed.unwrap_or_default().into(),
                unit: scale.token().into(),
                units: scales
                    .map(|scale| (scale.token().into(), symbol_of(*scale).into()))
                    .collect(),
                signed: *field == ControllerField::TemperaturePointLowest,
            };
            (*field, limit)
        })
        .collect()
}

/// The unit beside a limit: the one that it was given in, else the person's own.
fn scale(controller: &Controller, field: ControllerField, units: Units) -> Scale {
    let token = controller
        .entry(field)
        .and_then(|entry| entry.unit.as_deref());
    token
        .and_then(|token| field.measure().scale(token))
        .unwrap_or_else(|| units.scale(field.measure()))
}

/// How many limits a controller has, or how many of them are wrong.
pub fn headline(controller: &Controller) -> String {
    let t = words().controllers().labels();
    let (_, wrong) = controller.read(sea_level());
    if !wrong.is_empty() {
        return (t.wrong)(wrong.len());
    }
    let typed = controller
        .entries
        .values()
        .filter(|entry| !Entry::is_blank(entry));
    (t.count)(typed.count() + usize::from(!controller.output.is_empty()))
}

/// One setting against the controller, written.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// Stable name of the setting.
    pub key: &'static str,
    /// The setting.
    pub name: &'static str,
    /// Whether it is safe, by its stable name.
    pub safety: &'static str,
    /// The same in a word.
    pub word: &'static str,
    /// How it stands, and what comes of it.
    pub said: String,
}

/// A settings sheet against a controller, written.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// Whether the system may run so, by its stable name.
    pub safety: &'static str,
    /// The same in a sentence.
    pub whole: &'static str,
    /// Limits that count as not stated because they are wrong, in a sentence.
    pub wrong: Option<String>,
    /// Each setting.
    pub found: Vec<Found>,
}

/// The settings sheet of a plan against a controller.
pub fn checked(plan: &Plan, controller: &Controller, units: Units) -> Checked {
    let said = words().controllers();
    let atmosphere = plan.atmosphere.value;
    let (own, wrong) = controller.read(atmosphere);
    let findings = own.check(&plan.wanted());
    let worst = findings.iter().map(|finding| finding.safety()).max();
    let worst = worst.unwrap_or(Safety::Safe);
    Checked {
        safety: worst.key(),
        whole: said.whole(worst),
        wrong: (!wrong.is_empty()).then(|| (said.labels().limits_wrong)(wrong.len())),
        found: findings
            .iter()
            .map(|finding| Found {
                key: finding.setting.key(),
                name: said.setting(finding.setting),
                safety: finding.safety().key(),
                word: said.safety(finding.safety()),
                said: said.finding(finding, units, atmosphere),
            })
            .collect(),
    }
}

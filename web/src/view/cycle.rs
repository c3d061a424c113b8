//! The cycle of a plan on a diagram of pressure and enthalpy: at the known point, and at the site's low under the recommended method.

use std::ops::ControlFlow;
use std::rc::Rc;
use std::thread::LocalKey;

use uom::si::f64::{AvailableEnergy, Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use winterset_calc::{Cycle, Plan, Quantity};
use winterset_profile::Kind;
use winterset_words::{Units, mark, screen};

use super::ladder::pressure_unit;
use super::plan::Held;
use super::sheet::Writer;
use super::words;
use crate::components::diagram::{DiagramProps, Round};
use crate::components::made::{Kept, Making};
use crate::components::scale::Scale;

/// Pressures at which the dome is found; more of them towards its top, where it bends.
const PRESSURES: u32 = 48;

/// How far below the lowest suction pressure the dome begins, as a ratio.
const BELOW: f64 = 0.7;

/// How far above the dome the drawing ends, as a ratio.
const ABOVE: f64 = 1.15;

/// Room to the left and the right of everything, as a share of its width.
const MARGIN: f64 = 0.08;

/// One state of a cycle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    /// Absolute pressure.
    pub pressure: Pressure,
    /// Temperature; nothing where the refrigerant has no answer.
    pub temperature: Option<ThermodynamicTemperature>,
    /// Specific enthalpy.
    pub enthalpy: AvailableEnergy,
}

/// Everything on the diagram, in SI.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// Pressure, and enthalpy of saturated liquid and saturated vapour.
    dome: Vec<(Pressure, AvailableEnergy, AvailableEnergy)>,
    /// The four states at the known point.
    known: [State; 4],
    /// The four states at the site's low; nothing where the compressor stands.
    low: Option<[State; 4]>,
}

/// A plan whose cycle is to be drawn.
#[derive(Clone, PartialEq)]
pub struct ToDraft(pub Held);

thread_local! {
    static DRAWN: Kept<ToDraft> = const { Kept::most(1) };
}

impl Making for ToDraft {
    /// Nothing where there is no plan.
    type Made = Option<Rc<Drawn>>;

    fn kept() -> &'static LocalKey<Kept<Self>> {
        &DRAWN
    }

    fn begin(&self) -> impl FnMut() -> ControlFlow<Self::Made> + 'static {
        let held = self.0.clone();
        let mut drafting = held.plan().map(Drafting::of);
        move || match (&mut drafting, held.plan()) {
            (Some(drafting), Some(plan)) => match drafting.step(plan) {
                ControlFlow::Continue(()) => ControlFlow::Continue(()),
                ControlFlow::Break(drawn) => ControlFlow::Break(Some(Rc::new(drawn))),
            },
            _ => ControlFlow::Break(None),
        }
    }
}

/// A [`Drawn`] on its way, one pressure of the dome at a time.
pub struct Drafting {
    known: [State; 4],
    low: Option<[State; 4]>,
    bottom: f64,
    top: f64,
    next: u32,
    dome: Vec<(Pressure, AvailableEnergy, AvailableEnergy)>,
}

impl Drafting {
    /// Starts with the cycles and no dome.
    pub fn of(plan: &Plan) -> Self {
        let known = states(plan, &plan.design.cycle, plan.design.pressure);
        let low = plan
            .point(plan.recommendation.method, plan.input.outdoor_low)
            .ok()
            .and_then(|point| Some(states(plan, &point.cycle?, point.pressure)));
        let refrigerant = &plan.input.refrigerant;
        let (_, warmest) = refrigerant.temperature_range();
        let top = refrigerant
            .dew_pressure(warmest)
            .unwrap_or_else(|_| refrigerant.critical_point().pressure);
        let bottom = known
            .iter()
            .chain(low.iter().flatten())
            .map(|state| state.pressure.value)
            .fold(top.value, f64::min);
        Self {
            known,
            low,
            bottom: (bottom * BELOW).ln(),
            top: top.value.ln(),
            next: 0,
            dome: Vec::new(),
        }
    }

    /// Finds the dome at the next pressure.
    pub fn step(&mut self, plan: &Plan) -> ControlFlow<Drawn> {
        if self.next > PRESSURES {
            return ControlFlow::Break(Drawn {
                dome: std::mem::take(&mut self.dome),
                known: self.known,
                low: self.low,
            });
        }
        let left = 1.0 - f64::from(self.next) / f64::from(PRESSURES);
        self.next += 1;
        let pressure =
            Pressure::new::<pascal>((self.top - (self.top - self.bottom) * left * left).exp());
        // Just under the critical point, or under the range, a refrigerant may have no answer; its neighbours close the gap.
        if let Ok(found) = plan.input.refrigerant.saturation_at_pressure(pressure) {
            self.dome
                .push((pressure, found.bubble.enthalpy, found.dew.enthalpy));
        }
        ControlFlow::Continue(())
    }
}

/// The states of a cycle in its order, from the compressor's inlet.
fn states(plan: &Plan, cycle: &Cycle, head: Pressure) -> [State; 4] {
    let expanded = plan
        .input
        .refrigerant
        .state_at_pressure_enthalpy(cycle.suction_pressure, cycle.liquid_enthalpy);
    let state = |pressure, temperature, enthalpy| State {
        pressure,
        temperature,
        enthalpy,
    };
    [
        state(
            cycle.suction_pressure,
            Some(cycle.suction),
            cycle.suction_enthalpy,
        ),
        state(head, Some(cycle.discharge), cycle.discharge_enthalpy),
        state(head, Some(cycle.liquid), cycle.liquid_enthalpy),
        state(
            cycle.suction_pressure,
            expanded.ok().map(|state| state.temperature),
            cycle.liquid_enthalpy,
        ),
    ]
}

/// A state as written: pressure, temperature, enthalpy.
pub type Written = [String; 3];

/// Everything round the diagram, in words and on scales.
#[derive(Clone, Debug, PartialEq)]
pub struct Told {
    /// The drawing.
    pub diagram: DiagramProps,
    /// Each cycle in a sentence, also one that cannot be drawn.
    pub sentences: Vec<String>,
    /// Each cycle that is drawn: its short name, its long one, its states as written.
    pub cycles: Vec<(&'static str, String, [Written; 4])>,
}

/// Puts what was found into words and on scales.
pub fn told(plan: &Plan, drawn: &Drawn, units: Units) -> Told {
    let t = words().pictures();
    let writer = Writer::new(plan, units);
    let write = |state: &State| {
        [
            writer.show(Quantity::Pressure(state.pressure)).to_string(),
            state.temperature.map_or_else(
                || t.no_value.to_owned(),
                |temperature| writer.show(Quantity::Temperature(temperature)).to_string(),
            ),
            units.enthalpy(state.enthalpy).to_string(),
        ]
    };
    let method = words().method(plan.recommendation.method).name;
    let known = (t.known_at)(&writer.brief(plan.input.known_outdoor.value));
    let low = (t.low_at)(&writer.brief(plan.input.outdoor_low), method);
    let in_words = |name: &str, [suction, discharge, ..]: &[Written; 4]| {
        (t.cycle_in_words)(name, &suction[0], &discharge[0], &discharge[1])
    };
    let mut cycles = vec![(t.known, known, drawn.known.each_ref().map(write))];
    let mut sentences: Vec<String> = Vec::new();
    match &drawn.low {
        Some(states) => cycles.push((t.low, low, states.each_ref().map(write))),
        None => sentences.push((t.no_cycle)(&low)),
    }
    let drawn_ones = cycles
        .iter()
        .map(|(_, name, written)| in_words(name, written));
    sentences.splice(0..0, drawn_ones);
    Told {
        diagram: diagram(plan, drawn, units, &sentences),
        sentences,
        cycles,
    }
}

fn diagram(plan: &Plan, drawn: &Drawn, units: Units, sentences: &[String]) -> DiagramProps {
    let t = words().pictures();
    let rounds = [(t.known, Some(&drawn.known)), (t.low, drawn.low.as_ref())];
    let place = |pressure: Pressure, enthalpy: AvailableEnergy| {
        (units.enthalpy_number(enthalpy), pressure.value.ln())
    };
    let rounds: Vec<Round> = rounds
        .into_iter()
        .filter_map(|(name, states)| {
            let points = states?.map(|state| place(state.pressure, state.enthalpy));
            Some(Round {
                name: name.into(),
                points,
            })
        })
        .collect();
    let bubble = drawn.dome.iter().map(|(p, bubble, _)| place(*p, *bubble));
    let dew = drawn.dome.iter().rev().map(|(p, _, dew)| place(*p, *dew));
    let dome: Vec<(f64, f64)> = bubble.chain(dew).collect();
    let all = || {
        dome.iter()
            .chain(rounds.iter().flat_map(|round| &round.points))
    };
    let (left, right) = ends(all().map(|(x, _)| *x));
    let (bottom, top) = ends(all().map(|(_, y)| *y));
    let margin = MARGIN * (right - left);
    let x = Scale::new(left - margin, right + margin);
    let y = Scale::new(bottom, top + ABOVE.ln());
    let (_, x_ticks) = Scale::round([left, right], 4);
    DiagramProps {
        summary: sentences.join(" ").into(),
        across: format!("{}, {}", t.enthalpy, units.unit_of_enthalpy()).into(),
        up: (t.logarithmic)(pressure_unit(units)).into(),
        x,
        x_ticks: x_ticks
            .into_iter()
            .filter(|tick| x.covers(*tick))
            .map(|tick| (tick, mark(tick).into()))
            .collect(),
        y,
        y_ticks: pressures(plan, y, units)
            .into_iter()
            .map(|(at, value)| (at, mark(value).into()))
            .collect(),
        dome,
        dome_name: t.dome.into(),
        rounds,
        chosen: (0, 0),
        choose: yew::Callback::noop(),
    }
}

/// The least and the largest of these values.
fn ends(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    })
}

/// Round pressures of the person's unit on a logarithmic scale, each with its place on it. Gauge pressure has no logarithm, so they stand where
/// their absolute pressure does.
fn pressures(plan: &Plan, scale: Scale, units: Units) -> Vec<(f64, f64)> {
    /// Least distance of two marks, as a share of the height.
    const APART: f64 = 0.07;
    let unit = units.unit(Kind::Pressure);
    let values = (-1..=4).flat_map(|power| [1.0, 2.0, 5.0].map(|times| times * 10f64.powi(power)));
    let mut marks: Vec<(f64, f64)> = Vec::new();
    for value in values {
        let Quantity::Pressure(pressure) = unit.quantity(value, plan.atmosphere.value) else {
            continue;
        };
        let at = pressure.value.ln();
        let is_apart = marks
            .last()
            .is_none_or(|(last, _)| scale.share(at) - scale.share(*last) >= APART);
        if scale.covers(at) && is_apart {
            marks.push((at, value));
        }
    }
    marks
}

/// What stands over the values of a state.
pub fn heads() -> [&'static str; 3] {
    [
        screen().pressure,
        screen().temperature,
        words().pictures().enthalpy,
    ]
}

/// The names of the states, each with its number.
pub fn state_names() -> [String; 4] {
    let mut number = 0;
    words().pictures().states.map(|name| {
        number += 1;
        format!("{number} {name}")
    })
}

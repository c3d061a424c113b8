//! A plan as a cold ladder, and what one of its rungs answers.

use std::collections::BTreeSet;
use std::ops::ControlFlow;
use std::rc::Rc;
use std::thread::LocalKey;

use winterset_calc::{Method, Plan, Point, Quantity, Rung};
use winterset_profile::{Kind, parse_number};
use winterset_words::{HelpWords, RungValue, Units, mark, screen, symbol};

use super::outdoor::Outdoor;
use super::plan::Held;
use super::sheet::Writer;
use super::words;
use crate::components::ladder::{self, Panel, Picture, Pointer, Sample, Stretch};
use crate::components::made::{Kept, Making};
use crate::components::scale::Scale;

/// Every method at every sample and every rung of a stretch of outdoor temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Sampled {
    /// The stretch.
    pub outdoor: Outdoor,
    /// Where the samples lie, counted in rungs.
    pub places: Vec<f64>,
    /// The samples.
    pub samples: Vec<Rung>,
    /// The rungs.
    pub rungs: Vec<Rung>,
}

/// Samples of one plan in one set of units; `None` inside where the refrigerant has no answer over part of the range.
pub type Drawn = Rc<Option<Sampled>>;

/// A plan that is to be sampled.
#[derive(Clone, PartialEq)]
pub struct ToSample {
    /// The plan.
    pub plan: Held,
    /// The units that its rungs are round in.
    pub units: Units,
}

thread_local! {
    static DRAWN: Kept<ToSample> = const { Kept::most(1) };
}

impl Making for ToSample {
    type Made = Drawn;

    fn kept() -> &'static LocalKey<Kept<Self>> {
        &DRAWN
    }

    fn begin(&self) -> impl FnMut() -> ControlFlow<Drawn> + 'static {
        let held = self.plan.clone();
        let mut sampling = held.plan().map(|plan| Sampling::of(plan, self.units));
        move || match (&mut sampling, held.plan()) {
            (Some(sampling), Some(plan)) => match sampling.step(plan) {
                ControlFlow::Continue(()) => ControlFlow::Continue(()),
                ControlFlow::Break(sampled) => ControlFlow::Break(Rc::new(sampled)),
            },
            _ => ControlFlow::Break(Rc::new(None)),
        }
    }
}

/// A [`Sampled`] on its way, a few places at a time, so that the page answers meanwhile.
pub struct Sampling {
    outdoor: Outdoor,
    places: Vec<f64>,
    samples: Vec<Rung>,
}

impl Sampling {
    /// Starts with no sample.
    pub fn of(plan: &Plan, units: Units) -> Self {
        let outdoor = Outdoor::of(plan, units);
        Self {
            places: outdoor.samples(),
            samples: Vec::new(),
            outdoor,
        }
    }

    /// Asks the plan at the next place. `Break` ends it: with everything, or with `None` where the refrigerant has no answer.
    pub fn step(&mut self, plan: &Plan) -> ControlFlow<Option<Sampled>> {
        let Some(at) = self.places.get(self.samples.len()) else {
            return ControlFlow::Break(Some(self.whole()));
        };
        match plan.at(self.outdoor.temperature(*at)) {
            Ok(rung) => self.samples.push(rung),
            Err(_) => return ControlFlow::Break(None),
        }
        ControlFlow::Continue(())
    }

    fn whole(&self) -> Sampled {
        let on_rungs = self
            .places
            .iter()
            .zip(&self.samples)
            .filter(|(at, _)| at.fract() == 0.0);
        Sampled {
            rungs: on_rungs.map(|(_, rung)| rung.clone()).collect(),
            outdoor: self.outdoor.clone(),
            places: self.places.clone(),
            samples: self.samples.clone(),
        }
    }
}

/// What the fan does at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum FanDoes {
    Full,
    Slowing,
    Minimum,
    Cycling,
    Some,
    Off,
}

impl FanDoes {
    fn at(plan: &Plan, method: Method, point: &Point) -> Self {
        const NEAR: f64 = 1e-6;
        if method.is_modulated() && point.swing.is_none() {
            let output = point.output.map_or(1.0, |output| output.fraction);
            return if output >= 1.0 - NEAR {
                FanDoes::Full
            } else if output <= plan.settings.drive.minimum_output().value + NEAR {
                FanDoes::Minimum
            } else {
                FanDoes::Slowing
            };
        }
        if point.swing.is_some() {
            FanDoes::Cycling
        } else if point.fan_speed_fraction >= 1.0 - NEAR {
            FanDoes::Full
        } else if point.fan_speed_fraction <= NEAR {
            FanDoes::Off
        } else {
            FanDoes::Some
        }
    }

    fn word(self) -> &'static str {
        let t = screen();
        match self {
            FanDoes::Full => t.fan_full,
            FanDoes::Slowing => t.fan_slowing,
            FanDoes::Minimum => t.fan_minimum,
            FanDoes::Cycling => t.fan_cycling,
            FanDoes::Some => t.fan_some,
            FanDoes::Off => t.fan_off,
        }
    }
}

/// What is read along the ladder: a method, and the one beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Read {
    /// The method.
    pub method: Method,
    /// The one beside it.
    pub beside: Option<Method>,
}

impl Read {
    /// The methods in their order.
    pub fn methods(self) -> impl Iterator<Item = Method> {
        [self.method].into_iter().chain(self.beside)
    }
}

/// The drawing of one method, or of two side by side.
pub fn picture(plan: &Plan, sampled: &Sampled, read: Read, units: Units, now: &str) -> Picture {
    let t = screen();
    let writer = Writer::new(plan, units);
    let outdoor = &sampled.outdoor;
    let temperature =
        |quantity| units.number(&Quantity::Temperature(quantity), plan.atmosphere.value);
    let pressure = |quantity| units.number(&Quantity::Pressure(quantity), plan.atmosphere.value);
    let need = pressure(plan.need.pressure.value);
    // One scale for every method, so that changing the method moves only what the method changes.
    let all = sampled
        .samples
        .iter()
        .flat_map(|rung| Method::ALL.map(|method| pressure(rung.of(method).pressure)));
    let (scale, ticks) = Scale::round(all.chain([need]), 3);
    let place = |number: f64| Some(outdoor.place(number)).filter(|at| outdoor.holds(*at));
    let low = plan.input.outdoor_low;
    Picture {
        rungs: outdoor
            .rungs()
            .into_iter()
            .zip(&sampled.rungs)
            .map(|(temperature, rung)| ladder::Rung {
                name: writer.brief(temperature).into(),
                sentence: sentence(plan, rung, read, units).into(),
                holds: rung.of(read.method).holds,
            })
            .collect(),
        panels: read
            .methods()
            .map(|method| {
                let limit = plan.hold.of(method).value;
                Panel {
                    name: words().method(method).name.into(),
                    samples: samples(sampled, method, &pressure),
                    stretches: stretches(plan, sampled, method),
                    hold: place(temperature(limit)).map(|at| Pointer {
                        at,
                        name: (t.holds_to)(&writer.brief(limit)).into(),
                    }),
                }
            })
            .collect(),
        need,
        need_name: t.need.into(),
        pressure: scale,
        pressure_ticks: ticks
            .into_iter()
            .map(|tick| (tick, mark(tick).into()))
            .collect(),
        low: Pointer {
            at: outdoor.place(temperature(low)),
            name: t.site_low.into(),
        },
        now: parse_number(Kind::Temperature, now)
            .ok()
            .and_then(|typed| {
                let unit = typed.unit.unwrap_or_else(|| units.unit(Kind::Temperature));
                place(units.number(
                    &unit.quantity(typed.number, plan.atmosphere.value),
                    plan.atmosphere.value,
                ))
            })
            .map(|at| Pointer {
                at,
                name: t.now.into(),
            }),
    }
}

/// What is drawn of a method at each sample.
fn samples(
    sampled: &Sampled,
    method: Method,
    pressure: &dyn Fn(uom::si::f64::Pressure) -> f64,
) -> Vec<Sample> {
    sampled
        .places
        .iter()
        .zip(&sampled.samples)
        .map(|(at, rung)| {
            let point = rung.of(method);
            Sample {
                at: *at,
                fan: point.fan_speed_fraction,
                head: pressure(point.pressure),
                swing: point
                    .swing
                    .map(|(low, high)| (pressure(low), pressure(high))),
                holds: point.holds,
            }
        })
        .collect()
}

/// Neighbouring samples at which the fan does the same.
fn stretches(plan: &Plan, sampled: &Sampled, method: Method) -> Vec<Stretch> {
    let mut found: Vec<(FanDoes, Stretch)> = Vec::new();
    for (at, rung) in sampled.places.iter().zip(&sampled.samples) {
        let does = FanDoes::at(plan, method, rung.of(method));
        match found.last_mut() {
            Some((last, stretch)) if *last == does => stretch.to = *at,
            _ => found.push((
                does,
                Stretch {
                    from: *at,
                    to: *at,
                    name: does.word().into(),
                },
            )),
        }
    }
    // A stretch shorter than half a rung has no room for its word.
    found
        .into_iter()
        .map(|(_, stretch)| stretch)
        .filter(|stretch| stretch.to - stretch.from > 0.45)
        .collect()
}

/// A rung in a sentence, or one a method.
pub fn sentence(plan: &Plan, rung: &Rung, read: Read, units: Units) -> String {
    let (t, writer) = (words().pictures(), Writer::new(plan, units));
    let outdoor = writer.brief(rung.of(read.method).outdoor);
    let said = |method: Method| {
        let point = rung.of(method);
        let head = writer.show(Quantity::Pressure(point.pressure)).to_string();
        let fan = fan_in_words(plan, method, point, units);
        (fan, head, point.holds)
    };
    let one = |method: Method| {
        let (fan, head, holds) = said(method);
        (t.beside_at)(words().method(method).name, &fan, &head, holds)
    };
    match read.beside {
        Some(beside) => (t.both_at)(&outdoor, &one(read.method), &one(beside)),
        None => {
            let (fan, head, holds) = said(read.method);
            (screen().rung)(&outdoor, &fan, &head, holds)
        }
    }
}

/// The outdoor temperature of a rung, as written.
pub fn outdoor(plan: &Plan, rung: &Rung, units: Units) -> String {
    Writer::new(plan, units).brief(rung.of(Method::FullFan).outdoor)
}

/// What the fan does at a point, with the share where it says something.
fn fan_in_words(plan: &Plan, method: Method, point: &Point, units: Units) -> String {
    match FanDoes::at(plan, method, point) {
        does @ (FanDoes::Full | FanDoes::Off | FanDoes::Minimum) => does.word().to_owned(),
        does => format!(
            "{} {}",
            does.word(),
            Writer::new(plan, units).show(Quantity::Ratio(point.fan_speed_fraction))
        ),
    }
}

/// What a rung answers for two methods: how the fan and head pressure stand, then each name once, in the order of the first, with the value of each where it has one.
pub fn both_answers(
    plan: &Plan,
    rung: &Rung,
    (first, second): (Method, Method),
    units: Units,
) -> Vec<(&'static str, [Option<String>; 2])> {
    let t = words().pictures();
    let both = |of: &dyn Fn(Method) -> String| [Some(of(first)), Some(of(second))];
    let mut rows = vec![
        (
            t.against,
            both(&|method| {
                let holds = rung.of(method).holds;
                if holds { t.holds } else { t.falls_short }.to_owned()
            }),
        ),
        (
            screen().fan,
            both(&|method| fan_in_words(plan, method, rung.of(method), units)),
        ),
    ];
    rows.extend(
        answers(plan, rung, first, units)
            .into_iter()
            .map(|(name, value)| (name, [Some(value), None])),
    );
    // What the second one has alone stands where it would stand in its own list.
    let mut next = 2;
    for (name, value) in answers(plan, rung, second, units) {
        match rows.iter().position(|(known, _)| *known == name) {
            Some(at) => {
                rows[at].1[1] = Some(value);
                next = at + 1;
            }
            None => {
                rows.insert(next, (name, [None, Some(value)]));
                next += 1;
            }
        }
    }
    rows
}

/// What a rung answers: name, number and unit of each value.
pub fn answers(
    plan: &Plan,
    rung: &Rung,
    method: Method,
    units: Units,
) -> Vec<(&'static str, String)> {
    let t = screen();
    let writer = Writer::new(plan, units);
    let point = rung.of(method);
    let show = |quantity| writer.show(quantity).to_string();
    let mut answers = vec![
        (t.head_pressure, show(Quantity::Pressure(point.pressure))),
        (t.coil, show(Quantity::Temperature(point.coil))),
        (
            t.over_ambient,
            show(Quantity::Difference(point.over_ambient())),
        ),
    ];
    match point.output {
        Some(output) => {
            answers.push((t.output, show(Quantity::Ratio(output.fraction))));
            if let Some(volts) = output.voltage {
                answers.push((t.motor_volts, show(Quantity::Voltage(volts))));
            }
            answers.push((t.motor_speed, show(Quantity::Speed(output.speed))));
        }
        None if matches!(method, Method::OnOff | Method::Staged) => {
            answers.push((t.fan_on, show(Quantity::Ratio(point.fan_speed_fraction))));
        }
        None => answers.push((t.fan_speed, show(Quantity::Ratio(point.fan_speed_fraction)))),
    }
    if let Some((low, high)) = point.swing {
        answers.push((t.saws_from, show(Quantity::Pressure(low))));
        answers.push((t.saws_to, show(Quantity::Pressure(high))));
    }
    if let Some(starts) = point.starts {
        let an_hour = (starts.value * 3600.0).round();
        answers.push((t.starts_an_hour, mark(an_hour.round())));
    }
    if method.floods() {
        answers.push((t.flooded, show(Quantity::Ratio(point.zones.flooded))));
    }
    match point.cycle {
        Some(cycle) => {
            answers.push((
                t.evaporating,
                show(Quantity::Temperature(cycle.evaporating)),
            ));
            answers.push((t.superheat, show(Quantity::Difference(cycle.superheat()))));
            answers.push((t.cooling, show(Quantity::Power(cycle.cooling))));
        }
        None => answers.push((t.compressor, t.trips.to_owned())),
    }
    answers
}

/// What each value is that the rungs answer for these methods, each once under its name.
pub fn help(plan: &Plan, sampled: &Sampled, read: Read) -> Vec<(&'static str, HelpWords)> {
    let units = Units::default();
    let methods = [Some(read.method), read.beside].into_iter().flatten();
    let answered: BTreeSet<&str> = methods
        .flat_map(|method| {
            let rungs = sampled.rungs.iter();
            rungs.flat_map(move |rung| answers(plan, rung, method, units))
        })
        .map(|(name, _)| name)
        .collect();
    RungValue::ALL
        .into_iter()
        .map(|value| (name(value), words().help_on_rung(value)))
        .filter(|(name, _)| answered.contains(name))
        .collect()
}

fn name(value: RungValue) -> &'static str {
    let t = screen();
    match value {
        RungValue::HeadPressure => t.head_pressure,
        RungValue::Coil => t.coil,
        RungValue::OverAmbient => t.over_ambient,
        RungValue::Output => t.output,
        RungValue::MotorVolts => t.motor_volts,
        RungValue::MotorSpeed => t.motor_speed,
        RungValue::FanOn => t.fan_on,
        RungValue::FanSpeed => t.fan_speed,
        RungValue::Swing => t.saws_from,
        RungValue::Starts => t.starts_an_hour,
        RungValue::Flooded => t.flooded,
        RungValue::Evaporating => t.evaporating,
        RungValue::Superheat => t.superheat,
        RungValue::Cooling => t.cooling,
    }
}

/// The unit of head pressure over a scale.
pub fn pressure_unit(units: Units) -> &'static str {
    symbol(units.unit(Kind::Pressure))
}

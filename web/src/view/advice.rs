//! What follows from a plan, worked out a step at a time and written in a person's words and units.

use std::ops::ControlFlow;

use serde::{Deserialize, Serialize};
use winterset_calc::bands::{Banding, Bands};
use winterset_calc::comparison::Summary;
use winterset_calc::input::Sensing;
use winterset_calc::lever::{Change, Lever};
use winterset_calc::sensor_place::Outcome;
use winterset_calc::weather::{Bins, UsualYear};
use winterset_calc::{Method, Plan, Quantity};
use winterset_profile::WinterHours;
use winterset_words::Units;

use super::sheet::Writer;
use super::words;

/// One method beside the others.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct MethodLine {
    /// Stable name.
    pub key: String,
    /// Name.
    pub name: String,
    /// Whether it is the recommended one.
    pub recommended: bool,
    /// Whether it holds to the site's low.
    pub holds: bool,
    /// Hold limit.
    pub limit: String,
    /// Further values, each with its name.
    pub values: Vec<(String, String)>,
}

/// A change or a part: what it is, its value, and why.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Item {
    /// What it is.
    pub name: String,
    /// Its value, or what it does.
    pub value: String,
    /// Why; empty where the name says it.
    pub reason: String,
}

/// Everything that follows from a plan, written.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Advice {
    /// Why the recommended method is the one.
    pub reason: String,
    /// The methods side by side.
    pub methods: Vec<MethodLine>,
    /// Whether outdoor cold would do the job.
    pub off: Option<String>,
    /// What lowers the need, the strongest first.
    pub levers: Vec<Item>,
    /// What to order.
    pub order: Vec<Item>,
    /// Whether the usual place of a coil sensor does, or why not.
    pub place: Vec<String>,
    /// What a start in the cold asks for.
    pub start: Vec<String>,
    /// How a fan starts in the cold and where its motor runs hottest; empty where it takes no voltage speed control.
    pub fan_motor: Vec<String>,
    /// How sure the hold limit is.
    pub band: String,
    /// The values that assumptions move, each give or take its band.
    pub bands: Vec<Item>,
    /// The field whose measurement narrows it most, with its question.
    pub measure_first: Option<(String, String)>,
}

/// Advice on its way.
pub struct Work {
    units: Units,
    bins: Option<Bins>,
    step: usize,
    summaries: Vec<(Method, Summary)>,
    levers: Vec<Lever>,
    banding: Banding,
}

/// Steps before the bands: each method, each change.
const BEFORE: usize = Method::ALL.len() + Change::ALL.len();

impl Work {
    /// Starts with nothing done. The year is that of the hours counted for the site, else the usual one.
    pub fn new(plan: &Plan, units: Units, hours: Option<&WinterHours>) -> Self {
        let usual = || UsualYear::new(plan.input.outdoor_low).ok();
        let counted = hours.and_then(WinterHours::bins);
        Self {
            units,
            bins: counted.or_else(|| Some(usual()?.bins())),
            step: 0,
            summaries: Vec::new(),
            levers: Vec::new(),
            banding: Banding::default(),
        }
    }

    /// How much is done, a share of one.
    pub fn progress(&self) -> f64 {
        let all = BEFORE + Banding::STEPS + 1;
        (self.step + self.banding.done()) as f64 / all as f64
    }

    /// Works out one piece. `Break` ends it with everything.
    pub fn step(&mut self, plan: &Plan) -> ControlFlow<Advice> {
        let step = self.step;
        if let Some(&method) = Method::ALL.get(step) {
            if let Some(bins) = self.bins.as_ref().filter(|_| plan.applies(method)) {
                self.summaries.push((method, plan.over_year(method, bins)));
            }
        } else if let Some(&change) = Change::ALL.get(step - Method::ALL.len()) {
            self.levers.extend(plan.lever(change));
        } else {
            return match self.banding.step(plan) {
                ControlFlow::Continue(()) => ControlFlow::Continue(()),
                ControlFlow::Break(bands) => ControlFlow::Break(self.whole(plan, &bands)),
            };
        }
        self.step += 1;
        ControlFlow::Continue(())
    }

    fn whole(&mut self, plan: &Plan, bands: &Bands) -> Advice {
        self.levers
            .sort_by(|a, b| a.need.value.total_cmp(&b.need.value));
        let scribe = Scribe {
            plan,
            units: self.units,
        };
        let method = plan.recommendation.method;
        let summary = self.summaries.iter().find(|(found, _)| *found == method);
        Advice {
            reason: words().reason(plan.recommendation.reason).to_owned(),
            methods: self
                .summaries
                .iter()
                .map(|(method, summary)| scribe.method(*method, summary))
                .collect(),
            off: summary
                .zip(self.bins.as_ref())
                .and_then(|((_, summary), bins)| scribe.off(bins, summary)),
            levers: self
                .levers
                .iter()
                .map(|lever| scribe.lever(lever))
                .collect(),
            order: scribe.order(),
            place: scribe.place(),
            start: scribe.start(),
            fan_motor: scribe.fan_motor(),
            band: scribe.band(bands),
            bands: scribe.bands(bands),
            measure_first: bands
                .measure_first()
                .map(|field| (field.key().to_owned(), words().field(field).ask.to_owned())),
        }
    }
}

/// Writes pieces of advice.
struct Scribe<'a> {
    plan: &'a Plan,
    units: Units,
}

impl Scribe<'_> {
    fn show(&self, quantity: Quantity) -> String {
        Writer::new(self.plan, self.units)
            .show(quantity)
            .to_string()
    }

    fn method(&self, method: Method, summary: &Summary) -> MethodLine {
        let t = words().advice();
        let mut values = vec![
            (
                t.fan_energy.to_owned(),
                self.units.energy(summary.fan_energy).to_string(),
            ),
            (
                t.compressor_energy.to_owned(),
                self.units.energy(summary.compressor_energy).to_string(),
            ),
        ];
        if let Some(starts) = summary.starts {
            values.push((
                t.starts_an_hour.to_owned(),
                self.units.starts_an_hour(starts).to_string(),
            ));
        }
        MethodLine {
            key: method.key().to_owned(),
            name: words().method(method).name.to_owned(),
            recommended: method == self.plan.recommendation.method,
            holds: summary.holds,
            limit: self.show(Quantity::Temperature(summary.limit)),
            values,
        }
    }

    fn off(&self, bins: &Bins, summary: &Summary) -> Option<String> {
        let outcome = self.plan.free_cooling(bins, summary).ok()??;
        Some(words().off(&outcome, self.plan.input.duty.value, self.units))
    }

    fn lever(&self, lever: &Lever) -> Item {
        let said = words().change(lever.change);
        Item {
            name: said.name.to_owned(),
            value: (words().advice().with_it)(
                &self.show(Quantity::Pressure(lever.need)),
                &self.show(Quantity::Temperature(lever.limit)),
            ),
            reason: said.reason.to_owned(),
        }
    }

    fn order(&self) -> Vec<Item> {
        let parts = self.plan.order(self.plan.recommendation.method);
        let parts = parts.unwrap_or_default();
        parts
            .iter()
            .map(|part| words().part(part, self.units, self.plan.atmosphere.value))
            .map(|part| Item {
                name: part.name,
                value: part.value,
                reason: String::new(),
            })
            .collect()
    }

    /// A pressure is the same all along the line, and a fan that is not slowed needs no sensor.
    fn place(&self) -> Vec<String> {
        let method = self.plan.recommendation.method;
        let senses_coil = self.plan.input.sensing.value == Sensing::CoilTemperature;
        if !senses_coil || !method.is_modulated() {
            return Vec::new();
        }
        match self.plan.sensor_place(method) {
            Ok(Some(answer)) => match answer.outcome {
                Outcome::Confirmed { .. } => vec![words().advice().place_does.to_owned()],
                Outcome::Refused { reasons } => reasons
                    .iter()
                    .map(|reason| words().place(reason, self.units))
                    .collect(),
            },
            _ => Vec::new(),
        }
    }

    fn start(&self) -> Vec<String> {
        let Ok(start) = self.plan.winter_start(self.plan.recommendation.method) else {
            return Vec::new();
        };
        vec![words().bypass(&start.bypass, self.units, self.plan.atmosphere.value)]
    }

    /// A fan that is not slowed starts at full output and stays there.
    fn fan_motor(&self) -> Vec<String> {
        if !self.plan.recommendation.method.is_modulated() {
            return Vec::new();
        }
        let Some(found) = self.plan.fan_motor() else {
            return Vec::new();
        };
        let remedies = found
            .remedies
            .iter()
            .map(|remedy| words().fan_remedy(*remedy, &found, self.units));
        [words().fan_start(&found, self.units)]
            .into_iter()
            .chain(remedies)
            .chain([words().fan_heat(&found.hottest, self.units)])
            .collect()
    }

    fn band(&self, bands: &Bands) -> String {
        let method = self.plan.recommendation.method;
        // Where liquid makes the method hold anywhere, what is not sure is how far speed alone goes.
        let method = if method.floods() {
            Method::SpeedControl
        } else {
            method
        };
        let span = self.show(Quantity::Difference(*bands.limits.of(method)));
        (words().advice().give_or_take)(words().method(method).name, &span)
    }

    /// The need, the least output and the hold limits of the methods that can be had, with their bands.
    fn bands(&self, bands: &Bands) -> Vec<Item> {
        let (plan, need) = (self.plan, &self.plan.need.pressure);
        let output = plan.settings.drive.minimum_output();
        let limits = Method::ALL
            .into_iter()
            // Liquid holds wherever it is cold enough to look, whatever is assumed.
            .filter(|method| plan.applies(*method) && !method.floods())
            .map(|method| {
                let limit = Quantity::Temperature(plan.hold.of(method).value);
                let band = Quantity::Difference(*bands.limits.of(method));
                (words().method(method).name, limit, band)
            });
        [
            (
                words().rule(need.working.rule).name,
                Quantity::Pressure(need.value),
                Quantity::PressureDifference(bands.need),
            ),
            (
                words().rule(output.working.rule).name,
                Quantity::Ratio(output.value),
                Quantity::Ratio(bands.minimum_output),
            ),
        ]
        .into_iter()
        .chain(limits)
        .map(|(name, value, band)| Item {
            name: name.to_owned(),
            value: self.give_or_take(&value, &band),
            reason: String::new(),
        })
        .collect()
    }

    /// As `238 ± 9 psig`.
    fn give_or_take(&self, value: &Quantity, band: &Quantity) -> String {
        let air = self.plan.atmosphere.value;
        let (value, band) = (self.units.brief(value, air), self.units.brief(band, air));
        format!("{} ± {}\u{a0}{}", value.number, band.number, value.unit)
    }
}

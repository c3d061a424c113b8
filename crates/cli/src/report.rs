//! A plan as a page of text.

mod advice;

use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};
use winterset_calc::advice::ReversingValve;
use winterset_calc::explain::Explained;
use winterset_calc::settings::Drive;
use winterset_calc::{Field, Method, Plan, Quantity};
use winterset_profile::{Assumed, System};
use winterset_words::{RuleWords, TemperatureUnit, Units, Words, screen};

/// Width of a name and its value together.
const WIDTH: usize = 58;

/// Writes one plan in a person's units.
pub struct Report<'a> {
    plan: &'a Plan,
    words: &'static dyn Words,
    units: Units,
    out: String,
}

impl<'a> Report<'a> {
    pub fn new(plan: &'a Plan, words: &'static dyn Words, units: Units) -> Self {
        Self {
            plan,
            words,
            units,
            out: String::new(),
        }
    }

    /// The page: the verdict first, then what to do and what to mind, then what stands behind it.
    pub fn of(mut self, system: &System) -> String {
        let t = screen();
        let plan = self.plan;
        let name = system.name.trim();
        self.line(if name.is_empty() {
            t.unnamed_system
        } else {
            name
        });
        self.line("");
        let verdict = self.words.verdict(plan.verdict, plan, self.units);
        self.line(&verdict);
        self.line(self.words.reason(plan.recommendation.reason));
        self.line(
            self.words
                .action(plan.verdict.action(plan.input.motor.value)),
        );
        self.head(t.settings_sheet);
        self.cautions();
        self.settings();
        self.head(t.pressure_need);
        self.need();
        self.head(t.hold_limits);
        self.hold_limits();
        let said = self.words.part_load(&plan.part_load(), self.units);
        self.line(&format!("  {said}"));
        self.head(t.head_pressure);
        self.along_outdoor_temperature();
        self.advice();
        self.head(t.assumed);
        self.assumed(system);
        self.line("");
        self.line(&(t.gauge_note)(
            &self.units.air(plan.atmosphere.value).to_string(),
        ));
        self.line(t.defers);
        self.out
    }

    fn line(&mut self, text: &str) {
        self.out.push_str(text);
        self.out.push('\n');
    }

    fn head(&mut self, text: &str) {
        let mut letters = text.chars();
        let first: String = letters
            .next()
            .into_iter()
            .flat_map(char::to_uppercase)
            .collect();
        self.line("");
        self.line(&(first + letters.as_str()));
    }

    fn show(&self, quantity: Quantity) -> String {
        let atmosphere = self.plan.atmosphere.value;
        self.units.show(&quantity, atmosphere).to_string()
    }

    fn row(&mut self, name: &str, value: &str, reason: &str) {
        // A long name keeps its distance from the value.
        let gap = WIDTH
            .saturating_sub(name.chars().count() + value.chars().count())
            .max(2);
        self.line(&format!("  {name}{:gap$}{value}", ""));
        if !reason.is_empty() {
            self.line(&format!("      {reason}"));
        }
    }

    fn named(&mut self, name: &str, text: &str) {
        self.line(&format!("  {}", (screen().named)(name, text)));
    }

    /// A derived value under the words of its rule.
    fn explained<T: Copy>(&mut self, value: &Explained<T>, wrap: impl Fn(T) -> Quantity) {
        let words = self.words.rule(value.working.rule);
        let shown = self.show(wrap(value.value));
        self.row(words.name, &shown, words.reason);
    }

    fn cautions(&mut self) {
        for caution in &self.plan.cautions {
            let caution = self.words.caution(*caution);
            self.named(caution.title, caution.text);
        }
        self.line("");
    }

    fn settings(&mut self) {
        let t = screen();
        let settings = &self.plan.settings;
        let RuleWords { name, reason } = self.words.sensing(settings.sensing.value);
        self.row(t.sense, name, reason);
        self.explained(&settings.full_speed_pressure, Quantity::Pressure);
        self.explained(&settings.full_speed_coil, Quantity::Temperature);
        self.explained(&settings.throttling_pressure, Quantity::PressureDifference);
        self.explained(&settings.throttling_coil, Quantity::Difference);
        self.explained(settings.drive.minimum_output(), Quantity::Ratio);
        match &settings.drive {
            Drive::PhaseCut {
                minimum_voltage, ..
            } => {
                let shown = self.show(Quantity::Voltage(*minimum_voltage));
                self.row(t.minimum_voltage, &shown, t.minimum_voltage_reason);
            }
            Drive::Signal { volts, duty, .. } => {
                self.explained(volts, Quantity::Voltage);
                self.explained(duty, Quantity::Ratio);
            }
            Drive::Frequency { lowest, .. } => self.explained(lowest, Quantity::Frequency),
        }
        self.explained(settings.drive.lowest_speed(), Quantity::Speed);
        if let Drive::PhaseCut { start_boost, .. } = &settings.drive {
            self.explained(start_boost, Quantity::Time);
        }
        if let Some(valve) = ReversingValve::of(self.plan.input.reversing_valve.value) {
            let RuleWords { name, reason } = self.words.heating(valve);
            self.row(t.in_heating, name, reason);
        }
        for note in &settings.notes {
            let note = self.words.note(*note, self.units);
            self.line(&format!("  {note}"));
        }
    }

    fn need(&mut self) {
        let need = &self.plan.need;
        for (part, pressure) in &need.parts {
            let RuleWords { name, reason } = self.words.need_part(*part);
            let shown = self.show(Quantity::Pressure(pressure.value));
            self.row(name, &shown, reason);
        }
        let name = self.words.rule(need.pressure.working.rule).name;
        let shown = self.show(Quantity::Pressure(need.pressure.value));
        let reason = (screen().need_reason)(
            &self.words.need_part(need.governing).name.to_lowercase(),
            &self.show(Quantity::Temperature(need.condensing)),
        );
        self.row(name, &shown, &reason);
    }

    fn hold_limits(&mut self) {
        for method in Method::ALL
            .into_iter()
            .filter(|method| self.plan.applies(*method))
        {
            let RuleWords { name, reason } = self.words.method(method);
            let limit = self.plan.hold.of(method).value;
            let shown = self.show(Quantity::Temperature(limit));
            self.row(name, &shown, reason);
        }
    }

    /// Head pressure with each method along outdoor temperature.
    fn along_outdoor_temperature(&mut self) {
        let t = screen();
        let shown = [Method::FullFan, Method::OnOff, Method::SpeedControl];
        let names = shown.map(|method| self.words.method(method).name);
        let head = [t.outdoor, names[0], names[1], names[2], t.fan_speed];
        let widths = widths([11, 18, 18, 18, 12], head);
        self.cells(widths, head);
        for outdoor in rungs(self.units) {
            // Where it is too hot or too cold for the refrigerant there is nothing to write.
            let Ok(rung) = self.plan.at(outdoor) else {
                continue;
            };
            let pressure = |method| self.show(Quantity::Pressure(rung.of(method).pressure));
            let slowed = rung.of(Method::SpeedControl);
            let cells = [
                self.show(Quantity::Temperature(outdoor)),
                pressure(shown[0]),
                pressure(shown[1]),
                pressure(shown[2]),
                self.show(Quantity::Ratio(slowed.fan_speed_fraction)),
            ];
            self.cells(widths, cells.each_ref().map(String::as_str));
        }
    }

    fn cells(&mut self, widths: [usize; 5], cells: [&str; 5]) {
        let [outdoor, a, b, c, fan] = cells;
        let [w0, w1, w2, w3, w4] = widths;
        self.line(&format!("{outdoor:>w0$}{a:>w1$}{b:>w2$}{c:>w3$}{fan:>w4$}"));
    }

    /// What nobody entered, and what stands in for it.
    fn assumed(&mut self, system: &System) {
        let blank = |field: &&Field| system.entry(**field).is_none_or(|entry| entry.is_blank());
        for &field in Field::ALL.iter().filter(blank) {
            let value = match system.assumed(field) {
                Assumed::Value(quantity) => self.show(quantity),
                Assumed::Choice(key) => self.words.choice(field, key).to_owned(),
                Assumed::WorkedOut => screen().worked_out.to_owned(),
                Assumed::LeftOut | Assumed::Nothing => continue,
            };
            self.row(self.words.field(field).ask, &value, "");
        }
    }
}

/// Widths of columns: at least as given, and wider where a head asks for more.
fn widths<const N: usize>(least: [usize; N], heads: [&str; N]) -> [usize; N] {
    let mut widths = least;
    for (width, head) in widths.iter_mut().zip(heads) {
        *width = (*width).max(head.chars().count() + 2);
    }
    widths
}

/// Outdoor temperatures of a table: each 10 °F or 5 °C, warm first.
fn rungs(units: Units) -> Vec<ThermodynamicTemperature> {
    let steps = |coldest: i32, warmest: i32, step: i32| {
        let steps = (coldest..=warmest).rev();
        steps.map(move |number| f64::from(number * step))
    };
    match units.temperature {
        TemperatureUnit::Fahrenheit => steps(-4, 10, 10)
            .map(ThermodynamicTemperature::new::<degree_fahrenheit>)
            .collect(),
        TemperatureUnit::Celsius => steps(-8, 8, 5)
            .map(ThermodynamicTemperature::new::<degree_celsius>)
            .collect(),
    }
}

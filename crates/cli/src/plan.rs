//! A winter plan, for reading.

use std::path::Path;

use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_calc::settings::Drive;
use winterset_calc::{Method, Plan, Quantity};
use winterset_profile::{FieldError, System};
use winterset_words::{Language, TemperatureUnit, Units, Words};

use crate::error::Error;
use crate::output;

pub fn print(file: &Path, units: Units) -> Result<(), Error> {
    let text = std::fs::read_to_string(file).map_err(|source| Error::File {
        path: file.to_owned(),
        source,
    })?;
    let system = System::from_json(&text).map_err(|source| Error::Record {
        path: file.to_owned(),
        source,
    })?;
    let words = Language::English.words();
    let plan = system.plan().map_err(|errors| {
        Error::Fields(
            errors
                .iter()
                .map(|error| line_of(error, words, units))
                .collect(),
        )
    })?;
    let mut report = Report {
        plan: &plan,
        words,
        units,
        out: String::new(),
    };
    report.write(&system.name);
    Ok(output::print(&report.out)?)
}

fn line_of(error: &FieldError, words: &dyn Words, units: Units) -> String {
    format!(
        "{}: {}",
        error.field.key(),
        words.problem(error.field, &error.problem, units)
    )
}

struct Report<'a> {
    plan: &'a Plan,
    words: &'static dyn Words,
    units: Units,
    out: String,
}

impl Report<'_> {
    fn show(&self, quantity: Quantity) -> String {
        self.units
            .show(&quantity, self.plan.atmosphere.value)
            .to_string()
    }

    fn write(&mut self, name: &str) {
        let plan = self.plan;
        self.line(format!("{name}\n"));
        self.line(self.words.verdict(plan.verdict, plan, self.units));
        self.line(format!(
            "{}\n",
            self.words
                .action(plan.verdict.action(plan.input.motor.value))
        ));
        self.settings();
        self.need();
        self.along_outdoor_temperature();
        for caution in &plan.cautions {
            let caution = self.words.caution(*caution);
            self.line(format!("{}: {}", caution.title, caution.text));
        }
    }

    /// One line more.
    fn line(&mut self, text: impl AsRef<str>) {
        self.out.push_str(text.as_ref());
        self.out.push('\n');
    }

    fn row(&mut self, name: &str, value: &str, reason: &str) {
        self.line(format!("  {name:<36}{value:>18}  {reason}"));
    }

    fn settings(&mut self) {
        let settings = &self.plan.settings;
        self.line("Settings sheet");
        let sensing = self.words.sensing(settings.sensing.value);
        self.row("Sense", sensing.name, sensing.reason);
        let rule = |rule| self.words.rule(rule);
        let pressure = &settings.full_speed_pressure;
        let words = rule(pressure.working.rule);
        self.row(
            words.name,
            &self.show(Quantity::Pressure(pressure.value)),
            words.reason,
        );
        let coil = &settings.full_speed_coil;
        let words = rule(coil.working.rule);
        self.row(
            words.name,
            &self.show(Quantity::Temperature(coil.value)),
            words.reason,
        );
        let words = rule(settings.throttling_pressure.working.rule);
        let range = format!(
            "{} / {}",
            self.show(Quantity::PressureDifference(
                settings.throttling_pressure.value
            )),
            self.show(Quantity::Difference(settings.throttling_coil.value))
        );
        self.row(words.name, &range, words.reason);
        let minimum = settings.drive.minimum_output();
        let words = rule(minimum.working.rule);
        let mut value = self.show(Quantity::Ratio(minimum.value));
        if let Drive::PhaseCut {
            minimum_voltage, ..
        } = settings.drive
        {
            value = format!(
                "{value} / {}",
                self.show(Quantity::Voltage(minimum_voltage))
            );
        }
        self.row(words.name, &value, words.reason);
        let slowest = settings.drive.lowest_speed();
        let words = rule(slowest.working.rule);
        self.row(
            words.name,
            &self.show(Quantity::Speed(slowest.value)),
            words.reason,
        );
        if let Drive::PhaseCut { start_boost, .. } = &settings.drive {
            let words = rule(start_boost.working.rule);
            self.row(
                words.name,
                &self.show(Quantity::Time(start_boost.value)),
                words.reason,
            );
        }
        for note in &settings.notes {
            self.line(format!("  {}", self.words.note(*note, self.units)));
        }
        self.line("");
    }

    fn need(&mut self) {
        self.line("Pressure need");
        let need = &self.plan.need;
        for (part, pressure) in &need.parts {
            let words = self.words.need_part(*part);
            let mark = if *part == need.governing {
                ", governs"
            } else {
                ""
            };
            self.row(
                &format!("{}{mark}", words.name),
                &self.show(Quantity::Pressure(pressure.value)),
                words.reason,
            );
        }
        self.line("\nHold limits");
        for method in Method::ALL {
            let words = self.words.method(method);
            let limit = self.plan.hold.of(method).value;
            self.row(
                words.name,
                &self.show(Quantity::Temperature(limit)),
                words.reason,
            );
        }
        self.line("");
    }

    fn along_outdoor_temperature(&mut self) {
        self.line(format!(
            "{:>12}{:>14}{:>14}{:>14}{:>8}",
            "outdoor", "full fan", "on/off", "speed control", "fan"
        ));
        for outdoor in rungs(self.units) {
            let Ok(rung) = self.plan.at(outdoor) else {
                continue;
            };
            self.line(format!(
                "{:>12}{:>14}{:>14}{:>14}{:>8}",
                self.show(Quantity::Temperature(outdoor)),
                self.show(Quantity::Pressure(rung.full_fan.pressure)),
                self.show(Quantity::Pressure(rung.on_off.pressure)),
                self.show(Quantity::Pressure(rung.speed_control.pressure)),
                self.show(Quantity::Ratio(rung.speed_control.fan_speed_fraction)),
            ));
        }
        self.line("");
    }
}

/// Outdoor temperatures of a table: each 10 °F or 5 °C, warm first.
fn rungs(units: Units) -> Vec<ThermodynamicTemperature> {
    let celsius = |degrees: f64| ThermodynamicTemperature::new::<degree_celsius>(degrees);
    match units.temperature {
        TemperatureUnit::Fahrenheit => (-4..=10)
            .rev()
            .map(|ten| celsius((f64::from(10 * ten) - 32.0) / 1.8))
            .collect(),
        TemperatureUnit::Celsius => (-8..=8)
            .rev()
            .map(|five| celsius(f64::from(5 * five)))
            .collect(),
    }
}

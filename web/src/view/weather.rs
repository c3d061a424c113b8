//! The winter hours of a site in a person's words and units.

use uom::si::f64::Pressure;
use winterset_calc::{Field, Quantity};
use winterset_profile::{Entry, Kind, System, WinterHours};
use winterset_words::{Units, mark, symbol};

use super::words;
use crate::weather_file::FileError;

/// The design low to the tenth, rounded to the cold side.
fn tenths(hours: &WinterHours, units: Units) -> f64 {
    let number = units.unit(Kind::Temperature).number(
        &Quantity::Temperature(hours.design_low()),
        Pressure::default(),
    );
    // A change of units leaves a last digit; a tenth that is nearly there is meant.
    let tenths = (number * 10.0 + 1e-6).floor() / 10.0;
    // Adding nothing turns a zero below nothing into a plain one.
    tenths + 0.0
}

/// The design low as a person would type it, with its unit.
pub fn low_entry(hours: &WinterHours, units: Units) -> Entry {
    let typed = mark(tenths(hours, units)).replace('\u{2212}', "-");
    Entry::with_unit(typed, units.unit(Kind::Temperature).token())
}

/// The same to read.
pub fn low(hours: &WinterHours, units: Units) -> String {
    let unit = symbol(units.unit(Kind::Temperature));
    format!("{}\u{a0}{unit}", mark(tenths(hours, units)))
}

/// Whether a system has the design low as its site's low, typed in whichever language.
pub fn is_low_of(system: &System, hours: &WinterHours, units: Units) -> bool {
    let offered = low_entry(hours, units);
    let plain = |entry: &Entry| entry.typed.replace(',', ".");
    system
        .entry(Field::OutdoorLow)
        .is_some_and(|entry| plain(entry) == plain(&offered) && entry.unit == offered.unit)
}

/// Why a file gives no hours, and which one would.
pub fn wrong(error: &FileError) -> String {
    let t = words().weather();
    match error {
        FileError::Unreadable => t.unreadable.to_owned(),
        FileError::Epw(error) => words().weather_error(error),
        FileError::NotAYear(covered) => {
            (t.not_a_year)(&Units::default().hours(*covered).to_string())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use winterset_words::{Language, PressureUnit, TemperatureUnit};

    #[test]
    fn a_low_is_written_as_a_person_types_it_and_never_warmer() {
        let hours = |kelvin: f64| -> WinterHours {
            let text = format!(r#"{{"design_low":{kelvin},"first":0,"minutes":[525600]}}"#);
            serde_json::from_str(&text).unwrap()
        };
        let celsius = Units {
            temperature: TemperatureUnit::Celsius,
            pressure: PressureUnit::Bar,
        };
        let us = Units::default();
        for (kelvin, in_celsius, in_fahrenheit) in [
            (273.15, "0", "32"),
            (261.05, "-12.1", "10.2"),
            (260.87, "-12.3", "9.8"),
            (273.1, "-0.1", "31.9"),
        ] {
            assert_eq!(low_entry(&hours(kelvin), celsius).typed, in_celsius);
            assert_eq!(low_entry(&hours(kelvin), us).typed, in_fahrenheit);
        }
        assert_eq!(low(&hours(261.05), celsius), "\u{2212}12.1\u{a0}°C");
        let mut system = System::new("", "");
        system.set(Field::OutdoorLow, low_entry(&hours(261.05), celsius));
        Language::French.speak();
        assert_eq!(low_entry(&hours(261.05), celsius).typed, "-12,1");
        assert_eq!(low(&hours(261.05), celsius), "\u{2212}12,1\u{a0}°C");
        assert!(is_low_of(&system, &hours(261.05), celsius));
        assert!(!is_low_of(&system, &hours(262.05), celsius));
    }
}

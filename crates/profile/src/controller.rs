//! A controller that a technician keeps at hand: its limits exactly as typed, and the way from there to limits that settings are held against.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use uom::si::f64::Pressure;
use winterset_calc::own_controller::{InputLimits, Limits, MotorOutput, OwnController};

use crate::amount::{Amount, AmountProblem, Measure, read_amount};
use crate::record::Entry;

macro_rules! fields {
    ($($(#[doc = $doc:literal])+ $name:ident = $key:literal: $measure:ident, $low:expr, $high:expr;)+) => {
        /// A limit of a controller that is a number.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum ControllerField { $($(#[doc = $doc])+ $name,)+ }

        impl ControllerField {
            /// Every one, in the order of a form.
            pub const ALL: &'static [ControllerField] = &[$(ControllerField::$name,)+];

            /// The stable name that records carry.
            pub fn key(self) -> &'static str {
                match self { $(ControllerField::$name => $key,)+ }
            }

            /// What it measures.
            pub fn measure(self) -> Measure {
                match self { $(ControllerField::$name => Measure::$measure,)+ }
            }

            /// The lowest and the highest that a controller can have, in SI.
            pub fn range(self) -> (f64, f64) {
                match self { $(ControllerField::$name => ($low, $high),)+ }
            }
        }
    };
}

// The ranges are those of `OwnController::problems`, which a test holds them to.
fields! {
    /// Lowest full-speed point of an input for pressure.
    PressurePointLowest = "pressure_point_lowest": Pressure, 0.05e6, 20e6;
    /// Highest full-speed point of an input for pressure.
    PressurePointHighest = "pressure_point_highest": Pressure, 0.05e6, 20e6;
    /// Narrowest throttling range of an input for pressure.
    PressureRangeLowest = "pressure_range_lowest": PressureDifference, 0.0, 5e6;
    /// Widest throttling range of an input for pressure.
    PressureRangeHighest = "pressure_range_highest": PressureDifference, 0.0, 5e6;
    /// Lowest full-speed point of an input for temperature.
    TemperaturePointLowest = "temperature_point_lowest": Temperature, 233.15, 393.15;
    /// Highest full-speed point of an input for temperature.
    TemperaturePointHighest = "temperature_point_highest": Temperature, 233.15, 393.15;
    /// Narrowest throttling range of an input for temperature.
    TemperatureRangeLowest = "temperature_range_lowest": Difference, 0.0, 60.0;
    /// Widest throttling range of an input for temperature.
    TemperatureRangeHighest = "temperature_range_highest": Difference, 0.0, 60.0;
    /// Lowest minimum output that can be set.
    MinimumOutputLowest = "minimum_output_lowest": Share, 0.0, 1.0;
    /// Highest minimum output that can be set.
    MinimumOutputHighest = "minimum_output_highest": Share, 0.0, 1.0;
    /// Shortest start boost.
    StartBoostLowest = "start_boost_lowest": Time, 0.0, 60.0;
    /// Longest start boost.
    StartBoostHighest = "start_boost_highest": Time, 0.0, 60.0;
    /// Lowest supply voltage.
    SupplyLowest = "supply_lowest": Voltage, 12.0, 1000.0;
    /// Highest supply voltage.
    SupplyHighest = "supply_highest": Voltage, 12.0, 1000.0;
    /// Rated current of all motors together.
    RatedCurrent = "rated_current": Current, 0.1, 1000.0;
}

/// A controller of the technician's own, as typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Controller {
    /// What tells it from other controllers.
    #[serde(default)]
    pub id: String,
    /// What a person calls it.
    #[serde(default)]
    pub name: String,
    /// The kind of its motor output, by [`MotorOutput::key`]; empty where it is not known.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub output: String,
    /// What was typed, by [`ControllerField::key`].
    #[serde(default)]
    pub entries: BTreeMap<String, Entry>,
    /// What a newer version keeps here and this one does not know.
    #[serde(flatten)]
    pub other: BTreeMap<String, serde_json::Value>,
}

/// What is wrong with a limit, and what would be right.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ControllerProblem {
    /// It cannot be read, or no controller has it.
    #[error(transparent)]
    Amount(#[from] AmountProblem),
    /// Only the other end of the span was typed, or only the other setting of the same input.
    #[error("its counterpart is there, this is missing")]
    Missing,
    /// The highest is below the lowest, which this is.
    #[error("below {lowest:?}")]
    BelowLowest {
        /// The lowest.
        lowest: Amount,
    },
}

/// A problem at a limit.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{}: {problem}", .field.key())]
pub struct ControllerWrong {
    /// The limit that would have to change.
    pub field: ControllerField,
    /// What is wrong with it.
    pub problem: ControllerProblem,
}

impl Controller {
    /// A controller of which nothing is known.
    pub fn new(id: impl Into<String>) -> Self {
        Self {
            id: id.into(),
            ..Self::default()
        }
    }

    /// What was typed at a limit.
    pub fn entry(&self, field: ControllerField) -> Option<&Entry> {
        self.entries.get(field.key())
    }

    /// Keeps what was typed at a limit; an entry that holds nothing is forgotten.
    pub fn set(&mut self, field: ControllerField, entry: Entry) {
        if entry == Entry::default() {
            self.entries.remove(field.key());
        } else {
            self.entries.insert(field.key().to_owned(), entry);
        }
    }

    /// The limits as far as they can be read, and everything that cannot. `atmosphere` is what gauge pressure stands on. A limit that is
    /// wrong counts as not stated.
    pub fn read(&self, atmosphere: Pressure) -> (OwnController, Vec<ControllerWrong>) {
        use ControllerField as F;
        let mut reader = Reader {
            controller: self,
            atmosphere,
            wrong: Vec::new(),
        };
        let pressure = reader.input(
            (F::PressurePointLowest, F::PressurePointHighest),
            (F::PressureRangeLowest, F::PressureRangeHighest),
        );
        let temperature = reader.input(
            (F::TemperaturePointLowest, F::TemperaturePointHighest),
            (F::TemperatureRangeLowest, F::TemperatureRangeHighest),
        );
        let pressure = pressure.and_then(|(point, range)| {
            Some(InputLimits::Pressure {
                full_speed: limits(point, |amount| amount.pressure())?,
                throttling: limits(range, |amount| amount.pressure())?,
            })
        });
        let temperature = temperature.and_then(|(point, range)| {
            Some(InputLimits::Temperature {
                full_speed: limits(point, |amount| amount.temperature())?,
                throttling: limits(range, |amount| amount.difference())?,
            })
        });
        let own = OwnController {
            inputs: pressure.into_iter().chain(temperature).collect(),
            minimum_output: reader
                .span(F::MinimumOutputLowest, F::MinimumOutputHighest)
                .and_then(|span| limits(span, |amount| amount.si)),
            start_boost: reader
                .span(F::StartBoostLowest, F::StartBoostHighest)
                .and_then(|span| limits(span, |amount| amount.time())),
            outputs: MotorOutput::from_key(self.output.trim())
                .into_iter()
                .collect(),
            supply: reader
                .span(F::SupplyLowest, F::SupplyHighest)
                .and_then(|span| limits(span, |amount| amount.voltage())),
            rated_current: reader
                .amount(F::RatedCurrent)
                .map(|amount| amount.current()),
        };
        (own, reader.wrong)
    }
}

fn limits<T: PartialOrd + Copy>(
    (low, high): (Amount, Amount),
    typed: fn(&Amount) -> T,
) -> Option<Limits<T>> {
    Limits::new(typed(&low), typed(&high)).ok()
}

/// The lowest and the highest.
type Span = (Amount, Amount);

/// Reads one controller, gathering every problem.
struct Reader<'a> {
    controller: &'a Controller,
    atmosphere: Pressure,
    wrong: Vec<ControllerWrong>,
}

impl Reader<'_> {
    fn fail(&mut self, field: ControllerField, problem: ControllerProblem) {
        self.wrong.push(ControllerWrong { field, problem });
    }

    fn is_blank(&self, field: ControllerField) -> bool {
        self.controller.entry(field).is_none_or(Entry::is_blank)
    }

    fn amount(&mut self, field: ControllerField) -> Option<Amount> {
        let entry = self.controller.entry(field);
        let entry = entry.filter(|entry| !entry.is_blank())?;
        let measure = field.measure();
        let beside = *measure.scales().first()?;
        match read_amount(measure, entry, beside, field.range(), self.atmosphere) {
            Ok(amount) => Some(amount),
            Err(problem) => {
                self.fail(field, problem.into());
                None
            }
        }
    }

    fn span(&mut self, low: ControllerField, high: ControllerField) -> Option<Span> {
        if self.is_blank(low) && self.is_blank(high) {
            return None;
        }
        for field in [low, high] {
            if self.is_blank(field) {
                self.fail(field, ControllerProblem::Missing);
            }
        }
        let (lowest, highest) = (self.amount(low), self.amount(high));
        let (lowest, highest) = (lowest?, highest?);
        if highest.si < lowest.si {
            self.fail(high, ControllerProblem::BelowLowest { lowest });
            return None;
        }
        Some((lowest, highest))
    }

    /// Both settings that stand in the quantity of an input.
    fn input(
        &mut self,
        point: (ControllerField, ControllerField),
        range: (ControllerField, ControllerField),
    ) -> Option<(Span, Span)> {
        let ends = [point.0, point.1, range.0, range.1];
        if ends.iter().all(|field| self.is_blank(*field)) {
            return None;
        }
        for (low, high) in [point, range] {
            if self.is_blank(low) && self.is_blank(high) {
                self.fail(low, ControllerProblem::Missing);
                self.fail(high, ControllerProblem::Missing);
            }
        }
        let (point, range) = (self.span(point.0, point.1), self.span(range.0, range.1));
        Some((point?, range?))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use ControllerField as F;
    use uom::si::electric_potential::volt;
    use uom::si::f64::ElectricPotential;
    use uom::si::pressure::{bar, pascal};
    use winterset_calc::input::Sensing;

    fn sea_level() -> Pressure {
        Pressure::new::<pascal>(101_325.0)
    }

    fn typed(entries: &[(ControllerField, &str, &str)]) -> Controller {
        let mut controller = Controller::new("a");
        for (field, typed, unit) in entries {
            controller.set(*field, Entry::with_unit(*typed, *unit));
        }
        controller
    }

    #[test]
    fn limits_are_read_in_their_units() {
        let mut controller = typed(&[
            (F::PressurePointLowest, "8", "bar"),
            (F::PressurePointHighest, "31 bar", "kPa"),
            (F::PressureRangeLowest, "1", "bar"),
            (F::PressureRangeHighest, "600", "kPa"),
            (F::MinimumOutputLowest, "20", "%"),
            (F::MinimumOutputHighest, "60", "%"),
            (F::SupplyLowest, "208", "V"),
            (F::SupplyHighest, "240", "V"),
        ]);
        controller.output = "phase-cut".to_owned();
        let (own, wrong) = controller.read(sea_level());
        assert_eq!(wrong, []);
        assert_eq!(own.problems(), []);
        assert_eq!(own.outputs, [MotorOutput::PhaseCut]);
        let Some(InputLimits::Pressure {
            full_speed,
            throttling,
        }) = own.inputs.first()
        else {
            panic!("{own:?}");
        };
        assert_eq!(own.inputs.len(), 1);
        // A gauge value stands on the atmosphere, a range does not.
        assert!((full_speed.low().get::<bar>() - 9.01325).abs() < 1e-9);
        assert!((full_speed.high().get::<bar>() - 32.01325).abs() < 1e-9);
        assert!((throttling.low().get::<bar>() - 1.0).abs() < 1e-9);
        assert!((throttling.high().get::<bar>() - 6.0).abs() < 1e-9);
        assert_eq!(own.minimum_output.map(|limits| limits.high()), Some(0.6));
        let supply = own.supply.map(|limits| limits.low());
        assert_eq!(supply, Some(ElectricPotential::new::<volt>(208.0)));
        assert_eq!((own.start_boost, own.rated_current), (None, None));
    }

    #[test]
    fn everything_wrong_is_told_at_its_limit_and_counts_as_not_stated() {
        let (own, wrong) = typed(&[
            (F::TemperaturePointLowest, "20", "C"),
            (F::TemperaturePointHighest, "50", "C"),
            (F::StartBoostLowest, "5", "s"),
            (F::StartBoostHighest, "1", "s"),
            (F::SupplyLowest, "mains", "V"),
            (F::SupplyHighest, "240", "V"),
            (F::RatedCurrent, "8000", "A"),
        ])
        .read(sea_level());
        let at: Vec<_> = wrong.iter().map(|wrong| wrong.field).collect();
        let wanted = [
            F::TemperatureRangeLowest,
            F::TemperatureRangeHighest,
            F::StartBoostHighest,
            F::SupplyLowest,
            F::RatedCurrent,
        ];
        assert_eq!(at, wanted);
        assert!(matches!(
            wrong.get(2).map(|wrong| &wrong.problem),
            Some(ControllerProblem::BelowLowest { .. })
        ));
        assert_eq!(own, OwnController::default());
        let (_, one_end) = typed(&[(F::MinimumOutputLowest, "20", "%")]).read(sea_level());
        assert_eq!(one_end.len(), 1);
        assert_eq!(one_end[0].field, F::MinimumOutputHighest);
    }

    /// At the ends of every range stands a controller that exists, and beyond them one that does not.
    #[test]
    fn ranges_are_those_that_controllers_have() {
        let spans: Vec<_> = ControllerField::ALL.chunks(2).collect();
        let si = |field: ControllerField, beyond: f64| {
            let (low, high) = field.range();
            let text = |si: f64| {
                let scale = field.measure().scales().last().unwrap();
                // Kept with all digits of a double, so that nothing is rounded out of the range.
                Entry::with_unit(
                    format!("{}", scale.number(si, Pressure::default())),
                    scale.token(),
                )
            };
            (text(low - beyond), text(high + beyond))
        };
        let mut controller = Controller::new("all");
        for span in spans {
            let (low, high) = si(span[0], 0.0);
            controller.set(span[0], low);
            if let Some(highest) = span.get(1) {
                controller.set(*highest, high);
            }
        }
        let (own, wrong) = controller.read(Pressure::default());
        assert_eq!(wrong, []);
        assert_eq!(own.inputs.len(), 2);
        assert_eq!(own.inputs[1].sensing(), Sensing::CoilTemperature);
        assert_eq!(own.problems(), []);
        for field in ControllerField::ALL {
            let (low, high) = field.range();
            let beyond = (high - low) / 100.0;
            for entry in [si(*field, beyond).0, si(*field, beyond).1] {
                controller.set(*field, entry);
                let (_, wrong) = controller.read(Pressure::default());
                assert!(wrong.iter().any(|wrong| wrong.field == *field), "{field:?}");
            }
            let (low, high) = si(*field, 0.0);
            let is_low = field.key().ends_with("lowest") || *field == F::RatedCurrent;
            controller.set(*field, if is_low { low } else { high });
        }
    }

    #[test]
    fn older_and_newer_forms_are_kept_as_they_are() {
        let older: Controller = serde_json::from_str("{}").unwrap();
        assert_eq!(older, Controller::default());
        let text = r#"{"id":"x","name":"Grey box","output":"modulated-pulse","entries":{"supply_lowest":{"typed":"zwölf","unit":"V"},"colour":{"typed":"grey"}},"photos":[1]}"#;
        let newer: Controller = serde_json::from_str(text).unwrap();
        let (own, wrong) = newer.read(sea_level());
        assert!(own.outputs.is_empty());
        assert_eq!(wrong.len(), 2);
        let back: serde_json::Value =
            serde_json::from_str(&serde_json::to_string(&newer).unwrap()).unwrap();
        assert_eq!(
            back,
            serde_json::from_str::<serde_json::Value>(text).unwrap()
        );
    }
}

//! From what was typed to a typed, validated input; every problem at its field.

use uom::si::f64::{Pressure, TemperatureInterval, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use winterset_calc::compressor::Suction;
use winterset_calc::compressor::coefficients::{CoefficientError, Coefficients};
use winterset_calc::compressor::polynomial::{FlowUnit, Polynomial, PowerUnit, TemperatureScale};
use winterset_calc::compressor::rating::DataSheet;
use winterset_calc::input::{
    Bearing, BelowMinimum, CapacityControl, Defrost, Duty, Essentials, Input, Load, Metering,
    MotorKind, Reversing, Sensing, SheetUnits,
};
use winterset_calc::{Field, Given, InputError, Quantity, usual};
use winterset_refrigerant::{Error, Refrigerant};

use crate::number::{self, NumberError};
use crate::record::{Entry, System};
use crate::unit::{Kind, Unit};

/// What is wrong with an entry, and what would be right.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Problem {
    /// Nothing was typed, and nothing can be assumed.
    #[error("nothing entered")]
    Missing,
    /// The text holds no number.
    #[error("{typed:?} is no number")]
    NotANumber {
        /// What was typed.
        typed: String,
    },
    /// The number has a unit that does not go with the field.
    #[error("{unit:?} is no unit of this field")]
    UnknownUnit {
        /// The unit as typed.
        unit: String,
        /// The kind of unit that goes with the field.
        kind: Kind,
    },
    /// A number that can be read in two ways, a thousand apart.
    #[error("either {whole} or {decimal}")]
    Ambiguous {
        /// The one reading, to type instead.
        whole: String,
        /// The other.
        decimal: String,
    },
    /// A count that is not whole.
    #[error("not a whole number")]
    NotWhole,
    /// No choice has this name.
    #[error("{typed:?} is no choice")]
    UnknownChoice {
        /// What the record holds.
        typed: String,
        /// The names of the choices.
        choices: Vec<&'static str>,
    },
    /// No refrigerant has this name.
    #[error("{typed:?} is no refrigerant that is known here")]
    UnknownRefrigerant {
        /// What was typed.
        typed: String,
    },
    /// The shares of a typed blend do not make a whole.
    #[error("the shares sum to {sum}")]
    BlendSum {
        /// What they sum to.
        sum: f64,
    },
    /// Both of two fields that stand for each other are filled in.
    #[error("either this or {}, not both", .other.key())]
    EitherOr {
        /// The other field.
        other: Field,
    },
    /// Not the ten coefficients of a data sheet.
    #[error(transparent)]
    Coefficients(#[from] CoefficientError),
    /// A number, but not one that the models hold for.
    #[error(transparent)]
    Calc(#[from] winterset_calc::Problem),
}

/// A problem at a field.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{}: {problem}", .field.key())]
pub struct FieldError {
    /// The field that would have to change.
    pub field: Field,
    /// What is wrong with it.
    pub problem: Problem,
}

impl From<InputError> for FieldError {
    fn from(error: InputError) -> Self {
        Self {
            field: error.field,
            problem: error.problem.into(),
        }
    }
}

/// What a number at a field measures; `None` for choices and the refrigerant.
pub fn kind_of(field: Field) -> Option<Kind> {
    Some(match field {
        Field::CoolingCapacity | Field::HeatRejected | Field::FanPower => Kind::Power,
        Field::OutdoorLow
        | Field::KnownOutdoor
        | Field::Evaporating
        | Field::CompressorLowest
        | Field::CompressorHighest
        | Field::HeatReclaim
        | Field::ReturnAir => Kind::Temperature,
        Field::OverAmbient | Field::ThrottlingRange | Field::SheetSuperheat | Field::Subcooling => {
            Kind::Difference
        }
        Field::Fans | Field::ModulatedFans | Field::CompressorStages => Kind::Count,
        Field::Airflow | Field::IndoorAirflow => Kind::Airflow,
        Field::LiquidDiameter => Kind::Bore,
        Field::FullLoad => Kind::Current,
        Field::Voltage => Kind::Voltage,
        Field::Frequency => Kind::Frequency,
        Field::RatedSpeed => Kind::Speed,
        Field::Elevation | Field::LiquidLength | Field::LiquidLift => Kind::Elevation,
        Field::IdleAirflow
        | Field::Recirculation
        | Field::Dirt
        | Field::LowestLoad
        | Field::ReturnHumidity => Kind::Share,
        Field::Refrigerant
        | Field::Metering
        | Field::Motor
        | Field::Bearing
        | Field::Duty
        | Field::CapacityControl
        | Field::Defrost
        | Field::ReversingValve
        | Field::BelowMinimum
        | Field::FlowCoefficients
        | Field::PowerCoefficients
        | Field::SheetUnits
        | Field::Sensing => {
            return None;
        }
    })
}

/// What a blank field is taken to be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Assumed {
    /// A value.
    Value(Quantity),
    /// The key of a choice.
    Choice(&'static str),
    /// Worked out from other answers.
    WorkedOut,
    /// Nothing: the field needs an answer.
    Nothing,
    /// Nothing: the field may stay blank.
    LeftOut,
}

/// The refrigerant that a text names: a designation (`R-454B`, `454b`), or a blend by mass as
/// `R-32/R-1234yf 68.9/31.1`, in percent or in fractions.
///
/// # Errors
/// [`Problem::UnknownRefrigerant`] or [`Problem::BlendSum`].
pub fn read_refrigerant(typed: &str) -> Result<Refrigerant, Problem> {
    let typed = typed.trim();
    let unknown = || Problem::UnknownRefrigerant {
        typed: typed.to_owned(),
    };
    if !typed.contains('/') {
        return Refrigerant::named(typed).map_err(|_| unknown());
    }
    // As many shares as names, so the middle piece holds the last name and the first share.
    let bare = typed.replace('%', "");
    let mut names: Vec<&str> = bare.split('/').collect();
    let middle = names.len() / 2;
    let shares = names.split_off(middle);
    let (joined, others) = shares.split_first().ok_or_else(unknown)?;
    let (name, first) = joined
        .trim()
        .rsplit_once(|c: char| c.is_whitespace() || c == '(')
        .ok_or_else(unknown)?;
    names.push(name.trim_end_matches(['(', ' ']));
    let shares: Vec<f64> = std::iter::once(first)
        .chain(others.iter().copied())
        .map(|share| share.trim_matches(['(', ')', ' ']))
        .map(|share| number::parse(Kind::Count, share).map(|typed| typed.number))
        .collect::<Result<_, _>>()
        .map_err(|_| unknown())?;
    if names.len() != shares.len() {
        return Err(unknown());
    }
    let sum: f64 = shares.iter().sum();
    // Percent where the shares sum to about a hundred.
    let whole = if sum > 1.5 { 100.0 } else { 1.0 };
    let parts: Vec<(&str, f64)> = names
        .into_iter()
        .zip(shares)
        .map(|(name, share)| (name, share / whole))
        .collect();
    Refrigerant::blend(&parts).map_err(|error| match error {
        Error::CompositionSum { sum } => Problem::BlendSum { sum },
        _ => unknown(),
    })
}

/// Reads one record, gathering every problem.
struct Reader<'a> {
    system: &'a System,
    errors: Vec<FieldError>,
}

impl Reader<'_> {
    fn fail(&mut self, field: Field, problem: Problem) {
        self.errors.push(FieldError { field, problem });
    }

    fn entry(&self, field: Field) -> Option<&Entry> {
        self.system.entry(field).filter(|entry| !entry.is_blank())
    }

    fn quantity(&mut self, field: Field) -> Option<Quantity> {
        let entry = self.entry(field)?;
        match read_quantity(field, entry) {
            Ok(quantity) => Some(quantity),
            Err(problem) => {
                self.fail(field, problem);
                None
            }
        }
    }

    fn choice<T: Copy>(
        &mut self,
        field: Field,
        from_key: impl Fn(&str) -> Option<T>,
        choices: impl Iterator<Item = &'static str>,
    ) -> Option<T> {
        let typed = self.entry(field)?.typed.trim().to_owned();
        let choice = from_key(&typed);
        if choice.is_none() {
            let choices = choices.collect();
            self.fail(field, Problem::UnknownChoice { typed, choices });
        }
        choice
    }

    fn refrigerant(&mut self) -> Option<Refrigerant> {
        let Some(entry) = self.entry(Field::Refrigerant) else {
            self.fail(Field::Refrigerant, Problem::Missing);
            return None;
        };
        match read_refrigerant(&entry.typed) {
            Ok(refrigerant) => Some(refrigerant),
            Err(problem) => {
                self.fail(Field::Refrigerant, problem);
                None
            }
        }
    }

    fn load(&mut self) -> Option<Load> {
        let both = self.entry(Field::CoolingCapacity).is_some()
            && self.entry(Field::HeatRejected).is_some();
        if both {
            self.fail(
                Field::HeatRejected,
                Problem::EitherOr {
                    other: Field::CoolingCapacity,
                },
            );
        }
        if self.entry(Field::HeatRejected).is_some() && !both {
            return match self.quantity(Field::HeatRejected)? {
                Quantity::Power(heat) => Some(Load::Rejected(heat)),
                _ => None,
            };
        }
        if self.entry(Field::CoolingCapacity).is_none() {
            self.fail(Field::CoolingCapacity, Problem::Missing);
            return None;
        }
        match self.quantity(Field::CoolingCapacity)? {
            Quantity::Power(cooling) => Some(Load::Cooling(cooling)),
            _ => None,
        }
    }

    fn outdoor_low(&mut self) -> Option<ThermodynamicTemperature> {
        if self.entry(Field::OutdoorLow).is_none() {
            self.fail(Field::OutdoorLow, Problem::Missing);
            return None;
        }
        match self.quantity(Field::OutdoorLow)? {
            Quantity::Temperature(low) => Some(low),
            _ => None,
        }
    }
}

/// Units that coefficients are taken to be printed in.
const SHEET_UNITS: SheetUnits = SheetUnits::CelsiusKilogramPerHour;

impl Reader<'_> {
    fn coefficients(&mut self, field: Field) -> Option<Coefficients> {
        let typed = self.entry(field)?.typed.clone();
        match Coefficients::parse(&typed) {
            Ok(coefficients) => Some(coefficients),
            Err(error) => {
                self.fail(field, error.into());
                None
            }
        }
    }

    /// The compressor's data sheet; without coefficients of the flow there is none.
    fn sheet(&mut self, refrigerant: &Refrigerant) -> Option<DataSheet> {
        let units = self
            .choice(
                Field::SheetUnits,
                SheetUnits::from_key,
                SheetUnits::ALL.iter().map(|units| units.key()),
            )
            .unwrap_or(SHEET_UNITS);
        let (scale, unit) = match units {
            SheetUnits::CelsiusKilogramPerHour => {
                (TemperatureScale::Celsius, FlowUnit::KilogramPerHour)
            }
            SheetUnits::CelsiusGramPerSecond => {
                (TemperatureScale::Celsius, FlowUnit::GramPerSecond)
            }
            SheetUnits::CelsiusKilogramPerSecond => {
                (TemperatureScale::Celsius, FlowUnit::KilogramPerSecond)
            }
            SheetUnits::FahrenheitPoundPerHour => {
                (TemperatureScale::Fahrenheit, FlowUnit::PoundPerHour)
            }
        };
        let superheat = match self.quantity(Field::SheetSuperheat) {
            Some(Quantity::Difference(superheat)) => superheat,
            _ => usual::sheet_superheat(),
        };
        let flow = self.coefficients(Field::FlowCoefficients);
        let power = self.coefficients(Field::PowerCoefficients);
        Some(DataSheet {
            refrigerant: refrigerant.clone(),
            mass_flow: Some(Polynomial {
                coefficients: flow?,
                scale,
                unit,
            }),
            power: power.map(|coefficients| Polynomial {
                coefficients,
                scale,
                unit: PowerUnit::Watt,
            }),
            current: None,
            capacity: None,
            suction: Suction::Superheat(superheat),
            subcooling: TemperatureInterval::default(),
        })
    }
}

/// The quantity typed at a field, inside the field's range.
fn read_quantity(field: Field, entry: &Entry) -> Result<Quantity, Problem> {
    let kind = kind_of(field).ok_or_else(|| Problem::NotANumber {
        typed: entry.typed.clone(),
    })?;
    let typed = number::parse(kind, &entry.typed).map_err(|error| match error {
        NumberError::NotANumber => Problem::NotANumber {
            typed: entry.typed.clone(),
        },
        NumberError::UnknownUnit { unit } => Problem::UnknownUnit { unit, kind },
        NumberError::Ambiguous { whole, decimal } => Problem::Ambiguous { whole, decimal },
    })?;
    let beside = entry.unit.as_deref().unwrap_or_default();
    let unit = match typed.unit {
        Some(unit) => unit,
        None if beside.is_empty() => Unit::of(kind).next().ok_or_else(|| Problem::UnknownUnit {
            unit: String::new(),
            kind,
        })?,
        None => Unit::parse(kind, beside).ok_or_else(|| Problem::UnknownUnit {
            unit: beside.to_owned(),
            kind,
        })?,
    };
    if kind == Kind::Count && typed.number.fract() != 0.0 {
        return Err(Problem::NotWhole);
    }
    // No field takes a pressure, so no atmosphere comes in.
    let quantity = unit.quantity(typed.number, Pressure::new::<pascal>(0.0));
    let quantity = settled(field, quantity);
    field.check(quantity)?;
    Ok(quantity)
}

/// A bound of the field's range typed in another unit, such as 86 °F for 30 °C, can miss it by the last digit of a double.
fn settled(field: Field, quantity: Quantity) -> Quantity {
    let is_at = |bound: &Quantity| {
        let (value, bound) = (quantity.si(), bound.si());
        (value - bound).abs() <= 1e-12 * bound.abs()
    };
    let bounds = field.range().map(|(low, high)| [low, high]);
    let mut bounds = bounds.into_iter().flatten();
    bounds.find(is_at).unwrap_or(quantity)
}

macro_rules! take {
    ($reader:ident, $input:ident . $slot:ident, $field:ident, $variant:ident) => {
        if let Some(Quantity::$variant(value)) = $reader.quantity(Field::$field) {
            $input.$slot = Given::entered(value);
        }
    };
}

macro_rules! choose {
    ($reader:ident, $input:ident . $slot:ident, $field:ident, $choice:ident) => {
        if let Some(value) = $reader.choice(
            Field::$field,
            $choice::from_key,
            $choice::ALL.iter().map(|choice| choice.key()),
        ) {
            $input.$slot = Given::entered(value);
        }
    };
}

/// As `take`, into a slot that stays empty where nothing is entered.
macro_rules! optional {
    ($reader:ident, $input:ident . $slot:ident, $field:ident, $variant:ident) => {
        if let Some(Quantity::$variant(value)) = $reader.quantity(Field::$field) {
            $input.$slot = Some(value);
        }
    };
}

impl System {
    /// The input that the record stands for.
    ///
    /// # Errors
    /// Every field that is missing or wrong, in the order of a form.
    pub fn read(&self) -> Result<Input, Vec<FieldError>> {
        let mut reader = Reader {
            system: self,
            errors: Vec::new(),
        };
        let refrigerant = reader.refrigerant();
        let load = reader.load();
        let outdoor_low = reader.outdoor_low();
        let duty = Given::or_assume(
            reader.choice(
                Field::Duty,
                Duty::from_key,
                Duty::ALL.iter().map(|duty| duty.key()),
            ),
            Duty::RoomCooling,
        );
        // Where an essential is wrong the rest is read all the same, for its own errors, against a stand-in that goes no further.
        let stand_in = Essentials {
            refrigerant: match refrigerant.clone().or_else(any_refrigerant) {
                Some(refrigerant) => refrigerant,
                None => return Err(reader.errors),
            },
            load: load.unwrap_or(Load::Cooling(Default::default())),
            outdoor_low: outdoor_low.unwrap_or_default(),
        };
        let mut input = Input::assume(stand_in, duty);
        choose!(reader, input.metering, Metering, Metering);
        choose!(reader, input.motor, Motor, MotorKind);
        choose!(reader, input.bearing, Bearing, Bearing);
        take!(reader, input.voltage, Voltage, Voltage);
        take!(reader, input.over_ambient, OverAmbient, Difference);
        take!(reader, input.known_outdoor, KnownOutdoor, Temperature);
        take!(reader, input.evaporating, Evaporating, Temperature);
        input.return_air = Given::assumed(usual::return_air(duty.value, input.evaporating.value));
        take!(reader, input.return_air, ReturnAir, Temperature);
        take!(reader, input.fans, Fans, Count);
        optional!(reader, input.modulated_fans, ModulatedFans, Count);
        optional!(reader, input.airflow, Airflow, Airflow);
        take!(reader, input.frequency, Frequency, Frequency);
        input.rated_speed = Given::assumed(usual::rated_speed(input.frequency.value));
        take!(reader, input.rated_speed, RatedSpeed, Speed);
        take!(reader, input.elevation, Elevation, Elevation);
        choose!(reader, input.sensing, Sensing, Sensing);
        take!(reader, input.throttling_range, ThrottlingRange, Difference);
        optional!(
            reader,
            input.compressor_lowest,
            CompressorLowest,
            Temperature
        );
        optional!(
            reader,
            input.compressor_highest,
            CompressorHighest,
            Temperature
        );
        take!(reader, input.idle_airflow, IdleAirflow, Ratio);
        optional!(reader, input.fan_power, FanPower, Power);
        optional!(reader, input.subcooling, Subcooling, Difference);
        optional!(reader, input.heat_reclaim, HeatReclaim, Temperature);
        choose!(
            reader,
            input.capacity_control,
            CapacityControl,
            CapacityControl
        );
        take!(reader, input.compressor_stages, CompressorStages, Count);
        input.lowest_load = Given::assumed(usual::lowest_load(
            input.capacity_control.value,
            input.compressor_stages.value,
        ));
        take!(reader, input.lowest_load, LowestLoad, Ratio);
        choose!(reader, input.defrost, Defrost, Defrost);
        choose!(reader, input.reversing_valve, ReversingValve, Reversing);
        choose!(reader, input.below_minimum, BelowMinimum, BelowMinimum);
        input.compressor_sheet = reader.sheet(&input.refrigerant);
        optional!(reader, input.indoor_airflow, IndoorAirflow, Airflow);
        optional!(reader, input.liquid_length, LiquidLength, Elevation);
        optional!(reader, input.liquid_diameter, LiquidDiameter, Bore);
        optional!(reader, input.full_load, FullLoad, Current);
        take!(reader, input.return_humidity, ReturnHumidity, Ratio);
        take!(reader, input.liquid_lift, LiquidLift, Elevation);
        take!(reader, input.recirculation, Recirculation, Ratio);
        take!(reader, input.dirt, Dirt, Ratio);
        if reader.errors.is_empty() {
            Ok(input)
        } else {
            Err(reader.errors)
        }
    }

    /// What a field is taken to be while it is blank, as far as the other answers tell.
    pub fn assumed(&self, field: Field) -> Assumed {
        let duty = self
            .entry(Field::Duty)
            .and_then(|entry| Duty::from_key(entry.typed.trim()))
            .unwrap_or(Duty::RoomCooling);
        match field {
            Field::Refrigerant | Field::CoolingCapacity | Field::OutdoorLow => {
                return Assumed::Nothing;
            }
            Field::HeatRejected | Field::CompressorLowest | Field::CompressorHighest => {
                return Assumed::LeftOut;
            }
            Field::LiquidLength
            | Field::LiquidDiameter
            | Field::HeatReclaim
            | Field::FlowCoefficients
            | Field::PowerCoefficients => return Assumed::LeftOut,
            Field::Airflow
            | Field::FanPower
            | Field::Subcooling
            | Field::IndoorAirflow
            | Field::FullLoad => return Assumed::WorkedOut,
            Field::Evaporating => {
                return Assumed::Value(Quantity::Temperature(usual::evaporating(duty)));
            }
            Field::ReturnAir => {
                let entered = self
                    .entry(Field::Evaporating)
                    .and_then(|entry| read_quantity(Field::Evaporating, entry).ok());
                let evaporating = match entered {
                    Some(Quantity::Temperature(evaporating)) => evaporating,
                    _ => usual::evaporating(duty),
                };
                return Assumed::Value(Quantity::Temperature(usual::return_air(duty, evaporating)));
            }
            Field::CompressorStages if self.control() != CapacityControl::Stages => {
                return Assumed::LeftOut;
            }
            Field::LowestLoad => {
                let entered = self
                    .entry(Field::CompressorStages)
                    .and_then(|entry| read_quantity(Field::CompressorStages, entry).ok());
                let stages = match entered {
                    Some(Quantity::Count(stages)) => stages,
                    _ => usual::COMPRESSOR_STAGES,
                };
                let lowest = usual::lowest_load(self.control(), stages);
                return Assumed::Value(Quantity::Ratio(lowest));
            }
            Field::OverAmbient => {
                return self
                    .refrigerant()
                    .map_or(Assumed::WorkedOut, |refrigerant| {
                        Assumed::Value(Quantity::Difference(usual::over_ambient(
                            duty,
                            &refrigerant,
                        )))
                    });
            }
            Field::Sensing => {
                return self
                    .refrigerant()
                    .map_or(Assumed::WorkedOut, |refrigerant| {
                        Assumed::Choice(usual::sensing(&refrigerant).key())
                    });
            }
            _ => {}
        }
        let Some(refrigerant) = any_refrigerant() else {
            return Assumed::Nothing;
        };
        let whole = Input::assume(
            Essentials {
                refrigerant,
                load: Load::Cooling(Default::default()),
                outdoor_low: Default::default(),
            },
            Given::assumed(duty),
        );
        let entered_frequency = self
            .entry(Field::Frequency)
            .and_then(|entry| read_quantity(Field::Frequency, entry).ok());
        match field {
            Field::Metering => Assumed::Choice(whole.metering.value.key()),
            Field::Motor => Assumed::Choice(whole.motor.value.key()),
            Field::Bearing => Assumed::Choice(whole.bearing.value.key()),
            Field::Duty => Assumed::Choice(duty.key()),
            Field::Voltage => Assumed::Value(Quantity::Voltage(whole.voltage.value)),
            Field::KnownOutdoor => Assumed::Value(Quantity::Temperature(whole.known_outdoor.value)),
            Field::Fans => Assumed::Value(Quantity::Count(whole.fans.value)),
            Field::ModulatedFans => {
                let entered = self
                    .entry(Field::Fans)
                    .and_then(|entry| read_quantity(Field::Fans, entry).ok());
                Assumed::Value(entered.unwrap_or(Quantity::Count(whole.fans.value)))
            }
            Field::Frequency => Assumed::Value(Quantity::Frequency(whole.frequency.value)),
            Field::RatedSpeed => Assumed::Value(Quantity::Speed(match entered_frequency {
                Some(Quantity::Frequency(frequency)) => usual::rated_speed(frequency),
                _ => whole.rated_speed.value,
            })),
            Field::Elevation => Assumed::Value(Quantity::Elevation(whole.elevation.value)),
            Field::ThrottlingRange => {
                Assumed::Value(Quantity::Difference(whole.throttling_range.value))
            }
            Field::IdleAirflow => Assumed::Value(Quantity::Ratio(whole.idle_airflow.value)),
            Field::Recirculation => Assumed::Value(Quantity::Ratio(whole.recirculation.value)),
            Field::Dirt => Assumed::Value(Quantity::Ratio(whole.dirt.value)),
            Field::CapacityControl => Assumed::Choice(whole.capacity_control.value.key()),
            Field::CompressorStages => {
                Assumed::Value(Quantity::Count(whole.compressor_stages.value))
            }
            Field::Defrost => Assumed::Choice(whole.defrost.value.key()),
            Field::BelowMinimum => Assumed::Choice(whole.below_minimum.value.key()),
            Field::ReversingValve => Assumed::Choice(whole.reversing_valve.value.key()),
            Field::SheetUnits => Assumed::Choice(SHEET_UNITS.key()),
            Field::SheetSuperheat => Assumed::Value(Quantity::Difference(usual::sheet_superheat())),
            Field::ReturnHumidity => Assumed::Value(Quantity::Ratio(whole.return_humidity.value)),
            Field::LiquidLift => Assumed::Value(Quantity::Elevation(whole.liquid_lift.value)),
            Field::Refrigerant
            | Field::CoolingCapacity
            | Field::OutdoorLow
            | Field::HeatRejected
            | Field::CompressorLowest
            | Field::CompressorHighest
            | Field::Airflow
            | Field::Evaporating
            | Field::OverAmbient
            | Field::ReturnAir
            | Field::FanPower
            | Field::Subcooling
            | Field::IndoorAirflow
            | Field::FullLoad
            | Field::LiquidLength
            | Field::LiquidDiameter
            | Field::LowestLoad
            | Field::HeatReclaim
            | Field::FlowCoefficients
            | Field::PowerCoefficients
            | Field::Sensing => Assumed::Nothing,
        }
    }

    /// How the compressors follow the load, as far as that can be read.
    fn control(&self) -> CapacityControl {
        self.entry(Field::CapacityControl)
            .and_then(|entry| CapacityControl::from_key(entry.typed.trim()))
            .unwrap_or(CapacityControl::OnOff)
    }

    /// The refrigerant that the record names, where it can be read.
    fn refrigerant(&self) -> Option<Refrigerant> {
        self.entry(Field::Refrigerant)
            .and_then(|entry| read_refrigerant(&entry.typed).ok())
    }

    /// The plan that the record stands for.
    ///
    /// # Errors
    /// Every field that is missing or wrong, or that does not go with the others.
    pub fn plan(&self) -> Result<winterset_calc::Plan, Vec<FieldError>> {
        winterset_calc::plan(&self.read()?)
            .map_err(|errors| errors.into_iter().map(FieldError::from).collect())
    }
}

fn any_refrigerant() -> Option<Refrigerant> {
    Refrigerant::all().find_map(|designation| Refrigerant::named(designation).ok())
}

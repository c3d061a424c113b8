//! Sensors: what a meter's reading means, and what stands in for the sensor at a simulated value.

use winterset_calc::sensor::{
    Beta, CurrentLoop, Fault, PressureRange, Ratiometric, Reading, Reference, ResistancePoint,
    SensorError, SensorValue, Series, SteinhartHart, Substitute, Thermistor, substitute,
};
use winterset_calc::{Basis, Given, SheetRule};
use winterset_profile::{Amount, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found, SensorCurve, sensor_curve};
use crate::view::words;

/// High end of a usual transducer's range over its low end, Pa. Common practice, no published source: 500 psi.
const SPAN: f64 = 3.447_379e6;

/// What follows: readings from the middle of the sensor's range.
pub fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    let si = |measure, si| Some(Amount::new(measure, si));
    match question {
        Question::RangeLow => si(Measure::Pressure, zero(reader)),
        Question::RangeHigh => {
            let low = reader.number(Question::RangeLow).ok()?;
            si(Measure::Pressure, low.value.si + SPAN)
        }
        Question::MeterResistance => {
            let sensor = Curve::read(reader).ok()?.sensor;
            let at = Amount::new(Measure::Temperature, 273.15).temperature();
            si(Measure::Resistance, sensor.resistance(at).ok()?.value)
        }
        Question::MeterOutput => {
            let supply = reader.number(Question::SensorSupply).ok()?;
            si(Measure::Signal, 0.5 * supply.value.si)
        }
        Question::SimulatedPressure => {
            let low = reader.number(Question::RangeLow).ok()?.value.si;
            let high = reader.number(Question::RangeHigh).ok()?.value.si;
            si(Measure::Pressure, low + 0.5 * (high - low))
        }
        _ => None,
    }
}

/// The reading, and what to connect in place of the sensor.
pub fn answer(reader: &Reader) -> Answers {
    let found = match reader.choice(Question::SensorKind).value {
        "transducer" => transducer(reader),
        _ => thermistor(reader),
    };
    Answers {
        found: found.unwrap_or_default(),
        notes: Vec::new(),
    }
}

/// What the meter shows from end to end; `None` where an answer is wrong.
pub fn curve(reader: &Reader) -> Option<SensorCurve> {
    if reader.choice(Question::SensorKind).value != "transducer" {
        let sensor = Curve::read(reader).ok()?.sensor;
        return sensor_curve::thermistor(reader, |at| {
            Some(sensor.resistance(at.temperature()).ok()?.value)
        });
    }
    let ends = Ends::read(reader).ok()?;
    let range = (ends.low.value.si, ends.high.value.si);
    if reader.choice(Question::TransducerBy).value == "current-loop" {
        let sensor = CurrentLoop::new(ends.range);
        let measure = Measure::LoopCurrent;
        return sensor_curve::transducer(reader, range, measure, |at| {
            Some(sensor.current(at.pressure()).ok()?.value)
        });
    }
    let supply = reader.number(Question::SensorSupply).ok()?.value.voltage();
    let shares = (
        reader.number(Question::LowShare).ok()?.value.si,
        reader.number(Question::HighShare).ok()?.value.si,
    );
    let sensor = Ratiometric::new(ends.range, shares).ok()?;
    sensor_curve::transducer(reader, range, Measure::Signal, |at| {
        Some(sensor.output(supply, at.pressure()).ok()?.value)
    })
}

/// A thermistor's curve with the answers that it was made from.
struct Curve {
    sensor: Thermistor,
    terms: Vec<(&'static str, Given<Amount>)>,
    is_beta: bool,
}

impl Curve {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        match reader.choice(Question::ThermistorBy).value {
            "points" => Self::by_points(reader),
            "coefficients" => Self::by_coefficients(reader),
            _ => Self::by_beta(reader),
        }
    }

    fn by_beta(reader: &Reader) -> Result<Self, Wrong> {
        let base = reader.number(Question::BaseResistance)?;
        let beta = reader.number(Question::Beta)?;
        let sensor = Beta::at_25(base.value.resistance(), beta.value.difference())
            .map_err(|error| said(reader, Question::Beta, &error))?;
        Ok(Self {
            sensor: Thermistor::Beta(sensor),
            terms: vec![("R_25", base), ("B", beta)],
            is_beta: true,
        })
    }

    fn by_points(reader: &Reader) -> Result<Self, Wrong> {
        let point = |number| -> Result<_, Wrong> {
            let temperature = reader.number(Question::PointTemperature(number))?;
            let resistance = reader.number(Question::PointResistance(number))?;
            let point = ResistancePoint {
                temperature: temperature.value.temperature(),
                resistance: resistance.value.resistance(),
            };
            Ok((point, temperature, resistance))
        };
        let (first, second, third) = (point(0)?, point(1)?, point(2)?);
        let sensor = SteinhartHart::through([first.0, second.0, third.0])
            .map_err(|error| said(reader, Question::PointResistance(2), &error))?;
        let mut terms = Vec::new();
        for (_, temperature, resistance) in [first, second, third] {
            terms.extend([("T", temperature), ("R", resistance)]);
        }
        Ok(Self {
            sensor: Thermistor::SteinhartHart(sensor),
            terms,
            is_beta: false,
        })
    }

    fn by_coefficients(reader: &Reader) -> Result<Self, Wrong> {
        let one = |number| reader.number(Question::Coefficient(number));
        let (a, b, c) = (one(0)?, one(1)?, one(2)?);
        let sensor = SteinhartHart::new(a.value.si, b.value.si, c.value.si)
            .map_err(|error| said(reader, Question::Coefficient(2), &error))?;
        Ok(Self {
            sensor: Thermistor::SteinhartHart(sensor),
            terms: vec![("A", a), ("B", b), ("C", c)],
            is_beta: false,
        })
    }

    fn terms(&self, found: Found) -> Found {
        let terms = self.terms.iter();
        terms.fold(found, |found, (symbol, given)| {
            found.reading(symbol, *given)
        })
    }

    fn basis(&self) -> Basis {
        let is_assumed = self
            .terms
            .iter()
            .any(|(_, given)| given.basis == Basis::Assumed);
        if is_assumed {
            Basis::Assumed
        } else {
            Basis::Computed
        }
    }
}

fn thermistor(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let curve = Curve::read(reader)?;
    // A fault of the one reading leaves the other answers as they are.
    let mut all: Vec<Found> = thermistor_reading(reader, &curve).into_iter().collect();
    all.extend(simulated(reader, &curve).unwrap_or_default());
    Ok(all)
}

fn thermistor_reading(reader: &Reader, curve: &Curve) -> Result<Found, Wrong> {
    let measured = reader.number(Question::MeterResistance)?;
    let reading = curve
        .sensor
        .reading(measured.value.resistance())
        .map_err(|error| said(reader, Question::MeterResistance, &error))?;
    let rule = if curve.is_beta {
        SheetRule::BetaTemperature
    } else {
        SheetRule::SteinhartTemperature
    };
    let found = match reading {
        Reading::Value(temperature) => Found::new(rule, Measure::Temperature, temperature.value),
        Reading::Fault(fault) => broken(rule, fault),
    };
    Ok(curve
        .terms(found.reading("R", measured).keyed("sensor-temperature"))
        .strong())
}

fn simulated(reader: &Reader, curve: &Curve) -> Result<Vec<Found>, Wrong> {
    let labels = words().worksheets().start_labels();
    let wanted = reader.number(Question::SimulatedTemperature)?;
    let at = |series| {
        substitute(&curve.sensor, wanted.value.temperature(), series)
            .map_err(|error| said(reader, Question::SimulatedTemperature, &error))
    };
    let (coarse, fine) = (at(Series::E24)?, at(Series::E96)?);
    let rule = if curve.is_beta {
        SheetRule::BetaResistance
    } else {
        SheetRule::SteinhartResistance
    };
    let exact = Found::new(rule, Measure::Resistance, coarse.exact.value)
        .reading("T", wanted)
        .keyed("sensor-resistance");
    let basis = curve.basis();
    let resistor = |one: &Substitute, key, name| {
        Found::new(
            SheetRule::SubstituteResistor,
            Measure::Resistance,
            one.resistor.value,
        )
        .with("R", Measure::Resistance, one.exact.value)
        .reading("T", wanted)
        .resting_on(basis)
        .keyed(key)
        .named(name)
    };
    let shows = |one: &Substitute, key, name| {
        let (coldest, warmest) = one.between;
        Found::new(
            SheetRule::SubstituteTemperature,
            Measure::Temperature,
            one.simulates.value,
        )
        .with("R_s", Measure::Resistance, one.resistor.value)
        .with("T_min", Measure::Temperature, coldest.value)
        .with("T_max", Measure::Temperature, warmest.value)
        .resting_on(basis)
        .keyed(key)
        .named(name)
    };
    Ok(vec![
        curve.terms(exact),
        resistor(&coarse, "e24", labels.e24),
        shows(&coarse, "e24-shows", labels.e24_shows),
        resistor(&fine, "e96", labels.e96).strong(),
        shows(&fine, "e96-shows", labels.e96_shows),
    ])
}

/// Absolute pressure that the zero of the range's reference stands for as it is typed: gauge is typed over the site's air, sealed or not.
fn zero(reader: &Reader) -> f64 {
    match reader.choice(Question::RangeReference).value {
        "absolute" => 0.0,
        _ => reader.atmosphere().value,
    }
}

/// A transducer's range with the answers that it was made from.
struct Ends {
    range: PressureRange,
    low: Given<Amount>,
    high: Given<Amount>,
}

impl Ends {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        let (low, high) = (
            reader.number(Question::RangeLow)?,
            reader.number(Question::RangeHigh)?,
        );
        let reference = match reader.choice(Question::RangeReference).value {
            "absolute" => Reference::Absolute,
            "sealed" => Reference::SealedGauge,
            _ => Reference::Gauge {
                atmosphere: reader.atmosphere(),
            },
        };
        let zero = Amount::new(Measure::Pressure, zero(reader)).pressure();
        let range = PressureRange::new(
            low.value.pressure() - zero,
            high.value.pressure() - zero,
            reference,
        )
        .map_err(|error| said(reader, Question::RangeHigh, &error))?;
        Ok(Self { range, low, high })
    }

    fn terms(&self, found: Found) -> Found {
        found.reading("p_1", self.low).reading("p_2", self.high)
    }
}

fn transducer(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let ends = Ends::read(reader)?;
    match reader.choice(Question::TransducerBy).value {
        "current-loop" => Ok(current_loop(reader, &ends)),
        _ => ratiometric(reader, &ends),
    }
}

fn ratiometric(reader: &Reader, ends: &Ends) -> Result<Vec<Found>, Wrong> {
    let supply = reader.number(Question::SensorSupply)?;
    let shares = (
        reader.number(Question::LowShare)?,
        reader.number(Question::HighShare)?,
    );
    let sensor = Ratiometric::new(ends.range, (shares.0.value.si, shares.1.value.si))
        .map_err(|error| said(reader, Question::HighShare, &error))?;
    let terms = |found: Found| {
        let found = found
            .reading("U_s", supply)
            .given("s_1", shares.0)
            .given("s_2", shares.1);
        ends.terms(found).strong()
    };
    let pressure = || -> Result<Found, Wrong> {
        let measured = reader.number(Question::MeterOutput)?;
        let reading = sensor
            .pressure(supply.value.voltage(), measured.value.voltage())
            .map_err(|error| said(reader, Question::MeterOutput, &error))?;
        let found = pressure_found(SheetRule::RatiometricPressure, reading);
        Ok(terms(found.reading("U", measured)))
    };
    let output = || -> Result<Found, Wrong> {
        let wanted = reader.number(Question::SimulatedPressure)?;
        let volts = sensor
            .output(supply.value.voltage(), wanted.value.pressure())
            .map_err(|error| said(reader, Question::SimulatedPressure, &error))?;
        let found = Found::new(SheetRule::RatiometricOutput, Measure::Signal, volts.value);
        Ok(terms(found.reading("p", wanted)))
    };
    Ok(pressure().into_iter().chain(output()).collect())
}

fn current_loop(reader: &Reader, ends: &Ends) -> Vec<Found> {
    let sensor = CurrentLoop::new(ends.range);
    let pressure = || -> Result<Found, Wrong> {
        let measured = reader.number(Question::MeterCurrent)?;
        let reading = sensor
            .pressure(measured.value.current())
            .map_err(|error| said(reader, Question::MeterCurrent, &error))?;
        let found = pressure_found(SheetRule::LoopPressure, reading);
        Ok(ends.terms(found.reading("I", measured)).strong())
    };
    let current = || -> Result<Found, Wrong> {
        let wanted = reader.number(Question::SimulatedPressure)?;
        let current = sensor
            .current(wanted.value.pressure())
            .map_err(|error| said(reader, Question::SimulatedPressure, &error))?;
        let found = Found::new(SheetRule::LoopCurrent, Measure::LoopCurrent, current.value);
        Ok(ends.terms(found.reading("p", wanted)).strong())
    };
    pressure().into_iter().chain(current()).collect()
}

fn pressure_found(rule: SheetRule, reading: Reading<uom::si::f64::Pressure>) -> Found {
    match reading {
        Reading::Value(pressure) => Found::new(rule, Measure::Pressure, pressure.value),
        Reading::Fault(fault) => broken(rule, fault),
    }
}

fn broken(rule: SheetRule, fault: Fault) -> Found {
    let labels = words().worksheets().start_labels();
    let (word, reason) = match fault {
        Fault::Open => (labels.open, labels.open_reason),
        Fault::Short => (labels.short, labels.short_reason),
        Fault::SignalLow => (labels.signal_low, labels.signal_low_reason),
        Fault::SignalHigh => (labels.signal_high, labels.signal_high_reason),
    };
    Found::word(rule, word).because(reason)
}

fn said(reader: &Reader, question: Question, error: &SensorError) -> Wrong {
    let at = match error {
        SensorError::OutOfRange { what, .. } => match what {
            SensorValue::RangeLow => Question::RangeLow,
            SensorValue::LowShare => Question::LowShare,
            _ => question,
        },
        _ => question,
    };
    reader.wrong(at, words().worksheets().sensor_error(error).to_owned())
}

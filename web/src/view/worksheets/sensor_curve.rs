//! What a meter shows at a sensor over its whole range, for a drawing and a table.

use winterset_profile::{Amount, Measure, Scale};
use winterset_words::{amount_in, plain, symbol_of};
use yew::AttrValue;

use super::reader::Reader;
use crate::components::chart::{ChartProps, Curve, Marker, Stroke, Tick};
use crate::components::scale::Scale as Axis;
use crate::view::words;

/// A sensor's curve at places evenly spaced.
#[derive(Clone, Debug, PartialEq)]
pub struct SensorCurve {
    sensed: Side,
    signal: Side,
    places: Vec<Place>,
}

/// One side of the curve: what it is, in which unit, and along which scale.
#[derive(Clone, Debug, PartialEq)]
struct Side {
    name: &'static str,
    unit: &'static str,
    axis: Axis,
    ticks: Vec<Tick>,
}

impl Side {
    fn title(&self) -> AttrValue {
        format!("{}, {}", self.name, self.unit).into()
    }
}

/// One place: where it stands on either scale, and how both values are written.
#[derive(Clone, Debug, PartialEq)]
struct Place {
    at: (f64, f64),
    sensed: String,
    signal: String,
}

/// How many places there are from end to end.
const PLACES: u32 = 41;

/// Ends of a thermistor's curve, K: the coldest site and the hottest coil that plans are made for.
const ENDS: (f64, f64) = (233.15, 343.15);

/// The curve of a thermistor, along a logarithmic scale of resistance, where there is an answer from end to end.
pub fn thermistor(
    reader: &Reader,
    resistance: impl Fn(Amount) -> Option<f64>,
) -> Option<SensorCurve> {
    let labels = words().worksheets().start_labels();
    let scale = reader.units().scale(Measure::Resistance);
    let samples = sampled(Measure::Temperature, ENDS, resistance)?;
    let logs = || samples.iter().map(|(_, ohms)| ohms.log10());
    let low = logs().fold(f64::INFINITY, f64::min).floor();
    let high = logs().fold(f64::NEG_INFINITY, f64::max).ceil();
    let ticks = (low as i32..=high as i32).map(|power| {
        let amount = Amount::new(Measure::Resistance, 10_f64.powi(power));
        let written = plain(scale, amount, reader.atmosphere());
        (f64::from(power), written.number.into())
    });
    let signal = Side {
        name: labels.resistance,
        unit: symbol_of(scale),
        axis: Axis::new(low, high),
        ticks: ticks.collect(),
    };
    let sensed = (labels.temperature, Measure::Temperature);
    Some(curve(
        reader,
        sensed,
        &samples,
        (signal, Measure::Resistance, scale),
        f64::log10,
    ))
}

/// The curve of a transducer over its range, Pa, with the measure of its signal.
pub fn transducer(
    reader: &Reader,
    ends: (f64, f64),
    measure: Measure,
    signal: impl Fn(Amount) -> Option<f64>,
) -> Option<SensorCurve> {
    let labels = words().worksheets().start_labels();
    let scale = reader.units().scale(measure);
    let samples = sampled(Measure::Pressure, ends, signal)?;
    let number = move |si: f64| scale.number(si, Default::default());
    let (axis, ticks) = Axis::round(samples.iter().map(|(_, si)| number(*si)), 5);
    let signal = Side {
        name: labels.signal,
        unit: symbol_of(scale),
        axis,
        ticks: ticks.into_iter().map(tick).collect(),
    };
    let sensed = (labels.pressure, Measure::Pressure);
    Some(curve(
        reader,
        sensed,
        &samples,
        (signal, measure, scale),
        number,
    ))
}

/// What is sensed and the signal there, SI, from end to end; `None` where one has no answer.
fn sampled(
    measure: Measure,
    (low, high): (f64, f64),
    signal: impl Fn(Amount) -> Option<f64>,
) -> Option<Vec<(f64, f64)>> {
    (0..PLACES)
        .map(|place| {
            let si = low + (high - low) * f64::from(place) / f64::from(PLACES - 1);
            Some((si, signal(Amount::new(measure, si))?))
        })
        .collect()
}

fn tick(value: f64) -> Tick {
    (value, winterset_words::mark(value).into())
}

fn curve(
    reader: &Reader,
    (name, measure): (&'static str, Measure),
    samples: &[(f64, f64)],
    (signal, signal_measure, signal_scale): (Side, Measure, Scale),
    along: impl Fn(f64) -> f64,
) -> SensorCurve {
    let (scale, air) = (reader.units().scale(measure), reader.atmosphere());
    let number = |si: f64| scale.number(si, air);
    let ends = [samples.first(), samples.last()].map(|one| one.map_or(0.0, |(si, _)| number(*si)));
    let axis = Axis::new(ends[0], ends[1]);
    let (_, marks) = Axis::round(ends, 5);
    let written = |scale, measure, si| amount_in(scale, Amount::new(measure, si), air).to_string();
    SensorCurve {
        sensed: Side {
            name,
            unit: symbol_of(scale),
            axis,
            ticks: marks
                .into_iter()
                .filter(|at| axis.covers(*at))
                .map(tick)
                .collect(),
        },
        signal,
        places: samples
            .iter()
            .map(|(sensed, signal)| Place {
                at: (number(*sensed), along(*signal)),
                sensed: written(scale, measure, *sensed),
                signal: written(signal_scale, signal_measure, *signal),
            })
            .collect(),
    }
}

impl SensorCurve {
    /// Where the marker stands until it is moved.
    pub fn middle(&self) -> usize {
        self.places.len() / 2
    }

    /// The drawing, with its marker at a place.
    pub fn chart(&self, at: usize) -> ChartProps {
        let labels = words().worksheets().start_labels();
        let (first, last) = (
            self.reading(0),
            self.reading(self.places.len().saturating_sub(1)),
        );
        ChartProps {
            summary: (labels.curve_summary)(first, last).into(),
            across: self.sensed.title(),
            up: self.signal.title(),
            x: self.sensed.axis,
            x_ticks: self.sensed.ticks.clone(),
            y: self.signal.axis,
            y_ticks: self.signal.ticks.clone(),
            curves: vec![Curve {
                name: "".into(),
                stroke: Stroke::Solid,
                points: self.places.iter().map(|place| place.at).collect(),
                band: Vec::new(),
            }],
            levels: Vec::new(),
            posts: Vec::new(),
            marker: Marker {
                ask: labels.curve_marker.into(),
                places: self
                    .places
                    .iter()
                    .map(|place| place.sensed.clone().into())
                    .collect(),
                at,
            },
            read: Default::default(),
        }
    }

    /// What is sensed at a place, and what the meter shows there.
    pub fn reading(&self, at: usize) -> (&str, &str) {
        self.places
            .get(at)
            .map_or(("", ""), |place| (&place.sensed, &place.signal))
    }

    /// The names over the columns of the table, and its rows.
    pub fn table(&self) -> ([&'static str; 2], Vec<(&str, &str)>) {
        let rows = self
            .places
            .iter()
            .map(|place| (place.sensed.as_str(), place.signal.as_str()));
        ([self.sensed.name, self.signal.name], rows.collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::view::worksheets::answer;
    use winterset_profile::{Entry, Question, Sheet, Worksheets};
    use winterset_words::Units;

    fn drawn(given: &[(Question, &str)]) -> Option<SensorCurve> {
        let mut kept = Worksheets::default();
        for (question, typed) in given {
            kept.set(Sheet::Sensors, *question, Entry::new(*typed));
        }
        answer(Sheet::Sensors, &kept, Units::default()).curve
    }

    #[test]
    fn a_thermistor_falls_all_the_way() {
        let curve = drawn(&[]).unwrap();
        assert!(
            curve
                .places
                .windows(2)
                .all(|pair| pair[0].at.1 > pair[1].at.1)
        );
        assert!(
            curve
                .places
                .iter()
                .all(|place| curve.signal.axis.covers(place.at.1))
        );
    }

    #[test]
    fn a_transducer_rises_from_end_to_end_of_its_signal() {
        for (by, first, last) in [("ratiometric", "0.5", "4.5"), ("current-loop", "4", "20")] {
            let curve = drawn(&[
                (Question::SensorKind, "transducer"),
                (Question::TransducerBy, by),
            ])
            .unwrap();
            let (_, low) = curve.reading(0);
            let (_, high) = curve.reading(curve.places.len() - 1);
            // By definition: 10 to 90 % of a supply of 5 V, and 4 to 20 mA (IEC 60381-1).
            assert!(
                low.starts_with(first) && high.starts_with(last),
                "{low}, {high}"
            );
        }
    }

    #[test]
    fn a_wrong_answer_leaves_no_curve() {
        assert_eq!(drawn(&[(Question::Beta, "none")]), None);
    }
}

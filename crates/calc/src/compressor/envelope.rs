//! Where a compressor's maker lets it run: a polygon, or limits, of evaporating and condensing temperature (dew).
//!
//! A polygon has one span of condensing temperature at each evaporating temperature, as printed envelopes have: going round it, the evaporating
//! temperature rises once and falls once. Its edges belong to it.
//!
//! Source: AHRI Standard 540 and EN 12900 ask for such an application envelope; its shape is the maker's.

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::kelvin;

use super::Point;

/// Most corners of a polygon.
pub const MOST_CORNERS: usize = 64;

/// Where a compressor may run.
#[derive(Clone, Debug, PartialEq)]
pub enum Envelope {
    /// Corners, as a data sheet draws them.
    Polygon(Polygon),
    /// Lowest and highest temperatures, as far as they are known.
    Limits(Limits),
}

/// What is wrong with an envelope.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum EnvelopeError {
    /// Fewer than three corners, or too many.
    #[error("{count} corners: there must be 3 to {MOST_CORNERS}")]
    CornerCount {
        /// As given.
        count: usize,
    },
    /// A temperature that is no number or outside 150 to 450 K.
    #[error("a corner or limit at {kelvins} K is outside 150 to 450 K")]
    OutOfRange {
        /// As given, K.
        kelvins: f64,
    },
    /// All corners lie on one line.
    #[error("the corners enclose nothing")]
    Flat,
    /// Two edges cross or touch.
    #[error(
        "the edges from corner {first} and from corner {second} cross: give the corners in order round the envelope"
    )]
    Crossing {
        /// Corner that the one edge starts from, from 1.
        first: usize,
        /// Corner that the other edge starts from, from 1.
        second: usize,
    },
    /// At some evaporating temperature the envelope would consist of two pieces.
    #[error("at some evaporating temperatures the envelope falls into two pieces")]
    TwoPieces,
    /// A lowest temperature at or above the highest one.
    #[error("the lowest temperature {low} K must be below the highest {high} K")]
    Reversed {
        /// As given, K.
        low: f64,
        /// As given, K.
        high: f64,
    },
}

/// A checked polygon.
#[derive(Clone, Debug, PartialEq)]
pub struct Polygon {
    /// Evaporating and condensing temperature of each corner, K.
    corners: Vec<(f64, f64)>,
}

/// Limits as far as they are known, checked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    evaporating: Bounds,
    condensing: Bounds,
}

/// Lowest and highest, each where it is known.
type Bounds = (
    Option<ThermodynamicTemperature>,
    Option<ThermodynamicTemperature>,
);

/// The side on which a point has left the envelope.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Side {
    /// Evaporating is too cold.
    EvaporatingTooLow,
    /// Evaporating is too warm.
    EvaporatingTooHigh,
    /// Condensing is too cold at this evaporating temperature.
    CondensingTooLow,
    /// Condensing is too warm at this evaporating temperature.
    CondensingTooHigh,
}

/// One side left, and by how much.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Exit {
    /// The side.
    pub side: Side,
    /// How far beyond it, above 0.
    pub by: TemperatureInterval,
}

/// Where a point lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Place {
    /// Inside or on an edge.
    Inside,
    /// Outside on one side or on two. Condensing is held against the span at the nearest evaporating temperature of the envelope.
    Outside {
        /// By evaporating temperature, where it has left there.
        evaporating: Option<Exit>,
        /// By condensing temperature, where it has left there.
        condensing: Option<Exit>,
    },
}

/// The lowest condensing temperature at an evaporating temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LowestCondensing {
    /// This one.
    At(ThermodynamicTemperature),
    /// The maker sets none.
    NotLimited,
    /// The compressor may not run at this evaporating temperature at all.
    EvaporatingOutside(Exit),
}

impl Polygon {
    /// The polygon of 3 to 64 corners in order round it, either way; the last one is joined to the first.
    ///
    /// # Errors
    /// Any [`EnvelopeError`] but [`EnvelopeError::Reversed`].
    pub fn new(corners: &[Point]) -> Result<Self, EnvelopeError> {
        let count = corners.len();
        if !(3..=MOST_CORNERS).contains(&count) {
            return Err(EnvelopeError::CornerCount { count });
        }
        let mut pairs = Vec::with_capacity(count);
        for corner in corners {
            pairs.push((checked(corner.evaporating)?, checked(corner.condensing)?));
        }
        let polygon = Self { corners: pairs };
        let area: f64 = polygon.edges().map(|(a, b)| a.0 * b.1 - b.0 * a.1).sum();
        if area.abs() < 1e-9 {
            return Err(EnvelopeError::Flat);
        }
        polygon.check_crossings()?;
        polygon.check_one_piece()?;
        Ok(polygon)
    }

    fn edges(&self) -> impl Iterator<Item = ((f64, f64), (f64, f64))> + '_ {
        let next = self.corners.iter().cycle().skip(1);
        self.corners.iter().copied().zip(next.copied())
    }

    fn check_crossings(&self) -> Result<(), EnvelopeError> {
        let edges: Vec<_> = self.edges().collect();
        let count = edges.len();
        for (i, first) in edges.iter().enumerate() {
            for (j, second) in edges.iter().enumerate().skip(i + 2) {
                let neighbours = (j + 1) % count == i;
                if !neighbours && meet(*first, *second) {
                    return Err(EnvelopeError::Crossing {
                        first: i + 1,
                        second: j + 1,
                    });
                }
            }
        }
        Ok(())
    }

    fn check_one_piece(&self) -> Result<(), EnvelopeError> {
        let turns: Vec<bool> = self
            .edges()
            .filter(|(a, b)| a.0 != b.0)
            .map(|(a, b)| b.0 > a.0)
            .collect();
        let next = turns.iter().cycle().skip(1);
        let changes = turns.iter().zip(next).filter(|(a, b)| a != b).count();
        if changes == 2 {
            Ok(())
        } else {
            Err(EnvelopeError::TwoPieces)
        }
    }

    fn span(&self) -> (f64, f64) {
        extent(self.corners.iter().map(|corner| corner.0))
    }

    /// Lowest and highest condensing temperature at an evaporating temperature inside the span, K.
    fn section(&self, evaporating: f64) -> (f64, f64) {
        let ends = self.edges().flat_map(|(a, b)| {
            let (low, high) = extent([a.0, b.0].into_iter());
            let on = (low..=high).contains(&evaporating);
            let crossed = if low == high {
                [a.1, b.1]
            } else {
                [between(a, b, evaporating); 2]
            };
            crossed.into_iter().filter(move |_| on)
        });
        extent(ends)
    }
}

impl Limits {
    /// Limits of evaporating and of condensing temperature, each lowest and highest where they are known.
    ///
    /// # Errors
    /// [`EnvelopeError::OutOfRange`], [`EnvelopeError::Reversed`].
    pub fn new(evaporating: Bounds, condensing: Bounds) -> Result<Self, EnvelopeError> {
        for (low, high) in [evaporating, condensing] {
            let low = low.map(checked).transpose()?;
            let high = high.map(checked).transpose()?;
            if let (Some(low), Some(high)) = (low, high)
                && low >= high
            {
                return Err(EnvelopeError::Reversed { low, high });
            }
        }
        Ok(Self {
            evaporating,
            condensing,
        })
    }
}

impl Envelope {
    /// Whether a point is inside, or which sides it has left and by how much.
    ///
    /// # Errors
    /// [`EnvelopeError::OutOfRange`] for the point.
    pub fn place(&self, point: Point) -> Result<Place, EnvelopeError> {
        let evaporating = checked(point.evaporating)?;
        let condensing = checked(point.condensing)?;
        let (low, high) = self.span();
        let out = exit(
            evaporating,
            (low, high),
            (Side::EvaporatingTooLow, Side::EvaporatingTooHigh),
        );
        let off = exit(
            condensing,
            self.section(evaporating.max(low).min(high)),
            (Side::CondensingTooLow, Side::CondensingTooHigh),
        );
        Ok(if out.is_none() && off.is_none() {
            Place::Inside
        } else {
            Place::Outside {
                evaporating: out,
                condensing: off,
            }
        })
    }

    /// The lowest condensing temperature at an evaporating temperature.
    ///
    /// # Errors
    /// [`EnvelopeError::OutOfRange`] for the temperature.
    pub fn lowest_condensing(
        &self,
        evaporating: ThermodynamicTemperature,
    ) -> Result<LowestCondensing, EnvelopeError> {
        let kelvins = checked(evaporating)?;
        let sides = (Side::EvaporatingTooLow, Side::EvaporatingTooHigh);
        if let Some(exit) = exit(kelvins, self.span(), sides) {
            return Ok(LowestCondensing::EvaporatingOutside(exit));
        }
        let (lowest, _) = self.section(kelvins);
        Ok(if lowest.is_finite() {
            LowestCondensing::At(ThermodynamicTemperature::new::<kelvin>(lowest))
        } else {
            LowestCondensing::NotLimited
        })
    }

    /// Points on a grid of so many steps each way and at the corners; `None` where the envelope is open on a side.
    pub(crate) fn grid(&self, steps: u32) -> Option<Vec<Point>> {
        let (low, high) = self.span();
        let share = |step: u32| f64::from(step) / f64::from(steps.max(1));
        let mut pairs = match self {
            Envelope::Polygon(polygon) => polygon.corners.clone(),
            Envelope::Limits(_) => Vec::new(),
        };
        for step in 0..=steps {
            let evaporating = low + (high - low) * share(step);
            let (coldest, warmest) = self.section(evaporating.clamp(low, high));
            pairs.extend((0..=steps).map(|step| {
                let condensing = coldest + (warmest - coldest) * share(step);
                (evaporating, condensing)
            }));
        }
        let closed = pairs.iter().all(|(a, b)| a.is_finite() && b.is_finite());
        let temperature = ThermodynamicTemperature::new::<kelvin>;
        closed.then(|| {
            let point = |(evaporating, condensing)| Point {
                evaporating: temperature(evaporating),
                condensing: temperature(condensing),
            };
            pairs.into_iter().map(point).collect()
        })
    }

    /// Evaporating temperatures from lowest to highest, K; infinite where a side is open.
    fn span(&self) -> (f64, f64) {
        match self {
            Envelope::Polygon(polygon) => polygon.span(),
            Envelope::Limits(limits) => open(limits.evaporating),
        }
    }

    /// Condensing temperatures from lowest to highest at an evaporating temperature of the span, K; infinite where a side is open.
    fn section(&self, evaporating: f64) -> (f64, f64) {
        match self {
            Envelope::Polygon(polygon) => polygon.section(evaporating),
            Envelope::Limits(limits) => open(limits.condensing),
        }
    }
}

fn open((low, high): Bounds) -> (f64, f64) {
    let kelvins = |bound: ThermodynamicTemperature| bound.get::<kelvin>();
    (
        low.map_or(f64::NEG_INFINITY, kelvins),
        high.map_or(f64::INFINITY, kelvins),
    )
}

fn checked(temperature: ThermodynamicTemperature) -> Result<f64, EnvelopeError> {
    let kelvins = temperature.get::<kelvin>();
    if (150.0..=450.0).contains(&kelvins) {
        Ok(kelvins)
    } else {
        Err(EnvelopeError::OutOfRange { kelvins })
    }
}

fn exit(value: f64, (low, high): (f64, f64), (under, over): (Side, Side)) -> Option<Exit> {
    let (side, by) = if value < low {
        (under, low - value)
    } else if value > high {
        (over, value - high)
    } else {
        return None;
    };
    Some(Exit {
        side,
        by: TemperatureInterval::new::<kelvin_interval>(by),
    })
}

fn extent(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    })
}

/// Condensing temperature on a slanted or level edge: exact at both ends and on a level one, so that edges belong to the envelope.
fn between(a: (f64, f64), b: (f64, f64), evaporating: f64) -> f64 {
    let share = (evaporating - a.0) / (b.0 - a.0);
    if share <= 0.5 {
        a.1 + (b.1 - a.1) * share
    } else {
        b.1 - (b.1 - a.1) * (1.0 - share)
    }
}

type Edge = ((f64, f64), (f64, f64));

/// Whether two edges have a point in common.
fn meet(first: Edge, second: Edge) -> bool {
    let turn = |(a, b): Edge, c: (f64, f64)| (b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0);
    let parted = |edge: Edge, other: Edge| turn(edge, other.0) * turn(edge, other.1) > 0.0;
    let apart = |pick: fn((f64, f64)) -> f64| {
        let (a, b) = extent([pick(first.0), pick(first.1)].into_iter());
        let (c, d) = extent([pick(second.0), pick(second.1)].into_iter());
        b < c || d < a
    };
    !parted(first, second)
        && !parted(second, first)
        && !apart(|corner| corner.0)
        && !apart(|corner| corner.1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    fn point(evaporating: f64, condensing: f64) -> Point {
        Point {
            evaporating: celsius(evaporating),
            condensing: celsius(condensing),
        }
    }

    fn polygon(corners: &[(f64, f64)]) -> Result<Polygon, EnvelopeError> {
        let corners: Vec<Point> = corners.iter().map(|(e, c)| point(*e, *c)).collect();
        Polygon::new(&corners)
    }

    /// An invented envelope with a step in its lower edge at -10 °C.
    fn invented() -> Envelope {
        let corners = [
            (-30.0, 10.0),
            (-10.0, 10.0),
            (-10.0, 20.0),
            (10.0, 30.0),
            (10.0, 65.0),
            (-15.0, 65.0),
            (-30.0, 50.0),
        ];
        Envelope::Polygon(polygon(&corners).unwrap())
    }

    #[track_caller]
    fn left(place: Place) -> Vec<(Side, f64)> {
        let Place::Outside {
            evaporating,
            condensing,
        } = place
        else {
            panic!("{place:?}");
        };
        [evaporating, condensing]
            .into_iter()
            .flatten()
            .map(|exit| {
                (
                    exit.side,
                    (exit.by.get::<kelvin_interval>() * 1e6).round() / 1e6,
                )
            })
            .collect()
    }

    #[test]
    fn inside_and_out() {
        let envelope = invented();
        let place = |e, c| envelope.place(point(e, c)).unwrap();
        for (e, c) in [
            (-20.0, 30.0),
            (-30.0, 10.0),
            (10.0, 65.0),
            (-10.0, 15.0),
            (0.0, 25.0),
        ] {
            assert_eq!(place(e, c), Place::Inside, "{e} {c}");
        }
        assert_eq!(left(place(0.0, 20.0)), [(Side::CondensingTooLow, 5.0)]);
        assert_eq!(left(place(0.0, 66.0)), [(Side::CondensingTooHigh, 1.0)]);
        assert_eq!(left(place(-35.0, 30.0)), [(Side::EvaporatingTooLow, 5.0)]);
        assert_eq!(
            left(place(12.0, 70.0)),
            [
                (Side::EvaporatingTooHigh, 2.0),
                (Side::CondensingTooHigh, 5.0)
            ]
        );
    }

    #[test]
    fn the_lowest_condensing_temperature() {
        let envelope = invented();
        let lowest = |e| envelope.lowest_condensing(celsius(e)).unwrap();
        for (e, c) in [(-20.0, 10.0), (-10.0, 10.0), (0.0, 25.0), (10.0, 30.0)] {
            let LowestCondensing::At(temperature) = lowest(e) else {
                panic!("{e}");
            };
            assert!(
                (temperature.get::<degree_celsius>() - c).abs() < 1e-9,
                "{e}"
            );
        }
        assert!(matches!(
            lowest(-31.0),
            LowestCondensing::EvaporatingOutside(Exit {
                side: Side::EvaporatingTooLow,
                ..
            })
        ));
    }

    #[test]
    fn limits_may_be_known_in_part() {
        let limits = Limits::new((None, Some(celsius(12.0))), (Some(celsius(15.0)), None)).unwrap();
        let envelope = Envelope::Limits(limits);
        assert_eq!(envelope.place(point(-40.0, 60.0)).unwrap(), Place::Inside);
        assert_eq!(
            left(envelope.place(point(13.0, 14.0)).unwrap()),
            [
                (Side::EvaporatingTooHigh, 1.0),
                (Side::CondensingTooLow, 1.0)
            ]
        );
        assert!(envelope.grid(3).is_none());
        let none = Envelope::Limits(Limits::new((None, None), (None, None)).unwrap());
        assert_eq!(
            none.lowest_condensing(celsius(0.0)).unwrap(),
            LowestCondensing::NotLimited
        );
        assert!(matches!(
            Limits::new((Some(celsius(5.0)), Some(celsius(5.0))), (None, None)),
            Err(EnvelopeError::Reversed { .. })
        ));
    }

    #[test]
    fn corners_that_make_no_envelope() {
        assert_eq!(
            polygon(&[(0.0, 20.0), (5.0, 40.0)]),
            Err(EnvelopeError::CornerCount { count: 2 })
        );
        assert_eq!(
            polygon(&[(0.0, 20.0), (5.0, 25.0), (10.0, 30.0)]),
            Err(EnvelopeError::Flat)
        );
        assert_eq!(
            polygon(&[(0.0, 20.0), (10.0, 41.0), (10.0, 20.0), (0.0, 40.0)]),
            Err(EnvelopeError::Crossing {
                first: 1,
                second: 3
            })
        );
        let horseshoe = [
            (0.0, 20.0),
            (20.0, 20.0),
            (20.0, 30.0),
            (5.0, 30.0),
            (5.0, 40.0),
            (20.0, 45.0),
            (0.0, 50.0),
        ];
        assert_eq!(polygon(&horseshoe), Err(EnvelopeError::TwoPieces));
        assert!(matches!(
            polygon(&[(0.0, f64::NAN), (5.0, 25.0), (10.0, 30.0)]),
            Err(EnvelopeError::OutOfRange { .. })
        ));
    }
}

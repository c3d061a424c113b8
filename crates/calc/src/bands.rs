//! How far assumed values may be off, and what that does to a plan.
//!
//! Each assumed value is moved by its usual spread, one at a time, and the plan is made again; the changes of a result are added as the root of
//! their squares, which is what independent spreads come to. The value that moves the hold limit most is the one worth measuring.
//!
//! Source: propagation of independent uncertainties to first order (JCGM 100:2008, section 5.1). The spreads are common practice, no published
//! source.

use std::ops::ControlFlow;

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::f64::{
    AngularVelocity, Length, Pressure, TemperatureInterval, ThermodynamicTemperature,
};
use uom::si::length::meter;
use uom::si::temperature_interval::kelvin as kelvin_interval;

use crate::explain::{Basis, Given};
use crate::field::Field;
use crate::input::Input;
use crate::plan::{Method, PerMethod, Plan};

/// Spreads to both sides of a plan's results.
#[derive(Clone, Debug, PartialEq)]
pub struct Bands {
    /// Of the pressure need.
    pub need: Pressure,
    /// Of the need as a condensing temperature.
    pub condensing: TemperatureInterval,
    /// Of the hold limit of each method.
    pub limits: PerMethod<TemperatureInterval>,
    /// Of the minimum output, a share of full output.
    pub minimum_output: f64,
    /// Each assumed value with what it alone does to the hold limit of the recommended method, or of speed control where liquid makes that
    /// method hold everywhere; the strongest first.
    pub by_field: Vec<(Field, TemperatureInterval)>,
}

impl Bands {
    /// The assumed value that, if measured, would narrow the hold limit most.
    pub fn measure_first(&self) -> Option<Field> {
        self.by_field
            .first()
            .filter(|(_, span)| span.get::<kelvin_interval>() > 0.05)
            .map(|(field, _)| *field)
    }
}

/// The input with an assumed value moved by its usual spread; `None` where the value is entered.
fn moved(plan: &Plan, field: Field) -> Option<Input> {
    let input = &plan.input;
    let kelvins = TemperatureInterval::new::<kelvin_interval>;
    let mut moved = input.clone();
    let is_assumed = match field {
        Field::Evaporating => {
            moved.evaporating = Given::assumed(input.evaporating.value - kelvins(3.0));
            // The air that was assumed from it stays where it is: it is the coil that is not known.
            input.evaporating.basis == Basis::Assumed
        }
        Field::OverAmbient => {
            moved.over_ambient = Given::assumed(input.over_ambient.value + kelvins(3.0));
            input.over_ambient.basis == Basis::Assumed
        }
        Field::ReturnAir => {
            moved.return_air = Given::assumed(input.return_air.value + kelvins(3.0));
            input.return_air.basis == Basis::Assumed
        }
        Field::IdleAirflow => {
            moved.idle_airflow = Given::assumed((input.idle_airflow.value * 1.5).min(0.3));
            input.idle_airflow.basis == Basis::Assumed
        }
        Field::Elevation => {
            moved.elevation = Given::assumed(input.elevation.value + Length::new::<meter>(500.0));
            input.elevation.basis == Basis::Assumed
        }
        Field::RatedSpeed => {
            // Never past the synchronous speed that it belongs to.
            moved.rated_speed = Given::assumed(
                input.rated_speed.value - AngularVelocity::new::<revolution_per_minute>(40.0),
            );
            input.rated_speed.basis == Basis::Assumed
        }
        Field::Airflow => {
            moved.airflow = Some(plan.design.airflow.value * 1.25);
            input.airflow.is_none()
        }
        _ => false,
    };
    is_assumed.then_some(moved)
}

/// The method whose hold limit tells what an assumption is worth.
fn decisive(plan: &Plan) -> Method {
    let recommended = plan.recommendation.method;
    if recommended.floods() {
        Method::SpeedControl
    } else {
        recommended
    }
}

/// Values that a plan assumes and that bear on its hold limits. Dirt and recirculation are no assumptions in this sense: the reading at the known
/// point is taken to be free of them, or has them in it.
const SPREAD: [Field; 7] = [
    Field::OverAmbient,
    Field::Evaporating,
    Field::ReturnAir,
    Field::Airflow,
    Field::IdleAirflow,
    Field::RatedSpeed,
    Field::Elevation,
];

/// Bands on their way, one assumed value at a time, so that long work can be shown and stopped.
#[derive(Clone, Debug)]
pub struct Banding {
    next: usize,
    squares: Squares,
    by_field: Vec<(Field, TemperatureInterval)>,
}

#[derive(Clone, Debug)]
struct Squares {
    need: f64,
    condensing: f64,
    limits: PerMethod<f64>,
    minimum_output: f64,
}

impl Default for Banding {
    fn default() -> Self {
        Self {
            next: 0,
            squares: Squares {
                need: 0.0,
                condensing: 0.0,
                limits: PerMethod::from_fn(|_| 0.0),
                minimum_output: 0.0,
            },
            by_field: Vec::new(),
        }
    }
}

impl Banding {
    /// How many steps there are.
    pub const STEPS: usize = SPREAD.len();

    /// Steps done.
    pub fn done(&self) -> usize {
        self.next
    }

    /// Moves the next assumed value. `Break` ends it with the bands.
    pub fn step(&mut self, plan: &Plan) -> ControlFlow<Bands> {
        let Some(&field) = SPREAD.get(self.next) else {
            return ControlFlow::Break(self.bands());
        };
        self.next += 1;
        let made = moved(plan, field).and_then(|input| crate::plan(&input).ok());
        // A value whose spread leaves what the models hold for says nothing about the band.
        if let Some(made) = made {
            self.add(plan, &made, field);
        }
        ControlFlow::Continue(())
    }

    fn add(&mut self, plan: &Plan, made: &Plan, field: Field) {
        let squares = &mut self.squares;
        let square = |a: f64, b: f64| (a - b) * (a - b);
        squares.need += square(
            made.need.pressure.value.value,
            plan.need.pressure.value.value,
        );
        squares.condensing += square(made.need.condensing.value, plan.need.condensing.value);
        let output = |plan: &Plan| plan.settings.drive.minimum_output().value;
        squares.minimum_output += square(output(made), output(plan));
        let limit = |plan: &Plan, method| plan.hold.of(method).value.value;
        for method in Method::ALL {
            *squares.limits.of_mut(method) += square(limit(made, method), limit(plan, method));
        }
        let method = decisive(plan);
        let alone = (limit(made, method) - limit(plan, method)).abs();
        self.by_field
            .push((field, TemperatureInterval::new::<kelvin_interval>(alone)));
    }

    fn bands(&self) -> Bands {
        let kelvins = |square: f64| TemperatureInterval::new::<kelvin_interval>(square.sqrt());
        let squares = &self.squares;
        let mut by_field = self.by_field.clone();
        by_field.sort_by(|(_, a), (_, b)| b.value.total_cmp(&a.value));
        Bands {
            need: Pressure::new::<uom::si::pressure::pascal>(squares.need.sqrt()),
            condensing: kelvins(squares.condensing),
            limits: PerMethod::from_fn(|method| kelvins(*squares.limits.of(method))),
            minimum_output: squares.minimum_output.sqrt(),
            by_field,
        }
    }
}

impl Plan {
    /// The bands of the plan, all at once.
    pub fn bands(&self) -> Bands {
        let mut banding = Banding::default();
        loop {
            if let ControlFlow::Break(bands) = banding.step(self) {
                return bands;
            }
        }
    }

    /// A hold limit with its band, as the two ends.
    pub fn limit_within(
        &self,
        method: Method,
        bands: &Bands,
    ) -> (ThermodynamicTemperature, ThermodynamicTemperature) {
        let (limit, span) = (self.hold.of(method).value, *bands.limits.of(method));
        (limit - span, limit + span)
    }
}

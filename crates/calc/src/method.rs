//! The condenser under each control method at one outdoor temperature.

use uom::si::f64::{
    AngularVelocity, ElectricPotential, MassDensity, Power, Pressure, TemperatureInterval,
    ThermodynamicTemperature, VolumeRate,
};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::temperature_interval::nanokelvin;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Error, Refrigerant};

use crate::air;
use crate::condenser::{Condenser, Duty, conductance};
use crate::controller::{Proportional, coil_temperature};
use crate::fan;
use crate::motor::InductionMotor;
use crate::phase_cut;
use crate::plan::{Output, Point};
use crate::root::bracketed;

/// Density of air that nameplate data of fans and motors refer to (AMCA 210: standard air).
pub(crate) fn standard_density() -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(1.2)
}

/// How a controller's output becomes speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Actuator {
    /// Phase-cut voltage on an induction motor.
    Voltage(InductionMotor, ElectricPotential),
    /// A signal that the motor or its drive turns into a share of nameplate speed.
    Signal(AngularVelocity),
}

impl Actuator {
    fn density_ratio(density: MassDensity) -> f64 {
        (density / standard_density()).value
    }

    /// Speed at full output in air of this density.
    pub(crate) fn full_speed(&self, density: MassDensity) -> AngularVelocity {
        self.speed(1.0, density)
    }

    /// Speed at a share of full output; zero where the motor stalls.
    pub(crate) fn speed(&self, output: f64, density: MassDensity) -> AngularVelocity {
        match self {
            Actuator::Voltage(motor, _) => motor
                .speed_at(output, Self::density_ratio(density))
                .unwrap_or(motor.synchronous() * 0.0),
            Actuator::Signal(full) => *full * output,
        }
    }

    /// Share of full output that gives a speed.
    pub(crate) fn output_for(&self, speed: AngularVelocity, density: MassDensity) -> f64 {
        match self {
            Actuator::Voltage(motor, _) => motor.voltage_for(speed, Self::density_ratio(density)),
            Actuator::Signal(full) => (speed / *full).value,
        }
    }

    fn output(&self, fraction: f64, speed: AngularVelocity) -> Output {
        match self {
            Actuator::Voltage(_, supply) => {
                let angle = phase_cut::firing_angle(fraction);
                Output {
                    fraction,
                    voltage: Some(*supply * fraction),
                    averaging_meter: Some(*supply * phase_cut::averaging_meter_fraction(angle)),
                    firing_angle: Some(angle),
                    speed,
                }
            }
            Actuator::Signal(_) => Output {
                fraction,
                voltage: None,
                averaging_meter: None,
                firing_angle: None,
                speed,
            },
        }
    }
}

/// A system reduced to what decides its condensing temperature.
#[derive(Clone, Debug)]
pub(crate) struct Model {
    pub(crate) refrigerant: Refrigerant,
    pub(crate) atmosphere: Pressure,
    pub(crate) condenser: Condenser,
    pub(crate) actuator: Actuator,
    pub(crate) controller: Proportional,
    /// Pressure need and its condensing temperature.
    pub(crate) need: (Pressure, ThermodynamicTemperature),
    /// Full-speed point and its condensing temperature; also the cut-in of the on/off method.
    pub(crate) full_speed: (Pressure, ThermodynamicTemperature),
    pub(crate) idle_airflow: f64,
}

impl Model {
    fn density(&self, outdoor: ThermodynamicTemperature) -> MassDensity {
        air::density(self.atmosphere, outdoor)
    }

    /// Airflow at a share of full speed, never below what wind and draft move.
    pub(crate) fn airflow(&self, speed_fraction: f64) -> VolumeRate {
        fan::airflow(
            self.condenser.airflow,
            speed_fraction.max(self.idle_airflow),
        )
    }

    pub(crate) fn condensing(
        &self,
        outdoor: ThermodynamicTemperature,
        speed_fraction: f64,
    ) -> ThermodynamicTemperature {
        self.condenser
            .condensing(outdoor, self.airflow(speed_fraction), self.density(outdoor))
    }

    /// Outdoor temperature at which this share of full speed just keeps the need.
    pub(crate) fn hold_limit(&self, speed_fraction: f64) -> ThermodynamicTemperature {
        // No air is colder on earth; a method that still holds there is shown to hold everywhere.
        const COLDEST: f64 = 150.0;
        let need = self.need.1.get::<kelvin>();
        let limit = bracketed(COLDEST, need, |outdoor| {
            self.condensing(
                ThermodynamicTemperature::new::<kelvin>(outdoor),
                speed_fraction,
            )
            .get::<kelvin>()
                - need
        });
        ThermodynamicTemperature::new::<kelvin>(limit)
    }

    /// Share of full speed at minimum output in air of this temperature.
    pub(crate) fn lowest_fraction(&self, outdoor: ThermodynamicTemperature) -> f64 {
        self.speed_fraction(self.controller.minimum, self.density(outdoor))
    }

    fn speed_fraction(&self, output: f64, density: MassDensity) -> f64 {
        (self.actuator.speed(output, density) / self.actuator.full_speed(density)).value
    }

    /// Hold limit of speed control: minimum output, with the speed that it gives in air as cold as the limit.
    pub(crate) fn speed_control_limit(&self) -> ThermodynamicTemperature {
        const COLDEST: f64 = 150.0;
        let need = self.need.1.get::<kelvin>();
        let limit = bracketed(COLDEST, need, |outdoor| {
            let outdoor = ThermodynamicTemperature::new::<kelvin>(outdoor);
            self.condensing(outdoor, self.lowest_fraction(outdoor))
                .get::<kelvin>()
                - need
        });
        ThermodynamicTemperature::new::<kelvin>(limit)
    }

    /// All fans at full speed.
    pub(crate) fn full_fan(&self, outdoor: ThermodynamicTemperature) -> Result<Point, Error> {
        self.steady(outdoor, 1.0, None)
    }

    /// All fans on one pressure switch: off at the need, on at the full-speed point.
    pub(crate) fn on_off(&self, outdoor: ThermodynamicTemperature) -> Result<Point, Error> {
        if self.condensing(outdoor, 1.0) >= self.need.1 {
            return self.steady(outdoor, 1.0, None);
        }
        if self.condensing(outdoor, 0.0) <= self.full_speed.1 {
            return self.steady(outdoor, 0.0, None);
        }
        self.cycling(outdoor)
    }

    /// Means over time of fans that cycle, at the mean of the two switching temperatures.
    fn cycling(&self, outdoor: ThermodynamicTemperature) -> Result<Point, Error> {
        let density = self.density(outdoor);
        let swing = air::difference(self.full_speed.1, self.need.1);
        let condensing = self.need.1 + swing * 0.5;
        let over_ambient = air::difference(condensing, outdoor);
        let running = self.condenser.duty(self.airflow(1.0), density);
        let idle = self.condenser.duty(self.airflow(0.0), density);
        let (on, off) = (running.heat(over_ambient), idle.heat(over_ambient));
        let share = ((self.condenser.heat - off) / (on - off))
            .value
            .clamp(0.0, 1.0);
        let airflow = self.airflow(1.0) * share + self.airflow(0.0) * (1.0 - share);
        let capacity_rate = air::capacity_rate(density, airflow);
        let effectiveness = {
            let carried: Power = capacity_rate * over_ambient;
            (self.condenser.heat / carried).value
        };
        let mean = Duty {
            capacity_rate,
            conductance: conductance(effectiveness, capacity_rate),
            effectiveness,
        };
        let mut point = self.point(outdoor, condensing, share, airflow, mean)?;
        point.swing = Some((self.need.0, self.full_speed.0));
        point.holds = true;
        Ok(point)
    }

    /// All fans slowed by the controller.
    pub(crate) fn speed_control(&self, outdoor: ThermodynamicTemperature) -> Result<Point, Error> {
        let density = self.density(outdoor);
        let minimum = self.controller.minimum;
        // The balance in output: more output cools the condenser, a cooler condenser asks for less output.
        let mut failure = None;
        let excess = |output: f64| {
            let condensing = self.condensing(outdoor, self.speed_fraction(output, density));
            match self.asked_output(condensing) {
                Ok(asked) => asked - output,
                Err(error) => {
                    failure = Some(error);
                    0.0
                }
            }
        };
        let output = bracketed(minimum, 1.0, excess);
        if let Some(error) = failure {
            return Err(error);
        }
        let fraction = self.speed_fraction(output, density);
        let speed = self.actuator.speed(output, density);
        self.steady(outdoor, fraction, Some(self.actuator.output(output, speed)))
    }

    /// Output that the controller gives at a condensing temperature. Beyond the ends of its range no refrigerant state is
    /// needed, which keeps a hot day at minimum output, above the critical point, from failing the search.
    fn asked_output(&self, condensing: ThermodynamicTemperature) -> Result<f64, Error> {
        if condensing <= self.need.1 {
            return Ok(self.controller.minimum);
        }
        if condensing >= self.full_speed.1 {
            return Ok(1.0);
        }
        let pressure = self.refrigerant.dew_at_temperature(condensing)?.pressure;
        let coil = coil_temperature(&self.refrigerant, pressure)?;
        Ok(self.controller.output(pressure, coil))
    }

    pub(crate) fn steady(
        &self,
        outdoor: ThermodynamicTemperature,
        speed_fraction: f64,
        output: Option<Output>,
    ) -> Result<Point, Error> {
        let airflow = self.airflow(speed_fraction);
        let duty = self.condenser.duty(airflow, self.density(outdoor));
        let condensing = outdoor + self.condenser.over_ambient(&duty);
        let mut point = self.point(outdoor, condensing, speed_fraction, airflow, duty)?;
        point.output = output;
        Ok(point)
    }

    fn point(
        &self,
        outdoor: ThermodynamicTemperature,
        condensing: ThermodynamicTemperature,
        fan_speed_fraction: f64,
        airflow: VolumeRate,
        duty: Duty,
    ) -> Result<Point, Error> {
        let pressure = self.refrigerant.dew_at_temperature(condensing)?.pressure;
        Ok(Point {
            outdoor,
            condensing,
            pressure,
            coil: coil_temperature(&self.refrigerant, pressure)?,
            fan_speed_fraction,
            airflow,
            air_capacity_rate: duty.capacity_rate,
            conductance: duty.conductance,
            effectiveness: duty.effectiveness,
            heat_rejected: duty.heat(air::difference(condensing, outdoor)),
            output: None,
            swing: None,
            // At the hold limit itself rounding must not decide.
            holds: condensing >= self.need.1 - TemperatureInterval::new::<nanokelvin>(1.0),
        })
    }
}

//! What a plan's method asks to be ordered.

use uom::si::f64::{ElectricCurrent, Mass, TemperatureInterval, Volume};
use uom::si::mass::kilogram;
use uom::si::power::watt;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume::liter;

use crate::flooding::receiver_check;
use crate::input::{Metering, MotorKind, Sensing};
use crate::parts_list::{
    Facts, FanControl, Flooding, Group, Part, PartsError, Sensed, USUAL_RESERVE,
};
use crate::plan::{Method, Plan};
use crate::recommendation::Reason;
use crate::winter_start::BypassOutcome;

/// Power factor of a small fan motor at full load. Common practice, no published source.
const POWER_FACTOR: f64 = 0.85;

/// How much further than from the need to the known point a sensor reads, K. Common practice, no published source.
const BEYOND: f64 = 10.0;

/// Warmest that a receiver sees, °C. Common practice, no published source.
const RECEIVER_WARMEST: f64 = 50.0;

/// Largest crankcase heater that is offered as one, W.
const LARGEST_HEATER: f64 = 2000.0;

impl Plan {
    /// Full-load current of one fan motor: as entered, else from its power.
    pub fn full_load(&self) -> ElectricCurrent {
        let input = &self.input;
        input.full_load.unwrap_or_else(|| {
            let phases = match input.motor.value {
                MotorKind::ThreePhase => 3_f64.sqrt(),
                _ => 1.0,
            };
            let each = self.design.fan_power.value / f64::from(input.fans.value);
            each / input.voltage.value / (POWER_FACTOR * phases)
        })
    }

    /// What a method asks to be ordered, with what the winter start needs.
    ///
    /// # Errors
    /// [`PartsError`].
    pub fn order(&self, method: Method) -> Result<Vec<Part>, PartsError> {
        let input = &self.input;
        let start = self.winter_start(method).ok();
        let bypass = start.and_then(|start| match start.bypass {
            BypassOutcome::Trips { until, .. } => Some(until),
            _ => None,
        });
        let heater = start
            .map(|start| start.sump.heat)
            .filter(|heat| (1.0..=LARGEST_HEATER).contains(&heat.get::<watt>()));
        Facts {
            fans: input.fans.value,
            motor: input.motor.value,
            new_motor: None,
            full_load: self.full_load(),
            reserve: USUAL_RESERVE,
            supply: input.voltage.value,
            fan_control: self.fan_control(method),
            baffle: method == Method::SpeedWithBaffle,
            flooding: method.floods().then(|| self.flooding(method)).flatten(),
            crankcase_heater: heater,
            low_pressure_bypass: bypass,
            balanced_port: self.recommendation.reason == Reason::NothingHolds
                && input.metering.value == Metering::TxvConventional,
        }
        .parts()
    }

    fn fan_control(&self, method: Method) -> FanControl {
        let (off, on) = self.on_off_points.value;
        let fans = self.input.fans.value;
        match method {
            Method::FullFan | Method::Flooding => FanControl::FullSpeed,
            Method::OnOff => FanControl::Switched(vec![Group { fans, on, off }]),
            Method::Staged => {
                let one = Group { fans: 1, on, off };
                FanControl::Switched(vec![one; (fans as usize).saturating_sub(1)])
            }
            _ => {
                let slowed = self.input.modulated();
                let one = Group { fans: 1, on, off };
                FanControl::Slowed {
                    fans: slowed,
                    input: self.sensed(),
                    rest: vec![one; fans.saturating_sub(slowed) as usize],
                }
            }
        }
    }

    fn sensed(&self) -> Sensed {
        let (need, known) = (self.need.condensing, self.design.condensing.value);
        let beyond = TemperatureInterval::new::<kelvin_interval>(BEYOND);
        let pressure = |condensing| self.input.refrigerant.dew_pressure(condensing).ok();
        match (
            self.input.sensing.value,
            pressure(need - beyond),
            pressure(known + beyond),
        ) {
            (Sensing::LiquidPressure, Some(lowest), Some(highest)) => {
                Sensed::Pressure { lowest, highest }
            }
            _ => Sensed::Coil {
                lowest: need - beyond,
                highest: known + beyond,
            },
        }
    }

    fn flooding(&self, method: Method) -> Option<Flooding> {
        let extra = self.extra_charge(method)?;
        let warmest =
            uom::si::f64::ThermodynamicTemperature::new::<degree_celsius>(RECEIVER_WARMEST);
        let nothing = Mass::new::<kilogram>(0.0);
        let receiver: Option<Volume> =
            receiver_check(&self.input.refrigerant, extra, nothing, warmest, None)
                .ok()
                .map(|check| check.needed)
                // On days on which nothing is flooded there is nothing to hold.
                .filter(|needed| *needed > Volume::new::<liter>(0.01));
        Some(Flooding {
            setting: self.need.pressure.value,
            extra_charge: extra,
            receiver,
        })
    }
}

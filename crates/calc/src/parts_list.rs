//! What to order for a chosen way of keeping head pressure up, in general terms.
//!
//! Every part comes with the values that decide whether one off the shelf fits: kind of output and current of a controller, points of a pressure switch, setting of a
//! flooding valve. Nothing is worked out here but currents; the values come from the plan and its side calculations.
//!
//! A controller whose output feeds the motors carries their full-load currents together, with a reserve on the largest, as [`crate::motor::Loading`] counts them; one that only gives them a
//! signal carries none.
//!
//! Source: which kind of output a motor takes is common practice, no published source (see [`crate::motor`]); reserve on the largest full-load current in the manner of
//! NFPA 70 (National Electrical Code) article 430 (from memory).

use uom::si::electric_current::ampere;
use uom::si::electric_potential::volt;
use uom::si::f64::{
    ElectricCurrent, ElectricPotential, Mass, Power, Pressure, ThermodynamicTemperature, Time,
    Volume,
};
use uom::si::mass::kilogram;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;
use uom::si::volume::cubic_meter;

use crate::input::MotorKind;
use crate::motor::takes_phase_cut;

/// Most condenser fans, and most stages.
pub const MOST_FANS: u32 = 32;

/// Usual reserve on full-load current: a quarter (NFPA 70 article 430, from memory).
pub const USUAL_RESERVE: f64 = 1.25;

/// What a system is to get.
#[derive(Clone, Debug, PartialEq)]
pub struct Facts {
    /// Number of condenser fans: 1 to 32.
    pub fans: u32,
    /// Kind of fan motor that is there.
    pub motor: MotorKind,
    /// Kind of motor to put in its place; `None` where the motors stay.
    pub new_motor: Option<MotorKind>,
    /// Full-load current of one fan motor, the new one where it is changed: 0.01 to 200 A.
    pub full_load: ElectricCurrent,
    /// Rated current over full-load current of one motor, which counts for the largest of several: 1 to 3, usually [`USUAL_RESERVE`].
    pub reserve: f64,
    /// Supply voltage, r.m.s.: 12 to 1000 V.
    pub supply: ElectricPotential,
    /// How the fans are moved.
    pub fan_control: FanControl,
    /// Whether wind baffles are wanted.
    pub baffle: bool,
    /// Flooding of the condenser.
    pub flooding: Option<Flooding>,
    /// Power of a crankcase heater that is missing: 1 W to 2 kW.
    pub crankcase_heater: Option<Power>,
    /// Time that the low-pressure cut-out is to be bypassed for at a start: 1 to 600 s.
    pub low_pressure_bypass: Option<Time>,
    /// Whether the expansion valve is to be changed for one with a balanced port.
    pub balanced_port: bool,
}

/// How the fans are moved.
#[derive(Clone, Debug, PartialEq)]
pub enum FanControl {
    /// As they are: at full speed.
    FullSpeed,
    /// By pressure switches, each its own group: 1 to 32 groups. Fans in none of them run on.
    Switched(Vec<Group>),
    /// By a speed controller.
    Slowed {
        /// How many fans it moves: from 1 to all.
        fans: u32,
        /// What it senses.
        input: Sensed,
        /// Fans beside them on pressure switches, each its own group.
        rest: Vec<Group>,
    },
}

/// Fans on one pressure switch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Group {
    /// How many fans: at least 1, and no more than there are over all groups.
    pub fans: u32,
    /// Head pressure that they come on at: above `off`, up to 20 MPa.
    pub on: Pressure,
    /// Head pressure that they go off at: above 0.
    pub off: Pressure,
}

/// What a controller senses, and the values that it must be able to read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Sensed {
    /// Temperature of the coil: 150 to 450 K.
    Coil {
        /// Lowest to be read.
        lowest: ThermodynamicTemperature,
        /// Highest to be read, above the lowest.
        highest: ThermodynamicTemperature,
    },
    /// Pressure of the liquid line, absolute: 0 to 20 MPa.
    Pressure {
        /// Lowest to be read.
        lowest: Pressure,
        /// Highest to be read, above the lowest.
        highest: Pressure,
    },
}

/// What flooding takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flooding {
    /// Condensing pressure that the valve holds: above 0, up to 20 MPa.
    pub setting: Pressure,
    /// Charge on top of what is in: 0 to 1000 kg.
    pub extra_charge: Mass,
    /// Volume of a receiver where the one that is there is too small or missing: 1e-5 to 10 m³.
    pub receiver: Option<Volume>,
}

/// Kind of a controller's output.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum OutputKind {
    /// Cuts the phase of a single-phase supply.
    PhaseCut,
    /// Gives the motors' own input a signal, such as 0 to 10 V or a pulse width.
    Signal,
    /// Gives three phases of another frequency.
    Frequency,
}

/// A part to order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Part {
    /// A fan motor of another kind.
    Motor {
        /// What is there.
        from: MotorKind,
        /// What it must be.
        to: MotorKind,
        /// How many.
        count: u32,
    },
    /// A fan speed controller with its sensor.
    Controller {
        /// Kind of output.
        output: OutputKind,
        /// Rated current; `None` where only a signal leaves it.
        current: Option<ElectricCurrent>,
        /// Supply voltage, r.m.s.
        supply: ElectricPotential,
        /// What it senses, and over what range.
        input: Sensed,
    },
    /// A pressure switch for a group of fans.
    PressureSwitch {
        /// Which group, from 1.
        group: u32,
        /// Comes on at this head pressure.
        on: Pressure,
        /// Goes off at this head pressure.
        off: Pressure,
    },
    /// A contactor for a group of fans.
    Contactor {
        /// Which group, from 1.
        group: u32,
        /// Rated current.
        current: ElectricCurrent,
        /// Supply voltage, r.m.s.
        supply: ElectricPotential,
    },
    /// Baffles against wind through the coil.
    WindBaffle,
    /// A valve that backs liquid up in the condenser.
    FloodingValve {
        /// Condensing pressure that it holds.
        setting: Pressure,
    },
    /// A receiver.
    Receiver {
        /// Least volume.
        volume: Volume,
    },
    /// Refrigerant on top of what is in.
    ExtraCharge {
        /// How much.
        mass: Mass,
    },
    /// A crankcase heater.
    CrankcaseHeater {
        /// Its power.
        power: Power,
    },
    /// A timer that bypasses the low-pressure cut-out at a start.
    LowPressureBypass {
        /// For how long.
        time: Time,
    },
    /// An expansion valve with a balanced port.
    BalancedPortValve,
}

/// Which fact was out of its range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fact {
    /// Number of fans.
    Fans,
    /// Number of fans that a speed controller moves.
    SlowedFans,
    /// Full-load current of a motor, A.
    FullLoad,
    /// Rated over full-load current.
    Reserve,
    /// Supply voltage, V.
    Supply,
    /// Number of groups of switched fans.
    Groups,
    /// Number of fans in a group.
    GroupFans,
    /// Number of fans in all groups.
    AllGroupFans,
    /// Pressure at which a group comes on, Pa.
    GroupOn,
    /// Pressure at which a group goes off, Pa.
    GroupOff,
    /// Lowest sensed temperature, K, or pressure, Pa.
    SensedLowest,
    /// Highest sensed temperature, K, or pressure, Pa.
    SensedHighest,
    /// Setting of a flooding valve, Pa.
    FloodingSetting,
    /// Extra charge, kg.
    ExtraCharge,
    /// Volume of a receiver, m³.
    Receiver,
    /// Power of a crankcase heater, W.
    CrankcaseHeater,
    /// Bypass time, s.
    Bypass,
}

/// What is wrong with the facts.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum PartsError {
    /// A fact outside its range, or no number; in the unit named with it.
    #[error("{what:?} of {given} is outside {low} to {high}")]
    OutOfRange {
        /// Which fact.
        what: Fact,
        /// As given.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The first of two values must be above the second.
    #[error("{upper:?} must be above {lower:?}")]
    Reversed {
        /// Which must be the higher.
        upper: Fact,
        /// Which must be the lower.
        lower: Fact,
    },
    /// The motor is to be changed for one of its own kind.
    #[error("a motor of kind {kind:?} is there already")]
    SameMotor {
        /// The kind.
        kind: MotorKind,
    },
}

/// Lowest pressure that a part is set to, Pa.
const LEAST_PRESSURE: f64 = 1.0;

/// Highest pressure that a part is set to or reads, Pa.
const MOST_PRESSURE: f64 = 2e7;

impl Facts {
    /// The parts, in the order in which they are met on the way from the fans to the compressor. Empty where nothing has to be ordered.
    ///
    /// # Errors
    /// Any [`PartsError`].
    pub fn parts(&self) -> Result<Vec<Part>, PartsError> {
        self.check()?;
        let mut parts = Vec::new();
        parts.extend(self.new_motor.map(|to| Part::Motor {
            from: self.motor,
            to,
            count: self.fans,
        }));
        match &self.fan_control {
            FanControl::FullSpeed => {}
            FanControl::Switched(groups) => parts.extend(self.switches(groups)?),
            FanControl::Slowed { fans, input, rest } => {
                parts.push(self.controller(*fans, *input)?);
                if !rest.is_empty() {
                    parts.extend(self.switches(rest)?);
                }
            }
        }
        if self.baffle {
            parts.push(Part::WindBaffle);
        }
        if let Some(flooding) = self.flooding {
            parts.extend(flooding.parts()?);
        }
        if let Some(power) = self.crankcase_heater {
            inside(Fact::CrankcaseHeater, power.get::<watt>(), (1.0, 2000.0))?;
            parts.push(Part::CrankcaseHeater { power });
        }
        if let Some(time) = self.low_pressure_bypass {
            inside(Fact::Bypass, time.get::<second>(), (1.0, 600.0))?;
            parts.push(Part::LowPressureBypass { time });
        }
        if self.balanced_port {
            parts.push(Part::BalancedPortValve);
        }
        Ok(parts)
    }

    fn check(&self) -> Result<(), PartsError> {
        let (fans, most) = (f64::from(self.fans), f64::from(MOST_FANS));
        inside(Fact::Fans, fans, (1.0, most))?;
        let amps = self.full_load.get::<ampere>();
        inside(Fact::FullLoad, amps, (0.01, 200.0))?;
        inside(Fact::Reserve, self.reserve, (1.0, 3.0))?;
        inside(Fact::Supply, self.supply.get::<volt>(), (12.0, 1000.0))?;
        match self.new_motor {
            Some(kind) if kind == self.motor => Err(PartsError::SameMotor { kind }),
            _ => Ok(()),
        }
    }

    fn current(&self, fans: u32) -> ElectricCurrent {
        let others = f64::from(fans.saturating_sub(1));
        self.full_load * (others + self.reserve)
    }

    fn controller(&self, fans: u32, input: Sensed) -> Result<Part, PartsError> {
        input.check()?;
        inside(
            Fact::SlowedFans,
            f64::from(fans),
            (1.0, f64::from(self.fans)),
        )?;
        let output = output_for(self.new_motor.unwrap_or(self.motor));
        let feeds = output != OutputKind::Signal;
        Ok(Part::Controller {
            output,
            current: feeds.then(|| self.current(fans)),
            supply: self.supply,
            input,
        })
    }

    fn switches(&self, groups: &[Group]) -> Result<Vec<Part>, PartsError> {
        let most = f64::from(MOST_FANS);
        inside(Fact::Groups, groups.len() as f64, (1.0, most))?;
        let mut all = 0.0;
        let mut parts = Vec::with_capacity(2 * groups.len());
        for (group, number) in groups.iter().zip(1..) {
            all += group.check(self.fans)?;
            parts.push(Part::PressureSwitch {
                group: number,
                on: group.on,
                off: group.off,
            });
            parts.push(Part::Contactor {
                group: number,
                current: self.current(group.fans),
                supply: self.supply,
            });
        }
        inside(Fact::AllGroupFans, all, (1.0, f64::from(self.fans)))?;
        Ok(parts)
    }
}

/// The kind of output that a motor takes to be slowed. Common practice, no published source.
pub fn output_for(motor: MotorKind) -> OutputKind {
    match motor {
        kind if takes_phase_cut(kind) => OutputKind::PhaseCut,
        MotorKind::ThreePhase => OutputKind::Frequency,
        _ => OutputKind::Signal,
    }
}

impl Group {
    /// Number of fans of a checked group.
    fn check(&self, fans: u32) -> Result<f64, PartsError> {
        let own = f64::from(self.fans);
        inside(Fact::GroupFans, own, (1.0, f64::from(fans)))?;
        let limits = (LEAST_PRESSURE, MOST_PRESSURE);
        let (on, off) = (self.on.get::<pascal>(), self.off.get::<pascal>());
        inside(Fact::GroupOn, on, limits)?;
        inside(Fact::GroupOff, off, limits)?;
        rising((Fact::GroupOff, off), (Fact::GroupOn, on))?;
        Ok(own)
    }
}

impl Sensed {
    fn check(&self) -> Result<(), PartsError> {
        let (lowest, highest, limits) = match self {
            Sensed::Coil { lowest, highest } => (
                lowest.get::<kelvin>(),
                highest.get::<kelvin>(),
                (150.0, 450.0),
            ),
            Sensed::Pressure { lowest, highest } => (
                lowest.get::<pascal>(),
                highest.get::<pascal>(),
                (0.0, MOST_PRESSURE),
            ),
        };
        inside(Fact::SensedLowest, lowest, limits)?;
        inside(Fact::SensedHighest, highest, limits)?;
        rising((Fact::SensedLowest, lowest), (Fact::SensedHighest, highest))
    }
}

impl Flooding {
    fn parts(&self) -> Result<Vec<Part>, PartsError> {
        let setting = self.setting.get::<pascal>();
        inside(
            Fact::FloodingSetting,
            setting,
            (LEAST_PRESSURE, MOST_PRESSURE),
        )?;
        let extra = self.extra_charge.get::<kilogram>();
        inside(Fact::ExtraCharge, extra, (0.0, 1000.0))?;
        let mut parts = vec![Part::FloodingValve {
            setting: self.setting,
        }];
        if let Some(volume) = self.receiver {
            inside(Fact::Receiver, volume.get::<cubic_meter>(), (1e-5, 10.0))?;
            parts.push(Part::Receiver { volume });
        }
        if extra > 0.0 {
            parts.push(Part::ExtraCharge {
                mass: self.extra_charge,
            });
        }
        Ok(parts)
    }
}

fn inside(what: Fact, given: f64, (low, high): (f64, f64)) -> Result<(), PartsError> {
    if (low..=high).contains(&given) {
        return Ok(());
    }
    Err(PartsError::OutOfRange {
        what,
        given,
        low,
        high,
    })
}

fn rising(lower: (Fact, f64), upper: (Fact, f64)) -> Result<(), PartsError> {
    if lower.1 < upper.1 {
        return Ok(());
    }
    Err(PartsError::Reversed {
        upper: upper.0,
        lower: lower.0,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::pressure::kilopascal;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use uom::si::volume::liter;

    fn pressure(value: f64) -> Pressure {
        Pressure::new::<kilopascal>(value)
    }

    fn coil() -> Sensed {
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        Sensed::Coil {
            lowest: celsius(-30.0),
            highest: celsius(60.0),
        }
    }

    fn facts() -> Facts {
        Facts {
            fans: 4,
            motor: MotorKind::PermanentSplitCapacitor,
            new_motor: None,
            full_load: ElectricCurrent::new::<ampere>(2.0),
            reserve: USUAL_RESERVE,
            supply: ElectricPotential::new::<volt>(230.0),
            fan_control: FanControl::FullSpeed,
            baffle: false,
            flooding: None,
            crankcase_heater: None,
            low_pressure_bypass: None,
            balanced_port: false,
        }
    }

    fn slowed(motor: MotorKind, new_motor: Option<MotorKind>) -> Vec<Part> {
        let facts = Facts {
            motor,
            new_motor,
            fan_control: FanControl::Slowed {
                fans: 4,
                input: coil(),
                rest: Vec::new(),
            },
            ..facts()
        };
        facts.parts().unwrap()
    }

    #[test]
    fn nothing_is_ordered_where_nothing_is_wanted() {
        assert_eq!(facts().parts().unwrap(), []);
    }

    /// NFPA 70 article 430.24 (from memory): 3 x 2 A + 1.25 x 2 A = 8.5 A.
    #[test]
    fn a_controller_fits_the_motor() {
        let rated = Some(ElectricCurrent::new::<ampere>(8.5));
        for (motor, kind, amps) in [
            (
                MotorKind::PermanentSplitCapacitor,
                OutputKind::PhaseCut,
                rated,
            ),
            (MotorKind::ShadedPole, OutputKind::PhaseCut, rated),
            (MotorKind::ThreePhase, OutputKind::Frequency, rated),
            (
                MotorKind::ElectronicallyCommutated,
                OutputKind::Signal,
                None,
            ),
        ] {
            let parts = slowed(motor, None);
            let [
                Part::Controller {
                    output,
                    current,
                    input,
                    ..
                },
            ] = parts.as_slice()
            else {
                panic!("{parts:?}");
            };
            assert_eq!((*output, *current, *input), (kind, amps, coil()));
        }
    }

    #[test]
    fn a_changed_motor_decides_the_output() {
        let (from, to) = (MotorKind::ShadedPole, MotorKind::ElectronicallyCommutated);
        let parts = slowed(from, Some(to));
        assert_eq!(parts[0], Part::Motor { from, to, count: 4 });
        assert!(matches!(
            parts[1],
            Part::Controller {
                output: OutputKind::Signal,
                current: None,
                ..
            }
        ));
        let same = Facts {
            new_motor: Some(MotorKind::PermanentSplitCapacitor),
            ..facts()
        };
        assert!(matches!(same.parts(), Err(PartsError::SameMotor { .. })));
    }

    #[test]
    fn each_group_gets_a_switch_and_a_contactor() {
        let group = |fans, on: f64, off: f64| Group {
            fans,
            on: pressure(on),
            off: pressure(off),
        };
        let ask = |groups: &[Group]| {
            let fan_control = FanControl::Switched(groups.to_vec());
            Facts {
                fan_control,
                ..facts()
            }
            .parts()
        };
        let parts = ask(&[group(2, 1500.0, 1100.0), group(1, 1700.0, 1300.0)]).unwrap();
        assert_eq!(parts.len(), 4);
        assert_eq!(
            parts[2],
            Part::PressureSwitch {
                group: 2,
                on: pressure(1700.0),
                off: pressure(1300.0)
            }
        );
        assert!(matches!(
            parts[1],
            Part::Contactor { group: 1, current, .. } if current == ElectricCurrent::new::<ampere>(4.5)
        ));
        assert_eq!(
            ask(&[group(1, 1100.0, 1100.0)]),
            Err(PartsError::Reversed {
                upper: Fact::GroupOn,
                lower: Fact::GroupOff
            })
        );
        assert!(matches!(
            ask(&[group(3, 1500.0, 1100.0), group(2, 1600.0, 1200.0)]),
            Err(PartsError::OutOfRange {
                what: Fact::AllGroupFans,
                ..
            })
        ));
        assert!(ask(&[]).is_err());
        assert!(ask(&[group(0, 1500.0, 1100.0)]).is_err());
        assert!(ask(&[group(1, f64::NAN, 1100.0)]).is_err());
    }

    #[test]
    fn all_the_rest_in_order() {
        let volume = Volume::new::<liter>(18.0);
        let mass = Mass::new::<kilogram>(7.5);
        let facts = Facts {
            baffle: true,
            flooding: Some(Flooding {
                setting: pressure(1300.0),
                extra_charge: mass,
                receiver: Some(volume),
            }),
            crankcase_heater: Some(Power::new::<watt>(70.0)),
            low_pressure_bypass: Some(Time::new::<second>(120.0)),
            balanced_port: true,
            ..facts()
        };
        assert_eq!(
            facts.parts().unwrap(),
            [
                Part::WindBaffle,
                Part::FloodingValve {
                    setting: pressure(1300.0)
                },
                Part::Receiver { volume },
                Part::ExtraCharge { mass },
                Part::CrankcaseHeater {
                    power: Power::new::<watt>(70.0)
                },
                Part::LowPressureBypass {
                    time: Time::new::<second>(120.0)
                },
                Part::BalancedPortValve,
            ]
        );
        let short = Facts {
            low_pressure_bypass: Some(Time::new::<second>(0.0)),
            ..facts.clone()
        };
        assert!(short.parts().is_err());
        let none = Facts {
            flooding: Some(Flooding {
                setting: pressure(1300.0),
                extra_charge: Mass::default(),
                receiver: None,
            }),
            baffle: false,
            crankcase_heater: None,
            low_pressure_bypass: None,
            balanced_port: false,
            ..facts
        };
        assert_eq!(none.parts().unwrap().len(), 1);
    }

    #[test]
    fn facts_that_no_system_has() {
        let wrong = |change: fn(&mut Facts)| {
            let mut facts = facts();
            facts.fan_control = FanControl::Slowed {
                fans: 4,
                input: coil(),
                rest: Vec::new(),
            };
            change(&mut facts);
            facts.parts().unwrap_err()
        };
        let errors = [
            wrong(|facts| facts.fans = 0),
            wrong(|facts| facts.reserve = 0.8),
            wrong(|facts| facts.full_load = ElectricCurrent::new::<ampere>(f64::NAN)),
            wrong(|facts| facts.supply = ElectricPotential::new::<volt>(0.0)),
        ];
        for error in errors {
            assert!(matches!(error, PartsError::OutOfRange { .. }));
        }
        let reversed = wrong(|facts| {
            facts.fan_control = FanControl::Slowed {
                fans: 4,
                input: Sensed::Pressure {
                    lowest: Pressure::new::<kilopascal>(900.0),
                    highest: Pressure::new::<kilopascal>(900.0),
                },
                rest: Vec::new(),
            };
        });
        assert!(matches!(reversed, PartsError::Reversed { .. }));
    }
}

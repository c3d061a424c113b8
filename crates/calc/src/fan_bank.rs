//! Several fans on one coil: which of them run, and how much air that draws through the coil.
//!
//! Fans that each have their own section of the coil, parted by baffles, do not know of each other: each moves its full airflow
//! times its share of speed. Fans on one open space behind the coil share its pressure, `p` below the outside:
//! * coil: `p = k_c·V²`;
//! * running fan: `p = p₀·n² − a·V²`;
//! * idle fan without a shutter, as an orifice that lets outside air back in: `p = k_i·V²`;
//!
//! and the flows balance, `V_coil = Σ V_running − Σ V_idle`. Every pressure goes with density, so that the airflow does not. The left
//! side rises with `p` and the right side falls, so that there is one answer, found by bracketing it.
//!
//! Power goes by the affinity laws, with the cube of the speed and the density; what the fan's moved working point changes in it is
//! left out, since an axial fan's power is flat there.
//!
//! Source: AMCA 201 (fan laws, fans in parallel); fluid mechanics textbooks for the orifice. The two resistances' usual values are
//! common practice, no published source.

use uom::si::f64::{Power, ThermodynamicTemperature, VolumeRate};
use uom::si::power::watt;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::volume_rate::cubic_meter_per_second;

use crate::fan;
use crate::root::bracketed;

/// Most fans on one coil.
pub const MOST_FANS: usize = 32;

/// Points of a fan that is switched: on above one sensed condensing temperature, off below another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Points {
    /// The fan comes on above this.
    pub on_above: ThermodynamicTemperature,
    /// The fan goes off below this.
    pub off_below: ThermodynamicTemperature,
}

impl Points {
    /// Whether the fan runs at a sensed value; between the points it stays as it was.
    pub fn runs(&self, sensed: ThermodynamicTemperature, ran: bool) -> bool {
        sensed > self.on_above || (ran && sensed >= self.off_below)
    }
}

/// What moves a fan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Role {
    /// On whenever the system cools.
    Fixed,
    /// One of several steps: a higher stage comes on at a higher point.
    Staged {
        /// Place in the order, from one.
        stage: u8,
        /// Its points.
        points: Points,
    },
    /// Switched on and off as a whole, without an order.
    Cycled(Points),
    /// At the speed that the speed controller gives.
    Modulated,
}

/// A fan of a bank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fan {
    /// What moves it.
    pub role: Role,
    /// Airflow at full speed with all fans of the bank at full speed. 0.01 to 500 m³/s.
    pub airflow: VolumeRate,
    /// Power at full speed in air of nameplate density. 1 W to 50 kW.
    pub power: Power,
    /// Whether a shutter closes its opening while it stands. Without meaning where each fan has its own section.
    pub shutter: bool,
}

/// What lies between the coil and the fans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Layout {
    /// Each fan draws through its own section of the coil.
    Sections,
    /// One open space, shared by all fans.
    Open {
        /// Pressure of a fan against a closed coil over its pressure in normal work. 1.1 to 10.
        closed: f64,
        /// Pressure that drives a fan's own full airflow backwards through it while it stands, over the coil's pressure drop with
        /// all fans at full speed. 0.05 to 100.
        idle_resistance: f64,
    },
}

impl Layout {
    /// An open space with axial fans: twice the working pressure against a closed coil, and an idle fan that passes its own airflow
    /// at the coil's pressure drop. Common practice, no published source.
    pub const USUAL_OPEN: Self = Self::Open {
        closed: 2.0,
        idle_resistance: 1.0,
    };
}

/// A value of a bank; the unit is the one that limits in [`BankError::OutOfRange`] are in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BankValue {
    /// Number of fans.
    Fans,
    /// Airflow of a fan, m³/s.
    Airflow,
    /// Power of a fan, W.
    Power,
    /// Point where a fan comes on, K.
    OnAbove,
    /// Point where a fan goes off, K.
    OffBelow,
    /// Place in the order of stages.
    Stage,
    /// Pressure against a closed coil over working pressure.
    Closed,
    /// Resistance of an idle fan over the coil's.
    IdleResistance,
    /// Share of full speed of a fan.
    Speed,
    /// Density of the air over the nameplate's.
    DensityRatio,
    /// Sensed condensing temperature, K.
    Sensed,
}

/// What is wrong with a bank or with what it is asked, and what would be right. Fans count from zero, in the bank's order.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum BankError {
    /// A value outside the limits that the model holds for, or no number.
    #[error("{what:?} of {given} (fan {fan:?}) is outside {low} to {high}")]
    OutOfRange {
        /// Which value.
        what: BankValue,
        /// Of which fan, where it is one fan's.
        fan: Option<usize>,
        /// What was given, in the value's unit.
        given: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// A higher stage comes on before a lower one.
    #[error("fan {later} has the higher stage, but comes on before fan {earlier}")]
    StagesOutOfOrder {
        /// The fan with the lower stage.
        earlier: usize,
        /// The fan with the higher stage.
        later: usize,
    },
    /// As many states are needed as there are fans.
    #[error("{given} states for {fans} fans")]
    States {
        /// Number of states given.
        given: usize,
        /// Number of fans.
        fans: usize,
    },
}

fn inside(
    what: BankValue,
    fan: Option<usize>,
    given: f64,
    (low, high): (f64, f64),
) -> Result<f64, BankError> {
    if (low..=high).contains(&given) {
        Ok(given)
    } else {
        Err(BankError::OutOfRange {
            what,
            fan,
            given,
            low,
            high,
        })
    }
}

/// Limits of a sensed condensing temperature and of the points on it, K.
const KELVINS: (f64, f64) = (200.0, 400.0);

/// Fans on one coil.
#[derive(Clone, Debug, PartialEq)]
pub struct FanBank {
    fans: Vec<Fan>,
    layout: Layout,
    airflow: VolumeRate,
    power: Power,
}

/// What a bank moves in one state of its fans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BankFlow {
    /// Air through the coil.
    pub airflow: VolumeRate,
    /// Air through the coil over the one with all fans at full speed.
    pub airflow_share: f64,
    /// Air that comes back through fans that stand or are overrun; it passes no coil.
    pub short_circuit: VolumeRate,
    /// Power of the fans in this air.
    pub power: Power,
    /// Power over the one at full speed in air of nameplate density.
    pub power_share: f64,
}

impl FanBank {
    /// A bank of 1 to 32 fans.
    ///
    /// # Errors
    /// [`BankError::OutOfRange`] for a number of fans or a value outside what [`Fan`] and [`Layout`] state, or an off point at or
    /// above its on point; [`BankError::StagesOutOfOrder`].
    pub fn new(fans: Vec<Fan>, layout: Layout) -> Result<Self, BankError> {
        let most = MOST_FANS as f64;
        inside(BankValue::Fans, None, fans.len() as f64, (1.0, most))?;
        for (index, fan) in fans.iter().enumerate() {
            checked(index, fan)?;
        }
        in_order(&fans)?;
        if let Layout::Open {
            closed,
            idle_resistance,
        } = layout
        {
            inside(BankValue::Closed, None, closed, (1.1, 10.0))?;
            inside(
                BankValue::IdleResistance,
                None,
                idle_resistance,
                (0.05, 100.0),
            )?;
        }
        let airflow = fans
            .iter()
            .fold(VolumeRate::default(), |sum, fan| sum + fan.airflow);
        let power = fans
            .iter()
            .fold(Power::default(), |sum, fan| sum + fan.power);
        Ok(Self {
            fans,
            layout,
            airflow,
            power,
        })
    }

    /// The fans, in their order.
    pub fn fans(&self) -> &[Fan] {
        &self.fans
    }

    /// Air through the coil with all fans at full speed.
    pub fn full_airflow(&self) -> VolumeRate {
        self.airflow
    }

    /// Power of all fans at full speed in air of nameplate density.
    pub fn full_power(&self) -> Power {
        self.power
    }

    /// Moves the states (shares of full speed, zero for standing) on to what a sensed condensing temperature and the speed
    /// controller ask for, while the system cools.
    ///
    /// # Errors
    /// [`BankError::States`] where there are more or fewer states than fans; [`BankError::OutOfRange`] for a sensed temperature
    /// outside 200 to 400 K or a speed outside 0 to 1.25; the states are then left as they were.
    pub fn follow(
        &self,
        sensed: ThermodynamicTemperature,
        modulated: f64,
        states: &mut [f64],
    ) -> Result<(), BankError> {
        inside(BankValue::Sensed, None, sensed.get::<kelvin>(), KELVINS)?;
        inside(BankValue::Speed, None, modulated, (0.0, 1.25))?;
        self.check_states(states)?;
        let switched = |runs: bool| if runs { 1.0 } else { 0.0 };
        for (fan, state) in self.fans.iter().zip(states) {
            *state = match fan.role {
                Role::Fixed => 1.0,
                Role::Modulated => modulated,
                Role::Staged { points, .. } | Role::Cycled(points) => {
                    switched(points.runs(sensed, *state > 0.0))
                }
            };
        }
        Ok(())
    }

    /// Airflow and power with each fan at a share of its full speed (zero for standing), in air of a share of nameplate density.
    ///
    /// With no fan running there is no airflow: wind and draft are not the bank's.
    ///
    /// # Errors
    /// [`BankError::States`] where there are more or fewer states than fans; [`BankError::OutOfRange`] for a speed outside 0 to
    /// 1.25 or a density ratio outside 0.4 to 1.6.
    pub fn flow(&self, states: &[f64], density: f64) -> Result<BankFlow, BankError> {
        inside(BankValue::DensityRatio, None, density, (0.4, 1.6))?;
        self.check_states(states)?;
        let (airflow, short_circuit) = match self.layout {
            Layout::Sections => (self.apart(states), VolumeRate::default()),
            Layout::Open {
                closed,
                idle_resistance,
            } => self.together(states, closed, idle_resistance),
        };
        let power = self
            .fans
            .iter()
            .zip(states)
            .fold(Power::default(), |sum, (fan, speed)| {
                sum + fan.power * density * speed.powi(3)
            });
        Ok(BankFlow {
            airflow,
            airflow_share: (airflow / self.airflow).value,
            short_circuit,
            power,
            power_share: (power / self.power).value,
        })
    }

    fn check_states(&self, states: &[f64]) -> Result<(), BankError> {
        if states.len() != self.fans.len() {
            return Err(BankError::States {
                given: states.len(),
                fans: self.fans.len(),
            });
        }
        for (index, speed) in states.iter().enumerate() {
            inside(BankValue::Speed, Some(index), *speed, (0.0, 1.25))?;
        }
        Ok(())
    }

    fn apart(&self, states: &[f64]) -> VolumeRate {
        self.fans
            .iter()
            .zip(states)
            .fold(VolumeRate::default(), |sum, (fan, speed)| {
                sum + fan::airflow(fan.airflow, *speed)
            })
    }

    /// Air through the coil and air that comes back, with pressures as shares of the coil's drop at full airflow.
    fn together(
        &self,
        states: &[f64],
        closed: f64,
        idle_resistance: f64,
    ) -> (VolumeRate, VolumeRate) {
        let fastest = states.iter().copied().fold(0.0, f64::max);
        if fastest == 0.0 {
            return (VolumeRate::default(), VolumeRate::default());
        }
        // Air out of one fan as a share of its own full airflow; negative where it comes back.
        let through = |fan: &Fan, speed: f64, pressure: f64| {
            if speed > 0.0 {
                let left = closed * speed * speed - pressure;
                left.signum() * (left.abs() / (closed - 1.0)).sqrt()
            } else if fan.shutter {
                0.0
            } else {
                -(pressure / idle_resistance).sqrt()
            }
        };
        let flows = |pressure: f64| {
            let each = self.fans.iter().zip(states);
            each.fold((0.0, 0.0), |(out, back), (fan, speed)| {
                let flow = fan.airflow.value * through(fan, *speed, pressure);
                (out + flow.max(0.0), back - flow.min(0.0))
            })
        };
        // The root of the pressure is what the coil's airflow goes with, and it keeps the balance smooth at rest.
        let share = bracketed(0.0, closed.sqrt() * fastest, |share| {
            let (out, back) = flows(share * share);
            self.airflow.value * share - (out - back)
        });
        let back = flows(share * share).1;
        (
            self.airflow * share,
            VolumeRate::new::<cubic_meter_per_second>(back),
        )
    }
}

fn checked(index: usize, fan: &Fan) -> Result<(), BankError> {
    let at = Some(index);
    let airflow = fan.airflow.get::<cubic_meter_per_second>();
    inside(BankValue::Airflow, at, airflow, (0.01, 500.0))?;
    inside(
        BankValue::Power,
        at,
        fan.power.get::<watt>(),
        (1.0, 50_000.0),
    )?;
    let points = match fan.role {
        Role::Fixed | Role::Modulated => return Ok(()),
        Role::Cycled(points) => points,
        Role::Staged { stage, points } => {
            inside(
                BankValue::Stage,
                at,
                f64::from(stage),
                (1.0, MOST_FANS as f64),
            )?;
            points
        }
    };
    let on = inside(
        BankValue::OnAbove,
        at,
        points.on_above.get::<kelvin>(),
        KELVINS,
    )?;
    // Narrower, and a switched fan would not come to rest. Common practice, no published source.
    const NARROWEST: f64 = 0.5;
    inside(
        BankValue::OffBelow,
        at,
        points.off_below.get::<kelvin>(),
        (KELVINS.0, on - NARROWEST),
    )?;
    Ok(())
}

fn in_order(fans: &[Fan]) -> Result<(), BankError> {
    let stages = || {
        fans.iter()
            .enumerate()
            .filter_map(|(index, fan)| match fan.role {
                Role::Staged { stage, points } => Some((index, stage, points.on_above)),
                Role::Fixed | Role::Cycled(_) | Role::Modulated => None,
            })
    };
    for (earlier, low, first) in stages() {
        for (later, high, second) in stages() {
            if high > low && second < first {
                return Err(BankError::StagesOutOfOrder { earlier, later });
            }
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn celsius(degrees: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(degrees)
    }

    fn points(on: f64, off: f64) -> Points {
        Points {
            on_above: celsius(on),
            off_below: celsius(off),
        }
    }

    fn fan(role: Role) -> Fan {
        Fan {
            role,
            airflow: VolumeRate::new::<cubic_meter_per_second>(2.0),
            power: Power::new::<watt>(400.0),
            shutter: false,
        }
    }

    fn pair(layout: Layout, shutter: bool) -> FanBank {
        let fans = vec![
            Fan {
                shutter,
                ..fan(Role::Modulated)
            };
            2
        ];
        FanBank::new(fans, layout).unwrap()
    }

    #[test]
    fn one_of_two_by_hand() {
        // By hand from the balance with p0 = 2, a = k_i = 1 in shares: own sections move a half; behind a shutter
        // √(2 − p) = 2√p, so p = 2/5; past an open idle fan √(2 − p) = 3√p, so p = 1/5. The coil's share is √p.
        let cases = [
            (Layout::Sections, false, 0.5, 0.0),
            (Layout::USUAL_OPEN, true, 0.4_f64.sqrt(), 0.0),
            (Layout::USUAL_OPEN, false, 0.2_f64.sqrt(), 0.2_f64.sqrt()),
        ];
        for (layout, shutter, through, back) in cases {
            let flow = pair(layout, shutter).flow(&[1.0, 0.0], 1.0).unwrap();
            assert!((flow.airflow_share - through).abs() < 1e-12, "{flow:?}");
            let returned = flow.short_circuit.get::<cubic_meter_per_second>();
            assert!((returned - 2.0 * back).abs() < 1e-12, "{flow:?}");
        }
    }

    #[test]
    fn all_alike_follow_the_affinity_laws() {
        // AMCA 201: flow with speed, power with its cube and with density.
        for layout in [Layout::Sections, Layout::USUAL_OPEN] {
            for percent in 1..=100 {
                let speed = f64::from(percent) / 100.0;
                let flow = pair(layout, false).flow(&[speed, speed], 1.2).unwrap();
                assert!((flow.airflow_share - speed).abs() < 1e-12);
                assert!((flow.power_share - 1.2 * speed.powi(3)).abs() < 1e-12);
                assert!(flow.short_circuit.value.abs() < 1e-12);
            }
        }
    }

    #[test]
    fn a_much_slower_fan_is_overrun() {
        let flow = pair(Layout::USUAL_OPEN, true)
            .flow(&[1.0, 0.1], 1.0)
            .unwrap();
        assert!(flow.short_circuit.value > 0.0);
        let alone = pair(Layout::USUAL_OPEN, true)
            .flow(&[1.0, 0.0], 1.0)
            .unwrap();
        assert!(flow.airflow_share < alone.airflow_share);
    }

    #[test]
    fn nothing_moves_when_nothing_turns() {
        for layout in [Layout::Sections, Layout::USUAL_OPEN] {
            let flow = pair(layout, false).flow(&[0.0, 0.0], 1.0).unwrap();
            assert_eq!((flow.airflow_share, flow.power_share), (0.0, 0.0));
        }
    }

    #[test]
    fn fans_follow_their_roles() {
        let staged = |stage, on, off| Role::Staged {
            stage,
            points: points(on, off),
        };
        let bank = FanBank::new(
            vec![
                fan(Role::Fixed),
                fan(staged(1, 35.0, 30.0)),
                fan(staged(2, 40.0, 34.0)),
                fan(Role::Cycled(points(38.0, 32.0))),
                fan(Role::Modulated),
            ],
            Layout::Sections,
        )
        .unwrap();
        let mut states = [0.0; 5];
        for (sensed, expected) in [
            (28.0, [1.0, 0.0, 0.0, 0.0, 0.4]),
            (36.0, [1.0, 1.0, 0.0, 0.0, 0.4]),
            (41.0, [1.0, 1.0, 1.0, 1.0, 0.4]),
            (33.0, [1.0, 1.0, 0.0, 1.0, 0.4]),
            (29.0, [1.0, 0.0, 0.0, 0.0, 0.4]),
        ] {
            bank.follow(celsius(sensed), 0.4, &mut states).unwrap();
            assert_eq!(states, expected, "{sensed} °C");
        }
    }

    #[test]
    fn what_is_no_bank_is_refused() {
        let one = |fan| FanBank::new(vec![fan], Layout::Sections);
        assert!(FanBank::new(Vec::new(), Layout::Sections).is_err());
        assert!(FanBank::new(vec![fan(Role::Fixed); 33], Layout::Sections).is_err());
        assert!(FanBank::new(vec![fan(Role::Fixed); 32], Layout::Sections).is_ok());
        assert!(matches!(
            one(fan(Role::Cycled(points(30.0, 31.0)))),
            Err(BankError::OutOfRange {
                what: BankValue::OffBelow,
                fan: Some(0),
                ..
            })
        ));
        let staged = |stage, on| {
            fan(Role::Staged {
                stage,
                points: points(on, 20.0),
            })
        };
        assert_eq!(
            FanBank::new(vec![staged(2, 30.0), staged(1, 35.0)], Layout::Sections),
            Err(BankError::StagesOutOfOrder {
                earlier: 1,
                later: 0
            })
        );
        let airless = Fan {
            airflow: VolumeRate::default(),
            ..fan(Role::Fixed)
        };
        assert!(one(airless).is_err());
        let flat = Layout::Open {
            closed: 1.0,
            idle_resistance: 1.0,
        };
        assert!(FanBank::new(vec![fan(Role::Fixed)], flat).is_err());
        let bank = pair(Layout::USUAL_OPEN, false);
        assert_eq!(
            bank.flow(&[1.0], 1.0),
            Err(BankError::States { given: 1, fans: 2 })
        );
        assert!(bank.flow(&[1.0, f64::NAN], 1.0).is_err());
        assert!(bank.flow(&[1.0, 1.0], f64::NAN).is_err());
        assert!(bank.follow(celsius(f64::NAN), 1.0, &mut [0.0; 2]).is_err());
    }
}

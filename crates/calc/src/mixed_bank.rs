//! A fan bank of which a speed controller moves some fans, and pressure switches the rest.
//!
//! The fixed fans go off one after another at the pressure need and come on again at the full-speed point, the range that the modulated fans
//! work over. All are alike, on one open space without shutters.
//!
//! Source: as in [`crate::fan_bank`].

use uom::si::f64::{Power, ThermodynamicTemperature, VolumeRate};
use uom::si::power::watt;
use uom::si::volume_rate::cubic_meter_per_second;

use crate::fan_bank::{BankError, Fan, FanBank, Layout, Points, Role};

/// The fans that the speed controller does not move, with the bank for each number of them that runs.
#[derive(Clone, Debug)]
pub(crate) struct MixedBank {
    modulated: u32,
    /// With no fixed fan running, one, and so on to all; the fans of a state as one.
    banks: Vec<FanBank>,
}

/// So many like fans, as one.
fn group(role: Role, count: u32) -> Fan {
    let count = f64::from(count);
    Fan {
        role,
        airflow: VolumeRate::new::<cubic_meter_per_second>(count),
        power: Power::new::<watt>(count),
        shutter: false,
    }
}

impl MixedBank {
    /// A bank of so many fans, of which fewer are modulated; the rest are switched off below one condensing temperature and on above another.
    ///
    /// # Errors
    /// [`BankError`].
    pub(crate) fn new(
        (fixed, modulated): (u32, u32),
        off_below: ThermodynamicTemperature,
        on_above: ThermodynamicTemperature,
    ) -> Result<Self, BankError> {
        let points = Points {
            on_above,
            off_below,
        };
        let staged = Role::Staged { stage: 1, points };
        let bank = |running: u32| {
            let groups = [
                (Role::Modulated, modulated),
                (Role::Fixed, running),
                (staged, fixed - running),
            ];
            let there = groups.into_iter().filter(|(_, count)| *count > 0);
            let fans = there.map(|(role, count)| group(role, count)).collect();
            FanBank::new(fans, Layout::USUAL_OPEN)
        };
        Ok(Self {
            modulated,
            banks: (0..=fixed).map(bank).collect::<Result<_, _>>()?,
        })
    }

    /// How many fans are fixed.
    pub(crate) fn fixed(&self) -> usize {
        self.banks.len() - 1
    }

    fn fans(&self) -> f64 {
        self.fixed() as f64 + f64::from(self.modulated)
    }

    /// Shares of all fans that run fixed, and that the controller moves.
    pub(crate) fn shares(&self, running: usize) -> (f64, f64) {
        let all = self.fans();
        (running as f64 / all, f64::from(self.modulated) / all)
    }

    /// Share of the full airflow with so many fixed fans running and the modulated ones at a share of full speed.
    pub(crate) fn airflow(&self, running: usize, speed: f64) -> f64 {
        let Some(bank) = self.banks.get(running) else {
            return 1.0;
        };
        let states: Vec<f64> = bank
            .fans()
            .iter()
            .map(|fan| match fan.role {
                Role::Modulated => speed,
                Role::Fixed => 1.0,
                Role::Staged { .. } | Role::Cycled(_) => 0.0,
            })
            .collect();
        // As many states as fans, each within its range; the plain mean stands in for what cannot happen.
        let (fixed, modulated) = self.shares(running);
        bank.flow(&states, 1.0)
            .map_or(fixed + modulated * speed, |flow| flow.airflow_share)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::thermodynamic_temperature::degree_celsius;

    fn bank(fixed: u32, modulated: u32) -> MixedBank {
        let celsius = ThermodynamicTemperature::new::<degree_celsius>;
        MixedBank::new((fixed, modulated), celsius(20.0), celsius(28.0)).unwrap()
    }

    #[test]
    fn one_of_two_by_hand() {
        // By hand as in the bank's own test: past an open idle fan √(2 − p) = 3√p, so that p = 1/5 and the coil's share is √p.
        let two = bank(1, 1);
        assert!((two.airflow(0, 1.0) - 0.2_f64.sqrt()).abs() < 1e-12);
        assert!((two.airflow(1, 0.0) - 0.2_f64.sqrt()).abs() < 1e-12);
        assert!((two.airflow(1, 1.0) - 1.0).abs() < 1e-12);
        assert_eq!(two.airflow(0, 0.0), 0.0);
    }

    #[test]
    fn more_fans_and_more_speed_move_more_air() {
        let five = bank(3, 2);
        for running in 0..=3 {
            for step in 0..10 {
                let speed = f64::from(step) / 10.0;
                let here = five.airflow(running, speed);
                assert!(five.airflow(running, speed + 0.1) >= here);
                assert!(running == 3 || five.airflow(running + 1, speed) > here);
            }
        }
    }
}

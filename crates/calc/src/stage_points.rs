//! The points at which the fans of a bank are switched one after another.
//!
//! They share the range that the settings sheet stands on: the first fan to go off is the first of the upper half of the range, the last that may go
//! off stops at the pressure need. With one switch the whole range is its differential.
//!
//! Source: common practice, no published source.

use uom::si::f64::{Pressure, TemperatureInterval, ThermodynamicTemperature};
use winterset_refrigerant::{Error, Refrigerant};

use crate::explain::{Explained, Quantity, Rule, Working};

/// Where each switched fan goes off and on again, head pressure (absolute), in the order in which they go off. One fan of the bank always runs.
///
/// `need` is the condensing temperature (dew) of the pressure need, `range` what the switches share above it.
///
/// # Errors
/// Those of the refrigerant.
pub(crate) fn stage_points(
    refrigerant: &Refrigerant,
    need: ThermodynamicTemperature,
    range: TemperatureInterval,
    fans: u32,
) -> Result<Vec<Explained<(Pressure, Pressure)>>, Error> {
    let switches = fans.saturating_sub(1);
    (1..=switches)
        .map(|switch| {
            let (off, on) = shares(switch, switches);
            let at = |share: f64| {
                let point = refrigerant.dew_at_temperature(need + share * range)?;
                Ok::<_, Error>(point.pressure)
            };
            Ok(Explained::new(
                (at(off)?, at(on)?),
                Working::new(Rule::StagePoints)
                    .with("T_need", Quantity::Temperature(need))
                    .with("ΔT", Quantity::Difference(range))
                    .with("k", Quantity::Count(switch))
                    .with("m", Quantity::Count(switches)),
            ))
        })
        .collect()
}

/// Where a switch, counted from one, goes off and on, as shares of the range.
fn shares(switch: u32, switches: u32) -> (f64, f64) {
    if switches == 1 {
        return (0.0, 1.0);
    }
    let off = 0.5 * f64::from(switches - switch) / f64::from(switches - 1);
    (off, off + 0.5)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn switches_share_the_range_and_the_last_goes_off_at_the_need() {
        assert_eq!(shares(1, 1), (0.0, 1.0));
        assert_eq!([1, 2].map(|k| shares(k, 2)), [(0.5, 1.0), (0.0, 0.5)]);
        assert_eq!(shares(2, 3), (0.25, 0.75));
        for switches in 1..12 {
            let all: Vec<_> = (1..=switches).map(|k| shares(k, switches)).collect();
            assert_eq!(all[0].1, 1.0);
            assert_eq!(all[all.len() - 1].0, 0.0);
            assert!(all.windows(2).all(|pair| pair[0].0 > pair[1].0));
            assert!(all.iter().all(|(off, on)| on - off >= 0.5 - 1e-12));
        }
    }
}

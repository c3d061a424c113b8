//! The shares of its displacement that a compressor, or several on one circuit, can run at.
//!
//! At the same evaporating and condensing temperature, mass flow goes with displacement, so that a share of displacement is a share of the heat that the
//! condenser must reject. What the efficiency does at part load is left out. Any combination of the compressors is taken as possible; a controller's order
//! may leave some of them out.

/// Most compressors on one circuit.
pub const MOST_COMPRESSORS: usize = 6;

/// Most steps of one compressor.
pub const MOST_STEPS: usize = 6;

/// Least share of its displacement that a compressor may run at.
const LEAST_SHARE: f64 = 0.01;

/// Most of its displacement at nominal speed that a compressor may run at.
const MOST_SHARE: f64 = 4.0;

/// How one compressor changes its displacement.
#[derive(Clone, Debug, PartialEq)]
pub enum Control {
    /// On or off.
    Fixed,
    /// Unloaded in steps: the shares that it runs at beside the full one, each 0.01 to below 1; at most six.
    Unloading(Vec<f64>),
    /// Variable speed: lowest and highest speed over nominal speed, 0.01 to 4.
    Speed {
        /// Lowest speed over nominal.
        lowest: f64,
        /// Highest speed over nominal.
        highest: f64,
    },
}

/// One compressor on a circuit.
#[derive(Clone, Debug, PartialEq)]
pub struct Machine {
    /// Its displacement at nominal speed against that of the others, in any unit: 1e-6 to 1e6.
    pub size: f64,
    /// How it is controlled.
    pub control: Control,
}

/// What is wrong with the steps given.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum StepsError {
    /// No compressor, or too many.
    #[error("{count} compressors: there must be 1 to {MOST_COMPRESSORS}")]
    CompressorCount {
        /// As given.
        count: usize,
    },
    /// Too many steps of unloading.
    #[error("{count} steps of unloading on compressor {machine}: there may be up to {MOST_STEPS}")]
    StepCount {
        /// Which compressor, from 1.
        machine: usize,
        /// As given.
        count: usize,
    },
    /// A size, share or speed outside its limits.
    #[error("{value} on compressor {machine} is outside {low} to {high}")]
    OutOfRange {
        /// Which compressor, from 1.
        machine: usize,
        /// As given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// A demand that is no share.
    #[error("a load of {value} is outside 0 to {high}")]
    Load {
        /// As given.
        value: f64,
        /// Largest value allowed.
        high: f64,
    },
}

/// The shares of displacement that can be had, over all that the compressors have at nominal speed.
#[derive(Clone, Debug, PartialEq)]
pub struct CapacitySteps {
    /// Spans from lowest to highest, apart from each other and in rising order; a single step has both ends alike. Never empty.
    spans: Vec<(f64, f64)>,
}

/// How a load is met.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Delivery {
    /// At rest: there is no load.
    Off,
    /// By running steadily at a share.
    Steady {
        /// The share.
        share: f64,
    },
    /// By changing between two shares.
    Cycling {
        /// The smaller, 0 where the compressors stop.
        below: f64,
        /// The larger.
        above: f64,
        /// Share of time at the larger.
        time_above: f64,
    },
    /// Not in full: the load is above all that there is.
    Short {
        /// The most that there is.
        share: f64,
    },
}

impl CapacitySteps {
    /// The steps of 1 to 6 compressors.
    ///
    /// # Errors
    /// [`StepsError::CompressorCount`], [`StepsError::StepCount`], [`StepsError::OutOfRange`].
    pub fn new(machines: &[Machine]) -> Result<Self, StepsError> {
        let count = machines.len();
        if !(1..=MOST_COMPRESSORS).contains(&count) {
            return Err(StepsError::CompressorCount { count });
        }
        let mut total = 0.0;
        let mut reached = vec![(0.0, 0.0)];
        for (index, machine) in machines.iter().enumerate() {
            let own = machine.spans(index + 1)?;
            total += machine.size;
            let mut with: Vec<(f64, f64)> = reached.clone();
            for (low, high) in &reached {
                with.extend(own.iter().map(|(from, to)| (low + from, high + to)));
            }
            reached = merged(with);
        }
        let spans = reached
            .into_iter()
            .filter(|(_, high)| *high > 0.0)
            .map(|(low, high)| (low / total, high / total))
            .collect();
        Ok(Self { spans })
    }

    /// Compressors that are only switched, by their sizes.
    ///
    /// # Errors
    /// As [`CapacitySteps::new`].
    pub fn stages(sizes: &[f64]) -> Result<Self, StepsError> {
        let machines: Vec<Machine> = sizes
            .iter()
            .map(|size| Machine {
                size: *size,
                control: Control::Fixed,
            })
            .collect();
        Self::new(&machines)
    }

    /// The spans of shares that can be had steadily, from lowest to highest; a single step has both ends alike.
    pub fn spans(&self) -> &[(f64, f64)] {
        &self.spans
    }

    /// The smallest share that runs steadily.
    pub fn lowest(&self) -> f64 {
        self.spans.first().map_or(1.0, |span| span.0)
    }

    /// The largest share there is; above 1 where a compressor runs faster than its nominal speed.
    pub fn highest(&self) -> f64 {
        self.spans.last().map_or(1.0, |span| span.1)
    }

    /// How a load is met, as a share of what all compressors do at nominal speed: 0 to 4.
    ///
    /// # Errors
    /// [`StepsError::Load`].
    pub fn meet(&self, load: f64) -> Result<Delivery, StepsError> {
        if !(0.0..=MOST_SHARE).contains(&load) {
            return Err(StepsError::Load {
                value: load,
                high: MOST_SHARE,
            });
        }
        if load == 0.0 {
            return Ok(Delivery::Off);
        }
        let mut below = 0.0;
        for (low, high) in &self.spans {
            if load < *low {
                return Ok(Delivery::Cycling {
                    below,
                    above: *low,
                    time_above: (load - below) / (low - below),
                });
            }
            if load <= *high {
                return Ok(Delivery::Steady { share: load });
            }
            below = *high;
        }
        Ok(Delivery::Short { share: below })
    }
}

impl Machine {
    /// The spans that it runs at by itself, in the unit of its size.
    fn spans(&self, machine: usize) -> Result<Vec<(f64, f64)>, StepsError> {
        let within = |value: f64, low: f64, high: f64| {
            if (low..=high).contains(&value) {
                return Ok(value);
            }
            Err(StepsError::OutOfRange {
                machine,
                value,
                low,
                high,
            })
        };
        let size = within(self.size, 1e-6, 1e6)?;
        match &self.control {
            Control::Fixed => Ok(vec![(size, size)]),
            Control::Unloading(steps) if steps.len() > MOST_STEPS => Err(StepsError::StepCount {
                machine,
                count: steps.len(),
            }),
            Control::Unloading(steps) => {
                let mut spans = vec![(size, size)];
                for step in steps {
                    let share = within(*step, LEAST_SHARE, 1.0)?;
                    spans.push((share * size, share * size));
                }
                Ok(spans)
            }
            Control::Speed { lowest, highest } => {
                let highest = within(*highest, LEAST_SHARE, MOST_SHARE)?;
                let lowest = within(*lowest, LEAST_SHARE, highest)?;
                Ok(vec![(lowest * size, highest * size)])
            }
        }
    }
}

/// Spans in rising order, joined where they meet.
fn merged(mut spans: Vec<(f64, f64)>) -> Vec<(f64, f64)> {
    spans.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut joined: Vec<(f64, f64)> = Vec::with_capacity(spans.len());
    for (low, high) in spans {
        match joined.last_mut() {
            // Sums of the same sizes in another order differ in their last digits only.
            Some(last) if low <= last.1 * (1.0 + 1e-12) => last.1 = last.1.max(high),
            _ => joined.push((low, high)),
        }
    }
    joined
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn spans(steps: &CapacitySteps, wanted: &[(f64, f64)]) {
        let got = steps.spans();
        assert_eq!(got.len(), wanted.len(), "{got:?}");
        for (got, wanted) in got.iter().zip(wanted) {
            assert!(
                (got.0 - wanted.0).abs() < 1e-12 && (got.1 - wanted.1).abs() < 1e-12,
                "{got:?}"
            );
        }
    }

    fn speed(size: f64, lowest: f64, highest: f64) -> Machine {
        Machine {
            size,
            control: Control::Speed { lowest, highest },
        }
    }

    #[test]
    fn stages_add_up() {
        spans(&CapacitySteps::stages(&[3.0]).unwrap(), &[(1.0, 1.0)]);
        let equal = CapacitySteps::stages(&[2.0, 2.0]).unwrap();
        spans(&equal, &[(0.5, 0.5), (1.0, 1.0)]);
        let uneven = CapacitySteps::stages(&[1.0, 2.0]).unwrap();
        let third = 1.0 / 3.0;
        spans(
            &uneven,
            &[(third, third), (2.0 * third, 2.0 * third), (1.0, 1.0)],
        );
    }

    #[test]
    fn cylinders_unload() {
        let machine = Machine {
            size: 1.0,
            control: Control::Unloading(vec![0.5, 0.25]),
        };
        let steps = CapacitySteps::new(&[machine]).unwrap();
        spans(&steps, &[(0.25, 0.25), (0.5, 0.5), (1.0, 1.0)]);
        assert_eq!(steps.lowest(), 0.25);
    }

    #[test]
    fn speed_fills_the_gaps_between_stages() {
        let fixed = Machine {
            size: 1.0,
            control: Control::Fixed,
        };
        let steps = CapacitySteps::new(&[speed(1.0, 0.5, 1.2), fixed]).unwrap();
        spans(&steps, &[(0.25, 0.6), (0.75, 1.1)]);
        assert_eq!(steps.meet(0.3).unwrap(), Delivery::Steady { share: 0.3 });
        let Delivery::Cycling {
            below,
            above,
            time_above,
        } = steps.meet(0.675).unwrap()
        else {
            panic!("not cycling");
        };
        assert!((below - 0.6).abs() < 1e-12 && (above - 0.75).abs() < 1e-12);
        assert!((time_above - 0.5).abs() < 1e-9);
        assert!(
            matches!(steps.meet(2.0).unwrap(), Delivery::Short { share } if (share - 1.1).abs() < 1e-12)
        );
        assert_eq!(steps.meet(0.0).unwrap(), Delivery::Off);
        assert!(steps.meet(f64::NAN).is_err());
    }

    #[test]
    fn what_is_no_compressor() {
        assert!(matches!(
            CapacitySteps::new(&[]),
            Err(StepsError::CompressorCount { count: 0 })
        ));
        assert!(CapacitySteps::stages(&[1.0; 7]).is_err());
        assert!(CapacitySteps::stages(&[0.0]).is_err());
        assert!(CapacitySteps::new(&[speed(1.0, 1.0, 0.5)]).is_err());
        assert!(CapacitySteps::new(&[speed(1.0, f64::NAN, 0.5)]).is_err());
        let machine = Machine {
            size: 1.0,
            control: Control::Unloading(vec![0.5; 7]),
        };
        assert!(matches!(
            CapacitySteps::new(&[machine]),
            Err(StepsError::StepCount {
                machine: 1,
                count: 7
            })
        ));
    }
}

//! Explicit integration with a step that follows the error.
//!
//! Source: Dormand & Prince, Journal of Computational and Applied Mathematics 6 (1980): fifth order with an error estimate of fourth.

/// Relative error allowed of a step, on top of the absolute one.
const RELATIVE: f64 = 1e-7;

/// Smallest step as a share of the largest: below it the error counts as met, so that an integration always ends.
const SMALLEST: f64 = 2e-4;

/// One step that was accepted: the ends of time and of state, with the rates there.
pub(crate) struct Step<const N: usize> {
    pub(crate) from: f64,
    pub(crate) to: f64,
    pub(crate) start: ([f64; N], [f64; N]),
    pub(crate) end: ([f64; N], [f64; N]),
}

impl<const N: usize> Step<N> {
    /// Cubic through the ends with their slopes, for one of the variables.
    pub(crate) fn between(&self, variable: usize, time: f64) -> f64 {
        let pick = |values: &[f64; N]| values.get(variable).copied().unwrap_or_default();
        let width = self.to - self.from;
        let x = (time - self.from) / width;
        let (a, b) = (pick(&self.start.0), pick(&self.end.0));
        let (da, db) = (pick(&self.start.1) * width, pick(&self.end.1) * width);
        let back = 1.0 - x;
        a * back * back * (1.0 + 2.0 * x)
            + b * x * x * (3.0 - 2.0 * x)
            + x * back * (da * back - db * x)
    }
}

/// Goes from time 0 to `until` in steps of at most `largest`, showing each.
pub(crate) fn integrate<const N: usize>(
    start: [f64; N],
    absolute: [f64; N],
    (until, largest): (f64, f64),
    rates: impl Fn(&[f64; N]) -> [f64; N],
    mut show: impl FnMut(&Step<N>),
) {
    let (mut time, mut state) = (0.0, start);
    let mut rate = rates(&state);
    let smallest = SMALLEST * largest;
    let mut step = 0.01 * largest;
    while time < until {
        let width = step.min(until - time);
        let (next, next_rate, error) = attempt(&state, &rate, width, &absolute, &rates);
        if error <= 1.0 || width <= smallest {
            let to = if width < until - time {
                time + width
            } else {
                until
            };
            show(&Step {
                from: time,
                to,
                start: (state, rate),
                end: (next, next_rate),
            });
            (time, state, rate) = (to, next, next_rate);
        }
        let factor = if error > 0.0 {
            0.9 * error.powf(-0.2)
        } else {
            5.0
        };
        step = (width * factor.clamp(0.2, 5.0)).clamp(smallest, largest);
    }
}

/// State and rate after a step, and its error over the one allowed.
fn attempt<const N: usize>(
    state: &[f64; N],
    rate: &[f64; N],
    width: f64,
    absolute: &[f64; N],
    rates: &impl Fn(&[f64; N]) -> [f64; N],
) -> ([f64; N], [f64; N], f64) {
    let moved = |terms: &[(f64, &[f64; N])]| -> [f64; N] {
        std::array::from_fn(|i| {
            let sum: f64 = terms
                .iter()
                .map(|(weight, rate)| weight * pick(rate, i))
                .sum();
            pick(state, i) + width * sum
        })
    };
    let k1 = rate;
    let k2 = &rates(&moved(&[(1.0 / 5.0, k1)]));
    let k3 = &rates(&moved(&[(3.0 / 40.0, k1), (9.0 / 40.0, k2)]));
    let k4 = &rates(&moved(&[
        (44.0 / 45.0, k1),
        (-56.0 / 15.0, k2),
        (32.0 / 9.0, k3),
    ]));
    let k5 = &rates(&moved(&[
        (19372.0 / 6561.0, k1),
        (-25360.0 / 2187.0, k2),
        (64448.0 / 6561.0, k3),
        (-212.0 / 729.0, k4),
    ]));
    let k6 = &rates(&moved(&[
        (9017.0 / 3168.0, k1),
        (-355.0 / 33.0, k2),
        (46732.0 / 5247.0, k3),
        (49.0 / 176.0, k4),
        (-5103.0 / 18656.0, k5),
    ]));
    let next = moved(&[
        (35.0 / 384.0, k1),
        (500.0 / 1113.0, k3),
        (125.0 / 192.0, k4),
        (-2187.0 / 6784.0, k5),
        (11.0 / 84.0, k6),
    ]);
    let next_rate = rates(&next);
    let off = moved(&[
        (71.0 / 57600.0, k1),
        (-71.0 / 16695.0, k3),
        (71.0 / 1920.0, k4),
        (-17253.0 / 339_200.0, k5),
        (22.0 / 525.0, k6),
        (-1.0 / 40.0, &next_rate),
    ]);
    let error = (0..N)
        .map(|i| {
            let size = pick(state, i).abs().max(pick(&next, i).abs());
            (pick(&off, i) - pick(state, i)).abs() / (pick(absolute, i) + RELATIVE * size)
        })
        .fold(0.0, f64::max);
    (next, next_rate, error)
}

fn pick<const N: usize>(values: &[f64; N], index: usize) -> f64 {
    values.get(index).copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::integrate;

    #[test]
    fn an_oscillation_keeps_its_phase() {
        let mut last = [0.0; 2];
        let mut between: f64 = 0.0;
        integrate(
            [1.0, 0.0],
            [1e-9; 2],
            (20.0, 0.5),
            |[x, v]| [*v, -*x],
            |step| {
                last = step.end.0;
                let middle = 0.5 * (step.from + step.to);
                between = between.max((step.between(0, middle) - middle.cos()).abs());
            },
        );
        assert!((last[0] - 20.0_f64.cos()).abs() < 1e-5, "{last:?}");
        assert!((last[1] + 20.0_f64.sin()).abs() < 1e-5, "{last:?}");
        assert!(between < 1e-3, "{between}");
    }

    #[test]
    fn a_stiff_decay_ends() {
        let mut steps = 0;
        integrate([1.0], [1e-9], (1.0, 0.5), |[x]| [-1e3 * x], |_| steps += 1);
        assert!(steps > 10 && steps < 20_000, "{steps}");
    }
}

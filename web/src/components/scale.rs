//! Straight scales: from a value to a place on a drawing, and the round values to mark along it.

/// A straight scale between two values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    from: f64,
    to: f64,
}

impl Scale {
    /// A scale that starts at one value and ends at another; the end may be the smaller one.
    pub fn new(from: f64, to: f64) -> Self {
        Self { from, to }
    }

    /// A scale over all these values, widened to round ones, with its marks.
    pub fn round(values: impl IntoIterator<Item = f64>, marks: u32) -> (Self, Vec<f64>) {
        let (low, high) = values
            .into_iter()
            .filter(|value| value.is_finite())
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
                (low.min(value), high.max(value))
            });
        if low > high {
            return (Self::new(0.0, 1.0), Vec::new());
        }
        let step = round_step((high - low).max(1e-9) / f64::from(marks.max(1)));
        let (first, last) = (
            (low / step).floor() as i64,
            (high / step).ceil().max(low / step + 1.0) as i64,
        );
        let marks = (first..=last).map(|mark| mark as f64 * step).collect();
        (Self::new(first as f64 * step, last as f64 * step), marks)
    }

    /// Whether a value lies on the scale.
    pub fn covers(&self, value: f64) -> bool {
        (self.from.min(self.to)..=self.from.max(self.to)).contains(&value)
    }

    /// Where a value stands, as a share of the whole length; clipped to the ends.
    pub fn share(&self, value: f64) -> f64 {
        ((value - self.from) / (self.to - self.from)).clamp(0.0, 1.0)
    }

    /// The same as a percentage, for an attribute of a drawing.
    pub fn percent(&self, value: f64) -> String {
        percent(self.share(value))
    }
}

/// A share of one as a percentage, for an attribute of a drawing.
pub fn percent(share: f64) -> String {
    format!("{:.2}%", share * 100.0)
}

/// Points as a polyline takes them, on a drawing one unit wide and high.
pub fn polyline(points: impl IntoIterator<Item = (f64, f64)>) -> String {
    use std::fmt::Write;
    points.into_iter().fold(String::new(), |mut text, (x, y)| {
        // Writing to a string does not fail.
        let _ = write!(text, "{x:.4},{y:.4} ");
        text
    })
}

/// The smallest of 1, 2, 5 times a power of ten that is not below this.
fn round_step(least: f64) -> f64 {
    let power = 10f64.powf(least.log10().floor());
    [1.0, 2.0, 5.0, 10.0]
        .into_iter()
        .map(|times| times * power)
        .find(|step| *step >= least * (1.0 - 1e-9))
        .unwrap_or(10.0 * power)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_are_round_and_cover_the_values() {
        let (scale, marks) = Scale::round([103.0, 388.0], 4);
        assert_eq!(marks, [100.0, 200.0, 300.0, 400.0]);
        assert_eq!(scale.percent(250.0), "50.00%");
    }

    #[test]
    fn one_value_still_gives_a_scale() {
        let (scale, marks) = Scale::round([5.0], 4);
        assert!(marks.len() >= 2);
        assert!((0.0..=1.0).contains(&scale.share(5.0)));
    }

    #[test]
    fn no_values_give_no_marks() {
        assert!(Scale::round([f64::NAN], 4).1.is_empty());
    }

    #[test]
    fn a_falling_scale_runs_from_warm_to_cold() {
        assert_eq!(Scale::new(30.0, -10.0).share(-10.0), 1.0);
    }
}

//! Time of a call, warm, on one thread: the median of batches over temperatures spread through the range, so that no guess is still near from
//! the call before. Prints one JSON line a case. `peer.py` beside it prints the same lines for CoolProp's low-level state object.
//!
//!     cargo bench -p winterset-refrigerant
//!     python crates/refrigerant/benches/peer.py

#![allow(clippy::expect_used, missing_docs)]

use std::hint::black_box;
use std::time::Instant;

use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{AvailableEnergy, Pressure, Ratio, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::Refrigerant;

/// Median time of one call of `f` over the inputs, in microseconds.
fn time<T: Copy>(inputs: &[T], f: impl Fn(T)) -> f64 {
    let mut batches: Vec<f64> = (0..40)
        .map(|_| {
            let start = Instant::now();
            for &input in inputs {
                f(input);
            }
            start.elapsed().as_secs_f64() / inputs.len() as f64 * 1e6
        })
        .collect();
    batches.sort_by(f64::total_cmp);
    batches[batches.len() / 2]
}

fn report(refrigerant: &str, call: &str, microseconds: f64) {
    println!(
        "{{\"refrigerant\":\"{refrigerant}\",\"call\":\"{call}\",\"microseconds\":{microseconds:.3}}}"
    );
}

fn main() {
    for name in [
        "R-134a", "R-32", "R-744", "R-454B", "R-410A", "R-448A", "R-449A",
    ] {
        let refrigerant = Refrigerant::named(name).expect(name);
        let high = refrigerant.temperature_range().1.value - 5.0;
        // A stride coprime to the count visits the temperatures out of order.
        let temperatures: Vec<ThermodynamicTemperature> = (0..200)
            .map(|i| 220.0 + (high - 220.0) * f64::from(i * 77 % 200) / 199.0)
            .map(ThermodynamicTemperature::new::<kelvin>)
            .collect();
        let pressures: Vec<Pressure> = temperatures
            .iter()
            .map(|t| refrigerant.bubble_at_temperature(*t).expect(name).pressure)
            .collect();
        report(
            name,
            "bubble pressure at temperature",
            time(&temperatures, |t| {
                let _ = black_box(refrigerant.bubble_pressure(black_box(t)));
            }),
        );
        report(
            name,
            "bubble at temperature",
            time(&temperatures, |t| {
                let _ = black_box(refrigerant.bubble_at_temperature(black_box(t)));
            }),
        );
        report(
            name,
            "dew at temperature",
            time(&temperatures, |t| {
                let _ = black_box(refrigerant.dew_at_temperature(black_box(t)));
            }),
        );
        report(
            name,
            "bubble at pressure",
            time(&pressures, |p| {
                let _ = black_box(refrigerant.bubble_at_pressure(black_box(p)));
            }),
        );
        report(
            name,
            "state at temperature and pressure",
            time(&temperatures, |t| {
                let _ = black_box(refrigerant.state(black_box(t), Pressure::new::<pascal>(1.5e5)));
            }),
        );
        report(
            name,
            "two phases at quality 0.5",
            time(&pressures, |p| {
                let _ = black_box(refrigerant.two_phase(black_box(p), Ratio::new::<ratio>(0.5)));
            }),
        );
        report(
            name,
            "state at pressure and enthalpy",
            time(&pressures, |p| {
                let h = AvailableEnergy::new::<joule_per_kilogram>(450e3);
                let _ = black_box(refrigerant.state_at_pressure_enthalpy(black_box(p), h));
            }),
        );
    }
    // A fresh composition each time: tracing both curves is what a typed blend costs at first.
    let shares: Vec<f64> = (1..40).map(|i| f64::from(i) / 40.0).collect();
    report(
        "R-32/R-1234yf",
        "tracing of a new blend",
        time(&shares, |w| {
            let _ = black_box(Refrigerant::blend(&[("R-32", w), ("R-1234yf", 1.0 - w)]));
        }),
    );
}

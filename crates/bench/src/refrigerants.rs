//! States of pure refrigerants and blends.

use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{AvailableEnergy, Pressure, Ratio, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::Refrigerant;

use crate::Case;

const REFRIGERANTS: [&str; 7] = [
    "R-134a", "R-32", "R-744", "R-454B", "R-410A", "R-448A", "R-449A",
];

/// Lowest temperature, K; above the triple point of each.
const COLDEST: f64 = 220.0;
/// Values of a case.
const COUNT: u32 = 200;

fn temperature(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(value)
}

fn pressure(value: f64) -> Pressure {
    Pressure::new::<pascal>(value)
}

pub fn cases() -> Vec<Case> {
    let mut cases: Vec<Case> = REFRIGERANTS.into_iter().flat_map(of).collect();
    // A fresh composition each time: tracing both curves is what a typed blend costs at first.
    let shares: Vec<f64> = (1..40).map(|i| f64::from(i) / 40.0).collect();
    cases.push(Case::new(
        "R-32/R-1234yf",
        "curves of a new composition",
        &shares,
        |share| Refrigerant::blend(&[("R-32", share), ("R-1234yf", 1.0 - share)]),
    ));
    cases
}

/// The calls of one refrigerant. Their names are those of `peer.py`.
fn of(name: &'static str) -> Vec<Case> {
    let refrigerant = Refrigerant::named(name).expect(name);
    let high = refrigerant.temperature_range().1.value - 5.0;
    // A stride coprime to the count visits the range out of order, so that no guess is still near from the call before.
    let temperatures: Vec<f64> = (0..COUNT)
        .map(|i| f64::from(i * 77 % COUNT) / f64::from(COUNT - 1))
        .map(|part| COLDEST + (high - COLDEST) * part)
        .collect();
    let pressures: Vec<f64> = temperatures
        .iter()
        .map(|&t| refrigerant.bubble_pressure(temperature(t)).expect(name))
        .map(|p| p.value)
        .collect();

    macro_rules! case {
        ($call:literal, $inputs:expr, $run:expr) => {{
            let refrigerant = refrigerant.clone();
            let run = $run;
            Case::new(name, $call, $inputs, move |value| run(&refrigerant, value))
        }};
    }
    vec![
        case!("p of bubble at T", &temperatures, |r: &Refrigerant, t| r
            .bubble_pressure(temperature(t))),
        case!(
            "state of bubble at T",
            &temperatures,
            |r: &Refrigerant, t| { r.bubble_at_temperature(temperature(t)) }
        ),
        case!("state of dew at T", &temperatures, |r: &Refrigerant, t| r
            .dew_at_temperature(temperature(t))),
        case!("state of bubble at p", &pressures, |r: &Refrigerant, p| r
            .bubble_at_pressure(pressure(p))),
        case!(
            "state at T, 150 kPa",
            &temperatures,
            |r: &Refrigerant, t| { r.state(temperature(t), pressure(1.5e5)) }
        ),
        case!(
            "T, ρ, s at p, 450 kJ/kg",
            &pressures,
            |r: &Refrigerant, p| {
                let enthalpy = AvailableEnergy::new::<joule_per_kilogram>(450e3);
                r.state_at_pressure_enthalpy(pressure(p), enthalpy)
            }
        ),
        case!(
            "T, ρ, h, s at p, x = 0.5",
            &pressures,
            |r: &Refrigerant, p| { r.two_phase(pressure(p), Ratio::new::<ratio>(0.5)) }
        ),
    ]
}

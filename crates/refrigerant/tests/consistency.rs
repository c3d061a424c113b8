//! What must hold between the answers whatever the numbers are: exact relations of thermodynamics, and the sameness of the same thing asked
//! in two ways.

#![allow(clippy::expect_used, clippy::panic)] // the helpers of the tests are not tests to the lint

use uom::si::f64::{Pressure, Ratio, ThermodynamicTemperature};
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::kelvin;
use winterset_refrigerant::{Error, Phase, Refrigerant, State};

fn t(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<kelvin>(value)
}

fn p(value: f64) -> Pressure {
    Pressure::new::<pascal>(value)
}

fn named(name: &str) -> Refrigerant {
    Refrigerant::named(name).expect(name)
}

#[track_caller]
fn close(a: f64, b: f64, relative: f64, what: &str) {
    assert!(
        (a - b).abs() <= relative * b.abs().max(f64::MIN_POSITIVE),
        "{what}: {a} and {b} differ by {:.2e}",
        (a / b - 1.0).abs()
    );
}

/// Temperatures through the whole range of the saturation functions.
fn grid(refrigerant: &Refrigerant, count: usize) -> impl Iterator<Item = f64> {
    let (low, high) = refrigerant.temperature_range();
    let (low, high) = (low.value, high.value);
    (0..count).map(move |i| (low + (high - low) * i as f64 / (count - 1) as f64).min(high))
}

/// Gibbs energy of a state, J/kg.
fn gibbs(state: &State) -> f64 {
    state.enthalpy.value - state.temperature.value * state.entropy.value
}

#[test]
fn every_refrigerant_answers_on_a_grid_of_200_temperatures() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let mut last: Option<(f64, f64)> = None;
        for kelvins in grid(&refrigerant, 200) {
            let s = refrigerant
                .saturation_at_temperature(t(kelvins))
                .unwrap_or_else(|e| panic!("{name} at {kelvins} K: {e}"));
            let (bubble, dew) = (s.bubble.pressure.value, s.dew.pressure.value);
            assert!(bubble >= dew * (1.0 - 1e-9), "{name} at {kelvins} K");
            assert!(s.bubble.density > s.dew.density, "{name} at {kelvins} K");
            // The bubble curve of a wide blend may pass its highest pressure just before the critical point.
            let rising = kelvins < 0.99 * refrigerant.temperature_range().1.value;
            if let Some((bubble_before, dew_before)) = last.filter(|_| rising) {
                assert!(bubble > bubble_before, "bubble of {name} at {kelvins} K");
                assert!(dew > dew_before, "dew of {name} at {kelvins} K");
            }
            last = Some((bubble, dew));
        }
    }
}

#[test]
fn temperature_from_pressure_undoes_pressure_from_temperature() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        // The top of the range lies where the curves turn flat; one degree below, the inverse is well defined.
        for kelvins in
            grid(&refrigerant, 25).filter(|k| *k < refrigerant.temperature_range().1.value - 1.0)
        {
            let s = refrigerant
                .saturation_at_temperature(t(kelvins))
                .expect(name);
            // The coldest pressure of one curve may lie below the range of the other.
            if let Ok(back) = refrigerant.bubble_at_pressure(s.bubble.pressure) {
                close(back.temperature.value, kelvins, 1e-9, name);
                close(back.density.value, s.bubble.density.value, 1e-8, name);
            }
            assert_eq!(
                refrigerant.bubble_pressure(t(kelvins)),
                Ok(s.bubble.pressure)
            );
            assert_eq!(refrigerant.dew_pressure(t(kelvins)), Ok(s.dew.pressure));
            let back = refrigerant.dew_at_pressure(s.dew.pressure).expect(name);
            assert_eq!(
                refrigerant.dew_temperature(s.dew.pressure),
                Ok(back.temperature)
            );
            close(back.temperature.value, kelvins, 1e-9, name);
            close(back.density.value, s.dew.density.value, 1e-8, name);
        }
    }
}

/// Phases of a pure fluid in equilibrium have one Gibbs energy, and dp/dT = Δs/Δv along the curve (Clapeyron). With exact differentials
/// of both, the difference of Gibbs energy over a small step vanishes to third order.
#[test]
fn pure_fluids_obey_clapeyron_and_equal_gibbs_energy() {
    for name in Refrigerant::all().filter(|n| named(n).composition().len() == 1) {
        let refrigerant = named(name);
        let (_, high) = refrigerant.temperature_range();
        for kelvins in grid(&refrigerant, 30).filter(|k| *k < 0.98 * high.value) {
            let at = |k: f64| refrigerant.saturation_at_temperature(t(k)).expect(name);
            let s = at(kelvins);
            let (g, scale) = (gibbs(&s.bubble) - gibbs(&s.dew), s.latent_heat().value);
            assert!(g.abs() < 1e-8 * scale, "{name} at {kelvins} K: {g}");

            let slope = (s.dew.entropy.value - s.bubble.entropy.value)
                / (1.0 / s.dew.density.value - 1.0 / s.bubble.density.value);
            let h = 0.02;
            let rise = at(kelvins + h).pressure_difference(&at(kelvins + 3.0 * h));
            let middle = at(kelvins + 2.0 * h);
            let slope_there = (middle.dew.entropy.value - middle.bubble.entropy.value)
                / (1.0 / middle.dew.density.value - 1.0 / middle.bubble.density.value);
            close(rise / (2.0 * h), slope_there, 2e-6, name);
            assert!(slope > 0.0);
        }
    }
}

trait PressureDifference {
    fn pressure_difference(&self, warmer: &Self) -> f64;
}

impl PressureDifference for winterset_refrigerant::Saturation {
    fn pressure_difference(&self, warmer: &Self) -> f64 {
        warmer.bubble.pressure.value - self.bubble.pressure.value
    }
}

/// c_p = ∂h/∂T, c_p/T = ∂s/∂T, and v = ∂g/∂p: values against the derivatives they are. From dh = T ds + v dp along an isotherm,
/// the trapezium rule over a small step must close.
#[test]
fn single_phase_states_are_consistent() {
    for name in [
        "R-134a", "R-744", "R-717", "R-410A", "R-448A", "R-454B", "R-449A",
    ] {
        let refrigerant = named(name);
        for (kelvins, pascals) in [
            (250.0, 1e5),
            (300.0, 3e5),
            (360.0, 2e6),
            (250.0, 4e6),
            (420.0, 6e6),
        ] {
            let at = |k: f64, pa: f64| refrigerant.state(t(k), p(pa)).expect(name);
            let here = at(kelvins, pascals);
            if here.phase == Phase::TwoPhase {
                continue;
            }
            let dt = 1e-2;
            let (a, b) = (at(kelvins - dt, pascals), at(kelvins + dt, pascals));
            let cp = here.heat_capacity.expect("a single phase").value;
            close((b.enthalpy - a.enthalpy).value / (2.0 * dt), cp, 1e-6, name);
            close(
                (b.entropy - a.entropy).value / (2.0 * dt),
                cp / kelvins,
                1e-6,
                name,
            );
            let dp = 1e-4 * pascals;
            let (a, b) = (at(kelvins, pascals - dp), at(kelvins, pascals + dp));
            let volume = (gibbs(&b) - gibbs(&a)) / (2.0 * dp);
            close(volume, 1.0 / here.density.value, 2e-6, name);
            // w² = (∂p/∂ρ)_s
            let (a, b) = (
                refrigerant
                    .state_at_pressure_entropy(p(pascals - dp), here.entropy)
                    .expect(name),
                refrigerant
                    .state_at_pressure_entropy(p(pascals + dp), here.entropy)
                    .expect(name),
            );
            let w2 = 2.0 * dp / (b.density - a.density).value;
            close(
                here.speed_of_sound.expect("a single phase").value.powi(2),
                w2,
                1e-5,
                name,
            );
        }
    }
}

#[test]
fn enthalpy_and_entropy_lead_back_to_the_state() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let critical = refrigerant.critical_point();
        for share in [0.02, 0.2, 0.6, 0.95, 1.3] {
            let pressure = critical.pressure * share;
            for kelvins in [200.0, 260.0, 320.0, 400.0] {
                let Ok(state) = refrigerant.state(t(kelvins), pressure) else {
                    continue;
                };
                for back in [
                    refrigerant.state_at_pressure_enthalpy(pressure, state.enthalpy),
                    refrigerant.state_at_pressure_entropy(pressure, state.entropy),
                ] {
                    let back =
                        back.unwrap_or_else(|e| panic!("{name} {kelvins} K {pressure:?}: {e}"));
                    close(back.temperature.value, kelvins, 1e-8, name);
                    close(back.density.value, state.density.value, 1e-7, name);
                }
            }
        }
    }
}

/// Blends whose liquid splits in two in the cold, by their models: a third phase is not computed, and temperature along an isobar need not
/// rise there.
const UNMIXING: [&str; 2] = ["R-431A", "R-504"];

#[test]
fn two_phase_states_lie_between_bubble_and_dew() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let critical = refrigerant.critical_point();
        for share in [0.01, 0.1, 0.5, 0.9] {
            let pressure = critical.pressure * share;
            let Ok(s) = refrigerant.saturation_at_pressure(pressure) else {
                continue;
            };
            if UNMIXING.contains(&name) && s.bubble.temperature.value < 230.0 {
                continue;
            }
            let mut before = s.bubble;
            for i in 1..10 {
                let quality = Ratio::new::<ratio>(f64::from(i) / 10.0);
                let state = refrigerant
                    .two_phase(pressure, quality)
                    .unwrap_or_else(|e| panic!("{name} at {pressure:?}: {e}"));
                assert_eq!(state.phase, Phase::TwoPhase);
                assert!(
                    state.temperature.value >= before.temperature.value * (1.0 - 1e-12),
                    "{name} at {pressure:?}"
                );
                assert!(
                    state.temperature.value <= s.dew.temperature.value * (1.0 + 1e-12),
                    "{name}"
                );
                assert!(
                    state.enthalpy > before.enthalpy && state.entropy > before.entropy,
                    "{name}"
                );
                assert!(state.density < before.density, "{name}");
                let back = refrigerant
                    .state_at_pressure_enthalpy(pressure, state.enthalpy)
                    .expect(name);
                close(
                    back.quality.expect("two phases").value,
                    quality.value,
                    1e-8,
                    name,
                );
                before = state;
            }
        }
    }
}

#[test]
fn reference_state_is_that_of_the_iir() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let Ok(liquid) = refrigerant.bubble_at_temperature(t(273.15)) else {
            assert!(
                refrigerant.critical_point().temperature.value < 273.15,
                "{name}"
            );
            continue;
        };
        close(liquid.enthalpy.value, 200e3, 1e-12, name);
        close(liquid.entropy.value, 1e3, 1e-12, name);
    }
}

#[test]
fn order_of_components_does_not_matter() {
    let one = Refrigerant::blend(&[
        ("R-32", 0.26),
        ("R-125", 0.26),
        ("R-1234yf", 0.2),
        ("R-134a", 0.21),
        ("R-1234ze(E)", 0.07),
    ])
    .expect("a blend");
    let other = Refrigerant::blend(&[
        ("R-1234ze", 0.07),
        ("134a", 0.21),
        ("r1234yf", 0.2),
        ("R125", 0.26),
        ("R-32", 0.26),
    ])
    .expect("a blend");
    let by_name = named("R-448A");
    let at = |r: &Refrigerant| r.saturation_at_temperature(t(300.0)).expect("within range");
    assert_eq!(one.designation(), other.designation());
    assert_eq!(at(&one), at(&other));
    close(
        at(&by_name).dew.pressure.value,
        at(&one).dew.pressure.value,
        1e-13,
        "R-448A",
    );
}

/// A trace of another component changes next to nothing, and a blend of one component is that component.
#[test]
fn limits_of_composition_are_the_pure_fluids() {
    let pure = named("R-32");
    let same = Refrigerant::blend(&[("R-32", 1.0), ("R-125", 0.0)]).expect("a blend");
    assert_eq!(same.designation(), "R-32");
    let nearly = Refrigerant::blend(&[("R-32", 1.0 - 1e-9), ("R-1234yf", 1e-9)]).expect("a blend");
    for kelvins in [200.0, 260.0, 320.0, 345.0] {
        let (a, b) = (
            pure.saturation_at_temperature(t(kelvins))
                .expect("within range"),
            nearly
                .saturation_at_temperature(t(kelvins))
                .expect("within range"),
        );
        // The gas constant of mixtures is that of CODATA 2018, R-32's equation has the one of 1986: 10⁻⁶ apart, which moves only h and s.
        close(
            b.bubble.pressure.value,
            a.bubble.pressure.value,
            2e-6,
            "bubble",
        );
        close(b.dew.pressure.value, a.dew.pressure.value, 2e-6, "dew");
        close(
            b.bubble.density.value,
            a.bubble.density.value,
            1e-6,
            "liquid",
        );
    }
    let mixed = Refrigerant::blend(&[("R-410A", 0.5), ("R-32", 0.5)]).expect("a blend");
    let plain = Refrigerant::blend(&[("R-32", 0.75), ("R-125", 0.25)]).expect("a blend");
    assert_eq!(mixed.designation(), plain.designation());
}

#[test]
fn what_is_wrong_is_said_by_kind_and_field() {
    assert_eq!(
        Refrigerant::named("R-9999").err(),
        Some(Error::UnknownRefrigerant {
            given: "R-9999".into()
        })
    );
    assert_eq!(Refrigerant::blend(&[]).err(), Some(Error::EmptyBlend));
    assert!(matches!(
        Refrigerant::blend(&[("R-32", 0.5), ("R-125", 0.4)]).err(),
        Some(Error::CompositionSum { .. })
    ));
    for fraction in [-0.1, 1.5, f64::NAN, f64::INFINITY] {
        assert!(matches!(
            Refrigerant::blend(&[("R-32", fraction), ("R-125", 0.5)]).err(),
            Some(Error::MassFraction { .. })
        ));
    }
    let many: Vec<(&str, f64)> = Refrigerant::all()
        .take(10)
        .map(|name| (name, 0.1))
        .collect();
    assert_eq!(
        Refrigerant::blend(&many).err(),
        Some(Error::TooManyComponents { count: 10, most: 8 })
    );
    let refrigerant = named("R-410A");
    assert!(matches!(
        refrigerant.bubble_at_temperature(t(400.0)),
        Err(Error::AboveCritical { .. })
    ));
    for nonsense in [0.0, -5.0, 50.0, f64::NAN, f64::INFINITY] {
        assert!(refrigerant.saturation_at_temperature(t(nonsense)).is_err());
        assert!(refrigerant.state(t(nonsense), p(1e5)).is_err());
    }
    for nonsense in [0.0, -5.0, 1e12, f64::NAN, f64::INFINITY] {
        assert!(refrigerant.saturation_at_pressure(p(nonsense)).is_err());
        assert!(refrigerant.state(t(300.0), p(nonsense)).is_err());
        assert!(
            refrigerant
                .two_phase(p(nonsense), Ratio::new::<ratio>(0.5))
                .is_err()
        );
    }
    for nonsense in [-0.1, 1.1, f64::NAN] {
        assert!(matches!(
            refrigerant.two_phase(p(1e6), Ratio::new::<ratio>(nonsense)),
            Err(Error::OutOfRange { .. })
        ));
    }
    for joules in [-1e9, 1e9, f64::NAN] {
        let h = uom::si::f64::AvailableEnergy::new::<uom::si::available_energy::joule_per_kilogram>(
            joules,
        );
        assert!(refrigerant.state_at_pressure_enthalpy(p(1e6), h).is_err());
    }
}

/// Glides at 40 °C dew: none for pure fluids and nearly none for azeotropes (R-5xx), several kelvins for the wide blends.
#[test]
fn glide_is_that_of_the_kind_of_refrigerant() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let Ok(glide) = refrigerant.glide(t(313.15)) else {
            continue;
        };
        match refrigerant.composition().len() {
            1 => assert!(glide.value.abs() < 1e-6, "{name}: {glide:?}"),
            _ => assert!((-1e-9..40.0).contains(&glide.value), "{name}: {glide:?}"),
        }
    }
    let glide = |name: &str| named(name).glide(t(313.15)).expect(name).value;
    assert!(glide("R-410A") < 0.2 && glide("R-507A") < 0.1);
    assert!((4.0..7.0).contains(&glide("R-407C")) && (1.0..2.0).contains(&glide("R-454B")));
}

#[test]
fn supply_follows_the_worst_component() {
    use winterset_refrigerant::Supply;
    for (name, supply) in [
        ("R-22", Supply::PhaseOut),
        ("R-401A", Supply::PhaseOut),
        ("R-502", Supply::PhaseOut),
        ("R-410A", Supply::PhaseDown),
        ("R-454B", Supply::PhaseDown),
        ("R-290", Supply::Unrestricted),
        ("R-744", Supply::Unrestricted),
        ("R-1234yf", Supply::Unrestricted),
    ] {
        assert_eq!(named(name).supply(), supply, "{name}");
    }
    assert_eq!(named("R-454B").common_use().map(str::is_empty), Some(false));
}

/// Compositions of the standard add up to the whole, and at least 120 of the 400 series are offered.
#[test]
fn every_blend_adds_up() {
    let mut four_hundreds = 0;
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let sum: f64 = refrigerant
            .composition()
            .iter()
            .map(|c| c.mass_fraction)
            .sum();
        close(sum, 1.0, 1e-12, name);
        four_hundreds +=
            usize::from(name.starts_with("R-4") && refrigerant.composition().len() > 1);
    }
    assert!(four_hundreds >= 120, "{four_hundreds}");
}

/// Blends that nobody would charge, of fluids that hardly mix: either every point of the range has an answer, or the blend is refused.
#[test]
fn odd_blends_are_answered_or_refused() {
    for parts in [
        &[("R-152a", 0.138), ("R-13", 0.057), ("R-717", 0.805)][..],
        &[("R-1150", 0.621), ("R-1270", 0.295), ("R-717", 0.084)],
        &[("R-14", 0.757), ("R-113", 0.243)],
        &[("R-600", 0.025), ("R-14", 0.072), ("R-23", 0.903)],
        &[("R-744", 0.5), ("R-601", 0.5)],
        &[("R-717", 0.5), ("R-290", 0.5)],
        &[("R-23", 0.3), ("R-123", 0.3), ("R-600a", 0.4)],
    ] {
        match Refrigerant::blend(parts) {
            Ok(blend) => {
                for kelvins in grid(&blend, 60) {
                    let bubble = blend.bubble_at_temperature(t(kelvins));
                    let dew = blend.dew_at_temperature(t(kelvins));
                    assert!(bubble.is_ok() && dew.is_ok(), "{blend:?} at {kelvins} K");
                }
            }
            Err(error) => assert!(matches!(error, Error::NotConverged { .. }), "{error}"),
        }
    }
}

#[test]
fn density_and_enthalpy_lead_back_to_the_state() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let critical = refrigerant.critical_point();
        for share in [0.02, 0.3, 0.9, 1.3] {
            let pressure = critical.pressure * share;
            let within = [0.05, 0.5, 0.95].map(Ratio::new::<ratio>);
            let inside = within.map(|quality| refrigerant.two_phase(pressure, quality));
            let outside = [200.0, 300.0, 400.0].map(|k| refrigerant.state(t(k), pressure));
            for state in inside.into_iter().chain(outside).flatten() {
                if UNMIXING.contains(&name) && state.temperature.value < 230.0 {
                    continue;
                }
                let back = refrigerant
                    .state_at_density_enthalpy(state.density, state.enthalpy)
                    .unwrap_or_else(|e| panic!("{name} at {pressure:?}, {state:?}: {e}"));
                close(back.temperature.value, state.temperature.value, 1e-8, name);
                // A stiff liquid's pressure rests on the last digits of its density.
                let stiff = 1e-10 * critical.pressure.value;
                assert!(
                    (back.pressure.value - state.pressure.value).abs()
                        <= 1e-7 * state.pressure.value + stiff,
                    "{name}: {back:?} {state:?}"
                );
            }
        }
    }
}

#[test]
fn densities_that_cannot_be_are_refused() {
    use uom::si::available_energy::joule_per_kilogram;
    use uom::si::f64::{AvailableEnergy, MassDensity};
    use uom::si::mass_density::kilogram_per_cubic_meter;
    let refrigerant = named("R-410A");
    for density in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e-9, 3e3, 1e5] {
        let got = refrigerant.state_at_density_enthalpy(
            MassDensity::new::<kilogram_per_cubic_meter>(density),
            AvailableEnergy::new::<joule_per_kilogram>(300e3),
        );
        assert!(
            matches!(
                got,
                Err(Error::OutOfRange { quantity: winterset_refrigerant::Quantity::Density, low, high, .. })
                    if low < high
            ),
            "{density}: {got:?}"
        );
    }
}

#[test]
fn superheated_vapour_is_the_same_along_a_known_isobar() {
    for name in Refrigerant::all() {
        let refrigerant = named(name);
        let (low, high) = refrigerant.temperature_range();
        for share in [0.3, 0.6, 0.9] {
            let at = low.value + share * (high.value - low.value);
            let dew = refrigerant
                .dew_at_temperature(t(at))
                .unwrap_or_else(|e| panic!("{name}: {e}"));
            for warmer in [0.5, 8.0, 45.0] {
                let there = t(at + warmer);
                let Ok(asked) = refrigerant.state(there, dew.pressure) else {
                    continue;
                };
                let same = [
                    refrigerant.superheated(&dew, there),
                    refrigerant.superheated_at_enthalpy(&dew, asked.enthalpy),
                    refrigerant.superheated_at_entropy(&dew, asked.entropy),
                ];
                for state in same {
                    let state = state.unwrap_or_else(|e| panic!("{name} at {at} K: {e}"));
                    let what = format!("{name} {warmer} K above {at} K");
                    close(
                        state.temperature.value,
                        asked.temperature.value,
                        1e-9,
                        &what,
                    );
                    close(state.density.value, asked.density.value, 1e-8, &what);
                    assert_eq!(state.phase, asked.phase, "{what}");
                }
            }
        }
    }
}

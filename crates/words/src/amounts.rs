//! How amounts on worksheets are written: the unit that a person reads in, or the one that stood beside an answer.

use uom::si::f64::Pressure;
use winterset_profile::{Amount, Kind, Measure, Scale};

use crate::units::{
    Figures, PressureUnit, Shown, TemperatureUnit, Units, decimal, decimals_of, significant,
};
use crate::words;

/// Figures of a value that is turned into another unit: more than a gauge reads, so that nothing is lost on the way.
const CONVERTED: i32 = 5;

impl Units {
    /// The unit that an amount is asked for and written in.
    pub fn scale(self, measure: Measure) -> Scale {
        let american = self.temperature == TemperatureUnit::Fahrenheit;
        let field = |kind: Kind| self.unit(kind).token();
        let either = |us: &'static str, si: &'static str| if american { us } else { si };
        let token = match measure {
            Measure::Temperature => field(Kind::Temperature),
            Measure::Difference => field(Kind::Difference),
            Measure::Pressure => field(Kind::Pressure),
            Measure::PressureDifference => match self.pressure {
                PressureUnit::Psig => "psi",
                PressureUnit::Kilopascal => "kPa",
                PressureUnit::Bar => "bar",
            },
            Measure::FanPressure => either("inH2O", "Pa"),
            Measure::Power => field(Kind::Power),
            Measure::ShaftPower => either("hp", "W"),
            Measure::Airflow => field(Kind::Airflow),
            Measure::Elevation => field(Kind::Elevation),
            Measure::Length | Measure::Lift => either("ft", "m"),
            Measure::Bore => either("in", "mm"),
            Measure::Volume => either("ft3", "L"),
            Measure::Mass => either("lb", "kg"),
            Measure::MassFlow => either("lb/min", "kg/h"),
            Measure::Velocity => either("ft/min", "m/s"),
            Measure::Density => either("lb/ft3", "kg/m3"),
            Measure::Conductance => either("Btu/h F", "W/K"),
            Measure::Current => field(Kind::Current),
            Measure::HeatCapacity => either("Btu/F", "kJ/K"),
            Measure::Resistance => "kohm",
            Measure::Beta => "K",
            Measure::Coefficient => "e-3/K",
            Measure::LoopCurrent => "mA",
            Measure::Time => "s",
            Measure::Voltage | Measure::Signal => field(Kind::Voltage),
            Measure::Frequency => field(Kind::Frequency),
            Measure::Speed => field(Kind::Speed),
            Measure::Share | Measure::Quality => field(Kind::Share),
            Measure::Angle => "deg",
        };
        let scales = measure.scales();
        // Every name above is one of the measure's own, which a test holds it to.
        measure.scale(token).unwrap_or(scales[0])
    }

    /// An amount as a person reads it. `atmosphere` is what gauge pressure stands on.
    pub fn amount(self, amount: Amount, atmosphere: Pressure) -> Shown {
        amount_in(self.scale(amount.measure), amount, atmosphere)
    }
}

/// An amount in a unit, with as many figures as a worksheet's answer means.
pub fn amount_in(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    let number = scale.number(amount.si, atmosphere);
    Shown {
        number: match figures(scale, amount.measure) {
            Figures::Decimals(decimals) => decimal(number, decimals),
            Figures::Significant(figures) => significant(number, figures),
        },
        unit: symbol_of(scale),
    }
}

/// An amount turned into a unit, with more figures than an answer means.
pub fn converted(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    let number = scale.number(amount.si, atmosphere);
    Shown {
        number: match amount.measure {
            Measure::Temperature => decimal(number, 2),
            _ => significant(number, CONVERTED),
        },
        unit: symbol_of(scale),
    }
}

/// An amount as a person would type it: no zeros at the end of a fraction.
pub fn plain(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    trimmed(amount_in(scale, amount, atmosphere))
}

fn trimmed(shown: Shown) -> Shown {
    let point = words().numerals().decimal;
    if !shown.number.contains(point) {
        return shown;
    }
    let number = shown.number.trim_end_matches('0').trim_end_matches(point);
    Shown {
        number: number.to_owned(),
        ..shown
    }
}

/// An amount to two figures, or temperatures to the whole degree: for what is only about so much.
pub fn brief(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    let number = scale.number(amount.si, atmosphere);
    Shown {
        number: match figures(scale, amount.measure) {
            Figures::Decimals(_) => decimal(number, 0),
            Figures::Significant(_) => significant(number, 2),
        },
        unit: symbol_of(scale),
    }
}

/// The least value that is allowed, rounded up, so that what is written is allowed itself.
pub fn at_least(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    bound(scale, amount, atmosphere, f64::ceil)
}

/// The largest value that is allowed, rounded down.
pub fn at_most(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    bound(scale, amount, atmosphere, f64::floor)
}

/// The same for a limit that a person typed: to the hundredth, without zeros at the end.
pub(crate) fn at_least_as_typed(scale: Scale, amount: Amount, atmosphere: Pressure) -> Shown {
    let number = scale.number(amount.si, atmosphere);
    trimmed(rounded(scale, number, 2, f64::ceil))
}

fn bound(scale: Scale, amount: Amount, atmosphere: Pressure, round: fn(f64) -> f64) -> Shown {
    let number = scale.number(amount.si, atmosphere);
    let decimals = match figures(scale, amount.measure) {
        Figures::Decimals(_) => 0,
        Figures::Significant(figures) => decimals_of(number, figures),
    };
    let decimals = words().numerals().typed_decimals(decimals);
    rounded(scale, number, decimals, round)
}

fn rounded(scale: Scale, number: f64, decimals: i32, round: fn(f64) -> f64) -> Shown {
    let step = 10f64.powi(-decimals);
    let (scaled, nearest) = (number / step, (number / step).round());
    // What a change of units has left a last digit off is that number.
    let is_nearest = (scaled - nearest).abs() <= 1e-9 * nearest.abs().max(1.0);
    let rounded = if is_nearest { nearest } else { round(scaled) };
    Shown {
        number: decimal(rounded * step, usize::try_from(decimals).unwrap_or(0)),
        unit: symbol_of(scale),
    }
}

/// What stands beside a number for a unit, in the language spoken.
pub fn symbol_of(scale: Scale) -> &'static str {
    words().symbol(scale.symbol())
}

fn figures(scale: Scale, measure: Measure) -> Figures {
    use Figures::{Decimals, Significant};
    match measure {
        Measure::Temperature | Measure::Difference | Measure::Quality => Decimals(1),
        Measure::Pressure => Decimals(match scale.token() {
            "kPa" | "kPaa" => 0,
            "bar" | "bara" => 2,
            _ => 1,
        }),
        Measure::Speed | Measure::Voltage | Measure::Angle | Measure::Elevation => Decimals(0),
        Measure::Frequency | Measure::Share | Measure::Beta | Measure::Time => Decimals(0),
        // As many figures as data sheets print.
        Measure::Coefficient => Significant(7),
        Measure::Resistance | Measure::LoopCurrent => Significant(4),
        _ => Significant(3),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::pressure::pascal;

    const ALL: [Units; 3] = [
        Units {
            temperature: TemperatureUnit::Fahrenheit,
            pressure: PressureUnit::Psig,
        },
        Units {
            temperature: TemperatureUnit::Celsius,
            pressure: PressureUnit::Bar,
        },
        Units {
            temperature: TemperatureUnit::Celsius,
            pressure: PressureUnit::Kilopascal,
        },
    ];

    fn sea_level() -> Pressure {
        Pressure::new::<pascal>(101_325.0)
    }

    #[test]
    fn every_measure_has_a_unit_of_its_own_in_every_family() {
        for units in ALL {
            for measure in Measure::ALL {
                let scale = units.scale(*measure);
                assert!(measure.scales().contains(&scale), "{measure:?}");
            }
        }
        let [us, si, _] = ALL;
        assert_eq!(us.scale(Measure::Mass).token(), "lb");
        assert_eq!(si.scale(Measure::Mass).token(), "kg");
        assert_eq!(us.scale(Measure::Bore).token(), "in");
        assert_eq!(us.scale(Measure::ShaftPower).token(), "hp");
        assert_eq!(si.scale(Measure::Velocity).token(), "m/s");
        assert_eq!(us.scale(Measure::Conductance).token(), "Btu/h F");
    }

    #[test]
    fn amounts_are_written_with_what_they_mean() {
        let [us, si, _] = ALL;
        let write = |units: Units, measure, value| {
            units
                .amount(Amount::new(measure, value), sea_level())
                .to_string()
        };
        // 250 W is 0.335 hp, 50 Pa is 0.201 in of water, 8 mm is 0.315 in, 1 kg is 2.20 lb (NIST SP 811).
        assert_eq!(write(us, Measure::ShaftPower, 250.0), "0.335\u{a0}hp");
        assert_eq!(write(us, Measure::FanPressure, 50.0), "0.201\u{a0}in H₂O");
        assert_eq!(write(us, Measure::Bore, 8e-3), "0.315\u{a0}in");
        assert_eq!(write(si, Measure::Bore, 8e-3), "8.00\u{a0}mm");
        assert_eq!(write(us, Measure::Mass, 1.0), "2.20\u{a0}lb");
        assert_eq!(
            write(si, Measure::Pressure, 1_101_325.0),
            "10.00\u{a0}bar gauge"
        );
        assert_eq!(write(us, Measure::Share, 0.604), "60\u{a0}%");
    }

    #[test]
    fn plain_amounts_end_without_zeros() {
        let [us, si, _] = ALL;
        let write = |units: Units, measure, value| {
            plain(
                units.scale(measure),
                Amount::new(measure, value),
                sea_level(),
            )
            .number
        };
        assert_eq!(write(si, Measure::Bore, 8e-3), "8");
        assert_eq!(write(us, Measure::Temperature, 253.15), "\u{2212}4");
        assert_eq!(
            write(us, Measure::Speed, 1100.0 * std::f64::consts::PI / 30.0),
            "1100"
        );
        assert_eq!(write(us, Measure::Mass, 0.0), "0");
    }

    #[test]
    fn a_value_in_another_unit_keeps_its_figures() {
        let psi = Measure::PressureDifference
            .scale("psi")
            .unwrap_or_else(|| unreachable!());
        let shown = converted(
            psi,
            Amount::new(Measure::PressureDifference, 1e5),
            sea_level(),
        );
        // NIST SP 811: 1 bar is 14.50377 psi.
        assert_eq!(shown.to_string(), "14.504\u{a0}psi");
    }

    #[test]
    fn bounds_lie_inside() {
        let [us, ..] = ALL;
        let scale = us.scale(Measure::Temperature);
        let low = Amount::new(Measure::Temperature, 213.15);
        assert_eq!(
            at_least(scale, low, sea_level()).to_string(),
            "\u{2212}76\u{a0}°F"
        );
        let odd = Amount::new(Measure::Temperature, 213.4);
        assert_eq!(
            at_least(scale, odd, sea_level()).to_string(),
            "\u{2212}75\u{a0}°F"
        );
        assert_eq!(
            at_most(scale, odd, sea_level()).to_string(),
            "\u{2212}76\u{a0}°F"
        );
    }
}

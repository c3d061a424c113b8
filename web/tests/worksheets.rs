//! Worksheets from what was typed to what is shown, held against values from outside.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use winterset_calc::Basis;
use winterset_calc::refrigerant::Refrigerant;
use winterset_profile::{Answer, Entry, Measure, Question as Q, Sheet, Worksheets};
use winterset_web::view::worksheets::{Answered, answer};
use winterset_words::{PressureUnit, TemperatureUnit, Units};

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;
#[cfg(target_arch = "wasm32")]
wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);

const US: Units = Units {
    temperature: TemperatureUnit::Fahrenheit,
    pressure: PressureUnit::Psig,
};
const SI: Units = Units {
    temperature: TemperatureUnit::Celsius,
    pressure: PressureUnit::Bar,
};

fn typed(sheet: Sheet, entries: &[(Q, &str)]) -> Worksheets {
    let mut kept = Worksheets::default();
    for (question, text) in entries {
        kept.set(sheet, *question, Entry::new(*text));
    }
    kept
}

fn answered(sheet: Sheet, units: Units, entries: &[(Q, &str)]) -> Answered {
    answer(sheet, &typed(sheet, entries), units)
}

/// The choices that have to be made for a question to be asked.
fn ways(question: Q) -> Vec<(Q, &'static str)> {
    std::iter::successors(question.when(), |(other, _)| other.when()).collect()
}

fn shown(answered: &Answered, key: &str) -> String {
    let lines = answered.parts.iter().flat_map(|part| &part.lines);
    let line = lines
        .chain(&answered.lines)
        .find(|line| line.key == key)
        .unwrap_or_else(|| panic!("no {key}"));
    format!("{} {}", line.number, line.unit)
}

fn errors(answered: &Answered) -> Vec<(Q, String)> {
    let asked = answered.parts.iter().flat_map(|part| &part.asked);
    asked
        .filter_map(|asked| Some((asked.question, asked.error.clone()?.to_string())))
        .collect()
}

fn error_at(answered: &Answered, question: Q) -> String {
    let found = errors(answered).into_iter().find(|(at, _)| *at == question);
    found.map(|(_, said)| said).unwrap_or_default()
}

/// CoolProp 8.0.0, with the pressures over 101.325 kPa.
#[test]
fn superheat_and_subcooling_are_those_of_the_reference() {
    let readings = |refrigerant, suction, cold, liquid, warm| {
        answered(
            Sheet::Superheat,
            US,
            &[
                (Q::Refrigerant, refrigerant),
                (Q::SuctionPressure, suction),
                (Q::SuctionTemperature, cold),
                (Q::LiquidPressure, liquid),
                (Q::LiquidTemperature, warm),
            ],
        )
    };
    let found = readings("R-32", "120", "55", "350", "95");
    assert_eq!(shown(&found, "superheat"), "15.4 °F");
    assert_eq!(shown(&found, "dew-temperature"), "39.6 °F");
    assert_eq!(shown(&found, "subcooling"), "10.1 °F");
    assert_eq!(shown(&found, "bubble-temperature"), "105.1 °F");
    let found = readings("r290", "60", "40", "180", "80");
    assert_eq!(shown(&found, "superheat"), "3.1 °F");
    assert_eq!(shown(&found, "subcooling"), "22.4 °F");
    assert!(
        found
            .cautions
            .iter()
            .any(|(title, _)| title.contains("Flammable"))
    );
    // R-134a at 40 °C has its bubble point 132.75 psi over the air.
    let found = answered(
        Sheet::Saturation,
        US,
        &[(Q::Refrigerant, "R-134a"), (Q::Temperature, "40 C")],
    );
    assert_eq!(shown(&found, "bubble-pressure"), "132.7 psig");
}

#[test]
fn liquid_in_the_suction_line_is_said() {
    let found = answered(
        Sheet::Superheat,
        US,
        &[
            (Q::Refrigerant, "R-32"),
            (Q::SuctionPressure, "120"),
            (Q::SuctionTemperature, "35"),
        ],
    );
    let line = &found.parts[1].lines[0];
    assert!(line.number.starts_with('\u{2212}'), "{}", line.number);
    assert!(
        line.reason.contains("liquid is in this line"),
        "{}",
        line.reason
    );
    assert_eq!(line.basis, Basis::Computed);
}

/// AMCA 201: flow by speed, pressure by density and speed squared, power by density and speed cubed; ideal gas for the density.
#[test]
fn fan_laws_follow_speed_and_density() {
    let found = answered(
        Sheet::FanLaws,
        US,
        &[
            (Q::KnownSpeed, "1000"),
            (Q::NewSpeed, "500"),
            (Q::KnownAirflow, "4000"),
            (Q::KnownFanPressure, "0,4"),
            (Q::KnownPower, "0.5"),
            (Q::KnownTemperature, "68"),
            (Q::Outdoor, "-4"),
        ],
    );
    assert_eq!(shown(&found, "fan-airflow"), "2000 cfm");
    // 0.4 · 1.1580 / 4 and 0.5 · 1.1580 / 8.
    assert_eq!(shown(&found, "fan-pressure"), "0.116 in H₂O");
    assert_eq!(shown(&found, "fan-power"), "0.0724 hp");
}

/// Power-electronics textbooks: a quarter wave gives 0.7071 of the line, and half of it on an averaging meter.
#[test]
fn a_quarter_wave_is_told_the_same_whichever_way_it_is_entered() {
    for (way, question, value) in [
        ("output", Q::OutputShare, "70.7107"),
        ("true-volts", Q::MotorVolts, "141.4214"),
        ("meter-volts", Q::MeterVolts, "100"),
    ] {
        let found = answered(
            Sheet::MotorVolts,
            SI,
            &[
                (Q::KnownAs, way),
                (question, value),
                (Q::SupplyVolts, "200"),
            ],
        );
        assert_eq!(shown(&found, "cut-voltage"), "141 V", "{way}");
        assert_eq!(shown(&found, "meter-voltage"), "100 V", "{way}");
        assert_eq!(shown(&found, "firing-angle"), "90 °", "{way}");
        assert_eq!(shown(&found, "output"), "71 %", "{way}");
    }
}

#[test]
fn a_motor_that_stalls_is_said_to() {
    let at = |volts| {
        answered(
            Sheet::MotorVolts,
            US,
            &[(Q::KnownAs, "true-volts"), (Q::MotorVolts, volts)],
        )
    };
    assert_eq!(shown(&at("20"), "motor-speed"), "stalls ");
    assert!(
        at("75")
            .notes
            .iter()
            .any(|note| note.contains("start boost"))
    );
    assert!(error_at(&at("300"), Q::MotorVolts).contains("more than the supply"));
}

/// ASHRAE Handbook HVAC Systems and Equipment, condensers chapter: 1 − 15 K / 50 K of the surface is flooded.
#[test]
fn flooding_leaves_the_surface_that_the_heat_needs() {
    let found = answered(
        Sheet::Flooding,
        SI,
        &[
            (Q::Refrigerant, "R-134a"),
            (Q::HeldCondensing, "30"),
            (Q::Outdoor, "-20"),
            (Q::OverAmbient, "15"),
            (Q::CondenserVolume, "10 L"),
            (Q::ReceiverVolume, "2"),
        ],
    );
    assert_eq!(shown(&found, "flooded-share"), "70 %");
    // CoolProp 8.0.0: liquid of 1360.1 kg/m³.
    assert_eq!(shown(&found, "flooded-liquid"), "1360 kg/m³");
    let room = found.lines.iter().find(|line| line.key == "receiver-room");
    assert!(room.unwrap().name.contains("missing"));
}

/// CoolProp 8.0.0: ten metres of liquid R-134a at 35 °C and 1.0166 MPa weigh 114.6 kPa.
#[test]
fn a_lifted_liquid_line_flashes() {
    let found = answered(
        Sheet::LiquidLine,
        Units {
            pressure: PressureUnit::Kilopascal,
            ..SI
        },
        &[
            (Q::Refrigerant, "R-134a"),
            (Q::LiquidPressure, "915,268"),
            (Q::LiquidTemperature, "35"),
            (Q::Lift, "10"),
        ],
    );
    assert_eq!(errors(&found).len(), 1, "{:?}", errors(&found));
    let found = answered(
        Sheet::LiquidLine,
        Units {
            pressure: PressureUnit::Kilopascal,
            ..SI
        },
        &[
            (Q::Refrigerant, "R-134a"),
            (Q::LiquidPressure, "915.268"),
            (Q::LiquidTemperature, "35"),
            (Q::Lift, "10"),
        ],
    );
    assert_eq!(errors(&found), []);
    assert_eq!(shown(&found, "line-lift"), "115 kPa");
    assert_eq!(found.lines[0].name, "Vapour at the valve");
    let warm = answered(
        Sheet::LiquidLine,
        SI,
        &[(Q::Refrigerant, "R-134a"), (Q::LiquidTemperature, "60")],
    );
    assert!(error_at(&warm, Q::LiquidTemperature).contains("liquid only up to"));
    let thin = answered(
        Sheet::LiquidLine,
        SI,
        &[(Q::Bore, "1"), (Q::EquivalentLength, "900")],
    );
    assert!(error_at(&thin, Q::Bore).contains("larger diameter"));
}

/// Steinhart and Hart's equation and IEC 60539-1's beta worked by hand: 10 kΩ and 3950 K have 10 000 · exp(3950 · (1/273.15 − 1/298.15)) Ω at 0 °C.
#[test]
fn a_thermistor_is_read_both_ways_and_its_faults_are_named() {
    let at = |entries: &[(Q, &str)]| answered(Sheet::Sensors, SI, entries);
    let usual = [(Q::BaseResistance, "10"), (Q::Beta, "3950")];
    let with = |more: (Q, &str)| at(&[usual[0], usual[1], more].map(|(q, t)| (q, t)));
    assert_eq!(
        shown(&with((Q::MeterResistance, "33.621")), "sensor-temperature"),
        "0.0 °C"
    );
    let found = with((Q::SimulatedTemperature, "0"));
    assert_eq!(shown(&found, "sensor-resistance"), "33.62 kΩ");
    // IEC 60063: of E24 33 k and 36 k lie round 33.62 k, of E96 33.2 k, which is 0.42 k off, and 34.0 k, which is 0.38 k off.
    assert_eq!(shown(&found, "e24"), "33.00 kΩ");
    assert_eq!(shown(&found, "e96"), "34.00 kΩ");
    assert_eq!(
        shown(
            &with((Q::MeterResistance, "100 Mohm")),
            "sensor-temperature"
        ),
        "open "
    );
    assert_eq!(
        shown(&with((Q::MeterResistance, "3 ohm")), "sensor-temperature"),
        "short "
    );
    let points = at(&[(Q::ThermistorBy, "points"), (Q::MeterResistance, "33.6")]);
    assert_eq!(shown(&points, "sensor-temperature"), "0.0 °C");
    let wrong = at(&[(Q::ThermistorBy, "points"), (Q::PointResistance(2), "200")]);
    assert!(error_at(&wrong, Q::PointResistance(2)).contains("does not fall steadily"));
}

/// Straight lines: 2.5 V of 5 V and 12 mA stand for the middle of a range.
#[test]
fn a_transducer_is_read_both_ways_and_its_faults_are_named() {
    let transducer = |entries: &[(Q, &str)]| {
        let mut all = vec![(Q::SensorKind, "transducer")];
        all.extend(entries);
        answered(Sheet::Sensors, US, &all)
    };
    let range = [(Q::RangeLow, "0"), (Q::RangeHigh, "500")];
    let volts = |output| transducer(&[range[0], range[1], (Q::MeterOutput, output)]);
    assert_eq!(shown(&volts("2.5"), "ratiometric-pressure"), "250.0 psig");
    assert_eq!(shown(&volts("0.1"), "ratiometric-pressure"), "too low ");
    assert_eq!(shown(&volts("4.9"), "ratiometric-pressure"), "too high ");
    let found = transducer(&[range[0], range[1], (Q::SimulatedPressure, "125")]);
    assert_eq!(shown(&found, "ratiometric-output"), "1.50 V");
    let current = |reading| {
        transducer(&[
            range[0],
            range[1],
            (Q::TransducerBy, "current-loop"),
            (Q::MeterCurrent, reading),
            (Q::SimulatedPressure, "125"),
        ])
    };
    assert_eq!(shown(&current("12"), "loop-pressure"), "250.0 psig");
    assert_eq!(shown(&current("12"), "loop-current"), "8.000 mA");
    assert_eq!(shown(&current("3.6"), "loop-pressure"), "too low ");
    let crossed = transducer(&[(Q::RangeLow, "100"), (Q::RangeHigh, "90")]);
    assert!(!error_at(&crossed, Q::RangeHigh).is_empty());
}

/// CoolProp 8.0.0: R-134a has 132.7 kPa at −20 °C, and so 31.4 kPa over the air.
#[test]
fn a_night_in_the_cold_is_held_against_the_switch() {
    let units = Units {
        pressure: PressureUnit::Kilopascal,
        ..SI
    };
    let at = |cut_out, cut_in| {
        answered(
            Sheet::WinterStart,
            units,
            &[
                (Q::Refrigerant, "R-134a"),
                (Q::Outdoor, "-20"),
                (Q::CutOut, cut_out),
                (Q::CutIn, cut_in),
            ],
        )
    };
    let open = at("100", "150");
    assert_eq!(errors(&open), []);
    assert_eq!(shown(&open, "standing-low"), "31 kPa gauge");
    assert_eq!(shown(&open, "switch-margin"), "119 kPa");
    assert!(open.strong[0].reason.contains("does not start"));
    let closed = at("10", "30");
    assert_eq!(shown(&closed, "switch-margin"), "21.4 kPa");
    assert_eq!(shown(&at("20", "40"), "switch-margin"), "as it was ");
    assert!(error_at(&at("100", "50"), Q::CutIn).contains("at or above"));
    // 10 K over −20 °C.
    assert_eq!(shown(&open, "sump-temperature"), "\u{2212}10.0 °C");
    let found = answered(Sheet::WinterStart, SI, &[(Q::SumpConductance, "5")]);
    assert!(
        found
            .strong
            .iter()
            .any(|line| line.key == "sump-heat" && line.unit == "W")
    );
}

/// NIST SP 811, appendix B.8.
#[test]
fn units_are_turned_into_each_other() {
    let convert = |measure: Measure, text: &str| {
        answered(
            Sheet::Units,
            US,
            &[(Q::Convert, measure.key()), (Q::Converted(measure), text)],
        )
    };
    let found = convert(Measure::Power, "1 ton");
    assert_eq!(shown(&found, "kW"), "3.5169 kW");
    assert_eq!(shown(&found, "hp"), "4.7162 hp");
    let found = convert(Measure::Temperature, "-40");
    assert_eq!(shown(&found, "C"), "\u{2212}40.00 °C");
    let found = convert(Measure::Mass, "1");
    assert_eq!(shown(&found, "kg"), "0.45359 kg");
    let found = convert(Measure::Pressure, "0");
    assert_eq!(shown(&found, "kPaa"), "101.33 kPa absolute");
}

fn is_gas_on_a_winter_night(name: &str) -> bool {
    let critical = winterset_profile::read_refrigerant(name)
        .unwrap()
        .temperature_range()
        .1;
    critical.value < 253.15 + 15.0
}

/// Whatever the refrigerant, usual values alone lead to an answer, shown as assumed.
#[test]
fn usual_values_answer_every_worksheet() {
    let all: Vec<&str> = Refrigerant::all().collect();
    for (number, name) in all.iter().enumerate() {
        let units = if number % 2 == 0 { US } else { SI };
        for sheet in Sheet::ALL {
            let asks = sheet.questions().any(|question| question == Q::Refrigerant);
            if !asks && number > 1 {
                continue;
            }
            // Liquid and vapour are one at −20 °C already: no system stands a winter's night with it.
            if *sheet == Sheet::WinterStart && is_gas_on_a_winter_night(name) {
                continue;
            }
            let found = answered(*sheet, units, &[(Q::Refrigerant, name)]);
            assert_eq!(errors(&found), [], "{name} {sheet:?}");
            let lines = found
                .parts
                .iter()
                .map(|part| part.lines.len())
                .sum::<usize>();
            assert!(lines + found.lines.len() > 0, "{name} {sheet:?}");
            for line in &found.strong {
                assert_eq!(line.basis, Basis::Assumed, "{name} {sheet:?} {}", line.key);
            }
        }
    }
}

/// Whatever is typed, it is answered or told at a question, in words, and nothing breaks.
#[test]
fn nonsense_is_told_where_it_was_typed() {
    for sheet in Sheet::ALL {
        for question in sheet.questions() {
            for text in [
                "x",
                "-1e30",
                "1e300",
                "5 furlongs",
                "1,234",
                "0",
                "NaN",
                "-99999",
            ] {
                let mut entries = vec![(question, text)];
                entries.extend(ways(question));
                let found = answered(*sheet, SI, &entries);
                for (_, said) in errors(&found) {
                    assert!(said.ends_with('.') && said.len() > 15, "{said}");
                }
                let is_number = matches!(question.answer(), Answer::Number(_));
                if is_number && ["x", "5 furlongs", "1e300"].contains(&text) {
                    assert!(
                        !error_at(&found, question).is_empty(),
                        "{question:?} {text}"
                    );
                }
                for line in found
                    .parts
                    .iter()
                    .flat_map(|part| &part.lines)
                    .chain(&found.lines)
                {
                    assert!(!line.number.contains("NaN") && !line.number.contains("inf"));
                }
            }
        }
    }
}

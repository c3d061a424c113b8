//! No text, however odd, stops the program or is lost.
#![allow(clippy::unwrap_used)] // a broken fixture should stop its test

use proptest::prelude::*;
use winterset_calc::Field;
use winterset_profile::{Entry, Kind, System, parse_number};

const KINDS: [Kind; 3] = [Kind::Temperature, Kind::Pressure, Kind::Count];

proptest! {
    #[test]
    fn any_text_is_a_finite_number_or_an_error(text in "\\PC{0,50}") {
        for kind in KINDS {
            if let Ok(typed) = parse_number(kind, &text) {
                prop_assert!(typed.number.is_finite());
            }
        }
    }

    #[test]
    fn what_looks_like_a_number_is_one_or_an_error(text in "[-+−]?[ 0-9.,eE]{0,12} ?[°ºCFKkpsiWVm/%]{0,4}") {
        for kind in KINDS {
            if let Ok(typed) = parse_number(kind, &text) {
                prop_assert!(typed.number.is_finite());
            }
        }
    }

    /// `f64` writes a number so that reading it gives the same one back.
    #[test]
    fn a_plain_number_is_itself(number in -1e6..1e6_f64) {
        let typed = parse_number(Kind::Temperature, &number.to_string()).unwrap();
        prop_assert_eq!(typed.number, number);
        let comma = number.to_string().replace('.', ",");
        // Exactly three decimals behind a comma can be read in two ways.
        if let Ok(typed) = parse_number(Kind::Temperature, &comma) {
            prop_assert_eq!(typed.number, number);
        }
    }

    #[test]
    fn any_record_is_read_or_refused_and_kept(
        index in 0..Field::ALL.len(),
        typed in "\\PC{0,60}",
        unit in proptest::option::of("\\PC{0,8}"),
    ) {
        let mut system = System::new("", "");
        system.set(Field::Refrigerant, Entry::new("R-134a"));
        system.set(Field::CoolingCapacity, Entry::with_unit("10", "kW"));
        system.set(Field::OutdoorLow, Entry::with_unit("-10", "C"));
        system.set(Field::ALL[index], Entry { typed, unit, ..Entry::default() });
        let _ = system.plan();
        for &field in Field::ALL {
            let _ = system.assumed(field);
        }
        prop_assert_eq!(System::from_json(&system.to_json().unwrap()).unwrap(), system);
    }
}

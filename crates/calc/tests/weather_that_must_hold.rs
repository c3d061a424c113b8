//! Weather files and hours by outdoor temperature: laws that hold for whatever text comes in.
#![allow(clippy::unwrap_used, clippy::panic)] // a broken fixture should stop its test

use proptest::prelude::*;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::hour;
use winterset_calc::weather::epw::{EpwError, Reader, read};
use winterset_calc::weather::{Bins, HoursError, Origin, Percentile, UsualYear, Weather};

const HEADER: &str = "LOCATION,Nowhere,-,XXX,Invented,000000,60.0,25.0,2.0,10.0\n\
    COMMENTS 1,invented\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n";

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

fn file(tenths: &[i32]) -> String {
    let row = |tenths: &i32| {
        let dry_bulb = f64::from(*tenths) / 10.0;
        format!("2001,1,1,1,60,?,{dry_bulb:.1},,80,99000,,,,,,,,,,,180,3.0\n")
    };
    tenths
        .iter()
        .fold(HEADER.to_owned(), |text, tenths| text + &row(tenths))
}

fn in_pieces(bytes: &[u8], piece: usize) -> Result<Weather, EpwError> {
    let mut reader = Reader::new();
    for bytes in bytes.chunks(piece) {
        reader.push_bytes(bytes)?;
    }
    reader.finish()
}

fn temperatures() -> impl Strategy<Value = Vec<i32>> {
    prop::collection::vec(-700..=700_i32, 24..200)
}

/// Text near enough to a weather file to get past its head.
fn almost() -> impl Strategy<Value = String> {
    let cell = prop_oneof![
        "[-+0-9.e]{0,6}",
        Just("99.9".to_owned()),
        Just("NaN".to_owned()),
        Just("LOCATION".to_owned()),
        Just("DATA PERIODS".to_owned()),
        "\\PC{0,5}",
    ];
    let line = prop::collection::vec(cell, 0..40).prop_map(|cells| cells.join(","));
    prop::collection::vec(line, 0..40).prop_map(|lines| lines.join("\n"))
}

proptest! {
    #[test]
    fn no_bytes_panic(bytes in prop::collection::vec(any::<u8>(), 0..2000), piece in 1_usize..50) {
        let _ = in_pieces(&bytes, piece);
        let mut after_head = HEADER.as_bytes().to_vec();
        after_head.extend(&bytes);
        let _ = in_pieces(&after_head, piece);
    }

    #[test]
    fn pieces_make_the_same_as_the_whole(tenths in temperatures(), piece in 1_usize..300, broken in any::<bool>()) {
        let mut text = file(&tenths);
        if broken {
            text.push_str("2001,1\n");
        }
        prop_assert_eq!(in_pieces(text.as_bytes(), piece), read(&text));
        let with_returns = text.replace('\n', "\r\n");
        prop_assert_eq!(read(&with_returns), read(&text));
    }

    #[test]
    fn bins_hold_every_hour(tenths in temperatures(), limit in -80_i32..80) {
        let weather = read(&file(&tenths)).unwrap();
        let bins = Bins::from_weather(&weather);
        prop_assert_eq!(bins.origin(), Origin::File);
        // Counted elsewhere, in whatever order, they are the same bins.
        let half = uom::si::f64::TemperatureInterval::new::<uom::si::temperature_interval::kelvin>(0.5);
        let mut entries: Vec<_> = bins.iter().map(|bin| (bin.low + half, bin.hours)).collect();
        entries.reverse();
        let counted = Bins::counted(&entries).unwrap();
        prop_assert_eq!(counted.coldest(), bins.coldest());
        prop_assert!((counted.total() - bins.total()).get::<hour>().abs() < 1e-9);
        prop_assert_eq!(counted.iter().count(), bins.iter().count());
        prop_assert_eq!(bins.total().get::<hour>(), tenths.len() as f64);
        let colder = tenths.iter().filter(|t| **t < limit * 10).count();
        let counted = bins.hours_below(celsius(f64::from(limit))).get::<hour>();
        prop_assert!((counted - colder as f64).abs() < 1e-9, "{} {}", counted, colder);
        let coldest = weather.coldest().get::<degree_celsius>();
        prop_assert!((coldest * 10.0 - f64::from(*tenths.iter().min().unwrap())).abs() < 1e-9);
        prop_assert!(bins.coldest() <= weather.coldest());
        prop_assert!(weather.coldest() <= weather.design_low(Percentile::NinetyNineSix));
        prop_assert!(weather.design_low(Percentile::NinetyNineSix) <= weather.design_low(Percentile::NinetyNine));
    }

    #[test]
    fn a_usual_year_holds_8760_hours(low in -60.0..30.0_f64, a in -90.0..90.0_f64, b in -90.0..90.0_f64) {
        let year = UsualYear::new(celsius(low)).unwrap();
        let bins = year.bins();
        prop_assert_eq!(bins.origin(), Origin::UsualShape);
        prop_assert!((bins.total().get::<hour>() - 8760.0).abs() < 1e-8);
        prop_assert!(bins.iter().all(|bin| bin.hours.get::<hour>() >= 0.0));
        let (cold, warm) = (celsius(a.min(b)), celsius(a.max(b)));
        prop_assert!(year.hours_below(cold) <= year.hours_below(warm));
        prop_assert!(bins.hours_below(cold) <= bins.hours_below(warm));
        // Definition of the design low: 99.6 % of the hours exceed it.
        let colder = year.hours_below(celsius(low)).get::<hour>();
        prop_assert!((colder - 0.004 * 8760.0).abs() < 1e-8);
    }

    #[test]
    fn a_colder_place_has_more_cold_hours(low in -60.0..25.0_f64, limit in -20.0..0.0_f64) {
        let hours = |low: f64| UsualYear::new(celsius(low)).unwrap().hours_below(celsius(limit));
        prop_assert!(hours(low) >= hours(low + 5.0) - uom::si::f64::Time::new::<hour>(1e-6));
    }
}

proptest! {
    // Odd text is slow to make; its cells are many per case.
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn no_text_panics(text in almost()) {
        let _ = read(&text);
        let _ = read(&(HEADER.to_owned() + &text));
        let _ = read(&text.replace('\n', "\r\n"));
    }
}

#[test]
fn hours_that_no_place_has_are_refused() {
    let counted = |entries: &[(f64, f64)]| {
        let entries = entries.iter();
        let entries = entries
            .map(|(degrees, hours)| (celsius(*degrees), uom::si::f64::Time::new::<hour>(*hours)));
        Bins::counted(&entries.collect::<Vec<_>>())
    };
    assert_eq!(counted(&[]), Err(HoursError::Nothing));
    assert_eq!(counted(&[(3.0, 0.0)]), Err(HoursError::Nothing));
    for degrees in [-70.5, 71.5, f64::NAN, f64::INFINITY] {
        let refused = counted(&[(0.0, 1.0), (degrees, 1.0)]);
        assert!(matches!(
            refused,
            Err(HoursError::Temperature { index: 1, .. })
        ));
    }
    for hours in [-1.0, f64::NAN, f64::INFINITY] {
        let refused = counted(&[(0.0, hours)]);
        assert!(matches!(refused, Err(HoursError::Time { index: 0, .. })));
    }
    let refused = counted(&[(0.0, 8000.0), (10.0, 800.0)]);
    assert!(matches!(refused, Err(HoursError::MoreThanAYear { .. })));
    let bins = counted(&[(10.2, 5.0), (-3.0, 1.0), (10.9, 2.0), (40.0, 0.0)]).unwrap();
    assert_eq!((bins.coldest(), bins.iter().count()), (celsius(-3.0), 14));
    assert_eq!(bins.hours_below(celsius(11.0)).get::<hour>(), 8.0);
}

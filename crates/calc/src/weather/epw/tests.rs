use uom::si::angle::degree;
use uom::si::f64::ThermodynamicTemperature;
use uom::si::length::meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::hour;
use uom::si::velocity::meter_per_second;

use super::*;
use crate::weather::{Bins, Coverage, Percentile};

const HEADER: &str = "LOCATION,Nowhere Pass,North,XXX,Invented,000000,46.50,-8.25,1.0,1900.0\r\n\
    DESIGN CONDITIONS,0\r\nTYPICAL/EXTREME PERIODS,0\r\nGROUND TEMPERATURES,0\r\n\
    HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\r\nCOMMENTS 1,invented\r\nCOMMENTS 2,\r\n\
    DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\r\n";

fn row(dry_bulb: &str, humidity: &str, pressure: &str, wind: &str) -> String {
    format!(
        "2001,1,1,1,60,?,{dry_bulb},-9.0,{humidity},{pressure},0,0,0,0,0,0,0,0,0,0,180,{wind},5\r\n"
    )
}

fn plain(dry_bulb: &str) -> String {
    row(dry_bulb, "80", "80500", "2.5")
}

fn file(rows: usize) -> String {
    let mut text = HEADER.to_owned();
    for index in 0..rows {
        text.push_str(&plain(&format!("{:.1}", index as f64 * 0.1 - 10.0)));
    }
    text
}

fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

#[test]
fn the_place_and_a_row_are_read() {
    let weather = read(&file(30)).unwrap();
    let place = weather.location();
    assert_eq!(
        (
            place.place.as_str(),
            place.region.as_str(),
            place.country.as_str()
        ),
        ("Nowhere Pass", "North", "XXX")
    );
    assert!((place.latitude.get::<degree>() - 46.5).abs() < 1e-12);
    assert!((place.longitude.get::<degree>() + 8.25).abs() < 1e-12);
    assert_eq!(place.time_zone.get::<hour>(), 1.0);
    assert_eq!(place.elevation.get::<meter>(), 1900.0);
    let first = weather.records().first().unwrap();
    assert_eq!(first.dry_bulb, Some(celsius(-10.0)));
    assert_eq!(first.relative_humidity, Some(0.8));
    assert_eq!(first.pressure.unwrap().get::<pascal>(), 80_500.0);
    assert_eq!(first.wind.unwrap().get::<meter_per_second>(), 2.5);
    assert_eq!(weather.coldest(), celsius(-10.0));
}

#[test]
fn a_year_is_told_from_another_number_of_rows() {
    let coverage = |rows| {
        let text = HEADER.to_owned() + &plain("1.0").repeat(rows);
        read(&text).unwrap().coverage()
    };
    assert_eq!(coverage(8760), Coverage::Year);
    assert_eq!(coverage(8784), Coverage::LeapYear);
    assert_eq!(coverage(24), Coverage::Other);
    let short = read(&file(23)).unwrap_err();
    assert_eq!(
        short,
        EpwError::TooFewHours {
            found: 23,
            needed: 24
        }
    );
}

#[test]
fn half_hourly_rows_count_half() {
    let text = HEADER.replace("DATA PERIODS,1,1", "DATA PERIODS,1,2") + &plain("-3.5").repeat(60);
    let weather = read(&text).unwrap();
    assert_eq!(weather.duration().get::<hour>(), 30.0);
    assert_eq!(Bins::from_weather(&weather).total().get::<hour>(), 30.0);
}

#[test]
fn missing_values_are_left_out_and_counted() {
    let gaps = row("99.9", "999", "999999", "999") + &row("", "", "", "");
    let weather = read(&(file(24) + &gaps)).unwrap();
    assert_eq!(weather.missing().get::<hour>(), 2.0);
    assert_eq!(Bins::from_weather(&weather).total().get::<hour>(), 24.0);
    let last = weather.records().last().unwrap();
    assert_eq!(
        (last.wind, last.pressure, last.relative_humidity),
        (None, None, None)
    );
    let empty = HEADER.to_owned() + &gaps.repeat(20);
    assert!(matches!(
        read(&empty),
        Err(EpwError::TooFewHours { found: 0, .. })
    ));
}

#[test]
fn an_error_says_where_and_what() {
    let with = |bad: &str| read(&(file(2) + bad)).unwrap_err();
    assert_eq!(
        with(&plain("cold")),
        EpwError::NotANumber {
            line: 11,
            column: Column::DryBulb,
            found: "cold".into()
        }
    );
    assert_eq!(
        with(&plain("-80")),
        EpwError::OutOfRange {
            line: 11,
            column: Column::DryBulb,
            found: -80.0,
            low: -70.0,
            high: 70.0
        }
    );
    assert_eq!(
        with("2001,1,1,1\n"),
        EpwError::TooFewColumns {
            line: 11,
            found: 4,
            needed: 22
        }
    );
    for no_number in ["nan", "inf", "-"] {
        assert!(matches!(
            with(&plain(no_number)),
            EpwError::NotANumber { .. }
        ));
    }
    assert_eq!(
        with(&plain("cold")).to_string(),
        "line 11, column 7: \"cold\" should be a number from -70 to 70"
    );
}

#[test]
fn a_broken_header_is_refused() {
    let refused = |text: &str| read(text).unwrap_err();
    assert!(matches!(refused(""), EpwError::NotALocation { .. }));
    assert!(matches!(
        refused("date,temp\n1,2\n"),
        EpwError::NotALocation { line: 1, .. }
    ));
    assert!(matches!(
        refused("LOCATION,a,b,c,d,e,north,0,0,0\n"),
        EpwError::NotANumber {
            line: 1,
            column: Column::Latitude,
            ..
        }
    ));
    assert!(matches!(
        refused("LOCATION,a,b,c,d,e,1,0,0,0\n"),
        EpwError::NoDataPeriods { .. }
    ));
    for per_hour in ["7", "1.5"] {
        let text = HEADER.replace("PERIODS,1,1", &format!("PERIODS,1,{per_hour}"));
        assert!(matches!(
            refused(&text),
            EpwError::RecordsPerHour { line: 8, .. }
        ));
    }
    let long = format!("LOCATION,{}", "x".repeat(100_000));
    assert!(matches!(
        refused(&long),
        EpwError::LineTooLong { line: 1, .. }
    ));
}

#[test]
fn an_error_stays() {
    let mut reader = Reader::new();
    let error = reader.push("nothing\n").unwrap_err();
    assert_eq!(reader.push("LOCATION").unwrap_err(), error);
    assert_eq!(reader.finish().unwrap_err(), error);
}

#[test]
fn older_place_names_and_a_byte_order_mark_are_read() {
    let mut bytes = b"\xef\xbb\xbf".to_vec();
    bytes.extend(
        file(24)
            .replace("Pass", "\u{1}")
            .bytes()
            .map(|b| if b == 1 { 0xfc } else { b }),
    );
    let mut reader = Reader::new();
    reader.push_bytes(&bytes).unwrap();
    assert_eq!(reader.rows(), 24);
    assert_eq!(reader.finish().unwrap().location().place, "Nowhere \u{fc}");
}

#[test]
fn the_design_low_lies_between_the_coldest_hours() {
    // Ranks 0 to 1000 by tenths of a degree: 0.4 % lies at rank 4, 1 % at rank 10.
    let text = (0..=1000).fold(HEADER.to_owned(), |text, rank| {
        text + &plain(&format!("{:.1}", f64::from(rank) * 0.1 - 30.0))
    });
    let weather = read(&text).unwrap();
    let low = |percentile| weather.design_low(percentile).get::<degree_celsius>();
    assert!((low(Percentile::NinetyNineSix) + 29.6).abs() < 1e-9);
    assert!((low(Percentile::NinetyNine) + 29.0).abs() < 1e-9);
}

//! What is said about weather files keeps the manner.

mod common;

use common::{assert_calm, assert_sentence, either, in_every_language, words};
use winterset_calc::weather::epw::{self, Column, EpwError};

#[test]
fn errors_are_sentences_that_say_what_to_choose() {
    let columns = [
        Column::Latitude,
        Column::Longitude,
        Column::TimeZone,
        Column::Elevation,
        Column::RecordsPerHour,
        Column::DryBulb,
        Column::RelativeHumidity,
        Column::Pressure,
        Column::WindSpeed,
    ];
    let by_column = columns.into_iter().map(|column| EpwError::NotANumber {
        line: 9,
        column,
        found: "warm".to_owned(),
    });
    let found = ["", "a,b", "LOCATION,a,b,c,d,e,1,2,3,4"].map(|text| epw::read(text).err());
    let others = [
        EpwError::TooFewColumns {
            line: 9,
            found: 3,
            needed: 22,
        },
        EpwError::OutOfRange {
            line: 1,
            column: Column::Latitude,
            found: 99.0,
            low: -90.0,
            high: 90.0,
        },
        EpwError::RecordsPerHour {
            line: 8,
            found: 7.0,
        },
        EpwError::LineTooLong {
            line: 1,
            longest: 65_536,
        },
        EpwError::TooManyRows {
            line: 9,
            most: 527_040,
        },
        EpwError::TooFewHours {
            found: 3,
            needed: 24,
        },
    ];
    let errors: Vec<_> = found
        .into_iter()
        .flatten()
        .chain(by_column)
        .chain(others)
        .collect();
    in_every_language(|| {
        for error in &errors {
            let said = words().weather_error(error);
            assert_sentence_of_file(&said);
            let choose = either("choose", "elija", "choisissez");
            let choose_it = either("choose", "elíjalo", "choisissez");
            let lower = said.to_lowercase();
            assert!(
                lower.contains(choose) || lower.contains(choose_it),
                "{said}"
            );
        }
    });
}

/// A file's numbers are written as the language writes numbers, and a long wrong word is cut.
#[test]
fn what_a_file_holds_is_written_in_the_language() {
    in_every_language(|| {
        let said = words().weather_error(&EpwError::OutOfRange {
            line: 9,
            column: Column::DryBulb,
            found: -99.5,
            low: -70.0,
            high: 70.0,
        });
        for part in [
            either("\u{2212}99.5", "\u{2212}99,5", "\u{2212}99,5"),
            "\u{2212}70",
        ] {
            assert!(said.contains(part), "{said}");
        }
        let said = words().weather_error(&EpwError::NotANumber {
            line: 9,
            column: Column::DryBulb,
            found: "warm".repeat(40),
        });
        assert!(said.contains('…') && said.chars().count() < 160, "{said}");
    });
}

/// The two words that an EPW file starts its lines with are written as they stand there.
#[track_caller]
fn assert_sentence_of_file(said: &str) {
    assert_sentence(
        &said
            .replace("LOCATION", "location")
            .replace("DATA PERIODS", "data periods"),
    );
}

#[test]
fn labels_keep_the_manner() {
    in_every_language(|| {
        let labels = words().weather();
        for sentence in [
            labels.note.to_owned(),
            labels.reading.to_owned(),
            labels.use_low_question.to_owned(),
            labels.low_used.to_owned(),
            labels.unreadable.to_owned(),
            (labels.counted)("", "3 °F"),
            (labels.counted)("Hillside", "3 °F"),
            (labels.not_a_year)("744 h"),
            (labels.methods_note)(""),
            (labels.methods_note)("Hillside"),
        ] {
            assert_sentence(&sentence);
        }
        for count in [1, 3] {
            assert_calm(&(labels.use_low)("3 °F", count));
        }
        assert_calm(&(labels.offer)("3 °F"));
    });
}

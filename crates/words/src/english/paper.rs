//! A printed plan, in English.

use crate::paper::Paper;

pub(super) static PAPER: Paper = Paper {
    print: "Print",
    test_values: "Test values",
    test_values_note: |method| {
        format!(
            "{method}: what the fan and head pressure come to as it gets colder, for a check with a meter and a tachometer."
        )
    },
    not_ready: "The test values were not ready yet. Print again.",
    none: "–",
};

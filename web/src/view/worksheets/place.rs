//! What the elevation means for the answers.

use winterset_profile::{Question, Section, Sheet};

use super::reader::Reader;
use crate::view::words;

/// What gauge pressure stands on, under the section that asks for the elevation.
pub fn note(section: &Section, reader: &Reader) -> Option<String> {
    let asks = |question| section.questions.contains(&question) && reader.asks(question);
    let reads_pressure = !matches!(reader.sheet(), Sheet::FanLaws | Sheet::MotorVolts);
    let has_place = [
        Question::Elevation,
        Question::GaugeElevation,
        Question::SensorElevation,
    ]
    .into_iter()
    .any(asks);
    (reads_pressure && has_place).then(|| {
        let air = reader.units().air(reader.atmosphere());
        (words().worksheets().labels().gauge_note)(&air.to_string())
    })
}

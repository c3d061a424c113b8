//! From what was typed on a worksheet to its answers, written out: one file a worksheet.
//!
//! A further worksheet is one more file here with its `usual` and `answer`, and an arm in [`usual`] and [`answer`].

mod carry;
mod conversion;
mod fan_laws;
mod flooding;
mod found;
mod liquid_line;
mod motor_volts;
mod place;
mod reader;
mod saturation;
mod sensor_curve;
mod sensors;
mod superheat;
mod winter_start;

use winterset_calc::{Caution, Field};
use winterset_profile::{Amount, Entry, Question, Section, Sheet, Worksheets};
use winterset_words::Units;

use super::words;
use crate::components::sheet::Line;
pub use carry::into;
pub use found::Found;
use reader::Reader;
pub use reader::{Asked, Form};
pub use sensor_curve::SensorCurve;

/// A section with its questions and the values that follow from it alone.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// What it is about.
    pub title: Option<&'static str>,
    /// What is asked.
    pub asked: Vec<Asked>,
    /// What follows, below the questions.
    pub lines: Vec<Line>,
    /// A remark under them.
    pub note: Option<String>,
}

/// Where the values of a worksheet stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// Each below the questions that it follows from.
    Beside,
    /// All below the last question.
    Below,
    /// All below the last question, and the few that a person came for in sight all the time.
    InSight,
}

impl Layout {
    fn of(sheet: Sheet) -> Self {
        match sheet {
            Sheet::Saturation | Sheet::Superheat => Layout::Beside,
            Sheet::Units => Layout::Below,
            Sheet::FanLaws
            | Sheet::MotorVolts
            | Sheet::Flooding
            | Sheet::LiquidLine
            | Sheet::Sensors
            | Sheet::WinterStart => Layout::InSight,
        }
    }
}

/// A worksheet, answered and written out.
#[derive(Clone, Debug, PartialEq)]
pub struct Answered {
    /// The sections in order.
    pub parts: Vec<Part>,
    /// Where the values stand.
    pub layout: Layout,
    /// What follows from all of them.
    pub lines: Vec<Line>,
    /// The few values that a person came for, out of all the lines.
    pub strong: Vec<Line>,
    /// Remarks on the answers.
    pub notes: Vec<&'static str>,
    /// What can hurt on the way to these values.
    pub cautions: Vec<(&'static str, &'static str)>,
    /// The curve of the sensor that it is about.
    pub curve: Option<SensorCurve>,
    /// What a system can take from it.
    pub carried: Vec<(Field, Entry)>,
}

/// The answers of one worksheet.
#[derive(Default)]
struct Answers {
    found: Vec<Found>,
    notes: Vec<&'static str>,
}

/// What stands in for an answer that follows from others.
fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    match reader.sheet() {
        Sheet::Saturation | Sheet::Superheat | Sheet::LiquidLine => {
            saturation::usual(reader, question)
        }
        Sheet::FanLaws => fan_laws::usual(reader, question),
        Sheet::MotorVolts => motor_volts::usual(reader, question),
        Sheet::Flooding => flooding::usual(reader, question),
        Sheet::Sensors => sensors::usual(reader, question),
        Sheet::WinterStart => winter_start::usual(reader, question),
        Sheet::Units => None,
    }
}

fn answers(reader: &Reader) -> Answers {
    match reader.sheet() {
        Sheet::Saturation => saturation::answer(reader),
        Sheet::Superheat => superheat::answer(reader),
        Sheet::FanLaws => fan_laws::answer(reader),
        Sheet::MotorVolts => motor_volts::answer(reader),
        Sheet::Flooding => flooding::answer(reader),
        Sheet::LiquidLine => liquid_line::answer(reader),
        Sheet::Sensors => sensors::answer(reader),
        Sheet::WinterStart => winter_start::answer(reader),
        Sheet::Units => conversion::answer(reader),
    }
}

/// What can hurt where the values of a worksheet are read or set.
fn cautions(sheet: Sheet) -> &'static [Caution] {
    match sheet {
        Sheet::MotorVolts => &[Caution::Mains, Caution::Capacitor],
        Sheet::FanLaws => &[Caution::RotatingFan],
        Sheet::Sensors => &[Caution::Mains],
        Sheet::Superheat | Sheet::LiquidLine | Sheet::Flooding | Sheet::WinterStart => {
            &[Caution::Pressure]
        }
        Sheet::Saturation | Sheet::Units => &[],
    }
}

/// Answers a worksheet and writes it out in the person's units.
pub fn answer(sheet: Sheet, kept: &Worksheets, units: Units) -> Answered {
    let reader = Reader::new(sheet, kept, units);
    let Answers { found, mut notes } = answers(&reader);
    let mut parts: Vec<Part> = sheet
        .sections()
        .iter()
        .map(|section| part(section, &reader))
        .collect();
    let carried = carry::carried(&reader, &found);
    let (mut lines, mut strong) = (Vec::new(), Vec::new());
    for one in found {
        let line = one.line(&reader);
        if one.is_strong() {
            strong.push(line.clone());
        }
        match one.place().and_then(|place| parts.get_mut(place)) {
            Some(part) => part.lines.push(line),
            None => lines.push(line),
        }
    }
    if reader.is_estimated() {
        notes.push(winterset_words::screen().estimated);
    }
    let mut hurts = cautions(sheet).to_vec();
    if !hurts.is_empty() && reader.is_flammable() {
        hurts.push(Caution::Flammable);
    }
    let cautions = hurts.into_iter().map(|caution| {
        let said = words().caution(caution);
        (said.title, said.text)
    });
    Answered {
        parts,
        layout: Layout::of(sheet),
        lines,
        strong,
        notes,
        cautions: cautions.collect(),
        curve: (sheet == Sheet::Sensors)
            .then(|| sensors::curve(&reader))
            .flatten(),
        carried,
    }
}

fn part(section: &Section, reader: &Reader) -> Part {
    let asked = section
        .questions
        .iter()
        .filter(|question| reader.asks(**question))
        .map(|question| reader.asked(*question))
        .collect();
    Part {
        title: section.title.map(|title| words().worksheets().title(title)),
        asked,
        lines: Vec::new(),
        note: place::note(section, reader),
    }
}

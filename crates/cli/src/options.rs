//! The command line.

use std::ffi::OsString;
use std::path::PathBuf;

use lexopt::prelude::*;
use winterset_words::{Language, PressureUnit, TemperatureUnit, Units};

use crate::error::Error;

/// What is to be done.
pub enum Job {
    Help,
    Saturation(Saturation),
    Plan(PathBuf),
    Batch,
}

/// A question for saturation, as typed.
pub struct Saturation {
    pub refrigerant: String,
    pub temperature: Option<String>,
    pub pressure: Option<String>,
    pub elevation: Option<String>,
}

/// The command line, read.
pub struct Options {
    pub job: Job,
    pub units: Units,
    pub language: Language,
}

impl Options {
    fn help() -> Self {
        Self {
            job: Job::Help,
            units: Units::default(),
            language: Language::default(),
        }
    }
}

pub fn read(arguments: impl IntoIterator<Item = OsString>) -> Result<Options, Error> {
    let mut parser = lexopt::Parser::from_iter(arguments);
    let mut words: Vec<OsString> = Vec::new();
    let (mut units, mut language) = (None, None);
    let (mut temperature, mut pressure, mut elevation, mut help) = (None, None, None, false);
    while let Some(argument) = parser.next()? {
        match argument {
            Long("temperature") => temperature = Some(parser.value()?.string()?),
            Long("pressure") => pressure = Some(parser.value()?.string()?),
            Long("elevation") => elevation = Some(parser.value()?.string()?),
            Long("units") => units = Some(read_units(&parser.value()?.string()?)?),
            Long("language") => language = Some(read_language(&parser.value()?.string()?)?),
            Short('h') | Long("help") => help = true,
            Value(word) => words.push(word),
            other => return Err(other.unexpected().into()),
        }
    }
    let measured = [
        ("--temperature", temperature.is_some()),
        ("--pressure", pressure.is_some()),
        ("--elevation", elevation.is_some()),
    ];
    let mut words = words.into_iter();
    let name = words.next().unwrap_or_default();
    let job = match name.to_str() {
        _ if help => return Ok(Options::help()),
        Some("" | "help") => Job::Help,
        Some("saturation") => Job::Saturation(Saturation {
            refrigerant: words
                .next()
                .ok_or(Error::Wanted("a refrigerant"))?
                .string()?,
            temperature,
            pressure,
            elevation,
        }),
        Some("plan") => {
            refuse("plan", measured)?;
            Job::Plan(
                words
                    .next()
                    .ok_or(Error::Wanted("the file of a system"))?
                    .into(),
            )
        }
        Some("batch") => {
            refuse("batch", measured)?;
            let chosen = [
                ("--units", units.is_some()),
                ("--language", language.is_some()),
            ];
            refuse("batch", chosen)?;
            Job::Batch
        }
        _ => return Err(Error::Wanted("saturation, plan or batch")),
    };
    if let Some(extra) = words.next() {
        return Err(lexopt::Error::UnexpectedArgument(extra).into());
    }
    Ok(Options {
        job,
        units: units.unwrap_or_default(),
        language: language.unwrap_or_default(),
    })
}

/// What a command takes no notice of is refused, so that nobody takes it for heeded.
fn refuse<const N: usize>(
    command: &'static str,
    given: [(&'static str, bool); N],
) -> Result<(), Error> {
    match given.into_iter().find(|(_, is_given)| *is_given) {
        Some((option, _)) => Err(Error::Stray { option, command }),
        None => Ok(()),
    }
}

fn read_units(text: &str) -> Result<Units, Error> {
    match text {
        "us" => Ok(Units {
            temperature: TemperatureUnit::Fahrenheit,
            pressure: PressureUnit::Psig,
        }),
        "si" => Ok(Units {
            temperature: TemperatureUnit::Celsius,
            pressure: PressureUnit::Bar,
        }),
        _ => Err(Error::Value {
            option: "--units",
            message: "enter us or si".to_owned(),
        }),
    }
}

fn read_language(tag: &str) -> Result<Language, Error> {
    Language::of_tag(tag).ok_or_else(|| {
        let tags = Language::ALL.map(Language::tag);
        Error::Value {
            option: "--language",
            message: format!("enter one of {}", tags.join(", ")),
        }
    })
}

//! `winterset`: the same answers as the app, at a desk or in a script.

mod batch;
mod error;
mod options;
mod output;
mod plan;
mod report;
mod saturation;

use std::process::ExitCode;

use error::Error;
use options::Job;

const HELP: &str = "\
winterset saturation REFRIGERANT --temperature 105F | --pressure 250psig  [--elevation 1600m]
winterset plan FILE.json
winterset batch < requests.jsonl > answers.jsonl

--units us|si   °F and psig (the default), or °C and bar
--language en   the language of the answer, by its tag: en (the default), es, fr
A unit stands right behind its number: 105F, 40C, 250psig, 17.2bar, 1600m, 5250ft. Pressures are gauge unless written psia, bara or kPaa.
A blend is written by mass: 'R-32/R-1234yf 68.9/31.1'. The batch form stands in crates/cli/README.md.
";

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            error.exit_code().into()
        }
    }
}

fn run() -> Result<(), Error> {
    let options = options::read(std::env::args_os())?;
    options.language.speak();
    match options.job {
        Job::Help => Ok(output::print(HELP)?),
        Job::Saturation(question) => saturation::print(&question, options.units),
        Job::Plan(file) => plan::print(&file, options.units),
        Job::Batch => match batch::run(std::io::stdin().lock(), std::io::stdout().lock()) {
            // Whoever reads the answers has seen enough.
            Err(Error::Stream(error)) if error.kind() == std::io::ErrorKind::BrokenPipe => Ok(()),
            other => other,
        },
    }
}

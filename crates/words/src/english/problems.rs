//! What is wrong, and what would be right.

use uom::si::f64::Pressure;
use uom::si::pressure::pascal;
use winterset_calc::compressor::coefficients::CoefficientError;
use winterset_calc::{Field, Problem as CalcProblem, Quantity};
use winterset_profile::share::ShareError;
use winterset_profile::{Problem, Unit};
use winterset_refrigerant::{Error, Quantity as Property};

use super::screen::SCREEN;
use crate::refused::{Write, cut, written};
use crate::units::{Units, decimal};

pub(super) fn problem(field: Field, problem: &Problem, units: Units) -> String {
    match problem {
        Problem::Missing => match field {
            Field::Refrigerant => "Enter the refrigerant, such as R-410A.".to_owned(),
            Field::CoolingCapacity => {
                "Enter the cooling capacity, or the heat rejected in its place.".to_owned()
            }
            Field::OutdoorLow => {
                "Enter the lowest outdoor temperature that this site sees.".to_owned()
            }
            _ => "Enter a value.".to_owned(),
        },
        Problem::NotANumber { .. } => format!("Enter a number{}.", example(field, units)),
        Problem::UnknownUnit { unit, kind } => {
            let allowed: Vec<&str> = Unit::of(*kind)
                .map(Unit::symbol)
                .filter(|s| !s.is_empty())
                .collect();
            match (unit.is_empty(), allowed.is_empty()) {
                (_, true) => format!("Enter a plain number without “{unit}”."),
                (true, _) => format!("Choose a unit: {}.", allowed.join(", ")),
                _ => format!("“{unit}” is not a unit here. Use {}.", allowed.join(", ")),
            }
        }
        Problem::Ambiguous { whole, decimal } => (SCREEN.two_readings)(whole, decimal),
        Problem::NotWhole => "Enter a whole number.".to_owned(),
        Problem::UnknownChoice { .. } => "Choose one of the answers offered.".to_owned(),
        Problem::UnknownRefrigerant { typed } => format!(
            "“{}” is not known here. Enter a designation such as R-410A, or a blend by mass such as R-32/R-1234yf 68.9/31.1.",
            cut(typed)
        ),
        Problem::BlendSum { sum } => {
            let percent = if *sum > 1.5 { *sum } else { 100.0 * sum };
            format!(
                "The shares come to {} %. They must come to 100 %.",
                decimal(percent, 1)
            )
        }
        Problem::EitherOr { .. } => {
            "Enter either the cooling capacity or the heat rejected, and clear the other."
                .to_owned()
        }
        Problem::Coefficients(error) => coefficients(error),
        Problem::Calc(problem) => calc_problem(field, problem, units),
    }
}

fn calc_problem(field: Field, problem: &CalcProblem, units: Units) -> String {
    let show = |quantity: Quantity| {
        units
            .show(&quantity, Pressure::new::<pascal>(0.0))
            .to_string()
    };
    // No field takes a pressure, so no atmosphere comes in.
    let nothing = Pressure::new::<pascal>(0.0);
    let at_least = |quantity: Quantity| units.at_least(&quantity, nothing).to_string();
    let at_most = |quantity: Quantity| units.at_most(&quantity, nothing).to_string();
    match problem {
        CalcProblem::OutOfRange { low, high } => (SCREEN.from_to)(&at_least(*low), &at_most(*high)),
        CalcProblem::AboveCritical {
            condensing,
            highest,
        } => {
            let lower = match field {
                Field::CompressorLowest => "Enter a lower condensing temperature.",
                Field::ThrottlingRange => "Enter a narrower throttling range.",
                _ => "Enter a lower outdoor temperature or a smaller difference.",
            };
            format!(
                "This would condense at {}; this refrigerant condenses only up to about {}. {lower}",
                show(Quantity::Temperature(*condensing)),
                show(Quantity::Temperature(*highest)),
            )
        }
        CalcProblem::AboveEnvelope { highest } => format!(
            "So hot that it would condense above {}, the highest that this system is worked out for. Use a lower outdoor temperature.",
            show(Quantity::Temperature(*highest)),
        ),
        CalcProblem::HighestBelowNeed { lowest } => format!(
            "This system needs to condense up to {}. Enter at least that, or check the figure.",
            at_least(Quantity::Temperature(*lowest))
        ),
        CalcProblem::LiftTooHigh => {
            "One stage of compression does not lift that far. Enter a higher evaporating or a lower condensing temperature.".to_owned()
        }
        CalcProblem::OverAmbientBelowGlide { lowest } => format!(
            "This blend glides so far below its dew point that no liquid would leave the condenser. Enter at least {}.",
            at_least(Quantity::Difference(*lowest))
        ),
        CalcProblem::ColderThanAir { highest } => format!(
            "The liquid would leave colder than the air allows. Enter at most {}.",
            at_most(Quantity::Difference(*highest))
        ),
        CalcProblem::LineTooThin => {
            "This line takes more pressure than the system has. Enter a larger diameter, or a shorter or lower line.".to_owned()
        }
        CalcProblem::DischargeTooHot => {
            "The discharge would be hotter than anything known of the refrigerant. Enter a higher evaporating or a lower condensing temperature.".to_owned()
        }
        CalcProblem::SheetWithoutFlow => {
            "The data sheet gives no flow at the known point. Enter the coefficients in their order, and choose the units that they are printed in.".to_owned()
        }
        CalcProblem::ReturnAirTooCold { lowest } => format!(
            "Return air must lie above the suction vapour that it heats. Enter at least {}.",
            at_least(Quantity::Temperature(*lowest))
        ),
        CalcProblem::EvaporatingAboveCondensing { highest } => format!(
            "Evaporating must lie below condensing. Enter at most {}.",
            at_most(Quantity::Temperature(*highest))
        ),
        CalcProblem::TooLittleAir { lowest } => format!(
            "This little air cannot carry the heat at that difference. Enter at least {}, or check the capacity and the difference.",
            at_least(Quantity::Airflow(*lowest))
        ),
        CalcProblem::NoSynchronousSpeed { synchronous } => format!(
            "No induction motor on this supply runs at that speed. The synchronous speed above it is {}; enter a nameplate speed a little below a synchronous speed.",
            show(Quantity::Speed(*synchronous))
        ),
        CalcProblem::Refrigerant(error) => match field {
            Field::Refrigerant => format!("The properties of this refrigerant fail here: {error}."),
            _ => format!("With this value the refrigerant leaves its range: {error}."),
        },
    }
}

fn coefficients(error: &CoefficientError) -> String {
    match error {
        CoefficientError::NotANumber { token, place } => format!(
            "“{}” at place {place} is not a number. Enter ten numbers parted by blanks.",
            cut(token)
        ),
        CoefficientError::Ambiguous { token, place } => format!(
            "“{}” at place {place} can be read in two ways. Use one comma or one point as decimal mark.",
            cut(token)
        ),
        CoefficientError::NotFinite { name } => {
            format!("{name} is too large. Enter ten numbers parted by blanks.")
        }
        CoefficientError::TooFew { found, missing } => format!(
            "There are only {found} coefficients here; {missing} is the first one missing. Enter all ten."
        ),
        CoefficientError::TooMany { token } => format!(
            "“{}” is one more than the ten coefficients there are. Enter ten numbers parted by blanks.",
            cut(token)
        ),
    }
}

/// An example of a right answer, in the person's units.
fn example(field: Field, units: Units) -> String {
    crate::example::example(field, units)
        .map_or_else(String::new, |text| format!(", such as {text}"))
}

pub(super) fn refused(error: &Error, units: Units, atmosphere: Pressure) -> String {
    let write = |how: Write, property: Property, value: f64| {
        written(how, property, value, units, atmosphere)
    };
    match *error {
        Error::OutOfRange {
            quantity,
            low,
            high,
            ..
        } => (SCREEN.from_to)(
            &write(Units::at_least, quantity, low),
            &write(Units::at_most, quantity, high),
        ),
        Error::AboveCritical {
            quantity, highest, ..
        } => (SCREEN.below_critical)(&write(Units::show, quantity, highest)),
        ref error => error.to_string(),
    }
}

pub(super) fn share_error(error: &ShareError) -> &'static str {
    match error {
        ShareError::NewerForm => {
            "This link was made by a newer version of the app. Bring this one up to date and open it again."
        }
        ShareError::Damaged => {
            "This link was cut short or changed on the way. Ask for it again, as one piece."
        }
        ShareError::TooLarge => "This link holds more than a system. It was not opened.",
        ShareError::NotASystem(_) => "This link holds no system.",
    }
}

//! What is wrong, and what would be right, in Spanish.

use uom::si::f64::Pressure;
use winterset_calc::compressor::coefficients::CoefficientError;
use winterset_calc::{Field, Problem as CalcProblem, Quantity};
use winterset_profile::share::ShareError;
use winterset_profile::{Problem, Unit};
use winterset_refrigerant::Error;

use super::screen::SCREEN;
use crate::pen::Pen;
use crate::refused::{cut, written};
use crate::units::{Units, decimal};

pub(super) fn problem(field: Field, problem: &Problem, units: Units) -> String {
    match problem {
        Problem::Missing => match field {
            Field::Refrigerant => "Introduzca el refrigerante, como R-410A.".to_owned(),
            Field::CoolingCapacity => {
                "Introduzca la capacidad frigorífica, o en su lugar el calor rechazado.".to_owned()
            }
            Field::OutdoorLow => {
                "Introduzca la temperatura exterior más baja de este sitio.".to_owned()
            }
            _ => "Introduzca un valor.".to_owned(),
        },
        Problem::NotANumber { .. } => {
            let example = crate::example::example(field, units);
            example.map_or_else(
                || "Introduzca un número.".to_owned(),
                |example| (SCREEN.number_like)(&example),
            )
        }
        Problem::UnknownUnit { unit, kind } => {
            let allowed: Vec<&str> = Unit::of(*kind)
                .map(crate::symbol)
                .filter(|s| !s.is_empty())
                .collect();
            match (unit.is_empty(), allowed.is_empty()) {
                (_, true) => format!("Introduzca un número solo, sin «{unit}»."),
                (true, _) => format!("Elija una unidad: {}.", allowed.join(", ")),
                _ => (SCREEN.unit_like)(unit, &allowed.join(", ")),
            }
        }
        Problem::Ambiguous { whole, decimal } => (SCREEN.two_readings)(whole, decimal),
        Problem::NotWhole => "Introduzca un número entero.".to_owned(),
        Problem::UnknownChoice { .. } => "Elija una de las respuestas ofrecidas.".to_owned(),
        Problem::UnknownRefrigerant { typed } => format!(
            "«{}» no se conoce aquí. Introduzca una designación como R-410A, o una mezcla por masa como R-32/R-1234yf 68.9/31.1.",
            cut(typed)
        ),
        Problem::BlendSum { sum } => {
            let percent = if *sum > 1.5 { *sum } else { 100.0 * sum };
            format!(
                "Las partes suman {} %. Deben sumar 100 %.",
                decimal(percent, 1)
            )
        }
        Problem::EitherOr { .. } => {
            "Introduzca la capacidad frigorífica o el calor rechazado, y borre el otro.".to_owned()
        }
        Problem::Coefficients(error) => coefficients(error),
        Problem::Calc(problem) => calc_problem(field, problem, units),
    }
}

fn calc_problem(field: Field, problem: &CalcProblem, units: Units) -> String {
    // No field takes a pressure, so no atmosphere comes in.
    let pen = Pen::without_gauge(units);
    match problem {
        CalcProblem::OutOfRange { low, high } => {
            (SCREEN.from_to)(&pen.at_least(*low), &pen.at_most(*high))
        }
        CalcProblem::AboveCritical {
            condensing,
            highest,
        } => {
            let lower = match field {
                Field::CompressorLowest => "Introduzca una temperatura de condensación menor.",
                Field::ThrottlingRange => "Introduzca un rango de modulación más estrecho.",
                _ => "Introduzca una temperatura exterior menor o una diferencia más pequeña.",
            };
            format!(
                "Así condensaría a {}; este refrigerante solo condensa hasta unos {}. {lower}",
                pen.show(Quantity::Temperature(*condensing)),
                pen.show(Quantity::Temperature(*highest)),
            )
        }
        CalcProblem::AboveEnvelope { highest } => format!(
            "Tanto calor que condensaría por encima de {}, lo más alto para lo que se calcula este sistema. Use una temperatura exterior menor.",
            pen.show(Quantity::Temperature(*highest)),
        ),
        CalcProblem::HighestBelowNeed { lowest } => format!(
            "Este sistema necesita condensar hasta {}. Introduzca al menos eso, o revise el dato.",
            pen.at_least(Quantity::Temperature(*lowest))
        ),
        CalcProblem::LiftTooHigh => {
            "Una sola etapa de compresión no llega tan lejos. Introduzca una evaporación más alta o una condensación más baja.".to_owned()
        }
        CalcProblem::OverAmbientBelowGlide { lowest } => format!(
            "El deslizamiento de esta mezcla baja tanto del punto de rocío que del condensador no saldría líquido. Introduzca al menos {}.",
            pen.at_least(Quantity::Difference(*lowest))
        ),
        CalcProblem::ColderThanAir { highest } => format!(
            "El líquido saldría más frío de lo que permite el aire. Introduzca como máximo {}.",
            pen.at_most(Quantity::Difference(*highest))
        ),
        CalcProblem::LineTooThin => {
            "Esta línea toma más presión de la que tiene el sistema. Introduzca un diámetro mayor, o una línea más corta o más baja.".to_owned()
        }
        CalcProblem::DischargeTooHot => {
            "La descarga sería más caliente que todo lo que se sabe del refrigerante. Introduzca una evaporación más alta o una condensación más baja.".to_owned()
        }
        CalcProblem::SheetWithoutFlow => {
            "La hoja de datos no da caudal en el punto conocido. Introduzca los coeficientes en su orden, y elija las unidades en que están impresos.".to_owned()
        }
        CalcProblem::ReturnAirTooCold { lowest } => format!(
            "El aire de retorno debe estar por encima del vapor de succión que calienta. Introduzca al menos {}.",
            pen.at_least(Quantity::Temperature(*lowest))
        ),
        CalcProblem::EvaporatingAboveCondensing { highest } => format!(
            "La evaporación debe estar por debajo de la condensación. Introduzca como máximo {}.",
            pen.at_most(Quantity::Temperature(*highest))
        ),
        CalcProblem::TooLittleAir { lowest } => format!(
            "Tan poco aire no puede llevar el calor con esa diferencia. Introduzca al menos {}, o revise la capacidad y la diferencia.",
            pen.at_least(Quantity::Airflow(*lowest))
        ),
        CalcProblem::NoSynchronousSpeed { synchronous } => format!(
            "Ningún motor de inducción gira a esa velocidad con esta red. La velocidad síncrona por encima es {}; introduzca una velocidad de placa un poco menor que una síncrona.",
            pen.show(Quantity::Speed(*synchronous))
        ),
        CalcProblem::Refrigerant(_) => match field {
            Field::Refrigerant => {
                "Las propiedades de este refrigerante fallan aquí. Introduzca otro refrigerante, o valores más cercanos a los habituales.".to_owned()
            }
            _ => {
                "Con este valor el refrigerante sale de su rango. Introduzca uno más cercano al habitual.".to_owned()
            }
        },
    }
}

fn coefficients(error: &CoefficientError) -> String {
    match error {
        CoefficientError::NotANumber { token, place } => format!(
            "«{}» en el lugar {place} no es un número. Introduzca diez números separados por espacios.",
            cut(token)
        ),
        CoefficientError::Ambiguous { token, place } => format!(
            "«{}» en el lugar {place} se puede leer de dos maneras. Use una coma o un punto como signo decimal.",
            cut(token)
        ),
        CoefficientError::NotFinite { name } => {
            format!("{name} es demasiado grande. Introduzca diez números separados por espacios.")
        }
        CoefficientError::TooFew { found, missing } => format!(
            "Aquí hay solo {found} coeficientes; {missing} es el primero que falta. Introduzca los diez."
        ),
        CoefficientError::TooMany { token } => format!(
            "«{}» sobra tras los diez coeficientes que hay. Introduzca diez números separados por espacios.",
            cut(token)
        ),
    }
}

pub(super) fn refused(error: &Error, units: Units, atmosphere: Pressure) -> String {
    match *error {
        Error::OutOfRange {
            quantity,
            low,
            high,
            ..
        } => (SCREEN.from_to)(
            &written(Units::at_least, quantity, low, units, atmosphere),
            &written(Units::at_most, quantity, high, units, atmosphere),
        ),
        Error::AboveCritical {
            quantity, highest, ..
        } => (SCREEN.below_critical)(&written(Units::show, quantity, highest, units, atmosphere)),
        Error::UnknownRefrigerant { ref given } => format!(
            "«{}» no se conoce aquí. Introduzca una designación como R-410A.",
            cut(given)
        ),
        Error::EmptyBlend => "Una mezcla necesita al menos un componente.".to_owned(),
        Error::TooManyComponents { most, .. } => {
            format!("Una mezcla se calcula con {most} componentes como máximo.")
        }
        Error::MassFraction { ref component, .. } => format!(
            "La fracción de masa de {} debe estar entre 0 y 1.",
            cut(component)
        ),
        Error::CompositionSum { .. } => "Las fracciones de masa deben sumar 1.".to_owned(),
        _ => "El refrigerante no tiene respuesta con este valor. Introduzca uno algo distinto."
            .to_owned(),
    }
}

pub(super) fn share_error(error: &ShareError) -> &'static str {
    match error {
        ShareError::NewerForm => {
            "Este enlace se hizo con una versión más nueva de la aplicación. Actualice esta y ábralo de nuevo."
        }
        ShareError::Damaged => {
            "Este enlace se cortó o cambió en el camino. Pídalo de nuevo, en una sola pieza."
        }
        ShareError::TooLarge => "Este enlace contiene más que un sistema. No se abrió.",
        ShareError::NotASystem(_) => "Este enlace no contiene ningún sistema.",
    }
}

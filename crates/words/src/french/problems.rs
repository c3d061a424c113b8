//! What is wrong, and what would be right, in French.

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
            Field::Refrigerant => "Saisissez le fluide, comme R-410A.".to_owned(),
            Field::CoolingCapacity => {
                "Saisissez la puissance frigorifique, ou à sa place la chaleur rejetée.".to_owned()
            }
            Field::OutdoorLow => {
                "Saisissez la température extérieure la plus basse de ce site.".to_owned()
            }
            _ => "Saisissez une valeur.".to_owned(),
        },
        Problem::NotANumber { .. } => {
            let example = crate::example::example(field, units);
            example.map_or_else(
                || "Saisissez un nombre.".to_owned(),
                |example| (SCREEN.number_like)(&example),
            )
        }
        Problem::UnknownUnit { unit, kind } => {
            let allowed: Vec<&str> = Unit::of(*kind)
                .map(crate::symbol)
                .filter(|s| !s.is_empty())
                .collect();
            match (unit.is_empty(), allowed.is_empty()) {
                (_, true) => format!("Saisissez un nombre seul, sans «\u{a0}{unit}\u{a0}»."),
                (true, _) => format!("Choisissez une unité\u{a0}: {}.", allowed.join(", ")),
                _ => (SCREEN.unit_like)(unit, &allowed.join(", ")),
            }
        }
        Problem::Ambiguous { whole, decimal } => (SCREEN.two_readings)(whole, decimal),
        Problem::NotWhole => "Saisissez un nombre entier.".to_owned(),
        Problem::UnknownChoice { .. } => "Choisissez une des réponses proposées.".to_owned(),
        Problem::UnknownRefrigerant { typed } => format!(
            "«\u{a0}{}\u{a0}» n’est pas connu ici. Saisissez une désignation comme R-410A, ou un mélange en masse comme R-32/R-1234yf 68.9/31.1.",
            cut(typed)
        ),
        Problem::BlendSum { sum } => {
            let percent = if *sum > 1.5 { *sum } else { 100.0 * sum };
            format!(
                "Les parts font {} %. Elles doivent faire 100 %.",
                decimal(percent, 1)
            )
        }
        Problem::EitherOr { .. } => {
            "Saisissez la puissance frigorifique ou la chaleur rejetée, et effacez l’autre."
                .to_owned()
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
                Field::CompressorLowest => "Saisissez une température de condensation plus basse.",
                Field::ThrottlingRange => "Saisissez une plage de modulation plus étroite.",
                _ => "Saisissez une température extérieure plus basse ou un écart plus petit.",
            };
            format!(
                "Cela condenserait à {}\u{a0}; ce fluide ne condense que jusqu’à {} environ. {lower}",
                pen.show(Quantity::Temperature(*condensing)),
                pen.show(Quantity::Temperature(*highest)),
            )
        }
        CalcProblem::AboveEnvelope { highest } => format!(
            "Si chaud que cela condenserait au-dessus de {}, le plus haut pour quoi ce système est calculé. Utilisez une température extérieure plus basse.",
            pen.show(Quantity::Temperature(*highest)),
        ),
        CalcProblem::HighestBelowNeed { lowest } => format!(
            "Ce système a besoin de condenser jusqu’à {}. Saisissez au moins cela, ou vérifiez la valeur.",
            pen.at_least(Quantity::Temperature(*lowest))
        ),
        CalcProblem::LiftTooHigh => {
            "Un seul étage de compression ne va pas si loin. Saisissez une évaporation plus haute ou une condensation plus basse.".to_owned()
        }
        CalcProblem::OverAmbientBelowGlide { lowest } => format!(
            "Ce mélange glisse si bas sous son point de rosée qu’aucun liquide ne sortirait du condenseur. Saisissez au moins {}.",
            pen.at_least(Quantity::Difference(*lowest))
        ),
        CalcProblem::ColderThanAir { highest } => format!(
            "Le liquide sortirait plus froid que l’air ne le permet. Saisissez au plus {}.",
            pen.at_most(Quantity::Difference(*highest))
        ),
        CalcProblem::LineTooThin => {
            "Cette conduite prend plus de pression que le système n’en a. Saisissez un diamètre plus grand, ou une conduite plus courte ou plus basse.".to_owned()
        }
        CalcProblem::DischargeTooHot => {
            "Le refoulement serait plus chaud que tout ce qui est connu du fluide. Saisissez une évaporation plus haute ou une condensation plus basse.".to_owned()
        }
        CalcProblem::SheetWithoutFlow => {
            "La fiche ne donne aucun débit au point connu. Saisissez les coefficients dans leur ordre, et choisissez les unités où ils sont imprimés.".to_owned()
        }
        CalcProblem::ReturnAirTooCold { lowest } => format!(
            "L’air de reprise doit être plus chaud que la vapeur aspirée qu’il réchauffe. Saisissez au moins {}.",
            pen.at_least(Quantity::Temperature(*lowest))
        ),
        CalcProblem::EvaporatingAboveCondensing { highest } => format!(
            "L’évaporation doit rester sous la condensation. Saisissez au plus {}.",
            pen.at_most(Quantity::Temperature(*highest))
        ),
        CalcProblem::TooLittleAir { lowest } => format!(
            "Si peu d’air ne peut emporter la chaleur à cet écart. Saisissez au moins {}, ou vérifiez la puissance et l’écart.",
            pen.at_least(Quantity::Airflow(*lowest))
        ),
        CalcProblem::NoSynchronousSpeed { synchronous } => format!(
            "Aucun moteur asynchrone ne tourne à cette vitesse sur ce réseau. La vitesse de synchronisme au-dessus est {}\u{a0}; saisissez une vitesse de plaque un peu inférieure à une vitesse de synchronisme.",
            pen.show(Quantity::Speed(*synchronous))
        ),
        CalcProblem::Refrigerant(_) => match field {
            Field::Refrigerant => {
                "Les propriétés de ce fluide échouent ici. Saisissez un autre fluide, ou des valeurs plus proches des habituelles.".to_owned()
            }
            _ => {
                "Avec cette valeur, le fluide sort de son domaine. Saisissez-en une plus proche de l’habituelle.".to_owned()
            }
        },
    }
}

fn coefficients(error: &CoefficientError) -> String {
    match error {
        CoefficientError::NotANumber { token, place } => format!(
            "«\u{a0}{}\u{a0}» à la place {place} n’est pas un nombre. Saisissez dix nombres séparés par des espaces.",
            cut(token)
        ),
        CoefficientError::Ambiguous { token, place } => format!(
            "«\u{a0}{}\u{a0}» à la place {place} peut se lire de deux façons. Utilisez une virgule ou un point comme signe décimal.",
            cut(token)
        ),
        CoefficientError::NotFinite { name } => {
            format!("{name} est trop grand. Saisissez dix nombres séparés par des espaces.")
        }
        CoefficientError::TooFew { found, missing } => format!(
            "Il n’y a ici que {found} coefficients\u{a0}; {missing} est le premier qui manque. Saisissez les dix."
        ),
        CoefficientError::TooMany { token } => format!(
            "«\u{a0}{}\u{a0}» est de trop après les dix coefficients. Saisissez dix nombres séparés par des espaces.",
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
            "«\u{a0}{}\u{a0}» n’est pas connu ici. Saisissez une désignation comme R-410A.",
            cut(given)
        ),
        Error::EmptyBlend => "Un mélange demande au moins un composant.".to_owned(),
        Error::TooManyComponents { most, .. } => {
            format!("Un mélange se calcule avec {most} composants au plus.")
        }
        Error::MassFraction { ref component, .. } => format!(
            "La fraction massique de {} doit être entre 0 et 1.",
            cut(component)
        ),
        Error::CompositionSum { .. } => "Les fractions massiques doivent faire 1.".to_owned(),
        _ => "Le fluide n’a pas de réponse à cette valeur. Saisissez-en une un peu différente."
            .to_owned(),
    }
}

pub(super) fn share_error(error: &ShareError) -> &'static str {
    match error {
        ShareError::NewerForm => {
            "Ce lien vient d’une version plus récente de l’application. Mettez celle-ci à jour et ouvrez-le de nouveau."
        }
        ShareError::Damaged => {
            "Ce lien a été coupé ou changé en chemin. Redemandez-le, d’un seul tenant."
        }
        ShareError::TooLarge => "Ce lien contient plus qu’un système. Il n’a pas été ouvert.",
        ShareError::NotASystem(_) => "Ce lien ne contient aucun système.",
    }
}

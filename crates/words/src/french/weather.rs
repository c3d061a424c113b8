//! Weather files in French: what stands round them, and what is wrong with one.

use winterset_calc::weather::epw::{Column, EpwError};

use crate::refused::cut;
use crate::units::signed;
use crate::weather::WeatherLabels;

pub(super) static LABELS: WeatherLabels = WeatherLabels {
    head: "Heures d’hiver",
    note: "Un fichier climatique au format EPW dit combien d’heures de l’année il fait tel froid. Il est lu sur ce téléphone, et seules les heures comptées sont gardées. Sans lui, une année habituelle autour du minimum du site en tient lieu.",
    choose: "Choisir un fichier climatique",
    choose_another: "Choisir un autre fichier",
    reading: "Lecture du fichier.",
    cancel: "Annuler",
    counted: |place, low| match place {
        "" => format!(
            "Heures d’un lieu sans nom. Son minimum de calcul est {low}\u{a0}: 99,6 % des heures sont plus chaudes."
        ),
        place => format!(
            "Heures du lieu {place}. Son minimum de calcul est {low}\u{a0}: 99,6 % des heures sont plus chaudes."
        ),
    },
    use_low: |low, systems| match systems {
        1 => format!("Prendre {low} comme minimum du site pour son système"),
        systems => format!("Prendre {low} comme minimum du site pour les {systems} systèmes"),
    },
    use_low_question: "Cela remplace le minimum du site saisi à cet endroit. Une nuit froide peut encore descendre sous le minimum de calcul.",
    low_used: "Tous les systèmes d’ici l’ont comme minimum du site.",
    offer: |low| format!("Prendre {low}, le minimum de calcul du fichier climatique de ce site"),
    remove: "Supprimer les heures d’hiver",
    remove_question: "Supprimer les heures comptées\u{a0}? L’année habituelle en tient lieu jusqu’au choix d’un autre fichier.",
    unreadable: "Le navigateur n’a pas pu lire ce fichier. Choisissez-le de nouveau, ou un autre.",
    not_a_year: |hours| {
        format!("Ce fichier couvre {hours}. Choisissez-en un qui couvre une année entière.")
    },
    methods_note: |place| {
        let year = match place {
            "" => "Sur l’année du fichier climatique de ce site".to_owned(),
            place => format!("Sur l’année du fichier climatique du lieu {place}"),
        };
        format!(
            "{year}, à charge égale toute l’année. Les heures où la basse pression arrête le compresseur ne consomment pas d’énergie et ne font pas de froid."
        )
    },
};

/// What is wrong with a weather file, and what would be right.
pub(super) fn error(error: &EpwError) -> String {
    match error {
        EpwError::NotALocation { .. } => {
            "Ce n’est pas un fichier EPW\u{a0}: sa première ligne ne commence pas par LOCATION. Choisissez un fichier dont le nom finit par .epw.".to_owned()
        }
        EpwError::NoDataPeriods { .. } => {
            "L’en-tête de ce fichier ne finit pas par une ligne qui commence par DATA PERIODS. Choisissez un autre fichier EPW.".to_owned()
        }
        EpwError::TooFewColumns {
            line,
            found,
            needed,
        } => format!(
            "La ligne {line} de ce fichier s’arrête après {found} colonnes sur {needed}. Il a pu être coupé\u{a0}: choisissez-en un entier."
        ),
        EpwError::NotANumber {
            line,
            column,
            found,
        } => format!(
            "La ligne {line} de ce fichier porte «\u{a0}{}\u{a0}» pour {}. Choisissez un fichier qui a là un nombre.",
            cut(found),
            name(*column)
        ),
        EpwError::OutOfRange {
            line,
            column,
            found,
            low,
            high,
        } => format!(
            "La ligne {line} de ce fichier porte {} pour {}, hors de la plage de {} à {}. Choisissez un autre fichier.",
            number(*found),
            name(*column),
            number(*low),
            number(*high)
        ),
        EpwError::RecordsPerHour { line, found } => format!(
            "La ligne {line} de ce fichier annonce {} relevés par heure, ce qui ne divise pas une heure en parts égales. Choisissez un autre fichier.",
            number(*found)
        ),
        EpwError::LineTooLong { line, .. } => format!(
            "La ligne {line} est plus longue que toutes celles d’un fichier EPW. Choisissez un fichier dont le nom finit par .epw."
        ),
        EpwError::TooManyRows { .. } => {
            "Ce fichier a plus de lignes qu’une année n’a de minutes. Choisissez-en un d’une seule année.".to_owned()
        }
        EpwError::TooFewHours { found, needed } => format!(
            "Ce fichier contient {found} heures avec une température, et il en faut au moins {needed}. Choisissez-en un entier."
        ),
    }
}

fn number(value: f64) -> String {
    signed(&value.to_string())
}

fn name(column: Column) -> &'static str {
    match column {
        Column::Latitude => "la latitude",
        Column::Longitude => "la longitude",
        Column::TimeZone => "le fuseau horaire",
        Column::Elevation => "l’altitude",
        Column::RecordsPerHour => "les relevés par heure",
        Column::DryBulb => "la température extérieure",
        Column::RelativeHumidity => "l’humidité",
        Column::Pressure => "la pression de l’air",
        Column::WindSpeed => "la vitesse du vent",
    }
}

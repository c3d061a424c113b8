//! The worksheets on sensors and on a winter start, in French.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::SheetRule;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::{StartError, StartInput};
use winterset_profile::{Amount, Measure, Question};

use super::problems;
use crate::units::Units;
use crate::worksheets::StartLabels;

pub(super) static LABELS: StartLabels = StartLabels {
    open: "coupée",
    open_reason: "Plus de résistance qu’au plus froid\u{a0}: un fil ou une sonde coupés.",
    short: "en court-circuit",
    short_reason: "Moins de résistance qu’au plus chaud\u{a0}: des fils qui se touchent, ou de l’eau dans la sonde.",
    signal_low: "trop bas",
    signal_low_reason: "Sous sa plage\u{a0}: pas d’alimentation, un fil coupé, ou un court-circuit au commun.",
    signal_high: "trop haut",
    signal_high_reason: "Au-dessus de sa plage\u{a0}: le fil commun coupé, un court-circuit à l’alimentation, ou un capteur hors d’usage.",
    e24: "Résistance, série E24 (5 %)",
    e96: "Résistance, série E96 (1 %)",
    e24_shows: "La résistance E24 montre",
    e96_shows: "La résistance E96 montre",
    closed: "À l’arrêt, au-dessus du déclenchement",
    closed_reason: "Le pressostat basse pression est fermé avant le démarrage.",
    as_it_was: "comme avant",
    as_it_was_reason: "Entre déclenchement et enclenchement, le pressostat reste comme il était. Après un arrêt par le pressostat, il est ouvert.",
    missing: "À l’arrêt, sous l’enclenchement",
    missing_reason: "Le pressostat basse pression est ouvert\u{a0}: sans pontage, le compresseur ne démarre pas.",
    none_needed: "inutile",
    none_needed_reason: "La pression d’aspiration reste au-dessus du déclenchement.",
    longer: "plus de 10 min",
    longer_reason: "La pression d’aspiration monte encore après dix minutes. De la chaleur sur la bouteille l’abrège.",
    never: "aucun ne suffit",
    never_reason: "La pression d’aspiration se stabilise sous le pressostat. Chauffez la bouteille, ou maintenez la pression de condensation par noyage.",
    curve: "Courbe du capteur",
    temperature: "Température",
    pressure: "Pression",
    resistance: "Résistance",
    signal: "Signal",
    curve_marker: "Repère sur la courbe du capteur",
    curve_summary: |(sensed, signal), (last_sensed, last_signal)| {
        format!("De {signal} à {sensed} jusqu’à {last_signal} à {last_sensed}.")
    },
};

pub(super) fn choice(key: &str) -> Option<&'static str> {
    Some(match key {
        "thermistor" => "Thermistance (CTN)",
        "transducer" => "Transmetteur de pression",
        "beta" => "Résistance à 25 °C, et bêta",
        "points" => "Trois points de sa table",
        "coefficients" => "Coefficients A, B et C",
        "ratiometric" => "Volts, part de son alimentation",
        "current-loop" => "4 à 20 mA",
        "gauge" => "Relative",
        "sealed" => "Relative scellée",
        "absolute" => "Absolue",
        _ => return None,
    })
}

pub(super) fn question(question: Question) -> Option<(&'static str, &'static str)> {
    Some(match question {
        Question::SensorKind => (
            "Capteur",
            "Une thermistance donne une température, un transmetteur une pression.",
        ),
        Question::ThermistorBy => (
            "Sa courbe est connue par",
            "Loin de 25 °C (77 °F), trois points de la table du fabricant sont plus justes que bêta.",
        ),
        Question::BaseResistance => (
            "Résistance à 25 °C (77 °F)",
            "Telle que la sonde est vendue, par exemple 10 kΩ.",
        ),
        Question::Beta => ("Bêta", "De la fiche technique, en kelvins."),
        Question::PointTemperature(number) => point_temperature(number),
        Question::PointResistance(number) => point_resistance(number),
        Question::Coefficient(number) => coefficient(number),
        Question::TransducerBy => (
            "Son signal",
            "Avec trois fils, le plus souvent des volts\u{a0}; avec deux fils, un courant.",
        ),
        Question::RangeReference => (
            "Sa plage se compte depuis",
            "Relative\u{a0}: l’air qui l’entoure. Relative scellée\u{a0}: l’air au niveau de la mer, enfermé. Absolue\u{a0}: un vide.",
        ),
        Question::RangeLow => (
            "Bas de la plage",
            "La pression du signal le plus faible, de son étiquette.",
        ),
        Question::RangeHigh => (
            "Haut de la plage",
            "La pression du plein signal, de son étiquette.",
        ),
        Question::SensorSupply => (
            "Alimentation du transmetteur",
            "Mesurée à ses bornes, en même temps que la sortie.",
        ),
        Question::LowShare => (
            "Sortie en bas de plage",
            "De l’alimentation\u{a0}: 0,5 V sur 5 V font 10 %.",
        ),
        Question::HighShare => (
            "Sortie en haut de plage",
            "De l’alimentation\u{a0}: 4,5 V sur 5 V font 90 %.",
        ),
        Question::MeterResistance => (
            "Résistance de la sonde",
            "Mesurée les deux fils débranchés du régulateur. Pour un circuit coupé, saisissez 100 MΩ.",
        ),
        Question::MeterOutput => (
            "Sortie du transmetteur",
            "Mesurée entre signal et commun, régulateur branché.",
        ),
        Question::MeterCurrent => ("Courant de boucle", "Mesuré en série avec le transmetteur."),
        Question::SimulatedTemperature => (
            "Température à simuler",
            "Ce que le régulateur doit voir quand vous l’essayez.",
        ),
        Question::SimulatedPressure => (
            "Pression à simuler",
            "Ce que le régulateur doit voir quand vous l’essayez.",
        ),
        Question::SensorElevation => (
            "Altitude au-dessus de la mer",
            "Plus haut, la pression relative se compte depuis moins d’air. Toutes les fiches gardent la dernière saisie.",
        ),
        Question::Room => (
            "Température du local refroidi",
            "De l’air entrant dans l’évaporateur.",
        ),
        Question::CutOut => (
            "Le pressostat basse pression ouvre à",
            "Son déclenchement, tel que réglé. Certains ont un enclenchement et un différentiel\u{a0}: retranchez le différentiel.",
        ),
        Question::CutIn => (
            "Le pressostat basse pression ferme à",
            "Son enclenchement, tel que réglé. Au déclenchement ou au-dessus.",
        ),
        Question::Condensing => (
            "Température de condensation",
            "Température de rosée au point connu, où le ventilateur la maintient ensuite.",
        ),
        Question::Metering => (
            "Détendeur",
            "Jusqu’où il peut ouvrir décide quand le liquide arrive.",
        ),
        Question::LiquidAtStart => (
            "Bouteille au démarrage",
            "Aussi froide que dehors si rien ne la garde chaude.",
        ),
        Question::ReceiverHeat => (
            "Chauffage de la bouteille",
            "Chaleur en service pendant le démarrage.",
        ),
        Question::StartConductance => (
            "Chaleur perdue par le condenseur au démarrage",
            "Par degré au-dessus de l’extérieur. Vide\u{a0}: ventilateurs arrêtés, vent faible.",
        ),
        Question::HeatCapacity => (
            "Chaleur prise par condenseur et bouteille",
            "Avec leur liquide, par degré. Vide, elle suit la puissance frigorifique.",
        ),
        Question::LowSideVolume => (
            "Volume intérieur du côté basse pression",
            "Évaporateur, conduite d’aspiration et carter du compresseur.",
        ),
        Question::EvaporatorCharge => (
            "Fluide dans l’évaporateur en marche",
            "Il n’y en reste rien après une longue nuit.",
        ),
        Question::Around => (
            "Air autour du compresseur",
            "Dehors, aussi froid que dehors\u{a0}; dans un local technique, plus chaud.",
        ),
        Question::SumpRise => (
            "Carter au-dessus de cet air",
            "De combien l’huile est tenue au-dessus de ses alentours et de ce qui s’y condenserait.",
        ),
        Question::SumpConductance => (
            "Chaleur perdue par l’enveloppe",
            "Par degré. Vide\u{a0}: une enveloppe nue de taille habituelle dans un vent de 3 m/s (7 mph). Une jaquette isolante la réduit de moitié.",
        ),
        _ => return None,
    })
}

fn point_temperature(number: usize) -> (&'static str, &'static str) {
    let help = "La température d’un point de la table.";
    match number {
        0 => ("Premier point, température", help),
        1 => ("Deuxième point, température", help),
        _ => ("Troisième point, température", help),
    }
}

fn point_resistance(number: usize) -> (&'static str, &'static str) {
    let help = "La résistance que la table donne à ce point.";
    match number {
        0 => ("Premier point, résistance", help),
        1 => ("Deuxième point, résistance", help),
        _ => ("Troisième point, résistance", help),
    }
}

fn coefficient(number: usize) -> (&'static str, &'static str) {
    let help = "De la fiche technique, résistance en ohms et température en kelvins.";
    match number {
        0 => ("A", help),
        1 => ("B", help),
        _ => ("C", help),
    }
}

pub(super) fn rule(rule: SheetRule) -> Option<(&'static str, &'static str)> {
    Some(match rule {
        SheetRule::BetaTemperature | SheetRule::SteinhartTemperature => (
            "La sonde est à",
            "Ce que voit un régulateur en bon état à cette résistance.",
        ),
        SheetRule::BetaResistance | SheetRule::SteinhartResistance => (
            "La sonde aurait",
            "Sa résistance à la température à simuler.",
        ),
        SheetRule::SubstituteResistor => (
            "Résistance à brancher",
            "La valeur de sa série la plus proche en température, à la place de la sonde.",
        ),
        SheetRule::SubstituteTemperature => (
            "Cette résistance montre",
            "Ce que le régulateur voit alors. Sa tolérance le déplace de T_min à T_max.",
        ),
        SheetRule::RatiometricPressure | SheetRule::LoopPressure => {
            ("Pression", "Ce que le transmetteur dit au régulateur.")
        }
        SheetRule::RatiometricOutput => (
            "Sortie à appliquer",
            "À la place du transmetteur, sur la même alimentation.",
        ),
        SheetRule::LoopCurrent => ("Courant à appliquer", "À la place du transmetteur."),
        SheetRule::SwitchMargin => (
            "Pressostat basse pression avant le démarrage",
            "Pression à l’arrêt du côté basse pression, pressions égalisées, face au pressostat.",
        ),
        SheetRule::StandingOutdoor => (
            "Pression à l’arrêt, dehors",
            "Condenseur, bouteille et conduite de liquide après la nuit.",
        ),
        SheetRule::StandingLow => (
            "Pression à l’arrêt, côté basse pression",
            "Le plus bas où elle peut tomber\u{a0}: tôt ou tard, le côté le plus froid la fixe.",
        ),
        SheetRule::BypassTime => (
            "Pontage du pressostat basse pression",
            "Du démarrage jusqu’à ce que la pression d’aspiration reste au-dessus de l’enclenchement.",
        ),
        SheetRule::LowestSuction => (
            "Pression d’aspiration la plus basse",
            "Au démarrage, avant que le liquide arrive.",
        ),
        SheetRule::SumpTemperature => (
            "Température du carter",
            "Au-dessus de ses alentours, et de ce qui s’y condenserait.",
        ),
        SheetRule::SumpHeat => (
            "Chaleur pour le carter",
            "Ce que l’enveloppe perd à cette température. Chauffez 12 heures avant un démarrage après un long arrêt.",
        ),
        _ => return None,
    })
}

/// An equation that words stand in.
pub(super) fn equation(rule: SheetRule) -> Option<&'static str> {
    Some(match rule {
        SheetRule::SubstituteResistor => {
            "R_s\u{a0}: dans sa série, la plus proche de R en température"
        }
        SheetRule::SwitchMargin => "Δp = p − p_out, ou p_in − p",
        SheetRule::BypassTime => "t\u{a0}: dès lors p_suction(t) ≥ p_in",
        _ => return None,
    })
}

pub(super) fn sensor_error(error: &SensorError) -> &'static str {
    match error {
        SensorError::OutOfRange { .. } => {
            "C’est hors de la plage du capteur. Saisissez une valeur dans la plage, ou vérifiez la plage."
        }
        SensorError::PointsTooClose { .. } => {
            "Deux points sont à moins de 5 K (9 °F) l’un de l’autre. Saisissez des points plus éloignés."
        }
        SensorError::NotFalling => {
            "Avec ces valeurs, la résistance ne baisse pas régulièrement quand il fait plus chaud. Vérifiez chacune sur la fiche technique, avec son unité."
        }
    }
}

pub(super) fn start_error(error: &StartError, units: Units, atmosphere: Pressure) -> String {
    let said = match error {
        StartError::CutInBelowCutOut { .. } => {
            "Le pressostat fermerait sous son déclenchement. Saisissez un enclenchement égal ou plus haut."
        }
        StartError::NotAbove {
            above, than, by, ..
        } => return not_above(*above, *than, *by, units, atmosphere),
        StartError::OutOfRange {
            input: StartInput::LiquidAtStart,
            ..
        } => "Saisissez une température entre celle de l’extérieur et celle de condensation.",
        StartError::OutOfRange { .. } => {
            "Avec cette valeur, le démarrage sort du domaine du modèle. Saisissez-en une plus proche de l’habituelle."
        }
        StartError::Refrigerant(error) => return problems::refused(error, units, atmosphere),
        _ => "Il n’y a pas de réponse à ces valeurs. Saisissez-en de plus proches des habituelles.",
    };
    said.to_owned()
}

fn not_above(
    above: StartInput,
    than: ThermodynamicTemperature,
    by: f64,
    units: Units,
    atmosphere: Pressure,
) -> String {
    let least = Amount::new(Measure::Temperature, than.value + by);
    let scale = units.scale(Measure::Temperature);
    let least = crate::amounts::at_least(scale, least, atmosphere);
    match above {
        StartInput::Room => format!(
            "Le local doit être plus chaud que la température d’évaporation. Saisissez plus de {least}."
        ),
        _ => format!(
            "La condensation doit être au-dessus de l’évaporation et de l’extérieur. Saisissez plus de {least}."
        ),
    }
}

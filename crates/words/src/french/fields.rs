//! Questions, help and choices of the inputs, in French.

use winterset_calc::Field;

use crate::example;
use crate::language::FieldWords;
use crate::units::Units;

pub(super) fn field(field: Field) -> FieldWords {
    let (ask, help) = match field {
        Field::Refrigerant => (
            "Fluide frigorigène",
            "Ce que le circuit contient aujourd’hui\u{a0}: lisez la plaque et toute étiquette de conversion. Un mélange à vous s’écrit en masse, comme R-32/R-1234yf 68.9/31.1.",
        ),
        Field::CoolingCapacity => (
            "Puissance frigorifique nominale",
            "De la plaque ou de la fiche technique, aux températures d’évaporation et de condensation pour lesquelles le système a été choisi.",
        ),
        Field::HeatRejected => (
            "Chaleur rejetée au condenseur",
            "Au lieu de la puissance frigorifique, si vous avez la fiche du condenseur\u{a0}: au même écart de température que ci-dessous.",
        ),
        Field::OutdoorLow => (
            "Température extérieure la plus basse",
            "La plus froide de ce site tant qu’il faut du froid. La température de base du lieu convient.",
        ),
        Field::Metering => (
            "Détendeur",
            "Ce qui alimente l’évaporateur. Un orifice équilibré est indiqué sur le détendeur ou dans sa fiche.",
        ),
        Field::Motor => (
            "Moteur du ventilateur de condenseur",
            "Un condensateur de marche sur un moteur monophasé veut dire condensateur permanent. Trois fils sans condensateur veulent dire triphasé. Un moteur à boîtier électronique est à commutation électronique.",
        ),
        Field::Bearing => (
            "Palier du moteur de ventilateur",
            "Sur la plaque ou dans la fiche. Un palier lisse a besoin de vitesse pour garder son film d’huile.",
        ),
        Field::Voltage => (
            "Tension d’alimentation au ventilateur",
            "Mesurée en charge aux bornes du ventilateur, ou la tension nominale.",
        ),
        Field::Duty => (
            "Ce qui est refroidi",
            "Fixe l’évaporation et l’écart de condensation habituels tant que vous ne les saisissez pas.",
        ),
        Field::OverAmbient => (
            "Écart de condensation sur l’air",
            "Un jour où les ventilateurs tournent à pleine vitesse\u{a0}: saturation (rosée) à la pression de condensation, moins la température de l’air entrant dans la batterie.",
        ),
        Field::KnownOutdoor => (
            "Température extérieure de ce relevé",
            "L’air entrant dans le condenseur lors du relevé ci-dessus, ou la valeur de calcul de la fiche technique.",
        ),
        Field::Evaporating => (
            "Température d’évaporation",
            "Saturation (rosée) à la pression d’aspiration en régime stable.",
        ),
        Field::Fans => (
            "Nombre de ventilateurs du condenseur",
            "Tous ceux du condenseur de ce circuit.",
        ),
        Field::ModulatedFans => (
            "Ventilateurs que le régulateur de vitesse mène",
            "Tous, sauf autre réponse. Les autres tournent à pleine vitesse et s’arrêtent l’un après l’autre par des pressostats, à la pression nécessaire.",
        ),
        Field::Airflow => (
            "Débit d’air, tous à pleine vitesse",
            "De la fiche du condenseur. Vide, il est calculé pour un condenseur habituel.",
        ),
        Field::Frequency => ("Fréquence du réseau", "50 ou 60 Hz."),
        Field::RatedSpeed => (
            "Vitesse de plaque du moteur de ventilateur",
            "En tours par minute, à pleine charge.",
        ),
        Field::Elevation => (
            "Altitude au-dessus de la mer",
            "L’air raréfié emporte moins de chaleur, et la pression relative se compte depuis moins d’air.",
        ),
        Field::Sensing => (
            "Ce que mesure le régulateur",
            "La température de batterie convient aux fluides à faible glissement\u{a0}; la pression de liquide à tous.",
        ),
        Field::ThrottlingRange => (
            "Plage de modulation",
            "De la sortie minimale à la pleine sortie, en température de condensation. Étroite, elle tient mieux et pompe plus tôt.",
        ),
        Field::CompressorLowest => (
            "Condensation la plus basse du compresseur",
            "Du domaine d’emploi du fabricant à votre température d’évaporation, si vous l’avez.",
        ),
        Field::CompressorHighest => (
            "Condensation la plus haute du compresseur",
            "Du domaine d’emploi du fabricant à votre température d’évaporation, si vous l’avez. Au-dessus, le plan le dit.",
        ),
        Field::ReturnAir => (
            "Air de reprise à l’évaporateur",
            "L’air qui revient à la batterie intérieure en régime stable.",
        ),
        Field::FanPower => (
            "Puissance de tous les ventilateurs du condenseur",
            "Mesurée à pleine vitesse, ou des plaques. Vide, une part habituelle de la chaleur rejetée en tient lieu\u{a0}; elle ne compte que pour l’énergie.",
        ),
        Field::ReturnHumidity => (
            "Humidité de l’air de reprise",
            "Humidité relative de l’air qui revient à la batterie intérieure. Elle décide quand la glace commence.",
        ),
        Field::IndoorAirflow => (
            "Débit d’air de l’évaporateur",
            "De sa fiche. Vide, un débit habituel pour la puissance en tient lieu\u{a0}; il ne compte que pour la glace.",
        ),
        Field::LiquidLength => (
            "Longueur de la conduite de liquide",
            "Du condenseur ou de la bouteille au détendeur, les raccords comptés pour leur longueur équivalente de tube droit.",
        ),
        Field::LiquidLift => (
            "Montée de la conduite de liquide",
            "De combien le détendeur est plus haut que la sortie du condenseur. Sous zéro s’il est plus bas.",
        ),
        Field::LiquidDiameter => (
            "Diamètre intérieur de la conduite de liquide",
            "Non la cote extérieure sous laquelle le tube se vend.",
        ),
        Field::FullLoad => (
            "Courant à pleine charge d’un moteur de ventilateur",
            "L’intensité nominale (FLA) de la plaque. Elle décide quel régulateur porte les ventilateurs.",
        ),
        Field::Subcooling => (
            "Sous-refroidissement à la sortie du condenseur",
            "Saturation (bulle) à la pression de condensation, moins la température de la conduite de liquide au condenseur, lors du relevé de l’écart sur l’air.",
        ),
        Field::CapacityControl => (
            "Comment les compresseurs suivent la charge",
            "La plus petite part de la pleine charge à quoi ils tournent s’en déduit, tant que vous ne l’indiquez pas.",
        ),
        Field::CompressorStages => (
            "Nombre d’étages de compresseur",
            "Tous de même taille, sur ce circuit. Il ne compte que si les compresseurs s’enclenchent l’un après l’autre.",
        ),
        Field::LowestLoad => (
            "Plus petite part de la pleine charge",
            "Le moins à quoi tournent les compresseurs, par étages, réduction ou vitesse. Moins il y a de chaleur, plus tôt la pression de condensation tombe\u{a0}: le plan suit alors cette part. Sans réponse, elle se déduit de la façon dont ils suivent la charge.",
        ),
        Field::HeatReclaim => (
            "Condensation voulue pour la récupération",
            "La température de condensation que veut celui qui utilise la chaleur, si elle est utilisée.",
        ),
        Field::Defrost => (
            "Dégivrage",
            "Le gaz chaud a besoin de pression de condensation pour fondre la glace.",
        ),
        Field::BelowMinimum => (
            "Sous la sortie minimale, le ventilateur",
            "Certains régulateurs laissent tourner le ventilateur à la sortie minimale, d’autres l’arrêtent. Un ventilateur qui s’arrête tient plus loin dans le froid, et laisse la pression osciller un peu.",
        ),
        Field::ReversingValve => (
            "Vanne d’inversion",
            "D’une pompe à chaleur\u{a0}: dans quel mode sa bobine est alimentée. En chauffage, le ventilateur extérieur tourne à pleine vitesse, d’après ce signal.",
        ),
        Field::FlowCoefficients => (
            "Débit massique, dix coefficients",
            "De la fiche du compresseur (AHRI 540), C1 à C10 séparés par des espaces. Ils disent comment le débit suit les deux pressions\u{a0}; la plaque dit combien il vaut.",
        ),
        Field::PowerCoefficients => (
            "Puissance, dix coefficients",
            "De la même fiche, C1 à C10 en watts.",
        ),
        Field::SheetUnits => (
            "Unités des coefficients",
            "Température, débit massique et puissance tels que la fiche les imprime.",
        ),
        Field::SheetSuperheat => ("Surchauffe nominale de la fiche", "De la même fiche."),
        Field::Recirculation => (
            "Air repris",
            "La part de l’air du condenseur qu’il vient lui-même de souffler\u{a0}: sous un toit, dans un coin, entre deux appareils. L’écart sur l’air est supposé relevé sans elle.",
        ),
        Field::Dirt => (
            "Encrassement du condenseur",
            "La part d’air et de conductance que prend la saleté. L’écart sur l’air est supposé celui de la batterie propre.",
        ),
        Field::IdleAirflow => (
            "Débit d’air, ventilateurs arrêtés",
            "Ce que le vent et le tirage naturel déplacent encore, en part du plein débit. Plus sur un toit dégagé, moins derrière un écran.",
        ),
    };
    FieldWords { ask, help }
}

pub(super) fn usual(field: Field, units: Units) -> Option<String> {
    match field {
        Field::Frequency => Some("50 ou 60 Hz".to_owned()),
        _ => example::usual(field, units).map(|(low, high)| format!("{low} à {high}")),
    }
}

pub(super) fn choice(field: Field, key: &str) -> &'static str {
    match (field, key) {
        (Field::Duty, "room-cooling") => "Locaux, armoires, archives",
        (Field::Duty, "cooler") => "Chambre froide positive ou cave",
        (Field::Duty, "freezer") => "Chambre négative",
        (Field::Motor, "permanent-split-capacitor") => "Condensateur permanent",
        (Field::Motor, "shaded-pole") => "Bagues de déphasage",
        (Field::Motor, "electronically-commutated") => "Commutation électronique",
        (Field::Motor, "three-phase") => "Triphasé",
        (Field::Bearing, "ball") => "Roulement à billes",
        (Field::Bearing, "sleeve") => "Palier lisse",
        (Field::Metering, "txv-conventional") => "Thermostatique, orifice classique",
        (Field::Metering, "txv-balanced") => "Thermostatique, orifice équilibré",
        (Field::Metering, "electronic-valve") => "Détendeur électronique",
        (Field::Metering, "fixed-orifice") => "Orifice fixe ou capillaire",
        (Field::CapacityControl, "on-off") => "Un seul, en tout ou rien",
        (Field::CapacityControl, "stages") => "Enclenchés l’un après l’autre",
        (Field::CapacityControl, "unloading") => "Réduction par cylindres ou spirale",
        (Field::CapacityControl, "variable-speed") => "Vitesse variable",
        (Field::Defrost, "other") => "Autre, ou aucun",
        (Field::Defrost, "hot-gas") => "Gaz chaud",
        (Field::BelowMinimum, "keeps-turning") => "Continue de tourner",
        (Field::BelowMinimum, "stops") => "S’arrête",
        (Field::ReversingValve, "none") => "Pas de pompe à chaleur",
        (Field::ReversingValve, "in-cooling") => "Alimentée en froid",
        (Field::ReversingValve, "in-heating") => "Alimentée en chauffage",
        (Field::SheetUnits, "C-kg/h-W") => "°C, kg/h, W",
        (Field::SheetUnits, "C-g/s-W") => "°C, g/s, W",
        (Field::SheetUnits, "C-kg/s-W") => "°C, kg/s, W",
        (Field::SheetUnits, "F-lb/h-W") => "°F, lb/h, W",
        (Field::Sensing, "coil-temperature") => "Température de batterie",
        (Field::Sensing, "liquid-pressure") => "Pression de liquide",
        _ => "Choix inconnu",
    }
}

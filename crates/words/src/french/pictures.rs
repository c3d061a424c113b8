//! Round the pictures of a plan, in French.

use crate::pictures::Pictures;

pub(super) const PICTURES: Pictures = Pictures {
    beside: "À côté",
    beside_none: "Aucune autre méthode",
    beside_at: |method, fan, head, holds| {
        let against = if holds {
            "tient"
        } else {
            "sous la pression nécessaire"
        };
        format!("{method}\u{a0}: ventilateur {fan}, pression de condensation {head}, {against}.")
    },
    both_at: |outdoor, first, second| format!("À {outdoor}. {first} {second}"),
    against: "face à la pression nécessaire",
    holds: "tient",
    falls_short: "sous la pression nécessaire",
    no_value: "aucun",

    marker: "Repère, température extérieure",
    marker_note: "Touchez une courbe pour la lire, ou déplacez le repère avec les flèches du clavier.",
    read_at: |outdoor| format!("À {outdoor}"),
    reads: |head, fan| format!("{head}, ventilateur {fan}"),

    diagram: "Diagramme pression-enthalpie",
    diagram_note: "Un tour du fluide, depuis 1 par le compresseur, le condenseur, le détendeur et l’évaporateur. Touchez un point pour le lire. L’enthalpie se compte depuis le liquide à 0 °C (32 °F), qui a 200 kJ/kg (86 Btu/lb).",
    enthalpy: "Enthalpie",
    logarithmic: |unit| format!("Pression, {unit}, logarithmique"),
    dome: "deux phases",
    cycle: "Tour du cycle",
    state: "Point du cycle",
    known: "Point connu",
    low: "Minimum du site",
    known_at: |outdoor| format!("Point connu, {outdoor} dehors"),
    low_at: |outdoor, method| {
        format!(
            "Minimum du site, {outdoor} dehors, {}",
            method.to_lowercase()
        )
    },
    states: [
        "Entrée du compresseur",
        "Sortie du compresseur",
        "Sortie du condenseur",
        "Entrée de l’évaporateur",
    ],
    cycle_in_words: |cycle, suction, head, discharge| {
        format!(
            "{cycle}\u{a0}: évapore à {suction}, condense à {head} et quitte le compresseur à {discharge}."
        )
    },
    no_cycle: |cycle| {
        format!(
            "{cycle}\u{a0}: la basse pression a arrêté le compresseur, il n’y a donc pas de cycle à dessiner."
        )
    },
};

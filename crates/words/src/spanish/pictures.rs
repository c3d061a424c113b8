//! Round the pictures of a plan, in Spanish.

use crate::pictures::Pictures;

pub(super) const PICTURES: Pictures = Pictures {
    beside: "A su lado",
    beside_none: "Ningún otro método",
    beside_at: |method, fan, head, holds| {
        let against = if holds {
            "se mantiene"
        } else {
            "por debajo de la necesaria"
        };
        format!("{method}: ventilador {fan}, presión de condensación {head}, {against}.")
    },
    both_at: |outdoor, first, second| format!("A {outdoor}. {first} {second}"),
    against: "frente a la necesaria",
    holds: "se mantiene",
    falls_short: "por debajo de la necesaria",
    no_value: "ninguno",

    marker: "Marcador, temperatura exterior",
    marker_note: "Toque una curva para leerla, o mueva el marcador con las flechas del teclado.",
    read_at: |outdoor| format!("A {outdoor}"),
    reads: |head, fan| format!("{head}, ventilador {fan}"),

    diagram: "Diagrama presión-entalpía",
    diagram_note: "Una vuelta del refrigerante, desde 1 por el compresor, el condensador, el dispositivo de expansión y el evaporador. Toque un punto para leerlo. La entalpía se cuenta desde el líquido a 0 °C (32 °F), que tiene 200 kJ/kg (86 Btu/lb).",
    enthalpy: "Entalpía",
    logarithmic: |unit| format!("Presión, {unit}, logarítmica"),
    dome: "dos fases",
    cycle: "Ciclo",
    state: "Punto del ciclo",
    known: "Punto conocido",
    low: "Mínima del sitio",
    known_at: |outdoor| format!("Punto conocido, {outdoor} fuera"),
    low_at: |outdoor, method| {
        format!(
            "Mínima del sitio, {outdoor} fuera, {}",
            method.to_lowercase()
        )
    },
    states: [
        "Entrada del compresor",
        "Salida del compresor",
        "Salida del condensador",
        "Entrada del evaporador",
    ],
    cycle_in_words: |cycle, suction, head, discharge| {
        format!(
            "{cycle}: evapora a {suction}, condensa a {head} y sale del compresor a {discharge}."
        )
    },
    no_cycle: |cycle| {
        format!(
            "{cycle}: la baja presión ha parado el compresor, así que no hay ciclo que dibujar."
        )
    },
};

//! A printed plan, in Spanish.

use crate::paper::Paper;

pub(super) static PAPER: Paper = Paper {
    print: "Imprimir",
    test_values: "Valores de prueba",
    test_values_note: |method| {
        format!(
            "{method}: a qué llegan el ventilador y la presión de condensación a medida que hace más frío, para comprobarlo con un medidor y un tacómetro."
        )
    },
    not_ready: "Los valores de prueba todavía no estaban listos. Imprima de nuevo.",
    none: "–",
};

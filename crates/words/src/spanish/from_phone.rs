//! Round an answer that this phone can give, in Spanish.

use crate::from_phone::FromPhone;

pub(super) const FROM_PHONE: FromPhone = FromPhone {
    ask: "Altitud de este teléfono",
    note: "Pide la posición solo cuando se toca, y guarda solo la altura.",
    asking: "Preguntando a este teléfono. Al aire libre va más rápido.",
    filled: "Tomada de este teléfono. La altura por satélite puede errar en 100 m (330 ft).",
    filled_within: |span| {
        format!(
            "Tomada de este teléfono, que la da por buena con un margen de {span}. La altura por satélite puede errar además en 100 m (330 ft)."
        )
    },
    no_altitude: "Este teléfono no sabe a qué altura está. Introduzca la altitud a mano.",
    refused: "Este teléfono no lo permitió. Introduzca la altitud a mano.",
    not_found: "Este teléfono no encontró su posición. Pruebe de nuevo al aire libre, o introduzca la altitud a mano.",
    unavailable: "Este navegador no da la posición. Introduzca la altitud a mano.",
};

//! A printed plan, in French.

use crate::paper::Paper;

pub(super) static PAPER: Paper = Paper {
    print: "Imprimer",
    test_values: "Valeurs d’essai",
    test_values_note: |method| {
        format!(
            "{method}\u{a0}: où arrivent le ventilateur et la pression de condensation à mesure qu’il fait plus froid, à contrôler avec un multimètre et un tachymètre."
        )
    },
    not_ready: "Les valeurs d’essai n’étaient pas encore prêtes. Imprimez de nouveau.",
    none: "–",
};

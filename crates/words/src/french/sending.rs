//! Sending and receiving, in French.

use crate::sending::Sending;
use crate::units::signed;

pub(super) static SENDING: Sending = Sending {
    show_code: "Montrer le code QR",
    hide_code: "Masquer le code QR",
    code: |name| format!("Code QR du lien vers {name}"),
    code_note: "Pointez dessus l’appareil photo de l’autre téléphone. Le code contient tout le système.",
    code_too_long: |length, most| {
        let (length, most) = (signed(&length.to_string()), signed(&most.to_string()));
        format!(
            "Ce lien est trop long pour un code QR lisible par un téléphone\u{a0}: {length} caractères, pour {most} au plus. Copiez le lien ou enregistrez un fichier."
        )
    },
    save_file: "Enregistrer comme fichier",
    file_note: "Le fichier contient la même chose que le lien. Ouvrez-le sur l’écran des sites.",
    open_file: "Ouvrir le fichier d’un système",
    open_file_note: "Un fichier enregistré par «\u{a0}Enregistrer comme fichier\u{a0}». Rien n’est gardé avant que vous le disiez.",
    file_unreadable: "Ce fichier n’a pas pu être lu. Choisissez-le de nouveau.",
    file_too_large: "Ce fichier contient plus qu’un système. Il n’a pas été ouvert.",
    file_holds_nothing: "Ce fichier ne contient aucun système. Choisissez-en un enregistré par «\u{a0}Enregistrer comme fichier\u{a0}».",
    differences: "Ce qui diffère",
    differences_note: |name| {
        format!("Par rapport à {name}, déjà présent sur ce site. Gardez ou prenez chaque réponse.")
    },
    same: "Il est identique au système de ce nom sur ce site. Il n’y a rien à fusionner.",
    here: "Ici",
    arrived: "Reçu",
    keep: "Garder",
    take: "Prendre",
    keep_or_take: |question| format!("Garder ou prendre\u{a0}: {question}"),
    merge: "Fusionner",
    save_apart: "Enregistrer à part",
    no_answer: "sans réponse",
};

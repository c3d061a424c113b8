//! Putting the app on the home screen and finding a site again, in French.

use crate::install::Install;

pub(super) static INSTALL: Install = Install {
    title: "Sur l’écran d’accueil",
    why: "De là, Winterset s’ouvre comme toute autre application, avec ou sans réseau.",
    install: "Ajouter à l’écran d’accueil",
    by_hand: "Ouvrez le menu du navigateur, ou son bouton de partage, et choisissez «\u{a0}Sur l’écran d’accueil\u{a0}» ou «\u{a0}Installer\u{a0}».",
    dismiss: "Ne plus montrer ceci",
    find_site: "Trouver un site par son nom",
    no_site: "Aucun site de ce nom sur ce téléphone.",
    found: |count| match count {
        1 => "1 site".to_owned(),
        count => format!("{count} sites"),
    },
    recent_first: "Le dernier ouvert est en tête.",
};

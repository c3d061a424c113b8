//! Round an answer that this phone can give, in French.

use crate::from_phone::FromPhone;

pub(super) const FROM_PHONE: FromPhone = FromPhone {
    ask: "Altitude de ce téléphone",
    note: "Ne demande la position que si vous touchez, et ne garde que la hauteur.",
    asking: "Demande à ce téléphone. Dehors, c’est plus rapide.",
    filled: "Reprise de ce téléphone. La hauteur par satellite peut s’écarter de 100 m (330 ft).",
    filled_within: |span| {
        format!(
            "Reprise de ce téléphone, qui la croit juste à {span} près. La hauteur par satellite peut s’écarter de 100 m (330 ft) en plus."
        )
    },
    no_altitude: "Ce téléphone ne sait pas à quelle hauteur il est. Saisissez l’altitude à la main.",
    refused: "Ce téléphone ne l’a pas permis. Saisissez l’altitude à la main.",
    not_found: "Ce téléphone n’a pas trouvé sa position. Réessayez dehors, ou saisissez l’altitude à la main.",
    unavailable: "Ce navigateur ne donne pas la position. Saisissez l’altitude à la main.",
};

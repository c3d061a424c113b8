//! What stands on the screens, in French.

use crate::screen::Screen;

/// The labels in French.
pub static SCREEN: Screen = Screen {
    places: "Rubriques",
    sites: "Sites",
    worksheets: "Fiches de calcul",
    settings: "Réglages",

    about: "Winterset calcule comment maintenir par grand froid la pression de condensation d’un système refroidi par air, et explique pourquoi, sans réseau.",
    load_demo: "Ouvrir un site de démonstration",
    demo_note: "Des sites inventés, pour regarder. Rien ne quitte ce téléphone.",
    new_site: "Nouveau site",
    site_name: "Nom du site",
    systems: "Systèmes",
    no_systems: "Un système est un circuit frigorifique avec son condenseur. Ajoutez le premier.",
    add_system: "Ajouter un système",
    system_name: "Nom du système",
    unnamed_site: "Site sans nom",
    unnamed_system: "Système sans nom",
    remove_site_act: "Supprimer ce site",
    remove_system_act: "Supprimer ce système",
    remove_site: |name| format!("Supprimer {name} avec tous ses systèmes\u{a0}? C’est définitif."),
    remove_system: |name| format!("Supprimer {name}\u{a0}? C’est définitif."),
    keep: "Garder",
    systems_count: |count| match count {
        0 => "pas encore de système".to_owned(),
        1 => "1 système".to_owned(),
        count => format!("{count} systèmes"),
    },
    unreadable_site: "Un site enregistré est illisible. Il reste tel quel, intact\u{a0}:",
    nowhere: "Il n’y a rien à cette adresse.",
    gone_site: "Ce site n’est pas sur ce téléphone.",
    gone_system: "Ce système n’est pas sur ce téléphone.",
    to_sites: "Aller aux sites",

    inputs: "Données",
    answer: "Réponse",
    essentials: "Ce qu’il faut pour un plan",
    essentials_note: "Un champ vide prend la valeur habituelle, soulignée en tirets.",
    assumed: "Supposé\u{a0}: remplacez ce que vous savez",
    assumed_note: "Chaque réponse rapproche le plan de ce système.",
    assume: "supposer",
    usual: |range| format!("habituel {range}"),
    not_known: "Inconnu",
    choose: "Choisir",
    change_sign: |question| format!("Changer le signe\u{a0}: {question}"),
    unit_of: |question| format!("Unité\u{a0}: {question}"),
    instead: |question| format!("Plutôt\u{a0}: {question}"),

    see_plan: "Voir le plan",
    change_inputs: "Changer les données",
    missing_note: "Le plan commence dès que ceci est connu\u{a0}:",
    planless: "Pas encore de plan",
    site_low: "minimum du site",
    hold_limit: "limite de froid",
    on_this_page: "Sur cette page",
    settings_sheet: "Fiche de réglage",
    settings_all_the_same: "Si la variation de vitesse est montée malgré tout",
    settings_sheet_note: "Valeurs à entrer sur le régulateur. Touchez-en une pour sa raison et son calcul.",
    working: "Calcul",
    equation: "Équation",
    terms: "Données",
    source: "Source",
    ladder: "Échelle de froid",
    ladder_note: "Touchez un échelon pour le lire.",
    outdoor: "extérieur",
    outdoor_now: "Température extérieure du moment",
    outdoor_now_note: "facultatif\u{a0}: situe ce jour sur l’échelle",
    fan: "ventilateur",
    head_pressure: "pression de condensation",
    need: "nécessaire",
    method: "Méthode",
    curves: "Courbes",
    curves_note: "Selon la température extérieure, à côté d’un système sans régulation.",
    fan_speed: "vitesse du ventilateur",
    table: "La même chose en tableau",
    pressure_need: "Pression nécessaire",
    known_point: "Point connu",
    hold_limits: "Limites de froid",
    values_used: "Valeurs utilisées",
    values_used_note: "Touchez-en une pour la remplacer.",
    entered_form: "saisi",
    assumed_form: "supposé",

    send: "Envoyer ce système",
    send_note: "Le lien porte lui-même tout le système. Aucun serveur ne le garde\u{a0}; qui a le lien peut le lire.",
    copy_link: "Copier le lien",
    copied: "Lien copié.",
    copy_by_hand: "Ce navigateur n’a pas laissé copier le lien. Sélectionnez-le ici et copiez-le\u{a0}:",
    link: "Lien",
    share: "Partager",
    share_failed: "Le lien n’a pas été partagé. Copiez-le.",
    arrived: "Un système est arrivé",
    arrived_note: "Rien n’est encore enregistré.",
    save_to: "Enregistrer dans",
    save: "Enregistrer",
    discard: "Abandonner",
    bad_link: "Ce lien est illisible",

    saturation: "Saturation",
    refrigerant: "Fluide frigorigène",
    temperature: "Température",
    pressure: "Pression relative",
    estimated: "est.\u{a0}: pour une paire de composants de ce mélange, aucun paramètre n’est publié, et une règle de combinaison en tient lieu. Les pressions peuvent s’écarter d’un dixième et plus là où cette paire forme l’essentiel du mélange.",
    bubble: "bulle",
    dew: "rosée",
    glide: "glissement",
    from_temperature: "De la température à la pression",
    from_pressure: "De la pression à la température",
    elevation: "Altitude",
    gauge_note: |air| {
        format!("À cette altitude, la pression relative se compte depuis {air} d’air.")
    },

    language: "Langue",
    unit_of_temperature: "Température",
    unit_of_pressure: "Pression",
    theme: "Apparence",
    theme_auto: "Comme le téléphone",
    theme_light: "Claire",
    theme_dark: "Sombre",
    theme_sunlight: "Plein soleil",
    offline: "Sans réseau",
    offline_unavailable: "À cette adresse, l’application a besoin du réseau pour s’ouvrir. Par https elle s’en passe.",
    offline_preparing: "Préparation du travail sans réseau.",
    offline_ready: "Fonctionne maintenant sans réseau.",
    offline_failed: "L’application n’a pas pu être gardée pour le travail sans réseau. Ouvrez-la de nouveau avec le réseau.",
    new_version: "Une nouvelle version est prête.",
    use_new_version: "L’utiliser",
    not_saved: "Non enregistré\u{a0}:",
    storage_full: "la mémoire du navigateur est pleine. Supprimez un site ou libérez de la place, puis changez quelque chose pour enregistrer de nouveau.",
    storage_refused: "ce navigateur ne garde rien pour cette page. Autorisez les données de sites, ou copiez le lien pour garder un système.",
    defers: "Winterset conseille. Les règles locales, les instructions du fabricant et le travail de personnes habilitées passent d’abord.",
    demo_site: "Site de démonstration",
    a_new_site: "Un nouveau site",
    other_refrigerant: "Un autre, ou un mélange en masse",
    choose_from_list: "Choisir dans la liste",
    help_on: |question| format!("À propos\u{a0}: {question}"),
    worked_out: "calculé",
    left_out: "laissé de côté",
    planless_for: |count| match count {
        1 => "Pas encore de plan\u{a0}: une réponse à revoir.".to_owned(),
        count => format!("Pas encore de plan\u{a0}: {count} réponses à revoir."),
    },
    replace_assumed: |count| match count {
        0 | 1 => format!("Données\u{a0}: {count} supposée"),
        count => format!("Données\u{a0}: {count} supposées"),
    },
    verdict: "Conclusion",
    step_sense: "Où mesurer",
    step_points: "Que saisir",
    step_motor: "Ventilateur et moteur",
    sense: "Mesurer",
    minimum_voltage: "Au moteur, minimum",
    minimum_voltage_reason: "Ce qu’un voltmètre en valeur efficace vraie y montre à la sortie minimale.",
    need_reason: |part, condensing| {
        format!("Fixée par {part}. Condensation à {condensing} (rosée).")
    },
    stage: |place| format!("Pressostat {place}\u{a0}: arrêt à, marche à"),
    cycled: |method| format!("Plutôt\u{a0}: {method}"),
    fan_full: "pleine vitesse",
    fan_slowing: "ralenti",
    fan_minimum: "au minimum",
    fan_cycling: "par cycles",
    fan_off: "arrêté",
    fan_some: "certains tournent",
    starts_an_hour: "démarrages par heure",
    flooded: "condenseur noyé",
    evaporating: "évaporation",
    superheat: "surchauffe",
    cooling: "puissance frigorifique",
    compressor: "compresseur",
    trips: "arrêté par basse pression",
    working_out: "Calcul en cours.",
    in_heating: "En chauffage",
    at_lowest_load: |share| format!("À {share} de la pleine charge"),
    fan_on: "ventilateur en marche, part du temps",
    fan_share: "vitesse du ventilateur, ou temps de marche, %",
    holds_to: |limit| format!("tient jusqu’à {limit}"),
    now: "en ce moment",
    rung: |outdoor, fan, head, holds| {
        let against = if holds {
            "tient"
        } else {
            "sous la pression nécessaire"
        };
        format!("À {outdoor}\u{a0}: ventilateur {fan}, pression de condensation {head}, {against}.")
    },
    coil: "batterie, à la sonde",
    over_ambient: "écart sur l’air",
    output: "sortie",
    motor_volts: "volts au moteur",
    motor_speed: "vitesse du moteur",
    saws_from: "oscille depuis",
    saws_to: "oscille jusqu’à",
    no_picture: "Le fluide n’a pas de réponse sur une partie de cette plage, il n’y a donc pas d’image.",
    head_summary: |need, limit| {
        format!(
            "Pression de condensation selon la température extérieure. Il faut {need}\u{a0}; cette méthode la maintient jusqu’à {limit}."
        )
    },
    fan_summary: |minimum| {
        format!(
            "Vitesse du ventilateur selon la température extérieure. La variation de vitesse descend jusqu’à {minimum} de sortie."
        )
    },
    number_like: |example| format!("Saisissez un nombre, comme {example}."),
    unit_like: |unit, units| {
        format!("«\u{a0}{unit}\u{a0}» n’est pas une unité ici. Utilisez {units}.")
    },
    two_readings: |whole, decimal| {
        format!(
            "Cela peut se lire {whole} ou {decimal}. Saisissez ainsi celui que vous voulez dire."
        )
    },
    from_to: |low, high| format!("Saisissez une valeur de {low} à {high}."),
    below_critical: |highest| {
        format!(
            "Au-dessus de {highest}, liquide et vapeur ne font qu’un. Saisissez une valeur plus basse."
        )
    },
    above_vacuum: "C’est sous le vide complet. Saisissez une pression plus élevée.",
    sea_level: "niveau de la mer",
    named: |name, text| format!("{name}\u{a0}: {text}"),
};

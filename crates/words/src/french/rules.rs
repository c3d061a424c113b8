//! Names and reasons of the rules, in French.

use winterset_calc::Rule;

use crate::language::RuleWords;

pub(super) fn rule(rule: Rule) -> RuleWords {
    let (name, reason) = match rule {
        Rule::Atmosphere => (
            "Pression de l’air",
            "L’atmosphère type à cette altitude au-dessus du niveau de la mer.",
        ),
        Rule::HeatRejected => (
            "Chaleur rejetée",
            "La puissance frigorifique, plus la chaleur de compression, au point connu.",
        ),
        Rule::HeatRejectedBySheet => (
            "Chaleur rejetée",
            "La puissance frigorifique, plus la puissance du compresseur selon sa fiche, au point connu.",
        ),
        Rule::HeatEntered => ("Chaleur rejetée", "Telle que saisie, au point connu."),
        Rule::AirflowEntered => ("Débit d’air", "Tel que saisi."),
        Rule::AssumedAirflow => (
            "Débit d’air",
            "Un condenseur habituel\u{a0}: son air sort aux six dixièmes du chemin vers le milieu de la condensation.",
        ),
        Rule::DesignCondensing => (
            "Condensation au point connu",
            "La température extérieure plus l’écart de condensation du point connu.",
        ),
        Rule::AirCapacityRate => (
            "Chaleur prise par l’air par kelvin",
            "Masse volumique, débit et chaleur massique de l’air.",
        ),
        Rule::Conductance => (
            "Conductance du condenseur",
            "Ce que la batterie doit être pour refroidir le gaz chaud, le condenser et refroidir le liquide au point connu. Les parts disent combien de batterie prend chacun.",
        ),
        Rule::MeteringNeed => (
            "Pour le détendeur",
            "Grand ouvert, il laisse encore passer à cette pression ce que le compresseur aspire\u{a0}; au-dessous, l’évaporateur est mal alimenté.",
        ),
        Rule::CompressorNeed => (
            "Pour le compresseur",
            "Le plus petit écart habituel entre condensation et évaporation. Saisissez la limite du fabricant si vous l’avez.",
        ),
        Rule::CompressorEntered => (
            "Pour le compresseur",
            "La limite du fabricant, telle que saisie.",
        ),
        Rule::LiquidLineNeed => (
            "Pour la conduite de liquide",
            "À cette pression, la montée et le frottement épuisent juste le sous-refroidissement\u{a0}; au-dessous, du gaz arrive au détendeur.",
        ),
        Rule::EvaporatorNeed => (
            "Pour l’évaporateur",
            "Sous cette pression de condensation, la batterie mal alimentée devient si froide que la glace s’y forme.",
        ),
        Rule::DefrostNeed => (
            "Pour le dégivrage par gaz chaud",
            "La batterie à dégivrer doit condenser bien au-dessus du gel, et le gaz doit y parvenir.",
        ),
        Rule::ReclaimNeed => (
            "Pour la récupération de chaleur",
            "La température que veut celui qui utilise la chaleur.",
        ),
        Rule::GoverningNeed => (
            "Pression nécessaire",
            "La partie la plus exigeante la fixe.",
        ),
        Rule::FullSpeedPressure => (
            "Point de pleine vitesse, pression",
            "La plage de modulation repose sur la pression nécessaire\u{a0}; en haut de la plage, le ventilateur est à pleine vitesse.",
        ),
        Rule::FullSpeedCoil => (
            "Point de pleine vitesse, température de batterie",
            "Ce que voit une sonde à mi-condensation à cette pression.",
        ),
        Rule::ThrottlingRange => (
            "Plage de modulation",
            "De la pression nécessaire à la sortie minimale jusqu’au point de pleine vitesse.",
        ),
        Rule::LowestSpeed => ("Vitesse minimale", "Ce que le palier supporte durablement."),
        Rule::MinimumOutput => (
            "Sortie minimale",
            "La tension à laquelle le moteur garde sa vitesse minimale contre le ventilateur, dans l’air froid du minimum de ce site.",
        ),
        Rule::StallSpeed => (
            "Vitesse minimale",
            "Celle du ventilateur à la plus basse tension qui le garde en rotation dans le froid. Le palier seul permettrait moins.",
        ),
        Rule::StallOutput => (
            "Sortie minimale",
            "La plus basse tension à laquelle le moteur garde son ventilateur en rotation contre la graisse froide et l’air dense du minimum de ce site. Le palier seul permettrait moins, mais en dessous le ventilateur cale.",
        ),
        Rule::MinimumSignalVolts => (
            "Signal minimal, 0 à 10 V",
            "Sur une entrée qui commence à 1 V et donne la pleine vitesse à 10 V. Ce que dit la fiche du moteur passe d’abord.",
        ),
        Rule::MinimumSignalDuty => (
            "Signal minimal, largeur d’impulsion",
            "La part du temps où le signal est actif, quand toujours actif donne la pleine vitesse. Ce que dit la fiche du moteur passe d’abord.",
        ),
        Rule::LowestFrequency => (
            "Fréquence minimale",
            "À régler sur le variateur comme limite basse\u{a0}: la part de la fréquence du réseau que le palier supporte durablement.",
        ),
        Rule::MinimumSignal => (
            "Signal minimal",
            "La part de la pleine vitesse que le palier supporte durablement.",
        ),
        Rule::StartBoost => (
            "Impulsion de démarrage",
            "Pleine sortie jusqu’à ce que le ventilateur soit lancé, avec la graisse froide et l’air que le vent pousse à contresens, et moitié plus car son inertie est une estimation. Un palier lisse reçoit plus. À la sortie minimale, le moteur peut ne pas démarrer à l’arrêt.",
        ),
        Rule::OnOffPoints => (
            "Arrêt à, marche à",
            "Arrêt à la pression nécessaire, marche une plage de modulation au-dessus.",
        ),
        Rule::StagePoints => (
            "Étage\u{a0}: arrêt à, marche à",
            "Les ventilateurs s’arrêtent l’un après l’autre, le dernier à la pression nécessaire\u{a0}; un tourne toujours.",
        ),
        Rule::HoldLimit => (
            "Limite de froid",
            "La température extérieure à laquelle le plus petit débit d’air et le plus grand noyage de la méthode gardent tout juste la pression nécessaire.",
        ),
        Rule::Condensing => (
            "Température de condensation",
            "Celle à laquelle la batterie cède toute la chaleur à ce débit d’air.",
        ),
        Rule::AssumedFanPower => (
            "Puissance des ventilateurs",
            "Une part habituelle de la chaleur rejetée.",
        ),
    };
    RuleWords { name, reason }
}

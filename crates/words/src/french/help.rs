//! What each value and each answer is, how to find it, and what is typical, in French.

use winterset_calc::{Field, Rule};

use crate::help::{FindWords, HelpLabels, HelpWords, RungValue};

pub(super) static LABELS: HelpLabels = HelpLabels {
    what: "Ce que c’est",
    measure: "Comment le mesurer",
    typical: "Ce qui est habituel",
    on_a_rung: "Ce que sont ces valeurs",
    how_to_find: "Où le trouver",
    find: "Où le lire ou le mesurer",
    blank: "Laissé vide",
    blank_is: |assumed| format!("Supposé\u{a0}: {assumed}."),
    blank_worked_out: "Calculé à partir des autres réponses.",
    blank_left_out: "Laissé de côté.",
    blank_is_not: "Sans cela, pas de plan.",
};

pub(super) fn rule(rule: Rule) -> HelpWords {
    let (what, measure, typical) = match rule {
        Rule::Atmosphere => (
            "Le poids de l’air au-dessus du site, depuis lequel se compte la pression relative.",
            "Un baromètre ou une station météo sur place la montre\u{a0}; prenez la pression de la station, non celle ramenée au niveau de la mer.",
            "Environ 1\u{a0}% de moins par 85 m (280 ft) d’altitude\u{a0}; le temps la déplace de 3\u{a0}% de part et d’autre.",
        ),
        Rule::HeatRejected | Rule::HeatRejectedBySheet | Rule::HeatEntered => (
            "Ce que le condenseur doit céder\u{a0}: la chaleur du local et le travail du compresseur.",
            "Mesurez ce que prend le compresseur et ajoutez la puissance frigorifique, ou prenez le débit et l’échauffement de l’air du condenseur.",
            "De 1,2 à 1,35 fois la puissance frigorifique en local et en chambre froide, de 1,4 à 1,7 fois en congélateur.",
        ),
        Rule::AirflowEntered | Rule::AssumedAirflow => (
            "L’air que déplacent tous les ventilateurs du condenseur à pleine vitesse.",
            "Faites la moyenne de nombreux relevés d’anémomètre sur la face de la batterie et multipliez par l’aire de la face.",
            "De 0,08 à 0,15 m³/s par kilowatt rejeté (50 à 95 cfm par 1000 Btu/h).",
        ),
        Rule::DesignCondensing => (
            "La température de condensation du relevé d’après lequel le condenseur est dimensionné.",
            "Lisez la pression de condensation, ventilateurs à pleine vitesse un jour stable, et prenez la température de rosée qui lui répond.",
            "De 8 à 17 K (15 à 30 °F) au-dessus de l’air extérieur.",
        ),
        Rule::AirCapacityRate => (
            "La chaleur que l’air du condenseur prend par kelvin d’échauffement.",
            "Elle suit du débit et de la masse volumique de l’air\u{a0}; il n’y a rien à lire sur place.",
            "Environ 1,2 kW par kelvin et m³/s d’air près du niveau de la mer.",
        ),
        Rule::Conductance => (
            "La chaleur que la batterie passe par kelvin entre le fluide et l’air.",
            "Elle suit du point connu\u{a0}; un second relevé de l’écart à une autre charge dit si elle vaut encore.",
            "Elle baisse quand les ailettes se couchent et s’encrassent.",
        ),
        Rule::MeteringNeed => (
            "La pression de condensation sous laquelle le détendeur, grand ouvert, alimente trop peu.",
            "Laissez tomber lentement la pression de condensation\u{a0}: c’est là que la surchauffe commence à monter à charge stable.",
            "La plus haute pour un orifice fixe ou classique, moindre pour un orifice équilibré, la plus basse pour un détendeur électronique.",
        ),
        Rule::CompressorNeed | Rule::CompressorEntered => (
            "La plus basse pression de condensation à laquelle le compresseur peut tourner.",
            "Lisez-la dans le domaine d’emploi du fabricant à votre température d’évaporation\u{a0}; elle ne se cherche pas par essai.",
            "Condensation de 10 à 30 °C (50 à 85 °F), plus haute pour une évaporation plus haute.",
        ),
        Rule::LiquidLineNeed => (
            "La pression de condensation sous laquelle le liquide bout dans sa conduite avant le détendeur.",
            "Regardez le voyant avant le détendeur, ou comparez-y la température de la conduite et la pression au point de bulle.",
            "Basse si la conduite est courte et de niveau\u{a0}; elle compte si le détendeur est bien plus haut que le condenseur.",
        ),
        Rule::EvaporatorNeed => (
            "La pression de condensation sous laquelle la batterie intérieure mal alimentée devient assez froide pour givrer.",
            "Prenez le point le plus froid de la batterie avec une sonde à pince, pression d’aspiration basse.",
            "Elle compte en local, où la batterie doit rester sans glace\u{a0}; les chambres plus froides dégivrent de toute façon.",
        ),
        Rule::DefrostNeed => (
            "La pression de condensation qu’il faut au gaz chaud pour fondre la glace.",
            "Chronométrez un dégivrage par temps froid et voyez si la dernière glace part.",
            "Condensation de 15 à 25 °C (60 à 75 °F) pendant le dégivrage.",
        ),
        Rule::ReclaimNeed => (
            "La pression de condensation à laquelle la chaleur est assez chaude pour celui qui l’utilise.",
            "Mesurez la température que reçoit celui qui utilise la chaleur et ajoutez ce que perd l’échangeur.",
            "Condensation de 30 à 50 °C (85 à 120 °F).",
        ),
        Rule::GoverningNeed => (
            "La plus basse pression de condensation avec laquelle ce système peut vivre\u{a0}: celle de sa partie la plus exigeante.",
            "Laissez-la tomber lentement et suivez surchauffe, voyant et pression d’aspiration\u{a0}; le premier qui se dérègle est à la pression nécessaire.",
            "Condensation de 15 à 32 °C (60 à 90 °F).",
        ),
        Rule::FullSpeedPressure => (
            "La pression de condensation à partir de laquelle le ventilateur tourne à pleine vitesse.",
            "Avec un manomètre sur la conduite de liquide, notez la pression où la vitesse ne monte plus.",
            "Une plage de modulation au-dessus de la pression nécessaire.",
        ),
        Rule::FullSpeedCoil => (
            "La température à la sonde de batterie à partir de laquelle le ventilateur tourne à pleine vitesse.",
            "Lisez la valeur de la sonde même, ou d’une seconde sonde sanglée à côté, quand le ventilateur atteint la pleine vitesse.",
            "De 20 à 40 °C (70 à 105 °F).",
        ),
        Rule::ThrottlingRange => (
            "De combien la valeur mesurée bouge quand le ventilateur va de la sortie minimale à la pleine sortie.",
            "Notez la valeur mesurée à la sortie minimale et à pleine vitesse\u{a0}; l’écart est la plage.",
            "De 4 à 10 K (8 à 18 °F) de température de condensation.",
        ),
        Rule::LowestSpeed | Rule::StallSpeed => (
            "Le plus lentement que le moteur du ventilateur peut tourner durablement.",
            "Un tachymètre sur l’arbre ou un stroboscope sur les pales à la sortie minimale.",
            "Un cinquième de la pleine vitesse à roulements à billes, deux cinquièmes à paliers lisses, sauf avis du fabricant du moteur.",
        ),
        Rule::MinimumOutput | Rule::StallOutput => (
            "Le moins que le régulateur peut donner au moteur, en part de la tension d’alimentation.",
            "Un appareil en valeur efficace vraie au moteur, valeur mesurée sous la plage\u{a0}; un appareil en valeur moyenne montre autre chose.",
            "De 20 à 45\u{a0}% de la tension\u{a0}; cela dépend du moteur, du palier et du poids de l’air froid.",
        ),
        Rule::MinimumSignal
        | Rule::MinimumSignalVolts
        | Rule::MinimumSignalDuty
        | Rule::LowestFrequency => (
            "Le plus petit signal que reçoit le moteur ou le variateur, en part du plein.",
            "Un voltmètre continu sur la paire de signal, ou la fréquence à l’afficheur du variateur.",
            "D’un cinquième à deux cinquièmes du plein\u{a0}; beaucoup de moteurs électroniques s’arrêtent sous un dixième.",
        ),
        Rule::StartBoost => (
            "Combien de temps le moteur reçoit la pleine sortie quand il démarre à l’arrêt.",
            "Arrêtez le ventilateur par la sonde simulée, laissez-le démarrer et chronométrez la pleine tension.",
            "De 0,5 à 5 s\u{a0}: plus pour de grands ventilateurs, des paliers lisses à l’huile froide et épaisse, et contre le vent.",
        ),
        Rule::OnOffPoints => (
            "Les pressions de condensation auxquelles un pressostat arrête le ventilateur et le relance.",
            "Avec un manomètre sur la prise du pressostat, notez la pression à chaque déclic.",
            "Écartées de 4 à 10 K (8 à 18 °F) de température de condensation\u{a0}; plus près, le ventilateur démarre trop souvent.",
        ),
        Rule::StagePoints => (
            "Les pressions de condensation auxquelles le pressostat d’un ventilateur parmi plusieurs l’arrête et le relance.",
            "Avec un manomètre sur la prise du pressostat, notez la pression à chaque déclic, un pressostat après l’autre.",
            "Des différentiels de 2 à 5 K (4 à 9 °F) de température de condensation, chaque étage un peu sous le précédent.",
        ),
        Rule::HoldLimit => (
            "La plus basse température extérieure à laquelle la méthode garde encore la pression nécessaire.",
            "Les jours les plus froids, notez température extérieure et pression de condensation, ventilateur à son minimum\u{a0}; sous la limite, la pression ne suffit plus.",
            "La pleine vitesse seule tient jusqu’à 5 à 20 °C (40 à 70 °F)\u{a0}; ralentir gagne encore 15 à 30 K (30 à 55 °F).",
        ),
        Rule::Condensing => (
            "La température de rosée à la pression de condensation.",
            "Lisez la pression de condensation et prenez la température de rosée qui lui répond.",
            "De 8 à 17 K (15 à 30 °F) au-dessus de l’air extérieur, ventilateurs à pleine vitesse.",
        ),
        Rule::AssumedFanPower => (
            "Ce que prennent tous les ventilateurs du condenseur à pleine vitesse.",
            "Un wattmètre dans l’alimentation des ventilateurs, compresseur arrêté si le contacteur le permet.",
            "De 2 à 4\u{a0}% de la chaleur rejetée.",
        ),
    };
    HelpWords {
        what,
        measure,
        typical,
    }
}

pub(super) fn field(field: Field) -> FindWords {
    let (find, typical) = match field {
        Field::Refrigerant => (
            "Sur la plaque du groupe de condensation\u{a0}; l’étiquette d’une conversion vaut plus que la plaque. La saturation au repos dit si cela se peut.",
            "R-410A ou R-454B en local, R-134a, R-448A ou R-449A en réfrigération.",
        ),
        Field::CoolingCapacity => (
            "Sur la plaque, ou dans la fiche du groupe de condensation à votre température d’évaporation.",
            "Une tonne (12\u{a0}000 Btu/h) fait 3,5 kW. La plupart de ces systèmes ont de 2 à 100 kW.",
        ),
        Field::HeatRejected => (
            "Sur la plaque ou dans la fiche du condenseur même, souvent appelée puissance totale rejetée.",
            "De 1,2 à 1,7 fois la puissance frigorifique.",
        ),
        Field::OutdoorLow => (
            "Du temps des hivers passés, d’une table de base du lieu ou d’un fichier météo du site.",
            "Comptez sur la nuit la plus froide de dix ans plutôt que d’un seul.",
        ),
        Field::Metering => (
            "Regardez l’entrée de l’évaporateur\u{a0}: un bulbe sur l’aspiration veut dire thermostatique, un câble à une tête veut dire électronique, ni l’un ni l’autre orifice fixe.",
            "Un détendeur thermostatique en réfrigération et sur les grands splits, un orifice fixe sur les petits.",
        ),
        Field::Motor => (
            "Lisez la plaque du moteur et suivez ses fils jusqu’à un condensateur, un boîtier électronique ou aucun.",
            "Condensateur permanent sur les petites unités, triphasé sur les grandes, commutation électronique sur les récentes.",
        ),
        Field::Bearing => (
            "La plaque ou la fiche du moteur dit billes ou lisse\u{a0}; un moteur à deux bagues blindées sur l’arbre a des roulements à billes.",
            "Roulements à billes si l’arbre est vertical, paliers lisses sur beaucoup de petits moteurs.",
        ),
        Field::Voltage => (
            "Mesurez au ventilateur pendant qu’il tourne\u{a0}; la plaque dit ce que ce devrait être.",
            "On trouve 120, 208, 230, 277, 400, 460 ou 575 V.",
        ),
        Field::Duty => (
            "Ce qui est tenu au froid, par la température de son air\u{a0}: au-dessus de 15 °C (60 °F) environ, au-dessus du gel, ou au-dessous.",
            "Locaux et armoires de 18 à 27 °C (65 à 80 °F), chambres et caves de 0 à 12 °C (32 à 54 °F), congélateurs vers −20 °C (−4 °F).",
        ),
        Field::OverAmbient => (
            "Tous les ventilateurs à pleine vitesse et charge stable, prenez la température de rosée à la pression de condensation, et à l’ombre l’air entrant dans la batterie.",
            "De 8 K (15 °F) en congélateur, 10 K (18 °F) en chambre froide, 15 K (27 °F) en split, un peu plus si le fluide a du glissement.",
        ),
        Field::KnownOutdoor => (
            "Un thermomètre à l’ombre dans l’air entrant dans la batterie, à l’heure de ce relevé.",
            "Un jour chaud, pour que le ventilateur soit de lui-même à pleine vitesse.",
        ),
        Field::Evaporating => (
            "Lisez la pression d’aspiration en régime stable et prenez la température de rosée qui lui répond.",
            "Vers 5 °C (40 °F) en local, −7 °C (20 °F) en chambre froide, −30 °C (−22 °F) en congélateur.",
        ),
        Field::Fans => (
            "Comptez les ventilateurs qui soufflent à travers le condenseur de ce circuit.",
            "Un ou deux sur les petites unités, de quatre à douze sur les grandes.",
        ),
        Field::Airflow => (
            "La fiche du condenseur\u{a0}; ou la moyenne d’un anémomètre sur la face de la batterie, multipliée par son aire.",
            "De 0,08 à 0,15 m³/s par kilowatt rejeté (50 à 95 cfm par 1000 Btu/h).",
        ),
        Field::Frequency => (
            "Sur la plaque. C’est celle de tout le réseau.",
            "En Amérique du Nord 60 Hz, en Europe et dans la plupart de l’Asie et de l’Afrique 50 Hz.",
        ),
        Field::RatedSpeed => (
            "Sur la plaque du moteur, en tours par minute.",
            "À 60 Hz, 825, 1075, 1140 ou 1550 tr/min\u{a0}; à 50 Hz, 680, 900 ou 1350 tr/min.",
        ),
        Field::Elevation => (
            "Une carte, ou ce téléphone.",
            "La plupart des lieux sont sous 500 m (1600 ft), où elle compte peu.",
        ),
        Field::Sensing => (
            "Dans la fiche du régulateur\u{a0}: s’il prend une sonde de température ou un transmetteur de pression.",
            "Température de batterie sur les splits, pression en réfrigération et pour les mélanges à glissement.",
        ),
        Field::ThrottlingRange => (
            "Dans les réglages du régulateur, où elle peut s’appeler plage, bande ou étendue.",
            "Commencez au milieu et élargissez-la si le ventilateur pompe.",
        ),
        Field::CompressorLowest => (
            "Le diagramme du domaine d’emploi dans la fiche du compresseur\u{a0}: son bord inférieur à votre température d’évaporation.",
            "De 10 à 30 °C (50 à 85 °F), plus haute pour une évaporation plus haute.",
        ),
        Field::ModulatedFans => (
            "Suivez les fils du régulateur aux ventilateurs et comptez ceux qui sont derrière lui\u{a0}; les autres sont sur des contacteurs.",
            "Tous\u{a0}; sur les longs condenseurs, souvent un ou deux au bout d’où sort le liquide.",
        ),
        Field::CompressorHighest => (
            "Le diagramme du domaine d’emploi dans la fiche du compresseur\u{a0}: son bord supérieur à votre température d’évaporation.",
            "De 50 à 65 °C (120 à 150 °F), plus basse pour une évaporation plus basse.",
        ),
        Field::ReturnAir => (
            "Un thermomètre dans l’air entrant dans la batterie intérieure.",
            "La température du local, un peu plus près de lampes ou de machines.",
        ),
        Field::FanPower => (
            "Un wattmètre dans l’alimentation des ventilateurs à pleine vitesse, ou la somme des plaques.",
            "De 2 à 4\u{a0}% de la chaleur rejetée.",
        ),
        Field::ReturnHumidity => (
            "Un hygromètre dans l’air entrant dans la batterie intérieure.",
            "De 40 à 55\u{a0}% en local, de 70 à 90\u{a0}% en chambre froide.",
        ),
        Field::IndoorAirflow => (
            "La fiche de l’unité intérieure, à la vitesse où son ventilateur est réglé.",
            "Environ 0,05 m³/s par kilowatt de froid (400 cfm par tonne).",
        ),
        Field::LiquidLength => (
            "Mesurez au pas ou prenez le plan\u{a0}; ajoutez pour chaque coude et vanne une longueur droite d’une table de manuel.",
            "De 5 à 30 m (15 à 100 ft).",
        ),
        Field::LiquidLift => (
            "Comptez les étages ou mesurez\u{a0}: la hauteur du détendeur moins celle de la sortie du condenseur.",
            "Environ 3 m (10 ft) par étage\u{a0}; sous zéro si le condenseur est sur le toit.",
        ),
        Field::LiquidDiameter => (
            "Mesurez l’extérieur au pied à coulisse et ôtez deux fois la paroi, ou cherchez dans une table de tubes.",
            "De 8 à 20 mm (tube de 3/8 à 7/8 de pouce).",
        ),
        Field::FullLoad => (
            "L’intensité nominale (FLA) sur la plaque du moteur. Une pince à pleine vitesse montre à peu près autant.",
            "De 0,5 à 3 A sur les petits ventilateurs.",
        ),
        Field::Subcooling => (
            "La température de bulle à la pression de condensation, moins une sonde à pince sur la conduite de liquide au condenseur.",
            "De 3 à 8 K (5 à 15 °F).",
        ),
        Field::CapacityControl => (
            "Suivez les fils\u{a0}: des contacteurs seuls veulent dire tout ou rien, ou des étages s’il y a plusieurs compresseurs\u{a0}; une bobine sur une vanne du compresseur veut dire réduction\u{a0}; un variateur, vitesse variable.",
            "Tout ou rien sur les petits groupes, étages sur les grands, vitesse variable sur bien des splits récents.",
        ),
        Field::CompressorStages => (
            "Comptez les compresseurs de ce circuit qui peuvent tourner sans les autres.",
            "2, ou 3 à 4 sur les grandes installations.",
        ),
        Field::LowestLoad => (
            "Dans les réglages d’étages, de réduction ou de variateur des compresseurs\u{a0}: le moins à quoi ils tournent.",
            "50\u{a0}% à deux étages, 25 à 30\u{a0}% avec variateur, 100\u{a0}% pour un compresseur en tout ou rien.",
        ),
        Field::HeatReclaim => (
            "Demandez à celui qui utilise la chaleur quelle température il lui faut, et ajoutez ce que perd l’échangeur.",
            "De 30 à 50 °C (85 à 120 °F).",
        ),
        Field::Defrost => (
            "Regardez un dégivrage ou lisez le régulateur\u{a0}: une vanne de gaz chaud s’ouvre, ou des résistances prennent du courant.",
            "À l’air en chambre froide, électrique en congélateur, par gaz chaud sur les grandes centrales.",
        ),
        Field::BelowMinimum => (
            "Dans les instructions du régulateur, où cela peut s’appeler vitesse minimale ou coupure.",
            "La plupart continuent de tourner tant qu’aucune coupure n’est réglée.",
        ),
        Field::ReversingValve => (
            "Sur le schéma électrique de l’unité\u{a0}; ou mesurez à la bobine de la vanne pendant le chauffage.",
            "Plus d’unités l’alimentent en froid qu’en chauffage.",
        ),
        Field::FlowCoefficients | Field::PowerCoefficients => (
            "Dans le logiciel de sélection ou la fiche du fabricant du compresseur, pour votre fluide et votre fréquence.",
            "Dix nombres\u{a0}; les premiers sont les grands.",
        ),
        Field::SheetUnits => (
            "En tête de la table de coefficients.",
            "Les fiches d’Amérique du Nord donnent °F et lb/h, les autres °C et kg/h ou g/s.",
        ),
        Field::SheetSuperheat => (
            "En tête ou au pied de la table de coefficients.",
            "On trouve 11,1 K (20 °F) ou 10 K.",
        ),
        Field::Recirculation => (
            "Comparez l’air à la face de la batterie à l’air quelques pas plus loin\u{a0}: l’écart sur l’échauffement de l’air dans la batterie est la part.",
            "Aucune en plein air, de 5 à 20\u{a0}% dans un coin, sous un toit ou entre des unités.",
        ),
        Field::Dirt => (
            "Regardez à travers les ailettes à contre-jour, et comparez l’écart de condensation avant et après un lavage.",
            "Aucun après un lavage, jusqu’à 30\u{a0}% sur une batterie jamais lavée.",
        ),
        Field::IdleAirflow => (
            "Ventilateurs arrêtés un jour de vent, faites la moyenne d’un anémomètre sur la face de la batterie et divisez par la même à pleine vitesse.",
            "5\u{a0}% dans une cour abritée, 10\u{a0}% sur un toit habituel, 25\u{a0}% sur une crête ouverte.",
        ),
    };
    FindWords { find, typical }
}

/// What a rung of the ladder answers.
pub fn on_rung(value: RungValue) -> HelpWords {
    match value {
        RungValue::HeadPressure => HelpWords {
            what: "La pression côté haut, à laquelle le fluide se condense.",
            measure: "Un manomètre côté haut, compresseur en marche et stable depuis quelques minutes.",
            typical: "Au besoin de pression ou un peu au-dessus dans le froid, plus haut quand il fait plus chaud dehors.",
        },
        RungValue::Coil => HelpWords {
            what: "Ce que sent une sonde à mi-condensation.",
            measure: "Un thermomètre attaché au coude de la sonde et isolé par-dessus.",
            typical: "La température de saturation de la pression de condensation\u{a0}; pour un mélange à glissement, entre bulle et rosée.",
        },
        RungValue::OverAmbient => HelpWords {
            what: "Température de condensation moins température extérieure.",
            measure: "La pression de condensation lue en température de rosée, moins l’air qui entre dans la batterie, les deux stables.",
            typical: "8 à 17\u{a0}K (15 à 30\u{a0}°F) tous ventilateurs à pleine vitesse, plus quand ils tournent moins vite.",
        },
        RungValue::Output => HelpWords {
            what: "Ce que donne le régulateur, en part de sa pleine sortie.",
            measure: "Sur son afficheur, ou les volts ou le signal du moteur comparés aux pleins.",
            typical: "Pleine par temps chaud, la sortie minimale dans le froid, entre les deux sur la plage de modulation.",
        },
        RungValue::MotorVolts => HelpWords {
            what: "La tension efficace au moteur.",
            measure: "Un appareil à valeur efficace vraie au moteur, par une personne habilitée sous tension\u{a0}; un appareil à moyenne lit trop bas une onde découpée.",
            typical: "La tension d’alimentation à pleine sortie\u{a0}; au minimum, ce que dit la feuille de réglages.",
        },
        RungValue::MotorSpeed => HelpWords {
            what: "À quelle vitesse tourne le moteur du ventilateur.",
            measure: "Un tachymètre ou un stroboscope sur les pales, de l’extérieur de la grille.",
            typical: "Celle de la plaque à pleine sortie, un à deux cinquièmes de celle-ci au moins.",
        },
        RungValue::FanOn => HelpWords {
            what: "Part du temps où tournent les ventilateurs commutés\u{a0}; pour un groupe, part des ventilateurs.",
            measure: "Chronométrez marche et arrêt sur quelques démarrages.",
            typical: "Moins quand il fait plus froid.",
        },
        RungValue::FanSpeed => HelpWords {
            what: "Vitesse des ventilateurs en part de la pleine vitesse.",
            measure: "Un tachymètre ou un stroboscope sur les pales, de l’extérieur de la grille.",
            typical: "Pleine, là où rien ne les ralentit.",
        },
        RungValue::Swing => HelpWords {
            what: "Où la pression de condensation fait demi-tour quand un ventilateur est commuté.",
            measure: "La plus basse et la plus haute sur un manomètre côté haut, sur quelques démarrages.",
            typical: "Aussi large que le différentiel du pressostat, ou un peu plus.",
        },
        RungValue::Starts => HelpWords {
            what: "Combien de fois démarre un ventilateur commuté.",
            measure: "Comptez sur une demi-heure de temps stable.",
            typical: "Moins de dix par heure\u{a0}; davantage use contacteur et moteur.",
        },
        RungValue::Flooded => HelpWords {
            what: "Part du condenseur pleine de liquide.",
            measure: "Touchez ou mesurez le long des coudes\u{a0}: là où ils passent de tiède à froid, le liquide commence.",
            typical: "Rien par temps chaud, presque toute la batterie par très grand froid.",
        },
        RungValue::Evaporating => HelpWords {
            what: "Température à laquelle le fluide bout dans l’évaporateur (rosée).",
            measure: "Un manomètre d’aspiration à la sortie de l’évaporateur, lu en température de rosée.",
            typical: "Celle du point connu tant que l’évaporateur est alimenté, plus froide là où il manque de liquide.",
        },
        RungValue::Superheat => HelpWords {
            what: "De combien le gaz aspiré dépasse sa température de rosée.",
            measure: "Un thermomètre attaché au tube d’aspiration à l’endroit du bulbe, moins la température de rosée de la pression à cet endroit.",
            typical: "4 à 8\u{a0}K (7 à 14\u{a0}°F) en régulation\u{a0}; elle monte là où l’évaporateur manque de liquide.",
        },
        RungValue::Cooling => HelpWords {
            what: "Chaleur que prend l’évaporateur.",
            measure: "Par le débit et les températures de l’air avant et après la batterie\u{a0}; juste sur une batterie sèche seulement.",
            typical: "Un peu plus qu’au point connu dans le froid, tant que l’évaporateur est alimenté.",
        },
    }
}

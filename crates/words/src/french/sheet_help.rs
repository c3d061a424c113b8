//! How the values of the worksheets are measured and what is typical of them, in French.
//!
//! What is typical: common practice, no published source.

use winterset_calc::SheetRule;

use crate::help::FindWords;

/// How a value is measured on a system that stands there, and what is typical.
pub fn measured(rule: SheetRule) -> FindWords {
    let (find, typical) = match rule {
        SheetRule::BubblePressure => (
            "Un manomètre sur un réservoir ou un tube qui ne contient que du liquide, à cette température et au repos.",
            "La même que celle de rosée pour un fluide pur\u{a0}; pour un mélange à glissement, quelques pour cent de plus.",
        ),
        SheetRule::DewPressure => (
            "Un manomètre là où le gaz est sec et tout juste saturé, à cette température.",
            "La même que celle de bulle pour un fluide pur\u{a0}; pour un mélange à glissement, quelques pour cent de moins.",
        ),
        SheetRule::BubbleTemperature => (
            "Un thermomètre sur le tube là où finit la vapeur, isolé par-dessus.",
            "Sous celle de rosée, de la valeur du glissement.",
        ),
        SheetRule::DewTemperature => (
            "Un thermomètre sur le tube là où finit le liquide, isolé par-dessus.",
            "Au-dessus de celle de bulle, de la valeur du glissement.",
        ),
        SheetRule::Glide => (
            "Deux thermomètres le long d’un évaporateur ou d’un condenseur, à la même pression.",
            "Aucun pour un fluide pur, jusqu’à 12\u{a0}K (22\u{a0}°F) pour les mélanges courants.",
        ),
        SheetRule::Superheat => (
            "Un thermomètre sur le tube d’aspiration, isolé par-dessus, et un manomètre au même endroit.",
            "4 à 8\u{a0}K (7 à 14\u{a0}°F) au bulbe d’un détendeur thermostatique\u{a0}; plus au compresseur.",
        ),
        SheetRule::Subcooling => (
            "Un thermomètre sur le tube de liquide, isolé par-dessus, et un manomètre au même endroit.",
            "3 à 8\u{a0}K (5 à 14\u{a0}°F) à la sortie d’un condenseur qui n’est pas noyé.",
        ),
        SheetRule::AirDensity => (
            "Baromètre et thermomètre près du ventilateur.",
            "1,2\u{a0}kg/m³ (0,075\u{a0}lb/ft³) au niveau de la mer et à 20\u{a0}°C (68\u{a0}°F)\u{a0}; un dixième de moins tous les 1000\u{a0}m (3300\u{a0}ft).",
        ),
        SheetRule::FanAirflow => (
            "Un anémomètre à hélice sur toute la face de la batterie, la moyenne multipliée par son aire.",
            "La moitié du débit à demi-vitesse.",
        ),
        SheetRule::FanPressure => (
            "Un manomètre différentiel entre les deux côtés du ventilateur et de sa batterie, prises hors du courant d’air.",
            "Un quart à demi-vitesse.",
        ),
        SheetRule::FanPower => (
            "Un wattmètre au moteur\u{a0}; l’arbre en prend cette valeur fois le rendement du moteur.",
            "Un huitième à demi-vitesse.",
        ),
        SheetRule::Output => (
            "Les volts du moteur comparés à ceux de l’alimentation, tous deux en valeur efficace vraie.",
            "Trois à neuf dixièmes tant qu’un ventilateur est ralenti.",
        ),
        SheetRule::CutVoltage => (
            "Un appareil à valeur efficace vraie au moteur, par une personne habilitée sous tension.",
            "Du minimum de la feuille de réglages à la tension d’alimentation.",
        ),
        SheetRule::MeterVoltage => (
            "Un appareil qui ne dit pas valeur efficace vraie, au même endroit.",
            "Sous la valeur vraie, d’autant plus que la coupe est profonde.",
        ),
        SheetRule::FiringAngle => (
            "Un oscilloscope avec une sonde isolée, par une personne formée.",
            "Aucun à pleine sortie, 90° là où un chauffage garderait la moitié de sa puissance.",
        ),
        SheetRule::MotorSpeed => (
            "Un tachymètre ou un stroboscope sur les pales, de l’extérieur de la grille.",
            "Proche de la plaque jusqu’à deux tiers environ de la tension, puis en chute rapide.",
        ),
        SheetRule::KeepsRunning => (
            "Baissez la sortie pas à pas jusqu’à l’arrêt du ventilateur, la grille en place.",
            "Un quart à la moitié de la tension d’alimentation.",
        ),
        SheetRule::Starts => (
            "Montez la sortie depuis le repos pas à pas jusqu’à ce qu’il démarre seul, la grille en place.",
            "Un tiers à deux tiers de la tension d’alimentation\u{a0}; plus avec une graisse froide.",
        ),
        SheetRule::BearingSpeed => (
            "Le fabricant du moteur le dit.",
            "Un cinquième de la pleine vitesse avec des roulements à billes, deux cinquièmes avec des paliers lisses.",
        ),
        SheetRule::FloodedShare => (
            "Touchez ou mesurez le long des coudes\u{a0}: là où ils passent de tiède à froid, le liquide commence.",
            "Rien par temps chaud, jusqu’à neuf dixièmes par grand froid.",
        ),
        SheetRule::CondenserVolume => (
            "D’après le plan de la batterie\u{a0}: tubes fois leur section intérieure et leur longueur.",
            "Environ 0,4 litre par kilowatt de chaleur (0,004\u{a0}ft³ par 1000\u{a0}Btu/h).",
        ),
        SheetRule::FloodedLiquid => (
            "Un thermomètre sur le coude le plus bas.",
            "1,1 à 1,3\u{a0}kg/L (70 à 80\u{a0}lb/ft³) pour les fluides fluorés dans le froid.",
        ),
        SheetRule::Unflooded => (
            "Cela ne se lit pas\u{a0}; cela suit de ce que la batterie contient de vapeur et de liquide quand elle travaille.",
            "Un cinquième à un tiers de la densité du liquide.",
        ),
        SheetRule::FloodingCharge => (
            "Une balance sous la bouteille pendant la charge.",
            "La moitié de la charge normale en plus\u{a0}; en climat froid, autant encore.",
        ),
        SheetRule::ReceiverNeeded => (
            "La plaque du réservoir\u{a0}; sa longueur et son diamètre si elle manque.",
            "Une à deux fois le volume du condenseur.",
        ),
        SheetRule::ReceiverRoom => (
            "La plaque du réservoir comparée au besoin.",
            "Au-dessus de zéro\u{a0}; un cinquième reste vide pour que le liquide chaud se dilate.",
        ),
        SheetRule::MassFlow => (
            "Par la puissance et les enthalpies avant et après l’évaporateur\u{a0}; un débitmètre est rare.",
            "Environ 6\u{a0}g/s par kilowatt de froid (140\u{a0}lb/h pour 10\u{a0}000\u{a0}Btu/h).",
        ),
        SheetRule::LineVelocity => (
            "Elle ne se mesure pas\u{a0}; elle suit du débit massique et du diamètre intérieur.",
            "0,4 à 1\u{a0}m/s (1,3 à 3,3\u{a0}ft/s) dans une ligne liquide.",
        ),
        SheetRule::LineFriction => (
            "Deux manomètres à la même hauteur, ou un seul porté d’un bout à l’autre.",
            "Moins de 1\u{a0}K (2\u{a0}°F) de température de saturation dans une ligne bien choisie.",
        ),
        SheetRule::LineLift => (
            "Un mètre ruban de la sortie du condenseur ou du réservoir jusqu’au détendeur.",
            "Environ 11\u{a0}kPa par mètre (0,5\u{a0}psi par pied) de montée.",
        ),
        SheetRule::LineDrop => (
            "Deux manomètres, un à chaque bout de la ligne.",
            "Moins que ce que compensent 2 à 3\u{a0}K (4 à 5\u{a0}°F) de sous-refroidissement.",
        ),
        SheetRule::Arrival => (
            "Un thermomètre et un manomètre juste avant le détendeur\u{a0}; un voyant y montre des bulles là où il manque.",
            "2\u{a0}K (4\u{a0}°F) ou plus.",
        ),
        SheetRule::NeededSubcooling => (
            "Un thermomètre et un manomètre à la sortie du condenseur ou du réservoir.",
            "3 à 10\u{a0}K (5 à 18\u{a0}°F)\u{a0}; plus sous une longue montée.",
        ),
        SheetRule::BetaTemperature | SheetRule::SteinhartTemperature => (
            "Un thermomètre à côté de la sonde, tous deux sous le même isolant.",
            "À moins de 1\u{a0}K (2\u{a0}°F) du thermomètre si la sonde est saine.",
        ),
        SheetRule::BetaResistance | SheetRule::SteinhartResistance => (
            "Un ohmmètre sur le câble de la sonde, débranché du régulateur.",
            "10 à 100\u{a0}kΩ de 25 à −20\u{a0}°C (77 à −4\u{a0}°F) pour une sonde de 10\u{a0}kΩ.",
        ),
        SheetRule::SubstituteResistor => (
            "Un ohmmètre sur la résistance avant de la brancher.",
            "Une valeur de sa série\u{a0}; deux en série s’approchent mieux.",
        ),
        SheetRule::SubstituteTemperature => (
            "L’afficheur du régulateur, la résistance branchée.",
            "À moins de 1\u{a0}K (2\u{a0}°F) de la température voulue.",
        ),
        SheetRule::RatiometricPressure | SheetRule::LoopPressure => (
            "Un manomètre à la prise du transmetteur.",
            "À moins de 2 pour cent de la plage du transmetteur.",
        ),
        SheetRule::RatiometricOutput => (
            "Un voltmètre du fil de signal au commun, l’alimentation mesurée aussi.",
            "Un dixième à neuf dixièmes d’une alimentation de 5\u{a0}V.",
        ),
        SheetRule::LoopCurrent => (
            "Un milliampèremètre dans la boucle.",
            "4 à 20\u{a0}mA\u{a0}; hors de là, la boucle est coupée ou en court-circuit.",
        ),
        SheetRule::SwitchMargin => (
            "Un manomètre côté bas après une nuit d’arrêt, comparé au réglage du pressostat.",
            "Au-dessus de zéro en climat doux, en dessous en climat froid.",
        ),
        SheetRule::StandingOutdoor => (
            "Un manomètre sur la ligne liquide avant le démarrage.",
            "La pression de saturation de la partie la plus froide dehors.",
        ),
        SheetRule::StandingLow => (
            "Un manomètre côté bas après un long arrêt, compresseur arrêté.",
            "Entre les pressions de saturation de dehors et de dedans.",
        ),
        SheetRule::BypassTime => (
            "Une montre et un manomètre d’aspiration dès le démarrage.",
            "Moins de 2 à 3 minutes\u{a0}; plus long, il faut un autre remède.",
        ),
        SheetRule::LowestSuction => (
            "Un manomètre d’aspiration pendant les premières minutes.",
            "Sous celle de marche pendant quelques secondes à minutes.",
        ),
        SheetRule::SumpTemperature => (
            "Un thermomètre sur le fond de la carcasse, isolé par-dessus.",
            "8 à 15\u{a0}K (15 à 27\u{a0}°F) au-dessus de l’air qui l’entoure.",
        ),
        SheetRule::SumpHeat => (
            "Un wattmètre sur le réchauffeur.",
            "20 à 100\u{a0}W, selon la taille de la carcasse.",
        ),
        SheetRule::Conversion => (
            "L’instrument qui lit dans cette unité.",
            "Comme dans l’unité saisie.",
        ),
    };
    FindWords { find, typical }
}

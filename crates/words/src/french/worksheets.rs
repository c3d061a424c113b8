//! Worksheets in French.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::SheetRule;
use winterset_calc::flooding::FloodingError;
use winterset_calc::liquid_line::LineError;
use winterset_calc::motor::MotorError;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::StartError;
use winterset_profile::{Amount, AmountProblem, Measure, Question, Scale, Sheet, Title};

use super::{French, problems, sensors, sources};
use crate::amounts::{at_least, at_most, symbol_of};
use crate::help::FindWords;
use crate::language::{FieldWords, RuleWords};
use crate::units::Units;
use crate::worksheets::{StartLabels, WorksheetLabels, WorksheetWords};

static LABELS: WorksheetLabels = WorksheetLabels {
    worksheets: "Fiches de calcul",
    list_note: "Une question chacune, réponse immédiate, sans site.",
    result: "Résultat",
    touch_note: "Touchez une valeur pour sa raison, son équation et sa source.",
    left_out: "laissé de côté",
    clear: "Vider cette fiche",
    clear_question: "Oublier ce qui a été saisi ici\u{a0}? Le fluide et l’altitude restent.",
    gone: "Cette fiche de calcul n’existe pas.",
    fix: "Pas encore de résultat\u{a0}: revoyez les réponses marquées.",
    stalls: "cale",
    stalls_reason: "À cette tension, un ventilateur en rotation ne continue pas de tourner.",
    above_line: "C’est plus que ne donne le réseau. Saisissez moins, ou une tension d’alimentation plus élevée.",
    flash: "Vapeur au détendeur",
    flash_reason: "Du liquide se vaporise en chemin\u{a0}: le détendeur reçoit aussi de la vapeur. Partez avec plus de sous-refroidissement, ou prenez une conduite plus large.",
    liquid_reason: "Du liquide seul arrive au détendeur, à cet écart sous son point de bulle.",
    not_superheated: "À saturation ou au-dessous\u{a0}: il y a du liquide dans cette conduite, ou un des deux relevés est faux.",
    not_subcooled: "À saturation ou au-dessus\u{a0}: il y a de la vapeur dans cette conduite, ou un des deux relevés est faux.",
    receiver_short: "Bouteille, manque",
    receiver_short_reason: "La bouteille est trop petite pour la charge de noyage et la charge rassemblée.",
    inlet_subcooling: "Sous-refroidissement à l’entrée",
    held_pressure: "Pression de condensation maintenue",
    held_pressure_reason: "Pression de rosée à la température à maintenir\u{a0}: le réglage de la vanne.",
    usual_range: |low, high| format!("habituel {low} à {high}"),
    below_bearing: "Le moteur continue de tourner, mais plus lentement que son palier ne le supporte durablement.",
    below_start: "Un ventilateur en rotation continue\u{a0}; à l’arrêt il ne démarre pas. Il lui faut une impulsion de démarrage.",
    gauge_note: |air| format!("La pression relative se compte depuis {air} d’air."),
    carry: "Reporter dans un système",
    carry_note: "Les réponses données ici deviennent des réponses du système. Rien n’y change avant que vous le disiez.",
    carry_to: "Quel système",
    choose_system: "Choisissez un système",
    carry_same: "Ce système contient déjà tout cela.",
    carry_differences: "Gardez ou prenez chaque réponse.",
    from_worksheet: "D’ici",
    carry_act: |count| match count {
        0 | 1 => format!("Reporter {count} réponse"),
        count => format!("Reporter {count} réponses"),
    },
};

impl WorksheetWords for French {
    fn labels(&self) -> &'static WorksheetLabels {
        &LABELS
    }

    fn start_labels(&self) -> &'static StartLabels {
        &sensors::LABELS
    }

    fn sheet(&self, sheet: Sheet) -> RuleWords {
        let (name, reason) = match sheet {
            Sheet::Saturation => (
                "Saturation",
                "Bulle et rosée, depuis une température ou une pression relative.",
            ),
            Sheet::Superheat => (
                "Surchauffe et sous-refroidissement",
                "Depuis une pression relative et une température de conduite.",
            ),
            Sheet::FanLaws => (
                "Lois des ventilateurs",
                "Débit, pression et puissance à une autre vitesse et dans un air plus froid ou raréfié.",
            ),
            Sheet::MotorVolts => (
                "Volts et vitesse du moteur",
                "Ce qu’une découpe de phase donne à un moteur de ventilateur, ce que montre un appareil, et où il cale.",
            ),
            Sheet::Flooding => (
                "Charge de noyage",
                "Quelle part d’un condenseur noyer, la charge qu’il faut et la bouteille.",
            ),
            Sheet::LiquidLine => (
                "Conduite de liquide",
                "Perte de pression, vaporisation et sous-refroidissement de départ.",
            ),
            Sheet::Sensors => (
                "Capteurs",
                "Ce qu’un appareil lit sur une thermistance ou un transmetteur, et la résistance pour l’essai.",
            ),
            Sheet::WinterStart => (
                "Démarrage en hiver",
                "Pression à l’arrêt face au déclenchement, durée de pontage, et chaleur pour le carter.",
            ),
            Sheet::Units => ("Unités", "Une valeur dans toutes les autres unités."),
        };
        RuleWords { name, reason }
    }

    fn title(&self, title: Title) -> &'static str {
        match title {
            Title::FromTemperature => "De la température à la pression",
            Title::FromPressure => "De la pression à la température",
            Title::SuctionLine => "Conduite d’aspiration",
            Title::LiquidLine => "Conduite de liquide",
            Title::KnownPoint => "Le point connu",
            Title::NewPoint => "À une autre vitesse, dans un autre air",
            Title::Motor => "Moteur",
            Title::Supply => "Alimentation",
            Title::Output => "Sortie du régulateur",
            Title::Surroundings => "Air au ventilateur",
            Title::Condenser => "Condenseur, à son point de calcul",
            Title::Winter => "Par temps froid",
            Title::Receiver => "Bouteille",
            Title::Load => "Charge thermique",
            Title::Line => "La conduite",
            Title::Place => "Lieu",
            Title::Sensor => "Le capteur",
            Title::Meter => "Depuis l’appareil de mesure",
            Title::Simulate => "Pour essayer le régulateur",
            Title::PressureSwitch => "Pressostat basse pression",
            Title::HighSide => "Condenseur et bouteille, au démarrage",
            Title::LowSide => "Côté basse pression",
            Title::Sump => "Carter du compresseur",
        }
    }

    fn question(&self, question: Question) -> FieldWords {
        let (ask, help) = question_words(question);
        FieldWords { ask, help }
    }

    fn choice(&self, question: Question, key: &str) -> &'static str {
        let field = match question {
            Question::MotorKind => winterset_calc::Field::Motor,
            Question::Bearing => winterset_calc::Field::Bearing,
            Question::Metering => winterset_calc::Field::Metering,
            Question::Convert => {
                let measure = Measure::ALL.iter().find(|measure| measure.key() == key);
                return measure.map_or("Choix inconnu", |measure| self.measure(*measure));
            }
            _ => {
                return match key {
                    "output" => "Sortie en pour cent",
                    "true-volts" => "Volts, valeur efficace vraie",
                    "meter-volts" => "Volts d’un appareil simple",
                    _ => sensors::choice(key).unwrap_or("Choix inconnu"),
                };
            }
        };
        super::fields::choice(field, key)
    }

    fn measure(&self, measure: Measure) -> &'static str {
        match measure {
            Measure::Temperature => "Température",
            Measure::Difference => "Écart de température",
            Measure::Pressure => "Pression, relative et absolue",
            Measure::PressureDifference => "Différence de pression",
            Measure::FanPressure => "Gain de pression d’un ventilateur",
            Measure::Power => "Puissance",
            Measure::ShaftPower => "Puissance à l’arbre",
            Measure::Airflow => "Débit d’air",
            Measure::Elevation => "Altitude",
            Measure::Length => "Longueur",
            Measure::Lift => "Hauteur",
            Measure::Bore => "Diamètre",
            Measure::Volume => "Volume",
            Measure::Mass => "Masse, charge",
            Measure::MassFlow => "Débit massique",
            Measure::Velocity => "Vitesse d’écoulement",
            Measure::Density => "Masse volumique",
            Measure::Conductance => "Conductance thermique",
            Measure::HeatCapacity => "Capacité thermique",
            Measure::Resistance => "Résistance",
            Measure::Beta => "Bêta",
            Measure::Coefficient => "Coefficient",
            Measure::Signal => "Signal",
            Measure::LoopCurrent => "Courant de boucle",
            Measure::Time => "Durée",
            Measure::Voltage => "Tension",
            Measure::Current => "Courant",
            Measure::Frequency => "Fréquence",
            Measure::Speed => "Vitesse de rotation",
            Measure::Share => "Part",
            Measure::Quality => "Titre en vapeur",
            Measure::Angle => "Angle",
        }
    }

    fn unit(&self, scale: Scale) -> &'static str {
        unit_name(scale)
    }

    fn measured(&self, rule: SheetRule) -> FindWords {
        super::sheet_help::measured(rule)
    }

    fn rule(&self, rule: SheetRule) -> RuleWords {
        let (name, reason) = rule_words(rule);
        RuleWords { name, reason }
    }

    fn equation(&self, rule: SheetRule) -> &'static str {
        match rule {
            SheetRule::KeepsRunning => {
                "u = U_n · min √((charge + T_f) / couple), en descendant depuis la pleine vitesse"
            }
            SheetRule::Starts => {
                "u = U_n · max √((charge + T_f) / couple), en montant depuis l’arrêt"
            }
            SheetRule::Conversion => {
                "x · facteur, et un décalage pour les températures et les pressions relatives"
            }
            rule => sensors::equation(rule).unwrap_or(rule.equation()),
        }
    }

    fn source(&self, rule: SheetRule) -> &'static str {
        sources::source(rule.source())
    }

    fn amount_problem(
        &self,
        problem: &AmountProblem,
        scale: Scale,
        atmosphere: Pressure,
    ) -> String {
        let labels = &super::screen::SCREEN;
        match problem {
            AmountProblem::NotANumber => (labels.number_like)("12,5"),
            AmountProblem::UnknownUnit { unit, measure } => {
                let units: Vec<_> = measure.scales().iter().map(|s| symbol_of(*s)).collect();
                (labels.unit_like)(unit, &units.join(", "))
            }
            AmountProblem::Ambiguous { whole, decimal } => (labels.two_readings)(whole, decimal),
            AmountProblem::OutOfRange { low, high } => (labels.from_to)(
                &at_least(scale, *low, atmosphere).to_string(),
                &at_most(scale, *high, atmosphere).to_string(),
            ),
        }
    }

    fn motor_error(&self, error: &MotorError, _: Units) -> String {
        match error {
            MotorError::OutOfRange { .. } => {
                "C’est plus loin de la plaque que ne va le modèle du moteur. Saisissez une valeur plus proche."
            }
            _ => {
                "Le moteur n’a pas de réponse à cette valeur. Saisissez une tension ou une sortie plus élevée."
            }
        }
        .to_owned()
    }

    fn line_error(&self, error: &LineError, units: Units, atmosphere: Pressure) -> String {
        let temperature = |value: &ThermodynamicTemperature| {
            let amount = Amount::new(Measure::Temperature, value.value);
            at_most(units.scale(Measure::Temperature), amount, atmosphere).to_string()
        };
        match error {
            LineError::InletNotLiquid { bubble, .. } => format!(
                "À cette pression, le fluide n’est liquide que jusqu’à {}. Saisissez une température plus basse, ou vérifiez la pression.",
                temperature(bubble)
            ),
            LineError::DropAbovePressure { .. } => {
                "Cette conduite prendrait toute la pression. Saisissez un diamètre plus grand, une conduite plus courte ou moins de montée.".to_owned()
            }
            LineError::NotReached { .. } => {
                "Aucun sous-refroidissement ne suffit à cette conduite. Saisissez un diamètre plus grand, une conduite plus courte ou moins de montée.".to_owned()
            }
            LineError::OutOfRange { .. } => {
                "Avec cette valeur, le débit sort du domaine du modèle. Saisissez une puissance et un diamètre qui vont ensemble.".to_owned()
            }
            LineError::Refrigerant(error) => problems::refused(error, units, atmosphere),
        }
    }

    fn sensor_error(&self, error: &SensorError) -> &'static str {
        sensors::sensor_error(error)
    }

    fn start_error(&self, error: &StartError, units: Units, atmosphere: Pressure) -> String {
        sensors::start_error(error, units, atmosphere)
    }

    fn flooding_error(&self, error: &FloodingError, units: Units, atmosphere: Pressure) -> String {
        match error {
            FloodingError::Refrigerant(error) => problems::refused(error, units, atmosphere),
            _ => {
                "Avec cette valeur, le condenseur sort du domaine du modèle. Saisissez-en une plus proche de l’habituelle.".to_owned()
            }
        }
    }
}

fn question_words(question: Question) -> (&'static str, &'static str) {
    match question {
        Question::Refrigerant => (
            "Fluide frigorigène",
            "Ce que le circuit contient aujourd’hui. Toutes les fiches gardent le dernier choisi.",
        ),
        Question::Elevation | Question::GaugeElevation => (
            "Altitude au-dessus de la mer",
            "Plus haut, la pression relative se compte depuis moins d’air, et l’air raréfié emporte moins de chaleur. Toutes les fiches gardent la dernière saisie.",
        ),
        Question::Outdoor => (
            "Température extérieure",
            "De l’air entrant dans le condenseur ou passant par le ventilateur.",
        ),
        Question::Temperature => (
            "Température",
            "Celle pour laquelle vous voulez les pressions de bulle et de rosée.",
        ),
        Question::Pressure => (
            "Pression relative",
            "Comme la montre un manomètre. Elle peut être sous zéro\u{a0}: un vide.",
        ),
        Question::SuctionPressure => (
            "Pression d’aspiration",
            "Pression relative dans la conduite d’aspiration, là où se mesure la température ou tout près.",
        ),
        Question::SuctionTemperature => (
            "Température de la conduite d’aspiration",
            "Sur le tube, isolée de l’air, au même endroit que la pression.",
        ),
        Question::LiquidPressure => (
            "Pression de liquide",
            "Pression relative dans la conduite de liquide, après le condenseur ou la bouteille.",
        ),
        Question::LiquidTemperature => (
            "Température de la conduite de liquide",
            "Sur le tube, isolée de l’air, au même endroit que la pression.",
        ),
        Question::KnownSpeed => (
            "Vitesse à ce point",
            "De la plaque ou d’un tachymètre, au débit ci-dessous.",
        ),
        Question::KnownAirflow => (
            "Débit d’air à ce point",
            "De la fiche technique, ou mesuré.",
        ),
        Question::KnownFanPressure => (
            "Gain de pression à ce point",
            "Pression statique du ventilateur, de la fiche technique ou mesurée.",
        ),
        Question::KnownPower => (
            "Puissance à l’arbre à ce point",
            "Ce que le ventilateur prend à son arbre. Le moteur prend plus au réseau.",
        ),
        Question::KnownTemperature => (
            "Température de l’air à ce point",
            "Les fiches techniques valent pour environ 20 °C (68 °F) au niveau de la mer.",
        ),
        Question::KnownElevation => (
            "Altitude à ce point",
            "Là où le point connu a été relevé\u{a0}; niveau de la mer pour une fiche technique.",
        ),
        Question::NewSpeed => (
            "Nouvelle vitesse",
            "La vitesse à laquelle le ventilateur est ralenti ou accéléré.",
        ),
        Question::KnownAs => (
            "Connu comme",
            "Un appareil simple fait la moyenne, étalonné pour une sinusoïde\u{a0}: sur une sinusoïde découpée il montre trop peu.",
        ),
        Question::OutputShare => (
            "Sortie",
            "Tension efficace après le régulateur, rapportée à celle du réseau.",
        ),
        Question::MotorVolts => (
            "Au moteur, valeur efficace vraie",
            "Ce qu’un appareil en valeur efficace vraie montre après le régulateur.",
        ),
        Question::MeterVolts => (
            "Au moteur, appareil simple",
            "Ce qu’un appareil qui fait la moyenne montre après le régulateur.",
        ),
        Question::SupplyVolts => (
            "Tension d’alimentation",
            "Mesurée en charge avant le régulateur, ou la tension nominale.",
        ),
        Question::Frequency => ("Fréquence du réseau", "50 ou 60 Hz."),
        Question::MotorKind => (
            "Moteur",
            "Un condensateur de marche sur un moteur monophasé veut dire condensateur permanent. Les autres moteurs n’admettent pas la découpe de phase.",
        ),
        Question::NameplateVolts => (
            "Tension de plaque",
            "Un moteur de 230 V sur un réseau de 208 V part de neuf dixièmes.",
        ),
        Question::NameplateSpeed => ("Vitesse de plaque", "En tours par minute, à pleine charge."),
        Question::Bearing => (
            "Palier",
            "Un palier lisse a besoin de vitesse pour garder son film d’huile, et colle davantage au froid.",
        ),
        Question::HeldCondensing => (
            "Température de condensation à maintenir",
            "La température de rosée à laquelle la vanne ou le régulateur est réglé.",
        ),
        Question::HeatShare => (
            "Chaleur par temps froid, sur celle du calcul",
            "Sous 100 % là où le compresseur réduit sa puissance ou la charge baisse en hiver.",
        ),
        Question::HeatRejected => (
            "Chaleur rejetée",
            "Par le condenseur à son point de calcul\u{a0}: puissance frigorifique et chaleur de compression.",
        ),
        Question::OverAmbient => (
            "Écart de condensation sur l’air",
            "Au point de calcul, tous les ventilateurs à pleine vitesse.",
        ),
        Question::CondenserVolume => (
            "Volume intérieur du condenseur",
            "De la fiche technique. Vide, il est tiré de la chaleur pour des tubes ronds\u{a0}; une batterie à microcanaux contient environ un tiers.",
        ),
        Question::PumpdownCharge => (
            "Autre charge que la bouteille doit prendre",
            "Ce qui y est rassemblé depuis le reste du système.",
        ),
        Question::Warmest => (
            "Le plus chaud que devient la bouteille",
            "Sur un toit au soleil, en été.",
        ),
        Question::ReceiverVolume => (
            "Volume intérieur de la bouteille",
            "De sa plaque. Vide, seul le volume nécessaire est calculé.",
        ),
        Question::Bore => (
            "Diamètre intérieur",
            "Diamètre extérieur moins deux fois la paroi, de la conduite de liquide.",
        ),
        Question::EquivalentLength => (
            "Longueur avec raccords",
            "Longueur droite, et pour chaque raccord la longueur qui prendrait autant.",
        ),
        Question::Lift => (
            "Détendeur au-dessus du condenseur",
            "Hauteur du détendeur sur la sortie du condenseur ou de la bouteille\u{a0}; sous zéro s’il est plus bas.",
        ),
        Question::PartsDrop => (
            "Perte du déshydrateur et des vannes",
            "Filtre déshydrateur, électrovanne et voyant ensemble, à ce débit.",
        ),
        Question::CoolingCapacity => (
            "Puissance frigorifique",
            "À pleine charge\u{a0}: elle fixe le débit dans la conduite.",
        ),
        Question::Evaporating => (
            "Température d’évaporation",
            "Saturation (rosée) à la pression d’aspiration.",
        ),
        Question::WantedSubcooling => (
            "Sous-refroidissement voulu au détendeur",
            "Une réserve contre la vaporisation, comme 3 K (5 °F).",
        ),
        Question::Convert => (
            "Que convertir",
            "Toutes les grandeurs de cette application.",
        ),
        Question::Converted(measure) => (
            French.measure(measure),
            "La valeur et l’unité dans laquelle elle est.",
        ),
        other => sensors::question(other).unwrap_or_default(),
    }
}

fn rule_words(rule: SheetRule) -> (&'static str, &'static str) {
    match rule {
        SheetRule::BubblePressure => (
            "Pression de bulle",
            "Liquide saturé\u{a0}: ici paraît la première bulle.",
        ),
        SheetRule::DewPressure => (
            "Pression de rosée",
            "Vapeur saturée\u{a0}: ici paraît la première goutte.",
        ),
        SheetRule::BubbleTemperature => (
            "Température de bulle",
            "Liquide saturé à cette pression\u{a0}: le sous-refroidissement se compte d’ici.",
        ),
        SheetRule::DewTemperature => (
            "Température de rosée",
            "Vapeur saturée à cette pression\u{a0}: la surchauffe se compte d’ici.",
        ),
        SheetRule::Glide => (
            "Glissement",
            "De combien le point de rosée est plus chaud que le point de bulle.",
        ),
        SheetRule::Superheat => (
            "Surchauffe",
            "De combien la vapeur dépasse sa température de rosée.",
        ),
        SheetRule::Subcooling => (
            "Sous-refroidissement",
            "De combien le liquide est sous sa température de bulle.",
        ),
        SheetRule::AirDensity => (
            "Masse volumique de l’air",
            "L’air froid pèse plus, l’air raréfié moins.",
        ),
        SheetRule::FanAirflow => (
            "Débit d’air",
            "Suit la vitesse, quelle que soit la masse volumique.",
        ),
        SheetRule::FanPressure => (
            "Gain de pression",
            "Suit la masse volumique et le carré de la vitesse.",
        ),
        SheetRule::FanPower => (
            "Puissance à l’arbre",
            "Suit la masse volumique et le cube de la vitesse.",
        ),
        SheetRule::Output => (
            "Sortie",
            "Tension efficace au moteur, rapportée à celle du réseau.",
        ),
        SheetRule::CutVoltage => (
            "Au moteur, valeur efficace vraie",
            "Ce que montre un appareil en valeur efficace vraie, et ce que suit le couple du moteur.",
        ),
        SheetRule::MeterVoltage => (
            "Un appareil simple montre",
            "Il fait la moyenne, étalonné pour une sinusoïde, et montre donc ici trop peu.",
        ),
        SheetRule::FiringAngle => ("Angle d’amorçage", "La part retirée de chaque demi-onde."),
        SheetRule::MotorSpeed => (
            "Vitesse du moteur",
            "Là où le couple du moteur à cette tension rencontre le ventilateur et le palier.",
        ),
        SheetRule::KeepsRunning => (
            "Cale au-dessous de",
            "Sous cette tension, un ventilateur en rotation ne continue pas de tourner.",
        ),
        SheetRule::Starts => (
            "Démarre de l’arrêt à",
            "Entre les deux tensions, un ventilateur continue de tourner mais ne démarre pas.",
        ),
        SheetRule::BearingSpeed => ("Vitesse minimale du palier", "Au-dessous, le palier s’use."),
        SheetRule::FloodedShare => (
            "Part à noyer",
            "Ce qui reste de surface rejette la chaleur à la température maintenue.",
        ),
        SheetRule::CondenserVolume => (
            "Volume du condenseur",
            "Estimé depuis la chaleur, pour des tubes ronds.",
        ),
        SheetRule::FloodedLiquid => (
            "Liquide de noyage",
            "Sa masse volumique près de la température extérieure.",
        ),
        SheetRule::Unflooded => (
            "Condenseur non noyé",
            "Masse volumique moyenne de ce qu’il contient avant le noyage.",
        ),
        SheetRule::FloodingCharge => (
            "Charge de noyage",
            "En plus de la charge du système sans noyage.",
        ),
        SheetRule::ReceiverNeeded => (
            "Bouteille nécessaire",
            "Elle reprend la charge de noyage un jour chaud, remplie aux huit dixièmes au plus.",
        ),
        SheetRule::ReceiverRoom => (
            "Bouteille, réserve",
            "La bouteille prend la charge de noyage et la charge rassemblée.",
        ),
        SheetRule::MassFlow => (
            "Débit massique",
            "Ce que prend l’évaporateur pour cette puissance.",
        ),
        SheetRule::LineVelocity => ("Vitesse d’écoulement", "Vitesse moyenne du liquide."),
        SheetRule::LineFriction => ("Perte par frottement", "Dans le tube et les raccords."),
        SheetRule::LineLift => (
            "Perte par hauteur",
            "Le poids de la colonne de liquide\u{a0}; sous zéro si le détendeur est plus bas.",
        ),
        SheetRule::LineDrop => (
            "Perte de pression de la conduite",
            "Frottement, hauteur, déshydrateur et vannes ensemble.",
        ),
        SheetRule::Arrival => (
            "Sous-refroidissement au détendeur",
            "Du liquide seul arrive, à cet écart sous son point de bulle.",
        ),
        SheetRule::NeededSubcooling => (
            "Sous-refroidissement de départ",
            "À la sortie du condenseur ou de la bouteille, pour ce qui est voulu au détendeur.",
        ),
        SheetRule::Conversion => (
            "Dans une autre unité",
            "La même chose dans une autre unité.",
        ),
        other => sensors::rule(other).unwrap_or_default(),
    }
}

fn unit_name(scale: Scale) -> &'static str {
    match scale.symbol() {
        "°C" => "Degré Celsius",
        "°F" => "Degré Fahrenheit",
        "K" => "Kelvin",
        "psig" => "Livre par pouce carré, relative",
        "psia" => "Livre par pouce carré, absolue",
        "kPa gauge" => "Kilopascal, relatif",
        "kPa absolute" => "Kilopascal, absolu",
        "bar gauge" => "Bar, relatif",
        "bar absolute" => "Bar, absolu",
        "psi" => "Livre par pouce carré",
        "kPa" => "Kilopascal",
        "Pa" => "Pascal",
        "bar" => "Bar",
        "in H₂O" => "Pouce d’eau",
        "kW" => "Kilowatt",
        "W" => "Watt",
        "Btu/h" => "Btu par heure",
        "ton" => "Tonne de réfrigération",
        "hp" => "Cheval-vapeur anglais",
        "m³/h" => "Mètre cube par heure",
        "m³/s" => "Mètre cube par seconde",
        "L/s" => "Litre par seconde",
        "cfm" => "Pied cube par minute",
        "m" => "Mètre",
        "ft" => "Pied",
        "mm" => "Millimètre",
        "in" => "Pouce",
        "L" => "Litre",
        "m³" => "Mètre cube",
        "ft³" => "Pied cube",
        "in³" => "Pouce cube",
        "kg" => "Kilogramme",
        "g" => "Gramme",
        "lb" => "Livre",
        "oz" => "Once",
        "kg/s" => "Kilogramme par seconde",
        "kg/h" => "Kilogramme par heure",
        "lb/min" => "Livre par minute",
        "lb/h" => "Livre par heure",
        "m/s" => "Mètre par seconde",
        "ft/s" => "Pied par seconde",
        "ft/min" => "Pied par minute",
        "kg/m³" => "Kilogramme par mètre cube",
        "lb/ft³" => "Livre par pied cube",
        "W/K" => "Watt par kelvin",
        "Btu/(h °F)" => "Btu par heure et °F",
        other => other,
    }
}

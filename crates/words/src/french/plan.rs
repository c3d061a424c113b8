//! Verdict, actions, cautions and remarks of a plan, in French.

use uom::si::f64::ThermodynamicTemperature;
use winterset_calc::advice::ReversingValve;
use winterset_calc::input::{MotorKind, Sensing};
use winterset_calc::need::NeedPart;
use winterset_calc::settings::SettingsNote;
use winterset_calc::{Action, Caution, Method, Plan, Quantity, Verdict};

use crate::language::{Part, RuleWords};
use crate::pen::Pen;
use crate::units::Units;

pub(super) fn verdict(verdict: Verdict, plan: &Plan, units: Units) -> String {
    let pen = Pen {
        units,
        atmosphere: plan.atmosphere.value,
    };
    let show =
        |temperature: ThermodynamicTemperature| pen.brief(Quantity::Temperature(temperature));
    let (said, limit, low, holds) = match verdict {
        Verdict::NotNeeded { limit, low } => {
            return format!(
                "Inutile\u{a0}: ventilateur à pleine vitesse, la pression de condensation tient jusqu’à {}\u{a0}; ce site descend à {}.",
                show(limit),
                show(low)
            );
        }
        Verdict::Holds { method, limit, low } => (method, limit, low, "tient jusqu’à"),
        Verdict::FallsShort { method, limit, low } => (method, limit, low, "ne tient que jusqu’à"),
    };
    let (limit, low) = (show(limit), show(low));
    let refusal = refusal(plan.input.motor.value).filter(|_| said.is_modulated());
    match refusal {
        None => format!(
            "{}\u{a0}: {holds} {limit}\u{a0}; ce site descend à {low}.",
            method(said).name
        ),
        Some(refusal) => format!(
            "{refusal} Alimenté comme il le demande, il {holds} {limit}\u{a0}; ce site descend à {low}."
        ),
    }
}

/// What a motor says to a phase-cut supply, where it refuses one.
fn refusal(motor: MotorKind) -> Option<&'static str> {
    match motor {
        MotorKind::ElectronicallyCommutated => Some(
            "Un moteur à commutation électronique n’admet pas de variation de vitesse par la tension.",
        ),
        MotorKind::ThreePhase => Some(
            "Un moteur triphasé n’admet pas de variation de vitesse par une tension monophasée.",
        ),
        MotorKind::PermanentSplitCapacitor | MotorKind::ShadedPole => None,
    }
}

pub(super) fn action(action: Action) -> &'static str {
    match action {
        Action::LeaveFanAlone => "Laissez le ventilateur à pleine vitesse.",
        Action::EnterValues => "Saisissez les valeurs ci-dessous sur le régulateur.",
        Action::UseSpeedInput => {
            "Ralentissez-le par sa propre entrée de vitesse, 0 à 10 V ou largeur d’impulsion, depuis un régulateur qui donne ce signal."
        }
        Action::UseFrequencyDrive => {
            "Ralentissez-le par un variateur de fréquence fait pour le moteur."
        }
        Action::AddBaffle => {
            "Saisissez les valeurs ci-dessous sur le régulateur, et montez un écran qui garde la batterie du vent."
        }
        Action::AddFlooding => {
            "Saisissez les valeurs ci-dessous sur le régulateur, et montez une vanne et une bouteille qui noient le condenseur les jours les plus froids."
        }
        Action::Flood => {
            "Montez une vanne et une bouteille qui noient le condenseur par temps froid."
        }
        Action::CycleFans => "Commutez les ventilateurs par pression aux points ci-dessous.",
        Action::StageFans => {
            "Commutez les ventilateurs l’un après l’autre par pression, et laissez tourner le dernier."
        }
        Action::LowerNeed => {
            "Faites que le système demande moins de pression de condensation, par un détendeur qui ouvre davantage ou plus de sous-refroidissement, ou chauffez la bouteille\u{a0}: voyez ce qui abaisse la pression nécessaire."
        }
    }
}

pub(super) fn caution(caution: Caution) -> Part {
    let (title, text) = match caution {
        Caution::Roof => (
            "Toit et glace",
            "Une chute tue. Restez loin du bord ou attachez-vous, et ne travaillez pas seul sur un toit glacé.",
        ),
        Caution::Mains => (
            "Réseau électrique",
            "Le ventilateur et le régulateur sont sous tension du réseau, même ventilateur arrêté. Consignez l’alimentation et vérifiez l’absence de tension avec un appareil que vous venez de contrôler sur une source active. Suivez les règles locales et les instructions du fabricant.",
        ),
        Caution::Capacitor => (
            "Condensateur de marche",
            "Il reste chargé après la coupure. Déchargez-le par une résistance faite pour cela et mesurez avant de toucher.",
        ),
        Caution::RotatingFan => (
            "Ventilateur en rotation",
            "Un ventilateur régulé démarre seul, même de l’arrêt à basse vitesse. Isolez-le avant d’approcher les mains, et remontez la grille.",
        ),
        Caution::Pressure => (
            "Fluide sous pression",
            "Le fluide sous pression brûle la peau et les yeux. Portez gants et lunettes, et laissez les circuits ouverts aux personnes habilitées.",
        ),
        Caution::Flammable => (
            "Fluide inflammable",
            "Ce fluide peut brûler. Éloignez étincelles et flammes, aérez, cherchez d’abord les fuites, et utilisez des outils et des commandes admis pour sa classe.",
        ),
    };
    Part { title, text }
}

pub(super) fn need_part(part: NeedPart) -> RuleWords {
    let (name, reason) = match part {
        NeedPart::MeteringDevice => (
            "Le détendeur",
            "Sous cette pression de condensation, il alimente mal l’évaporateur. Plus il peut ouvrir, moins il demande\u{a0}: un orifice équilibré moins qu’un orifice classique, un détendeur électronique le moins.",
        ),
        NeedPart::Compressor => (
            "Le compresseur",
            "Sous cette pression de condensation, il sort de son domaine d’emploi. La limite du fabricant peut être plus basse.",
        ),
        NeedPart::LiquidLine => (
            "La conduite de liquide",
            "Sous cette pression de condensation, du gaz s’y forme avant le détendeur. Plus de sous-refroidissement, une conduite plus large ou plus courte demandent moins.",
        ),
        NeedPart::HotGasDefrost => (
            "Le dégivrage par gaz chaud",
            "Sous cette pression de condensation, le gaz chaud ne fond pas la glace.",
        ),
        NeedPart::HeatReclaim => (
            "La récupération de chaleur",
            "Sous cette pression de condensation, la chaleur n’est pas assez chaude pour celui qui l’utilise.",
        ),
        NeedPart::Evaporator => (
            "L’évaporateur",
            "Sous cette pression de condensation, la glace se forme sur sa batterie.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn note(note: SettingsNote, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let show = |span| pen.show(Quantity::Difference(span));
    match note {
        SettingsNote::RangeNarrowed { wanted, used } => format!(
            "La plage de modulation est réduite de {} à {} pour que le ventilateur atteigne encore la pleine vitesse au point connu.",
            show(wanted),
            show(used)
        ),
        SettingsNote::NeedNearKnownPoint => {
            "La pression nécessaire est si proche du point connu que le ventilateur n’y atteindrait pas la pleine vitesse. Vérifiez le point connu, ou abaissez la pression nécessaire par un détendeur à orifice équilibré ou électronique.".to_owned()
        }
        SettingsNote::BoostTooShort { wanted, used } => format!(
            "Au minimum de ce site un démarrage prend {}, plus que les {} que les régulateurs offrent d’habitude. Cherchez une impulsion de démarrage plus longue, ou abritez le ventilateur du vent par un déflecteur.",
            pen.show(Quantity::Time(wanted)),
            pen.show(Quantity::Time(used))
        ),
        SettingsNote::WillNotStart => {
            "Au minimum de ce site le moteur peut ne pas lancer son ventilateur depuis l’arrêt, même à pleine sortie. Abritez-le du vent par un déflecteur, gardez-le en rotation pendant le froid, ou choisissez un moteur plus fort ou à roulements à billes.".to_owned()
        }
        SettingsNote::AboveEnvelope { from, highest } => format!(
            "Au-dessus de {} à l’extérieur, le compresseur condense au-dessus de {}, le plus que son fabricant admet, même avec tous les ventilateurs à pleine vitesse.",
            pen.brief(Quantity::Temperature(from)),
            pen.brief(Quantity::Temperature(highest))
        ),
    }
}

pub(super) fn sensing(sensing: Sensing) -> RuleWords {
    let (name, reason) = match sensing {
        Sensing::CoilTemperature => (
            "Température de batterie",
            "Sonde sur un coude de la partie diphasique de la batterie, aux deux tiers environ de la hauteur, sanglée et isolée. Usage courant\u{a0}: suivez les instructions du régulateur.",
        ),
        Sensing::LiquidPressure => (
            "Pression de liquide",
            "Transmetteur sur la conduite de liquide au condenseur. Ce fluide a du glissement, ou vous l’avez choisi\u{a0}: la pression ne dépend pas de la place du capteur.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn heating(valve: ReversingValve) -> RuleWords {
    let (name, reason) = match valve {
        ReversingValve::InCooling => (
            "Pleine vitesse, vanne hors tension",
            "Prenez le signal sur la bobine de la vanne d’inversion. Hors tension veut dire chauffage, et le ventilateur extérieur tourne alors à pleine vitesse. Un fil coupé ressemble au chauffage\u{a0}: la pression de condensation tombe alors en froid.",
        ),
        ReversingValve::InHeating => (
            "Pleine vitesse, vanne sous tension",
            "Prenez le signal sur la bobine de la vanne d’inversion. Sous tension veut dire chauffage, et le ventilateur extérieur tourne alors à pleine vitesse. Un fil coupé ressemble au froid\u{a0}: le ventilateur ralentit alors en chauffage et la batterie givre.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn method(method: Method) -> RuleWords {
    let (name, reason) = match method {
        Method::FullFan => (
            "Pleine vitesse",
            "Tous les ventilateurs toujours à pleine vitesse.",
        ),
        Method::OnOff => (
            "Tout ou rien",
            "Tous les ventilateurs sur un pressostat. La pression de condensation oscille en dents de scie entre les deux points de commutation.",
        ),
        Method::Staged => (
            "Par étages",
            "Les ventilateurs s’arrêtent l’un après l’autre\u{a0}; le dernier tourne toujours.",
        ),
        Method::SpeedControl => (
            "Variation de vitesse",
            "Tous les ventilateurs ralentis ensemble selon la fiche de réglage.",
        ),
        Method::Flooding => (
            "Noyage",
            "Une vanne remplit de liquide une partie du condenseur, tous les ventilateurs à pleine vitesse. Il faut une bouteille et une charge en plus.",
        ),
        Method::SpeedWithBaffle => (
            "Vitesse et écran",
            "Ventilateurs ralentis selon la fiche de réglage, derrière un écran qui garde la batterie du vent.",
        ),
        Method::SpeedWithFlooding => (
            "Vitesse et noyage",
            "Ventilateurs ralentis selon la fiche de réglage\u{a0}; au-dessous, une vanne noie le condenseur. Il faut une bouteille et une charge en plus.",
        ),
    };
    RuleWords { name, reason }
}

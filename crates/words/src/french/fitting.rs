//! Fitting and wiring, in French.

use uom::si::f64::Pressure;
use winterset_calc::Quantity;
use winterset_calc::fitting::{Arrangement, CoilPlace, Control, Fans, Item, Part, Tap, Work};
use winterset_calc::input::MotorKind;

use super::{French, plan};
use crate::fitting::{FittingLabels, FittingWords};
use crate::units::Units;

static LABELS: FittingLabels = FittingLabels {
    fit: "Montage et câblage",
    note: "Où vont la sonde, le régulateur et les fils sur ce système, dans l’ordre du travail. Les schémas montrent ce qui va ensemble, non la place dans un coffret ni le repère d’une borne.",
    arrangement: "Disposition",
    nothing: "Il n’y a rien à monter\u{a0}: les ventilateurs restent à pleine vitesse et leur câblage reste tel quel.",
    step: |number, all| format!("Étape {number} sur {all}"),
    places: "Où se trouve chaque chose",
    wiring: "Comment on câble",
    in_words: "Le schéma en mots",
    shown: |list| format!("Dans l’ordre du passage\u{a0}: {list}."),
    passes: |list| format!("Le courant passe, l’un après l’autre, par\u{a0}: {list}."),
    steered: |part, list| format!("Les signaux vers\u{a0}: {part}, viennent de\u{a0}: {list}."),
    switched: |motors, part, list| {
        format!("Avant\u{a0}: {part}, il y a {motors}\u{a0}; ce qui le ferme\u{a0}: {list}.")
    },
    beside: |part| {
        format!(
            "Le moteur ne reçoit qu’un signal de\u{a0}: {part}\u{a0}; il garde sa pleine alimentation."
        )
    },
    capacitor_stays: "Chaque moteur garde son condensateur de marche, raccordé comme avant.",
    defers: "Les règles locales, les instructions des fabricants et le travail des personnes habilitées passent avant ces schémas.",
};

/// What is done to a joint under pressure, whatever is screwed on.
const JOINT: &str = "Prenez une prise qu’aucune vanne de service ne peut fermer et un raccord qui ouvre son obus, et cherchez les fuites au joint.";

/// What is done to a sensor on the coil, whatever its place.
const STRAP: &str = "Nettoyez le cuivre, sanglez la sonde le long du tube et isolez par-dessus, pour qu’elle sente le tube et non le vent.";

/// Where it is not known in which mode the reversing valve is energised.
const ASK: &str = "Prenez le signal sur la bobine de la vanne d’inversion, pour que le ventilateur extérieur tourne à pleine vitesse en chauffage. Toutes les unités ne l’alimentent pas dans le même mode\u{a0}: voyez-le sur le schéma de l’unité et répondez dans les données.";

/// What switched fans need of it besides.
const RELAY: &str = "Un relais sur ce signal ferme, en chauffage, un passage autour du pressostat.";

impl FittingWords for French {
    fn labels(&self) -> &'static FittingLabels {
        &LABELS
    }

    fn arrangement(&self, arrangement: Arrangement) -> &'static str {
        match arrangement {
            Arrangement::CoolingOnly => "Froid seul",
            Arrangement::WithReceiver => "Avec bouteille",
            Arrangement::HeatPump => "Pompe à chaleur",
            Arrangement::TwoCircuits => "Deux circuits",
        }
    }

    fn part(&self, part: Part, fans: Fans) -> String {
        let text = match (part, fans) {
            (Part::Motor, Fans::Alike(count)) if count > 1 => {
                return format!("moteurs de ventilateur, {count} pareils");
            }
            (Part::Motor, Fans::Mixed { slowed, .. }) if slowed > 1 => {
                return format!("moteurs ralentis, {slowed}");
            }
            (Part::SwitchedMotors, Fans::Mixed { switched, .. }) if switched > 1 => {
                return format!("{switched} moteurs sur leur propre contacteur");
            }
            (Part::FurtherMotors, Fans::OneAndFurther(count)) if count > 1 => {
                return format!("{count} autres moteurs, chacun avec son contacteur");
            }
            (Part::Supply, _) => "alimentation",
            (Part::Disconnect, _) => "sectionneur",
            (Part::Contactor, _) => "contacteur",
            (Part::FanContactor, _) => "contacteur du ventilateur",
            (Part::SpeedController, _) => "régulateur de vitesse",
            (Part::FrequencyDrive, _) => "variateur de fréquence",
            (Part::SwitchedMotors, _) => "moteur sur son propre contacteur",
            (Part::Motor, Fans::Mixed { .. }) => "moteur du ventilateur ralenti",
            (Part::Motor, _) => "moteur du ventilateur",
            (Part::FirstMotor, _) => "premier moteur, toujours en marche",
            (Part::FurtherMotors, _) => "second moteur de ventilateur",
            (Part::Capacitor, _) => "condensateur de marche",
            (Part::CoilSensor, _) => "sonde sur la batterie",
            (Part::SecondCoilSensor, _) => "sonde sur la seconde batterie",
            (Part::PressureSensor, _) => "capteur de pression",
            (Part::SecondPressureSensor, _) => "second capteur de pression",
            (Part::PressureSwitch, Fans::OneAndFurther(count)) if count > 1 => {
                "pressostat, un par contacteur"
            }
            (Part::PressureSwitch, _) => "pressostat",
            (Part::SecondPressureSwitch, _) => "pressostat, second circuit",
            (Part::ReversingValve, _) => "vanne d’inversion",
        };
        text.to_owned()
    }

    fn item(&self, item: Item) -> String {
        let text = match item {
            Item::Fans(count) if count > 1 => {
                return format!("ventilateurs du condenseur, {count}");
            }
            Item::Sensor(part) => return self.part(part, Fans::Alike(1)),
            Item::HotGas => "gaz chaud du compresseur",
            Item::ReversingValve => "vanne d’inversion",
            Item::Fans(_) => "ventilateur du condenseur",
            Item::SharedFans(_) => "ventilateurs communs aux deux circuits",
            Item::Baffle => "écran contre le vent",
            Item::Coil => "batterie du condenseur",
            Item::SecondCoil => "batterie du second circuit",
            Item::FloodingValve => "vanne de pression de condensation",
            Item::Receiver => "bouteille",
            Item::Liquid => "conduite de liquide",
        };
        text.to_owned()
    }

    fn work(&self, work: Work) -> &'static str {
        match work {
            Work::Prepare => "Préparer",
            Work::Isolate => "Mettre hors tension",
            Work::FitFlooding => "Monter vanne et bouteille",
            Work::FitBaffle => "Monter l’écran",
            Work::StrapSensor(_) => "Sangler la sonde sur la batterie",
            Work::FitTransducer => "Visser le capteur de pression",
            Work::FitSwitches(1) => "Visser le pressostat",
            Work::FitSwitches(_) => "Visser les pressostats",
            Work::FitSecond(_) => "De même sur le second circuit",
            Work::LayLead => "Poser le câble de la sonde",
            Work::Mount(Control::FrequencyDrive) => "Monter le variateur",
            Work::Mount(Control::Switched) => "Monter le contacteur",
            Work::Mount(Control::Staged) => "Monter les contacteurs",
            Work::Mount(_) => "Monter le régulateur",
            Work::Wire(..) => "Câbler les ventilateurs",
            Work::WireSwitched => "Câbler les ventilateurs commutés",
            Work::WireReversingValve { .. } => "Amener le signal de la vanne d’inversion",
            Work::EnterValues => "Saisir les valeurs",
            Work::SetSwitches => "Régler les points de commutation",
            Work::GivePower => "Remettre sous tension et regarder",
        }
    }

    fn how(&self, work: Work, units: Units) -> String {
        match work {
            Work::StrapSensor(place) => strap(place, units),
            Work::FitSecond(tap) => second(tap, units),
            Work::WireReversingValve { valve, switched } => {
                let signal = valve.map_or(ASK, |valve| plan::heating(valve).reason);
                if switched {
                    format!("{signal} {RELAY}")
                } else {
                    signal.to_owned()
                }
            }
            other => how(other).to_owned(),
        }
    }
}

fn strap(place: CoilPlace, units: Units) -> String {
    match place {
        CoilPlace::Usual => format!(
            "Sur un coude aux deux tiers de la hauteur de la batterie, comptés depuis la sortie de liquide. {STRAP}"
        ),
        CoilPlace::Moved(share) => {
            let up = units.show(&Quantity::Ratio(1.0 - share), Pressure::default());
            format!(
                "Sur cette batterie la place habituelle ne convient pas. Prenez le coude le plus proche de {up} de la hauteur, compté le long du circuit depuis la sortie de liquide. {STRAP}"
            )
        }
        CoilPlace::Nowhere => "Aucun coude de cette batterie n’est en deux phases à la fois un jour chaud et par temps froid. Mesurez la pression de liquide, et choisissez-la dans les données.".to_owned(),
    }
}

fn second(tap: Tap, units: Units) -> String {
    match tap {
        Tap::Coil(CoilPlace::Nowhere) => strap(CoilPlace::Nowhere, units),
        Tap::Coil(_) | Tap::LiquidLine => {
            "Posez un second capteur à la même place sur l’autre condenseur et menez-le à la seconde entrée du régulateur. Le circuit qui demande le plus de vitesse commande.".to_owned()
        }
        Tap::Switches(_) => format!(
            "Posez des pressostats aussi sur l’autre circuit et câblez leurs contacts à côté de ceux du premier, pour que chaque circuit puisse appeler un ventilateur. {JOINT}"
        ),
    }
}

fn how(work: Work) -> &'static str {
    match work {
        Work::Prepare => {
            "Comparez ce qui est arrivé à la liste de commande du plan, et gardez sous la main les instructions du régulateur, du moteur et de l’unité. Là où elles disent autre chose que ces étapes, elles ont raison."
        }
        Work::Isolate => {
            "Ouvrez le sectionneur de l’unité, cadenassez-le et gardez la clé. Mesurez au ventilateur, entre tous les fils et de chaque fil à la terre, et cherchez une seconde alimentation, comme un circuit de commande ou une résistance."
        }
        Work::FitFlooding => {
            "La vanne de pression de condensation est entre le gaz chaud, la sortie du condenseur et la bouteille\u{a0}; la bouteille est plus basse que la sortie, pour que le liquide y coule. Réglez la vanne comme le dit la liste du plan et ajoutez la charge supplémentaire à la balance. Ouvrir le circuit est réservé aux personnes habilitées."
        }
        Work::FitBaffle => {
            "Placez-le du côté d’où vient le vent, assez loin pour laisser passer l’air des ventilateurs, et fixez-le contre la tempête et la neige."
        }
        Work::FitTransducer => {
            "Sur la conduite de liquide, juste après la sortie du condenseur. Prenez une prise qu’aucune vanne de service ne peut fermer et un raccord qui ouvre son obus, et cherchez les fuites au joint."
        }
        Work::FitSwitches(_) => {
            "Sur la conduite de liquide, juste après la sortie du condenseur, un par contacteur. Prenez des prises qu’aucune vanne de service ne peut fermer et cherchez les fuites aux joints."
        }
        Work::LayLead => {
            "Tenez-le à l’écart des fils du ventilateur et du réseau, et croisez-les à angle droit. Attachez-le hors de portée du ventilateur et laissez pendre une boucle avant l’entrée, pour que l’eau s’égoutte."
        }
        Work::Mount(Control::FrequencyDrive) => {
            "Au sec et debout, avec l’espace libre que demande son fabricant, et près des moteurs\u{a0}: un long câble de moteur demande un filtre."
        }
        Work::Mount(Control::Switched | Control::Staged) => {
            "Dans le coffret de l’unité ou dans un coffret fait pour l’extérieur, pour le courant à pleine charge des ventilateurs que chacun commute."
        }
        Work::Mount(_) => {
            "Debout sur du métal qui emporte sa chaleur, dans un coffret fait pour l’extérieur, et là où ses réglages s’atteignent sans passer près du ventilateur."
        }
        Work::Wire(Control::PhaseCut, MotorKind::PermanentSplitCapacitor) => {
            "Mettez le régulateur dans le fil qui va du contacteur au moteur du ventilateur. Le condensateur de marche reste au moteur, raccordé comme avant\u{a0}; il ne se met jamais devant le régulateur. Des moteurs en parallèle gardent chacun le leur."
        }
        Work::Wire(Control::PhaseCut, _) => {
            "Mettez le régulateur dans le fil qui va du contacteur au moteur du ventilateur. L’autre fil reste tel quel."
        }
        Work::Wire(Control::Signal, _) => {
            "Le moteur garde sa pleine alimentation, par le contacteur comme avant. Menez la sortie du régulateur, 0 à 10 V ou impulsions, à l’entrée de vitesse du moteur par une paire blindée, et voyez lequel est le commun. Le régulateur a sa propre alimentation. Un régulateur à coupure de phase dans l’alimentation du moteur le détruit."
        }
        Work::Wire(Control::FrequencyDrive, _) => {
            "L’alimentation au variateur, le variateur aux moteurs, et rien qui commute entre les deux\u{a0}: câble de moteur blindé, blindage à la terre comme le dit le fabricant. Un contact libre du contacteur du compresseur donne l’ordre de marche. Vérifiez le sens de rotation des ventilateurs."
        }
        Work::Wire(Control::Staged, _) => {
            "Laissez le premier ventilateur sur le contacteur de l’unité, pour qu’il tourne toujours. Donnez à chaque ventilateur ou groupe suivant son propre contacteur, et mettez un pressostat dans le fil de commande de chacun."
        }
        Work::Wire(..) => {
            "Retirez les ventilateurs du contacteur de l’unité et mettez-les sur le leur. Mettez le pressostat dans son fil de commande, derrière ce qui appelle le compresseur, pour que les ventilateurs s’arrêtent avec lui."
        }
        Work::WireSwitched => {
            "Mettez les ventilateurs qui ne sont pas ralentis sur leur propre contacteur, avant ce qui ralentit les autres, pour qu’ils aient toute l’alimentation. Mettez le pressostat dans son fil de commande, derrière ce qui appelle le compresseur, pour qu’ils s’arrêtent avec lui."
        }
        Work::EnterValues => {
            "Notez ce qui était réglé avant. Puis saisissez la feuille de réglages de haut en bas."
        }
        Work::SetSwitches => {
            "Réglez les points d’arrêt et de marche au manomètre, non à l’échelle du pressostat. Ils sont dans la liste de commande du plan."
        }
        Work::GivePower => {
            "Fermez d’abord les capots et remontez les grilles. Puis remettez sous tension\u{a0}: le ventilateur démarre à pleine sortie et se pose sur ce que demande la sonde. Comparez aux valeurs d’essai du plan\u{a0}; un jour chaud, avec une sonde simulée."
        }
        // Said by their own functions.
        Work::StrapSensor(_) | Work::FitSecond(_) | Work::WireReversingValve { .. } => STRAP,
    }
}

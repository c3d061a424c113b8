//! Reasons, changes, parts and outcomes: what follows from a plan, in French.

use uom::si::f64::Pressure;
use uom::si::temperature_interval::kelvin as kelvin_interval;
use winterset_calc::advice::{
    FanMotorAdvice, FanStart, Hottest, LoadEffect, LowestSpeed, PartLoad, Remedy,
};
use winterset_calc::free_cooling::Outcome as Off;
use winterset_calc::input::{CapacityControl, Duty, MotorKind};
use winterset_calc::lever::Change;
use winterset_calc::parts_list::{OutputKind, Part, Sensed};
use winterset_calc::recommendation::Reason;
use winterset_calc::sensor_place::{Reason as PlaceReason, When};
use winterset_calc::winter_start::{BypassOutcome, Persists};
use winterset_calc::{Condition, Quantity};

use super::plan;
use crate::advice::{Advice, Ordered};
use crate::language::RuleWords;
use crate::pen::Pen;
use crate::units::Units;

pub(super) const ADVICE: Advice = Advice {
    methods: "Les méthodes côte à côte",
    methods_note: "Sur une année habituelle de ce site, à charge égale toute l’année. Les heures où la basse pression arrête le compresseur ne consomment rien et ne refroidissent pas.",
    stopped: "Arrêté\u{a0}: les méthodes, la précision, ce qui baisse le besoin et ce qu’il faut commander ne sont pas calculés.",
    work_out: "Calculer",
    hold_limit: "limite de froid",
    holds: "suffit",
    falls_short: "ne suffit pas",
    starts_an_hour: "dém./h",
    fan_energy: "ventil. par an",
    compressor_energy: "compresseur par an",
    recommended: "Conseillé",
    lowers_need: "Ce qui abaisse la pression nécessaire",
    nothing_lowers: "Aucun détendeur ni sous-refroidissement n’abaisse la pression nécessaire de ce système.",
    with_it: |need, limit| {
        format!("il faut {need}, et la variation de vitesse tient jusqu’à {limit}")
    },
    order: "À commander",
    nothing_to_order: "Il n’y a rien à commander.",
    sensor_place: "Où va la sonde de batterie",
    place_does: "La place habituelle convient\u{a0}: un coude aux deux tiers de la hauteur de la batterie est diphasique au point connu et au minimum du site.",
    winter_start: "Démarrage d’hiver",
    fan_motor: "Le moteur du ventilateur dans le froid",
    compressor_off: "Quand le compresseur peut rester arrêté",
    accuracy: "Quelle certitude",
    give_or_take: |method, span| {
        format!(
            "Si les valeurs supposées s’écartent autant que d’habitude, la limite de froid de la méthode «\u{a0}{}\u{a0}» peut bouger de {span} dans un sens ou dans l’autre.",
            method.to_lowercase()
        )
    },
    shared_bank: "Deux circuits sur un groupe de ventilateurs",
    shared_note: "Le circuit qui demande le plus d’air commande\u{a0}; l’autre en reçoit plus qu’il n’en veut. Répondez pour chaque circuit comme si tout l’air était le sien.",
    two_plans: "Il faut deux systèmes dont les réponses mènent à un plan.",
    first_circuit: "Premier circuit",
    second_circuit: "Deuxième circuit",
    shared_rung: |outdoor, leader, fan, other, head| {
        format!(
            "À {outdoor}\u{a0}: {leader} commande, ventilateurs à {fan}\u{a0}; {other} à {head}."
        )
    },
    drawn_down: "Sous sa pression nécessaire à cause de l’air de l’autre.",
    measure_first: |question| {
        format!("La mesure qui resserre le plus cette marge\u{a0}: {question}.")
    },
};

pub(super) fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::HoldsByItself => {
            "La pression de condensation se maintient d’elle-même jusqu’au minimum du site."
        }
        Reason::HoldsSteadily => {
            "Elle tient jusqu’au minimum du site, garde la pression de condensation stable et ne demande qu’un régulateur."
        }
        Reason::BaffleCloses => {
            "À la plus petite vitesse du ventilateur, le vent refroidit encore trop\u{a0}; avec un écran, non."
        }
        Reason::OnlyFloodingHolds => {
            "Même au plus petit débit d’air, la batterie est trop grande pour le froid. Du liquide qui en remplit une partie tient la pression de condensation haute et stable."
        }
        Reason::OnlySwitchingHolds => {
            "Aucune méthode stable possible sur ce système ne tient jusqu’au minimum du site. La commutation tient, mais la pression de condensation oscille, et chaque démarrage dérange le détendeur."
        }
        Reason::NothingHolds => {
            "Aucune méthode possible sur ce système ne tient jusqu’au minimum du site. Celle-ci en approche le plus."
        }
    }
}

/// What the condenser gets at the lowest load.
fn least(control: CapacityControl, share: &str) -> String {
    match control {
        CapacityControl::OnOff => {
            format!("À la plus petite charge, le condenseur reçoit {share} de la pleine chaleur.")
        }
        CapacityControl::Stages => format!(
            "Avec le dernier étage seul, le condenseur reçoit {share} de la pleine chaleur."
        ),
        CapacityControl::Unloading => format!(
            "Réduit autant qu’il peut, le compresseur donne au condenseur {share} de la pleine chaleur."
        ),
        CapacityControl::VariableSpeed => format!(
            "À sa plus petite vitesse, le compresseur donne au condenseur {share} de la pleine chaleur."
        ),
    }
}

pub(super) fn part_load(found: &PartLoad, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let method = plan::method(found.method).name.to_lowercase();
    let limit = pen.show(Quantity::Temperature(found.limit));
    let full = pen.show(Quantity::Temperature(found.full_load));
    let least = least(found.control, &pen.show(Quantity::Ratio(found.share)));
    match found.effect() {
        LoadEffect::Cycles => "Le compresseur tourne à pleine charge ou s’arrête, si bien que les limites de froid sont les mêmes à toute charge. Chaque démarrage après un arrêt par temps froid est un démarrage à froid.".to_owned(),
        LoadEffect::Stays if found.share >= 1.0 => format!("Les compresseurs ne tournent jamais sous la pleine charge. La limite de froid de la méthode «\u{a0}{method}\u{a0}» reste de {limit}."),
        LoadEffect::Stays => format!("{least} La limite de froid de la méthode «\u{a0}{method}\u{a0}» est encore de {limit}, comme à pleine charge."),
        LoadEffect::Rises => format!("{least} La limite de froid de la méthode «\u{a0}{method}\u{a0}» est alors de {limit}, contre {full} à pleine charge."),
    }
}

pub(super) fn change(change: Change) -> RuleWords {
    let (name, reason) = match change {
        Change::BalancedPort => (
            "Un détendeur à orifice équilibré",
            "La pression de condensation ne pousse pas sur son pointeau, et il alimente l’évaporateur à une pression plus basse.",
        ),
        Change::ElectronicValve => (
            "Un détendeur électronique",
            "Un moteur l’ouvre quelle que soit la pression, et c’est lui qui ouvre le plus.",
        ),
        Change::MoreSubcooling => (
            "Plus de sous-refroidissement",
            "Un liquide plus froid est plus dense et donne plus de puissance, et moins de pression suffit à garder la conduite de liquide sans gaz.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn condition(condition: Condition) -> RuleWords {
    let (name, reason) = match condition {
        Condition::Holds => (
            "Tient",
            "La pression de condensation reste à la pression nécessaire ou au-dessus.",
        ),
        Condition::BelowNeed => (
            "Sous la pression nécessaire",
            "La pression de condensation est plus basse que ce système ne le supporte durablement.",
        ),
        Condition::Starved => (
            "Évaporateur mal alimenté",
            "Le détendeur est grand ouvert et laisse passer trop peu\u{a0}: la surchauffe monte et la puissance baisse.",
        ),
        Condition::LowPressureTrip => (
            "Arrêté par basse pression",
            "La pression d’aspiration tombe sous la coupure basse pression, qui arrête le compresseur.",
        ),
        Condition::StalledFan => (
            "Ventilateur calé",
            "Dans ce froid la tension est trop basse pour que le moteur garde son ventilateur en rotation\u{a0}: il s’arrête et repart, et la pression de condensation n’est pas plus basse qu’indiqué.",
        ),
        Condition::AboveEnvelope => (
            "Hors du domaine d’emploi du compresseur",
            "Le compresseur condense au-dessus de ce que son fabricant admet.",
        ),
    };
    RuleWords { name, reason }
}

fn sensed(pen: &Pen, input: &Sensed) -> String {
    let (what, lowest, highest) = match *input {
        Sensed::Coil { lowest, highest } => (
            "la température de batterie",
            pen.brief(Quantity::Temperature(lowest)),
            pen.brief(Quantity::Temperature(highest)),
        ),
        Sensed::Pressure { lowest, highest } => (
            "la pression de liquide",
            pen.pressure(lowest),
            pen.pressure(highest),
        ),
    };
    format!("mesure {what} de {lowest} à {highest}")
}

fn motor(kind: MotorKind) -> &'static str {
    match kind {
        MotorKind::PermanentSplitCapacitor => "à condensateur permanent",
        MotorKind::ShadedPole => "à bagues de déphasage",
        MotorKind::ElectronicallyCommutated => "à commutation électronique",
        MotorKind::ThreePhase => "triphasé",
    }
}

fn output(kind: OutputKind) -> &'static str {
    match kind {
        OutputKind::PhaseCut => "sortie à découpe de phase",
        OutputKind::Signal => "sortie 0 à 10 V ou largeur d’impulsion",
        OutputKind::Frequency => "variateur de fréquence pour moteurs triphasés",
    }
}

pub(super) fn part(part: &Part, units: Units, atmosphere: Pressure) -> Ordered {
    let pen = Pen { units, atmosphere };
    let amps = |current| pen.at_least(Quantity::Current(current));
    let volts = |voltage| pen.show(Quantity::Voltage(voltage));
    let (name, value) = match *part {
        Part::Motor { from, to, count } => (
            "Moteur de ventilateur".to_owned(),
            format!("{count}, {}, au lieu de {}", motor(to), motor(from)),
        ),
        Part::Controller {
            output: kind,
            current,
            supply,
            ref input,
        } => {
            let rated = match current {
                Some(current) => format!("au moins {} sous {}", amps(current), volts(supply)),
                None => format!("pour moteurs sous {}", volts(supply)),
            };
            (
                "Régulateur de vitesse de ventilateur".to_owned(),
                format!("{}, {rated}, {}", output(kind), sensed(&pen, input)),
            )
        }
        Part::PressureSwitch { group, on, off } => (
            format!("Pressostat, groupe {group}"),
            format!(
                "marche à {}, arrêt à {}",
                pen.pressure(on),
                pen.pressure(off)
            ),
        ),
        Part::Contactor {
            group,
            current,
            supply,
        } => (
            format!("Contacteur, groupe {group}"),
            format!("au moins {} sous {}", amps(current), volts(supply)),
        ),
        Part::WindBaffle => (
            "Écran pare-vent".to_owned(),
            "garde toute la batterie du vent".to_owned(),
        ),
        Part::FloodingValve { setting } => (
            "Vanne de noyage".to_owned(),
            format!("maintient {}", pen.pressure(setting)),
        ),
        Part::Receiver { volume } => (
            "Bouteille de liquide".to_owned(),
            format!("au moins {}", units.volume(volume)),
        ),
        Part::ExtraCharge { mass } => (
            "Fluide en plus de la charge".to_owned(),
            units.mass(mass).to_string(),
        ),
        Part::CrankcaseHeater { power } => (
            "Résistance de carter".to_owned(),
            format!("environ {}", units.heater(power)),
        ),
        Part::LowPressureBypass { time } => (
            "Temporisation sur le pressostat basse pression".to_owned(),
            format!("le ponte {} au démarrage", pen.seconds(time)),
        ),
        Part::BalancedPortValve => (
            "Détendeur à orifice équilibré".to_owned(),
            "de la puissance du détendeur en place".to_owned(),
        ),
    };
    Ordered { name, value }
}

pub(super) fn fan_start(advice: &FanMotorAdvice, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let time = |time| pen.show(Quantity::Time(time));
    let start = match advice.start {
        FanStart::WithinBoost { time: all, by_wind } => format!(
            "Au minimum du site le ventilateur est lancé en {} environ à pleine sortie, dont {} pour arrêter ce que le vent fait tourner à l’envers.",
            time(all),
            time(by_wind)
        ),
        FanStart::LongerBoost { time: all, by_wind } => format!(
            "Au minimum du site le ventilateur prend {} environ à pleine sortie, dont {} pour arrêter ce que le vent fait tourner à l’envers\u{a0}: plus qu’une impulsion de démarrage habituelle.",
            time(all),
            time(by_wind)
        ),
        FanStart::Never => {
            "Au minimum du site le moteur ne lance pas le ventilateur contre la graisse froide et le vent, même à pleine sortie.".to_owned()
        }
    };
    match advice.wind {
        Some(wind) if advice.start != FanStart::Never => format!(
            "{start} Il démarre contre un vent allant jusqu’à {} sur la sortie d’air du ventilateur.",
            units.wind(wind)
        ),
        _ => start,
    }
}

pub(super) fn fan_heat(hottest: &Hottest, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let stands = match hottest.lowest_speed {
        LowestSpeed::Below => {
            "La vitesse minimale est en dessous\u{a0}: le ventilateur peut y tourner pendant des heures, vérifiez donc combien le moteur chauffe."
        }
        LowestSpeed::Inside => {
            "La vitesse minimale est dans cette zone\u{a0}: vérifiez combien le moteur chauffe, et relevez la sortie minimale s’il chauffe trop."
        }
        LowestSpeed::Above => {
            "La vitesse minimale est au-dessus, et le ventilateur n’y arrive jamais."
        }
    };
    format!(
        "Ralenti par sa tension, le moteur chauffe le plus à {}, à {} de la pleine sortie dans le froid, avec {} fois la chaleur du rotor à son point nominal. {stands}",
        pen.show(Quantity::Speed(hottest.speed)),
        pen.show(Quantity::Ratio(hottest.output)),
        units.times(hottest.loss)
    )
}

pub(super) fn fan_remedy(remedy: Remedy, advice: &FanMotorAdvice, units: Units) -> String {
    let share = Pen::without_gauge(units).at_least(Quantity::Ratio(advice.starts_from));
    match remedy {
        Remedy::FullOutputAtStart => format!(
            "À la sortie minimale le ventilateur peut ne pas démarrer à l’arrêt\u{a0}; il y faut {share}. Faites donner au régulateur la pleine sortie à chaque démarrage, aussi après une coupure d’alimentation."
        ),
        Remedy::LongerBoost => "Donnez-lui la pleine sortie plus longtemps.".to_owned(),
        Remedy::Baffle => "Abritez le ventilateur du vent par un déflecteur.".to_owned(),
        Remedy::KeepTurning => {
            "Gardez-le en rotation pendant le froid, ou choisissez un moteur plus fort ou à roulements à billes.".to_owned()
        }
    }
}

pub(super) fn bypass(outcome: &BypassOutcome, units: Units, atmosphere: Pressure) -> String {
    let pen = Pen { units, atmosphere };
    match *outcome {
        BypassOutcome::NeverTrips { lowest } => format!(
            "La pression d’aspiration ne tombe pas plus bas que {}, et le pressostat basse pression reste fermé. Il n’y a rien à ponter.",
            pen.pressure(lowest)
        ),
        BypassOutcome::Trips { until, lowest, .. } => format!(
            "La pression d’aspiration tombe à {} et ouvre le pressostat basse pression. Pontez le pressostat pendant {} au démarrage.",
            pen.pressure(lowest),
            pen.seconds(until)
        ),
        BypassOutcome::NeverRecovers {
            lowest,
            at_end,
            persists: Persists::StillRising,
            ..
        } => format!(
            "La pression d’aspiration tombe à {} et ouvre le pressostat basse pression. Après dix minutes, elle est à {} et monte encore\u{a0}: un pontage plus long peut suffire, et de la chaleur sur la bouteille l’abrège.",
            pen.pressure(lowest),
            pen.pressure(at_end)
        ),
        BypassOutcome::NeverRecovers {
            at_end,
            persists: Persists::Settled,
            ..
        } => format!(
            "La pression d’aspiration se stabilise à {}, sous le pressostat basse pression. Aucun pontage n’est assez long\u{a0}: chauffez la bouteille, ou noyez le condenseur.",
            pen.pressure(at_end)
        ),
    }
}

fn when(when: When) -> &'static str {
    match when {
        When::Design => "Au point connu",
        When::Low => "Au minimum du site",
    }
}

pub(super) fn place(reason: &PlaceReason, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    match *reason {
        PlaceReason::Superheated { when: at, short_by } => format!(
            "{}, la place habituelle a encore du gaz chaud, et la sonde lit trop chaud. Déplacez-la de {} du circuit vers la sortie de liquide.",
            when(at),
            pen.at_least(Quantity::Ratio(short_by))
        ),
        PlaceReason::Liquid {
            when: at,
            beyond_by,
        } => format!(
            "{}, la place habituelle n’a que du liquide, et la sonde lit trop froid. Déplacez-la de {} du circuit vers l’entrée de gaz, ou mesurez la pression.",
            when(at),
            pen.at_least(Quantity::Ratio(beyond_by))
        ),
        PlaceReason::OffByGlide { when: at, off, .. } => {
            let (off, side) = match off.get::<kelvin_interval>() {
                warmer if warmer >= 0.0 => (off, "haut"),
                _ => (-off, "bas"),
            };
            format!(
                "{}, le glissement du fluide fait lire {} trop {side} à une sonde à la place habituelle. Mesurez la pression, ou déplacez la sonde vers le milieu de la condensation.",
                when(at),
                pen.show(Quantity::Difference(off))
            )
        }
    }
}

pub(super) fn off(outcome: &Off, duty: Duty, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let carrier = match duty {
        Duty::RoomCooling => "l’air extérieur, filtré et mélangé,",
        Duty::Cooler | Duty::Freezer => "un aérorefroidisseur avec une batterie dans le local",
    };
    match *outcome {
        Off::Saves {
            up_to,
            time,
            energy,
            ..
        } => format!(
            "Jusqu’à {} dehors, {carrier} pourrait porter toute la charge\u{a0}: {} par an compresseur arrêté, soit environ {} d’économie.",
            pen.brief(Quantity::Temperature(up_to)),
            units.hours(time),
            units.energy(energy)
        ),
        Off::SavesNothing { up_to, time, .. } => format!(
            "Jusqu’à {} dehors, {carrier} pourrait porter toute la charge, {} par an, mais prend autant d’énergie qu’il y en a à économiser.",
            pen.brief(Quantity::Temperature(up_to)),
            units.hours(time)
        ),
        Off::NeverColdEnough { up_to, coldest } => format!(
            "Sous {} dehors, {carrier} pourrait porter toute la charge, mais une année ne descend ici qu’à {}.",
            pen.brief(Quantity::Temperature(up_to)),
            pen.brief(Quantity::Temperature(coldest))
        ),
    }
}

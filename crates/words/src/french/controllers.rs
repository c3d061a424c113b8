//! A technician's own controllers in French: their limits, and how a settings sheet stands to them.

use uom::si::f64::{ElectricCurrent, Pressure};
use winterset_calc::Quantity;
use winterset_calc::input::Sensing;
use winterset_calc::motor::Loading;
use winterset_calc::own_controller::{
    Effect, Finding, MotorOutput, Outside, Safety, Setting, Standing,
};
use winterset_profile::{ControllerField, ControllerProblem, Scale};

use super::French;
use crate::amounts::at_least_as_typed;
use crate::controllers::{ControllerLabels, ControllerWords};
use crate::language::{FieldWords, Words};
use crate::pen::Pen;
use crate::units::Units;

static LABELS: ControllerLabels = ControllerLabels {
    own: "Vos régulateurs",
    own_note: "Saisissez une fois les limites d’un régulateur. Un plan montre alors lesquels de ses réglages le régulateur accepte.",
    none_yet: "Pas encore de régulateur.",
    add: "Ajouter un régulateur",
    unnamed: "Régulateur sans nom",
    name: "Nom du régulateur",
    output: "Type de sortie",
    output_help: "Ce qui part du régulateur vers le moteur du ventilateur. Son schéma de raccordement le dit.",
    output_unknown: "Inconnu",
    outputs: "Sortie",
    pressure_input: "Entrée de pression",
    temperature_input: "Entrée de température",
    settings: "Réglages du ventilateur",
    supply: "Alimentation et moteurs",
    limits_note: "Un champ vide n’est pas comparé à un plan. Laissez vide l’entrée que le régulateur n’a pas.",
    count: |count| match count {
        0 => "pas encore de limites".to_owned(),
        1 => "1 limite".to_owned(),
        count => format!("{count} limites"),
    },
    wrong: |count| match count {
        1 => "1 limite à revoir".to_owned(),
        count => format!("{count} limites à revoir"),
    },
    remove: "Supprimer ce régulateur",
    remove_question: |name| format!("Supprimer {name} avec ses limites\u{a0}? C’est définitif."),
    gone: "Ce régulateur n’est pas sur ce téléphone.",
    on_yours: "Sur votre régulateur",
    which: "Régulateur",
    none_chosen: "Aucun choisi",
    choose_note: "Choisissez-en un pour voir quels réglages il accepte.",
    to_settings: "Saisir les limites de votre régulateur",
    to_limits: "Ses limites",
    limits_wrong: |count| match count {
        1 => "Une de ses limites est inutilisable et compte comme non indiquée.".to_owned(),
        count => {
            format!("{count} de ses limites sont inutilisables et comptent comme non indiquées.")
        }
    },
};

impl ControllerWords for French {
    fn labels(&self) -> &'static ControllerLabels {
        &LABELS
    }

    fn field(&self, field: ControllerField) -> FieldWords {
        let (ask, help) = field_words(field);
        FieldWords { ask, help }
    }

    fn output(&self, output: MotorOutput) -> &'static str {
        match output {
            MotorOutput::PhaseCut => "Découpe de phase vers le moteur",
            MotorOutput::ZeroToTenVolts => "0 à 10 V",
            MotorOutput::PulseWidth => "Largeur d’impulsion",
            MotorOutput::Contact => "Contact, marche et arrêt",
        }
    }

    fn problem(&self, problem: &ControllerProblem, scale: Scale, atmosphere: Pressure) -> String {
        match problem {
            ControllerProblem::Amount(problem) => {
                self.worksheets().amount_problem(problem, scale, atmosphere)
            }
            ControllerProblem::Missing => {
                "Saisissez aussi celle-ci, pour que les limites soient complètes.".to_owned()
            }
            ControllerProblem::BelowLowest { lowest } => format!(
                "Saisissez au moins la plus basse, {}.",
                at_least_as_typed(scale, *lowest, atmosphere)
            ),
        }
    }

    fn setting(&self, setting: Setting) -> &'static str {
        match setting {
            Setting::Input => "Entrée",
            Setting::FullSpeedPoint => "Point de pleine vitesse",
            Setting::ThrottlingRange => "Plage de modulation",
            Setting::MinimumOutput => "Sortie minimale",
            Setting::StartBoost => "Impulsion de démarrage",
            Setting::MotorOutput => "Sortie vers le moteur",
            Setting::SupplyVoltage => "Tension d’alimentation",
            Setting::RatedCurrent => "Intensité nominale",
        }
    }

    fn finding(&self, finding: &Finding, units: Units, atmosphere: Pressure) -> String {
        let pen = Pen { units, atmosphere };
        match &finding.standing {
            Standing::Inside => "Votre régulateur l’accepte.".to_owned(),
            Standing::NotStated => {
                "Absent des limites que vous avez saisies. Cherchez-le avant de vous y fier.".to_owned()
            }
            Standing::Outside(found) => outside(&pen, found),
            Standing::NotANumber => {
                "Le plan n’a pas de valeur pour cela. Vérifiez les données du système.".to_owned()
            }
            Standing::NoSuchInput { wanted, .. } => format!(
                "Le plan mesure {}, et votre régulateur n’a pas d’entrée pour cela. Choisissez dans les données l’autre façon de mesurer, ou un autre régulateur.",
                sensed(*wanted)
            ),
            Standing::NoSuchOutput { wanted, offered } => format!(
                "Le moteur accepte {}, et votre régulateur donne {}. Une autre sortie peut abîmer le moteur ou le régulateur\u{a0}: prenez un autre régulateur.",
                outputs(wanted),
                outputs(offered)
            ),
            Standing::ShortOfReserve(loading) => format!(
                "{} Il les porte, mais sans la réserve habituelle d’un quart du plus gros moteur\u{a0}: à {} il l’aurait.",
                load(&pen, loading),
                current(&pen, loading.needed)
            ),
            Standing::Overloaded(loading) => format!(
                "{} Il ne les porte pas\u{a0}: prenez-en un pour {}, ou un contacteur.",
                load(&pen, loading),
                current(&pen, loading.needed)
            ),
            Standing::Currents(_) => {
                "Les intensités des moteurs ne s’additionnent pas. Vérifiez dans les données le nombre de ventilateurs, leur puissance et l’intensité à pleine charge.".to_owned()
            }
        }
    }

    fn safety(&self, safety: Safety) -> &'static str {
        match safety {
            Safety::Safe => "Sûr",
            Safety::Check => "À vérifier d’abord",
            Safety::Unsafe => "Pas sûr",
        }
    }

    fn whole(&self, safety: Safety) -> &'static str {
        match safety {
            Safety::Safe => "Ce régulateur accepte la fiche de réglage.",
            Safety::Check => {
                "Ce régulateur peut convenir. Vérifiez ce qui est marqué avant la mise en marche."
            }
            Safety::Unsafe => {
                "Ne faites pas marcher le système sur ce régulateur tel quel. Ce qui est marqué dit pourquoi."
            }
        }
    }
}

/// Question and help.
fn field_words(field: ControllerField) -> (&'static str, &'static str) {
    use ControllerField as F;
    let point = "Valeur mesurée à laquelle le ventilateur atteint la pleine vitesse. La notice du régulateur l’appelle consigne ou point de pleine vitesse.";
    let range = "À quel écart sous le point de pleine vitesse le ventilateur arrive à son minimum. S’il ne se règle pas, les deux limites sont égales.";
    let output = "La plus petite sortie ventilateur en marche, en part de la pleine sortie. Si elle ne se règle pas, les deux limites sont égales.";
    let boost = "Durée à pleine sortie au démarrage depuis l’arrêt. S’il n’y en a pas, saisissez 0 deux fois.";
    let supply = "Tension à laquelle le régulateur peut être raccordé.";
    match field {
        F::PressurePointLowest => ("Pression de pleine vitesse, la plus basse", point),
        F::PressurePointHighest => ("Pression de pleine vitesse, la plus haute", point),
        F::PressureRangeLowest => ("Plage de modulation en pression, la plus étroite", range),
        F::PressureRangeHighest => ("Plage de modulation en pression, la plus large", range),
        F::TemperaturePointLowest => ("Température de pleine vitesse, la plus basse", point),
        F::TemperaturePointHighest => ("Température de pleine vitesse, la plus haute", point),
        F::TemperatureRangeLowest => ("Plage de modulation en température, la plus étroite", range),
        F::TemperatureRangeHighest => ("Plage de modulation en température, la plus large", range),
        F::MinimumOutputLowest => ("Sortie minimale, la plus basse", output),
        F::MinimumOutputHighest => ("Sortie minimale, la plus haute", output),
        F::StartBoostLowest => ("Impulsion de démarrage, la plus courte", boost),
        F::StartBoostHighest => ("Impulsion de démarrage, la plus longue", boost),
        F::SupplyLowest => ("Tension d’alimentation, la plus basse", supply),
        F::SupplyHighest => ("Tension d’alimentation, la plus haute", supply),
        F::RatedCurrent => (
            "Intensité nominale",
            "La plus grande intensité de tous les moteurs du régulateur ensemble, de sa plaque.",
        ),
    }
}

fn sensed(sensing: Sensing) -> &'static str {
    match sensing {
        Sensing::CoilTemperature => "la température de batterie",
        Sensing::LiquidPressure => "la pression",
    }
}

fn outputs(kinds: &[MotorOutput]) -> String {
    let named: Vec<_> = kinds
        .iter()
        .map(|kind| match kind {
            MotorOutput::PhaseCut => "une alimentation par découpe de phase",
            MotorOutput::ZeroToTenVolts => "un signal de 0 à 10 V",
            MotorOutput::PulseWidth => "un signal en largeur d’impulsion",
            MotorOutput::Contact => "un simple contact",
        })
        .collect();
    if named.is_empty() {
        return "une sortie inconnue ici".to_owned();
    }
    named.join(" ou ")
}

/// What using the nearest value does.
fn effect(effect: Effect) -> &'static str {
    match effect {
        Effect::HoldLimitRises => {
            "Le ventilateur déplace alors plus d’air par grand froid, et la limite de froid est moins basse que prévu."
        }
        Effect::BelowLowestSpeed => {
            "Le ventilateur tourne alors plus lentement que ne le permet son palier ou son couple."
        }
        Effect::LongerBoost => {
            "Une impulsion plus longue coûte un peu de pression de condensation à chaque démarrage."
        }
        Effect::MayNotStart => {
            "Le ventilateur peut alors rester à l’arrêt au démarrage par grand froid."
        }
        Effect::RunsHotter => {
            "Le ventilateur ralentit alors à une pression de condensation plus haute. Vérifiez qu’il atteint encore la pleine vitesse par temps chaud."
        }
        Effect::BelowNeed => {
            "La pression de condensation tombe alors sous la pression nécessaire par grand froid."
        }
        Effect::MayHunt => "Dans une plage plus étroite, le ventilateur peut pomper.",
        Effect::CannotBeSet => {
            "L’alimentation est ce qu’elle est. N’y raccordez pas ce régulateur."
        }
    }
}

fn current(pen: &Pen, current: ElectricCurrent) -> String {
    pen.show(Quantity::Current(current))
}

fn load(pen: &Pen, loading: &Loading) -> String {
    format!(
        "Les moteurs prennent ensemble {}\u{a0}; l’intensité nominale de votre régulateur est {}.",
        current(pen, loading.sum),
        current(pen, loading.rating)
    )
}

fn outside(pen: &Pen, found: &Outside) -> String {
    let is_low = found.wanted.si() < found.low.si();
    let limit = if is_low { found.low } else { found.high };
    let (wanted, limit) = (pen.show(found.wanted), pen.show(limit));
    // Two values that are written alike would seem to be inside.
    let close = match (wanted == limit, is_low) {
        (false, _) => "",
        (true, true) => "un peu moins de ",
        (true, false) => "un peu plus de ",
    };
    let reach = if is_low {
        "ne descend qu’à"
    } else {
        "ne monte qu’à"
    };
    let taken = format!("Il faut {close}{wanted}\u{a0}; votre régulateur {reach} {limit}.");
    match found.nearest {
        Some(nearest) => format!(
            "{taken} Le plus proche qu’il accepte est {}. {}",
            pen.show(nearest),
            effect(found.effect)
        ),
        None => format!("{taken} {}", effect(found.effect)),
    }
}

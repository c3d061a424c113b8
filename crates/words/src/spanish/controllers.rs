//! A technician's own controllers in Spanish: their limits, and how a settings sheet stands to them.

use uom::si::f64::{ElectricCurrent, Pressure};
use winterset_calc::Quantity;
use winterset_calc::input::Sensing;
use winterset_calc::motor::Loading;
use winterset_calc::own_controller::{
    Effect, Finding, MotorOutput, Outside, Safety, Setting, Standing,
};
use winterset_profile::{ControllerField, ControllerProblem, Scale};

use super::Spanish;
use crate::amounts::at_least_as_typed;
use crate::controllers::{ControllerLabels, ControllerWords};
use crate::language::{FieldWords, Words};
use crate::pen::Pen;
use crate::units::Units;

static LABELS: ControllerLabels = ControllerLabels {
    own: "Controladores propios",
    own_note: "Introduzca una sola vez los límites de un controlador. Un plan muestra entonces cuáles de sus ajustes admite el controlador.",
    none_yet: "Todavía sin controladores.",
    add: "Añadir un controlador",
    unnamed: "Controlador sin nombre",
    name: "Nombre del controlador",
    output: "Tipo de salida",
    output_help: "Lo que sale del controlador hacia el motor del ventilador. Su hoja de conexiones dice cuál es.",
    output_unknown: "No se sabe",
    outputs: "Salida",
    pressure_input: "Entrada de presión",
    temperature_input: "Entrada de temperatura",
    settings: "Ajustes del ventilador",
    supply: "Alimentación y motores",
    limits_note: "Lo que queda en blanco no se compara con un plan. Deje en blanco la entrada que el controlador no tiene.",
    count: |count| match count {
        0 => "todavía sin límites".to_owned(),
        1 => "1 límite".to_owned(),
        count => format!("{count} límites"),
    },
    wrong: |count| match count {
        1 => "1 límite por revisar".to_owned(),
        count => format!("{count} límites por revisar"),
    },
    remove: "Eliminar este controlador",
    remove_question: |name| format!("¿Eliminar {name} con sus límites? No se puede deshacer."),
    gone: "Este controlador no está en este teléfono.",
    on_yours: "En su controlador",
    which: "Controlador",
    none_chosen: "Ninguno elegido",
    choose_note: "Elija uno para ver qué ajustes admite.",
    to_settings: "Introducir los límites de su controlador",
    to_limits: "Sus límites",
    limits_wrong: |count| match count {
        1 => "Uno de sus límites no se puede usar y cuenta como no indicado.".to_owned(),
        count => format!("{count} de sus límites no se pueden usar y cuentan como no indicados."),
    },
};

impl ControllerWords for Spanish {
    fn labels(&self) -> &'static ControllerLabels {
        &LABELS
    }

    fn field(&self, field: ControllerField) -> FieldWords {
        let (ask, help) = field_words(field);
        FieldWords { ask, help }
    }

    fn output(&self, output: MotorOutput) -> &'static str {
        match output {
            MotorOutput::PhaseCut => "Corte de fase hacia el motor",
            MotorOutput::ZeroToTenVolts => "De 0 a 10 V",
            MotorOutput::PulseWidth => "Ancho de pulso",
            MotorOutput::Contact => "Contacto, marcha y paro",
        }
    }

    fn problem(&self, problem: &ControllerProblem, scale: Scale, atmosphere: Pressure) -> String {
        match problem {
            ControllerProblem::Amount(problem) => {
                self.worksheets().amount_problem(problem, scale, atmosphere)
            }
            ControllerProblem::Missing => {
                "Introduzca también este, para que los límites estén completos.".to_owned()
            }
            ControllerProblem::BelowLowest { lowest } => format!(
                "Introduzca al menos el mínimo, {}.",
                at_least_as_typed(scale, *lowest, atmosphere)
            ),
        }
    }

    fn setting(&self, setting: Setting) -> &'static str {
        match setting {
            Setting::Input => "Entrada",
            Setting::FullSpeedPoint => "Punto de velocidad plena",
            Setting::ThrottlingRange => "Rango de modulación",
            Setting::MinimumOutput => "Salida mínima",
            Setting::StartBoost => "Impulso de arranque",
            Setting::MotorOutput => "Salida hacia el motor",
            Setting::SupplyVoltage => "Tensión de alimentación",
            Setting::RatedCurrent => "Corriente nominal",
        }
    }

    fn finding(&self, finding: &Finding, units: Units, atmosphere: Pressure) -> String {
        let pen = Pen { units, atmosphere };
        match &finding.standing {
            Standing::Inside => "Su controlador lo admite.".to_owned(),
            Standing::NotStated => {
                "No está entre los límites que usted introdujo. Búsquelo antes de contar con ello.".to_owned()
            }
            Standing::Outside(found) => outside(&pen, found),
            Standing::NotANumber => {
                "El plan no tiene valor para esto. Revise los datos del sistema.".to_owned()
            }
            Standing::NoSuchInput { wanted, .. } => format!(
                "El plan mide {}, y su controlador no tiene entrada para eso. Elija en los datos la otra forma de medir, u otro controlador.",
                sensed(*wanted)
            ),
            Standing::NoSuchOutput { wanted, offered } => format!(
                "El motor admite {}, y su controlador da {}. Otra salida puede dañar el motor o el controlador: use otro controlador.",
                outputs(wanted),
                outputs(offered)
            ),
            Standing::ShortOfReserve(loading) => format!(
                "{} Los soporta, pero sin la reserva habitual de un cuarto del motor mayor: con {} la tendría.",
                load(&pen, loading),
                current(&pen, loading.needed)
            ),
            Standing::Overloaded(loading) => format!(
                "{} No los soporta: use uno para {}, o un contactor.",
                load(&pen, loading),
                current(&pen, loading.needed)
            ),
            Standing::Currents(_) => {
                "Las corrientes de los motores no se pueden sumar. Revise en los datos el número de ventiladores, su potencia y la corriente a plena carga.".to_owned()
            }
        }
    }

    fn safety(&self, safety: Safety) -> &'static str {
        match safety {
            Safety::Safe => "Seguro",
            Safety::Check => "Revisar antes",
            Safety::Unsafe => "No es seguro",
        }
    }

    fn whole(&self, safety: Safety) -> &'static str {
        match safety {
            Safety::Safe => "Este controlador admite la hoja de ajustes.",
            Safety::Check => {
                "Este controlador puede servir. Revise lo marcado antes de ponerlo en marcha."
            }
            Safety::Unsafe => {
                "No ponga en marcha el sistema con este controlador tal como está. Lo marcado dice por qué."
            }
        }
    }
}

/// Question and help.
fn field_words(field: ControllerField) -> (&'static str, &'static str) {
    use ControllerField as F;
    let point = "Valor medido con el que el ventilador alcanza la velocidad plena. La hoja del controlador lo llama consigna o punto de velocidad plena.";
    let range = "Cuánto por debajo del punto de velocidad plena llega el ventilador a su mínimo. Si no se puede cambiar, los dos límites son iguales.";
    let output = "La menor salida con el ventilador en marcha, como parte de la salida plena. Si no se puede cambiar, los dos límites son iguales.";
    let boost =
        "Tiempo a salida plena al arrancar desde parado. Si no lo hay, introduzca 0 dos veces.";
    let supply = "Tensión a la que se puede conectar el controlador.";
    match field {
        F::PressurePointLowest => ("Presión de velocidad plena, mínima", point),
        F::PressurePointHighest => ("Presión de velocidad plena, máxima", point),
        F::PressureRangeLowest => ("Rango de modulación de la presión, el más estrecho", range),
        F::PressureRangeHighest => ("Rango de modulación de la presión, el más ancho", range),
        F::TemperaturePointLowest => ("Temperatura de velocidad plena, mínima", point),
        F::TemperaturePointHighest => ("Temperatura de velocidad plena, máxima", point),
        F::TemperatureRangeLowest => (
            "Rango de modulación de la temperatura, el más estrecho",
            range,
        ),
        F::TemperatureRangeHighest => {
            ("Rango de modulación de la temperatura, el más ancho", range)
        }
        F::MinimumOutputLowest => ("Salida mínima, la menor", output),
        F::MinimumOutputHighest => ("Salida mínima, la mayor", output),
        F::StartBoostLowest => ("Impulso de arranque, el más corto", boost),
        F::StartBoostHighest => ("Impulso de arranque, el más largo", boost),
        F::SupplyLowest => ("Tensión de alimentación, mínima", supply),
        F::SupplyHighest => ("Tensión de alimentación, máxima", supply),
        F::RatedCurrent => (
            "Corriente nominal",
            "La mayor corriente de todos los motores del controlador juntos, de su placa.",
        ),
    }
}

fn sensed(sensing: Sensing) -> &'static str {
    match sensing {
        Sensing::CoilTemperature => "la temperatura del serpentín",
        Sensing::LiquidPressure => "la presión",
    }
}

fn outputs(kinds: &[MotorOutput]) -> String {
    let named: Vec<_> = kinds
        .iter()
        .map(|kind| match kind {
            MotorOutput::PhaseCut => "alimentación por corte de fase",
            MotorOutput::ZeroToTenVolts => "una señal de 0 a 10 V",
            MotorOutput::PulseWidth => "una señal de ancho de pulso",
            MotorOutput::Contact => "solo un contacto",
        })
        .collect();
    if named.is_empty() {
        return "una salida que aquí no se conoce".to_owned();
    }
    named.join(" o ")
}

/// What using the nearest value does.
fn effect(effect: Effect) -> &'static str {
    match effect {
        Effect::HoldLimitRises => {
            "El ventilador mueve entonces más aire cuando hace frío, y el límite de frío es más cálido de lo previsto."
        }
        Effect::BelowLowestSpeed => {
            "El ventilador gira entonces más lento de lo que admite su cojinete o su par."
        }
        Effect::LongerBoost => {
            "Un impulso más largo cuesta algo de presión de condensación en cada arranque."
        }
        Effect::MayNotStart => "El ventilador puede entonces quedar parado al arrancar con frío.",
        Effect::RunsHotter => {
            "El ventilador se frena entonces a una presión de condensación mayor. Compruebe que todavía alcanza la velocidad plena un día cálido."
        }
        Effect::BelowNeed => {
            "La presión de condensación cae entonces por debajo de la necesaria cuando hace frío."
        }
        Effect::MayHunt => "En un rango más estrecho el ventilador puede oscilar.",
        Effect::CannotBeSet => "La alimentación es la que es. No conecte este controlador a ella.",
    }
}

fn current(pen: &Pen, current: ElectricCurrent) -> String {
    pen.show(Quantity::Current(current))
}

fn load(pen: &Pen, loading: &Loading) -> String {
    format!(
        "Los motores toman juntos {}; la corriente nominal de su controlador es {}.",
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
        (true, true) => "un poco menos de ",
        (true, false) => "un poco más de ",
    };
    let reach = if is_low { "no baja de" } else { "no pasa de" };
    let taken = format!("Se pide {close}{wanted}; su controlador {reach} {limit}.");
    match found.nearest {
        Some(nearest) => format!(
            "{taken} Lo más cercano que admite es {}. {}",
            pen.show(nearest),
            effect(found.effect)
        ),
        None => format!("{taken} {}", effect(found.effect)),
    }
}

//! The worksheets on sensors and on a winter start, in Spanish.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::SheetRule;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::{StartError, StartInput};
use winterset_profile::{Amount, Measure, Question};

use super::problems;
use crate::units::Units;
use crate::worksheets::StartLabels;

pub(super) static LABELS: StartLabels = StartLabels {
    open: "abierto",
    open_reason: "Más resistencia que en el extremo más frío: un cable o un sensor roto.",
    short: "en corto",
    short_reason: "Menos resistencia que en el extremo más caliente: cables que se tocan, o agua en el sensor.",
    signal_low: "demasiado baja",
    signal_low_reason: "Por debajo de su rango: sin alimentación, un cable roto, o un corto con el común.",
    signal_high: "demasiado alta",
    signal_high_reason: "Por encima de su rango: el cable común roto, un corto con la alimentación, o un sensor dañado.",
    e24: "Resistencia, serie E24 (5 %)",
    e96: "Resistencia, serie E96 (1 %)",
    e24_shows: "La resistencia E24 muestra",
    e96_shows: "La resistencia E96 muestra",
    closed: "En reposo, por encima del corte",
    closed_reason: "El presostato de baja está cerrado antes del arranque.",
    as_it_was: "como estaba",
    as_it_was_reason: "Entre corte y conexión el presostato sigue como estaba. Tras un paro por el presostato está abierto.",
    missing: "En reposo, por debajo de la conexión",
    missing_reason: "El presostato de baja está abierto: sin un puente el compresor no arranca.",
    none_needed: "no hace falta",
    none_needed_reason: "La presión de succión queda por encima del corte.",
    longer: "más de 10 min",
    longer_reason: "La presión de succión todavía sube a los diez minutos. El calor en el recipiente lo acorta.",
    never: "ninguno basta",
    never_reason: "La presión de succión se queda por debajo del presostato. Caliente el recipiente, o mantenga la presión de condensación por inundación.",
    curve: "Curva del sensor",
    temperature: "Temperatura",
    pressure: "Presión",
    resistance: "Resistencia",
    signal: "Señal",
    curve_marker: "Marcador de la curva del sensor",
    curve_summary: |(sensed, signal), (last_sensed, last_signal)| {
        format!("De {signal} a {sensed} hasta {last_signal} a {last_sensed}.")
    },
};

pub(super) fn choice(key: &str) -> Option<&'static str> {
    Some(match key {
        "thermistor" => "Termistor (NTC)",
        "transducer" => "Transductor de presión",
        "beta" => "Resistencia a 25 °C, y beta",
        "points" => "Tres puntos de su tabla",
        "coefficients" => "Coeficientes A, B y C",
        "ratiometric" => "Voltios, parte de su alimentación",
        "current-loop" => "De 4 a 20 mA",
        "gauge" => "Manométrica",
        "sealed" => "Manométrica sellada",
        "absolute" => "Absoluta",
        _ => return None,
    })
}

pub(super) fn question(question: Question) -> Option<(&'static str, &'static str)> {
    Some(match question {
        Question::SensorKind => (
            "Tipo de sensor",
            "Un termistor da una temperatura, un transductor una presión.",
        ),
        Question::ThermistorBy => (
            "Su curva se conoce por",
            "Lejos de 25 °C (77 °F) tres puntos de la tabla del fabricante aciertan más que beta.",
        ),
        Question::BaseResistance => (
            "Resistencia a 25 °C (77 °F)",
            "Como se vende el sensor, por ejemplo 10 kΩ.",
        ),
        Question::Beta => ("Valor beta", "De la hoja de datos, en kelvin."),
        Question::PointTemperature(number) => point_temperature(number),
        Question::PointResistance(number) => point_resistance(number),
        Question::Coefficient(number) => coefficient(number),
        Question::TransducerBy => (
            "Su señal",
            "Con tres hilos suele ser en voltios, con dos hilos una corriente.",
        ),
        Question::RangeReference => (
            "Su rango se cuenta desde",
            "Manométrica: el aire que lo rodea. Manométrica sellada: aire al nivel del mar, encerrado. Absoluta: un vacío.",
        ),
        Question::RangeLow => (
            "Extremo inferior del rango",
            "La presión de la señal mínima, de su etiqueta.",
        ),
        Question::RangeHigh => (
            "Extremo superior del rango",
            "La presión de la señal plena, de su etiqueta.",
        ),
        Question::SensorSupply => (
            "Alimentación del transductor",
            "Medida en sus bornes, al mismo tiempo que la salida.",
        ),
        Question::LowShare => (
            "Salida en el extremo inferior",
            "De la alimentación: 0,5 V de 5 V son el 10 %.",
        ),
        Question::HighShare => (
            "Salida en el extremo superior",
            "De la alimentación: 4,5 V de 5 V son el 90 %.",
        ),
        Question::MeterResistance => (
            "Resistencia del sensor",
            "Medida con los dos hilos sueltos del controlador. Para un circuito abierto introduzca 100 MΩ.",
        ),
        Question::MeterOutput => (
            "Salida del transductor",
            "Medida entre señal y común, con el controlador conectado.",
        ),
        Question::MeterCurrent => ("Corriente del lazo", "Medida en serie con el transductor."),
        Question::SimulatedTemperature => (
            "Temperatura que simular",
            "Lo que el controlador debe ver cuando usted lo prueba.",
        ),
        Question::SimulatedPressure => (
            "Presión que simular",
            "Lo que el controlador debe ver cuando usted lo prueba.",
        ),
        Question::SensorElevation => (
            "Altitud sobre el nivel del mar",
            "Más arriba la presión manométrica se cuenta desde menos aire. Todas las hojas conservan la última introducida.",
        ),
        Question::Room => (
            "Temperatura del espacio enfriado",
            "Del aire que entra al evaporador.",
        ),
        Question::CutOut => (
            "El presostato de baja abre a",
            "Su corte, como está ajustado. Algunos tienen conexión y diferencial: reste el diferencial.",
        ),
        Question::CutIn => (
            "El presostato de baja cierra a",
            "Su conexión, como está ajustada. Igual al corte o por encima.",
        ),
        Question::Condensing => (
            "Temperatura de condensación",
            "Temperatura de rocío en el punto conocido, donde el ventilador la mantiene después.",
        ),
        Question::Metering => (
            "Dispositivo de expansión",
            "Cuánto puede abrir decide qué pronto llega líquido.",
        ),
        Question::LiquidAtStart => (
            "Recipiente al arrancar",
            "Tan frío como el exterior si nada lo mantiene caliente.",
        ),
        Question::ReceiverHeat => (
            "Calefactor del recipiente",
            "Calor que está conectado durante el arranque.",
        ),
        Question::StartConductance => (
            "Calor que el condensador pierde al arrancar",
            "Por cada grado más caliente que el exterior. En blanco: ventiladores parados, viento flojo.",
        ),
        Question::HeatCapacity => (
            "Calor que absorben condensador y recipiente",
            "Con su líquido, por grado. En blanco, va según la capacidad frigorífica.",
        ),
        Question::LowSideVolume => (
            "Volumen interior del lado de baja",
            "Evaporador, línea de succión y la carcasa del compresor.",
        ),
        Question::EvaporatorCharge => (
            "Refrigerante en el evaporador en marcha",
            "Tras una noche larga no queda nada en él.",
        ),
        Question::Around => (
            "Aire que rodea el compresor",
            "Fuera, tan frío como el exterior; en una sala de máquinas, más cálido.",
        ),
        Question::SumpRise => (
            "Cárter por encima de él",
            "Cuánto se mantiene el aceite por encima de su entorno y de lo que se condensaría en él.",
        ),
        Question::SumpConductance => (
            "Calor que pierde la carcasa",
            "Por grado. En blanco: una carcasa desnuda de tamaño habitual con un viento de 3 m/s (7 mph). Una camisa aislante lo reduce a la mitad.",
        ),
        _ => return None,
    })
}

fn point_temperature(number: usize) -> (&'static str, &'static str) {
    let help = "La temperatura de un punto de la tabla.";
    match number {
        0 => ("Primer punto, temperatura", help),
        1 => ("Segundo punto, temperatura", help),
        _ => ("Tercer punto, temperatura", help),
    }
}

fn point_resistance(number: usize) -> (&'static str, &'static str) {
    let help = "La resistencia que la tabla da allí.";
    match number {
        0 => ("Primer punto, resistencia", help),
        1 => ("Segundo punto, resistencia", help),
        _ => ("Tercer punto, resistencia", help),
    }
}

fn coefficient(number: usize) -> (&'static str, &'static str) {
    let help = "De la hoja de datos, con la resistencia en ohmios y la temperatura en kelvin.";
    match number {
        0 => ("A", help),
        1 => ("B", help),
        _ => ("C", help),
    }
}

pub(super) fn rule(rule: SheetRule) -> Option<(&'static str, &'static str)> {
    Some(match rule {
        SheetRule::BetaTemperature | SheetRule::SteinhartTemperature => (
            "El sensor está a",
            "Lo que ve un controlador en buen estado con esta resistencia.",
        ),
        SheetRule::BetaResistance | SheetRule::SteinhartResistance => (
            "El sensor tendría",
            "Su resistencia a la temperatura que simular.",
        ),
        SheetRule::SubstituteResistor => (
            "Resistencia que conectar",
            "El valor de su serie más cercano en temperatura, en lugar del sensor.",
        ),
        SheetRule::SubstituteTemperature => (
            "Esa resistencia muestra",
            "Lo que el controlador ve entonces. Su tolerancia lo mueve de T_min a T_max.",
        ),
        SheetRule::RatiometricPressure | SheetRule::LoopPressure => {
            ("Presión", "Lo que el transductor dice al controlador.")
        }
        SheetRule::RatiometricOutput => (
            "Salida que aplicar",
            "En lugar del transductor, con la misma alimentación.",
        ),
        SheetRule::LoopCurrent => ("Corriente que aplicar", "En lugar del transductor."),
        SheetRule::SwitchMargin => (
            "Presostato de baja antes del arranque",
            "Presión en reposo del lado de baja, con las presiones igualadas, frente al presostato.",
        ),
        SheetRule::StandingOutdoor => (
            "Presión en reposo, exterior",
            "Condensador, recipiente y línea de líquido tras la noche.",
        ),
        SheetRule::StandingLow => (
            "Presión en reposo, lado de baja",
            "Lo menos a que puede caer: tarde o temprano la fija el lado más frío.",
        ),
        SheetRule::BypassTime => (
            "Puente del presostato de baja",
            "Desde el arranque hasta que la presión de succión queda por encima de la conexión.",
        ),
        SheetRule::LowestSuction => (
            "Presión de succión más baja",
            "En el arranque, antes de que llegue líquido.",
        ),
        SheetRule::SumpTemperature => (
            "Temperatura del cárter",
            "Por encima de su entorno, y de lo que se condensaría en él.",
        ),
        SheetRule::SumpHeat => (
            "Calor para el cárter",
            "Lo que la carcasa pierde a esa temperatura. Caliéntelo 12 horas antes de arrancar tras un paro largo.",
        ),
        _ => return None,
    })
}

/// An equation that words stand in.
pub(super) fn equation(rule: SheetRule) -> Option<&'static str> {
    Some(match rule {
        SheetRule::SubstituteResistor => "R_s: de su serie, la más cercana en temperatura a R",
        SheetRule::SwitchMargin => "Δp = p − p_out, o p_in − p",
        SheetRule::StandingLow => "p = mín(p_bubble(T_o), p_dew(T_r))",
        SheetRule::BypassTime => "t: desde entonces p_suction(t) ≥ p_in",
        SheetRule::LowestSuction => "p = mín p_suction(t)",
        SheetRule::SumpTemperature => "T = máx(T_a, T_dew(p)) + ΔT",
        _ => return None,
    })
}

pub(super) fn sensor_error(error: &SensorError) -> &'static str {
    match error {
        SensorError::OutOfRange { .. } => {
            "Esto queda fuera del rango del sensor. Introduzca un valor dentro de él, o revise el rango."
        }
        SensorError::PointsTooClose { .. } => {
            "Dos puntos están a menos de 5 K (9 °F) uno de otro. Introduzca puntos más separados."
        }
        SensorError::NotFalling => {
            "Con estos valores la resistencia no baja de continuo al calentarse. Revise cada uno con la hoja de datos, y su unidad."
        }
    }
}

pub(super) fn start_error(error: &StartError, units: Units, atmosphere: Pressure) -> String {
    let said = match error {
        StartError::CutInBelowCutOut { .. } => {
            "El presostato cerraría por debajo de su corte. Introduzca una conexión igual al corte o por encima."
        }
        StartError::NotAbove {
            above, than, by, ..
        } => return not_above(*above, *than, *by, units, atmosphere),
        StartError::OutOfRange {
            input: StartInput::LiquidAtStart,
            ..
        } => "Introduzca una temperatura desde la exterior hasta la de condensación.",
        StartError::OutOfRange { .. } => {
            "Con este valor el arranque sale del rango del modelo. Introduzca uno más cercano al habitual."
        }
        StartError::Refrigerant(error) => return problems::refused(error, units, atmosphere),
        _ => "No hay respuesta con estos valores. Introduzca otros más cercanos a los habituales.",
    };
    said.to_owned()
}

fn not_above(
    above: StartInput,
    than: ThermodynamicTemperature,
    by: f64,
    units: Units,
    atmosphere: Pressure,
) -> String {
    let least = Amount::new(Measure::Temperature, than.value + by);
    let scale = units.scale(Measure::Temperature);
    let least = crate::amounts::at_least(scale, least, atmosphere);
    match above {
        StartInput::Room => format!(
            "El espacio debe estar más caliente que la temperatura de evaporación. Introduzca más de {least}."
        ),
        _ => format!(
            "La condensación debe estar por encima de la evaporación y del exterior. Introduzca más de {least}."
        ),
    }
}

//! Reasons, changes, parts and outcomes: what follows from a plan, in Spanish.

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
use winterset_calc::{Condition, Field, Quantity};

use super::{fields, plan};
use crate::advice::{Advice, Ordered};
use crate::language::RuleWords;
use crate::pen::Pen;
use crate::units::Units;

pub(super) const ADVICE: Advice = Advice {
    methods: "Los métodos lado a lado",
    methods_note: "En un año habitual de este sitio, con la misma carga todo el año. Las horas en que la baja presión para el compresor no consumen energía ni dan frío.",
    stopped: "Detenido: no están calculados los métodos, la exactitud, lo que baja la necesidad ni qué pedir.",
    work_out: "Calcular",
    hold_limit: "límite de frío",
    holds: "basta",
    falls_short: "no basta",
    starts_an_hour: "arr./h",
    fan_energy: "ventil. al año",
    compressor_energy: "compresor al año",
    recommended: "Recomendado",
    lowers_need: "Qué baja la presión necesaria",
    nothing_lowers: "Ninguna válvula ni subenfriamiento baja la presión necesaria de este sistema.",
    with_it: |need, limit| {
        format!("la presión necesaria es {need}, y el control de velocidad mantiene hasta {limit}")
    },
    order: "Qué pedir",
    nothing_to_order: "No hay que pedir nada.",
    sensor_place: "Dónde va el sensor del serpentín",
    place_does: "El lugar habitual sirve: un codo de retorno a dos tercios de la altura del serpentín está en dos fases en el punto conocido y en la mínima del sitio.",
    winter_start: "Arranque en invierno",
    fan_motor: "El motor del ventilador en el frío",
    compressor_off: "Cuándo puede quedar parado el compresor",
    accuracy: "Cuánta seguridad hay",
    give_or_take: |method, span| {
        format!(
            "Si los valores supuestos se apartan tanto como suelen, el límite de frío del método «{}» puede moverse {span} hacia cada lado.",
            method.to_lowercase()
        )
    },
    shared_bank: "Dos circuitos en un grupo de ventiladores",
    shared_note: "Manda el circuito que necesita más aire; el otro recibe más del que pide. Responda en cada circuito como si todo el aire fuera suyo.",
    two_plans: "Hacen falta dos sistemas cuyas respuestas lleguen a un plan.",
    first_circuit: "Primer circuito",
    second_circuit: "Segundo circuito",
    shared_rung: |outdoor, leader, fan, other, head| {
        format!("A {outdoor}: manda {leader}, ventiladores a {fan}; {other} a {head}.")
    },
    drawn_down: "Por debajo de su presión necesaria por el aire del otro.",
    measure_first: |question| format!("Lo que más estrecha ese margen es medir esto: {question}."),
};

pub(super) fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::HoldsByItself => {
            "La presión de condensación se mantiene por sí sola hasta la mínima del sitio."
        }
        Reason::HoldsSteadily => {
            "Llega a la mínima del sitio, mantiene estable la presión de condensación y solo requiere un controlador."
        }
        Reason::BaffleCloses => {
            "A la menor velocidad del ventilador el viento todavía enfría demasiado; con un deflector, ya no."
        }
        Reason::OnlyFloodingHolds => {
            "Aun con el menor caudal de aire el serpentín es demasiado grande para el frío. El líquido que llena una parte mantiene alta y estable la presión de condensación."
        }
        Reason::OnlySwitchingHolds => {
            "Ningún método estable posible en este sistema llega a la mínima del sitio. La conmutación llega, pero la presión de condensación oscila, y cada arranque perturba el dispositivo de expansión."
        }
        Reason::NothingHolds => {
            "Ningún método posible en este sistema llega a la mínima del sitio. Este es el que más se acerca."
        }
    }
}

/// What the condenser gets at the lowest load.
fn least(control: CapacityControl, share: &str) -> String {
    match control {
        CapacityControl::OnOff => {
            format!("Con la carga mínima el condensador recibe el {share} del calor pleno.")
        }
        CapacityControl::Stages => {
            format!("Con la última etapa sola, el condensador recibe el {share} del calor pleno.")
        }
        CapacityControl::Unloading => format!(
            "Descargado cuanto puede, el compresor da al condensador el {share} del calor pleno."
        ),
        CapacityControl::VariableSpeed => {
            format!(
                "A su velocidad mínima el compresor da al condensador el {share} del calor pleno."
            )
        }
    }
}

pub(super) fn part_load(found: &PartLoad, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let method = plan::method(found.method).name.to_lowercase();
    let limit = pen.show(Quantity::Temperature(found.limit));
    let full = pen.show(Quantity::Temperature(found.full_load));
    let least = least(found.control, &pen.show(Quantity::Ratio(found.share)));
    match found.effect() {
        LoadEffect::Cycles => "El compresor trabaja a carga plena o está parado, así que los límites de frío son los mismos con cualquier carga. Cada arranque tras una parada con frío es un arranque en frío.".to_owned(),
        LoadEffect::Stays if found.share >= 1.0 => format!("Los compresores nunca trabajan por debajo de la carga plena. El límite de frío del método «{method}» sigue en {limit}."),
        LoadEffect::Stays => format!("{least} El límite de frío del método «{method}» es también {limit}, como a carga plena."),
        LoadEffect::Rises => format!("{least} El límite de frío del método «{method}» es entonces {limit}, frente a {full} a carga plena."),
    }
}

pub(super) fn change(change: Change) -> RuleWords {
    let (name, reason) = match change {
        Change::BalancedPort => (
            "Una válvula de puerto equilibrado",
            "La presión de condensación no empuja su aguja, y así alimenta el evaporador también con menos presión.",
        ),
        Change::ElectronicValve => (
            "Una válvula de expansión electrónica",
            "Un motor la abre sea cual sea la presión, y es la que más abre.",
        ),
        Change::MoreSubcooling => (
            "Más subenfriamiento",
            "El líquido más frío es más denso y da más capacidad frigorífica, y basta menos presión para que no haya gas en la línea de líquido.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn condition(condition: Condition) -> RuleWords {
    let (name, reason) = match condition {
        Condition::Holds => (
            "Se mantiene",
            "La presión de condensación queda en la necesaria o por encima.",
        ),
        Condition::BelowNeed => (
            "Por debajo de la necesaria",
            "La presión de condensación es menor de lo que este sistema aguanta por mucho tiempo.",
        ),
        Condition::Starved => (
            "Evaporador mal alimentado",
            "El dispositivo de expansión está abierto del todo y deja pasar muy poco: sube el recalentamiento y baja la capacidad.",
        ),
        Condition::LowPressureTrip => (
            "Parado por baja presión",
            "La presión de succión cae por debajo del corte de baja, que para el compresor.",
        ),
        Condition::StalledFan => (
            "El ventilador se cala",
            "Con este frío el voltaje es demasiado bajo para que el motor mantenga girando su ventilador: se para y arranca, y la presión de condensación no es menor que la mostrada.",
        ),
        Condition::AboveEnvelope => (
            "Fuera del campo de trabajo del compresor",
            "El compresor condensa por encima de lo que admite su fabricante.",
        ),
    };
    RuleWords { name, reason }
}

fn sensed(pen: &Pen, input: &Sensed) -> String {
    let (what, lowest, highest) = match *input {
        Sensed::Coil { lowest, highest } => (
            "la temperatura del serpentín",
            pen.brief(Quantity::Temperature(lowest)),
            pen.brief(Quantity::Temperature(highest)),
        ),
        Sensed::Pressure { lowest, highest } => (
            "la presión de la línea de líquido",
            pen.pressure(lowest),
            pen.pressure(highest),
        ),
    };
    format!("mide {what} de {lowest} a {highest}")
}

fn motor(kind: MotorKind) -> String {
    fields::choice(Field::Motor, kind.key()).to_lowercase()
}

fn output(kind: OutputKind) -> &'static str {
    match kind {
        OutputKind::PhaseCut => "salida por corte de fase",
        OutputKind::Signal => "salida de 0 a 10 V o de ancho de pulso",
        OutputKind::Frequency => "variador de frecuencia para motores trifásicos",
    }
}

pub(super) fn part(part: &Part, units: Units, atmosphere: Pressure) -> Ordered {
    let pen = Pen { units, atmosphere };
    let amps = |current| pen.at_least(Quantity::Current(current));
    let volts = |voltage| pen.show(Quantity::Voltage(voltage));
    let (name, value) = match *part {
        Part::Motor { from, to, count } => (
            "Motor de ventilador".to_owned(),
            format!("{count}, {} en lugar de {}", motor(to), motor(from)),
        ),
        Part::Controller {
            output: kind,
            current,
            supply,
            ref input,
        } => {
            let rated = match current {
                Some(current) => format!("al menos {} a {}", amps(current), volts(supply)),
                None => format!("para motores a {}", volts(supply)),
            };
            (
                "Controlador de velocidad de ventilador".to_owned(),
                format!("{}, {rated}, {}", output(kind), sensed(&pen, input)),
            )
        }
        Part::PressureSwitch { group, on, off } => (
            format!("Presostato, grupo {group}"),
            format!(
                "arranca a {}, para a {}",
                pen.pressure(on),
                pen.pressure(off)
            ),
        ),
        Part::Contactor {
            group,
            current,
            supply,
        } => (
            format!("Contactor, grupo {group}"),
            format!("al menos {} a {}", amps(current), volts(supply)),
        ),
        Part::WindBaffle => (
            "Deflector de viento".to_owned(),
            "protege del viento el serpentín entero".to_owned(),
        ),
        Part::FloodingValve { setting } => (
            "Válvula de inundación".to_owned(),
            format!("mantiene {}", pen.pressure(setting)),
        ),
        Part::Receiver { volume } => (
            "Recipiente de líquido".to_owned(),
            format!("al menos {}", units.volume(volume)),
        ),
        Part::ExtraCharge { mass } => (
            "Refrigerante además de la carga".to_owned(),
            units.mass(mass).to_string(),
        ),
        Part::CrankcaseHeater { power } => (
            "Calefactor de cárter".to_owned(),
            format!("unos {}", units.heater(power)),
        ),
        Part::LowPressureBypass { time } => (
            "Temporizador sobre el presostato de baja".to_owned(),
            format!("lo puentea {} en el arranque", pen.seconds(time)),
        ),
        Part::BalancedPortValve => (
            "Válvula de expansión de puerto equilibrado".to_owned(),
            "de la capacidad de la válvula actual".to_owned(),
        ),
    };
    Ordered { name, value }
}

pub(super) fn fan_start(advice: &FanMotorAdvice, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let time = |time| pen.show(Quantity::Time(time));
    let start = match advice.start {
        FanStart::WithinBoost { time: all, by_wind } => format!(
            "En la mínima del sitio el ventilador toma velocidad en unos {} con la salida plena, {} de ellos para detener lo que el viento gira al revés.",
            time(all),
            time(by_wind)
        ),
        FanStart::LongerBoost { time: all, by_wind } => format!(
            "En la mínima del sitio el ventilador tarda unos {} con la salida plena, {} de ellos para detener lo que el viento gira al revés: más que un impulso de arranque habitual.",
            time(all),
            time(by_wind)
        ),
        FanStart::Never => {
            "En la mínima del sitio el motor no arranca el ventilador contra la grasa fría y el viento, ni con la salida plena.".to_owned()
        }
    };
    match advice.wind {
        Some(wind) if advice.start != FanStart::Never => format!(
            "{start} Arranca contra un viento de hasta {} sobre la salida de aire del ventilador.",
            units.wind(wind)
        ),
        _ => start,
    }
}

pub(super) fn fan_heat(hottest: &Hottest, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let stands = match hottest.lowest_speed {
        LowestSpeed::Below => {
            "La velocidad mínima queda por debajo: el ventilador puede girar allí durante horas, así que compruebe cuánto se calienta el motor."
        }
        LowestSpeed::Inside => {
            "La velocidad mínima queda en esa zona: compruebe cuánto se calienta el motor, y suba la salida mínima si es demasiado."
        }
        LowestSpeed::Above => {
            "La velocidad mínima queda por encima, y el ventilador nunca llega allí."
        }
    };
    format!(
        "Frenado por su voltaje, el motor se calienta más a {}, con {} de la salida plena en el frío y {} veces el calor del rotor en su punto nominal. {stands}",
        pen.show(Quantity::Speed(hottest.speed)),
        pen.show(Quantity::Ratio(hottest.output)),
        units.times(hottest.loss)
    )
}

pub(super) fn fan_remedy(remedy: Remedy, advice: &FanMotorAdvice, units: Units) -> String {
    let share = Pen::without_gauge(units).at_least(Quantity::Ratio(advice.starts_from));
    match remedy {
        Remedy::FullOutputAtStart => format!(
            "Con la salida mínima el ventilador puede no arrancar desde parado; para eso hace falta {share}. Haga que el controlador dé la salida plena en cada arranque, también después de un corte de la alimentación."
        ),
        Remedy::LongerBoost => "Dele la salida plena por más tiempo.".to_owned(),
        Remedy::Baffle => "Proteja el ventilador del viento con un deflector.".to_owned(),
        Remedy::KeepTurning => {
            "Manténgalo girando durante el frío, o elija un motor más fuerte o de rodamientos de bolas.".to_owned()
        }
    }
}

pub(super) fn bypass(outcome: &BypassOutcome, units: Units, atmosphere: Pressure) -> String {
    let pen = Pen { units, atmosphere };
    match *outcome {
        BypassOutcome::NeverTrips { lowest } => format!(
            "La presión de succión no cae por debajo de {}, y el presostato de baja queda cerrado. No hace falta puentearlo.",
            pen.pressure(lowest)
        ),
        BypassOutcome::Trips { until, lowest, .. } => format!(
            "La presión de succión cae a {} y abre el presostato de baja. Puentee el presostato los primeros {}.",
            pen.pressure(lowest),
            pen.seconds(until)
        ),
        BypassOutcome::NeverRecovers {
            lowest,
            at_end,
            persists: Persists::StillRising,
            ..
        } => format!(
            "La presión de succión cae a {} y abre el presostato de baja. A los diez minutos está en {} y todavía sube: puede bastar un puente más largo, y el calor en el recipiente lo acorta.",
            pen.pressure(lowest),
            pen.pressure(at_end)
        ),
        BypassOutcome::NeverRecovers {
            at_end,
            persists: Persists::Settled,
            ..
        } => format!(
            "La presión de succión se queda en {}, por debajo del presostato de baja. Ningún puente es bastante largo: caliente el recipiente, o inunde el condensador.",
            pen.pressure(at_end)
        ),
    }
}

fn when(when: When) -> &'static str {
    match when {
        When::Design => "En el punto conocido",
        When::Low => "En la mínima del sitio",
    }
}

pub(super) fn place(reason: &PlaceReason, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    match *reason {
        PlaceReason::Superheated { when: at, short_by } => format!(
            "{} el lugar habitual tiene todavía gas caliente, y el sensor mide de más. Muévalo un {} del circuito hacia la salida de líquido.",
            when(at),
            pen.at_least(Quantity::Ratio(short_by))
        ),
        PlaceReason::Liquid {
            when: at,
            beyond_by,
        } => format!(
            "{} el lugar habitual tiene solo líquido, y el sensor mide de menos. Muévalo un {} del circuito hacia la entrada de gas, o mida la presión.",
            when(at),
            pen.at_least(Quantity::Ratio(beyond_by))
        ),
        PlaceReason::OffByGlide { when: at, off, .. } => {
            let (off, side) = match off.get::<kelvin_interval>() {
                warmer if warmer >= 0.0 => (off, "más"),
                _ => (-off, "menos"),
            };
            format!(
                "{} el deslizamiento del refrigerante hace que un sensor en el lugar habitual mida {} de {side}. Mida la presión, o muévalo hacia la mitad de la condensación.",
                when(at),
                pen.show(Quantity::Difference(off))
            )
        }
    }
}

pub(super) fn off(outcome: &Off, duty: Duty, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let carrier = match duty {
        Duty::RoomCooling => "el aire exterior, filtrado y mezclado,",
        Duty::Cooler | Duty::Freezer => "un aeroenfriador con un serpentín en la sala",
    };
    match *outcome {
        Off::Saves {
            up_to,
            time,
            energy,
            ..
        } => format!(
            "Hasta {} fuera, {carrier} podría llevar toda la carga: {} al año con el compresor parado, que ahorran unos {}.",
            pen.brief(Quantity::Temperature(up_to)),
            units.hours(time),
            units.energy(energy)
        ),
        Off::SavesNothing { up_to, time, .. } => format!(
            "Hasta {} fuera, {carrier} podría llevar toda la carga, {} al año, pero gasta tanta energía como hay que ahorrar.",
            pen.brief(Quantity::Temperature(up_to)),
            units.hours(time)
        ),
        Off::NeverColdEnough { up_to, coldest } => format!(
            "Por debajo de {} fuera, {carrier} podría llevar toda la carga, pero aquí un año no baja de {}.",
            pen.brief(Quantity::Temperature(up_to)),
            pen.brief(Quantity::Temperature(coldest))
        ),
    }
}

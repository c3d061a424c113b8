//! Verdict, actions, cautions and remarks of a plan, in Spanish.

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
                "No hace falta: con el ventilador a velocidad plena la presión de condensación se mantiene hasta {}; este sitio llega a {}.",
                show(limit),
                show(low)
            );
        }
        Verdict::Holds { method, limit, low } => (method, limit, low, "mantiene la presión hasta"),
        Verdict::FallsShort { method, limit, low } => {
            (method, limit, low, "mantiene la presión solo hasta")
        }
    };
    let (limit, low) = (show(limit), show(low));
    let refusal = refusal(plan.input.motor.value).filter(|_| said.is_modulated());
    match refusal {
        None => format!(
            "{}: {holds} {limit}; este sitio llega a {low}.",
            method(said).name
        ),
        Some(refusal) => {
            format!("{refusal} Alimentado como él pide, {holds} {limit}; este sitio llega a {low}.")
        }
    }
}

/// What a motor says to a phase-cut supply, where it refuses one.
fn refusal(motor: MotorKind) -> Option<&'static str> {
    match motor {
        MotorKind::ElectronicallyCommutated => {
            Some("Un motor conmutado electrónicamente no admite control de velocidad por voltaje.")
        }
        MotorKind::ThreePhase => {
            Some("Un motor trifásico no admite control de velocidad por voltaje monofásico.")
        }
        MotorKind::PermanentSplitCapacitor | MotorKind::ShadedPole => None,
    }
}

pub(super) fn action(action: Action) -> &'static str {
    match action {
        Action::LeaveFanAlone => "Deje el ventilador a velocidad plena.",
        Action::EnterValues => "Introduzca en el controlador los valores de abajo.",
        Action::UseSpeedInput => {
            "Frénelo por su propia entrada de velocidad, de 0 a 10 V o de ancho de pulso, con un controlador que dé esa señal."
        }
        Action::UseFrequencyDrive => "Frénelo con un variador de frecuencia hecho para el motor.",
        Action::AddBaffle => {
            "Introduzca en el controlador los valores de abajo y monte un deflector que proteja el serpentín del viento."
        }
        Action::AddFlooding => {
            "Introduzca en el controlador los valores de abajo y monte una válvula y un recipiente que inunden el condensador en los días más fríos."
        }
        Action::Flood => {
            "Monte una válvula y un recipiente que inunden el condensador cuando hace frío."
        }
        Action::CycleFans => "Conmute los ventiladores por presión en los puntos de abajo.",
        Action::StageFans => {
            "Conmute los ventiladores uno tras otro por presión y deje el último en marcha."
        }
        Action::LowerNeed => {
            "Haga que el sistema necesite menos presión de condensación, con una válvula que abra más o con más subenfriamiento, o caliente el recipiente: vea qué baja la presión necesaria."
        }
    }
}

pub(super) fn caution(caution: Caution) -> Part {
    let (title, text) = match caution {
        Caution::Roof => (
            "Techo y hielo",
            "Una caída mata. Manténgase lejos del borde o amárrese, y no trabaje solo en un techo con hielo.",
        ),
        Caution::Mains => (
            "Red eléctrica",
            "El ventilador y el controlador llevan tensión de red, también con el ventilador parado. Bloquee la alimentación y compruebe que no hay tensión con un medidor que acaba de probar en una fuente viva. Siga las normas locales y las instrucciones del fabricante.",
        ),
        Caution::Capacitor => (
            "Capacitor de marcha",
            "Queda cargado después de cortar la alimentación. Descárguelo con una resistencia hecha para ello y mida antes de tocar.",
        ),
        Caution::RotatingFan => (
            "Ventilador en giro",
            "Un ventilador controlado arranca solo, también desde parado y a baja velocidad. Aíslelo antes de acercar las manos, y vuelva a montar la rejilla.",
        ),
        Caution::Pressure => (
            "Presión",
            "El refrigerante a presión quema la piel y los ojos. Use guantes y gafas, y deje los circuitos abiertos en manos autorizadas.",
        ),
        Caution::Flammable => (
            "Refrigerante inflamable",
            "Este refrigerante puede arder. Aleje chispas y llamas, ventile el lugar, busque fugas primero, y use herramientas y controles permitidos para su clase.",
        ),
    };
    Part { title, text }
}

pub(super) fn need_part(part: NeedPart) -> RuleWords {
    let (name, reason) = match part {
        NeedPart::MeteringDevice => (
            "El dispositivo de expansión",
            "Por debajo de esta presión de condensación deja mal alimentado el evaporador. Cuanto más puede abrir un dispositivo, menos pide: un puerto equilibrado menos que uno convencional, una válvula electrónica lo mínimo.",
        ),
        NeedPart::Compressor => (
            "El compresor",
            "Por debajo de esta presión de condensación sale de su campo de trabajo. El límite del fabricante puede ser menor.",
        ),
        NeedPart::LiquidLine => (
            "La línea de líquido",
            "Por debajo de esta presión de condensación se forma gas en ella antes del dispositivo de expansión. Más subenfriamiento o una línea más ancha o más corta piden menos.",
        ),
        NeedPart::HotGasDefrost => (
            "El desescarche por gas caliente",
            "Por debajo de esta presión de condensación el gas caliente no funde el hielo.",
        ),
        NeedPart::HeatReclaim => (
            "La recuperación de calor",
            "Por debajo de esta presión de condensación el calor no es bastante caliente para quien lo usa.",
        ),
        NeedPart::Evaporator => (
            "El evaporador",
            "Por debajo de esta presión de condensación se forma hielo en su serpentín.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn note(note: SettingsNote, units: Units) -> String {
    let pen = Pen::without_gauge(units);
    let show = |span| pen.show(Quantity::Difference(span));
    match note {
        SettingsNote::RangeNarrowed { wanted, used } => format!(
            "El rango de modulación se estrecha de {} a {} para que el ventilador todavía alcance la velocidad plena en el punto conocido.",
            show(wanted),
            show(used)
        ),
        SettingsNote::NeedNearKnownPoint => {
            "La presión necesaria está tan cerca del punto conocido que el ventilador no alcanzaría allí la velocidad plena. Revise el punto conocido, o baje la presión necesaria con una válvula de puerto equilibrado o electrónica.".to_owned()
        }
        SettingsNote::BoostTooShort { wanted, used } => format!(
            "En la mínima de este sitio un arranque tarda {}, más de los {} que suelen ofrecer los controladores. Busque un impulso de arranque más largo, o proteja el ventilador del viento con un deflector.",
            pen.show(Quantity::Time(wanted)),
            pen.show(Quantity::Time(used))
        ),
        SettingsNote::WillNotStart => {
            "En la mínima de este sitio el motor puede no arrancar su ventilador desde parado, ni con la salida plena. Protéjalo del viento con un deflector, manténgalo girando durante el frío, o elija un motor más fuerte o de rodamientos de bolas.".to_owned()
        }
        SettingsNote::AboveEnvelope { from, highest } => format!(
            "Por encima de {} en el exterior el compresor condensa por encima de {}, lo más que admite su fabricante, aun con todos los ventiladores a velocidad plena.",
            pen.brief(Quantity::Temperature(from)),
            pen.brief(Quantity::Temperature(highest))
        ),
    }
}

pub(super) fn sensing(sensing: Sensing) -> RuleWords {
    let (name, reason) = match sensing {
        Sensing::CoilTemperature => (
            "Temperatura del serpentín",
            "Sensor en un codo de retorno de la parte del serpentín en dos fases, a unos dos tercios de la altura, sujeto y aislado. Práctica común: siga las instrucciones del controlador.",
        ),
        Sensing::LiquidPressure => (
            "Presión de la línea de líquido",
            "Transductor en la línea de líquido junto al condensador. Este refrigerante tiene deslizamiento, o usted lo eligió: la presión no depende del lugar del sensor.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn heating(valve: ReversingValve) -> RuleWords {
    let (name, reason) = match valve {
        ReversingValve::InCooling => (
            "Velocidad plena con la válvula sin tensión",
            "Tome la señal de la bobina de la válvula inversora. Sin tensión es calefacción, y entonces el ventilador exterior va a velocidad plena. Un cable roto parece calefacción: la presión de condensación cae entonces en refrigeración.",
        ),
        ReversingValve::InHeating => (
            "Velocidad plena con la válvula con tensión",
            "Tome la señal de la bobina de la válvula inversora. Con tensión es calefacción, y entonces el ventilador exterior va a velocidad plena. Un cable roto parece refrigeración: el ventilador se frena entonces en calefacción y el serpentín se hiela.",
        ),
    };
    RuleWords { name, reason }
}

pub(super) fn method(method: Method) -> RuleWords {
    let (name, reason) = match method {
        Method::FullFan => (
            "Ventilador pleno",
            "Todos los ventiladores siempre a velocidad plena.",
        ),
        Method::OnOff => (
            "Marcha/paro",
            "Todos los ventiladores con un presostato. La presión de condensación oscila en dientes de sierra entre los dos puntos de conmutación.",
        ),
        Method::Staged => (
            "Por etapas",
            "Los ventiladores paran uno tras otro; el último siempre gira.",
        ),
        Method::SpeedControl => (
            "Control de velocidad",
            "Todos los ventiladores se frenan juntos con los valores de la hoja de ajustes.",
        ),
        Method::Flooding => (
            "Inundación",
            "Una válvula llena de líquido parte del condensador, con todos los ventiladores a velocidad plena. Requiere un recipiente y carga adicional.",
        ),
        Method::SpeedWithBaffle => (
            "Velocidad y deflector",
            "Los ventiladores se frenan según la hoja de ajustes, detrás de un deflector que protege el serpentín del viento.",
        ),
        Method::SpeedWithFlooding => (
            "Velocidad e inundación",
            "Los ventiladores se frenan según la hoja de ajustes; por debajo de ello una válvula inunda el condensador. Requiere un recipiente y carga adicional.",
        ),
    };
    RuleWords { name, reason }
}

//! Fitting and wiring, in Spanish.

use uom::si::f64::Pressure;
use winterset_calc::Quantity;
use winterset_calc::fitting::{Arrangement, CoilPlace, Control, Fans, Item, Part, Tap, Work};
use winterset_calc::input::MotorKind;

use super::{Spanish, plan};
use crate::fitting::{FittingLabels, FittingWords};
use crate::units::Units;

static LABELS: FittingLabels = FittingLabels {
    fit: "Montaje y cableado",
    note: "Dónde van el sensor, el controlador y los cables en este sistema, en el orden del trabajo. Los dibujos muestran qué va con qué, no en qué lugar de una caja está ni cómo se marca un borne.",
    arrangement: "Disposición",
    nothing: "No hay nada que montar: los ventiladores siguen a velocidad plena y su cableado queda como está.",
    step: |number, all| format!("Paso {number} de {all}"),
    places: "Dónde está cada cosa",
    wiring: "Cómo se cablea",
    in_words: "El dibujo en palabras",
    shown: |list| format!("En el orden del flujo: {list}."),
    passes: |list| format!("La corriente pasa, uno tras otro, por: {list}."),
    steered: |part, list| format!("Las señales hacia: {part}, vienen de: {list}."),
    switched: |motors, part, list| format!("Antes de: {part}, hay {motors}: lo cierra {list}."),
    beside: |part| {
        format!("El motor recibe solo una señal de: {part}; sigue con su alimentación plena.")
    },
    capacitor_stays: "Cada motor conserva su capacitor de marcha, conectado como estaba.",
    defers: "Las normas locales, las instrucciones de los fabricantes y el trabajo de personas autorizadas están antes que estos dibujos.",
};

/// What is done to a joint under pressure, whatever is screwed on.
const JOINT: &str = "Use una toma que ninguna válvula de servicio pueda cerrar y un racor que abra su núcleo, y busque fugas en la unión.";

/// What is done to a sensor on the coil, whatever its place.
const STRAP: &str = "Limpie el cobre, sujete el sensor a lo largo del tubo y aísle por encima de ambos, para que sienta el tubo y no el viento.";

/// Where it is not known in which mode the reversing valve is energised.
const ASK: &str = "Tome la señal de la bobina de la válvula inversora, para que el ventilador exterior vaya a velocidad plena en calefacción. No todas las unidades la energizan en el mismo modo: mírelo en el esquema de la unidad y respóndalo en los datos.";

/// What switched fans need of it besides.
const RELAY: &str =
    "Un relé con esta señal cierra en calefacción el paso alrededor del presostato.";

impl FittingWords for Spanish {
    fn labels(&self) -> &'static FittingLabels {
        &LABELS
    }

    fn arrangement(&self, arrangement: Arrangement) -> &'static str {
        match arrangement {
            Arrangement::CoolingOnly => "Solo frío",
            Arrangement::WithReceiver => "Con recipiente",
            Arrangement::HeatPump => "Bomba de calor",
            Arrangement::TwoCircuits => "Dos circuitos",
        }
    }

    fn part(&self, part: Part, fans: Fans) -> String {
        let text = match (part, fans) {
            (Part::Motor, Fans::Alike(count)) if count > 1 => {
                return format!("motores de ventilador, {count} iguales");
            }
            (Part::Motor, Fans::Mixed { slowed, .. }) if slowed > 1 => {
                return format!("motores que se frenan, {slowed}");
            }
            (Part::SwitchedMotors, Fans::Mixed { switched, .. }) if switched > 1 => {
                return format!("{switched} motores en un contactor propio");
            }
            (Part::FurtherMotors, Fans::OneAndFurther(count)) if count > 1 => {
                return format!("{count} motores más, cada uno con su contactor");
            }
            (Part::Supply, _) => "alimentación",
            (Part::Disconnect, _) => "seccionador",
            (Part::Contactor, _) => "contactor",
            (Part::FanContactor, _) => "contactor del ventilador",
            (Part::SpeedController, _) => "controlador de velocidad",
            (Part::FrequencyDrive, _) => "variador de frecuencia",
            (Part::SwitchedMotors, _) => "motor en un contactor propio",
            (Part::Motor, Fans::Mixed { .. }) => "motor del ventilador que se frena",
            (Part::Motor, _) => "motor del ventilador",
            (Part::FirstMotor, _) => "primer motor, siempre en marcha",
            (Part::FurtherMotors, _) => "segundo motor de ventilador",
            (Part::Capacitor, _) => "capacitor de marcha",
            (Part::CoilSensor, _) => "sensor en el serpentín",
            (Part::SecondCoilSensor, _) => "sensor en el segundo serpentín",
            (Part::PressureSensor, _) => "sensor de presión",
            (Part::SecondPressureSensor, _) => "segundo sensor de presión",
            (Part::PressureSwitch, Fans::OneAndFurther(count)) if count > 1 => {
                "presostato, uno por contactor"
            }
            (Part::PressureSwitch, _) => "presostato",
            (Part::SecondPressureSwitch, _) => "presostato, segundo circuito",
            (Part::ReversingValve, _) => "válvula inversora",
        };
        text.to_owned()
    }

    fn item(&self, item: Item) -> String {
        let text = match item {
            Item::Fans(count) if count > 1 => {
                return format!("ventiladores del condensador, {count}");
            }
            Item::Sensor(part) => return self.part(part, Fans::Alike(1)),
            Item::HotGas => "gas caliente del compresor",
            Item::ReversingValve => "válvula inversora",
            Item::Fans(_) => "ventilador del condensador",
            Item::SharedFans(_) => "ventiladores, comunes a los dos circuitos",
            Item::Baffle => "deflector de viento",
            Item::Coil => "serpentín del condensador",
            Item::SecondCoil => "serpentín del segundo circuito",
            Item::FloodingValve => "válvula de presión de condensación",
            Item::Receiver => "recipiente",
            Item::Liquid => "línea de líquido",
        };
        text.to_owned()
    }

    fn work(&self, work: Work) -> &'static str {
        match work {
            Work::Prepare => "Preparar",
            Work::Isolate => "Dejar sin tensión",
            Work::FitFlooding => "Montar válvula y recipiente",
            Work::FitBaffle => "Montar el deflector",
            Work::StrapSensor(_) => "Sujetar el sensor al serpentín",
            Work::FitTransducer => "Roscar el sensor de presión",
            Work::FitSwitches(1) => "Roscar el presostato",
            Work::FitSwitches(_) => "Roscar los presostatos",
            Work::FitSecond(_) => "Lo mismo en el segundo circuito",
            Work::LayLead => "Tender el cable del sensor",
            Work::Mount(Control::FrequencyDrive) => "Montar el variador",
            Work::Mount(Control::Switched) => "Montar el contactor",
            Work::Mount(Control::Staged) => "Montar los contactores",
            Work::Mount(_) => "Montar el controlador",
            Work::Wire(..) => "Cablear los ventiladores",
            Work::WireSwitched => "Cablear los ventiladores que se conmutan",
            Work::WireReversingValve { .. } => "Traer la señal de la válvula inversora",
            Work::EnterValues => "Introducir los valores",
            Work::SetSwitches => "Ajustar los puntos de conmutación",
            Work::GivePower => "Dar tensión y mirar",
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
            "En un codo de retorno a dos tercios de la altura del serpentín, contados desde la salida de líquido. {STRAP}"
        ),
        CoilPlace::Moved(share) => {
            let up = units.show(&Quantity::Ratio(1.0 - share), Pressure::default());
            format!(
                "En este serpentín el lugar habitual no sirve. Tome el codo de retorno más cercano al {up} de la altura, contado a lo largo del circuito desde la salida de líquido. {STRAP}"
            )
        }
        CoilPlace::Nowhere => "Ningún codo de retorno de este serpentín está en dos fases tanto un día cálido como con frío. Mida la presión de la línea de líquido, y elíjalo así en los datos.".to_owned(),
    }
}

fn second(tap: Tap, units: Units) -> String {
    match tap {
        Tap::Coil(CoilPlace::Nowhere) => strap(CoilPlace::Nowhere, units),
        Tap::Coil(_) | Tap::LiquidLine => {
            "Ponga un segundo sensor en el mismo lugar del otro condensador y llévelo a la segunda entrada del controlador. Manda el circuito que pide más velocidad.".to_owned()
        }
        Tap::Switches(_) => format!(
            "Ponga presostatos también en el otro circuito y cablee sus contactos junto a los del primero, para que cualquiera de los dos circuitos pueda pedir un ventilador. {JOINT}"
        ),
    }
}

fn how(work: Work) -> &'static str {
    match work {
        Work::Prepare => {
            "Compare lo que ha llegado con la lista de pedido del plan, y tenga a mano las instrucciones del controlador, del motor y de la unidad. Donde digan otra cosa que estos pasos, tienen razón ellas."
        }
        Work::Isolate => {
            "Abra el seccionador de la unidad, bloquéelo y guarde la llave. Mida en el ventilador, entre todos los cables y de cada cable a tierra, y busque una segunda alimentación, como un circuito de mando o una resistencia de calentamiento."
        }
        Work::FitFlooding => {
            "La válvula de presión de condensación está entre el gas caliente, la salida del condensador y el recipiente; el recipiente está más bajo que la salida, para que el líquido caiga en él. Ajuste la válvula como dice la lista del plan y añada por peso la carga adicional. Abrir el circuito es cosa de manos autorizadas."
        }
        Work::FitBaffle => {
            "Póngalo del lado de donde viene el viento, lo bastante lejos para que pase el aire de los ventiladores, y fíjelo contra tormenta y nieve."
        }
        Work::FitTransducer => {
            "En la línea de líquido, justo detrás de la salida del condensador. Use una toma que ninguna válvula de servicio pueda cerrar y un racor que abra su núcleo, y busque fugas en la unión."
        }
        Work::FitSwitches(_) => {
            "En la línea de líquido, justo detrás de la salida del condensador, uno por contactor. Use tomas que ninguna válvula de servicio pueda cerrar y busque fugas en las uniones."
        }
        Work::LayLead => {
            "Manténgalo separado de los cables del ventilador y de la red, y crúcelos en ángulo recto. Átelo donde el ventilador no lo alcance y déjelo colgar en un lazo antes de entrar, para que el agua gotee."
        }
        Work::Mount(Control::FrequencyDrive) => {
            "Seco y derecho, con el espacio libre que pide su fabricante, y cerca de los motores: un cable de motor largo necesita un filtro."
        }
        Work::Mount(Control::Switched | Control::Staged) => {
            "En la caja de mando de la unidad o en una caja hecha para la intemperie, para la corriente a plena carga de los ventiladores que conmuta cada uno."
        }
        Work::Mount(_) => {
            "Derecho sobre metal que se lleve su calor, en una caja hecha para la intemperie, y donde se llegue a sus ajustes sin pasar junto al ventilador."
        }
        Work::Wire(Control::PhaseCut, MotorKind::PermanentSplitCapacitor) => {
            "Ponga el controlador en el cable que va del contactor al motor del ventilador. El capacitor de marcha queda en el motor, conectado como estaba; nunca se pone delante del controlador. Los motores en paralelo conservan cada uno el suyo."
        }
        Work::Wire(Control::PhaseCut, _) => {
            "Ponga el controlador en el cable que va del contactor al motor del ventilador. El otro cable queda como está."
        }
        Work::Wire(Control::Signal, _) => {
            "El motor sigue con su alimentación plena, por el contactor como antes. Lleve la salida del controlador, de 0 a 10 V o de pulsos, a la entrada de velocidad del motor con un par blindado, y fíjese en cuál es el común. El controlador tiene su propia alimentación. Un controlador de corte de fase en la alimentación del motor lo destruye."
        }
        Work::Wire(Control::FrequencyDrive, _) => {
            "La alimentación al variador, el variador a los motores, y nada que conmute en medio: cable de motor blindado, con la pantalla a tierra como diga el fabricante. Un contacto libre del contactor del compresor da la orden de marcha. Compruebe hacia dónde giran los ventiladores."
        }
        Work::Wire(Control::Staged, _) => {
            "Deje el primer ventilador en el contactor de la unidad, para que siempre marche. Dé a cada ventilador o grupo siguiente un contactor propio, y ponga un presostato en el cable de mando de cada uno."
        }
        Work::Wire(..) => {
            "Quite los ventiladores del contactor de la unidad y póngalos en uno propio. Ponga el presostato en su cable de mando, detrás de lo que llama al compresor, para que los ventiladores paren con él."
        }
        Work::WireSwitched => {
            "Ponga los ventiladores que no se frenan en un contactor propio, antes de lo que frena a los demás, para que reciban toda la alimentación. Ponga el presostato en su cable de mando, detrás de lo que llama al compresor, para que paren con él."
        }
        Work::EnterValues => {
            "Apunte lo que estaba ajustado antes. Luego introduzca la hoja de ajustes de arriba abajo."
        }
        Work::SetSwitches => {
            "Ajuste los puntos de paro y marcha con un manómetro, no con la escala del presostato. Están en la lista de pedido del plan."
        }
        Work::GivePower => {
            "Cierre primero las tapas y vuelva a montar las rejillas. Luego dé tensión: el ventilador arranca con salida plena y se asienta en lo que pide el sensor. Compárelo con los valores de prueba del plan; un día cálido, con un sensor simulado."
        }
        // Said by their own functions.
        Work::StrapSensor(_) | Work::FitSecond(_) | Work::WireReversingValve { .. } => STRAP,
    }
}

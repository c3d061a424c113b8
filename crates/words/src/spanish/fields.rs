//! Questions, help and choices of the inputs, in Spanish.

use winterset_calc::Field;

use crate::example;
use crate::language::FieldWords;
use crate::units::Units;

pub(super) fn field(field: Field) -> FieldWords {
    let (ask, help) = match field {
        Field::Refrigerant => (
            "Refrigerante",
            "Lo que contiene ahora el circuito: lea la placa y cualquier etiqueta de reconversión. Una mezcla propia se escribe por masa, como R-32/R-1234yf 68.9/31.1.",
        ),
        Field::CoolingCapacity => (
            "Capacidad frigorífica nominal",
            "De la placa o de la hoja de datos, a las temperaturas de evaporación y condensación para las que se eligió el sistema.",
        ),
        Field::HeatRejected => (
            "Calor rechazado en el condensador",
            "En lugar de la capacidad frigorífica, si se tiene la hoja de datos del condensador: a la misma diferencia de temperatura de abajo.",
        ),
        Field::OutdoorLow => (
            "Temperatura exterior más baja",
            "La más fría de este sitio mientras se necesita frío. Sirve la mínima de diseño del lugar.",
        ),
        Field::Metering => (
            "Dispositivo de expansión",
            "Lo que alimenta el evaporador. Un puerto equilibrado está marcado así en la válvula o en su hoja de datos.",
        ),
        Field::Motor => (
            "Motor del ventilador del condensador",
            "Un capacitor de marcha en un motor monofásico indica capacitor permanente. Tres cables y ningún capacitor indican trifásico. Un motor con una caja de electrónica es conmutado electrónicamente.",
        ),
        Field::Bearing => (
            "Cojinete del motor del ventilador",
            "En la placa o en la hoja de datos. Un cojinete liso necesita velocidad para conservar su película de aceite.",
        ),
        Field::Voltage => (
            "Tensión de alimentación en el ventilador",
            "Medida con carga en los bornes del ventilador, o la nominal de la red.",
        ),
        Field::Duty => (
            "Qué se enfría",
            "Fija la evaporación y la condensación sobre el ambiente habituales hasta que usted las introduzca.",
        ),
        Field::OverAmbient => (
            "Condensación sobre el ambiente",
            "Un día con los ventiladores a velocidad plena: saturación (rocío) a la presión de condensación, menos la temperatura del aire que entra al serpentín.",
        ),
        Field::KnownOutdoor => (
            "Temperatura exterior de esa lectura",
            "El aire que entraba al condensador cuando se tomó la lectura de arriba, o el valor de diseño de la hoja de datos.",
        ),
        Field::Evaporating => (
            "Temperatura de evaporación",
            "Saturación (rocío) a la presión de succión con el sistema estable.",
        ),
        Field::Fans => (
            "Número de ventiladores del condensador",
            "Todos los del condensador de este circuito.",
        ),
        Field::ModulatedFans => (
            "Ventiladores que mueve el controlador de velocidad",
            "Todos, si no se introduce otra cosa. Los demás van a velocidad plena y paran uno tras otro con presostatos, en la presión necesaria.",
        ),
        Field::Airflow => (
            "Caudal de aire, todos a velocidad plena",
            "De la hoja de datos del condensador. En blanco, se calcula para un condensador habitual.",
        ),
        Field::Frequency => ("Frecuencia de la red", "50 o 60 Hz."),
        Field::RatedSpeed => (
            "Velocidad de placa del motor del ventilador",
            "En revoluciones por minuto, a plena carga.",
        ),
        Field::Elevation => (
            "Altitud sobre el nivel del mar",
            "El aire menos denso lleva menos calor, y la presión manométrica se cuenta desde menos aire.",
        ),
        Field::Sensing => (
            "Qué mide el controlador",
            "La temperatura del serpentín conviene a refrigerantes con poco deslizamiento; la presión de líquido, a cualquiera.",
        ),
        Field::ThrottlingRange => (
            "Rango de modulación",
            "De la salida mínima a la plena, como tramo de temperatura de condensación. Estrecho sujeta más y oscila antes.",
        ),
        Field::CompressorLowest => (
            "Condensación más baja del compresor",
            "Del campo de trabajo del fabricante a su temperatura de evaporación, si lo tiene.",
        ),
        Field::CompressorHighest => (
            "Condensación más alta del compresor",
            "Del campo de trabajo del fabricante a su temperatura de evaporación, si lo tiene. Por encima de ella el plan lo dice.",
        ),
        Field::ReturnAir => (
            "Aire de retorno al evaporador",
            "El aire que vuelve al serpentín interior con el sistema estable.",
        ),
        Field::FanPower => (
            "Potencia de todos los ventiladores del condensador",
            "Medida a velocidad plena, o de las placas. En blanco, se toma una parte habitual del calor rechazado; solo influye en la energía.",
        ),
        Field::ReturnHumidity => (
            "Humedad del aire de retorno",
            "Humedad relativa del aire que vuelve al serpentín interior. Decide cuándo empieza el hielo.",
        ),
        Field::IndoorAirflow => (
            "Caudal de aire del evaporador",
            "De su hoja de datos. En blanco, se toma un caudal habitual para la capacidad; solo influye en el hielo.",
        ),
        Field::LiquidLength => (
            "Longitud de la línea de líquido",
            "Del condensador o del recipiente al dispositivo de expansión, con los accesorios contados como su longitud equivalente de tubo recto.",
        ),
        Field::LiquidLift => (
            "Subida de la línea de líquido",
            "Cuánto más alto está el dispositivo de expansión que la salida del condensador. Menos de cero si está más bajo.",
        ),
        Field::LiquidDiameter => (
            "Diámetro interior de la línea de líquido",
            "No la medida exterior con que se vende el tubo.",
        ),
        Field::FullLoad => (
            "Corriente a plena carga de un motor de ventilador",
            "La corriente nominal (FLA) de la placa. Decide qué controlador soporta los ventiladores.",
        ),
        Field::Subcooling => (
            "Subenfriamiento a la salida del condensador",
            "Saturación (burbuja) a la presión de condensación, menos la temperatura de la línea de líquido junto al condensador, cuando se tomó la lectura sobre el ambiente.",
        ),
        Field::CapacityControl => (
            "Cómo siguen la carga los compresores",
            "De ello se deduce la parte mínima de la carga plena a que trabajan, hasta que usted la indique.",
        ),
        Field::CompressorStages => (
            "Número de etapas de compresor",
            "Todas del mismo tamaño, en este circuito. Solo cuenta si los compresores se conectan uno tras otro.",
        ),
        Field::LowestLoad => (
            "Parte mínima de la carga plena",
            "Lo menos a que trabajan los compresores, por etapas, descarga o velocidad. Con menos calor la presión de condensación cae antes: el plan sigue entonces esta parte. En blanco, se deduce de cómo siguen la carga.",
        ),
        Field::HeatReclaim => (
            "Condensación deseada para recuperar calor",
            "La temperatura de condensación que pide quien usa el calor, si el calor se usa.",
        ),
        Field::Defrost => (
            "Desescarche",
            "El gas caliente necesita presión de condensación para fundir el hielo.",
        ),
        Field::BelowMinimum => (
            "Por debajo de la salida mínima el ventilador",
            "Algunos controladores dejan el ventilador girando a la salida mínima, otros lo paran. Un ventilador que para mantiene la presión con más frío, y la deja oscilar un poco.",
        ),
        Field::ReversingValve => (
            "Válvula inversora",
            "De una bomba de calor: en qué modo recibe tensión su bobina. En calefacción el ventilador exterior va a velocidad plena, según esta señal.",
        ),
        Field::FlowCoefficients => (
            "Caudal másico, diez coeficientes",
            "De la hoja de datos del compresor (AHRI 540), C1 a C10 separados por espacios. Dicen cómo va el caudal con ambas presiones; la placa dice cuánto es.",
        ),
        Field::PowerCoefficients => (
            "Potencia, diez coeficientes",
            "De la misma hoja, C1 a C10 en vatios.",
        ),
        Field::SheetUnits => (
            "Unidades de los coeficientes",
            "Temperatura, caudal másico y potencia como la hoja los imprime.",
        ),
        Field::SheetSuperheat => ("Recalentamiento nominal de la hoja", "De la misma hoja."),
        Field::Recirculation => (
            "Aire recirculado",
            "La parte del aire del condensador que él mismo acaba de expulsar: bajo un techo, en un rincón, entre dos equipos. La lectura sobre el ambiente se toma como libre de ello.",
        ),
        Field::Dirt => (
            "Suciedad del condensador",
            "La parte de aire y de conductancia que quita la suciedad. La lectura sobre el ambiente se toma como la del serpentín limpio.",
        ),
        Field::IdleAirflow => (
            "Caudal de aire con los ventiladores parados",
            "Lo que todavía mueven el viento y el tiro natural, como parte del caudal pleno. Más en un techo abierto, menos detrás de un deflector.",
        ),
    };
    FieldWords { ask, help }
}

pub(super) fn usual(field: Field, units: Units) -> Option<String> {
    match field {
        Field::Frequency => Some("50 o 60 Hz".to_owned()),
        _ => example::usual(field, units).map(|(low, high)| format!("{low} a {high}")),
    }
}

pub(super) fn choice(field: Field, key: &str) -> &'static str {
    match (field, key) {
        (Field::Duty, "room-cooling") => "Salas, armarios, archivos",
        (Field::Duty, "cooler") => "Cámara de frío o bodega",
        (Field::Duty, "freezer") => "Congelador",
        (Field::Motor, "permanent-split-capacitor") => "Capacitor permanente",
        (Field::Motor, "shaded-pole") => "Polos sombreados",
        (Field::Motor, "electronically-commutated") => "Conmutado electrónicamente",
        (Field::Motor, "three-phase") => "Trifásico",
        (Field::Bearing, "ball") => "Rodamiento de bolas",
        (Field::Bearing, "sleeve") => "Cojinete liso",
        (Field::Metering, "txv-conventional") => "Termostática, puerto convencional",
        (Field::Metering, "txv-balanced") => "Termostática, puerto equilibrado",
        (Field::Metering, "electronic-valve") => "Válvula de expansión electrónica",
        (Field::Metering, "fixed-orifice") => "Orificio fijo o capilar",
        (Field::CapacityControl, "on-off") => "Uno que marcha y para",
        (Field::CapacityControl, "stages") => "Conectados uno tras otro",
        (Field::CapacityControl, "unloading") => "Descarga de cilindros o espiral",
        (Field::CapacityControl, "variable-speed") => "Velocidad variable",
        (Field::Defrost, "other") => "Otro, o ninguno",
        (Field::Defrost, "hot-gas") => "Gas caliente",
        (Field::BelowMinimum, "keeps-turning") => "Sigue girando",
        (Field::BelowMinimum, "stops") => "Para",
        (Field::ReversingValve, "none") => "No es bomba de calor",
        (Field::ReversingValve, "in-cooling") => "Con tensión en refrigeración",
        (Field::ReversingValve, "in-heating") => "Con tensión en calefacción",
        (Field::SheetUnits, "C-kg/h-W") => "°C, kg/h, W",
        (Field::SheetUnits, "C-g/s-W") => "°C, g/s, W",
        (Field::SheetUnits, "C-kg/s-W") => "°C, kg/s, W",
        (Field::SheetUnits, "F-lb/h-W") => "°F, lb/h, W",
        (Field::Sensing, "coil-temperature") => "Temperatura del serpentín",
        (Field::Sensing, "liquid-pressure") => "Presión de la línea de líquido",
        _ => "Opción desconocida",
    }
}

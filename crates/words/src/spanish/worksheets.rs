//! Worksheets in Spanish.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::SheetRule;
use winterset_calc::flooding::FloodingError;
use winterset_calc::liquid_line::LineError;
use winterset_calc::motor::MotorError;
use winterset_calc::sensor::SensorError;
use winterset_calc::winter_start::StartError;
use winterset_profile::{Amount, AmountProblem, Measure, Question, Scale, Sheet, Title};

use super::{Spanish, problems, sensors, sources};
use crate::amounts::{at_least, at_most, symbol_of};
use crate::help::FindWords;
use crate::language::{FieldWords, RuleWords};
use crate::units::Units;
use crate::worksheets::{StartLabels, WorksheetLabels, WorksheetWords};

static LABELS: WorksheetLabels = WorksheetLabels {
    worksheets: "Hojas de trabajo",
    list_note: "Una pregunta cada una, con respuesta inmediata, sin un sitio.",
    result: "Resultado",
    touch_note: "Toque un valor para ver su razón, su ecuación y su fuente.",
    left_out: "omitido",
    clear: "Vaciar esta hoja",
    clear_question: "¿Olvidar lo que se escribió aquí? El refrigerante y la altitud quedan.",
    gone: "Esa hoja de trabajo no existe.",
    fix: "Todavía sin resultado: revise las respuestas marcadas.",
    stalls: "se cala",
    stalls_reason: "Con este voltaje un ventilador en giro no sigue girando.",
    above_line: "Es más de lo que da la red. Introduzca menos, o una tensión de alimentación mayor.",
    flash: "Vapor en la válvula",
    flash_reason: "Parte del líquido se evapora en el camino: a la válvula llega también vapor. Empiece con más subenfriamiento, o use una línea mayor.",
    liquid_reason: "A la válvula llega solo líquido, a esta distancia bajo su punto de burbuja.",
    not_superheated: "En saturación o por debajo: hay líquido en esta línea, o una de las dos lecturas falla.",
    not_subcooled: "En saturación o por encima: hay vapor en esta línea, o una de las dos lecturas falla.",
    receiver_short: "Recipiente, falta",
    receiver_short_reason: "El recipiente es demasiado pequeño para la carga de inundación y el vaciado juntos.",
    inlet_subcooling: "Subenfriamiento a la entrada",
    held_pressure: "Presión de condensación mantenida",
    held_pressure_reason: "Presión de rocío a la temperatura que se mantiene: a lo que se ajusta la válvula.",
    usual_range: |low, high| format!("habitual {low} a {high}"),
    below_bearing: "El motor sigue girando, pero más lento de lo que su cojinete admite por mucho tiempo.",
    below_start: "Un ventilador en giro sigue girando; desde parado no arranca. Necesita un impulso de arranque.",
    gauge_note: |air| format!("La presión manométrica se cuenta desde {air} de aire."),
    carry: "Llevar a un sistema",
    carry_note: "Las respuestas dadas aquí pasan a ser respuestas del sistema. Allí no cambia nada antes de que usted lo diga.",
    carry_to: "Qué sistema",
    choose_system: "Elija un sistema",
    carry_same: "Ese sistema ya contiene todo esto.",
    carry_differences: "Conserve o tome cada respuesta.",
    from_worksheet: "De aquí",
    carry_act: |count| match count {
        1 => "Llevar 1 respuesta".to_owned(),
        count => format!("Llevar {count} respuestas"),
    },
};

impl WorksheetWords for Spanish {
    fn labels(&self) -> &'static WorksheetLabels {
        &LABELS
    }

    fn start_labels(&self) -> &'static StartLabels {
        &sensors::LABELS
    }

    fn sheet(&self, sheet: Sheet) -> RuleWords {
        let (name, reason) = match sheet {
            Sheet::Saturation => (
                "Saturación",
                "Burbuja y rocío, desde una temperatura o desde una presión manométrica.",
            ),
            Sheet::Superheat => (
                "Recalentamiento y subenfriamiento",
                "Desde una presión manométrica y una temperatura de línea.",
            ),
            Sheet::FanLaws => (
                "Leyes de los ventiladores",
                "Caudal, presión y potencia a otra velocidad y en aire más frío o menos denso.",
            ),
            Sheet::MotorVolts => (
                "Voltios y velocidad del motor",
                "Lo que un corte de fase da a un motor de ventilador, lo que muestra un medidor y dónde se cala.",
            ),
            Sheet::Flooding => (
                "Carga de inundación",
                "Cuánto condensador inundar, la carga que requiere y el recipiente.",
            ),
            Sheet::LiquidLine => (
                "Línea de líquido",
                "Caída de presión, vapor en la línea y el subenfriamiento con que empezar.",
            ),
            Sheet::Sensors => (
                "Sensores",
                "Lo que lee un medidor en un termistor o un transductor, y la resistencia con que probar.",
            ),
            Sheet::WinterStart => (
                "Arranque en invierno",
                "Presión en reposo frente al corte, tiempo de puente, y calor para el cárter.",
            ),
            Sheet::Units => ("Unidades", "Un valor en todas las demás unidades."),
        };
        RuleWords { name, reason }
    }

    fn title(&self, title: Title) -> &'static str {
        match title {
            Title::FromTemperature => "De temperatura a presión",
            Title::FromPressure => "De presión a temperatura",
            Title::SuctionLine => "Línea de succión",
            Title::LiquidLine => "Línea de líquido",
            Title::KnownPoint => "El punto conocido",
            Title::NewPoint => "A otra velocidad, en otro aire",
            Title::Motor => "Motor",
            Title::Supply => "Alimentación",
            Title::Output => "Salida del controlador",
            Title::Surroundings => "Aire en el ventilador",
            Title::Condenser => "Condensador, en su punto de diseño",
            Title::Winter => "Con frío",
            Title::Receiver => "Recipiente",
            Title::Load => "Carga térmica",
            Title::Line => "La línea",
            Title::Place => "Lugar",
            Title::Sensor => "El sensor",
            Title::Meter => "Del medidor",
            Title::Simulate => "Para probar el controlador",
            Title::PressureSwitch => "Presostato de baja",
            Title::HighSide => "Condensador y recipiente, al arrancar",
            Title::LowSide => "Lado de baja",
            Title::Sump => "Cárter del compresor",
        }
    }

    fn question(&self, question: Question) -> FieldWords {
        let (ask, help) = question_words(question);
        FieldWords { ask, help }
    }

    fn choice(&self, question: Question, key: &str) -> &'static str {
        let field = match question {
            Question::MotorKind => winterset_calc::Field::Motor,
            Question::Bearing => winterset_calc::Field::Bearing,
            Question::Metering => winterset_calc::Field::Metering,
            Question::Convert => {
                let measure = Measure::ALL.iter().find(|measure| measure.key() == key);
                return measure.map_or("Opción desconocida", |measure| self.measure(*measure));
            }
            _ => {
                return match key {
                    "output" => "Salida en tanto por ciento",
                    "true-volts" => "Voltios, verdadero valor eficaz",
                    "meter-volts" => "Voltios de un medidor simple",
                    _ => sensors::choice(key).unwrap_or("Opción desconocida"),
                };
            }
        };
        super::fields::choice(field, key)
    }

    fn measure(&self, measure: Measure) -> &'static str {
        match measure {
            Measure::Temperature => "Temperatura",
            Measure::Difference => "Diferencia de temperatura",
            Measure::Pressure => "Presión, manométrica y absoluta",
            Measure::PressureDifference => "Diferencia de presión",
            Measure::FanPressure => "Aumento de presión de un ventilador",
            Measure::Power => "Potencia, capacidad",
            Measure::ShaftPower => "Potencia en el eje",
            Measure::Airflow => "Caudal de aire",
            Measure::Elevation => "Altitud",
            Measure::Length => "Longitud",
            Measure::Lift => "Altura",
            Measure::Bore => "Diámetro",
            Measure::Volume => "Volumen",
            Measure::Mass => "Masa, carga",
            Measure::MassFlow => "Caudal másico",
            Measure::Velocity => "Velocidad lineal",
            Measure::Density => "Densidad",
            Measure::Conductance => "Conductancia térmica",
            Measure::HeatCapacity => "Capacidad calorífica",
            Measure::Resistance => "Resistencia",
            Measure::Beta => "Valor beta",
            Measure::Coefficient => "Coeficiente",
            Measure::Signal => "Señal",
            Measure::LoopCurrent => "Corriente de señal",
            Measure::Time => "Tiempo",
            Measure::Voltage => "Tensión",
            Measure::Current => "Corriente",
            Measure::Frequency => "Frecuencia",
            Measure::Speed => "Velocidad de giro",
            Measure::Share => "Parte",
            Measure::Quality => "Vapor por masa",
            Measure::Angle => "Ángulo",
        }
    }

    fn unit(&self, scale: Scale) -> &'static str {
        unit_name(scale)
    }

    fn measured(&self, rule: SheetRule) -> FindWords {
        super::sheet_help::measured(rule)
    }

    fn rule(&self, rule: SheetRule) -> RuleWords {
        let (name, reason) = rule_words(rule);
        RuleWords { name, reason }
    }

    fn equation(&self, rule: SheetRule) -> &'static str {
        match rule {
            SheetRule::KeepsRunning => {
                "u = U_n · mín √((carga + T_f) / par), bajando desde velocidad plena"
            }
            SheetRule::Starts => "u = U_n · máx √((carga + T_f) / par), subiendo desde parado",
            SheetRule::Conversion => {
                "x · factor, y un desplazamiento para temperaturas y presiones manométricas"
            }
            rule => sensors::equation(rule).unwrap_or(rule.equation()),
        }
    }

    fn source(&self, rule: SheetRule) -> &'static str {
        sources::source(rule.source())
    }

    fn amount_problem(
        &self,
        problem: &AmountProblem,
        scale: Scale,
        atmosphere: Pressure,
    ) -> String {
        let labels = &super::screen::SCREEN;
        match problem {
            AmountProblem::NotANumber => (labels.number_like)("12,5"),
            AmountProblem::UnknownUnit { unit, measure } => {
                let units: Vec<_> = measure.scales().iter().map(|s| symbol_of(*s)).collect();
                (labels.unit_like)(unit, &units.join(", "))
            }
            AmountProblem::Ambiguous { whole, decimal } => (labels.two_readings)(whole, decimal),
            AmountProblem::OutOfRange { low, high } => (labels.from_to)(
                &at_least(scale, *low, atmosphere).to_string(),
                &at_most(scale, *high, atmosphere).to_string(),
            ),
        }
    }

    fn motor_error(&self, error: &MotorError, _: Units) -> String {
        match error {
            MotorError::OutOfRange { .. } => {
                "Esto se aleja de la placa más de lo que cubre el modelo del motor. Introduzca un valor más cercano."
            }
            _ => {
                "El motor no tiene respuesta con este valor. Introduzca un voltaje o una salida mayor."
            }
        }
        .to_owned()
    }

    fn line_error(&self, error: &LineError, units: Units, atmosphere: Pressure) -> String {
        let temperature = |value: &ThermodynamicTemperature| {
            let amount = Amount::new(Measure::Temperature, value.value);
            at_most(units.scale(Measure::Temperature), amount, atmosphere).to_string()
        };
        match error {
            LineError::InletNotLiquid { bubble, .. } => format!(
                "A esta presión el refrigerante es líquido solo hasta {}. Introduzca una temperatura menor, o revise la presión.",
                temperature(bubble)
            ),
            LineError::DropAbovePressure { .. } => {
                "Esta línea tomaría toda la presión que hay. Introduzca un diámetro mayor, una línea más corta o menos subida.".to_owned()
            }
            LineError::NotReached { .. } => {
                "Ningún subenfriamiento basta para esta línea. Introduzca un diámetro mayor, una línea más corta o menos subida.".to_owned()
            }
            LineError::OutOfRange { .. } => {
                "Con este valor el caudal sale del rango del modelo. Introduzca una capacidad y un diámetro que vayan juntos.".to_owned()
            }
            LineError::Refrigerant(error) => problems::refused(error, units, atmosphere),
        }
    }

    fn sensor_error(&self, error: &SensorError) -> &'static str {
        sensors::sensor_error(error)
    }

    fn start_error(&self, error: &StartError, units: Units, atmosphere: Pressure) -> String {
        sensors::start_error(error, units, atmosphere)
    }

    fn flooding_error(&self, error: &FloodingError, units: Units, atmosphere: Pressure) -> String {
        match error {
            FloodingError::Refrigerant(error) => problems::refused(error, units, atmosphere),
            _ => {
                "Con este valor el condensador sale del rango del modelo. Introduzca uno más cercano al habitual.".to_owned()
            }
        }
    }
}

fn question_words(question: Question) -> (&'static str, &'static str) {
    match question {
        Question::Refrigerant => (
            "Refrigerante",
            "Lo que contiene ahora el circuito. Todas las hojas conservan el último elegido.",
        ),
        Question::Elevation | Question::GaugeElevation => (
            "Altitud sobre el nivel del mar",
            "Más arriba la presión manométrica se cuenta desde menos aire, y el aire menos denso lleva menos calor. Todas las hojas conservan la última introducida.",
        ),
        Question::Outdoor => (
            "Temperatura exterior",
            "Del aire que entra al condensador o pasa por el ventilador.",
        ),
        Question::Temperature => (
            "Temperatura",
            "Aquella a la que quiere saber las presiones de burbuja y rocío.",
        ),
        Question::Pressure => (
            "Presión manométrica",
            "Como la muestra un manómetro. Puede estar bajo cero: un vacío.",
        ),
        Question::SuctionPressure => (
            "Presión de succión",
            "Presión manométrica en la línea de succión, donde se mide la temperatura o cerca.",
        ),
        Question::SuctionTemperature => (
            "Temperatura de la línea de succión",
            "Sobre el tubo, aislada del aire, en el mismo lugar que la presión.",
        ),
        Question::LiquidPressure => (
            "Presión de líquido",
            "Presión manométrica en la línea de líquido, después del condensador o del recipiente.",
        ),
        Question::LiquidTemperature => (
            "Temperatura de la línea de líquido",
            "Sobre el tubo, aislada del aire, en el mismo lugar que la presión.",
        ),
        Question::KnownSpeed => (
            "Velocidad allí",
            "De la placa o de un tacómetro, con el caudal de abajo.",
        ),
        Question::KnownAirflow => ("Caudal de aire allí", "De la hoja de datos, o medido."),
        Question::KnownFanPressure => (
            "Aumento de presión allí",
            "Presión estática en el ventilador, de la hoja de datos o medida.",
        ),
        Question::KnownPower => (
            "Potencia en el eje allí",
            "La que el ventilador toma en su eje. El motor toma más de la red.",
        ),
        Question::KnownTemperature => (
            "Temperatura del aire allí",
            "Las hojas de datos valen para unos 20 °C (68 °F) al nivel del mar.",
        ),
        Question::KnownElevation => (
            "Altitud allí",
            "Donde se tomó el punto conocido; nivel del mar para una hoja de datos.",
        ),
        Question::NewSpeed => (
            "Velocidad nueva",
            "La velocidad a la que se frena o se acelera el ventilador.",
        ),
        Question::KnownAs => (
            "Se conoce como",
            "Un medidor simple promedia y está calibrado para una onda senoidal: con la onda cortada muestra de menos.",
        ),
        Question::OutputShare => (
            "Salida",
            "Valor eficaz de la tensión después del controlador sobre el de la alimentación.",
        ),
        Question::MotorVolts => (
            "En el motor, verdadero valor eficaz",
            "Lo que un medidor de verdadero valor eficaz muestra después del controlador.",
        ),
        Question::MeterVolts => (
            "En el motor, medidor simple",
            "Lo que un medidor que promedia muestra después del controlador.",
        ),
        Question::SupplyVolts => (
            "Tensión de alimentación",
            "Medida con carga antes del controlador, o la nominal de la red.",
        ),
        Question::Frequency => ("Frecuencia de la red", "50 o 60 Hz."),
        Question::MotorKind => (
            "Tipo de motor",
            "Un capacitor de marcha en un motor monofásico indica capacitor permanente. Otros motores no admiten corte de fase.",
        ),
        Question::NameplateVolts => (
            "Tensión de placa",
            "Un motor de 230 V en una red de 208 V empieza en nueve décimas.",
        ),
        Question::NameplateSpeed => (
            "Velocidad de placa",
            "En revoluciones por minuto, a plena carga.",
        ),
        Question::Bearing => (
            "Cojinete",
            "Un cojinete liso necesita velocidad para conservar su película de aceite, y se pega más con el frío.",
        ),
        Question::HeldCondensing => (
            "Temperatura de condensación que se mantiene",
            "La temperatura de rocío a la que se ajusta la válvula o el controlador.",
        ),
        Question::HeatShare => (
            "Calor con frío, del calor de diseño",
            "Menos de 100 % donde el compresor descarga capacidad o la carga es menor en invierno.",
        ),
        Question::HeatRejected => (
            "Calor rechazado",
            "Por el condensador en su punto de diseño: capacidad frigorífica y calor de compresión.",
        ),
        Question::OverAmbient => (
            "Condensación sobre el ambiente",
            "En el punto de diseño, con todos los ventiladores a velocidad plena.",
        ),
        Question::CondenserVolume => (
            "Volumen interior del condensador",
            "De la hoja de datos. En blanco, se toma del calor para tubos redondos; un serpentín de microcanales contiene cerca de un tercio.",
        ),
        Question::PumpdownCharge => (
            "Otra carga que debe caber en el recipiente",
            "La que se recoge en él desde el resto del sistema.",
        ),
        Question::Warmest => (
            "Lo más caliente que llega a estar el recipiente",
            "En un techo al sol en verano.",
        ),
        Question::ReceiverVolume => (
            "Volumen interior del recipiente",
            "De su placa. En blanco, solo se calcula el volumen necesario.",
        ),
        Question::Bore => (
            "Diámetro interior",
            "Diámetro exterior menos dos veces la pared, de la línea de líquido.",
        ),
        Question::EquivalentLength => (
            "Longitud con accesorios",
            "Longitud recta, y por cada accesorio la longitud de tubo que haría perder lo mismo.",
        ),
        Question::Lift => (
            "Válvula por encima del condensador",
            "Altura del dispositivo de expansión sobre la salida del condensador o del recipiente; menos de cero si está más bajo.",
        ),
        Question::PartsDrop => (
            "Caída en secador y válvulas",
            "Filtro secador, válvula solenoide y visor juntos, con este caudal.",
        ),
        Question::CoolingCapacity => (
            "Capacidad frigorífica",
            "A plena carga: fija el caudal en la línea.",
        ),
        Question::Evaporating => (
            "Temperatura de evaporación",
            "Saturación (rocío) a la presión de succión.",
        ),
        Question::WantedSubcooling => (
            "Subenfriamiento deseado en la válvula",
            "Alguna reserva contra el vapor en la línea, como 3 K (5 °F).",
        ),
        Question::Convert => (
            "Qué convertir",
            "Todas las magnitudes que usa esta aplicación.",
        ),
        Question::Converted(measure) => (
            Spanish.measure(measure),
            "El valor y la unidad en que está.",
        ),
        other => sensors::question(other).unwrap_or_default(),
    }
}

fn rule_words(rule: SheetRule) -> (&'static str, &'static str) {
    match rule {
        SheetRule::BubblePressure => (
            "Presión de burbuja",
            "Líquido saturado: aquí aparece la primera burbuja.",
        ),
        SheetRule::DewPressure => (
            "Presión de rocío",
            "Vapor saturado: aquí aparece la primera gota.",
        ),
        SheetRule::BubbleTemperature => (
            "Temperatura de burbuja",
            "Líquido saturado a esta presión: desde aquí se cuenta el subenfriamiento.",
        ),
        SheetRule::DewTemperature => (
            "Temperatura de rocío",
            "Vapor saturado a esta presión: desde aquí se cuenta el recalentamiento.",
        ),
        SheetRule::Glide => (
            "Deslizamiento",
            "Cuánto más caliente es el punto de rocío que el de burbuja.",
        ),
        SheetRule::Superheat => (
            "Recalentamiento",
            "Cuánto está el vapor por encima de su temperatura de rocío.",
        ),
        SheetRule::Subcooling => (
            "Subenfriamiento",
            "Cuánto está el líquido por debajo de su temperatura de burbuja.",
        ),
        SheetRule::AirDensity => (
            "Densidad del aire",
            "El aire frío pesa más, el aire de altura menos.",
        ),
        SheetRule::FanAirflow => (
            "Caudal de aire",
            "Va con la velocidad, sea cual sea la densidad.",
        ),
        SheetRule::FanPressure => (
            "Aumento de presión",
            "Va con la densidad y el cuadrado de la velocidad.",
        ),
        SheetRule::FanPower => (
            "Potencia en el eje",
            "Va con la densidad y el cubo de la velocidad.",
        ),
        SheetRule::Output => (
            "Salida",
            "Valor eficaz de la tensión en el motor sobre el de la alimentación.",
        ),
        SheetRule::CutVoltage => (
            "En el motor, verdadero valor eficaz",
            "Lo que muestra un medidor de verdadero valor eficaz, y por lo que se rige el par del motor.",
        ),
        SheetRule::MeterVoltage => (
            "Un medidor simple muestra",
            "Promedia y está calibrado para una onda senoidal, por eso aquí muestra de menos.",
        ),
        SheetRule::FiringAngle => (
            "Ángulo de disparo",
            "La parte que se corta de cada media onda.",
        ),
        SheetRule::MotorSpeed => (
            "Velocidad del motor",
            "Donde el par del motor a este voltaje iguala al ventilador y al cojinete.",
        ),
        SheetRule::KeepsRunning => (
            "Se cala por debajo de",
            "Con menos de este voltaje un ventilador en giro no sigue girando.",
        ),
        SheetRule::Starts => (
            "Arranca desde parado a",
            "Entre los dos voltajes un ventilador sigue girando pero no arranca.",
        ),
        SheetRule::BearingSpeed => (
            "Velocidad mínima del cojinete",
            "Por debajo el cojinete se desgasta.",
        ),
        SheetRule::FloodedShare => (
            "Parte que se inunda",
            "Lo que queda de la superficie rechaza el calor a la temperatura que se mantiene.",
        ),
        SheetRule::CondenserVolume => (
            "Volumen del condensador",
            "Estimado del calor, para tubos redondos.",
        ),
        SheetRule::FloodedLiquid => (
            "Líquido que inunda",
            "Su densidad cerca de la temperatura exterior.",
        ),
        SheetRule::Unflooded => (
            "Condensador sin inundar",
            "Densidad media de lo que contiene antes de inundarse.",
        ),
        SheetRule::FloodingCharge => (
            "Carga de inundación",
            "Además de la carga del sistema sin inundación.",
        ),
        SheetRule::ReceiverNeeded => (
            "Recipiente necesario",
            "Recoge la carga de inundación un día cálido, lleno como máximo en ocho décimas.",
        ),
        SheetRule::ReceiverRoom => (
            "Recipiente, sobra",
            "El recipiente admite la carga de inundación y el vaciado.",
        ),
        SheetRule::MassFlow => (
            "Caudal másico",
            "El que toma el evaporador para esta capacidad.",
        ),
        SheetRule::LineVelocity => ("Velocidad lineal", "Velocidad media del líquido."),
        SheetRule::LineFriction => ("Caída por fricción", "En tubo y accesorios."),
        SheetRule::LineLift => (
            "Caída por altura",
            "El peso de la columna de líquido; menos de cero si la válvula está más baja.",
        ),
        SheetRule::LineDrop => (
            "Caída de presión de la línea",
            "Fricción, altura, secador y válvulas juntos.",
        ),
        SheetRule::Arrival => (
            "Subenfriamiento en la válvula",
            "Llega solo líquido, a esta distancia bajo su punto de burbuja.",
        ),
        SheetRule::NeededSubcooling => (
            "Subenfriamiento inicial",
            "A la salida del condensador o del recipiente, para lo deseado en la válvula.",
        ),
        SheetRule::Conversion => ("En otra unidad", "Lo mismo en otra unidad."),
        other => sensors::rule(other).unwrap_or_default(),
    }
}

fn unit_name(scale: Scale) -> &'static str {
    match scale.symbol() {
        "°C" => "Grado Celsius",
        "°F" => "Grado Fahrenheit",
        "K" => "Kelvin",
        "psig" => "Libra por pulgada cuadrada, manométrica",
        "psia" => "Libra por pulgada cuadrada, absoluta",
        "kPa gauge" => "Kilopascal, manométrico",
        "kPa absolute" => "Kilopascal, absoluto",
        "bar gauge" => "Bar, manométrico",
        "bar absolute" => "Bar, absoluto",
        "psi" => "Libra por pulgada cuadrada",
        "kPa" => "Kilopascal",
        "Pa" => "Pascal",
        "bar" => "Bar",
        "in H₂O" => "Pulgada de agua",
        "kW" => "Kilovatio",
        "W" => "Vatio",
        "Btu/h" => "Btu por hora",
        "ton" => "Tonelada de refrigeración",
        "hp" => "Caballo de fuerza",
        "m³/h" => "Metro cúbico por hora",
        "m³/s" => "Metro cúbico por segundo",
        "L/s" => "Litro por segundo",
        "cfm" => "Pie cúbico por minuto",
        "m" => "Metro",
        "ft" => "Pie",
        "mm" => "Milímetro",
        "in" => "Pulgada",
        "L" => "Litro",
        "m³" => "Metro cúbico",
        "ft³" => "Pie cúbico",
        "in³" => "Pulgada cúbica",
        "kg" => "Kilogramo",
        "g" => "Gramo",
        "lb" => "Libra",
        "oz" => "Onza",
        "kg/s" => "Kilogramo por segundo",
        "kg/h" => "Kilogramo por hora",
        "lb/min" => "Libra por minuto",
        "lb/h" => "Libra por hora",
        "m/s" => "Metro por segundo",
        "ft/s" => "Pie por segundo",
        "ft/min" => "Pie por minuto",
        "kg/m³" => "Kilogramo por metro cúbico",
        "lb/ft³" => "Libra por pie cúbico",
        "W/K" => "Vatio por kelvin",
        "Btu/(h °F)" => "Btu por hora y °F",
        other => other,
    }
}

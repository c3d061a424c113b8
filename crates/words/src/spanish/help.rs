//! What each value and each answer is, how to find it, and what is typical, in Spanish.

use winterset_calc::{Field, Rule};

use crate::help::{FindWords, HelpLabels, HelpWords, RungValue};

pub(super) static LABELS: HelpLabels = HelpLabels {
    what: "Qué es",
    measure: "Cómo se mide",
    typical: "Qué es habitual",
    on_a_rung: "Qué son estos valores",
    how_to_find: "Cómo hallarlo",
    find: "Dónde se encuentra",
    blank: "Si queda en blanco",
    blank_is: |assumed| format!("Se supone: {assumed}."),
    blank_worked_out: "Se calcula de las demás respuestas.",
    blank_left_out: "No se tiene en cuenta.",
    blank_is_not: "Sin esto no hay plan.",
};

pub(super) fn rule(rule: Rule) -> HelpWords {
    let (what, measure, typical) = match rule {
        Rule::Atmosphere => (
            "El peso del aire sobre el sitio, desde el que se cuenta la presión manométrica.",
            "La muestra un barómetro o una estación meteorológica en el sitio; tome la presión de la propia estación, no la reducida al nivel del mar.",
            "Cerca de 1 % menos por cada 85 m (280 ft) de altitud; el tiempo la mueve un 3 % a cada lado.",
        ),
        Rule::HeatRejected | Rule::HeatRejectedBySheet | Rule::HeatEntered => (
            "Lo que el condensador tiene que ceder: el calor del local y el trabajo del compresor.",
            "Mida lo que consume el compresor y sume la capacidad frigorífica, o tome el caudal y el calentamiento del aire del condensador.",
            "De 1,2 a 1,35 veces la capacidad frigorífica en salas y neveras, de 1,4 a 1,7 veces en congeladores.",
        ),
        Rule::AirflowEntered | Rule::AssumedAirflow => (
            "El aire que mueven todos los ventiladores del condensador a velocidad plena.",
            "Promedie muchas lecturas de un anemómetro sobre la cara del serpentín y multiplique por el área de la cara.",
            "De 0,08 a 0,15 m³/s por kilovatio rechazado (50 a 95 cfm por 1000 Btu/h).",
        ),
        Rule::DesignCondensing => (
            "La temperatura de condensación de la lectura desde la que se escala el condensador.",
            "Lea la presión de condensación con los ventiladores a velocidad plena un día estable, y tome la temperatura de rocío que le corresponde.",
            "De 8 a 17 K (15 a 30 °F) por encima del aire exterior.",
        ),
        Rule::AirCapacityRate => (
            "El calor que el aire del condensador toma por cada kelvin que se calienta.",
            "Resulta del caudal y de la densidad del aire; en el sitio no hay nada que leer.",
            "Cerca de 1,2 kW por kelvin y m³/s de aire al nivel del mar.",
        ),
        Rule::Conductance => (
            "El calor que el serpentín deja pasar por cada kelvin entre refrigerante y aire.",
            "Resulta del punto conocido; una segunda lectura sobre el ambiente con otra carga dice si todavía vale.",
            "Baja cuando las aletas se doblan y se ensucian.",
        ),
        Rule::MeteringNeed => (
            "La presión de condensación por debajo de la cual el dispositivo de expansión, abierto del todo, alimenta demasiado poco.",
            "Deje caer despacio la presión de condensación: en ese punto el sobrecalentamiento empieza a subir con la carga estable.",
            "La más alta, con orificio fijo o válvula convencional; menos con puerto equilibrado; la más baja, con válvula electrónica.",
        ),
        Rule::CompressorNeed | Rule::CompressorEntered => (
            "La presión de condensación más baja con la que el compresor puede trabajar.",
            "Léala en el campo de trabajo del fabricante a su temperatura de evaporación; no se busca probando.",
            "Condensación de 10 a 30 °C (50 a 85 °F), más alta con evaporaciones más altas.",
        ),
        Rule::LiquidLineNeed => (
            "La presión de condensación por debajo de la cual el líquido hierve en su línea antes de llegar al dispositivo de expansión.",
            "Mire el visor antes de la válvula, o compare allí la temperatura de la línea y la presión con el punto de burbuja.",
            "Baja si la línea es corta y sin desnivel; cuenta si la válvula está muy por encima del condensador.",
        ),
        Rule::EvaporatorNeed => (
            "La presión de condensación por debajo de la cual el serpentín interior mal alimentado se enfría hasta formar hielo.",
            "Tome el punto más frío del serpentín con un sensor de pinza mientras la presión de succión está baja.",
            "Cuenta en salas, donde el serpentín debe quedar sin hielo; los locales más fríos desescarchan de todos modos.",
        ),
        Rule::DefrostNeed => (
            "La presión de condensación que el gas caliente necesita para fundir el hielo.",
            "Cronometre un desescarche con frío y mire si se va el último hielo.",
            "Condensación de 15 a 25 °C (60 a 75 °F) mientras dura el desescarche.",
        ),
        Rule::ReclaimNeed => (
            "La presión de condensación con la que el calor es bastante caliente para quien lo usa.",
            "Mida la temperatura que recibe quien usa el calor y sume lo que pierde el intercambiador.",
            "Condensación de 30 a 50 °C (85 a 120 °F).",
        ),
        Rule::GoverningNeed => (
            "La presión de condensación más baja con la que este sistema puede vivir: la de su parte que más pide.",
            "Déjela caer despacio y observe sobrecalentamiento, visor y presión de succión; lo primero que falla está en la presión necesaria.",
            "Condensación de 15 a 32 °C (60 a 90 °F).",
        ),
        Rule::FullSpeedPressure => (
            "La presión de condensación desde la que el ventilador va a velocidad plena.",
            "Con un manómetro en la línea de líquido, anote la presión a la que la velocidad deja de subir.",
            "Un rango de modulación por encima de la presión necesaria.",
        ),
        Rule::FullSpeedCoil => (
            "La temperatura en el sensor del serpentín desde la que el ventilador va a velocidad plena.",
            "Lea el valor del propio sensor, o de un segundo sensor sujeto a su lado, cuando el ventilador llega a velocidad plena.",
            "De 20 a 40 °C (70 a 105 °F).",
        ),
        Rule::ThrottlingRange => (
            "Cuánto se mueve el valor medido mientras el ventilador va de la salida mínima a la plena.",
            "Anote el valor medido con la salida mínima y a velocidad plena; la diferencia es el rango.",
            "De 4 a 10 K (8 a 18 °F) de temperatura de condensación.",
        ),
        Rule::LowestSpeed | Rule::StallSpeed => (
            "Lo más despacio que el motor del ventilador puede girar por mucho tiempo.",
            "Un tacómetro en el eje o un estroboscopio en las palas con la salida mínima.",
            "Un quinto de la velocidad plena con rodamientos de bolas, dos quintos con cojinetes lisos, salvo que el fabricante del motor diga otra cosa.",
        ),
        Rule::MinimumOutput | Rule::StallOutput => (
            "Lo menos que el controlador puede dar al motor, como parte de la tensión de alimentación.",
            "Un medidor de verdadero valor eficaz en el motor mientras el valor medido está por debajo del rango; uno de valor medio muestra otra cosa.",
            "Del 20 al 45 % de la tensión; depende del motor, del cojinete y de lo denso que es el aire frío.",
        ),
        Rule::MinimumSignal
        | Rule::MinimumSignalVolts
        | Rule::MinimumSignalDuty
        | Rule::LowestFrequency => (
            "La señal mínima que recibe el motor o el variador, como parte de la plena.",
            "Un medidor de tensión continua en el par de señal, o la frecuencia en la pantalla del variador.",
            "De un quinto a dos quintos de la plena; muchos motores con electrónica paran por debajo de un décimo.",
        ),
        Rule::StartBoost => (
            "Cuánto tiempo recibe el motor salida plena cuando arranca desde parado.",
            "Pare el ventilador con el sensor simulado, déjelo arrancar y cronometre cuánto dura la tensión plena.",
            "De 0,5 a 5 s: más con ventiladores grandes, con cojinetes lisos de aceite frío y espeso, y contra el viento.",
        ),
        Rule::OnOffPoints => (
            "Las presiones de condensación a las que un presostato para el ventilador y lo arranca de nuevo.",
            "Con un manómetro en la línea del presostato, anote la presión en cada clic.",
            "Separadas de 4 a 10 K (8 a 18 °F) de temperatura de condensación; más juntas, el ventilador arranca demasiado.",
        ),
        Rule::StagePoints => (
            "Las presiones de condensación a las que el presostato de uno de varios ventiladores lo para y lo arranca de nuevo.",
            "Con un manómetro en la línea del presostato, anote la presión en cada clic, un presostato tras otro.",
            "Diferenciales de 2 a 5 K (4 a 9 °F) de temperatura de condensación, cada etapa algo por debajo de la anterior.",
        ),
        Rule::HoldLimit => (
            "La temperatura exterior más baja a la que el método todavía conserva la presión necesaria.",
            "Los días más fríos, anote temperatura exterior y presión de condensación con el ventilador en su mínimo; por debajo del límite la presión no alcanza.",
            "El ventilador pleno solo aguanta hasta 5 a 20 °C (40 a 70 °F); con ventiladores frenados se baja de 15 a 30 K (30 a 55 °F) más.",
        ),
        Rule::Condensing => (
            "La temperatura de rocío a la presión de condensación.",
            "Lea la presión de condensación y tome la temperatura de rocío que le corresponde.",
            "De 8 a 17 K (15 a 30 °F) por encima del aire exterior con los ventiladores a velocidad plena.",
        ),
        Rule::AssumedFanPower => (
            "Lo que consumen todos los ventiladores del condensador a velocidad plena.",
            "Un medidor de potencia en la alimentación de los ventiladores, con el compresor parado si el contactor lo permite.",
            "Del 2 al 4 % del calor rechazado.",
        ),
    };
    HelpWords {
        what,
        measure,
        typical,
    }
}

pub(super) fn field(field: Field) -> FindWords {
    let (find, typical) = match field {
        Field::Refrigerant => (
            "En la placa de la unidad condensadora; la etiqueta de una reconversión vale más que la placa. La saturación en reposo dice si puede ser verdad.",
            "R-410A o R-454B en salas, R-134a, R-448A o R-449A en refrigeración.",
        ),
        Field::CoolingCapacity => (
            "En la placa, o en la hoja de datos de la unidad condensadora a su temperatura de evaporación.",
            "Una tonelada (12 000 Btu/h) son 3,5 kW. La mayoría de estos sistemas tiene de 2 a 100 kW.",
        ),
        Field::HeatRejected => (
            "En la placa o en la hoja de datos del propio condensador, a menudo como calor total de rechazo.",
            "De 1,2 a 1,7 veces la capacidad frigorífica.",
        ),
        Field::OutdoorLow => (
            "Del tiempo de inviernos pasados, de una tabla de diseño del lugar o de un archivo meteorológico del sitio.",
            "Cuente con la noche más fría de diez años, no con la de uno.",
        ),
        Field::Metering => (
            "Mire la entrada del evaporador: un bulbo en la línea de succión indica válvula termostática; un cable a un cabezal, válvula electrónica; ninguno de los dos, orificio fijo.",
            "Válvula termostática en refrigeración y en equipos partidos grandes, orificio fijo en los pequeños.",
        ),
        Field::Motor => (
            "Lea la placa del motor y siga sus cables hasta un capacitor, una caja de electrónica o ninguno.",
            "Capacitor permanente en unidades pequeñas, trifásico en las grandes, conmutado electrónicamente en las recientes.",
        ),
        Field::Bearing => (
            "La placa o la hoja de datos del motor dice bolas o liso; un motor con dos anillos blindados en el eje tiene rodamientos de bolas.",
            "Rodamientos de bolas con el eje hacia arriba o hacia abajo, cojinetes lisos en muchos motores pequeños.",
        ),
        Field::Voltage => (
            "Mida en el ventilador mientras gira; la placa dice lo que debería ser.",
            "Son comunes 120, 208, 230, 277, 400, 460 o 575 V.",
        ),
        Field::Duty => (
            "Lo que se mantiene frío, por la temperatura de su aire: más de unos 15 °C (60 °F), sobre la congelación o por debajo.",
            "Salas y armarios de 18 a 27 °C (65 a 80 °F), neveras y bodegas de 0 a 12 °C (32 a 54 °F), congeladores cerca de −20 °C (−4 °F).",
        ),
        Field::OverAmbient => (
            "Con todos los ventiladores a velocidad plena y carga estable, tome la temperatura de rocío a la presión de condensación, y a la sombra el aire que entra al serpentín.",
            "De 8 K (15 °F) en congeladores, 10 K (18 °F) en neveras, 15 K (27 °F) en equipos partidos, y algo más si el refrigerante tiene deslizamiento.",
        ),
        Field::KnownOutdoor => (
            "Un termómetro a la sombra en el aire que entra al serpentín, a la hora de esa lectura.",
            "Un día cálido, para que el ventilador vaya por sí solo a velocidad plena.",
        ),
        Field::Evaporating => (
            "Lea la presión de succión con el sistema estable y tome la temperatura de rocío que le corresponde.",
            "Cerca de 5 °C (40 °F) en salas, −7 °C (20 °F) en neveras, −30 °C (−22 °F) en congeladores.",
        ),
        Field::Fans => (
            "Cuente los ventiladores que soplan por el condensador de este circuito.",
            "Uno o dos en unidades pequeñas, de cuatro a doce en las grandes.",
        ),
        Field::Airflow => (
            "La hoja de datos del condensador; o promedie un anemómetro sobre la cara del serpentín y multiplique por su área.",
            "De 0,08 a 0,15 m³/s por kilovatio rechazado (50 a 95 cfm por 1000 Btu/h).",
        ),
        Field::Frequency => (
            "En la placa. Es la de toda la red.",
            "En América del Norte 60 Hz; en Europa y casi toda Asia y África 50 Hz.",
        ),
        Field::RatedSpeed => (
            "En la placa del motor, en rpm.",
            "A 60 Hz: 825, 1075, 1140 o 1550 rpm; a 50 Hz: 680, 900 o 1350 rpm.",
        ),
        Field::Elevation => (
            "Un mapa, o este teléfono.",
            "La mayoría de los lugares está por debajo de 500 m (1600 ft), donde importa poco.",
        ),
        Field::Sensing => (
            "En la hoja de datos del controlador: si toma un sensor de temperatura o un transductor de presión.",
            "Temperatura del serpentín en equipos partidos, presión en refrigeración y en mezclas con deslizamiento.",
        ),
        Field::ThrottlingRange => (
            "En los ajustes del controlador, donde puede llamarse rango, banda o intervalo.",
            "Empiece en el medio y amplíelo si el ventilador oscila.",
        ),
        Field::CompressorLowest => (
            "El diagrama del campo de trabajo en la hoja de datos del compresor: su borde inferior a su temperatura de evaporación.",
            "De 10 a 30 °C (50 a 85 °F), más alta con evaporaciones más altas.",
        ),
        Field::ModulatedFans => (
            "Siga los cables del controlador a los ventiladores y cuente los que están detrás de él; los demás cuelgan de contactores.",
            "Todos; en condensadores largos, a menudo uno o dos en el extremo donde sale el líquido.",
        ),
        Field::CompressorHighest => (
            "El diagrama del campo de trabajo en la hoja de datos del compresor: su borde superior a su temperatura de evaporación.",
            "De 50 a 65 °C (120 a 150 °F), más baja con evaporaciones más bajas.",
        ),
        Field::ReturnAir => (
            "Un termómetro en el aire que entra al serpentín interior.",
            "La temperatura del local, algo más donde hay lámparas o máquinas.",
        ),
        Field::FanPower => (
            "Un medidor de potencia en la alimentación de los ventiladores a velocidad plena, o la suma de las placas.",
            "Del 2 al 4 % del calor rechazado.",
        ),
        Field::ReturnHumidity => (
            "Un higrómetro en el aire que entra al serpentín interior.",
            "Del 40 al 55 % en salas, del 70 al 90 % en neveras.",
        ),
        Field::IndoorAirflow => (
            "La hoja de datos de la unidad interior, a la velocidad a que está puesto su ventilador.",
            "Cerca de 0,05 m³/s por kilovatio de frío (400 cfm por tonelada).",
        ),
        Field::LiquidLength => (
            "Mídala a pasos o tómela del plano; sume por cada codo y válvula una longitud recta de una tabla de manual.",
            "De 5 a 30 m (15 a 100 ft).",
        ),
        Field::LiquidLift => (
            "Cuente pisos o mida: la altura del dispositivo de expansión menos la de la salida del condensador.",
            "Cerca de 3 m (10 ft) por piso; menos de cero con el condensador en el techo.",
        ),
        Field::LiquidDiameter => (
            "Mida el exterior con un calibre y reste dos veces la pared, o búsquelo en una tabla de tubos.",
            "De 8 a 20 mm (tubo de 3/8 a 7/8 de pulgada).",
        ),
        Field::FullLoad => (
            "La corriente nominal (FLA) en la placa del motor. Una pinza amperimétrica a velocidad plena muestra casi lo mismo.",
            "De 0,5 a 3 A en ventiladores pequeños.",
        ),
        Field::Subcooling => (
            "La temperatura de burbuja a la presión de condensación, menos un sensor de pinza en la línea de líquido junto al condensador.",
            "De 3 a 8 K (5 a 15 °F).",
        ),
        Field::CapacityControl => (
            "Siga los cables: si solo hay contactores, marcha y para, o va por etapas si hay varios compresores; una bobina en una válvula del compresor significa descarga; un variador, velocidad variable.",
            "Marcha y paro en equipos pequeños, etapas en los grandes, velocidad variable en muchos equipos partidos recientes.",
        ),
        Field::CompressorStages => (
            "Cuente los compresores de este circuito que pueden trabajar sin los demás.",
            "2, o de 3 a 4 en sistemas mayores.",
        ),
        Field::LowestLoad => (
            "En los ajustes de etapas, descargadores o variador de los compresores: lo menos a que trabajan.",
            "El 50 % con dos etapas, del 25 al 30 % con variador, el 100 % con un compresor que solo marcha o para.",
        ),
        Field::HeatReclaim => (
            "Pregunte a quien usa el calor qué temperatura necesita, y sume lo que pierde el intercambiador.",
            "De 30 a 50 °C (85 a 120 °F).",
        ),
        Field::Defrost => (
            "Observe un desescarche o lea el controlador: se abre una válvula de gas caliente, o unas resistencias toman corriente.",
            "Por aire en neveras, eléctrico en congeladores, por gas caliente en centrales grandes.",
        ),
        Field::BelowMinimum => (
            "En las instrucciones del controlador, donde puede llamarse velocidad mínima o corte.",
            "La mayoría sigue girando mientras no se ajuste un corte.",
        ),
        Field::ReversingValve => (
            "En el esquema eléctrico de la unidad; o mida en la bobina de la válvula mientras calienta.",
            "Más unidades la energizan en refrigeración que en calefacción.",
        ),
        Field::FlowCoefficients | Field::PowerCoefficients => (
            "En el programa de selección o la hoja de datos del fabricante del compresor, para su refrigerante y frecuencia.",
            "Diez números; los primeros son los grandes.",
        ),
        Field::SheetUnits => (
            "En el encabezado de la tabla de coeficientes.",
            "Las hojas de América del Norte llevan °F y lb/h, las demás °C y kg/h o g/s.",
        ),
        Field::SheetSuperheat => (
            "En el encabezado o al pie de la tabla de coeficientes.",
            "Son habituales 11,1 K (20 °F) o 10 K.",
        ),
        Field::Recirculation => (
            "Compare el aire en la cara del serpentín con el aire a unos pasos: la diferencia entre el calentamiento del aire por el serpentín es la parte.",
            "Ninguna al aire libre, del 5 al 20 % en un rincón, bajo un techo o entre unidades.",
        ),
        Field::Dirt => (
            "Mire a contraluz por las aletas y compare la lectura sobre el ambiente antes y después de un lavado.",
            "Ninguna tras un lavado, hasta el 30 % en un serpentín que nunca se lavó.",
        ),
        Field::IdleAirflow => (
            "Con los ventiladores parados un día de viento, promedie un anemómetro sobre la cara del serpentín y divida por lo mismo a velocidad plena.",
            "El 5 % en un patio resguardado, el 10 % en un techo habitual, el 25 % en una cresta abierta.",
        ),
    };
    FindWords { find, typical }
}

/// What a rung of the ladder answers.
pub fn on_rung(value: RungValue) -> HelpWords {
    match value {
        RungValue::HeadPressure => HelpWords {
            what: "La presión del lado de alta, a la que condensa el refrigerante.",
            measure: "Un manómetro en el lado de alta, con el compresor en marcha y estable desde hace unos minutos.",
            typical: "En el frío, en la presión necesaria o algo por encima; más alta cuanto más calor hace fuera.",
        },
        RungValue::Coil => HelpWords {
            what: "Lo que siente un sensor a mitad de la condensación.",
            measure: "Un termómetro sujeto al codo del sensor y aislado por encima.",
            typical: "La temperatura de saturación de la presión de alta; en una mezcla con deslizamiento, entre burbuja y rocío.",
        },
        RungValue::OverAmbient => HelpWords {
            what: "Temperatura de condensación menos temperatura exterior.",
            measure: "La presión de alta leída como temperatura de rocío, menos el aire que entra al serpentín, ambas estables.",
            typical: "De 8 a 17 K (15 a 30 °F) con todos los ventiladores a plena velocidad; más cuanto más despacio giran.",
        },
        RungValue::Output => HelpWords {
            what: "Lo que da el controlador, como parte de su salida plena.",
            measure: "En su pantalla, o los voltios o la señal del motor frente a los plenos.",
            typical: "Plena en un día cálido, la salida mínima en el frío, y entre ambas en el rango de modulación.",
        },
        RungValue::MotorVolts => HelpWords {
            what: "La tensión eficaz en el motor.",
            measure: "Un medidor de verdadero valor eficaz en el motor, por quien puede trabajar con tensión; uno que promedia lee de menos una onda recortada.",
            typical: "La tensión de alimentación a salida plena; en la mínima, lo que dice la hoja de ajustes.",
        },
        RungValue::MotorSpeed => HelpWords {
            what: "A qué velocidad gira el motor del ventilador.",
            measure: "Un tacómetro o una luz estroboscópica sobre las palas, desde fuera de la rejilla.",
            typical: "La de la placa a salida plena; de un quinto a dos quintos de ella en la mínima.",
        },
        RungValue::FanOn => HelpWords {
            what: "Parte del tiempo que marchan los ventiladores conmutados; en un banco, parte de los ventiladores.",
            measure: "Cronometre marcha y parada durante unos arranques.",
            typical: "Menos cuanto más frío hace.",
        },
        RungValue::FanSpeed => HelpWords {
            what: "Velocidad de los ventiladores como parte de la plena.",
            measure: "Un tacómetro o una luz estroboscópica sobre las palas, desde fuera de la rejilla.",
            typical: "Plena, donde nada los frena.",
        },
        RungValue::Swing => HelpWords {
            what: "Dónde se da la vuelta la presión de alta mientras un ventilador se conmuta.",
            measure: "La más baja y la más alta en un manómetro de alta durante unos arranques.",
            typical: "Tan ancho como el diferencial del presostato, o algo más.",
        },
        RungValue::Starts => HelpWords {
            what: "Cuántas veces arranca un ventilador conmutado.",
            measure: "Cuente durante media hora de tiempo estable.",
            typical: "Menos de diez por hora; más desgasta contactor y motor.",
        },
        RungValue::Flooded => HelpWords {
            what: "Parte del condensador llena de líquido.",
            measure: "Toque o mida a lo largo de los codos: donde pasan de tibios a fríos empieza el líquido.",
            typical: "Nada en un día cálido, casi todo el serpentín en el frío más hondo.",
        },
        RungValue::Evaporating => HelpWords {
            what: "Temperatura a la que hierve el refrigerante en el evaporador (rocío).",
            measure: "Un manómetro de aspiración a la salida del evaporador, leído como temperatura de rocío.",
            typical: "La del punto conocido mientras el evaporador está alimentado; más fría donde le falta líquido.",
        },
        RungValue::Superheat => HelpWords {
            what: "Cuánto está el gas de aspiración por encima de su temperatura de rocío.",
            measure: "Un termómetro sujeto al tubo de aspiración donde está el bulbo, menos la temperatura de rocío de la presión en ese punto.",
            typical: "De 4 a 8 K (7 a 14 °F) bajo control; sube donde al evaporador le falta líquido.",
        },
        RungValue::Cooling => HelpWords {
            what: "Calor que toma el evaporador.",
            measure: "Del caudal y de las temperaturas del aire antes y después del serpentín; exacto solo en un serpentín seco.",
            typical: "Algo más que en el punto conocido en el frío, mientras el evaporador está alimentado.",
        },
    }
}

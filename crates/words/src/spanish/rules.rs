//! Names and reasons of the rules, in Spanish.

use winterset_calc::Rule;

use crate::language::RuleWords;

pub(super) fn rule(rule: Rule) -> RuleWords {
    let (name, reason) = match rule {
        Rule::Atmosphere => (
            "Presión del aire",
            "La atmósfera estándar a esta altitud sobre el nivel del mar.",
        ),
        Rule::HeatRejected => (
            "Calor rechazado",
            "La capacidad frigorífica más el calor de compresión, en el punto conocido.",
        ),
        Rule::HeatRejectedBySheet => (
            "Calor rechazado",
            "La capacidad frigorífica más la potencia del compresor según su hoja de datos, en el punto conocido.",
        ),
        Rule::HeatEntered => (
            "Calor rechazado",
            "Como se introdujo, en el punto conocido.",
        ),
        Rule::AirflowEntered => ("Caudal de aire", "Como se introdujo."),
        Rule::AssumedAirflow => (
            "Caudal de aire",
            "Un condensador habitual: su aire sale a seis décimas del camino hasta la mitad de la condensación.",
        ),
        Rule::DesignCondensing => (
            "Condensación en el punto conocido",
            "La temperatura exterior más la condensación sobre el ambiente del punto conocido.",
        ),
        Rule::AirCapacityRate => (
            "Calor que el aire toma por kelvin",
            "Densidad, caudal y calor específico del aire.",
        ),
        Rule::Conductance => (
            "Conductancia del condensador",
            "Lo que el serpentín debe ser para enfriar el gas caliente, condensarlo y enfriar el líquido en el punto conocido. Las partes dicen cuánto del serpentín toma cada uno.",
        ),
        Rule::MeteringNeed => (
            "Para el dispositivo de expansión",
            "Abierto del todo, el dispositivo todavía deja pasar a esta presión lo que el compresor aspira; por debajo, el evaporador queda mal alimentado.",
        ),
        Rule::CompressorNeed => (
            "Para el compresor",
            "La menor distancia habitual entre condensación y evaporación. Introduzca el límite del fabricante si lo tiene.",
        ),
        Rule::CompressorEntered => (
            "Para el compresor",
            "El límite del fabricante, como se introdujo.",
        ),
        Rule::LiquidLineNeed => (
            "Para la línea de líquido",
            "A esta presión la subida y la fricción agotan justo el subenfriamiento; por debajo llega gas al dispositivo de expansión.",
        ),
        Rule::EvaporatorNeed => (
            "Para el evaporador",
            "Por debajo de esta presión de condensación el serpentín mal alimentado se enfría tanto que se forma hielo en él.",
        ),
        Rule::DefrostNeed => (
            "Para el desescarche por gas caliente",
            "El serpentín que se desescarcha debe condensar bien por encima de la congelación, y el gas debe llegar hasta allí.",
        ),
        Rule::ReclaimNeed => (
            "Para la recuperación de calor",
            "La temperatura que pide quien usa el calor.",
        ),
        Rule::GoverningNeed => ("Presión necesaria", "La determina la parte que más pide."),
        Rule::FullSpeedPressure => (
            "Punto de velocidad plena, presión",
            "El rango de modulación se apoya en la presión necesaria; en su extremo superior el ventilador va a velocidad plena.",
        ),
        Rule::FullSpeedCoil => (
            "Punto de velocidad plena, temperatura del serpentín",
            "Lo que mide un sensor a mitad de la condensación con esa presión.",
        ),
        Rule::ThrottlingRange => (
            "Rango de modulación",
            "Desde la presión necesaria con la salida mínima hasta el punto de velocidad plena.",
        ),
        Rule::LowestSpeed => (
            "Velocidad mínima",
            "La que el cojinete admite por mucho tiempo.",
        ),
        Rule::MinimumOutput => (
            "Salida mínima",
            "El voltaje con el que el motor conserva su velocidad mínima contra el ventilador, en el aire frío de la mínima de este sitio.",
        ),
        Rule::StallSpeed => (
            "Velocidad mínima",
            "La que el ventilador alcanza con el menor voltaje que lo mantiene girando en el frío. El cojinete solo admitiría menos.",
        ),
        Rule::StallOutput => (
            "Salida mínima",
            "El menor voltaje con el que el motor mantiene girando su ventilador contra la grasa fría y el aire denso de la mínima de este sitio. El cojinete solo admitiría menos, pero por debajo el ventilador se cala.",
        ),
        Rule::MinimumSignalVolts => (
            "Señal mínima, 0 a 10 V",
            "En una entrada que empieza a 1 V y da velocidad plena a 10 V. Lo que diga la hoja de datos del motor va primero.",
        ),
        Rule::MinimumSignalDuty => (
            "Señal mínima, ancho de pulso",
            "La parte del tiempo en que la señal está activa, cuando siempre activa es velocidad plena. Lo que diga la hoja de datos del motor va primero.",
        ),
        Rule::LowestFrequency => (
            "Frecuencia mínima",
            "Ajústela en el variador como su límite inferior: la parte de la frecuencia de la red que el cojinete admite por mucho tiempo.",
        ),
        Rule::MinimumSignal => (
            "Señal mínima",
            "La parte de la velocidad plena que el cojinete admite por mucho tiempo.",
        ),
        Rule::StartBoost => (
            "Impulso de arranque",
            "Salida plena hasta que el ventilador toma velocidad, con la grasa fría y con el aire que el viento empuja en sentido contrario, y la mitad más porque su inercia es una estimación. Un cojinete de casquillo recibe más. Con la salida mínima el motor puede no arrancar desde parado.",
        ),
        Rule::OnOffPoints => (
            "Para a, arranca a",
            "Para en la presión necesaria y arranca de nuevo un rango de modulación por encima.",
        ),
        Rule::StagePoints => (
            "Etapa: para a, arranca a",
            "Los ventiladores paran uno tras otro, el último a la presión necesaria; uno gira siempre.",
        ),
        Rule::HoldLimit => (
            "Límite de frío",
            "La temperatura exterior a la que el menor caudal de aire y la mayor inundación del método apenas conservan la presión necesaria.",
        ),
        Rule::Condensing => (
            "Temperatura de condensación",
            "Aquella a la que el serpentín cede todo el calor a este caudal de aire.",
        ),
        Rule::AssumedFanPower => (
            "Potencia de los ventiladores",
            "Una parte habitual del calor rechazado.",
        ),
    };
    RuleWords { name, reason }
}

//! How the values of the worksheets are measured and what is typical of them, in Spanish.
//!
//! What is typical: common practice, no published source.

use winterset_calc::SheetRule;

use crate::help::FindWords;

/// How a value is measured on a system that stands there, and what is typical.
pub fn measured(rule: SheetRule) -> FindWords {
    let (find, typical) = match rule {
        SheetRule::BubblePressure => (
            "Un manómetro en un recipiente o tubo con solo líquido, a esta temperatura y en reposo.",
            "Igual a la de rocío en un fluido puro; en una mezcla con deslizamiento, unos puntos por ciento más.",
        ),
        SheetRule::DewPressure => (
            "Un manómetro donde el gas está seco y justo saturado, a esta temperatura.",
            "Igual a la de burbuja en un fluido puro; en una mezcla con deslizamiento, unos puntos por ciento menos.",
        ),
        SheetRule::BubbleTemperature => (
            "Un termómetro en el tubo donde acaba el vapor, aislado por encima.",
            "Por debajo de la de rocío en lo que vale el deslizamiento.",
        ),
        SheetRule::DewTemperature => (
            "Un termómetro en el tubo donde acaba el líquido, aislado por encima.",
            "Por encima de la de burbuja en lo que vale el deslizamiento.",
        ),
        SheetRule::Glide => (
            "Dos termómetros a lo largo de un evaporador o condensador, a la misma presión.",
            "Nada en un fluido puro, hasta 12 K (22 °F) en las mezclas corrientes.",
        ),
        SheetRule::Superheat => (
            "Un termómetro en el tubo de aspiración, aislado por encima, y un manómetro en el mismo lugar.",
            "De 4 a 8 K (7 a 14 °F) en el bulbo de una válvula termostática; más en el compresor.",
        ),
        SheetRule::Subcooling => (
            "Un termómetro en el tubo de líquido, aislado por encima, y un manómetro en el mismo lugar.",
            "De 3 a 8 K (5 a 14 °F) a la salida de un condensador sin inundar.",
        ),
        SheetRule::AirDensity => (
            "Barómetro y termómetro junto al ventilador.",
            "1.2 kg/m³ (0.075 lb/ft³) al nivel del mar y a 20 °C (68 °F); un décimo menos por cada 1000 m (3300 ft).",
        ),
        SheetRule::FanAirflow => (
            "Un anemómetro de molinete sobre toda la cara del serpentín, la media por su área.",
            "La mitad del caudal a media velocidad.",
        ),
        SheetRule::FanPressure => (
            "Un manómetro diferencial entre ambos lados del ventilador y su serpentín, con tomas fuera de la corriente.",
            "Un cuarto a media velocidad.",
        ),
        SheetRule::FanPower => (
            "Un vatímetro en el motor; lo que toma el eje es eso por el rendimiento del motor.",
            "Un octavo a media velocidad.",
        ),
        SheetRule::Output => (
            "Los voltios del motor frente a los de la alimentación, ambos en verdadero valor eficaz.",
            "De tres a nueve décimos mientras se frena un ventilador.",
        ),
        SheetRule::CutVoltage => (
            "Un medidor de verdadero valor eficaz en el motor, por quien puede trabajar con tensión.",
            "Del mínimo de la hoja de ajustes a la tensión de alimentación.",
        ),
        SheetRule::MeterVoltage => (
            "Un medidor que no dice verdadero valor eficaz, en el mismo lugar.",
            "Por debajo del valor verdadero, más cuanto más hondo es el recorte.",
        ),
        SheetRule::FiringAngle => (
            "Un osciloscopio con sonda aislada, por alguien formado para ello.",
            "Ninguno a salida plena, 90° donde a un calentador le quedaría media potencia.",
        ),
        SheetRule::MotorSpeed => (
            "Un tacómetro o una luz estroboscópica sobre las palas, desde fuera de la rejilla.",
            "Cerca de la de placa hasta unos dos tercios de la tensión; después cae deprisa.",
        ),
        SheetRule::KeepsRunning => (
            "Baje la salida paso a paso hasta que el ventilador pare, con la rejilla puesta.",
            "De un cuarto a la mitad de la tensión de alimentación.",
        ),
        SheetRule::Starts => (
            "Suba la salida desde el reposo paso a paso hasta que arranque solo, con la rejilla puesta.",
            "De un tercio a dos tercios de la tensión de alimentación; más con grasa fría.",
        ),
        SheetRule::BearingSpeed => (
            "Lo dice el fabricante del motor.",
            "Un quinto de la plena con rodamientos de bolas, dos quintos con cojinetes lisos.",
        ),
        SheetRule::FloodedShare => (
            "Toque o mida a lo largo de los codos: donde pasan de tibios a fríos empieza el líquido.",
            "Nada en un día cálido, hasta nueve décimos en frío hondo.",
        ),
        SheetRule::CondenserVolume => (
            "Del plano del serpentín: tubos por su sección interior y su longitud.",
            "Unos 0.4 litros por kilovatio de calor (0.004 ft³ por 1000 Btu/h).",
        ),
        SheetRule::FloodedLiquid => (
            "Un termómetro en el codo más bajo.",
            "De 1.1 a 1.3 kg/L (70 a 80 lb/ft³) en refrigerantes fluorados en el frío.",
        ),
        SheetRule::Unflooded => (
            "No se puede leer; resulta de cuánto vapor y líquido tiene el serpentín mientras trabaja.",
            "De un quinto a un tercio de la densidad del líquido.",
        ),
        SheetRule::FloodingCharge => (
            "Una báscula bajo el cilindro mientras se carga.",
            "La mitad más de la carga normal; en clima frío, otro tanto.",
        ),
        SheetRule::ReceiverNeeded => (
            "La placa del recipiente; su largo y diámetro si falta.",
            "De una a dos veces el volumen del condensador.",
        ),
        SheetRule::ReceiverRoom => (
            "La placa del recipiente frente a lo que hace falta.",
            "Por encima de cero; un quinto queda vacío para que el líquido caliente se dilate.",
        ),
        SheetRule::MassFlow => (
            "De la capacidad y las entalpías antes y después del evaporador; rara vez hay un caudalímetro.",
            "Unos 6 g/s por kilovatio de frío (140 lb/h por 10 000 Btu/h).",
        ),
        SheetRule::LineVelocity => (
            "No se mide; resulta del caudal másico y del diámetro interior.",
            "De 0.4 a 1 m/s (1.3 a 3.3 ft/s) en una línea de líquido.",
        ),
        SheetRule::LineFriction => (
            "Dos manómetros a la misma altura, o uno llevado de un extremo al otro.",
            "Menos de 1 K (2 °F) de temperatura de saturación en una línea bien elegida.",
        ),
        SheetRule::LineLift => (
            "Una cinta métrica de la salida del condensador o recipiente hasta la válvula.",
            "Unos 11 kPa por metro (0.5 psi por pie) de subida.",
        ),
        SheetRule::LineDrop => (
            "Dos manómetros, uno en cada extremo de la línea.",
            "Menos de lo que compensan de 2 a 3 K (4 a 5 °F) de subenfriamiento.",
        ),
        SheetRule::Arrival => (
            "Un termómetro y un manómetro justo antes de la válvula; una mirilla allí muestra burbujas donde falta.",
            "2 K (4 °F) o más.",
        ),
        SheetRule::NeededSubcooling => (
            "Un termómetro y un manómetro a la salida del condensador o del recipiente.",
            "De 3 a 10 K (5 a 18 °F); más bajo una subida larga.",
        ),
        SheetRule::BetaTemperature | SheetRule::SteinhartTemperature => (
            "Un termómetro junto al sensor, ambos bajo el mismo aislamiento.",
            "A menos de 1 K (2 °F) del termómetro si el sensor está sano.",
        ),
        SheetRule::BetaResistance | SheetRule::SteinhartResistance => (
            "Un óhmetro en el cable del sensor, desconectado del controlador.",
            "De 10 a 100 kΩ entre 25 y −20 °C (77 y −4 °F) para un sensor de 10 kΩ.",
        ),
        SheetRule::SubstituteResistor => (
            "Un óhmetro en la resistencia antes de conectarla.",
            "Un valor de su serie; dos en serie se acercan más.",
        ),
        SheetRule::SubstituteTemperature => (
            "La pantalla del controlador, con la resistencia conectada.",
            "A menos de 1 K (2 °F) de la temperatura buscada.",
        ),
        SheetRule::RatiometricPressure | SheetRule::LoopPressure => (
            "Un manómetro en la toma del transductor.",
            "A menos del 2 por ciento del rango del transductor.",
        ),
        SheetRule::RatiometricOutput => (
            "Un voltímetro del cable de señal al común, midiendo también la alimentación.",
            "De un décimo a nueve décimos de una alimentación de 5 V.",
        ),
        SheetRule::LoopCurrent => (
            "Un miliamperímetro en el lazo.",
            "De 4 a 20 mA; fuera de eso el lazo está roto o en corto.",
        ),
        SheetRule::SwitchMargin => (
            "Un manómetro en el lado de baja tras una noche parado, frente al ajuste del presostato.",
            "Por encima de cero en clima suave, por debajo en clima frío.",
        ),
        SheetRule::StandingOutdoor => (
            "Un manómetro en la línea de líquido antes del arranque.",
            "La presión de saturación de la parte más fría en el exterior.",
        ),
        SheetRule::StandingLow => (
            "Un manómetro en el lado de baja tras una parada larga, con el compresor parado.",
            "Entre las presiones de saturación de fuera y de dentro.",
        ),
        SheetRule::BypassTime => (
            "Un reloj y un manómetro de aspiración desde el arranque.",
            "Menos de 2 a 3 minutos; uno más largo pide otro remedio.",
        ),
        SheetRule::LowestSuction => (
            "Un manómetro de aspiración durante los primeros minutos.",
            "Por debajo de la de marcha durante segundos o minutos.",
        ),
        SheetRule::SumpTemperature => (
            "Un termómetro en el fondo de la carcasa, aislado por encima.",
            "De 8 a 15 K (15 a 27 °F) sobre el aire que la rodea.",
        ),
        SheetRule::SumpHeat => (
            "Un vatímetro en el calentador.",
            "De 20 a 100 W, según el tamaño de la carcasa.",
        ),
        SheetRule::Conversion => (
            "El instrumento que lee en esta unidad.",
            "Como en la unidad que se escribió.",
        ),
    };
    FindWords { find, typical }
}

//! Sources in Spanish: publications keep their names, words round them do not stay English.

/// A source as a rule carries it, in Spanish.
pub(super) fn source(english: &'static str) -> &'static str {
    match english {
        "Common practice, no published source" => "Práctica común, sin fuente publicada",
        "As entered" => "Como se introdujo",
        "First law round the cycle; enthalpies from the refrigerant's equation of state" => {
            "Primera ley en el ciclo; entalpías de la ecuación de estado del refrigerante"
        }
        "First law round the cycle; AHRI 540 for power and mass flow" => {
            "Primera ley en el ciclo; AHRI 540 para potencia y caudal másico"
        }
        "Definition of condensing temperature over ambient" => {
            "Definición de la condensación sobre el ambiente"
        }
        "Incropera & DeWitt, heat exchangers chapter" => {
            "Incropera & DeWitt, capítulo de intercambiadores de calor"
        }
        "Kays & London, Compact Heat Exchangers: effectiveness-NTU; Incropera & DeWitt: logarithmic mean; zones by enthalpy" => {
            "Kays & London, Compact Heat Exchangers: efectividad-NTU; Incropera & DeWitt: media logarítmica; zonas por entalpía"
        }
        "AHRI 750: flow with the square root of the pressure drop; Stoecker & Jones: compressor with clearance" => {
            "AHRI 750: caudal con la raíz cuadrada de la caída de presión; Stoecker & Jones: compresor con espacio nocivo"
        }
        "The compressor maker's operating envelope, as entered" => {
            "El campo de trabajo del fabricante del compresor, como se introdujo"
        }
        "Darcy-Weisbach with Colebrook's friction factor; ASHRAE Handbook Refrigeration, halocarbon refrigeration systems" => {
            "Darcy-Weisbach con el factor de fricción de Colebrook; ASHRAE Handbook Refrigeration, sistemas de refrigeración con halocarburos"
        }
        "ASHRAE Handbook Fundamentals, mass transfer: surface temperature of a wet coil" => {
            "ASHRAE Handbook Fundamentals, transferencia de masa: temperatura de superficie de un serpentín húmedo"
        }
        "Definition of the pressure need" => "Definición de la presión necesaria",
        "Proportional control: the range stands on the need" => {
            "Control proporcional: el rango se apoya en la presión necesaria"
        }
        "Two-phase temperature from the refrigerant's equation of state" => {
            "Temperatura de dos fases de la ecuación de estado del refrigerante"
        }
        "Proportional control: span from minimum to full output" => {
            "Control proporcional: de la salida mínima a la plena"
        }
        "Kloss's equation with torque by voltage squared, against a square-law fan load" => {
            "Ecuación de Kloss con par según el cuadrado del voltaje, contra una carga de ventilador cuadrática"
        }
        "Kloss's equation: pull-out of a fan drive on a reduced voltage; friction in the cold is common practice" => {
            "Ecuación de Kloss: par máximo de un ventilador con voltaje reducido; la fricción en el frío es práctica común"
        }
        "Electrical machine textbooks: run-up of a drive; inertia, friction and reserve are common practice" => {
            "Libros de texto de máquinas eléctricas: aceleración de un accionamiento; inercia, fricción y reserva son práctica común"
        }
        "Kays & London: effectiveness-NTU by zones, at the method's least airflow and most flooding" => {
            "Kays & London: efectividad-NTU por zonas, con el menor caudal de aire y la mayor inundación del método"
        }
        "Kays & London: effectiveness-NTU by zones; compressor, metering device and evaporator in balance" => {
            "Kays & London: efectividad-NTU por zonas; compresor, dispositivo de expansión y evaporador en equilibrio"
        }
        "The refrigerant's equation of state" => "La ecuación de estado del refrigerante",
        "AMCA 201 and ISO 5801: fan laws for a fan in an unchanged system" => {
            "AMCA 201 e ISO 5801: leyes de los ventiladores en una instalación sin cambios"
        }
        "Single-phase a.c. voltage controller: Mohan, Undeland & Robbins; Rashid" => {
            "Controlador monofásico de tensión alterna: Mohan, Undeland & Robbins; Rashid"
        }
        "Kloss's equation with torque by voltage squared, against a square-law fan load (Fitzgerald, Kingsley & Umans). Breakdown torque, starting torque and bearing friction: common practice, no published source" => {
            "Ecuación de Kloss con par según el cuadrado del voltaje, contra una carga de ventilador cuadrática (Fitzgerald, Kingsley & Umans). Par máximo, par de arranque y fricción del cojinete: práctica común, sin fuente publicada"
        }
        "ASHRAE Handbook HVAC Systems and Equipment, condensers chapter" => {
            "ASHRAE Handbook HVAC Systems and Equipment, capítulo de condensadores"
        }
        "Definition of superheat; saturation by the refrigerant's equation of state" => {
            "Definición de recalentamiento; saturación según la ecuación de estado del refrigerante"
        }
        "Definition of subcooling; saturation by the refrigerant's equation of state" => {
            "Definición de subenfriamiento; saturación según la ecuación de estado del refrigerante"
        }
        "Ideal gas law for dry air, with the pressure of the U.S. Standard Atmosphere 1976 (ISO 2533)" => {
            "Ley de los gases ideales para aire seco, con la presión de U.S. Standard Atmosphere 1976 (ISO 2533)"
        }
        "Void fraction by Zivi 1964; a tenth of vapour and a tenth of liquid are common practice, no published source" => {
            "Fracción de vacío según Zivi 1964; una décima de vapor y una décima de líquido son práctica común, sin fuente publicada"
        }
        "Fill limit of 0.8 in the manner of ANSI/ASHRAE 15: common practice, no published source" => {
            "Límite de llenado de 0,8 a la manera de ANSI/ASHRAE 15: práctica común, sin fuente publicada"
        }
        "The two volumes compared" => "Comparación de los dos volúmenes",
        "First law on the evaporator, without superheat; enthalpies by the refrigerant's equation of state" => {
            "Primera ley en el evaporador, sin recalentamiento; entalpías según la ecuación de estado del refrigerante"
        }
        "Continuity" => "Continuidad",
        "Darcy-Weisbach and Colebrook equations; viscosity 0.15 mPa s and roughness 1.5 µm assumed" => {
            "Ecuaciones de Darcy-Weisbach y Colebrook; se supone una viscosidad de 0,15 mPa s y una rugosidad de 1,5 µm"
        }
        "Hydrostatics" => "Hidrostática",
        "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter" => {
            "ASHRAE Handbook Refrigeration, capítulo de sistemas de refrigeración con halocarburos"
        }
        "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter; heat from the surroundings left out" => {
            "ASHRAE Handbook Refrigeration, capítulo de sistemas de refrigeración con halocarburos; sin el calor del entorno"
        }
        "NIST SP 811, appendix B" => "NIST SP 811, apéndice B",
        "IEC 60539-1: beta of a thermistor" => "IEC 60539-1: valor beta de un termistor",
        "A straight line between the ends of the range, by definition" => {
            "Una recta entre los extremos del rango, por definición"
        }
        "IEC 60381-1 for the signal; faults in the manner of NAMUR NE 43" => {
            "IEC 60381-1 para la señal; fallos al modo de NAMUR NE 43"
        }
        "IEC 60063: preferred values of resistors" => {
            "IEC 60063: valores preferentes de las resistencias"
        }
        "The sensor's own curve, at the resistor's value" => {
            "La curva propia del sensor, al valor de la resistencia"
        }
        "The standing pressure and the switch compared" => {
            "Comparación de la presión en reposo y el presostato"
        }
        "Mass and energy balances of a start, over saturated states; AHRI 750 for the metering device. Usual volumes and charges: common practice, no published source" => {
            "Balances de masa y energía de un arranque, sobre estados saturados; AHRI 750 para el dispositivo de expansión. Volúmenes y cargas habituales: práctica común, sin fuente publicada"
        }
        "Mass and energy balances of a start, over saturated states" => {
            "Balances de masa y energía de un arranque, sobre estados saturados"
        }
        "Steady loss of the shell; the conductance of a bare shell in wind by McAdams's flat plate" => {
            "Pérdida constante de la carcasa; conductancia de una carcasa desnuda al viento según la placa plana de McAdams"
        }
        publication => publication,
    }
}

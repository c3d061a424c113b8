//! Sources in French: publications keep their names, words round them do not stay English.

/// A source as a rule carries it, in French.
pub(super) fn source(english: &'static str) -> &'static str {
    match english {
        "Common practice, no published source" => "Usage courant, sans source publiée",
        "As entered" => "Tel que saisi",
        "First law round the cycle; enthalpies from the refrigerant's equation of state" => {
            "Premier principe sur le cycle\u{a0}; enthalpies de l’équation d’état du fluide"
        }
        "First law round the cycle; AHRI 540 for power and mass flow" => {
            "Premier principe sur le cycle\u{a0}; AHRI 540 pour la puissance et le débit massique"
        }
        "Definition of condensing temperature over ambient" => {
            "Définition de l’écart de condensation sur l’air"
        }
        "Incropera & DeWitt, heat exchangers chapter" => {
            "Incropera & DeWitt, chapitre des échangeurs de chaleur"
        }
        "Kays & London, Compact Heat Exchangers: effectiveness-NTU; Incropera & DeWitt: logarithmic mean; zones by enthalpy" => {
            "Kays & London, Compact Heat Exchangers\u{a0}: efficacité-NUT\u{a0}; Incropera & DeWitt\u{a0}: moyenne logarithmique\u{a0}; zones par enthalpie"
        }
        "AHRI 750: flow with the square root of the pressure drop; Stoecker & Jones: compressor with clearance" => {
            "AHRI 750\u{a0}: débit selon la racine de la perte de pression\u{a0}; Stoecker & Jones\u{a0}: compresseur à espace mort"
        }
        "The compressor maker's operating envelope, as entered" => {
            "Le domaine d’emploi du fabricant du compresseur, tel que saisi"
        }
        "Darcy-Weisbach with Colebrook's friction factor; ASHRAE Handbook Refrigeration, halocarbon refrigeration systems" => {
            "Darcy-Weisbach avec le coefficient de frottement de Colebrook\u{a0}; ASHRAE Handbook Refrigeration, systèmes frigorifiques aux halocarbures"
        }
        "ASHRAE Handbook Fundamentals, mass transfer: surface temperature of a wet coil" => {
            "ASHRAE Handbook Fundamentals, transfert de masse\u{a0}: température de surface d’une batterie humide"
        }
        "Definition of the pressure need" => "Définition de la pression nécessaire",
        "Proportional control: the range stands on the need" => {
            "Régulation proportionnelle\u{a0}: la plage repose sur la pression nécessaire"
        }
        "Two-phase temperature from the refrigerant's equation of state" => {
            "Température diphasique de l’équation d’état du fluide"
        }
        "Proportional control: span from minimum to full output" => {
            "Régulation proportionnelle\u{a0}: de la sortie minimale à la pleine sortie"
        }
        "Kloss's equation with torque by voltage squared, against a square-law fan load" => {
            "Équation de Kloss, couple selon le carré de la tension, contre une charge de ventilateur quadratique"
        }
        "Kloss's equation: pull-out of a fan drive on a reduced voltage; friction in the cold is common practice" => {
            "Équation de Kloss\u{a0}: décrochage d’un ventilateur à tension réduite\u{a0}; le frottement dans le froid est pratique courante"
        }
        "Electrical machine textbooks: run-up of a drive; inertia, friction and reserve are common practice" => {
            "Manuels de machines électriques\u{a0}: mise en vitesse d’un entraînement\u{a0}; inertie, frottement et réserve sont pratique courante"
        }
        "Kays & London: effectiveness-NTU by zones, at the method's least airflow and most flooding" => {
            "Kays & London\u{a0}: efficacité-NUT par zones, au plus petit débit d’air et au plus grand noyage de la méthode"
        }
        "Kays & London: effectiveness-NTU by zones; compressor, metering device and evaporator in balance" => {
            "Kays & London\u{a0}: efficacité-NUT par zones\u{a0}; compresseur, détendeur et évaporateur en équilibre"
        }
        "The refrigerant's equation of state" => "L’équation d’état du fluide",
        "AMCA 201 and ISO 5801: fan laws for a fan in an unchanged system" => {
            "AMCA 201 et ISO 5801\u{a0}: lois des ventilateurs dans une installation inchangée"
        }
        "Single-phase a.c. voltage controller: Mohan, Undeland & Robbins; Rashid" => {
            "Gradateur monophasé de tension alternative\u{a0}: Mohan, Undeland & Robbins\u{a0}; Rashid"
        }
        "Kloss's equation with torque by voltage squared, against a square-law fan load (Fitzgerald, Kingsley & Umans). Breakdown torque, starting torque and bearing friction: common practice, no published source" => {
            "Équation de Kloss, couple selon le carré de la tension, contre une charge de ventilateur quadratique (Fitzgerald, Kingsley & Umans). Couple maximal, couple de démarrage et frottement du palier\u{a0}: usage courant, sans source publiée"
        }
        "ASHRAE Handbook HVAC Systems and Equipment, condensers chapter" => {
            "ASHRAE Handbook HVAC Systems and Equipment, chapitre des condenseurs"
        }
        "Definition of superheat; saturation by the refrigerant's equation of state" => {
            "Définition de la surchauffe\u{a0}; saturation selon l’équation d’état du fluide"
        }
        "Definition of subcooling; saturation by the refrigerant's equation of state" => {
            "Définition du sous-refroidissement\u{a0}; saturation selon l’équation d’état du fluide"
        }
        "Ideal gas law for dry air, with the pressure of the U.S. Standard Atmosphere 1976 (ISO 2533)" => {
            "Loi des gaz parfaits pour l’air sec, à la pression de U.S. Standard Atmosphere 1976 (ISO 2533)"
        }
        "Void fraction by Zivi 1964; a tenth of vapour and a tenth of liquid are common practice, no published source" => {
            "Taux de vide selon Zivi 1964\u{a0}; un dixième de vapeur et un dixième de liquide sont d’usage courant, sans source publiée"
        }
        "Fill limit of 0.8 in the manner of ANSI/ASHRAE 15: common practice, no published source" => {
            "Limite de remplissage de 0,8 à la manière de ANSI/ASHRAE 15\u{a0}: usage courant, sans source publiée"
        }
        "The two volumes compared" => "Comparaison des deux volumes",
        "First law on the evaporator, without superheat; enthalpies by the refrigerant's equation of state" => {
            "Premier principe sur l’évaporateur, sans surchauffe\u{a0}; enthalpies selon l’équation d’état du fluide"
        }
        "Continuity" => "Continuité",
        "Darcy-Weisbach and Colebrook equations; viscosity 0.15 mPa s and roughness 1.5 µm assumed" => {
            "Équations de Darcy-Weisbach et Colebrook\u{a0}; viscosité de 0,15 mPa s et rugosité de 1,5 µm supposées"
        }
        "Hydrostatics" => "Hydrostatique",
        "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter" => {
            "ASHRAE Handbook Refrigeration, chapitre des systèmes frigorifiques aux halocarbures"
        }
        "ASHRAE Handbook Refrigeration, halocarbon refrigeration systems chapter; heat from the surroundings left out" => {
            "ASHRAE Handbook Refrigeration, chapitre des systèmes frigorifiques aux halocarbures\u{a0}; sans la chaleur des alentours"
        }
        "NIST SP 811, appendix B" => "NIST SP 811, annexe B",
        "IEC 60539-1: beta of a thermistor" => "IEC 60539-1\u{a0}: bêta d’une thermistance",
        "A straight line between the ends of the range, by definition" => {
            "Une droite entre les bouts de la plage, par définition"
        }
        "IEC 60381-1 for the signal; faults in the manner of NAMUR NE 43" => {
            "IEC 60381-1 pour le signal\u{a0}; défauts à la manière de NAMUR NE 43"
        }
        "IEC 60063: preferred values of resistors" => {
            "IEC 60063\u{a0}: valeurs normales des résistances"
        }
        "The sensor's own curve, at the resistor's value" => {
            "La courbe même du capteur, à la valeur de la résistance"
        }
        "The standing pressure and the switch compared" => {
            "Comparaison de la pression à l’arrêt et du pressostat"
        }
        "Mass and energy balances of a start, over saturated states; AHRI 750 for the metering device. Usual volumes and charges: common practice, no published source" => {
            "Bilans de masse et d’énergie d’un démarrage, sur des états saturés\u{a0}; AHRI 750 pour le détendeur. Volumes et charges habituels\u{a0}: usage courant, sans source publiée"
        }
        "Mass and energy balances of a start, over saturated states" => {
            "Bilans de masse et d’énergie d’un démarrage, sur des états saturés"
        }
        "Steady loss of the shell; the conductance of a bare shell in wind by McAdams's flat plate" => {
            "Perte constante de l’enveloppe\u{a0}; conductance d’une enveloppe nue dans le vent selon la plaque plane de McAdams"
        }
        publication => publication,
    }
}

//! What each value and each answer is, how to find it, and what is typical, in English.

use winterset_calc::{Field, Rule};

use crate::help::{FindWords, HelpLabels, HelpWords, RungValue};

pub(super) static LABELS: HelpLabels = HelpLabels {
    what: "What it is",
    measure: "How to measure it",
    typical: "What is typical",
    on_a_rung: "What these values are",
    how_to_find: "How to find it",
    find: "Where to find it",
    blank: "Left blank",
    blank_is: |assumed| format!("Assumed: {assumed}."),
    blank_worked_out: "Worked out from the other answers.",
    blank_left_out: "Left out of account.",
    blank_is_not: "There is no plan without it.",
};

pub(super) fn rule(rule: Rule) -> HelpWords {
    let (what, measure, typical) = match rule {
        Rule::Atmosphere => (
            "The weight of the air over the site, which gauge pressure stands on.",
            "A barometer or a weather station on the site shows it; take the station's own pressure, not the one reduced to sea level.",
            "About 1 % less for each 85 m (280 ft) of height; weather moves it by some 3 % either way.",
        ),
        Rule::HeatRejected | Rule::HeatRejectedBySheet | Rule::HeatEntered => (
            "What the condenser has to give off: the heat from the room and the work of the compressor.",
            "Measure what the compressor draws and add the cooling capacity, or take airflow and temperature rise of the condenser's air.",
            "1.2 to 1.35 times the cooling capacity in room cooling and coolers, 1.4 to 1.7 times in freezers.",
        ),
        Rule::AirflowEntered | Rule::AssumedAirflow => (
            "The air that all condenser fans move at full speed.",
            "Average many readings of a vane anemometer over the face of the coil, and multiply by the area of the face.",
            "0.08 to 0.15 m³/s for each kilowatt rejected (50 to 95 cfm for each 1000 Btu/h).",
        ),
        Rule::DesignCondensing => (
            "The condensing temperature of the reading that the condenser is scaled from.",
            "Read head pressure with the fans at full speed on a steady day, and take the dew temperature that belongs to it.",
            "8 to 17 K (15 to 30 °F) above the outdoor air.",
        ),
        Rule::AirCapacityRate => (
            "The heat that the condenser's air takes up for each kelvin that it warms.",
            "It follows from the airflow and the density of the air; there is nothing to read on site.",
            "About 1.2 kW for each kelvin and m³/s of air near sea level.",
        ),
        Rule::Conductance => (
            "The heat that the coil passes for each kelvin between refrigerant and air.",
            "It follows from the known point; a second reading over ambient at another load tells whether it still fits.",
            "It falls as fins bend and fill with dirt.",
        ),
        Rule::MeteringNeed => (
            "The head pressure below which the metering device, fully open, feeds too little.",
            "Let head pressure fall slowly: superheat starts to rise at it while the load is steady.",
            "Highest for a fixed orifice or a conventional valve, lower for a balanced port, lowest for an electronic valve.",
        ),
        Rule::CompressorNeed | Rule::CompressorEntered => (
            "The lowest head pressure that the compressor is allowed to run at.",
            "Read it from the maker's operating envelope at your evaporating temperature; it is not found by trying.",
            "10 to 30 °C (50 to 85 °F) condensing, higher for higher evaporating temperatures.",
        ),
        Rule::LiquidLineNeed => (
            "The head pressure below which the liquid boils in its line before it reaches the metering device.",
            "Look into the sight glass before the valve, or compare line temperature and pressure there with the bubble point.",
            "Low where the line is short and level; it counts where the valve hangs high above the condenser.",
        ),
        Rule::EvaporatorNeed => (
            "The head pressure below which the starved indoor coil turns cold enough for ice.",
            "Take the coldest spot of the coil with a clamped sensor while suction pressure is low.",
            "It counts in room cooling, where the coil must stay free of ice; colder rooms defrost anyway.",
        ),
        Rule::DefrostNeed => (
            "The head pressure that hot gas needs to melt the ice.",
            "Time a defrost in cold weather and look whether the last of the ice goes.",
            "Condensing at 15 to 25 °C (60 to 75 °F) while a defrost lasts.",
        ),
        Rule::ReclaimNeed => (
            "The head pressure at which the heat is warm enough for whoever uses it.",
            "Measure the temperature that the user of the heat gets, and add what the exchanger loses.",
            "Condensing at 30 to 50 °C (85 to 120 °F).",
        ),
        Rule::GoverningNeed => (
            "The lowest head pressure that this system can live with: that of its needier part.",
            "Let head pressure fall slowly and watch superheat, sight glass and suction pressure; the first that goes wrong is at the need.",
            "Condensing at 15 to 32 °C (60 to 90 °F).",
        ),
        Rule::FullSpeedPressure => (
            "The head pressure from which on the fan runs at full speed.",
            "With a gauge on the liquid line, note the pressure at which fan speed no longer rises.",
            "One throttling range above the pressure need.",
        ),
        Rule::FullSpeedCoil => (
            "The temperature at the coil sensor from which on the fan runs at full speed.",
            "Read the sensor's own value, or a second sensor strapped beside it, as the fan reaches full speed.",
            "20 to 40 °C (70 to 105 °F).",
        ),
        Rule::ThrottlingRange => (
            "How far the sensed value moves while the fan goes from minimum to full output.",
            "Note the sensed value at minimum output and at full speed; the difference is the range.",
            "4 to 10 K (8 to 18 °F) of condensing temperature.",
        ),
        Rule::LowestSpeed | Rule::StallSpeed => (
            "The slowest that the fan motor may turn for long.",
            "A tachometer on the shaft or a strobe on the blades at minimum output.",
            "A fifth of full speed with ball bearings, two fifths with sleeve bearings, unless the motor's maker says otherwise.",
        ),
        Rule::MinimumOutput | Rule::StallOutput => (
            "The least that the controller may give the motor, as a share of the supply voltage.",
            "A true r.m.s. meter at the motor while the sensed value is below the range; an averaging meter shows another value.",
            "20 to 45 % of the voltage; it depends on motor, bearing and how heavy the cold air is.",
        ),
        Rule::MinimumSignal
        | Rule::MinimumSignalVolts
        | Rule::MinimumSignalDuty
        | Rule::LowestFrequency => (
            "The least signal that the motor or drive gets, as a share of full.",
            "A meter for d.c. volts on the signal pair, or the frequency on the drive's display.",
            "A fifth to two fifths of full; many motors with electronics stop below a tenth.",
        ),
        Rule::StartBoost => (
            "How long the motor gets full output when it starts from rest.",
            "Stop the fan by the simulated sensor, let it start, and time how long the volts stay full.",
            "0.5 to 5 s: longer for large fans, for sleeve bearings with thick cold oil, and against wind.",
        ),
        Rule::OnOffPoints => (
            "The head pressures at which a pressure switch stops the fan and starts it again.",
            "With a gauge on the switch's line, note the pressure at each click.",
            "Some 4 to 10 K (8 to 18 °F) of condensing temperature apart; closer together the fan starts too often.",
        ),
        Rule::StagePoints => (
            "The head pressures at which the switch of one fan of several stops it and starts it again.",
            "With a gauge on the switch's line, note the pressure at each click, one switch at a time.",
            "Differentials of 2 to 5 K (4 to 9 °F) of condensing temperature, each stage a little below the one before.",
        ),
        Rule::HoldLimit => (
            "The lowest outdoor temperature at which the method still keeps head pressure at the need.",
            "On the coldest days, note outdoor temperature and head pressure with the fan at its least; below the limit pressure falls short.",
            "Full fan alone holds to 5 to 20 °C (40 to 70 °F); slowed fans go some 15 to 30 K (30 to 55 °F) lower.",
        ),
        Rule::Condensing => (
            "The dew temperature at the head pressure.",
            "Read head pressure and take the dew temperature that belongs to it.",
            "8 to 17 K (15 to 30 °F) above the outdoor air with the fans at full speed.",
        ),
        Rule::AssumedFanPower => (
            "What all condenser fans draw at full speed.",
            "A power meter in the fans' supply, with the compressor off if the contactor allows it.",
            "2 to 4 % of the heat rejected.",
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
            "On the nameplate of the condensing unit; a label of a retrofit counts more than the plate. Saturation at rest tells whether it can be true.",
            "R-410A or R-454B in room cooling, R-134a, R-448A or R-449A in refrigeration.",
        ),
        Field::CoolingCapacity => (
            "On the nameplate, or in the data sheet of the condensing unit at your evaporating temperature.",
            "3.5 kW is one ton (12,000 Btu/h). Most systems of this kind have 2 to 100 kW.",
        ),
        Field::HeatRejected => (
            "On the condenser's own nameplate or data sheet, often called total heat of rejection.",
            "1.2 to 1.7 times the cooling capacity.",
        ),
        Field::OutdoorLow => (
            "From the weather of past winters, a design table for the place, or a weather file of the site.",
            "Plan for the coldest night of ten years rather than of one.",
        ),
        Field::Metering => (
            "Look at the evaporator's inlet: a bulb on the suction line means TXV, a wire to a head on the valve means electronic, neither means fixed orifice.",
            "A TXV in refrigeration and larger splits, a fixed orifice in small splits.",
        ),
        Field::Motor => (
            "Read the motor's nameplate and follow its wires to a capacitor, a box of electronics or neither.",
            "Permanent split capacitor on small units, three-phase on larger ones, electronically commutated on recent ones.",
        ),
        Field::Bearing => (
            "The motor's nameplate or data sheet says ball or sleeve; a motor with two shielded rings at the shaft has ball bearings.",
            "Ball bearings where the shaft points up or down, sleeve bearings in many small motors.",
        ),
        Field::Voltage => (
            "Measure at the fan's terminals while it runs; the nameplate tells what it should be.",
            "120, 208, 230, 277, 400, 460 or 575 V.",
        ),
        Field::Duty => (
            "What is kept cold, by the temperature of its air: above about 15 °C (60 °F), above freezing, or below.",
            "Rooms and cabinets 18 to 27 °C (65 to 80 °F), coolers and cellars 0 to 12 °C (32 to 54 °F), freezers about −20 °C (−4 °F).",
        ),
        Field::OverAmbient => (
            "With all fans at full speed and steady load, take the dew temperature at the head pressure, and the air going into the coil in the shade.",
            "8 K (15 °F) on freezers, 10 K (18 °F) on coolers, 15 K (27 °F) on splits, and a little more where the refrigerant glides.",
        ),
        Field::KnownOutdoor => (
            "A thermometer in the shade in the air that goes into the coil, at the time of that reading.",
            "A warm day, so that the fan is at full speed by itself.",
        ),
        Field::Evaporating => (
            "Read suction pressure while the system runs steadily, and take the dew temperature that belongs to it.",
            "About 5 °C (40 °F) in room cooling, −7 °C (20 °F) in coolers, −30 °C (−22 °F) in freezers.",
        ),
        Field::Fans => (
            "Count the fans that blow through this circuit's condenser.",
            "One or two on small units, four to twelve on large ones.",
        ),
        Field::Airflow => (
            "The condenser's data sheet; or average an anemometer over the coil's face and multiply by its area.",
            "0.08 to 0.15 m³/s for each kilowatt rejected (50 to 95 cfm for each 1000 Btu/h).",
        ),
        Field::Frequency => (
            "On the nameplate. It is that of the whole grid.",
            "60 Hz in North America, 50 Hz in Europe and most of Asia and Africa.",
        ),
        Field::RatedSpeed => (
            "On the nameplate of the motor, in rpm.",
            "825, 1075, 1140 or 1550 rpm at 60 Hz; 680, 900 or 1350 rpm at 50 Hz.",
        ),
        Field::Elevation => (
            "A map, or this phone.",
            "Most places lie below 500 m (1600 ft), where it matters little.",
        ),
        Field::Sensing => (
            "In the controller's data sheet: whether it takes a temperature sensor or a pressure transducer.",
            "Coil temperature on splits, pressure on refrigeration and on blends with glide.",
        ),
        Field::ThrottlingRange => (
            "In the controller's settings, where it may be called range, band or span.",
            "Start in the middle, and widen it if the fan hunts.",
        ),
        Field::CompressorLowest => (
            "The diagram of the operating envelope in the compressor's data sheet: its lower edge at your evaporating temperature.",
            "10 to 30 °C (50 to 85 °F), higher for higher evaporating temperatures.",
        ),
        Field::ModulatedFans => (
            "Follow the wires from the controller to the fans and count those behind it; the others hang on contactors.",
            "All of them; on long condensers often one or two at the end where liquid leaves.",
        ),
        Field::CompressorHighest => (
            "The diagram of the operating envelope in the compressor's data sheet: its upper edge at your evaporating temperature.",
            "50 to 65 °C (120 to 150 °F), lower for lower evaporating temperatures.",
        ),
        Field::ReturnAir => (
            "A thermometer in the air that goes into the indoor coil.",
            "The temperature of the room, a little more where lamps or machines stand.",
        ),
        Field::FanPower => (
            "A power meter in the fans' supply at full speed, or the sum of the nameplates.",
            "2 to 4 % of the heat rejected.",
        ),
        Field::ReturnHumidity => (
            "A hygrometer in the air that goes into the indoor coil.",
            "40 to 55 % in rooms, 70 to 90 % in coolers.",
        ),
        Field::IndoorAirflow => (
            "The data sheet of the indoor unit at the speed that its fan is set to.",
            "About 0.05 m³/s for each kilowatt of cooling (400 cfm a ton).",
        ),
        Field::LiquidLength => (
            "Pace it out or take it from the drawing; add a straight length for each bend and valve from a handbook table.",
            "5 to 30 m (15 to 100 ft).",
        ),
        Field::LiquidLift => (
            "Count storeys or measure: the metering device's height less that of the condenser's outlet.",
            "About 3 m (10 ft) a storey; below zero with the condenser on the roof.",
        ),
        Field::LiquidDiameter => (
            "Measure the outside with a caliper and take off twice the wall, or look it up in a table of tubes.",
            "8 to 20 mm (3/8 to 7/8 in pipe).",
        ),
        Field::FullLoad => (
            "FLA on the nameplate of the fan motor. A clamp meter at full speed shows about as much.",
            "0.5 to 3 A on small fans.",
        ),
        Field::Subcooling => (
            "Bubble temperature at the head pressure, less a clamped sensor on the liquid line at the condenser.",
            "3 to 8 K (5 to 15 °F).",
        ),
        Field::CapacityControl => (
            "Follow the wires: contactors alone mean stops and starts, or stages where there are several compressors; a coil on a valve of the compressor means unloading; a drive means variable speed.",
            "Stops and starts in small units, stages in large ones, variable speed in many recent splits.",
        ),
        Field::CompressorStages => (
            "Count the compressors of this circuit that can run without the others.",
            "2, or 3 to 4 on larger systems.",
        ),
        Field::LowestLoad => (
            "In the settings of stages, unloaders or drive of the compressors: the least that they run at.",
            "50 % with two stages, 25 to 30 % with a drive, 100 % for a compressor that is only on or off.",
        ),
        Field::HeatReclaim => (
            "Ask whoever uses the heat which temperature they need, and add what the exchanger loses.",
            "30 to 50 °C (85 to 120 °F).",
        ),
        Field::Defrost => (
            "Watch a defrost, or read the controller: a hot-gas valve opens, or heaters draw current.",
            "Air in coolers, electric heat in freezers, hot gas on larger racks.",
        ),
        Field::BelowMinimum => (
            "In the controller's instructions, where it may be called minimum speed or cut-off.",
            "Most keep turning unless a cut-off is set.",
        ),
        Field::ReversingValve => (
            "On the unit's wiring diagram; or measure at the valve's coil while it heats.",
            "More units energise it in cooling than in heating.",
        ),
        Field::FlowCoefficients | Field::PowerCoefficients => (
            "In the compressor maker's selection program or data sheet, for your refrigerant and frequency.",
            "Ten numbers; the first few are the large ones.",
        ),
        Field::SheetUnits => (
            "In the head of the table of coefficients.",
            "Sheets from North America print °F and lb/h, others °C and kg/h or g/s.",
        ),
        Field::SheetSuperheat => (
            "In the head or the foot of the table of coefficients.",
            "11.1 K (20 °F), or 10 K.",
        ),
        Field::Recirculation => (
            "Compare the air at the coil's face with the air some steps away: the difference over the air's rise through the coil is the share.",
            "None in the open, 5 to 20 % in a corner, under a roof or between units.",
        ),
        Field::Dirt => (
            "Look through the fins against the light, and compare the reading over ambient before and after a wash.",
            "None after a wash, up to 30 % on a coil that was never washed.",
        ),
        Field::IdleAirflow => (
            "With the fans off on a windy day, average an anemometer over the coil's face, and divide by the same at full speed.",
            "5 % in a sheltered yard, 10 % on a usual roof, 25 % on an open ridge.",
        ),
    };
    FindWords { find, typical }
}

/// What a rung of the ladder answers.
pub fn on_rung(value: RungValue) -> HelpWords {
    match value {
        RungValue::HeadPressure => HelpWords {
            what: "Pressure on the high side, at which the refrigerant condenses.",
            measure: "A gauge on the high side, with the compressor running and settled for some minutes.",
            typical: "At or a little above the pressure need in the cold, higher the warmer it is outdoors.",
        },
        RungValue::Coil => HelpWords {
            what: "What a sensor half way through condensing feels.",
            measure: "A thermometer strapped to the sensor's return bend and insulated over.",
            typical: "The saturation temperature of the head pressure; with a blend that glides, between bubble and dew.",
        },
        RungValue::OverAmbient => HelpWords {
            what: "Condensing temperature less outdoor temperature.",
            measure: "Head pressure read as dew temperature, less the air that enters the coil, both settled.",
            typical: "8 to 17 K (15 to 30 °F) with all fans at full speed, more the slower they turn.",
        },
        RungValue::Output => HelpWords {
            what: "What the controller gives, as a share of its full output.",
            measure: "On its display, or the motor's volts or signal against the full ones.",
            typical: "Full on a warm day, the minimum output in the cold, in between over the throttling range.",
        },
        RungValue::MotorVolts => HelpWords {
            what: "The r.m.s. voltage at the motor.",
            measure: "A true r.m.s. meter at the motor, by someone who may work on live parts; a meter that averages reads a cut wave too low.",
            typical: "The supply voltage at full output; at the minimum what the settings sheet says.",
        },
        RungValue::MotorSpeed => HelpWords {
            what: "How fast the fan motor turns.",
            measure: "A tachometer or a strobe on the blades, from outside the guard.",
            typical: "The nameplate's speed at full output, a fifth to two fifths of it at the least.",
        },
        RungValue::FanOn => HelpWords {
            what: "Share of the time that the switched fans run; of a bank, the share of fans.",
            measure: "Time them running and standing over a few starts.",
            typical: "Less the colder it is.",
        },
        RungValue::FanSpeed => HelpWords {
            what: "Speed of the fans as a share of full speed.",
            measure: "A tachometer or a strobe on the blades, from outside the guard.",
            typical: "Full, where nothing slows them.",
        },
        RungValue::Swing => HelpWords {
            what: "Where head pressure turns while a fan is switched off and on.",
            measure: "The lowest and the highest on a high-side gauge over a few starts.",
            typical: "As wide as the switch's own differential, or a little wider.",
        },
        RungValue::Starts => HelpWords {
            what: "How often a switched fan starts.",
            measure: "Count over half an hour of steady weather.",
            typical: "Fewer than ten an hour; more wears contactor and motor.",
        },
        RungValue::Flooded => HelpWords {
            what: "Share of the condenser that stands full of liquid.",
            measure: "Feel or measure along the return bends: where they turn from warm to cool, liquid stands.",
            typical: "None on a warm day, most of the coil in the deepest cold.",
        },
        RungValue::Evaporating => HelpWords {
            what: "Temperature at which the refrigerant boils in the evaporator (dew).",
            measure: "A suction gauge at the evaporator's outlet, read as dew temperature.",
            typical: "As at the known point while the evaporator is fed, colder where it is starved.",
        },
        RungValue::Superheat => HelpWords {
            what: "How far the suction gas is above its dew temperature.",
            measure: "A thermometer strapped to the suction pipe where the valve's bulb sits, less the dew temperature of the pressure there.",
            typical: "4 to 8 K (7 to 14 °F) under control; it rises where the evaporator is starved.",
        },
        RungValue::Cooling => HelpWords {
            what: "Heat that the evaporator takes up.",
            measure: "From airflow and the air's temperatures before and behind the coil; close on a dry coil only.",
            typical: "A little more than at the known point in the cold, as long as the evaporator is fed.",
        },
    }
}

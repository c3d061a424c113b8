//! Questions, help and choices of the inputs.

use winterset_calc::Field;

use crate::example;
use crate::language::FieldWords;
use crate::units::Units;

pub(super) fn field(field: Field) -> FieldWords {
    let (ask, help) = match field {
        Field::Refrigerant => (
            "Refrigerant",
            "What the circuit holds now: read the nameplate and any retrofit label. A blend of your own is written by mass, as R-32/R-1234yf 68.9/31.1.",
        ),
        Field::CoolingCapacity => (
            "Nominal cooling capacity",
            "From the nameplate or the data sheet, at the evaporating and condensing temperature the system was chosen for.",
        ),
        Field::HeatRejected => (
            "Heat rejected at the condenser",
            "In place of the cooling capacity, where the condenser's own data sheet is at hand: at the same temperature difference as below.",
        ),
        Field::OutdoorLow => (
            "Lowest outdoor temperature",
            "The coldest that this site sees while cooling is needed. A design low for the place will do.",
        ),
        Field::Metering => (
            "Metering device",
            "What feeds the evaporator. A balanced port is marked so on the valve or in its data sheet.",
        ),
        Field::Motor => (
            "Condenser fan motor",
            "A run capacitor on a single-phase motor means permanent split capacitor. Three wires and no capacitor mean three-phase. A motor with a box of electronics is electronically commutated.",
        ),
        Field::Bearing => (
            "Bearing of the fan motor",
            "On the nameplate or in the data sheet. A sleeve bearing needs speed to keep its oil film.",
        ),
        Field::Voltage => (
            "Supply voltage at the fan",
            "Measured at the fan's terminals under load, or the nominal supply.",
        ),
        Field::Duty => (
            "What is cooled",
            "Sets the usual evaporating temperature and condensing over ambient until you enter them.",
        ),
        Field::OverAmbient => (
            "Condensing over ambient",
            "On a day with the fans at full speed: saturation (dew) at the head pressure, less the temperature of the air going into the coil.",
        ),
        Field::KnownOutdoor => (
            "Outdoor temperature of that reading",
            "The air going into the condenser when the reading above was taken, or the design value of the data sheet.",
        ),
        Field::Evaporating => (
            "Evaporating temperature",
            "Saturation (dew) at the suction pressure when the system runs steadily.",
        ),
        Field::Fans => (
            "Number of condenser fans",
            "All on this circuit's condenser.",
        ),
        Field::ModulatedFans => (
            "Fans that the speed controller moves",
            "All of them unless entered. The rest run at full speed and go off one after another by pressure switches, at the pressure need.",
        ),
        Field::Airflow => (
            "Airflow, all fans at full speed",
            "From the condenser's data sheet. Left blank, it is worked out for a usual condenser.",
        ),
        Field::Frequency => ("Supply frequency", "50 or 60 Hz."),
        Field::RatedSpeed => (
            "Nameplate speed of the fan motor",
            "In revolutions a minute, at full load.",
        ),
        Field::Elevation => (
            "Height above sea level",
            "Thin air carries less heat, and gauge pressure stands on less of it.",
        ),
        Field::Sensing => (
            "What the controller senses",
            "Coil temperature suits refrigerants with little glide; liquid pressure suits any.",
        ),
        Field::ThrottlingRange => (
            "Throttling range",
            "From minimum to full output, as a span of condensing temperature. Narrow holds tighter and hunts sooner.",
        ),
        Field::CompressorLowest => (
            "Lowest condensing temperature of the compressor",
            "From the maker's operating envelope at your evaporating temperature, if you have it.",
        ),
        Field::CompressorHighest => (
            "Highest condensing temperature of the compressor",
            "From the maker's operating envelope at your evaporating temperature, if you have it. Above it the plan says so.",
        ),
        Field::ReturnAir => (
            "Return air at the evaporator",
            "The air that comes back to the indoor coil while the system runs steadily.",
        ),
        Field::FanPower => (
            "Power of all condenser fans",
            "Measured at full speed, or from the nameplates. Left blank, a usual share of the heat rejected stands in; it bears on the energy alone.",
        ),
        Field::ReturnHumidity => (
            "Humidity of the return air",
            "Relative humidity of the air that comes back to the indoor coil. It decides when ice starts on it.",
        ),
        Field::IndoorAirflow => (
            "Airflow of the evaporator",
            "From its data sheet. Left blank, a usual airflow for the capacity stands in; it bears on ice alone.",
        ),
        Field::LiquidLength => (
            "Length of the liquid line",
            "From the condenser or receiver to the metering device, with fittings counted as the length of straight pipe that they are worth.",
        ),
        Field::LiquidLift => (
            "Rise of the liquid line",
            "How much higher the metering device lies than the condenser's outlet. Below zero where it lies lower.",
        ),
        Field::LiquidDiameter => (
            "Inside diameter of the liquid line",
            "Not the outside size that a pipe is sold by.",
        ),
        Field::FullLoad => (
            "Full-load current of one fan motor",
            "FLA on the nameplate. It decides which controller carries the fans.",
        ),
        Field::Subcooling => (
            "Subcooling at the condenser's outlet",
            "Saturation (bubble) at the head pressure, less the temperature of the liquid line at the condenser, when the reading over ambient was taken.",
        ),
        Field::CapacityControl => (
            "How the compressors follow the load",
            "The least share of the full load that they run at follows from it, until you enter that.",
        ),
        Field::CompressorStages => (
            "Number of compressor stages",
            "All of one size, on this circuit. It counts only where compressors are switched one after another.",
        ),
        Field::LowestLoad => (
            "Lowest share of full load",
            "The least that the compressors run at, by stages, unloading or speed. The less heat, the sooner head pressure falls: the plan then goes by this share. Left blank, it follows from how they follow the load.",
        ),
        Field::HeatReclaim => (
            "Condensing wanted for heat reclaim",
            "The condensing temperature that whoever uses the heat wants, if the heat is used.",
        ),
        Field::Defrost => ("Defrost", "Hot gas needs head pressure to melt ice."),
        Field::BelowMinimum => (
            "Below minimum output the fan",
            "Some controllers keep the fan turning at minimum output, some stop it. A fan that stops holds head pressure further, and lets it saw a little.",
        ),
        Field::ReversingValve => (
            "Reversing valve",
            "Of a heat pump: in which mode its coil is energised. In heating the outdoor fan runs at full speed, told from this signal.",
        ),
        Field::FlowCoefficients => (
            "Mass flow, ten coefficients",
            "From the compressor's data sheet (AHRI 540), C1 to C10 parted by blanks. They say how the flow goes with both pressures; the nameplate says how much it is.",
        ),
        Field::PowerCoefficients => (
            "Power, ten coefficients",
            "From the same sheet, C1 to C10 in watts.",
        ),
        Field::SheetUnits => (
            "Units of the coefficients",
            "Temperature, mass flow and power as the sheet prints them.",
        ),
        Field::SheetSuperheat => (
            "Superheat that the sheet is rated at",
            "From the same sheet.",
        ),
        Field::Recirculation => (
            "Air drawn in again",
            "The share of the condenser's air that it has just blown out: under a roof, in a corner, between two units. The reading over ambient is taken as free of it.",
        ),
        Field::Dirt => (
            "Dirt on the condenser",
            "The share of air and conductance that dirt takes. The reading over ambient is taken as that of the clean coil.",
        ),
        Field::IdleAirflow => (
            "Airflow with the fans off",
            "What wind and natural draft still move, as a share of full. More on an open roof, less behind a baffle.",
        ),
    };
    FieldWords { ask, help }
}

pub(super) fn usual(field: Field, units: Units) -> Option<String> {
    match field {
        Field::Frequency => Some("50 or 60 Hz".to_owned()),
        _ => example::usual(field, units).map(|(low, high)| format!("{low} to {high}")),
    }
}

pub(super) fn choice(field: Field, key: &str) -> &'static str {
    match (field, key) {
        (Field::Duty, "room-cooling") => "Rooms, cabinets, archives",
        (Field::Duty, "cooler") => "Cooler or cellar",
        (Field::Duty, "freezer") => "Freezer",
        (Field::Motor, "permanent-split-capacitor") => "Permanent split capacitor",
        (Field::Motor, "shaded-pole") => "Shaded pole",
        (Field::Motor, "electronically-commutated") => "Electronically commutated",
        (Field::Motor, "three-phase") => "Three-phase",
        (Field::Bearing, "ball") => "Ball bearing",
        (Field::Bearing, "sleeve") => "Sleeve bearing",
        (Field::Metering, "txv-conventional") => "TXV, conventional port",
        (Field::Metering, "txv-balanced") => "TXV, balanced port",
        (Field::Metering, "electronic-valve") => "Electronic expansion valve",
        (Field::Metering, "fixed-orifice") => "Fixed orifice or capillary",
        (Field::CapacityControl, "on-off") => "One that stops and starts",
        (Field::CapacityControl, "stages") => "Switched one after another",
        (Field::CapacityControl, "unloading") => "Cylinders or scroll unload",
        (Field::CapacityControl, "variable-speed") => "Variable speed",
        (Field::Defrost, "other") => "Other, or none",
        (Field::Defrost, "hot-gas") => "Hot gas",
        (Field::BelowMinimum, "keeps-turning") => "Keeps turning",
        (Field::BelowMinimum, "stops") => "Stops",
        (Field::ReversingValve, "none") => "No heat pump",
        (Field::ReversingValve, "in-cooling") => "Energised in cooling",
        (Field::ReversingValve, "in-heating") => "Energised in heating",
        (Field::SheetUnits, "C-kg/h-W") => "°C, kg/h, W",
        (Field::SheetUnits, "C-g/s-W") => "°C, g/s, W",
        (Field::SheetUnits, "C-kg/s-W") => "°C, kg/s, W",
        (Field::SheetUnits, "F-lb/h-W") => "°F, lb/h, W",
        (Field::Sensing, "coil-temperature") => "Coil temperature",
        (Field::Sensing, "liquid-pressure") => "Liquid-line pressure",
        _ => "Unknown choice",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use winterset_calc::input::{
        Bearing, BelowMinimum, CapacityControl, Defrost, Duty, Metering, MotorKind, Reversing,
        Sensing, SheetUnits,
    };

    #[test]
    fn every_choice_has_its_words() {
        let keys = [
            (
                Field::Duty,
                Duty::ALL.iter().map(|c| c.key()).collect::<Vec<_>>(),
            ),
            (
                Field::Motor,
                MotorKind::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::Bearing,
                Bearing::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::Metering,
                Metering::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::CapacityControl,
                CapacityControl::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::Defrost,
                Defrost::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::BelowMinimum,
                BelowMinimum::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::ReversingValve,
                Reversing::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::SheetUnits,
                SheetUnits::ALL.iter().map(|c| c.key()).collect(),
            ),
            (
                Field::Sensing,
                Sensing::ALL.iter().map(|c| c.key()).collect(),
            ),
        ];
        for (field, keys) in keys {
            for key in keys {
                assert_ne!(choice(field, key), "Unknown choice", "{field:?} {key}");
            }
        }
    }
}

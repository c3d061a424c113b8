//! How the values of the worksheets are measured and what is typical of them, in English.
//!
//! What is typical: common practice, no published source.

use winterset_calc::SheetRule;

use crate::help::FindWords;

/// How a value is measured on a system that stands there, and what is typical.
pub fn measured(rule: SheetRule) -> FindWords {
    let (find, typical) = match rule {
        SheetRule::BubblePressure => (
            "A gauge on a vessel or line that holds liquid alone, at this temperature and at rest.",
            "The same as the dew pressure for one fluid; with a blend that glides, higher by some percent.",
        ),
        SheetRule::DewPressure => (
            "A gauge where the gas is dry and just saturated, at this temperature.",
            "The same as the bubble pressure for one fluid; with a blend that glides, lower by some percent.",
        ),
        SheetRule::BubbleTemperature => (
            "A thermometer on the pipe where the last vapour is gone, insulated over.",
            "Below the dew temperature by the glide.",
        ),
        SheetRule::DewTemperature => (
            "A thermometer on the pipe where the last liquid is gone, insulated over.",
            "Above the bubble temperature by the glide.",
        ),
        SheetRule::Glide => (
            "Two thermometers along an evaporator or a condenser, at the same pressure.",
            "None for one fluid, up to 12 K (22 °F) for the blends in common use.",
        ),
        SheetRule::Superheat => (
            "A thermometer on the suction pipe, insulated over, and a gauge at the same place.",
            "4 to 8 K (7 to 14 °F) at a thermostatic valve's bulb; more at the compressor.",
        ),
        SheetRule::Subcooling => (
            "A thermometer on the liquid pipe, insulated over, and a gauge at the same place.",
            "3 to 8 K (5 to 14 °F) at the outlet of a condenser that is not flooded.",
        ),
        SheetRule::AirDensity => (
            "Barometer and thermometer at the fan.",
            "1.2 kg/m³ (0.075 lb/ft³) at sea level and 20 °C (68 °F); a tenth less for each 1000 m (3300 ft).",
        ),
        SheetRule::FanAirflow => (
            "A vane anemometer over the whole face of the coil, the mean times its area.",
            "Half the airflow at half the speed.",
        ),
        SheetRule::FanPressure => (
            "A differential manometer across the fan and its coil, taps out of the stream.",
            "A quarter at half the speed.",
        ),
        SheetRule::FanPower => (
            "A power meter at the motor; what the shaft takes is that times the motor's efficiency.",
            "An eighth at half the speed.",
        ),
        SheetRule::Output => (
            "The motor's volts against the supply's, both true r.m.s.",
            "Three to nine tenths while a fan is slowed.",
        ),
        SheetRule::CutVoltage => (
            "A true r.m.s. meter at the motor, by someone who may work on live parts.",
            "From the minimum of the settings sheet up to the supply voltage.",
        ),
        SheetRule::MeterVoltage => (
            "A meter that does not say true r.m.s., at the same place.",
            "Below the true value, the further the deeper the cut.",
        ),
        SheetRule::FiringAngle => (
            "An oscilloscope with an isolated probe, by someone trained for it.",
            "None at full output, 90° where half of the power to a heater would be left.",
        ),
        SheetRule::MotorSpeed => (
            "A tachometer or a strobe on the blades, from outside the guard.",
            "Close to the nameplate down to about two thirds of the voltage, then falling steeply.",
        ),
        SheetRule::KeepsRunning => (
            "Lower the output step by step until the fan stops, with the guard in place.",
            "A quarter to a half of the supply voltage.",
        ),
        SheetRule::Starts => (
            "Raise the output from rest step by step until the fan starts by itself, with the guard in place.",
            "A third to two thirds of the supply voltage, more with cold grease.",
        ),
        SheetRule::BearingSpeed => (
            "The motor's maker says it.",
            "A fifth of full speed with ball bearings, two fifths with sleeve bearings.",
        ),
        SheetRule::FloodedShare => (
            "Feel or measure along the return bends: where they turn from warm to cool, liquid stands.",
            "None on a warm day, up to nine tenths in deep cold.",
        ),
        SheetRule::CondenserVolume => (
            "From the coil's drawing: tubes times their inside area and length.",
            "About 0.4 litre a kilowatt of heat (0.004 ft³ per 1000 Btu/h).",
        ),
        SheetRule::FloodedLiquid => (
            "A thermometer on the lowest return bend.",
            "1.1 to 1.3 kg/L (70 to 80 lb/ft³) for fluorinated refrigerants in the cold.",
        ),
        SheetRule::Unflooded => (
            "It cannot be read; it follows from how much vapour and liquid the coil holds while it works.",
            "A fifth to a third of the density of the liquid.",
        ),
        SheetRule::FloodingCharge => (
            "A scale under the cylinder while charging.",
            "As much again as half of the normal charge, in a cold climate as much as all of it.",
        ),
        SheetRule::ReceiverNeeded => (
            "The nameplate of the receiver; its length and bore where that is gone.",
            "Once to twice the volume of the condenser.",
        ),
        SheetRule::ReceiverRoom => (
            "The nameplate of the receiver against what is needed.",
            "Above zero; a fifth is left empty for warm liquid to swell into.",
        ),
        SheetRule::MassFlow => (
            "From capacity and the enthalpies before and behind the evaporator; a flow meter is rarely there.",
            "About 6 g/s a kilowatt of cooling (140 lb/h for 10 000 Btu/h).",
        ),
        SheetRule::LineVelocity => (
            "It is not measured; it follows from mass flow and bore.",
            "0.4 to 1 m/s (1.3 to 3.3 ft/s) in a liquid line.",
        ),
        SheetRule::LineFriction => (
            "Two gauges at the same height, or one moved from end to end.",
            "Under 1 K (2 °F) of saturation temperature in a well-sized line.",
        ),
        SheetRule::LineLift => (
            "A tape from the outlet of the condenser or receiver up to the valve.",
            "About 11 kPa a metre (0.5 psi a foot) of rise.",
        ),
        SheetRule::LineDrop => (
            "Two gauges, one at each end of the line.",
            "Less than what 2 to 3 K (4 to 5 °F) of subcooling makes up for.",
        ),
        SheetRule::Arrival => (
            "A thermometer and a gauge just before the valve; a sight glass there shows bubbles where it is gone.",
            "2 K (4 °F) or more.",
        ),
        SheetRule::NeededSubcooling => (
            "A thermometer and a gauge at the outlet of the condenser or receiver.",
            "3 to 10 K (5 to 18 °F); more under a long rise.",
        ),
        SheetRule::BetaTemperature | SheetRule::SteinhartTemperature => (
            "A thermometer beside the sensor, both under the same insulation.",
            "Within 1 K (2 °F) of the thermometer where the sensor is sound.",
        ),
        SheetRule::BetaResistance | SheetRule::SteinhartResistance => (
            "An ohmmeter at the sensor's lead, taken off the controller.",
            "10 to 100 kΩ from 25 down to −20 °C (77 to −4 °F) for a sensor of 10 kΩ.",
        ),
        SheetRule::SubstituteResistor => (
            "An ohmmeter on the resistor before it is connected.",
            "One value of its series; two in series come nearer.",
        ),
        SheetRule::SubstituteTemperature => (
            "The controller's own display, with the resistor connected.",
            "Within 1 K (2 °F) of the temperature wanted.",
        ),
        SheetRule::RatiometricPressure | SheetRule::LoopPressure => (
            "A gauge at the transducer's port.",
            "Within 2 percent of the transducer's range.",
        ),
        SheetRule::RatiometricOutput => (
            "A voltmeter from the signal wire to the common one, the supply measured too.",
            "A tenth to nine tenths of a supply of 5 V.",
        ),
        SheetRule::LoopCurrent => (
            "A milliammeter in the loop.",
            "4 to 20 mA; outside that the loop is broken or shorted.",
        ),
        SheetRule::SwitchMargin => (
            "A gauge on the low side after a night of standing, against the switch's setting.",
            "Above zero in a mild climate, below it in a cold one.",
        ),
        SheetRule::StandingOutdoor => (
            "A gauge on the liquid line before the start.",
            "The saturation pressure of the coldest part outdoors.",
        ),
        SheetRule::StandingLow => (
            "A gauge on the low side after a long stop, with the compressor off.",
            "Between the saturation pressures of outdoors and indoors.",
        ),
        SheetRule::BypassTime => (
            "A watch and a suction gauge from the start.",
            "Under 2 to 3 minutes; a longer one needs another remedy.",
        ),
        SheetRule::LowestSuction => (
            "A suction gauge during the first minutes.",
            "Below the running pressure for some seconds to minutes.",
        ),
        SheetRule::SumpTemperature => (
            "A thermometer on the bottom of the shell, insulated over.",
            "8 to 15 K (15 to 27 °F) above the air round it.",
        ),
        SheetRule::SumpHeat => (
            "A power meter at the heater.",
            "20 to 100 W, by the size of the shell.",
        ),
        SheetRule::Conversion => (
            "The instrument that reads in this unit.",
            "As in the unit that was typed.",
        ),
    };
    FindWords { find, typical }
}

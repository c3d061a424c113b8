//! Names and reasons of the rules.

use winterset_calc::Rule;

use crate::language::RuleWords;

pub(super) fn rule(rule: Rule) -> RuleWords {
    let (name, reason) = match rule {
        Rule::Atmosphere => (
            "Air pressure",
            "The standard atmosphere at this height above sea level.",
        ),
        Rule::HeatRejected => (
            "Heat rejected",
            "The cooling capacity and the heat of compression on top, at the known point.",
        ),
        Rule::HeatRejectedBySheet => (
            "Heat rejected",
            "The cooling capacity and the compressor's power by its data sheet on top, at the known point.",
        ),
        Rule::HeatEntered => ("Heat rejected", "As entered, at the known point."),
        Rule::AirflowEntered => ("Airflow", "As entered."),
        Rule::AssumedAirflow => (
            "Airflow",
            "A usual condenser: its air leaves six tenths of the way to the middle of condensing.",
        ),
        Rule::DesignCondensing => (
            "Condensing at the known point",
            "The outdoor temperature and the condensing over ambient of the known point.",
        ),
        Rule::AirCapacityRate => (
            "Heat that the air takes per kelvin",
            "Density, airflow and specific heat of the air.",
        ),
        Rule::Conductance => (
            "Condenser conductance",
            "What the coil must be to cool the hot gas, condense it and cool the liquid at the known point. The shares tell how much of the coil each takes.",
        ),
        Rule::MeteringNeed => (
            "For the metering device",
            "Fully open, the device still passes what the compressor draws at this head pressure, and starves the evaporator below it.",
        ),
        Rule::CompressorNeed => (
            "For the compressor",
            "A usual least distance of condensing over evaporating. Enter the maker's own limit if you have it.",
        ),
        Rule::CompressorEntered => ("For the compressor", "The maker's limit, as entered."),
        Rule::LiquidLineNeed => (
            "For the liquid line",
            "At this head pressure lift and friction just use up the subcooling; below it gas reaches the metering device.",
        ),
        Rule::EvaporatorNeed => (
            "For the evaporator",
            "Below this head pressure the starved coil turns so cold that ice grows on it.",
        ),
        Rule::DefrostNeed => (
            "For hot-gas defrost",
            "The coil that is defrosted has to condense well above freezing, and the gas has to get there.",
        ),
        Rule::ReclaimNeed => (
            "For heat reclaim",
            "The temperature that the user of the heat wants.",
        ),
        Rule::GoverningNeed => ("Pressure need", "The needier part sets it."),
        Rule::FullSpeedPressure => (
            "Full-speed point, pressure",
            "The throttling range stands on the pressure need; at its top the fan is at full speed.",
        ),
        Rule::FullSpeedCoil => (
            "Full-speed point, coil temperature",
            "What a sensor half way through condensing sees at that head pressure.",
        ),
        Rule::ThrottlingRange => (
            "Throttling range",
            "From the pressure need at minimum output up to the full-speed point.",
        ),
        Rule::LowestSpeed => ("Lowest speed", "What the bearing allows for long."),
        Rule::StallSpeed => (
            "Lowest speed",
            "What the fan turns at on the lowest voltage that keeps it turning in the cold. The bearing alone would allow less.",
        ),
        Rule::StallOutput => (
            "Minimum output",
            "The lowest voltage on which the motor keeps its fan turning against cold grease and dense air at this site's low. The bearing alone would allow less, but below this the fan stalls.",
        ),
        Rule::MinimumSignalVolts => (
            "Minimum signal, 0 to 10 V",
            "On an input that starts at 1 V and is at full speed at 10 V. What the motor's data sheet says goes first.",
        ),
        Rule::MinimumSignalDuty => (
            "Minimum signal, pulse width",
            "The share of the time that the signal is on, where full speed is always on. What the motor's data sheet says goes first.",
        ),
        Rule::LowestFrequency => (
            "Lowest frequency",
            "Set it on the drive as its lower limit: the share of the supply frequency that the bearing allows for long.",
        ),
        Rule::MinimumOutput => (
            "Minimum output",
            "The voltage at which the motor keeps its lowest speed against the fan, in the cold air of this site's low.",
        ),
        Rule::MinimumSignal => (
            "Minimum signal",
            "The share of full speed that the bearing allows for long.",
        ),
        Rule::StartBoost => (
            "Start boost",
            "Full output until the fan is up to speed, with cold grease and with air that the wind drives backwards through it, and half as long again since its inertia is an estimate. A sleeve bearing gets longer. At minimum output the motor may not start from rest.",
        ),
        Rule::OnOffPoints => (
            "Off at, on at",
            "Off at the pressure need, on again one throttling range above it.",
        ),
        Rule::StagePoints => (
            "Stage: off at, on at",
            "Fans go off one after another, the last of them at the pressure need; one always runs.",
        ),
        Rule::HoldLimit => (
            "Hold limit",
            "The outdoor temperature at which the method's least airflow and most flooding just keep the pressure need.",
        ),
        Rule::Condensing => (
            "Condensing temperature",
            "Where the coil passes all the heat to this much air.",
        ),
        Rule::AssumedFanPower => ("Fan power", "A usual share of the heat rejected."),
    };
    RuleWords { name, reason }
}

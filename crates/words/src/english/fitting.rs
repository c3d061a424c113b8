//! Fitting and wiring, in English.

use uom::si::f64::Pressure;
use winterset_calc::Quantity;
use winterset_calc::fitting::{Arrangement, CoilPlace, Control, Fans, Item, Part, Tap, Work};
use winterset_calc::input::MotorKind;

use super::{English, plan};
use crate::fitting::{FittingLabels, FittingWords};
use crate::units::Units;

static LABELS: FittingLabels = FittingLabels {
    fit: "Fit and wire",
    note: "Where sensor, controller and wires go on this system, in the order of the work. The sketches show what belongs together, not where it sits in a box or how a terminal is marked.",
    arrangement: "Arrangement",
    nothing: "There is nothing to fit: the fans stay at full speed, and their wiring stays as it is.",
    step: |number, all| format!("Step {number} of {all}"),
    places: "Where things sit",
    wiring: "How it is wired",
    in_words: "The sketch in words",
    shown: |list| format!("In the order of flow: {list}."),
    passes: |list| format!("The current passes, one after the other: {list}."),
    steered: |part, list| format!("Signals to the {part} come from: {list}."),
    switched: |motors, part, list| format!("Ahead of the {part}, {motors}: it closes by {list}."),
    beside: |part| {
        format!("The {part} gives the motor a signal; the motor stays on its full supply.")
    },
    capacitor_stays: "Each motor keeps its run capacitor, connected as it was.",
    defers: "Local code, the makers' instructions and licensed practice come before these sketches.",
};

/// What is done to a joint under pressure, whatever is screwed on.
const JOINT: &str = "Take a port that no service valve can shut off, use a fitting that opens its core, and test the joint for leaks.";

/// What is done to a sensor on the coil, whatever its place.
const STRAP: &str = "Clean the copper, strap the sensor along it, and insulate over both, so that it feels the tube and not the wind.";

/// Where it is not known in which mode the reversing valve is energised.
const ASK: &str = "Take the signal from the reversing valve's coil, so that the outdoor fan runs at full speed in heating. Units differ in when this coil is energised: find out on the wiring diagram of the unit, and answer it in the inputs.";

/// What switched fans need of it besides.
const RELAY: &str = "A relay on this signal closes past the pressure switch in heating.";

impl FittingWords for English {
    fn labels(&self) -> &'static FittingLabels {
        &LABELS
    }

    fn arrangement(&self, arrangement: Arrangement) -> &'static str {
        match arrangement {
            Arrangement::CoolingOnly => "Cooling only",
            Arrangement::WithReceiver => "With receiver",
            Arrangement::HeatPump => "Heat pump",
            Arrangement::TwoCircuits => "Two circuits",
        }
    }

    fn part(&self, part: Part, fans: Fans) -> String {
        let text = match (part, fans) {
            (Part::Motor, Fans::Alike(count)) if count > 1 => {
                return format!("fan motors, {count} alike");
            }
            (Part::Motor, Fans::Mixed { slowed, .. }) if slowed > 1 => {
                return format!("fan motors that are slowed, {slowed}");
            }
            (Part::SwitchedMotors, Fans::Mixed { switched, .. }) if switched > 1 => {
                return format!("{switched} fan motors on a contactor of their own");
            }
            (Part::FurtherMotors, Fans::OneAndFurther(count)) if count > 1 => {
                return format!("{count} further fan motors, each with its own contactor");
            }
            (Part::Supply, _) => "supply",
            (Part::Disconnect, _) => "disconnect",
            (Part::Contactor, _) => "contactor",
            (Part::FanContactor, _) => "fan contactor",
            (Part::SpeedController, _) => "speed controller",
            (Part::FrequencyDrive, _) => "frequency drive",
            (Part::SwitchedMotors, _) => "fan motor on a contactor of its own",
            (Part::Motor, Fans::Mixed { .. }) => "the fan motor that is slowed",
            (Part::Motor, _) => "fan motor",
            (Part::FirstMotor, _) => "first fan motor, runs always",
            (Part::FurtherMotors, _) => "second fan motor",
            (Part::Capacitor, _) => "run capacitor",
            (Part::CoilSensor, _) => "sensor on the coil",
            (Part::SecondCoilSensor, _) => "sensor on the second coil",
            (Part::PressureSensor, _) => "pressure sensor",
            (Part::SecondPressureSensor, _) => "second pressure sensor",
            (Part::PressureSwitch, Fans::OneAndFurther(count)) if count > 1 => {
                "pressure switch, one a contactor"
            }
            (Part::PressureSwitch, _) => "pressure switch",
            (Part::SecondPressureSwitch, _) => "pressure switch, second circuit",
            (Part::ReversingValve, _) => "reversing valve",
        };
        text.to_owned()
    }

    fn item(&self, item: Item) -> String {
        let text = match item {
            Item::Fans(count) if count > 1 => return format!("condenser fans, {count}"),
            Item::Sensor(part) => return self.part(part, Fans::Alike(1)),
            Item::HotGas => "hot gas from the compressor",
            Item::ReversingValve => "reversing valve",
            Item::Fans(_) => "condenser fan",
            Item::SharedFans(_) => "condenser fans, shared by both circuits",
            Item::Baffle => "wind baffle",
            Item::Coil => "condenser coil",
            Item::SecondCoil => "coil of the second circuit",
            Item::FloodingValve => "head-pressure valve",
            Item::Receiver => "receiver",
            Item::Liquid => "liquid line",
        };
        text.to_owned()
    }

    fn work(&self, work: Work) -> &'static str {
        match work {
            Work::Prepare => "Get ready",
            Work::Isolate => "Make it dead",
            Work::FitFlooding => "Put in valve and receiver",
            Work::FitBaffle => "Put up the baffle",
            Work::StrapSensor(_) => "Strap the sensor to the coil",
            Work::FitTransducer => "Screw on the pressure sensor",
            Work::FitSwitches(1) => "Screw on the pressure switch",
            Work::FitSwitches(_) => "Screw on the pressure switches",
            Work::FitSecond(_) => "The same on the second circuit",
            Work::LayLead => "Lay the sensor's lead",
            Work::Mount(Control::FrequencyDrive) => "Mount the drive",
            Work::Mount(Control::Switched) => "Mount the contactor",
            Work::Mount(Control::Staged) => "Mount the contactors",
            Work::Mount(_) => "Mount the controller",
            Work::Wire(..) => "Wire the fans",
            Work::WireSwitched => "Wire the fans that are switched",
            Work::WireReversingValve { .. } => "Bring the reversing valve's signal",
            Work::EnterValues => "Enter the values",
            Work::SetSwitches => "Set the switching points",
            Work::GivePower => "Give power and look",
        }
    }

    fn how(&self, work: Work, units: Units) -> String {
        match work {
            Work::StrapSensor(place) => strap(place, units),
            Work::FitSecond(tap) => second(tap, units),
            Work::WireReversingValve { valve, switched } => {
                let signal = valve.map_or(ASK, |valve| plan::heating(valve).reason);
                if switched {
                    format!("{signal} {RELAY}")
                } else {
                    signal.to_owned()
                }
            }
            other => how(other).to_owned(),
        }
    }
}

fn strap(place: CoilPlace, units: Units) -> String {
    match place {
        CoilPlace::Usual => format!(
            "On a return bend two thirds of the way up the coil, counted from the liquid outlet. {STRAP}"
        ),
        CoilPlace::Moved(share) => {
            let up = units.show(&Quantity::Ratio(1.0 - share), Pressure::default());
            format!(
                "On this coil the usual place does not do. Take the return bend nearest to {up} of the way up, counted along the circuit from the liquid outlet. {STRAP}"
            )
        }
        CoilPlace::Nowhere => "No return bend of this coil is in two phases both on a warm day and in the cold. Sense liquid-line pressure instead, and choose so in the inputs.".to_owned(),
    }
}

fn second(tap: Tap, units: Units) -> String {
    match tap {
        Tap::Coil(CoilPlace::Nowhere) => strap(CoilPlace::Nowhere, units),
        Tap::Coil(_) | Tap::LiquidLine => {
            "Put a second sensor at the same place of the other condenser, and take it to the controller's second input. The circuit that asks for more fan speed leads.".to_owned()
        }
        Tap::Switches(_) => format!(
            "Put switches on the other circuit too, and wire their contacts beside those of the first, so that either circuit can call a fan. {JOINT}"
        ),
    }
}

fn how(work: Work) -> &'static str {
    match work {
        Work::Prepare => {
            "Hold what has come against the plan's list of what to order, and have the instructions of controller, motor and unit at hand. Where they say otherwise than these steps, they are right."
        }
        Work::Isolate => {
            "Open the unit's disconnect, lock it and keep the key. Measure at the fan, from wire to wire and from each wire to earth, and look for a second supply such as a control circuit or a heater."
        }
        Work::FitFlooding => {
            "The head-pressure valve stands between hot gas, condenser outlet and receiver; the receiver lies below the outlet, so that liquid runs into it. Set the valve as the plan's list says and add the extra charge by weight. Opening the circuit is for licensed hands."
        }
        Work::FitBaffle => {
            "Stand it on the side that the wind comes from, far enough off that the fans' own air gets through, and fix it against storm and snow."
        }
        Work::FitTransducer => {
            "On the liquid line, close behind the condenser's outlet. Take a port that no service valve can shut off, use a fitting that opens its core, and test the joint for leaks."
        }
        Work::FitSwitches(_) => {
            "On the liquid line, close behind the condenser's outlet, one for each contactor. Take ports that no service valve can shut off, and test the joints for leaks."
        }
        Work::LayLead => {
            "Keep it apart from the wires of fan and supply, and cross them at a right angle. Tie it where the fan cannot reach it, and let it hang in a loop before it enters, so that water drips off."
        }
        Work::Mount(Control::FrequencyDrive) => {
            "Dry and upright, with the free space that its maker asks for, and near the motors: a long motor cable needs a filter."
        }
        Work::Mount(Control::Switched | Control::Staged) => {
            "In the unit's control box or in a box made for the weather, rated for the full-load current of the fans that each one switches."
        }
        Work::Mount(_) => {
            "Upright on metal that carries its heat away, in a box made for the weather, and where its settings can be reached without passing the fan."
        }
        Work::Wire(Control::PhaseCut, MotorKind::PermanentSplitCapacitor) => {
            "Put the controller into the wire from the contactor to the fan motor. The run capacitor stays at the motor, connected as it was; it is never put in front of the controller. Motors side by side each keep their own."
        }
        Work::Wire(Control::PhaseCut, _) => {
            "Put the controller into the wire from the contactor to the fan motor. The other wire stays as it is."
        }
        Work::Wire(Control::Signal, _) => {
            "The motor stays on its full supply, by the contactor as before. Take the controller's output, 0 to 10 V or pulses, to the motor's speed input with a shielded pair, and mind which wire is common. The controller has a supply of its own. A phase-cut controller in the motor's supply destroys it."
        }
        Work::Wire(Control::FrequencyDrive, _) => {
            "Supply to the drive, drive to the motors, and nothing that switches in between: shielded motor cable, its shield earthed as the maker says. A free contact of the compressor's contactor gives the run command. Check which way the fans turn."
        }
        Work::Wire(Control::Staged, _) => {
            "Leave the first fan on the unit's contactor, so that it always runs. Give each further fan or group a contactor of its own, and put a pressure switch into the control wire of each."
        }
        Work::Wire(..) => {
            "Take the fans off the unit's contactor and onto one of their own. Put the pressure switch into its control wire, behind whatever calls the compressor, so that the fans stop with it."
        }
        Work::WireSwitched => {
            "Take the fans that are not slowed onto a fan contactor of their own, ahead of what slows the others, so that they get the whole supply. Put the pressure switch into its control wire, behind whatever calls the compressor, so that they stop with it."
        }
        Work::EnterValues => {
            "Write down what was set before. Then enter the settings sheet from top to bottom."
        }
        Work::SetSwitches => {
            "Set off and on points by a gauge, not by the scale on the switch. They stand in the plan's list of what to order."
        }
        Work::GivePower => {
            "First close the covers and put the guards back. Then give power: the fan starts at full output and settles to what the sensor asks for. Hold it against the plan's test values, on a warm day with a simulated sensor."
        }
        // Said by their own functions.
        Work::StrapSensor(_) | Work::FitSecond(_) | Work::WireReversingValve { .. } => STRAP,
    }
}

//! What must hold of fitting and wiring, whatever the system.
//!
//! What each motor takes and in which order the work is done: common practice, no published source.
#![allow(clippy::unwrap_used)] // a broken fixture should stop its test

mod common;

use common::{celsius, plausible, usual};
use proptest::prelude::*;
use winterset_calc::advice::ReversingValve;
use winterset_calc::fitting::{
    Arrangement, Choice, CoilPlace, Control, Fans, Fitting, Part, Tap, Work,
};
use winterset_calc::input::{Metering, MotorKind, Reversing, Sensing};
use winterset_calc::{Caution, Given, Input, Method, Plan, plan};

fn fitted(plan: &Plan) -> impl Iterator<Item = Fitting> {
    Method::ALL
        .into_iter()
        .filter(|method| plan.applies(*method))
        .flat_map(|method| {
            Arrangement::ALL.map(|arrangement| {
                plan.fitting(Choice {
                    method,
                    arrangement,
                })
            })
        })
}

fn position(fitting: &Fitting, wanted: fn(&Work) -> bool) -> Option<usize> {
    fitting.steps.iter().position(|step| wanted(&step.work))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn nothing_is_touched_before_it_is_dead_and_power_comes_last(input in plausible()) {
        let Ok(plan) = plan(&input) else { return Ok(()) };
        for fitting in fitted(&plan) {
            if fitting.choice.method == Method::FullFan {
                prop_assert!(fitting.steps.is_empty() && fitting.wiring.is_none());
                continue;
            }
            let dead = position(&fitting, |work| matches!(work, Work::Isolate)).unwrap();
            prop_assert_eq!(dead, 1);
            let last = fitting.steps.last().unwrap();
            prop_assert_eq!(last.work, Work::GivePower);
            prop_assert!(fitting.steps[dead].cautions.contains(&Caution::Mains));
            prop_assert!(last.cautions.contains(&Caution::RotatingFan));
        }
    }

    /// Each hurt is told at the step that it lurks at, where the plan has it, and nowhere where it has not.
    #[test]
    fn cautions_stand_at_their_steps(input in plausible()) {
        let Ok(plan) = plan(&input) else { return Ok(()) };
        for fitting in fitted(&plan) {
            for step in &fitting.steps {
                for caution in &step.cautions {
                    prop_assert!(plan.cautions.contains(caution));
                }
                let opens = matches!(step.work, Work::FitFlooding | Work::FitTransducer | Work::FitSwitches(_));
                prop_assert_eq!(opens, step.cautions.contains(&Caution::Pressure)
                    && !matches!(step.work, Work::FitSecond(_)));
                if opens {
                    prop_assert_eq!(step.cautions.contains(&Caution::Flammable), plan.cautions.contains(&Caution::Flammable));
                }
                let has_capacitor = plan.input.motor.value == MotorKind::PermanentSplitCapacitor;
                let wires = matches!(step.work, Work::Wire(..) | Work::WireSwitched);
                prop_assert_eq!(step.cautions.contains(&Caution::Capacitor), wires && has_capacitor);
            }
        }
    }

    #[test]
    fn the_current_passes_from_the_supply_by_the_disconnect_to_the_motors(input in plausible()) {
        let Ok(plan) = plan(&input) else { return Ok(()) };
        let motor = plan.input.motor.value;
        for fitting in fitted(&plan) {
            let Some(wiring) = &fitting.wiring else {
                prop_assert_eq!(fitting.control, Control::FullSpeed);
                continue;
            };
            prop_assert_eq!(&wiring.line[..2], &[Part::Supply, Part::Disconnect]);
            prop_assert!(matches!(wiring.line.last(), Some(Part::Motor | Part::FurtherMotors)));
            prop_assert_eq!(wiring.wires == 3, motor == MotorKind::ThreePhase);
            prop_assert_eq!(wiring.has_capacitor, motor == MotorKind::PermanentSplitCapacitor);
            // A motor with its own electronics and a three-phase one never stand behind a phase-cut supply.
            let behind = wiring.line.contains(&Part::SpeedController);
            prop_assert_eq!(behind, fitting.control == Control::PhaseCut);
            if behind {
                prop_assert!(matches!(motor, MotorKind::PermanentSplitCapacitor | MotorKind::ShadedPole));
            }
            prop_assert_eq!(wiring.hub_is_beside(), fitting.control == Control::Signal);
            prop_assert!(!wiring.signals.is_empty());
        }
    }

    #[test]
    fn liquid_that_floods_a_condenser_comes_back_to_a_receiver(input in plausible()) {
        let Ok(plan) = plan(&input) else { return Ok(()) };
        for fitting in fitted(&plan) {
            let circuit = fitting.circuit;
            prop_assert_eq!(circuit.has_flooding_valve, fitting.choice.method.floods());
            prop_assert!(circuit.has_receiver || !circuit.has_flooding_valve);
            prop_assert_eq!(circuit.has_flooding_valve, position(&fitting, |work| matches!(work, Work::FitFlooding)).is_some());
        }
    }
}

fn planned(input: Input) -> Plan {
    plan(&input).unwrap()
}

fn speed(plan: &Plan, arrangement: Arrangement) -> Fitting {
    plan.fitting(Choice {
        method: Method::SpeedControl,
        arrangement,
    })
}

/// A phase-cut controller stands between contactor and motor, and the motor keeps its capacitor.
#[test]
fn a_capacitor_motor_behind_a_phase_cut() {
    let plan = planned(usual("R-134a"));
    let wiring = speed(&plan, Arrangement::CoolingOnly).wiring.unwrap();
    assert_eq!(
        wiring.line,
        [
            Part::Supply,
            Part::Disconnect,
            Part::Contactor,
            Part::SpeedController,
            Part::Motor
        ]
    );
    assert_eq!(wiring.hub, Part::SpeedController);
    assert_eq!(wiring.signals, [Part::CoilSensor]);
    assert!(wiring.has_capacitor);
    assert_eq!(wiring.fans, Fans::Alike(1));
}

/// In heating the outdoor fan has to run at full speed, so that the controller has to know of it.
#[test]
fn a_heat_pump_brings_the_signal_of_its_reversing_valve() {
    let heat_pump = |reversing| {
        planned(Input {
            reversing_valve: Given::entered(reversing),
            ..usual("R-454B")
        })
    };
    for (reversing, valve) in [
        (Reversing::InCooling, Some(ReversingValve::InCooling)),
        (Reversing::InHeating, Some(ReversingValve::InHeating)),
    ] {
        let plan = heat_pump(reversing);
        assert_eq!(Arrangement::of(&plan), Arrangement::HeatPump);
        let fitting = speed(&plan, Arrangement::of(&plan));
        assert!(fitting.steps.iter().any(|step| step.work
            == Work::WireReversingValve {
                valve,
                switched: false
            }));
        assert!(
            fitting
                .wiring
                .unwrap()
                .signals
                .contains(&Part::ReversingValve)
        );
    }
    // Not answered, but said to be one: the step asks for it.
    let fitting = speed(&heat_pump(Reversing::None), Arrangement::HeatPump);
    assert!(fitting.steps.iter().any(|step| step.work
        == Work::WireReversingValve {
            valve: None,
            switched: false
        }));
}

#[test]
fn two_circuits_are_sensed_alike() {
    for (sensing, first, second) in [
        (
            Sensing::CoilTemperature,
            Part::CoilSensor,
            Part::SecondCoilSensor,
        ),
        (
            Sensing::LiquidPressure,
            Part::PressureSensor,
            Part::SecondPressureSensor,
        ),
    ] {
        let plan = planned(Input {
            sensing: Given::entered(sensing),
            ..usual("R-134a")
        });
        let wiring = speed(&plan, Arrangement::TwoCircuits).wiring.unwrap();
        assert_eq!(wiring.signals, [first, second]);
    }
}

/// A drive is told to run by a signal, and is not switched on and off by its supply.
#[test]
fn nothing_switches_between_a_drive_and_its_motor() {
    let plan = planned(Input {
        motor: Given::entered(MotorKind::ThreePhase),
        ..usual("R-449A")
    });
    let wiring = speed(&plan, Arrangement::WithReceiver).wiring.unwrap();
    let [.., before, last] = wiring.line[..] else {
        unreachable!()
    };
    assert_eq!((before, last), (Part::FrequencyDrive, Part::Motor));
    assert!(wiring.signals.contains(&Part::Contactor));
}

#[test]
fn one_fan_of_a_staged_bank_is_never_switched_off() {
    let plan = planned(Input {
        fans: Given::entered(4),
        ..usual("R-134a")
    });
    let fitting = plan.fitting(Choice {
        method: Method::Staged,
        arrangement: Arrangement::CoolingOnly,
    });
    assert_eq!(fitting.circuit.tap, Some(Tap::Switches(3)));
    let wiring = fitting.wiring.unwrap();
    assert_eq!(wiring.fans, Fans::OneAndFurther(3));
    let first = wiring
        .line
        .iter()
        .position(|part| *part == Part::FirstMotor);
    let switch = wiring
        .line
        .iter()
        .position(|part| *part == Part::FanContactor);
    assert!(first < switch);
}

/// Common practice, no published source: fans that are not slowed get the whole supply, and stop with the compressor.
#[test]
fn fans_that_are_not_slowed_stand_ahead_of_the_controller() {
    for &motor in MotorKind::ALL {
        let plan = planned(Input {
            motor: Given::entered(motor),
            fans: Given::entered(5),
            modulated_fans: Some(2),
            ..usual("R-449A")
        });
        let fitting = speed(&plan, Arrangement::TwoCircuits);
        let wiring = fitting.wiring.as_ref().unwrap();
        assert_eq!(
            wiring.fans,
            Fans::Mixed {
                slowed: 2,
                switched: 3
            }
        );
        let at = |wanted| wiring.line.iter().position(|part| *part == wanted);
        assert!(at(Part::SwitchedMotors) > at(Part::Disconnect));
        assert!(at(Part::SwitchedMotors) < at(Part::Motor));
        assert!(at(wiring.hub).is_none_or(|hub| at(Part::SwitchedMotors) < Some(hub)));
        assert_eq!(
            wiring.switches,
            [Part::PressureSwitch, Part::SecondPressureSwitch]
        );
        let wired = position(&fitting, |work| *work == Work::WireSwitched);
        assert!(position(&fitting, |work| *work == Work::Isolate) < wired);
        assert!(wired < position(&fitting, |work| *work == Work::SetSwitches));
        // One method moves all fans alike, whatever a controller could.
        let staged = plan.fitting(Choice {
            method: Method::OnOff,
            arrangement: Arrangement::CoolingOnly,
        });
        assert_eq!(staged.wiring.unwrap().fans, Fans::Alike(5));
    }
}

/// The place is the one that the advice on the sensor comes to.
#[test]
fn the_sensor_goes_where_the_coil_is_in_two_phases() {
    let plan = planned(Input {
        outdoor_low: celsius(-5.0),
        ..usual("R-134a")
    });
    let answer = plan.sensor_place(Method::SpeedControl).unwrap().unwrap();
    let Some(Tap::Coil(place)) = speed(&plan, Arrangement::CoolingOnly).circuit.tap else {
        unreachable!()
    };
    match place {
        CoilPlace::Usual => assert_eq!(place.share(), Some(1.0 / 3.0)),
        CoilPlace::Moved(share) => {
            let band = answer.band.unwrap();
            assert!((band.from..=band.to).contains(&share));
        }
        CoilPlace::Nowhere => assert_eq!(answer.band, None),
    }
}

#[test]
fn a_cold_room_behind_a_valve_has_a_receiver() {
    let cooler = |metering| {
        let mut input = usual("R-448A");
        input.duty = Given::entered(winterset_calc::input::Duty::Cooler);
        input.metering = Given::entered(metering);
        Arrangement::of(&planned(input))
    };
    assert_eq!(cooler(Metering::TxvBalanced), Arrangement::WithReceiver);
    assert_eq!(cooler(Metering::FixedOrifice), Arrangement::CoolingOnly);
}

//! Motor volts and speed: what a phase cut gives a fan motor, what meters show of it, and where it stalls.

use uom::si::electric_potential::volt;
use uom::si::f64::Angle;
use winterset_calc::input::{Bearing, MotorKind};
use winterset_calc::motor::{
    Friction, InductionMotor, Limits, MotorError, MotorValue, State, Turning, lowest_speed_fraction,
};
use winterset_calc::{Basis, Field, Given, SheetRule, air, phase_cut, usual};
use winterset_profile::{Amount, Measure, Problem, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found};
use crate::view::words;

/// Density of the air that nameplates are written for, kg/m³ (AMCA 201, ISO 5801).
const STANDARD_DENSITY: f64 = 1.2;

/// The nameplate follows the supply, and the readings follow the usual output.
pub fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    match question {
        Question::NameplateVolts => Some(reader.number(Question::SupplyVolts).ok()?.value),
        Question::NameplateSpeed => {
            let supply = reader.number(Question::Frequency).ok()?;
            let speed = usual::rated_speed(supply.value.frequency());
            Some(Amount::new(Measure::Speed, speed.value))
        }
        Question::MotorVolts | Question::MeterVolts => {
            let supply = reader.number(Question::SupplyVolts).ok()?;
            Some(Amount::new(Measure::Voltage, 0.6 * supply.value.si))
        }
        _ => None,
    }
}

/// Volts, angle, speed and the two voltages between which a fan turns on but does not start.
pub fn answer(reader: &Reader) -> Answers {
    let Ok(cut) = Cut::read(reader) else {
        return Answers::default();
    };
    let mut answers = Answers::default();
    let turning = Load::read(reader).and_then(|load| load.turning(reader, &cut, &mut answers));
    answers.found.splice(0..0, cut.found());
    // Without the rest the volts are told all the same.
    answers.found.extend(turning.unwrap_or_default());
    answers
}

/// The phase cut, however it was given.
struct Cut {
    supply: Given<Amount>,
    angle: Angle,
    /// r.m.s. voltage over the supply's.
    share: f64,
    basis: Basis,
}

impl Cut {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        let supply = reader.number(Question::SupplyVolts)?;
        let over_supply = |question: Question| {
            let given = reader.number(question)?;
            if given.value.si > supply.value.si {
                let said = words().worksheets().labels().above_line;
                return Err(reader.wrong(question, said.to_owned()));
            }
            Ok(Given {
                value: given.value.si / supply.value.si,
                basis: given.basis,
            })
        };
        let (angle, basis) = match reader.choice(Question::KnownAs).value {
            "true-volts" => {
                let share = over_supply(Question::MotorVolts)?;
                (phase_cut::firing_angle(share.value), share.basis)
            }
            "meter-volts" => {
                let shown = over_supply(Question::MeterVolts)?;
                (
                    phase_cut::firing_angle_by_averaging_meter(shown.value),
                    shown.basis,
                )
            }
            _ => {
                let share = reader.number(Question::OutputShare)?;
                (phase_cut::firing_angle(share.value.si), share.basis)
            }
        };
        Ok(Self {
            supply,
            angle,
            share: phase_cut::rms_fraction(angle),
            basis,
        })
    }

    fn volts(&self) -> f64 {
        self.share * self.supply.value.si
    }

    fn found(&self) -> Vec<Found> {
        let angle = |found: Found| found.with("α", Measure::Angle, self.angle.value);
        let shown = phase_cut::averaging_meter_fraction(self.angle) * self.supply.value.si;
        let all = [
            angle(
                Found::new(SheetRule::CutVoltage, Measure::Voltage, self.volts())
                    .given("U", self.supply),
            )
            .strong(),
            angle(
                Found::new(SheetRule::MeterVoltage, Measure::Voltage, shown)
                    .given("U", self.supply),
            ),
            Found::new(SheetRule::Output, Measure::Share, self.share)
                .with("u", Measure::Voltage, self.volts())
                .given("U", self.supply),
            Found::new(SheetRule::FiringAngle, Measure::Angle, self.angle.value)
                .with("u", Measure::Voltage, self.volts())
                .given("U", self.supply),
        ];
        all.into_iter()
            .map(|found| found.resting_on(self.basis))
            .collect()
    }
}

/// The motor with its fan in the air of the place.
struct Load {
    motor: InductionMotor,
    nameplate_volts: Given<Amount>,
    nameplate_speed: Given<Amount>,
    bearing: Bearing,
    density: f64,
    friction: Friction,
}

impl Load {
    fn read(reader: &Reader) -> Result<Self, Wrong> {
        let kind = MotorKind::from_key(reader.choice(Question::MotorKind).value).ok_or(Wrong)?;
        let bearing = Bearing::from_key(reader.choice(Question::Bearing).value).ok_or(Wrong)?;
        let nameplate_speed = reader.number(Question::NameplateSpeed)?;
        let frequency = reader.number(Question::Frequency)?;
        let motor = InductionMotor::from_nameplate(
            kind,
            nameplate_speed.value.speed(),
            frequency.value.frequency(),
        )
        .map_err(|problem| {
            let problem = Problem::Calc(problem);
            let said = words().problem(Field::RatedSpeed, &problem, reader.units());
            reader.wrong(Question::NameplateSpeed, said)
        })?;
        let outdoor = reader.number(Question::Outdoor)?.value.temperature();
        let elevation = reader.number(Question::Elevation)?.value.length();
        let density = air::density(air::atmosphere(elevation), outdoor).value / STANDARD_DENSITY;
        Ok(Self {
            motor,
            nameplate_volts: reader.number(Question::NameplateVolts)?,
            nameplate_speed,
            bearing,
            density,
            friction: Friction::usual(bearing, outdoor)
                .map_err(|error| said(reader, Question::Outdoor, &error))?,
        })
    }

    fn turning(
        &self,
        reader: &Reader,
        cut: &Cut,
        answers: &mut Answers,
    ) -> Result<Vec<Found>, Wrong> {
        let labels = words().worksheets().labels();
        let rated = self.nameplate_volts.value.si;
        let limits = self
            .motor
            .limits(self.density, self.friction)
            .map_err(|error| said(reader, Question::Elevation, &error))?;
        let share = cut.volts() / rated;
        let turning = self
            .motor
            .turning(State::Turning, share, self.density, self.friction)
            .map_err(|error| said(reader, question_of(&error), &error))?;
        let lowest = self.motor.rated() * lowest_speed_fraction(self.bearing);
        let speed = match turning {
            Turning::Running(speed) => {
                if speed < lowest {
                    answers.notes.push(labels.below_bearing);
                }
                if share < limits.starts {
                    answers.notes.push(labels.below_start);
                }
                Found::new(SheetRule::MotorSpeed, Measure::Speed, speed.value)
            }
            Turning::Stalled | Turning::WillNotStart => {
                Found::word(SheetRule::MotorSpeed, labels.stalls).because(labels.stalls_reason)
            }
        };
        let speed = speed
            .with("u", Measure::Voltage, cut.volts())
            .reading("U_n", self.nameplate_volts)
            .reading("n_n", self.nameplate_speed)
            .with("ρ", Measure::Density, self.density * STANDARD_DENSITY)
            .with("T_f", Measure::Share, self.friction.running())
            .resting_on(cut.basis)
            .strong();
        let bearing = Found::new(SheetRule::BearingSpeed, Measure::Speed, lowest.value)
            .with("k", Measure::Share, lowest_speed_fraction(self.bearing))
            .reading("n_n", self.nameplate_speed);
        let [stall, start] = self.limits_found(&limits);
        Ok(vec![speed, stall, start, bearing])
    }

    fn limits_found(&self, limits: &Limits) -> [Found; 2] {
        let rated = self.nameplate_volts.value.voltage().get::<volt>();
        let one = |rule, share: f64| {
            Found::new(rule, Measure::Voltage, share * rated)
                .reading("U_n", self.nameplate_volts)
                .with("ρ", Measure::Density, self.density * STANDARD_DENSITY)
        };
        [
            one(SheetRule::KeepsRunning, limits.keeps_running).with(
                "T_f",
                Measure::Share,
                self.friction.running(),
            ),
            one(SheetRule::Starts, limits.starts).with(
                "T_f",
                Measure::Share,
                self.friction.breakaway(),
            ),
        ]
    }
}

/// The answer that would have to change.
fn question_of(error: &MotorError) -> Question {
    match error {
        MotorError::OutOfRange {
            what: MotorValue::DensityRatio,
            ..
        } => Question::Elevation,
        _ => Question::NameplateVolts,
    }
}

fn said(reader: &Reader, question: Question, error: &MotorError) -> Wrong {
    let said = words().worksheets().motor_error(error, reader.units());
    reader.wrong(question, said)
}

//! The settings sheet and the other values of a plan as rows, each with its reason and working.

use uom::si::f64::{Pressure, ThermodynamicTemperature};
use winterset_calc::advice::ReversingValve;
use winterset_calc::explain::Working;
use winterset_calc::input::Sensing;
use winterset_calc::settings::Drive;
use winterset_calc::{Basis, Caution, Explained, Field, HoldLimits, Method, Plan, Quantity};
use winterset_words::{HelpWords, Units, screen};

use super::words;
use crate::components::sheet::{Line, TermLine, WorkingLines};

/// Rows that belong to one step of the work, and what can hurt at it.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What the step is.
    pub name: &'static str,
    /// Its values.
    pub lines: Vec<Line>,
    /// Its cautions, each with a title.
    pub cautions: Vec<(&'static str, &'static str)>,
}

/// Writes the values of one plan.
#[derive(Clone, Copy)]
pub struct Writer<'a> {
    plan: &'a Plan,
    units: Units,
}

impl<'a> Writer<'a> {
    /// A writer in the person's units.
    pub fn new(plan: &'a Plan, units: Units) -> Self {
        Self { plan, units }
    }

    /// The settings sheet, in the order of the work.
    pub fn settings(&self) -> Vec<Step> {
        let t = screen();
        vec![
            Step {
                name: t.step_sense,
                lines: vec![self.sensing()],
                cautions: self.cautions(match self.plan.settings.sensing.value {
                    Sensing::CoilTemperature => &[Caution::Roof, Caution::RotatingFan],
                    Sensing::LiquidPressure => {
                        &[Caution::Roof, Caution::Pressure, Caution::Flammable]
                    }
                }),
            },
            Step {
                name: t.step_points,
                lines: self.points(),
                cautions: Vec::new(),
            },
            Step {
                name: t.step_motor,
                lines: self.motor().into_iter().chain(self.heating()).collect(),
                cautions: self.cautions(match self.plan.settings.sensing.value {
                    Sensing::CoilTemperature => &[Caution::Mains, Caution::Capacitor],
                    Sensing::LiquidPressure => {
                        &[Caution::Mains, Caution::Capacitor, Caution::RotatingFan]
                    }
                }),
            },
        ]
    }

    /// What the fan is switched at, where it is cycled instead.
    pub fn on_off(&self) -> Line {
        self.switch("on-off", &self.plan.on_off_points)
    }

    /// What each switched fan is switched at, where they are staged instead; empty where one fan is alone.
    pub fn stages(&self) -> Vec<Line> {
        let points = self.plan.stage_points.iter().enumerate();
        let lines = points.map(|(at, points)| {
            let mut line = self.switch("stage", points);
            line.key = format!("stage-{}", at + 1).into();
            line.name = (screen().stage)(at + 1).into();
            line
        });
        lines.collect()
    }

    /// Where a switch goes off and on.
    fn switch(&self, key: &'static str, points: &Explained<(Pressure, Pressure)>) -> Line {
        let (off, on) = points.value;
        let mut line = self.line(key, Quantity::Pressure(off), &points.working);
        let (off, on) = (
            self.show(Quantity::Pressure(off)),
            self.show(Quantity::Pressure(on)),
        );
        line.number = format!("{} / {}", off.number, on.number).into();
        line
    }

    /// What each part of the system asks for, and the need.
    pub fn need(&self) -> Vec<Line> {
        let need = &self.plan.need;
        let parts = need.parts.iter().map(|(part, pressure)| {
            let mut line = self.line(
                part.key(),
                Quantity::Pressure(pressure.value),
                &pressure.working,
            );
            let said = words().need_part(*part);
            line.name = said.name.into();
            line.reason = said.reason.into();
            line
        });
        let mut whole = self.line(
            "need",
            Quantity::Pressure(need.pressure.value),
            &need.pressure.working,
        );
        whole.reason = (screen().need_reason)(
            &words().need_part(need.governing).name.to_lowercase(),
            &self
                .show(Quantity::Temperature(need.condensing))
                .to_string(),
        )
        .into();
        parts.chain([whole]).collect()
    }

    /// What can hurt while pressures are read.
    pub fn gauge_cautions(&self) -> Vec<(&'static str, &'static str)> {
        match self.plan.settings.sensing.value {
            Sensing::CoilTemperature => self.cautions(&[Caution::Pressure, Caution::Flammable]),
            Sensing::LiquidPressure => Vec::new(),
        }
    }

    /// Hold limit of each method.
    pub fn hold(&self) -> Vec<Line> {
        self.limits(&self.plan.hold)
    }

    /// The share of the lowest load with the hold limits there; `None` where the compressors run at full load alone.
    pub fn hold_at_lowest_load(&self) -> Option<(String, Vec<Line>)> {
        let limits = self.plan.hold_at_lowest_load.as_ref()?;
        let share = self.show(Quantity::Ratio(self.plan.input.lowest_load.value));
        Some((
            (screen().at_lowest_load)(&share.to_string()),
            self.limits(limits),
        ))
    }

    /// What part load does to the hold limit of the recommended method.
    pub fn part_load(&self) -> String {
        words().part_load(&self.plan.part_load(), self.units)
    }

    fn limits(&self, hold: &HoldLimits) -> Vec<Line> {
        Method::ALL
            .into_iter()
            .filter(|method| self.plan.applies(*method))
            .map(|method| {
                let limit = hold.of(method);
                let mut line = self.line(
                    method.key(),
                    Quantity::Temperature(limit.value),
                    &limit.working,
                );
                let said = words().method(method);
                line.name = said.name.into();
                line.reason = said.reason.into();
                line
            })
            .collect()
    }

    /// The known point that everything is scaled from.
    pub fn known_point(&self) -> Vec<Line> {
        let design = &self.plan.design;
        vec![
            self.line(
                "design-condensing",
                Quantity::Temperature(design.condensing.value),
                &design.condensing.working,
            ),
            self.line(
                "heat-rejected",
                Quantity::Power(design.heat_rejected.value),
                &design.heat_rejected.working,
            ),
            self.line(
                "airflow",
                Quantity::Airflow(design.airflow.value),
                &design.airflow.working,
            ),
            self.line(
                "air-capacity-rate",
                Quantity::Conductance(design.air_capacity_rate.value),
                &design.air_capacity_rate.working,
            ),
            self.line(
                "conductance",
                Quantity::Conductance(design.conductance.value),
                &design.conductance.working,
            ),
            self.line(
                "atmosphere",
                Quantity::Pressure(self.plan.atmosphere.value),
                &self.plan.atmosphere.working,
            ),
        ]
    }

    /// Remarks on the settings sheet.
    pub fn notes(&self) -> Vec<String> {
        let notes = &self.plan.settings.notes;
        notes
            .iter()
            .map(|note| words().note(*note, self.units))
            .collect()
    }

    /// A quantity as written in this plan.
    pub fn show(&self, quantity: Quantity) -> winterset_words::Shown {
        self.units.show(&quantity, self.plan.atmosphere.value)
    }

    fn sensing(&self) -> Line {
        let sensing = self.plan.settings.sensing;
        let said = words().sensing(sensing.value);
        Line {
            key: "sensing".into(),
            name: screen().sense.into(),
            number: said.name.into(),
            unit: "".into(),
            basis: sensing.basis,
            reason: said.reason.into(),
            help: Some(answered(Field::Sensing)),
            working: None,
        }
    }

    fn points(&self) -> Vec<Line> {
        let settings = &self.plan.settings;
        let pressure = [
            self.line(
                "full-speed-pressure",
                Quantity::Pressure(settings.full_speed_pressure.value),
                &settings.full_speed_pressure.working,
            ),
            self.line(
                "throttling-pressure",
                Quantity::PressureDifference(settings.throttling_pressure.value),
                &settings.throttling_pressure.working,
            ),
        ];
        let coil = [
            self.line(
                "full-speed-coil",
                Quantity::Temperature(settings.full_speed_coil.value),
                &settings.full_speed_coil.working,
            ),
            self.line(
                "throttling-coil",
                Quantity::Difference(settings.throttling_coil.value),
                &settings.throttling_coil.working,
            ),
        ];
        // What the controller is set in comes first.
        let (first, second) = match settings.sensing.value {
            Sensing::CoilTemperature => (coil, pressure),
            Sensing::LiquidPressure => (pressure, coil),
        };
        first.into_iter().chain(second).collect()
    }

    fn motor(&self) -> Vec<Line> {
        let drive = &self.plan.settings.drive;
        let output = drive.minimum_output();
        let speed = drive.lowest_speed();
        let mut lines = vec![
            self.line(
                "minimum-output",
                Quantity::Ratio(output.value),
                &output.working,
            ),
            self.line("lowest-speed", Quantity::Speed(speed.value), &speed.working),
        ];
        match drive {
            Drive::PhaseCut {
                minimum_voltage,
                start_boost,
                ..
            } => {
                let mut volts = self.line(
                    "minimum-voltage",
                    Quantity::Voltage(*minimum_voltage),
                    &output.working,
                );
                volts.name = screen().minimum_voltage.into();
                volts.reason = screen().minimum_voltage_reason.into();
                lines.insert(1, volts);
                lines.push(self.line(
                    "start-boost",
                    Quantity::Time(start_boost.value),
                    &start_boost.working,
                ));
            }
            Drive::Signal { volts, duty, .. } => {
                lines.insert(
                    1,
                    self.line(
                        "minimum-signal-volts",
                        Quantity::Voltage(volts.value),
                        &volts.working,
                    ),
                );
                lines.insert(
                    2,
                    self.line(
                        "minimum-signal-duty",
                        Quantity::Ratio(duty.value),
                        &duty.working,
                    ),
                );
            }
            Drive::Frequency { lowest, .. } => lines.insert(
                1,
                self.line(
                    "lowest-frequency",
                    Quantity::Frequency(lowest.value),
                    &lowest.working,
                ),
            ),
        }
        lines
    }

    /// What the fan of a heat pump does in heating.
    fn heating(&self) -> Option<Line> {
        let reversing = self.plan.input.reversing_valve;
        let said = words().heating(ReversingValve::of(reversing.value)?);
        Some(Line {
            key: "in-heating".into(),
            name: screen().in_heating.into(),
            number: said.name.into(),
            unit: "".into(),
            basis: reversing.basis,
            reason: said.reason.into(),
            help: Some(answered(Field::ReversingValve)),
            working: None,
        })
    }

    fn cautions(&self, wanted: &[Caution]) -> Vec<(&'static str, &'static str)> {
        let here = wanted
            .iter()
            .filter(|caution| self.plan.cautions.contains(caution));
        here.map(|caution| words().caution(*caution))
            .map(|said| (said.title, said.text))
            .collect()
    }

    fn line(&self, key: &'static str, quantity: Quantity, working: &Working) -> Line {
        let said = words().rule(working.rule);
        let shown = match quantity {
            Quantity::Pressure(air) if key == "atmosphere" => self.units.air(air),
            quantity => self.show(quantity),
        };
        Line {
            key: key.into(),
            name: said.name.into(),
            number: shown.number.into(),
            unit: shown.unit.into(),
            basis: Basis::Computed,
            reason: said.reason.into(),
            help: Some(words().help_on(working.rule)),
            working: Some(self.working(working)),
        }
    }

    fn working(&self, working: &Working) -> WorkingLines {
        WorkingLines {
            equation: working.rule.equation().into(),
            terms: working
                .terms
                .iter()
                .map(|term| TermLine {
                    symbol: term.symbol.into(),
                    value: self.show(term.quantity).to_string().into(),
                    basis: term.basis,
                    from: words().basis(term.basis).into(),
                })
                .collect(),
            source: words().source(working.rule).into(),
        }
    }

    /// A temperature as written in a sentence.
    pub fn brief(&self, temperature: ThermodynamicTemperature) -> String {
        self.units
            .brief(
                &Quantity::Temperature(temperature),
                self.plan.atmosphere.value,
            )
            .to_string()
    }
}

/// What stands in a sheet as it was answered.
fn answered(field: Field) -> HelpWords {
    let found = words().find(field);
    HelpWords {
        what: words().field(field).help,
        measure: found.find,
        typical: found.typical,
    }
}

//! The wiring: the wires of the supply from top to bottom through every part, and beside them the signals.

use winterset_calc::fitting::{Fans, Part, Wiring};

use super::drawing::{Drawing, LINE, Line, Point, Tag, WIDTH, broken};

/// Where the names start.
pub const NAMES: f64 = 132.0;

/// The middle of what stands on the wires.
const MIDDLE: f64 = 60.0;

/// The outer wires.
const WIRES: (f64, f64) = (40.0, 80.0);

/// Half the width of a box.
const HALF: f64 = 30.0;

/// The innermost place of a signal wire that runs down, and how far the next one lies outside it.
const INNERMOST: f64 = 22.0;
const ASIDE: f64 = 6.0;

/// Least height of a part's row.
const ROW: f64 = 48.0;

/// The sketch of a wiring.
pub fn wiring(wiring: &Wiring, name: impl Fn(Part, Fans) -> String) -> Drawing {
    let mut sketch = Sketch {
        drawing: Drawing::default(),
        tags: Vec::new(),
        name,
        wiring,
        y: 0.0,
        wires: 12.0,
    };
    let (mut hub, mut switched) = (0.0, 0.0);
    for part in &wiring.line {
        let y = sketch.row(*part);
        sketch.on_line(*part, y);
        if *part == wiring.hub {
            hub = y;
        }
        if *part == Part::SwitchedMotors {
            switched = y;
        }
    }
    if wiring.has_capacitor {
        sketch.capacitor();
    }
    if wiring.hub_is_beside() {
        let motor = sketch.y;
        hub = sketch.row(wiring.hub);
        sketch.beside(motor, hub);
    }
    let count = wiring.signals.len();
    for (index, part) in wiring.signals.iter().enumerate() {
        let y = sketch.row(*part);
        sketch.signal(*part, (index, count), (hub, y));
    }
    for (index, part) in wiring.switches.iter().enumerate() {
        let y = sketch.row(*part);
        sketch.switch((index, count), (switched, y), *part);
    }
    let bottom = sketch.y + ROW / 2.0;
    let Sketch {
        mut drawing, tags, ..
    } = sketch;
    drawing.name(tags, NAMES, bottom);
    drawing
}

struct Sketch<'a, F> {
    drawing: Drawing,
    tags: Vec<Tag>,
    name: F,
    wiring: &'a Wiring,
    /// The middle of the last row.
    y: f64,
    /// How far down the wires of the supply are drawn.
    wires: f64,
}

impl<F: Fn(Part, Fans) -> String> Sketch<'_, F> {
    /// A row for a part under the last one, as tall as its name needs; its middle.
    fn row(&mut self, part: Part) -> f64 {
        let name = (self.name)(part, self.wiring.fans);
        let height = LINE * broken(&name, WIDTH - NAMES).len() as f64 + 12.0;
        let tall = ROW.max(height) / 2.0;
        let y = if self.y == 0.0 {
            16.0_f64.max(height / 2.0)
        } else {
            self.y + ROW / 2.0 + tall
        };
        self.tags.push(Tag {
            // Level with its part, so that nothing has to lead to it.
            at: (NAMES, y),
            name,
        });
        self.y = y;
        y
    }

    fn xs(&self) -> &'static [f64] {
        if self.wiring.wires == 3 {
            &[40.0, 60.0, 80.0]
        } else {
            &[40.0, 80.0]
        }
    }

    /// Draws the wires of the supply down to here.
    fn down_to(&mut self, y: f64) {
        for x in self.xs() {
            self.drawing
                .lines(Line::Solid, &[(*x, self.wires), (*x, y)]);
        }
        self.wires = y;
    }

    fn on_line(&mut self, part: Part, y: f64) {
        match part {
            Part::Supply => {
                for x in self.xs() {
                    self.drawing.circle((*x, y), 3.0);
                }
                self.wires = y + 3.0;
            }
            Part::Disconnect => self.contacts(y, true),
            Part::Contactor | Part::FanContactor => self.contacts(y, false),
            Part::SpeedController => {
                self.boxed(y);
                self.drawing.path(
                    Line::Solid,
                    format!("M40 {y:.1}h8v-9q5 0 9 9h12v9q5 0 9 -9h4"),
                );
            }
            Part::FrequencyDrive => {
                self.boxed(y);
                self.drawing.lines(
                    Line::Solid,
                    &[(MIDDLE - HALF, y + 18.0), (MIDDLE + HALF, y - 18.0)],
                );
            }
            Part::FirstMotor => self.rung(y),
            Part::SwitchedMotors => self.switched(y),
            _ => self.motor(y),
        }
    }

    /// A break in each wire, all moved together; a disconnect has a bar at its fixed end.
    fn contacts(&mut self, y: f64, is_disconnect: bool) {
        self.down_to(y - 10.0);
        self.wires = y + 10.0;
        for x in self.xs() {
            self.drawing
                .lines(Line::Solid, &[(*x, y + 10.0), (x - 9.0, y - 9.0)]);
            if is_disconnect {
                self.drawing
                    .lines(Line::Solid, &[(x - 4.0, y - 10.0), (x + 4.0, y - 10.0)]);
            }
        }
        self.drawing
            .lines(Line::Dashed, &[(WIRES.0 - 4.5, y), (WIRES.1 - 4.5, y)]);
    }

    fn boxed(&mut self, y: f64) {
        self.down_to(y - 18.0);
        self.drawing.boxed((MIDDLE, y), (HALF, 18.0));
        self.wires = y + 18.0;
    }

    /// A motor between two wires, or beside three, which all go on.
    fn rung(&mut self, y: f64) {
        if self.wiring.wires == 3 {
            let at = (112.0, y);
            self.drawing.circle(at, 13.0);
            for (x, aside) in self.xs().iter().zip([-7.0, 0.0, 7.0]) {
                self.drawing.dot((*x, y + aside));
                let end = at.0 - 13.0 + f64::abs(aside) * 0.3;
                self.drawing
                    .lines(Line::Solid, &[(*x, y + aside), (end, y + aside)]);
            }
            self.drawing.letter(at, "M");
        } else {
            self.drawing.circle((MIDDLE, y), 13.0);
            for (x, end) in [(WIRES.0, MIDDLE - 13.0), (WIRES.1, MIDDLE + 13.0)] {
                self.drawing.dot((x, y));
                self.drawing.lines(Line::Solid, &[(x, y), (end, y)]);
            }
            self.drawing.letter((MIDDLE, y), "M");
        }
    }

    /// Motors as on a rung, behind contacts of their own.
    fn switched(&mut self, y: f64) {
        let (radius, blade) = (10.0, 8.0);
        let motor = if self.wiring.wires == 3 {
            (114.0, y)
        } else {
            (66.0, y)
        };
        let ends: &[(f64, f64)] = if self.wiring.wires == 3 {
            &[(40.0, -7.0), (60.0, 0.0), (80.0, 7.0)]
        } else {
            &[(WIRES.0, 0.0)]
        };
        // The contacts stand in one line, whichever wire they belong to.
        let at = motor.0 - radius - blade - 2.0;
        self.drawing.circle(motor, radius);
        for (x, aside) in ends {
            let y = y + aside;
            let end = motor.0 - radius + f64::abs(*aside) * 0.3;
            self.drawing.dot((*x, y));
            self.drawing.lines(Line::Solid, &[(*x, y), (at, y)]);
            self.drawing
                .lines(Line::Solid, &[(at, y - 5.0), (at + blade, y), (end, y)]);
        }
        if self.wiring.wires == 2 {
            let far = motor.0 + radius;
            self.drawing.lines(Line::Solid, &[(far, y), (WIRES.1, y)]);
            self.drawing.dot((WIRES.1, y));
        }
        self.drawing.letter(motor, "M");
    }

    /// What closes the contacts of the switched motors. Its wire lies outside those of all signals, and ends above them.
    fn switch(&mut self, (index, signals): (usize, usize), (motors, y): (f64, f64), part: Part) {
        let x = INNERMOST - ASIDE * signals as f64;
        let left = self.device(part, y);
        let contacts = if self.wiring.wires == 3 { 98.0 } else { 50.0 };
        let end = (contacts, motors - 13.0);
        self.drawing
            .lines(Line::Dashed, &[end, (x, end.1), (x, y), (left, y)]);
        if index == 0 {
            self.drawing
                .lines(Line::Dashed, &[end, (contacts, motors - 2.5)]);
        } else {
            self.drawing.dot((x, y - ROW));
        }
    }

    /// The motor that the wires end at.
    fn motor(&mut self, y: f64) {
        if self.wiring.hub_is_beside() {
            // Its electronics stand round it.
            self.boxed(y);
            self.drawing.circle((MIDDLE, y), 14.0);
        } else if self.wiring.wires == 3 {
            self.down_to(y - 22.0);
            for (x, end) in [
                (40.0, (MIDDLE - 12.0, y - 13.0)),
                (60.0, (MIDDLE, y - 18.0)),
                (80.0, (MIDDLE + 12.0, y - 13.0)),
            ] {
                self.drawing.lines(Line::Solid, &[(x, y - 22.0), end]);
            }
            self.drawing.circle((MIDDLE, y), 18.0);
        } else {
            self.down_to(y);
            for (x, end) in [(WIRES.0, MIDDLE - 18.0), (WIRES.1, MIDDLE + 18.0)] {
                self.drawing.lines(Line::Solid, &[(x, y), (end, y)]);
            }
            self.drawing.circle((MIDDLE, y), 18.0);
        }
        self.drawing.letter((MIDDLE, y), "M");
    }

    /// The run capacitor, on the motor's own windings.
    fn capacitor(&mut self) {
        let motor = self.y;
        let y = self.row(Part::Capacitor);
        for (side, plate) in [(-12.0, -4.0), (12.0, 4.0)] {
            self.drawing.lines(
                Line::Solid,
                &[
                    (MIDDLE + side, motor + 13.5),
                    (MIDDLE + side, y),
                    (MIDDLE + plate, y),
                ],
            );
            self.drawing.lines(
                Line::Solid,
                &[(MIDDLE + plate, y - 10.0), (MIDDLE + plate, y + 10.0)],
            );
        }
    }

    /// A controller beside the line, which gives the motor a signal.
    fn beside(&mut self, motor: f64, y: f64) {
        self.drawing.boxed((MIDDLE, y), (HALF, 18.0));
        self.drawing
            .lines(Line::Solid, &[(44.0, y + 9.0), (76.0, y - 9.0)]);
        let left = MIDDLE - HALF;
        self.drawing.lines(
            Line::Dashed,
            &[
                (left, motor),
                (INNERMOST, motor),
                (INNERMOST, y - 8.0),
                (left, y - 8.0),
            ],
        );
    }

    /// What steers the hub, with its wire. Wires lie inside one another and do not cross: the further down, the further out and the higher up.
    fn signal(&mut self, part: Part, (index, count): (usize, usize), (hub, y): (f64, f64)) {
        let turn = index as f64;
        let joins = self.wiring.hub == Part::FanContactor;
        let (x, end) = if joins {
            (INNERMOST - ASIDE, (WIRES.0 - 4.5, hub))
        } else {
            let spread = if self.wiring.hub_is_beside() {
                10.0
            } else {
                6.0
            };
            let step = if count > 1 { 8.0 } else { 0.0 };
            (
                INNERMOST - ASIDE * turn,
                (MIDDLE - HALF, hub + spread - step * turn),
            )
        };
        let left = self.device(part, y);
        self.drawing
            .lines(Line::Dashed, &[end, (x, end.1), (x, y), (left, y)]);
        if joins && index > 0 {
            self.drawing.dot((x, y - ROW));
        }
    }

    /// The sign of a part that steers; its left end.
    fn device(&mut self, part: Part, y: f64) -> f64 {
        let at: Point = (MIDDLE, y);
        match part {
            Part::CoilSensor | Part::SecondCoilSensor => {
                self.drawing.boxed(at, (16.0, 7.0));
                self.drawing.lines(
                    Line::Solid,
                    &[
                        (MIDDLE - 18.0, y + 13.0),
                        (MIDDLE - 12.0, y + 13.0),
                        (MIDDLE + 16.0, y - 13.0),
                    ],
                );
                MIDDLE - 16.0
            }
            Part::PressureSensor | Part::SecondPressureSensor => {
                self.drawing.circle(at, 13.0);
                self.drawing.letter((MIDDLE, y - 1.0), "p");
                MIDDLE - 13.0
            }
            Part::PressureSwitch | Part::SecondPressureSwitch => {
                self.drawing.circle((MIDDLE + 17.0, y), 11.0);
                self.drawing.letter((MIDDLE + 17.0, y - 1.0), "p");
                self.drawing
                    .lines(Line::Solid, &[(MIDDLE - 14.0, y), (MIDDLE + 4.0, y - 9.0)]);
                self.drawing
                    .lines(Line::Solid, &[(MIDDLE + 1.0, y), (MIDDLE + 6.0, y)]);
                MIDDLE - 14.0
            }
            Part::ReversingValve => {
                self.drawing.boxed(at, (15.0, 10.0));
                self.drawing.lines(
                    Line::Solid,
                    &[(MIDDLE - 5.0, y + 10.0), (MIDDLE + 5.0, y - 10.0)],
                );
                MIDDLE - 15.0
            }
            _ => {
                self.drawing
                    .lines(Line::Solid, &[(MIDDLE - 14.0, y), (MIDDLE + 8.0, y - 10.0)]);
                self.drawing
                    .lines(Line::Solid, &[(MIDDLE + 6.0, y), (MIDDLE + 16.0, y)]);
                MIDDLE - 14.0
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::drawing::tests::hold;
    use super::*;
    use winterset_calc::fitting::{Arrangement, Choice};
    use winterset_calc::input::{MotorKind, Reversing, Sensing};
    use winterset_calc::{Given, Method, plan};
    use winterset_profile::System;
    use winterset_words::Language;

    fn parts(wired: &Wiring) -> usize {
        wired.line.len()
            + wired.signals.len()
            + wired.switches.len()
            + usize::from(wired.has_capacitor)
            + usize::from(wired.hub_is_beside())
    }

    #[test]
    fn names_of_every_wiring_keep_clear() {
        let text = include_str!("../../../../tests/systems/flower-cooler.json");
        let mut input = System::from_json(text).unwrap().read().unwrap();
        let mut drawn = 0;
        for (motor, sensing, slowed) in MotorKind::ALL.iter().flat_map(|motor| {
            let every = Sensing::ALL.iter();
            every.flat_map(move |sensing| [4, 3, 2].map(|slowed| (*motor, *sensing, slowed)))
        }) {
            input.modulated_fans = Some(slowed);
            input.motor = Given::entered(motor);
            input.sensing = Given::entered(sensing);
            input.fans = Given::entered(4);
            input.reversing_valve = Given::entered(Reversing::InCooling);
            let plan = plan(&input).unwrap();
            for method in Method::ALL {
                for arrangement in Arrangement::ALL {
                    let fitting = plan.fitting(Choice {
                        method,
                        arrangement,
                    });
                    let Some(wired) = fitting.wiring else {
                        continue;
                    };
                    for language in Language::ALL {
                        language.speak();
                        let drawing = wiring(&wired, |part, fans| {
                            crate::view::words().fitting().part(part, fans)
                        });
                        hold(&drawing, NAMES);
                        assert_eq!(drawing.labels.len(), parts(&wired));
                    }
                    drawn += 1;
                }
            }
        }
        assert!(drawn > 300);
    }
}

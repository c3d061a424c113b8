//! The refrigerant's side: the coil with its fan, where it is sensed, and what stands behind it.

use std::fmt::Write;

use winterset_calc::fitting::{Circuit, Item, Part, Tap};

use super::drawing::{Drawing, Line, Point, Tag};

/// Where the names start.
pub const NAMES: f64 = 186.0;

/// The pipe that hot gas comes in by.
const GAS: f64 = 28.0;

/// Left and right ends of the coil's straight tubes.
const COIL: (f64, f64) = (46.0, 130.0);

/// The pipe at the coil's outlet, and the one that goes on down from it.
const OUTLET: f64 = 160.0;
const DOWN: f64 = 88.0;

/// Straight tubes of a coil. With nine, a return bend on the right lies at a third of the circuit from the gas inlet.
const TUBES: usize = 9;

/// The sketch of a circuit with its fans.
pub fn circuit(circuit: &Circuit, fans: u32, name: impl Fn(Item) -> String) -> Drawing {
    let items = circuit.items(fans);
    let mut sketch = Sketch {
        drawing: Drawing::default(),
        tags: Vec::new(),
        name,
    };
    let pitch = if circuit.has_second { 13.0 } else { 17.0 };
    let mut top = 22.0;
    sketch.tag((GAS, 12.0), Item::HotGas);
    if circuit.has_reversing_valve {
        sketch.reversing_valve(42.0);
        top += 28.0;
    }
    let fan = top + 28.0;
    sketch.fan((COIL.0 + 44.0, fan), circuit.fans(fans));
    let coil = fan + if circuit.has_baffle { 58.0 } else { 40.0 };
    sketch.gas(coil);
    if circuit.has_baffle {
        sketch.baffle(coil, coil + pitch * 8.0);
    }
    let sensor = |wanted: fn(Part) -> bool| {
        items.iter().find_map(|item| match item {
            Item::Sensor(part) if wanted(*part) => Some(*part),
            _ => None,
        })
    };
    let is_second = |part| {
        matches!(
            part,
            Part::SecondCoilSensor | Part::SecondPressureSensor | Part::SecondPressureSwitch
        )
    };
    let first = sensor(|part| {
        matches!(
            part,
            Part::CoilSensor | Part::PressureSensor | Part::PressureSwitch
        )
    });
    let mut down = sketch.coil(GAS, coil, pitch, Item::Coil, circuit.tap, first);
    if circuit.has_flooding_valve {
        down = sketch.flooding_valve(coil, down);
    }
    if circuit.has_receiver {
        down = sketch.receiver(down);
    }
    let mut bottom = sketch.liquid(down);
    if circuit.has_second {
        let second = items.iter().find_map(|item| match item {
            Item::Sensor(part) if is_second(*part) => Some(*part),
            _ => None,
        });
        let coil = bottom + 34.0;
        sketch.arrow((GAS, coil), (1.0, 0.0));
        let down = sketch.coil(4.0, coil, pitch, Item::SecondCoil, circuit.tap, second);
        bottom = sketch.liquid(down);
    }
    let Sketch {
        mut drawing, tags, ..
    } = sketch;
    drawing.name(tags, NAMES, bottom + 6.0);
    drawing
}

struct Sketch<F> {
    drawing: Drawing,
    tags: Vec<Tag>,
    name: F,
}

impl<F: Fn(Item) -> String> Sketch<F> {
    fn tag(&mut self, at: Point, item: Item) {
        let name = (self.name)(item);
        self.tags.push(Tag { at, name });
    }

    fn arrow(&mut self, (x, y): Point, (dx, dy): (f64, f64)) {
        let (back, side) = (7.0, 4.0);
        self.drawing.lines(
            Line::Solid,
            &[
                (x - back * dx - side * dy, y - back * dy - side * dx),
                (x, y),
                (x - back * dx + side * dy, y - back * dy + side * dx),
            ],
        );
    }

    /// The pipe from the compressor down to the coil.
    fn gas(&mut self, coil: f64) {
        self.drawing.lines(Line::Solid, &[(GAS, 4.0), (GAS, coil)]);
        self.arrow((GAS, 22.0), (0.0, 1.0));
    }

    fn reversing_valve(&mut self, y: f64) {
        self.drawing.boxed((GAS, y), (11.0, 11.0));
        self.drawing
            .path(Line::Solid, format!("M{:.1} {y:.1}q11 -9 22 0", GAS - 11.0));
        self.tag((GAS + 11.0, y), Item::ReversingValve);
    }

    fn fan(&mut self, (x, y): Point, fans: Item) {
        self.drawing.circle((x, y), 21.0);
        self.drawing.path(
            Line::Solid,
            format!(
                "M{x:.1} {y:.1}q-9 -6 -4 -16q10 4 4 16q9 6 4 16q-10 -4 -4 -16M{x:.1} {y:.1}q6 -9 16 -4q-4 10 -16 4q-6 9 -16 4q4 -10 16 -4"
            ),
        );
        self.tag((x + 21.0, y), fans);
    }

    fn baffle(&mut self, coil: f64, end: f64) {
        let top = coil - 18.0;
        for x in [6.0, 12.0] {
            self.drawing.lines(Line::Solid, &[(x, top), (x, end + 8.0)]);
        }
        self.tag((12.0, top), Item::Baffle);
    }

    /// A coil with its outlet and what senses it. Where it goes on down from there.
    fn coil(
        &mut self,
        from: f64,
        top: f64,
        pitch: f64,
        item: Item,
        tap: Option<Tap>,
        sensor: Option<Part>,
    ) -> f64 {
        let (left, right) = COIL;
        let bend = pitch / 2.0;
        let mut path = format!("M{from:.1} {top:.1}H{right:.1}");
        for tube in 1..TUBES {
            // Writing to a string does not fail.
            let _ = if tube % 2 == 1 {
                write!(path, "a{bend:.1} {bend:.1} 0 0 1 0 {pitch:.1}H{left:.1}")
            } else {
                write!(path, "a{bend:.1} {bend:.1} 0 0 0 0 {pitch:.1}H{right:.1}")
            };
        }
        let end = top + pitch * (TUBES - 1) as f64;
        let (turn, down) = (end + 32.0, end + 48.0);
        let _ = write!(path, "H{OUTLET:.1}V{turn:.1}H{DOWN:.1}V{down:.1}");
        self.drawing.path(Line::Solid, path);
        self.tag((right, top), item);
        let Some(part) = sensor else { return down };
        let share = match tap {
            Some(Tap::Coil(place)) => place.share(),
            _ => None,
        };
        let at = match share {
            Some(share) => {
                let at = (right + bend, top + pitch * bend_at(share));
                self.drawing.boxed(at, (5.0, 6.0));
                (at.0 + 5.0, at.1)
            }
            None => {
                let at = (OUTLET + 11.0, end + 16.0);
                self.drawing
                    .lines(Line::Solid, &[(OUTLET, at.1), (OUTLET + 3.0, at.1)]);
                self.drawing.circle(at, 8.0);
                self.drawing.letter((at.0, at.1 - 1.0), "p");
                (at.0 + 5.0, at.1)
            }
        };
        self.tag(at, Item::Sensor(part));
        down
    }

    /// The valve between coil, hot gas and what follows.
    fn flooding_valve(&mut self, coil: f64, down: f64) -> f64 {
        let y = down + 10.0;
        let gas = coil - 12.0;
        self.drawing.path(
            Line::Solid,
            format!("M{:.1} {:.1}h20l-20 20h20z", DOWN - 10.0, y - 10.0),
        );
        self.drawing.dot((GAS, gas));
        self.drawing.lines(
            Line::Solid,
            &[(GAS, gas), (12.0, gas), (12.0, y), (DOWN, y)],
        );
        self.arrow((DOWN - 6.0, y), (1.0, 0.0));
        self.tag((DOWN + 8.0, y), Item::FloodingValve);
        self.drawing
            .lines(Line::Solid, &[(DOWN, y + 10.0), (DOWN, y + 24.0)]);
        y + 24.0
    }

    fn receiver(&mut self, down: f64) -> f64 {
        let y = down + 20.0;
        self.drawing.path(
            Line::Solid,
            format!(
                "M{:.1} {:.1}h44a20 20 0 0 1 0 40h-44a20 20 0 0 1 0 -40z",
                DOWN - 22.0,
                y - 20.0
            ),
        );
        self.drawing.lines(
            Line::Solid,
            &[(DOWN - 40.0, y + 4.0), (DOWN + 40.0, y + 4.0)],
        );
        self.tag((DOWN + 42.0, y), Item::Receiver);
        y + 20.0
    }

    fn liquid(&mut self, down: f64) -> f64 {
        let end = down + 30.0;
        self.drawing
            .lines(Line::Solid, &[(DOWN, down), (DOWN, end)]);
        self.arrow((DOWN, end), (0.0, 1.0));
        self.tag((DOWN + 2.0, end - 12.0), Item::Liquid);
        end
    }
}

/// The return bend on the right that is nearest to a share of the circuit, in tubes from the top.
fn bend_at(share: f64) -> f64 {
    let away = |tube: &f64| ((tube + 0.5) / TUBES as f64 - share).abs();
    [0.5, 2.5, 4.5, 6.5]
        .into_iter()
        .min_by(|a, b| away(a).total_cmp(&away(b)))
        .unwrap_or(2.5)
}

#[cfg(test)]
mod tests {
    use super::super::drawing::tests::hold;
    use super::*;
    use winterset_calc::fitting::CoilPlace;
    use winterset_words::Language;

    fn every() -> impl Iterator<Item = Circuit> {
        let taps = [
            None,
            Some(Tap::Coil(CoilPlace::Usual)),
            Some(Tap::Coil(CoilPlace::Moved(0.8))),
            Some(Tap::Coil(CoilPlace::Nowhere)),
            Some(Tap::LiquidLine),
            Some(Tap::Switches(3)),
        ];
        taps.into_iter().flat_map(|tap| {
            (0..32).map(move |bits: u32| {
                let has = |bit: u32| bits & (1 << bit) != 0;
                Circuit {
                    tap,
                    has_second: has(0),
                    has_receiver: has(1),
                    has_flooding_valve: has(2),
                    has_reversing_valve: has(3),
                    has_baffle: has(4),
                }
            })
        })
    }

    #[test]
    fn names_of_every_arrangement_keep_clear() {
        for (language, one) in Language::ALL
            .into_iter()
            .flat_map(|language| every().map(move |one| (language, one)))
        {
            language.speak();
            let drawing = circuit(&one, 4, |item| crate::view::words().fitting().item(item));
            hold(&drawing, NAMES);
            assert_eq!(drawing.labels.len(), one.items(4).len(), "{one:?}");
        }
    }

    #[test]
    fn the_usual_place_is_a_bend_two_thirds_of_the_way_up() {
        assert_eq!(bend_at(1.0 / 3.0), 2.5);
        assert_eq!(bend_at(0.9), 6.5);
    }
}

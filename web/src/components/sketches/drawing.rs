//! A drawing: strokes, and names in a column beside them.

use std::fmt::Write;

/// Width of every drawing; it is that of a small phone's screen less its margins, so that letters keep their size there.
pub const WIDTH: f64 = 328.0;

/// Height of a line of letters.
pub const LINE: f64 = 18.0;

/// The widest that a letter is taken to be on average.
const LETTER: f64 = 8.4;

/// Least room between two names.
const GAP: f64 = 6.0;

/// A point, from the top left.
pub type Point = (f64, f64);

/// What a line stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// A pipe, a wire, the outline of a thing.
    Solid,
    /// A signal.
    Dashed,
    /// From a thing to its name.
    Dotted,
}

/// One stroke of the pen.
#[derive(Clone, Debug, PartialEq)]
pub enum Stroke {
    /// A path, as SVG takes it.
    Path {
        /// The path.
        path: String,
        /// What it stands for.
        line: Line,
    },
    /// A circle.
    Circle {
        /// Its middle.
        at: Point,
        /// Its radius.
        radius: f64,
    },
    /// A joint of two lines.
    Dot {
        /// Its middle.
        at: Point,
    },
    /// A letter inside a thing.
    Letter {
        /// Its middle.
        at: Point,
        /// The letter.
        letter: &'static str,
    },
}

/// A name, broken into lines.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// Left end of the first line's base.
    pub at: Point,
    /// The lines.
    pub lines: Vec<String>,
}

impl Label {
    /// Left, top, right and bottom of the room that it takes.
    pub fn room(&self) -> [f64; 4] {
        let widest = self
            .lines
            .iter()
            .map(|line| width(line))
            .fold(0.0, f64::max);
        let (x, y) = self.at;
        let top = y - 13.0;
        [x, top, x + widest, top + LINE * self.lines.len() as f64]
    }
}

/// A thing that is named.
#[derive(Clone, Debug, PartialEq)]
pub struct Tag {
    /// Where the thing is, at the side of the names.
    pub at: Point,
    /// Its name.
    pub name: String,
}

/// A drawing.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Drawing {
    /// Its height; the width is that of every drawing.
    pub height: f64,
    /// Its strokes.
    pub strokes: Vec<Stroke>,
    /// Its names.
    pub labels: Vec<Label>,
}

impl Drawing {
    /// Width of every drawing.
    pub fn width(&self) -> f64 {
        WIDTH
    }

    /// Draws a path.
    pub fn path(&mut self, line: Line, path: impl Into<String>) {
        self.strokes.push(Stroke::Path {
            path: path.into(),
            line,
        });
    }

    /// Draws straight lines from point to point.
    pub fn lines(&mut self, line: Line, points: &[Point]) {
        let mut path = String::new();
        for (index, (x, y)) in points.iter().enumerate() {
            let step = if index == 0 { 'M' } else { 'L' };
            // Writing to a string does not fail.
            let _ = write!(path, "{step}{x:.1} {y:.1}");
        }
        self.path(line, path);
    }

    /// Draws a closed box by its middle and half its size.
    pub fn boxed(&mut self, (x, y): Point, (half_width, half_height): (f64, f64)) {
        self.path(
            Line::Solid,
            format!(
                "M{:.1} {:.1}h{:.1}v{:.1}h{:.1}z",
                x - half_width,
                y - half_height,
                2.0 * half_width,
                2.0 * half_height,
                -2.0 * half_width
            ),
        );
    }

    /// Draws a circle.
    pub fn circle(&mut self, at: Point, radius: f64) {
        self.strokes.push(Stroke::Circle { at, radius });
    }

    /// Draws a joint.
    pub fn dot(&mut self, at: Point) {
        self.strokes.push(Stroke::Dot { at });
    }

    /// Writes a letter inside a thing.
    pub fn letter(&mut self, at: Point, letter: &'static str) {
        self.strokes.push(Stroke::Letter { at, letter });
    }

    /// Names things in a column that starts at `left`, each as level with its thing as the names above leave room for, and makes the drawing
    /// tall enough for them and for `bottom`.
    pub fn name(&mut self, mut tags: Vec<Tag>, left: f64, bottom: f64) {
        tags.sort_by(|a, b| a.at.1.total_cmp(&b.at.1));
        let mut free = GAP / 2.0;
        for Tag { at, name } in tags {
            let lines = broken(&name, WIDTH - left);
            let height = LINE * lines.len() as f64;
            let top = (at.1 - height / 2.0).max(free);
            free = top + height + GAP;
            let middle = top + height / 2.0;
            if left - at.0 > 12.0 {
                self.lines(Line::Dotted, &[(at.0 + 3.0, at.1), (left - 6.0, middle)]);
            }
            self.labels.push(Label {
                at: (left, top + 13.0),
                lines,
            });
        }
        self.height = bottom.max(free);
    }
}

/// How wide a text is at most.
pub fn width(text: &str) -> f64 {
    LETTER * text.chars().count() as f64
}

/// A name broken between words into lines that are no wider than this; a single word that is wider stands alone.
pub fn broken(name: &str, widest: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in name.split(' ') {
        match lines.last_mut() {
            Some(line) if width(line) + width(" ") + width(word) <= widest => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

#[cfg(test)]
pub mod tests {
    use super::*;

    #[test]
    fn names_break_between_words() {
        assert_eq!(broken("hot gas from the compressor", 140.0).len(), 2);
        assert_eq!(broken("receiver", 20.0), ["receiver"]);
    }

    #[test]
    fn names_keep_clear_of_each_other() {
        let tag = |y: f64| Tag {
            at: (100.0, y),
            name: "head-pressure valve".to_owned(),
        };
        let mut drawing = Drawing::default();
        drawing.name(vec![tag(30.0), tag(20.0), tag(31.0)], 186.0, 10.0);
        hold(&drawing, 186.0);
    }

    /// Holds that every name lies inside the drawing, clear of the others, and that nothing but what leads to names reaches into their column.
    pub fn hold(drawing: &Drawing, column: f64) {
        let rooms: Vec<_> = drawing.labels.iter().map(Label::room).collect();
        for (index, a) in rooms.iter().enumerate() {
            assert!(a[0] >= column && a[1] >= 0.0, "{:?}", drawing.labels[index]);
            assert!(
                a[2] <= WIDTH && a[3] <= drawing.height,
                "{:?} leaves the drawing",
                drawing.labels[index]
            );
            for b in &rooms[index + 1..] {
                let apart = a[3] <= b[1] || b[3] <= a[1];
                assert!(apart, "{:?} over another name", drawing.labels[index]);
            }
        }
        for stroke in &drawing.strokes {
            let right = match stroke {
                Stroke::Circle { at, radius } => at.0 + radius,
                Stroke::Dot { at } | Stroke::Letter { at, .. } => at.0,
                Stroke::Path {
                    line: Line::Dotted, ..
                } => column - 6.0,
                // The first point of a path, and of each further piece.
                Stroke::Path { path, .. } => path
                    .split('M')
                    .filter_map(|piece| piece.split(' ').next()?.parse().ok())
                    .fold(0.0, f64::max),
            };
            assert!(right < column, "{stroke:?} reaches into the names");
        }
    }
}

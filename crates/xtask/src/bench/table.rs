//! The table, in a form that reads as well in a terminal as in a document.

use super::Row;

const NOTES: &str = "\
Microseconds a call. T temperature, p absolute pressure, x quality, ρ density, h enthalpy, s entropy; a state is T, p, ρ, h, s, both heat
capacities and the speed of sound. CoolProp: an update of its low-level state object, which at saturation finds p and both densities, then reading what
the call returns, less what Python takes to cross over. * refuses some of the values; those are not timed.";

/// Prints a row a case.
pub fn print(rows: &[Row], peer: Option<&str>) {
    let peer = peer.unwrap_or("CoolProp");
    let head = [
        "refrigerant",
        "call",
        "native",
        "wasm",
        "wasm/native",
        peer,
        &format!("{peer}/native"),
    ]
    .map(str::to_owned);
    let mut lines = vec![head];
    lines.extend(rows.iter().map(cells));
    println!("{}\n{NOTES}", aligned(&lines));
}

fn cells(row: &Row) -> [String; 7] {
    let or_dash = |text: Option<String>| text.unwrap_or_else(|| "-".to_owned());
    let ratio = |value: f64| short(value / row.native);
    [
        row.subject.clone(),
        row.call.clone(),
        short(row.native),
        or_dash(row.wasm.map(short)),
        or_dash(row.wasm.map(ratio)),
        or_dash(row.peer.map(|time| {
            let mark = if time.whole { "" } else { "*" };
            short(time.microseconds) + mark
        })),
        or_dash(row.peer.map(|time| ratio(time.microseconds))),
    ]
}

/// A number to two or three digits.
fn short(value: f64) -> String {
    let decimals = match value {
        _ if value < 1.0 => 3,
        _ if value < 10.0 => 2,
        _ if value < 100.0 => 1,
        _ => 0,
    };
    format!("{value:.decimals$}")
}

/// Texts to the left, numbers to the right.
fn aligned(lines: &[[String; 7]]) -> String {
    let width = |column: usize| {
        let widths = lines.iter().map(|line| line[column].chars().count());
        widths.max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..7).map(width).collect();
    let mut text = String::new();
    for (number, line) in lines.iter().enumerate() {
        for (column, (cell, width)) in line.iter().zip(&widths).enumerate() {
            let space = " ".repeat(width - cell.chars().count());
            let cell = if column < 2 {
                format!("| {cell}{space} ")
            } else {
                format!("| {space}{cell} ")
            };
            text.push_str(&cell);
        }
        text.push_str("|\n");
        if number == 0 {
            for (column, width) in widths.iter().enumerate() {
                let end = if column < 2 { "-" } else { ":" };
                text.push_str(&format!("| {}{end} ", "-".repeat(width - 1)));
            }
            text.push_str("|\n");
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::peer::Time;

    fn row(wasm: Option<f64>, peer: Option<Time>) -> Row {
        Row {
            index: 0,
            subject: "R-32".to_owned(),
            call: "T, ρ".to_owned(),
            native: 0.5,
            wasm,
            peer,
        }
    }

    #[test]
    fn what_was_not_timed_is_a_dash() {
        let cells = cells(&row(None, None));
        assert_eq!(cells, ["R-32", "T, ρ", "0.500", "-", "-", "-", "-"]);
    }

    #[test]
    fn ratios_are_over_native_and_gaps_are_marked() {
        let time = Time {
            microseconds: 20.0,
            whole: false,
        };
        let cells = cells(&row(Some(0.75), Some(time)));
        assert_eq!(cells[3..], ["0.750", "1.50", "20.0*", "40.0"]);
    }

    #[test]
    fn columns_stand_under_each_other() {
        let line =
            |first: &str, last: &str| [first, "ρ", "1", "2", "3", "4", last].map(str::to_owned);
        let text = aligned(&[line("a", "b"), line("longer", "12.5")]);
        let widths: Vec<usize> = text.lines().map(|line| line.chars().count()).collect();
        assert_eq!(widths.len(), 3);
        assert!(widths.iter().all(|width| *width == widths[0]), "{text}");
    }
}

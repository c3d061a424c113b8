//! Numbers as people type them.

use crate::unit::{Kind, Unit};

/// A number as typed, with the unit that stood behind it, if any.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Typed {
    /// The number.
    pub number: f64,
    /// A unit typed behind the number.
    pub unit: Option<Unit>,
}

/// Why a text is no number.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum NumberError {
    /// There is no number in it, or more than one.
    #[error("no number")]
    NotANumber,
    /// A number with something behind it that is no unit of this kind.
    #[error("unknown unit {unit}")]
    UnknownUnit {
        /// What stood behind the number.
        unit: String,
    },
    /// A lone comma in front of three digits, which parts thousands for some and decimals for others.
    #[error("{whole} or {decimal}")]
    Ambiguous {
        /// The one reading, to type instead.
        whole: String,
        /// The other.
        decimal: String,
    },
}

/// Longer texts hold no number that a person means.
const LONGEST: usize = 40;

/// Reads a number with an optional unit of a kind: `12.5`, `12,5`, `105F`, `-18 °F`, `12 kW`, `1,250.5 cfm`, `1 250`.
///
/// One comma or point is a decimal sign; where both stand, or one of them more than once, the last is the decimal sign and the
/// other parts groups of three, as a space does. A lone comma in front of three digits, as in `6,200`, means thousands to
/// one person and a decimal to another: guessing would be off by a thousand unnoticed, so both readings are offered.
///
/// # Errors
/// [`NumberError`] for anything else; never panics.
pub fn parse(kind: Kind, text: &str) -> Result<Typed, NumberError> {
    parse_with(text, |written| Unit::parse(kind, written))
        .map(|(number, unit)| Typed { number, unit })
}

/// The same with units of any sort, found by how they are written.
pub(crate) fn parse_with<U>(
    text: &str,
    unit: impl Fn(&str) -> Option<U>,
) -> Result<(f64, Option<U>), NumberError> {
    let text = text.trim();
    if text.is_empty() || text.len() > LONGEST {
        return Err(NumberError::NotANumber);
    }
    // Phones type a true minus sign and narrow spaces now and then.
    let text: String = text
        .chars()
        .map(|c| match c {
            '\u{2212}' | '\u{2013}' => '-',
            '\u{a0}' | '\u{202f}' | '\u{2009}' => ' ',
            // Keyboards have the ordinal sign and the ring where the degree sign is wanted.
            '\u{ba}' | '\u{2da}' => '°',
            other => other,
        })
        .collect();
    let end = number_end(&text);
    let (digits, rest) = text.split_at(end);
    let number = to_number(digits.trim_end())?;
    let rest = rest.trim();
    if rest.is_empty() {
        return Ok((number, None));
    }
    match unit(rest) {
        Some(unit) => Ok((number, Some(unit))),
        // A second number behind the first is no unit that anyone misspelt.
        None if rest.chars().any(|c| c.is_ascii_digit())
            && rest.starts_with(|c: char| !c.is_alphabetic()) =>
        {
            Err(NumberError::NotANumber)
        }
        None => Err(NumberError::UnknownUnit {
            unit: rest.to_owned(),
        }),
    }
}

/// Byte index where the leading number ends.
fn number_end(text: &str) -> usize {
    let mut end = 0;
    let mut characters = text.char_indices().peekable();
    while let Some((at, c)) = characters.next() {
        let inside = match c {
            '0'..='9' | '.' | ',' => true,
            '+' | '-' => at == 0,
            ' ' => characters
                .peek()
                .is_some_and(|(_, next)| next.is_ascii_digit()),
            // An exponent only where digits follow: `1e3`, not `1 e`.
            'e' | 'E' => {
                let rest = &text[at + 1..];
                let rest = rest.strip_prefix(['+', '-']).unwrap_or(rest);
                if !rest.is_empty() && rest.bytes().all(|b| b.is_ascii_digit()) {
                    return text.len();
                }
                false
            }
            _ => false,
        };
        if !inside {
            return at;
        }
        end = at + c.len_utf8();
    }
    end
}

fn to_number(digits: &str) -> Result<f64, NumberError> {
    if let Some(error) = two_readings(digits) {
        return Err(error);
    }
    let normal = normal(digits).ok_or(NumberError::NotANumber)?;
    match normal.parse::<f64>() {
        Ok(number) if number.is_finite() => Ok(number),
        _ => Err(NumberError::NotANumber),
    }
}

/// The two readings of a lone comma in front of three digits. Nobody writes thousands behind a leading zero.
fn two_readings(digits: &str) -> Option<NumberError> {
    let (whole, fraction) = digits.split_once(',')?;
    let first = whole.strip_prefix(['+', '-']).unwrap_or(whole);
    let all_digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    let is_group = fraction.len() == 3 && all_digits(fraction);
    let is_lead = (1..=3).contains(&first.len()) && all_digits(first) && !first.starts_with('0');
    (is_group && is_lead).then(|| NumberError::Ambiguous {
        whole: format!("{whole}{fraction}"),
        decimal: format!("{whole}.{fraction}")
            .trim_end_matches('0')
            .trim_end_matches('.')
            .to_owned(),
    })
}

/// The number as the standard library reads it.
fn normal(digits: &str) -> Option<String> {
    let sign_end = digits.len() - digits.trim_start_matches(['+', '-']).len();
    let (sign, unsigned) = digits.split_at(sign_end);
    let unsigned = unsigned.trim_start();
    // Spaces part groups of three in front of the decimal sign, and nothing else.
    let (whole, fraction) = unsigned.split_at(unsigned.find([',', '.']).unwrap_or(unsigned.len()));
    let is_spaced = whole.contains(' ');
    if fraction.contains(' ') || is_spaced && !in_groups(whole, ' ', '.') {
        return None;
    }
    let plain = format!("{sign}{}", unsigned.replace(' ', ""));
    let commas = plain.matches(',').count();
    let points = plain.matches('.').count();
    Some(match (commas, points) {
        (0, _) => plain,
        (1, 0) => plain.replace(',', "."),
        // The sign that comes last is the decimal one; the other must part groups of three.
        (_, 1) if plain.rfind('.') > plain.rfind(',') && in_groups(&plain, ',', '.') => {
            plain.replace(',', "")
        }
        (1, _) if in_groups(&plain, '.', ',') => plain.replace('.', "").replace(',', "."),
        (_, 0) if in_groups(&plain, ',', '.') => plain.replace(',', ""),
        _ => return None,
    })
}

fn in_groups(text: &str, group: char, decimal: char) -> bool {
    let whole = text.split(decimal).next().unwrap_or_default();
    let mut groups = whole.split(group);
    let first = groups.next().unwrap_or_default();
    let first = first.strip_prefix(['+', '-']).unwrap_or(first);
    (1..=3).contains(&first.len()) && groups.all(|part| part.len() == 3)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plain(text: &str) -> Result<f64, NumberError> {
        parse(Kind::Temperature, text).map(|typed| typed.number)
    }

    #[test]
    fn comma_or_point() {
        for (text, number) in [
            ("12.5", 12.5),
            ("12,5", 12.5),
            (" -18 ", -18.0),
            ("\u{2212}18", -18.0),
            ("+3", 3.0),
            ("- 18", -18.0),
            ("1 250", 1250.0),
            ("1,250.5", 1250.5),
            ("1.250,5", 1250.5),
            ("1,250,000", 1_250_000.0),
            ("1 250,5", 1250.5),
            ("-12 345.25", -12_345.25),
            ("0,125", 0.125),
            ("12,50", 12.5),
            ("1250,125", 1250.125),
            ("1.250", 1.25),
            (".5", 0.5),
            ("1e3", 1000.0),
        ] {
            assert_eq!(plain(text), Ok(number), "{text}");
        }
    }

    #[test]
    fn units_behind_the_number() {
        let typed = parse(Kind::Temperature, "105F").unwrap();
        assert_eq!((typed.number, typed.unit), (105.0, Some(Unit::Fahrenheit)));
        let typed = parse(Kind::Power, "12 kW").unwrap();
        assert_eq!((typed.number, typed.unit), (12.0, Some(Unit::Kilowatt)));
        for text in ["-18ºC", "-18 ˚C", "-18 ° C"] {
            let typed = parse(Kind::Temperature, text).unwrap();
            let read = (typed.number, typed.unit);
            assert_eq!(read, (-18.0, Some(Unit::Celsius)), "{text}");
        }
    }

    #[test]
    fn a_lone_comma_before_three_digits_is_not_guessed_at() {
        for (text, whole, decimal) in [
            ("6,200", "6200", "6.2"),
            ("6,200 ft", "6200", "6.2"),
            ("-1,075", "-1075", "-1.075"),
            ("36,000", "36000", "36"),
        ] {
            let (whole, decimal) = (whole.to_owned(), decimal.to_owned());
            let wanted = Err(NumberError::Ambiguous { whole, decimal });
            assert_eq!(
                parse(Kind::Elevation, text).map(|typed| typed.number),
                wanted,
                "{text}"
            );
        }
    }

    #[test]
    fn what_is_no_number_is_said_so() {
        for text in [
            "",
            "  ",
            "abc",
            "NaN",
            "inf",
            "1e999",
            "--3",
            "1.2.3",
            "3-4",
            "3 4",
            "12 34",
            "1.2 5",
            "1234 567",
            "1 2500",
            ",",
            "-",
            &"9".repeat(400),
        ] {
            assert_eq!(plain(text), Err(NumberError::NotANumber), "{text}");
        }
        assert_eq!(
            plain("12 kW"),
            Err(NumberError::UnknownUnit {
                unit: "kW".to_owned()
            })
        );
    }
}

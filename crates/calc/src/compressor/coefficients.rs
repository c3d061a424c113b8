//! Ten coefficients, read from what a person pastes out of a data sheet.

use std::fmt;

/// How many coefficients a polynomial has.
pub const COUNT: usize = 10;

/// The coefficients `C1` to `C10` in the order of AHRI 540, all finite.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coefficients([f64; COUNT]);

/// What is wrong with the coefficients given.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CoefficientError {
    /// A piece of the text that is no number.
    #[error("{token:?} at place {place} is not a number")]
    NotANumber {
        /// The piece as written.
        token: String,
        /// Its place among the pieces, from 1.
        place: usize,
    },
    /// A piece with a comma that may be a decimal mark, part the thousands or part two numbers.
    #[error(
        "{token:?} at place {place} can be read in more than one way: use one comma or one point as decimal mark"
    )]
    Ambiguous {
        /// The piece as written.
        token: String,
        /// Its place among the pieces, from 1.
        place: usize,
    },
    /// A number that is too large, infinite or not a number at all.
    #[error("{name} is not finite")]
    NotFinite {
        /// Which coefficient.
        name: Name,
    },
    /// Fewer than ten.
    #[error("only {found} coefficients: {missing} is the first one missing")]
    TooFew {
        /// How many there are.
        found: usize,
        /// The first that is missing.
        missing: Name,
    },
    /// More than ten.
    #[error("{token:?} is one more than the {COUNT} coefficients there are")]
    TooMany {
        /// The first piece too many, as written.
        token: String,
    },
}

/// Name of a coefficient, as data sheets print it: `C1` to `C10`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Name(usize);

impl Name {
    /// The name of the coefficient at an index from 0.
    fn of(index: usize) -> Self {
        Self(index + 1)
    }

    /// The number in the name, from 1.
    pub fn number(self) -> usize {
        self.0
    }
}

impl fmt::Display for Name {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "C{}", self.0)
    }
}

impl Coefficients {
    /// Ten numbers as coefficients.
    ///
    /// # Errors
    /// [`CoefficientError::NotFinite`].
    pub fn new(values: [f64; COUNT]) -> Result<Self, CoefficientError> {
        match values.iter().position(|value| !value.is_finite()) {
            Some(index) => Err(CoefficientError::NotFinite {
                name: Name::of(index),
            }),
            None => Ok(Self(values)),
        }
    }

    /// Reads pasted text: numbers parted by blanks, tabs, line ends or semicolons, with a point or a comma as decimal mark.
    ///
    /// A comma with nothing behind it parts too. The minus sign that typesetters use is taken as one.
    ///
    /// ```
    /// use winterset_calc::compressor::coefficients::Coefficients;
    ///
    /// let pasted = "1.23E+02 4,5\t-0.06; 7e-4\n0 0 0 0 0 1,0E-05";
    /// let read = Coefficients::parse(pasted)?;
    /// assert_eq!(read.values()[1], 4.5);
    /// # Ok::<(), winterset_calc::compressor::coefficients::CoefficientError>(())
    /// ```
    ///
    /// # Errors
    /// Any [`CoefficientError`], which names the piece.
    pub fn parse(text: &str) -> Result<Self, CoefficientError> {
        let mut values = [0.0; COUNT];
        let mut slots = values.iter_mut().enumerate();
        for (index, token) in tokens(text).enumerate() {
            let Some((_, slot)) = slots.next() else {
                return Err(CoefficientError::TooMany {
                    token: token.to_owned(),
                });
            };
            *slot = number(token, index)?;
        }
        match slots.next() {
            Some((found, _)) => Err(CoefficientError::TooFew {
                found,
                missing: Name::of(found),
            }),
            None => Self::new(values),
        }
    }

    /// The numbers, in order.
    pub fn values(&self) -> [f64; COUNT] {
        self.0
    }
}

fn tokens(text: &str) -> impl Iterator<Item = &str> {
    text.split(|mark: char| mark.is_whitespace() || mark == ';')
        .map(|token| token.strip_suffix(',').unwrap_or(token))
        .filter(|token| !token.is_empty())
}

fn number(token: &str, index: usize) -> Result<f64, CoefficientError> {
    let place = index + 1;
    let commas = token.matches(',').count();
    if commas > 1 || (commas == 1 && token.contains('.')) {
        return Err(CoefficientError::Ambiguous {
            token: token.to_owned(),
            place,
        });
    }
    // Words such as "inf" or "nan" are numbers to the standard library, but not on a data sheet.
    let plain = token.replace(',', ".").replace('\u{2212}', "-");
    let written = |mark: char| mark.is_ascii_digit() || "+-.eE".contains(mark);
    let parsed = plain
        .parse::<f64>()
        .ok()
        .filter(|_| plain.chars().all(written));
    let value = parsed.ok_or_else(|| CoefficientError::NotANumber {
        token: token.to_owned(),
        place,
    })?;
    if value.is_finite() {
        return Ok(value);
    }
    Err(CoefficientError::NotFinite {
        name: Name::of(index),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_data_sheets_print() {
        let read = Coefficients::parse(
            "1.23E+02 4,5\t\u{2212}0.5;7e-4\r\n  5, 6;; 7\u{a0}8\n\n9 +1,0E-05 ",
        );
        let wanted = [123.0, 4.5, -0.5, 7e-4, 5.0, 6.0, 7.0, 8.0, 9.0, 1e-5];
        assert_eq!(read.unwrap().values(), wanted);
    }

    #[test]
    fn the_error_names_the_piece() {
        let parse = |text: &str| Coefficients::parse(text).unwrap_err();
        assert_eq!(
            parse("1 2 C3 4"),
            CoefficientError::NotANumber {
                token: "C3".into(),
                place: 3
            }
        );
        for token in ["1,234.5", "1,2,3"] {
            assert_eq!(
                parse(&format!("0 {token}")),
                CoefficientError::Ambiguous {
                    token: token.into(),
                    place: 2
                }
            );
        }
        for word in ["inf", "nan", "-infinity", "1e", "--1", "e5"] {
            assert!(matches!(
                parse(word),
                CoefficientError::NotANumber { place: 1, .. }
            ));
        }
        assert_eq!(
            parse("1 1e999"),
            CoefficientError::NotFinite { name: Name::of(1) }
        );
    }

    #[test]
    fn ten_it_must_be() {
        let error = Coefficients::parse("1 2 3 4 5 6").unwrap_err();
        assert_eq!(
            error.to_string(),
            "only 6 coefficients: C7 is the first one missing"
        );
        assert!(matches!(
            Coefficients::parse("").unwrap_err(),
            CoefficientError::TooFew { found: 0, missing } if missing.number() == 1
        ));
        assert_eq!(
            Coefficients::parse("1 2 3 4 5 6 7 8 9 10 11.5 12").unwrap_err(),
            CoefficientError::TooMany {
                token: "11.5".into()
            }
        );
    }

    #[test]
    fn only_finite_numbers_make_coefficients() {
        let mut values = [1.0; COUNT];
        values[9] = f64::NAN;
        assert_eq!(
            Coefficients::new(values).unwrap_err().to_string(),
            "C10 is not finite"
        );
    }
}

//! How a language writes numbers: its decimal sign, and the gap between thousands.

/// The signs of numbers in one language. What is written with them can be typed back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Numerals {
    /// Between the whole and the fraction.
    pub decimal: char,
    /// Between groups of three digits.
    pub gap: char,
    /// From how many digits on thousands are parted.
    pub gap_from: usize,
}

impl Numerals {
    /// A number as the standard library writes it, with a true minus sign and this language's signs.
    pub(crate) fn write(self, text: &str) -> String {
        let (sign, digits) = match text.strip_prefix('-') {
            Some(digits) => ("\u{2212}", digits),
            None => ("", text),
        };
        let (whole, fraction) = digits
            .split_once('.')
            .map_or((digits, None), |(w, f)| (w, Some(f)));
        let mut out = String::from(sign);
        for (index, digit) in whole.chars().enumerate() {
            if index > 0 && whole.len() >= self.gap_from && (whole.len() - index) % 3 == 0 {
                out.push(self.gap);
            }
            out.push(digit);
        }
        if let Some(fraction) = fraction {
            out.push(self.decimal);
            out.push_str(fraction);
        }
        out
    }

    /// Decimals of a bound that a person may type back: a comma in front of three digits parts thousands for some, so there it has two.
    pub(crate) fn typed_decimals(self, decimals: i32) -> i32 {
        match (self.decimal, decimals) {
            (',', 3) => 2,
            _ => decimals,
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::Language;

    /// Unicode CLDR 45, `numbers/es` and `numbers/fr`: a decimal comma; Spanish parts thousands from five digits on
    /// (minimumGroupingDigits 2), French from four, with U+202F. For Spanish the thin space is that of the Ortografía of the Real Academia
    /// Española (2010), which keeps points out of numbers, and of ISO 80000-1.
    #[test]
    fn signs_are_those_of_the_language() {
        let spanish = Language::Spanish.words().numerals();
        assert_eq!(spanish.write("1234.5"), "1234,5");
        assert_eq!(spanish.write("-12345.67"), "\u{2212}12\u{202f}345,67");
        let french = Language::French.words().numerals();
        assert_eq!(french.write("1234.5"), "1\u{202f}234,5");
        let english = Language::English.words().numerals();
        assert_eq!(english.write("1234.5"), "1234.5");
        assert_eq!(english.write("12345"), "12\u{202f}345");
    }
}

//! A value that a worksheet found, with its rule and what went in.

use winterset_calc::{Basis, Field, Given, SheetRule};
use winterset_profile::{Amount, Answer, Measure, Question, Scale};
use winterset_words::{HelpWords, amount_in, converted};
use yew::AttrValue;

use super::reader::{Reader, weaker};
use crate::components::sheet::{Line, TermLine, WorkingLines};
use crate::view::words;

/// What was found: an amount, or a word where there is none.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Value {
    Amount(Amount),
    Word(&'static str),
}

/// A value with its rule.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    rule: SheetRule,
    value: Value,
    scale: Option<Scale>,
    basis: Basis,
    terms: Vec<(&'static str, Amount, Basis)>,
    name: Option<&'static str>,
    reason: Option<&'static str>,
    key: Option<&'static str>,
    is_strong: bool,
    place: Option<usize>,
    field: Option<Field>,
}

impl Found {
    /// An amount by a rule.
    pub fn new(rule: SheetRule, measure: Measure, si: f64) -> Self {
        Self::of(rule, Value::Amount(Amount::new(measure, si)))
    }

    /// A word where there is no amount.
    pub fn word(rule: SheetRule, word: &'static str) -> Self {
        Self::of(rule, Value::Word(word))
    }

    fn of(rule: SheetRule, value: Value) -> Self {
        Self {
            rule,
            value,
            scale: None,
            basis: Basis::Computed,
            terms: Vec::new(),
            name: None,
            reason: None,
            key: None,
            is_strong: false,
            place: None,
            field: None,
        }
    }

    /// Adds an answer that went in. What rests on a reading that nobody entered is shown as assumed itself.
    #[must_use]
    pub fn reading(mut self, symbol: &'static str, given: Given<Amount>) -> Self {
        self.basis = weaker(self.basis, given.basis);
        self.given(symbol, given)
    }

    /// Adds an answer that went in.
    #[must_use]
    pub fn given(mut self, symbol: &'static str, given: Given<Amount>) -> Self {
        self.terms.push((symbol, given.value, given.basis));
        self
    }

    /// Adds a value that was found before.
    #[must_use]
    pub fn with(mut self, symbol: &'static str, measure: Measure, si: f64) -> Self {
        self.terms
            .push((symbol, Amount::new(measure, si), Basis::Computed));
        self
    }

    /// The value is assumed where this is.
    #[must_use]
    pub fn resting_on(mut self, basis: Basis) -> Self {
        self.basis = weaker(self.basis, basis);
        self
    }

    /// Stands below the questions of one section, counted from none.
    #[must_use]
    pub fn in_part(mut self, place: usize) -> Self {
        self.place = Some(place);
        self
    }

    /// Answers a field of a system.
    #[must_use]
    pub fn for_field(mut self, field: Field) -> Self {
        self.field = Some(field);
        self
    }

    /// Is what a person came for.
    #[must_use]
    pub fn strong(mut self) -> Self {
        self.is_strong = true;
        self
    }

    /// Is named otherwise than its rule.
    #[must_use]
    pub fn named(mut self, name: &'static str) -> Self {
        self.name = Some(name);
        self
    }

    /// Is told by another name from others of its rule.
    #[must_use]
    pub fn keyed(mut self, key: &'static str) -> Self {
        self.key = Some(key);
        self
    }

    /// Has another reason than its rule.
    #[must_use]
    pub fn because(mut self, reason: &'static str) -> Self {
        self.reason = Some(reason);
        self
    }

    /// Is written in a unit.
    #[must_use]
    pub fn in_scale(mut self, scale: Scale) -> Self {
        self.scale = Some(scale);
        self
    }

    /// Is written in the unit that stands beside a question.
    #[must_use]
    pub fn like(self, reader: &Reader, question: Question) -> Self {
        match question.answer() {
            Answer::Number(number) => {
                let scale = reader.scale(question, &number);
                self.in_scale(scale)
            }
            _ => self,
        }
    }

    /// Whether a person came for it.
    pub fn is_strong(&self) -> bool {
        self.is_strong
    }

    /// The section that it stands in.
    pub fn place(&self) -> Option<usize> {
        self.place
    }

    /// The field of a system that it answers, with the answer; `None` where it is none, or rests on what nobody entered.
    pub fn answers(&self) -> Option<(Field, Amount)> {
        match (self.field, self.value) {
            (Some(field), Value::Amount(amount)) if self.basis != Basis::Assumed => {
                Some((field, amount))
            }
            _ => None,
        }
    }

    /// The value as it stands on the screen.
    pub fn line(&self, reader: &Reader) -> Line {
        let said = words().worksheets().rule(self.rule);
        let measured = words().worksheets().measured(self.rule);
        let (number, unit) = self.written(reader);
        Line {
            key: self.key.unwrap_or(self.rule.key()).into(),
            name: self.name.unwrap_or(said.name).into(),
            number,
            unit,
            basis: self.basis,
            reason: self.reason.unwrap_or(said.reason).into(),
            help: Some(HelpWords {
                what: "",
                measure: measured.find,
                typical: measured.typical,
            }),
            working: Some(WorkingLines {
                equation: words().worksheets().equation(self.rule).into(),
                terms: self.term_lines(reader),
                source: words().worksheets().source(self.rule).into(),
            }),
        }
    }

    fn written(&self, reader: &Reader) -> (AttrValue, AttrValue) {
        let amount = match self.value {
            Value::Word(word) => return (word.into(), "".into()),
            Value::Amount(amount) => amount,
        };
        let shown = match self.scale {
            Some(scale) if self.rule == SheetRule::Conversion => {
                converted(scale, amount, reader.atmosphere())
            }
            Some(scale) => amount_in(scale, amount, reader.atmosphere()),
            None => reader.units().amount(amount, reader.atmosphere()),
        };
        (shown.number.into(), shown.unit.into())
    }

    fn term_lines(&self, reader: &Reader) -> Vec<TermLine> {
        self.terms
            .iter()
            .map(|(symbol, amount, basis)| TermLine {
                symbol: (*symbol).into(),
                value: reader
                    .units()
                    .amount(*amount, reader.atmosphere())
                    .to_string()
                    .into(),
                basis: *basis,
                from: words().basis(*basis).into(),
            })
            .collect()
    }
}

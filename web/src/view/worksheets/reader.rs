//! Reads what was typed on one worksheet: each answer with its basis, each error at its question.

use std::cell::{OnceCell, RefCell};
use std::collections::BTreeMap;

use uom::si::f64::Pressure;
use winterset_calc::refrigerant::{Error, Refrigerant};
use winterset_calc::{Basis, Field, Given, air};
use winterset_profile::{
    Amount, Answer, Entry, Number, Problem, Question, Scale, Sheet, Usual, Worksheets, read_amount,
    read_refrigerant,
};
use winterset_words::{Units, brief, plain, symbol_of};
use yew::AttrValue;

use crate::components::field::Choice;
use crate::view::words;

/// The refrigerant as long as none was ever chosen.
const FIRST_REFRIGERANT: &str = "R-410A";

/// A value cannot be worked out; where its question is known, why stands there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wrong;

/// How a question stands on the screen.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// Which question.
    pub question: Question,
    /// The question in words.
    pub ask: AttrValue,
    /// What it is and how to find it out.
    pub help: AttrValue,
    /// The answer as typed.
    pub typed: AttrValue,
    /// What is wrong with it and what would be right.
    pub error: Option<AttrValue>,
    /// How it is answered.
    pub form: Form,
}

/// How a question is answered on the screen.
#[derive(Clone, Debug, PartialEq)]
pub enum Form {
    /// A refrigerant; what stands in for no answer.
    Refrigerant {
        /// Designation that is assumed.
        assumed: AttrValue,
    },
    /// One of a few.
    Choice {
        /// The choices.
        choices: Vec<Choice>,
        /// The one that holds, chosen or assumed.
        chosen: AttrValue,
        /// Whether it is assumed.
        assumed: bool,
    },
    /// A number.
    Number {
        /// The units that can stand beside it.
        units: Vec<Choice>,
        /// The one that does.
        unit: AttrValue,
        /// Whether values below zero make sense.
        signed: bool,
        /// The usual value, in the unit beside the field; `None` where there is none, or where it follows from an answer that is wrong.
        stand_in: Option<AttrValue>,
        /// Whether the question may stay open.
        open: bool,
        /// Between which values it commonly lies.
        common: Option<AttrValue>,
    },
}

/// The answers of one worksheet.
pub struct Reader<'a> {
    sheet: Sheet,
    kept: &'a Worksheets,
    units: Units,
    atmosphere: Pressure,
    /// By the stable name of the question. Behind a cell, since a calculation may find fault with an answer that reads well.
    errors: RefCell<BTreeMap<&'static str, String>>,
    /// Asked for by nearly every calculation, and looked up once.
    refrigerant: OnceCell<Result<Refrigerant, Problem>>,
}

impl<'a> Reader<'a> {
    /// A reader of a worksheet, with every answer tried once, so that each error is known.
    pub fn new(sheet: Sheet, kept: &'a Worksheets, units: Units) -> Self {
        let mut reader = Self {
            sheet,
            kept,
            units,
            atmosphere: air::atmosphere(Default::default()),
            errors: RefCell::default(),
            refrigerant: OnceCell::new(),
        };
        let places = [
            Question::Elevation,
            Question::GaugeElevation,
            Question::SensorElevation,
        ];
        let place = places.into_iter().find(|place| reader.asks(*place));
        if let Some(Ok(elevation)) = place.map(|place| reader.number(place)) {
            reader.atmosphere = air::atmosphere(elevation.value.length());
        }
        for question in sheet.questions().filter(|question| reader.asks(*question)) {
            // Only the errors matter here; they are kept at their questions.
            let _ = match question.answer() {
                Answer::Refrigerant => reader.refrigerant().err(),
                Answer::Number(_) => reader.number(question).err(),
                Answer::Choice(_) => None,
            };
        }
        reader
    }

    /// Which worksheet.
    pub fn sheet(&self) -> Sheet {
        self.sheet
    }

    /// The person's units.
    pub fn units(&self) -> Units {
        self.units
    }

    /// What gauge pressure stands on.
    pub fn atmosphere(&self) -> Pressure {
        self.atmosphere
    }

    /// Whether a question is asked, as other answers are now.
    pub fn asks(&self, question: Question) -> bool {
        let here = self.sheet.questions().any(|other| other == question);
        here && question
            .when()
            .is_none_or(|(other, key)| self.asks(other) && self.choice(other).value == key)
    }

    /// The place among the sections of the one that asks a question.
    pub fn part_of(&self, question: Question) -> usize {
        let sections = self.sheet.sections().iter();
        sections
            .take_while(|section| !section.questions.contains(&question))
            .count()
    }

    /// What was typed, where anything was.
    fn entry(&self, question: Question) -> Option<&'a Entry> {
        let entry = self.kept.entry(self.sheet, question);
        entry.filter(|entry| !entry.is_blank())
    }

    /// The text that was typed, where anything was.
    pub fn typed(&self, question: Question) -> Option<&'a str> {
        self.entry(question).map(|entry| entry.typed.trim())
    }

    /// Keeps what is wrong with an answer. The first thing said stays.
    pub fn wrong(&self, question: Question, said: String) -> Wrong {
        self.errors
            .borrow_mut()
            .entry(question.key())
            .or_insert(said);
        Wrong
    }

    /// Keeps why a refrigerant has no answer at a question's value.
    pub fn refused(&self, question: Question, error: &Error) -> Wrong {
        let said = words().refused(error, self.units, self.atmosphere);
        self.wrong(question, said)
    }

    /// The answer to a question of a few choices; the first is usual.
    pub fn choice(&self, question: Question) -> Given<&'static str> {
        let Answer::Choice(keys) = question.answer() else {
            return Given::assumed("");
        };
        let typed = self.entry(question).map(|entry| entry.typed.trim());
        let chosen = keys.iter().copied().find(|key| Some(*key) == typed);
        Given::or_assume(chosen, keys.first().copied().unwrap_or_default())
    }

    /// The designation of the refrigerant, typed or assumed.
    fn designation(&self) -> Given<&str> {
        let typed = self.entry(Question::Refrigerant);
        Given::or_assume(typed.map(|entry| entry.typed.trim()), FIRST_REFRIGERANT)
    }

    /// The refrigerant.
    pub fn refrigerant(&self) -> Result<Refrigerant, Wrong> {
        let found = self
            .refrigerant
            .get_or_init(|| read_refrigerant(self.designation().value));
        found.clone().map_err(|problem| {
            let said = words().problem(Field::Refrigerant, &problem, self.units);
            self.wrong(Question::Refrigerant, said)
        })
    }

    fn has_refrigerant(&self) -> bool {
        self.asks(Question::Refrigerant)
    }

    /// Whether properties of the refrigerant are estimates.
    pub fn is_estimated(&self) -> bool {
        self.has_refrigerant() && self.refrigerant().is_ok_and(|found| found.is_estimated())
    }

    /// Whether the refrigerant can burn.
    pub fn is_flammable(&self) -> bool {
        self.has_refrigerant()
            && self.refrigerant().is_ok_and(|found| {
                found
                    .safety_class()
                    .is_some_and(|class| class.is_flammable())
            })
    }

    /// The unit that stands beside a number: the one it was given in, else the person's own.
    pub fn scale(&self, question: Question, number: &Number) -> Scale {
        let kept = self.kept.entry(self.sheet, question);
        let token = kept.and_then(|entry| entry.unit.as_deref());
        token
            .and_then(|token| number.measure.scale(token))
            .unwrap_or_else(|| self.units.scale(number.measure))
    }

    /// The number that answers a question, typed or assumed; `None` where it may stay open and does.
    pub fn open_number(&self, question: Question) -> Result<Option<Given<Amount>>, Wrong> {
        let Answer::Number(number) = question.answer() else {
            return Ok(None);
        };
        let Some(entry) = self.entry(question) else {
            return Ok(self.usual(question, &number).map(Given::assumed));
        };
        let scale = self.scale(question, &number);
        read_amount(number.measure, entry, scale, number.range, self.atmosphere)
            .map(|amount| Some(Given::entered(amount)))
            .map_err(|problem| {
                let said = words()
                    .worksheets()
                    .amount_problem(&problem, scale, self.atmosphere);
                self.wrong(question, said)
            })
    }

    /// The number that answers a question, typed or assumed.
    pub fn number(&self, question: Question) -> Result<Given<Amount>, Wrong> {
        // What follows from an answer that is wrong is not wrong itself: nothing to say here.
        self.open_number(question)?.ok_or(Wrong)
    }

    fn usual(&self, question: Question, number: &Number) -> Option<Amount> {
        match number.usual {
            Usual::At(si) => Some(Amount::new(number.measure, si)),
            Usual::Follows => super::usual(self, question),
            Usual::LeftOut => None,
        }
    }

    /// A question as it stands on the screen.
    pub fn asked(&self, question: Question) -> Asked {
        let said = words().worksheets().question(question);
        let error = self.errors.borrow().get(question.key()).cloned();
        Asked {
            question,
            ask: said.ask.into(),
            help: said.help.into(),
            typed: AttrValue::from(self.kept.typed(self.sheet, question).to_owned()),
            error: error.map(AttrValue::from),
            form: self.form(question),
        }
    }

    fn form(&self, question: Question) -> Form {
        match question.answer() {
            Answer::Refrigerant => Form::Refrigerant {
                assumed: FIRST_REFRIGERANT.into(),
            },
            Answer::Choice(keys) => Form::Choice {
                choices: self.choices(question, &keys),
                chosen: self.choice(question).value.into(),
                assumed: !question.is_way() && self.choice(question).basis == Basis::Assumed,
            },
            Answer::Number(number) => {
                let scale = self.scale(question, &number);
                let usual = self.usual(question, &number);
                let stand_in =
                    usual.map(|amount| plain(scale, amount, self.atmosphere).number.into());
                Form::Number {
                    units: units_of(&number),
                    unit: scale.token().into(),
                    signed: number.measure.is_signed(),
                    stand_in,
                    open: number.usual == Usual::LeftOut,
                    common: self.common(&number, scale),
                }
            }
        }
    }

    fn common(&self, number: &Number, scale: Scale) -> Option<AttrValue> {
        let (low, high) = number.common?;
        let write = |si| brief(scale, Amount::new(number.measure, si), self.atmosphere);
        let range = words().worksheets().labels().usual_range;
        Some(range(&write(low).number, &write(high).to_string()).into())
    }

    fn choices(&self, question: Question, keys: &[&'static str]) -> Vec<Choice> {
        let words = words().worksheets();
        keys.iter()
            .map(|key| ((*key).into(), words.choice(question, key).into()))
            .collect()
    }
}

fn units_of(number: &Number) -> Vec<Choice> {
    let scales = number.measure.scales().iter();
    scales
        .map(|scale| (scale.token().into(), symbol_of(*scale).into()))
        .collect()
}

/// The weaker of two bases: what rests on anything assumed is assumed.
pub fn weaker(one: Basis, other: Basis) -> Basis {
    if other == Basis::Assumed { other } else { one }
}

//! English.

mod advice;
mod controllers;
mod fields;
mod fitting;
mod from_phone;
mod help;
mod install;
mod paper;
mod pictures;
mod plan;
mod problems;
mod rules;
mod screen;
mod sending;
mod sensors;
mod sheet_help;
mod weather;
mod worksheets;

use winterset_calc::{Basis, Rule};

use crate::numerals::Numerals;

/// English.
#[derive(Clone, Copy, Debug)]
pub struct English;

speaks_by_its_files!(English {
    fn numerals(&self) -> Numerals {
        Numerals {
            decimal: '.',
            gap: '\u{202f}',
            gap_from: 5,
        }
    }

    fn source(&self, rule: Rule) -> &'static str {
        rule.source()
    }

    fn basis(&self, basis: Basis) -> &'static str {
        match basis {
            Basis::Assumed => "assumed",
            Basis::Entered => "entered",
            Basis::Computed => "computed",
        }
    }
});

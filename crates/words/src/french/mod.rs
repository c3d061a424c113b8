//! French.

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
mod sources;
mod weather;
mod worksheets;

use winterset_calc::{Basis, Rule};

use crate::numerals::Numerals;

/// French.
#[derive(Clone, Copy, Debug)]
pub struct French;

speaks_by_its_files!(French {
    fn numerals(&self) -> Numerals {
        Numerals {
            decimal: ',',
            gap: '\u{202f}',
            gap_from: 4,
        }
    }

    fn symbol(&self, symbol: &'static str) -> &'static str {
        match symbol {
            "kPa gauge" => "kPa(g)",
            "bar gauge" => "bar(g)",
            "kPa absolute" => "kPa(a)",
            "bar absolute" => "bar(a)",
            "ton" => "TR",
            "rpm" => "tr/min",
            other => other,
        }
    }

    fn source(&self, rule: Rule) -> &'static str {
        sources::source(rule.source())
    }

    fn basis(&self, basis: Basis) -> &'static str {
        match basis {
            Basis::Assumed => "supposé",
            Basis::Entered => "saisi",
            Basis::Computed => "calculé",
        }
    }
});

//! Reading designations: forgiving on input, strict on output.

use crate::data::{BLENDS, FLUIDS};

/// What a designation names, as an index into the data.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Named {
    Fluid(usize),
    Blend(usize),
}

/// Strict designations, pure fluids first.
pub fn all() -> impl Iterator<Item = &'static str> {
    FLUIDS
        .iter()
        .map(|f| f.designation)
        .chain(BLENDS.iter().map(|b| b.designation))
}

/// The refrigerant meant. Case, hyphens, blanks, brackets and the leading `R` do not matter, nor a composition-designating prefix in
/// its place (`HFC-32`, `HFO-1234yf`); the isomer may be left out where only one is known (`1234ze`).
pub fn find(given: &str) -> Option<Named> {
    let wanted = key(given);
    if wanted.is_empty() {
        return None;
    }
    let by = |matches: &dyn Fn(&str) -> bool| {
        let mut hits = all().enumerate().filter(|(_, name)| matches(name));
        match (hits.next(), hits.next()) {
            (Some((i, _)), None) => Some(i),
            _ => None,
        }
    };
    let index = by(&|name| key(name) == wanted).or_else(|| {
        by(&|name| {
            name.split_once('(')
                .is_some_and(|(base, _)| key(base) == wanted)
        })
    })?;
    Some(match index.checked_sub(FLUIDS.len()) {
        None => Named::Fluid(index),
        Some(blend) => Named::Blend(blend),
    })
}

fn key(name: &str) -> String {
    let plain: String = name
        .chars()
        .filter(|c| !c.is_whitespace() && !matches!(c, '-' | '‐' | '‑' | '–' | '(' | ')' | '_'))
        .flat_map(char::to_uppercase)
        .collect();
    for prefix in ["HCFO", "HCFC", "HFO", "HFC", "CFC", "HC", "R"] {
        if let Some(rest) = plain.strip_prefix(prefix) {
            return rest.to_owned();
        }
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_designation_finds_itself_however_it_is_written() {
        for (i, name) in all().enumerate() {
            let expected = if i < FLUIDS.len() {
                Named::Fluid(i)
            } else {
                Named::Blend(i - FLUIDS.len())
            };
            let bare = name.trim_start_matches("R-");
            for written in [
                name.to_owned(),
                name.to_lowercase(),
                name.replace('-', ""),
                bare.to_owned(),
                format!(" r {bare} "),
            ] {
                assert_eq!(find(&written), Some(expected), "{written}");
            }
        }
    }

    #[test]
    fn an_isomer_may_be_left_out_only_where_it_is_clear() {
        assert_eq!(find("1234ze"), find("R-1234ze(E)"));
        assert!(find("HFO-1234ze").is_some());
        assert_eq!(find("1336mzz"), None);
        for nothing in ["", "R", "R-", "water", "R-9999", "454"] {
            assert_eq!(find(nothing), None, "{nothing:?}");
        }
    }
}

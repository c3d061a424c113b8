//! Two circuits of a site on one fan bank.

use winterset_profile::System;
use winterset_words::{Units, screen};
use yew::prelude::*;

use super::field::{Choice, Choose, Round};
use crate::view::name_or;
use crate::view::plan::{self, Planned};
use crate::view::{shared_bank, words};

/// Properties of [`SharedBankPart`].
#[derive(PartialEq, Properties)]
pub struct SharedBankProps {
    /// The systems of the site.
    pub systems: Vec<System>,
    /// Units to write in.
    pub units: Units,
}

/// Which two circuits share the fans, and what that does; nothing with fewer than two plans.
#[component]
pub fn SharedBankPart(props: &SharedBankProps) -> Html {
    let chosen = use_state_eq(|| (String::new(), String::new()));
    let planned: Vec<(&System, Planned)> = props
        .systems
        .iter()
        .map(|system| (system, plan::of(system)))
        .filter(|(_, planned)| planned.is_ok())
        .collect();
    let [(one, _), (two, _), ..] = planned.as_slice() else {
        return Html::default();
    };
    let t = words().advice();
    let name = |system: &System| name_or(&system.name, screen().unnamed_system);
    let or = |id: &String, usual: &System| {
        if planned.iter().any(|(system, _)| system.id == *id) {
            id.clone()
        } else {
            usual.id.clone()
        }
    };
    let (first, second) = (or(&chosen.0, one), or(&chosen.1, two));
    let choices: Vec<Choice> = planned
        .iter()
        .map(|(system, _)| (system.id.clone().into(), name(system)))
        .collect();
    let choose_first = {
        let (chosen, second) = (chosen.clone(), second.clone());
        Callback::from(move |id: String| chosen.set((id, second.clone())))
    };
    let choose_second = {
        let (chosen, first) = (chosen.clone(), first.clone());
        Callback::from(move |id: String| chosen.set((first.clone(), id)))
    };
    let found = |id: &String| {
        let (system, planned) = planned.iter().find(|(system, _)| system.id == *id)?;
        Some((planned.as_ref().as_ref().ok()?, name(system)))
    };
    let lines = match (found(&first), found(&second)) {
        (Some((a, a_name)), Some((b, b_name))) if first != second => {
            shared_bank::lines((a, &a_name), (b, &b_name), props.units)
        }
        _ => Vec::new(),
    };
    let round = |key: &'static str, ask: &'static str| Round {
        key: key.into(),
        ask: ask.into(),
        ..Round::default()
    };
    html! {
        <section class="part">
            <details class="more">
                <summary>{ t.shared_bank }</summary>
                <p class="part__note">{ t.shared_note }</p>
                <Choose round={round("first-circuit", t.first_circuit)} choices={choices.clone()} chosen={first} choose={choose_first} />
                <Choose round={round("second-circuit", t.second_circuit)} choices={choices} chosen={second} choose={choose_second} />
                <ul class="items">
                    { for lines.into_iter().map(|line| html! {
                        <li>
                            <span class="items__name">{ line.sentence }</span>
                            if line.draws_down {
                                <span class="items__value methods__short">{ t.drawn_down }</span>
                            }
                        </li>
                    }) }
                </ul>
            </details>
        </section>
    }
}

//! Two circuits of a site on one fan bank.

use winterset_profile::System;
use winterset_words::{Language, Units, screen};
use yew::prelude::*;

use super::field::{Choice, Choose, Round};
use super::made::use_made;
use crate::view::name_or;
use crate::view::plan::{Answers, Held};
use crate::view::shared_bank::{Bank, Circuit, Plans};
use crate::view::words;

/// Properties of [`SharedBankPart`].
#[derive(PartialEq, Properties)]
pub struct SharedBankProps {
    /// The systems of the site.
    pub systems: Vec<System>,
    /// Units to write in.
    pub units: Units,
}

/// Which two circuits share the fans, and what that does, worked out once it is opened; nothing where fewer than two systems are answered.
#[component]
pub fn SharedBankPart(props: &SharedBankProps) -> Html {
    let opened = use_state_eq(|| false);
    let answered: Vec<System> = props
        .systems
        .iter()
        .filter(|system| system.read().is_ok())
        .cloned()
        .collect();
    if answered.len() < 2 {
        return Html::default();
    }
    let t = words().advice();
    let open = {
        let opened = opened.setter();
        Callback::from(move |_: Event| opened.set(true))
    };
    html! {
        <section class="part">
            <details class="more" ontoggle={open}>
                <summary>{ t.shared_bank }</summary>
                <p class="part__note">{ t.shared_note }</p>
                if *opened {
                    <Circuits systems={answered} units={props.units} />
                }
            </details>
        </section>
    }
}

/// The choice of two among the systems that have a plan.
#[component]
fn Circuits(props: &SharedBankProps) -> Html {
    let t = words().advice();
    let chosen = use_state_eq(|| (String::new(), String::new()));
    let plans = use_made(&Plans(props.systems.iter().map(Answers::of).collect()));
    let Some(plans) = plans else {
        return working_out();
    };
    let circuits: Vec<(&str, Circuit)> = props
        .systems
        .iter()
        .zip(plans.iter())
        .filter(|(_, planned)| planned.is_ok())
        .map(|(system, planned)| {
            let plan = Held(planned.clone());
            let name = name_or(&system.name, screen().unnamed_system);
            (system.id.as_str(), Circuit { plan, name })
        })
        .collect();
    let [(one, _), (two, _), ..] = circuits.as_slice() else {
        return html! { <p class="part__note">{ t.two_plans }</p> };
    };
    let found = |id: &str| {
        let (_, circuit) = circuits.iter().find(|(one, _)| *one == id)?;
        Some(circuit.clone())
    };
    let or = |id: &str, usual: &str| found(id).map_or(usual, |_| id).to_owned();
    let (first, second) = (or(&chosen.0, one), or(&chosen.1, two));
    let choices: Vec<Choice> = circuits
        .iter()
        .map(|(id, circuit)| ((*id).to_owned().into(), circuit.name.clone()))
        .collect();
    let choose_first = {
        let (chosen, second) = (chosen.setter(), second.clone());
        Callback::from(move |id: String| chosen.set((id, second.clone())))
    };
    let choose_second = {
        let (chosen, first) = (chosen.setter(), first.clone());
        Callback::from(move |id: String| chosen.set((first.clone(), id)))
    };
    let round = |key: &'static str, ask: &'static str| Round {
        key: key.into(),
        ask: ask.into(),
        ..Round::default()
    };
    let both = found(&first)
        .zip(found(&second))
        .filter(|_| first != second);
    html! { <>
        <Choose round={round("first-circuit", t.first_circuit)} choices={choices.clone()} chosen={first} choose={choose_first} />
        <Choose round={round("second-circuit", t.second_circuit)} choices={choices} chosen={second} choose={choose_second} />
        if let Some((first, second)) = both {
            <Lines bank={Bank { first, second, units: props.units, language: Language::spoken() }} />
        }
    </> }
}

#[derive(PartialEq, Properties)]
struct LinesProps {
    bank: Bank,
}

/// What comes of both along outdoor temperature.
#[component]
fn Lines(props: &LinesProps) -> Html {
    let Some(lines) = use_made(&props.bank) else {
        return working_out();
    };
    html! {
        <ul class="items">
            { for lines.iter().map(|line| html! {
                <li>
                    <span class="items__name">{ &line.sentence }</span>
                    if line.draws_down {
                        <span class="items__value methods__short">{ words().advice().drawn_down }</span>
                    }
                </li>
            }) }
        </ul>
    }
}

fn working_out() -> Html {
    html! { <p class="part__note" role="status">{ screen().working_out }</p> }
}

//! Carries what a worksheet was told and found into a system: which system, then each answer old and new, to keep or to take.

use std::collections::BTreeSet;
use std::rc::Rc;

use winterset_calc::Field;
use winterset_profile::{Entry, System, merge};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use super::differences::{Differences, turning};
use super::field::{Choose, Round};
use crate::route::Route;
use crate::store::{Act, use_shelf};
use crate::view::{arrival, name_or, words, worksheets};

/// Properties of [`Carry`].
#[derive(PartialEq, Properties)]
pub struct CarryProps {
    /// What a system can take.
    pub carried: Vec<(Field, Entry)>,
}

/// The part of a worksheet that leads into a system; nothing where there is nothing to carry, or nowhere.
#[component]
pub fn Carry(props: &CarryProps) -> Html {
    let labels = words().worksheets().labels();
    let shelf = use_shelf();
    let navigator = use_navigator();
    // Site and system, as the choice holds them.
    let chosen = use_state_eq(String::new);
    // Which answers are kept although the worksheet has another.
    let kept = use_state_eq(BTreeSet::<String>::new);
    let mut choices = vec![(AttrValue::from(""), AttrValue::from(labels.choose_system))];
    for site in &shelf.sites {
        let place = name_or(&site.name, screen().unnamed_site);
        choices.extend(site.systems.iter().map(|system| {
            let name = name_or(&system.name, screen().unnamed_system);
            (
                key(&site.id, &system.id).into(),
                format!("{place}: {name}").into(),
            )
        }));
    }
    if props.carried.is_empty() || choices.len() == 1 {
        return Html::default();
    }
    let choose = {
        let (chosen, kept) = (chosen.setter(), kept.setter());
        Callback::from(move |to: String| {
            chosen.set(to);
            kept.set(BTreeSet::new());
        })
    };
    let to = chosen.split_once('/').and_then(|(site, system)| {
        let here = shelf.site(site)?.system(system)?;
        Some((site.to_owned(), here.clone()))
    });
    let offered = to.map(|(site, here)| {
        let filled = worksheets::into(&here, &props.carried);
        let rows = arrival::rows(&here, &filled, shelf.preferences.units);
        let taken: BTreeSet<String> = rows
            .iter()
            .map(|row| row.key.clone())
            .filter(|key| !kept.contains(key))
            .collect();
        let carry = {
            let (shelf, taken) = (shelf.dispatcher(), taken.clone());
            let (site, system, navigator) = (site, here.id.clone(), navigator.clone());
            Callback::from(move |_: MouseEvent| {
                let (filled, taken) = (filled.clone(), taken.clone());
                shelf.dispatch(Act::EditSystem {
                    site: site.clone(),
                    system: system.clone(),
                    edit: Rc::new(move |kept: &mut System| *kept = merge(kept, &filled, &taken)),
                });
                if let Some(navigator) = &navigator {
                    navigator.push(&Route::Plan {
                        site: site.clone(),
                        system: system.clone(),
                    });
                }
            })
        };
        (rows, taken, carry)
    });
    let turn = turning(&kept);
    html! {
        <section class="part" data-carry="">
            <h2>{ labels.carry }</h2>
            <p class="part__note">{ labels.carry_note }</p>
            <Choose round={Round { key: "carry-to".into(), ask: labels.carry_to.into(), ..Round::default() }}
                {choices} chosen={AttrValue::from((*chosen).clone())} {choose} />
            if let Some((rows, taken, carry)) = offered {
                if rows.is_empty() {
                    <p class="said" role="status">{ labels.carry_same }</p>
                } else {
                    <Differences title={words().sending().differences} note={labels.carry_differences} arrived={labels.from_worksheet}
                        rows={rows} taken={taken.clone()} {turn} />
                    <div class="buttons">
                        <button type="button" class="button button--first" onclick={carry} disabled={taken.is_empty()}>
                            { (labels.carry_act)(taken.len()) }
                        </button>
                    </div>
                }
            }
        </section>
    }
}

fn key(site: &str, system: &str) -> String {
    format!("{site}/{system}")
}

//! A system that arrived by link or file: what it holds, how it differs from the one of its name here, and whether to keep it.

use std::collections::BTreeSet;
use std::rc::Rc;

use winterset_calc::Field;
use winterset_profile::{Site, System, merge, share};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use super::nowhere::Nowhere;
use crate::components::differences::{Differences, turning};
use crate::components::field::Choose;
use crate::components::field::Round;
use crate::components::head::Head;
use crate::components::planned::use_plan;
use crate::components::value::Value;
use crate::components::verdict::VerdictBlock;
use crate::route::Route;
use crate::store::{Act, id, use_shelf};
use crate::view::name_or;
use crate::view::{arrival, fields, plan, words};

/// Properties of [`Share`].
#[derive(PartialEq, Properties)]
pub struct ShareProps {
    /// The system as the link carries it.
    pub payload: String,
}

/// Stands for a site that is made when the system is saved.
const NEW: &str = "new";

/// What came, before anything is saved.
#[component]
pub fn Share(props: &ShareProps) -> Html {
    let t = screen();
    let shelf = use_shelf();
    let navigator = use_navigator();
    let units = shelf.preferences.units;
    let arrived = use_memo(props.payload.clone(), |payload| share::decode(payload));
    let chosen = use_state_eq(|| None::<String>);
    // Which answers differ from what would be done without a word.
    let turned = use_state_eq(BTreeSet::<String>::new);
    let planned = use_plan(arrived.as_ref().as_ref().ok());
    let system = match arrived.as_ref() {
        Ok(system) => system.clone(),
        Err(error) => {
            let message = format!("{}. {}", t.bad_link, words().share_error(error));
            return html! { <Nowhere {message} /> };
        }
    };
    let t_sending = words().sending();
    let to = (*chosen).clone().unwrap_or_else(|| {
        let home = shelf
            .sites
            .iter()
            .find(|site| arrival::twin(site, &system).is_some());
        home.map_or_else(|| NEW.to_owned(), |site| site.id.clone())
    });
    let choose = {
        let (chosen, turned) = (chosen.setter(), turned.setter());
        Callback::from(move |site: String| {
            chosen.set(Some(site));
            turned.set(BTreeSet::new());
        })
    };
    let twin = shelf
        .site(&to)
        .and_then(|site| arrival::twin(site, &system))
        .cloned();
    let rows = twin
        .as_ref()
        .map(|here| arrival::rows(here, &system, units))
        .unwrap_or_default();
    let taken: BTreeSet<String> = rows
        .iter()
        .filter(|row| row.is_taken != turned.contains(&row.key))
        .map(|row| row.key.clone())
        .collect();
    let turn = turning(&turned);
    let join = twin.as_ref().map(|here| {
        let (shelf, navigator, site, taken) = (
            shelf.dispatcher(),
            navigator.clone(),
            to.clone(),
            taken.clone(),
        );
        let (here, system) = (here.id.clone(), system.clone());
        Callback::from(move |_: MouseEvent| {
            let (arrived, taken) = (system.clone(), taken.clone());
            shelf.dispatch(Act::EditSystem {
                site: site.clone(),
                system: here.clone(),
                edit: Rc::new(move |kept: &mut System| *kept = merge(kept, &arrived, &taken)),
            });
            if let Some(navigator) = &navigator {
                navigator.replace(&Route::Plan {
                    site: site.clone(),
                    system: here.clone(),
                });
            }
        })
    });
    let save = {
        let (shelf, navigator, system, to) = (
            shelf.dispatcher(),
            navigator.clone(),
            system.clone(),
            to.clone(),
        );
        Callback::from(move |_: MouseEvent| {
            let system = System {
                id: id::new(),
                ..system.clone()
            };
            let site = if to == NEW { id::new() } else { to.clone() };
            let route = Route::Plan {
                site: site.clone(),
                system: system.id.clone(),
            };
            if to == NEW {
                let mut new = Site::new(site, system.name.clone());
                new.systems.push(system);
                shelf.dispatch(Act::AddSite(new));
            } else {
                let edit = Rc::new(move |site: &mut Site| site.systems.push(system.clone()));
                shelf.dispatch(Act::EditSite { site, edit });
            }
            if let Some(navigator) = &navigator {
                navigator.replace(&route);
            }
        })
    };
    let discard = Callback::from(move |_: MouseEvent| {
        if let Some(navigator) = &navigator {
            navigator.replace(&Route::Sites);
        }
    });
    let mut choices = vec![(AttrValue::from(NEW), AttrValue::from(t.a_new_site))];
    choices.extend(shelf.sites.iter().map(|site| {
        (
            AttrValue::from(site.id.clone()),
            name_or(&site.name, t.unnamed_site),
        )
    }));
    html! {
        <main class="screen">
            <Head title={name_or(&system.name, t.unnamed_system)} note={AttrValue::from(format!("{}. {}", t.arrived, t.arrived_note))} />
            { match planned.as_deref() {
                Some(Ok(plan)) => html! {
                    <VerdictBlock number={plan::strong_number(plan, units)} enough={plan.verdict.is_enough()}
                        sentence={words().verdict(plan.verdict, plan, units)}
                        action={words().action(plan.verdict.action(plan.input.motor.value))} />
                },
                _ => html! {
                    <section class="verdict"><p class="verdict__sentence">{ plan::said(planned.as_ref(), units) }</p></section>
                },
            } }
            <Choose round={Round { key: "save-to".into(), ask: t.save_to.into(), ..Round::default() }}
                {choices} chosen={to.clone()} {choose} />
            if let Some(here) = &twin {
                if rows.is_empty() {
                    <p class="said" data-same="">{ t_sending.same }</p>
                } else {
                    <Differences title={t_sending.differences} arrived={t_sending.arrived} rows={rows.clone()} {taken} {turn}
                        note={(t_sending.differences_note)(&name_or(&here.name, t.unnamed_system))} />
                }
            }
            <div class="buttons">
                <button type="button" class="button" onclick={discard}>{ t.discard }</button>
                if let Some(join) = join.filter(|_| !rows.is_empty()) {
                    <button type="button" class="button" onclick={save}>{ t_sending.save_apart }</button>
                    <button type="button" class="button button--first" onclick={join}>{ t_sending.merge }</button>
                } else {
                    <button type="button" class="button button--first" onclick={save}>
                        { if twin.is_some() { t_sending.save_apart } else { t.save } }
                    </button>
                }
            </div>
            <section class="part">
                <h2>{ t.values_used }</h2>
                <ul class="list used">
                    { for Field::ALL.iter().filter_map(|field| {
                        let (text, basis) = fields::value(&system, *field, units)?;
                        Some(html! {
                            <li class="list__one" key={field.key()}>
                                <span>{ words().field(*field).ask }</span><Value number={text} {basis} />
                            </li>
                        })
                    }) }
                </ul>
            </section>
        </main>
    }
}

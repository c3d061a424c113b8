//! A system that came in a link: what it holds, and whether to keep it.

use std::rc::Rc;

use winterset_calc::Field;
use winterset_profile::{Site, System, share};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use super::nowhere::Nowhere;
use crate::components::field::Choose;
use crate::components::field::Round;
use crate::components::head::Head;
use crate::components::value::Value;
use crate::components::verdict::VerdictBlock;
use crate::route::Route;
use crate::store::{Act, id, use_shelf};
use crate::view::name_or;
use crate::view::{fields, plan, words};

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
    let to = use_state_eq(|| NEW.to_owned());
    let system = match arrived.as_ref() {
        Ok(system) => system.clone(),
        Err(error) => {
            let message = format!("{}. {}", t.bad_link, words().share_error(error));
            return html! { <Nowhere {message} /> };
        }
    };
    let planned = plan::of(&system);
    let choose = {
        let to = to.clone();
        Callback::from(move |site: String| to.set(site))
    };
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
            let site = if *to == NEW { id::new() } else { (*to).clone() };
            let route = Route::Plan {
                site: site.clone(),
                system: system.id.clone(),
            };
            if *to == NEW {
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
    let twin = shelf
        .site(&to)
        .is_some_and(|site| site.systems.iter().any(|one| one.name == system.name));
    html! {
        <main class="screen">
            <Head title={name_or(&system.name, t.unnamed_system)} note={AttrValue::from(format!("{}. {}", t.arrived, t.arrived_note))} />
            { match planned.as_ref() {
                Ok(plan) => html! {
                    <VerdictBlock number={plan::strong_number(plan, units)} enough={plan.verdict.is_enough()}
                        sentence={words().verdict(plan.verdict, plan, units)}
                        action={words().action(plan.verdict.action(plan.input.motor.value))} />
                },
                Err(errors) => html! {
                    <section class="verdict"><p class="verdict__sentence">{ (t.planless_for)(errors.len()) }</p></section>
                },
            } }
            <Choose round={Round { key: "save-to".into(), ask: t.save_to.into(), ..Round::default() }}
                {choices} chosen={(*to).clone()} {choose} />
            if twin {
                <p class="part__note">{ t.already_here }</p>
            }
            <div class="buttons">
                <button type="button" class="button" onclick={discard}>{ t.discard }</button>
                <button type="button" class="button button--first" onclick={save}>{ t.save }</button>
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

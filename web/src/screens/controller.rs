//! The limits of one of the technician's own controllers, typed once.

use std::rc::Rc;

use winterset_profile::{Controller, ControllerField, Entry};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use super::nowhere::Nowhere;
use crate::components::confirm::Confirm;
use crate::components::field::{Choose, Number, Round, Words};
use crate::components::head::Head;
use crate::route::Route;
use crate::store::{Act, Preferences, ShelfHandle, use_shelf};
use crate::view::controllers::{self, Limit};
use crate::view::name_or;
use crate::view::words;

/// Properties of [`ControllerScreen`].
#[derive(PartialEq, Properties)]
pub struct ControllerProps {
    /// Identifier of the controller.
    pub controller: String,
}

/// The limits.
#[component]
pub fn ControllerScreen(props: &ControllerProps) -> Html {
    let t = words().controllers().labels();
    let shelf = use_shelf();
    let navigator = use_navigator();
    let preferences = &shelf.preferences;
    let Some(controller) = preferences.controller(&props.controller) else {
        return html! { <Nowhere message={t.gone} /> };
    };
    let remove = {
        let (shelf, id) = (shelf.dispatcher(), props.controller.clone());
        Callback::from(move |()| {
            if let Some(navigator) = &navigator {
                navigator.replace(&Route::Settings);
            }
            let id = id.clone();
            shelf.dispatch(Act::EditPreferences(Rc::new(
                move |preferences: &mut Preferences| {
                    preferences.controllers.retain(|one| one.id != id);
                },
            )));
        })
    };
    let edit = Edit {
        shelf: shelf.clone(),
        id: props.controller.clone(),
    };
    let limits = controllers::limits(controller, preferences.units);
    let limit = |field: &ControllerField| limits.iter().find(|(other, _)| other == field);
    let name = name_or(&controller.name, t.unnamed);
    html! {
        <main class="screen">
            <Head title={name.clone()} up={(Route::Settings, AttrValue::from(screen().settings))} />
            <Words text={controller.name.clone()} edit={edit.by(|controller, name| controller.name = name)}
                round={Round { key: "controller-name".into(), ask: t.name.into(), ..Round::default() }} />
            <p class="part__note">{ t.limits_note }</p>
            <section class="part">
                <h2>{ t.outputs }</h2>
                <Choose choices={controllers::outputs()} chosen={controller.output.clone()} none={AttrValue::from(t.output_unknown)}
                    choose={edit.by(|controller, output| controller.output = output)}
                    round={Round { key: "controller-output".into(), ask: t.output.into(), help: Some(t.output_help.into()), ..Round::default() }} />
            </section>
            { for controllers::sections().into_iter().map(|(head, fields)| html! {
                <section class="part" key={head}>
                    <h2>{ head }</h2>
                    { for fields.iter().filter_map(limit).map(|(field, limit)| row(*field, limit, &edit)) }
                </section>
            }) }
            <section class="part">
                <Confirm act={t.remove} question={(t.remove_question)(&name)} done={remove} />
            </section>
        </main>
    }
}

/// Changes one controller.
struct Edit {
    shelf: ShelfHandle,
    id: String,
}

impl Edit {
    fn by(&self, change: impl Fn(&mut Controller, String) + 'static) -> Callback<String> {
        let (shelf, id) = (self.shelf.dispatcher(), self.id.clone());
        let change = Rc::new(change);
        Callback::from(move |text: String| {
            let (id, change) = (id.clone(), change.clone());
            shelf.dispatch(Act::EditPreferences(Rc::new(
                move |preferences: &mut Preferences| {
                    if let Some(controller) = preferences.controller_mut(&id) {
                        change(controller, text.clone());
                    }
                },
            )));
        })
    }
}

fn row(field: ControllerField, limit: &Limit, edit: &Edit) -> Html {
    let unit = limit.unit.to_string();
    // The unit that stood beside the answer goes with it, so that it means the same whatever is set later.
    let enter = edit.by(move |controller, typed| {
        controller.set(field, Entry::with_unit(typed, unit.clone()));
    });
    let choose = edit.by(move |controller, unit| {
        let typed = controller.entry(field).map(|entry| entry.typed.clone());
        controller.set(field, Entry::with_unit(typed.unwrap_or_default(), unit));
    });
    html! {
        <Number key={field.key()} round={limit.round.clone()} text={limit.typed.clone()} units={limit.units.clone()}
            unit={limit.unit.clone()} signed={limit.signed} edit={enter} {choose} />
    }
}

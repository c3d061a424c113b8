//! A part of a long screen that is folded up, under its title and what it comes to, until it is opened. What was opened stays open, on other plans too,
//! until the app is closed.

use std::collections::BTreeSet;

use gloo_storage::{SessionStorage, Storage};
use web_sys::HtmlDetailsElement;
use yew::prelude::*;

const OPENED: &str = "winterset.opened-parts";

/// Properties of [`Folded`].
#[derive(PartialEq, Properties)]
pub struct FoldedProps {
    /// Stable name of the part.
    pub part: &'static str,
    /// Its title.
    pub title: AttrValue,
    /// What it comes to.
    #[prop_or_default]
    pub says: Option<AttrValue>,
    /// What is in it, drawn while it is open.
    pub content: Callback<(), Html>,
}

/// The part.
#[component]
pub fn Folded(props: &FoldedProps) -> Html {
    let part = props.part;
    let open = use_state_eq(|| opened().contains(part));
    let turn = {
        let open = open.setter();
        Callback::from(move |event: Event| {
            let details = event.target_dyn_into::<HtmlDetailsElement>();
            // A fold inside tells its own turning to all around it.
            let own = details
                .filter(|details| details.get_attribute("data-part").as_deref() == Some(part));
            if let Some(details) = own {
                remember(part, details.open());
                open.set(details.open());
            }
        })
    };
    html! {
        <details class="part folded" data-part={part} open={*open} ontoggle={turn}>
            <summary>
                <h2>{ &props.title }</h2>
                if let Some(says) = &props.says {
                    <span class="folded__says">{ says }</span>
                }
            </summary>
            if *open {
                { props.content.emit(()) }
            }
        </details>
    }
}

/// A browser that keeps nothing shows each part folded.
fn opened() -> BTreeSet<String> {
    SessionStorage::get(OPENED).unwrap_or_default()
}

fn remember(part: &str, open: bool) {
    let mut parts = opened();
    if open {
        parts.insert(part.to_owned());
    } else {
        parts.remove(part);
    }
    // What is not remembered is folded the next time, and nothing is lost.
    let _ = SessionStorage::set(OPENED, parts);
}

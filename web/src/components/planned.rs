//! The plan of a system, as soon as it is made.

use winterset_profile::System;
use winterset_words::Units;
use yew::prelude::*;

use super::made::use_made;
use crate::view::plan::{self, Answers, Planned};

/// The plan of a system; nothing as long as it is being made. Without a system there is none, and what is missing for one.
#[hook]
pub fn use_plan(system: Option<&System>) -> Option<Planned> {
    use_made(&system.map(Answers::of).unwrap_or_default())
}

/// Properties of [`Headline`].
#[derive(PartialEq, Properties)]
pub struct HeadlineProps {
    /// The system.
    pub system: System,
    /// Units to write in.
    pub units: Units,
}

/// What the plan of a system says in a few words.
#[component]
pub fn Headline(props: &HeadlineProps) -> Html {
    let planned = use_plan(Some(&props.system));
    html! { <span class="list__note" aria-busy={planned.is_none().then_some("true")}>{ plan::said(planned.as_ref(), props.units) }</span> }
}

//! A value with its unit, in the form that tells where it comes from.

use winterset_calc::Basis;
use yew::prelude::*;

/// Properties of [`Value`].
#[derive(PartialEq, Properties)]
pub struct ValueProps {
    /// The number, or the words, as written.
    pub number: AttrValue,
    /// The unit; empty for words.
    #[prop_or_default]
    pub unit: AttrValue,
    /// Where the value comes from.
    #[prop_or(Basis::Computed)]
    pub basis: Basis,
}

/// The class that gives a value the form of its basis.
pub fn form(basis: Basis) -> &'static str {
    match basis {
        Basis::Assumed => "value value--assumed",
        Basis::Entered | Basis::Computed => "value",
    }
}

/// The value large, its unit small.
#[component]
pub fn Value(props: &ValueProps) -> Html {
    html! {
        <span class={form(props.basis)}>
            { &props.number }
            if !props.unit.is_empty() {
                <small>{ "\u{a0}" }{ &props.unit }</small>
            }
        </span>
    }
}

//! The verdict: one strong number, one sentence, one thing to do.

use winterset_words::{Shown, screen};
use yew::prelude::*;

/// Properties of [`VerdictBlock`].
#[derive(PartialEq, Properties)]
pub struct VerdictProps {
    /// The hold limit.
    pub number: Shown,
    /// Whether it is enough for the site.
    pub enough: bool,
    /// The verdict in a sentence.
    pub sentence: String,
    /// The one thing to do.
    pub action: &'static str,
}

/// The verdict at the head of a plan.
#[component]
pub fn VerdictBlock(props: &VerdictProps) -> Html {
    let t = screen();
    html! {
        <section class={classes!("verdict", props.enough.then_some("verdict--enough"))} aria-label={t.verdict} data-verdict="">
            <p class="verdict__of">{ t.hold_limit }</p>
            <p class="verdict__number">{ &props.number.number }<small>{ "\u{a0}" }{ props.number.unit }</small></p>
            <p class="verdict__sentence">{ &props.sentence }</p>
            <p class="verdict__action">{ props.action }</p>
        </section>
    }
}

//! A button whose deed cannot be undone: it asks first, in place.

use winterset_words::screen;
use yew::prelude::*;

/// Properties of [`Confirm`].
#[derive(PartialEq, Properties)]
pub struct ConfirmProps {
    /// What the button says.
    pub act: AttrValue,
    /// What is asked before the deed.
    pub question: AttrValue,
    /// The deed.
    pub done: Callback<()>,
}

/// The button, and once it is touched the question with both answers.
#[component]
pub fn Confirm(props: &ConfirmProps) -> Html {
    let t = screen();
    let asked = use_state_eq(|| false);
    let ask = |to: bool| {
        let asked = asked.clone();
        Callback::from(move |_: MouseEvent| asked.set(to))
    };
    if !*asked {
        return html! { <button type="button" class="button" onclick={ask(true)}>{ &props.act }</button> };
    }
    let done = props.done.reform(|_: MouseEvent| ());
    html! {
        <div class="confirm" role="alertdialog" aria-label={props.act.clone()}>
            <p>{ &props.question }</p>
            <div class="buttons">
                <button type="button" class="button" onclick={ask(false)}>{ t.keep }</button>
                <button type="button" class="button button--first" onclick={done}>{ &props.act }</button>
            </div>
        </div>
    }
}

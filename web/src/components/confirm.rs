//! A button whose deed cannot be undone: it asks first, in place.

use web_sys::HtmlElement;
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

/// The button, and once it is touched the question with both answers. The focus goes along: to the answer that changes nothing, and back.
#[component]
pub fn Confirm(props: &ConfirmProps) -> Html {
    let t = screen();
    let asked = use_state_eq(|| false);
    // Whether a person touched anything here yet; a screen that opens keeps its focus elsewhere.
    let was_touched = use_mut_ref(|| false);
    let harmless = use_node_ref();
    use_effect_with(*asked, {
        let (harmless, was_touched) = (harmless.clone(), was_touched.clone());
        move |_| {
            if let Some(button) = harmless
                .cast::<HtmlElement>()
                .filter(|_| *was_touched.borrow())
            {
                // A button that cannot take the focus can still be touched.
                let _ = button.focus();
            }
        }
    });
    let ask = |to: bool| {
        let (asked, was_touched) = (asked.clone(), was_touched.clone());
        Callback::from(move |_: MouseEvent| {
            was_touched.replace(true);
            asked.set(to);
        })
    };
    if !*asked {
        return html! {
            <button type="button" class="button" data-act="ask" ref={harmless} onclick={ask(true)}>{ &props.act }</button>
        };
    }
    let done = props.done.reform(|_: MouseEvent| ());
    html! {
        <div class="confirm" role="alertdialog" aria-label={props.act.clone()}>
            <p>{ &props.question }</p>
            <div class="buttons">
                <button type="button" class="button" ref={harmless} onclick={ask(false)}>{ t.keep }</button>
                <button type="button" class="button button--first" onclick={done}>{ &props.act }</button>
            </div>
        </div>
    }
}

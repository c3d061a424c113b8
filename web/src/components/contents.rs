//! What stands on a long screen, each part one touch away.

use wasm_bindgen::JsCast;
use web_sys::{FocusOptions, HtmlElement};
use winterset_words::screen;
use yew::prelude::*;

/// The headings of the screen that is open.
fn headings() -> Vec<HtmlElement> {
    let document = web_sys::window().and_then(|window| window.document());
    let found = document.and_then(|document| document.query_selector_all("main h2").ok());
    found.map_or_else(Vec::new, |found| {
        (0..found.length())
            .filter_map(|at| found.item(at)?.dyn_into().ok())
            // What is folded away has no place to go to.
            .filter(|heading: &HtmlElement| heading.offset_parent().is_some())
            .collect()
    })
}

/// The way to a heading: in sight, and where a reader goes on from.
fn go(heading: &HtmlElement) {
    // A part that is folded up is opened on the way.
    if let Ok(Some(fold)) = heading.closest("details.folded") {
        let _ = fold.set_attribute("open", "");
    }
    heading.scroll_into_view();
    // A heading takes the focus only where it is sent there.
    heading.set_tab_index(-1);
    let calm = FocusOptions::new();
    calm.set_prevent_scroll(true);
    let _ = heading.focus_with_options(&calm);
}

/// A list of the parts, made anew each time it is opened: parts come and go with the plan.
#[component]
pub fn Contents() -> Html {
    let parts = use_state_eq(Vec::<AttrValue>::new);
    let read = {
        let parts = parts.setter();
        Callback::from(move |_: Event| {
            let text = |heading: HtmlElement| heading.text_content().map(AttrValue::from);
            parts.set(headings().into_iter().filter_map(text).collect());
        })
    };
    html! {
        <details class="more contents" ontoggle={read}>
            <summary>{ screen().on_this_page }</summary>
            <ul class="list">
                { for parts.iter().enumerate().map(|(at, name)| {
                    let to = Callback::from(move |_: MouseEvent| {
                        if let Some(heading) = headings().get(at) {
                            go(heading);
                        }
                    });
                    html! {
                        <li key={at}><button type="button" class="list__one contents__one" onclick={to}>{ name.clone() }</button></li>
                    }
                }) }
            </ul>
        </details>
    }
}

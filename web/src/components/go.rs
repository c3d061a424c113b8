//! A link to another screen of the app.

use yew::prelude::*;
use yew_router::prelude::*;

use crate::route::Route;

/// Properties of [`Go`].
#[derive(PartialEq, Properties)]
pub struct GoProps {
    /// Where it leads.
    pub to: Route,
    /// Classes of the link.
    #[prop_or_default]
    pub class: Classes,
    /// Whether the link leads to where the person is.
    #[prop_or_default]
    pub here: bool,
    /// What the link says.
    pub children: Html,
}

/// A link that keeps the page: the address changes, the screen starts at its top, and back returns.
#[component]
pub fn Go(props: &GoProps) -> Html {
    let navigator = use_navigator();
    let to = props.to.clone();
    let go = Callback::from(move |event: MouseEvent| {
        // A second window or a download is the browser's own affair.
        if event.ctrl_key() || event.meta_key() || event.shift_key() {
            return;
        }
        let Some(navigator) = &navigator else { return };
        event.prevent_default();
        navigator.push(&to);
        if let Some(window) = web_sys::window() {
            window.scroll_to_with_x_and_y(0.0, 0.0);
        }
    });
    html! {
        <a href={format!("#{}", props.to.to_path())} class={props.class.clone()} onclick={go}
            aria-current={props.here.then_some("page")}>
            { props.children.clone() }
        </a>
    }
}

//! The head of a screen: the way up, and the title.

use web_sys::HtmlElement;
use yew::prelude::*;

use crate::components::go::Go;
use crate::components::icon::{Icon, Sketch};
use crate::route::Route;

/// Properties of [`Head`].
#[derive(PartialEq, Properties)]
pub struct HeadProps {
    /// The title of the screen.
    pub title: AttrValue,
    /// A quiet line under the title.
    #[prop_or_default]
    pub note: Option<AttrValue>,
    /// Where the screen belongs, and what that is called.
    #[prop_or_default]
    pub up: Option<(Route, AttrValue)>,
}

/// Names the page and gives the title the focus, so that a screen reader starts where the screen starts.
#[component]
pub fn Head(props: &HeadProps) -> Html {
    let title = use_node_ref();
    use_effect_with(props.title.clone(), |title| {
        if let Some(document) = web_sys::window().and_then(|window| window.document()) {
            document.set_title(&format!("{title} · Winterset"));
        }
    });
    use_effect_with((), {
        let title = title.clone();
        move |()| {
            let Some(title) = title.cast::<HtmlElement>() else {
                return;
            };
            let calm = web_sys::FocusOptions::new();
            calm.set_prevent_scroll(true);
            // A title that cannot take the focus costs nothing but the announcement.
            let _ = title.focus_with_options(&calm);
        }
    });
    html! {
        <header class="head">
            if let Some((route, name)) = &props.up {
                <Go to={route.clone()} class="head__up"><Icon sketch={Sketch::Back} /><span>{ name }</span></Go>
            }
            <h1 ref={title} tabindex="-1">{ &props.title }</h1>
            if let Some(note) = &props.note {
                <p class="head__note">{ note }</p>
            }
        </header>
    }
}

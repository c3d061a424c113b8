//! The frame around every screen.

use yew::prelude::*;

/// The whole app.
#[component]
pub fn App() -> Html {
    html! { <main><h1>{ "Winterset" }</h1></main> }
}

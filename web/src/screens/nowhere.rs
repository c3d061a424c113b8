//! An address that leads to nothing, or to what is no longer here.

use winterset_words::screen;
use yew::prelude::*;

use crate::components::go::Go;
use crate::components::head::Head;
use crate::route::Route;

/// Properties of [`Nowhere`].
#[derive(PartialEq, Properties)]
pub struct NowhereProps {
    /// What is missing.
    pub message: AttrValue,
}

/// Says so, and leads to the sites.
#[component]
pub fn Nowhere(props: &NowhereProps) -> Html {
    html! {
        <main class="screen">
            <Head title={props.message.clone()} />
            <Go to={Route::Sites} class="button">{ screen().to_sites }</Go>
        </main>
    }
}

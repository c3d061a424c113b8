//! The three places at the bottom of every screen.

use winterset_words::screen;
use yew::prelude::*;

use crate::components::go::Go;
use crate::components::icon::{Icon, Sketch};
use crate::route::{Place, Route};

/// Properties of [`Places`].
#[derive(PartialEq, Properties)]
pub struct PlacesProps {
    /// Where the person is.
    pub here: Place,
}

/// The bar with the three places.
#[component]
pub fn Places(props: &PlacesProps) -> Html {
    let t = screen();
    let one = |place: Place, to: Route, sketch: Sketch, name: &'static str| {
        html! {
            <Go to={to} class="places__one" here={props.here == place}><Icon {sketch} /><span>{ name }</span></Go>
        }
    };
    html! {
        <nav class="places" aria-label={t.places}>
            { one(Place::Sites, Route::Sites, Sketch::Sites, t.sites) }
            { one(Place::Worksheets, Route::Worksheets, Sketch::Worksheets, t.worksheets) }
            { one(Place::Settings, Route::Settings, Sketch::Settings, t.settings) }
        </nav>
    }
}

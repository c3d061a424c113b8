//! The screens, one a file.

mod controller;
mod fit;
mod inputs;
mod nowhere;
mod plan;
mod settings;
mod share;
mod site;
mod sites;
mod worksheet;
mod worksheets;

use yew::prelude::*;

use crate::route::Route;

/// The screen of an address. A key a screen makes another site's or system's screen a new one, with nothing left over.
pub fn of(route: Route) -> Html {
    match route {
        Route::Sites => html! { <sites::Sites /> },
        Route::Site { site } => {
            html! { <site::SiteScreen key={site.clone()} site={site.clone()} /> }
        }
        Route::Plan { site, system } => {
            html! { <plan::PlanScreen key={system.clone()} {site} system={system.clone()} /> }
        }
        Route::Fit { site, system } => {
            html! { <fit::FitScreen key={system.clone()} {site} system={system.clone()} /> }
        }
        Route::Inputs { site, system } => {
            html! { <inputs::Inputs key={system.clone()} {site} system={system.clone()} /> }
        }
        Route::Input {
            site,
            system,
            field,
        } => {
            html! { <inputs::Inputs key={system.clone()} {site} system={system.clone()} {field} /> }
        }
        Route::Worksheets => html! { <worksheets::WorksheetList /> },
        Route::Worksheet { sheet } => {
            html! { <worksheet::WorksheetScreen key={sheet.clone()} sheet={sheet.clone()} /> }
        }
        Route::Settings => html! { <settings::Settings /> },
        Route::Controller { controller } => {
            html! { <controller::ControllerScreen key={controller.clone()} controller={controller.clone()} /> }
        }
        Route::Share { payload } => {
            html! { <share::Share key={payload.clone()} payload={payload.clone()} /> }
        }
        Route::Nowhere => {
            html! { <nowhere::Nowhere message={winterset_words::screen().nowhere} /> }
        }
    }
}

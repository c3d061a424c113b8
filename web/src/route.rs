//! The addresses of the app: one route a screen, behind the `#` so that the app works from any folder of any static host.

use yew_router::prelude::*;

/// A screen and what it shows.
#[derive(Clone, Debug, PartialEq, Routable)]
pub enum Route {
    /// All sites.
    #[at("/")]
    Sites,
    /// One site with its systems.
    #[at("/site/:site")]
    Site {
        /// Identifier of the site.
        site: String,
    },
    /// The winter plan of a system.
    #[at("/site/:site/:system")]
    Plan {
        /// Identifier of the site.
        site: String,
        /// Identifier of the system.
        system: String,
    },
    /// How the plan's method is fitted and wired.
    #[at("/site/:site/:system/fit")]
    Fit {
        /// Identifier of the site.
        site: String,
        /// Identifier of the system.
        system: String,
    },
    /// The answers that the plan starts from.
    #[at("/site/:site/:system/inputs")]
    Inputs {
        /// Identifier of the site.
        site: String,
        /// Identifier of the system.
        system: String,
    },
    /// The answers that the plan starts from, opened at one of them.
    #[at("/site/:site/:system/inputs/:field")]
    Input {
        /// Identifier of the site.
        site: String,
        /// Identifier of the system.
        system: String,
        /// Stable name of the field.
        field: String,
    },
    /// Stand-alone calculations.
    #[at("/worksheets")]
    Worksheets,
    /// One of them.
    #[at("/worksheets/:sheet")]
    Worksheet {
        /// Stable name of the worksheet.
        sheet: String,
    },
    /// The technician's own settings.
    #[at("/settings")]
    Settings,
    /// The limits of one of the technician's own controllers.
    #[at("/settings/controllers/:controller")]
    Controller {
        /// Identifier of the controller.
        controller: String,
    },
    /// A system that came in a link.
    #[at("/share/:payload")]
    Share {
        /// The whole system, encoded.
        payload: String,
    },
    /// An address that leads nowhere.
    #[not_found]
    #[at("/nowhere")]
    Nowhere,
}

impl Route {
    /// Which of the three places a screen belongs to.
    pub fn place(&self) -> Place {
        match self {
            Route::Worksheets | Route::Worksheet { .. } => Place::Worksheets,
            Route::Settings | Route::Controller { .. } => Place::Settings,
            _ => Place::Sites,
        }
    }

    /// The site that a screen belongs to.
    pub fn site(&self) -> Option<&str> {
        match self {
            Route::Site { site }
            | Route::Plan { site, .. }
            | Route::Fit { site, .. }
            | Route::Inputs { site, .. }
            | Route::Input { site, .. } => Some(site),
            _ => None,
        }
    }

    /// The address of this screen on the page that is open, whole, for another phone to open.
    pub fn address(&self) -> Option<String> {
        let href = web_sys::window()?.location().href().ok()?;
        let page = href.split('#').next()?;
        Some(format!("{page}#{}", self.to_path()))
    }
}

/// The three places at the bottom of every screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// Sites and their systems.
    Sites,
    /// Stand-alone calculations.
    Worksheets,
    /// Units, theme and own controllers.
    Settings,
}

//! The technician's own settings, and what the worksheets were left with.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use winterset_profile::{Controller, Worksheets};
use winterset_words::{Language, Units};

/// How the screens look.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Theme {
    /// As the phone is set.
    #[default]
    Auto,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
    /// Black on white with thick strokes.
    Sunlight,
}

impl Theme {
    /// Every theme.
    pub const ALL: [Theme; 4] = [Theme::Auto, Theme::Light, Theme::Dark, Theme::Sunlight];

    /// The stable name, which the style sheets know too.
    pub fn key(self) -> &'static str {
        match self {
            Theme::Auto => "auto",
            Theme::Light => "light",
            Theme::Dark => "dark",
            Theme::Sunlight => "sunlight",
        }
    }

    /// Puts the theme on the page.
    pub fn apply(self) {
        let Some(root) = web_sys::window()
            .and_then(|window| window.document())
            .and_then(|document| document.document_element())
        else {
            return;
        };
        // An attribute that is not there cannot fail to go, and this name is a valid one.
        let _ = match self {
            Theme::Auto => root.remove_attribute("data-theme"),
            theme => root.set_attribute("data-theme", theme.key()),
        };
    }
}

/// What a technician chose to fit to a system, by stable names.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Fitted {
    /// The method.
    pub method: String,
    /// The arrangement.
    pub arrangement: String,
}

/// The language that the browser is set to, where the app speaks it; else English.
fn of_the_browser() -> Language {
    web_sys::window()
        .and_then(|window| window.navigator().language())
        .and_then(|tag| Language::of_tag(&tag))
        .unwrap_or_default()
}

/// Tells the page which language stands on it, for screen readers and hyphenation.
pub fn name_on_page(language: Language) {
    let root = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.document_element());
    if let Some(root) = root {
        // Setting an attribute fails on invalid names alone, and this is a valid one.
        let _ = root.set_attribute("lang", language.tag());
    }
}

/// What the technician set for all screens.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Preferences {
    /// Units that values are read in.
    pub units: Units,
    /// How the screens look.
    pub theme: Theme,
    /// The language that was chosen; until then it is the browser's.
    pub language: Option<Language>,
    /// The worksheets as they were left.
    pub worksheets: Worksheets,
    /// Outdoor temperature now, as typed, in the unit of temperature.
    pub outdoor_now: String,
    /// The technician's own controllers, in the order they were added.
    pub controllers: Vec<Controller>,
    /// What is fitted to systems, by their identifiers, where something else was chosen than the plan speaks for.
    pub fitted: BTreeMap<String, Fitted>,
    /// The hint on the home screen is not wanted any more.
    pub is_install_dismissed: bool,
    /// What a newer version keeps here and this one does not know.
    #[serde(flatten)]
    pub other: BTreeMap<String, serde_json::Value>,
}

impl Preferences {
    /// The language of every screen.
    pub fn language(&self) -> Language {
        self.language.unwrap_or_else(of_the_browser)
    }

    /// The same as if nothing had been typed on the plan's screen and on the worksheets: what other parts of the app go by.
    pub fn without_typed(&self) -> Self {
        Self {
            worksheets: Worksheets::default(),
            outdoor_now: String::new(),
            ..self.clone()
        }
    }

    /// The controller with this identifier.
    pub fn controller(&self, id: &str) -> Option<&Controller> {
        let mut controllers = self.controllers.iter();
        controllers.find(|controller| controller.id == id)
    }

    /// The controller with this identifier, to change.
    pub fn controller_mut(&mut self, id: &str) -> Option<&mut Controller> {
        let mut controllers = self.controllers.iter_mut();
        controllers.find(|controller| controller.id == id)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn older_and_newer_forms_are_read_and_kept() {
        let older: Preferences = serde_json::from_str(r#"{"theme":"dark"}"#).unwrap();
        assert_eq!((older.theme, older.controllers.len()), (Theme::Dark, 0));
        let text = r#"{"controllers":[{"id":"a","sketch":[1]}],"gloves":true}"#;
        let newer: Preferences = serde_json::from_str(text).unwrap();
        assert!(newer.controller("a").is_some());
        let back: serde_json::Value =
            serde_json::from_str(&serde_json::to_string(&newer).unwrap()).unwrap();
        assert_eq!(back["gloves"], true);
        assert_eq!(back["controllers"][0]["sketch"][0], 1);
    }
}

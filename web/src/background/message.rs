//! What page and worker say to each other.

use serde::{Deserialize, Serialize};
use wasm_bindgen::JsValue;
use winterset_profile::WinterHours;
use winterset_words::{Language, Units};

use crate::view::advice::Advice;

/// From the page.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Ask {
    /// What follows from the plan of this record?
    Advice {
        /// Number of the question, which the answers carry.
        id: u32,
        /// The record, as it is kept.
        system: String,
        /// Units to write in.
        units: Units,
        /// Language to write in.
        language: Language,
        /// Hours counted for the site; without them the year is the usual one.
        #[serde(default)]
        hours: Option<WinterHours>,
    },
    /// Whatever it is, leave it.
    Stop,
}

/// From the worker.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Tell {
    /// The worker is there.
    Ready,
    /// How far it is.
    Progress {
        /// Number of the question.
        id: u32,
        /// A share of one.
        share: f64,
    },
    /// Everything.
    Advice {
        /// Number of the question.
        id: u32,
        /// The answer.
        advice: Box<Advice>,
    },
}

pub fn written<T: Serialize>(message: &T) -> JsValue {
    serde_wasm_bindgen::to_value(message).unwrap_or_default()
}

pub fn read<T: for<'a> Deserialize<'a>>(message: JsValue) -> Option<T> {
    serde_wasm_bindgen::from_value(message).ok()
}

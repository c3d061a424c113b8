//! The interface: screens over what is kept, each showing what the `calc` crate answers in the words of the `words` crate.
//!
//! A screen never computes. What a person typed goes into the store at every keystroke, exactly as typed; the plan is made from
//! it anew, and only drawn here.

mod app;
pub mod background;
pub mod components;
mod focus;
pub mod install;
pub mod offline;
mod place;
pub mod route;
pub mod screens;
pub mod store;
pub mod view;
pub mod weather_file;

pub use app::App;

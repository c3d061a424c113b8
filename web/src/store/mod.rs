//! What the browser keeps: sites with their systems, and the technician's own settings.

pub mod demo;
pub mod id;
pub mod keep;
pub mod preferences;
pub mod shelf;

pub use preferences::{Fitted, Preferences, Theme, name_on_page};
pub use shelf::{Act, Shelf, ShelfHandle, use_shelf};

//! The interface.

mod app;
pub mod offline;

pub use app::App;

//! Long work behind the page: on a worker where the browser has one, else in the page in short stretches.
//!
//! The worker runs the same program as the page. It is asked by message, answers with how far it is and at last with everything, and leaves what it
//! was doing as soon as it is asked for something else or told to stop.

mod message;
mod page;
mod worker;

pub use page::{Asked, Heard, ask};
pub use worker::serve;

//! Work in the page in short stretches, so that it answers meanwhile.

use std::cell::Cell;
use std::ops::ControlFlow;

use gloo_timers::future::TimeoutFuture;

/// The longest stretch of work between two looks at what the person does, ms.
const STRETCH: f64 = 16.0;

/// Takes short steps until one breaks; nothing where it was stopped on the way.
pub async fn in_stretches<T>(
    mut step: impl FnMut() -> ControlFlow<T>,
    stopped: &Cell<bool>,
) -> Option<T> {
    loop {
        let start = js_sys::Date::now();
        while js_sys::Date::now() - start < STRETCH {
            if let ControlFlow::Break(done) = step() {
                return (!stopped.get()).then_some(done);
            }
        }
        TimeoutFuture::new(0).await;
        if stopped.get() {
            return None;
        }
    }
}

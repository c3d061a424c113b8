//! How far down a screen was read, kept over a reload: parts of a screen are drawn after it stands, so that the browser alone would come back to its
//! top.

use std::cell::Cell;
use std::rc::Rc;

use gloo_events::EventListener;
use gloo_storage::{SessionStorage, Storage};
use gloo_timers::future::TimeoutFuture;
use wasm_bindgen_futures::spawn_local;
use web_sys::Window;

const PLACE: &str = "winterset.place";

/// How often and how many times to look whether the screen is tall enough, ms.
const PAUSE: u32 = 50;
const LOOKS: u32 = 100;

/// Comes back to where this address was left, and remembers it again when the page goes, as long as the listener is kept.
pub fn keep() -> Option<EventListener> {
    let window = web_sys::window()?;
    if let Ok((address, down)) = SessionStorage::get::<(String, f64)>(PLACE)
        && window.location().hash().ok() == Some(address)
        && down > 0.0
    {
        spawn_local(back(window.clone(), down));
    }
    let at = window.clone();
    Some(EventListener::new(&window, "pagehide", move |_| {
        let place = at.location().hash().ok().zip(at.scroll_y().ok());
        // A place that is not kept is the top.
        let _ = SessionStorage::set(PLACE, place);
    }))
}

/// Waits until the screen is tall enough and goes there, unless the person goes somewhere first.
async fn back(window: Window, down: f64) {
    let moved = Rc::new(Cell::new(false));
    let _listeners = ["pointerdown", "keydown", "wheel", "hashchange"].map(|deed| {
        let moved = moved.clone();
        EventListener::new(&window, deed, move |_| moved.set(true))
    });
    for _ in 0..LOOKS {
        if moved.get() {
            return;
        }
        if most(&window).is_some_and(|most| most >= down) {
            window.scroll_to_with_x_and_y(0.0, down);
            return;
        }
        TimeoutFuture::new(PAUSE).await;
    }
}

/// How far down the screen goes.
fn most(window: &Window) -> Option<f64> {
    let whole = window.document()?.document_element()?.scroll_height();
    Some(f64::from(whole) - window.inner_height().ok()?.as_f64()?)
}

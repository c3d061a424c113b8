//! Putting the app on the home screen, as far as the browser offers it to the page.

use gloo_events::{EventListener, EventListenerOptions};
use js_sys::{Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use yew::Callback;

/// The browser's own question whether to install, put off until a person asks for it.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer(JsValue);

impl Offer {
    /// Lets the browser ask its question. It asks once: whatever comes of it, the offer is used up.
    pub fn take(&self) {
        let prompt = Reflect::get(&self.0, &JsValue::from_str("prompt"))
            .ok()
            .and_then(|prompt| prompt.dyn_into::<Function>().ok());
        if let Some(prompt) = prompt {
            // A browser that thinks better of it shows nothing, and the words on the screen still tell the way.
            let _ = prompt.call0(&self.0);
        }
    }
}

/// Tells of the browser's offer when it comes, and that there is none any more once the app is installed.
///
/// What it returns ends the watching.
pub fn watch(told: Callback<Option<Offer>>) -> impl FnOnce() {
    let listeners = web_sys::window().map(|window| {
        let offered = {
            let told = told.clone();
            EventListener::new_with_options(
                &window,
                "beforeinstallprompt",
                EventListenerOptions::enable_prevent_default(),
                move |event| {
                    // Without this the browser asks by itself, over whatever is on the screen.
                    event.prevent_default();
                    told.emit(Some(Offer(event.clone().into())));
                },
            )
        };
        let installed = EventListener::new(&window, "appinstalled", move |_| told.emit(None));
        (offered, installed)
    });
    move || drop(listeners)
}

/// Whether the app runs from the home screen already.
pub fn is_installed() -> bool {
    web_sys::window()
        .and_then(|window| {
            window
                .match_media("(display-mode: standalone), (display-mode: fullscreen)")
                .ok()
        })
        .flatten()
        .is_some_and(|found| found.matches())
}

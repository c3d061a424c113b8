//! The service worker, which keeps the app's own files so that it opens with no network, seen from the page.

use js_sys::Reflect;
use serde::{Deserialize, Serialize};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    MessageEvent, ServiceWorker, ServiceWorkerContainer, ServiceWorkerRegistration,
    ServiceWorkerState,
};
use yew::Callback;

/// What the page can say about working with no network.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Offline {
    /// This browser, or this address, offers no service worker: the app needs the network to open.
    #[default]
    Unavailable,
    /// The files are on their way.
    Preparing,
    /// Every file is kept.
    Ready,
    /// Every file is kept, and those of a newer version lie beside them.
    NewVersion,
    /// The files could not be kept; the browser's console says why.
    Failed,
}

/// What the page says to the service worker.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
enum Message {
    /// Is every file kept?
    Status,
    /// The new version takes over from the old one.
    TakeOver,
}

/// What the service worker answers.
#[derive(Deserialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
enum Answer {
    /// To [`Message::Status`].
    Status { whole: bool },
}

fn container() -> Option<ServiceWorkerContainer> {
    let window = web_sys::window()?;
    let navigator = window.navigator();
    // Over plain http anywhere but on localhost, browsers leave the whole interface out.
    Reflect::get(&navigator, &JsValue::from_str("serviceWorker"))
        .ok()
        .filter(|found| !found.is_undefined())?;
    Some(navigator.service_worker())
}

/// Asks the browser to keep the app's files, and tells how that goes.
pub fn watch(told: Callback<Offline>) {
    let Some(container) = container() else {
        told.emit(Offline::Unavailable);
        return;
    };
    told.emit(Offline::Preparing);
    spawn_local(async move {
        let registered = JsFuture::from(container.register("sw.js")).await;
        let Ok(registration) = registered.and_then(JsCast::dyn_into::<ServiceWorkerRegistration>)
        else {
            told.emit(Offline::Failed);
            return;
        };
        follow(&container, &registration, &told);
        if JsFuture::from(
            container
                .ready()
                .unwrap_or_else(|_| js_sys::Promise::reject(&JsValue::NULL)),
        )
        .await
        .is_ok()
        {
            tell(&container, &registration, &told);
        }
    });
}

/// Tells how it stands; what is said to be kept, the worker has counted.
fn tell(
    container: &ServiceWorkerContainer,
    registration: &ServiceWorkerRegistration,
    told: &Callback<Offline>,
) {
    match state(container, registration) {
        Offline::Ready => {
            if let Some(worker) = registration.active() {
                say(&worker, &Message::Status);
            }
        }
        other => told.emit(other),
    }
}

fn say(worker: &ServiceWorker, message: &Message) {
    if let Ok(message) = serde_wasm_bindgen::to_value(message) {
        // A worker that is gone does not answer: what the page has said last stays.
        let _ = worker.post_message(&message);
    }
}

/// Tells again whenever a worker is found, whenever its state changes, and when it answers.
fn follow(
    container: &ServiceWorkerContainer,
    registration: &ServiceWorkerRegistration,
    told: &Callback<Offline>,
) {
    let again = {
        let (container, registration, told) =
            (container.clone(), registration.clone(), told.clone());
        move || tell(&container, &registration, &told)
    };
    let found = {
        let (registration, told) = (registration.clone(), told.clone());
        Closure::<dyn Fn()>::new(move || {
            let Some(worker) = registration.installing() else {
                return;
            };
            let changed = {
                let (worker, registration) = (worker.clone(), registration.clone());
                let (told, again) = (told.clone(), again.clone());
                Closure::<dyn Fn()>::new(move || {
                    let given_up = worker.state() == ServiceWorkerState::Redundant;
                    if given_up && registration.active().is_none() {
                        told.emit(Offline::Failed);
                    } else {
                        again();
                    }
                })
            };
            worker.set_onstatechange(Some(changed.as_ref().unchecked_ref()));
            // Lives as long as the page: the worker may change state at any time.
            changed.forget();
        })
    };
    registration.set_onupdatefound(Some(found.as_ref().unchecked_ref()));
    found.forget();
    let answered = {
        let (container, registration, told) =
            (container.clone(), registration.clone(), told.clone());
        Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            if let Ok(Answer::Status { whole }) = serde_wasm_bindgen::from_value(event.data()) {
                told.emit(match state(&container, &registration) {
                    Offline::Ready if !whole => Offline::Failed,
                    other => other,
                });
            }
        })
    };
    container.set_onmessage(Some(answered.as_ref().unchecked_ref()));
    answered.forget();
}

fn state(container: &ServiceWorkerContainer, registration: &ServiceWorkerRegistration) -> Offline {
    if registration.waiting().is_some() && container.controller().is_some() {
        return Offline::NewVersion;
    }
    match registration.active().map(|worker| worker.state()) {
        Some(ServiceWorkerState::Activated) => Offline::Ready,
        _ => Offline::Preparing,
    }
}

/// Lets the waiting version take over, and opens the page anew with it; the address and everything typed stay.
pub fn take_over() {
    let Some(container) = container() else { return };
    let reload = Closure::<dyn Fn()>::new(|| {
        if let Some(window) = web_sys::window() {
            // A refused reload leaves the old version running, which still works.
            let _ = window.location().reload();
        }
    });
    container.set_oncontrollerchange(Some(reload.as_ref().unchecked_ref()));
    reload.forget();
    spawn_local(async move {
        let registration = JsFuture::from(container.get_registration()).await;
        let Ok(registration) = registration.and_then(JsCast::dyn_into::<ServiceWorkerRegistration>)
        else {
            return;
        };
        if let Some(waiting) = registration.waiting() {
            say(&waiting, &Message::TakeOver);
        }
    });
}

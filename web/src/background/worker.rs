//! The worker's side.

use std::cell::Cell;
use std::ops::ControlFlow;

use gloo_timers::future::TimeoutFuture;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen_futures::spawn_local;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};
use winterset_profile::{System, WinterHours};
use winterset_words::Units;

use super::message::{Ask, Tell, read, written};
use crate::view::advice::Work;

thread_local! {
    /// Number of the question that is being worked on.
    static CURRENT: Cell<Option<u32>> = const { Cell::new(None) };
}

/// Answers the page's questions for as long as the worker lives.
pub fn serve() {
    let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() else {
        return;
    };
    let hear =
        Closure::<dyn Fn(MessageEvent)>::new(|event: MessageEvent| match read(event.data()) {
            Some(Ask::Advice {
                id,
                system,
                units,
                language,
                hours,
            }) => {
                language.speak();
                CURRENT.set(Some(id));
                spawn_local(advise(id, system, units, hours));
            }
            Some(Ask::Stop) | None => CURRENT.set(None),
        });
    scope.set_onmessage(Some(hear.as_ref().unchecked_ref()));
    // It hears as long as the worker lives.
    hear.forget();
    tell(&Tell::Ready);
}

fn tell(message: &Tell) {
    if let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() {
        // A page that is gone hears nothing, and nothing is lost by that.
        let _ = scope.post_message(&written(message));
    }
}

async fn advise(id: u32, system: String, units: Units, hours: Option<WinterHours>) {
    let Ok(system) = System::from_json(&system) else {
        return;
    };
    let Ok(plan) = system.plan() else {
        return;
    };
    let mut work = Work::new(&plan, units, hours.as_ref());
    loop {
        // Lets a newer question or a stop in between two steps.
        TimeoutFuture::new(0).await;
        if CURRENT.get() != Some(id) {
            return;
        }
        match work.step(&plan) {
            ControlFlow::Continue(()) => tell(&Tell::Progress {
                id,
                share: work.progress(),
            }),
            ControlFlow::Break(advice) => {
                return tell(&Tell::Advice {
                    id,
                    advice: Box::new(advice),
                });
            }
        }
    }
}

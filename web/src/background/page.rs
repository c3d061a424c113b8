//! The page's side.

use std::cell::{Cell, RefCell};
use std::ops::ControlFlow;
use std::rc::Rc;

use gloo_timers::future::TimeoutFuture;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen_futures::spawn_local;
use web_sys::{HtmlScriptElement, MessageEvent, Worker, WorkerOptions, WorkerType};
use winterset_profile::{System, WinterHours};
use winterset_words::{Language, Units};
use yew::Callback;

use super::message::{Ask, Tell, read, written};
use crate::view::advice::{Advice, Work};
use crate::view::plan::Held;

/// What is heard of a question.
#[derive(Clone, Debug, PartialEq)]
pub enum Heard {
    /// How far it is, a share of one.
    Progress(f64),
    /// Everything.
    Whole(Rc<Advice>),
}

/// A question that was asked; dropping it stops the work.
pub struct Asked {
    id: u32,
    gone: Rc<Cell<bool>>,
}

impl Drop for Asked {
    fn drop(&mut self) {
        self.gone.set(true);
        DESK.with_borrow_mut(|desk| {
            if desk.listener.as_ref().is_some_and(|(id, _)| *id == self.id) {
                desk.listener = None;
                desk.say(&Ask::Stop);
            }
        });
    }
}

#[derive(Default)]
struct Desk {
    worker: Option<Worker>,
    /// Whether the worker has said that it is there.
    is_ready: bool,
    /// What waits for it to be there.
    waiting: Option<Ask>,
    listener: Option<(u32, Callback<Heard>)>,
    last: u32,
}

thread_local! {
    static DESK: RefCell<Desk> = RefCell::default();
}

impl Desk {
    fn say(&mut self, ask: &Ask) {
        match &self.worker {
            Some(worker) if self.is_ready => {
                // A worker that has gone answers nothing; the page goes on without.
                let _ = worker.post_message(&written(ask));
            }
            _ => self.waiting = Some(ask.clone()),
        }
    }
}

/// Asks what follows from the plan of a record. The answers come until the question is dropped.
pub fn ask(
    system: &System,
    plan: Held,
    units: Units,
    hours: Option<WinterHours>,
    heard: Callback<Heard>,
) -> Asked {
    let gone = Rc::new(Cell::new(false));
    let id = DESK.with_borrow_mut(|desk| {
        desk.last = desk.last.wrapping_add(1);
        desk.listener = Some((desk.last, heard.clone()));
        if desk.worker.is_none() {
            desk.worker = started();
        }
        let id = desk.last;
        match (&desk.worker, system.to_json()) {
            (Some(_), Ok(system)) => desk.say(&Ask::Advice {
                id,
                system,
                units,
                language: Language::spoken(),
                hours,
            }),
            _ => spawn_local(in_the_page(plan, units, hours, heard, gone.clone())),
        }
        id
    });
    Asked { id, gone }
}

/// A worker on the program that started this page; `None` where the browser has none, or the page was not started by a program of its own.
fn started() -> Option<Worker> {
    let document = web_sys::window()?.document()?;
    let loader = document
        .query_selector("script[type=module][src]")
        .ok()??
        .dyn_into::<HtmlScriptElement>()
        .ok()?;
    let options = WorkerOptions::new();
    options.set_type(WorkerType::Module);
    let worker = Worker::new_with_options(&loader.src(), &options).ok()?;
    let hear = Closure::<dyn Fn(MessageEvent)>::new(|event: MessageEvent| {
        if let Some(told) = read(event.data()) {
            hear(told);
        }
    });
    worker.set_onmessage(Some(hear.as_ref().unchecked_ref()));
    // It hears as long as the page lives.
    hear.forget();
    Some(worker)
}

fn hear(told: Tell) {
    let (id, heard) = match told {
        Tell::Ready => {
            return DESK.with_borrow_mut(|desk| {
                desk.is_ready = true;
                if let Some(ask) = desk.waiting.take() {
                    desk.say(&ask);
                }
            });
        }
        Tell::Progress { id, share } => (id, Heard::Progress(share)),
        Tell::Advice { id, advice } => (id, Heard::Whole(Rc::new(*advice))),
    };
    let listener = DESK.with_borrow(|desk| desk.listener.clone());
    // What comes late answers a question that nobody asks any more.
    if let Some((_, listener)) = listener.filter(|(wanted, _)| *wanted == id) {
        listener.emit(heard);
    }
}

/// The same work in the page, a step between two looks at what the person does.
async fn in_the_page(
    plan: Held,
    units: Units,
    hours: Option<WinterHours>,
    heard: Callback<Heard>,
    gone: Rc<Cell<bool>>,
) {
    let Ok(plan) = plan.0.as_ref() else {
        return;
    };
    let mut work = Work::new(plan, units, hours.as_ref());
    loop {
        TimeoutFuture::new(0).await;
        if gone.get() {
            return;
        }
        match work.step(plan) {
            ControlFlow::Continue(()) => heard.emit(Heard::Progress(work.progress())),
            ControlFlow::Break(advice) => return heard.emit(Heard::Whole(Rc::new(advice))),
        }
    }
}

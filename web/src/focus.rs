//! Where the focus goes when what had it leaves the screen: to the nearest part that is still there, never back to the top of the page.

use gloo_events::{EventListener, EventListenerOptions};
use gloo_timers::callback::Timeout;
use wasm_bindgen::JsCast;
use web_sys::{Document, Element, FocusOptions, HtmlElement};

/// What takes the focus in a part: of a whole screen its title, where a reader begins, else the first answer, else whatever can be operated.
const FIRST: [&str; 3] = [
    "h1[tabindex]",
    "input, select, textarea",
    "button, summary, a[href]",
];

/// What a person does to something that may go by it: a touch of a button, a choice in a list.
const DEEDS: [&str; 2] = ["click", "change"];

/// Watches for what goes as soon as it is used, as long as the listeners are kept.
pub fn watch() -> Vec<EventListener> {
    let document = web_sys::window().and_then(|window| window.document());
    let on = |deed| Some(listen(document.clone()?, deed));
    DEEDS.into_iter().filter_map(on).collect()
}

fn listen(document: Document, deed: &'static str) -> EventListener {
    let options = EventListenerOptions::run_in_capture_phase();
    let at = document.clone();
    EventListener::new_with_options(&document, deed, options, move |event| {
        let touched = event
            .target()
            .and_then(|target| target.dyn_into::<Element>().ok());
        let around: Vec<Element> =
            std::iter::successors(touched, |part| part.parent_element()).collect();
        let document = at.clone();
        // By then the screen has followed.
        Timeout::new(0, move || catch(&document, &around)).forget();
    })
}

/// Takes up the focus if it was lost with what was touched.
fn catch(document: &Document, around: &[Element]) {
    let is_there = around.first().is_none_or(|touched| touched.is_connected());
    let is_lost = document
        .active_element()
        .is_none_or(|active| active.tag_name() == "BODY");
    if is_there || !is_lost {
        return;
    }
    let next = around
        .iter()
        .filter(|part| part.is_connected())
        .find_map(|part| {
            let mut first = FIRST.into_iter();
            first.find_map(|css| part.query_selector(css).ok().flatten())
        })
        .and_then(|next| next.dyn_into::<HtmlElement>().ok());
    if let Some(next) = next {
        let calm = FocusOptions::new();
        calm.set_prevent_scroll(true);
        // What cannot take the focus leaves it where it was lost.
        let _ = next.focus_with_options(&calm);
    }
}

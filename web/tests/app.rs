//! The interface in a browser's engine: what is kept, what a form does with bad answers, and what a link brings.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used)] // a broken step should stop its test

use std::rc::Rc;

use gloo_storage::{LocalStorage, Storage};
use gloo_timers::future::TimeoutFuture;
use wasm_bindgen::JsCast;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};
use web_sys::{Event, EventInit, HtmlInputElement, HtmlSelectElement};
use winterset_calc::Field;
use winterset_profile::{Entry, Site, System, share};
use winterset_web::App;
use winterset_web::store::{Act, Fitted, Preferences, Shelf};
use winterset_words::Language;
use yew::Reducible;

wasm_bindgen_test_configure!(run_in_browser);

fn document() -> web_sys::Document {
    web_sys::window().unwrap().document().unwrap()
}

/// Opens the app at an address, on a page of its own.
async fn open(hash: &str) -> yew::AppHandle<App> {
    web_sys::window()
        .unwrap()
        .location()
        .set_hash(hash)
        .unwrap();
    if let Some(old) = document().get_element_by_id("page") {
        old.remove();
    }
    // Beside what the test runner has on its page.
    let page = document().create_element("div").unwrap();
    page.set_id("page");
    document().body().unwrap().append_child(&page).unwrap();
    let app = yew::Renderer::<App>::with_root(page).render();
    settle().await;
    app
}

/// Lets the screen follow.
async fn settle() {
    TimeoutFuture::new(60).await;
}

/// Lets the screen work out what it shows there.
async fn worked_out(css: &str) {
    for _ in 0..200 {
        if found(css).is_some() {
            return;
        }
        settle().await;
    }
}

fn found(css: &str) -> Option<web_sys::Element> {
    document().query_selector(&format!("#page {css}")).unwrap()
}

fn said(css: &str) -> String {
    found(css)
        .and_then(|element| element.text_content())
        .unwrap_or_default()
}

fn tell(target: &web_sys::EventTarget, event: &str) {
    let bubbling = EventInit::new();
    bubbling.set_bubbles(true);
    let event = Event::new_with_event_init_dict(event, &bubbling).unwrap();
    target.dispatch_event(&event).unwrap();
}

async fn type_into(css: &str, text: &str) {
    let input: HtmlInputElement = found(css).unwrap().dyn_into().unwrap();
    input.set_value(text);
    tell(&input, "input");
    settle().await;
}

async fn choose(css: &str, value: &str) {
    let select: HtmlSelectElement = found(css).unwrap().dyn_into().unwrap();
    select.set_value(value);
    tell(&select, "change");
    settle().await;
}

fn hut() -> System {
    let mut system = System::new("north", "Split, north wall");
    system.set(Field::Refrigerant, Entry::new("R-410A"));
    system.set(Field::CoolingCapacity, Entry::with_unit("36000", "Btu/h"));
    system.set(Field::OutdoorLow, Entry::with_unit("-18", "F"));
    system
}

fn keep(id: &str, system: System) {
    LocalStorage::clear();
    let mut site = Site::new(id, "Hillside radio hut");
    site.systems.push(system);
    let _ = Rc::new(Shelf::load()).reduce(Act::AddSite(site));
}

#[wasm_bindgen_test]
fn what_is_kept_comes_back() {
    keep("a", hut());
    let edit: Rc<dyn Fn(&mut System)> = Rc::new(|system| {
        system.set(Field::Voltage, Entry::with_unit("zwölf", "V"));
    });
    let shelf = Rc::new(Shelf::load()).reduce(Act::EditSystem {
        site: "a".to_owned(),
        system: "north".to_owned(),
        edit,
    });
    assert_eq!(shelf.trouble, None);
    let again = Shelf::load();
    assert_eq!(again.sites, shelf.sites);
    let system = again.site("a").unwrap().system("north").unwrap();
    assert_eq!(system.entry(Field::Voltage).unwrap().typed, "zwölf");

    let gone = Rc::new(again).reduce(Act::RemoveSite("a".to_owned()));
    assert!(gone.sites.is_empty());
    assert!(Shelf::load().sites.is_empty());
}

#[wasm_bindgen_test]
fn what_was_fitted_goes_with_its_system() {
    keep("a", hut());
    let mut other = Site::new("b", "Brewery");
    other.systems.push(System::new("cellar", "Cellar"));
    let shelf = Rc::new(Shelf::load()).reduce(Act::AddSite(other));
    let choose: Rc<dyn Fn(&mut Preferences)> = Rc::new(|preferences| {
        for system in ["north", "cellar"] {
            preferences
                .fitted
                .insert(system.to_owned(), Fitted::default());
        }
    });
    let shelf = shelf.reduce(Act::EditPreferences(choose));
    let shelf = shelf.reduce(Act::EditSite {
        site: "a".to_owned(),
        edit: Rc::new(|site: &mut Site| site.systems.clear()),
    });
    let left =
        |shelf: &Shelf| -> Vec<String> { shelf.preferences.fitted.keys().cloned().collect() };
    assert_eq!(left(&shelf), ["cellar"]);
    let shelf = shelf.reduce(Act::RemoveSite("b".to_owned()));
    assert!(left(&shelf).is_empty());
    assert!(left(&Shelf::load()).is_empty());
}

#[wasm_bindgen_test]
fn when_a_site_was_opened_is_kept_beside_its_record() {
    keep("a", hut());
    let opened = |site: &str, at| Act::Opened {
        site: site.to_owned(),
        at,
    };
    let record = LocalStorage::raw().get_item("winterset.site.a").unwrap();
    let shelf = Rc::new(Shelf::load()).reduce(opened("a", 7));
    let shelf = shelf.reduce(opened("nowhere", 8));
    assert_eq!(Shelf::load().opened, shelf.opened);
    assert_eq!(shelf.opened.len(), 1);
    let after = LocalStorage::raw().get_item("winterset.site.a").unwrap();
    assert_eq!(record, after);
    // An order that cannot be read costs nothing but the order.
    LocalStorage::raw()
        .set_item("winterset.opened", "[]")
        .unwrap();
    let shelf = Shelf::load();
    assert!(shelf.opened.is_empty() && shelf.unreadable.is_empty());
    LocalStorage::clear();
}

#[wasm_bindgen_test]
fn what_cannot_be_read_is_left_alone() {
    LocalStorage::clear();
    LocalStorage::raw()
        .set_item("winterset.site.x", "{not json")
        .unwrap();
    let shelf = Shelf::load();
    assert!(shelf.sites.is_empty());
    assert_eq!(shelf.unreadable.len(), 1);
    let left = LocalStorage::raw().get_item("winterset.site.x").unwrap();
    assert_eq!(left.as_deref(), Some("{not json"));
    LocalStorage::clear();
}

#[wasm_bindgen_test]
fn a_full_storage_is_said_and_the_change_stays_on_the_screen() {
    LocalStorage::clear();
    // Browsers grant a page about five million characters.
    let filler = "x".repeat(1 << 20);
    for part in 0..12 {
        if LocalStorage::raw()
            .set_item(&format!("filler.{part}"), &filler)
            .is_err()
        {
            break;
        }
    }
    let mut large = Site::new("large", "y".repeat(1 << 20));
    large.systems.push(hut());
    let shelf = Rc::new(Shelf::load()).reduce(Act::AddSite(large));
    assert_eq!(
        shelf.trouble,
        Some(winterset_web::store::keep::KeepError::Full)
    );
    assert_eq!(shelf.sites.len(), 1);
    // Looking at a site afterwards does not unsay it.
    let trouble = shelf.trouble.clone();
    let shelf = shelf.reduce(Act::Opened {
        site: "large".to_owned(),
        at: 1,
    });
    assert_eq!(shelf.trouble, trouble);
    LocalStorage::clear();
}

#[wasm_bindgen_test]
async fn a_form_keeps_what_is_no_number() {
    keep("b", hut());
    let app = open("#/site/b/north/inputs").await;
    type_into("#answer-voltage", "mains").await;
    assert!(
        said("#error-voltage").contains("number"),
        "{}",
        said("#error-voltage")
    );
    let kept = Shelf::load();
    let entry = kept
        .site("b")
        .unwrap()
        .system("north")
        .unwrap()
        .entry(Field::Voltage)
        .unwrap()
        .clone();
    assert_eq!(entry.typed, "mains");

    choose("#unit-outdoor_low", "C").await;
    let kept = Shelf::load();
    let entry = kept
        .site("b")
        .unwrap()
        .system("north")
        .unwrap()
        .entry(Field::OutdoorLow)
        .unwrap()
        .clone();
    assert_eq!(entry, Entry::with_unit("-18", "C"));

    type_into("#answer-voltage", "208").await;
    assert_eq!(said("#error-voltage"), "");
    app.destroy();
}

#[wasm_bindgen_test]
async fn a_link_shows_what_it_holds_and_saves_only_when_told() {
    LocalStorage::clear();
    let payload = share::encode(&hut()).unwrap();
    let app = open(&format!("#/share/{payload}")).await;
    assert_eq!(said("h1"), "Split, north wall");
    worked_out("[data-verdict]").await;
    assert!(
        said("[data-verdict]").contains("holds to"),
        "{}",
        said("[data-verdict]")
    );
    assert!(Shelf::load().sites.is_empty());

    found("main .button--first")
        .unwrap()
        .unchecked_into::<web_sys::HtmlElement>()
        .click();
    settle().await;
    let kept = Shelf::load();
    assert_eq!(kept.sites.len(), 1);
    assert_eq!(kept.sites[0].systems[0].entries, hut().entries);
    app.destroy();
}

#[wasm_bindgen_test]
async fn a_damaged_link_is_said_to_be_one() {
    LocalStorage::clear();
    let app = open("#/share/1.damaged").await;
    assert!(said("h1").contains("cut short"), "{}", said("h1"));
    assert!(Shelf::load().sites.is_empty());
    app.destroy();
}

/// The language that the page says it is in.
fn page_language() -> Option<String> {
    document().document_element().unwrap().get_attribute("lang")
}

async fn pick_language(tag: &str) {
    let radio: HtmlInputElement = found(&format!("input[name=language][value={tag}]"))
        .unwrap()
        .dyn_into()
        .unwrap();
    radio.focus().unwrap();
    radio.click();
    settle().await;
}

/// Everything on the page follows at once, the choice keeps the focus, and it is there again on the next visit.
#[wasm_bindgen_test]
async fn a_language_is_spoken_at_once_and_kept() {
    LocalStorage::clear();
    let app = open("#/settings").await;
    assert_eq!(said("h1"), "Settings");
    assert_eq!(page_language().as_deref(), Some("en"));

    pick_language("es").await;
    assert_eq!(said("h1"), "Ajustes");
    assert!(said(".places").contains("Sitios"), "{}", said(".places"));
    assert_eq!(page_language().as_deref(), Some("es"));
    let focused = document().active_element().unwrap();
    assert_eq!(focused.get_attribute("value").as_deref(), Some("es"));

    pick_language("fr").await;
    assert_eq!(said("h1"), "Réglages");
    assert_eq!(page_language().as_deref(), Some("fr"));
    app.destroy();

    let app = open("#/worksheets").await;
    assert_eq!(said("h1"), "Fiches de calcul");
    app.destroy();
    LocalStorage::clear();
}

/// Another window's choice reaches a screen that is open, what is being typed on it included.
#[wasm_bindgen_test]
async fn a_language_chosen_in_another_window_is_followed() {
    keep("c", hut());
    let app = open("#/site/c/north/inputs").await;
    type_into("#answer-voltage", "mains").await;
    assert!(said("#error-voltage").contains("number"));

    let shelf = Rc::new(Shelf::load());
    let _ = shelf.reduce(Act::EditPreferences(Rc::new(|preferences| {
        preferences.language = Some(Language::Spanish);
    })));
    tell(&web_sys::window().unwrap(), "storage");
    settle().await;
    assert!(
        said("#error-voltage").contains("número"),
        "{}",
        said("#error-voltage")
    );
    let typed: HtmlInputElement = found("#answer-voltage").unwrap().dyn_into().unwrap();
    assert_eq!(typed.value(), "mains");
    app.destroy();
    LocalStorage::clear();
    // What is spoken stands on the thread, which the next test shares.
    Language::English.speak();
}

/// What is written with a comma is taken with a comma.
#[wasm_bindgen_test]
async fn a_worksheet_answers_with_the_signs_of_the_language() {
    LocalStorage::clear();
    let _ = Rc::new(Shelf::load()).reduce(Act::EditPreferences(Rc::new(|preferences| {
        preferences.language = Some(Language::French);
    })));
    let app = open("#/worksheets/units").await;
    assert_eq!(said("h1"), "Unités");
    assert!(!said("main").contains("Temperature"), "{}", said("main"));
    app.destroy();
    LocalStorage::clear();
    Language::English.speak();
}

//! The frame around every screen: what is kept, what the app says about itself, and the three places.

use gloo_events::EventListener;
use wasm_bindgen::JsCast;
use winterset_words::{Language, screen};
use yew::prelude::*;
use yew_router::prelude::*;

use crate::components::places::Places;
use crate::focus;
use crate::install::{self, Offer};
use crate::offline::{self, Offline};
use crate::place;
use crate::route::{Place, Route};
use crate::screens;
use crate::store::keep::KeepError;
use crate::store::{Act, Shelf, name_on_page, shelf};

/// The whole app.
#[component]
pub fn App() -> Html {
    let kept = use_reducer_eq(Shelf::load);
    let offline = use_state_eq(Offline::default);
    use_effect_with((), {
        let offline = offline.setter();
        move |()| offline::watch(Callback::from(move |state| offline.set(state)))
    });
    use_effect_with((), |()| {
        let listeners = (focus::watch(), place::keep());
        move || drop(listeners)
    });
    let offer = use_state_eq(|| None::<Offer>);
    use_effect_with((), {
        let offer = offer.setter();
        move |()| install::watch(Callback::from(move |found| offer.set(found)))
    });
    use_effect_with((), {
        let dispatcher = kept.dispatcher();
        move |()| {
            let window = web_sys::window();
            let listener = window.map(|window| {
                EventListener::new(&window, "storage", move |event| {
                    let key = event
                        .dyn_ref::<web_sys::StorageEvent>()
                        .and_then(|event| event.key());
                    if key.is_none_or(|key| shelf::is_ours(&key)) {
                        dispatcher.dispatch(Act::Reload);
                    }
                })
            });
            move || drop(listener)
        }
    });
    use_effect_with(kept.preferences.theme, |theme| theme.apply());
    let language = kept.preferences.language();
    // Before anything below is drawn.
    language.speak();
    use_effect_with(language, |language| name_on_page(*language));
    html! {
        <ContextProvider<UseReducerHandle<Shelf>> context={kept}>
            <ContextProvider<Offline> context={*offline}>
                <ContextProvider<Option<Offer>> context={(*offer).clone()}>
                    <HashRouter><Frame {language} /></HashRouter>
                </ContextProvider<Option<Offer>>>
            </ContextProvider<Offline>>
        </ContextProvider<UseReducerHandle<Shelf>>>
    }
}

#[derive(PartialEq, Properties)]
struct FrameProps {
    language: Language,
}

/// The screen of the address, between the notices and the places.
#[component]
fn Frame(props: &FrameProps) -> Html {
    let route = use_route::<Route>();
    use_opened(route.as_ref().and_then(Route::site));
    let here = route.map_or(Place::Sites, |route| route.place());
    let spoken = props.language.tag();
    // A new key draws everything anew. The settings follow by themselves, and so keep the focus at the choice just made.
    let screen_key = match here {
        Place::Settings => "settings".to_owned(),
        Place::Sites | Place::Worksheets => format!("screen-{spoken}"),
    };
    html! {
        <div class="frame">
            <Notices key={format!("notices-{spoken}")} />
            <Switch<Route> key={screen_key} render={screens::of} />
            <Places key={format!("places-{spoken}")} {here} />
        </div>
    }
}

/// Notes which site is opened, so that the one in use stands first among the sites.
#[hook]
fn use_opened(site: Option<&str>) {
    let kept = use_context::<UseReducerHandle<Shelf>>();
    // A site that was just added is noted too, as soon as it is there.
    let site = site
        .filter(|site| kept.as_ref().is_some_and(|kept| kept.site(site).is_some()))
        .map(str::to_owned);
    use_effect_with(site, move |site| {
        if let (Some(kept), Some(site)) = (kept, site.clone()) {
            kept.dispatch(Act::Opened {
                site,
                at: js_sys::Date::now() as u64,
            });
        }
    });
}

/// What the app has to say about itself: what was not kept, and a new version.
#[component]
fn Notices() -> Html {
    let t = screen();
    let kept = use_context::<UseReducerHandle<Shelf>>();
    let offline = use_context::<Offline>().unwrap_or_default();
    let trouble = kept.and_then(|kept| kept.trouble.clone());
    let take_over = Callback::from(|_: MouseEvent| offline::take_over());
    html! {
        <div class="notices" aria-live="polite">
            if let Some(trouble) = trouble {
                <div class="notice notice--ember" role="alert">
                    <p><strong>{ t.not_saved }</strong>{ " " }{ match trouble {
                        KeepError::Full => t.storage_full.to_owned(),
                        KeepError::Refused(_) => t.storage_refused.to_owned(),
                        KeepError::Unreadable(why) => why,
                    } }</p>
                </div>
            }
            if offline == Offline::NewVersion {
                <div class="notice">
                    <p>{ t.new_version }</p>
                    <button type="button" class="button" onclick={take_over}>{ t.use_new_version }</button>
                </div>
            }
        </div>
    }
}

//! The elevation that this phone gives: asked for by a touch alone, and said plainly where none comes.

use js_sys::{Promise, Reflect};
use uom::si::f64::Length;
use uom::si::length::meter;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::PositionOptions;
use yew::prelude::*;

use crate::view::words;

/// How long the phone may look for its position, ms. Height needs a fix by satellite, which takes its time.
const PATIENCE: u32 = 45_000;

/// How old a position may be, ms.
const OLDEST: u32 = 600_000;

/// Properties of [`FromPhone`].
#[derive(PartialEq, Properties)]
pub struct FromPhoneProps {
    /// What is typed in the field now. Typing there leaves the phone's answer unheard.
    pub text: AttrValue,
    /// Writes how far the phone may be off.
    pub write: Callback<Length, String>,
    /// An elevation came.
    pub take: Callback<Length>,
}

/// How far the asking is.
#[derive(Clone, PartialEq)]
enum Asking {
    Not,
    Now,
    Said(AttrValue),
}

/// The button, and what came of it.
#[component]
pub fn FromPhone(props: &FromPhoneProps) -> Html {
    let t = words().phone();
    let asking = use_state_eq(|| Asking::Not);
    // The number of the last question; an answer to an older one is not heard.
    let current = use_mut_ref(|| 0_u32);
    {
        let (asking, current) = (asking.clone(), current.clone());
        use_effect_with(props.text.clone(), move |_| {
            if *asking == Asking::Now {
                asking.set(Asking::Not);
            }
            move || *current.borrow_mut() += 1
        });
    }
    let touched = {
        let (asking, write, take) = (asking.clone(), props.write.clone(), props.take.clone());
        Callback::from(move |_: MouseEvent| {
            if *asking == Asking::Now {
                return;
            }
            asking.set(Asking::Now);
            let (asking, write, take) = (asking.clone(), write.clone(), take.clone());
            let current = current.clone();
            *current.borrow_mut() += 1;
            let question = *current.borrow();
            spawn_local(async move {
                let answer = ask().await;
                if *current.borrow() != question {
                    return;
                }
                asking.set(Asking::Said(match &answer {
                    Ok(found) => match found.within {
                        Some(within) => (t.filled_within)(&write.emit(within)).into(),
                        None => t.filled.into(),
                    },
                    Err(refusal) => refusal.word().into(),
                }));
                if let Ok(found) = answer {
                    take.emit(found.elevation);
                }
            });
        })
    };
    let said = match &*asking {
        Asking::Not => AttrValue::from(t.note),
        Asking::Now => t.asking.into(),
        Asking::Said(said) => said.clone(),
    };
    html! {
        <div class="from-phone">
            <button type="button" class="button" id="from-phone" onclick={touched} aria-describedby="from-phone-said">{ t.ask }</button>
            <p class="part__note" id="from-phone-said" role="status">{ said }</p>
        </div>
    }
}

/// An elevation, and how far it may be off where the phone says so.
struct Found {
    elevation: Length,
    within: Option<Length>,
}

/// Why no elevation came.
#[derive(Clone, Copy)]
enum Refusal {
    Unavailable,
    Refused,
    NotFound,
    NoAltitude,
}

impl Refusal {
    fn word(self) -> &'static str {
        let t = words().phone();
        match self {
            Refusal::Unavailable => t.unavailable,
            Refusal::Refused => t.refused,
            Refusal::NotFound => t.not_found,
            Refusal::NoAltitude => t.no_altitude,
        }
    }
}

async fn ask() -> Result<Found, Refusal> {
    let geolocation = web_sys::window()
        .and_then(|window| window.navigator().geolocation().ok())
        .filter(|geolocation| !geolocation.is_undefined())
        .ok_or(Refusal::Unavailable)?;
    let options = PositionOptions::new();
    options.set_enable_high_accuracy(true);
    options.set_timeout(PATIENCE);
    options.set_maximum_age(OLDEST);
    let answer = Promise::new(&mut |found, failed| {
        let asked = geolocation.get_current_position_with_error_callback_and_options(
            &found,
            Some(&failed),
            &options,
        );
        if let Err(error) = asked {
            // Only a function that throws could refuse this, and there the question fails for want of an answer.
            let _ = failed.call1(&JsValue::UNDEFINED, &error);
        }
    });
    let position = JsFuture::from(answer).await.map_err(|error| {
        // The number that the Geolocation specification gives a refusal.
        const PERMISSION_DENIED: f64 = 1.0;
        if number(&error, "code") == Some(PERMISSION_DENIED) {
            Refusal::Refused
        } else {
            Refusal::NotFound
        }
    })?;
    let coordinates = Reflect::get(&position, &"coords".into()).unwrap_or_default();
    let length = |name| number(&coordinates, name).map(Length::new::<meter>);
    Ok(Found {
        elevation: length("altitude").ok_or(Refusal::NoAltitude)?,
        within: length("altitudeAccuracy"),
    })
}

/// A number that an object may carry. The bindings hold these objects for unstable, so they are read by name.
fn number(object: &JsValue, name: &str) -> Option<f64> {
    let value = Reflect::get(object, &name.into()).ok()?;
    value.as_f64().filter(|number| number.is_finite())
}

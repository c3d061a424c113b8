//! The winter hours of a site: a weather file is picked and read, and what it says is offered.

use std::cell::Cell;
use std::rc::Rc;

use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;
use winterset_profile::WinterHours;
use winterset_words::Units;
use yew::prelude::*;

use super::confirm::Confirm;
use crate::view::{weather, words};
use crate::weather_file::read;

/// Properties of [`WeatherPart`].
#[derive(PartialEq, Properties)]
pub struct WeatherProps {
    /// What is kept of a file.
    pub kept: Option<WinterHours>,
    /// Units to write in.
    pub units: Units,
    /// How many systems there are, and whether each has the design low as its site's low already.
    pub systems: (usize, bool),
    /// Other hours are to be kept, or none.
    pub keep: Callback<Option<WinterHours>>,
    /// The design low is to be the site's low of every system.
    pub use_low: Callback<()>,
}

/// How the reading of a file stands.
#[derive(Clone, Debug, PartialEq)]
enum Reading {
    /// No file is read.
    Idle,
    /// A share of one is read.
    Share(f64),
    /// The last file gave no hours, for this reason.
    Wrong(String),
}

/// The winter hours.
#[component]
pub fn WeatherPart(props: &WeatherProps) -> Html {
    let t = words().weather();
    let reading = use_state_eq(|| Reading::Idle);
    // The flag of the reading that is under way; setting it ends that reading.
    let under_way = use_mut_ref(|| Rc::new(Cell::new(true)));
    {
        let under_way = under_way.clone();
        use_effect_with((), move |_| move || under_way.borrow().set(true));
    }
    let cancel = {
        let (reading, under_way) = (reading.clone(), under_way.clone());
        Callback::from(move |_: MouseEvent| {
            under_way.borrow().set(true);
            reading.set(Reading::Idle);
        })
    };
    let pick = {
        let (reading, keep) = (reading.clone(), props.keep.clone());
        Callback::from(move |event: Event| {
            let input = event.target_dyn_into::<HtmlInputElement>();
            let Some(file) = input.as_ref().and_then(|input| input.files()?.get(0)) else {
                return;
            };
            // So that the same file can be picked again.
            input.into_iter().for_each(|input| input.set_value(""));
            under_way.borrow().set(true);
            let gone = Rc::new(Cell::new(false));
            under_way.replace(gone.clone());
            reading.set(Reading::Share(0.0));
            let (reading, keep) = (reading.clone(), keep.clone());
            spawn_local(async move {
                let progress = {
                    let reading = reading.clone();
                    move |share| reading.set(Reading::Share(share))
                };
                match read(file, gone, progress).await {
                    None => {}
                    Some(Ok(hours)) => {
                        keep.emit(Some(hours));
                        reading.set(Reading::Idle);
                    }
                    Some(Err(error)) => reading.set(Reading::Wrong(weather::wrong(&error))),
                }
            });
        })
    };
    let body = match &*reading {
        Reading::Share(share) => html! { <>
            <p class="part__note">{ t.reading }</p>
            <progress max="1" value={share.to_string()} aria-label={t.reading} />
            <div class="buttons">
                <button type="button" class="button" data-act="cancel" onclick={cancel}>{ t.cancel }</button>
            </div>
        </> },
        other => {
            let wrong = match other {
                Reading::Wrong(why) => why.clone(),
                _ => String::new(),
            };
            html! { <>
                <p class="row__error" role="alert" data-weather="wrong">{ wrong }</p>
                { kept(props) }
                <div class="buttons">
                    <label class="button pick">
                        <input class="unseen" type="file" id="answer-weather" onchange={pick} />
                        { if props.kept.is_some() { t.choose_another } else { t.choose } }
                    </label>
                </div>
            </> }
        }
    };
    html! {
        <section class="part" data-part="weather">
            <h2>{ t.head }</h2>
            <p class="part__note">{ t.note }</p>
            { body }
        </section>
    }
}

fn kept(props: &WeatherProps) -> Html {
    let t = words().weather();
    let Some(hours) = &props.kept else {
        return Html::default();
    };
    let low = weather::low(hours, props.units);
    let (systems, is_used) = props.systems;
    html! { <>
        <p data-weather="kept">{ (t.counted)(hours.place(), &low) }</p>
        if systems > 0 && is_used {
            <p class="quiet">{ t.low_used }</p>
        } else if systems > 0 {
            <div class="buttons">
                <Confirm act={(t.use_low)(&low, systems)} question={t.use_low_question} done={props.use_low.clone()} />
            </div>
        }
        <div class="buttons">
            <Confirm act={t.remove} question={t.remove_question} done={props.keep.reform(|()| None)} />
        </div>
    </> }
}

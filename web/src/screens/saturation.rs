//! The saturation worksheet: bubble and dew from a temperature or from a gauge pressure, at an elevation.

use std::rc::Rc;

use winterset_profile::Kind;
use winterset_words::{Shown, screen};
use yew::prelude::*;

use crate::components::field::{Choose, Number, Round};
use crate::components::head::Head;
use crate::store::{Act, SaturationSheet, use_shelf};
use crate::view::fields;
use crate::view::saturation::{Answered, answer};

/// The worksheet.
#[component]
pub fn SaturationScreen() -> Html {
    let t = screen();
    let shelf = use_shelf();
    let units = shelf.preferences.units;
    let sheet = shelf.preferences.saturation.clone();
    let answered = use_memo((sheet.clone(), units), |(sheet, units)| {
        answer(sheet, *units)
    });
    let edit = |change: fn(&mut SaturationSheet, String)| {
        let shelf = shelf.dispatcher();
        Callback::from(move |text: String| {
            shelf.dispatch(Act::EditPreferences(Rc::new(move |preferences| {
                change(&mut preferences.saturation, text.clone());
            })));
        })
    };
    let one = |kind: Kind| {
        let unit = units.unit(kind);
        vec![(
            AttrValue::from(unit.token()),
            AttrValue::from(unit.symbol()),
        )]
    };
    let round = |key: &'static str, ask: &'static str, error: Option<String>| Round {
        key: key.into(),
        ask: ask.into(),
        error: error.map(AttrValue::from),
        ..Round::default()
    };
    html! {
        <main class="screen">
            <Head title={t.saturation} />
            <Choose round={round("refrigerant", t.refrigerant, answered.refrigerant.clone())} choices={fields::refrigerants()}
                chosen={sheet.refrigerant.clone()} choose={edit(|sheet, text| sheet.refrigerant = text)} />
            if answered.estimated {
                <p class="quiet" data-note="estimated">{ t.estimated }</p>
            }
            <section class="part">
                <h2>{ t.from_temperature }</h2>
                <Number round={round("temperature", t.temperature, answered.at_temperature.clone().err())} signed=true
                    text={sheet.temperature.clone()} units={one(Kind::Temperature)} unit={units.unit(Kind::Temperature).token()}
                    edit={edit(|sheet, text| sheet.temperature = text)} />
                { pair(&answered.at_temperature, "at-temperature") }
            </section>
            <section class="part">
                <h2>{ t.from_pressure }</h2>
                <Number round={round("pressure", t.pressure, answered.at_pressure.clone().err())} signed=true
                    text={sheet.pressure.clone()} units={one(Kind::Pressure)} unit={units.unit(Kind::Pressure).token()}
                    edit={edit(|sheet, text| sheet.pressure = text)} />
                { pair(&answered.at_pressure, "at-pressure") }
            </section>
            <section class="part">
                <Number text={sheet.elevation.clone()} signed=true units={fields::units_of(Kind::Elevation)}
                    unit={sheet.elevation_unit.clone()} edit={edit(|sheet, text| sheet.elevation = text)}
                    choose={edit(|sheet, unit| sheet.elevation_unit = unit)}
                    round={Round {
                        assumed: Some(t.sea_level.into()),
                        ..round("elevation", t.elevation, answered.elevation.clone())
                    }} />
                <p class="quiet">{ (t.gauge_note)(&answered.air.to_string()) }</p>
            </section>
        </main>
    }
}

/// Bubble and dew side by side.
fn pair(answered: &Answered, key: &'static str) -> Html {
    let t = screen();
    let Ok(Some(answer)) = answered else {
        return Html::default();
    };
    let one = |name: &'static str, shown: &Shown| {
        html! { <div><dt>{ name }</dt><dd>{ &shown.number }<small>{ "\u{a0}" }{ shown.unit }</small></dd></div> }
    };
    html! {
        <dl class="pair" aria-live="polite" data-answer={key}>
            { one(t.bubble, &answer.bubble) }
            { one(t.dew, &answer.dew) }
            if let Some(glide) = &answer.glide {
                { one(t.glide, glide) }
            }
        </dl>
    }
}

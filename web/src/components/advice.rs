//! What follows from a plan: methods side by side, what lowers the need, what to order, where the sensor goes, the start in the cold.

use std::cell::RefCell;
use std::rc::Rc;

use winterset_calc::Field;
use winterset_profile::{System, WinterHours};
use winterset_words::{Language, Units, screen};
use yew::prelude::*;

use super::go::Go;
use crate::background::{Heard, ask};
use crate::route::Route;
use crate::view::advice::{Advice, Item, MethodLine};
use crate::view::plan::Held;
use crate::view::words;

/// Properties of [`AdvicePart`].
#[derive(PartialEq, Properties)]
pub struct AdviceProps {
    /// The record.
    pub system: System,
    /// Its plan.
    pub plan: Held,
    /// Units to write in.
    pub units: Units,
    /// Hours counted for the site.
    pub hours: Option<WinterHours>,
    /// Where a field of the system is answered.
    pub input: Callback<Field, Route>,
}

/// What the advice hangs on besides the plan's record.
type Asked = (Held, Units, Option<WinterHours>, Language);

thread_local! {
    /// The advice given last, so that a return to the screen finds it as it was left, at the same height.
    static LAST: RefCell<Option<(Asked, Rc<Advice>)>> = const { RefCell::new(None) };
}

fn given_before(asked: &Asked) -> Option<Rc<Advice>> {
    LAST.with_borrow(|last| {
        let (before, advice) = last.as_ref()?;
        (before == asked).then(|| advice.clone())
    })
}

/// What is heard of the advice on a plan, asked anew whenever plan, units, hours or language change, as long as it is wanted.
#[hook]
fn use_advice(system: &System, asked: Asked, wanted: bool) -> Heard {
    let heard = use_state(|| Heard::Progress(0.0));
    let before = given_before(&asked);
    {
        let (heard, system) = (heard.clone(), system.clone());
        let is_needed = wanted && before.is_none();
        use_effect_with((asked, is_needed), move |(asked, is_needed)| {
            heard.set(Heard::Progress(0.0));
            let question = is_needed.then(|| {
                let (plan, units, hours, _) = asked.clone();
                let asked = asked.clone();
                let tell = Callback::from(move |news| {
                    if let Heard::Whole(advice) = &news {
                        LAST.set(Some((asked.clone(), advice.clone())));
                    }
                    heard.set(news);
                });
                ask(&system, plan, units, hours, tell)
            });
            move || drop(question)
        });
    }
    before.map_or_else(|| (*heard).clone(), Heard::Whole)
}

/// The advice, or how far it is. What takes long can be stopped, and asked for again.
#[component]
pub fn AdvicePart(props: &AdviceProps) -> Html {
    let t = words().advice();
    let wanted = use_state_eq(|| true);
    let (plan, hours) = (props.plan.clone(), props.hours.clone());
    let asked = (plan, props.units, hours, Language::spoken());
    let heard = use_advice(&props.system, asked, *wanted);
    let turn = {
        let wanted = wanted.clone();
        Callback::from(move |_: MouseEvent| wanted.set(!*wanted))
    };
    match heard {
        Heard::Progress(_) if !*wanted => html! {
            <section class="part">
                <h2>{ t.methods }</h2>
                <p class="part__note" role="status">{ t.stopped }</p>
                <div class="buttons">
                    <button type="button" class="button" data-act="work-out" onclick={turn}>{ t.work_out }</button>
                </div>
            </section>
        },
        Heard::Progress(share) => html! {
            <section class="part" aria-busy="true">
                <h2>{ t.methods }</h2>
                <p class="part__note">{ screen().working_out }</p>
                <progress max="1" value={share.to_string()} aria-label={screen().working_out} />
                <div class="buttons">
                    <button type="button" class="button" data-act="stop" onclick={turn}>{ words().weather().cancel }</button>
                </div>
            </section>
        },
        Heard::Whole(advice) => {
            let year = match &props.hours {
                Some(hours) => (words().weather().methods_note)(hours.place()),
                None => t.methods_note.to_owned(),
            };
            whole(&advice, &year, &props.input)
        }
    }
}

fn whole(advice: &Rc<Advice>, year: &str, input: &Callback<Field, Route>) -> Html {
    let t = words().advice();
    let first = advice.measure_first.as_ref().and_then(|(key, question)| {
        let field = Field::ALL.iter().find(|field| field.key() == key)?;
        Some((input.emit(*field), question.clone()))
    });
    html! { <div class="advice" data-advice="whole">
        <section class="part">
            <h2>{ t.methods }</h2>
            <p class="part__note">{ &advice.reason }</p>
            <ul class="methods">{ for advice.methods.iter().map(method) }</ul>
            <p class="part__note">{ year }</p>
            if let Some(off) = &advice.off {
                <h3 class="step">{ t.compressor_off }</h3>
                <p>{ off }</p>
            }
        </section>
        <section class="part">
            <h2>{ t.accuracy }</h2>
            <p>{ &advice.band }</p>
            <div data-bands="">{ items(&advice.bands) }</div>
            if let Some((to, question)) = first {
                <Go {to} class="button">{ (t.measure_first)(&question) }</Go>
            }
        </section>
        <section class="part">
            <h2>{ t.lowers_need }</h2>
            if advice.levers.is_empty() {
                <p>{ t.nothing_lowers }</p>
            } else {
                { items(&advice.levers) }
            }
        </section>
        <section class="part">
            <h2>{ t.order }</h2>
            if advice.order.is_empty() {
                <p>{ t.nothing_to_order }</p>
            } else {
                { items(&advice.order) }
            }
        </section>
        { said(t.sensor_place, &advice.place) }
        { said(t.winter_start, &advice.start) }
        { said(t.fan_motor, &advice.fan_motor) }
    </div> }
}

fn method(line: &MethodLine) -> Html {
    let t = words().advice();
    html! {
        <li key={line.key.clone()} class={classes!("methods__one", line.recommended.then_some("methods__one--recommended"))}>
            <p class="methods__head">
                <span class="methods__name">{ &line.name }</span>
                <span class="methods__limit">{ &line.limit }</span>
                <span class={if line.holds { "methods__holds" } else { "methods__short" }}>{ if line.holds { t.holds } else { t.falls_short } }</span>
            </p>
            if line.recommended {
                <p class="methods__mark">{ t.recommended }</p>
            }
            <dl class="methods__values">
                { for line.values.iter().map(|(name, value)| html! { <div><dt>{ name }</dt><dd>{ value }</dd></div> }) }
            </dl>
        </li>
    }
}

fn items(items: &[Item]) -> Html {
    html! {
        <ul class="items">
            { for items.iter().map(|item| html! {
                <li>
                    <span class="items__name">{ &item.name }</span>
                    <span class="items__value">{ &item.value }</span>
                    if !item.reason.is_empty() {
                        <span class="items__reason">{ &item.reason }</span>
                    }
                </li>
            }) }
        </ul>
    }
}

fn said(head: &str, sentences: &[String]) -> Html {
    if sentences.is_empty() {
        return Html::default();
    }
    html! {
        <section class="part">
            <h2>{ head }</h2>
            { for sentences.iter().map(|sentence| html! { <p>{ sentence }</p> }) }
        </section>
    }
}

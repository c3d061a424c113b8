//! The pictures of a plan: the cold ladder with what a rung answers, the curves, and the same as a table.

use std::cell::{Cell, RefCell};
use std::ops::ControlFlow;
use std::rc::Rc;

use gloo_timers::future::TimeoutFuture;
use wasm_bindgen_futures::spawn_local;
use winterset_calc::{Method, Plan, Quantity};
use winterset_profile::Kind;
use winterset_words::{Units, screen, symbol};
use yew::prelude::*;

use super::chart::Chart;
use super::choices::Choices;
use super::field::{Number, Round};
use super::ladder::{Headings, Ladder};
use crate::store::{Act, use_shelf};
use crate::view::curves::{self, Row};
use crate::view::ladder::{self, Sampled, Sampling};
use crate::view::plan::Held;
use crate::view::words;

/// Properties of [`Winter`].
#[derive(PartialEq, Properties)]
pub struct WinterProps {
    /// The plan.
    pub plan: Held,
}

/// The pictures.
#[component]
pub fn Winter(props: &WinterProps) -> Html {
    let t = screen();
    let shelf = use_shelf();
    let units = shelf.preferences.units;
    let method = use_state_eq(|| match props.plan.0.as_ref() {
        Ok(plan) => plan.verdict.method(),
        Err(_) => Method::SpeedControl,
    });
    let chosen = use_state_eq(|| None::<usize>);
    let drawn = use_sampled(&props.plan, units);
    let Ok(plan) = props.plan.0.as_ref() else {
        return Html::default();
    };
    let sampled = match drawn.as_deref() {
        Some(Some(sampled)) => sampled,
        Some(None) => return html! { <p class="part__note" role="alert">{ t.no_picture }</p> },
        None => return html! { <section class="part waiting"><h2>{ t.ladder }</h2></section> },
    };
    let now = shelf.preferences.outdoor_now.clone();
    let low = units.number(
        &Quantity::Temperature(plan.input.outdoor_low),
        plan.atmosphere.value,
    );
    let rung = chosen
        .unwrap_or_else(|| sampled.outdoor.at_or_below(low))
        .min(sampled.rungs.len().saturating_sub(1));
    let choose = {
        let chosen = chosen.clone();
        Callback::from(move |rung: usize| chosen.set(Some(rung)))
    };
    let choose_method = {
        let method = method.clone();
        Callback::from(move |key: String| {
            if let Some(found) = Method::from_key(&key) {
                method.set(found);
            }
        })
    };
    let set_now = {
        let shelf = shelf.dispatcher();
        Callback::from(move |now: String| {
            shelf.dispatch(Act::EditPreferences(Rc::new(move |preferences| {
                preferences.outdoor_now.clone_from(&now);
            })));
        })
    };
    let picture = ladder::picture(plan, sampled, *method, units, &now);
    let headings = Headings {
        ladder: t.ladder,
        outdoor: t.outdoor,
        fan: t.fan,
        head: t.head_pressure,
    };
    let unit = units.unit(Kind::Temperature);
    let methods: Vec<_> = Method::ALL
        .into_iter()
        .filter(|method| plan.applies(*method))
        .map(|method| (method.key().into(), words().method(method).name.into()))
        .collect();
    html! { <>
        <section class="part">
            <h2>{ t.ladder }</h2>
            <Choices name="method" ask={t.method} quiet=true chosen={method.key()} choices={methods} choose={choose_method} />
            <p class="part__note">{ words().method(*method).reason }{ " " }{ t.ladder_note }</p>
            <Ladder {picture} {headings} unit={ladder::pressure_unit(units)} chosen={rung} {choose} />
            { answer(plan, sampled, *method, rung, units) }
            <Number text={now} edit={set_now} signed=true unit={unit.token()} units={vec![(unit.token().into(), symbol(unit).into())]}
                round={Round {
                    key: "outdoor-now".into(),
                    ask: t.outdoor_now.into(),
                    usual: Some(t.outdoor_now_note.into()),
                    ..Round::default()
                }} />
        </section>
        { curves_part(plan, sampled, (*method, rung), units) }
    </> }
}

/// Samples of one plan in one set of units; `None` inside where the refrigerant has no answer over part of the range.
type Drawn = Rc<Option<Sampled>>;

/// The longest stretch of work between two looks at what the person does, ms.
const STRETCH: f64 = 16.0;

/// What samples are made for.
type Asked = (Held, Units);

thread_local! {
    /// The samples made last, so that a return to the screen finds it as it was left, at the same height.
    static LAST: RefCell<Option<(Asked, Drawn)>> = const { RefCell::new(None) };
}

fn made_before(asked: &Asked) -> Option<Drawn> {
    LAST.with_borrow(|last| {
        let (before, drawn) = last.as_ref()?;
        (before == asked).then(|| drawn.clone())
    })
}

/// The samples of a plan, made a few at a time after the screen stands; nothing until they are complete.
#[hook]
fn use_sampled(plan: &Held, units: Units) -> Option<Drawn> {
    let complete = use_force_update();
    let asked = (plan.clone(), units);
    let drawn = made_before(&asked);
    use_effect_with(
        (asked, drawn.is_some()),
        move |(asked, is_made): &(Asked, bool)| {
            let gone = Rc::new(Cell::new(false));
            if !is_made {
                let (asked, stopped) = (asked.clone(), gone.clone());
                spawn_local(async move {
                    if let Some(sampled) = sample(&asked.0, asked.1, &stopped).await {
                        LAST.set(Some((asked, Rc::new(sampled))));
                        complete.force_update();
                    }
                });
            }
            move || gone.set(true)
        },
    );
    drawn
}

/// Samples a plan in stretches; nothing where it was stopped on the way.
async fn sample(plan: &Held, units: Units, stopped: &Cell<bool>) -> Option<Option<Sampled>> {
    let plan = plan.0.as_ref().as_ref().ok()?;
    let mut sampling = Sampling::of(plan, units);
    loop {
        let start = js_sys::Date::now();
        while js_sys::Date::now() - start < STRETCH {
            if let ControlFlow::Break(sampled) = sampling.step(plan) {
                return (!stopped.get()).then_some(sampled);
            }
        }
        TimeoutFuture::new(0).await;
        if stopped.get() {
            return None;
        }
    }
}

/// What the chosen rung answers.
fn answer(plan: &Plan, sampled: &Sampled, method: Method, rung: usize, units: Units) -> Html {
    let Some(found) = sampled.rungs.get(rung) else {
        return Html::default();
    };
    html! {
        <div class="answer" aria-live="polite">
            <p class={classes!("answer__sentence", (!found.of(method).holds).then_some("answer__sentence--short"))}>
                { ladder::sentence(plan, found, method, units) }
            </p>
            <dl>
                { for ladder::answers(plan, found, method, units).into_iter().map(|(name, value)| html! {
                    <div><dt>{ name }</dt><dd>{ value }</dd></div>
                }) }
            </dl>
        </div>
    }
}

/// The curves and their table.
fn curves_part(plan: &Plan, sampled: &Sampled, at: (Method, usize), units: Units) -> Html {
    let t = screen();
    let (head, fan) = curves::charts(plan, sampled, units, at);
    let rows = curves::table(plan, sampled, units, at.0);
    html! {
        <section class="part curves">
            <h2>{ t.curves }</h2>
            <p class="part__note">{ t.curves_note }</p>
            <Chart ..head />
            <Chart ..fan />
            <details class="more">
                <summary>{ t.table }</summary>
                { table(rows, &curves::drawn(at.0), units) }
            </details>
        </section>
    }
}

fn table(rows: Vec<Row>, methods: &[Method], units: Units) -> Html {
    let t = screen();
    html! {
        <div class="table" tabindex="0" role="region" aria-label={t.table}>
            <table>
                <thead>
                    <tr>
                        <th scope="col" rowspan="2">{ t.outdoor }</th>
                        { for methods.iter().map(|method| html! { <th scope="colgroup" colspan="2">{ words().method(*method).name }</th> }) }
                    </tr>
                    <tr>
                        { for methods.iter().map(|_| html! { <>
                            <th scope="col">{ ladder::pressure_unit(units) }</th><th scope="col">{ t.fan }</th>
                        </> }) }
                    </tr>
                </thead>
                <tbody>
                    { for rows.into_iter().map(|row| html! {
                        <tr>
                            <th scope="row">{ row.outdoor }</th>
                            { for row.methods.into_iter().map(|(head, fan)| html! { <><td>{ head }</td><td>{ fan }</td></> }) }
                        </tr>
                    }) }
                </tbody>
            </table>
        </div>
    }
}

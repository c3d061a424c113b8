//! The pictures of a plan: the cold ladder with what a rung answers, and the curves.

use std::rc::Rc;

use winterset_calc::{Method, Plan, Quantity, Rung};
use winterset_profile::Kind;
use winterset_words::{Units, screen, symbol};
use yew::prelude::*;

use super::choices::Choices;
use super::curves::Curves;
use super::field::{Choice, Choose, Number, Round};
use super::help::Help;
use super::ladder::{Headings, Ladder};
use super::made::use_made;
use super::test_values::{not_ready, test_values};
use crate::store::{Act, use_shelf};
use crate::view::ladder::{self, Drawn, Read, Sampled, ToSample};
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
    let beside = use_state_eq(|| None::<Method>);
    let chosen = use_state_eq(|| None::<usize>);
    let drawn = use_made(&ToSample {
        plan: props.plan.clone(),
        units,
    });
    let Ok(plan) = props.plan.0.as_ref() else {
        return Html::default();
    };
    let Some(drawn) = drawn else {
        return html! { <>
            <section class="part waiting"><h2>{ t.ladder }</h2></section>
            { not_ready() }
        </> };
    };
    let sampled = match drawn.as_ref() {
        Some(sampled) => sampled,
        None => return html! { <p class="part__note" role="alert">{ t.no_picture }</p> },
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
    let choose_beside = {
        let beside = beside.clone();
        Callback::from(move |key: String| beside.set(Method::from_key(&key)))
    };
    let read = Read {
        method: *method,
        // A method beside itself says nothing.
        beside: beside.filter(|beside| *beside != *method),
    };
    let picture = ladder::picture(plan, sampled, read, units, &now);
    let headings = Headings {
        ladder: t.ladder,
        outdoor: t.outdoor,
        fan: t.fan,
        head: t.head_pressure,
    };
    let unit = units.unit(Kind::Temperature);
    let methods: Vec<Choice> = Method::ALL
        .into_iter()
        .filter(|method| plan.applies(*method))
        .map(|method| (method.key().into(), words().method(method).name.into()))
        .collect();
    let pictures = words().pictures();
    let others: Vec<_> = methods
        .iter()
        .filter(|(key, _)| *key != read.method.key())
        .cloned()
        .collect();
    html! { <>
        <section class="part">
            <h2>{ t.ladder }</h2>
            <Choices name="method" ask={t.method} quiet=true chosen={method.key()} choices={methods} choose={choose_method} />
            <p class="part__note">{ words().method(*method).reason }</p>
            <Choose choices={others} chosen={read.beside.map_or("", Method::key)} none={AttrValue::from(pictures.beside_none)} choose={choose_beside}
                round={Round { key: "beside".into(), ask: pictures.beside.into(), ..Round::default() }} />
            if let Some(beside) = read.beside {
                <p class="part__note">{ words().method(beside).reason }</p>
            }
            <p class="part__note">{ t.ladder_note }</p>
            <Ladder {picture} {headings} unit={ladder::pressure_unit(units)} chosen={rung} {choose} />
            { answer(plan, sampled, read, rung, units) }
            <RungHelp plan={props.plan.clone()} drawn={drawn.clone()} {read} />
            <Number text={now} edit={set_now} signed=true unit={unit.token()} units={vec![(unit.token().into(), symbol(unit).into())]}
                round={Round {
                    key: "outdoor-now".into(),
                    ask: t.outdoor_now.into(),
                    usual: Some(t.outdoor_now_note.into()),
                    ..Round::default()
                }} />
        </section>
        { test_values(plan, sampled, units) }
        <Curves plan={props.plan.clone()} {drawn} {read} {rung} {units} />
    </> }
}

/// Properties of [`RungHelp`].
#[derive(PartialEq, Properties)]
struct RungHelpProps {
    plan: Held,
    drawn: Drawn,
    read: Read,
}

/// What the values are that a rung answers, how each is measured and what is typical; written once it is opened.
#[component]
fn RungHelp(props: &RungHelpProps) -> Html {
    let opened = use_state_eq(|| false);
    let open = {
        let opened = opened.setter();
        Callback::from(move |_: Event| opened.set(true))
    };
    let (Some(plan), Some(sampled)) = (props.plan.plan(), props.drawn.as_ref()) else {
        return Html::default();
    };
    let said = opened.then(|| ladder::help(plan, sampled, props.read));
    html! {
        <details class="more" data-rung-help="" ontoggle={open}>
            <summary>{ words().help().on_a_rung }</summary>
            { for said.into_iter().flatten().map(|(name, help)| html! {
                <section key={name} class="rung-help">
                    <h3 class="step">{ name }</h3>
                    <dl class="working"><Help {help} /></dl>
                </section>
            }) }
        </details>
    }
}

/// What the chosen rung answers.
fn answer(plan: &Plan, sampled: &Sampled, read: Read, rung: usize, units: Units) -> Html {
    let Some(found) = sampled.rungs.get(rung) else {
        return Html::default();
    };
    let short = !found.of(read.method).holds;
    let sentence = ladder::sentence(plan, found, read, units);
    // Read large it scrolls by itself, by keyboard too.
    let name = (words().pictures().read_at)(&ladder::outdoor(plan, found, units));
    match read.beside {
        // The table says to the eye what the sentence says to the ear, once each.
        Some(beside) => html! {
            <div class="answer" role="group" tabindex="0" aria-label={name}>
                <p class="unseen" aria-live="polite">{ sentence }</p>
                { both(plan, found, (read.method, beside), units) }
            </div>
        },
        None => html! {
            <div class="answer" role="group" tabindex="0" aria-label={name}>
                <div aria-live="polite">
                <p class={classes!("answer__sentence", short.then_some("answer__sentence--short"))}>{ sentence }</p>
                <dl>
                    { for ladder::answers(plan, found, read.method, units).into_iter().map(|(name, value)| html! {
                        <div><dt>{ name }</dt><dd>{ breaking_before_the_unit(&value) }</dd></div>
                    }) }
                </dl>
                </div>
            </div>
        },
    }
}

/// In a narrow column the unit goes to a line of its own, whole.
fn breaking_before_the_unit(value: &str) -> String {
    value.replace('\u{a0}', " ").replace('/', "/\u{2060}")
}

/// What a rung answers for two methods, column by column.
fn both(plan: &Plan, rung: &Rung, methods: (Method, Method), units: Units) -> Html {
    let t = words().pictures();
    let name = |method| words().method(method).name;
    html! {
        <table class="answer__both">
            <thead>
                <tr>
                    <th scope="col">{ (t.read_at)(&ladder::outdoor(plan, rung, units)) }</th>
                    <th scope="col">{ name(methods.0) }</th>
                    <th scope="col">{ name(methods.1) }</th>
                </tr>
            </thead>
            <tbody>
                { for ladder::both_answers(plan, rung, methods, units).into_iter().map(|(name, values)| html! {
                    <tr>
                        <th scope="row">{ name }</th>
                        { for values.into_iter().map(|value| html! { <td>{ value.unwrap_or_else(|| t.no_value.to_owned()) }</td> }) }
                    </tr>
                }) }
            </tbody>
        </table>
    }
}

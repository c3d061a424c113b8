//! What differs between a system that arrived and the one kept here: each answer old and new, to keep or to take.

use std::collections::BTreeSet;

use winterset_words::Sending;
use yew::prelude::*;

use super::choices::Choices;
use super::value::Value;
use crate::view::arrival::Row;
use crate::view::words;

const KEEP: &str = "keep";
const TAKE: &str = "take";

/// Properties of [`Differences`].
#[derive(PartialEq, Properties)]
pub struct DifferencesProps {
    /// What differs, for the heading.
    pub title: AttrValue,
    /// From what, and what to do about it.
    pub note: AttrValue,
    /// What stands beside an answer that is not kept here.
    pub arrived: AttrValue,
    /// What differs.
    pub rows: Vec<Row>,
    /// Which of them are taken, by key.
    pub taken: BTreeSet<String>,
    /// One of them was turned round, by key.
    pub turn: Callback<String>,
}

/// Puts a key into a set, or takes it out where it is in it.
pub fn turning(keys: &UseStateHandle<BTreeSet<String>>) -> Callback<String> {
    let keys = keys.clone();
    Callback::from(move |key: String| {
        let mut now = (*keys).clone();
        if !now.remove(&key) {
            now.insert(key);
        }
        keys.set(now);
    })
}

/// The differences, one a row.
#[component]
pub fn Differences(props: &DifferencesProps) -> Html {
    let t = words().sending();
    html! {
        <section class="part" data-differences={props.rows.len().to_string()}>
            <h2>{ &props.title }</h2>
            <p class="part__note">{ &props.note }</p>
            <ul class="list">
                { for props.rows.iter().map(|row| one(row, props, t)) }
            </ul>
        </section>
    }
}

fn one(row: &Row, props: &DifferencesProps, t: &'static Sending) -> Html {
    let is_taken = props.taken.contains(&row.key);
    let now = if is_taken { TAKE } else { KEEP };
    let choose = {
        let key = row.key.clone();
        props.turn.reform(move |_: String| key.clone())
    };
    let ((here, here_basis), (arrived, arrived_basis)) = (row.here.clone(), row.arrived.clone());
    html! {
        <li class="difference" key={row.key.clone()} data-difference={row.key.clone()}>
            <p class="list__name">{ &row.ask }</p>
            <dl class="difference__both">
                <div><dt>{ t.here }</dt><dd><Value number={here} basis={here_basis} /></dd></div>
                <div><dt>{ &props.arrived }</dt><dd><Value number={arrived} basis={arrived_basis} /></dd></div>
            </dl>
            <Choices name={format!("merge-{}", row.key)} ask={(t.keep_or_take)(&row.ask)} quiet=true chosen={now} {choose}
                choices={vec![(KEEP.into(), t.keep.into()), (TAKE.into(), t.take.into())]} />
        </li>
    }
}

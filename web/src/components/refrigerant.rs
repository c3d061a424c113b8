//! The refrigerant: one from the list, or a blend by mass in words.

use winterset_profile::read_refrigerant;
use winterset_words::screen;
use yew::prelude::*;

use super::field::{Choose, Round, Words};
use crate::view::fields;

/// Properties of [`RefrigerantRow`].
#[derive(PartialEq, Properties)]
pub struct RefrigerantProps {
    /// What stands round the answer.
    pub round: Round,
    /// The answer as typed.
    pub typed: AttrValue,
    /// The words for no answer; without them an answer cannot be taken back.
    #[prop_or_default]
    pub none: Option<AttrValue>,
    /// Designation that stands in for no answer.
    #[prop_or_default]
    pub stand_in: Option<AttrValue>,
    /// The answer was edited.
    pub edit: Callback<String>,
}

/// The name that stands for a typed blend among the choices.
const BLEND: &str = "blend";

/// A row that takes a refrigerant.
#[component]
pub fn RefrigerantRow(props: &RefrigerantProps) -> Html {
    let t = screen();
    let typed = props.typed.clone();
    let named = read_refrigerant(&typed)
        .ok()
        .map(|refrigerant| refrigerant.designation().to_owned())
        .filter(|_| !typed.contains('/'));
    let by_words = use_state_eq(|| named.is_none() && !typed.trim().is_empty());
    let mut choices = fields::refrigerants();
    choices.push((BLEND.into(), t.other_refrigerant.into()));
    let edit = props.edit.clone();
    let choose = {
        let (edit, by_words) = (edit.clone(), by_words.clone());
        Callback::from(move |key: String| {
            by_words.set(key == BLEND);
            edit.emit(if key == BLEND { String::new() } else { key });
        })
    };
    let round = props.round.clone();
    if *by_words {
        let back = {
            let by_words = by_words.clone();
            Callback::from(move |_: MouseEvent| by_words.set(false))
        };
        return html! { <>
            <Words {round} text={typed} {edit} />
            <button type="button" class="button" onclick={back}>{ t.choose_from_list }</button>
        </> };
    }
    let blank = typed.trim().is_empty();
    let stand_in = props.stand_in.clone().filter(|_| blank);
    let assumed = stand_in.is_some();
    let own = || AttrValue::from(named.unwrap_or_else(|| typed.trim().to_owned()));
    let chosen = stand_in.clone().unwrap_or_else(own);
    let round = Round { stand_in, ..round };
    html! { <Choose {round} {choices} {chosen} {assumed} none={props.none.clone()} {choose} /> }
}

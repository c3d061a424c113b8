//! How a settings sheet stands to a technician's own controller, setting by setting.

use yew::prelude::*;

use super::field::{Choice, Choose, Round};
use super::go::Go;
use crate::route::Route;
use crate::view::controllers::Checked;
use crate::view::words;

/// Properties of [`OnController`].
#[derive(PartialEq, Properties)]
pub struct OnControllerProps {
    /// The controllers to choose from.
    pub choices: Vec<Choice>,
    /// Identifier of the one chosen; empty for none.
    pub chosen: AttrValue,
    /// The settings against it.
    pub checked: Option<Checked>,
    /// Another one was chosen.
    pub choose: Callback<String>,
    /// Where limits are entered: those of the one chosen, else of any.
    pub limits: Route,
}

/// The choice of a controller and what comes of it.
#[component]
pub fn OnController(props: &OnControllerProps) -> Html {
    let t = words().controllers().labels();
    let round = Round {
        key: "controller".into(),
        ask: t.which.into(),
        usual: props.checked.is_none().then(|| t.choose_note.into()),
        ..Round::default()
    };
    html! {
        <section class="part" data-part="controller">
            <h2>{ t.on_yours }</h2>
            if props.choices.is_empty() {
                <p class="part__note">{ t.own_note }</p>
            } else {
                <Choose {round} choices={props.choices.clone()} chosen={props.chosen.clone()}
                    none={AttrValue::from(t.none_chosen)} choose={props.choose.clone()} />
            }
            if let Some(checked) = &props.checked {
                <div aria-live="polite">{ findings(checked) }</div>
            }
            <div class="buttons">
                <Go to={props.limits.clone()} class="button">
                    { if props.checked.is_some() { t.to_limits } else { t.to_settings } }
                </Go>
            </div>
        </section>
    }
}

fn findings(checked: &Checked) -> Html {
    html! { <>
        <p class={format!("fits fits--{}", checked.safety)} data-safety={checked.safety}>{ checked.whole }</p>
        if let Some(wrong) = &checked.wrong {
            <p class="fits fits--check">{ wrong }</p>
        }
        <ul class="items">
            { for checked.found.iter().map(|found| html! {
                <li key={found.key} data-finding={found.key} data-safety={found.safety}>
                    <span class="items__name">{ found.name }</span>
                    <span class={format!("fits fits--{}", found.safety)}>{ found.word }</span>
                    <span class="items__reason">{ &found.said }</span>
                </li>
            }) }
        </ul>
    </> }
}

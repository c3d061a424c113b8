//! A few answers side by side, one of which holds.

use yew::prelude::*;

use super::field::Choice;

/// Properties of [`Choices`].
#[derive(PartialEq, Properties)]
pub struct ChoicesProps {
    /// Stable name of the question.
    pub name: AttrValue,
    /// The question.
    pub ask: AttrValue,
    /// Whether the question stands elsewhere on the screen already.
    #[prop_or_default]
    pub quiet: bool,
    /// The answers.
    pub choices: Vec<Choice>,
    /// Stable name of the answer that holds.
    pub chosen: AttrValue,
    /// Another answer was chosen.
    pub choose: Callback<String>,
}

/// The answers as a group of radio buttons.
#[component]
pub fn Choices(props: &ChoicesProps) -> Html {
    html! {
        <fieldset class="row">
            <legend class={if props.quiet { "unseen" } else { "row__ask" }}>{ &props.ask }</legend>
            <div class="choices">
                { for props.choices.iter().map(|(key, name)| {
                    let choose = {
                        let key = key.to_string();
                        props.choose.reform(move |_: Event| key.clone())
                    };
                    html! {
                        <label class="choices__one" key={key.to_string()}>
                            <input type="radio" name={props.name.clone()} value={key.clone()}
                                checked={*key == props.chosen} onchange={choose} />
                            <span>{ name }</span>
                        </label>
                    }
                }) }
            </div>
        </fieldset>
    }
}

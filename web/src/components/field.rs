//! One question a row: the answer with its unit, the usual range, what is assumed without an answer, and what is wrong with it.

use wasm_bindgen::JsCast;
use web_sys::{HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement, InputEvent};
use winterset_words::screen;
use yew::prelude::*;

use crate::view::words;

/// A choice with its stable name and its words.
pub type Choice = (AttrValue, AttrValue);

/// What stands round an answer, whatever its kind.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Round {
    /// Stable name of the field; the row carries it so that a link can lead here.
    pub key: AttrValue,
    /// The question.
    pub ask: AttrValue,
    /// What it is and how to find it out.
    pub help: Option<AttrValue>,
    /// Further help, each piece with its name.
    pub more: Vec<Choice>,
    /// What is usual.
    pub usual: Option<AttrValue>,
    /// What is assumed while there is no answer.
    pub assumed: Option<AttrValue>,
    /// The same as it stands in the empty field itself, in the unit beside it.
    pub stand_in: Option<AttrValue>,
    /// What is wrong with the answer and what would be right.
    pub error: Option<AttrValue>,
}

impl Round {
    fn id(&self) -> String {
        format!("answer-{}", self.key)
    }

    fn note_id(&self) -> String {
        format!("note-{}", self.key)
    }

    fn error_id(&self) -> String {
        format!("error-{}", self.key)
    }

    fn describes(&self) -> String {
        format!("{} {}", self.error_id(), self.note_id())
    }

    /// Behind a mark where it is short, under its own words where there is more of it.
    fn help(&self) -> Html {
        let t = screen();
        let Some(help) = &self.help else {
            return Html::default();
        };
        if self.more.is_empty() {
            return html! {
                <details class="row__help">
                    <summary aria-label={(t.help_on)(&self.ask)}>{ "?" }</summary>
                    <p>{ help }</p>
                </details>
            };
        }
        let named = format!("{}: {}", words().help().how_to_find, self.ask);
        html! {
            <details class="row__find" data-find={self.key.clone()}>
                <summary aria-label={named}>{ words().help().how_to_find }</summary>
                <dl class="working">
                    <div><dt>{ words().help().what }</dt><dd>{ help }</dd></div>
                    { for self.more.iter().map(|(name, text)| html! { <div><dt>{ name }</dt><dd>{ text }</dd></div> }) }
                </dl>
            </details>
        }
    }

    fn row(&self, answer: Html, blank: bool) -> Html {
        let t = screen();
        html! {
            <div class={classes!("row", self.error.is_some().then_some("row--wrong"))} id={format!("row-{}", self.key)} data-field={self.key.clone()}>
                <label class="row__ask" for={self.id()}>{ &self.ask }</label>
                { self.help() }
                <div class="row__answer">{ answer }</div>
                <p class="row__error" id={self.error_id()} aria-live="polite">{ self.error.clone().unwrap_or_default() }</p>
                <p class="row__note" id={self.note_id()}>
                    if blank && self.stand_in.is_some() {
                        <span class="row__assume"><span class="value value--assumed">{ t.assumed_form }</span></span>
                    } else if let (true, Some(assumed)) = (blank, &self.assumed) {
                        <span class="row__assume">{ t.assume }{ " " }<span class="value value--assumed">{ assumed }</span></span>
                    }
                    if let Some(usual) = &self.usual {
                        <span>{ usual }</span>
                    }
                </p>
            </div>
        }
    }
}

/// Properties of [`Number`].
#[derive(PartialEq, Properties)]
pub struct NumberProps {
    /// What stands round the answer.
    pub round: Round,
    /// The answer as typed.
    pub text: AttrValue,
    /// Units to choose from; one alone is written, not offered.
    pub units: Vec<Choice>,
    /// Stable name of the unit that the answer is in.
    pub unit: AttrValue,
    /// Whether a value below zero makes sense: decimal keypads often have no minus sign.
    #[prop_or_default]
    pub signed: bool,
    /// The answer was edited.
    pub edit: Callback<String>,
    /// Another unit was chosen.
    #[prop_or_default]
    pub choose: Callback<String>,
}

/// A row that takes a number.
#[component]
pub fn Number(props: &NumberProps) -> Html {
    let t = screen();
    let edit = props.edit.reform(|event: InputEvent| typed(&event));
    let choose = props.choose.reform(|event: Event| chosen(&event));
    let turn = {
        let text = props.text.clone();
        props.edit.reform(move |_: MouseEvent| other_sign(&text))
    };
    let unit_id = format!("unit-{}", props.round.key);
    let answer = html! { <>
        <input class="entry" type="text" inputmode="decimal" autocomplete="off" autocapitalize="off" spellcheck="false"
            enterkeyhint="next" id={props.round.id()} value={props.text.clone()} placeholder={props.round.stand_in.clone()} oninput={edit}
            aria-invalid={props.round.error.is_some().to_string()} aria-describedby={props.round.describes()} />
        if props.signed {
            <button type="button" class="entry-sign" onclick={turn} aria-label={(t.change_sign)(&props.round.ask)}>{ "±" }</button>
        }
        if let [(_, only)] = props.units.as_slice() {
            <span class="entry-unit">{ only }</span>
        } else if !props.units.is_empty() {
            <select class="entry-unit" id={unit_id} onchange={choose} aria-label={(t.unit_of)(&props.round.ask)}>
                { for props.units.iter().map(|(key, name)| html! {
                    <option value={key.clone()} selected={*key == props.unit}>{ name }</option>
                }) }
            </select>
        }
    </> };
    props.round.row(answer, props.text.trim().is_empty())
}

/// Properties of [`Choose`].
#[derive(PartialEq, Properties)]
pub struct ChooseProps {
    /// What stands round the answer.
    pub round: Round,
    /// What there is to choose from.
    pub choices: Vec<Choice>,
    /// Stable name of the choice made; empty for none.
    pub chosen: AttrValue,
    /// The words for no answer; without them an answer cannot be taken back.
    #[prop_or_default]
    pub none: Option<AttrValue>,
    /// Whether the choice is what stands in for no answer.
    #[prop_or_default]
    pub assumed: bool,
    /// Another choice was made.
    pub choose: Callback<String>,
}

/// A row that takes one of a few answers.
#[component]
pub fn Choose(props: &ChooseProps) -> Html {
    let choose = props.choose.reform(|event: Event| chosen(&event));
    let known = props.choices.iter().any(|(key, _)| *key == props.chosen);
    let mut names = props.choices.iter();
    let stand_in = names.find(|(key, _)| *key == props.chosen);
    let stand_in = stand_in.map_or_else(|| props.chosen.clone(), |(_, name)| name.clone());
    let shown = if props.assumed {
        format!("{stand_in} ({})", screen().assumed_form)
    } else if let Some(none) = props.none.as_ref().filter(|_| props.chosen.is_empty()) {
        none.to_string()
    } else {
        stand_in.to_string()
    };
    let answer = html! { <>
        <select class={classes!("entry", props.assumed.then_some("entry--assumed"))} id={props.round.id()} onchange={choose}
            aria-invalid={props.round.error.is_some().to_string()} aria-describedby={props.round.describes()}>
            // What is assumed stands apart from the same as an answer: a browser tells of no choice that was made already.
            if props.assumed {
                <option value="" selected=true>{ &shown }</option>
            } else if let Some(none) = &props.none {
                <option value="" selected={props.chosen.is_empty()}>{ none }</option>
            }
            if !known && !props.chosen.is_empty() {
                // What a record carries stays to be seen, even where it is no choice here.
                <option value={props.chosen.clone()} selected=true>{ &props.chosen }</option>
            }
            { for props.choices.iter().map(|(key, name)| html! {
                <option value={key.clone()} selected={!props.assumed && *key == props.chosen}>{ name }</option>
            }) }
        </select>
        { whole(&shown) }
    </> };
    props
        .round
        .row(answer, props.assumed || props.chosen.is_empty())
}

/// A choice once more under its list, which breaks no line and cuts it off where it is wider than the row. A reader was told already.
fn whole(shown: &str) -> Html {
    /// As many letters as lists of these widths take; the styles know how wide each is.
    const LETTERS: [usize; 4] = [16, 24, 32, 48];
    let letters = shown.chars().count();
    let most = LETTERS.into_iter().find(|most| letters <= *most);
    let class = most.map_or_else(
        || "row__whole--more".to_owned(),
        |most| format!("row__whole--{most}"),
    );
    html! { <p class={classes!("row__whole", class)} aria-hidden="true">{ shown }</p> }
}

/// Properties of [`Words`].
#[derive(PartialEq, Properties)]
pub struct WordsProps {
    /// What stands round the answer.
    pub round: Round,
    /// The answer as typed.
    pub text: AttrValue,
    /// The answer was edited.
    pub edit: Callback<String>,
    /// Whether it may take several lines, as numbers pasted from a table do.
    #[prop_or_default]
    pub lines: bool,
}

/// A row that takes words, such as a name.
#[component]
pub fn Words(props: &WordsProps) -> Html {
    let edit = props.edit.reform(|event: InputEvent| typed(&event));
    let invalid = props.round.error.is_some().to_string();
    let answer = if props.lines {
        html! {
            <textarea class="entry entry--lines" rows="3" autocomplete="off" spellcheck="false" id={props.round.id()}
                value={props.text.clone()} oninput={edit} aria-invalid={invalid} aria-describedby={props.round.describes()} />
        }
    } else {
        html! {
            <input class="entry" type="text" autocomplete="off" enterkeyhint="done" id={props.round.id()}
                value={props.text.clone()} oninput={edit} aria-invalid={invalid} aria-describedby={props.round.describes()} />
        }
    };
    props.round.row(answer, props.text.trim().is_empty())
}

/// What an input holds after an edit.
pub fn typed(event: &InputEvent) -> String {
    let Some(target) = event.target() else {
        return String::new();
    };
    match target.dyn_into::<HtmlInputElement>() {
        Ok(input) => input.value(),
        Err(target) => target
            .dyn_into::<HtmlTextAreaElement>()
            .map(|lines| lines.value())
            .unwrap_or_default(),
    }
}

/// What a select holds after a choice.
pub fn chosen(event: &Event) -> String {
    event
        .target()
        .and_then(|target| target.dyn_into::<HtmlSelectElement>().ok())
        .map(|select| select.value())
        .unwrap_or_default()
}

/// The same digits on the other side of zero.
fn other_sign(text: &str) -> String {
    let text = text.trim();
    match text.strip_prefix(['-', '−']) {
        Some(rest) => rest.trim_start().to_owned(),
        None => format!("-{}", text.trim_start_matches('+')),
    }
}

#[cfg(test)]
mod tests {
    use super::other_sign;

    #[test]
    fn the_sign_turns_and_turns_back() {
        assert_eq!(other_sign("18"), "-18");
        assert_eq!(other_sign("-18"), "18");
        assert_eq!(other_sign("−18,5"), "18,5");
        assert_eq!(other_sign(""), "-");
    }
}

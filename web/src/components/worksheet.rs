//! The frame that every worksheet stands in: the few values that a person came for, the questions, every value with its working.

use winterset_profile::{Entry, Question};
use yew::prelude::*;

use super::cautions::Cautions;
use super::field::{Choose, Number, Round};
use super::refrigerant::RefrigerantRow;
use super::sensor_curve::SensorCurvePart;
use super::sheet::{Line, SheetLine};
use super::value::Value;
use crate::view::words;
use crate::view::worksheets::{Answered, Asked, Form, Layout, Part};

/// Properties of [`WorksheetFrame`].
#[derive(PartialEq, Properties)]
pub struct WorksheetProps {
    /// The worksheet, answered.
    pub answered: Answered,
    /// An answer was edited.
    pub edit: Callback<(Question, Entry)>,
}

/// A worksheet under its head. Values are said as they change: all of them, or where a strip holds the strong ones, these.
#[component]
pub fn WorksheetFrame(props: &WorksheetProps) -> Html {
    let labels = words().worksheets().labels();
    let answered = &props.answered;
    html! { <>
        if answered.layout == Layout::InSight {
            { strip(&answered.strong) }
        }
        { for answered.parts.iter().map(|part| section(part, answered.layout, &props.edit)) }
        if answered.layout == Layout::Beside {
            { notes(answered) }
        } else {
            <section class="part" data-result="">
                <h2>{ labels.result }</h2>
                { notes(answered) }
                if answered.lines.is_empty() {
                    <p class="part__note">{ labels.fix }</p>
                } else {
                    <p class="part__note">{ labels.touch_note }</p>
                    <div aria-live={(answered.layout == Layout::Below).then_some("polite")}>{ lines(&answered.lines) }</div>
                }
            </section>
        }
        if let Some(curve) = &answered.curve {
            <SensorCurvePart curve={curve.clone()} />
        }
        <Cautions cautions={answered.cautions.clone()} />
    </> }
}

fn notes(answered: &Answered) -> Html {
    answered
        .notes
        .iter()
        .map(|note| html! { <p class="said" data-note="">{ *note }</p> })
        .collect()
}

/// The strong values, in sight however far down a person is. The place is kept while there are none, so that nothing jumps under a finger.
fn strip(strong: &[Line]) -> Html {
    if strong.is_empty() {
        return html! { <p class="strip strip--empty" role="status">{ words().worksheets().labels().fix }</p> };
    }
    html! {
        <dl class="strip" aria-live="polite">
            { for strong.iter().map(|line| html! {
                <div key={line.key.to_string()} data-strong={line.key.clone()}>
                    <dt>{ &line.name }</dt>
                    <dd><Value number={line.number.clone()} unit={line.unit.clone()} basis={line.basis} /></dd>
                </div>
            }) }
        </dl>
    }
}

fn section(part: &Part, layout: Layout, edit: &Callback<(Question, Entry)>) -> Html {
    if part.asked.is_empty() && part.lines.is_empty() {
        return Html::default();
    }
    html! {
        <section class={part.title.map(|_| "part")}>
            if let Some(title) = part.title {
                <h2>{ title }</h2>
            }
            { for part.asked.iter().map(|asked| html! {
                <Row key={asked.question.key()} asked={asked.clone()} edit={edit.clone()} />
            }) }
            if let Some(note) = &part.note {
                <p class="quiet">{ note }</p>
            }
            if !part.lines.is_empty() {
                <div aria-live={(layout == Layout::Beside).then_some("polite")}>{ lines(&part.lines) }</div>
            }
        </section>
    }
}

fn lines(lines: &[Line]) -> Html {
    html! {
        <div class="sheet">
            { for lines.iter().map(|line| html! { <SheetLine key={line.key.to_string()} line={line.clone()} /> }) }
        </div>
    }
}

/// Properties of [`Row`].
#[derive(PartialEq, Properties)]
struct RowProps {
    asked: Asked,
    edit: Callback<(Question, Entry)>,
}

/// A question, drawn anew when something about it changes and not at every key elsewhere.
#[component]
fn Row(props: &RowProps) -> Html {
    let RowProps { asked, edit } = props;
    let labels = words().worksheets().labels();
    let question = asked.question;
    let round = Round {
        key: question.key().into(),
        ask: asked.ask.clone(),
        help: Some(asked.help.clone()),
        error: asked.error.clone(),
        ..Round::default()
    };
    match &asked.form {
        Form::Refrigerant { assumed } => {
            let edit = edit.reform(move |typed: String| (question, Entry::new(typed)));
            html! {
                <RefrigerantRow {round} typed={asked.typed.clone()} stand_in={assumed.clone()} {edit} />
            }
        }
        Form::Choice {
            choices,
            chosen,
            assumed,
        } => {
            let choose = edit.reform(move |key: String| (question, Entry::new(key)));
            let stand_in = assumed.then(|| chosen.clone());
            html! {
                <Choose round={Round { stand_in, ..round }} choices={choices.clone()}
                    chosen={chosen.clone()} assumed={*assumed} {choose} />
            }
        }
        Form::Number {
            units,
            unit,
            signed,
            stand_in,
            open,
            common,
        } => {
            let beside = unit.to_string();
            let (typed, beside_typed) = (asked.typed.to_string(), beside.clone());
            // The unit that stood beside the answer goes with it, so that it means the same whatever is set later.
            let enter = edit.reform(move |typed: String| {
                (question, Entry::with_unit(typed, beside_typed.clone()))
            });
            let choose =
                edit.reform(move |unit: String| (question, Entry::with_unit(typed.clone(), unit)));
            let round = Round {
                assumed: open.then(|| labels.left_out.into()),
                stand_in: stand_in.clone(),
                usual: common.clone(),
                ..round
            };
            html! {
                <Number {round} text={asked.typed.clone()} units={units.clone()} unit={beside}
                    signed={*signed} edit={enter} {choose} />
            }
        }
    }
}

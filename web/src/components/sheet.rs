//! Values one a row, each with its reason; opening one shows the working: equation, inputs, source.

use winterset_calc::Basis;
use winterset_words::{HelpWords, screen};
use yew::prelude::*;

use super::help::Help;
use super::symbol::Symbols;
use super::value::{Value, form};

/// One input of a working.
#[derive(Clone, Debug, PartialEq)]
pub struct TermLine {
    /// Its symbol in the equation.
    pub symbol: AttrValue,
    /// Its value with unit.
    pub value: AttrValue,
    /// Where it comes from.
    pub basis: Basis,
    /// The same in a word.
    pub from: AttrValue,
}

/// How a value was found, ready to show.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkingLines {
    /// The equation in symbols.
    pub equation: AttrValue,
    /// What went in.
    pub terms: Vec<TermLine>,
    /// The source it stands on.
    pub source: AttrValue,
}

/// One value of a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Stable name.
    pub key: AttrValue,
    /// What it is.
    pub name: AttrValue,
    /// The number, or the words, as written.
    pub number: AttrValue,
    /// The unit; empty for words.
    pub unit: AttrValue,
    /// Where the value comes from.
    pub basis: Basis,
    /// Why it is what it is, in a sentence.
    pub reason: AttrValue,
    /// What it is, how it is measured, what is typical.
    pub help: Option<HelpWords>,
    /// How it was found.
    pub working: Option<WorkingLines>,
}

/// Properties of [`SheetLine`].
#[derive(PartialEq, Properties)]
pub struct SheetLineProps {
    /// The value.
    pub line: Line,
}

/// A row of a sheet. Its working is drawn once it is opened.
#[component]
pub fn SheetLine(props: &SheetLineProps) -> Html {
    let opened = use_state_eq(|| false);
    let line = &props.line;
    let words = line.unit.is_empty() && line.number.chars().any(char::is_alphabetic);
    let head = html! { <>
        <span class="sheet__name">{ &line.name }</span>
        <span class={classes!("sheet__value", words.then_some("sheet__value--words"))}>
            <Value number={line.number.clone()} unit={line.unit.clone()} basis={line.basis} />
        </span>
        <span class="sheet__reason">{ &line.reason }</span>
    </> };
    if line.help.is_none() && line.working.is_none() {
        return html! { <div class="sheet__one" data-value={line.key.clone()}><div class="sheet__row">{ head }</div></div> };
    }
    let open = {
        let opened = opened.setter();
        Callback::from(move |_: Event| opened.set(true))
    };
    html! {
        <details class="sheet__one" data-value={line.key.clone()} ontoggle={open}>
            <summary>{ head }</summary>
            if *opened {
                { behind(line) }
            }
        </details>
    }
}

/// What the value is, and its working.
fn behind(line: &Line) -> Html {
    html! {
        <dl class="working">
            if let Some(help) = line.help {
                <Help {help} />
            }
            { for line.working.as_ref().map(shown) }
        </dl>
    }
}

fn shown(working: &WorkingLines) -> Html {
    let t = screen();
    html! { <>
        <div><dt>{ t.equation }</dt><dd class="working__equation"><Symbols text={working.equation.clone()} /></dd></div>
        if !working.terms.is_empty() {
            <div><dt>{ t.terms }</dt><dd>
                <table class="terms"><tbody>
                    { for working.terms.iter().map(|term| html! {
                        <tr>
                            <td><Symbols text={term.symbol.clone()} /></td>
                            <td><span class={form(term.basis)}>{ &term.value }</span></td>
                            <td>{ &term.from }</td>
                        </tr>
                    }) }
                </tbody></table>
            </dd></div>
        }
        <div><dt>{ t.source }</dt><dd>{ &working.source }</dd></div>
    </> }
}

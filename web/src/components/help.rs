//! What a value is, how it is measured and what is typical, in front of its working.

use winterset_words::HelpWords;
use yew::prelude::*;

use crate::view::words;

/// Properties of [`Help`].
#[derive(PartialEq, Properties)]
pub struct HelpProps {
    /// What is said.
    pub help: HelpWords,
}

/// Three entries of a list of terms.
#[component]
pub fn Help(props: &HelpProps) -> Html {
    let t = words().help();
    let said = [
        ("what", t.what, props.help.what),
        ("measure", t.measure, props.help.measure),
        ("typical", t.typical, props.help.typical),
    ];
    html! {
        { for said.into_iter().filter(|(.., text)| !text.is_empty()).map(|(key, name, text)| html! {
            <div data-help={key}><dt>{ name }</dt><dd>{ text }</dd></div>
        }) }
    }
}

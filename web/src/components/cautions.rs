//! Cautions, at the step where they matter.

use yew::prelude::*;

use super::icon::{Icon, Sketch};

/// Properties of [`Cautions`].
#[derive(PartialEq, Properties)]
pub struct CautionsProps {
    /// What can hurt, and what to do about it: title and text.
    pub cautions: Vec<(&'static str, &'static str)>,
}

/// The cautions in one frame; nothing where there are none.
#[component]
pub fn Cautions(props: &CautionsProps) -> Html {
    if props.cautions.is_empty() {
        return Html::default();
    }
    html! {
        <div class="caution" role="note">
            <Icon sketch={Sketch::Caution} />
            <div>
                { for props.cautions.iter().map(|(title, text)| html! { <p><strong>{ *title }{ ". " }</strong>{ *text }</p> }) }
            </div>
        </div>
    }
}

//! Our own line sketches, in one stroke weight.

use yew::prelude::*;

/// What a sketch shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sketch {
    /// A condensing unit on the ground.
    Sites,
    /// A ruled sheet with a curve.
    Worksheets,
    /// Two sliders.
    Settings,
    /// An arrow back.
    Back,
    /// An arrow onward.
    On,
    /// A triangle for a caution.
    Caution,
}

/// Properties of [`Icon`].
#[derive(PartialEq, Properties)]
pub struct IconProps {
    /// Which sketch.
    pub sketch: Sketch,
}

/// A sketch beside words that say the same; it is hidden from screen readers.
#[component]
pub fn Icon(props: &IconProps) -> Html {
    let strokes = match props.sketch {
        Sketch::Sites => html! { <>
            <path d="M3 20h18M5 20V7h14v13" /><circle cx="12" cy="13" r="4" /><path d="M12 13V9M12 13l3.5 2M12 13l-3.5 2" />
        </> },
        Sketch::Worksheets => html! { <path d="M5 3h14v18H5zM8 17c5-1 7-4 8-10M8 7h3M8 10h2" /> },
        Sketch::Settings => html! { <>
            <path d="M4 8h7M17 8h3M4 16h3M13 16h7" /><circle cx="14" cy="8" r="3" /><circle cx="10" cy="16" r="3" />
        </> },
        Sketch::Back => html! { <path d="M14 5l-7 7 7 7" /> },
        Sketch::On => html! { <path d="M10 5l7 7-7 7" /> },
        Sketch::Caution => html! { <path d="M12 4l9 16H3zM12 10v5M12 17.5v.5" /> },
    };
    html! {
        <svg class="sketch" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
            { strokes }
        </svg>
    }
}

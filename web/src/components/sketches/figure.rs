//! A drawing on the screen or on paper, with the same in words.

use crate::view::words;
use yew::prelude::*;

use super::drawing::{Drawing, LINE, Line, Stroke};

/// Properties of [`SketchFigure`].
#[derive(PartialEq, Properties)]
pub struct SketchProps {
    /// Stable name, one a page.
    pub name: AttrValue,
    /// What it is a sketch of.
    pub title: AttrValue,
    /// The same in sentences.
    pub says: AttrValue,
    /// The drawing.
    pub drawing: Drawing,
    /// Whether it goes on paper alone, where the words stand beside it anyway.
    #[prop_or_default]
    pub bare: bool,
}

/// The drawing under its title. A person who reads large, or does not see it, opens the words.
#[component]
pub fn SketchFigure(props: &SketchProps) -> Html {
    let drawing = &props.drawing;
    let (title, says) = (
        format!("{}-title", props.name),
        format!("{}-says", props.name),
    );
    let size = format!("0 0 {} {:.0}", drawing.width(), drawing.height);
    html! {
        <figure class="drawing" data-sketch={props.name.clone()}>
            <figcaption class="drawing__title" aria-hidden="true">{ &props.title }</figcaption>
            <div class="drawing__paper">
                <svg class="drawing__lines" viewBox={size} role="img" aria-labelledby={title.clone()} aria-describedby={says.clone()}>
                    <title id={title}>{ &props.title }</title>
                    <desc id={says}>{ &props.says }</desc>
                    { for drawing.strokes.iter().map(stroke) }
                    { for drawing.labels.iter().map(|label| html! {
                        <text class="drawing__name" aria-hidden="true">
                            { for label.lines.iter().enumerate().map(|(index, line)| html! {
                                <tspan x={place(label.at.0)} y={place(label.at.1 + LINE * index as f64)}>{ line }</tspan>
                            }) }
                        </text>
                    }) }
                </svg>
            </div>
            if !props.bare {
                <details class="more">
                    <summary>{ words().fitting().labels().in_words }</summary>
                    <p>{ &props.says }</p>
                </details>
            }
        </figure>
    }
}

fn stroke(stroke: &Stroke) -> Html {
    match stroke {
        Stroke::Path { path, line } => {
            let class = match line {
                Line::Solid => None,
                Line::Dashed => Some("drawing__signal"),
                Line::Dotted => Some("drawing__leader"),
            };
            html! { <path {class} d={path.clone()} /> }
        }
        Stroke::Circle { at, radius } => html! {
            <circle cx={place(at.0)} cy={place(at.1)} r={place(*radius)} />
        },
        Stroke::Dot { at } => html! {
            <circle class="drawing__dot" cx={place(at.0)} cy={place(at.1)} r="3" />
        },
        Stroke::Letter { at, letter } => html! {
            <text class="drawing__letter" x={place(at.0)} y={place(at.1 + 5.0)} text-anchor="middle" aria-hidden="true">{ *letter }</text>
        },
    }
}

fn place(value: f64) -> String {
    format!("{value:.1}")
}

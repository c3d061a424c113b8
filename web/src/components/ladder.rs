//! The cold ladder: outdoor temperature down a vertical scale, and along it what the fan does and what head pressure does
//! against the pressure need, either side of one spine; for one method, or for two side by side on the same scales.
//!
//! A rung is a choice in a group: by touch, by arrow keys, and aloud as a sentence. The drawing behind the rungs says the same
//! and is hidden from screen readers.

use web_sys::{HtmlElement, KeyboardEvent};
use yew::prelude::*;

use super::scale::{Scale, percent, polyline};

/// One rung.
#[derive(Clone, Debug, PartialEq)]
pub struct Rung {
    /// The outdoor temperature, as written.
    pub name: AttrValue,
    /// What happens there, in a sentence.
    pub sentence: AttrValue,
    /// Whether head pressure stays up there.
    pub holds: bool,
}

/// One sample along the ladder; `at` counts rungs from the top, and need not be whole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Where on the ladder.
    pub at: f64,
    /// Share of full speed, or of the time that a cycling fan runs.
    pub fan: f64,
    /// Head pressure as shown.
    pub head: f64,
    /// Lowest and highest head pressure of a cycling fan, as shown.
    pub swing: Option<(f64, f64)>,
    /// Whether head pressure stays up there.
    pub holds: bool,
}

/// A word beside the fan, in the middle of the stretch where it holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Stretch {
    /// Where on the ladder it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// The word.
    pub name: AttrValue,
}

/// A place on the ladder with a name.
#[derive(Clone, Debug, PartialEq)]
pub struct Pointer {
    /// Where on the ladder.
    pub at: f64,
    /// What it is.
    pub name: AttrValue,
}

/// What one method does along the ladder.
#[derive(Clone, Debug, PartialEq)]
pub struct Panel {
    /// What the method is called; written over it where it is not alone.
    pub name: AttrValue,
    /// Samples from the top to the bottom.
    pub samples: Vec<Sample>,
    /// What the fan does, by stretches.
    pub stretches: Vec<Stretch>,
    /// The hold limit, where it lies on the ladder.
    pub hold: Option<Pointer>,
}

/// Everything that the drawing shows.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// The rungs, warm at the top.
    pub rungs: Vec<Rung>,
    /// The methods, side by side.
    pub panels: Vec<Panel>,
    /// The pressure need as shown.
    pub need: f64,
    /// What the need line says.
    pub need_name: AttrValue,
    /// Scale of head pressure as shown.
    pub pressure: Scale,
    /// Marks of that scale.
    pub pressure_ticks: Vec<(f64, AttrValue)>,
    /// The site's low.
    pub low: Pointer,
    /// Outdoors now, where entered.
    pub now: Option<Pointer>,
}

/// Words over the three columns, and the name of the whole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Headings {
    /// What the ladder is.
    pub ladder: &'static str,
    /// Over the temperatures.
    pub outdoor: &'static str,
    /// Over the fan.
    pub fan: &'static str,
    /// Over head pressure.
    pub head: &'static str,
}

/// Properties of [`Ladder`].
#[derive(PartialEq, Properties)]
pub struct LadderProps {
    /// What is drawn.
    pub picture: Picture,
    /// The words over it.
    pub headings: Headings,
    /// Unit of head pressure, over its scale.
    pub unit: AttrValue,
    /// The rung that answers.
    pub chosen: usize,
    /// Another rung is to answer.
    pub choose: Callback<usize>,
}

/// The ladder.
#[component]
pub fn Ladder(props: &LadderProps) -> Html {
    let picture = &props.picture;
    let count = picture.rungs.len();
    let list = use_node_ref();
    let keys = {
        let (choose, chosen, list) = (props.choose.clone(), props.chosen, list.clone());
        Callback::from(move |event: KeyboardEvent| {
            let last = count.saturating_sub(1);
            let next = match event.key().as_str() {
                "ArrowDown" | "ArrowRight" => (chosen + 1).min(last),
                "ArrowUp" | "ArrowLeft" => chosen.saturating_sub(1),
                "Home" => 0,
                "End" => last,
                _ => return,
            };
            event.prevent_default();
            choose.emit(next);
            let rung = list.cast::<HtmlElement>().and_then(|list| {
                list.query_selector(&format!("[data-rung=\"{next}\"]"))
                    .ok()
                    .flatten()
            });
            if let Some(rung) =
                rung.and_then(|rung| wasm_bindgen::JsCast::dyn_into::<HtmlElement>(rung).ok())
            {
                // A rung that cannot take the focus is still chosen.
                let _ = rung.focus();
            }
        })
    };
    html! {
        <div class={classes!("ladder", (picture.panels.len() > 1).then_some("ladder--two"))}>
            <div class="ladder__columns" aria-hidden="true">
                <span class="ladder__outdoor">{ props.headings.outdoor }</span>
                { for picture.panels.iter().map(|panel| html! {
                    <div class="ladder__over-panel">
                        if picture.panels.len() > 1 {
                            <span class="ladder__method">{ &panel.name }</span>
                        }
                        <div class="ladder__panel">
                            <span class="ladder__fan">{ props.headings.fan }</span>
                            <span>{ props.headings.head }{ ", " }{ &props.unit }</span>
                        </div>
                        <div class="ladder__panel ladder__scale">{ scale(picture) }</div>
                    </div>
                }) }
            </div>
            <div class="ladder__body">
                <div class="ladder__rungs" role="radiogroup" aria-label={props.headings.ladder} ref={list} onkeydown={keys}>
                    { for picture.rungs.iter().enumerate().map(|(index, rung)| {
                        let choose = props.choose.reform(move |_: MouseEvent| index);
                        let chosen = index == props.chosen;
                        html! {
                            <button type="button" role="radio" class={classes!("rung", (!rung.holds).then_some("rung--short"))}
                                aria-checked={chosen.to_string()} aria-label={rung.sentence.clone()}
                                tabindex={if chosen { "0" } else { "-1" }} data-rung={index.to_string()} onclick={choose}>
                                <span class="rung__name">{ &rung.name }</span>
                            </button>
                        }
                    }) }
                </div>
                <div class="ladder__picture" aria-hidden="true">
                    { for picture.panels.iter().enumerate().map(|(index, panel)| html! {
                        <div class="ladder__panel">
                            { fan(picture, panel) }
                            { head(picture, panel) }
                            { across(picture, panel, index + 1 == picture.panels.len()) }
                        </div>
                    }) }
                </div>
            </div>
        </div>
    }
}

/// The scale of head pressure. Two side by side have room for its ends alone.
fn scale(picture: &Picture) -> Html {
    let last = picture.pressure_ticks.len().saturating_sub(1);
    let marks = picture
        .pressure_ticks
        .iter()
        .enumerate()
        .map(|(index, (at, text))| {
            let (anchor, class) = match index {
                0 => ("start", None),
                _ if index == last => ("end", None),
                _ => ("middle", Some("ladder__between")),
            };
            html! { <text {class} x={picture.pressure.percent(*at)} y="1em" text-anchor={anchor}>{ text }</text> }
        });
    html! { <svg>{ for marks }</svg> }
}

/// Where a place on the ladder lies on the drawing: each rung stands in the middle of its own band.
fn down(picture: &Picture, at: f64) -> f64 {
    (at + 0.5) / picture.rungs.len().max(1) as f64
}

/// The place nearest to the middle of a stretch where no line comes nearer to a word than it needs room; the middle where there is none.
fn clear(picture: &Picture, panel: &Panel, (from, to): (f64, f64), room: f64) -> f64 {
    const STEP: f64 = 0.35;
    let at = f64::midpoint(from, to);
    let lines = [
        Some(picture.low.at),
        panel.hold.as_ref().map(|hold| hold.at),
        picture.now.as_ref().map(|now| now.at),
    ];
    let is_clear = |at: f64| {
        lines
            .into_iter()
            .flatten()
            .all(|line| (line - at).abs() >= room)
    };
    // Half a step of grace lets a word stand in a stretch that is hardly longer than it.
    let steps = (0.5 * (to - from) / STEP + 0.5) as i32;
    (0..=steps)
        .flat_map(|step| [at + STEP * f64::from(step), at - STEP * f64::from(step)])
        .find(|at| is_clear(*at))
        .unwrap_or(at)
}

/// The fan, to the left of the spine.
fn fan(picture: &Picture, panel: &Panel) -> Html {
    let edge = panel
        .samples
        .iter()
        .map(|sample| (1.0 - sample.fan, down(picture, sample.at)));
    let (first, last) = (
        panel
            .samples
            .first()
            .map_or(0.0, |sample| down(picture, sample.at)),
        panel
            .samples
            .last()
            .map_or(1.0, |sample| down(picture, sample.at)),
    );
    html! {
        <svg class="ladder__left">
            <svg viewBox="0 0 1 1" preserveAspectRatio="none" width="100%" height="100%">
                <polygon class="fan-body" points={polyline([(1.0, first)].into_iter().chain(edge).chain([(1.0, last)]))}
                    vector-effect="non-scaling-stroke" />
            </svg>
            { for panel.stretches.iter().map(|stretch| word(picture, panel, stretch)) }
        </svg>
    }
}

/// The word for what the fan does over a stretch. Two panels have no width for it, so there it runs along the spine.
fn word(picture: &Picture, panel: &Panel, stretch: &Stretch) -> Html {
    /// Rungs that the longest word takes along the spine.
    const LENGTH: f64 = 1.6;
    /// Rungs that a line of words takes across it.
    const LINE: f64 = 0.35;
    if picture.panels.len() == 1 {
        let ends = (stretch.from, stretch.to);
        let y = percent(down(picture, clear(picture, panel, ends, LINE)));
        return html! {
            <text class="ladder__word" x="100%" dx="-0.3em" dy="0.35em" text-anchor="end" {y}>{ &stretch.name }</text>
        };
    }
    if stretch.to - stretch.from < LENGTH {
        return Html::default();
    }
    let ends = (stretch.from + 0.5 * LENGTH, stretch.to - 0.5 * LENGTH);
    let middle = clear(picture, panel, ends, 0.5 * LENGTH + LINE);
    html! {
        <svg x="100%" y={percent(down(picture, middle))} overflow="visible">
            <text class="ladder__word" transform="rotate(-90)" dy="-0.5em" text-anchor="middle">{ &stretch.name }</text>
        </svg>
    }
}

/// Head pressure against the need, to the right of the spine.
fn head(picture: &Picture, panel: &Panel) -> Html {
    let need = picture.pressure.share(picture.need);
    let place =
        |sample: &Sample, head: f64| (picture.pressure.share(head), down(picture, sample.at));
    let band: Vec<_> = panel
        .samples
        .iter()
        .filter_map(|sample| Some((sample, sample.swing?)))
        .collect();
    let lows = band.iter().map(|(sample, (low, _))| place(sample, *low));
    let highs = band
        .iter()
        .rev()
        .map(|(sample, (_, high))| place(sample, *high));
    // One line a stretch that holds or falls short, each reaching the first sample of the next so that no gap shows.
    let mut stretches: Vec<(bool, Vec<(f64, f64)>)> = Vec::new();
    for sample in &panel.samples {
        let point = place(sample, sample.head);
        match stretches.last_mut() {
            Some((holds, points)) if *holds == sample.holds => points.push(point),
            last => {
                if let Some((_, points)) = last {
                    points.push(point);
                }
                stretches.push((sample.holds, vec![point]));
            }
        }
    }
    html! {
        <svg class="ladder__right">
            <defs>
                <pattern id="starved" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                    <line class="starved-line" x1="0" x2="0" y1="0" y2="7" />
                </pattern>
            </defs>
            <rect class="starved" x="0" y="0" width={percent(need)} height="100%" fill="url(#starved)" />
            <svg viewBox="0 0 1 1" preserveAspectRatio="none" width="100%" height="100%">
                if !band.is_empty() {
                    <polygon class="chart__band" points={polyline(lows.chain(highs))} vector-effect="non-scaling-stroke" />
                }
                { for stretches.into_iter().map(|(holds, points)| html! {
                    <polyline class={if holds { "head-holds" } else { "head-short" }} points={polyline(points)}
                        vector-effect="non-scaling-stroke" />
                }) }
            </svg>
            <line class="need-line" x1={percent(need)} x2={percent(need)} y1="0" y2="100%" />
            { need_word(picture, need) }
        </svg>
    }
}

/// The word for the need, on the wider side of its line; along the line where two panels leave no width for it.
fn need_word(picture: &Picture, need: f64) -> Html {
    let is_left = need > 0.5;
    if picture.panels.len() > 1 {
        return html! {
            <svg x={percent(need)} y="100%" overflow="visible">
                <text class="ladder__word" transform="rotate(-90)" dx="0.5em" dy={if is_left { "-0.4em" } else { "1.1em" }}>
                    { &picture.need_name }
                </text>
            </svg>
        };
    }
    html! {
        <text class="ladder__word" x={percent(need)} y="100%" dy="-0.5em"
            dx={if is_left { "-0.4em" } else { "0.4em" }} text-anchor={if is_left { "end" } else { "start" }}>
            { &picture.need_name }
        </text>
    }
}

/// What runs right across: the hold limit as one heavy bar, the site's low and outdoors now as pointers, which are named once, on the last panel.
fn across(picture: &Picture, panel: &Panel, is_last: bool) -> Html {
    let mut marks: Vec<(&Pointer, &'static str)> = panel
        .hold
        .iter()
        .map(|hold| (hold, "hold"))
        .chain([(&picture.low, "low")])
        .chain(picture.now.iter().map(|now| (now, "now")))
        .collect();
    marks.sort_by(|(a, _), (b, _)| a.at.total_cmp(&b.at));
    // Where two come close, the warmer one is named over its line and the colder one under it.
    let last = marks.len().saturating_sub(1);
    html! {
        <svg class="ladder__over">
            { for marks.into_iter().enumerate().map(|(index, (mark, kind))| {
                let y = percent(down(picture, mark.at));
                let under = index == last && index > 0;
                html! {
                    <g class={format!("mark mark--{kind}")}>
                        <line x1="0" x2="100%" y1={y.clone()} y2={y.clone()} />
                        if is_last {
                            <svg x="100%" y={y.clone()} overflow="visible"><path d="M0 0 L12 -7 L12 7 Z" /></svg>
                        }
                        if is_last || kind == "hold" {
                            <text class="ladder__word" x="100%" y={y} dx="-0.25em" dy={if under { "1.2em" } else { "-0.5em" }}
                                text-anchor="end">{ &mark.name }</text>
                        }
                    </g>
                }
            }) }
        </svg>
    }
}

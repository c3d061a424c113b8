//! Curves over one scale, drawn so that they can be told apart without colour and read at 360 px.
//!
//! A marker stands where the curves are read. It moves by touch and by arrow keys, since it is a slider laid over the drawing; what is read there is said
//! by whoever draws the chart.
//!
//! Everything is placed by percentages, so that the drawing takes any width while its letters and strokes keep their size.
//! Charting libraries were tried and left: DEVELOPERS.md says which and why.

use wasm_bindgen::JsCast;
use web_sys::{HtmlInputElement, InputEvent};
use yew::prelude::*;

use super::scale::{Scale, percent, polyline};

/// How a curve is stroked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stroke {
    /// One heavy line.
    Solid,
    /// Long dashes.
    Dashed,
    /// Dots.
    Dotted,
}

impl Stroke {
    /// The class that strokes it.
    pub fn class(self) -> &'static str {
        match self {
            Stroke::Solid => "stroke-solid",
            Stroke::Dashed => "stroke-dashed",
            Stroke::Dotted => "stroke-dotted",
        }
    }
}

/// One curve.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// What it is called, written beside it.
    pub name: AttrValue,
    /// How it is stroked.
    pub stroke: Stroke,
    /// Its points.
    pub points: Vec<(f64, f64)>,
    /// Lowest and highest value around a point, where the quantity saws between two.
    pub band: Vec<(f64, f64, f64)>,
}

/// A line right across, at one value.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// Where.
    pub at: f64,
    /// What it is called.
    pub name: AttrValue,
    /// Class that strokes it.
    pub class: &'static str,
}

/// A mark of a scale: where, and what is written there.
pub type Tick = (f64, AttrValue);

/// The marker of a chart: where it can stand and where it does.
#[derive(Clone, Debug, PartialEq)]
pub struct Marker {
    /// What it is, for those who do not see it.
    pub ask: AttrValue,
    /// What stands along the bottom at each of its places, evenly spaced from the left edge to the right.
    pub places: Vec<AttrValue>,
    /// The place where it stands, which is that of the point of each curve too.
    pub at: usize,
}

/// Properties of [`Chart`].
#[derive(PartialEq, Properties)]
pub struct ChartProps {
    /// What the chart shows, in a sentence.
    pub summary: AttrValue,
    /// What stands along the bottom.
    pub across: AttrValue,
    /// What stands along the side.
    pub up: AttrValue,
    /// Scale along the bottom.
    pub x: Scale,
    /// Marks along the bottom.
    pub x_ticks: Vec<Tick>,
    /// Scale along the side.
    pub y: Scale,
    /// Marks along the side.
    pub y_ticks: Vec<Tick>,
    /// The curves.
    pub curves: Vec<Curve>,
    /// Lines across at a value of the side.
    #[prop_or_default]
    pub levels: Vec<Mark>,
    /// Lines up at a value of the bottom.
    #[prop_or_default]
    pub posts: Vec<Mark>,
    /// Where the curves are read.
    pub marker: Marker,
    /// The marker was moved.
    #[prop_or_default]
    pub read: Callback<usize>,
}

/// Least distance between two names beside their curves, as a share of the height.
const NAME_HEIGHT: f64 = 0.085;

/// A chart with its curves named beside them.
#[component]
pub fn Chart(props: &ChartProps) -> Html {
    let across = |y: f64| 1.0 - props.y.share(y);
    let curves = props.curves.iter().map(|curve| {
        let line = polyline(curve.points.iter().map(|&(x, y)| (props.x.share(x), across(y))));
        let band = (!curve.band.is_empty()).then(|| {
            let lows = curve.band.iter().map(|&(x, low, _)| (props.x.share(x), across(low)));
            let highs = curve.band.iter().rev().map(|&(x, _, high)| (props.x.share(x), across(high)));
            html! { <polygon class="chart__band" points={polyline(lows.chain(highs))} vector-effect="non-scaling-stroke" /> }
        });
        html! { <>
            { band }
            <polyline class={classes!("chart__curve", curve.stroke.class())} points={line} vector-effect="non-scaling-stroke" />
        </> }
    });
    let names = apart(
        props
            .curves
            .iter()
            .filter_map(|curve| {
                curve
                    .points
                    .first()
                    .map(|&(_, y)| (across(y) - 0.02, curve.name.clone()))
            })
            .collect(),
    );
    html! {
        <figure class="chart">
            <p class="chart__up" aria-hidden="true">{ &props.up }</p>
            <svg class="chart__posts" aria-hidden="true">
                { for props.posts.iter().filter(|mark| !mark.name.is_empty()).enumerate().map(|(line, mark)| {
                    let at = props.x.share(mark.at);
                    let anchor = if at > 0.5 { "end" } else { "start" };
                    html! { <text x={percent(at)} y={format!("{}em", 1.0 + 1.2 * line as f64)} text-anchor={anchor}>{ &mark.name }</text> }
                }) }
            </svg>
            <div class="chart__field">
            <svg class="chart__plot" role="img" aria-label={props.summary.clone()}>
                { for props.y_ticks.iter().map(|(at, _)| {
                    let y = percent(across(*at));
                    html! { <line class="chart__rule" x1="0" x2="100%" y1={y.clone()} y2={y} /> }
                }) }
                <svg viewBox="0 0 1 1" preserveAspectRatio="none" width="100%" height="100%">{ for curves }</svg>
                { for props.levels.iter().map(|mark| {
                    let y = across(mark.at);
                    html! { <>
                        <line class={mark.class} x1="0" x2="100%" y1={percent(y)} y2={percent(y)} />
                        <text class="chart__name" x="99%" y={percent(y)} dy="-0.35em" text-anchor="end">{ &mark.name }</text>
                    </> }
                }) }
                { for props.posts.iter().map(|mark| {
                    let x = props.x.percent(mark.at);
                    html! { <line class={mark.class} x1={x.clone()} x2={x} y1="0" y2="100%" /> }
                }) }
                { mark(props) }
                    { for names.into_iter().map(|(y, name)| html! {
                    <text class="chart__name" x="0.5em" y={percent(y)}>{ name }</text>
                }) }
            </svg>
            { slider(props) }
            </div>
            <svg class="chart__side" aria-hidden="true">
                { for props.y_ticks.iter().map(|(at, text)| html! {
                    <text x="0.4em" y={percent(across(*at))} dy="0.35em">{ text }</text>
                }) }
            </svg>
            <svg class="chart__foot" aria-hidden="true">
                { for props.x_ticks.iter().map(|(at, text)| {
                    let share = props.x.share(*at);
                    let anchor = if share < 0.03 { "start" } else if share > 0.97 { "end" } else { "middle" };
                    html! { <text x={percent(share)} y="1.1em" text-anchor={anchor}>{ text }</text> }
                }) }
            </svg>
            <p class="chart__across" aria-hidden="true">{ &props.across }</p>
        </figure>
    }
}

/// The marker: a line up, and a dot on each curve.
fn mark(props: &ChartProps) -> Html {
    let at = props.marker.at;
    let points: Vec<_> = props
        .curves
        .iter()
        .filter_map(|curve| curve.points.get(at))
        .map(|&(x, y)| (props.x.percent(x), percent(1.0 - props.y.share(y))))
        .collect();
    html! {
        <g class="chart__marker" data-marker={at.to_string()}>
            if let Some((x, _)) = points.first() {
                <line x1={x.clone()} x2={x.clone()} y1="0" y2="100%" />
            }
            { for points.iter().map(|(x, y)| html! { <circle cx={x.clone()} cy={y.clone()} r="5" /> }) }
        </g>
    }
}

/// The slider over the drawing. Nothing of it is seen but its focus.
fn slider(props: &ChartProps) -> Html {
    let marker = &props.marker;
    let read = props.read.clone();
    let moved = Callback::from(move |event: InputEvent| {
        let place = event
            .target()
            .and_then(|target| target.dyn_into::<HtmlInputElement>().ok())
            .and_then(|slider| slider.value().parse().ok());
        if let Some(place) = place {
            read.emit(place);
        }
    });
    html! {
        <input class="chart__slider" type="range" min="0" max={marker.places.len().saturating_sub(1).to_string()} step="1"
            value={marker.at.to_string()} aria-label={marker.ask.clone()} aria-valuetext={marker.places.get(marker.at).cloned()} oninput={moved} />
    }
}

/// Moves names that would lie on each other apart, and keeps them on the drawing.
fn apart(mut names: Vec<(f64, AttrValue)>) -> Vec<(f64, AttrValue)> {
    names.sort_by(|(a, _), (b, _)| b.total_cmp(a));
    let mut floor = 0.98_f64;
    for (y, _) in &mut names {
        *y = y.min(floor);
        floor = *y - NAME_HEIGHT;
    }
    // Pushed off at the top, they go back down in turn.
    let mut ceiling = NAME_HEIGHT;
    for (y, _) in names.iter_mut().rev() {
        *y = y.max(ceiling);
        ceiling = *y + NAME_HEIGHT;
    }
    names
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_do_not_lie_on_each_other() {
        let names = apart(vec![
            (0.9, "a".into()),
            (0.91, "b".into()),
            (0.02, "c".into()),
        ]);
        for pair in names.windows(2) {
            assert!(
                (pair[0].0 - pair[1].0).abs() >= NAME_HEIGHT - 1e-12,
                "{names:?}"
            );
        }
        assert!(names.iter().all(|(y, _)| (NAME_HEIGHT..=0.98).contains(y)));
    }
}

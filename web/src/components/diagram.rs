//! A diagram of pressure and enthalpy: the dome between liquid and vapour, and rounds of four points over it, told apart by stroke and by the shape of
//! their points.
//!
//! Touching it chooses the nearest point. It is drawn as the other charts are, by percentages, so that letters and strokes keep their size.

use wasm_bindgen::JsCast;
use web_sys::{Element, MouseEvent};
use yew::prelude::*;

use super::chart::{Stroke, Tick};
use super::scale::{Scale, percent, polyline};

/// One round.
#[derive(Clone, Debug, PartialEq)]
pub struct Round {
    /// What it is called, written beside it.
    pub name: AttrValue,
    /// Its points in order, on the scales of the diagram.
    pub points: [(f64, f64); 4],
}

/// Which point: the number of its round, and its own in the round.
pub type Which = (usize, usize);

/// Properties of [`Diagram`].
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct DiagramProps {
    /// What the diagram shows, in sentences.
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
    /// The dome, from one foot to the other.
    pub dome: Vec<(f64, f64)>,
    /// What is written under the dome.
    pub dome_name: AttrValue,
    /// The rounds.
    pub rounds: Vec<Round>,
    /// The point that is read.
    pub chosen: Which,
    /// Another point is to be read.
    pub choose: Callback<Which>,
}

impl DiagramProps {
    /// Where a point lies, as shares of width and height from the top left.
    fn place(&self, (x, y): (f64, f64)) -> (f64, f64) {
        (self.x.share(x), 1.0 - self.y.share(y))
    }

    /// The point nearest to a touch, given in pixels of a drawing of this size.
    fn nearest(&self, (x, y): (f64, f64), (width, height): (f64, f64)) -> Option<Which> {
        let away = |point: (f64, f64)| {
            let (across, down) = self.place(point);
            (across * width - x).hypot(down * height - y)
        };
        let points = self.rounds.iter().enumerate().flat_map(|(round, of)| {
            let points = of.points.iter().enumerate();
            points.map(move |(index, point)| ((round, index), *point))
        });
        points
            .min_by(|(_, a), (_, b)| away(*a).total_cmp(&away(*b)))
            .map(|(which, _)| which)
    }
}

/// The diagram.
#[component]
pub fn Diagram(props: &DiagramProps) -> Html {
    let touched = {
        let props = props.clone();
        Callback::from(move |event: MouseEvent| {
            // The field itself is what is touched: nothing in it takes a touch.
            let field = event
                .target()
                .and_then(|target| target.dyn_into::<Element>().ok());
            let found = field.and_then(|field| {
                props.nearest(
                    (f64::from(event.offset_x()), f64::from(event.offset_y())),
                    (
                        f64::from(field.client_width()),
                        f64::from(field.client_height()),
                    ),
                )
            });
            if let Some(which) = found {
                props.choose.emit(which);
            }
        })
    };
    let dome = polyline(props.dome.iter().map(|point| props.place(*point)));
    let rounds = props.rounds.iter().enumerate().map(|(index, round)| {
        let corners = round.points.iter().map(|point| props.place(*point));
        html! {
            <polygon class={classes!("chart__curve", stroke(index).class())} points={polyline(corners)} vector-effect="non-scaling-stroke" />
        }
    });
    html! {
        <figure class="chart chart--tall">
            <p class="chart__up" aria-hidden="true">{ &props.up }</p>
            <div class="chart__field diagram" onclick={touched}>
                <svg class="chart__plot" role="img" aria-label={props.summary.clone()}>
                    { for props.y_ticks.iter().map(|(at, _)| {
                        let y = percent(1.0 - props.y.share(*at));
                        html! { <line class="chart__rule" x1="0" x2="100%" y1={y.clone()} y2={y} /> }
                    }) }
                    <svg viewBox="0 0 1 1" preserveAspectRatio="none" width="100%" height="100%">
                        <polyline class="diagram__dome" points={dome} vector-effect="non-scaling-stroke" />
                        { for rounds }
                    </svg>
                    { for props.rounds.iter().enumerate().map(|(index, round)| points(props, index, round)) }
                    { top(props) }
                </svg>
            </div>
            <svg class="chart__side" aria-hidden="true">
                { for props.y_ticks.iter().map(|(at, text)| html! {
                    <text x="0.4em" y={percent(1.0 - props.y.share(*at))} dy="0.35em">{ text }</text>
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

fn stroke(round: usize) -> Stroke {
    if round == 0 {
        Stroke::Solid
    } else {
        Stroke::Dashed
    }
}

/// The word for the dome, under its top.
fn top(props: &DiagramProps) -> Html {
    let highest = props.dome.iter().max_by(|(_, a), (_, b)| a.total_cmp(b));
    let Some((x, y)) = highest.map(|point| props.place(*point)) else {
        return Html::default();
    };
    html! {
        <text class="chart__name diagram__word" x={percent(x)} y={percent(y)} dx="-0.8em" dy="2.6em" text-anchor="middle">{ &props.dome_name }</text>
    }
}

/// The points of a round with their numbers, each at its corner, and the round's name along an edge that is its own.
fn points(props: &DiagramProps, index: usize, round: &Round) -> Html {
    let corners = round.points.map(|point| props.place(point));
    let [inlet, outlet, liquid, _] = corners;
    let (middle, edge, shift) = if index == 0 {
        (f64::midpoint(outlet.0, liquid.0), outlet.1, "-0.5em")
    } else {
        (f64::midpoint(inlet.0, liquid.0), inlet.1, "1.2em")
    };
    html! { <g>
        <text class="chart__name" x={percent(middle)} y={percent(edge)} dy={shift} text-anchor="middle">{ &round.name }</text>
        { for corners.into_iter().enumerate().map(|(number, (x, y))| {
            let chosen = props.chosen == (index, number);
            // The first round carries its numbers inside, the second one outside, so that two corners close together keep theirs apart.
            let (is_right, is_top) = (number < 2, number == 1 || number == 2);
            let (dx, anchor) = if is_right == (index > 0) { ("0.7em", "start") } else { ("-0.7em", "end") };
            let dy = if is_top == (index > 0) { "-0.5em" } else { "1.2em" };
            let size = if chosen { 8 } else { 5 };
            let class = classes!("diagram__point", (index > 0).then_some("diagram__point--open"), chosen.then_some("diagram__point--chosen"));
            let (x, y) = (percent(x), percent(y));
            html! { <>
                if index == 0 {
                    <circle {class} cx={x.clone()} cy={y.clone()} r={size.to_string()} />
                } else {
                    <svg x={x.clone()} y={y.clone()} overflow="visible"><rect {class} x={(-size).to_string()} y={(-size).to_string()}
                        width={(2 * size).to_string()} height={(2 * size).to_string()} /></svg>
                }
                <text class="chart__name" {x} {y} {dx} {dy} text-anchor={anchor}>{ number + 1 }</text>
            </> }
        }) }
    </g> }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_touch_chooses_the_nearest_point() {
        let round = |y: f64| Round {
            name: "".into(),
            points: [(8.0, y), (9.0, y + 3.0), (2.0, y + 3.0), (2.0, y)],
        };
        let props = DiagramProps {
            summary: "".into(),
            across: "".into(),
            up: "".into(),
            x: Scale::new(0.0, 10.0),
            x_ticks: Vec::new(),
            y: Scale::new(0.0, 10.0),
            y_ticks: Vec::new(),
            dome: Vec::new(),
            dome_name: "".into(),
            rounds: vec![round(5.0), round(1.0)],
            chosen: (0, 0),
            choose: Callback::noop(),
        };
        let size = (300.0, 200.0);
        // The top of the drawing is the highest value.
        assert_eq!(props.nearest((265.0, 45.0), size), Some((0, 1)));
        assert_eq!(props.nearest((70.0, 178.0), size), Some((1, 3)));
    }
}

//! A sensor's curve, what it reads at the marker, and the same as a table.

use winterset_words::screen;
use yew::prelude::*;

use super::chart::{Chart, ChartProps};
use crate::view::words;
use crate::view::worksheets::SensorCurve;

/// Properties of [`SensorCurvePart`].
#[derive(PartialEq, Properties)]
pub struct SensorCurveProps {
    /// The curve.
    pub curve: SensorCurve,
}

/// The part of a worksheet that draws a sensor's curve.
#[component]
pub fn SensorCurvePart(props: &SensorCurveProps) -> Html {
    let labels = words().worksheets().start_labels();
    let curve = &props.curve;
    let moved = use_state_eq(|| None::<usize>);
    let at = moved.unwrap_or_else(|| curve.middle());
    let read = {
        let moved = moved.setter();
        Callback::from(move |at: usize| moved.set(Some(at)))
    };
    let (sensed, signal) = curve.reading(at);
    let (heads, rows) = curve.table();
    html! {
        <section class="part curves" data-curve="">
            <h2>{ labels.curve }</h2>
            <p class="part__note">{ words().pictures().marker_note }</p>
            <Chart ..ChartProps { read, ..curve.chart(at) } />
            <div class="reading" role="status" data-reading="sensor">
                <p class="reading__place">{ (words().pictures().read_at)(sensed) }</p>
                <dl><div><dt>{ heads[1] }</dt><dd>{ signal.to_owned() }</dd></div></dl>
            </div>
            <details class="more">
                <summary>{ screen().table }</summary>
                <div class="table" tabindex="0" role="region" aria-label={screen().table}>
                    <table>
                        <thead><tr>{ for heads.iter().map(|head| html! { <th scope="col">{ *head }</th> }) }</tr></thead>
                        <tbody>
                            { for rows.into_iter().map(|(sensed, signal)| html! {
                                <tr><th scope="row">{ sensed.to_owned() }</th><td>{ signal.to_owned() }</td></tr>
                            }) }
                        </tbody>
                    </table>
                </div>
            </details>
        </section>
    }
}

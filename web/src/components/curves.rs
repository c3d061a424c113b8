//! The curves of a plan, what they read at the marker, and the same as a table.

use winterset_calc::Method;
use winterset_words::{Units, screen};
use yew::prelude::*;

use super::chart::{Chart, ChartProps};
use crate::view::curves::{self, Reading, Row};
use crate::view::ladder::{self, Drawn, Read};
use crate::view::plan::Held;
use crate::view::words;

/// Properties of [`Curves`].
#[derive(PartialEq, Properties)]
pub struct CurvesProps {
    /// The plan.
    pub plan: Held,
    /// Its samples.
    pub drawn: Drawn,
    /// The methods that are read.
    pub read: Read,
    /// The rung that is read on the ladder, where the marker stands until it is moved.
    pub rung: usize,
    /// Units to write in.
    pub units: Units,
}

/// The curves.
#[component]
pub fn Curves(props: &CurvesProps) -> Html {
    let t = screen();
    // Moved away from one rung, the marker comes back with the next.
    let moved = use_state_eq(|| None::<(usize, usize)>);
    let (Ok(plan), Some(sampled)) = (props.plan.0.as_ref(), props.drawn.as_ref()) else {
        return Html::default();
    };
    let at = match *moved {
        Some((rung, at)) if rung == props.rung => at,
        _ => curves::place_of(sampled, props.rung),
    };
    let at = at.min(sampled.places.len().saturating_sub(1));
    let move_to = {
        let rung = props.rung;
        Callback::from(move |at: usize| moved.set(Some((rung, at))))
    };
    let (read, units) = (props.read, props.units);
    let (head, fan) = curves::charts(plan, sampled, units, (read, at));
    let rows = curves::table(plan, sampled, units, read);
    let with = |chart: ChartProps| {
        let read = move_to.clone();
        html! { <Chart ..ChartProps { read, ..chart } /> }
    };
    html! {
        <section class="part curves">
            <h2>{ t.curves }</h2>
            <p class="part__note">{ t.curves_note }{ " " }{ words().pictures().marker_note }</p>
            { with(head) }
            { said(curves::reading(plan, sampled, units, (read, at))) }
            { with(fan) }
            <details class="more">
                <summary>{ t.table }</summary>
                { table(rows, &curves::drawn(read), units) }
            </details>
        </section>
    }
}

/// What is read at the marker, said again whenever it moves.
fn said(reading: Reading) -> Html {
    html! {
        <div class="reading" role="status" data-reading="curves">
            <p class="reading__place">{ reading.place }</p>
            <dl>
                { for reading.methods.into_iter().map(|(name, value)| html! { <div><dt>{ name }</dt><dd>{ value }</dd></div> }) }
            </dl>
        </div>
    }
}

fn table(rows: Vec<Row>, methods: &[Method], units: Units) -> Html {
    let t = screen();
    html! {
        <div class="table" tabindex="0" role="region" aria-label={t.table}>
            <table>
                <thead>
                    <tr>
                        <th scope="col" rowspan="2">{ t.outdoor }</th>
                        { for methods.iter().map(|method| html! { <th scope="colgroup" colspan="2">{ words().method(*method).name }</th> }) }
                    </tr>
                    <tr>
                        { for methods.iter().map(|_| html! { <>
                            <th scope="col">{ ladder::pressure_unit(units) }</th><th scope="col">{ t.fan }</th>
                        </> }) }
                    </tr>
                </thead>
                <tbody>
                    { for rows.into_iter().map(|row| html! {
                        <tr>
                            <th scope="row">{ row.outdoor }</th>
                            { for row.methods.into_iter().map(|(head, fan)| html! { <><td>{ head }</td><td>{ fan }</td></> }) }
                        </tr>
                    }) }
                </tbody>
            </table>
        </div>
    }
}

//! The values to test a controller by, on paper alone: on the screen the ladder answers the same.

use winterset_calc::{Plan, Verdict};
use winterset_words::{Units, screen};
use yew::prelude::*;

use crate::view::ladder::Sampled;
use crate::view::{test_values, words};

/// The table; nothing for a plan that needs no settings.
pub fn test_values(plan: &Plan, sampled: &Sampled, units: Units) -> Html {
    if matches!(plan.verdict, Verdict::NotNeeded { .. }) {
        return Html::default();
    }
    let (t, paper) = (screen(), words().paper());
    let method = words().method(test_values::method(plan)).name;
    html! {
        <section class="part on-paper" data-test-values="">
            <h2>{ paper.test_values }</h2>
            <p class="part__note">{ (paper.test_values_note)(method) }</p>
            <table class="test-values">
                <thead>
                    <tr>
                        { for [t.outdoor, t.output, t.motor_volts, t.motor_speed, t.head_pressure].map(|name| html! { <th scope="col">{ name }</th> }) }
                    </tr>
                </thead>
                <tbody>
                    { for test_values::rows(plan, sampled, units).into_iter().map(|row| html! {
                        <tr>
                            <th scope="row">{ row.outdoor }</th>
                            { for [row.output, row.volts, row.speed, row.head].map(|value| html! { <td>{ value }</td> }) }
                        </tr>
                    }) }
                </tbody>
            </table>
        </section>
    }
}

/// What stands in for the table as long as it is worked out.
pub fn not_ready() -> Html {
    html! { <p class="on-paper">{ words().paper().not_ready }</p> }
}

//! The cycle of a plan on its diagram, what each of its points reads, and the same as a table.

use winterset_words::{Units, screen};
use yew::prelude::*;

use super::choices::Choices;
use super::diagram::{Diagram, DiagramProps, Which};
use super::made::use_made;
use crate::view::cycle::{self, ToDraft, Told};
use crate::view::plan::Held;
use crate::view::words;

/// Properties of [`CyclePart`].
#[derive(PartialEq, Properties)]
pub struct CycleProps {
    /// The plan.
    pub plan: Held,
    /// Units to write in.
    pub units: Units,
}

/// The diagram with everything round it.
#[component]
pub fn CyclePart(props: &CycleProps) -> Html {
    let t = words().pictures();
    let chosen = use_state_eq(|| (0, 0));
    let drawn = use_made(&ToDraft(props.plan.clone()));
    let Some(plan) = props.plan.plan() else {
        return Html::default();
    };
    let Some(Some(drawn)) = drawn else {
        return html! { <p class="part__note waiting" role="status">{ screen().working_out }</p> };
    };
    let told = cycle::told(plan, &drawn, props.units);
    // A plan made anew may have one cycle fewer.
    let (round, state) = (chosen.0.min(told.cycles.len().saturating_sub(1)), chosen.1);
    let choose = {
        let chosen = chosen.setter();
        Callback::from(move |which: Which| chosen.set(which))
    };
    let number = |key: String| key.parse::<usize>().unwrap_or_default();
    let choose_round = choose.reform(move |key| (number(key), state));
    let choose_state = choose.reform(move |key| (round, number(key)));
    let names = cycle::state_names();
    let diagram = DiagramProps {
        chosen: (round, state),
        choose,
        ..told.diagram.clone()
    };
    let rounds: Vec<_> = (told.cycles.iter().enumerate())
        .map(|(index, (name, ..))| (index.to_string().into(), (*name).into()))
        .collect();
    let states: Vec<_> = (names.iter().enumerate())
        .map(|(index, name)| (index.to_string().into(), name.clone().into()))
        .collect();
    html! {
        <div data-picture="cycle">
            <p class="part__note">{ t.diagram_note }</p>
            { for told.sentences.iter().map(|sentence| html! { <p class="part__note">{ sentence }</p> }) }
            <Diagram ..diagram />
            { reading(&told, (round, state), &names) }
            <Choices name="cycle" ask={t.cycle} quiet=true chosen={round.to_string()} choices={rounds} choose={choose_round} />
            <Choices name="cycle-state" ask={t.state} quiet=true chosen={state.to_string()} choices={states} choose={choose_state} />
            <details class="more">
                <summary>{ screen().table }</summary>
                { table(&told, &names) }
            </details>
        </div>
    }
}

/// What the chosen point reads, said again whenever another one is chosen.
fn reading(told: &Told, (round, state): Which, names: &[String; 4]) -> Html {
    let found = told.cycles.get(round).and_then(|(_, name, states)| {
        let values = states.get(state)?;
        Some((name, names.get(state)?, values))
    });
    let Some((name, state, values)) = found else {
        return Html::default();
    };
    html! {
        <div class="reading" role="status" data-reading="cycle">
            <p class="reading__place">{ state }</p>
            <p class="part__note">{ name }</p>
            <dl>
                { for cycle::heads().into_iter().zip(values).map(|(head, value)| html! { <div><dt>{ head }</dt><dd>{ value }</dd></div> }) }
            </dl>
        </div>
    }
}

fn table(told: &Told, names: &[String; 4]) -> Html {
    let t = words().pictures();
    html! {
        <div class="table" tabindex="0" role="region" aria-label={t.diagram}>
            <table>
                <thead>
                    <tr>
                        <th scope="col">{ t.state }</th>
                        { for cycle::heads().into_iter().map(|head| html! { <th scope="col">{ head }</th> }) }
                    </tr>
                </thead>
                { for told.cycles.iter().map(|(_, name, states)| html! {
                    <tbody>
                        <tr><th scope="rowgroup" colspan="4">{ name }</th></tr>
                        { for names.iter().zip(states).map(|(name, values)| html! {
                            <tr>
                                <th scope="row">{ name }</th>
                                { for values.iter().map(|value| html! { <td>{ value }</td> }) }
                            </tr>
                        }) }
                    </tbody>
                }) }
            </table>
        </div>
    }
}

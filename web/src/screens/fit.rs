//! How the plan's method is fitted and wired: the steps of the work with their cautions and sketches.

use std::rc::Rc;

use winterset_calc::fitting::{Arrangement, Choice};
use winterset_calc::{Method, Plan};
use winterset_words::screen;
use yew::prelude::*;

use super::nowhere::Nowhere;
use crate::components::cautions::Cautions;
use crate::components::choices::Choices;
use crate::components::field::{Choose, Round};
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::planned::use_plan;
use crate::components::sheet::SheetLine;
use crate::components::sketches::SketchFigure;
use crate::route::Route;
use crate::store::{Act, Fitted, Preferences, use_shelf};
use crate::view::fitting::{Scribe, Step, choice};
use crate::view::{name_or, plan, words};

/// Properties of [`FitScreen`].
#[derive(PartialEq, Properties)]
pub struct FitProps {
    /// Identifier of the site.
    pub site: String,
    /// Identifier of the system.
    pub system: String,
}

/// The steps, or the way to a plan where there is none yet.
#[component]
pub fn FitScreen(props: &FitProps) -> Html {
    let t = words().fitting().labels();
    let shelf = use_shelf();
    let found = shelf
        .site(&props.site)
        .and_then(|site| site.system(&props.system));
    let planned = use_plan(found);
    let Some(system) = found else {
        return html! { <Nowhere message={screen().gone_system} /> };
    };
    let to_plan = Route::Plan {
        site: props.site.clone(),
        system: props.system.clone(),
    };
    let up = (
        to_plan.clone(),
        name_or(&system.name, screen().unnamed_system),
    );
    let Some(Ok(plan)) = planned.as_deref() else {
        return html! {
            <main class="screen">
                <Head title={t.fit} {up} />
                <p class="about">{ plan::said(planned.as_ref(), shelf.preferences.units) }</p>
                <Go to={to_plan} class="button button--first">{ screen().see_plan }</Go>
            </main>
        };
    };
    let preferences = &shelf.preferences;
    let chosen = choice(plan, preferences.fitted.get(&props.system));
    let choose = {
        let (shelf, id) = (shelf.dispatcher(), props.system.clone());
        Callback::from(move |fitted: Fitted| {
            let id = id.clone();
            shelf.dispatch(Act::EditPreferences(Rc::new(
                move |preferences: &mut Preferences| {
                    preferences.fitted.insert(id.clone(), fitted.clone());
                },
            )));
        })
    };
    let scribe = Scribe::new(plan, chosen, preferences.units);
    let steps = scribe.steps();
    let here = Here {
        site: &props.site,
        system: &props.system,
    };
    html! {
        <main class="screen">
            <Head title={t.fit} {up} />
            <p class="part__note">{ t.note }</p>
            { choices(plan, chosen, &choose) }
            if steps.is_empty() {
                <p class="said" role="status">{ t.nothing }</p>
            } else {
                <ol class="steps">{ for steps.into_iter().map(|step| here.step(step)) }</ol>
            }
            <div class="buttons">
                <Go to={to_plan} class="button">{ screen().see_plan }</Go>
            </div>
            <p class="quiet quiet--after">{ t.defers }</p>
        </main>
    }
}

fn choices(plan: &Plan, chosen: Choice, choose: &Callback<Fitted>) -> Html {
    let methods = Method::ALL
        .into_iter()
        .filter(|method| plan.applies(*method))
        .map(|method| (method.key().into(), words().method(method).name.into()));
    let arrangements = Arrangement::ALL.map(|arrangement| {
        (
            arrangement.key().into(),
            words().fitting().arrangement(arrangement).into(),
        )
    });
    let round = Round {
        key: "fit-method".into(),
        ask: screen().method.into(),
        ..Round::default()
    };
    let other_method = choose.reform(move |method: String| Fitted {
        method,
        arrangement: chosen.arrangement.key().to_owned(),
    });
    let other_arrangement = choose.reform(move |arrangement: String| Fitted {
        method: chosen.method.key().to_owned(),
        arrangement,
    });
    html! { <>
        <Choose {round} choices={methods.collect::<Vec<_>>()} chosen={chosen.method.key()} choose={other_method} />
        <p class="part__note">{ words().method(chosen.method).reason }</p>
        <Choices name="arrangement" ask={words().fitting().labels().arrangement} chosen={chosen.arrangement.key()}
            choices={arrangements.to_vec()} choose={other_arrangement} />
    </> }
}

/// The system that is on the screen.
struct Here<'a> {
    site: &'a str,
    system: &'a str,
}

impl Here<'_> {
    fn step(&self, step: Step) -> Html {
        let waits = step.waits.map(|field| {
            let to = Route::Input {
                site: self.site.to_owned(),
                system: self.system.to_owned(),
                field: field.key().to_owned(),
            };
            (to, words().field(field).ask)
        });
        html! {
            <li class="steps__one" key={step.name} data-step={step.name}>
                <p class="steps__number">{ &step.number }</p>
                <h2>{ step.name }</h2>
                <Cautions cautions={step.cautions} />
                <p>{ &step.how }</p>
                if let Some((to, question)) = waits {
                    <Go {to} class="button">{ question }</Go>
                }
                if !step.values.is_empty() {
                    <div class="sheet">
                        { for step.values.into_iter().map(|line| html! { <SheetLine key={line.key.to_string()} line={line.clone()} /> }) }
                    </div>
                }
                if let Some(sketch) = step.sketch {
                    <SketchFigure name={sketch.name} title={sketch.title} says={sketch.says} drawing={sketch.drawing} />
                }
            </li>
        }
    }
}

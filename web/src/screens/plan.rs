//! The winter plan of a system: the verdict first, then what to enter, then the picture, then everything behind it.

use std::rc::Rc;

use winterset_calc::{Basis, Field, Method, Plan, Quantity, Verdict};
use winterset_profile::{FieldError, Site, System, WinterHours};
use winterset_words::{Units, screen};
use yew::prelude::*;
use yew_router::prelude::*;

use super::nowhere::Nowhere;
use crate::components::advice::AdvicePart;
use crate::components::cautions::Cautions;
use crate::components::confirm::Confirm;
use crate::components::contents::Contents;
use crate::components::cycle::CyclePart;
use crate::components::folded::Folded;
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::icon::{Icon, Sketch};
use crate::components::on_controller::OnController;
use crate::components::planned::use_plan;
use crate::components::send::Send;
use crate::components::sheet::{Line, SheetLine};
use crate::components::sketches::SketchFigure;
use crate::components::value::Value;
use crate::components::verdict::VerdictBlock;
use crate::components::winter::Winter;
use crate::route::Route;
use crate::store::{Act, Preferences, use_shelf};
use crate::view::fitting::{self, Scribe};
use crate::view::name_or;
use crate::view::plan::Held;
use crate::view::sheet::Writer;
use crate::view::{controllers, fields, plan, words};

/// Properties of [`PlanScreen`].
#[derive(PartialEq, Properties)]
pub struct PlanProps {
    /// Identifier of the site.
    pub site: String,
    /// Identifier of the system.
    pub system: String,
}

/// The plan, or what is missing for one.
#[component]
pub fn PlanScreen(props: &PlanProps) -> Html {
    let t = screen();
    let shelf = use_shelf();
    let navigator = use_navigator();
    let units = shelf.preferences.units;
    let here = Here {
        site: props.site.clone(),
        system: props.system.clone(),
    };
    let choose = use_callback(
        (shelf.dispatcher(), here.clone()),
        |controller: String, (shelf, here)| {
            shelf.dispatch(Act::EditSystem {
                site: here.site.clone(),
                system: here.system.clone(),
                edit: Rc::new(move |system: &mut System| {
                    system.controller.clone_from(&controller);
                }),
            });
        },
    );
    let found = shelf
        .site(&props.site)
        .and_then(|site| Some((site, site.system(&props.system)?)));
    let planned = use_plan(found.map(|(_, system)| system));
    let Some((site, system)) = found else {
        return html! { <Nowhere message={t.gone_system} /> };
    };
    let remove = {
        let (shelf, navigator, here) = (shelf.dispatcher(), navigator, here.clone());
        Callback::from(move |()| {
            let system = here.system.clone();
            if let Some(navigator) = &navigator {
                navigator.replace(&Route::Site {
                    site: here.site.clone(),
                });
            }
            shelf.dispatch(Act::EditSite {
                site: here.site.clone(),
                edit: Rc::new(move |site: &mut Site| site.systems.retain(|one| one.id != system)),
            });
        })
    };
    let name = name_or(&system.name, t.unnamed_system);
    let up = (
        Route::Site {
            site: site.id.clone(),
        },
        name_or(&site.name, t.unnamed_site),
    );
    html! {
        <main class="screen screen--wide">
            <Head title={name.clone()} {up} />
            { match &planned {
                None => html! { <p class="part__note" role="status" aria-busy="true">{ t.working_out }</p> },
                Some(planned) => match planned.as_ref() {
                    Ok(_) => html! {
                        <Whole plan={Held(planned.clone())} system={system.clone()} hours={site.winter()} {here} {choose}
                            preferences={shelf.preferences.without_typed()} />
                    },
                    Err(errors) => missing(errors, system, &here, units),
                },
            } }
            if !system.entries.is_empty() {
                <Send system={system.clone()} />
            }
            <section class="part">
                <Confirm act={t.remove_system_act} question={(t.remove_system)(&name)} done={remove} />
            </section>
            <p class="quiet quiet--after">{ t.defers }</p>
        </main>
    }
}

/// The system that is on the screen.
#[derive(Clone, PartialEq)]
struct Here {
    site: String,
    system: String,
}

impl Here {
    fn inputs(&self) -> Route {
        Route::Inputs {
            site: self.site.clone(),
            system: self.system.clone(),
        }
    }

    fn fit(&self) -> Route {
        Route::Fit {
            site: self.site.clone(),
            system: self.system.clone(),
        }
    }

    fn input(&self, field: Field) -> Route {
        Route::Input {
            site: self.site.clone(),
            system: self.system.clone(),
            field: field.key().to_owned(),
        }
    }
}

/// What stands between the record and a plan, each leading to its field.
fn missing(errors: &[FieldError], system: &System, here: &Here, units: Units) -> Html {
    let t = screen();
    html! { <>
        <section class="verdict">
            <p class="verdict__sentence">{ t.planless }</p>
            <p class="verdict__action">{ t.missing_note }</p>
        </section>
        <ul class="list">
            { for errors.iter().map(|error| html! {
                <li key={error.field.key()}>
                    <Go to={here.input(error.field)} class="list__one">
                        <span class="list__name">{ words().field(error.field).ask }</span>
                        <span class="list__note">{ words().problem(error.field, &error.problem, units) }</span>
                        <Icon sketch={Sketch::On} />
                    </Go>
                </li>
            }) }
        </ul>
        <div class="buttons">
            <Go to={here.inputs()} class="button button--first">
                { if system.entries.is_empty() { t.answer } else { t.change_inputs } }
            </Go>
        </div>
    </> }
}

/// Properties of [`Whole`].
#[derive(PartialEq, Properties)]
struct WholeProps {
    plan: Held,
    system: System,
    hours: Option<WinterHours>,
    here: Here,
    /// A controller was chosen.
    choose: Callback<String>,
    /// Without what is typed on this screen, which changes nothing here but the ladder.
    preferences: Preferences,
}

/// The whole plan.
#[component]
fn Whole(props: &WholeProps) -> Html {
    let t = screen();
    let WholeProps {
        system,
        here,
        preferences,
        ..
    } = props;
    let Ok(plan) = props.plan.0.as_ref() else {
        return Html::default();
    };
    let units = preferences.units;
    let writer = Writer::new(plan, units);
    let used: Vec<(Field, String, Basis)> = Field::ALL
        .iter()
        .filter_map(|field| {
            let (text, basis) = fields::value(system, *field, units)?;
            Some((*field, text, basis))
        })
        .collect();
    let is_assumed = |(.., basis): &&(Field, String, Basis)| *basis == Basis::Assumed;
    let assumed = used.iter().filter(is_assumed).count();
    let is_needed = !matches!(plan.verdict, Verdict::NotNeeded { .. });
    let settings = html! { <>
        { for writer.settings().into_iter().map(|step| html! { <>
            <h3 class="step">{ step.name }</h3>
            <Cautions cautions={step.cautions} />
            { sheet(step.lines) }
        </> }) }
        { for writer.notes().into_iter().map(|note| html! { <p class="part__note">{ note }</p> }) }
    </> };
    let print = Callback::from(|_: MouseEvent| {
        if let Some(window) = web_sys::window() {
            // A browser that cannot print says so itself.
            let _ = window.print();
        }
    });
    html! { <>
        <VerdictBlock number={plan::strong_number(plan, units)} enough={plan.verdict.is_enough()}
            sentence={words().verdict(plan.verdict, plan, units)}
            action={words().action(plan.verdict.action(plan.input.motor.value))} />
        if plan.input.refrigerant.is_estimated() {
            <p class="quiet" data-note="estimated">{ t.estimated }</p>
        }
        <div class="buttons">
            <Go to={here.inputs()} class="button">
                { if assumed == 0 { t.change_inputs.to_owned() } else { (t.replace_assumed)(assumed) } }
            </Go>
            <Go to={here.fit()} class="button">{ words().fitting().labels().fit }</Go>
            <button type="button" class="button" onclick={print}>{ words().paper().print }</button>
        </div>
        <Contents />
        <div class="two">
            <div class="two__first">
                <section class="part">
                    <h2>{ t.settings_sheet }</h2>
                    if is_needed {
                        <p class="part__note">{ t.settings_sheet_note }</p>
                        { settings }
                    } else {
                        <details class="more"><summary>{ t.settings_all_the_same }</summary>{ settings }</details>
                    }
                </section>
                { on_controller(plan, system, preferences, props.choose.clone()) }
            </div>
            <div class="two__side">
                <Winter plan={props.plan.clone()} />
                { sketches(plan, here, preferences) }
            </div>
            <div class="two__rest">
                <Folded part="need" title={t.pressure_need} says={writer.show(Quantity::Pressure(plan.need.pressure.value)).to_string()}
                    content={within(&props.plan, units, need)} />
                <Folded part="known-point" title={t.known_point}
                    says={writer.show(Quantity::Temperature(plan.design.condensing.value)).to_string()}
                    content={within(&props.plan, units, |writer, _| sheet(writer.known_point()))} />
                <Folded part="cycle" title={words().pictures().diagram} content={{
                    let plan = props.plan.clone();
                    Callback::from(move |()| html! { <CyclePart plan={plan.clone()} {units} /> })
                }} />
            </div>
        </div>
        <AdvicePart system={system.clone()} plan={props.plan.clone()} {units} hours={props.hours.clone()} input={{
            let here = here.clone();
            Callback::from(move |field| here.input(field))
        }} />
        <section class="part">
            <h2>{ t.values_used }</h2>
            <p class="legend">
                <span>{ t.values_used_note }</span>
                <span class="value">{ t.entered_form }</span>
                <span class="value value--assumed">{ t.assumed_form }</span>
            </p>
            <ul class="list used">
                { for used.into_iter().map(|(field, text, basis)| html! {
                    <li key={field.key()}>
                        <Go to={here.input(field)} class="list__one">
                            <span>{ words().field(field).ask }</span>
                            <Value number={text} {basis} />
                        </Go>
                    </li>
                }) }
            </ul>
        </section>
    </> }
}

/// What stands in a part, written when it is opened.
fn within(held: &Held, units: Units, write: fn(&Writer, &Plan) -> Html) -> Callback<(), Html> {
    let held = held.clone();
    Callback::from(move |()| {
        let plan = held.plan();
        plan.map_or_else(Html::default, |plan| write(&Writer::new(plan, units), plan))
    })
}

/// What sets the need, where each method holds it, and where switched fans go off and on.
fn need(writer: &Writer, plan: &Plan) -> Html {
    let t = screen();
    html! { <>
        <Cautions cautions={writer.gauge_cautions()} />
        { sheet(writer.need()) }
        <h3 class="step">{ t.hold_limits }</h3>
        { sheet(writer.hold()) }
        if let Some((name, limits)) = writer.hold_at_lowest_load() {
            <h3 class="step">{ name }</h3>
            <p class="part__note">{ writer.part_load() }</p>
            { sheet(limits) }
        } else {
            <p class="part__note">{ writer.part_load() }</p>
        }
        <h3 class="step">{ (t.cycled)(words().method(Method::OnOff).name) }</h3>
        { sheet(vec![writer.on_off()]) }
        if !plan.stage_points.is_empty() {
            <h3 class="step">{ (t.cycled)(words().method(Method::Staged).name) }</h3>
            { sheet(writer.stages()) }
        }
    </> }
}

/// How the settings sheet stands to the controller that was chosen for the system.
fn on_controller(
    plan: &Plan,
    system: &System,
    preferences: &Preferences,
    choose: Callback<String>,
) -> Html {
    let t = words().controllers().labels();
    let choices = preferences.controllers.iter().map(|controller| {
        let name = name_or(&controller.name, t.unnamed);
        (AttrValue::from(controller.id.clone()), name)
    });
    let chosen = preferences.controller(&system.controller);
    let checked =
        chosen.map(|controller| controllers::checked(plan, controller, preferences.units));
    let limits = chosen.map(|controller| Route::Controller {
        controller: controller.id.clone(),
    });
    html! {
        <OnController choices={choices.collect::<Vec<_>>()} {choose} {checked}
            chosen={chosen.map(|controller| AttrValue::from(controller.id.clone())).unwrap_or_default()}
            limits={limits.unwrap_or(Route::Settings)} />
    }
}

/// The sketches of what is fitted, for paper; on the screen they have their own.
fn sketches(plan: &Plan, here: &Here, preferences: &Preferences) -> Html {
    let chosen = fitting::choice(plan, preferences.fitted.get(&here.system));
    let sketches = Scribe::new(plan, chosen, preferences.units).sketches();
    if sketches.is_empty() {
        return Html::default();
    }
    html! {
        <section class="part on-paper" data-sketches="">
            <h2>{ words().fitting().labels().fit }{ ": " }{ words().method(chosen.method).name }</h2>
            <div class="drawings">
                { for sketches.into_iter().map(|sketch| html! {
                    <SketchFigure key={sketch.name.to_string()} name={sketch.name.clone()} title={sketch.title} says={sketch.says} drawing={sketch.drawing} bare=true />
                }) }
            </div>
        </section>
    }
}

fn sheet(lines: Vec<Line>) -> Html {
    html! {
        <div class="sheet">{ for lines.into_iter().map(|line| html! { <SheetLine key={line.key.to_string()} line={line.clone()} /> }) }</div>
    }
}

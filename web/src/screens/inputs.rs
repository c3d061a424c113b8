//! The answers that the plan starts from: the few that it needs, then everything that is assumed until someone knows better.

use std::rc::Rc;

use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use winterset_calc::Field;
use winterset_profile::{Entry, Kind, System, WinterHours, kind_of};
use winterset_words::{Units, screen};
use yew::prelude::*;

use super::nowhere::Nowhere;
use crate::components::field::{Choose, Number, Round, Words};
use crate::components::from_phone::FromPhone;
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::made::Making;
use crate::components::planned::use_plan;
use crate::components::refrigerant::RefrigerantRow;
use crate::components::rested::use_rested;
use crate::route::Route;
use crate::store::{Act, Shelf, use_shelf};
use crate::view::fields::{self, ESSENTIALS, REST};
use crate::view::name_or;
use crate::view::plan::{self, Answers, Planned};
use crate::view::{weather, words};

/// Properties of [`Inputs`].
#[derive(PartialEq, Properties)]
pub struct InputsProps {
    /// Identifier of the site.
    pub site: String,
    /// Identifier of the system.
    pub system: String,
    /// Stable name of the field to open at.
    #[prop_or_default]
    pub field: Option<String>,
}

/// The inputs.
#[component]
pub fn Inputs(props: &InputsProps) -> Html {
    let t = screen();
    let shelf = use_shelf();
    use_effect_with(props.field.clone(), |field| {
        if let Some(field) = field {
            focus(field);
        }
    });
    let units = shelf.preferences.units;
    let site = shelf.site(&props.site);
    let system = site.and_then(|site| site.system(&props.system)).cloned();
    let (answered, planned) = use_last_plan(system.as_ref());
    let Some(system) = system else {
        return html! { <Nowhere message={t.gone_system} /> };
    };
    let to_plan = Route::Plan {
        site: props.site.clone(),
        system: props.system.clone(),
    };
    let form = Form {
        to: To {
            shelf: shelf.dispatcher(),
            site: props.site.clone(),
            system: props.system.clone(),
        },
        units,
        planned: planned.clone(),
        answered,
        system: system.clone(),
        winter: site.and_then(|site| site.winter()),
    };
    let name = name_or(&system.name, t.unnamed_system);
    let verdict = plan::said(planned.as_ref(), units);
    html! {
        <main class="screen">
            <Head title={t.inputs} up={(to_plan.clone(), name)} />
            <Words text={system.name.clone()} edit={form.rename()}
                round={Round { key: "system-name".into(), ask: t.system_name.into(), ..Round::default() }} />
            <section class="part">
                <h2>{ t.essentials }</h2>
                <p class="part__note">{ t.essentials_note }</p>
                { for ESSENTIALS.into_iter().map(|field| form.row(field)) }
            </section>
            <section class="part">
                <h2>{ t.assumed }</h2>
                <p class="part__note">{ t.assumed_note }</p>
                { for REST.into_iter().map(|field| form.row(field)) }
            </section>
            <div class="live" role="status">
                <p>{ verdict }</p>
                <Go to={to_plan} class="button button--first">{ t.see_plan }</Go>
            </div>
        </main>
    }
}

/// The last plan that was made of a system, and the system as it was then.
///
/// A plan takes longer than a key may: it is made once the person pauses. What cannot be read is told at once.
#[hook]
fn use_last_plan(system: Option<&System>) -> (Option<System>, Option<Planned>) {
    let rested = use_rested(&system.cloned());
    let planned = use_plan(rested.as_ref());
    let last = use_mut_ref(|| (None, None));
    let at_once = system.and_then(|system| Answers::of(system).at_hand());
    if at_once.is_some() {
        *last.borrow_mut() = (system.cloned(), at_once);
    } else if planned.is_some() {
        *last.borrow_mut() = (rested, planned);
    }
    let last = last.borrow();
    last.clone()
}

/// The system that answers go to.
#[derive(Clone, PartialEq)]
struct To {
    shelf: UseReducerDispatcher<Shelf>,
    site: String,
    system: String,
}

impl To {
    fn edit(&self, change: impl Fn(&mut System, String) + 'static) -> Callback<String> {
        let (shelf, site, system) = (self.shelf.clone(), self.site.clone(), self.system.clone());
        let change = Rc::new(change);
        Callback::from(move |text: String| {
            let change = change.clone();
            shelf.dispatch(Act::EditSystem {
                site: site.clone(),
                system: system.clone(),
                edit: Rc::new(move |system| change(system, text.clone())),
            });
        })
    }
}

/// Properties of [`NumberRow`] and [`ChoiceRow`]: all that they show, so that a key draws the row anew that it changes and no other.
#[derive(PartialEq, Properties)]
struct RowProps {
    to: To,
    field: Field,
    round: Round,
    typed: AttrValue,
    /// Stable name of the unit beside a number.
    #[prop_or_default]
    unit: String,
}

#[component]
fn NumberRow(props: &RowProps) -> Html {
    let field = props.field;
    let Some(kind) = kind_of(field) else {
        return Html::default();
    };
    let unit = props.unit.clone();
    let edit = props.to.edit(move |system, typed| {
        // The unit that stood beside the answer goes with it, so that it means the same whatever is set later.
        system.set(field, Entry::with_unit(typed, unit.clone()));
    });
    let choose = props.to.edit(move |system, unit| {
        let typed = system.entry(field).map(|entry| entry.typed.clone());
        system.set(field, Entry::with_unit(typed.unwrap_or_default(), unit));
    });
    html! {
        <Number round={props.round.clone()} text={props.typed.clone()} units={fields::units_of(kind)}
            unit={props.unit.clone()} signed={fields::is_signed(kind)} {edit} {choose} />
    }
}

#[component]
fn ChoiceRow(props: &RowProps) -> Html {
    let field = props.field;
    let choose = props
        .to
        .edit(move |system, key| system.set(field, Entry::new(key)));
    html! {
        <Choose round={props.round.clone()} choices={fields::choices(field)} chosen={props.typed.clone()}
            none={AttrValue::from(screen().not_known)} {choose} />
    }
}

/// Makes the rows of one system's form.
struct Form {
    to: To,
    units: Units,
    /// The last plan.
    planned: Option<Planned>,
    /// The system as it was when that was planned.
    answered: Option<System>,
    system: System,
    winter: Option<WinterHours>,
}

impl Form {
    fn edit(&self, change: impl Fn(&mut System, String) + 'static) -> Callback<String> {
        self.to.edit(change)
    }

    fn rename(&self) -> Callback<String> {
        self.edit(|system, name| system.name = name)
    }

    fn round(&self, field: Field) -> Round {
        // What was wrong with another answer says nothing about this one.
        let is_same = |answered: &&System| self.system.entry(field) == answered.entry(field);
        let answered = self.answered.as_ref().filter(is_same);
        let error = answered
            .zip(self.planned.as_ref())
            .and_then(|(_, planned)| plan::error_at(&self.system, planned, field, self.units));
        fields::round(&self.system, field, error, self.units)
    }

    fn typed(&self, field: Field) -> AttrValue {
        let typed = self.system.entry(field).map(|entry| entry.typed.clone());
        AttrValue::from(typed.unwrap_or_default())
    }

    fn row(&self, field: Field) -> Html {
        match (field, kind_of(field)) {
            (Field::Refrigerant, _) => self.refrigerant(),
            (Field::CoolingCapacity, _) => self.load(),
            (Field::OutdoorLow, _) => self.low(),
            (Field::FlowCoefficients | Field::PowerCoefficients, _) => self.text(field),
            (Field::Elevation, _) => self.elevation(),
            (_, None) => self.choice(field),
            (_, Some(_)) => self.number(field),
        }
    }

    fn number(&self, field: Field) -> Html {
        let unit =
            kind_of(field).map(|kind| fields::unit_beside(&self.system, field, kind, self.units));
        html! {
            <NumberRow key={field.key()} to={self.to.clone()} {field} round={self.round(field)} typed={self.typed(field)}
                unit={unit.unwrap_or_default()} />
        }
    }

    /// The site's low, with the design low of its weather file on offer. What stands beside the field is there whether it holds an offer or
    /// not, so that the field in use stays the same one and keeps the focus.
    fn low(&self) -> Html {
        let field = Field::OutdoorLow;
        let offered = self.winter.as_ref();
        let offered = offered.filter(|hours| !weather::is_low_of(&self.system, hours, self.units));
        html! { <>
            { self.number(field) }
            <div>{ for offered.map(|hours| self.offer(field, hours)) }</div>
        </> }
    }

    fn offer(&self, field: Field, hours: &WinterHours) -> Html {
        let entry = weather::low_entry(hours, self.units);
        let take = self.edit(move |system, _| system.set(field, entry.clone()));
        // The button goes as soon as it was touched; the focus stays with the answer.
        let touched = take.reform(move |_: MouseEvent| {
            focus(field.key());
            String::new()
        });
        html! {
            <button type="button" class="button button--plain" data-act="use-low" onclick={touched}>
                { (words().weather().offer)(&weather::low(hours, self.units)) }
            </button>
        }
    }

    fn text(&self, field: Field) -> Html {
        let edit = self.edit(move |system, typed| system.set(field, Entry::new(typed)));
        html! { <Words key={field.key()} round={self.round(field)} text={self.typed(field)} lines=true {edit} /> }
    }

    /// The elevation, which the phone itself may know.
    fn elevation(&self) -> Html {
        let field = Field::Elevation;
        let units = self.units;
        let token = fields::unit_beside(&self.system, field, Kind::Elevation, units);
        let fill = {
            let token = token.clone();
            self.edit(move |system, typed| {
                system.set(field, Entry::with_unit(typed, token.clone()));
            })
        };
        let take = fill.reform(move |elevation| fields::typed_elevation(elevation, &token, units));
        let write = Callback::from(move |span| fields::elevation(span, units));
        html! { <>
            { self.number(field) }
            <FromPhone text={self.typed(field)} {write} {take} />
        </> }
    }

    fn refrigerant(&self) -> Html {
        let field = Field::Refrigerant;
        let edit = self.edit(move |system, typed| system.set(field, Entry::new(typed)));
        html! { <RefrigerantRow round={self.round(field)} typed={self.typed(field)} none={AttrValue::from(screen().choose)} {edit} /> }
    }

    fn choice(&self, field: Field) -> Html {
        html! {
            <ChoiceRow key={field.key()} to={self.to.clone()} {field} round={self.round(field)} typed={self.typed(field)} />
        }
    }

    /// Cooling capacity or heat rejected: one question with two ways to answer. Both stand there where a record holds both.
    fn load(&self) -> Html {
        let held = |field: Field| {
            self.system
                .entry(field)
                .is_some_and(|entry| !entry.is_blank())
        };
        let both = held(Field::CoolingCapacity) && held(Field::HeatRejected);
        if both {
            return html! { <>{ self.number(Field::CoolingCapacity) }{ self.number(Field::HeatRejected) }</> };
        }
        let (this, other) = match self.system.entry(Field::HeatRejected) {
            Some(_) => (Field::HeatRejected, Field::CoolingCapacity),
            None => (Field::CoolingCapacity, Field::HeatRejected),
        };
        let own_unit = self.units.unit(Kind::Power).token();
        let turn = self.edit(move |system, _| {
            // The number goes along: it was read off the same plate.
            let Entry { typed, unit, .. } = system.entry(this).cloned().unwrap_or_default();
            system.set(this, Entry::default());
            system.set(
                other,
                Entry::with_unit(typed, unit.unwrap_or_else(|| own_unit.to_owned())),
            );
        });
        html! { <>
            { self.number(this) }
            <button type="button" class="button button--plain" onclick={turn.reform(|_: MouseEvent| String::new())}>
                { (screen().instead)(words().field(other).ask) }
            </button>
        </> }
    }
}

/// Brings the row of a field into sight and its answer into focus.
fn focus(field: &str) {
    let answer = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.get_element_by_id(&format!("answer-{field}")))
        .and_then(|element| element.dyn_into::<HtmlElement>().ok());
    if let Some(answer) = answer {
        // An answer that cannot take the focus is still on the page.
        let _ = answer.focus();
    }
}

//! One site: its name, its systems and its winter hours.

use std::rc::Rc;

use winterset_calc::Field;
use winterset_profile::{Site, System, WinterHours};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use super::nowhere::Nowhere;
use crate::components::confirm::Confirm;
use crate::components::field::{Round, Words};
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::icon::{Icon, Sketch};
use crate::components::planned::Headline;
use crate::components::shared_bank::SharedBankPart;
use crate::components::weather::WeatherPart;
use crate::route::Route;
use crate::store::{Act, id, use_shelf};
use crate::view::name_or;
use crate::view::weather;

/// Properties of [`SiteScreen`].
#[derive(PartialEq, Properties)]
pub struct SiteProps {
    /// Identifier of the site.
    pub site: String,
}

/// The site.
#[component]
pub fn SiteScreen(props: &SiteProps) -> Html {
    let t = screen();
    let shelf = use_shelf();
    let navigator = use_navigator();
    let units = shelf.preferences.units;
    let Some(site) = shelf.site(&props.site).cloned() else {
        return html! { <Nowhere message={t.gone_site} /> };
    };
    let rename = {
        let (shelf, id) = (shelf.clone(), site.id.clone());
        Callback::from(move |name: String| {
            shelf.dispatch(Act::EditSite {
                site: id.clone(),
                edit: Rc::new(move |site: &mut Site| site.name.clone_from(&name)),
            });
        })
    };
    let add = {
        let (shelf, navigator, id) = (shelf.clone(), navigator.clone(), site.id.clone());
        Callback::from(move |_: MouseEvent| {
            let system = System::new(id::new(), "");
            let to = Route::Inputs {
                site: id.clone(),
                system: system.id.clone(),
            };
            shelf.dispatch(Act::EditSite {
                site: id.clone(),
                edit: Rc::new(move |site: &mut Site| site.systems.push(system.clone())),
            });
            if let Some(navigator) = &navigator {
                navigator.push(&to);
            }
        })
    };
    let winter = site.winter();
    let keep = {
        let (shelf, site) = (shelf.dispatcher(), site.id.clone());
        Callback::from(move |hours: Option<WinterHours>| {
            shelf.dispatch(Act::EditSite {
                site: site.clone(),
                edit: Rc::new(move |site: &mut Site| site.set_winter(hours.as_ref())),
            });
        })
    };
    let use_low = {
        let (shelf, site) = (shelf.dispatcher(), site.id.clone());
        let low = winter
            .as_ref()
            .map(|hours| weather::low_entry(hours, units));
        Callback::from(move |()| {
            let low = low.clone().unwrap_or_default();
            shelf.dispatch(Act::EditSite {
                site: site.clone(),
                edit: Rc::new(move |site: &mut Site| {
                    for system in &mut site.systems {
                        system.set(Field::OutdoorLow, low.clone());
                    }
                }),
            });
        })
    };
    let is_used = winter.as_ref().is_some_and(|hours| {
        let mut systems = site.systems.iter();
        systems.all(|system| weather::is_low_of(system, hours, units))
    });
    let remove = {
        let (shelf, id) = (shelf.clone(), site.id.clone());
        Callback::from(move |()| {
            shelf.dispatch(Act::RemoveSite(id.clone()));
            if let Some(navigator) = &navigator {
                navigator.replace(&Route::Sites);
            }
        })
    };
    html! {
        <main class="screen">
            <Head title={name_or(&site.name, t.unnamed_site)} up={(Route::Sites, AttrValue::from(t.sites))} />
            <Words text={site.name.clone()} edit={rename}
                round={Round { key: "site-name".into(), ask: t.site_name.into(), ..Round::default() }} />
            <section class="part">
                <h2>{ t.systems }</h2>
                if site.systems.is_empty() {
                    <p class="part__note">{ t.no_systems }</p>
                } else {
                    <ul class="list">
                        { for site.systems.iter().map(|system| html! {
                            <li key={system.id.clone()}>
                                <Go to={Route::Plan { site: site.id.clone(), system: system.id.clone() }} class="list__one">
                                    <span class="list__name">{ name_or(&system.name, t.unnamed_system) }</span>
                                    <Headline system={system.clone()} {units} />
                                    <Icon sketch={Sketch::On} />
                                </Go>
                            </li>
                        }) }
                    </ul>
                }
                <div class="buttons">
                    <button type="button" class="button button--first" onclick={add}>{ t.add_system }</button>
                </div>
            </section>
            <SharedBankPart systems={site.systems.clone()} {units} />
            <WeatherPart kept={winter} {units} systems={(site.systems.len(), is_used)} {keep} {use_low} />
            <section class="part">
                <Confirm act={t.remove_site_act} question={(t.remove_site)(&name_or(&site.name, t.unnamed_site))} done={remove} />
            </section>
        </main>
    }
}

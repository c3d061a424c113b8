//! One site: its name and its systems.

use std::rc::Rc;

use winterset_profile::{Site, System};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use super::nowhere::Nowhere;
use crate::components::confirm::Confirm;
use crate::components::field::{Round, Words};
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::icon::{Icon, Sketch};
use crate::components::shared_bank::SharedBankPart;
use crate::route::Route;
use crate::store::{Act, id, use_shelf};
use crate::view::name_or;
use crate::view::plan::headline;

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
                                    <span class="list__note">{ headline(system, units) }</span>
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
            <section class="part">
                <Confirm act={t.remove_site_act} question={(t.remove_site)(&name_or(&site.name, t.unnamed_site))} done={remove} />
            </section>
        </main>
    }
}

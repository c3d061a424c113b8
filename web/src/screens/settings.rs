//! The technician's own settings: units, theme, own controllers, and whether the app works without a network.

use std::rc::Rc;

use winterset_profile::{Controller, Kind, Unit};
use winterset_words::{Language, PressureUnit, TemperatureUnit, screen, symbol};
use yew::prelude::*;
use yew_router::prelude::*;

use crate::components::choices::Choices;
use crate::components::field::Choice;
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::icon::{Icon, Sketch};
use crate::offline::Offline;
use crate::route::Route;
use crate::store::{Act, Preferences, ShelfHandle, Theme, id, use_shelf};
use crate::view::name_or;
use crate::view::{controllers, words};

/// The settings.
#[component]
pub fn Settings() -> Html {
    let t = screen();
    let shelf = use_shelf();
    let offline = use_context::<Offline>().unwrap_or_default();
    let preferences = &shelf.preferences;
    let choose = |change: fn(&mut Preferences, &str)| {
        let shelf = shelf.clone();
        Callback::from(move |chosen: String| {
            shelf.dispatch(Act::EditPreferences(Rc::new(move |preferences| {
                change(preferences, &chosen)
            })));
        })
    };
    let unit = |unit: Unit| -> Choice { (unit.token().into(), symbol(unit).into()) };
    let units = preferences.units;
    let language =
        |language: Language| -> Choice { (language.tag().into(), language.name().into()) };
    let theme = |theme: Theme| -> Choice {
        let name = match theme {
            Theme::Auto => t.theme_auto,
            Theme::Light => t.theme_light,
            Theme::Dark => t.theme_dark,
            Theme::Sunlight => t.theme_sunlight,
        };
        (theme.key().into(), name.into())
    };
    html! {
        <main class="screen">
            <Head title={t.settings} />
            <Choices name="language" ask={t.language} chosen={preferences.language().tag()} choices={Language::ALL.map(language).to_vec()}
                choose={choose(|preferences, chosen| preferences.language = Language::of_tag(chosen))} />
            <Choices name="temperature" ask={t.unit_of_temperature} chosen={units.unit(Kind::Temperature).token()}
                choices={[Unit::Fahrenheit, Unit::Celsius].map(unit).to_vec()}
                choose={choose(|preferences, chosen| preferences.units.temperature = temperature(chosen))} />
            <Choices name="pressure" ask={t.unit_of_pressure} chosen={units.unit(Kind::Pressure).token()}
                choices={[Unit::Psig, Unit::KilopascalGauge, Unit::BarGauge].map(unit).to_vec()}
                choose={choose(|preferences, chosen| preferences.units.pressure = pressure(chosen))} />
            <Choices name="theme" ask={t.theme} chosen={preferences.theme.key()} choices={Theme::ALL.map(theme).to_vec()}
                choose={choose(|preferences, chosen| {
                    preferences.theme = Theme::ALL.into_iter().find(|theme| theme.key() == chosen).unwrap_or_default();
                })} />
            <OwnControllers />
            <section class="part" aria-live="polite">
                <h2>{ t.offline }</h2>
                <p>{ match offline {
                    Offline::Unavailable => t.offline_unavailable,
                    Offline::Preparing => t.offline_preparing,
                    Offline::Ready | Offline::NewVersion => t.offline_ready,
                    Offline::Failed => t.offline_failed,
                } }</p>
            </section>
            <p class="quiet quiet--after">{ t.defers }</p>
        </main>
    }
}

/// The technician's own controllers, each leading to its limits.
#[component]
fn OwnControllers() -> Html {
    let t = words().controllers().labels();
    let shelf = use_shelf();
    let navigator = use_navigator();
    let add = {
        let shelf = shelf.clone();
        Callback::from(move |_: MouseEvent| {
            let controller = added(&shelf);
            if let Some(navigator) = &navigator {
                navigator.push(&Route::Controller { controller });
            }
        })
    };
    let kept = &shelf.preferences.controllers;
    html! {
        <section class="part">
            <h2>{ t.own }</h2>
            <p class="part__note">{ t.own_note }</p>
            if kept.is_empty() {
                <p>{ t.none_yet }</p>
            } else {
                <ul class="list">
                    { for kept.iter().map(|controller| html! {
                        <li key={controller.id.clone()}>
                            <Go to={Route::Controller { controller: controller.id.clone() }} class="list__one">
                                <span class="list__name">{ name_or(&controller.name, t.unnamed) }</span>
                                <span class="list__note">{ controllers::headline(controller) }</span>
                                <Icon sketch={Sketch::On} />
                            </Go>
                        </li>
                    }) }
                </ul>
            }
            <div class="buttons">
                <button type="button" class="button" onclick={add}>{ t.add }</button>
            </div>
        </section>
    }
}

/// Adds a controller without limits; its identifier.
fn added(shelf: &ShelfHandle) -> String {
    let controller = Controller::new(id::new());
    let id = controller.id.clone();
    shelf.dispatch(Act::EditPreferences(Rc::new(
        move |preferences: &mut Preferences| {
            preferences.controllers.push(controller.clone());
        },
    )));
    id
}

fn temperature(token: &str) -> TemperatureUnit {
    match Unit::parse(Kind::Temperature, token) {
        Some(Unit::Celsius) => TemperatureUnit::Celsius,
        _ => TemperatureUnit::Fahrenheit,
    }
}

fn pressure(token: &str) -> PressureUnit {
    match Unit::parse(Kind::Pressure, token) {
        Some(Unit::KilopascalGauge) => PressureUnit::Kilopascal,
        Some(Unit::BarGauge) => PressureUnit::Bar,
        _ => PressureUnit::Psig,
    }
}

//! All sites; on a phone that holds none, what this is and where to start.

use winterset_profile::share::{self, ShareError};
use winterset_profile::{Sheet, Site};
use winterset_words::screen;
use yew::prelude::*;
use yew_router::prelude::*;

use crate::components::field::{Round, Words};
use crate::components::file::Pick;
use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::icon::{Icon, Sketch};
use crate::components::install::InstallHint;
use crate::offline::Offline;
use crate::route::Route;
use crate::store::{Act, demo, id, use_shelf};
use crate::view::name_or;
use crate::view::words;

/// No file of a system comes near this size, in bytes.
const LARGEST_FILE: f64 = 1e6;

/// The start screen.
#[component]
pub fn Sites() -> Html {
    let t = screen();
    let shelf = use_shelf();
    let navigator = use_navigator();
    let offline = use_context::<Offline>().unwrap_or_default();
    let add = |make: fn() -> Site| {
        let (shelf, navigator) = (shelf.clone(), navigator.clone());
        Callback::from(move |_: MouseEvent| {
            let site = make();
            let to = Route::Site {
                site: site.id.clone(),
            };
            shelf.dispatch(Act::AddSite(site));
            if let Some(navigator) = &navigator {
                navigator.push(&to);
            }
        })
    };
    let new_site = add(|| Site::new(id::new(), ""));
    let demo_site = add(demo::site);
    let sending = words().sending();
    let trouble = use_state_eq(|| None::<&'static str>);
    let open = {
        let (navigator, trouble) = (navigator.clone(), trouble.setter());
        Callback::from(move |text: Option<String>| match opened(text) {
            Ok(to) => {
                if let Some(navigator) = &navigator {
                    navigator.push(&to);
                }
            }
            Err(why) => trouble.set(Some(why)),
        })
    };
    let has_demo = shelf.sites.iter().any(demo::is_demo);
    html! {
        <main class="screen">
            <Head title={if shelf.sites.is_empty() { "Winterset" } else { t.sites }} />
            if shelf.sites.is_empty() {
                <p class="about">{ t.about }</p>
            } else {
                <SiteList />
            }
            { for shelf.unreadable.iter().map(|unreadable| html! {
                <div class="confirm" role="alert">
                    <p>{ t.unreadable_site }</p>
                    <p class="quiet">{ &unreadable.key }{ ": " }{ &unreadable.why }</p>
                </div>
            }) }
            <div class="buttons">
                <button type="button" class="button button--first" onclick={new_site}>{ t.new_site }</button>
                if !has_demo {
                    <button type="button" class="button" onclick={demo_site}>{ t.load_demo }</button>
                }
                // The worksheet that is opened most, often in a hurry: a touch from here.
                <Go to={Route::Worksheet { sheet: Sheet::Saturation.key().to_owned() }} class="button">
                    { words().worksheets().sheet(Sheet::Saturation).name }
                </Go>
            </div>
            if !has_demo {
                <p class="quiet quiet--after">{ t.demo_note }</p>
            }
            <section class="part">
                <div class="buttons">
                    <Pick id="open-file" label={sending.open_file} most={LARGEST_FILE} read={open} />
                </div>
                <p class="quiet quiet--after">{ sending.open_file_note }</p>
                <div role="alert">
                    if let Some(why) = *trouble {
                        <p class="said">{ why }</p>
                    }
                </div>
            </section>
            if offline == Offline::Ready {
                <p class="quiet quiet--after" role="status">{ t.offline_ready }</p>
            }
            <InstallHint />
        </main>
    }
}

/// More sites than this can be searched.
const FEW: usize = 5;

/// The sites, the one opened last first; with many of them a field to find one by its name.
#[component]
fn SiteList() -> Html {
    let t = screen();
    let install = words().install();
    let shelf = use_shelf();
    let sought = use_state_eq(String::new);
    let seek = {
        let sought = sought.setter();
        Callback::from(move |text: String| sought.set(text))
    };
    let many = shelf.sites.len() > FEW;
    let found: Vec<&Site> = shelf
        .recent()
        .into_iter()
        .filter(|site| !many || is_named(&site.name, &sought))
        .collect();
    html! { <>
        if many {
            <Words text={(*sought).clone()} edit={seek} round={Round { key: "find-site".into(), ask: install.find_site.into(), ..Round::default() }} />
            <p class="part__note" role="status">
                { if sought.trim().is_empty() {
                    install.recent_first.to_owned()
                } else if found.is_empty() {
                    install.no_site.to_owned()
                } else {
                    (install.found)(found.len())
                } }
            </p>
        }
        <ul class="list">
            { for found.into_iter().map(|site| html! {
                <li key={site.id.clone()}>
                    <Go to={Route::Site { site: site.id.clone() }} class="list__one">
                        <span class="list__name">{ name_or(&site.name, t.unnamed_site) }</span>
                        <span class="list__note">{ (t.systems_count)(site.systems.len()) }</span>
                        <Icon sketch={Sketch::On} />
                    </Go>
                </li>
            }) }
        </ul>
    </> }
}

/// Whether every word that was typed stands in a name, whatever its case.
fn is_named(name: &str, sought: &str) -> bool {
    let name = name.to_lowercase();
    sought
        .to_lowercase()
        .split_whitespace()
        .all(|word| name.contains(word))
}

/// Where the system of a file is shown, as one that came in a link is; or what is wrong with the file.
fn opened(text: Option<String>) -> Result<Route, &'static str> {
    let sending = words().sending();
    let system = share::from_file(&text.ok_or(sending.file_unreadable)?).map_err(|error| {
        if matches!(error, ShareError::TooLarge) {
            sending.file_too_large
        } else {
            sending.file_holds_nothing
        }
    })?;
    let payload = share::encode(&system).map_err(|_| sending.file_unreadable)?;
    Ok(Route::Share { payload })
}

#[cfg(test)]
mod tests {
    use super::is_named;

    #[test]
    fn a_site_is_found_by_any_words_of_its_name() {
        assert!(is_named("Hillside radio hut", "HUT hill"));
        assert!(is_named("Cámara de quesos", "cámara"));
        assert!(is_named("Any", "  "));
        assert!(!is_named("Hillside radio hut", "vault"));
    }
}

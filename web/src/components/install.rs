//! The hint that the app can stand on the home screen, until a person has seen enough of it.

use std::rc::Rc;

use yew::prelude::*;

use crate::install::{Offer, is_installed};
use crate::offline::Offline;
use crate::store::{Act, use_shelf};
use crate::view::words;

/// The hint; nothing on a phone that has the app on its home screen, that cannot open it without a network, or where the hint was sent away.
#[component]
pub fn InstallHint() -> Html {
    let t = words().install();
    let shelf = use_shelf();
    let offer = use_context::<Option<Offer>>().flatten();
    let offline = use_context::<Offline>().unwrap_or_default();
    let keeps = matches!(offline, Offline::Ready | Offline::NewVersion);
    if shelf.preferences.is_install_dismissed || is_installed() || !keeps {
        return Html::default();
    }
    let dismiss = {
        let shelf = shelf.dispatcher();
        Callback::from(move |_: MouseEvent| {
            shelf.dispatch(Act::EditPreferences(Rc::new(|preferences| {
                preferences.is_install_dismissed = true;
            })));
        })
    };
    html! {
        <section class="part" data-install="">
            <h2>{ t.title }</h2>
            <p>{ t.why }</p>
            if offer.is_none() {
                <p class="part__note">{ t.by_hand }</p>
            }
            <div class="buttons">
                if let Some(offer) = offer {
                    <button type="button" class="button" onclick={move |_: MouseEvent| offer.take()}>{ t.install }</button>
                }
                <button type="button" class="button" onclick={dismiss}>{ t.dismiss }</button>
            </div>
        </section>
    }
}

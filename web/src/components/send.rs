//! Sends a system: a link that carries the whole of it, to copy or to hand to the phone's share sheet.

use js_sys::Reflect;
use serde::Serialize;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use winterset_profile::{System, share};
use winterset_words::screen;
use yew::prelude::*;

use crate::route::Route;

/// How sending went.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sent {
    Not,
    Copied,
    ByHand,
    ShareFailed,
}

/// What the phone's share sheet takes.
#[derive(Serialize)]
struct ShareSheet<'a> {
    title: &'a str,
    url: &'a str,
}

/// Properties of [`Send`].
#[derive(PartialEq, Properties)]
pub struct SendProps {
    /// The system to send.
    pub system: System,
}

/// The buttons, and what became of the last one touched.
#[component]
pub fn Send(props: &SendProps) -> Html {
    let t = screen();
    let sent = use_state_eq(|| Sent::Not);
    use_effect_with(props.system.clone(), {
        let sent = sent.setter();
        move |_| sent.set(Sent::Not)
    });
    let link = use_memo(props.system.clone(), |system| {
        let payload = share::encode(system).ok()?;
        Route::Share { payload }.address()
    });
    let Some(link) = link.as_ref().clone() else {
        return Html::default();
    };
    let copy = {
        let (link, sent) = (link.clone(), sent.setter());
        Callback::from(move |_: MouseEvent| {
            let (link, sent) = (link.clone(), sent.clone());
            spawn_local(async move {
                sent.set(if copy(&link).await {
                    Sent::Copied
                } else {
                    Sent::ByHand
                });
            });
        })
    };
    let share = {
        let (link, name, sent) = (link.clone(), props.system.name.clone(), sent.setter());
        Callback::from(move |_: MouseEvent| {
            let (link, name, sent) = (link.clone(), name.clone(), sent.clone());
            spawn_local(async move {
                if !hand_over(&name, &link).await {
                    sent.set(Sent::ShareFailed);
                }
            });
        })
    };
    html! {
        <section class="part">
            <h2>{ t.send }</h2>
            <p class="part__note">{ t.send_note }</p>
            <div class="buttons">
                <button type="button" class="button" onclick={copy}>{ t.copy_link }</button>
                if can_share() {
                    <button type="button" class="button" onclick={share}>{ t.share }</button>
                }
            </div>
            <div role="status">
                { match *sent {
                    Sent::Not => Html::default(),
                    Sent::Copied => html! { <p class="said">{ t.copied }</p> },
                    Sent::ShareFailed => html! { <p class="said">{ t.share_failed }</p> },
                    Sent::ByHand => html! { <>
                        <p class="said">{ t.copy_by_hand }</p>
                        <textarea class="link" readonly=true aria-label={t.link} value={link} />
                    </> },
                } }
            </div>
        </section>
    }
}

fn navigator() -> Option<web_sys::Navigator> {
    Some(web_sys::window()?.navigator())
}

/// What the browser offers only over https; elsewhere it is not there at all.
fn offered(name: &str) -> bool {
    navigator()
        .and_then(|navigator| Reflect::get(&navigator, &JsValue::from_str(name)).ok())
        .is_some_and(|found| !found.is_undefined())
}

fn can_share() -> bool {
    offered("share")
}

/// Puts the link on the clipboard; `false` where the browser does not let it.
async fn copy(link: &str) -> bool {
    if !offered("clipboard") {
        return false;
    }
    match navigator() {
        Some(navigator) => JsFuture::from(navigator.clipboard().write_text(link))
            .await
            .is_ok(),
        None => false,
    }
}

/// Hands the link to the phone's share sheet; `false` where that failed. A person who closes the sheet has not failed.
async fn hand_over(title: &str, url: &str) -> bool {
    let (Some(navigator), Ok(sheet)) = (
        navigator(),
        serde_wasm_bindgen::to_value(&ShareSheet { title, url }),
    ) else {
        return false;
    };
    match JsFuture::from(navigator.share_with_data(sheet.unchecked_ref())).await {
        Ok(_) => true,
        Err(error) => js_sys::Error::from(error).name() == "AbortError",
    }
}

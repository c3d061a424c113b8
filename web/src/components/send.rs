//! Sends a system: a link that carries the whole of it, to copy, to show as a code or to hand to the phone's share sheet; or a file.

use js_sys::Reflect;
use serde::Serialize;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use winterset_profile::{System, share};
use winterset_words::screen;
use yew::prelude::*;

use super::code::Code;
use super::file::Download;
use crate::route::Route;
use crate::view::words;

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
    let is_shown = use_state_eq(|| false);
    let text = use_memo(props.system.clone(), |system| share::to_file(system).ok());
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
    let link_shown = link.clone();
    let turn = {
        let is_shown = is_shown.clone();
        Callback::from(move |_: MouseEvent| is_shown.set(!*is_shown))
    };
    let words = words().sending();
    html! {
        <section class="part">
            <h2>{ t.send }</h2>
            <p class="part__note">{ t.send_note }</p>
            <div class="buttons">
                <button type="button" class="button" data-act="copy-link" onclick={copy}>{ t.copy_link }</button>
                if can_share() {
                    <button type="button" class="button" onclick={share}>{ t.share }</button>
                }
                <button type="button" class="button" onclick={turn} aria-expanded={is_shown.to_string()}>
                    { if *is_shown { words.hide_code } else { words.show_code } }
                </button>
                if let Some(text) = text.as_ref() {
                    <Download name={file_name(&props.system.name)} text={text.clone()} label={words.save_file} />
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
            if *is_shown {
                <Code link={link_shown} name={props.system.name.clone()} />
            }
            <p class="quiet">{ words.file_note }</p>
        </section>
    }
}

/// What the file of a system is called: its name as far as every file system takes it.
fn file_name(name: &str) -> String {
    let plain: String = name
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { ' ' })
        .collect();
    let parts: Vec<&str> = plain.split_whitespace().collect();
    let short: String = parts.join("-").chars().take(60).collect();
    if short.is_empty() {
        "winterset.json".to_owned()
    } else {
        format!("winterset-{short}.json")
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

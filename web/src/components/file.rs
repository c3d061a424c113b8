//! Files: a text to download, and one to choose and read.

use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, HtmlInputElement, Url};
use yew::prelude::*;

/// Properties of [`Download`].
#[derive(PartialEq, Properties)]
pub struct DownloadProps {
    /// What the file is called.
    pub name: AttrValue,
    /// What it holds.
    pub text: AttrValue,
    /// What stands on the button.
    pub label: AttrValue,
}

/// A button that saves a text as a file, without any server.
#[component]
pub fn Download(props: &DownloadProps) -> Html {
    let address = use_state_eq(|| None::<String>);
    use_effect_with(props.text.clone(), {
        let address = address.setter();
        move |text| {
            let made = make(text);
            address.set(made.clone());
            move || {
                if let Some(made) = made {
                    // An address that is gone already needs no second end.
                    let _ = Url::revoke_object_url(&made);
                }
            }
        }
    });
    html! {
        if let Some(address) = (*address).clone() {
            <a class="button" href={address} download={props.name.clone()}>{ &props.label }</a>
        }
    }
}

fn make(text: &str) -> Option<String> {
    let kind = BlobPropertyBag::new();
    kind.set_type("application/json");
    let parts = Array::of1(&JsValue::from_str(text));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &kind).ok()?;
    Url::create_object_url_with_blob(&blob).ok()
}

/// Properties of [`Pick`].
#[derive(PartialEq, Properties)]
pub struct PickProps {
    /// Stable name of the input.
    pub id: AttrValue,
    /// What stands on the button.
    pub label: AttrValue,
    /// Larger files are not read, in bytes.
    pub most: f64,
    /// What the file holds; `None` where it could not be read or is larger.
    pub read: Callback<Option<String>>,
}

/// A button that lets a person choose a file, and reads it.
#[component]
pub fn Pick(props: &PickProps) -> Html {
    let (read, most) = (props.read.clone(), props.most);
    let chosen = Callback::from(move |event: Event| {
        let input = event
            .target()
            .and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
        let file = input
            .as_ref()
            .and_then(HtmlInputElement::files)
            .and_then(|files| files.get(0));
        let Some(file) = file else {
            return;
        };
        let read = read.clone();
        spawn_local(async move {
            let text = if file.size() > most {
                None
            } else {
                JsFuture::from(file.text()).await.ok()
            };
            read.emit(text.and_then(|text| text.as_string()));
            // The same file chosen again is to be read again.
            if let Some(input) = input {
                input.set_value("");
            }
        });
    });
    html! {
        <label class="button pick">
            <input type="file" class="pick__input" id={props.id.clone()} accept=".json,application/json" onchange={chosen} />
            <span>{ &props.label }</span>
        </label>
    }
}

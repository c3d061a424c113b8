//! The list of worksheets.

use winterset_profile::Sheet;
use yew::prelude::*;

use crate::components::go::Go;
use crate::components::head::Head;
use crate::components::icon::{Icon, Sketch};
use crate::route::Route;
use crate::view::words;

/// Every worksheet, one touch away.
#[component]
pub fn WorksheetList() -> Html {
    let words = words().worksheets();
    let labels = words.labels();
    html! {
        <main class="screen">
            <Head title={labels.worksheets} note={labels.list_note} />
            <ul class="list">
                { for Sheet::ALL.iter().map(|sheet| {
                    let said = words.sheet(*sheet);
                    html! {
                        <li key={sheet.key()}>
                            <Go to={Route::Worksheet { sheet: sheet.key().to_owned() }} class="list__one">
                                <span class="list__name">{ said.name }</span>
                                <span class="list__note">{ said.reason }</span>
                                <Icon sketch={Sketch::On} />
                            </Go>
                        </li>
                    }
                }) }
            </ul>
        </main>
    }
}

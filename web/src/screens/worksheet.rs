//! One worksheet: what was typed is kept at every keystroke and answered at once.

use std::rc::Rc;

use winterset_profile::{Entry, Question, Sheet};
use yew::prelude::*;

use super::nowhere::Nowhere;
use crate::components::carry::Carry;
use crate::components::confirm::Confirm;
use crate::components::head::Head;
use crate::components::worksheet::WorksheetFrame;
use crate::route::Route;
use crate::store::{Act, use_shelf};
use crate::view::words;
use crate::view::worksheets;

/// Properties of [`WorksheetScreen`].
#[derive(PartialEq, Properties)]
pub struct WorksheetScreenProps {
    /// Stable name of the worksheet.
    pub sheet: String,
}

/// The worksheet of an address, or that there is none.
#[component]
pub fn WorksheetScreen(props: &WorksheetScreenProps) -> Html {
    match Sheet::from_key(&props.sheet) {
        Some(sheet) => html! { <Open {sheet} /> },
        None => html! { <Nowhere message={words().worksheets().labels().gone} /> },
    }
}

#[derive(PartialEq, Properties)]
struct OpenProps {
    sheet: Sheet,
}

#[component]
fn Open(props: &OpenProps) -> Html {
    let sheet = props.sheet;
    let labels = words().worksheets().labels();
    let shelf = use_shelf();
    let (kept, units) = (&shelf.preferences.worksheets, shelf.preferences.units);
    let answered = use_memo((sheet, kept.clone(), units), |(sheet, kept, units)| {
        worksheets::answer(*sheet, kept, *units)
    });
    let edit = use_callback(
        (shelf.dispatcher(), sheet),
        |(question, entry): (Question, Entry), (shelf, sheet)| {
            let sheet = *sheet;
            shelf.dispatch(Act::EditPreferences(Rc::new(move |preferences| {
                preferences.worksheets.set(sheet, question, entry.clone());
            })));
        },
    );
    let clear = {
        let shelf = shelf.dispatcher();
        Callback::from(move |()| {
            shelf.dispatch(Act::EditPreferences(Rc::new(move |preferences| {
                preferences.worksheets.clear(sheet);
            })));
        })
    };
    let said = words().worksheets().sheet(sheet);
    html! {
        <main class="screen">
            <Head title={said.name} note={said.reason} up={(Route::Worksheets, AttrValue::from(labels.worksheets))} />
            <WorksheetFrame answered={(*answered).clone()} {edit} />
            <Carry carried={answered.carried.clone()} />
            if kept.holds(sheet) {
                <section class="part">
                    <Confirm act={labels.clear} question={labels.clear_question} done={clear} />
                </section>
            }
        </main>
    }
}

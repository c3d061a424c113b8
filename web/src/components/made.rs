//! What takes longer than a frame to make: made in short stretches after the screen stands, and kept at hand for a return.

use std::cell::{Cell, RefCell};
use std::ops::ControlFlow;
use std::rc::Rc;
use std::thread::LocalKey;

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use super::stretches::in_stretches;

/// Something to be made. Equal ones come to the same.
pub trait Making: Clone + PartialEq + 'static {
    /// What it comes to.
    type Made: Clone + 'static;

    /// Where what was made is kept.
    fn kept() -> &'static LocalKey<Kept<Self>>;

    /// Begins: each call takes a short step, and `Break` ends it.
    fn begin(&self) -> impl FnMut() -> ControlFlow<Self::Made> + 'static;

    /// What it came to before, where that is still at hand or costs nothing to find out.
    fn at_hand(&self) -> Option<Self::Made> {
        Self::kept().with(|kept| kept.find(self))
    }
}

/// What was made last.
pub struct Kept<M: Making> {
    most: usize,
    made: RefCell<Vec<(M, M::Made)>>,
}

impl<M: Making> Kept<M> {
    /// Keeps this many.
    pub const fn most(most: usize) -> Self {
        Self {
            most,
            made: RefCell::new(Vec::new()),
        }
    }

    /// What something came to, where it was among the last.
    pub fn find(&self, making: &M) -> Option<M::Made> {
        let mut kept = self.made.borrow_mut();
        let found = kept.iter().position(|(before, _)| before == making)?;
        // The one in use is the last to go.
        let found = kept.remove(found);
        let made = found.1.clone();
        kept.insert(0, found);
        Some(made)
    }

    fn keep(&self, making: M, made: M::Made) {
        let mut kept = self.made.borrow_mut();
        kept.insert(0, (making, made));
        kept.truncate(self.most);
    }
}

/// What something comes to; nothing as long as it is being made.
#[hook]
pub fn use_made<M: Making>(making: &M) -> Option<M::Made> {
    // Held here too, so that a screen with more of them than are kept does not make them again and again.
    let own = use_state(|| None::<(M, M::Made)>);
    let made = match own.as_ref() {
        Some((before, made)) if before == making => Some(made.clone()),
        _ => making.at_hand(),
    };
    let own = own.setter();
    use_effect_with(
        (making.clone(), made.is_some()),
        move |(making, is_made): &(M, bool)| {
            let gone = Rc::new(Cell::new(false));
            if !is_made {
                let (making, stopped) = (making.clone(), gone.clone());
                spawn_local(async move {
                    if let Some(made) = in_stretches(making.begin(), &stopped).await {
                        M::kept().with(|kept| kept.keep(making.clone(), made.clone()));
                        own.set(Some((making, made)));
                    }
                });
            }
            move || gone.set(true)
        },
    );
    made
}

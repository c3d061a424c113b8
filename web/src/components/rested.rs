//! A value as it stood when it last came to rest: for work that a key should not wait for.

use gloo_timers::callback::Timeout;
use yew::prelude::*;

/// How long a person who types has to pause, ms.
const PAUSE: u32 = 500;

/// The value now, as soon as it has not changed for a moment.
#[hook]
pub fn use_rested<T: Clone + PartialEq + 'static>(now: &T) -> T {
    let rested = use_state_eq(|| now.clone());
    {
        let rested = rested.setter();
        use_effect_with(now.clone(), move |now| {
            let now = now.clone();
            let timer = Timeout::new(PAUSE, move || rested.set(now));
            move || drop(timer)
        });
    }
    (*rested).clone()
}

//! Starts the interface in the page, or the long work behind it in a worker.

fn main() {
    // The same files serve both: a worker has no window.
    if web_sys::window().is_some() {
        yew::Renderer::<winterset_web::App>::new().render();
    } else {
        winterset_web::background::serve();
    }
}

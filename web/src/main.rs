//! Starts the interface in the page.

fn main() {
    yew::Renderer::<winterset_web::App>::new().render();
}

//! Starts the interface in the page.

fn main() {
    winterset_web::offline::register();
    yew::Renderer::<winterset_web::App>::new().render();
}

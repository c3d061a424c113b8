//! Registers the service worker, which keeps the app's own files so that it opens with no network.

/// Asks the browser to install `sw.js`, which stands beside `index.html`.
///
/// A browser offers this over https and on localhost only; elsewhere nothing happens and the app needs the network.
pub fn register() {
    let Some(window) = web_sys::window() else {
        return;
    };
    if !window.is_secure_context() {
        return;
    }
    // The browser reports a failed registration on its console by itself.
    let _ = window.navigator().service_worker().register("sw.js");
}

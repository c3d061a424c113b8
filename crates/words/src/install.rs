//! What stands round putting the app on the home screen, and round finding a site again.

/// The labels round installing and finding sites, one field each.
#[derive(Clone, Copy, Debug)]
#[allow(missing_docs)] // each name is what the label is for
pub struct Install {
    pub title: &'static str,
    pub why: &'static str,
    pub install: &'static str,
    /// Where the browser itself does not offer it.
    pub by_hand: &'static str,
    pub dismiss: &'static str,
    pub find_site: &'static str,
    pub no_site: &'static str,
    /// How many sites are found.
    pub found: fn(usize) -> String,
    pub recent_first: &'static str,
}

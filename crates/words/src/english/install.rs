//! Putting the app on the home screen and finding a site again, in English.

use crate::install::Install;

pub(super) static INSTALL: Install = Install {
    title: "On the home screen",
    why: "From there Winterset opens like any other app, with a network or without.",
    install: "Add to the home screen",
    by_hand: "Open the browser's menu, or its share button, and choose “Add to Home Screen” or “Install”.",
    dismiss: "Do not show this again",
    find_site: "Find a site by name",
    no_site: "No site of this name is on this phone.",
    found: |count| match count {
        1 => "1 site".to_owned(),
        count => format!("{count} sites"),
    },
    recent_first: "The one opened last stands first.",
};

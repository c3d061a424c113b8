//! Where things are in the project.

use std::path::{Path, PathBuf};

/// The project's root folder.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    // crates/xtask stands two folders below the root.
    here.ancestors().nth(2).unwrap_or(here).to_owned()
}

/// Tools that the set-up installs; ignored by git.
pub fn tools() -> PathBuf {
    root().join(".tools")
}

/// The built app.
pub fn dist() -> PathBuf {
    root().join("dist")
}

/// The app built once more for [`TEST_BASE_PATH`], which the tests serve there.
pub fn dist_for_folder() -> PathBuf {
    target().join("dist-for-folder")
}

/// A folder of a host, for tests.
pub const TEST_BASE_PATH: &str = "/some/folder/";

/// Where the jobs put what they make on the way.
pub fn target() -> PathBuf {
    root().join("target")
}

/// Build folder of the app: another compiler may build it, which would otherwise throw away the work of the first.
pub fn web_target() -> PathBuf {
    target().join("web")
}

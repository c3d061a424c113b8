//! Every dependency must be under a licence that lets the app be passed on freely.

use cargo_metadata::{CargoOpt, MetadataCommand};
use spdx::Expression;

use crate::error::Error;
use crate::project;
use crate::run::say;

/// Permissive licences; each asks at most for its notice to be kept.
const ALLOWED: &[&str] = &[
    "0BSD",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "ISC",
    "MIT",
    "MIT-0",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Checks all packages that any part of the project can bring in.
pub fn check() -> Result<(), Error> {
    let metadata = MetadataCommand::new()
        .manifest_path(project::root().join("Cargo.toml"))
        .features(CargoOpt::AllFeatures)
        .exec()?;
    let found: Vec<String> = metadata
        .packages
        .iter()
        .filter(|package| !allowed(package.license.as_deref()))
        .map(|package| {
            let licence = package.license.as_deref().unwrap_or("no licence stated");
            format!("  {} {}: {licence}", package.name, package.version)
        })
        .collect();
    if !found.is_empty() {
        return Err(Error::Licences { found });
    }
    say(&format!(
        "licences of {} packages are on the list",
        metadata.packages.len()
    ));
    Ok(())
}

fn allowed(licence: Option<&str>) -> bool {
    // Old packages part alternatives by a slash.
    let Some(expression) =
        licence.and_then(|text| Expression::parse(&text.replace('/', " OR ")).ok())
    else {
        return false;
    };
    expression.evaluate(|requirement| ALLOWED.contains(&requirement.to_string().as_str()))
}

#[cfg(test)]
mod tests {
    use super::allowed;

    #[test]
    fn alternatives_need_one_and_unions_need_all() {
        assert!(allowed(Some("MIT OR GPL-3.0-only")));
        assert!(allowed(Some("MIT/Apache-2.0")));
        assert!(allowed(Some("(MIT OR Apache-2.0) AND Unicode-3.0")));
        assert!(!allowed(Some("MIT AND GPL-3.0-only")));
        assert!(!allowed(Some("GPL-3.0-only")));
        assert!(!allowed(None));
        assert!(!allowed(Some("MPL-2.0")));
    }
}

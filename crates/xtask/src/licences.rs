//! Every dependency must be under a licence that lets the app be passed on freely.

use std::collections::HashSet;

use cargo_metadata::{CargoOpt, DependencyKind, Metadata, MetadataCommand, PackageId};
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

/// Allowed besides for what runs only in the project's own tests and jobs and is never passed on: its files stay under their own
/// licence, and nothing of it is changed here.
const ALLOWED_UNSHIPPED: &[&str] = &["MPL-2.0"];

/// What is passed on: the app and the command line.
const SHIPPED: &[&str] = &["winterset-web", "winterset-cli"];

/// Checks all packages that any part of the project can bring in.
pub fn check() -> Result<(), Error> {
    let metadata = MetadataCommand::new()
        .manifest_path(project::root().join("Cargo.toml"))
        .features(CargoOpt::AllFeatures)
        .exec()?;
    let shipped = shipped(&metadata);
    let found: Vec<String> = metadata
        .packages
        .iter()
        .filter(|package| !allowed(package.license.as_deref(), shipped.contains(&package.id)))
        .map(|package| {
            let licence = package.license.as_deref().unwrap_or("no licence stated");
            format!("  {} {}: {licence}", package.name, package.version)
        })
        .collect();
    if !found.is_empty() {
        return Err(Error::Licences { found });
    }
    say(&format!(
        "licences of {} packages are on the list, {} of them in what is passed on",
        metadata.packages.len(),
        shipped.len()
    ));
    Ok(())
}

/// Every package that ends up in something passed on.
fn shipped(metadata: &Metadata) -> HashSet<PackageId> {
    let mut open: Vec<&PackageId> = metadata
        .packages
        .iter()
        .filter(|package| SHIPPED.contains(&package.name.as_str()))
        .map(|package| &package.id)
        .collect();
    let mut found = HashSet::new();
    while let Some(id) = open.pop() {
        if !found.insert(id.clone()) {
            continue;
        }
        let nodes = metadata.resolve.iter().flat_map(|resolve| &resolve.nodes);
        for node in nodes.filter(|node| node.id == *id) {
            let normal = node.deps.iter().filter(|dependency| {
                dependency
                    .dep_kinds
                    .iter()
                    .any(|kind| kind.kind != DependencyKind::Development)
            });
            open.extend(normal.map(|dependency| &dependency.pkg));
        }
    }
    found
}

fn allowed(licence: Option<&str>, is_shipped: bool) -> bool {
    // Old packages part alternatives by a slash.
    let Some(expression) =
        licence.and_then(|text| Expression::parse(&text.replace('/', " OR ")).ok())
    else {
        return false;
    };
    expression.evaluate(|requirement| {
        let name = requirement.to_string();
        ALLOWED.contains(&name.as_str())
            || !is_shipped && ALLOWED_UNSHIPPED.contains(&name.as_str())
    })
}

#[cfg(test)]
mod tests {
    use super::allowed;

    #[test]
    fn alternatives_need_one_and_unions_need_all() {
        assert!(allowed(Some("MIT OR GPL-3.0-only"), true));
        assert!(allowed(Some("MIT/Apache-2.0"), true));
        assert!(allowed(Some("(MIT OR Apache-2.0) AND Unicode-3.0"), true));
        assert!(!allowed(Some("MIT AND GPL-3.0-only"), true));
        assert!(!allowed(Some("GPL-3.0-only"), true));
        assert!(!allowed(None, true));
        assert!(!allowed(Some("MPL-2.0"), true));
        assert!(allowed(Some("MPL-2.0"), false));
    }
}

//! The demo site: invented systems to look around in.

use winterset_profile::{Site, System};
use winterset_words::screen;

use super::id;

/// The invented systems, as records.
const SYSTEMS: [&str; 5] = [
    include_str!("../../../tests/systems/brewery-cellar.json"),
    include_str!("../../../tests/systems/radio-hut.json"),
    include_str!("../../../tests/systems/archive-vault.json"),
    include_str!("../../../tests/systems/flower-cooler.json"),
    include_str!("../../../tests/systems/cheese-cave.json"),
];

/// What the identifier of a demo site starts with.
const PREFIX: &str = "demo";

/// A new demo site with every invented system.
pub fn site() -> Site {
    let mut site = Site::new(format!("{PREFIX}{}", id::new()), screen().demo_site);
    site.systems = SYSTEMS
        .iter()
        // The tests hold every one of them to be a record.
        .filter_map(|text| System::from_json(text).ok())
        .map(|system| System {
            id: id::new(),
            ..system
        })
        .collect();
    site
}

/// Whether a site is the demo site.
pub fn is_demo(site: &Site) -> bool {
    site.id.starts_with(PREFIX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_invented_system_is_a_record_with_a_plan() {
        for text in SYSTEMS {
            let system = System::from_json(text).unwrap();
            assert!(
                system.plan().is_ok(),
                "{}: {:?}",
                system.name,
                system.plan().err()
            );
        }
    }
}

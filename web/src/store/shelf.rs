//! Everything kept, in memory and in the browser at once: each change is kept before it is shown.

use std::rc::Rc;

use winterset_profile::{Site, System};
use yew::prelude::*;

use super::keep::{self, KeepError};
use super::preferences::Preferences;

const SITE: &str = "winterset.site.";
const PREFERENCES: &str = "winterset.preferences";

/// A kept text that this version cannot read. It is left untouched.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unreadable {
    /// Where it is kept.
    pub key: String,
    /// Why it cannot be read.
    pub why: String,
}

/// Everything kept.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shelf {
    /// The sites by name.
    pub sites: Vec<Site>,
    /// What cannot be read.
    pub unreadable: Vec<Unreadable>,
    /// The technician's own settings.
    pub preferences: Preferences,
    /// Why the last change was not kept, or why nothing could be read.
    pub trouble: Option<KeepError>,
}

/// A change to make to a site.
pub type Edit<T> = Rc<dyn Fn(&mut T)>;

/// A change.
#[derive(Clone)]
pub enum Act {
    /// Adds a site.
    AddSite(Site),
    /// Changes a site.
    EditSite {
        /// Which.
        site: String,
        /// How.
        edit: Edit<Site>,
    },
    /// Changes a system.
    EditSystem {
        /// Site that it stands at.
        site: String,
        /// Which.
        system: String,
        /// How.
        edit: Edit<System>,
    },
    /// Removes a site with its systems.
    RemoveSite(String),
    /// Changes the technician's own settings.
    EditPreferences(Edit<Preferences>),
    /// Another window changed what is kept: read it again.
    Reload,
}

impl Shelf {
    /// Reads everything kept.
    pub fn load() -> Self {
        let mut shelf = Self::default();
        match keep::read(PREFERENCES) {
            Ok(preferences) => shelf.preferences = preferences.unwrap_or_default(),
            Err(KeepError::Unreadable(why)) => shelf.unreadable.push(Unreadable {
                key: PREFERENCES.to_owned(),
                why,
            }),
            Err(trouble) => shelf.trouble = Some(trouble),
        }
        for key in keep::keys(SITE).unwrap_or_default() {
            let read = keep::read_text(&key).map(|text| Site::from_json(&text.unwrap_or_default()));
            match read {
                Ok(Ok(site)) if key == site_key(&site.id) => shelf.sites.push(site),
                Ok(Ok(_)) => shelf.unreadable.push(Unreadable {
                    why: "another site's identifier".to_owned(),
                    key,
                }),
                Ok(Err(error)) => shelf.unreadable.push(Unreadable {
                    key,
                    why: error.to_string(),
                }),
                Err(trouble) => shelf.trouble = Some(trouble),
            }
        }
        shelf.sort();
        shelf
    }

    /// The site with this identifier.
    pub fn site(&self, id: &str) -> Option<&Site> {
        self.sites.iter().find(|site| site.id == id)
    }

    fn sort(&mut self) {
        self.sites
            .sort_by_cached_key(|site| (site.name.to_lowercase(), site.id.clone()));
    }

    fn act(&mut self, act: Act) -> Result<(), KeepError> {
        match act {
            Act::AddSite(site) => {
                let kept = keep::write(&site_key(&site.id), &site);
                self.sites.push(site);
                self.sort();
                kept
            }
            Act::EditSite { site, edit } => self.edit(&site, |site| edit(site)),
            Act::EditSystem { site, system, edit } => self.edit(&site, |site| {
                if let Some(system) = site.system_mut(&system) {
                    edit(system);
                }
            }),
            Act::RemoveSite(id) => {
                self.sites.retain(|site| site.id != id);
                keep::forget(&site_key(&id))
            }
            Act::EditPreferences(edit) => {
                edit(&mut self.preferences);
                keep::write(PREFERENCES, &self.preferences)
            }
            Act::Reload => {
                *self = Self::load();
                self.trouble.clone().map_or(Ok(()), Err)
            }
        }
    }

    fn edit(&mut self, id: &str, edit: impl FnOnce(&mut Site)) -> Result<(), KeepError> {
        let Some(site) = self.sites.iter_mut().find(|site| site.id == id) else {
            return Ok(());
        };
        edit(site);
        let kept = keep::write(&site_key(id), site);
        self.sort();
        kept
    }
}

impl Reducible for Shelf {
    type Action = Act;

    fn reduce(self: Rc<Self>, act: Act) -> Rc<Self> {
        let mut shelf = Rc::unwrap_or_clone(self);
        shelf.trouble = shelf.act(act).err();
        Rc::new(shelf)
    }
}

fn site_key(id: &str) -> String {
    format!("{SITE}{id}")
}

/// Whether a key of the browser's storage is one of ours.
pub fn is_ours(key: &str) -> bool {
    key.starts_with(SITE) || key == PREFERENCES
}

/// The shelf as screens hold it.
pub type ShelfHandle = UseReducerHandle<Shelf>;

/// The shelf of the app; outside the app an empty one that keeps what it is given.
#[hook]
pub fn use_shelf() -> ShelfHandle {
    let own = use_reducer_eq(Shelf::default);
    use_context::<ShelfHandle>().unwrap_or(own)
}

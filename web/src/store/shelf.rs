//! Everything kept, in memory and in the browser at once: each change is kept before it is shown.

use std::cmp::Reverse;
use std::collections::BTreeMap;
use std::rc::Rc;

use winterset_profile::{Site, System};
use yew::prelude::*;

use super::keep::{self, KeepError};
use super::preferences::Preferences;

const SITE: &str = "winterset.site.";
const PREFERENCES: &str = "winterset.preferences";
const OPENED: &str = "winterset.opened";

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
    /// When each site was opened last, ms since 1970. It belongs to this phone and never to a record.
    pub opened: BTreeMap<String, u64>,
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
    /// A site was opened.
    Opened {
        /// Which.
        site: String,
        /// When, ms since 1970.
        at: u64,
    },
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
        // An order that cannot be read is none: no record hangs on it.
        shelf.opened = keep::read(OPENED).ok().flatten().unwrap_or_default();
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

    /// The sites, the one opened last first; those never opened follow by name.
    pub fn recent(&self) -> Vec<&Site> {
        let mut sites: Vec<&Site> = self.sites.iter().collect();
        let at = |site: &&Site| Reverse(self.opened.get(&site.id).copied().unwrap_or_default());
        sites.sort_by_key(at);
        sites
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
            Act::EditSite { site, edit } => {
                let kept = self.edit(&site, |site| edit(site));
                self.forget_fitted();
                kept
            }
            Act::EditSystem { site, system, edit } => self.edit(&site, |site| {
                if let Some(system) = site.system_mut(&system) {
                    edit(system);
                }
            }),
            Act::RemoveSite(id) => {
                self.sites.retain(|site| site.id != id);
                self.opened.remove(&id);
                self.forget_fitted();
                keep::forget(&site_key(&id))
            }
            Act::Opened { site, at } => {
                if self.site(&site).is_some() {
                    self.opened.insert(site, at);
                    // An order that is not kept is lost without harm.
                    let _ = keep::write(OPENED, &self.opened);
                }
                // What was not kept before is still not kept.
                self.trouble.clone().map_or(Ok(()), Err)
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

    /// Forgets what was fitted to systems that are gone. A site that cannot be read may still have some.
    fn forget_fitted(&mut self) {
        let fitted = &mut self.preferences.fitted;
        if fitted.is_empty() || !self.unreadable.is_empty() {
            return;
        }
        let before = fitted.len();
        fitted.retain(|id, _| self.sites.iter().any(|site| site.system(id).is_some()));
        if fitted.len() < before {
            // What is not forgotten now is the next time, and does no harm meanwhile.
            let _ = keep::write(PREFERENCES, &self.preferences);
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_site_opened_last_comes_first_and_the_others_by_name() {
        let mut shelf = Shelf {
            sites: ["a", "b", "c", "d"].map(|id| Site::new(id, id)).to_vec(),
            ..Shelf::default()
        };
        shelf.opened = BTreeMap::from([("c".to_owned(), 2), ("d".to_owned(), 1)]);
        let order = |shelf: &Shelf| -> String {
            shelf.recent().iter().map(|site| site.id.as_str()).collect()
        };
        assert_eq!(order(&shelf), "cdab");
        shelf.opened.clear();
        assert_eq!(order(&shelf), "abcd");
    }
}

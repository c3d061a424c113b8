//! The browser's storage, with its refusals as errors to show.

use gloo_storage::{LocalStorage, Storage, errors::StorageError};
use serde::{Serialize, de::DeserializeOwned};

/// Why something was not kept or not read.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum KeepError {
    /// There is no room left.
    #[error("storage is full")]
    Full,
    /// The browser keeps nothing for this page.
    #[error("storage is refused: {0}")]
    Refused(String),
    /// What is kept is not what was expected.
    #[error("{0}")]
    Unreadable(String),
}

/// Keeps a value under a key.
///
/// # Errors
/// [`KeepError::Full`], [`KeepError::Refused`].
pub fn write(key: &str, value: &impl Serialize) -> Result<(), KeepError> {
    available()?;
    LocalStorage::set(key, value).map_err(refused)
}

/// The value under a key, where there is one.
///
/// # Errors
/// [`KeepError::Refused`], [`KeepError::Unreadable`].
pub fn read<T: DeserializeOwned>(key: &str) -> Result<Option<T>, KeepError> {
    available()?;
    match LocalStorage::get(key) {
        Ok(value) => Ok(Some(value)),
        Err(StorageError::KeyNotFound(_)) => Ok(None),
        Err(StorageError::SerdeError(error)) => Err(KeepError::Unreadable(error.to_string())),
        Err(error) => Err(refused(error)),
    }
}

/// The text under a key, where there is one, whatever it holds.
///
/// # Errors
/// [`KeepError::Refused`].
pub fn read_text(key: &str) -> Result<Option<String>, KeepError> {
    available()?;
    LocalStorage::raw()
        .get_item(key)
        .map_err(|error| KeepError::Refused(js_sys::Error::from(error).message().into()))
}

/// Forgets what is kept under a key.
///
/// # Errors
/// [`KeepError::Refused`].
pub fn forget(key: &str) -> Result<(), KeepError> {
    available()?;
    LocalStorage::delete(key);
    Ok(())
}

/// Every key that starts like this.
///
/// # Errors
/// [`KeepError::Refused`].
pub fn keys(prefix: &str) -> Result<Vec<String>, KeepError> {
    available()?;
    let storage = LocalStorage::raw();
    let mut keys: Vec<String> = (0..LocalStorage::length())
        .filter_map(|index| storage.key(index).ok().flatten())
        .filter(|key| key.starts_with(prefix))
        .collect();
    keys.sort();
    Ok(keys)
}

/// A page without storage must not fail on the way to asking for it.
fn available() -> Result<(), KeepError> {
    let storage = web_sys::window().map(|window| window.local_storage());
    match storage {
        Some(Ok(Some(_))) => Ok(()),
        Some(Err(error)) => Err(KeepError::Refused(
            js_sys::Error::from(error).message().into(),
        )),
        _ => Err(KeepError::Refused(String::new())),
    }
}

fn refused(error: StorageError) -> KeepError {
    match error {
        StorageError::JsError(error) if error.name == "QuotaExceededError" => KeepError::Full,
        error => KeepError::Refused(error.to_string()),
    }
}

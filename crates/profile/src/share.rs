//! A system in a file, and in the fragment of a link: `1.` and the record as JSON, deflated, in the URL-safe base 64 alphabet.
//!
//! The part of an address behind `#` never leaves the browser, so no server sees a shared system.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::decompress_to_vec_with_limit;

use crate::record::{Migration, System};

/// Leads every payload of this form; another form gets another number.
const FORM: &str = "1.";

/// No system comes near this size; what inflates further is no system.
const LARGEST: usize = 64 * 1024;

/// Why a payload is no system.
#[derive(Debug, thiserror::Error)]
pub enum ShareError {
    /// Made by a newer version of the app.
    #[error("made by a newer version")]
    NewerForm,
    /// Cut short or changed on the way.
    #[error("the link is damaged")]
    Damaged,
    /// Larger than any system.
    #[error("the link holds more than a system")]
    TooLarge,
    /// Whole, but holding something else.
    #[error("the link holds no system")]
    NotASystem(#[from] Migration),
}

/// The payload of a link. The system's id stays behind: what arrives elsewhere is kept under an id of its own. So does the controller, whose
/// limits are another technician's.
///
/// # Errors
/// Passed on from the serialiser.
pub fn encode(system: &System) -> Result<String, serde_json::Error> {
    let mut sent = system.clone();
    sent.id.clear();
    sent.controller.clear();
    let packed = compress_to_vec(sent.to_json()?.as_bytes(), 10);
    Ok(format!("{FORM}{}", URL_SAFE_NO_PAD.encode(packed)))
}

/// A system as a file: its record as JSON that a person can read. The id stays behind, as in a link.
///
/// # Errors
/// Passed on from the serialiser.
pub fn to_file(system: &System) -> Result<String, serde_json::Error> {
    let mut sent = system.clone();
    sent.id.clear();
    serde_json::to_string_pretty(&sent)
}

/// The system in a file. Any JSON object could be read as a record, so a file must have the answers of one.
///
/// # Errors
/// [`ShareError::TooLarge`], [`ShareError::NotASystem`]; never panics, whatever the text.
pub fn from_file(text: &str) -> Result<System, ShareError> {
    #[derive(serde::Deserialize)]
    struct Answers {
        #[serde(rename = "entries")]
        _entries: std::collections::BTreeMap<String, serde_json::Value>,
    }
    if text.len() > LARGEST {
        return Err(ShareError::TooLarge);
    }
    // Some editors put a byte order mark in front.
    let text = text.trim_start_matches('\u{feff}');
    serde_json::from_str::<Answers>(text).map_err(Migration::NotARecord)?;
    let mut system = System::from_json(text)?;
    system.id.clear();
    Ok(system)
}

/// The system in a payload.
///
/// # Errors
/// [`ShareError`]; never panics, whatever the text.
pub fn decode(payload: &str) -> Result<System, ShareError> {
    let Some(body) = payload.trim().strip_prefix(FORM) else {
        let newer = payload
            .split_once('.')
            .is_some_and(|(form, _)| form.parse::<u32>().is_ok_and(|form| form > 1));
        return Err(if newer {
            ShareError::NewerForm
        } else {
            ShareError::Damaged
        });
    };
    if body.len() > LARGEST {
        return Err(ShareError::TooLarge);
    }
    let packed = URL_SAFE_NO_PAD
        .decode(body)
        .map_err(|_| ShareError::Damaged)?;
    let bytes =
        decompress_to_vec_with_limit(&packed, LARGEST).map_err(|error| match error.status {
            miniz_oxide::inflate::TINFLStatus::HasMoreOutput => ShareError::TooLarge,
            _ => ShareError::Damaged,
        })?;
    let text = String::from_utf8(bytes).map_err(|_| ShareError::Damaged)?;
    Ok(System::from_json(&text)?)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use winterset_calc::Field;

    use super::*;
    use crate::Entry;

    #[test]
    fn a_system_arrives_whole_but_for_its_id() {
        let mut system = System::new("here", "Cave, north wall – très froid");
        system.set(Field::OutdoorLow, Entry::with_unit("-18", "F"));
        system.controller = "mine".to_owned();
        let back = decode(&encode(&system).unwrap()).unwrap();
        assert_eq!((back.id.as_str(), back.controller.as_str()), ("", ""));
        assert_eq!((back.name, back.entries), (system.name, system.entries));
    }

    #[test]
    fn how_the_compressors_follow_the_load_arrives() {
        let mut system = System::new("here", "Vault");
        system.set(Field::CapacityControl, Entry::new("stages"));
        system.set(Field::CompressorStages, Entry::new("3"));
        let back = decode(&encode(&system).unwrap()).unwrap();
        assert_eq!(back.entries, system.entries);
        let back = from_file(&to_file(&system).unwrap()).unwrap();
        assert_eq!(back.entries, system.entries);
    }

    #[test]
    fn a_system_goes_through_a_file() {
        let mut system = System::new("here", "Höhle");
        system.set(Field::OutdoorLow, Entry::with_unit("-18", "F"));
        let text = format!("\u{feff}{}\r\n", to_file(&system).unwrap());
        let back = from_file(&text).unwrap();
        assert_eq!(back.id, "");
        assert_eq!((back.name, back.entries), (system.name, system.entries));
        for text in [
            "",
            "{}",
            "[1]",
            "{\"entries\":3}",
            "{\"systems\":[]}",
            "PK\u{3}",
        ] {
            assert!(
                matches!(from_file(text), Err(ShareError::NotASystem(_))),
                "{text}"
            );
        }
        let large = format!("{{\"entries\":{{}}}}{}", " ".repeat(LARGEST));
        assert!(matches!(from_file(&large), Err(ShareError::TooLarge)));
    }

    #[test]
    fn a_bomb_does_not_go_off() {
        let bomb = compress_to_vec(&vec![b' '; 50_000_000], 10);
        let payload = format!("{FORM}{}", URL_SAFE_NO_PAD.encode(bomb));
        assert!(matches!(decode(&payload), Err(ShareError::TooLarge)));
    }

    #[test]
    fn a_newer_form_is_told_from_damage() {
        assert!(matches!(decode("2.abc"), Err(ShareError::NewerForm)));
        assert!(matches!(decode("abc"), Err(ShareError::Damaged)));
        assert!(matches!(decode("1.a"), Err(ShareError::Damaged)));
    }

    proptest! {
        #[test]
        fn no_text_panics(text in "(1\\.)?[ -~]{0,200}") {
            let _ = decode(&text);
            let _ = from_file(&text);
        }

        #[test]
        fn no_bytes_panic(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
            let _ = decode(&format!("{FORM}{}", URL_SAFE_NO_PAD.encode(bytes)));
        }
    }
}

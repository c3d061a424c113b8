//! Sending and receiving, in English.

use crate::sending::Sending;
use crate::units::signed;

pub(super) static SENDING: Sending = Sending {
    show_code: "Show QR code",
    hide_code: "Hide QR code",
    code: |name| format!("QR code of the link to {name}"),
    code_note: "Point the other phone's camera at it. The code holds the whole system.",
    code_too_long: |length, most| {
        let (length, most) = (signed(&length.to_string()), signed(&most.to_string()));
        format!(
            "This link is too long for a QR code that a phone can read: {length} characters, where {most} fit. Copy the link or save a file instead."
        )
    },
    save_file: "Save as a file",
    file_note: "The file holds what the link holds. Open it on the sites screen.",
    open_file: "Open a system file",
    open_file_note: "A file that was saved with “Save as a file”. Nothing is saved before you say so.",
    file_unreadable: "This file could not be read. Choose it again.",
    file_too_large: "This file holds more than a system. It was not opened.",
    file_holds_nothing: "This file holds no system. Choose one that was saved with “Save as a file”.",
    differences: "What differs",
    differences_note: |name| {
        format!("From {name}, which is at that site already. Keep or take each answer.")
    },
    same: "It is the same as the system of this name at that site. There is nothing to merge.",
    here: "Here",
    arrived: "Arrived",
    keep: "Keep",
    take: "Take",
    keep_or_take: |question| format!("Keep or take: {question}"),
    merge: "Merge",
    save_apart: "Save apart",
    no_answer: "no answer",
};

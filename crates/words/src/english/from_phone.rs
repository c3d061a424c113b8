//! Round an answer that this phone can give.

use crate::from_phone::FromPhone;

pub(super) const FROM_PHONE: FromPhone = FromPhone {
    ask: "Elevation from this phone",
    note: "Asks for the position only when touched, and keeps the height alone.",
    asking: "Asking this phone. Outdoors it goes quicker.",
    filled: "Filled in from this phone. Height by satellite may be off by 100 m (330 ft).",
    filled_within: |span| {
        format!(
            "Filled in from this phone, which takes it to be right within {span}. Height by satellite may be off by 100 m (330 ft) on top."
        )
    },
    no_altitude: "This phone does not know how high it is. Enter the elevation by hand.",
    refused: "This phone did not allow it. Enter the elevation by hand.",
    not_found: "This phone found no position. Try again outdoors, or enter the elevation by hand.",
    unavailable: "This browser gives no position. Enter the elevation by hand.",
};

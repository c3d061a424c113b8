//! Safety classes.

use std::fmt;

/// Safety group of ANSI/ASHRAE 34: toxicity (A lower, B higher) and flammability
/// (1 no flame propagation, 2L lower with slow burning, 2 flammable, 3 higher).
///
/// A label for reading, not a permission: what may be done with a flammable or toxic refrigerant is said by local codes and
/// the equipment maker's instructions.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs)] // each name is the class itself
pub enum SafetyClass {
    A1,
    A2L,
    A2,
    A3,
    B1,
    B2L,
    B2,
    B3,
}

impl SafetyClass {
    /// Whether the class names a refrigerant that can burn: all but A1 and B1.
    pub fn is_flammable(self) -> bool {
        !matches!(self, SafetyClass::A1 | SafetyClass::B1)
    }

    /// Whether the class names a refrigerant of higher toxicity: B1 to B3.
    pub fn is_toxic(self) -> bool {
        matches!(
            self,
            SafetyClass::B1 | SafetyClass::B2L | SafetyClass::B2 | SafetyClass::B3
        )
    }
}

impl fmt::Display for SafetyClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            SafetyClass::A1 => "A1",
            SafetyClass::A2L => "A2L",
            SafetyClass::A2 => "A2",
            SafetyClass::A3 => "A3",
            SafetyClass::B1 => "B1",
            SafetyClass::B2L => "B2L",
            SafetyClass::B2 => "B2",
            SafetyClass::B3 => "B3",
        })
    }
}

//! Whether a refrigerant is on its way out.

use crate::data::{FLUIDS, Family};

/// What the Montreal Protocol means for the supply of a refrigerant, by its components. What may be made, sold or serviced with is decided by
/// each country, and changes: ask there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Supply {
    /// No component is phased down or out.
    Unrestricted,
    /// Has an HFC or a perfluorocarbon: HFCs are being phased down for their warming effect (Kigali Amendment, 2016); perfluorocarbons
    /// warm more still and fall under rules of their own.
    PhaseDown,
    /// Has a CFC or an HCFC: production is phased out or ending for their harm to the ozone layer; what is left is reclaimed stock.
    PhaseOut,
}

impl Supply {
    /// Of components by their indices in the data.
    pub(crate) fn of(components: impl Iterator<Item = usize>) -> Supply {
        components
            .map(|i| match FLUIDS[i].family {
                Family::Cfc | Family::Hcfc => Supply::PhaseOut,
                Family::Hfc | Family::Pfc => Supply::PhaseDown,
                Family::Hfo | Family::Hcfo | Family::Hc | Family::Other => Supply::Unrestricted,
            })
            .fold(Supply::Unrestricted, |worst, next| match (worst, next) {
                (Supply::PhaseOut, _) | (_, Supply::PhaseOut) => Supply::PhaseOut,
                (Supply::PhaseDown, _) | (_, Supply::PhaseDown) => Supply::PhaseDown,
                _ => Supply::Unrestricted,
            })
    }
}

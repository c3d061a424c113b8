//! A plan alone, with its curves, and with curves and bands, as the app makes them when an answer changes.

use uom::si::f64::{Power, ThermodynamicTemperature};
use uom::si::power::kilowatt;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_calc::input::{Duty, Essentials, Load};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{Given, Input, Plan, plan};

use crate::Case;

/// Cooling capacities, kW.
const CAPACITIES: [f64; 4] = [4.0, 6.0, 9.0, 13.0];

pub fn cases() -> Vec<Case> {
    ["R-134a", "R-454B", "R-448A"]
        .into_iter()
        .flat_map(of)
        .collect()
}

fn of(name: &'static str) -> [Case; 3] {
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let refrigerant = Refrigerant::named(name).expect(name);
    let outdoor: Vec<_> = (0..=120)
        .map(|i| celsius(f64::from(i - 80) / 2.0))
        .collect();
    let made = move |kilowatts: f64| -> Plan {
        let essentials = Essentials {
            refrigerant: refrigerant.clone(),
            load: Load::Cooling(Power::new::<kilowatt>(kilowatts)),
            outdoor_low: celsius(-30.0),
        };
        plan(&Input::assume(essentials, Given::assumed(Duty::Cooler))).expect(name)
    };
    let (alone, curves, bands) = (made.clone(), made.clone(), made);
    let again = outdoor.clone();
    [
        Case::new(name, "plan alone", &CAPACITIES, alone),
        Case::new(
            name,
            "plan, curves at 121 outdoor temperatures",
            &CAPACITIES,
            move |kilowatts| curves(kilowatts).curves(&outdoor).expect(name),
        ),
        Case::new(
            name,
            "plan, those curves and bands",
            &CAPACITIES,
            move |kilowatts| {
                let plan = bands(kilowatts);
                (plan.curves(&again).expect(name), plan.bands())
            },
        ),
    ]
}

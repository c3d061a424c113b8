//! A whole plan with its curves, as the app makes it at each change of an input.

use uom::si::f64::{Power, ThermodynamicTemperature};
use uom::si::power::kilowatt;
use uom::si::thermodynamic_temperature::degree_celsius;
use winterset_calc::input::{Duty, Essentials, Load};
use winterset_calc::refrigerant::Refrigerant;
use winterset_calc::{Given, Input, plan};

use crate::Case;

pub fn cases() -> Vec<Case> {
    ["R-134a", "R-454B", "R-448A"].into_iter().map(of).collect()
}

fn of(name: &'static str) -> Case {
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let refrigerant = Refrigerant::named(name).expect(name);
    let outdoor: Vec<_> = (0..=120)
        .map(|i| celsius(f64::from(i - 80) / 2.0))
        .collect();
    let made = move |kilowatts: f64| {
        let essentials = Essentials {
            refrigerant: refrigerant.clone(),
            load: Load::Cooling(Power::new::<kilowatt>(kilowatts)),
            outdoor_low: celsius(-30.0),
        };
        let input = Input::assume(essentials, Given::assumed(Duty::Cooler));
        let plan = plan(&input).expect(name);
        plan.curves(&outdoor).expect(name)
    };
    Case::new(
        name,
        "plan, curves at 121 outdoor temperatures",
        &[4.0, 6.0, 9.0, 13.0],
        made,
    )
}

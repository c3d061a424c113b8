//! Sites in the states that a demo never shows: with nothing in them, with too much, with answers that are wrong.

use serde_json::{Value, json};
use winterset_tests::browser::{Failure, Page};

/// A name, and the address of a screen of one of the sites that [`keep`] keeps.
pub const SCREENS: &[(&str, &str)] = &[
    ("sites-overfull", "#/"),
    ("site-empty", "#/site/empty"),
    ("plan-empty", "#/site/bare/one"),
    ("inputs-empty", "#/site/bare/one/inputs"),
    ("site-overfull", "#/site/full"),
    ("plan-overfull", "#/site/full/0"),
    ("inputs-overfull", "#/site/full/0/inputs"),
    ("plan-error", "#/site/wrong/one"),
    ("inputs-error", "#/site/wrong/one/inputs"),
];

/// Names longer than any row, one of them without a place to break.
const LONG: &str = "Walk-in cooler and freezer behind the loading dock, condensing unit 3 on the north roof above the plant room";
const UNBROKEN: &str = "RTU-NORTH-03/CIRCUIT-B/REPLACED-2024/SEE-THE-DRAWING-IN-THE-PANEL";

/// Keeps the sites on the phone; an open page shows them after it is loaded anew.
pub async fn keep(page: &Page) -> Result<(), Failure> {
    let mut sites = vec![
        site("empty", "", &[]),
        site("bare", "Boiler house", &[system("one", "", &json!({}))]),
        site(
            "full",
            LONG,
            &(0..12)
                .map(|n| {
                    let name = if n % 2 == 0 { LONG } else { UNBROKEN };
                    system(&n.to_string(), name, &overfull())
                })
                .collect::<Vec<_>>(),
        ),
        site("wrong", "Depot", &[system("one", "Yard", &wrong())]),
    ];
    sites.extend((0..20).map(|n| {
        let name = if n % 5 == 0 { UNBROKEN } else { "Depot" };
        site(&format!("more{n}"), &format!("{name} {n}"), &[])
    }));
    for kept in sites {
        page.script(
            "localStorage.setItem('winterset.site.' + arguments[0].id, JSON.stringify(arguments[0]))",
            vec![kept],
        )
        .await?;
    }
    page.reload().await
}

fn site(id: &str, name: &str, systems: &[Value]) -> Value {
    json!({ "version": 1, "id": id, "name": name, "systems": systems })
}

fn system(id: &str, name: &str, entries: &Value) -> Value {
    json!({ "version": 1, "id": id, "name": name, "entries": entries })
}

/// A typed blend of five, and an entry in nearly every field.
fn overfull() -> Value {
    json!({
        "refrigerant": { "typed": "R-32/R-125/R-1234yf/R-134a/R-1234ze(E) 26/26/20/21/7" },
        "cooling_capacity": { "typed": "1234567.89", "unit": "Btu/h" },
        "outdoor_low": { "typed": "-39.75", "unit": "F" },
        "metering": { "typed": "txv-conventional" },
        "motor": { "typed": "permanent-split-capacitor" },
        "bearing": { "typed": "sleeve" },
        "voltage": { "typed": "460", "unit": "V" },
        "over_ambient": { "typed": "22.5", "unit": "F" },
        "known_outdoor": { "typed": "104.5", "unit": "F" },
        "evaporating": { "typed": "-22.75", "unit": "F" },
        "fans": { "typed": "12" },
        "rated_speed": { "typed": "1140", "unit": "rpm" },
        "elevation": { "typed": "11250", "unit": "ft" },
        "full_load": { "typed": "3.65", "unit": "A" },
        "recirculation": { "typed": "12.5", "unit": "%" },
        "dirt": { "typed": "17.5", "unit": "%" },
        "lowest_load": { "typed": "33.3", "unit": "%" },
    })
}

/// Something wrong in each way that an answer can be.
fn wrong() -> Value {
    json!({
        "refrigerant": { "typed": "R-999" },
        "cooling_capacity": { "typed": "6,200", "unit": "Btu/h" },
        "outdoor_low": { "typed": "very cold", "unit": "F" },
        "metering": { "typed": "txv-balanced" },
        "voltage": { "typed": "12000", "unit": "V" },
        "elevation": { "typed": "-90000", "unit": "ft" },
    })
}

//! Times every case: natively as lines of JSON, one a case; in a browser one case at a time, as the page asks.

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    use std::time::Instant;
    use winterset_refrigerant::Refrigerant;

    let start = Instant::now();
    let words: Vec<String> = std::env::args().skip(1).collect();
    for (index, case) in winterset_bench::cases().iter().enumerate() {
        if !(words.is_empty() || words.iter().any(|word| word == case.subject)) {
            continue;
        }
        let microseconds = case.microseconds(|| start.elapsed().as_secs_f64() * 1e3);
        // What another library needs to be asked the same.
        let composition: Vec<(&str, f64)> = Refrigerant::named(case.subject)
            .map(|refrigerant| {
                let parts = refrigerant.composition().iter();
                parts
                    .map(|part| (part.designation, part.mass_fraction))
                    .collect()
            })
            .unwrap_or_default();
        let line = serde_json::json!({
            "index": index, "subject": case.subject, "call": case.call, "microseconds": microseconds,
            "composition": composition, "inputs": case.inputs,
        });
        println!("{line}");
    }
}

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(target_arch = "wasm32")]
mod browser {
    use wasm_bindgen::prelude::wasm_bindgen;

    #[wasm_bindgen]
    extern "C" {
        #[wasm_bindgen(js_namespace = performance)]
        fn now() -> f64;
    }

    /// Time of one call of the case at an index, in microseconds.
    #[wasm_bindgen]
    pub fn microseconds(index: usize) -> Option<f64> {
        let cases = winterset_bench::cases();
        Some(cases.get(index)?.microseconds(now))
    }
}

//! Identifiers of sites and systems.

/// A new identifier: the time and a random tail, short enough for an address.
pub fn new() -> String {
    let time = js_sys::Date::now() as u64;
    let tail = (js_sys::Math::random() * 36f64.powi(5)) as u64;
    format!("{}{:0>5}", base36(time), base36(tail))
}

fn base36(mut number: u64) -> String {
    const DIGITS: &[u8; 36] = b"0123456789abcdefghijklmnopqrstuvwxyz";
    let mut digits = Vec::new();
    loop {
        digits.push(char::from(DIGITS[(number % 36) as usize]));
        number /= 36;
        if number == 0 {
            return digits.iter().rev().collect();
        }
    }
}

#[cfg(test)]
mod tests {
    #[test]
    fn digits_run_from_the_largest() {
        assert_eq!(super::base36(0), "0");
        assert_eq!(super::base36(36), "10");
        assert_eq!(super::base36(36 * 36 - 1), "zz");
    }
}

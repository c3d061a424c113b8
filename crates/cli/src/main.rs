//! `winterset`: the same answers at a desk or in a script.
fn main() {}

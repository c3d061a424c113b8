//! Set-up and every routine job.
fn main() {}

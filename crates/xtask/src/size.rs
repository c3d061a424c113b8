//! What the app costs to download.

use std::io::Write;

use flate2::Compression;
use flate2::write::GzEncoder;

use crate::app;
use crate::error::Error;
use crate::project;

/// Prints each file of the app with its size, plain and gzipped.
pub fn print() -> Result<(), Error> {
    let dist = app::build(None)?;
    let mut files = Vec::new();
    app::collect(&dist, &mut files)?;
    files.sort();
    let (mut plain, mut packed) = (0, 0);
    println!("{:>9} {:>9}", "bytes", "gzipped");
    for file in files {
        let bytes = std::fs::read(&file).map_err(Error::at(&file))?;
        let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
        encoder.write_all(&bytes).map_err(Error::at(&file))?;
        let gzipped = encoder.finish().map_err(Error::at(&file))?.len();
        plain += bytes.len();
        packed += gzipped;
        let name = file.strip_prefix(project::dist()).unwrap_or(&file);
        println!("{:>9} {gzipped:>9} {}", bytes.len(), name.display());
    }
    println!("{plain:>9} {packed:>9} together");
    Ok(())
}

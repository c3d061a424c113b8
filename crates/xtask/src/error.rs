//! What can go wrong in a job, and the command that mends it.

use std::path::{Path, PathBuf};

/// Why a job stopped.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The command line makes no sense.
    #[error("{0}; see `cargo xtask help`")]
    Arguments(#[from] lexopt::Error),
    /// Something is missing on the command line.
    #[error("wanted: {wanted}")]
    Usage {
        /// What.
        wanted: &'static str,
    },
    /// A tool is not there and could not be put there.
    #[error("{tool} is missing: {why}")]
    Missing {
        /// The tool.
        tool: &'static str,
        /// What was tried.
        why: String,
        /// The command that mends it.
        mend: String,
    },
    /// A tool ran and failed.
    #[error("{tool} failed ({status}) while {doing}")]
    Failed {
        /// The tool.
        tool: String,
        /// How it ended.
        status: String,
        /// What it was to do.
        doing: String,
        /// The command that shows or mends it.
        mend: Option<String>,
    },
    /// A file could not be read or written.
    #[error("{}: {source}", .path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// The built page is not as the build hook knows it.
    #[error("the page that Trunk wrote has changed its form: {what}")]
    Page {
        /// What was looked for.
        what: &'static str,
    },
    /// The network side of the server failed.
    #[error("cannot serve on port {port}: {source}")]
    Serve {
        /// The port asked for.
        port: u16,
        /// What the system says.
        source: std::io::Error,
    },
    /// Dependencies whose licence is not on the list.
    #[error("licences that are not on the list in crates/xtask/src/licences.rs:\n{}", .found.join("\n"))]
    Licences {
        /// One line a package.
        found: Vec<String>,
    },
    /// The package list could not be read.
    #[error("cargo metadata: {0}")]
    Metadata(#[from] cargo_metadata::Error),
    /// Reference data differ from what the outside libraries give.
    #[error("reference data differ from what the libraries give:\n{}", .found.join("\n"))]
    References {
        /// One line a difference.
        found: Vec<String>,
    },
    /// A benchmark printed something else than the time of a case.
    #[error("not the time of a case: {line}")]
    Times {
        /// What it printed.
        line: String,
    },
    /// Tests failed.
    #[error("failed: {}", .names.join(", "))]
    Tests {
        /// The parts that failed.
        names: Vec<String>,
    },
}

impl Error {
    /// The command that mends it, where one does.
    pub fn mend(&self) -> Option<&str> {
        match self {
            Error::Missing { mend, .. } => Some(mend),
            Error::Failed { mend, .. } => mend.as_deref(),
            Error::Serve { .. } => Some("choose another port: cargo xtask serve --port 8123"),
            Error::References { .. } => {
                Some("cargo xtask references, then read the change before you commit it")
            }
            _ => None,
        }
    }

    /// Names the file that a system call failed on.
    pub fn at(path: &Path) -> impl FnOnce(std::io::Error) -> Self + '_ {
        move |source| Error::File {
            path: path.to_owned(),
            source,
        }
    }
}

//! What stops a command.

use std::path::PathBuf;

/// Why a command stopped.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The command line makes no sense.
    #[error("{0}; see `winterset --help`")]
    Arguments(#[from] lexopt::Error),
    /// A part of the command line is missing.
    #[error("wanted: {0}; see `winterset --help`")]
    Wanted(&'static str),
    /// An option that the command takes no notice of.
    #[error("{option} does not go with {command}; see `winterset --help`")]
    Stray {
        /// The option.
        option: &'static str,
        /// The command.
        command: &'static str,
    },
    /// A value of the command line is wrong.
    #[error("{option}: {message}")]
    Value {
        /// The option.
        option: &'static str,
        /// What would be right.
        message: String,
    },
    /// A file could not be read.
    #[error("{}: {source}", .path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// A file holds no record.
    #[error("{}: {source}", .path.display())]
    Record {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        source: crate::batch::WireError,
    },
    /// Fields of a record are missing or wrong, one a line.
    #[error("{}", .0.join("\n"))]
    Fields(Vec<String>),
    /// Standard input or output broke off.
    #[error("{0}")]
    Stream(#[from] std::io::Error),
}

impl Error {
    /// What the program ends with: 2 where the command line makes no sense, 1 where there is no answer to it.
    pub fn exit_code(&self) -> u8 {
        match self {
            Error::Arguments(_) | Error::Wanted(_) | Error::Stray { .. } => 2,
            Error::Value { .. }
            | Error::File { .. }
            | Error::Record { .. }
            | Error::Fields(_)
            | Error::Stream(_) => 1,
        }
    }
}

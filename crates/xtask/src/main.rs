//! `cargo xtask`: set-up and every routine job of the project.

mod app;
mod bench;
mod engines;
mod error;
mod hook;
mod licences;
mod project;
mod references;
mod run;
mod screenshots;
mod serve;
mod setup;
mod size;
mod test;

use std::ffi::OsString;
use std::path::PathBuf;
use std::process::ExitCode;

use error::Error;
use lexopt::prelude::*;

const HELP: &str = "\
cargo xtask serve [--lan] [--port N]    set up what is missing, build the app, serve it, print the address
cargo xtask build [--base-path /x/]     write dist/, for any static host
cargo xtask test                        set up what is missing and run every test
cargo xtask engines                     the main journey in Firefox and in WebKit
cargo xtask screenshots                 pictures of every screen into target/screenshots/
cargo xtask references                  write the reference data anew from the outside libraries
cargo xtask bench [REFRIGERANT]...      times natively, in a browser and in CoolProp, in one table
cargo xtask bench pace                  how soon the app answers a key on a slow phone
cargo xtask licences                    check the licences of all dependencies
cargo xtask size                        what the app costs to download
cargo xtask serve-dist DIR [--port N] [--base-path /x/]
                                        serve a built folder and nothing else
";

fn main() -> ExitCode {
    let outcome = run(std::env::args_os());
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("\n{error}");
            if let Some(mend) = error.mend() {
                eprintln!("To mend it: {mend}");
            }
            ExitCode::FAILURE
        }
    }
}

#[derive(Default)]
struct Options {
    job: Option<String>,
    lan: bool,
    port: Option<u16>,
    base_path: Option<String>,
    rest: Vec<OsString>,
}

fn options(arguments: impl IntoIterator<Item = OsString>) -> Result<Options, lexopt::Error> {
    let mut options = Options::default();
    let mut parser = lexopt::Parser::from_iter(arguments);
    while let Some(argument) = parser.next()? {
        match argument {
            Long("lan") => options.lan = true,
            Long("port") => options.port = Some(parser.value()?.parse()?),
            Long("base-path") => options.base_path = Some(parser.value()?.string()?),
            Short('h') | Long("help") => options.job = None,
            Value(job) if options.job.is_none() => options.job = Some(job.string()?),
            Value(value) => options.rest.push(value),
            other => return Err(other.unexpected()),
        }
    }
    Ok(options)
}

fn run(arguments: impl IntoIterator<Item = OsString>) -> Result<(), Error> {
    let options = options(arguments)?;
    match options.job.as_deref() {
        Some("serve") => serve::app(options.lan, options.port),
        Some("serve-dist") => {
            let folder = options.rest.first().ok_or(Error::Usage {
                wanted: "the folder to serve",
            })?;
            let base = options.base_path.as_deref().unwrap_or("/");
            app::check_base_path(base)?;
            serve::folder(&PathBuf::from(folder), base, options.lan, options.port)
        }
        Some("build") => app::build(options.base_path.as_deref()).map(|_| ()),
        Some("test") => test::everything(),
        Some("engines") => engines::journey(),
        Some("screenshots") => screenshots::take(),
        Some("references") => references::write(),
        Some("bench") => bench::run(&options.rest),
        Some("licences") => licences::check(),
        Some("size") => size::print(),
        // Called by Trunk when it has put the app together; see Trunk.toml.
        Some("after-trunk") => hook::after_trunk(),
        Some("help") | None => {
            print!("{HELP}");
            Ok(())
        }
        Some(_) => Err(Error::Usage {
            wanted: "one of the jobs that `cargo xtask help` lists",
        }),
    }
}

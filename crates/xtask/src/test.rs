//! Every test of the project, after whatever set-up they need.

use std::path::Path;
use std::process::Command;
use std::time::Instant;

use crate::app;
use crate::error::Error;
use crate::project;
use crate::references;
use crate::run::{say, step};
use crate::setup::{WebTools, axe, browser, wasm};

/// Runs them all, also after one part has failed, and names the parts that failed.
pub fn everything() -> Result<(), Error> {
    let start = Instant::now();
    let tools = WebTools::ready()?;
    let browser = browser::ready()?;
    let parts = [
        ("native tests", native()),
        ("tests in the browser's engine", in_wasm(&tools, &browser)),
        ("end-to-end tests in a browser", end_to_end(&browser)),
        ("reference data", references::check()),
    ];

    let mut names = Vec::new();
    for (name, outcome) in &parts {
        match outcome {
            Ok(()) => say(&format!("{name}: passed")),
            Err(error) => {
                say(&format!("{name}: FAILED: {error}"));
                names.push((*name).to_owned());
            }
        }
    }
    say(&format!("all parts took {} s", start.elapsed().as_secs()));
    println!(
        "parts: {} passed, {} failed",
        parts.len() - names.len(),
        names.len()
    );
    if names.is_empty() {
        Ok(())
    } else {
        Err(Error::Tests { names })
    }
}

/// Everything that needs no browser, the checks against reference data among it.
fn native() -> Result<(), Error> {
    step(
        "running the native tests",
        None,
        Command::new("cargo").current_dir(project::root()).args([
            "test",
            "--workspace",
            "--exclude",
            "winterset-web",
        ]),
    )
}

/// The tests that run as WebAssembly inside a browser.
fn in_wasm(tools: &WebTools, browser: &browser::Browser) -> Result<(), Error> {
    let driver = which(&browser.driver);
    step(
        "running the tests in the browser's engine",
        None,
        tools
            .wasm
            .cargo()
            .current_dir(project::root())
            .env("PATH", tools.search_path())
            .env(
                "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER",
                "wasm-bindgen-test-runner",
            )
            .env("CHROMEDRIVER", driver)
            .args([
                "test",
                "--target",
                wasm::TARGET,
                "--package",
                "winterset-web",
            ]),
    )
}

/// The app in a real browser: the one for any place, and the one for a folder of a host.
fn end_to_end(browser: &browser::Browser) -> Result<(), Error> {
    let dist = app::build(None)?;
    let for_folder = project::dist_for_folder();
    app::build_into(&for_folder, Some(project::TEST_BASE_PATH))?;
    let axe = axe::ready()?;
    step(
        "running the end-to-end tests",
        None,
        browser_command(&["test", "--test", "browser"], &dist, browser)
            .env("WINTERSET_DIST_FOR_FOLDER", for_folder)
            .env("WINTERSET_BASE_PATH", project::TEST_BASE_PATH)
            .env("WINTERSET_AXE", axe),
    )
}

/// Cargo on the browser tests, told where the app, the server and the driver are.
pub fn browser_command(what: &[&str], dist: &Path, browser: &browser::Browser) -> Command {
    let mut command = Command::new("cargo");
    command
        .current_dir(project::root())
        .args(what)
        .args(["--package", "winterset-tests", "--features", "browser"])
        .env("WINTERSET_DIST", dist)
        .env("WINTERSET_CHROMEDRIVER", which(&browser.driver));
    if let Ok(own) = std::env::current_exe() {
        command.env("WINTERSET_SERVER", own);
    }
    command
}

/// The whole path of a program; the name alone where it is not on the search path.
fn which(program: &Path) -> std::path::PathBuf {
    let path = std::env::var_os("PATH").unwrap_or_default();
    std::env::split_paths(&path)
        .map(|folder| folder.join(program))
        .find(|candidate| candidate.is_file())
        .unwrap_or_else(|| program.to_owned())
}

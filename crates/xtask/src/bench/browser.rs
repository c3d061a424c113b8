//! The cases in Chromium, built as the app is: the same profile, wasm-bindgen and wasm-opt.

use std::process::Command;

use super::{Row, folder};
use crate::error::Error;
use crate::project;
use crate::run::{output_of_step, say, step};
use crate::setup::{WebTools, browser, wasm, wasm_opt};
use crate::test::browser_command;

const PAGE: &str = r#"<!doctype html>
<meta charset="utf-8">
<title>Times</title>
<script type="module">
import init, * as cases from "./cases.js";
await init();
window.cases = cases;
</script>
"#;

/// Fills in the times in the browser.
pub fn time(rows: &mut [Row]) -> Result<(), Error> {
    build()?;
    let browser = browser::ready()?;
    let lines = output_of_step(
        "timing in the browser (about a minute)",
        None,
        browser_command(&["run", "--bin", "bench"], &folder(), &browser)
            .arg("--")
            .args(rows.iter().map(|row| row.index.to_string())),
    )?;
    for line in lines.lines() {
        let unread = || Error::Times {
            line: line.to_owned(),
        };
        let (index, microseconds) = line.split_once(' ').ok_or_else(unread)?;
        let index: u64 = index.parse().map_err(|_| unread())?;
        let microseconds = microseconds.parse().map_err(|_| unread())?;
        if let Some(row) = rows.iter_mut().find(|row| row.index == index) {
            row.wasm = Some(microseconds);
        }
    }
    Ok(())
}

fn build() -> Result<(), Error> {
    let tools = WebTools::ready()?;
    let folder = folder();
    step(
        "building the cases for the browser (the first time 1 to 3 minutes, then less)",
        None,
        tools
            .wasm
            .cargo()
            .current_dir(project::root())
            .args(["build", "--locked", "--target", wasm::TARGET])
            .args(["--profile", "web", "--package", "winterset-bench"]),
    )?;
    let built = project::web_target()
        .join(wasm::TARGET)
        .join("web/winterset-bench.wasm");
    step(
        "writing the JavaScript for it",
        None,
        Command::new("wasm-bindgen")
            .env("PATH", tools.search_path())
            .args(["--target", "web", "--no-typescript", "--out-name", "cases"])
            .arg("--out-dir")
            .arg(&folder)
            .arg(built),
    )?;
    let module = folder.join("cases_bg.wasm");
    if wasm_opt::ready()?.is_some() {
        step(
            "optimising it",
            None,
            Command::new("wasm-opt")
                .env("PATH", tools.search_path())
                // As index.html asks Trunk to.
                .args(["-Oz", "--output"])
                .args([&module, &module]),
        )?;
    } else {
        say("timing in the browser without wasm-opt, which Trunk would fetch for the app");
    }
    let page = folder.join("index.html");
    std::fs::write(&page, PAGE).map_err(Error::at(&page))
}

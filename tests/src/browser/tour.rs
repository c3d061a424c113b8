//! Every screen of the app, one after the other, on a phone that holds something to show on each.

use std::path::Path;

use serde_json::Value;

use super::{Failure, Page, Server};

/// The worksheet that is left with something to carry over.
const CARRYING: &str = "superheat";

/// A screen, and how to come to it.
pub struct Stop {
    /// What it is called here.
    pub name: String,
    /// What stands behind the `#`, with it.
    pub behind: String,
    /// What is there as soon as the screen is whole.
    whole: &'static str,
}

impl Stop {
    fn new(name: &str, behind: &str) -> Self {
        Self::when(name, behind, "h1")
    }

    fn when(name: &str, behind: &str, whole: &'static str) -> Self {
        Self {
            name: name.to_owned(),
            behind: behind.to_owned(),
            whole,
        }
    }

    /// Opens the screen and waits until it is whole.
    pub async fn open(&self, page: &Page, server: &Server) -> Result<(), Failure> {
        page.script(
            "document.querySelector('main').setAttribute('data-left', '')",
            Vec::new(),
        )
        .await?;
        page.go(&format!("{}{}", server.address(), self.behind))
            .await?;
        page.find(&format!("main:not([data-left]) {}", self.whole))
            .await
            .map(|_| ())
    }

    /// Lays open whatever is folded up on the screen, on a plan the second method and the code to send, on a worksheet what it would carry over.
    pub async fn unfold(&self, page: &Page) -> Result<(), Failure> {
        if self.name == CARRYING {
            let system = page
                .script(
                    "return document.querySelectorAll('#answer-carry-to option')[1].value",
                    Vec::new(),
                )
                .await?;
            page.choose("#answer-carry-to", system.as_str().unwrap_or_default())
                .await?;
            page.find("[data-difference]").await?;
        }
        if self.name == "plan" {
            page.choose("#answer-beside", "full_fan").await?;
            page.find(".answer__both").await?;
        }
        page.unfold_all().await?;
        page.script(
            "document.querySelectorAll('[aria-expanded=false]').forEach(one => one.click());
             scrollTo(0, 0)",
            Vec::new(),
        )
        .await?;
        if self.name == "plan" {
            page.find("[data-code]").await?;
        }
        Ok(())
    }
}

/// Fills an empty phone, open at its start screen, and gives every screen that there is then.
pub async fn every_stop(page: &Page, server: &Server) -> Result<Vec<Stop>, Failure> {
    let (site, system) = demo_site(page).await?;
    let controller = filled_controller(page, server, &site, &system).await?;
    let (empty, wrong) = unfinished(page, server).await?;
    let arrival = arrival(page, server, &system).await?;
    let mut stops = vec![
        Stop::new("sites", "#/"),
        Stop::new("site", &site),
        Stop::when("plan", &system, "[data-advice=whole]"),
        Stop::new("inputs", &format!("{system}/inputs")),
        Stop::new("plan-empty", &empty),
        Stop::new("plan-wrong", &wrong),
        Stop::new("inputs-empty", &format!("{empty}/inputs")),
        Stop::when(
            "inputs-wrong",
            &format!("{wrong}/inputs"),
            "[aria-invalid=true]",
        ),
        Stop::new("worksheets", "#/worksheets"),
    ];
    carrying(page, server).await?;
    for sheet in worksheets(page, server).await? {
        let name = sheet.rsplit('/').next().unwrap_or_default();
        stops.push(Stop::new(name, &sheet));
    }
    stops.extend([
        Stop::new("settings", "#/settings"),
        Stop::new("controller", &controller),
        Stop::new("arrival", &arrival),
        Stop::new("bad-link", "#/share/1.damaged"),
        Stop::new("nowhere", "#/no-such-place"),
    ]);
    Ok(stops)
}

/// Opens the demo site from the start screen: what stands behind the `#` at the site and at its first system.
///
/// # Errors
/// Those of the browser.
pub async fn demo_site(page: &Page) -> Result<(String, String), Failure> {
    page.touch("demo site").await?;
    page.until(
        "the demo site is open",
        "return location.hash.startsWith('#/site/')",
    )
    .await?;
    let site = hash(&page.address().await?);
    let systems = links(page, &format!("{site}/")).await?;
    let first = systems.into_iter().next();
    Ok((site, first.ok_or("the demo site has no systems")?))
}

/// Enters a controller with a long name and something wrong, chooses it for the system and gives the site the hours of a weather file; what stands
/// behind the `#` at the controller.
///
/// # Errors
/// Those of the browser.
pub async fn filled_controller(
    page: &Page,
    server: &Server,
    site: &str,
    system: &str,
) -> Result<String, Failure> {
    page.go(&format!("{}#/settings", server.address())).await?;
    page.touch("Add a controller").await?;
    page.type_into(
        "#answer-controller-name",
        "Speed controller in the grey box by the ladder, north wall",
    )
    .await?;
    page.choose("#answer-controller-output", "phase-cut")
        .await?;
    for (field, typed) in [
        ("temperature_point_lowest", "60"),
        ("temperature_point_highest", "150"),
        ("temperature_range_lowest", "5"),
        ("temperature_range_highest", "40"),
        ("minimum_output_lowest", "80"),
        ("minimum_output_highest", "100"),
        ("start_boost_lowest", "0"),
        ("start_boost_highest", "0"),
        ("supply_lowest", "mains"),
    ] {
        page.type_into(&format!("#answer-{field}"), typed).await?;
    }
    let address = hash(&page.address().await?);
    page.go(&format!("{}{system}", server.address())).await?;
    let id = address.rsplit('/').next().unwrap_or_default();
    page.choose("#answer-controller", id).await?;
    page.go(&format!("{}{site}", server.address())).await?;
    let year = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/data/weather_year.epw");
    page.pick("#answer-weather", &year).await?;
    page.find("[data-weather=kept]").await?;
    Ok(address)
}

/// A site with two systems: one without any answer, one with wrong ones.
async fn unfinished(page: &Page, server: &Server) -> Result<(String, String), Failure> {
    page.go(&format!("{}#/", server.address())).await?;
    page.touch("New site").await?;
    page.type_into("#answer-site-name", "Relay station above the upper lake")
        .await?;
    let site = hash(&page.address().await?);
    let mut address = Vec::new();
    for _ in 0..2 {
        page.go(&format!("{}{site}", server.address())).await?;
        page.touch("Add a system").await?;
        page.find("#answer-system-name").await?;
        address.push(hash(&page.address().await?));
    }
    page.choose("#answer-refrigerant", "R-410A").await?;
    for (field, typed) in [
        ("cooling_capacity", "six"),
        ("outdoor_low", "-400"),
        ("over_ambient", "39 K"),
        ("elevation", "6,200"),
    ] {
        page.type_into(&format!("#answer-{field}"), typed).await?;
    }
    match address.as_slice() {
        [empty, wrong] => Ok((system(empty), system(wrong))),
        _ => Err("not both systems were made".into()),
    }
}

/// The system whose inputs are at an address.
fn system(inputs: &str) -> String {
    inputs.trim_end_matches("/inputs").to_owned()
}

/// What a link to the system leads to, after an answer was changed here.
async fn arrival(page: &Page, server: &Server, system: &str) -> Result<String, Failure> {
    page.go(&format!("{}{system}", server.address())).await?;
    page.touch("Copy link").await?;
    page.until_text("[role=status]", "Link copied").await?;
    let link = page.pasted("#answer-outdoor-now").await?;
    page.type_into("#answer-outdoor-now", "20").await?;
    page.go(&format!("{}{system}/inputs", server.address()))
        .await?;
    page.type_into("#answer-outdoor_low", "-21").await?;
    Ok(hash(&link))
}

/// Leaves readings on a worksheet, so that it has something to carry over.
async fn carrying(page: &Page, server: &Server) -> Result<(), Failure> {
    page.go(&format!("{}#/worksheets/{CARRYING}", server.address()))
        .await?;
    page.choose("#answer-refrigerant", "R-134a").await?;
    page.type_into("#answer-liquid-pressure", "150").await?;
    page.type_into("#answer-liquid-temperature", "85").await
}

async fn worksheets(page: &Page, server: &Server) -> Result<Vec<String>, Failure> {
    page.go(&format!("{}#/worksheets", server.address()))
        .await?;
    page.find("main a[href^='#/worksheets/']").await?;
    links(page, "#/worksheets/").await
}

/// The links of a screen that start like this.
async fn links(page: &Page, start: &str) -> Result<Vec<String>, Failure> {
    let script = "return [...document.querySelectorAll('main a')].map(link => link.getAttribute('href')).filter(href => href.startsWith(arguments[0]))";
    let found = page.script(script, vec![start.into()]).await?;
    let texts = found.as_array().into_iter().flatten();
    Ok(texts.filter_map(Value::as_str).map(str::to_owned).collect())
}

/// The part of an address from its `#` on.
fn hash(address: &str) -> String {
    match address.find('#') {
        Some(at) => address[at..].to_owned(),
        None => String::new(),
    }
}

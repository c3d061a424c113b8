//! Pictures of every screen, in every theme, on a phone and at a desk, into `target/screenshots/`.

mod states;

use std::path::Path;

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// Every screen of a phone that holds the demo site: a name, and the address behind the site's own. One line a screen.
const SCREENS: &[(&str, Place)] = &[
    ("sites", Place::At("#/")),
    ("site", Place::OfSite("")),
    ("plan", Place::OfSystem("")),
    ("fit", Place::OfSystem("/fit")),
    ("inputs", Place::OfSystem("/inputs")),
    ("worksheets", Place::At("#/worksheets")),
    ("saturation", Place::At("#/worksheets/saturation")),
    ("superheat", Place::At("#/worksheets/superheat")),
    ("fan-laws", Place::At("#/worksheets/fan-laws")),
    ("motor-volts", Place::At("#/worksheets/motor-volts")),
    ("flooding", Place::At("#/worksheets/flooding")),
    ("liquid-line", Place::At("#/worksheets/liquid-line")),
    ("sensors", Place::At("#/worksheets/sensors")),
    ("winter-start", Place::At("#/worksheets/winter-start")),
    ("units", Place::At("#/worksheets/units")),
    ("settings", Place::At("#/settings")),
    ("controller", Place::OfController),
    ("nowhere", Place::At("#/no-such-place")),
    ("bad-link", Place::At("#/share/1.damaged")),
];

/// Where a screen is.
enum Place {
    At(&'static str),
    OfSite(&'static str),
    OfSystem(&'static str),
    OfController,
}

const THEMES: [(&str, &str); 3] = [
    ("light", "Light"),
    ("dark", "Dark"),
    ("sunlight", "Sunlight"),
];

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    for (size, screen) in [("360", Screen::PHONE), ("1280", Screen::DESK)] {
        in_every_state(&server, &driver, size, screen).await?;
        let phone = Profile::new()?;
        let page = Page::open(&driver, &phone, screen).await?;
        page.go(&server.address()).await?;
        page.find("main").await?;
        page.picture(&format!("{size}-light-start")).await?;

        page.touch("demo site").await?;
        page.until(
            "the demo site is open",
            "return location.hash.startsWith('#/site/')",
        )
        .await?;
        let site = hash(&page.address().await?);
        let links = page
            .script(
                "return [...document.querySelectorAll('main a')].map(link => link.getAttribute('href')).filter(href => href.includes(arguments[0]))",
                vec![site.clone().into()],
            )
            .await?;
        let first = links[0].as_str().ok_or("the demo site has no systems")?;
        let system = hash(first);

        let controller =
            controller(&page, &server, &format!("{}{system}", server.address())).await?;
        for (theme, label) in THEMES {
            page.go(&format!("{}#/settings", server.address())).await?;
            page.touch_choice(label).await?;
            for (name, place) in SCREENS {
                let behind = match place {
                    Place::At(behind) => (*behind).to_owned(),
                    Place::OfSite(rest) => format!("{site}{rest}"),
                    Place::OfSystem(rest) => format!("{system}{rest}"),
                    Place::OfController => controller.clone(),
                };
                page.go(&format!("{}{behind}", server.address())).await?;
                page.find("main").await?;
                if *name == "plan" {
                    page.find("[data-advice]").await?;
                }
                page.whole_picture(&format!("{size}-{theme}-{name}"))
                    .await?;
                if *name == "plan" {
                    page.choose("#answer-beside", "full_fan").await?;
                    page.find(".answer__both").await?;
                    page.whole_picture(&format!("{size}-{theme}-plan-beside"))
                        .await?;
                }
            }
        }
        page.close().await?;
    }
    Ok(())
}

/// What a phone shows that holds sites with nothing in them, with too much and with wrong answers.
async fn in_every_state(
    server: &Server,
    driver: &Driver,
    size: &str,
    screen: Screen,
) -> Result<(), Failure> {
    let phone = Profile::new()?;
    let page = Page::open(driver, &phone, screen).await?;
    page.go(&server.address()).await?;
    page.find("main").await?;
    states::keep(&page).await?;
    for (theme, label) in THEMES {
        page.go(&format!("{}#/settings", server.address())).await?;
        page.touch_choice(label).await?;
        for (name, behind) in states::SCREENS {
            page.go(&format!("{}{behind}", server.address())).await?;
            page.find("main").await?;
            if *name == "plan-overfull" {
                page.find("[data-advice]").await?;
            }
            page.whole_picture(&format!("{size}-{theme}-{name}"))
                .await?;
        }
    }
    page.close().await
}

/// Enters a controller with a long name and something wrong, chooses it for a system, and gives the site a winter; the controller's address.
async fn controller(page: &Page, server: &Server, plan: &str) -> Result<String, Failure> {
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
    page.go(plan).await?;
    let id = address.rsplit('/').next().unwrap_or_default();
    page.choose("#answer-controller", id).await?;
    let site = plan.rsplit_once('/').map_or(plan, |(site, _)| site);
    page.go(site).await?;
    let year = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference/data/weather_year.epw");
    page.pick("#answer-weather", &year).await?;
    page.find("[data-weather=kept]").await?;
    Ok(address)
}

/// The part of an address from its `#` on.
fn hash(address: &str) -> String {
    match address.find('#') {
        Some(at) => address[at..].to_owned(),
        None => String::new(),
    }
}

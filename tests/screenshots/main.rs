//! Pictures of every screen, in every theme, on a phone and at a desk, into `target/screenshots/`.

mod states;

use winterset_tests::browser::{
    Driver, Failure, Page, Profile, Screen, Server, demo_site, filled_controller,
};

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

        let (site, system) = demo_site(&page).await?;
        let controller = filled_controller(&page, &server, &site, &system).await?;
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
                page.until_worked_out().await?;
                page.whole_picture(&format!("{size}-{theme}-{name}"))
                    .await?;
                if *name == "plan" {
                    page.choose("#answer-beside", "full_fan").await?;
                    page.find(".answer__both").await?;
                    page.whole_picture(&format!("{size}-{theme}-plan-beside"))
                        .await?;
                    page.unfold_all().await?;
                    page.find("[data-picture=cycle] .diagram").await?;
                    page.whole_picture(&format!("{size}-{theme}-plan-open"))
                        .await?;
                    page.script("sessionStorage.clear()", Vec::new()).await?;
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
            page.until_worked_out().await?;
            page.whole_picture(&format!("{size}-{theme}-{name}"))
                .await?;
        }
    }
    page.close().await
}

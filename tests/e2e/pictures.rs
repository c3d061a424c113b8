//! The pictures of a plan and what they answer: two methods on one ladder, the marker on the curves, the points of the cycle; and the elevation that a
//! phone gives.

use serde_json::{Value, json};
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

const LEFT: &str = "\u{e012}";
const RIGHT: &str = "\u{e014}";
const DOWN: &str = "\u{e015}";

/// A system that has every picture, open at its plan.
async fn planned(page: &Page, server: &Server) -> Result<(), Failure> {
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.choose("#answer-duty", "room-cooling").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.choose("#answer-metering", "txv-balanced").await?;
    page.touch("See the plan").await?;
    page.find("[role=radio]").await?;
    Ok(())
}

/// What a script answers as text.
async fn told(page: &Page, script: &str) -> Result<String, Failure> {
    let answer = page.script(script, Vec::new()).await?;
    Ok(answer.as_str().unwrap_or_default().to_owned())
}

/// Touches a place inside an element, given as shares of its width and height.
async fn touch_inside(page: &Page, css: &str, x: f64, y: f64) -> Result<(), Failure> {
    page.script(
        "const [css, x, y] = arguments;
         const field = document.querySelector(css);
         field.scrollIntoView({ block: 'center' });
         const box = field.getBoundingClientRect();
         const at = { clientX: box.x + x * box.width, clientY: box.y + y * box.height, bubbles: true };
         document.elementFromPoint(at.clientX, at.clientY).dispatchEvent(new MouseEvent('click', at));",
        vec![json!(css), json!(x), json!(y)],
    )
    .await?;
    Ok(())
}

async fn is_wider_than_the_phone(page: &Page) -> Result<Value, Failure> {
    page.script(
        "return document.documentElement.scrollWidth > innerWidth
             || [...document.querySelectorAll('.answer')].some(one => one.scrollWidth > one.clientWidth)",
        Vec::new(),
    )
    .await
}

#[tokio::test]
async fn every_rung_answers_two_methods_side_by_side() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    planned(&page, &server).await?;
    let alone = told(
        &page,
        "return document.querySelector('[role=radio]').ariaLabel",
    )
    .await?;
    page.choose("#answer-beside", "full_fan").await?;
    page.find(".answer__both").await?;

    let rungs = page
        .script(
            "return [...document.querySelectorAll('[role=radio]')].map(rung => rung.ariaLabel)",
            Vec::new(),
        )
        .await?;
    let rungs = rungs.as_array().ok_or("no rungs")?;
    assert!(rungs.len() > 8);
    for rung in rungs {
        let heads = rung
            .as_str()
            .unwrap_or_default()
            .matches("head pressure")
            .count();
        assert_eq!(heads, 2, "{rung}");
    }
    // Both panels stand on the same scales.
    let scales = page
        .script(
            "return [...document.querySelectorAll('.ladder__scale')].map(scale => scale.textContent)",
            Vec::new(),
        )
        .await?;
    assert_eq!(scales.as_array().map(Vec::len), Some(2));
    assert_eq!(scales[0], scales[1]);
    assert_eq!(is_wider_than_the_phone(&page).await?, false);

    page.touch_at("[data-rung='2']").await?;
    let answer = "return document.querySelector('.answer').textContent";
    let touched = told(&page, answer).await?;
    let name = told(
        &page,
        "return document.querySelector('[role=radio][aria-checked=true]').ariaLabel",
    )
    .await?;
    assert!(touched.contains(&name), "{touched}\n{name}");
    page.press(DOWN).await?;
    page.until(
        "the next rung answers",
        "return document.activeElement.dataset.rung === '3' && document.activeElement.ariaChecked === 'true'",
    )
    .await?;
    assert_ne!(told(&page, answer).await?, touched);

    page.choose("#answer-beside", "").await?;
    page.until(
        "one method is left",
        "return !document.querySelector('.answer__both')",
    )
    .await?;
    let again = told(
        &page,
        "return document.querySelector('[role=radio]').ariaLabel",
    )
    .await?;
    assert_eq!(again, alone);
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn the_curves_are_read_at_a_marker() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    planned(&page, &server).await?;
    let slider = ".curves .chart__slider";
    let said = "[role=status][data-reading=curves]";
    let at = format!("return document.querySelector({slider:?}).getAttribute('aria-valuetext')");
    // It starts where the ladder is read, and goes there again with the next rung.
    page.touch_at("[data-rung='3']").await?;
    let rung = told(
        &page,
        "return document.querySelector('[data-rung=\"3\"]').innerText",
    )
    .await?;
    assert_eq!(told(&page, &at).await?, rung);
    page.until_text(said, &rung).await?;

    // From cold at the left to warm at the right, four steps a rung.
    for _ in 0..4 {
        page.find(slider).await?.send_keys(RIGHT).await?;
    }
    let warmer = told(
        &page,
        "return document.querySelector('[data-rung=\"2\"]').innerText",
    )
    .await?;
    page.until_text(said, &warmer).await?;
    page.find(slider).await?.send_keys(LEFT).await?;
    page.until(
        "the marker is back by a step",
        &format!("return document.querySelector({said:?}).innerText.includes(document.querySelector({slider:?}).getAttribute('aria-valuetext'))"),
    )
    .await?;
    assert_ne!(told(&page, &at).await?, warmer);
    assert!(page.text(said).await?.contains("psig"));

    page.touch_at(slider).await?;
    let middle = told(
        &page,
        &format!(
            "const slider = document.querySelector({slider:?}); return `${{slider.value / slider.max}}`"
        ),
    )
    .await?;
    let middle: f64 = middle.parse()?;
    assert!((middle - 0.5).abs() < 0.02, "{middle}");
    // One marker on both charts.
    let markers = page
        .script(
            "return [...document.querySelectorAll('[data-marker]')].map(marker => marker.dataset.marker)",
            Vec::new(),
        )
        .await?;
    assert_eq!(markers.as_array().map(Vec::len), Some(2));
    assert_eq!(markers[0], markers[1]);
    assert!(page.has(".curves svg[role=img][aria-label]").await?);
    assert!(page.has(".curves table").await?);
    page.close().await
}

#[tokio::test]
async fn the_points_of_the_cycle_are_read() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    planned(&page, &server).await?;
    page.touch_at("[data-part=cycle] > summary").await?;
    page.find("[data-picture=cycle] .diagram").await?;
    assert_eq!(is_wider_than_the_phone(&page).await?, false);
    let said = "[role=status][data-reading=cycle]";
    page.until_text(said, "1 Compressor inlet").await?;

    page.find("[name=cycle-state]:checked")
        .await?
        .send_keys(RIGHT)
        .await?;
    page.until_text(said, "2 Compressor outlet").await?;
    let known = page.text(said).await?;
    page.find("[name=cycle]:checked")
        .await?
        .send_keys(RIGHT)
        .await?;
    page.until_text(said, "Site's low").await?;
    assert_ne!(page.text(said).await?, known);

    // The top right corner of the drawing is next to the compressor's outlet, the bottom left one to the evaporator's inlet.
    touch_inside(&page, ".diagram", 0.98, 0.1).await?;
    page.until_text(said, "2 Compressor outlet").await?;
    touch_inside(&page, ".diagram", 0.02, 0.98).await?;
    page.until_text(said, "4 Evaporator inlet").await?;

    // What is read stands in the table, and each cycle in a sentence.
    let rows = page
        .script(
            "return [...document.querySelectorAll('[data-picture=cycle] tbody tr')].map(row => row.textContent)",
            Vec::new(),
        )
        .await?;
    assert_eq!(rows.as_array().map(Vec::len), Some(10), "{rows:#}");
    let value = told(
        &page,
        &format!("return document.querySelector({said:?} + ' dd').innerText"),
    )
    .await?;
    assert!(rows.to_string().contains(&value), "{value} {rows:#}");
    let summary = told(
        &page,
        "return document.querySelector('.diagram svg').getAttribute('aria-label')",
    )
    .await?;
    assert!(
        summary.contains("Known point") && summary.contains("evaporates"),
        "{summary}"
    );
    let dome = told(
        &page,
        "return `${document.querySelector('.diagram__dome').points.length}`",
    )
    .await?;
    let dome: usize = dome.parse()?;
    assert!(dome > 80, "{dome}");
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn the_phone_gives_the_elevation_when_asked() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.find("#from-phone").await?;
    // Stands in for the receiver, which a machine has not.
    page.script(
        "window.asked = 0;
         navigator.geolocation.getCurrentPosition = (found, failed) => {
             window.asked += 1;
             const answer = window.answer;
             if (answer.code) failed(answer);
             else found({ coords: answer });
         };",
        Vec::new(),
    )
    .await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    assert_eq!(page.script("return asked", Vec::new()).await?, 0);

    let said = "#from-phone-said";
    for (answer, word) in [
        (json!({ "code": 1 }), "did not allow"),
        (json!({ "code": 3 }), "found no position"),
        (json!({ "altitude": null }), "does not know how high"),
    ] {
        page.script("window.answer = arguments[0]", vec![answer])
            .await?;
        page.touch("Elevation from this phone").await?;
        page.until_text(said, word).await?;
        assert_eq!(page.value("#answer-elevation").await?, "");
    }
    // 6200 ft are 1889.76 m (NIST SP 811: one foot is 0.3048 m).
    page.script(
        "window.answer = { altitude: 1889.76, altitudeAccuracy: 9.144 }",
        Vec::new(),
    )
    .await?;
    page.touch("Elevation from this phone").await?;
    page.until_text(said, "30\u{a0}ft").await?;
    assert_eq!(page.value("#answer-elevation").await?, "6200");
    page.reload().await?;
    assert_eq!(page.value("#answer-elevation").await?, "6200");
    page.choose("#unit-elevation", "m").await?;
    page.script(
        "navigator.geolocation.getCurrentPosition = found => found({ coords: { altitude: 1889.76, altitudeAccuracy: null } })",
        Vec::new(),
    )
    .await?;
    page.touch("Elevation from this phone").await?;
    page.until_text(said, "Filled in").await?;
    assert_eq!(page.value("#answer-elevation").await?, "1890");
    page.close().await
}

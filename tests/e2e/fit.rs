//! Fitting and wiring: one touch from the plan, cautions at their steps, sketches that read as words and go on paper.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// A page with a new system of the brewery's cold kind, on its plan.
async fn planned(page: &Page, server: &Server) -> Result<(), Failure> {
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-454B").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.choose("#answer-reversing_valve", "in-cooling").await?;
    page.touch("See the plan").await?;
    page.find("[data-verdict]").await?;
    Ok(())
}

async fn says(page: &Page, sketch: &str) -> Result<String, Failure> {
    let said = page
        .script(
            "return document.querySelector(`[data-sketch=${arguments[0]}] desc`).textContent",
            vec![sketch.into()],
        )
        .await?;
    Ok(said.as_str().unwrap_or_default().to_owned())
}

#[tokio::test]
async fn the_steps_follow_method_motor_and_arrangement() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    planned(&page, &server).await?;
    page.touch("Fit and wire").await?;
    page.find("[data-step]").await?;
    page.choose("#answer-fit-method", "speed_control").await?;

    // A heat pump was answered, so that its signal comes along.
    page.until_text("[data-step]", "Bring the reversing valve's signal")
        .await?;
    let wired = says(&page, "wiring").await?;
    assert!(
        wired.contains("contactor; speed controller; fan motor"),
        "{wired}"
    );
    assert!(wired.contains("reversing valve"), "{wired}");
    let dead = page.text("[data-step='Make it dead'] .caution").await?;
    assert!(
        dead.contains("a meter you have just checked on a live source"),
        "{dead}"
    );
    let wire = page.text("[data-step='Wire the fans'] .caution").await?;
    assert!(wire.contains("Run capacitor"), "{wire}");
    let mount = page
        .text("[data-step='Mount the controller'] .caution")
        .await?;
    assert!(mount.contains("Flammable"), "{mount}");
    let last = page.text("[data-step]:last-child .caution").await?;
    assert!(last.contains("starts by itself"), "{last}");

    // Another arrangement stays chosen, also when the phone forgets the page.
    page.touch_choice("Two circuits").await?;
    page.until_text("[data-step]", "The same on the second circuit")
        .await?;
    page.reload().await?;
    page.until_text("[data-step]", "The same on the second circuit")
        .await?;
    let circuit = says(&page, "circuit").await?;
    assert!(circuit.contains("coil of the second circuit"), "{circuit}");

    page.choose("#answer-fit-method", "flooding").await?;
    page.until_text("[data-step]", "Put in valve and receiver")
        .await?;
    assert!(!page.has("[data-sketch=wiring]").await?);
    page.choose("#answer-fit-method", "on_off").await?;
    page.until_text("[data-step]", "Set the switching points")
        .await?;
    page.find("[data-value=on-off]").await?;
    page.choose("#answer-fit-method", "full_fan").await?;
    page.until(
        "nothing is fitted",
        "return !document.querySelector('[data-step]')",
    )
    .await?;

    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

/// Names on the drawn sketches lie clear of each other as the browser itself sets them, the page is no wider than the phone, and whatever is touched
/// is large enough.
#[tokio::test]
async fn sketches_are_read_on_a_small_phone_and_go_on_paper() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    planned(&page, &server).await?;
    let plan = page.address().await?;
    page.touch("Fit and wire").await?;
    page.find("[data-step]").await?;
    for method in [
        "speed_control",
        "speed_with_baffle",
        "speed_with_flooding",
        "on_off",
    ] {
        for arrangement in ["Cooling only", "With receiver", "Heat pump", "Two circuits"] {
            page.choose("#answer-fit-method", method).await?;
            page.touch_choice(arrangement).await?;
            let over = page
                .script(
                    "const rooms = [...document.querySelectorAll('.drawing__lines')].flatMap(svg => {
                         const names = [...svg.querySelectorAll('.drawing__name')].map(name => [name.textContent, name.getBBox()]);
                         const view = svg.viewBox.baseVal;
                         const out = names.filter(([, box]) => box.x + box.width > view.width || box.y + box.height > view.height || box.y < 0);
                         const over = names.filter(([, a], i) => names.some(([, b], j) => i < j
                             && a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height));
                         return [...out, ...over].map(([text]) => text);
                     });
                     return rooms",
                    Vec::new(),
                )
                .await?;
            assert_eq!(over, serde_json::json!([]), "{method} {arrangement}");
            let wide = page
                .script(
                    "return document.documentElement.scrollWidth <= 360",
                    Vec::new(),
                )
                .await?;
            assert_eq!(wide, true, "{method} {arrangement} is wider than the phone");
        }
    }
    let small = page
        .script(
            "return [...document.querySelectorAll('main a, main button, main select, main summary, main label')]
                 .filter(one => one.getClientRects().length && !one.classList.contains('row__ask'))
                 .map(one => [one.innerText, one.getBoundingClientRect()])
                 .filter(([, box]) => box.height < 47.5 || box.width < 47.5)
                 .map(([text]) => text)",
            Vec::new(),
        )
        .await?;
    assert_eq!(small, serde_json::json!([]));

    // Read twice as large, drawings move in their own frames and the page still fits.
    for screen in ["/fit", "/inputs"] {
        page.go(&format!("{plan}{screen}")).await?;
        page.find("main .row").await?;
        let wide = page
            .script(
                "document.documentElement.style.fontSize = '200%';
                 return new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => {
                     const wide = document.documentElement.scrollWidth;
                     document.documentElement.style.fontSize = '';
                     done(wide);
                 })))",
                Vec::new(),
            )
            .await?;
        assert!(wide.as_u64() <= Some(360), "{screen} is {wide} wide");
    }

    page.go(&format!("{plan}/fit")).await?;
    page.choose("#answer-fit-method", "speed_control").await?;
    page.go(&plan).await?;
    page.find("[data-test-values]").await?;
    page.as_paper(true).await?;
    let shown = page
        .script(
            "return [...document.querySelectorAll('[data-sketches] svg')].map(svg => svg.getClientRects().length)",
            Vec::new(),
        )
        .await?;
    assert_eq!(shown, serde_json::json!([1, 1]));
    page.as_paper(false).await?;
    let paper = page.paper().await?;
    let pages = String::from_utf8_lossy(&paper)
        .matches("/Type /Page\n")
        .count();
    assert!((1..=2).contains(&pages), "{pages} pages");
    page.close().await
}

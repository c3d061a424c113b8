//! Bad answers: each gets a message at its own field, and nothing typed is lost.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// A field, and answers that it must refuse: text, below the least, absurd, in a unit of something else.
const NUMBERS: &[(&str, &[&str])] = &[
    ("cooling_capacity", &["", "abc", "-5", "1e12", "12 V"]),
    ("outdoor_low", &["", "cold", "-400", "900", "5 kW"]),
    ("over_ambient", &["warm", "-3", "700", "15 V", "39 K"]),
    ("known_outdoor", &["abc", "-400", "900", "20 kW"]),
    ("evaporating", &["abc", "-400", "900", "20 kW"]),
    ("elevation", &["high", "-9000", "99999999", "3 V"]),
    ("voltage", &["mains", "-230", "9e9", "230 Hz"]),
    ("frequency", &["abc", "-60", "400", "60 V"]),
    ("fans", &["two", "-1", "1000", "1.5", "2 V"]),
    ("rated_speed", &["fast", "-900", "1e9", "900 V", "2350"]),
    ("airflow", &["breeze", "-1", "1e12", "1000 V", "30 cfm"]),
    ("throttling_range", &["abc", "-3", "900", "8 V"]),
    ("compressor_lowest", &["abc", "-400", "900", "8 V"]),
    ("compressor_highest", &["abc", "-400", "900", "8 V"]),
    ("compressor_stages", &["two", "-1", "1", "7", "2.5", "3 V"]),
    ("idle_airflow", &["none", "-5", "95", "5 V"]),
];

#[tokio::test]
async fn each_bad_answer_is_told_at_its_field_and_kept() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.type_into("#answer-cooling_capacity", "36000").await?;
    page.type_into("#answer-outdoor_low", "-18").await?;
    page.until_text(".live", "°F").await?;

    for (field, bad) in NUMBERS {
        let (answer, error) = (format!("#answer-{field}"), format!("#error-{field}"));
        let good = page.value(&answer).await?;
        for typed in *bad {
            page.type_into(&answer, typed).await?;
            page.until(
                &format!("{field} refuses {typed:?}"),
                &format!("return document.querySelector('{error}').innerText.length > 10"),
            )
            .await?;
            assert_eq!(page.value(&answer).await?, *typed);
            let flagged = page
                .script(
                    "return document.querySelector(arguments[0]).getAttribute('aria-invalid')",
                    vec![answer.clone().into()],
                )
                .await?;
            assert_eq!(flagged, "true", "{field} {typed:?}");
        }
        let last = bad.last().copied().unwrap_or_default();
        page.reload().await?;
        page.find(&answer).await?;
        assert_eq!(
            page.value(&answer).await?,
            last,
            "{field} after loading anew"
        );
        page.type_into(&answer, &good).await?;
        page.until(
            &format!("{field} takes {good:?}"),
            &format!("return document.querySelector('{error}').innerText === ''"),
        )
        .await?;
    }

    page.type_into("#answer-known_outdoor", "130").await?;
    page.type_into("#answer-over_ambient", "70").await?;
    page.until_text("#error-over_ambient", "condenses only up to")
        .await?;
    assert_eq!(page.value("#answer-over_ambient").await?, "70");
    page.type_into("#answer-over_ambient", "").await?;

    page.choose("#answer-refrigerant", "blend").await?;
    for typed in ["R-9999", "R-32/R-1234yf 60/30", "water"] {
        page.type_into("#answer-refrigerant", typed).await?;
        page.until(
            &format!("the refrigerant refuses {typed}"),
            "return document.querySelector('#error-refrigerant').innerText.length > 10",
        )
        .await?;
        assert_eq!(page.value("#answer-refrigerant").await?, typed);
    }
    page.close().await
}

#[tokio::test]
async fn both_ways_of_rating_are_told_apart() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.choose("#answer-refrigerant", "R-134a").await?;
    page.type_into("#answer-cooling_capacity", "12,5").await?;
    page.choose("#unit-cooling_capacity", "kW").await?;
    page.type_into("#answer-outdoor_low", "-10").await?;
    page.touch("Heat rejected at the condenser instead").await?;
    assert_eq!(page.value("#answer-heat_rejected").await?, "12,5");
    page.type_into("#answer-heat_rejected", "hot").await?;
    page.until_text("#error-heat_rejected", "number").await?;
    page.type_into("#answer-heat_rejected", "16,4").await?;
    page.until(
        "a plan follows",
        "return document.querySelector('.live').innerText.includes('°F')",
    )
    .await?;
    page.close().await
}

#[tokio::test]
async fn the_field_in_use_is_never_hidden() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    // The second one is what a keyboard leaves of a phone.
    for screen in [
        Screen::PHONE,
        Screen {
            width: 360,
            height: 330,
        },
    ] {
        let page = Page::open(&driver, &phone, screen).await?;
        page.go(&server.address()).await?;
        page.touch("New site").await?;
        page.touch("Add a system").await?;
        page.type_into("#answer-system-name", "Split").await?;
        for step in 0..40 {
            page.press("\u{e004}").await?;
            let hidden = page
                .script(
                    "const used = document.activeElement;
                     const box = used.getBoundingClientRect();
                     const seen = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
                     return used === document.body || used.contains(seen) ? '' : used.outerHTML",
                    Vec::new(),
                )
                .await?;
            assert_eq!(hidden, "", "{screen:?}, step {step}");
        }
        page.close().await?;
    }
    Ok(())
}

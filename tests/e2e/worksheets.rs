//! Worksheets: from the start screen in one touch, each at its own address, what is typed kept, answers and errors at once.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// Every worksheet by its address and its title.
const SHEETS: &[(&str, &str)] = &[
    ("saturation", "Saturation"),
    ("superheat", "Superheat and subcooling"),
    ("fan-laws", "Fan laws"),
    ("motor-volts", "Motor volts and speed"),
    ("flooding", "Flooding charge"),
    ("liquid-line", "Liquid line"),
    ("sensors", "Sensors"),
    ("winter-start", "Winter start"),
    ("units", "Units"),
];

/// The number at a value, as it stands there.
async fn shown(page: &Page, key: &str) -> Result<String, Failure> {
    page.text(&format!("[data-value='{key}'] .sheet__value"))
        .await
}

#[tokio::test]
async fn every_worksheet_is_two_touches_away_and_has_its_own_address() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("Worksheets").await?;
    page.until_text("h1", "Worksheets").await?;
    for (key, title) in SHEETS {
        page.touch_at(&format!("main a[href='#/worksheets/{key}']"))
            .await?;
        page.until_text("h1", title).await?;
        assert!(
            page.address()
                .await?
                .ends_with(&format!("#/worksheets/{key}"))
        );
        // Usual values alone already give an answer.
        page.find("[data-value]").await?;
        assert!(!page.has("[aria-invalid=true]").await?, "{key}");
        let wide = page
            .script(
                "return document.documentElement.scrollWidth > innerWidth",
                Vec::new(),
            )
            .await?;
        assert_eq!(wide, false, "{key} is wider than the phone");
        page.back().await?;
        page.until_text("h1", "Worksheets").await?;
    }
    for (key, title) in SHEETS {
        page.go("about:blank").await?;
        page.go(&format!("{}#/worksheets/{key}", server.address()))
            .await?;
        page.until_text("h1", title).await?;
    }
    page.go(&format!("{}#/worksheets/nonsense", server.address()))
        .await?;
    page.until_text("h1", "There is no such worksheet").await?;
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await
}

#[tokio::test]
async fn what_is_typed_is_answered_at_once_and_kept() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    let superheat = format!("{}#/worksheets/superheat", server.address());
    page.go(&superheat).await?;
    page.choose("#answer-refrigerant", "R-134a").await?;
    page.type_into("#answer-suction-pressure", "2,2").await?;
    page.choose("#unit-suction-pressure", "bar").await?;
    page.type_into("#answer-suction-temperature", "8").await?;
    page.choose("#unit-suction-temperature", "C").await?;
    // CoolProp 8.0.0: R-134a has its dew point at 321.325 kPa at 2.59 °C, so 8 °C is 5.41 K or 9.7 °F above it.
    page.until_text("[data-value=superheat]", "9.7").await?;
    page.type_into("#answer-elevation", "5280").await?;
    // At 303.4 kPa, with the air of 5280 ft, it is at 0.99 °C: 7.01 K or 12.6 °F.
    page.until_text("[data-value=superheat]", "12.6").await?;
    page.reload().await?;
    page.until_text("[data-value=superheat]", "12.6").await?;
    assert_eq!(page.value("#answer-suction-pressure").await?, "2,2");
    assert_eq!(page.value("#unit-suction-pressure").await?, "bar");

    // The refrigerant and the place go along to the next worksheet; the readings do not.
    page.go(&format!("{}#/worksheets/liquid-line", server.address()))
        .await?;
    page.until_text("h1", "Liquid line").await?;
    assert_eq!(page.value("#answer-refrigerant").await?, "R-134a");
    assert_eq!(page.value("#answer-elevation").await?, "5280");
    assert_eq!(page.value("#answer-liquid-pressure").await?, "");

    page.go(&superheat).await?;
    page.touch("Clear this worksheet").await?;
    page.touch_at(".confirm .button--first").await?;
    page.until(
        "the readings are gone",
        "return document.querySelector('#answer-suction-pressure').value === ''",
    )
    .await?;
    assert_eq!(page.value("#answer-refrigerant").await?, "R-134a");
    page.close().await
}

#[tokio::test]
async fn what_is_wrong_is_told_at_its_field() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    for (sheet, field, bad) in [
        ("fan-laws", "new-speed", &["fast", "-5", "9e9", "5 kW"][..]),
        ("fan-laws", "known-airflow", &["3,500", "cfm"]),
        ("motor-volts", "nameplate-speed", &["2350", "0"]),
        ("motor-volts", "supply-volts", &["24", "mains"]),
        ("flooding", "warmest", &["hot", "900"]),
        ("liquid-line", "bore", &["0", "0.05", "wide"]),
        ("superheat", "suction-pressure", &["-20", "99999"]),
        ("saturation", "temperature", &["400", "-400", "warm"]),
        ("units", "temperature", &["-500", "x"]),
    ] {
        page.go(&format!("{}#/worksheets/{sheet}", server.address()))
            .await?;
        let (answer, error) = (format!("#answer-{field}"), format!("#error-{field}"));
        page.find(&answer).await?;
        for typed in bad {
            page.type_into(&answer, typed).await?;
            page.until(
                &format!("{sheet} {field} refuses {typed:?}"),
                &format!("return document.querySelector('{error}').innerText.length > 10"),
            )
            .await?;
            assert_eq!(page.value(&answer).await?, *typed);
        }
        page.type_into(&answer, "").await?;
        page.until(
            &format!("{sheet} {field} is assumed again"),
            &format!("return document.querySelector('{error}').innerText === ''"),
        )
        .await?;
    }
    page.close().await
}

#[tokio::test]
async fn nothing_jumps_while_an_answer_is_half_typed() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&format!("{}#/worksheets/fan-laws", server.address()))
        .await?;
    page.find("[data-strong]").await?;
    let top = "return Math.round(document.querySelector('#answer-outdoor').getBoundingClientRect().top + scrollY)";
    let before = page.script(top, Vec::new()).await?;
    page.type_into("#answer-outdoor", "-").await?;
    page.until_text(".strip", "No result yet").await?;
    assert_eq!(page.script(top, Vec::new()).await?, before);
    page.type_into("#answer-outdoor", "-1").await?;
    page.find("[data-strong]").await?;
    assert_eq!(page.script(top, Vec::new()).await?, before);
    page.close().await
}

#[tokio::test]
async fn each_value_shows_its_rule_and_source() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&format!("{}#/worksheets/fan-laws", server.address()))
        .await?;
    page.type_into("#answer-known-speed", "1000").await?;
    page.type_into("#answer-known-airflow", "4000").await?;
    page.type_into("#answer-new-speed", "500").await?;
    page.until_text("[data-strong=fan-airflow]", "2000").await?;
    page.touch_at("[data-value=fan-airflow] summary").await?;
    page.until_text("[data-value=fan-airflow] .working", "AMCA 201")
        .await?;

    page.go(&format!("{}#/worksheets/motor-volts", server.address()))
        .await?;
    page.choose("#answer-known-as", "meter-volts").await?;
    page.type_into("#answer-meter-volts", "115").await?;
    // Half on an averaging meter is a quarter wave, 0.7071 of 230 V (power-electronics textbooks).
    page.until_text("[data-strong=cut-voltage]", "163").await?;
    assert!(shown(&page, "firing-angle").await?.starts_with("90"));
    page.close().await
}

#[tokio::test]
async fn a_sensor_asks_only_for_its_own_kind_and_a_night_is_held_against_the_switch()
-> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&format!("{}#/worksheets/sensors", server.address()))
        .await?;
    page.type_into("#answer-meter-resistance", "500 Mohm")
        .await?;
    page.until_text("[data-strong=sensor-temperature]", "open")
        .await?;
    assert!(!page.has("#answer-range-high").await?);
    page.choose("#answer-sensor-kind", "transducer").await?;
    page.choose("#answer-transducer-by", "current-loop").await?;
    page.type_into("#answer-range-high", "500").await?;
    page.type_into("#answer-meter-current", "12").await?;
    // Half way from 4 to 20 mA is half of the range.
    page.until_text("[data-strong=loop-pressure]", "250")
        .await?;
    assert!(!page.has("#answer-beta").await?);

    page.go(&format!("{}#/worksheets/winter-start", server.address()))
        .await?;
    page.choose("#answer-refrigerant", "R-134a").await?;
    page.type_into("#answer-outdoor", "-4").await?;
    page.type_into("#answer-cut-out", "15").await?;
    page.type_into("#answer-cut-in", "25").await?;
    // CoolProp 8.0.0: R-134a has 132.7 kPa at −4 °F, 4.6 psi over the air and 20.4 psi under the cut-in.
    page.until_text("[data-strong=switch-margin]", "20.4")
        .await?;
    page.find("[data-strong=bypass-time]").await?;
    page.find("[data-strong=sump-heat]").await?;
    page.close().await
}

#[tokio::test]
async fn targets_are_large_enough_for_gloves() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    for (key, _) in SHEETS {
        page.go(&format!("{}#/worksheets/{key}", server.address()))
            .await?;
        page.find("[data-value]").await?;
        let small = page
            .script(
                "return [...document.querySelectorAll('main input, main select, main button, main summary, main a')]
                     .filter(one => one.getBoundingClientRect().height < 47.5)
                     .map(one => one.outerHTML.slice(0, 120))",
                Vec::new(),
            )
            .await?;
        assert_eq!(small, serde_json::json!([]), "{key}");
        let keypads = page
            .script(
                "return [...document.querySelectorAll('main input:not([type=range])')].every(one => one.inputMode === 'decimal')",
                Vec::new(),
            )
            .await?;
        assert_eq!(keypads, true, "{key}");
    }
    page.close().await
}

/// What has the focus, where something else lies over it.
async fn hidden(page: &Page) -> Result<serde_json::Value, Failure> {
    page.script(
        "const used = document.activeElement;
         const box = used.getBoundingClientRect();
         const seen = document.elementFromPoint(box.x + box.width / 2, box.y + Math.min(box.height, 48) / 2);
         return used === document.body || used.contains(seen) ? '' : used.outerHTML.slice(0, 200)",
        Vec::new(),
    )
    .await
}

#[tokio::test]
async fn the_field_in_use_is_never_hidden_by_the_result() -> Result<(), Failure> {
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
        page.go(&format!("{}#/worksheets/flooding", server.address()))
            .await?;
        page.touch_at("#answer-refrigerant").await?;
        for step in 0..45 {
            page.press("\u{e004}").await?;
            assert_eq!(hidden(&page).await?, "", "{screen:?}, step {step}");
        }
        // And back up again, under the result at the top.
        for step in 0..30 {
            page.press("\u{e008}\u{e004}\u{e000}").await?;
            assert_eq!(hidden(&page).await?, "", "{screen:?}, back, step {step}");
        }
        page.close().await?;
    }
    Ok(())
}

#[tokio::test]
async fn the_curve_of_a_sensor_is_read_at_its_marker() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&format!("{}#/worksheets/sensors", server.address()))
        .await?;
    page.find("[data-curve] .chart").await?;
    let rows = page
        .script(
            "return document.querySelectorAll('[data-curve] tbody tr').length",
            Vec::new(),
        )
        .await?;
    assert_eq!(rows, 41);
    let before = page.text("[data-reading=sensor]").await?;
    page.script(
        "document.querySelector('[data-curve] input').focus()",
        Vec::new(),
    )
    .await?;
    page.press("\u{e014}").await?;
    page.until(
        "the marker reads elsewhere",
        &format!(
            "return document.querySelector('[data-reading=sensor]').innerText !== {}",
            serde_json::json!(before)
        ),
    )
    .await?;

    page.choose("#answer-sensor-kind", "transducer").await?;
    page.until_text("[data-curve] .reading__place", "psig")
        .await?;
    page.close().await
}

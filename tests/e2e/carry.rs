//! What a worksheet found goes into a system: nothing before it is said, each answer to keep or to take.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

#[tokio::test]
async fn what_a_worksheet_found_is_carried_answer_by_answer() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("demo site").await?;
    page.until(
        "the demo site is open",
        "return location.hash.startsWith('#/site/')",
    )
    .await?;

    page.go(&format!("{}#/worksheets/superheat", server.address()))
        .await?;
    page.until_text("h1", "Superheat and subcooling").await?;
    // Nothing was given yet, so there is nothing to carry.
    assert!(!page.has("[data-carry]").await?);
    page.type_into("#answer-liquid-pressure", "300").await?;
    page.type_into("#answer-liquid-temperature", "85").await?;
    // Nor from a refrigerant that nobody named.
    assert!(!page.has("[data-carry]").await?);
    page.choose("#answer-refrigerant", "R-410A").await?;
    page.find("[data-carry]").await?;
    let second = page
        .script(
            "return [...document.querySelectorAll('#answer-carry-to option')][2].value",
            Vec::new(),
        )
        .await?;
    let second = second.as_str().ok_or("no system to choose")?;
    page.choose("#answer-carry-to", second).await?;
    page.find("[data-difference='subcooling']").await?;
    page.until_text("[data-carry] .button--first", "Carry over 1 answer")
        .await?;
    let found = page
        .text("[data-difference='subcooling'] dl > div:last-child dd")
        .await?;

    page.touch("Carry over 1 answer").await?;
    page.find("[data-verdict]").await?;
    let address = page.address().await?;
    assert!(address.contains(&format!("#/site/{second}")), "{address}");
    page.go(&format!("{address}/inputs/subcooling")).await?;
    page.find("#answer-subcooling").await?;
    let typed = page.value("#answer-subcooling").await?;
    assert!(found.starts_with(&typed), "{found} became {typed}");

    // Carried once, there is nothing left to change.
    page.go(&format!("{}#/worksheets/superheat", server.address()))
        .await?;
    page.find("[data-carry]").await?;
    page.choose("#answer-carry-to", second).await?;
    page.until_text("[data-carry] [role=status]", "holds all of this")
        .await?;
    page.close().await
}

//! A long plan is got about in by its parts.

use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

#[tokio::test]
async fn each_part_of_a_plan_is_one_touch_from_its_list() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("demo site").await?;
    page.find("main .list a").await?;
    page.touch_at("main .list a").await?;
    page.find("[data-advice]").await?;
    page.touch_at(".contents summary").await?;
    page.find(".contents__one").await?;
    let all = page
        .script(
            "return [...document.querySelectorAll('.contents__one')].map(one => one.innerText).join()
                === [...document.querySelectorAll('main h2')].filter(one => one.offsetParent).map(one => one.innerText).join()",
            Vec::new(),
        )
        .await?;
    assert_eq!(all, true, "the list is that of the headings");
    page.touch("What to order").await?;
    page.until(
        "the part is in sight and has the focus",
        "const top = document.activeElement.getBoundingClientRect().top;
         return document.activeElement.innerText === 'What to order' && top >= 0 && top < innerHeight",
    )
    .await?;
    page.close().await
}

#[tokio::test]
async fn a_plan_is_found_again_where_it_was_left() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("demo site").await?;
    page.touch_at("main .list a").await?;
    page.find("[data-advice=whole]").await?;
    let far = "return scrollY === 6000";
    page.script("scrollTo(0, 6000)", Vec::new()).await?;
    page.until("the plan is read on", far).await?;
    page.touch_at(".places a[href='#/worksheets']").await?;
    page.until_text("h1", "Worksheets").await?;
    page.back().await?;
    page.until("the way back leads to the same place", far)
        .await?;
    page.reload().await?;
    page.until("so does loading anew", far).await?;
    page.close().await
}

#[tokio::test]
async fn what_was_opened_stays_open() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("demo site").await?;
    page.touch_at("main .list a").await?;
    let need = "[data-part=need] > summary";
    let folded = page.text(need).await?;
    assert!(folded.contains("psig"), "{folded}");
    assert!(!page.has("[data-part=need] [data-value]").await?);
    page.touch_at(".contents summary").await?;
    page.touch("Pressure need").await?;
    page.find("[data-part=need] [data-value=need]").await?;

    page.touch_at(".places a[href='#/worksheets']").await?;
    page.until_text("h1", "Worksheets").await?;
    page.back().await?;
    page.find("[data-part=need] [data-value=need]").await?;
    page.reload().await?;
    page.find("[data-part=need] [data-value=need]").await?;
    page.touch_at(need).await?;
    page.until(
        "it is folded up again",
        "return !document.querySelector('[data-part=need] [data-value]')",
    )
    .await?;
    page.reload().await?;
    page.find(need).await?;
    assert!(!page.has("[data-part=need] [data-value]").await?);
    page.close().await
}

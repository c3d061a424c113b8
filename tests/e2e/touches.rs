//! How little it takes: touches to an answer, answers to a plan, touches from a plan to what was assumed.

use serde_json::{Value, json};
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server};

/// A page on which touches are counted, those on fields among them.
struct Counted {
    page: Page,
    touches: u32,
}

impl Counted {
    async fn touch(&mut self, css: &str) -> Result<(), Failure> {
        self.touches += 1;
        self.page.touch_at(css).await
    }

    /// Types where the last touch put the focus.
    async fn type_there(&self, text: &str) -> Result<(), Failure> {
        self.page.press(text).await
    }
}

#[tokio::test]
async fn saturation_is_two_touches_and_a_number_away() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&format!("{}#/worksheets/saturation", server.address()))
        .await?;
    page.choose("#answer-refrigerant", "R-32").await?;
    page.close().await?;

    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    let mut phone = Counted { page, touches: 0 };
    phone
        .touch("main a[href='#/worksheets/saturation']")
        .await?;
    phone.touch("#answer-temperature").await?;
    phone.type_there("104").await?;
    assert!(phone.touches <= 2);
    // CoolProp 8.0.0: at 104 °F (40 °C) R-32 boils at 2478.3 kPa, which is 344.8 psi over one standard atmosphere.
    phone.page.until_text("main .sheet", "344.8").await?;
    assert_eq!(phone.page.value("#answer-refrigerant").await?, "R-32");
    phone.page.close().await
}

/// The fields that stand between a system and its plan, as the plan's screen lists them.
async fn needed(page: &Page) -> Result<Vec<String>, Failure> {
    let found = page
        .script(
            "return [...document.querySelectorAll('main .list:not(.used) a')].map(link => link.getAttribute('href').split('/').pop())",
            Vec::new(),
        )
        .await?;
    let fields = found.as_array().into_iter().flatten();
    Ok(fields
        .filter_map(Value::as_str)
        .map(str::to_owned)
        .collect())
}

#[tokio::test]
async fn few_answers_make_a_plan_and_the_rest_is_a_touch_away() -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.touch("New site").await?;
    page.touch("Add a system").await?;
    page.touch("See the plan").await?;
    page.find("main .list a").await?;

    // Each answer that is asked for, one after the other, until nothing more is.
    let mut answered = Vec::new();
    while let Some(field) = needed(&page).await?.first().cloned() {
        page.touch_at(&format!("main .list a[href$='/inputs/{field}']"))
            .await?;
        let answer = format!("#answer-{field}");
        page.until_focused(&answer).await?;
        match field.as_str() {
            "refrigerant" => page.choose(&answer, "R-410A").await?,
            "cooling_capacity" => page.press("36000").await?,
            "outdoor_low" => page.press("-18").await?,
            other => return Err(format!("{other} is asked for too").into()),
        }
        answered.push(field);
        page.touch("See the plan").await?;
        page.find("main .list a").await?;
    }
    assert!((1..=7).contains(&answered.len()), "{answered:?}");
    page.find("[data-verdict]").await?;

    // All else is assumed, says so by its form, and leads to its field, which has the focus.
    let told = page
        .script(
            "const moved = () => new Promise(done => setTimeout(done, 50));
             const settled = async test => { for (let i = 0; i < 200 && !test(); i++) await moved(); };
             const used = () => [...document.querySelectorAll('.used a')];
             const told = [];
             for (let index = 0; index < used().length; index++) {
                 const link = used()[index];
                 const field = link.getAttribute('href').split('/').pop();
                 const assumed = link.querySelector('.value--assumed') !== null;
                 link.click();
                 await settled(() => document.querySelector('#answer-' + field));
                 await settled(() => document.activeElement.id === 'answer-' + field);
                 told.push([field, assumed, document.activeElement.id]);
                 history.back();
                 await settled(() => used().length > 0);
             }
             return told;",
            Vec::new(),
        )
        .await?;
    let told = told.as_array().ok_or("no list")?;
    assert!(told.len() > 15, "{told:#?}");
    for one in told {
        let field = one[0].as_str().unwrap_or_default();
        let is_assumed = !answered.iter().any(|answer| answer == field);
        assert_eq!(one[1], json!(is_assumed), "{field}");
        assert_eq!(one[2], json!(format!("answer-{field}")));
    }

    // The same by a real touch, and the new answer counts at once.
    page.touch_at(".used a[href$='/inputs/elevation']").await?;
    page.until_focused("#answer-elevation").await?;
    page.press("6200").await?;
    page.touch("See the plan").await?;
    page.find(".used a[href$='/inputs/elevation'] .value:not(.value--assumed)")
        .await?;
    page.close().await
}

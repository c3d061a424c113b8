//! Text twice as large as usual, and a phone on its side: nothing reaches past the page, nothing is cut off, no bar takes the page away.

use serde_json::Value;
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server, every_stop};

const ON_ITS_SIDE: Screen = Screen {
    width: 640,
    height: 360,
};

/// Besides English.
const LANGUAGES: &[&str] = &["es", "fr"];

/// What does not fit on the screen that is open, a line a place.
const MISFITS: &str = "
    const found = [];
    // A phone zooms out of a page that is too wide, and `innerWidth` grows with it.
    const [width, height] = arguments;
    const wide = document.documentElement.scrollWidth;
    if (wide > width) found.push(`the page is ${wide} wide`);

    // What clips, between a text and the page; what scrolls by itself shows everything.
    function bounds(element) {
        const clips = [];
        for (let one = element; one && one !== document.body; one = one.parentElement) {
            const style = getComputedStyle(one);
            if (/auto|scroll/.test(style.overflowX + style.overflowY)) return clips;
            if (/hidden|clip/.test(style.overflowX + style.overflowY)) clips.push(one.getBoundingClientRect());
        }
        clips.push({ left: 0, right: width, top: -Infinity, bottom: Infinity });
        return clips;
    }
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text; (text = texts.nextNode());) {
        const own = text.parentElement;
        if (!text.data.trim() || !own.checkVisibility() || own.closest('.unseen, noscript, option, textarea')) continue;
        // The box of a letter is taller than the letter.
        const slack = parseFloat(getComputedStyle(own).fontSize) * 0.3;
        const range = document.createRange();
        range.selectNodeContents(text);
        const boxes = [...range.getClientRects()].filter(box => box.width > 0);
        const out = bounds(own).some(clip => boxes.some(box => box.left < clip.left - 1.5 || box.right > clip.right + 1.5
            || box.top < clip.top - slack || box.bottom > clip.bottom + slack));
        if (out) found.push(`cut off: ${own.tagName}.${own.getAttribute('class')} ${text.data.trim().slice(0, 50)}`);
    }

    // A field shows what it holds, or what stands in for it.
    const pen = document.createElement('canvas').getContext('2d');
    for (const field of document.querySelectorAll('input:not([type=radio], [type=checkbox], [type=file]), select.entry-unit')) {
        const style = getComputedStyle(field);
        pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
        const held = field.selectedOptions ? field.selectedOptions[0].text : field.placeholder;
        const room = field.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
        const needed = pen.measureText(held).width;
        if (needed > room + 1) found.push(`cut off: ${field.id} ${held} (${needed} in ${room})`);
    }

    // A list that cuts off what is chosen has it whole under it; its arrow takes room of its own.
    for (const list of document.querySelectorAll('select.entry')) {
        if (!list.checkVisibility()) continue;
        const style = getComputedStyle(list);
        pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
        const chosen = list.selectedOptions[0].text;
        const room = list.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - 16;
        const whole = list.parentElement.querySelector('.row__whole');
        if (whole.textContent !== chosen) found.push(`not whole: ${list.id} ${chosen}`);
        if (pen.measureText(chosen).width > room && !whole.checkVisibility()) found.push(`cut off: ${list.id} ${chosen}`);
    }

    // What stays in sight leaves half of the height to what moves.
    let taken = 0;
    for (const one of document.querySelectorAll('body *')) {
        const box = one.getBoundingClientRect();
        const across = box.width > width / 2;
        if (across && /sticky|fixed/.test(getComputedStyle(one).position)) taken += box.height;
    }
    if (taken > height / 2) found.push(`bars take ${taken} of ${height}`);
    return found;
";

async fn misfits(page: &Page, screen: &str, size: Screen) -> Result<Vec<String>, Failure> {
    page.resize(size).await?;
    page.until(
        "the window has its size",
        &format!(
            "return document.documentElement.clientWidth === {}",
            size.width
        ),
    )
    .await?;
    let found = page
        .script(MISFITS, vec![size.width.into(), size.height.into()])
        .await?;
    let lines = found.as_array().ok_or("no list of misfits")?;
    let texts = lines.iter().filter_map(Value::as_str);
    Ok(texts
        .map(|text| format!("{screen}, {} × {}: {text}", size.width, size.height))
        .collect())
}

/// Every screen, at each of these sizes of the window, and upright in every language.
async fn tour(text: u32, sizes: &[Screen]) -> Result<(), Failure> {
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open_with_text(&driver, &phone, Screen::PHONE, text).await?;
    page.go(&server.address()).await?;
    page.find("main").await?;
    let set = page
        .script(
            "return getComputedStyle(document.documentElement).fontSize",
            Vec::new(),
        )
        .await?;
    assert_eq!(set, format!("{text}px"));

    let mut found = Vec::new();
    for size in sizes {
        found.extend(misfits(&page, "start", *size).await?);
    }
    page.resize(Screen::PHONE).await?;
    let stops = every_stop(&page, &server).await?;
    for stop in &stops {
        stop.open(&page, &server).await?;
        stop.unfold(&page).await?;
        for size in sizes {
            found.extend(misfits(&page, &stop.name, *size).await?);
        }
        page.resize(Screen::PHONE).await?;
    }
    for language in LANGUAGES {
        page.go(&format!("{}#/settings", server.address())).await?;
        page.touch_at(&format!("input[name=language][value={language}]"))
            .await?;
        for stop in &stops {
            stop.open(&page, &server).await?;
            stop.unfold(&page).await?;
            let name = format!("{}, {language}", stop.name);
            found.extend(misfits(&page, &name, Screen::PHONE).await?);
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
    page.close().await
}

#[tokio::test]
async fn twice_the_text_fits_everywhere() -> Result<(), Failure> {
    tour(32, &[Screen::PHONE, Screen::DESK, ON_ITS_SIDE]).await
}

#[tokio::test]
async fn usual_text_fits_a_phone_either_way_up() -> Result<(), Failure> {
    tour(16, &[Screen::PHONE, ON_ITS_SIDE]).await
}

//! Every screen in every theme against the rules of axe-core for the Web Content Accessibility Guidelines 2.2, levels A and AA.

use serde_json::{Value, json};
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server, every_stop, told};

/// As the style sheets know them.
const THEMES: [&str; 3] = ["light", "dark", "sunlight"];

/// What axe finds on the screen that is open, a line a place.
async fn violations(page: &Page) -> Result<Vec<String>, Failure> {
    // The rule for the size of targets is left out unless it is asked for by name.
    let found = page
        .script(
            "const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
             const asked = { runOnly: { type: 'tag', values: tags }, rules: { 'target-size': { enabled: true } }, resultTypes: ['violations'] };
             return axe.run(document, asked).then(result => result.violations.flatMap(rule => rule.nodes.map(node =>
                 `${rule.id}: ${node.target.join(' ')}\\n    ${node.html.slice(0, 200)}\\n    ${node.failureSummary}`)))",
            Vec::new(),
        )
        .await?;
    let lines = found.as_array().ok_or("axe gave no list")?;
    Ok(lines
        .iter()
        .filter_map(Value::as_str)
        .map(str::to_owned)
        .collect())
}

/// Whatever can be operated, or carries a meaning of its own, without a name to be read aloud.
async fn nameless(page: &Page) -> Result<Vec<String>, Failure> {
    const NAMED: &[&str] = &[
        "alertdialog",
        "button",
        "checkbox",
        "combobox",
        "DisclosureTriangle",
        "img",
        "image",
        "link",
        "navigation",
        "progressbar",
        "radio",
        "radiogroup",
        "slider",
        "textbox",
    ];
    let tree = page.tell("Accessibility.getFullAXTree", json!({})).await?;
    let nodes = tree["nodes"].as_array().ok_or("no tree of names")?;
    let bare = nodes.iter().filter(|node| {
        let role = node["role"]["value"].as_str().unwrap_or_default();
        let name = node["name"]["value"].as_str().unwrap_or_default();
        NAMED.contains(&role) && node["ignored"] == false && name.trim().is_empty()
    });
    Ok(bare.map(|node| format!("nameless: {node}")).collect())
}

/// The same in every theme, with the theme and the screen in front.
async fn in_themes(page: &Page, screen: &str) -> Result<Vec<String>, Failure> {
    let mut all = nameless(page).await?;
    for theme in THEMES {
        page.script(
            "document.documentElement.dataset.theme = arguments[0]",
            vec![json!(theme)],
        )
        .await?;
        let found = violations(page).await?;
        all.extend(
            found
                .into_iter()
                .map(|one| format!("{screen}, {theme}: {one}")),
        );
    }
    Ok(all)
}

#[tokio::test]
async fn no_screen_breaks_a_rule_in_any_theme() -> Result<(), Failure> {
    let axe = std::fs::read_to_string(told("WINTERSET_AXE")?)?;
    let server = Server::start()?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.find("main").await?;
    page.script(&axe, Vec::new()).await?;

    let mut found = in_themes(&page, "start").await?;
    for stop in every_stop(&page, &server).await? {
        stop.open(&page, &server).await?;
        stop.unfold(&page).await?;
        found.extend(in_themes(&page, &stop.name).await?);
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
    page.close().await
}

//! Any static host will do: the app in a folder of one, and a new version laid over the old one.

use std::path::Path;

use serde_json::Value;
use winterset_tests::browser::{Driver, Failure, Page, Profile, Screen, Server, built, told};

#[tokio::test]
async fn works_in_a_folder_of_a_host() -> Result<(), Failure> {
    let mut server = Server::of(&built()?, "/some/folder/")?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;

    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.until_text("main", "Works offline now").await?;
    let errors = page.console_errors().await?;
    assert!(errors.is_empty(), "{errors:#?}");
    page.close().await?;

    server.end()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    for address in ["", "index.html", "?from=home", "#/settings"] {
        page.go(&format!("{}{address}", server.address())).await?;
        page.find("main").await?;
    }
    page.close().await
}

#[tokio::test]
async fn an_app_built_for_a_folder_finds_it_without_the_last_slash() -> Result<(), Failure> {
    let base = told("WINTERSET_BASE_PATH")?;
    let base = base.to_str().ok_or("the base path is no text")?;
    let server = Server::of(Path::new(&told("WINTERSET_DIST_FOR_FOLDER")?), base)?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    let bare = server.address().trim_end_matches('/').to_owned();
    page.go(&format!("{bare}#/settings")).await?;
    page.until_text("main", "Works offline now").await?;
    assert_eq!(
        page.address().await?,
        format!("{}#/settings", server.address())
    );
    page.close().await
}

#[tokio::test]
async fn a_new_version_waits_until_it_is_asked_for() -> Result<(), Failure> {
    let host = tempfile::tempdir()?;
    copy(&built()?, host.path())?;
    let server = Server::of(host.path(), "/")?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.until_offline_ready().await?;
    let old = kept_versions(&page).await?;

    publish(host.path(), true)?;
    page.reload().await?;
    page.until_text("main, .notices", "A new version is ready")
        .await?;
    let both = kept_versions(&page).await?;
    assert_eq!(both.as_array().map(Vec::len), Some(2), "{both}");
    assert!(!manifest(&page).await?.contains("Winterset, newer"));

    page.touch("Use it").await?;
    page.until_text("main", "Works offline now").await?;
    assert!(manifest(&page).await?.contains("Winterset, newer"));
    let new = kept_versions(&page).await?;
    assert_eq!(new.as_array().map(Vec::len), Some(1), "{new}");
    assert_ne!(new, old);
    page.close().await
}

#[tokio::test]
async fn a_damaged_new_version_is_not_taken() -> Result<(), Failure> {
    let host = tempfile::tempdir()?;
    copy(&built()?, host.path())?;
    let mut server = Server::of(host.path(), "/")?;
    let driver = Driver::start()?;
    let phone = Profile::new()?;
    let page = Page::open(&driver, &phone, Screen::PHONE).await?;
    page.go(&server.address()).await?;
    page.until_offline_ready().await?;
    let old = kept_versions(&page).await?;

    publish(host.path(), false)?;
    let outcome = page
        .script(
            "return navigator.serviceWorker.getRegistration().then(registration =>
                 new Promise(done => {
                     registration.addEventListener('updatefound', () => {
                         const worker = registration.installing;
                         worker.addEventListener('statechange', () => done(worker.state));
                     });
                     registration.update();
                 }))",
            Vec::new(),
        )
        .await?;
    assert_eq!(outcome, "redundant");
    assert_eq!(kept_versions(&page).await?, old);

    server.end()?;
    page.reload().await?;
    page.until_text("main", "Works offline now").await?;
    assert!(!manifest(&page).await?.contains("Winterset, newer"));
    page.close().await
}

/// Lays a new version over the one in a folder: one file is another, and the worker is told so, or is told something else.
fn publish(host: &Path, whole: bool) -> Result<(), Failure> {
    let file = host.join("manifest.webmanifest");
    let old = std::fs::read_to_string(&file)?;
    std::fs::write(
        &file,
        old.replacen("\"Winterset\"", "\"Winterset, newer\"", 1),
    )?;

    let worker = host.join("sw.js");
    let code = std::fs::read_to_string(&worker)?;
    let digest = "0".repeat(64);
    let told = if whole { digest_of(&file)? } else { digest };
    let start = code
        .find("\"manifest.webmanifest\":\"")
        .ok_or("the worker lists no manifest")?
        + "\"manifest.webmanifest\":\"".len();
    let code = format!("{}{told}{}", &code[..start], &code[start + 64..]);
    let code = code.replacen("const version = \"", "const version = \"newer-", 1);
    Ok(std::fs::write(&worker, code)?)
}

/// The SHA-256 of a file in hexadecimal digits.
fn digest_of(file: &Path) -> Result<String, Failure> {
    use sha2::Digest;
    let digest = sha2::Sha256::digest(std::fs::read(file)?);
    Ok(digest.iter().map(|byte| format!("{byte:02x}")).collect())
}

fn copy(from: &Path, to: &Path) -> Result<(), Failure> {
    for entry in std::fs::read_dir(from)? {
        let entry = entry?;
        let target = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            std::fs::create_dir(&target)?;
            copy(&entry.path(), &target)?;
        } else {
            std::fs::copy(entry.path(), target)?;
        }
    }
    Ok(())
}

/// The names under which the browser keeps versions of the app.
async fn kept_versions(page: &Page) -> Result<Value, Failure> {
    page.script("return caches.keys()", Vec::new()).await
}

/// A file of the app as the page gets it.
async fn manifest(page: &Page) -> Result<String, Failure> {
    let text = page
        .script(
            "return fetch('manifest.webmanifest').then(answer => answer.text())",
            Vec::new(),
        )
        .await?;
    Ok(text.as_str().unwrap_or_default().to_owned())
}

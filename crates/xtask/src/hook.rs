//! What is done to the app when Trunk has put it together: the loader moves out of the page, so that a strict content-security
//! policy holds, and the service worker learns which files to keep.

use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use crate::app::{collect, hex};
use crate::error::Error;

/// Lines of the service worker that the build fills in.
const FILES_LINE: &str = "const files = {};";
const VERSION_LINE: &str = "const version = \"unbuilt\";";

/// Called by Trunk with the folder it has built in `TRUNK_STAGING_DIR` and where it is to stand in `TRUNK_PUBLIC_URL`.
pub fn after_trunk() -> Result<(), Error> {
    let missing = Error::Usage {
        wanted: "TRUNK_STAGING_DIR and TRUNK_PUBLIC_URL; Trunk calls this job",
    };
    let (Some(staging), Ok(base)) = (
        std::env::var_os("TRUNK_STAGING_DIR").map(PathBuf::from),
        std::env::var("TRUNK_PUBLIC_URL"),
    ) else {
        return Err(missing);
    };
    move_loader(&staging, &base)?;
    list_files(&staging)
}

fn move_loader(staging: &Path, base: &str) -> Result<(), Error> {
    let index = staging.join("index.html");
    let page = std::fs::read_to_string(&index).map_err(Error::at(&index))?;
    let (page, loader) = extract_loader(&page, base)?;
    // The loader also starts the worker for long work, which has no window to put names into.
    let loader = to_the_folder(base) + &loader.replace("window.", "globalThis.");
    let name = format!("start-{}.js", &hex(&Sha256::digest(&loader))[..16]);
    let page = page.replace(LOADER_MARK, &name);
    let file = staging.join(&name);
    std::fs::write(&file, loader).map_err(Error::at(&file))?;
    std::fs::write(&index, page).map_err(Error::at(&index))
}

/// Stands for the loader's name until that is known.
const LOADER_MARK: &str = "{loader}";

/// The page with a reference in place of the inline loader and without nonces, and the loader.
fn extract_loader(page: &str, base: &str) -> Result<(String, String), Error> {
    let missing = |what| Error::Page { what };
    let page = without_nonces(page);
    let open = page
        .find("<script type=\"module\">")
        .ok_or(missing("one inline module script"))?;
    let body = open + "<script type=\"module\">".len();
    let length = page[body..]
        .find("</script>")
        .ok_or(missing("the end of that script"))?;
    let loader = page[body..body + length].trim().to_owned() + "\n";
    let rest = &page[body + length..];
    if rest.matches("<script").any(|_| true) || page.contains("<style") || page.contains(" style=")
    {
        return Err(missing("a page without other scripts or styles in it"));
    }
    // On what every other address of the page stands.
    let reference = format!("<script type=\"module\" src=\"{base}{LOADER_MARK}\">");
    Ok((format!("{}{reference}{rest}", &page[..open]), loader))
}

/// Where the app was built for one folder: goes there if a host has served the page at the folder's address without its last slash,
/// from where the relative addresses of the service worker and the manifest would lead beside the folder.
fn to_the_folder(base: &str) -> String {
    let Some(bare) = base
        .strip_suffix('/')
        .filter(|bare| bare.len() > 1 && bare.starts_with('/'))
    else {
        return String::new();
    };
    let (bare, base) = (serde_json::Value::from(bare), serde_json::Value::from(base));
    format!(
        "if (location.pathname === {bare}) {{\n  location.replace({base} + location.search + location.hash);\n  await new Promise(() => {{}});\n}}\n"
    )
}

fn without_nonces(page: &str) -> String {
    let mut out = String::with_capacity(page.len());
    let mut rest = page;
    while let Some(start) = rest.find(" nonce=\"") {
        let value = start + " nonce=\"".len();
        let Some(end) = rest[value..].find('"') else {
            break;
        };
        out.push_str(&rest[..start]);
        rest = &rest[value + end + 1..];
    }
    out.push_str(rest);
    out
}

fn list_files(staging: &Path) -> Result<(), Error> {
    let worker = staging.join("sw.js");
    let code = std::fs::read_to_string(&worker).map_err(Error::at(&worker))?;
    let mut paths = Vec::new();
    collect(staging, &mut paths)?;
    paths.retain(|path| *path != worker);
    paths.sort();
    let mut list = serde_json::Map::new();
    for path in paths {
        let bytes = std::fs::read(&path).map_err(Error::at(&path))?;
        let name = path
            .strip_prefix(staging)
            .unwrap_or(&path)
            .to_string_lossy()
            .replace('\\', "/");
        list.insert(name, hex(&Sha256::digest(bytes)).into());
    }
    let list = serde_json::Value::Object(list).to_string();
    let version = &hex(&Sha256::digest(format!("{list}{code}")))[..16];
    let filled = fill(
        &fill(&code, FILES_LINE, &format!("const files = {list};"))?,
        VERSION_LINE,
        &format!("const version = \"{version}\";"),
    )?;
    std::fs::write(&worker, filled).map_err(Error::at(&worker))
}

fn fill(code: &str, line: &str, with: &str) -> Result<String, Error> {
    if code.matches(line).count() != 1 {
        return Err(Error::Page {
            what: "the lines of sw.js that the build fills in",
        });
    }
    Ok(code.replace(line, with))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<head><link rel=\"modulepreload\" href=\"./a.js\" nonce=\"x\" integrity=\"y\"></head><body>\
        <script type=\"module\" nonce=\"x\">\nimport init from './a.js';\n</script></body>";

    #[test]
    fn the_loader_leaves_the_page() {
        let (page, loader) = extract_loader(PAGE, "./").unwrap();
        assert_eq!(loader, "import init from './a.js';\n");
        assert!(page.contains("<script type=\"module\" src=\"./{loader}\"></script>"));
        assert!(!page.contains("nonce"));
        assert!(page.contains("integrity=\"y\""));
    }

    #[test]
    fn a_second_inline_script_stops_the_build() {
        let page = format!("{PAGE}<script>alert(1)</script>");
        assert!(matches!(
            extract_loader(&page, "./"),
            Err(Error::Page { .. })
        ));
    }

    #[test]
    fn only_an_app_built_for_one_folder_goes_there() {
        assert_eq!(to_the_folder("./"), "");
        assert_eq!(to_the_folder("/"), "");
        let step = to_the_folder("/some/folder/");
        assert!(step.starts_with("if (location.pathname === \"/some/folder\") {"));
        let (page, _) = extract_loader(PAGE, "/some/folder/").unwrap();
        assert!(page.contains("src=\"/some/folder/{loader}\""));
    }

    #[test]
    fn an_unfilled_worker_stops_the_build() {
        assert!(fill("nothing here", FILES_LINE, "x").is_err());
    }
}

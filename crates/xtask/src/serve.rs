//! Serving the built app from this machine.

use std::net::{IpAddr, Ipv4Addr, SocketAddr, UdpSocket};
use std::path::Path;

use axum::Router;
use axum::http::HeaderValue;
use axum::http::header::CACHE_CONTROL;
use tower_http::services::ServeDir;
use tower_http::set_header::SetResponseHeaderLayer;

use crate::app;
use crate::error::Error;

/// The port, unless another is asked for.
const PORT: u16 = 8080;

/// Builds the app and serves it.
pub fn app(lan: bool, port: Option<u16>) -> Result<(), Error> {
    let dist = app::build(None)?;
    folder(&dist, "/", lan, port)
}

/// Serves a folder at a path until it is told to stop. Prints the address when it listens.
pub fn folder(folder: &Path, base: &str, lan: bool, port: Option<u16>) -> Result<(), Error> {
    if !folder.join("index.html").is_file() {
        return Err(Error::Missing {
            tool: "index.html",
            why: format!("{} holds no built app", folder.display()),
            mend: "cargo xtask build".to_owned(),
        });
    }
    let port = port.unwrap_or(PORT);
    let failed = |source| Error::Serve { port, source };
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .map_err(failed)?;
    runtime.block_on(async {
        let host = if lan {
            Ipv4Addr::UNSPECIFIED
        } else {
            Ipv4Addr::LOCALHOST
        };
        let listener = tokio::net::TcpListener::bind(SocketAddr::new(IpAddr::V4(host), port))
            .await
            .map_err(failed)?;
        let port = listener.local_addr().map_err(failed)?.port();
        println!("Winterset: http://localhost:{port}{base}");
        if lan {
            tell_lan(port, base);
        }
        println!("Ctrl-C ends it.");
        // The browser asks each time, so that a new build is seen at once; the service worker keeps what it has checked.
        let fresh =
            SetResponseHeaderLayer::overriding(CACHE_CONTROL, HeaderValue::from_static("no-cache"));
        let files = ServeDir::new(folder);
        let router = match base.trim_end_matches('/') {
            "" => Router::new().fallback_service(files),
            path => Router::new().nest_service(path, files),
        };
        let router = router.layer(fresh);
        axum::serve(listener, router)
            .with_graceful_shutdown(async {
                // Without a way to hear Ctrl-C the process ends by the signal itself.
                let _ = tokio::signal::ctrl_c().await;
            })
            .await
            .map_err(failed)
    })
}

fn tell_lan(port: u16, base: &str) {
    match lan_address() {
        Some(address) => println!("On a phone in the same network: http://{address}:{port}{base}"),
        None => println!("No address in a local network was found."),
    }
    println!(
        "Over plain http a phone opens the app but neither installs it nor keeps it for working offline: browsers allow that only over\n\
         https. Any static host with https will do: `cargo xtask build`, then upload dist/. README.md has the steps."
    );
}

/// The address that this machine would use towards a local network. Nothing is sent.
fn lan_address() -> Option<IpAddr> {
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    // An address set aside for documentation (RFC 5737): connecting a datagram socket only picks the way out.
    socket.connect((Ipv4Addr::new(192, 0, 2, 1), 9)).ok()?;
    let address = socket.local_addr().ok()?.ip();
    (!address.is_unspecified() && !address.is_loopback()).then_some(address)
}

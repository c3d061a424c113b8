//! A QR code of a link, drawn as one path.

use std::fmt::Write;

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};
use winterset_words::Sending;
use yew::prelude::*;

/// The largest code: its modules are still 2.5 px wide on a phone of 360 px, which cameras read off a screen.
const LARGEST: u8 = 25;

/// Characters that the largest code takes (ISO/IEC 18004, table of capacities: version 25, level L, bytes).
const MOST: usize = 1273;

/// Light modules that a reader wants round a code (ISO/IEC 18004).
const MARGIN: i32 = 4;

/// Properties of [`Code`].
#[derive(PartialEq, Properties)]
pub struct CodeProps {
    /// What the code holds.
    pub link: AttrValue,
    /// What it leads to.
    pub name: AttrValue,
}

/// The code, or that the link is too long for one.
#[component]
pub fn Code(props: &CodeProps) -> Html {
    let t = crate::view::words().sending();
    let drawn = use_memo(props.link.clone(), |link| draw(link));
    html! {
        <div class="code" data-code="">
            { match drawn.as_ref() {
                Some(drawing) => picture(drawing, t, &props.name),
                None => html! { <p class="said">{ (t.code_too_long)(props.link.len(), MOST) }</p> },
            } }
        </div>
    }
}

fn picture(drawing: &Drawing, t: &Sending, name: &str) -> Html {
    let side = drawing.side;
    html! { <>
        <svg class="code__picture" viewBox={format!("0 0 {side} {side}")} role="img" aria-label={(t.code)(name)} shape-rendering="crispEdges">
            <rect class="code__ground" width={side.to_string()} height={side.to_string()} />
            <path class="code__ink" d={drawing.path.clone()} />
        </svg>
        <p class="part__note">{ t.code_note }</p>
    </> }
}

/// A code as a path of its dark modules, one unit each.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Drawing {
    side: i32,
    path: String,
}

/// The code of a text; `None` where it is too long for a phone to read.
fn draw(text: &str) -> Option<Drawing> {
    let code = QrCode::encode_segments_advanced(
        &QrSegment::make_segments(text),
        QrCodeEcc::Low,
        Version::MIN,
        Version::new(LARGEST),
        None,
        true,
    )
    .ok()?;
    let size = code.size();
    let mut path = String::new();
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let run = (x..size).take_while(|at| code.get_module(*at, y)).count();
            let run = i32::try_from(run).unwrap_or_default();
            if run > 0 {
                // Writing to a string does not fail.
                let _ = write!(path, "M{} {}h{run}v1h-{run}z", x + MARGIN, y + MARGIN);
            }
            x += run.max(1);
        }
    }
    Some(Drawing {
        side: size + 2 * MARGIN,
        path,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ISO/IEC 18004: version 1 has 21 modules a side, and its finder patterns start with seven dark modules.
    #[test]
    fn a_code_is_drawn_with_its_margin() {
        let Some(drawing) = draw("HELLO") else {
            panic!("no code");
        };
        assert_eq!(drawing.side, 21 + 8);
        assert!(drawing.path.starts_with("M4 4h7v1h-7z"), "{}", drawing.path);
    }

    #[test]
    fn a_link_that_is_too_long_has_no_code() {
        assert!(draw(&"a".repeat(MOST)).is_some());
        assert!(draw(&"a".repeat(MOST + 1)).is_none());
    }
}

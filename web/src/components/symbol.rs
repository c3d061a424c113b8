//! Symbols of equations, written with their indices lowered.

use yew::prelude::*;

/// Properties of [`Symbols`].
#[derive(PartialEq, Properties)]
pub struct SymbolsProps {
    /// An equation or a symbol in which `_` leads an index.
    pub text: AttrValue,
}

/// The text with what follows each `_` lowered.
#[component]
pub fn Symbols(props: &SymbolsProps) -> Html {
    pieces(&props.text)
        .into_iter()
        .map(|(plain, index)| html! { <>{ plain }if !index.is_empty() { <sub>{ index }</sub> }</> })
        .collect()
}

/// Plain text with the index that follows it.
fn pieces(text: &str) -> Vec<(String, String)> {
    let mut parts = text.split('_');
    let mut plain = parts.next().unwrap_or_default().to_owned();
    let mut pieces = Vec::new();
    for part in parts {
        let mut rest = part.chars().peekable();
        let mut index = String::new();
        while let Some(next) = rest.next_if(|c| c.is_alphanumeric() || *c == ',') {
            // A comma belongs to the index only where the index goes on behind it.
            if next == ',' && !rest.peek().is_some_and(|c| c.is_alphanumeric()) {
                pieces.push((std::mem::take(&mut plain), std::mem::take(&mut index)));
                plain.push(next);
                break;
            }
            index.push(next);
        }
        if !index.is_empty() {
            pieces.push((std::mem::take(&mut plain), index));
        }
        plain.extend(rest);
    }
    pieces.push((plain, String::new()));
    pieces
}

#[cfg(test)]
mod tests {
    use super::pieces;

    fn marked(text: &str) -> String {
        pieces(text)
            .into_iter()
            .map(|(plain, index)| {
                if index.is_empty() {
                    plain
                } else {
                    format!("{plain}[{index}]")
                }
            })
            .collect()
    }

    #[test]
    fn indices_end_where_words_end() {
        assert_eq!(marked("p = p_dew(T_e + 15 K)"), "p = p[dew](T[e] + 15 K)");
        assert_eq!(marked("p_dew(T_c,min)"), "p[dew](T[c,min])");
        assert_eq!(
            marked("max(p_valve, p_compressor)"),
            "max(p[valve], p[compressor])"
        );
        assert_eq!(marked("ε = Q / C"), "ε = Q / C");
    }
}

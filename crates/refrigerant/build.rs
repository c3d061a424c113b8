//! Turns the coefficient files under `data/` into constants (see `data/README.md` for their form).

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;
use std::{env, fs};

type Lines = Vec<Vec<String>>;

/// Kinds of residual term: keyword, field of `Terms`, count of numbers.
const KINDS: [(&str, &str, usize); 7] = [
    ("power", "power", 3),
    ("exponential", "exponential", 5),
    ("double", "double_exponential", 5),
    ("gaussian", "gaussian", 7),
    ("gerg", "gerg", 7),
    ("gaob", "gaob", 8),
    ("nonanalytic", "nonanalytic", 8),
];

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    println!("cargo::rerun-if-changed=data");
    if let Err(message) = generate() {
        println!("cargo::error={message}");
    }
}

fn generate() -> Result<(), String> {
    let data = Path::new("data");
    let mut fluids = Vec::new();
    let listing = fs::read_dir(data.join("fluids")).map_err(|e| e.to_string())?;
    for entry in listing {
        let path = entry.map_err(|e| e.to_string())?.path();
        if path.extension().is_some_and(|e| e == "eos") {
            let lines = read(&path)?;
            let designation = one(&lines, "designation")
                .ok_or_else(|| format!("{}: no designation", path.display()))?;
            fluids.push((designation[0].clone(), lines));
        }
    }
    fluids.sort_by_key(|(name, _)| order(name));
    let index: BTreeMap<String, usize> = fluids
        .iter()
        .enumerate()
        .map(|(i, (name, _))| (name.clone(), i))
        .collect();

    let mut out = String::new();
    write_fluids(&mut out, &fluids)?;
    let departures = write_departures(&mut out, &read(&data.join("departures.txt"))?)?;
    write_pairs(
        &mut out,
        &read(&data.join("pairs.txt"))?,
        &index,
        &fluids,
        &departures,
    )?;
    write_blends(&mut out, read(&data.join("blends.txt"))?, &index)?;

    write_uses(&mut out, &read(&data.join("uses.txt"))?)?;

    let target = env::var("OUT_DIR").map_err(|e| e.to_string())?;
    fs::write(Path::new(&target).join("coefficients.rs"), out).map_err(|e| e.to_string())
}

/// By number, as the standard lists them: digits first, then the letters after them; C318 and E170 last.
fn order(designation: &str) -> (bool, u32, String) {
    let bare = designation.trim_start_matches("R-");
    let digits: String = bare.chars().take_while(char::is_ascii_digit).collect();
    let rest = bare[digits.len()..].to_owned();
    (digits.is_empty(), digits.parse().unwrap_or(0), rest)
}

fn read(path: &Path) -> Result<Lines, String> {
    let text = fs::read_to_string(path).map_err(|e| format!("{}: {e}", path.display()))?;
    Ok(text
        .lines()
        .map(|line| line.split('#').next().unwrap_or_default())
        .map(|line| {
            line.split_whitespace()
                .map(str::to_owned)
                .collect::<Vec<_>>()
        })
        .filter(|words| !words.is_empty())
        .collect())
}

fn one<'a>(lines: &'a Lines, key: &str) -> Option<&'a [String]> {
    lines.iter().find(|l| l[0] == key).map(|l| &l[1..])
}

fn number(word: &str) -> Result<f64, String> {
    word.parse()
        .map_err(|_| format!("{word:?} is not a number"))
}

/// The numbers of each line of a kind, as a Rust slice of arrays.
fn arrays(lines: &[Vec<String>], key: &str, width: usize) -> Result<String, String> {
    let mut out = String::from("&[");
    for line in lines.iter().filter(|l| l[0] == key) {
        let mut numbers = line[1..]
            .iter()
            .map(|w| number(w))
            .collect::<Result<Vec<_>, _>>()?;
        if key == "exponential" && numbers.len() == 4 {
            numbers.push(1.0);
        }
        if numbers.len() != width {
            return Err(format!("{}: {width} numbers are expected", line.join(" ")));
        }
        if matches!(key, "exponential" | "double") && !(1.0..=8.0).contains(&numbers[3]) {
            return Err(format!("{}: l must be from 1 to 8", line.join(" ")));
        }
        write!(out, "{numbers:?},").map_err(|e| e.to_string())?;
    }
    out.push(']');
    Ok(out)
}

fn terms(lines: &[Vec<String>]) -> Result<String, String> {
    let mut out = String::from("Terms {");
    for (key, field, width) in KINDS {
        write!(out, "{field}: {},", arrays(lines, key, width)?).map_err(|e| e.to_string())?;
    }
    out.push('}');
    Ok(out)
}

fn safety(class: &str) -> String {
    match class {
        "-" => "None".to_owned(),
        class => format!("Some(SafetyClass::{class})"),
    }
}

fn capitalised(word: &str) -> String {
    let (first, rest) = word.split_at(1);
    first.to_uppercase() + rest
}

fn write_fluids(out: &mut String, fluids: &[(String, Lines)]) -> Result<(), String> {
    let known = [
        "designation",
        "safety",
        "family",
        "molar_mass",
        "gas_constant",
        "reducing",
        "critical",
        "acentric",
        "limits",
        "ideal_constant",
        "ideal_power",
        "ideal_einstein",
    ];
    writeln!(out, "pub static FLUIDS: [Fluid; {}] = [", fluids.len()).map_err(|e| e.to_string())?;
    for (name, lines) in fluids {
        for line in lines {
            let key = line[0].as_str();
            if !known.contains(&key) && !KINDS.iter().any(|(k, _, _)| *k == key) {
                return Err(format!(
                    "{name}: {key:?} is no line of an equation of state"
                ));
            }
        }
        let get = |key: &str, i: usize| -> Result<f64, String> {
            one(lines, key)
                .and_then(|words| words.get(i))
                .ok_or_else(|| format!("{name}: {key} is missing"))
                .and_then(|word| number(word))
        };
        let class = one(lines, "safety").ok_or_else(|| format!("{name}: safety is missing"))?;
        let family = one(lines, "family").ok_or_else(|| format!("{name}: family is missing"))?;
        writeln!(
            out,
            "Fluid {{ designation: {name:?}, safety: {}, family: Family::{}, molar_mass: {:?}, gas_constant: {:?}, \
             reducing_temperature: {:?}, reducing_density: {:?}, critical_temperature: {:?}, \
             critical_pressure: {:?}, acentric: {:?}, triple_temperature: {:?}, \
             highest_temperature: {:?}, highest_pressure: {:?}, \
             ideal: Ideal {{ constant: {:?}, power: {}, einstein: {} }}, residual: {} }},",
            safety(&class[0]),
            capitalised(&family[0]),
            get("molar_mass", 0)?,
            get("gas_constant", 0)?,
            get("reducing", 0)?,
            get("reducing", 1)?,
            get("critical", 0)?,
            get("critical", 1)?,
            get("acentric", 0)?,
            get("limits", 0)?,
            get("limits", 1)?,
            get("limits", 2)?,
            get("ideal_constant", 0)?,
            arrays(lines, "ideal_power", 2)?,
            arrays(lines, "ideal_einstein", 2)?,
            terms(lines)?,
        )
        .map_err(|e| e.to_string())?;
    }
    out.push_str("];\n");
    Ok(())
}

fn write_departures(out: &mut String, lines: &Lines) -> Result<BTreeMap<String, usize>, String> {
    let mut index = BTreeMap::new();
    let blocks = lines.chunk_by(|_, next| next[0] != "departure");
    let mut body = String::new();
    for (i, block) in blocks.enumerate() {
        index.insert(block[0][1].clone(), i);
        writeln!(body, "{},", terms(&block[1..])?).map_err(|e| e.to_string())?;
    }
    writeln!(
        out,
        "pub static DEPARTURES: [Terms; {}] = [{body}];",
        index.len()
    )
    .map_err(|e| e.to_string())?;
    Ok(index)
}

fn write_pairs(
    out: &mut String,
    lines: &Lines,
    fluids: &BTreeMap<String, usize>,
    data: &[(String, Lines)],
    departures: &BTreeMap<String, usize>,
) -> Result<(), String> {
    let find = |name: &str| {
        fluids
            .get(name)
            .copied()
            .ok_or_else(|| format!("{name} has no equation of state"))
    };
    let reducing = |i: usize| -> Result<(f64, f64), String> {
        let words = one(&data[i].1, "reducing").ok_or("reducing is missing")?;
        Ok((number(&words[0])?, 1.0 / number(&words[1])?))
    };
    let mut body = String::new();
    for line in lines {
        let (a, b) = (find(&line[1])?, find(&line[2])?);
        let (parameters, rest) = match line[0].as_str() {
            // Lemmon & Jacobsen 2004 give T_r = Σ x_i T_i + Σ x_i x_j ξ_ij and the same for v_r with ζ_ij; the gammas below
            // put that into the form of Kunz & Wagner.
            "xi" => {
                let ((ta, va), (tb, vb)) = (reducing(a)?, reducing(b)?);
                let gamma_t = (ta + tb + number(&line[3])?) / (2.0 * (ta * tb).sqrt());
                let gamma_v =
                    (va + vb + number(&line[4])?) / (0.25 * (va.cbrt() + vb.cbrt()).powi(3));
                ([1.0, gamma_t, 1.0, gamma_v], &line[5..])
            }
            "beta" => (
                [
                    number(&line[3])?,
                    number(&line[4])?,
                    number(&line[5])?,
                    number(&line[6])?,
                ],
                &line[7..],
            ),
            other => return Err(format!("pairs.txt: {other:?} is no kind of pair")),
        };
        let departure = match rest {
            [] => "None".to_owned(),
            [name, factor] => {
                let i = departures
                    .get(name)
                    .ok_or_else(|| format!("{name} is no departure function"))?;
                format!("Some((&DEPARTURES[{i}], {:?}))", number(factor)?)
            }
            _ => return Err(format!("{}: a departure needs its factor", line.join(" "))),
        };
        writeln!(
            body,
            "BinaryPair {{ first: {a}, second: {b}, beta_t: {:?}, gamma_t: {:?}, beta_v: {:?}, \
             gamma_v: {:?}, departure: {departure} }},",
            parameters[0], parameters[1], parameters[2], parameters[3]
        )
        .map_err(|e| e.to_string())?;
    }
    writeln!(
        out,
        "pub static PAIRS: [BinaryPair; {}] = [{body}];",
        lines.len()
    )
    .map_err(|e| e.to_string())
}

fn write_blends(
    out: &mut String,
    mut lines: Lines,
    fluids: &BTreeMap<String, usize>,
) -> Result<(), String> {
    lines.sort_by_key(|line| order(&line[0]));
    let mut body = String::new();
    for line in &lines {
        let mut parts = String::new();
        let mut sum = 0.0;
        for part in line[2..].chunks(2) {
            let [name, percent] = part else {
                return Err(format!("{}: a component without its share", line[0]));
            };
            let i = fluids
                .get(name)
                .ok_or_else(|| format!("{}: {name} has no equation of state", line[0]))?;
            sum += number(percent)?;
            write!(parts, "({i}, {:?}),", number(percent)? / 100.0).map_err(|e| e.to_string())?;
        }
        if (sum - 100.0f64).abs() > 1e-9 {
            return Err(format!("{} adds up to {sum} %", line[0]));
        }
        writeln!(
            body,
            "Blend {{ designation: {:?}, safety: {}, parts: &[{parts}] }},",
            line[0],
            safety(&line[1])
        )
        .map_err(|e| e.to_string())?;
    }
    writeln!(
        out,
        "pub static BLENDS: [Blend; {}] = [{body}];",
        lines.len()
    )
    .map_err(|e| e.to_string())
}

fn write_uses(out: &mut String, lines: &Lines) -> Result<(), String> {
    let mut body = String::new();
    for line in lines {
        writeln!(body, "({:?}, {:?}),", line[0], line[1..].join(" ")).map_err(|e| e.to_string())?;
    }
    writeln!(
        out,
        "pub static USES: [(&str, &str); {}] = [{body}];",
        lines.len()
    )
    .map_err(|e| e.to_string())
}

//! What an object of a request holds, key by key.

use serde_json::{Map, Value};

use super::{Outcome, WireError};

/// An object that holds no keys but those it may. A key whose value is null counts as left out.
#[derive(Clone, Copy)]
pub struct Body<'a>(&'a Map<String, Value>);

impl<'a> Body<'a> {
    /// The object at `name`, which takes these keys and no others.
    pub fn new(name: &str, value: &'a Value, takes: &[&str]) -> Outcome<Self> {
        let takes_list = || match takes {
            [] => "no keys".to_owned(),
            keys => keys.join(", "),
        };
        let Some(object) = value.as_object() else {
            let message = format!("{name} takes an object with {}", takes_list());
            return Err(WireError::new("bad_form", name, message));
        };
        match object.keys().find(|key| !takes.contains(&key.as_str())) {
            Some(unknown) => {
                let message = format!("{name} has no such key; it takes {}", takes_list());
                Err(WireError::new("unknown_key", unknown, message))
            }
            None => Ok(Self(object)),
        }
    }

    /// Every key with its value.
    pub fn entries(self) -> impl Iterator<Item = (&'a String, &'a Value)> {
        self.0.iter()
    }

    /// The value of a key.
    pub fn value(self, key: &str) -> Option<&'a Value> {
        self.0.get(key).filter(|value| !value.is_null())
    }

    /// A text.
    pub fn text(self, key: &str) -> Outcome<Option<&'a str>> {
        self.read(key, key, Value::as_str, "a text is wanted")
    }

    /// A number above zero: a thermodynamic temperature or an absolute pressure.
    pub fn positive(self, key: &str) -> Outcome<Option<f64>> {
        self.value(key)
            .map(|value| positive(key, value))
            .transpose()
    }

    /// Any number.
    pub fn number(self, key: &str) -> Outcome<Option<f64>> {
        self.read(key, key, Value::as_f64, "a number is wanted")
    }

    /// A list of numbers above zero.
    pub fn positives(self, key: &str) -> Outcome<Option<Vec<f64>>> {
        let list = self.read(key, key, Value::as_array, "a list of numbers is wanted")?;
        list.map(|items| {
            let numbered = items.iter().enumerate();
            numbered
                .map(|(index, item)| positive(&format!("{key}[{index}]"), item))
                .collect()
        })
        .transpose()
    }

    /// Numbers by name.
    pub fn shares(self, key: &str) -> Outcome<Option<Vec<(&'a str, f64)>>> {
        let wanted = "an object with a mass fraction for each component is wanted";
        let object = self.read(key, key, Value::as_object, wanted)?;
        object
            .map(|parts| {
                let read = |(name, share): (&'a String, &Value)| match share.as_f64() {
                    Some(share) => Ok((name.as_str(), share)),
                    None => Err(WireError::new("bad_form", key, wanted)),
                };
                parts.iter().map(read).collect()
            })
            .transpose()
    }

    /// The value of a key as `form` takes it; what does not fit is an error at `field`.
    pub fn read<T>(
        self,
        key: &str,
        field: &str,
        form: impl Fn(&'a Value) -> Option<T>,
        wanted: &str,
    ) -> Outcome<Option<T>> {
        self.value(key)
            .map(|value| form(value).ok_or_else(|| WireError::new("bad_form", field, wanted)))
            .transpose()
    }
}

fn positive(field: &str, value: &Value) -> Outcome<f64> {
    match value.as_f64() {
        Some(number) if number > 0.0 => Ok(number),
        Some(_) => {
            let message = "a number above zero is wanted";
            Err(WireError::new("out_of_range", field, message))
        }
        None => Err(WireError::new("bad_form", field, "a number is wanted")),
    }
}

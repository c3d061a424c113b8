//! JSON as it was written. A key given twice is refused: of two values one would be passed over in silence.

use std::cell::RefCell;
use std::fmt;

use serde::Deserializer;
use serde::de::{DeserializeSeed, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Value};

use super::{Outcome, WireError};

/// The one value of a line.
pub fn read(line: &[u8]) -> Outcome<Value> {
    let twice = RefCell::new(None);
    let mut reader = serde_json::Deserializer::from_slice(line);
    let value = Strict(&twice)
        .deserialize(&mut reader)
        .and_then(|value| reader.end().map(|()| value));
    value.map_err(|error| match twice.take() {
        Some(key) => WireError::new("duplicate_key", key, "give each key once"),
        None => WireError::new("not_json", "", error.to_string()),
    })
}

/// Reads a value; a key given twice is left in the cell.
#[derive(Clone, Copy)]
struct Strict<'a>(&'a RefCell<Option<String>>);

impl<'de> DeserializeSeed<'de> for Strict<'_> {
    type Value = Value;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Value, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Strict<'_> {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E>(self, value: bool) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_i64<E>(self, value: i64) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_u64<E>(self, value: u64) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_f64<E>(self, value: f64) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_str<E>(self, value: &str) -> Result<Value, E> {
        Ok(value.into())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element_seed(self)? {
            list.push(item);
        }
        Ok(list.into())
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Value, A::Error> {
        let mut object = Map::new();
        while let Some(key) = entries.next_key::<String>()? {
            let value = entries.next_value_seed(self)?;
            if object.contains_key(&key) {
                *self.0.borrow_mut() = Some(key);
                return Err(A::Error::custom("a key given twice"));
            }
            object.insert(key, value);
        }
        Ok(object.into())
    }
}

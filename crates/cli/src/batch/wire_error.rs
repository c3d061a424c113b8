//! Errors as they are answered.

use serde_json::{Value, json};
use winterset_profile::{FieldError, Problem};
use winterset_refrigerant::{Error as RefrigerantError, Quantity};
use winterset_words::{Language, PressureUnit, TemperatureUnit, Units};

/// What is wrong with a request.
#[derive(Debug, thiserror::Error)]
#[error("{field}{}{message}", if .field.is_empty() { "" } else { ": " })]
pub struct WireError {
    kind: &'static str,
    field: String,
    message: String,
}

/// Messages of the batch form are in °C and bar; its values are in SI.
const UNITS: Units = Units {
    temperature: TemperatureUnit::Celsius,
    pressure: PressureUnit::Bar,
};

impl WireError {
    /// An error of a kind at a field.
    pub fn new(kind: &'static str, field: impl Into<String>, message: impl Into<String>) -> Self {
        Self {
            kind,
            field: field.into(),
            message: message.into(),
        }
    }

    /// A refrigerant's error at a field.
    pub fn refrigerant(field: &'static str) -> impl Fn(RefrigerantError) -> Self {
        move |error| {
            let kind = match &error {
                RefrigerantError::UnknownRefrigerant { .. } => "unknown_refrigerant",
                RefrigerantError::CompositionSum { .. }
                | RefrigerantError::EmptyBlend
                | RefrigerantError::MassFraction { .. }
                | RefrigerantError::TooManyComponents { .. } => "composition",
                RefrigerantError::AboveCritical { .. } => "above_critical",
                RefrigerantError::OutOfRange { .. } => "out_of_range",
                RefrigerantError::NotConverged { .. } => "not_converged",
                _ => "refrigerant",
            };
            Self::new(kind, field, error.to_string())
        }
    }

    /// A refrigerant's error at a state, at whichever value it is about.
    pub fn at_state(error: RefrigerantError) -> Self {
        use RefrigerantError::{AboveCritical, NotConverged, OutOfRange};
        let field = match &error {
            OutOfRange { quantity, .. }
            | AboveCritical { quantity, .. }
            | NotConverged { quantity, .. } => match quantity {
                Quantity::Pressure => "pressure_Pa",
                Quantity::Density => "density_kg_m3",
                Quantity::Enthalpy => "enthalpy_J_kg",
                Quantity::Entropy => "entropy_J_kgK",
                Quantity::Quality => "quality",
                _ => "temperature_K",
            },
            _ => "temperature_K",
        };
        Self::refrigerant(field)(error)
    }

    /// The first error of a record's fields; the message holds them all.
    pub fn fields(errors: &[FieldError]) -> Self {
        let words = Language::English.words();
        let messages: Vec<String> = errors
            .iter()
            .map(|error| {
                let said = words.problem(error.field, &error.problem, UNITS);
                format!("{}: {said}", error.field.key())
            })
            .collect();
        let Some(first) = errors.first() else {
            return Self::new("invalid", "system", "the system cannot be read");
        };
        Self::new(
            kind_of(&first.problem),
            first.field.key(),
            messages.join(" "),
        )
    }

    /// The answer.
    pub fn into_json(self) -> Value {
        json!({ "error": { "kind": self.kind, "field": self.field, "message": self.message } })
    }
}

fn kind_of(problem: &Problem) -> &'static str {
    use winterset_calc::Problem as Calc;
    match problem {
        Problem::Missing => "missing",
        Problem::NotANumber { .. } => "not_a_number",
        Problem::Ambiguous { .. } => "ambiguous",
        Problem::UnknownUnit { .. } => "unknown_unit",
        Problem::NotWhole => "not_whole",
        Problem::UnknownChoice { .. } => "unknown_choice",
        Problem::UnknownRefrigerant { .. } => "unknown_refrigerant",
        Problem::BlendSum { .. } => "composition",
        Problem::EitherOr { .. } => "either_or",
        Problem::Coefficients(_) => "coefficients",
        Problem::Calc(Calc::OutOfRange { .. }) => "out_of_range",
        Problem::Calc(Calc::AboveCritical { .. }) => "above_critical",
        Problem::Calc(Calc::AboveEnvelope { .. }) => "above_envelope",
        Problem::Calc(Calc::HighestBelowNeed { .. }) => "highest_below_need",
        Problem::Calc(Calc::LiftTooHigh) => "lift_too_high",
        Problem::Calc(Calc::OverAmbientBelowGlide { .. }) => "over_ambient_below_glide",
        Problem::Calc(Calc::ColderThanAir { .. }) => "colder_than_air",
        Problem::Calc(Calc::LineTooThin) => "line_too_thin",
        Problem::Calc(Calc::DischargeTooHot) => "discharge_too_hot",
        Problem::Calc(Calc::SheetWithoutFlow) => "sheet_without_flow",
        Problem::Calc(Calc::ReturnAirTooCold { .. }) => "return_air_too_cold",
        Problem::Calc(Calc::EvaporatingAboveCondensing { .. }) => "evaporating_above_condensing",
        Problem::Calc(Calc::TooLittleAir { .. }) => "too_little_air",
        Problem::Calc(Calc::NoSynchronousSpeed { .. }) => "no_synchronous_speed",
        Problem::Calc(Calc::Refrigerant(_)) => "refrigerant",
    }
}

//! Flooding: the share of a condenser, the charge that takes, and the receiver that has to take it back.

use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use winterset_calc::flooding::{
    CondenserVolume, FILL_LIMIT, FloodingError, FloodingInput, ReceiverFit, Surface, Zones,
    flooding_charge, receiver_check,
};
use winterset_calc::{Basis, Given, SheetRule};
use winterset_profile::{Amount, Measure, Question};

use super::reader::{Reader, Wrong};
use super::{Answers, Found, saturation};
use crate::view::words;

/// What follows: a condensing temperature to hold, and the condenser's volume from its heat.
pub fn usual(reader: &Reader, question: Question) -> Option<Amount> {
    match question {
        Question::HeldCondensing => {
            let usual = uom::si::f64::ThermodynamicTemperature::new::<degree_celsius>(30.0);
            let refrigerant = reader.refrigerant().ok()?;
            let held = usual.min(saturation::condensing(&refrigerant));
            Some(Amount::new(Measure::Temperature, held.get::<kelvin>()))
        }
        Question::Warmest => {
            let refrigerant = reader.refrigerant().ok()?;
            let warmest = saturation::near(&refrigerant, 50.0, 1.0);
            Some(Amount::new(Measure::Temperature, warmest.get::<kelvin>()))
        }
        Question::CondenserVolume => {
            let volume = CondenserVolume::FromHeat {
                heat: reader.number(Question::HeatRejected).ok()?.value.power(),
                over_ambient: reader
                    .number(Question::OverAmbient)
                    .ok()?
                    .value
                    .difference(),
            };
            Some(Amount::new(
                Measure::Volume,
                volume.volume().ok()?.value.value,
            ))
        }
        _ => None,
    }
}

/// Share, charge and receiver.
pub fn answer(reader: &Reader) -> Answers {
    Answers {
        found: flooded(reader).unwrap_or_default(),
        notes: Vec::new(),
    }
}

fn flooded(reader: &Reader) -> Result<Vec<Found>, Wrong> {
    let labels = words().worksheets().labels();
    let refrigerant = reader.refrigerant()?;
    let held = reader.number(Question::HeldCondensing)?;
    let outdoor = reader.number(Question::Outdoor)?;
    let heat_share = reader.number(Question::HeatShare)?;
    let over_ambient = reader.number(Question::OverAmbient)?;
    let volume = reader.number(Question::CondenserVolume)?;
    let said = |error: FloodingError| said(reader, &error);
    let surface = Surface {
        over_ambient: over_ambient.value.difference(),
        heat_ratio: heat_share.value.si,
    };
    let (at, air) = (held.value.temperature(), outdoor.value.temperature());
    let share = surface.flooded_share(at, air).map_err(said)?;
    let zones = Zones::usual();
    let charge = flooding_charge(&refrigerant, volume.value.volume(), &zones, share, at, air)
        .map_err(said)?;
    let pressure = refrigerant
        .dew_pressure(at)
        .map_err(|error| reader.refused(Question::HeldCondensing, &error))?;
    let mut all = vec![
        Found::new(SheetRule::FloodedShare, Measure::Share, share)
            .given("r", heat_share)
            .reading("ΔT_0", over_ambient)
            .reading("T_c", held)
            .reading("T_o", outdoor)
            .strong(),
        Found::new(SheetRule::FloodingCharge, Measure::Mass, charge.extra.value)
            .reading("V", volume)
            .with("s", Measure::Share, share)
            .with("ρ_l", Measure::Density, charge.liquid.value)
            .with("ρ_0", Measure::Density, charge.unflooded.value)
            .strong(),
        Found::new(SheetRule::DewPressure, Measure::Pressure, pressure.value)
            .named(labels.held_pressure)
            .because(labels.held_pressure_reason)
            .reading("T", held),
    ];
    if volume.basis == Basis::Assumed {
        all.push(estimated_volume(reader, volume)?);
    }
    all.push(
        Found::new(
            SheetRule::FloodedLiquid,
            Measure::Density,
            charge.liquid.value,
        )
        .given("T_o", outdoor)
        .with("p", Measure::Pressure, pressure.value),
    );
    all.push(
        Found::new(
            SheetRule::Unflooded,
            Measure::Density,
            charge.unflooded.value,
        )
        .given("T", held),
    );
    all.extend(receiver(reader, charge.extra.value)?);
    Ok(all)
}

fn estimated_volume(reader: &Reader, volume: Given<Amount>) -> Result<Found, Wrong> {
    Ok(
        Found::new(SheetRule::CondenserVolume, Measure::Volume, volume.value.si)
            .like(reader, Question::CondenserVolume)
            .given("Q", reader.number(Question::HeatRejected)?)
            .given("ΔT_0", reader.number(Question::OverAmbient)?)
            .resting_on(Basis::Assumed),
    )
}

fn receiver(reader: &Reader, extra: f64) -> Result<Vec<Found>, Wrong> {
    let labels = words().worksheets().labels();
    let refrigerant = reader.refrigerant()?;
    let pumpdown = reader.number(Question::PumpdownCharge)?;
    let warmest = reader.number(Question::Warmest)?;
    let there = reader.open_number(Question::ReceiverVolume)?;
    let check = receiver_check(
        &refrigerant,
        Amount::new(Measure::Mass, extra).mass(),
        pumpdown.value.mass(),
        warmest.value.temperature(),
        there.map(|given| given.value.volume()),
    )
    .map_err(|error| match error {
        FloodingError::Refrigerant(error) => reader.refused(Question::Warmest, &error),
        error => said(reader, &error),
    })?;
    let needed = check.needed.value;
    let mut all = vec![
        Found::new(SheetRule::ReceiverNeeded, Measure::Volume, needed)
            .like(reader, Question::ReceiverVolume)
            .with("m", Measure::Mass, extra)
            .given("m_p", pumpdown)
            .with("ρ_bubble", Measure::Density, check.liquid.value)
            .given("T_w", warmest)
            .with("fill", Measure::Share, FILL_LIMIT),
    ];
    if let (Some(there), Some(fit)) = (there, check.fit) {
        let room = |volume: uom::si::f64::Volume| {
            Found::new(SheetRule::ReceiverRoom, Measure::Volume, volume.value)
                .like(reader, Question::ReceiverVolume)
                .given("V", there)
                .with("V_r", Measure::Volume, needed)
        };
        all.push(match fit {
            ReceiverFit::Fits { spare } => room(spare),
            ReceiverFit::Short { by } => room(by)
                .named(labels.receiver_short)
                .because(labels.receiver_short_reason)
                .strong(),
        });
    }
    Ok(all)
}

fn said(reader: &Reader, error: &FloodingError) -> Wrong {
    let question = match error {
        FloodingError::OutOfRange { input, .. } => match input {
            FloodingInput::OverAmbient => Question::OverAmbient,
            FloodingInput::Outdoor | FloodingInput::LiquidTemperature => Question::Outdoor,
            FloodingInput::HeatRatio => Question::HeatShare,
            FloodingInput::Heat => Question::HeatRejected,
            FloodingInput::CondenserVolume => Question::CondenserVolume,
            FloodingInput::Warmest => Question::Warmest,
            FloodingInput::ReceiverVolume => Question::ReceiverVolume,
            FloodingInput::Charge => Question::PumpdownCharge,
            _ => Question::HeldCondensing,
        },
        _ => Question::HeldCondensing,
    };
    let said = words()
        .worksheets()
        .flooding_error(error, reader.units(), reader.atmosphere());
    reader.wrong(question, said)
}

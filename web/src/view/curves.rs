//! A plan as curves along outdoor temperature, and the same as a table.

use winterset_calc::{Method, Plan, Quantity};
use winterset_profile::Kind;
use winterset_words::{Units, mark, screen, symbol};
use yew::{AttrValue, Callback};

use super::ladder::{Read, Sampled, pressure_unit};
use super::sheet::Writer;
use super::words;
use crate::components::chart::{ChartProps, Curve, Mark, Marker, Stroke, Tick};
use crate::components::scale::Scale;

/// The methods that are drawn: those that are read and, for comparison, no control at all; beside a lone one, speed control too.
pub fn drawn(read: Read) -> Vec<Method> {
    let mut drawn = vec![Method::FullFan];
    for method in [read.beside.unwrap_or(Method::SpeedControl), read.method] {
        if !drawn.contains(&method) {
            drawn.push(method);
        }
    }
    drawn
}

fn stroke(method: Method, read: Read) -> Stroke {
    if method == read.method {
        Stroke::Solid
    } else if read.beside == Some(method) {
        Stroke::Dashed
    } else if method == Method::FullFan {
        Stroke::Dotted
    } else {
        Stroke::Dashed
    }
}

/// Where the marker stands for a rung of the ladder: places run from cold to warm.
pub fn place_of(sampled: &Sampled, rung: usize) -> usize {
    sampled
        .places
        .iter()
        .rev()
        .position(|at| *at == rung as f64)
        .unwrap_or_default()
}

/// What the curves read at one place.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// Where, in a few words.
    pub place: String,
    /// Each method with what it does there.
    pub methods: Vec<(&'static str, String)>,
}

/// What the curves read at a place of the marker.
pub fn reading(plan: &Plan, sampled: &Sampled, units: Units, (read, at): (Read, usize)) -> Reading {
    let t = words().pictures();
    let writer = Writer::new(plan, units);
    let place = sampled.places.iter().rev().nth(at).copied();
    let rung = sampled.samples.iter().rev().nth(at);
    Reading {
        place: (t.read_at)(&outdoor_at(sampled, units, place.unwrap_or_default())),
        methods: rung
            .into_iter()
            .flat_map(|rung| {
                drawn(read)
                    .into_iter()
                    .rev()
                    .map(move |method| (rung, method))
            })
            .map(|(rung, method)| {
                let point = rung.of(method);
                let head = writer.show(Quantity::Pressure(point.pressure));
                let fan = writer.show(Quantity::Ratio(point.fan_speed_fraction));
                (
                    words().method(method).name,
                    (t.reads)(&head.to_string(), &fan.to_string()),
                )
            })
            .collect(),
    }
}

/// Outdoor temperature at a place on the ladder, as finely as the marker moves.
fn outdoor_at(sampled: &Sampled, units: Units, at: f64) -> String {
    let unit = symbol(units.unit(Kind::Temperature));
    format!("{}\u{a0}{unit}", mark(sampled.outdoor.number(at)))
}

/// Head pressure and fan speed along outdoor temperature; with the methods that are read and the place of the marker.
pub fn charts(
    plan: &Plan,
    sampled: &Sampled,
    units: Units,
    (read, at): (Read, usize),
) -> (ChartProps, ChartProps) {
    let t = screen();
    let writer = Writer::new(plan, units);
    let outdoor = &sampled.outdoor;
    let pressure = |quantity| units.number(&Quantity::Pressure(quantity), plan.atmosphere.value);
    let temperature =
        |quantity| units.number(&Quantity::Temperature(quantity), plan.atmosphere.value);
    let (warm, cold) = (
        outdoor.number(sampled.places.first().copied().unwrap_or_default()),
        outdoor.number(sampled.places.last().copied().unwrap_or_default()),
    );
    let x = Scale::new(cold, warm);
    let (_, marks) = Scale::round([cold, warm], 6);
    let x_ticks: Vec<Tick> = marks
        .into_iter()
        .filter(|value| x.covers(*value))
        .map(|value| (value, mark(value).into()))
        .collect();
    let curve = |method: Method, value: &dyn Fn(&winterset_calc::Point) -> f64| {
        let samples = sampled.places.iter().zip(&sampled.samples).rev();
        Curve {
            name: words().method(method).name.into(),
            stroke: stroke(method, read),
            points: samples
                .map(|(at, rung)| (outdoor.number(*at), value(rung.of(method))))
                .collect(),
            band: Vec::new(),
        }
    };
    let need = pressure(plan.need.pressure.value);
    let heads = sampled.samples.iter().flat_map(|rung| {
        drawn(read)
            .into_iter()
            .map(|method| pressure(rung.of(method).pressure))
    });
    let (head_scale, head_ticks) = Scale::round(heads.chain([need]), 5);
    let limit = plan.hold.of(read.method).value;
    let posts: Vec<Mark> = [
        (temperature(limit), t.hold_limit, "post-hold"),
        (temperature(plan.input.outdoor_low), t.site_low, "post-low"),
    ]
    .into_iter()
    .filter(|(at, ..)| (cold..=warm).contains(at))
    .map(|(at, name, class)| Mark {
        at,
        name: name.into(),
        class,
    })
    .collect();
    let marker = Marker {
        ask: words().pictures().marker.into(),
        places: sampled
            .places
            .iter()
            .rev()
            .map(|at| outdoor_at(sampled, units, *at).into())
            .collect(),
        at,
    };
    let across = format!("{}, {}", t.outdoor, symbol(units.unit(Kind::Temperature)));
    let head = ChartProps {
        summary: (t.head_summary)(
            &writer
                .show(Quantity::Pressure(plan.need.pressure.value))
                .to_string(),
            &writer.brief(limit),
        )
        .into(),
        across: across.clone().into(),
        up: format!("{}, {}", t.head_pressure, pressure_unit(units)).into(),
        x,
        x_ticks: x_ticks.clone(),
        y: head_scale,
        y_ticks: head_ticks
            .into_iter()
            .map(|tick| (tick, mark(tick).into()))
            .collect(),
        curves: drawn(read)
            .into_iter()
            .map(|method| {
                let mut drawn = curve(method, &|point| pressure(point.pressure));
                drawn.band = sampled
                    .places
                    .iter()
                    .zip(&sampled.samples)
                    .filter_map(|(at, rung)| {
                        let (low, high) = rung.of(method).swing?;
                        Some((outdoor.number(*at), pressure(low), pressure(high)))
                    })
                    .collect();
                drawn
            })
            .collect(),
        levels: vec![Mark {
            at: need,
            name: t.need.into(),
            class: "level-need",
        }],
        posts: posts.clone(),
        marker: marker.clone(),
        read: Callback::noop(),
    };
    let percent = |share: f64| (share * 100.0, AttrValue::from(mark(share * 100.0)));
    let fan = ChartProps {
        summary: (t.fan_summary)(
            &writer
                .show(Quantity::Ratio(plan.settings.drive.minimum_output().value))
                .to_string(),
        )
        .into(),
        across: across.into(),
        up: t.fan_share.into(),
        x,
        x_ticks,
        y: Scale::new(0.0, 105.0),
        y_ticks: [0.0, 0.25, 0.5, 0.75, 1.0].map(percent).to_vec(),
        curves: drawn(read)
            .into_iter()
            .map(|method| curve(method, &|point| 100.0 * point.fan_speed_fraction))
            .collect(),
        levels: Vec::new(),
        posts,
        marker,
        read: Callback::noop(),
    };
    (head, fan)
}

/// One row of the table.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Outdoor temperature.
    pub outdoor: String,
    /// Head pressure and fan share of each method.
    pub methods: Vec<(String, String)>,
}

/// The rungs as a table.
pub fn table(plan: &Plan, sampled: &Sampled, units: Units, read: Read) -> Vec<Row> {
    let writer = Writer::new(plan, units);
    sampled
        .rungs
        .iter()
        .map(|rung| Row {
            outdoor: writer.brief(rung.of(read.method).outdoor),
            methods: drawn(read)
                .into_iter()
                .map(|method| {
                    let point = rung.of(method);
                    (
                        writer.show(Quantity::Pressure(point.pressure)).number,
                        writer
                            .show(Quantity::Ratio(point.fan_speed_fraction))
                            .to_string(),
                    )
                })
                .collect(),
        })
        .collect()
}

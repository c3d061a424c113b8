//! The saturation curves of a composition, traced once and kept as guesses for every later question.
//!
//! Both curves are followed in D = ln(ρ_liquid/ρ_vapour), which falls from about 14 in the cold to 0 at the critical point; temperature,
//! pressure and densities are smooth in D even at the critical point, where they are not in temperature. Between nodes a cubic
//! Hermite polynomial gives a guess so near that Newton's method, which makes every answer for a blend, needs one or two steps; for a pure
//! fluid those answers are kept in turn as polynomials good to rounding.

use super::Stalled;
use super::chebyshev::Fit;
use super::critical::{self, Critical};
use super::equilibrium::{Hold, Point, ROOM, Side, Unknowns, converge};
use super::start::{at_temperature, first_point, log_ratio};
use crate::model::mixture::Mixture;

/// Step of D in the cold.
const COARSE: f64 = 0.2;
/// Most nodes of a curve; five times what the longest known one needs.
const MOST_NODES: usize = 500;
/// Nodes of D near the critical point. The last is the nearest for which an answer is given; for a pure fluid T is there about
/// 2.5·10⁻⁵ below critical.
const FINE: [f64; 14] = [
    0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.14, 0.1, 0.07, 0.05, 0.035, 0.02,
];

/// Values along a curve: the unknowns, then ln p.
const COLUMNS: usize = ROOM + 1;

/// A point of a curve with its derivatives by D.
#[derive(Clone, Copy, Debug)]
struct Node {
    d: f64,
    value: [f64; COLUMNS],
    slope: [f64; COLUMNS],
}

impl Node {
    fn of(point: &Point, d: f64) -> Node {
        let mut node = Node {
            d,
            value: [0.0; COLUMNS],
            slope: [0.0; COLUMNS],
        };
        node.value[..ROOM].copy_from_slice(&point.unknowns);
        node.slope[..ROOM].copy_from_slice(&point.slope);
        node.value[ROOM] = point.ln_p;
        node.slope[ROOM] = point.ln_p_slope;
        node
    }
}

/// One of the two curves, from the critical point into the cold.
#[derive(Clone, Debug)]
struct Curve {
    side: Side,
    nodes: Vec<Node>,
}

/// Which column a question gives.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Given {
    Temperature,
    Pressure,
}

/// Why a question has no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outside {
    /// Below the coldest node; the lowest value that has an answer.
    Below(f64),
    /// Above the highest value on the curve, which is given.
    Above(f64),
    /// Newton's method failed.
    Stalled,
}

/// Both saturation curves of a composition.
#[derive(Clone, Debug)]
pub struct Envelope {
    z: Vec<f64>,
    bubble: Curve,
    /// `None` for a pure fluid, whose dew curve is the bubble curve.
    dew: Option<Curve>,
    /// Where the curves meet.
    pub critical: Critical,
    /// Of a pure fluid, by θ = √(1 − T/T_c): ln ρ of the vapour, ln ρ of the liquid, ln p.
    fit: Option<Fit<3>>,
}

impl Envelope {
    /// Traces both curves down to a temperature, K.
    pub fn trace(mixture: &Mixture, z: &[f64], lowest: f64) -> Result<Envelope, Stalled> {
        let mut bubble = Curve::trace(mixture, z, Side::Bubble, lowest)?;
        let mut dew = Curve::trace(mixture, z, Side::Dew, lowest)?;
        // A curve that ends early says nothing of the critical point.
        let near = |curve: &Curve, other: &Curve| {
            let nodes = if curve.nodes[0].d > other.nodes[0].d {
                &[]
            } else {
                curve.nodes.as_slice()
            };
            // Far from the critical point a parabola is the better judge.
            let count = if curve.complete() { 4 } else { 2 };
            nodes
                .iter()
                .take(count)
                .map(|n| (n.d, n.value))
                .collect::<Vec<_>>()
        };
        let end = critical::between(&near(&bubble, &dew), &near(&dew, &bubble));
        for curve in [&mut bubble, &mut dew] {
            let mut node = curve.nodes[0];
            if curve.complete() {
                node = Node {
                    d: 0.0,
                    value: end.value,
                    slope: end.slope,
                };
                if curve.side == Side::Dew {
                    node.slope.iter_mut().for_each(|s| *s = -*s);
                }
            }
            curve.nodes.insert(0, node);
        }
        let mut envelope = Envelope {
            fit: None,
            z: z.to_vec(),
            dew: (z.len() > 1).then_some(dew),
            bubble,
            critical: Critical {
                temperature: end.value[z.len() + 1].exp(),
                density: end.value[z.len()].exp(),
                pressure: end.value[ROOM].exp(),
            },
        };
        if z.len() == 1 {
            envelope.fit = Some(envelope.fitted(mixture, lowest));
        }
        Ok(envelope)
    }

    fn theta(&self, temperature: f64) -> f64 {
        (1.0 - temperature / self.critical.temperature).sqrt()
    }

    /// The curve of a pure fluid in polynomials that need no iteration.
    fn fitted(&self, mixture: &Mixture, lowest: f64) -> Fit<3> {
        let highest = self.highest(Side::Bubble, Given::Temperature);
        Fit::new(self.theta(highest), self.theta(lowest), &|theta| {
            let t = self.critical.temperature * (1.0 - theta * theta);
            let point = self.iterate(mixture, Side::Bubble, Given::Temperature, t);
            let point = point.ok()?;
            Some([point.unknowns[0], point.unknowns[1], point.ln_p])
        })
    }

    /// The point of a pure fluid by those polynomials, where they reach.
    fn fitted_point(&self, given: Given, value: f64) -> Option<Point> {
        let fit = self.fit.as_ref()?;
        let theta = match given {
            Given::Temperature => self.theta(value),
            Given::Pressure => fit.find(2, value.ln())?,
        };
        let [vapor, liquid, ln_p] = fit.at(theta)?;
        let mut unknowns = [0.0; ROOM];
        let t = self.critical.temperature * (1.0 - theta * theta);
        unknowns[..3].copy_from_slice(&[vapor, liquid, t.ln()]);
        Some(Point {
            unknowns,
            slope: [0.0; ROOM],
            ln_p,
            ln_p_slope: 0.0,
        })
    }

    fn curve(&self, side: Side) -> &Curve {
        match (side, &self.dew) {
            (Side::Dew, Some(dew)) => dew,
            _ => &self.bubble,
        }
    }

    /// The point of a curve with a given temperature, K, or pressure, Pa.
    ///
    /// For a pure fluid always the bubble point, whose incipient phase is the saturated vapour.
    pub fn find(
        &self,
        mixture: &Mixture,
        side: Side,
        given: Given,
        value: f64,
    ) -> Result<Point, Outside> {
        match self.fitted_point(given, value) {
            Some(point) => Ok(point),
            None => self.iterate(mixture, side, given, value),
        }
    }

    fn iterate(
        &self,
        mixture: &Mixture,
        side: Side,
        given: Given,
        value: f64,
    ) -> Result<Point, Outside> {
        let curve = self.curve(side);
        let n = self.z.len();
        let column = match given {
            Given::Temperature => n + 1,
            Given::Pressure => ROOM,
        };
        let ln = value.ln();
        let guess = curve.guess(column, ln)?;
        let hold = match given {
            Given::Temperature => Hold::Temperature(ln),
            Given::Pressure => Hold::Pressure(ln),
        };
        let mut unknowns = [0.0; ROOM];
        unknowns.copy_from_slice(&guess[..ROOM]);
        // A long way from the guess lies the trivial solution, or some other branch.
        let near = |point: &Point| {
            let pairs = unknowns.iter().zip(&point.unknowns);
            pairs.fold(0.0f64, |m, (a, b)| m.max((a - b).abs())) < 0.05
        };
        converge(mixture, &self.z, curve.side, hold, &unknowns)
            .ok()
            .filter(near)
            .or_else(|| {
                let t = unknowns[n + 1].exp();
                let fresh = at_temperature(mixture, &self.z, curve.side, t).ok()?;
                converge(mixture, &self.z, curve.side, hold, &fresh.unknowns).ok()
            })
            .ok_or(Outside::Stalled)
    }

    /// Density of the saturated liquid at a temperature by interpolation alone, good to about 10⁻⁵; a start for compressed liquid.
    pub fn liquid_density(&self, temperature: f64) -> Option<f64> {
        let n = self.z.len();
        let guess = self.bubble.guess(n + 1, temperature.ln()).ok()?;
        Some(guess[n].exp())
    }

    /// Highest value of a column on a curve that is answered.
    pub fn highest(&self, side: Side, given: Given) -> f64 {
        let column = match given {
            Given::Temperature => self.z.len() + 1,
            Given::Pressure => ROOM,
        };
        self.curve(side).highest(column).1.exp()
    }
}

impl Curve {
    fn trace(mixture: &Mixture, z: &[f64], side: Side, lowest: f64) -> Result<Curve, Stalled> {
        let n = z.len();
        let start = first_point(mixture, z, side)?;
        let first = log_ratio(&start, n, side);
        let start = converge(mixture, z, side, Hold::Ratio(first), &start.unknowns)?;
        let mut nodes = vec![Node::of(&start, first)];

        let mut here = nodes[0];
        while here.value[n + 1] > lowest.ln() {
            if nodes.len() > MOST_NODES {
                return Err(Stalled);
            }
            match step(mixture, z, side, &here, here.d + COARSE) {
                Ok(next) if next.value[n + 1] < here.value[n + 1] => {
                    here = next;
                    nodes.push(here);
                }
                _ => {
                    here = restart(mixture, z, side, &here)?;
                    join(mixture, z, side, &mut nodes, here);
                }
            }
        }
        let mut here = nodes[0];
        let mut upper = Vec::new();
        while here.d > FINE[0] + COARSE {
            here = step(mixture, z, side, &here, here.d - COARSE)?;
            upper.push(here);
        }
        for d in FINE {
            // A few models unmix near the critical point, and the curve turns back before it: what lies below stands.
            match step(mixture, z, side, &here, d) {
                Ok(next) => here = next,
                Err(Stalled) => break,
            }
            upper.push(here);
        }
        upper.reverse();
        upper.extend(nodes);
        Ok(Curve { side, nodes: upper })
    }

    /// Whether it was followed all the way to the critical point.
    fn complete(&self) -> bool {
        self.nodes[0].d <= FINE[FINE.len() - 1]
    }

    /// The node with the highest value of the column, and that value; the critical point itself, node 0, is left out.
    fn highest(&self, column: usize) -> (usize, f64) {
        let mut best = (1, self.nodes[1].value[column]);
        for (i, node) in self.nodes.iter().enumerate().skip(2) {
            if node.value[column] > best.1 {
                best = (i, node.value[column]);
            } else {
                break;
            }
        }
        best
    }

    /// Values along the curve where a column has a given value, on the part that rises monotonically out of the cold.
    fn guess(&self, column: usize, value: f64) -> Result<[f64; COLUMNS], Outside> {
        let (from, highest) = self.highest(column);
        if value > highest {
            return Err(Outside::Above(highest.exp()));
        }
        let nodes = &self.nodes[from..];
        let i = nodes.partition_point(|node| node.value[column] > value);
        if i == nodes.len() {
            let last = nodes.last().map_or(0.0, |n| n.value[column]);
            return Err(Outside::Below(last.exp()));
        }
        let (a, b) = (&nodes[i.max(1) - 1], &nodes[i.max(1)]);
        Ok(hermite_where(a, b, column, value))
    }
}

/// How far a step may depart from the trapezium of the slopes at its ends: on one smooth curve it is of third order in the step, so a
/// larger departure means that Newton's method has landed on another branch.
const DEPARTURE: f64 = 3e-3;

/// From a node to a given D by Newton from the tangent; a step that fails is halved.
fn step(mixture: &Mixture, z: &[f64], side: Side, from: &Node, to: f64) -> Result<Node, Stalled> {
    let mut here = *from;
    let mut stride = to - from.d;
    let mut halvings = 0;
    while (to - here.d).abs() > 1e-9 {
        let next = if (to - here.d).abs() < stride.abs() * 1.5 {
            to
        } else {
            here.d + stride
        };
        let mut guess: Unknowns = [0.0; ROOM];
        for (k, g) in guess.iter_mut().enumerate() {
            *g = here.value[k] + (next - here.d) * here.slope[k];
        }
        match converge(mixture, z, side, Hold::Ratio(next), &guess) {
            Ok(point) if halvings > 8 || smooth(&here, &Node::of(&point, next)) => {
                here = Node::of(&point, next);
            }
            Err(Stalled) if halvings > 8 => return Err(Stalled),
            _ => {
                halvings += 1;
                stride *= 0.5;
            }
        }
    }
    here.d = to;
    Ok(here)
}

fn smooth(a: &Node, b: &Node) -> bool {
    (0..ROOM).all(|k| {
        let trapezium = 0.5 * (b.d - a.d) * (a.slope[k] + b.slope[k]);
        (b.value[k] - a.value[k] - trapezium).abs() < DEPARTURE
    })
}

/// Takes up a curve again at a colder temperature where it cannot be followed: a liquid that unmixes in the cold makes the incipient
/// phase jump from one composition to another.
fn restart(mixture: &Mixture, z: &[f64], side: Side, from: &Node) -> Result<Node, Stalled> {
    let n = z.len();
    let t = from.value[n + 1].exp();
    (1..=8)
        .find_map(|k| {
            let point = at_temperature(mixture, z, side, t * (1.0 - 0.005 * f64::from(k))).ok()?;
            let d = log_ratio(&point, n, side);
            let point = converge(mixture, z, side, Hold::Ratio(d), &point.unknowns).ok()?;
            Some(Node::of(&point, d))
        })
        .ok_or(Stalled)
}

/// Adds a branch that begins in the cold: followed upwards to where it meets the curve so far, the rest of which is no longer stable. The
/// incipient phase that forms first is the stable one, at the higher pressure of a bubble and the lower of a dew point.
fn join(mixture: &Mixture, z: &[f64], side: Side, nodes: &mut Vec<Node>, coldest: Node) {
    let n = z.len();
    let mut branch = vec![coldest];
    let mut here = coldest;
    while let Ok(next) = step(mixture, z, side, &here, here.d - 0.1 * COARSE) {
        let t = next.value[n + 1];
        let i = nodes.partition_point(|node| node.value[n + 1] > t);
        let stable = match (i.checked_sub(1).map(|i| &nodes[i]), nodes.get(i)) {
            (Some(a), Some(b)) => {
                let so_far = hermite_where(a, b, n + 1, t)[ROOM];
                (next.value[ROOM] < so_far) == (side == Side::Dew)
            }
            (Some(_), None) => true,
            (None, _) => false,
        };
        if !stable || t <= here.value[n + 1] || branch.len() > MOST_NODES {
            break;
        }
        branch.push(next);
        here = next;
    }
    let meeting = here.value[n + 1];
    nodes.retain(|node| node.value[n + 1] > meeting);
    // Close nodes on the older branch too, so that the kink falls between near ones.
    for _ in 0..20 {
        let Some(last) = nodes.last() else { break };
        match step(mixture, z, side, last, last.d + 0.1 * COARSE) {
            Ok(next) if (meeting..last.value[n + 1]).contains(&next.value[n + 1]) => {
                nodes.push(next);
            }
            _ => break,
        }
    }
    nodes.extend(branch.into_iter().rev());
}

/// The values where one column, which falls from a to b, has a given value: Newton's method inside a bracket.
fn hermite_where(a: &Node, b: &Node, column: usize, value: f64) -> [f64; COLUMNS] {
    let (mut low, mut high) = (a.d, b.d);
    let mut d = 0.5 * (low + high);
    for _ in 0..60 {
        let at = hermite_column(a, b, d, column);
        if at.0 > value {
            low = d;
        } else {
            high = d;
        }
        let next = d - (at.0 - value) / at.1;
        let next = if next > low && next < high {
            next
        } else {
            0.5 * (low + high)
        };
        if (next - d).abs() < 1e-12 {
            break;
        }
        d = next;
    }
    hermite(a, b, d)
}

/// Cubic Hermite polynomial between two nodes.
fn hermite(a: &Node, b: &Node, d: f64) -> [f64; COLUMNS] {
    let mut out = [0.0; COLUMNS];
    for (k, out) in out.iter_mut().enumerate() {
        *out = hermite_column(a, b, d, k).0;
    }
    out
}

/// One column of it, with the derivative by D.
fn hermite_column(a: &Node, b: &Node, d: f64, k: usize) -> (f64, f64) {
    let h = b.d - a.d;
    let s = (d - a.d) / h;
    let (ma, mb) = (a.slope[k] * h, b.slope[k] * h);
    let rise = b.value[k] - a.value[k];
    let (c2, c3) = (3.0 * rise - 2.0 * ma - mb, ma + mb - 2.0 * rise);
    (
        a.value[k] + s * (ma + s * (c2 + s * c3)),
        (ma + s * (2.0 * c2 + s * 3.0 * c3)) / h,
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::algorithm::equilibrium::composition;
    use crate::algorithm::properties::pressure;
    use crate::data::{BLENDS, FLUIDS};

    /// Fugacities of both phases equal to 10⁻⁸ and pressures to what the liquid's stiffness leaves of it, on every blend, evaluated afresh.
    #[test]
    fn phases_in_equilibrium_have_equal_fugacities() {
        for blend in &BLENDS {
            let index: Vec<usize> = blend.parts.iter().map(|(i, _)| *i).collect();
            let moles: Vec<f64> = blend
                .parts
                .iter()
                .map(|(i, w)| w / FLUIDS[*i].molar_mass)
                .collect();
            let total: f64 = moles.iter().sum();
            let z: Vec<f64> = moles.iter().map(|m| m / total).collect();
            let mixture = Mixture::new(&index);
            let envelope = Envelope::trace(&mixture, &z, 173.15).expect(blend.designation);
            for side in [Side::Bubble, Side::Dew] {
                let high = envelope.highest(side, Given::Temperature);
                for i in 0..30 {
                    let t = 173.15 + (high - 173.15) * f64::from(i) / 29.0;
                    let point = envelope
                        .find(&mixture, side, Given::Temperature, t.min(high))
                        .expect(blend.designation);
                    let n = z.len();
                    let (t, rho) = (point.unknowns[n + 1].exp(), point.unknowns[n].exp());
                    let (rho_i, x) = composition(&point.unknowns[..n]);
                    let bulk = mixture.phase(t, rho, &z);
                    let other = mixture.phase(t, rho_i, &x[..n]);
                    for k in 0..n {
                        let gap = (z[k] * rho).ln() + bulk.ln_gamma[k]
                            - (x[k] * rho_i).ln()
                            - other.ln_gamma[k];
                        assert!(
                            gap.abs() < 1e-8,
                            "{} {side:?} {t} K: {gap}",
                            blend.designation
                        );
                    }
                    let gap = pressure(&mixture, t, rho, &bulk.bulk)
                        - pressure(&mixture, t, rho_i, &other.bulk);
                    let noise = 1e-12 * rho.max(rho_i) * mixture.gas_constant * t;
                    assert!(gap.abs() < 1e-8 * point.ln_p.exp() + 20.0 * noise);
                }
            }
        }
    }
}

//! What follows from a plan, as parts of its page.

use winterset_calc::comparison::Summary;
use winterset_calc::input::Sensing;
use winterset_calc::sensor_place::Outcome;
use winterset_calc::weather::{Bins, UsualYear};
use winterset_calc::{Method, PerMethod, Quantity};

use super::{Report, widths};

impl Report<'_> {
    /// What follows from the plan. A part that has no answer is left out.
    pub(super) fn advice(&mut self) {
        let t = self.words.advice();
        if let Ok(year) = UsualYear::new(self.plan.input.outdoor_low) {
            let bins = year.bins();
            let compared = self.plan.compare(&bins);
            self.head(t.methods);
            self.side_by_side(&compared);
            let summary = compared.of(self.plan.recommendation.method);
            self.compressor_off(&bins, summary);
        }
        self.head(t.lowers_need);
        self.levers();
        self.order();
        self.sensor_place();
        self.winter_start();
        self.fan_motor();
        self.head(t.accuracy);
        self.accuracy();
    }

    fn side_by_side(&mut self, compared: &PerMethod<Summary>) {
        let t = self.words.advice();
        let heads = [
            t.hold_limit,
            "",
            t.starts_an_hour,
            t.fan_energy,
            t.compressor_energy,
        ];
        // The words of the column without a head are as wide as one.
        let mut asked = heads;
        asked[1] = t.falls_short;
        let widths = widths([11, 13, 10, 14, 19], asked);
        self.compare("", widths, heads);
        for (method, summary) in compared.iter().filter(|(_, summary)| summary.applies) {
            let starts = summary
                .starts
                .map(|starts| self.units.starts_an_hour(starts).to_string());
            let cells = [
                self.show(Quantity::Temperature(summary.limit)),
                if summary.holds {
                    t.holds
                } else {
                    t.falls_short
                }
                .to_owned(),
                starts.unwrap_or_default(),
                self.units.energy(summary.fan_energy).to_string(),
                self.units.energy(summary.compressor_energy).to_string(),
            ];
            let name = self.words.method(method).name;
            self.compare(name, widths, cells.each_ref().map(String::as_str));
        }
        self.line(&format!("  {}", t.methods_note));
    }

    fn compare(&mut self, name: &str, widths: [usize; 5], cells: [&str; 5]) {
        let [w0, w1, w2, w3, w4] = widths;
        let [limit, holds, starts, fan, compressor] = cells;
        self.line(&format!(
            "  {name:<22}{limit:>w0$}{holds:>w1$}{starts:>w2$}{fan:>w3$}{compressor:>w4$}"
        ));
    }

    fn compressor_off(&mut self, bins: &Bins, summary: &Summary) {
        let Ok(Some(outcome)) = self.plan.free_cooling(bins, summary) else {
            return;
        };
        self.head(self.words.advice().compressor_off);
        let duty = self.plan.input.duty.value;
        let said = self.words.off(&outcome, duty, self.units);
        self.line(&format!("  {said}"));
    }

    fn levers(&mut self) {
        let t = self.words.advice();
        let levers = self.plan.levers();
        if levers.is_empty() {
            self.line(&format!("  {}", t.nothing_lowers));
        }
        for lever in levers {
            let words = self.words.change(lever.change);
            let need = self.show(Quantity::Pressure(lever.need));
            let limit = self.show(Quantity::Temperature(lever.limit));
            self.named(words.name, &(t.with_it)(&need, &limit));
            self.line(&format!("      {}", words.reason));
        }
    }

    fn order(&mut self) {
        let t = self.words.advice();
        let Ok(parts) = self.plan.order(self.plan.recommendation.method) else {
            return;
        };
        self.head(t.order);
        if parts.is_empty() {
            self.line(&format!("  {}", t.nothing_to_order));
        }
        for part in &parts {
            let ordered = self
                .words
                .part(part, self.units, self.plan.atmosphere.value);
            self.named(&ordered.name, &ordered.value);
        }
    }

    /// Where to put a sensor on the coil; a pressure is the same all along the line.
    fn sensor_place(&mut self) {
        let method = self.plan.recommendation.method;
        if self.plan.input.sensing.value != Sensing::CoilTemperature || !method.is_modulated() {
            return;
        }
        let Ok(Some(answer)) = self.plan.sensor_place(method) else {
            return;
        };
        let t = self.words.advice();
        self.head(t.sensor_place);
        match answer.outcome {
            Outcome::Confirmed { .. } => self.line(&format!("  {}", t.place_does)),
            Outcome::Refused { reasons } => {
                for reason in reasons {
                    let said = self.words.place(&reason, self.units);
                    self.line(&format!("  {said}"));
                }
            }
        }
    }

    fn winter_start(&mut self) {
        let Ok(start) = self.plan.winter_start(self.plan.recommendation.method) else {
            return;
        };
        self.head(self.words.advice().winter_start);
        let atmosphere = self.plan.atmosphere.value;
        let said = self.words.bypass(&start.bypass, self.units, atmosphere);
        self.line(&format!("  {said}"));
    }

    fn fan_motor(&mut self) {
        let Some(found) = self.plan.fan_motor() else {
            return;
        };
        self.head(self.words.advice().fan_motor);
        let said = self.words.fan_start(&found, self.units);
        self.line(&format!("  {said}"));
        for remedy in &found.remedies {
            let said = self.words.fan_remedy(*remedy, &found, self.units);
            self.line(&format!("  {said}"));
        }
        let said = self.words.fan_heat(&found.hottest, self.units);
        self.line(&format!("  {said}"));
    }

    fn accuracy(&mut self) {
        let t = self.words.advice();
        let bands = self.plan.bands();
        let method = match self.plan.recommendation.method {
            floods if floods.floods() => Method::SpeedControl,
            method => method,
        };
        let span = self.show(Quantity::Difference(*bands.limits.of(method)));
        let name = self.words.method(method).name;
        self.line(&format!("  {}", (t.give_or_take)(name, &span)));
        if let Some(field) = bands.measure_first() {
            let ask = self.words.field(field).ask;
            self.line(&format!("  {}", (t.measure_first)(ask)));
        }
    }
}

//! One case and its time.

/// How long a batch has to take: far more than the 0.1 ms to which a browser rounds its clock.
const BATCH_MILLISECONDS: f64 = 20.0;
/// How long batches are repeated, and at least how often, so that something else on the machine does not lie over all of them.
const CASE_MILLISECONDS: f64 = 800.0;
const BATCHES: u32 = 5;

/// A call with each value in turn.
type Batch = dyn Fn(&[f64]);

/// One call, with the values that it is asked for in turn.
pub struct Case {
    /// The refrigerant, as asked for.
    pub subject: &'static str,
    /// The call, and what it returns.
    pub call: &'static str,
    /// What the call is given, in SI: each value in turn.
    pub inputs: Vec<f64>,
    batch: Box<Batch>,
}

impl Case {
    pub(crate) fn new<T>(
        subject: &'static str,
        call: &'static str,
        inputs: &[f64],
        run: impl Fn(f64) -> T + 'static,
    ) -> Self {
        Self {
            subject,
            call,
            inputs: inputs.to_vec(),
            batch: Box::new(move |inputs| {
                for &input in inputs {
                    std::hint::black_box(run(std::hint::black_box(input)));
                }
            }),
        }
    }

    /// Time of one call in microseconds, warm, by a clock in milliseconds.
    ///
    /// That of the quickest batch: all batches do the same work, so whatever the others take longer, the machine spent on something else.
    pub fn microseconds(&self, clock: impl Fn() -> f64) -> f64 {
        let time = |rounds: u32| {
            let start = clock();
            for _ in 0..rounds {
                (self.batch)(&self.inputs);
            }
            clock() - start
        };
        let mut rounds = 1;
        while time(rounds) < BATCH_MILLISECONDS {
            rounds *= 2;
        }
        let start = clock();
        let mut quickest = f64::INFINITY;
        let mut batches = 0;
        while batches < BATCHES || clock() - start < CASE_MILLISECONDS {
            quickest = quickest.min(time(rounds));
            batches += 1;
        }
        quickest * 1e3 / (f64::from(rounds) * self.inputs.len() as f64)
    }
}

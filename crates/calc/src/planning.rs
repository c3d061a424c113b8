//! A plan made a piece at a time, for a caller that has to answer someone meanwhile.
//!
//! The code that makes a plan reads from top to bottom and takes a breath between its pieces: a future that waits for nothing but to be polled again.
//! Whoever wants the plan at once polls on; whoever has a screen to draw polls when there is time.

use std::future::poll_fn;
use std::ops::ControlFlow;
use std::pin::{Pin, pin};
use std::task::{Context, Poll, Waker};

use crate::build::made;
use crate::input::Input;
use crate::plan::Plan;
use crate::problem::InputError;

/// Gives the caller a moment, once.
pub(crate) async fn breath() {
    let mut taken = false;
    poll_fn(|_| {
        if std::mem::replace(&mut taken, true) {
            Poll::Ready(())
        } else {
            Poll::Pending
        }
    })
    .await;
}

/// The end of work that waits for nothing but its own breaths.
pub(crate) fn at_once<T>(work: impl Future<Output = T>) -> T {
    let mut work = pin!(work);
    loop {
        if let Poll::Ready(done) = work.as_mut().poll(&mut nobody_waits()) {
            return done;
        }
    }
}

fn nobody_waits() -> Context<'static> {
    Context::from_waker(Waker::noop())
}

/// What a plan comes to.
type Made = Result<Plan, Vec<InputError>>;

/// A [`Plan`] on its way.
pub struct Planning(Option<Pin<Box<dyn Future<Output = Made>>>>);

impl Planning {
    /// Starts with nothing done.
    pub fn of(input: Input) -> Self {
        Self(Some(Box::pin(async move { made(&input).await })))
    }

    /// Works out one piece. `Break` ends it, with what [`plan`](crate::plan()) gives for the same input; after that there is nothing left to work out, and nothing
    /// more comes.
    pub fn step(&mut self) -> ControlFlow<Made> {
        let Some(work) = &mut self.0 else {
            return ControlFlow::Continue(());
        };
        match work.as_mut().poll(&mut nobody_waits()) {
            Poll::Pending => ControlFlow::Continue(()),
            Poll::Ready(made) => {
                self.0 = None;
                ControlFlow::Break(made)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use uom::si::f64::{Power, ThermodynamicTemperature};
    use uom::si::power::watt;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use winterset_refrigerant::Refrigerant;

    use super::*;
    use crate::explain::Given;
    use crate::input::{Duty, Essentials, Load};

    fn input(outdoor_low: f64) -> Input {
        Input::assume(
            Essentials {
                refrigerant: Refrigerant::named("R-454B").unwrap(),
                load: Load::Cooling(Power::new::<watt>(10_000.0)),
                outdoor_low: ThermodynamicTemperature::new::<degree_celsius>(outdoor_low),
            },
            Given::assumed(Duty::RoomCooling),
        )
    }

    fn in_steps(input: Input) -> (usize, Made) {
        let mut planning = Planning::of(input);
        let mut steps = 1;
        loop {
            if let ControlFlow::Break(made) = planning.step() {
                assert!(planning.step().is_continue());
                return (steps, made);
            }
            steps += 1;
        }
    }

    #[test]
    fn pieces_come_to_the_plan_that_is_made_at_once() {
        let (steps, made) = in_steps(input(-25.0));
        assert!(steps > 8, "{steps}");
        let at_once = crate::plan(&input(-25.0)).unwrap();
        assert_eq!(format!("{:?}", made.unwrap()), format!("{at_once:?}"));
    }

    #[test]
    fn what_is_wrong_comes_at_once() {
        let (steps, made) = in_steps(input(500.0));
        assert_eq!(steps, 1);
        assert_eq!(made.unwrap_err(), crate::plan(&input(500.0)).unwrap_err());
    }
}

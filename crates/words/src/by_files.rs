//! What a language says in its files, as [`Words`](crate::Words).

/// Makes a language speak: all that stands in its files under the names that each language's files use. What it says itself stands in the braces.
macro_rules! speaks_by_its_files {
    ($language:ident { $($own:tt)* }) => {
        impl $crate::language::Words for $language {
            $($own)*

            fn screen(&self) -> &'static $crate::screen::Screen {
                &screen::SCREEN
            }

            fn paper(&self) -> &'static $crate::paper::Paper {
                &paper::PAPER
            }

            fn sending(&self) -> &'static $crate::sending::Sending {
                &sending::SENDING
            }

            fn field(&self, field: winterset_calc::Field) -> $crate::language::FieldWords {
                fields::field(field)
            }

            fn find(&self, field: winterset_calc::Field) -> $crate::help::FindWords {
                help::field(field)
            }

            fn help(&self) -> &'static $crate::help::HelpLabels {
                &help::LABELS
            }

            fn help_on(&self, rule: winterset_calc::Rule) -> $crate::help::HelpWords {
                help::rule(rule)
            }

            fn help_on_rung(&self, value: $crate::help::RungValue) -> $crate::help::HelpWords {
                help::on_rung(value)
            }

            fn fitting(&self) -> &'static dyn $crate::fitting::FittingWords {
                &$language
            }

            fn install(&self) -> &'static $crate::install::Install {
                &install::INSTALL
            }

            fn usual(&self, field: winterset_calc::Field, units: $crate::units::Units) -> Option<String> {
                fields::usual(field, units)
            }

            fn choice(&self, field: winterset_calc::Field, key: &str) -> &'static str {
                fields::choice(field, key)
            }

            fn problem(&self, field: winterset_calc::Field, problem: &winterset_profile::Problem, units: $crate::units::Units) -> String {
                problems::problem(field, problem, units)
            }

            fn refused(&self, error: &winterset_refrigerant::Error, units: $crate::units::Units, atmosphere: uom::si::f64::Pressure) -> String {
                problems::refused(error, units, atmosphere)
            }

            fn share_error(&self, error: &winterset_profile::share::ShareError) -> &'static str {
                problems::share_error(error)
            }

            fn rule(&self, rule: winterset_calc::Rule) -> $crate::language::RuleWords {
                rules::rule(rule)
            }

            fn verdict(&self, verdict: winterset_calc::Verdict, plan: &winterset_calc::Plan, units: $crate::units::Units) -> String {
                plan::verdict(verdict, plan, units)
            }

            fn action(&self, action: winterset_calc::Action) -> &'static str {
                plan::action(action)
            }

            fn caution(&self, caution: winterset_calc::Caution) -> $crate::language::Part {
                plan::caution(caution)
            }

            fn need_part(&self, part: winterset_calc::need::NeedPart) -> $crate::language::RuleWords {
                plan::need_part(part)
            }

            fn note(&self, note: winterset_calc::settings::SettingsNote, units: $crate::units::Units) -> String {
                plan::note(note, units)
            }

            fn sensing(&self, sensing: winterset_calc::input::Sensing) -> $crate::language::RuleWords {
                plan::sensing(sensing)
            }

            fn heating(&self, valve: winterset_calc::advice::ReversingValve) -> $crate::language::RuleWords {
                plan::heating(valve)
            }

            fn method(&self, method: winterset_calc::Method) -> $crate::language::RuleWords {
                plan::method(method)
            }

            fn worksheets(&self) -> &'static dyn $crate::worksheets::WorksheetWords {
                &$language
            }

            fn phone(&self) -> &'static $crate::from_phone::FromPhone {
                &from_phone::FROM_PHONE
            }

            fn pictures(&self) -> &'static $crate::pictures::Pictures {
                &pictures::PICTURES
            }

            fn controllers(&self) -> &'static dyn $crate::controllers::ControllerWords {
                &$language
            }

            fn weather(&self) -> &'static $crate::weather::WeatherLabels {
                &weather::LABELS
            }

            fn weather_error(&self, error: &winterset_calc::weather::epw::EpwError) -> String {
                weather::error(error)
            }

            fn advice(&self) -> &'static $crate::advice::Advice {
                &advice::ADVICE
            }

            fn reason(&self, reason: winterset_calc::recommendation::Reason) -> &'static str {
                advice::reason(reason)
            }

            fn change(&self, change: winterset_calc::lever::Change) -> $crate::language::RuleWords {
                advice::change(change)
            }

            fn part_load(&self, found: &winterset_calc::advice::PartLoad, units: $crate::units::Units) -> String {
                advice::part_load(found, units)
            }

            fn condition(&self, condition: winterset_calc::Condition) -> $crate::language::RuleWords {
                advice::condition(condition)
            }

            fn part(&self, part: &winterset_calc::parts_list::Part, units: $crate::units::Units, atmosphere: uom::si::f64::Pressure) -> $crate::advice::Ordered {
                advice::part(part, units, atmosphere)
            }

            fn bypass(&self, outcome: &winterset_calc::winter_start::BypassOutcome, units: $crate::units::Units, atmosphere: uom::si::f64::Pressure) -> String {
                advice::bypass(outcome, units, atmosphere)
            }

            fn fan_start(&self, advice: &winterset_calc::advice::FanMotorAdvice, units: $crate::units::Units) -> String {
                advice::fan_start(advice, units)
            }

            fn fan_heat(&self, hottest: &winterset_calc::advice::Hottest, units: $crate::units::Units) -> String {
                advice::fan_heat(hottest, units)
            }

            fn fan_remedy(&self, remedy: winterset_calc::advice::Remedy, advice: &winterset_calc::advice::FanMotorAdvice, units: $crate::units::Units) -> String {
                advice::fan_remedy(remedy, advice, units)
            }

            fn place(&self, reason: &winterset_calc::sensor_place::Reason, units: $crate::units::Units) -> String {
                advice::place(reason, units)
            }

            fn off(&self, outcome: &winterset_calc::free_cooling::Outcome, duty: winterset_calc::input::Duty, units: $crate::units::Units) -> String {
                advice::off(outcome, duty, units)
            }
        }
    };
}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/audit/quarter_rule.h"
#include "core/budget/account_intervals.h"
#include "core/budget/can_account.h"
#include "core/budget/day_run.h"
#include "core/budget/program.h"
#include "core/budget/season_cost.h"
#include "core/budget/season_flag.h"
#include "core/budget/uniformity_choice.h"
#include "core/budget/waste_account.h"
#include "core/calendar/date.h"
#include "core/meter/meter.h"
#include "core/sentence.h"
#include "core/site/site.h"
#include "core/weather/effective_rain.h"
#include "core/weather/landscape_coefficient.h"
#include "core/weather/leaching.h"
#include "core/weather/place_weather.h"
#include "core/weather/planting.h"
#include "core/weather/reference_et.h"
#include "core/weather/weather_day.h"

#include <optional>
#include <string>
#include <vector>

/// One site over a range of months: what the turf needed, what the program grants, what was
/// metered, and where the difference went; by area, for the site, month by month and in total.
///
///     need   = max(0, ETo x K - effective rain) x area      by the month
///              / (1 - LR) where salt in the water asks for leaching; see weather/leaching.h
///     budget = by the program                                see program.h
///     over budget = max(0, use - budget)                     by the month, never netted
///     account by the multiplier method                       see waste_account.h
///     account by cans, beside it, where there is a test      see can_account.h
///
/// Days. A month counts for the days on which the meter and the weather record both cover it;
/// `days_counted` says how many. Effective rain of n of the N days of a month is n / N of that of
/// a whole month with N / n times the rain and the ET. A gap inside the meter's record scales need
/// and budget to the share of the time that was metered.
///
/// Water. Meters that replaced one another are one place (see metered.h). A place's own use is its
/// volume less that of the meters below it. It is divided among
/// the areas it feeds by their given shares, else by area x coefficient of the month. Water of a
/// meter that feeds no area, and water metered on days whose need is not known, is in `use` and
/// in `outside_account`; the account closes to the difference of the two.
///
/// Nothing that is not known becomes a zero: no reference ET, no need; no readings, no use.
/// Tests: tests/budget/season_test.cpp, tests/budget/season_property_test.cpp
namespace evenfall::budget {

/// The leak that was found in a meter's record in one month.
struct MonthLeak {
    calendar::Month month;
    units::Volume volume;
};

struct MeterInput {
    meter::Meter meter;
    std::vector<meter::Reading> readings;          ///< latest revisions, sorted by time
    /// What screening the readings found; a month that is not listed had none. Absent: the
    /// readings were not screened or cannot show a leak.
    std::optional<std::vector<MonthLeak>> leaks{};
};

/// What is known of an area besides its record.
struct AreaSetting {
    std::string area;
    std::optional<units::Share> off_target;  ///< share of the water that falls outside the area
    std::string off_target_source;           ///< "gross against net rate, test T-4", "plan P-2"
    bool special = false;                    ///< a special landscape area of an ordinance
    std::optional<weather::SaltCase> salt{}; ///< of its water, where that asks for leaching
};

/// How a figure was made: for the method page of a report.
struct Note {
    std::string topic;       ///< "reference ET", "effective rain" ...
    Sentence method;
    Sentence source;
    bool assumed = false;    ///< an input was assumed
};

struct SeasonInputs {
    site::Site site;
    std::vector<site::Area> areas;
    std::vector<MeterInput> meters;              ///< all of the site, submeters too
    std::vector<weather::WeatherDay> weather;    ///< sorted by date, no day twice
    weather::StationSetting station;
    std::vector<audit::CatchTest> tests;
    std::vector<AreaSetting> settings;
    Program program;
    calendar::Month from;
    calendar::Month to;                          ///< included
    weather::RainRule rain;
    audit::QuarterRule quarter_rule;
    /// Sod harvests, new turf, overseeding and shade: they change an area's coefficient.
    std::vector<weather::Planting> plantings = {};
    /// False leaves `by_cans` out, for whoever compares many sites: it is a third of the work.
    bool account_by_cans = true;
    /// Days worked out from several stations or from hours; they stand in place of `weather` and
    /// `station`. `weather_notes` then say how.
    std::optional<std::vector<weather::PlaceDay>> place_days = {};
    std::vector<Note> weather_notes = {};
};

struct DailyWeather;
/// Reference ET and rain of the season's days, see weather_sums.h.
DailyWeather season_weather(const SeasonInputs& inputs);

/// Figures of one period of one area, or of the site. An empty optional is "not known".
struct SeasonFigures {
    int days = 0;                ///< in the period
    double days_counted = 0.0;   ///< for which need, budget and account stand

    // Depths over the days counted; for the site, means weighted by area.
    std::optional<units::Depth> reference_et;
    std::optional<units::Depth> rain;
    std::optional<units::Depth> landscape_et;    ///< ETo x K
    std::optional<units::Depth> effective_rain;
    std::optional<units::Depth> need_depth;

    std::optional<units::Volume> use;             ///< metered, all of it
    std::optional<units::Volume> outside_account; ///< of `use`; see above
    std::optional<units::Volume> need;
    std::optional<units::Volume> budget;
    std::optional<units::Volume> over_budget;
    std::optional<WasteAccount> account;          ///< by the multiplier method
    std::optional<CanAccount> by_cans;            ///< of the areas that have a catch test
    double estimated_share = 0.0;                 ///< of `use`, 0 to 1
    std::vector<SeasonFlag> flags;
};

struct SeasonMonth : SeasonFigures {
    calendar::Month month;
};

struct AreaMonth : SeasonMonth {
    std::optional<weather::CoefficientChoice> coefficient;
    std::size_t uniformity = 0;                   ///< index in AreaSeason::uniformity
    std::optional<WasteInputs> inputs;            ///< from which the account was made
    std::optional<DayRun> counted;                ///< the days counted
    double metered_share = 1.0;                   ///< of the time of the days counted
    double leaching = 0.0;                        ///< LR that the need contains
};

struct AreaSeason {
    std::string area;  ///< code
    std::string name;
    std::string meter; ///< code; empty when not recorded
    std::string place; ///< name of its metered place, as MeterSeason::meter; empty without one
    units::Area size;
    bool special = false;
    std::vector<UniformityChoice> uniformity;     ///< by date, each one that a month used
    std::vector<AreaMonth> months;
    SeasonFigures total;
    /// The most that could have run off in single runs; see can_account.h. Absent without a timed test.
    std::optional<units::Volume> runoff_in_one_run{};
};

/// The areas that one meter feeds, together.
struct MeterSeason {
    std::string meter;  ///< code, or "M-1 then M-2" where one replaced the other
    std::vector<SeasonMonth> months;
    SeasonFigures total;
};

/// Use held against an allowance over a whole calendar year, for programs that do so.
struct YearAllowance {
    int year = 0;
    int months = 0;  ///< of the year that the season covers with use and budget
    units::Volume use;
    units::Volume allowance;
    units::Volume over;
};

/// Something a person should look at, about an area, a meter or the weather station.
struct SeasonFinding {
    Sentence record;  ///< "area A-1", "meter M-2"; callers add "weather"
    Sentence sentence;
};

struct SeasonResult {
    std::string site;        ///< code
    std::string name;
    calendar::Month from;
    calendar::Month to;
    Program program;
    std::vector<AreaSeason> areas;   ///< in the order given
    std::vector<MeterSeason> meters; ///< that feed areas, by code
    std::vector<SeasonMonth> months; ///< of the site
    SeasonFigures total;
    std::vector<YearAllowance> years;///< only for programs that hold use against a year
    std::vector<Note> notes;
    std::vector<SeasonFinding> findings;
    std::optional<SeasonCost> cost{};///< money and energy, where a caller added it
    std::optional<SeasonIntervals> intervals{};  ///< likewise, see season_intervals.h
};

/// @throws InputError for a range that runs backward, weather out of order or a day twice, two
///   areas or meters of one code, an area of zero, a meter that is its own parent, shares of a
///   meter that add up to more than 1, an impossible station setting
SeasonResult season(const SeasonInputs& inputs);

}  // namespace evenfall::budget

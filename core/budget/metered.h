// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/day_run.h"
#include "core/budget/season.h"
#include "core/calendar/time_zone.h"
#include "core/meter/use.h"
#include "core/units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The own use of each metered place of a site: its volume less that of the places below it.
/// A place is one meter, or several that stood there one after another (Meter::replaces); any of
/// their codes names it.
/// Tests: tests/budget/season_test.cpp
namespace evenfall::budget {

struct OwnUse {
    std::optional<units::Volume> volume;
    double estimated_share = 0.0;
    double covered_share = 0.0;   ///< of the time of the run of days
    bool submeters_above = false; ///< cut to zero
};

class MeteredSite {
  public:
    /// @throws InputError for a code twice or a meter that stands above itself
    MeteredSite(std::span<const MeterInput> meters, const calendar::TimeZone& zone,
                calendar::Month from, calendar::Month to);

    /// The place of the meter of that code.
    std::optional<std::size_t> index_of(const std::string& code) const;
    std::size_t size() const { return places_.size(); }
    /// "M-1", or "M-1 then M-2" where one replaced the other.
    std::string name(std::size_t place) const;
    bool has_places_below(std::size_t place) const { return !places_[place].below.empty(); }
    std::size_t problems(std::size_t place) const { return places_[place].problems; }

    /// The days of the month from the first to the last one that the record touches.
    std::optional<DayRun> days_metered(std::size_t place, calendar::Month month) const;
    OwnUse own_use(std::size_t place, DayRun days) const;
    /// Own use of each day of the run; 0 where nothing is known or submeters show more.
    std::vector<units::Volume> own_days(std::size_t place, DayRun days) const;
    /// The leak of the month less that of the places below; nothing when it was not screened.
    std::optional<units::Volume> own_leak(std::size_t place, calendar::Month month) const;

  private:
    struct Month {
        meter::PeriodUse use;
        std::optional<units::Volume> leak;
    };
    struct Place {
        std::vector<std::size_t> meters;  ///< oldest first, as indexes into meters_
        std::vector<meter::VolumeInterval> intervals;
        std::size_t problems = 0;
        std::vector<std::size_t> below;   ///< the places directly below
        std::vector<Month> months;        ///< from from_ on
    };
    void find_places();
    void read_place(Place& place, std::span<const calendar::Instant> edges, calendar::Month to);
    std::optional<std::size_t> above(std::size_t place) const;
    bool in_use(std::size_t place, DayRun days) const;
    meter::PeriodUse use_of(std::size_t place, DayRun days) const;
    const Month& month_of(std::size_t place, calendar::Month month) const;
    std::span<const meter::VolumeInterval> intervals_in(std::size_t place, calendar::Instant from,
                                                        calendar::Instant to) const;

    std::span<const MeterInput> meters_;
    const calendar::TimeZone& zone_;
    calendar::Month from_;
    std::vector<Place> places_;
};

}  // namespace evenfall::budget

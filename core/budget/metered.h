// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"
#include "core/calendar/time_zone.h"
#include "core/meter/use.h"
#include "core/units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The own use of each meter of a site: its volume less that of the meters below it.
/// Tests: tests/budget/metered_test.cpp
namespace evenfall::budget {

/// A run of days, both included.
struct DayRun {
    calendar::Date from;
    calendar::Date to;
    int days() const { return static_cast<int>((to - from).count()) + 1; }
    bool operator==(const DayRun&) const = default;
};

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

    std::optional<std::size_t> index_of(const std::string& code) const;
    std::size_t size() const { return meters_.size(); }
    const MeterInput& input(std::size_t meter) const { return meters_[meter]; }
    const meter::MeterRecord& record(std::size_t meter) const { return records_[meter]; }

    /// The days of the month from the first to the last one that the meter's record touches.
    std::optional<DayRun> days_metered(std::size_t meter, calendar::Month month) const;
    OwnUse own_use(std::size_t meter, DayRun days) const;
    /// The leak of the month less that of the meters below; nothing when it was not screened.
    std::optional<units::Volume> own_leak(std::size_t meter, calendar::Month month) const;

  private:
    struct Month {
        meter::PeriodUse use;
        std::optional<units::Volume> leak;
    };
    meter::PeriodUse use_of(std::size_t meter, DayRun days) const;
    const Month& month_of(std::size_t meter, calendar::Month month) const;
    std::span<const meter::VolumeInterval> intervals_in(std::size_t meter, calendar::Instant from,
                                                        calendar::Instant to) const;
    void check_tree() const;

    std::span<const MeterInput> meters_;
    const calendar::TimeZone& zone_;
    calendar::Month from_;
    std::vector<meter::MeterRecord> records_;
    std::vector<std::vector<std::size_t>> below_;  ///< the meters directly below each
    std::vector<std::vector<Month>> months_;       ///< by meter, from from_ on
};

}  // namespace evenfall::budget

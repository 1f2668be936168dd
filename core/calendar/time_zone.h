// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"

#include <memory>
#include <string>

namespace evenfall::calendar {

/// The clock of a site, from a POSIX rule such as "PST8PDT,M3.2.0,M11.1.0" or "UTC0".
/// A rule, not a name: a book must give the same days on every machine, whatever its zone files.
/// Rules are read by Boost.Date_Time (posix_time_zone); the form is IEEE Std 1003.1, 8.3 "TZ".
/// Tests: tests/calendar/time_zone_test.cpp
class TimeZone {
  public:
    /// UTC.
    TimeZone();
    /// @throws InputError when the rule cannot be read
    explicit TimeZone(const std::string& posix_rule);

    /// When the wall clock shows `local`. In the hour that occurs twice in autumn the first
    /// (daylight) one is meant; a time that spring skips is an error.
    /// @throws InputError for a time the clock never shows
    Instant to_instant(LocalTime local) const;
    LocalTime to_local(Instant at) const;

    /// Midnight at the start of that day; the first moment after it where midnight is skipped.
    Instant start_of_day(Date date) const;
    /// The calendar day at the site.
    Date day_of(Instant at) const;

    const std::string& rule() const { return rule_; }

  private:
    struct Impl;
    std::string rule_;
    std::shared_ptr<const Impl> impl_;  ///< immutable, so copies may share it across threads
};

}  // namespace evenfall::calendar

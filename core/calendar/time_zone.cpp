// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/time_zone.h"

#include "core/input_error.h"


#include <stdexcept>
#include <vector>

#include <boost/date_time/local_time/local_time.hpp>

namespace evenfall::calendar {
namespace {

using boost::local_time::posix_time_zone;
using boost::posix_time::ptime;
using namespace std::chrono;

constexpr seconds to_seconds(const boost::posix_time::time_duration& d) {
    return seconds{d.total_seconds()};
}

LocalTime to_local_time(const ptime& t) {
    static const ptime epoch(boost::gregorian::date(1970, 1, 1));
    return LocalTime{seconds{(t - epoch).total_seconds()}};
}

}  // namespace

/// Boost works the rule out year by year; a reading needs it a million times, so each year is
/// worked out once: when daylight time starts and ends, in standard wall-clock time.
struct TimeZone::Impl {
    explicit Impl(const std::string& rule) : zone(rule) {
        standard = to_seconds(zone.base_utc_offset());
        saving = zone.has_dst() ? to_seconds(zone.dst_offset()) : seconds{0};
        for (int y = first_year - 1; y <= last_year + 1; ++y) {
            if (!zone.has_dst()) break;
            const auto year = static_cast<unsigned short>(y);
            // Start is given in standard time, end in daylight time, as the clock shows them.
            const Instant start{to_local_time(zone.dst_local_start_time(year)).time_since_epoch() -
                                standard};
            const Instant end{to_local_time(zone.dst_local_end_time(year)).time_since_epoch() -
                              standard - saving};
            years.push_back({start, end});
        }
    }

    seconds offset(Instant at) const {
        if (years.empty()) return standard;
        const int y = static_cast<int>(year_month_day{floor<days>(at + standard)}.year());
        const int index = y - (first_year - 1);
        if (index < 0 || index >= static_cast<int>(years.size())) return standard;
        const auto& [start, end] = years[static_cast<std::size_t>(index)];
        const bool daylight =
            start < end ? (at >= start && at < end) : (at >= start || at < end);  // south: wraps
        return daylight ? standard + saving : standard;
    }

    struct Year {
        Instant start;
        Instant end;
    };
    posix_time_zone zone;
    seconds standard{0};
    seconds saving{0};
    std::vector<Year> years;
};

TimeZone::TimeZone() : TimeZone("UTC0") {}

TimeZone::TimeZone(const std::string& posix_rule) : rule_(posix_rule) {
    try {
        // POSIX writes the offset as what must be added to local time to get UTC; Boost reads
        // the opposite sign, so the sign of the first number is turned.
        std::string boost_rule;
        std::size_t i = posix_rule.find_first_of("0123456789+-");
        if (i == std::string::npos || i < 3) throw std::invalid_argument("no offset");
        boost_rule = posix_rule.substr(0, i);
        if (posix_rule[i] == '-') {
            boost_rule += '+';
            ++i;
        } else {
            boost_rule += '-';
            if (posix_rule[i] == '+') ++i;
        }
        boost_rule += posix_rule.substr(i);
        impl_ = std::make_shared<const Impl>(boost_rule);
    } catch (const std::exception&) {
        throw InputError(posix_rule,
                         phrase("calendar", "a POSIX time zone rule, such as PST8PDT,M3.2.0,M11.1.0 or UTC0"));
    }
}

Instant TimeZone::to_instant(LocalTime local) const {
    const seconds wall = local.time_since_epoch();
    const Instant daylight{wall - impl_->standard - impl_->saving};
    if (impl_->offset(daylight) == impl_->standard + impl_->saving) return daylight;
    const Instant standard{wall - impl_->standard};
    if (impl_->offset(standard) == impl_->standard) return standard;
    throw InputError(
        format_local_time(local),
        {phrase("calendar", "a time that the clock shows there; this one is skipped in spring (%1)"), rule_});
}

LocalTime TimeZone::to_local(Instant at) const {
    return LocalTime{at.time_since_epoch() + impl_->offset(at)};
}

Instant TimeZone::start_of_day(Date date) const {
    const seconds wall = seconds{date.time_since_epoch()};
    const Instant daylight{wall - impl_->standard - impl_->saving};
    if (impl_->offset(daylight) == impl_->standard + impl_->saving) return daylight;
    const Instant standard{wall - impl_->standard};
    if (impl_->offset(standard) == impl_->standard) return standard;
    return standard;  // midnight is skipped: the clock jumps to this instant
}

Date TimeZone::day_of(Instant at) const {
    return Date{floor<days>(to_local(at)).time_since_epoch()};
}

}  // namespace evenfall::calendar

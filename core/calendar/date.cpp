// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/date.h"

#include <array>
#include <cassert>
#include <cstdio>

namespace evenfall::calendar {
namespace {

using namespace std::chrono;

/// Exactly `count` digits from `at`, or -1.
int digits(std::string_view text, std::size_t at, std::size_t count) {
    if (text.size() < at + count) return -1;
    int value = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        if (text[i] < '0' || text[i] > '9') return -1;
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

std::optional<year_month_day> date_at_front(std::string_view text) {
    const int y = digits(text, 0, 4);
    const int m = digits(text, 5, 2);
    const int d = digits(text, 8, 2);
    if (y < first_year || y > last_year || m < 1 || d < 1) return std::nullopt;
    if (text[4] != '-' || text[7] != '-') return std::nullopt;
    const year_month_day ymd{year{y}, month{static_cast<unsigned>(m)}, day{static_cast<unsigned>(d)}};
    if (!ymd.ok()) return std::nullopt;
    return ymd;
}

/// Reads date and time from the front and leaves the rest of the text in `rest`.
std::optional<LocalTime> time_at_front(std::string_view text, std::string_view& rest) {
    const auto ymd = date_at_front(text);
    if (!ymd || text.size() < 16 || (text[10] != 'T' && text[10] != ' ') || text[13] != ':') {
        return std::nullopt;
    }
    const int h = digits(text, 11, 2);
    const int min = digits(text, 14, 2);
    int s = 0;
    rest = text.substr(16);
    if (!rest.empty() && rest.front() == ':') {
        s = digits(rest, 1, 2);
        if (s < 0) return std::nullopt;
        rest.remove_prefix(3);
    }
    if (h < 0 || h > 23 || min < 0 || min > 59 || s > 59) return std::nullopt;
    return local_days{*ymd} + hours{h} + minutes{min} + seconds{s};
}

template <class... Values>
std::string print(const char* format, Values... values) {
    std::array<char, 40> buffer{};
    std::snprintf(buffer.data(), buffer.size(), format, values...);
    return buffer.data();
}

std::string format_clock(year_month_day ymd, hh_mm_ss<seconds> time, const char* tail) {
    return print("%04d-%02u-%02uT%02d:%02d:%02d%s", static_cast<int>(ymd.year()),
                 static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()),
                 static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                 static_cast<int>(time.seconds().count()), tail);
}

}  // namespace

std::optional<Date> parse_date(std::string_view text) {
    const auto ymd = date_at_front(text);
    if (!ymd || text.size() != 10) return std::nullopt;
    return sys_days{*ymd};
}

std::optional<Month> parse_month(std::string_view text) {
    const int y = digits(text, 0, 4);
    const int m = digits(text, 5, 2);
    if (text.size() != 7 || text[4] != '-' || y < first_year || y > last_year || m < 1 || m > 12) {
        return std::nullopt;
    }
    return year{y} / static_cast<int>(m);
}

std::optional<LocalTime> parse_local_time(std::string_view text) {
    std::string_view rest;
    const auto at = time_at_front(text, rest);
    if (!at || !rest.empty()) return std::nullopt;
    return at;
}

std::optional<Instant> parse_instant(std::string_view text) {
    std::string_view rest;
    const auto at = time_at_front(text, rest);
    if (!at || rest.empty()) return std::nullopt;
    const Instant as_utc{at->time_since_epoch()};
    if (rest == "Z") return as_utc;
    if (rest.size() != 6 || (rest[0] != '+' && rest[0] != '-') || rest[3] != ':') return std::nullopt;
    const int h = digits(rest, 1, 2);
    const int m = digits(rest, 4, 2);
    if (h < 0 || h > 15 || m < 0 || m > 59) return std::nullopt;
    const auto offset = hours{h} + minutes{m};
    return rest[0] == '-' ? as_utc + offset : as_utc - offset;
}

std::string format_date(Date date) {
    const year_month_day ymd{date};
    return print("%04d-%02u-%02u", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                 static_cast<unsigned>(ymd.day()));
}

std::string format_month(Month month) {
    return print("%04d-%02u", static_cast<int>(month.year()), static_cast<unsigned>(month.month()));
}

std::string format_month_name(Month month) {
    static constexpr std::array names{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                      "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    return std::string(names.at(static_cast<unsigned>(month.month()) - 1)) + " " +
           std::to_string(static_cast<int>(month.year()));
}

std::string format_instant(Instant at) {
    const auto day = floor<days>(at);
    return format_clock(year_month_day{day}, hh_mm_ss<seconds>{at - day}, "Z");
}

std::string format_local_time(LocalTime at) {
    const auto day = floor<days>(at);
    return format_clock(year_month_day{day}, hh_mm_ss<seconds>{at - day}, "");
}

Date make_date(int y, unsigned m, unsigned d) {
    const year_month_day ymd{year{y}, month{m}, day{d}};
    assert(ymd.ok());
    return sys_days{ymd};
}

Date first_day(Month m) { return sys_days{m / 1}; }
Date last_day(Month m) { return sys_days{m / last}; }
int days_in(Month m) {
    return static_cast<int>(static_cast<unsigned>((m / last).day()));
}
Month month_of(Date date) {
    const year_month_day ymd{date};
    return ymd.year() / ymd.month();
}
int day_of_year(Date date) {
    const year_month_day ymd{date};
    return static_cast<int>((date - sys_days{ymd.year() / 1 / 1}).count()) + 1;
}
Month plus_months(Month m, int n) { return m + months{n}; }

}  // namespace evenfall::calendar

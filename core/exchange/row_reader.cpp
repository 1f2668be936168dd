// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/row_reader.h"

#include "core/exchange/csv_text.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace evenfall::exchange {
namespace {

std::string_view without_blanks(std::string_view s) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!s.empty() && blank(s.front())) s.remove_prefix(1);
    while (!s.empty() && blank(s.back())) s.remove_suffix(1);
    return s;
}

/// The digits at the front, at most `most` of them; -1 when there are none.
int take_number(std::string_view& text, std::size_t most, std::size_t& length) {
    int value = 0;
    length = 0;
    while (length < most && length < text.size() && text[length] >= '0' && text[length] <= '9') {
        value = value * 10 + (text[length] - '0');
        ++length;
    }
    text.remove_prefix(length);
    return length == 0 ? -1 : value;
}

Phrase date_example(DateOrder order) {
    switch (order) {
        case DateOrder::iso: return phrase("exchange", "a day of the calendar such as 2024-06-30");
        case DateOrder::day_month_year: return phrase("exchange", "day, month and four-digit year such as 30/06/2024");
        case DateOrder::month_day_year: return phrase("exchange", "month, day and four-digit year such as 06/30/2024");
        case DateOrder::year_month_day: return phrase("exchange", "four-digit year, month and day such as 2024/06/30");
    }
    return {};
}

/// Takes a date from the front of the text.
std::optional<calendar::Date> take_date(std::string_view& text, DateOrder order) {
    std::array<int, 3> parts{};
    std::array<std::size_t, 3> lengths{};
    char mark = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        parts[i] = take_number(text, 4, lengths[i]);
        if (parts[i] < 0) return std::nullopt;
        if (i == 2) break;
        if (text.empty() || (text[0] != '/' && text[0] != '.' && text[0] != '-')) return std::nullopt;
        if (i == 1 && text[0] != mark) return std::nullopt;
        mark = text[0];
        text.remove_prefix(1);
    }
    std::size_t y = 2;
    std::size_t m = 1;
    std::size_t d = 0;
    if (order == DateOrder::month_day_year) std::swap(m, d);
    if (order == DateOrder::year_month_day) { y = 0; m = 1; d = 2; }
    if (lengths[y] != 4 || lengths[m] > 2 || lengths[d] > 2) return std::nullopt;
    if (parts[y] < calendar::first_year || parts[y] > calendar::last_year) return std::nullopt;
    const std::chrono::year_month_day ymd{std::chrono::year{parts[y]},
                                          std::chrono::month{static_cast<unsigned>(parts[m])},
                                          std::chrono::day{static_cast<unsigned>(parts[d])}};
    if (!ymd.ok()) return std::nullopt;
    return std::chrono::sys_days{ymd};
}

/// "6:00", "06:00:30", "6:00 AM"; the whole of the text.
std::optional<std::chrono::seconds> clock_time(std::string_view text) {
    std::size_t n = 0;
    int h = take_number(text, 2, n);
    if (h < 0 || text.empty() || text[0] != ':') return std::nullopt;
    text.remove_prefix(1);
    const int min = take_number(text, 2, n);
    if (n != 2) return std::nullopt;
    int s = 0;
    if (!text.empty() && text[0] == ':') {
        text.remove_prefix(1);
        s = take_number(text, 2, n);
        if (n != 2) return std::nullopt;
    }
    const std::string half = column_key(text);
    if (half == "am" || half == "pm") {
        if (h < 1 || h > 12) return std::nullopt;
        h = h % 12 + (half == "pm" ? 12 : 0);
    } else if (!half.empty()) {
        return std::nullopt;
    }
    if (h > 23 || min > 59 || s > 59) return std::nullopt;
    return std::chrono::hours{h} + std::chrono::minutes{min} + std::chrono::seconds{s};
}

}  // namespace

std::optional<calendar::Date> parse_date_in(std::string_view text, DateOrder order) {
    if (order == DateOrder::iso) return calendar::parse_date(text);
    const auto date = take_date(text, order);
    return text.empty() ? date : std::nullopt;
}

std::optional<WrittenTime> parse_time_in(std::string_view text, DateOrder order) {
    if (order == DateOrder::iso) {
        if (const auto local = calendar::parse_local_time(text)) {
            return WrittenTime{local, std::nullopt, false};
        }
        if (const auto instant = calendar::parse_instant(text)) {
            return WrittenTime{std::nullopt, instant, false};
        }
        if (const auto date = calendar::parse_date(text)) {
            return WrittenTime{calendar::LocalTime{date->time_since_epoch()}, std::nullopt, true};
        }
        return std::nullopt;
    }
    const auto date = take_date(text, order);
    if (!date) return std::nullopt;
    const calendar::LocalTime midnight{date->time_since_epoch()};
    if (text.empty()) return WrittenTime{midnight, std::nullopt, true};
    if (text[0] != ' ' && text[0] != 'T') return std::nullopt;
    const auto clock = clock_time(without_blanks(text.substr(1)));
    if (!clock) return std::nullopt;
    return WrittenTime{midnight + *clock, std::nullopt, false};
}

std::string_view RowReader::text(std::string_view group) const {
    const auto* found = columns_.find(group);
    if (found == nullptr) return {};
    const std::string_view cell = without_blanks(rows_.cells()[found->index]);
    for (const std::string& m : format_.missing) {
        if (cell == m) return {};
    }
    return unguarded(cell);
}

void RowReader::refuse(std::string_view group, Sentence found, Sentence expected) {
    std::string column(group);
    if (const auto* c = columns_.find(group)) column = rows_.column_name(c->index);
    issues_.push_back({{rows_.file(), rows_.row(), std::move(column)}, std::move(found), std::move(expected)});
}

std::string RowReader::needed_text(std::string_view group) {
    const std::string_view cell = text(group);
    if (cell.empty()) refuse(group, "", phrase("exchange", "a value; this column may not be empty"));
    return std::string(cell);
}

std::optional<double> RowReader::number(std::string_view group) {
    const std::string_view cell = text(group);
    if (cell.empty()) return std::nullopt;
    const auto value = units::parse_number(cell, format_.decimal_mark);
    if (!value) {
        const std::string point = format_.decimal_mark == ',' ? "12,5" : "12.5";
        refuse(group, cell, {phrase("exchange", "a number such as %1, without unit or thousands mark"), point});
    }
    return value;
}

std::optional<double> RowReader::number_within(std::string_view group, double low, double high,
                                               const Sentence& expected) {
    const auto value = number(group);
    if (value && (*value < low || *value > high)) {
        refuse(group, text(group), expected);
        return std::nullopt;
    }
    return value;
}

std::optional<double> RowReader::number_within(std::string_view group, double low, double high, Phrase expected) {
    const auto value = number(group);
    if (value && (*value < low || *value > high)) {
        refuse(group, text(group), expected);
        return std::nullopt;
    }
    return value;
}

std::optional<double> RowReader::needed_number(std::string_view group) {
    if (text(group).empty()) {
        refuse(group, "", phrase("exchange", "a number; this column may not be empty"));
        return std::nullopt;
    }
    return number(group);
}

std::optional<int> RowReader::whole_number(std::string_view group, int low, int high) {
    const auto value = number(group);
    if (!value) return std::nullopt;
    if (*value != std::floor(*value) || *value < low || *value > high) {
        refuse(group, text(group),
               {phrase("exchange", "a whole number from %1 to %2"), low, high});
        return std::nullopt;
    }
    return static_cast<int>(*value);
}

std::optional<calendar::Date> RowReader::date(std::string_view group) {
    const std::string_view cell = text(group);
    if (cell.empty()) return std::nullopt;
    const auto value = parse_date_in(cell, format_.date_order);
    if (!value) refuse(group, cell, date_example(format_.date_order));
    return value;
}

std::optional<calendar::Date> RowReader::needed_date(std::string_view group) {
    if (text(group).empty()) {
        refuse(group, "", date_example(format_.date_order));
        return std::nullopt;
    }
    return date(group);
}

std::optional<WrittenTime> RowReader::needed_time(std::string_view group) {
    const std::string_view cell = text(group);
    const auto value = cell.empty() ? std::nullopt : parse_time_in(cell, format_.date_order);
    if (!value) {
        refuse(group, cell,
               format_.date_order == DateOrder::iso
                   ? Sentence(phrase("exchange", "a time such as 2024-06-30T06:00 (site's clock) or 2024-06-30T13:00:00Z"))
                   : Sentence(phrase("exchange", "%1, then a time such as 06:00"), date_example(format_.date_order)));
    }
    return value;
}

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/exchange/columns.h"
#include "core/exchange/row_source.h"
#include "core/input_error.h"
#include "core/units/measure.h"

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// From the cells of one row to values, with each thing wrong noted at its place.
/// Tests: tests/exchange/import_test.cpp, plain_files_test.cpp
namespace evenfall::exchange {

/// How dates stand in the file. Nothing but ISO 8601 unless the user's map says so.
enum class DateOrder { iso, day_month_year, month_day_year, year_month_day };

struct CellFormat {
    char decimal_mark = '.';
    DateOrder date_order = DateOrder::iso;
    std::vector<std::string> missing{};  ///< texts that mean "not recorded", besides an empty cell
};

/// Issues found so far. Keeps the first ones and counts the rest, so a bad file of any length
/// does not fill the memory.
struct IssueLog {
    void add(Issue issue) {
        if (kept.size() < limit) kept.push_back(std::move(issue));
        ++count;
    }
    static constexpr std::size_t limit = 200;
    std::vector<Issue> kept;
    std::size_t count = 0;
};

/// A moment as written: on the site's clock, or with an offset of its own.
struct WrittenTime {
    std::optional<calendar::LocalTime> local;
    std::optional<calendar::Instant> instant;
    bool date_only = false;  ///< no time of day was given: the start of the day is meant
};

/// Reads a date in the given order; four-digit years only. Nothing when it is none.
std::optional<calendar::Date> parse_date_in(std::string_view text, DateOrder order);
std::optional<WrittenTime> parse_time_in(std::string_view text, DateOrder order);

class RowReader {
  public:
    RowReader(const RowSource& rows, const ColumnIndex& columns, const CellFormat& format)
        : rows_(rows), columns_(columns), format_(format) {}

    /// To be called after each step of the source.
    void start() { issues_.clear(); }
    bool ok() const { return issues_.empty(); }
    const std::vector<Issue>& issues() const { return issues_; }

    /// Without blanks at the ends; empty when there is no such column or it is not recorded.
    std::string_view text(std::string_view group) const;
    std::string needed_text(std::string_view group);
    std::optional<double> number(std::string_view group);
    /// @param expected  said when the number lies outside [low, high]
    std::optional<double> number_within(std::string_view group, double low, double high,
                                        const Sentence& expected);
    std::optional<double> number_within(std::string_view group, double low, double high, Phrase expected);
    std::optional<double> needed_number(std::string_view group);
    std::optional<int> whole_number(std::string_view group, int low, int high);
    std::optional<calendar::Date> date(std::string_view group);
    std::optional<calendar::Date> needed_date(std::string_view group);
    std::optional<WrittenTime> needed_time(std::string_view group);
    template <class Q>
    std::optional<units::Typed<Q>> measure(std::string_view group) {
        const auto value = number(group);
        if (!value) return std::nullopt;
        return units::Typed<Q>{*value, units::unit_named<Q>(columns_.find(group)->unit)};
    }

    void refuse(std::string_view group, Sentence found, Sentence expected);
    bool has(std::string_view group) const { return columns_.has(group); }
    std::string_view unit(std::string_view group) const {
        const auto* found = columns_.find(group);
        return found == nullptr ? std::string_view{} : found->unit;
    }
    std::size_t row() const { return rows_.row(); }

  private:
    const RowSource& rows_;
    const ColumnIndex& columns_;
    const CellFormat& format_;
    std::vector<Issue> issues_;
};

}  // namespace evenfall::exchange

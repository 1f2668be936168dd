// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/hourly_weather.h"

#include "core/exchange/csv_reader.h"
#include "core/exchange/records.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace evenfall::exchange {
namespace {

using std::chrono::seconds;

/// A row before the length of its period is known.
struct Row {
    calendar::Instant at;
    std::size_t row;
    weather::SheetHour hour;
};

Issue issue(const std::string& file, std::size_t row, std::string column, Sentence found,
            Sentence expected) {
    return {{file, row, std::move(column)}, std::move(found), std::move(expected)};
}

/// The offset in "…-07:00"; nothing for "Z" or none.
std::optional<std::chrono::minutes> offset_in(std::string_view text) {
    const auto at = calendar::parse_instant(text);
    if (!at || text.size() < 6 || text.back() == 'Z') return std::nullopt;
    const auto local = calendar::parse_local_time(text.substr(0, text.size() - 6));
    if (!local) return std::nullopt;
    return std::chrono::duration_cast<std::chrono::minutes>(local->time_since_epoch() -
                                                            at->time_since_epoch());
}

/// Sorted rows get the length of their period: the smallest step of the table.
seconds step_of(std::vector<Row>& rows, const std::string& file) {
    std::sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
        return std::tie(a.at, a.row) < std::tie(b.at, b.row);
    });
    seconds step{3600};
    for (std::size_t i = 1; i < rows.size(); ++i) {
        const seconds apart = rows[i].at - rows[i - 1].at;
        if (apart == seconds{0}) {
            throw InputError(issue(file, rows[i].row, "time", calendar::format_instant(rows[i].at),
                                   {phrase("exchange", "each time once; this one stands in row %1 too"), rows[i - 1].row}));
        }
        step = i == 1 ? apart : std::min(step, apart);
    }
    if (step > seconds{3600}) {
        throw InputError(issue(file, rows.front().row, "time",
                               {phrase("exchange", "%1 minutes from row to row"), step.count() / 60},
                               phrase("exchange", "rows an hour or less apart")));
    }
    return step;
}

}  // namespace

bool is_hourly(const std::filesystem::path& path) {
    const CsvReader rows(path);
    bool time = false;
    bool date = false;
    for (const auto& name : rows.header()) {
        time = time || column_key(name) == "time";
        date = date || column_key(name) == "date";
    }
    return time && !date;
}

HourlyFile read_hourly_weather(const std::filesystem::path& path, HourMark mark,
                               std::optional<std::chrono::minutes> clock_offset) {
    CsvReader source(path);
    const ColumnIndex columns(spec_of(Kind::weather), source.header(), source.file(),
                              source.row());
    const weather::SheetUnits sheet = sheet_units(columns, source.file());
    const CellFormat format;
    RowReader row(source, columns, format);
    IssueLog log;
    HourlyFile out;
    std::vector<Row> rows;
    while (source.next()) {
        row.start();
        if (source.row_issue()) {
            log.add(*source.row_issue());
            continue;
        }
        Row r{};
        r.row = source.row();
        r.hour = read_weather_hour(row);
        const auto written = row.needed_time("time");
        const std::string station(row.text("station"));
        if (rows.empty()) {
            out.station = station;
            out.has_offsets = written && written->instant.has_value();
            out.offset = offset_in(row.text("time"));
        }
        if (station != out.station) row.refuse("station", station, phrase("exchange", "one station in this file"));
        if (written && written->date_only) {
            row.refuse("time", row.text("time"), phrase("exchange", "a time of day too"));
        } else if (written && written->instant.has_value() != out.has_offsets) {
            row.refuse("time", row.text("time"),
                       phrase("exchange", "all times of a table with an offset from UTC, or none"));
        }
        for (const Issue& found : row.issues()) log.add(found);
        if (!row.ok() || !written) continue;
        r.at = written->instant
                   ? *written->instant
                   : calendar::Instant{written->local->time_since_epoch()} -
                         clock_offset.value_or(std::chrono::minutes{0});
        rows.push_back(r);
    }
    if (log.count > 0) throw InputError(std::move(log.kept));
    if (rows.empty()) {
        throw InputError(issue(source.file(), 0, "", phrase("exchange", "a header and nothing below it"),
                               phrase("exchange", "at least one row")));
    }
    const seconds step = step_of(rows, source.file());
    for (Row& r : rows) {
        r.hour.start = mark == HourMark::start ? r.at : r.at - step;
        r.hour.length = step;
        out.hours.push_back(weather::converted(r.hour, sheet));
    }
    out.notes = source.notes();
    return out;
}

}  // namespace evenfall::exchange

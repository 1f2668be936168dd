// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plain_files.h"

#include "core/exchange/csv_reader.h"
#include "core/exchange/records.h"

#include <algorithm>

namespace evenfall::exchange {
namespace {

/// Reads every row, calls `use` for each that is whole, and throws all issues together.
template <class Use>
std::vector<Sentence> each_row(CsvReader& rows, const ColumnIndex& columns, Use use) {
    const CellFormat format;
    RowReader row(rows, columns, format);
    IssueLog log;
    std::size_t count = 0;
    while (rows.next()) {
        ++count;
        row.start();
        if (rows.row_issue()) {
            log.add(*rows.row_issue());
            continue;
        }
        use(row);
        for (const Issue& issue : row.issues()) log.add(issue);
    }
    if (log.count > 0) throw InputError(std::move(log.kept));
    if (count == 0) {
        throw InputError(Issue{{rows.file(), 0, ""}, phrase("exchange", "a header and nothing below it"),
                               phrase("exchange", "at least one row")});
    }
    return rows.notes();
}

}  // namespace

CatchFile read_catches(const std::filesystem::path& path) {
    CsvReader rows(path);
    const ColumnIndex columns(spec_of(Kind::catches), rows.header(), rows.file(), rows.row());
    CatchTableReader table(columns, rows.file(), false);
    CatchFile out;
    out.notes = each_row(rows, columns, [&](RowReader& row) { table.add(row); });
    out.tests = table.take();
    return out;
}

WeatherFile read_weather(const std::filesystem::path& path) {
    CsvReader rows(path);
    const ColumnIndex columns(spec_of(Kind::weather), rows.header(), rows.file(), rows.row());
    if (!columns.has("date")) {
        throw InputError(Issue{{rows.file(), rows.row(), "date"}, phrase("exchange", "no such column"),
                               phrase("exchange", "a column date: this reads daily tables")});
    }
    const weather::SheetUnits units = sheet_units(columns, rows.file());
    WeatherFile out;
    std::vector<std::pair<calendar::Date, std::size_t>> seen;
    out.notes = each_row(rows, columns, [&](RowReader& row) {
        const std::string station(row.text("station"));
        if (out.days.empty() && out.station.empty()) out.station = station;
        if (station != out.station) row.refuse("station", station, phrase("exchange", "one station in this file"));
        const weather::SheetRow day = read_weather_day(row);
        if (!row.ok()) return;
        out.days.push_back(weather::converted(day, units));
        seen.emplace_back(day.date, row.row());
    });
    std::sort(seen.begin(), seen.end());
    const auto twice = std::adjacent_find(seen.begin(), seen.end(), [](const auto& a, const auto& b) {
        return a.first == b.first;
    });
    if (twice != seen.end()) {
        throw InputError(Issue{{rows.file(), std::next(twice)->second, "date"},
                               calendar::format_date(twice->first),
                               {phrase("exchange", "each day once; this one stands in row %1 too"), twice->second}});
    }
    std::sort(out.days.begin(), out.days.end(),
              [](const auto& a, const auto& b) { return a.date < b.date; });
    return out;
}

}  // namespace evenfall::exchange

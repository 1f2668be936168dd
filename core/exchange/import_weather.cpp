// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_run.h"
#include "core/store/weather_store.h"

#include <map>

namespace evenfall::exchange {

void import_weather(ImportRun& run) {
    std::vector<Issue> missing;
    for (std::string_view group : {"station", "date"}) {
        if (run.columns.has(group)) continue;
        missing.push_back({{run.rows.file(), run.rows.row(), std::string(group)}, phrase("exchange", "no such column"),
                           {phrase("exchange", "a column %1, to keep the days in a book (for hours: hour_start "
                                               "or hour_end, see the hourly_weather table)"), group}});
    }
    if (!missing.empty()) throw InputError(std::move(missing));
    const weather::SheetUnits units = sheet_units(run.columns, run.rows.file());
    std::size_t completed = 0;
    std::map<std::string, store::WeatherWriter, std::less<>> writers;
    const auto writer_of = [&](const std::string& station) -> store::WeatherWriter& {
        const auto found = writers.find(station);
        if (found != writers.end()) return found->second;
        if (!store::find_weather_station(run.book, station)) {
            store::add_weather_station(run.book, {station, {}, {}, {}, {}});
            run.note({phrase("exchange", "Weather station %1 is new; its place is not recorded."), station});
        }
        return writers.try_emplace(station, run.book, station, units, run.import).first->second;
    };
    run.each_row([&](RowReader& row) {
        const std::string station = row.needed_text("station");
        const weather::SheetRow day = read_weather_day(row);
        if (!row.ok()) return;
        store::WeatherWriter& writer = writer_of(station);
        const auto outcome = writer.add(day, false);
        switch (outcome) {
            case store::WeatherWriter::Outcome::added: ++run.result.added; return;
            case store::WeatherWriter::Outcome::unchanged: ++run.result.unchanged; return;
            case store::WeatherWriter::Outcome::completed:
                ++run.result.added;
                ++completed;
                return;
            case store::WeatherWriter::Outcome::superseded:
            case store::WeatherWriter::Outcome::conflict: break;
        }
        if (run.settle({run.rows.file(), row.row(), ""},
                       Sentence(record_form::day, station, calendar::format_date(day.date)).english(),
                       writer.in_book(), writer.in_row(), outcome == store::WeatherWriter::Outcome::superseded)) {
            static_cast<void>(writer.add(day, true));
        } else if (writer.complete(day) == store::WeatherWriter::Outcome::completed) {
            ++run.result.added;
            ++completed;
        }
    });
    if (completed > 0) {
        run.note({phrase("exchange", "%1 days that the book had were completed with values it did not have."), completed});
    }
}

}  // namespace evenfall::exchange

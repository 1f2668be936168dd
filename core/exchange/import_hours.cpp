// SPDX-License-Identifier: GPL-3.0-or-later
// Hourly weather. Which end of the hour its time marks stands in the name of the column, and what UTC
// is in the time or beside it: an hour's error moves the sun by 15 degrees.
#include "core/exchange/import_run.h"
#include "core/store/hour_store.h"
#include "core/store/weather_store.h"

#include <cmath>
#include <map>

namespace evenfall::exchange {
namespace {

constexpr double shortest_minutes = 1.0;
constexpr double hour_minutes = 60.0;

/// "-07:00", "+05:30" or "Z".
std::optional<std::chrono::seconds> offset_of(std::string_view text) {
    const std::string midnight = "2000-01-01T00:00:00";
    const auto there = calendar::parse_instant(midnight + std::string(text));
    if (!there) return std::nullopt;
    return *calendar::parse_instant(midnight + "Z") - *there;
}

class HourImport {
  public:
    explicit HourImport(ImportRun& run)
        : run_(run),
          units_(sheet_units(run.columns, run.rows.file())),
          mark_(run.columns.has("hour_start") ? "hour_start" : "hour_end") {
        if (run.columns.has("hour_start") && run.columns.has("hour_end")) {
            throw InputError(Issue{{run.rows.file(), run.rows.row(), "hour_end"}, phrase("exchange", "hour_start and hour_end"),
                                   phrase("exchange", "one of the two; minutes says how long the period is")});
        }
    }

    void take(RowReader& row) {
        const std::string station = row.needed_text("station");
        weather::SheetHour hour = read_weather_hour(row);
        const double minutes = row.number_within("minutes", shortest_minutes, hour_minutes,
                                                 phrase("exchange", "minutes from 1 to 60")).value_or(hour_minutes);
        hour.length = std::chrono::seconds{std::lround(minutes * 60.0)};
        const auto at = instant(row);
        if (!row.ok()) return;
        hour.start = mark_ == "hour_start" ? *at : *at - hour.length;
        put(row, writer_of(station), station, hour);
    }

    void finish() {
        if (completed_ == 0) return;
        run_.note({phrase("exchange", "%1 hours that the book had were completed with values it did not have."), completed_});
    }

  private:
    std::optional<calendar::Instant> instant(RowReader& row) {
        const auto written = row.needed_time(mark_);
        if (!written) return std::nullopt;
        if (written->instant) return written->instant;
        if (written->date_only) {
            row.refuse(mark_, row.text(mark_), phrase("exchange", "a time of day too"));
            return std::nullopt;
        }
        const auto offset = offset_of(row.text("utc_offset"));
        if (row.text("utc_offset").empty()) {
            row.refuse(mark_, row.text(mark_),
                       phrase("exchange", "a time with its offset from UTC, such as 2024-06-30T13:00:00-07:00, "
                                               "or a column utc_offset"));
        } else if (!offset) {
            row.refuse("utc_offset", row.text("utc_offset"), phrase("exchange", "an offset from UTC such as -07:00, or Z"));
        }
        if (!offset) return std::nullopt;
        return calendar::Instant{written->local->time_since_epoch()} - *offset;
    }

    store::HourWriter& writer_of(const std::string& station) {
        const auto found = writers_.find(station);
        if (found != writers_.end()) return found->second;
        if (!store::find_weather_station(run_.book, station)) {
            store::add_weather_station(run_.book, {station, {}, {}, {}, {}});
            run_.note({phrase("exchange", "Weather station %1 is new; its place is not recorded."), station});
        }
        return writers_.try_emplace(station, run_.book, station, units_, run_.import).first->second;
    }

    void put(RowReader& row, store::HourWriter& writer, const std::string& station, const weather::SheetHour& hour) {
        using Outcome = store::HourWriter::Outcome;
        const std::string start = calendar::format_instant(hour.start);
        const auto outcome = writer.add(hour, false);
        switch (outcome) {
            case Outcome::added: ++run_.result.added; return;
            case Outcome::unchanged: ++run_.result.unchanged; return;
            case Outcome::completed:
                ++run_.result.added;
                ++completed_;
                return;
            case Outcome::overlaps:
                row.refuse(mark_, row.text(mark_),
                           {phrase("exchange", "a period that shares no time with another of the station; one around %1 does"),
                                                    start});
                return;
            case Outcome::superseded:
            case Outcome::conflict: break;
        }
        if (run_.settle({run_.rows.file(), row.row(), ""}, Sentence(record_form::hour, station, start).english(),
                        writer.in_book(), writer.in_row(), outcome == Outcome::superseded)) {
            static_cast<void>(writer.add(hour, true));
        } else if (writer.complete(hour) == Outcome::completed) {
            ++run_.result.added;
            ++completed_;
        }
    }

    ImportRun& run_;
    weather::SheetUnits units_;
    std::string_view mark_;
    std::map<std::string, store::HourWriter, std::less<>> writers_;
    std::size_t completed_ = 0;
};

}  // namespace

void import_hourly_weather(ImportRun& run) {
    HourImport import(run);
    run.each_row([&](RowReader& row) { import.take(row); });
    import.finish();
}

}  // namespace evenfall::exchange

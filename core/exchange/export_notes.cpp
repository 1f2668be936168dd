// SPDX-License-Identifier: GPL-3.0-or-later
// Field notes of catch tests, and hourly weather.
#include "core/audit/finding.h"
#include "core/exchange/export_run.h"
#include "core/exchange/field_notes_file.h"
#include "core/store/catch_test_store.h"
#include "core/store/hour_store.h"

#include <algorithm>
#include <set>
#include <utility>

namespace evenfall::exchange {
namespace {

using units::format_shortest;

Record record_of(const std::string& test, const audit::PressureReading& r) {
    return {{"test", "", test},
            {"place", "", r.place},
            field_of("pressure", std::optional(r.pressure)),
            field_of("nozzle_low", r.nozzle_low),
            field_of("nozzle_high", r.nozzle_high)};
}

Record record_of(const std::string& test, const audit::Finding& f) {
    return {{"test", "", test},
            {"finding", "", f.kind},
            {"place", "", f.place},
            {"count", "", std::to_string(f.count)},
            {"severity", "", std::string(audit::text_of(f.severity))},
            {"corrected", "", f.corrected ? "yes" : "no"},
            {"note", "", f.note}};
}

/// A table tells the notes of a test apart by place, findings by kind and place; a sheet filled in by
/// hand may have two alike, and the second would be refused when it is read.
class Apart {
  public:
    Apart(std::set<std::string>& left_out, const std::string& test) : left_out_(left_out), test_(test) {}
    bool first(const std::string& what, const std::string& place) {
        if (seen_.insert({what, place}).second) return true;
        left_out_.insert("Catch test " + test_ + ": a second " + what + (place.empty() ? "" : " at " + place) +
                         "; the tables hold the first one.");
        return false;
    }

  private:
    std::set<std::string>& left_out_;
    const std::string& test_;
    std::set<std::pair<std::string, std::string>> seen_;
};

void say(ExportRun& run, const std::set<std::string>& left_out) {
    run.result.left_out.insert(run.result.left_out.end(), left_out.begin(), left_out.end());
}

/// An inspection that found nothing.
Record record_of_none(const std::string& test) {
    Record record = record_of(test, audit::Finding{});
    for (Field& f : record) {
        if (f.group != "test") f.text.clear();
        if (f.group == "finding") f.text = no_finding;
    }
    return record;
}

/// A value in the unit of its group, which stands beside it even where it is not recorded: a table has
/// all its temperatures in one unit.
Field field_in(std::string_view group, std::string_view unit, const std::optional<double>& value) {
    const auto& columns = spec_of(Kind::hourly_weather).columns;
    const auto column = std::find_if(columns.begin(), columns.end(),
                                     [&](const ColumnSpec& c) { return c.group == group && c.unit == unit; });
    return {group, column == columns.end() ? std::string_view{} : column->unit, text_of(value)};
}

Record record_of(const std::string& station, const weather::SheetUnits& u, const weather::SheetHour& h) {
    return {{"station", "", station},
            {"hour_start", "", calendar::format_instant(h.start)},
            {"minutes", "", format_shortest(static_cast<double>(h.length.count()) / 60.0)},
            field_in("tmean", u.temperature, h.temperature),
            field_in("tdew", u.temperature, h.tdew),
            field_in("rhmean", "percent", h.rh_percent),
            field_in("ea", "kpa", h.ea_kpa),
            field_in("rs", u.radiation, h.solar),
            field_in("wind", u.wind, h.wind),
            field_in("rain", u.rain, h.rain)};
}

}  // namespace

void export_pressures(ExportRun& run) {
    const auto codes = store::catch_test_codes(run.book, "");
    std::set<std::string> left_out;  // the records are gone through twice
    write_tables(run.folder, Kind::pressures, "pressures", [&](const TakeRecord& take) {
        for (const std::string& code : codes) {
            const auto test = store::find_catch_test(run.book, code);
            if (!test->pressures) continue;
            if (test->pressures->empty()) left_out.insert("Catch test " + code + ": that it has a list of pressures without any.");
            Apart apart(left_out, code);
            for (const auto& r : *test->pressures) {
                if (apart.first("pressure", r.place)) take(record_of(code, r));
            }
        }
    }, run.result.files);
    say(run, left_out);
}

void export_findings(ExportRun& run) {
    const auto codes = store::catch_test_codes(run.book, "");
    std::set<std::string> left_out;
    write_tables(run.folder, Kind::findings, "findings", [&](const TakeRecord& take) {
        for (const std::string& code : codes) {
            const auto test = store::find_catch_test(run.book, code);
            if (!test->findings) continue;
            Apart apart(left_out, code);
            for (const auto& f : *test->findings) {
                if (apart.first("finding " + f.kind, f.place)) take(record_of(code, f));
            }
            if (test->findings->empty()) take(record_of_none(code));
        }
    }, run.result.files);
    say(run, left_out);
}

void export_hourly_weather(ExportRun& run) {
    write_tables(run.folder, Kind::hourly_weather, "hourly_weather", [&](const TakeRecord& take) {
        store::for_each_typed_hour(run.book, [&](const std::string& station, const weather::SheetUnits& units,
                                                 const weather::SheetHour& hour) { take(record_of(station, units, hour)); });
    }, run.result.files);
}

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
// What a book has most of: readings, weather and catches; and design plans, which are files of their own.
#include "core/exchange/export_run.h"
#include "core/exchange/plan_file.h"
#include "core/store/catch_test_store.h"
#include "core/store/meter_store.h"
#include "core/store/plan_store.h"
#include "core/store/weather_scan.h"

#include <algorithm>
#include <set>
#include <stdexcept>

namespace evenfall::exchange {
namespace {

using units::format_shortest;

/// A table that is made with its first row.
class LateTable {
  public:
    LateTable(ExportRun& run, std::string name, Kind kind, std::vector<std::string> header)
        : run_(run), name_(std::move(name)), kind_(kind), header_(std::move(header)) {}
    TableFile& file() {
        if (!file_) file_.emplace(run_.folder / name_, header_);
        return *file_;
    }
    void finish() {
        if (!file_) return;  // there was no row
        file_->close();
        run_.result.files.push_back({name_, std::string(name_of(kind_)), file_->rows()});
    }

  private:
    ExportRun& run_;
    std::string name_;
    Kind kind_;
    std::vector<std::string> header_;
    std::optional<TableFile> file_;
};

std::string_view kind_text(meter::ReadingKind kind) {
    switch (kind) {
        case meter::ReadingKind::measured: return "measured";
        case meter::ReadingKind::estimated: return "estimated";
        case meter::ReadingKind::corrected: return "corrected";
    }
    return "";
}

std::string_view layout_text(audit::Layout layout) {
    switch (layout) {
        case audit::Layout::grid: return "grid";
        case audit::Layout::pivot: return "pivot";
        case audit::Layout::traveller: return "traveller";
        case audit::Layout::irregular: return "irregular";
        case audit::Layout::lateral: return "lateral";
    }
    return "";
}

std::string_view unit_of(audit::CatchUnit unit) {
    switch (unit) {
        case audit::CatchUnit::millilitre: return "ml";
        case audit::CatchUnit::millimetre: return "mm";
        case audit::CatchUnit::inch: return "in";
    }
    return "";
}

/// The day's own unit of a group stands with each of its values, recorded or not: a table has all
/// its temperatures in one unit.
Field weather_field(std::string_view group, const std::string& unit, const std::optional<double>& value) {
    return {group, unit, text_of(value)};
}

Record record_of(const std::string& station, const weather::SheetUnits& u, const weather::SheetRow& d) {
    static const std::string percent = "percent", kpa = "kpa", hours = "h";
    return {{"station", "", station},
            {"date", "", calendar::format_date(d.date)},
            weather_field("tmax", u.temperature, d.tmax),
            weather_field("tmin", u.temperature, d.tmin),
            weather_field("tmean", u.temperature, d.tmean),
            weather_field("tdew", u.temperature, d.tdew),
            weather_field("rhmax", percent, d.rhmax),
            weather_field("rhmin", percent, d.rhmin),
            weather_field("rhmean", percent, d.rhmean),
            weather_field("ea", kpa, d.ea_kpa),
            weather_field("rs", u.radiation, d.solar),
            weather_field("sunshine", hours, d.sunshine_h),
            weather_field("wind", u.wind, d.wind),
            weather_field("rain", u.rain, d.rain),
            weather_field("eto", u.reference_et, d.reference_et)};
}

/// What belongs to the whole test stands in its first row; its units stand in every row, so that
/// the rows of a test stay in one table.
void add_test_fields(Record& row, const audit::CatchTest& t, bool first) {
    const auto once = [&](Field field) {
        if (!first) field.text.clear();
        row.push_back(std::move(field));
    };
    row.push_back({"test", "", t.code});
    once({"area", "", t.area});
    once({"date", "", calendar::format_date(t.date)});
    once(field_of("throat_area", t.throat_area));
    once({"minutes", "", text_of(t.minutes)});
    once(field_of("wind", t.wind));
    once(field_of("lane_spacing", t.lane_spacing));
    once({"layout", "", std::string(layout_text(t.layout))});
    once(field_of("can_size", t.can_size));
    once(field_of("flow", t.flow));
    once(field_of("travel_speed", t.travel_speed));
    once(field_of("edge_offset", t.edge_offset));
    once({"opposite_pulls", "", t.opposite_pulls ? "yes" : "no"});
}

void add_can_fields(Record& row, const audit::CatchTest& t, const audit::Catch& c, double reading) {
    row.push_back({"can", "", c.can});
    // A column for places must be filled in every row, so a test without places has none.
    if (c.x) row.push_back({"x", t.position_unit.name, text_of(c.x)});
    if (c.y) row.push_back({"y", t.position_unit.name, text_of(c.y)});
    if (c.distance) row.push_back({"distance", t.position_unit.name, text_of(c.distance)});
    if (c.side) row.push_back({"side", "", *c.side == audit::Side::left ? "left" : "right"});
    row.push_back({"catch", unit_of(t.catch_unit), format_shortest(reading)});
    row.push_back({"excluded", "", c.excluded});
}

void take_test(const audit::CatchTest& t, const TakeRecord& take) {
    bool first = true;
    const auto row_of = [&](const audit::Catch& c, double reading, const audit::StationRun* run) {
        Record row;
        add_test_fields(row, t, first);
        if (!t.stations.empty()) {
            row.push_back({"station", "", run ? run->station : std::string()});
            row.push_back({"station_minutes", "", run ? format_shortest(run->minutes) : std::string()});
        }
        add_can_fields(row, t, c, reading);
        take(row);
        first = false;
    };
    for (const audit::Catch& c : t.catches) {
        if (c.by_station.empty()) {
            row_of(c, c.reading, nullptr);
            continue;
        }
        for (const audit::StationCatch& s : c.by_station) {
            const auto run = std::find_if(t.stations.begin(), t.stations.end(),
                                          [&](const auto& r) { return r.station == s.station; });
            row_of(c, s.reading, &*run);
        }
    }
}

/// A code as the name of a file that no other plan has.
std::string plan_file_name(const std::string& code, std::set<std::string>& taken) {
    std::string base;
    for (const char c : code) {
        const bool fit = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                         c == '_' || c == '-';
        base += fit ? c : '_';
    }
    std::string name = base;
    for (int n = 2; !taken.insert(name).second; ++n) name = base + "_" + std::to_string(n);
    return name + ".json";
}

}  // namespace

void export_readings(ExportRun& run) {
    LateTable registers(run, "readings.csv", Kind::readings, {"meter", "time", "register", "kind"});
    LateTable volumes(run, "readings_volumes.csv", Kind::readings, {"meter", "start", "end", "volume", "kind"});
    for (const meter::Meter& m : store::meters(run.book, "")) {
        store::for_each_reading(run.book, m.code, [&](const meter::Reading& r) {
            const std::string at = calendar::format_instant(r.at);
            const std::string value = format_shortest(r.value);
            if (r.span.count() == 0) {
                registers.file().row({m.code, at, value, kind_text(r.kind)});
            } else {
                volumes.file().row({m.code, calendar::format_instant(r.at - r.span), at, value, kind_text(r.kind)});
            }
        });
    }
    registers.finish();
    volumes.finish();
}

void export_weather(ExportRun& run) {
    write_tables(run.folder, Kind::weather, "weather", [&](const TakeRecord& take) {
        store::for_each_typed_day(run.book, [&](const std::string& station, const weather::SheetUnits& units,
                                                const weather::SheetRow& day) { take(record_of(station, units, day)); });
    }, run.result.files);
}

void export_catches(ExportRun& run) {
    const auto codes = store::catch_test_codes(run.book, "");
    write_tables(run.folder, Kind::catches, "catches", [&](const TakeRecord& take) {
        for (const std::string& code : codes) take_test(*store::find_catch_test(run.book, code), take);
    }, run.result.files);
}

void export_plans(ExportRun& run) {
    std::set<std::string> taken;
    for (const std::string& code : store::plan_codes(run.book, "")) {
        const auto stored = store::find_plan(run.book, code);
        const std::string name = "plans/" + plan_file_name(code, taken);
        std::filesystem::create_directories(run.folder / "plans");
        std::ofstream out(run.folder / name, std::ios::binary | std::ios::trunc);
        out << plan_text(stored->plan);
        out.close();
        if (!out) throw std::runtime_error("cannot write " + (run.folder / name).string());
        run.result.plans.push_back({name, code, stored->site});
    }
}

}  // namespace evenfall::exchange

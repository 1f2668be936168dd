// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "core/exchange/hourly_weather.h"
#include "core/exchange/plain_files.h"
#include "core/input_error.h"
#include "core/units/number.h"
#include "core/weather/hourly_et.h"
#include "core/weather/reference_et.h"
#include "core/weather/weather_checks.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <ostream>

namespace evenfall::cli {
namespace {

using units::inch;
using units::millimetre;

/// A day or an hour of the answer.
struct Line {
    std::string when;
    std::optional<units::Depth> et;
    std::string method;
    std::vector<std::string> flags;
    std::string source;
};

struct Answer {
    const char* key;  ///< "date" or "time"
    std::vector<Line> lines;
    std::vector<weather::WeatherFinding> findings;
    std::vector<std::string> notes;
};

weather::StationSetting setting_of(const ReferenceEtOptions& o) {
    weather::StationSetting s;
    s.latitude = o.latitude;
    s.elevation = o.elevation.quantity();
    if (o.wind_height) s.wind_height = o.wind_height->quantity();
    s.surface = o.surface == "tall" ? weather::Surface::tall_alfalfa : weather::Surface::short_grass;
    s.equation = o.equation == "fao-56" ? weather::Equation::fao_56 : weather::Equation::asce_2005;
    s.angstrom_a = o.angstrom_a;
    s.angstrom_b = o.angstrom_b;
    s.albedo = o.albedo;
    if (o.siting == "coast") s.siting = weather::Siting::coastal;
    if (o.siting == "interior") s.siting = weather::Siting::interior;
    s.dew_point_offset = o.dew_point_offset;
    s.ignore_recorded = o.ignore_recorded;
    weather::check_setting(s);
    return s;
}

Answer daily(const ReferenceEtOptions& o) {
    const auto setting = setting_of(o);
    const auto file = exchange::read_weather(o.file);
    Answer answer{"date", {}, weather::check_weather(file.days, setting), {}};
    for (const Sentence& note : file.notes) answer.notes.push_back(note.english());
    for (const auto& day : file.days) {
        auto et = weather::reference_et(day, setting);
        answer.lines.push_back({calendar::format_date(et.date), et.et, et.method.english(), std::move(et.flags),
                                std::string(et.source.english())});
    }
    return answer;
}

/// Where the sun stands needs the longitude and the clock. Times without an offset, with neither
/// --longitude nor --utc-offset, are read as standard time at the zone's own meridian; that is off by
/// half an hour at most, and each row says so.
Answer hourly(const ReferenceEtOptions& o) {
    std::optional<std::chrono::minutes> clock;
    if (o.utc_offset) clock = std::chrono::minutes{std::lround(*o.utc_offset * 60.0)};
    const auto mark = o.hour_mark == "end" ? exchange::HourMark::end : exchange::HourMark::start;
    weather::HourlySetting setting;
    setting.station = setting_of(o);
    setting.night_clearness = o.night_clearness;
    const auto file = exchange::read_hourly_weather(o.file, mark, clock);
    if (file.has_offsets && clock) {
        throw InputError("--utc-offset", "no such option: the times of this table carry their own offset");
    }
    const auto zone = file.has_offsets ? file.offset : clock;
    std::string placed;
    if (o.longitude) {
        setting.longitude = *o.longitude;
        if (!file.has_offsets && !clock) {
            throw InputError("--longitude without the offset of the clock",
                             "--utc-offset too, since the times carry none");
        }
    } else if (file.has_offsets && !zone) {
        throw InputError("times in UTC and no longitude", "--longitude, in degrees east");
    } else {
        setting.longitude = zone ? static_cast<double>(zone->count()) / 4.0 : 0.0;
        placed = "longitude not given: the clock is taken as standard time at its own meridian";
    }
    Answer answer{"time", {}, {}, {}};
    for (const Sentence& note : file.notes) answer.notes.push_back(note.english());
    for (auto& hour : weather::hourly_reference_et(file.hours, setting)) {
        if (!placed.empty()) hour.flags.push_back(placed);
        // Times come back as they were given: local where they had no offset.
        const std::string when =
            file.has_offsets
                ? calendar::format_instant(hour.start)
                : calendar::format_local_time(calendar::LocalTime{
                      (hour.start + clock.value_or(std::chrono::minutes{0})).time_since_epoch()});
        answer.lines.push_back(
            {when, hour.et, hour.method.english(), std::move(hour.flags), std::string(hour.source.english())});
    }
    if (o.hour_mark == "end") {
        answer.notes.emplace_back("times in the answer mark the start of each period");
    }
    return answer;
}

units::Depth total_of(const Answer& answer, std::size_t& missing) {
    units::Depth total;
    missing = 0;
    for (const auto& line : answer.lines) {
        if (line.et) {
            total += *line.et;
        } else {
            ++missing;
        }
    }
    return total;
}

Json json_of(const Answer& answer) {
    Json rows = Json::array();
    for (const auto& line : answer.lines) {
        Json row{{answer.key, line.when}, {"et_mm", in_or_null(line.et, millimetre)},
                                   {"method", line.method}, {"flags", line.flags}};
        rows.push_back(std::move(row));
    }
    Json findings = Json::array();
    for (const auto& f : answer.findings) {
        findings.push_back({{"kind", f.kind},
                            {"severity", f.severity == weather::Severity::impossible ? "impossible" : "suspect"},
                            {"from", calendar::format_date(f.from)},
                            {"to", calendar::format_date(f.to)},
                            {"days", f.days},
                            {"sentence", f.sentence.english()},
                            {"source", f.source.english()}});
    }
    Json sources = Json::array();
    for (const auto& line : answer.lines) {
        if (!line.source.empty() && std::find(sources.begin(), sources.end(), line.source) == sources.end()) {
            sources.push_back(line.source);
        }
    }
    std::size_t missing = 0;
    const auto total = total_of(answer, missing);
    return {{"rows", std::move(rows)}, {"total_mm", total.in(millimetre)}, {"rejected", missing},
            {"findings", std::move(findings)}, {"sources", std::move(sources)},
            {"notes", answer.notes}};
}

void print_table(const Answer& answer, std::ostream& out) {
    const auto padded = [](std::string text, std::size_t width) {
        return text.size() < width ? std::string(width - text.size(), ' ') + text : text;
    };
    const std::size_t width = answer.lines.front().when.size();
    out << padded(answer.key, width) << padded("mm", 9) << padded("in", 9) << "  method; what was assumed\n";
    for (const auto& line : answer.lines) {
        out << line.when << padded(line.et ? units::format_fixed(line.et->in(millimetre), 3) : "-", 9)
            << padded(line.et ? units::format_fixed(line.et->in(inch), 4) : "-", 9) << "  "
            << line.method;
        for (const auto& flag : line.flags) out << "; " << flag;
        out << '\n';
    }
    std::size_t missing = 0;
    const auto total = total_of(answer, missing);
    out << "Total " << units::format_fixed(total.in(millimetre), 2) << " mm ("
        << units::format_fixed(total.in(inch), 3) << " in)";
    if (missing > 0) {
        out << " over " << answer.lines.size() - missing << " of " << answer.lines.size()
            << " rows: the others have no value and are not filled";
    }
    out << ".\n";
    if (!answer.findings.empty()) out << "The record itself:\n";
    for (const auto& f : answer.findings) {
        out << "  " << calendar::format_date(f.from);
        if (f.to != f.from) out << " to " << calendar::format_date(f.to) << " (" << f.days << " days)";
        out << ": " << f.sentence << '\n';
    }
    for (const auto& note : answer.notes) out << "Note: " << note << '\n';
}

}  // namespace

int run(const ReferenceEtOptions& options, Streams& streams) {
    const Answer answer =
        exchange::is_hourly(options.file) ? hourly(options) : daily(options);
    if (options.json) {
        streams.out << print(json_of(answer));
    } else {
        print_table(answer, streams.out);
    }
    return done;
}

}  // namespace evenfall::cli

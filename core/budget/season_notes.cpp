// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_notes.h"

#include "core/budget/soil.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>

namespace evenfall::budget {
namespace {

std::string days_text(int days) {
    return std::to_string(days) + (days == 1 ? " day" : " days");
}

void note_weather(const SeasonInputs& in, const DailyWeather& weather, std::vector<Note>& notes) {
    notes.insert(notes.end(), in.weather_notes.begin(), in.weather_notes.end());
    for (const auto& [method, days] : weather.methods) {
        notes.push_back({"reference ET", method + ", " + days_text(days.days), days.source, false});
    }
    const auto assumed = std::count(weather.assumed.begin(), weather.assumed.end(), true);
    for (const auto& [remark, days] : weather.remarks) {
        notes.push_back({"weather record", remark + ", " + days_text(days), "the weather record", true});
    }
    if (assumed > 0) {
        notes.push_back({"reference ET",
                         "an input was replaced or refused on " +
                             days_text(static_cast<int>(assumed)),
                         "FAO-56 chapter 3", true});
    }
}

void note_areas(const SeasonResult& result, std::vector<Note>& notes) {
    std::set<std::tuple<std::string, std::string, bool>> coefficients;
    std::set<std::tuple<std::string, std::string, bool>> uniformities;
    for (const AreaSeason& area : result.areas) {
        for (const AreaMonth& month : area.months) {
            if (month.coefficient) {
                // "monthly table fao56_cool, July": one note for all months of a table.
                const std::string& method = month.coefficient->method;
                coefficients.emplace(method.substr(0, method.find(", ")), month.coefficient->source,
                                     month.coefficient->assumed);
            }
            const UniformityChoice& choice = area.uniformity[month.uniformity];
            uniformities.emplace("area " + area.area + ": " + choice.method + ", multiplier " +
                                     units::format_fixed(choice.achieved.value(), 3),
                                 choice.source, choice.assumed);
        }
    }
    for (const auto& [method, source, assumed] : coefficients) {
        notes.push_back({"landscape coefficient", method, source, assumed});
    }
    for (const auto& [method, source, assumed] : uniformities) {
        notes.push_back({"uniformity", method, source, assumed});
    }
}

void note_salt(const SeasonInputs& in, std::vector<Note>& notes) {
    for (const AreaSetting& setting : in.settings) {
        if (!setting.salt) continue;
        const double lr = weather::leaching_requirement(*setting.salt).value();
        notes.push_back({"leaching",
                         "area " + setting.area + ": need / (1 - LR), LR " + units::format_fixed(lr, 3) +
                             " from water of " + units::format_shortest(setting.salt->water_ec) +
                             " dS/m and soil kept at " +
                             units::format_shortest(setting.salt->soil_ec_limit) +
                             " dS/m; reclaimed water falls under local health rules",
                         "Rhoades (1974) as Ayers & Westcot (1985) FAO-29 Eq. 9", false});
    }
}

void note_cans(const SeasonInputs& in, const SeasonResult& result, std::vector<Note>& notes) {
    notes.push_back({"account by cans",
                     "daily root-zone balance at every can, water first, p adjusted to ET, starting "
                     "half way down the readily available water; no runoff; between readings the "
                     "meter's flow is taken as even",
                     "FAO-56 chapter 8, Eq. 82 to 88", true});
    std::set<std::tuple<std::string, std::string, bool>> soils;
    for (std::size_t i = 0; i < in.areas.size(); ++i) {
        if (!result.areas[i].total.by_cans) continue;
        const auto capacity = holding_capacity(in.areas[i]);
        const auto roots = root_depth(in.areas[i]);
        const auto share = depletion_share(in.areas[i]);
        soils.emplace("area " + in.areas[i].code + ": holds " +
                          units::format_fixed(
                              available_water(capacity, roots).in(units::millimetre), 1) +
                          " mm (" + capacity.method + "), p " + units::format_shortest(share.p),
                      capacity.source + "; roots: " + roots.source + "; p: " + share.source,
                      capacity.assumed || roots.assumed || share.assumed);
    }
    for (const auto& [method, source, assumed] : soils) {
        notes.push_back({"soil", method, source, assumed});
    }
}

/// Areas whose water falls faster than the ground takes it in.
void find_runoff(const site::Area& record, const AreaSeason& area, std::vector<SeasonFinding>& findings) {
    if (!area.runoff_in_one_run || !(*area.runoff_in_one_run > units::Volume{})) return;
    const auto intake = intake_rate(record);
    findings.push_back(
        {"area " + area.area,
         "Had each day's water fallen in a single run, up to " +
             units::format_grouped(area.runoff_in_one_run->in(units::us_gallon), 0) +
             " gal would have run off: the ground takes in about " +
             units::format_fixed(intake.rate.in(units::inch_per_hour), 2) + " in/h" +
             (intake.assumed ? " (assumed)" : "") +
             ". Cycles with time to soak, as in the base schedule, keep it in place; the account by "
             "cans counts none of it."});
}

std::string range_text(calendar::Month first, calendar::Month last) {
    if (first == last) return calendar::format_month(first);
    return calendar::format_month(first) + " to " + calendar::format_month(last);
}

/// One finding for each run of months in which an area shows a flag.
void find_runs(const AreaSeason& area, SeasonFlag flag, std::vector<SeasonFinding>& findings) {
    std::optional<calendar::Month> first;
    calendar::Month last{};
    const auto close = [&] {
        if (!first) return;
        findings.push_back({"area " + area.area,
                            range_text(*first, last) + ": " + std::string(sentence_of(flag))});
        first.reset();
    };
    for (const AreaMonth& month : area.months) {
        if (!has_flag(month.flags, flag)) {
            close();
            continue;
        }
        if (!first) first = month.month;
        last = month.month;
    }
    close();
}

}  // namespace

std::vector<Note> season_notes(const SeasonInputs& in, const DailyWeather& weather,
                               const SeasonResult& result) {
    std::vector<Note> notes;
    note_weather(in, weather, notes);
    notes.push_back({"effective rain", in.rain.name(), std::string(in.rain.source()), false});
    notes.push_back({"budget", in.program.title + ": " + in.program.formula(),
                     in.program.source + " [" +
                         std::string(reference::text_of(in.program.mark)) + "]",
                     false});
    note_areas(result, notes);
    note_salt(in, notes);
    notes.push_back(
        {"waste account",
         "multiplier method; attainable multiplier " +
             units::format_fixed(in.program.target_multiplier().value(), 4) +
             " at the program's target uniformity " +
             units::format_shortest(in.program.target_du.value()),
         "derived from the definition of the run-time multiplier", false});
    if (result.total.by_cans) note_cans(in, result, notes);
    notes.push_back({"low quarter", std::string(audit::text_of(in.quarter_rule)),
                     "no published rule; the choice is a convention of the report", false});
    const bool shared = has_flag(result.total.flags, SeasonFlag::share_assumed);
    notes.push_back({"use",
                     std::string(meter::method_linear) +
                         (shared ? "; shared meters split by area x coefficient" : ""),
                     "meter readings", shared});
    return notes;
}

std::vector<SeasonFinding> season_findings(const SeasonInputs& in, const MeteredSite& metered,
                                           const SeasonResult& result) {
    std::vector<SeasonFinding> findings;
    for (const site::Area& area : in.areas) {
        if (!area.meter.empty() && !metered.index_of(area.meter)) {
            findings.push_back({"area " + area.code, "Its meter " + area.meter +
                                                         " is not among the site's meters."});
        }
    }
    static constexpr std::array told{
        SeasonFlag::eto_missing,        SeasonFlag::rain_missing,       SeasonFlag::no_meter,
        SeasonFlag::no_readings,        SeasonFlag::meter_part_month,   SeasonFlag::meter_gap,
        SeasonFlag::weather_part_month, SeasonFlag::use_negative,       SeasonFlag::submeters_above,
        SeasonFlag::leak_above_use,     SeasonFlag::head_type_unknown,  SeasonFlag::no_catch_test,
        SeasonFlag::off_target_assumed, SeasonFlag::coefficient_assumed, SeasonFlag::leaching_included};
    for (std::size_t i = 0; i < result.areas.size(); ++i) {
        for (const SeasonFlag flag : told) find_runs(result.areas[i], flag, findings);
        find_runoff(in.areas[i], result.areas[i], findings);
    }
    for (std::size_t i = 0; i < metered.size(); ++i) {
        const std::string record = "meter " + metered.name(i);
        const auto problems = metered.problems(i);
        if (problems > 0) {
            findings.push_back({record,
                                "Its record has " + std::to_string(problems) +
                                    (problems == 1 ? " place" : " places") +
                                    " that cannot be read as a flow forward; see the meter screens."});
        }
        const bool feeds = std::any_of(in.areas.begin(), in.areas.end(), [&](const site::Area& a) {
            return metered.index_of(a.meter) == i;
        });
        if (!feeds) {
            findings.push_back({record,
                                metered.has_places_below(i)
                                    ? "What it shows beyond its submeters is in no area's account."
                                    : "It feeds no area; its water is in no area's account."});
        }
    }
    return findings;
}

}  // namespace evenfall::budget

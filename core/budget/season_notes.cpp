// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_notes.h"

#include "core/budget/soil.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>
#include <utility>

namespace evenfall::budget {
namespace {

Sentence days_text(int days) {
    if (days == 1) return phrase("budget", "1 day");
    return {phrase("budget", "%1 days"), days};
}

Sentence area_record(const std::string& code) { return {phrase("budget", "area %1"), code}; }

/// "monthly table fao56_cool" of "monthly table fao56_cool, July".
const Sentence& first_part(const Sentence& method) {
    const bool joint = method.form().form == nullptr && !method.values().empty();
    return joint ? first_part(method.values().front()) : method;
}

/// Notes of one topic, each once, in the order of their English.
class NotesOnce {
  public:
    void add(const Sentence& method, const Sentence& source, bool assumed) {
        notes_.try_emplace({method.english(), source.english(), assumed}, Note{"", method, source, assumed});
    }
    void into(std::vector<Note>& notes, const char* topic) const {
        for (const auto& [key, note] : notes_) notes.push_back({topic, note.method, note.source, note.assumed});
    }

  private:
    std::map<std::tuple<std::string, std::string, bool>, Note> notes_;
};

void note_weather(const SeasonInputs& in, const DailyWeather& weather, std::vector<Note>& notes) {
    notes.insert(notes.end(), in.weather_notes.begin(), in.weather_notes.end());
    for (const auto& [english, of] : weather.methods) {
        notes.push_back({"reference ET", Sentence::joined({of.method, days_text(of.days)}, ", "), of.source, false});
    }
    const auto assumed = std::count(weather.assumed.begin(), weather.assumed.end(), true);
    for (const auto& [english, remark] : weather.remarks) {
        notes.push_back({"weather record", Sentence::joined({remark.said, days_text(remark.days)}, ", "),
                         phrase("budget", "the weather record"), true});
    }
    if (assumed > 0) {
        notes.push_back(
            {"reference ET",
             {phrase("budget", "an input was replaced or refused on %1"), days_text(static_cast<int>(assumed))},
             phrase("budget", "FAO-56 chapter 3"),
             true});
    }
}

void note_areas(const SeasonResult& result, std::vector<Note>& notes) {
    NotesOnce coefficients;
    NotesOnce uniformities;
    for (const AreaSeason& area : result.areas) {
        for (const AreaMonth& month : area.months) {
            if (month.coefficient) {
                // One note for all months of a table.
                coefficients.add(first_part(month.coefficient->method), month.coefficient->source,
                                 month.coefficient->assumed);
            }
            const UniformityChoice& choice = area.uniformity[month.uniformity];
            uniformities.add({phrase("budget", "area %1: %2, multiplier %3"), area.area, choice.method,
                              units::format_fixed(choice.achieved.value(), 3)},
                             choice.source, choice.assumed);
        }
    }
    coefficients.into(notes, "landscape coefficient");
    uniformities.into(notes, "uniformity");
}

void note_salt(const SeasonInputs& in, std::vector<Note>& notes) {
    for (const AreaSetting& setting : in.settings) {
        if (!setting.salt) continue;
        const double lr = weather::leaching_requirement(*setting.salt).value();
        notes.push_back({"leaching",
                         {phrase("budget",
                                 "area %1: need / (1 - LR), LR %2 from water of %3 dS/m and soil kept at %4 "
                                 "dS/m; reclaimed water falls under local health rules"),
                          setting.area, units::format_fixed(lr, 3), units::format_shortest(setting.salt->water_ec),
                          units::format_shortest(setting.salt->soil_ec_limit)},
                         phrase("budget", "Rhoades (1974) as Ayers & Westcot (1985) FAO-29 Eq. 9"),
                         false});
    }
}

void note_cans(const SeasonInputs& in, const SeasonResult& result, std::vector<Note>& notes) {
    notes.push_back({"account by cans",
                     phrase("budget",
                            "daily root-zone balance at every can, water first, p adjusted to ET, starting "
                            "half way down the readily available water; no runoff; between readings the "
                            "meter's flow is taken as even"),
                     phrase("budget", "FAO-56 chapter 8, Eq. 82 to 88"), true});
    NotesOnce soils;
    for (std::size_t i = 0; i < in.areas.size(); ++i) {
        if (!result.areas[i].total.by_cans) continue;
        const auto capacity = holding_capacity(in.areas[i]);
        const auto roots = root_depth(in.areas[i]);
        const auto share = depletion_share(in.areas[i]);
        soils.add({phrase("budget", "area %1: holds %2 mm (%3), p %4"), in.areas[i].code,
                   units::format_fixed(available_water(capacity, roots).in(units::millimetre), 1), capacity.method,
                   units::format_shortest(share.p)},
                  {phrase("budget", "%1; roots: %2; p: %3"), capacity.source, roots.source, share.source},
                  capacity.assumed || roots.assumed || share.assumed);
    }
    soils.into(notes, "soil");
}

/// Areas whose water falls faster than the ground takes it in.
void find_runoff(const site::Area& record, const AreaSeason& area, std::vector<SeasonFinding>& findings) {
    if (!area.runoff_in_one_run || !(*area.runoff_in_one_run > units::Volume{})) return;
    const auto intake = intake_rate(record);
    const std::string gallons = units::format_grouped(area.runoff_in_one_run->in(units::us_gallon), 0);
    const std::string rate = units::format_fixed(intake.rate.in(units::inch_per_hour), 2);
    const Sentence most = intake.assumed
                              ? Sentence{phrase("budget",
                                                "Had each day's water fallen in a single run, up to %1 gal would "
                                                "have run off: the ground takes in about %2 in/h (assumed)."),
                                         gallons, rate}
                              : Sentence{phrase("budget",
                                                "Had each day's water fallen in a single run, up to %1 gal would "
                                                "have run off: the ground takes in about %2 in/h."),
                                         gallons, rate};
    findings.push_back(
        {area_record(area.area),
         Sentence::joined({most, phrase("budget",
                                        "Cycles with time to soak, as in the base schedule, keep it in place; "
                                        "the account by cans counts none of it.")},
                          " ")});
}

Sentence range_text(calendar::Month first, calendar::Month last) {
    if (first == last) return calendar::format_month(first);
    return {phrase("budget", "%1 to %2"), calendar::format_month(first), calendar::format_month(last)};
}

/// One finding for each run of months in which an area shows a flag.
void find_runs(const AreaSeason& area, SeasonFlag flag, std::vector<SeasonFinding>& findings) {
    std::optional<calendar::Month> first;
    calendar::Month last{};
    const auto close = [&] {
        if (!first) return;
        findings.push_back(
            {area_record(area.area), Sentence::joined({range_text(*first, last), sentence_of(flag)}, ": ")});
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
    notes.push_back({"effective rain", in.rain.name(), in.rain.source(), false});
    notes.push_back({"budget",
                     Sentence::joined({in.program.title_words(), in.program.formula()}, ": "),
                     {phrase("budget", "%1 [%2]"), in.program.source_words(), reference::words_of(in.program.mark)},
                     false});
    note_areas(result, notes);
    note_salt(in, notes);
    notes.push_back(
        {"waste account",
         {phrase("budget", "multiplier method; attainable multiplier %1 at the program's target uniformity %2"),
          units::format_fixed(in.program.target_multiplier().value(), 4),
          units::format_shortest(in.program.target_du.value())},
         phrase("budget", "derived from the definition of the run-time multiplier"),
         false});
    if (result.total.by_cans) note_cans(in, result, notes);
    notes.push_back({"low quarter", audit::text_of(in.quarter_rule),
                     phrase("budget", "no published rule; the choice is a convention of the report"), false});
    const bool shared = has_flag(result.total.flags, SeasonFlag::share_assumed);
    Sentence use = meter::method_linear;
    if (shared) use = Sentence::joined({use, phrase("budget", "shared meters split by area x coefficient")}, "; ");
    notes.push_back({"use", use, phrase("budget", "meter readings"), shared});
    return notes;
}

std::vector<SeasonFinding> season_findings(const SeasonInputs& in, const MeteredSite& metered,
                                           const SeasonResult& result) {
    std::vector<SeasonFinding> findings;
    for (const site::Area& area : in.areas) {
        if (!area.meter.empty() && !metered.index_of(area.meter)) {
            findings.push_back({area_record(area.code),
                                {phrase("budget", "Its meter %1 is not among the site's meters."), area.meter}});
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
        const Sentence record{phrase("budget", "meter %1"), metered.name(i)};
        const auto problems = metered.problems(i);
        if (problems > 0) {
            findings.push_back(
                {record, problems == 1
                             ? Sentence(phrase("budget",
                                               "Its record has 1 place that cannot be read as a flow forward; "
                                               "see the meter screens."))
                             : Sentence(phrase("budget",
                                               "Its record has %1 places that cannot be read as a flow "
                                               "forward; see the meter screens."),
                                        problems)});
        }
        const bool feeds = std::any_of(in.areas.begin(), in.areas.end(), [&](const site::Area& a) {
            return metered.index_of(a.meter) == i;
        });
        if (!feeds) {
            findings.push_back(
                {record, metered.has_places_below(i)
                             ? phrase("budget", "What it shows beyond its submeters is in no area's account.")
                             : phrase("budget", "It feeds no area; its water is in no area's account.")});
        }
    }
    return findings;
}

}  // namespace evenfall::budget

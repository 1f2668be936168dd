// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/season.h"

#include "app/workflow/usable_tests.h"
#include "core/budget/season_intervals.h"
#include "core/calendar/time_zone.h"
#include "core/input_error.h"
#include "core/store/catch_test_store.h"
#include "core/store/meter_store.h"
#include "core/store/price_store.h"
#include "core/store/planting_store.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"
#include "core/weather/weather_checks.h"

#include <fstream>
#include <iterator>
#include <map>
#include <utility>

namespace evenfall::workflow {
namespace {

constexpr std::size_t largest_program_file = 1U << 20U;

site::Site site_named(const store::Book& book, const std::string& code) {
    if (auto site = store::find_site(book, code)) return *std::move(site);
    std::string known;
    for (const site::Site& s : store::sites(book)) known += (known.empty() ? "" : ", ") + s.code;
    if (known.empty()) throw InputError(code, phrase("workflow", "a site in the book; it has none yet"));
    throw InputError(code, {phrase("workflow", "a site in the book, one of %1"), known});
}

std::vector<budget::MeterInput> meter_inputs(const store::Book& book, const site::Site& site,
                                             const SeasonQuestion& question) {
    const calendar::TimeZone zone(site.time_zone);
    const auto from = zone.start_of_day(calendar::first_day(question.from));
    const auto to = zone.start_of_day(calendar::last_day(question.to) + std::chrono::days{1});
    std::vector<budget::MeterInput> inputs;
    for (meter::Meter& m : store::meters(book, site.code)) {
        // Leaks are left open: the season screens the readings itself, month by month.
        budget::MeterInput input{std::move(m), {}, {}};
        input.readings = store::readings_around(book, input.meter.code, from, to);
        inputs.push_back(std::move(input));
    }
    return inputs;
}

/// What the areas fed by a meter needed, month by month, where that is known.
std::vector<meter::MonthNeed> needs_of(const budget::SeasonResult& result, const std::string& code) {
    std::map<calendar::Month, units::Volume> sums;
    for (const auto& area : result.areas) {
        if (area.meter != code) continue;
        for (const auto& month : area.months) {
            if (month.need) sums[month.month] += *month.need;
        }
    }
    std::vector<meter::MonthNeed> needs;
    for (const auto& [month, need] : sums) needs.push_back({month, need});
    return needs;
}

std::vector<meter::MeterFinding> screened(const budget::SeasonInputs& inputs,
                                          const budget::SeasonResult& result) {
    const calendar::TimeZone zone(inputs.site.time_zone);
    std::vector<meter::MeterFinding> all;
    for (const auto& input : inputs.meters) {
        const auto record = meter::meter_record(input.meter, input.readings);
        const auto needs = needs_of(result, input.meter.code);
        for (auto& finding : meter::all_screens({input.meter, input.readings, record, zone}, needs, {})) {
            all.push_back(std::move(finding));
        }
    }
    return all;
}

/// What the weather record itself shows, beside what was computed from it.
void add_weather_findings(const budget::SeasonInputs& inputs, budget::SeasonResult& result) {
    for (const auto& f : weather::check_weather(inputs.weather, inputs.station)) {
        const std::string from = calendar::format_date(f.from);
        const Sentence dates = f.to == f.from
                                   ? Sentence(from)
                                   : Sentence(phrase("workflow", "%1 to %2"), from, calendar::format_date(f.to));
        std::vector<Sentence> parts{f.sentence};
        if (f.severity == weather::Severity::impossible) parts.emplace_back(phrase("workflow", "Not used."));
        parts.push_back({phrase("workflow", "Limit: %1."), f.source});
        result.findings.push_back({phrase("workflow", "weather"),
                                   Sentence::joined({dates, Sentence::joined(std::move(parts), " ")}, ": ")});
    }
}

}  // namespace

budget::Program program_named(const std::string& name_or_file) {
    if (!name_or_file.ends_with(".json")) return budget::built_in_program(name_or_file);
    std::ifstream in(name_or_file, std::ios::binary);
    if (!in) throw InputError(name_or_file, phrase("workflow", "a program file that can be read"));
    std::string text;
    text.resize(largest_program_file + 1);
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(in.gcount()));
    if (text.size() > largest_program_file)
        throw InputError(name_or_file, phrase("workflow", "a program file of at most 1 MiB"));
    return budget::read_program(text, name_or_file);
}

budget::SeasonInputs season_inputs(const store::Book& book, const SeasonQuestion& question) {
    WeatherAtHand at_hand;
    return season_inputs(book, question, at_hand);
}

budget::SeasonInputs season_inputs(const store::Book& book, const SeasonQuestion& question,
                                   WeatherAtHand& at_hand) {
    site::Site site = site_named(book, question.site);
    if (question.to < question.from) {
        throw InputError({phrase("workflow", "%1 to %2"), calendar::format_month(question.from),
                          calendar::format_month(question.to)},
                         phrase("workflow", "months in order, the first one first"));
    }
    SiteWeather weather = weather_of_site(book, site, calendar::first_day(question.from),
                                          calendar::last_day(question.to), at_hand);
    budget::SeasonInputs inputs{
        .site = site,
        .areas = store::areas(book, site.code),
        .meters = meter_inputs(book, site, question),
        .weather = std::move(weather.days),
        .station = weather.station,
        .tests = usable_tests(store::catch_tests_of_site(book, site.code), question.quarter_rule).tests,
        .settings = store::area_settings(book, site.code),
        .program = program_named(question.program),
        .from = question.from,
        .to = question.to,
        .rain = weather::parse_rain_rule(question.rain),
        .quarter_rule = question.quarter_rule,
        .plantings = store::plantings(book, site.code),
        .place_days = std::move(weather.place_days),
        .weather_notes = std::move(weather.notes),
    };
    return inputs;
}

std::optional<budget::SeasonCost> season_cost_of(const store::Book& book,
                                                 const budget::SeasonResult& season) {
    const budget::WaterRates water(store::water_rates(book), season.site);
    const budget::EnergyRates energy(store::energy_rates(book), season.site);
    const auto pumps = store::pumps(book, season.site);
    if (water.empty() && pumps.empty()) return std::nullopt;
    return budget::season_cost(season, water, energy, pumps);
}

budget::IntervalChoice interval_choice() {
    // Fixed, so that the same book gives the same report. The account by cans costs a hundred times
    // as much a draw; 200 draws give its 5 % quantiles well enough for two digits.
    return {2000, 200, 1, 0.90, 1};
}

SeasonAnswer answer_season(const store::Book& book, const SeasonQuestion& question) {
    budget::SeasonInputs inputs = season_inputs(book, question);
    budget::SeasonResult result = budget::season(inputs);
    result.cost = season_cost_of(book, result);
    result.intervals = budget::season_intervals(inputs, result, interval_choice());
    add_weather_findings(inputs, result);
    const auto all_tests = store::catch_tests_of_site(book, inputs.site.code);
    for (auto& f : usable_tests(all_tests, question.quarter_rule).left_out) result.findings.push_back(std::move(f));
    auto findings = screened(inputs, result);
    return {std::move(inputs), std::move(result), std::move(findings)};
}

}  // namespace evenfall::workflow

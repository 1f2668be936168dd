// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/coefficient_plan.h"

#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <utility>

namespace evenfall::weather {
namespace {

using std::chrono::days;

std::string number(double v) { return units::format_shortest(v); }

const reference::Row& row_or_error(std::string_view table, std::string_view key) {
    const auto& t = reference::Table::named(table);
    if (const auto* row = t.find("key", key)) return *row;
    std::string known;
    for (const auto& row : t.rows()) {
        if (&row != &t.rows().front()) known += ", ";
        known += row.text("key");
    }
    throw InputError(key, {phrase("weather", "one of %1"), known});
}

void check_coefficient(double k) {
    if (!(k >= 0.0 && k <= most_coefficient)) {
        throw InputError(number(k), phrase("weather", "a coefficient from 0 to 2"));
    }
}

double straight(double from, double to, int step, int length) {
    return from + (to - from) * static_cast<double>(step) / static_cast<double>(length);
}

/// The choice before shade.
CoefficientChoice unshaded(const site::Area& area, const CoefficientPlan& plan,
                           calendar::Date date) {
    for (const auto& e : plan.establishments) {
        if (date >= e.from && date < e.from + days{e.days}) {
            check_coefficient(e.coefficient);
            return {units::LandscapeCoefficient::of(e.coefficient), phrase("weather", "establishment of new turf"),
                    e.source, false};
        }
    }
    for (const auto& crop : plan.sod) {
        if (date < crop.harvested || (crop.next_harvest && date >= *crop.next_harvest)) continue;
        GrowthStages stages = crop.stages;
        // Sod stands at its middle stage until it is cut.
        stages.middle = 100000;
        const int day = static_cast<int>((date - crop.harvested).count()) + 1;
        return {units::LandscapeCoefficient::of(stage_coefficient(stages, day)),
                Sentence::joined({phrase("weather", "sod growth stage"), {phrase("weather", "day %1"), day}}, ", "),
                stages.source, false};
    }
    const calendar::Month month = calendar::month_of(date);
    if (!area.coefficient) {
        for (const auto& cover : plan.covers) {
            if (date < cover.from || date > cover.to) continue;
            const auto& plant = row_or_error("plants.csv", cover.plant);
            auto choice = monthly_coefficient(plant.text("coefficients"), month);
            choice.method = Sentence::joined(
                {std::move(choice.method), {phrase("weather", "under %1"), plant.words("name")}}, ", ");
            return choice;
        }
    }
    return landscape_coefficient(area, month);
}

void check_shade(double shade) {
    const auto& row = row_or_error("landscape_factors.csv", "microclimate");
    if (!(shade >= row.number("low") && shade <= row.number("high"))) {
        throw InputError(number(shade), {phrase("weather", "a shade or microclimate factor from %1 to %2"),
                                         number(row.number("low")), number(row.number("high"))});
    }
}

}  // namespace

double stage_coefficient(const GrowthStages& s, int day) {
    if (day < 1) throw InputError(day, phrase("weather", "a day of the season from 1 on"));
    if (s.initial < 0 || s.development < 0 || s.middle < 0 || s.late < 0) {
        throw InputError(phrase("weather", "a negative stage"), phrase("weather", "stage lengths of 0 days or more"));
    }
    for (const double k : {s.k_initial, s.k_middle, s.k_end}) check_coefficient(k);
    int before = s.initial;
    if (day <= before) return s.k_initial;
    if (day <= before + s.development) {
        return straight(s.k_initial, s.k_middle, day - before, s.development);
    }
    before += s.development;
    if (day <= before + s.middle) return s.k_middle;
    before += s.middle;
    if (day <= before + s.late) return straight(s.k_middle, s.k_end, day - before, s.late);
    return s.k_end;
}

GrowthStages sod_stages(std::string_view key) {
    const auto& row = row_or_error("sod_stages.csv", key);
    const auto whole = [&](std::string_view column) { return static_cast<int>(row.number(column)); };
    return {whole("initial"),        whole("development"),   whole("middle"),     whole("late"),
            row.number("k_initial"), row.number("k_middle"), row.number("k_end"), row.words("source")};
}

Establishment establishment(std::string_view key, calendar::Date from) {
    const auto& row = row_or_error("establishment.csv", key);
    return {from, static_cast<int>(row.number("days")), row.number("coefficient"), row.words("source")};
}

CoefficientChoice coefficient_on(const site::Area& area, const CoefficientPlan& plan,
                                 calendar::Date date) {
    auto choice = unshaded(area, plan, date);
    for (const auto& shade : plan.shades) {
        if (date < shade.from || (shade.to && date > *shade.to)) continue;
        check_shade(shade.factor);
        choice.value = units::LandscapeCoefficient::of(choice.value.value() * shade.factor);
        choice.method = Sentence::joined(
            {std::move(choice.method), {phrase("weather", "shade or microclimate x %1"), number(shade.factor)}},
            ", ");
        choice.source = Sentence::joined(
            {std::move(choice.source), phrase("weather", "Costello et al. (2000) for the microclimate factor")},
            "; ");
        break;
    }
    return choice;
}

CoefficientChoice coefficient_of_month(const site::Area& area, const CoefficientPlan& plan,
                                       calendar::Month month) {
    if (plan.empty()) return landscape_coefficient(area, month);
    auto choice = coefficient_on(area, plan, calendar::first_day(month));
    double sum = 0.0;
    bool same = true;
    for (auto date = calendar::first_day(month); date <= calendar::last_day(month);
         date += days{1}) {
        const auto day = coefficient_on(area, plan, date);
        sum += day.value.value();
        same = same && day.value == choice.value;
        choice.assumed = choice.assumed || day.assumed;
        if (choice.source.english().find(day.source.english()) == std::string::npos) {
            choice.source = Sentence::joined({std::move(choice.source), day.source}, "; ");
        }
    }
    if (same) return choice;
    choice.value = units::LandscapeCoefficient::of(sum / calendar::days_in(month));
    choice.method = {phrase("weather", "mean of the days of %1"), calendar::format_month(month)};
    return choice;
}

}  // namespace evenfall::weather

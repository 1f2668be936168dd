// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/landscape_coefficient.h"

#include "core/calendar/month_words.h"
#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <array>
#include <utility>

namespace evenfall::weather {
namespace {

constexpr std::array<std::string_view, 12> month_columns{"jan", "feb", "mar", "apr", "may", "jun",
                                                         "jul", "aug", "sep", "oct", "nov", "dec"};
constexpr std::string_view stand_in_plant = "cool_season";

std::size_t index_of(calendar::Month month) {
    return static_cast<unsigned>(month.month()) - 1U;
}

Sentence known_keys(const reference::Table& table) {
    std::string all;
    for (const auto& row : table.rows()) {
        if (&row != &table.rows().front()) all += ", ";
        all += row.text("key");
    }
    return {phrase("weather", "one of %1"), all};
}

void check_factor(std::string_view key, double value) {
    const auto* row = reference::Table::named("landscape_factors.csv").find("key", key);
    const double low = row->number("low");
    const double high = row->number("high");
    if (!(value >= low && value <= high)) {
        throw InputError(units::format_shortest(value), {phrase("weather", "a %1 factor from %2 to %3"), key,
                                                         units::format_shortest(low), units::format_shortest(high)});
    }
}

}  // namespace

CoefficientChoice monthly_coefficient(std::string_view set, calendar::Month month) {
    const auto& table = reference::Table::named("monthly_coefficients.csv");
    const auto* row = table.find("key", set);
    if (row == nullptr) throw InputError(set, known_keys(table));
    const std::size_t m = index_of(month);
    return {units::LandscapeCoefficient::of(row->number(month_columns.at(m))),
            Sentence::joined({{phrase("weather", "monthly table %1"), set}, calendar::month_name(month)}, ", "),
            row->words("source"), false};
}

CoefficientChoice landscape_coefficient(const site::Area& area, calendar::Month month) {
    if (area.coefficient) {
        const double k = *area.coefficient;
        if (!(k >= 0.0 && k <= most_coefficient)) {
            throw InputError(units::format_shortest(k),
                             {phrase("weather", "a coefficient from 0 to 2 for area %1"), area.code});
        }
        return {units::LandscapeCoefficient::of(k), phrase("weather", "coefficient of the area's record"),
                phrase("weather", "the area's record"), false};
    }
    const auto& plants = reference::Table::named("plants.csv");
    const auto* plant = plants.find_typed(area.plant);
    const bool assumed = plant == nullptr;
    if (assumed) plant = plants.find("key", stand_in_plant);
    auto choice = monthly_coefficient(plant->text("coefficients"), month);
    if (assumed) {
        choice.assumed = true;
        const Phrase why = area.plant.empty() ? phrase("weather", "plant not recorded: cool-season turf assumed")
                                              : phrase("weather", "plant not in the data: cool-season turf assumed");
        choice.method = Sentence::joined({std::move(choice.method), why}, ", ");
    }
    return choice;
}

CoefficientChoice landscape_product(double species, double density, double microclimate) {
    check_factor("species", species);
    check_factor("density", density);
    check_factor("microclimate", microclimate);
    const auto text = [](double v) { return units::format_shortest(v); };
    return {units::LandscapeCoefficient::of(species * density * microclimate),
            {phrase("weather", "landscape coefficient: species %1 x density %2 x microclimate %3"), text(species),
             text(density), text(microclimate)},
            phrase("weather", "Costello, Matheny, Clark & Jones (2000), landscape coefficient method"),
            false};
}

}  // namespace evenfall::weather

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/planting.h"

#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <utility>

namespace evenfall::weather {
namespace {

constexpr std::array names{std::pair{PlantingKind::sod, std::string_view("sod")},
                           std::pair{PlantingKind::establishment, std::string_view("establishment")},
                           std::pair{PlantingKind::overseeding, std::string_view("overseeding")},
                           std::pair{PlantingKind::shade, std::string_view("shade")}};

void check_range(double value, double low, double high, PhraseOf<2> expected) {
    if (value >= low && value <= high) return;
    throw InputError(units::format_shortest(value),
                     {expected, units::format_shortest(low), units::format_shortest(high)});
}

Establishment establishment_of(const Planting& p) {
    Establishment out = p.key.empty() ? Establishment{p.from, 0, 0.0, phrase("weather", "the area's record")}
                                      : establishment(p.key, p.from);
    if (p.coefficient) {
        out.coefficient = *p.coefficient;
        out.source = phrase("weather", "the area's record");
    }
    if (p.to) out.days = static_cast<int>((*p.to - p.from).count()) + 1;
    return out;
}

}  // namespace

std::string_view name_of(PlantingKind kind) {
    for (const auto& [k, name] : names) {
        if (k == kind) return name;
    }
    return "";
}

PlantingKind planting_kind_named(std::string_view name) {
    for (const auto& [kind, known] : names) {
        if (known == name) return kind;
    }
    throw InputError(name, phrase("weather", "sod, establishment, overseeding or shade"));
}

void check_planting(const Planting& p) {
    if (p.to && *p.to < p.from) {
        throw InputError(calendar::format_date(*p.to),
                         {phrase("weather", "a last day not before the first, %1"), calendar::format_date(p.from)});
    }
    switch (p.kind) {
        case PlantingKind::sod: static_cast<void>(sod_stages(p.key)); return;
        case PlantingKind::establishment:
            if (p.key.empty() && !(p.to && p.coefficient)) {
                throw InputError(phrase("weather", "no key"),
                                 phrase("weather", "a key of establishment.csv, or a last day and a coefficient"));
            }
            check_range(establishment_of(p).coefficient, 0.0, most_coefficient,
                        phrase("weather", "a coefficient from %1 to %2"));
            return;
        case PlantingKind::overseeding: {
            if (!p.to)
                throw InputError(phrase("weather", "no last day"),
                                 phrase("weather", "the last day under the other plant"));
            const auto& plants = reference::Table::named("plants.csv");
            if (plants.find("key", p.key) == nullptr) {
                throw InputError(p.key, phrase("weather", "the key of a plant, such as perennial_ryegrass"));
            }
            return;
        }
        case PlantingKind::shade: {
            if (!p.coefficient)
                throw InputError(phrase("weather", "no coefficient"), phrase("weather", "the factor of the shade"));
            const auto* row = reference::Table::named("landscape_factors.csv").find("key", "microclimate");
            check_range(*p.coefficient, row->number("low"), row->number("high"),
                        phrase("weather", "a factor from %1 to %2"));
            return;
        }
    }
}

CoefficientPlan plan_of(std::span<const Planting> plantings, std::string_view area) {
    CoefficientPlan plan;
    for (const Planting& p : plantings) {
        if (p.area != area) continue;
        check_planting(p);
        switch (p.kind) {
            case PlantingKind::sod: plan.sod.push_back({p.from, p.to, sod_stages(p.key)}); break;
            case PlantingKind::establishment:
                plan.establishments.push_back(establishment_of(p));
                break;
            case PlantingKind::overseeding: plan.covers.push_back({p.from, *p.to, p.key}); break;
            case PlantingKind::shade: plan.shades.push_back({p.from, p.to, *p.coefficient}); break;
        }
    }
    std::sort(plan.sod.begin(), plan.sod.end(),
              [](const SodCrop& a, const SodCrop& b) { return a.harvested < b.harvested; });
    for (std::size_t i = 1; i < plan.sod.size(); ++i) {
        auto& before = plan.sod[i - 1].next_harvest;
        if (!before || *before > plan.sod[i].harvested) before = plan.sod[i].harvested;
    }
    return plan;
}

}  // namespace evenfall::weather

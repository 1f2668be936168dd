// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/weather/coefficient_plan.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// What happened on an area that changes what its turf uses, as one record each: a sod harvest, new
/// turf, a winter's overseeding, shade. Tests: tests/weather/coefficient_plan_test.cpp
namespace evenfall::weather {

enum class PlantingKind : int { sod = 1, establishment = 2, overseeding = 3, shade = 4 };  ///< stored: frozen

std::string_view name_of(PlantingKind kind);
/// @throws InputError naming the known ones
PlantingKind planting_kind_named(std::string_view name);

/// kind            from            to                    key                       coefficient
/// sod             day of harvest  next harvest, if not   key in sod_stages.csv     -
///                                 a record of its own
/// establishment   first day       last day, or the       key in                    replaces the key's
///                                 key's usual length     establishment.csv
/// overseeding     first day       last day, needed       key in plants.csv         -
/// shade           first day       last day, or on        -                         factor, needed
struct Planting {
    std::string area;
    PlantingKind kind = PlantingKind::sod;
    calendar::Date from;
    std::optional<calendar::Date> to = {};
    std::string key = {};
    std::optional<double> coefficient = {};
    bool operator==(const Planting&) const = default;
};

/// @throws InputError for what the table above does not allow, an unknown key, a last day before the
///   first, a coefficient outside its range
void check_planting(const Planting& planting);

/// The plan of one area from the records of any areas, in any order.
CoefficientPlan plan_of(std::span<const Planting> plantings, std::string_view area);

}  // namespace evenfall::weather

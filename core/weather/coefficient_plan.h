// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/site/site.h"
#include "core/weather/landscape_coefficient.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The coefficient of an area day by day, where a year is not all alike: winter overseeding, sod from
/// one harvest to the next, new turf that is watered lightly and often, and shade.
///
/// For a day, the first that fits:
///     a period of establishment            its own coefficient
///     a sod crop                           its growth stage
///     a period under another plant         that plant's monthly set (overseeding)
///     otherwise                            the area's own (landscape_coefficient.h)
/// and that times the shade factor of the day. All of it is dated, as it happened: a winter's rye is
/// one record a year. A coefficient in the area's record stands against everything but
/// establishment and sod stages: who typed it meant it for the turf as it usually is.
///
/// Sources: growth stages, FAO-56 chapter 6, Eq. 66; shade as a microclimate factor, Costello et al.
///   (2000); stage lengths and establishment values are practice, marked so in
///   schemas/reference/sod_stages.csv and establishment.csv: a grower's own replace them.
/// Tests: tests/weather/coefficient_plan_test.cpp
namespace evenfall::weather {

/// A growing season in four parts, lengths in days. The coefficient is k_initial, then climbs in a
/// straight line, stays k_middle, then goes in a straight line to k_end and stays there:
///     K(i) = Kprev + (i - days before)/length x (Knext - Kprev)                     (Eq. 66)
struct GrowthStages {
    int initial = 0;
    int development = 0;
    int middle = 0;
    int late = 0;
    double k_initial = 0.0;
    double k_middle = 0.0;
    double k_end = 0.0;
    Sentence source;
};

/// Coefficient on day `day` of the season, counted from 1 on the first day.
/// @throws InputError for a day below 1, a negative length or a coefficient outside 0 to 2
double stage_coefficient(const GrowthStages& stages, int day);

/// The stages of a way to grow sod, by its key in sod_stages.csv ("seeded_cool", "regrown_warm"...).
/// @throws InputError for an unknown key, naming the known ones
GrowthStages sod_stages(std::string_view key);

/// Sod between two harvests. The middle stage lasts until the next harvest, or on while none is known.
struct SodCrop {
    calendar::Date harvested;
    std::optional<calendar::Date> next_harvest;
    GrowthStages stages;
};

/// New turf until it has rooted.
struct Establishment {
    calendar::Date from;
    int days;
    double coefficient;
    Sentence source;
};
/// By the key of establishment.csv: "sod", "seed_cool", "seed_warm", "sprigs".
/// @throws InputError for an unknown key
Establishment establishment(std::string_view key, calendar::Date from);

/// A time under another plant, both days included.
struct CoverPeriod {
    calendar::Date from;
    calendar::Date to;
    std::string plant;  ///< key in plants.csv
};

/// Shade of trees or buildings as a microclimate factor, 0.5 to 1; exposed places up to 1.4.
struct ShadePeriod {
    calendar::Date from;
    std::optional<calendar::Date> to;  ///< included; empty: on and on
    double factor = 1.0;
};

struct CoefficientPlan {
    std::vector<Establishment> establishments;
    std::vector<SodCrop> sod;
    std::vector<CoverPeriod> covers;
    std::vector<ShadePeriod> shades;
    bool empty() const {
        return establishments.empty() && sod.empty() && covers.empty() && shades.empty();
    }
};

/// @throws InputError for a plant that is not in the data, a shade factor out of range, or anything
///   landscape_coefficient refuses
CoefficientChoice coefficient_on(const site::Area& area, const CoefficientPlan& plan,
                                 calendar::Date date);

/// Mean of the days of a month. With the ET of each day known, weighting by it would be more exact;
/// within a month the two differ by little, and the method says which this is.
CoefficientChoice coefficient_of_month(const site::Area& area, const CoefficientPlan& plan,
                                       calendar::Month month);

}  // namespace evenfall::weather

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/meter/meter.h"
#include "core/review/filing.h"

#include <array>
#include <string_view>
#include <utility>

/// How enumerations are spelled in filings. Frozen: filings outlive programs.
namespace evenfall::exchange {

template <class E, std::size_t N>
using Words = std::array<std::pair<E, std::string_view>, N>;

inline constexpr Words<audit::Layout, 5> layout_words{{{audit::Layout::grid, "grid"},
                                                       {audit::Layout::pivot, "pivot"},
                                                       {audit::Layout::traveller, "traveller"},
                                                       {audit::Layout::irregular, "irregular"},
                                                       {audit::Layout::lateral, "lateral"}}};
inline constexpr Words<audit::Side, 2> side_words{
    {{audit::Side::left, "left"}, {audit::Side::right, "right"}}};
inline constexpr Words<audit::CatchUnit, 3> catch_unit_words{{{audit::CatchUnit::millilitre, "ml"},
                                                              {audit::CatchUnit::millimetre, "mm"},
                                                              {audit::CatchUnit::inch, "in"}}};
inline constexpr Words<meter::ReadingKind, 3> reading_words{
    {{meter::ReadingKind::measured, "measured"},
     {meter::ReadingKind::estimated, "estimated"},
     {meter::ReadingKind::corrected, "corrected"}}};
inline constexpr Words<review::Phase, 3> phase_words{{{review::Phase::before, "before"},
                                                      {review::Phase::after, "after"},
                                                      {review::Phase::none, "none"}}};
inline constexpr Words<audit::QuarterRule, 4> quarter_words{
    {{audit::QuarterRule::whole_cans, "whole-cans"},
     {audit::QuarterRule::nearest, "nearest"},
     {audit::QuarterRule::round_up, "round-up"},
     {audit::QuarterRule::part_can, "part-can"}}};

template <class E, std::size_t N>
constexpr std::string_view word_of(const Words<E, N>& words, E value) {
    for (const auto& [e, word] : words) {
        if (e == value) return word;
    }
    return "";
}

/// The weather columns of a filing and where they stand in the record.
struct WeatherMember {
    const char* name;
    std::optional<double> weather::SheetRow::* member;
    double low;
    double high;
};
inline constexpr std::array weather_members{
    WeatherMember{"ea_kpa", &weather::SheetRow::ea_kpa, 0, 20},
    WeatherMember{"reference_et", &weather::SheetRow::reference_et, 0, 100},
    WeatherMember{"rain", &weather::SheetRow::rain, 0, 3000},
    WeatherMember{"rhmax", &weather::SheetRow::rhmax, 0, 110},
    WeatherMember{"rhmean", &weather::SheetRow::rhmean, 0, 110},
    WeatherMember{"rhmin", &weather::SheetRow::rhmin, 0, 110},
    WeatherMember{"solar", &weather::SheetRow::solar, 0, 2000},
    WeatherMember{"sunshine_h", &weather::SheetRow::sunshine_h, 0, 24},
    WeatherMember{"tdew", &weather::SheetRow::tdew, -150, 150},
    WeatherMember{"tmax", &weather::SheetRow::tmax, -150, 150},
    WeatherMember{"tmean", &weather::SheetRow::tmean, -150, 150},
    WeatherMember{"tmin", &weather::SheetRow::tmin, -150, 150},
    WeatherMember{"wind", &weather::SheetRow::wind, 0, 20000}};

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/effective_rain.h"

#include "core/input_error.h"
#include "core/units/measure.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::weather {
namespace {

using units::Depth;
using units::inch;

constexpr double most_inches_a_month = 200.0;  // above any month on record
constexpr Phrase rain_of_month = phrase("weather", "a month's rain from 0 to 200 in");
constexpr Phrase crop_et_of_month = phrase("weather", "a month's crop ET from 0 to 200 in");
constexpr double least_storage = 0.75;         // in, first column of the handbook's storage table
constexpr double most_storage = 7.0;           // in, last column

/// Inches as typed: converting to metres and back moves the last of sixteen digits.
std::string inches(Depth depth) {
    return units::format_shortest(std::round(depth.in(inch) * 1e6) / 1e6) + " in";
}

void check_month(Depth depth, Phrase expected) {
    const double in = depth.in(inch);
    if (!(in >= 0.0 && in <= most_inches_a_month)) {
        throw InputError(inches(depth), expected);
    }
}

}  // namespace

double storage_factor(Depth storage) {
    const double d = storage.in(inch);
    // A millionth of slack: 0.75 in typed is 0.7499999999999999 in once it has been metres.
    if (!(d >= least_storage - 1e-6 && d <= most_storage + 1e-6)) {
        throw InputError(inches(storage), phrase("weather", "a usable soil water storage from 0.75 to 7 in"));
    }
    return 0.531747 + 0.295164 * d - 0.057697 * d * d + 0.003804 * d * d * d;
}

Depth effective_rain_uncapped(Depth rain, Depth crop_et, Depth storage) {
    check_month(rain, rain_of_month);
    check_month(crop_et, crop_et_of_month);
    const double pe = storage_factor(storage) *
                      (0.70917 * std::pow(rain.in(inch), 0.82416) - 0.11556) *
                      std::pow(10.0, 0.02426 * crop_et.in(inch));
    return pe * inch;
}

Depth effective_rain_nrcs(Depth rain, Depth crop_et, Depth storage) {
    const Depth pe = effective_rain_uncapped(rain, crop_et, storage);
    return std::clamp(pe, Depth{}, std::min(rain, crop_et));
}

Depth effective_rain_share(Depth rain, Depth crop_et, units::Share share) {
    check_month(rain, rain_of_month);
    check_month(crop_et, crop_et_of_month);
    return std::min(share.value() * rain, crop_et);
}

Sentence RainRule::name() const {
    switch (kind) {
        case Kind::none:
            return phrase("weather", "rain not counted");
        case Kind::share:
            return {phrase("weather", "%1 % of rain"), units::format_shortest(share.value().percent())};
        case Kind::nrcs_monthly:
            return {phrase("weather", "NRCS monthly, storage %1"), inches(storage.value())};
        case Kind::daily_balance:
            return phrase("weather", "daily root-zone balance");
    }
    return "";
}

Sentence RainRule::source() const {
    switch (kind) {
        case Kind::none:
        case Kind::share:
            return phrase("weather", "rule chosen by the user or the program");
        case Kind::nrcs_monthly:
            return phrase("weather", "USDA-NRCS (1993) National Engineering Handbook part 623 chapter 2, 623.0207");
        case Kind::daily_balance:
            return phrase("weather", "FAO Irrigation and Drainage Paper 56 (1998), chapter 8");
    }
    return "";
}

RainRule parse_rain_rule(std::string_view text) {
    using Kind = RainRule::Kind;
    if (text == "none") return {Kind::none, {}, {}};
    if (text == "balance") return {Kind::daily_balance, {}, {}};
    if (text == "nrcs") return {Kind::nrcs_monthly, {}, 3.0 * inch};
    if (text.starts_with("nrcs:")) {
        const Depth storage = units::parse_measure<Depth>(text.substr(5)).quantity();
        static_cast<void>(storage_factor(storage));
        return {Kind::nrcs_monthly, {}, storage};
    }
    if (text.starts_with("share:")) {
        if (const auto share = units::parse_number(text.substr(6))) {
            return {Kind::share, units::Share::of(*share), {}};
        }
    }
    throw InputError(text, phrase("weather", "none, share:F, nrcs, nrcs:DEPTH or balance"));
}

}  // namespace evenfall::weather

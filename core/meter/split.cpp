// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/split.h"

#include "core/input_error.h"

#include <algorithm>
#include <cmath>

namespace evenfall::meter {
namespace {

/// Shares typed with three decimals, such as 0.333 three times, are not an error of the book.
constexpr double share_slack = 0.0015;

double weight_of(const SplitInput& a, SplitRule rule) {
    if (rule != SplitRule::minutes_times_flow) return a.size.si() * a.coefficient;
    if (!a.run_time || !a.flow) {
        throw InputError({phrase("meter", "area %1"), a.area},
                         phrase("meter", "a run time and a flow, to split by minutes x flow"));
    }
    return (*a.flow * *a.run_time).si();
}

std::vector<SplitPart> by_weight(std::span<const SplitInput> areas, SplitRule rule, double whole,
                                 bool skip_given) {
    double sum = 0.0;
    for (const SplitInput& a : areas) {
        if (!(skip_given && a.given_share)) sum += weight_of(a, rule);
    }
    std::vector<SplitPart> parts;
    for (const SplitInput& a : areas) {
        if (skip_given && a.given_share) {
            parts.push_back({a.area, units::Share::of(*a.given_share), false});
            continue;
        }
        if (!(sum > 0)) {
            throw InputError({phrase("meter", "area %1"), a.area},
                             phrase("meter", "a size and coefficient above zero for at least one area of the meter"));
        }
        const double share = std::min(1.0, whole * weight_of(a, rule) / sum);
        parts.push_back({a.area, units::Share::of(share), rule != SplitRule::minutes_times_flow});
    }
    return parts;
}

std::vector<SplitPart> by_given(std::span<const SplitInput> areas) {
    double given = 0.0;
    bool some_without = false;
    for (const SplitInput& a : areas) {
        given += a.given_share.value_or(0.0);
        some_without = some_without || !a.given_share;
    }
    const double limit = share_slack * static_cast<double>(areas.size());
    if (given > 1 + limit || (!some_without && given < 1 - limit)) {
        throw InputError(units::format_shortest(given), phrase("meter", "shares of the meter that add up to 1"));
    }
    if (some_without) {
        return by_weight(areas, SplitRule::area_times_coefficient, std::max(0.0, 1 - given), true);
    }
    std::vector<SplitPart> parts;
    for (const SplitInput& a : areas) {
        parts.push_back({a.area, units::Share::of(std::min(1.0, *a.given_share / given)), false});
    }
    return parts;
}

}  // namespace

Phrase text_of(SplitRule rule) {
    switch (rule) {
        case SplitRule::given_shares:
            return phrase("meter", "by the shares given");
        case SplitRule::area_times_coefficient:
            return phrase("meter", "by area x coefficient");
        case SplitRule::minutes_times_flow:
            return phrase("meter", "by run time x flow");
    }
    return {};
}

std::vector<SplitPart> split_meter(std::span<const SplitInput> areas, SplitRule rule) {
    if (areas.empty()) return {};
    if (rule == SplitRule::given_shares) return by_given(areas);
    return by_weight(areas, rule, 1.0, false);
}

}  // namespace evenfall::meter

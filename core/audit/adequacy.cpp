// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/adequacy.h"

#include "core/audit/low_share.h"
#include "core/units/number.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace evenfall::audit {
namespace {

/// Sums of weights and scaled depths are compared with this slack, so that a can which gets exactly
/// the target counts as watered.
constexpr double slack = 1e-12;

struct Ranked {
    std::vector<std::pair<double, double>> catches;  ///< depth and weight, wettest first
    double total = 0.0;
    double mean = 0.0;
};

Ranked ranked(const Sample& sample) {
    Ranked r;
    double water = 0.0;
    for (const SampleCan& c : sample.cans) {
        r.catches.emplace_back(c.depth.si(), c.weight);
        r.total += c.weight;
        water += c.weight * c.depth.si();
    }
    if (!(water > 0.0))
        throw InputError(phrase("audit", "every can dry"), phrase("audit", "water in at least one can"));
    r.mean = water / r.total;
    std::sort(r.catches.rbegin(), r.catches.rend());
    return r;
}

void require_positive(units::Depth depth, Phrase expected) {
    if (!(depth.si() > 0.0)) {
        throw InputError(units::format_shortest(depth.in(units::millimetre)) + " mm", expected);
    }
}

}  // namespace

units::Share adequacy(const Sample& sample, units::Depth mean, units::Depth target) {
    require_positive(mean, phrase("audit", "a mean depth above zero"));
    require_positive(target, phrase("audit", "a target depth above zero"));
    const Ranked r = ranked(sample);
    const double needed = target / mean * r.mean * (1.0 - slack);
    double enough = 0.0;
    for (const auto& [depth, weight] : r.catches) {
        if (depth >= needed) enough += weight;
    }
    return units::Share::of(std::min(1.0, enough / r.total));
}

std::optional<units::Depth> depth_for_adequacy(const Sample& sample, units::Depth target,
                                               units::Share share) {
    require_positive(target, phrase("audit", "a target depth above zero"));
    if (!(share.value() > 0.0))
        throw InputError(phrase("audit", "a share of 0"), phrase("audit", "a share of the ground above zero"));
    const Ranked r = ranked(sample);
    double reached = 0.0;
    for (const auto& [depth, weight] : r.catches) {
        reached += weight;
        if (reached >= share.value() * r.total * (1.0 - slack)) {
            if (!(depth > 0.0)) return std::nullopt;
            return target * (r.mean / depth);
        }
    }
    return std::nullopt;
}

}  // namespace evenfall::audit

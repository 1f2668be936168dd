// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/profile.h"

#include "core/input_error.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace evenfall::plan {

double ring_volume(double a, double pa, double b, double pb) {
    if (!(b > a)) return 0.0;
    const double slope = (pb - pa) / (b - a);
    const double intercept = pa - slope * a;
    return 2.0 * std::numbers::pi *
           (intercept * (b * b - a * a) / 2.0 + slope * (b * b * b - a * a * a) / 3.0);
}

RadialProfile::RadialProfile(std::vector<Knot> knots) : knots_(std::move(knots)) {
    for (std::size_t i = 1; i < knots_.size(); ++i) {
        volume_ += ring_volume(knots_[i - 1].u, knots_[i - 1].p, knots_[i].u, knots_[i].p);
    }
}

RadialProfile RadialProfile::cone() { return RadialProfile({{0.0, 1.0}, {1.0, 0.0}}); }

RadialProfile RadialProfile::flat() { return RadialProfile({{0.0, 1.0}, {1.0, 1.0}}); }

RadialProfile RadialProfile::measured(const MeasuredLeg& leg) {
    const std::string leg_name = printable(leg.name);
    const Sentence name(phrase("plan", "profile %1"), leg_name);
    if (leg.readings.size() < 2) {
        throw InputError(name, phrase("plan", "at least two readings of distance and rate"));
    }
    double before = -1.0;
    double most = 0.0;
    for (const auto& r : leg.readings) {
        if (!std::isfinite(r.distance) || !(r.distance >= 0.0) || !(r.distance > before)) {
            throw InputError({phrase("plan", "profile %1, distance %2"), leg_name, units::format_shortest(r.distance)},
                             phrase("plan", "distances from the head that rise from reading to reading"));
        }
        if (!std::isfinite(r.rate) || !(r.rate >= 0.0)) {
            throw InputError({phrase("plan", "profile %1, rate %2"), leg_name, units::format_shortest(r.rate)},
                             phrase("plan", "a rate of zero or more"));
        }
        before = r.distance;
        most = std::max(most, r.rate);
    }
    if (!(most > 0.0)) throw InputError(name, phrase("plan", "a rate above zero somewhere"));
    std::vector<Knot> knots;
    if (leg.readings.front().distance > 0.0) knots.push_back({0.0, leg.readings.front().rate / most});
    for (const auto& r : leg.readings) {
        knots.push_back({r.distance / leg.readings.back().distance, r.rate / most});
    }
    RadialProfile made(std::move(knots));
    // Readings such as (0, 1), (1e-200, 0), (10, 0) carry no volume that a double can hold.
    if (!(made.volume() > 1e-9)) throw InputError(name, phrase("plan", "readings that carry some water"));
    return made;
}

double RadialProfile::at(double u) const {
    if (u > 1.0) return 0.0;
    const auto above = std::lower_bound(knots_.begin(), knots_.end(), u,
                                        [](const Knot& k, double value) { return k.u < value; });
    if (above == knots_.begin()) return above->p;
    const Knot& a = *(above - 1);
    const Knot& b = *above;
    return a.p + (u - a.u) / (b.u - a.u) * (b.p - a.p);
}

}  // namespace evenfall::plan

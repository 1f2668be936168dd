// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/savings.h"

#include <cmath>
#include <cstdint>
#include <vector>

/// CONSTRUCTED sites for tests of the savings method: monthly use that follows the need with an
/// intercept, autocorrelated scatter and a known true saving after the change.
namespace evenfall::tests {

/// The same numbers everywhere: a 64-bit mixing generator (splitmix64, public domain) and a normal
/// draw from twelve uniform ones (sum less six: variance one, tails cut at six).
class Draw {
  public:
    explicit Draw(std::uint64_t seed) : state_(seed) {}
    double uniform() {
        state_ += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
        z ^= z >> 31U;
        return static_cast<double>(z >> 11U) * 0x1.0p-53;
    }
    double normal() {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i) sum += uniform();
        return sum;
    }

  private:
    std::uint64_t state_;
};

struct SimulatedSite {
    std::vector<review::UseSpell> before;
    std::vector<review::UseSpell> after;
};

struct Simulation {
    int before_months = 24;
    int after_months = 12;
    double scatter = 0.12;          ///< of mean use
    double autocorrelation = 0.2;   ///< of the scatter
    double true_saving = 0.0;       ///< share of what would have been used
};

/// @param seed  the site
inline SimulatedSite simulate(const Simulation& what, std::uint64_t seed) {
    Draw draw(seed * 7919 + 17);
    SimulatedSite site;
    const double size = 20000.0 + 80000.0 * draw.uniform();  // m2
    const double slope = 1.1 + 0.4 * draw.uniform();
    double error = draw.normal();
    for (int i = 0; i < what.before_months + what.after_months; ++i) {
        const calendar::Month month = calendar::plus_months(std::chrono::year{2021} / 1, i);
        const double season = 0.5 - 0.5 * std::cos(2.0 * 3.14159265358979 * (i % 12 + 0.5) / 12.0);
        const double need_mm = (15.0 + 140.0 * season) * (1.0 + 0.15 * draw.normal());
        const double days = calendar::days_in(month);
        error = what.autocorrelation * error +
                std::sqrt(1.0 - what.autocorrelation * what.autocorrelation) * draw.normal();
        // Mean need about 85 mm a month; the scatter is that share of mean use.
        double use_mm = 8.0 + slope * need_mm + what.scatter * (8.0 + slope * 85.0) * error;
        const bool after = i >= what.before_months;
        if (after) use_mm *= 1.0 - what.true_saving;
        const auto volume = [&](double mm) { return units::Volume::from_si(mm * 1e-3 * size); };
        (after ? site.after : site.before)
            .push_back({calendar::first_day(month), days, volume(std::max(0.0, use_mm)),
                        volume(std::max(0.0, need_mm))});
    }
    return site;
}

}  // namespace evenfall::tests

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/nozzle.h"

#include "core/input_error.h"

#include <algorithm>
#include <cmath>

namespace evenfall::plan {
namespace {

void check_range(const Nozzle& nozzle, double pressure, const PlanUnits& units) {
    const std::string found =
        units::format_shortest(pressure) + " " + std::string(units.pressure.name);
    if (!(pressure > 0.0) || !std::isfinite(pressure)) {
        throw InputError(found, phrase("plan", "a pressure above zero"));
    }
    const double low = std::max(nozzle.lowest.value_or(0.0),
                                nozzle.rows.size() > 1 ? nozzle.rows.front().pressure : 0.0);
    double high = nozzle.rows.size() > 1 ? nozzle.rows.back().pressure : pressure;
    if (nozzle.highest) high = std::min(high, *nozzle.highest);
    if (pressure < low || pressure > high) {
        const double most = nozzle.rows.size() > 1 ? high : nozzle.highest.value_or(high);
        throw InputError(found, {phrase("plan", "a pressure that the table of nozzle %1 covers, %2 to %3 %4"), printable(nozzle.name),
                                 units::format_shortest(low), units::format_shortest(most), units.pressure.name});
    }
}

}  // namespace

Throw throw_at(const Nozzle& nozzle, double pressure, const PlanUnits& units) {
    if (nozzle.rows.empty()) {
        throw InputError(printable(nozzle.name), phrase("plan", "a nozzle with at least one row"));
    }
    check_range(nozzle, pressure, units);
    if (nozzle.rows.size() == 1) {
        const NozzleRow& only = nozzle.rows.front();
        if (pressure == only.pressure) return {only.radius, only.flow, {}};
        Sentence flag(phrase("plan", "nozzle %1 has one row: flow by the square-root law, radius as in the row"), printable(nozzle.name));
        if (!nozzle.lowest || !nozzle.highest) flag = {phrase("plan", "%1; its operating range is not stated"), std::move(flag)};
        return {only.radius, only.flow * std::sqrt(pressure / only.pressure), flag};
    }
    const auto above =
        std::lower_bound(nozzle.rows.begin(), nozzle.rows.end(), pressure,
                         [](const NozzleRow& row, double p) { return row.pressure < p; });
    if (above->pressure == pressure) return {above->radius, above->flow, {}};
    const NozzleRow& b = *above;
    const NozzleRow& a = *(above - 1);
    const double t = (pressure - a.pressure) / (b.pressure - a.pressure);
    return {a.radius + t * (b.radius - a.radius), a.flow + t * (b.flow - a.flow), {}};
}

}  // namespace evenfall::plan

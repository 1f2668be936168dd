// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/what_if.h"

#include "core/input_error.h"
#include "core/plan/check_plan.h"
#include "core/plan/outline.h"

#include <algorithm>
#include <cmath>

namespace evenfall::plan {
namespace {

WhatIfSide side_of(const Prediction& p, const WhatIfTerms& terms) {
    WhatIfSide side;
    side.du_lq = p.du_lq;
    side.du_lh = p.du_lh;
    side.off_target = p.off_target_share;
    if (!p.du_lh || !(p.du_lh->value() > 0.0) || !(p.off_target_share.value() < 1.0)) return side;
    side.multiplier = units::Multiplier::of(1.0 / p.du_lh->value());
    side.season = terms.season_need * p.turf * (side.multiplier->value() / (1.0 - p.off_target_share.value()));
    if (terms.price_per_m3) side.money = side.season->in(units::cubic_metre) * *terms.price_per_m3;
    return side;
}

void check_terms(const WhatIfTerms& terms) {
    const auto good = [](double v) { return std::isfinite(v) && v >= 0.0; };
    if (!(terms.season_need.si() > 0.0) || !std::isfinite(terms.season_need.si())) {
        throw InputError(units::format_shortest(terms.season_need.in(units::millimetre)) + " mm", "a need above zero");
    }
    if (terms.price_per_m3 && !good(*terms.price_per_m3)) {
        throw InputError(units::format_shortest(*terms.price_per_m3), "a price of zero or more");
    }
    if (terms.cost_of_change && !good(*terms.cost_of_change)) {
        throw InputError(units::format_shortest(*terms.cost_of_change), "a cost of zero or more");
    }
}

}  // namespace

Plan with_nozzle(const Plan& plan, const std::string& from, const std::string& to) {
    Plan out = plan;
    std::size_t changed = 0;
    for (Head& h : out.heads) {
        if (h.nozzle != from) continue;
        h.nozzle = to;
        h.radius.reset();
        h.flow.reset();
        ++changed;
    }
    if (changed == 0) throw InputError(printable(from), "a nozzle that some head has");
    require_sound(out);
    return out;
}

Plan with_pressure(const Plan& plan, const std::string& station, double pressure) {
    if (!(pressure > 0.0) || !std::isfinite(pressure)) {
        throw InputError(units::format_shortest(pressure), "a pressure above zero");
    }
    Plan out = plan;
    std::size_t changed = 0;
    bool by_law = false;
    for (Head& h : out.heads) {
        if (!station.empty() && h.station != station) continue;
        if (!h.pressure) throw InputError("head " + printable(h.id), "a head whose pressure is recorded");
        if (h.flow) {
            h.flow = *h.flow * std::sqrt(pressure / *h.pressure);
            by_law = true;
        }
        h.pressure = pressure;
        ++changed;
    }
    if (changed == 0) throw InputError("station " + printable(station), "a station that some head has");
    if (by_law) {
        out.assumed.emplace_back(phrase("plan", "at the new pressure, typed flows follow the square-root law and typed radii stay"));
    }
    require_sound(out);
    return out;
}

Plan with_spacing(const Plan& plan, double factor) {
    if (!(factor >= 0.25) || !(factor <= 4.0)) {
        throw InputError(units::format_shortest(factor), "a factor from 0.25 to 4");
    }
    Plan out = plan;
    const Box box = box_of(plan.turf);
    const Ground ground(plan.turf);
    const double slack = head_slack_m / plan.units.length.unit.si();
    out.heads.clear();
    for (Head h : plan.heads) {
        h.x = box.x0 + factor * (h.x - box.x0);
        h.y = box.y0 + factor * (h.y - box.y0);
        if (ground.covers({h.x, h.y}, slack)) out.heads.push_back(std::move(h));
    }
    require_sound(out);
    return out;
}

WhatIf compare(const Prediction& before, const Prediction& after, const WhatIfTerms& terms) {
    check_terms(terms);
    WhatIf out;
    out.before = side_of(before, terms);
    out.after = side_of(after, terms);
    if (out.before.season && out.after.season) out.saved = *out.before.season - *out.after.season;
    if (out.before.money && out.after.money) out.money_saved = *out.before.money - *out.after.money;
    if (out.money_saved && *out.money_saved > 0.0 && terms.cost_of_change) {
        out.payback_seasons = *terms.cost_of_change / *out.money_saved;
    }
    out.method = "season need over the turf, times 1 / DU_LH of the predicted field, over the share that falls on target";
    out.source = "low-half run-time multiplier, von Bernuth & Mecham, Defining the Run Time Multiplier (read in part)";
    return out;
}

}  // namespace evenfall::plan

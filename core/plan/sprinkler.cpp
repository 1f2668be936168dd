// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/sprinkler.h"

#include "core/sentences.h"
#include "core/plan/check_plan.h"
#include "core/plan/nozzle.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace evenfall::plan {
namespace {

constexpr double degree = std::numbers::pi / 180.0;

class Resolver {
  public:
    explicit Resolver(const Plan& plan) : plan_(plan) {
        out_.assumed = plan.assumed;
        for (const Nozzle& nozzle : plan.nozzles) nozzles_[nozzle.name] = &nozzle;
        out_.profiles = {RadialProfile::cone(), RadialProfile::flat()};
        names_ = {{"cone", 0}, {"flat", 1}};
        for (const MeasuredLeg& leg : plan.profiles) {
            names_[leg.name] = out_.profiles.size();
            reach_[leg.name] = leg.readings.back().distance;
            out_.profiles.push_back(RadialProfile::measured(leg));
        }
    }

    Sprinklers run() {
        out_.heads.reserve(plan_.heads.size());
        for (const Head& head : plan_.heads) add(head);
        return std::move(out_);
    }

  private:
    void add(const Head& head) {
        double radius = head.radius.value_or(0.0);
        double flow = head.flow.value_or(0.0);
        if (!head.radius || !head.flow) {
            const Throw t = throw_at(*nozzles_.at(head.nozzle), *head.pressure, plan_.units);
            if (!head.radius) radius = t.radius;
            if (!head.flow) flow = t.flow;
            add_once(out_.assumed, t.assumed);
        }
        const auto reach = reach_.find(head.profile);
        // Half a percent: printed radii are rounded.
        if (reach != reach_.end() && std::abs(reach->second / radius - 1.0) > 0.005) {
            add_once(out_.assumed, {phrase("plan", "profile %1 was measured to another distance than the radius of some heads: its shape is laid on their radius"),
                                    printable(head.profile)});
        }
        const double length = plan_.units.length.unit.si();
        out_.heads.push_back({head.x * length, head.y * length, radius * length,
                              flow * plan_.units.flow.unit.si(), head.arc, head.facing,
                              names_.at(head.profile)});
    }

    const Plan& plan_;
    Sprinklers out_;
    std::map<std::string, const Nozzle*> nozzles_;
    std::map<std::string, std::size_t> names_;
    std::map<std::string, double> reach_;
};

}  // namespace

Sprinklers sprinklers_of(const Plan& plan) {
    require_sound(plan);
    return Resolver(plan).run();
}

PatternMap pattern_map(const std::optional<Wind>& wind) {
    if (!wind) return {};
    if (!std::isfinite(wind->toward)) {
        throw InputError(units::format_shortest(wind->toward), phrase("plan", "a direction in degrees"));
    }
    if (!(wind->shift >= 0.0) || !(wind->shift <= 1.0)) {
        throw InputError({phrase("plan", "a shift of %1"), units::format_shortest(wind->shift)},
                         phrase("plan", "a share of the radius from 0 to 1"));
    }
    if (!(wind->stretch >= 1.0) || !(wind->stretch <= 2.0)) {
        throw InputError({phrase("plan", "a stretch of %1"), units::format_shortest(wind->stretch)},
                         phrase("plan", "a factor from 1 to 2"));
    }
    const double wx = std::sin(wind->toward * degree);
    const double wy = std::cos(wind->toward * degree);
    const double along = 1.0 / wind->stretch;
    const double across = wind->stretch;
    PatternMap map;
    map.xx = along * wx * wx + across * wy * wy;
    map.xy = (along - across) * wx * wy;
    map.yy = along * wy * wy + across * wx * wx;
    map.shift_x = wind->shift * wx;
    map.shift_y = wind->shift * wy;
    map.reach = wind->stretch + wind->shift;
    map.still = wind->stretch == 1.0;
    if (map.still) map.xx = map.yy = 1.0, map.xy = 0.0;
    return map;
}

bool in_arc(const Sprinkler& head, double dx, double dy) {
    if (head.arc >= 360.0) return true;
    const double from = (head.facing - head.arc / 2.0) * degree;
    const double to = (head.facing + head.arc / 2.0) * degree;
    // A millionth of the radius of slack: a can on the line between two quarters is in both.
    const double slack = -1e-6 * head.radius;
    const bool after = dx * std::cos(from) - dy * std::sin(from) >= slack;
    const bool before = -dx * std::cos(to) + dy * std::sin(to) >= slack;
    return head.arc <= 180.0 ? after && before : after || before;
}

double rate_at(const Sprinklers& all, const Sprinkler& head, Point metres, const PatternMap& map) {
    const double gx = metres.x - head.x - map.shift_x * head.radius;
    const double gy = metres.y - head.y - map.shift_y * head.radius;
    const double dx = map.xx * gx + map.xy * gy;
    const double dy = map.xy * gx + map.yy * gy;
    const double u = std::hypot(dx, dy) / head.radius;
    if (u > 1.0 || !in_arc(head, dx, dy)) return 0.0;
    const RadialProfile& profile = all.profiles[head.profile];
    return head.flow / (head.arc / 360.0 * head.radius * head.radius * profile.volume()) *
           profile.at(u);
}

}  // namespace evenfall::plan

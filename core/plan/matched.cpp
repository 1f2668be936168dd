// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/matched.h"

#include "core/reference/table.h"

#include <algorithm>
#include <map>
#include <numbers>
#include <stdexcept>

namespace evenfall::plan {
namespace {

struct HeadRate {
    std::size_t head;
    double rate;  ///< m/s
};

double own_rate(const Sprinkler& s) {
    return s.flow / (s.arc / 360.0 * std::numbers::pi * s.radius * s.radius);
}

std::vector<ArcGroup> arcs_of(const std::vector<HeadRate>& rates, const Sprinklers& all) {
    std::map<double, std::vector<double>> by_arc;
    for (const HeadRate& r : rates) by_arc[all.heads[r.head].arc].push_back(r.rate);
    std::vector<ArcGroup> arcs;
    for (const auto& [arc, values] : by_arc) {
        double sum = 0.0;
        for (double v : values) sum += v;
        const auto [low, high] = std::minmax_element(values.begin(), values.end());
        arcs.push_back({arc, values.size(), units::Rate::from_si(sum / static_cast<double>(values.size())),
                        units::Rate::from_si(*low), units::Rate::from_si(*high)});
    }
    return arcs;
}

/// Greedy from the lowest rate up: on a line this gives the fewest groups.
std::vector<RateGroup> groups_of(std::vector<HeadRate> rates, const Plan& plan, double spread) {
    std::stable_sort(rates.begin(), rates.end(), [](const auto& a, const auto& b) { return a.rate < b.rate; });
    std::vector<std::vector<HeadRate>> parts;
    for (const HeadRate& r : rates) {
        // A billionth of slack: rates that are equal on paper differ in the last bit.
        if (parts.empty() || r.rate > parts.back().front().rate * (1.0 + spread) * (1.0 + 1e-9)) parts.emplace_back();
        parts.back().push_back(r);
    }
    std::vector<RateGroup> groups;
    for (auto& part : parts) {
        std::sort(part.begin(), part.end(), [](const auto& a, const auto& b) { return a.head < b.head; });
        RateGroup g;
        double sum = 0.0;
        for (const HeadRate& r : part) {
            g.heads.push_back(plan.heads[r.head].id);
            sum += r.rate;
        }
        g.mean = units::Rate::from_si(sum / static_cast<double>(part.size()));
        groups.push_back(std::move(g));
    }
    for (RateGroup& g : groups) g.run_time_ratio = groups.front().mean / g.mean;
    return groups;
}

}  // namespace

std::vector<StationRates> matched_precipitation(const Plan& plan, double spread) {
    const Sprinklers all = sprinklers_of(plan);
    std::map<std::string, std::vector<HeadRate>> stations;
    for (std::size_t i = 0; i < all.heads.size(); ++i) {
        stations[plan.heads[i].station].push_back({i, own_rate(all.heads[i])});
    }
    std::vector<StationRates> out;
    for (auto& [name, rates] : stations) {
        StationRates s;
        s.station = name;
        double flow = 0.0;
        for (const HeadRate& r : rates) flow += all.heads[r.head].flow;
        s.flow = units::Flow::from_si(flow);
        s.arcs = arcs_of(rates, all);
        const auto [low, high] = std::minmax_element(rates.begin(), rates.end(), [](const auto& a, const auto& b) { return a.rate < b.rate; });
        s.spread = high->rate / low->rate - 1.0;
        s.groups = groups_of(rates, plan, spread);
        s.matched = s.groups.size() == 1;
        out.push_back(std::move(s));
    }
    return out;
}

double plan_limit(std::string_view name) {
    const reference::Row* row = reference::Table::named("plan_limits.csv").find("limit", name);
    if (!row) throw std::logic_error("plan_limits.csv has no " + std::string(name));
    return row->number("value");
}

double usual_matched_spread() { return plan_limit("matched_spread"); }

}  // namespace evenfall::plan

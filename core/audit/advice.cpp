// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/test_analysis.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::audit {
namespace {

using units::format_fixed;

std::string percent(double share) { return format_fixed(100.0 * share, 0) + " %"; }

std::string listed(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& w : words) all += (all.empty() ? "" : ", ") + w;
    return all;
}

void add_findings(const TestAnalysis& a, std::vector<std::string>& out) {
    for (const FindingSummary& f : a.findings) {
        const int open = f.count - f.corrected;
        if (open <= 0) continue;
        std::string line = "Fix first: " + f.kind.name + " (" + std::to_string(open) + ", " +
                           std::string(text_of(f.worst));
        if (!f.places.empty()) line += "; " + listed(f.places);
        line += "): " + f.kind.remedy + ".";
        if (!f.kind.caution.empty()) line += " Caution: " + f.kind.caution + ".";
        out.push_back(std::move(line));
    }
    if (!a.inspected) {
        out.push_back("No inspection is recorded: walk the area while it runs and note tilted, sunken, "
                      "clogged or leaking heads before trusting any figure.");
    }
}

void add_pressures(const TestAnalysis& a, std::vector<std::string>& out) {
    if (!a.pressures) return;
    if (a.pressures->below > 0) {
        out.push_back("Pressure is below the nozzle's range at " + std::to_string(a.pressures->below) +
                      " place(s): look for a leak, a half-closed valve or too many heads at once.");
    }
    if (a.pressures->above > 0) {
        out.push_back("Pressure is above the nozzle's range at " + std::to_string(a.pressures->above) +
                      " place(s): regulate it at the valve or the head; shut off and drain first.");
    }
}

void add_cans(const TestAnalysis& a, std::vector<std::string>& out) {
    for (const SuspectCan& s : a.suspects) {
        out.push_back("Look again at can " + s.label + ": it caught " +
                      format_fixed(s.caught.in(units::millimetre), 1) + " mm, the cans around it " +
                      format_fixed(s.neighbours.in(units::millimetre), 1) +
                      " mm. It stays in the figures unless you leave it out with a reason.");
    }
    for (const SchedulingResult& s : a.scheduling) {
        const bool small = s.window_share && *s.window_share >= 0.05 && *s.window_share < 0.06;
        if (s.spot != DrySpot::window || !small || !s.value || s.value->value() < 1.1) continue;
        out.push_back("Driest " + percent(*s.window_share) + " of the ground, " + s.where + ": " +
                      format_fixed(s.spot_mean.in(units::millimetre), 1) + " mm. Check the heads there.");
    }
}

void add_rules(const TestAnalysis& a, std::vector<std::string>& out) {
    for (const RuleOutcome& r : a.rules) {
        if (r.outcome == Outcome::not_met) {
            out.push_back("Test rule not met: " + r.says + " (" + r.source + ").");
        }
    }
    std::vector<std::string> open;
    for (const RuleOutcome& r : a.rules) {
        if (r.outcome == Outcome::not_recorded) open.push_back(r.says);
    }
    if (!open.empty()) out.push_back("Not recorded, so not judged: " + listed(open) + ".");
}

}  // namespace

std::vector<std::string> advice(const TestAnalysis& a) {
    std::vector<std::string> out;
    add_findings(a, out);
    add_pressures(a, out);
    add_cans(a, out);
    if (a.multipliers.low_half) {
        out.push_back("Until the system is put right, water " +
                      format_fixed(a.multipliers.low_half->value(), 2) +
                      " times the need: the low-half multiplier from the cans.");
    } else {
        out.push_back("Half of the ground stayed dry: repair before scheduling anything by this test.");
    }
    add_rules(a, out);
    if (a.more_cans && a.intervals.du_lq) {
        out.push_back("About " + std::to_string(*a.more_cans) +
                      " more cans, placed at random, would halve the interval of DU_LQ.");
    }
    return out;
}

}  // namespace evenfall::audit

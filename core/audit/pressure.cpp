// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/pressure.h"

#include "core/input_error.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace evenfall::audit {
namespace {

bool usable(const units::Typed<units::Pressure>& p) {
    return std::isfinite(p.value) && p.value > 0.0;
}

void require(std::span<const PressureReading> readings, const std::string& file) {
    std::vector<Issue> issues;
    for (const PressureReading& r : readings) {
        if (!usable(r.pressure)) {
            issues.push_back({{file, r.row, "pressure"},
                              r.place + ": " + r.pressure.text(),
                              phrase("audit", "a pressure above zero")});
        }
        const bool bad_low = r.nozzle_low && !usable(*r.nozzle_low);
        const bool bad_high = r.nozzle_high && !usable(*r.nozzle_high);
        if (bad_low || bad_high ||
            (r.nozzle_low && r.nozzle_high &&
             r.nozzle_low->quantity() > r.nozzle_high->quantity())) {
            issues.push_back({{file, r.row, "nozzle range"},
                              {phrase("audit", "%1: %2 to %3"), r.place, r.nozzle_low ? r.nozzle_low->text() : "",
                               r.nozzle_high ? r.nozzle_high->text() : ""},
                              phrase("audit", "a range from low to high, both above zero")});
        }
    }
    if (readings.empty())
        issues.push_back({{file, 0, ""}, phrase("audit", "no pressures"), phrase("audit", "at least one")});
    if (!issues.empty()) throw InputError(std::move(issues));
}

PressureVerdict verdict_of(const PressureReading& r) {
    if (!r.nozzle_low && !r.nozzle_high) return PressureVerdict::no_range;
    // A gauge on the limit is within, whatever unit either was typed in.
    constexpr double slack = 1e-9;
    if (r.nozzle_low && r.pressure.quantity() < r.nozzle_low->quantity() * (1.0 - slack)) {
        return PressureVerdict::below;
    }
    if (r.nozzle_high && r.pressure.quantity() > r.nozzle_high->quantity() * (1.0 + slack)) {
        return PressureVerdict::above;
    }
    return PressureVerdict::within;
}

}  // namespace

std::string_view text_of(PressureVerdict verdict) {
    switch (verdict) {
        case PressureVerdict::below: return "below the nozzle's range";
        case PressureVerdict::within: return "within the nozzle's range";
        case PressureVerdict::above: return "above the nozzle's range";
        case PressureVerdict::no_range: return "no range given";
    }
    return "";
}

PressureCheck check_pressures(std::span<const PressureReading> readings, const std::string& file) {
    require(readings, file);
    PressureCheck check;
    check.lowest = check.highest = readings.front().pressure.quantity();
    for (const PressureReading& r : readings) {
        check.mean += r.pressure.quantity() / static_cast<double>(readings.size());
        check.lowest = std::min(check.lowest, r.pressure.quantity());
        check.highest = std::max(check.highest, r.pressure.quantity());
    }
    double flow = 0.0;
    for (const PressureReading& r : readings) {
        const double relative = std::sqrt(r.pressure.quantity() / check.mean);
        flow += relative / static_cast<double>(readings.size());
        const PressureVerdict verdict = verdict_of(r);
        check.below += verdict == PressureVerdict::below ? 1 : 0;
        check.above += verdict == PressureVerdict::above ? 1 : 0;
        check.without_range += verdict == PressureVerdict::no_range ? 1 : 0;
        check.readings.push_back({r, verdict, relative});
    }
    check.flow_spread =
        (std::sqrt(check.highest / check.mean) - std::sqrt(check.lowest / check.mean)) / flow;
    return check;
}

std::vector<SystemFigure> whole_system_figures(units::LowQuarterDu du_lq, units::ChristiansenCu cu,
                                               const PressureCheck& check) {
    std::vector<SystemFigure> figures;
    for (const auto& row : reference::Table::named("low_pressure_correction.csv").rows()) {
        const std::string figure(row.text("figure"));
        const std::string kind(row.text("kind"));
        const double k = row.number("k");
        double factor = 0.0;
        if (kind == "root_of_minimum") {
            factor = 1.0 - k * (1.0 - std::sqrt(check.lowest / check.mean));
        } else if (kind == "range") {
            factor = 1.0 - k * ((check.highest - check.lowest) / check.mean);
        } else {
            throw std::logic_error("unknown low-pressure correction " + kind);
        }
        const double tested = figure == "cu" ? cu.value() : du_lq.value();
        figures.push_back({figure, std::string(row.text("form")), tested,
                           tested * std::max(0.0, factor), std::string(row.source()), row.mark()});
    }
    return figures;
}

}  // namespace evenfall::audit

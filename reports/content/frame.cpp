// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/frame.h"

#include "core/units/number.h"

namespace evenfall::reports {
namespace {

std::string one(double value, const NumberFormat& format) {
    return units::format_grouped(value, format.decimals) + " " + format.unit;
}

template <class Q>
std::string pair_of(Q q, UnitsShown units, double (Shown::*number)(Q) const,
                    NumberFormat (Shown::*format)() const) {
    const Shown first(units);
    const Shown second(units == UnitsShown::us ? UnitsShown::metric : UnitsShown::us);
    return one((first.*number)(q), (first.*format)()) + " (" +
           one((second.*number)(q), (second.*format)()) + ")";
}

}  // namespace

std::string both(units::Volume volume, UnitsShown units) {
    return pair_of<units::Volume>(volume, units, &Shown::volume, &Shown::volume_format);
}
std::string both(units::Depth depth, UnitsShown units) {
    return pair_of<units::Depth>(depth, units, &Shown::depth, &Shown::depth_format);
}
std::string both(units::Rate rate, UnitsShown units) {
    return pair_of<units::Rate>(rate, units, &Shown::rate, &Shown::rate_format);
}
std::string both(units::Area size, UnitsShown units) {
    return pair_of<units::Area>(size, units, &Shown::size, &Shown::size_format);
}

std::string percent(double share, int decimals) {
    return units::format_fixed(share * 100.0, decimals) + " %";
}

Report framed(std::string kind, std::string title, std::string subtitle, const Frame& frame) {
    Report report;
    report.kind = std::move(kind);
    report.title = std::move(title);
    report.subtitle = std::move(subtitle);
    report.organisation = frame.organisation;
    report.created = frame.created;
    report.program = frame.program;
    report.signatures = frame.signatures;
    report.caution = usual_caution();
    return report;
}

}  // namespace evenfall::reports

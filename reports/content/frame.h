// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

/// What every builder needs besides the results it reports on.
namespace evenfall::reports {

struct Frame {
    UnitsShown units;
    std::string organisation;
    std::string created;    ///< instant, ISO 8601; empty leaves the date out
    std::string program;    ///< "Evenfall 0.1.0"
    std::vector<Signature> signatures;
};

/// What a volume of water costs.
struct WaterPrice {
    double amount;          ///< in `currency`
    units::Volume per;
    std::string currency;   ///< "USD"
    std::string source;     ///< where the price comes from
};

/// Quantities as numbers in the units a report shows, with the formats that name them.
class Shown {
  public:
    explicit Shown(UnitsShown units) : us_(units == UnitsShown::us) {}

    NumberFormat volume_format() const { return us_ ? NumberFormat{0, "gal"} : NumberFormat{1, "m3"}; }
    NumberFormat depth_format() const { return us_ ? NumberFormat{3, "in"} : NumberFormat{2, "mm"}; }
    NumberFormat month_depth_format() const {
        return us_ ? NumberFormat{2, "in"} : NumberFormat{1, "mm"};
    }
    NumberFormat rate_format() const { return us_ ? NumberFormat{3, "in/h"} : NumberFormat{2, "mm/h"}; }
    NumberFormat size_format() const { return us_ ? NumberFormat{2, "ac"} : NumberFormat{3, "ha"}; }

    double volume(units::Volume v) const { return us_ ? v.in(units::us_gallon) : v.si(); }
    double depth(units::Depth d) const { return us_ ? d.in(units::inch) : d.in(units::millimetre); }
    double rate(units::Rate r) const {
        return us_ ? r.in(units::inch_per_hour) : r.in(units::millimetre_per_hour);
    }
    double size(units::Area a) const { return us_ ? a.in(units::acre) : a.in(units::hectare); }

    std::optional<double> volume(std::optional<units::Volume> v) const {
        return v ? std::optional(volume(*v)) : std::nullopt;
    }
    std::optional<double> depth(std::optional<units::Depth> d) const {
        return d ? std::optional(depth(*d)) : std::nullopt;
    }
    bool us() const { return us_; }

  private:
    bool us_;
};

/// "1,234,567 gal (4,673.4 m3)", or the other way round.
std::string both(units::Volume volume, UnitsShown units);
std::string both(units::Depth depth, UnitsShown units);
std::string both(units::Rate rate, UnitsShown units);
std::string both(units::Area size, UnitsShown units);
/// "62.5 %"
std::string percent(double share, int decimals = 1);

/// Title, subtitle, caution and the fields of the frame.
Report framed(std::string kind, std::string title, std::string subtitle, const Frame& frame);

}  // namespace evenfall::reports

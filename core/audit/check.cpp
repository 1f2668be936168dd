// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/sample.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace evenfall::audit {
namespace {

using units::format_shortest;

/// Deepest catch that is still believed, from schemas/reference/audit_limits.csv: more is a wrong
/// unit or a slip of the pen.
units::Depth deepest_believed() {
    static const double mm =
        reference::Table::named("audit_limits.csv").find("limit", "deepest_catch_mm")->number("value");
    return mm * units::millimetre;
}

class Findings {
  public:
    explicit Findings(const CatchTest& test) : test_(test) {}

    void can(const Catch& c, std::string column, Sentence found, Sentence expected) {
        issues_.push_back({{test_.file, c.row, std::move(column)},
                           c.can.empty() ? std::move(found) : Sentence(phrase("audit", "can %1: %2"), c.can, found),
                           std::move(expected)});
    }
    void whole(std::string column, Sentence found, Sentence expected) {
        issues_.push_back({{test_.file, 0, std::move(column)}, std::move(found),
                           std::move(expected)});
    }
    std::vector<Issue> take() { return std::move(issues_); }

  private:
    const CatchTest& test_;
    std::vector<Issue> issues_;
};

const char* reading_column(CatchUnit unit) {
    if (unit == CatchUnit::millilitre) return "volume_ml";
    return unit == CatchUnit::millimetre ? "depth_mm" : "depth_in";
}

std::string reading_text(const CatchTest& test, double reading) {
    const char* name = test.catch_unit == CatchUnit::millilitre   ? " mL"
                       : test.catch_unit == CatchUnit::millimetre ? " mm"
                                                                  : " in";
    return format_shortest(reading) + name;
}

void check_reading(const CatchTest& test, const Catch& c, Findings& out) {
    const std::string column = reading_column(test.catch_unit);
    if (!std::isfinite(c.reading) || c.reading < 0.0) {
        out.can(c, column, reading_text(test, c.reading), phrase("audit", "a finite reading of zero or more"));
        return;
    }
    if (test.can_size && test.catch_unit == CatchUnit::millilitre &&
        c.reading * units::millilitre > test.can_size->quantity()) {
        out.can(c, column, reading_text(test, c.reading),
                {phrase("audit", "no more than the can holds, %1"), test.can_size->text()});
    }
    const bool has_depth = test.catch_unit != CatchUnit::millilitre ||
                           (test.throat_area && test.throat_area->value > 0.0);
    if (has_depth && depth_of(test, c) > deepest_believed()) {
        out.can(c, column, reading_text(test, c.reading),
                {phrase("audit", "a catch below %1 mm; is the unit or the throat area right?"),
                 format_shortest(deepest_believed().in(units::millimetre))});
    }
    if (!c.by_station.empty()) {
        double sum = 0.0;
        for (const StationCatch& s : c.by_station) {
            if (!std::isfinite(s.reading) || s.reading < 0.0) {
                out.can(c, column, reading_text(test, s.reading),
                        phrase("audit", "a finite reading of zero or more"));
            }
            sum += s.reading;
        }
        if (!(std::abs(sum - c.reading) <= 1e-9 * std::max(1.0, c.reading))) {
            out.can(c, column, reading_text(test, c.reading),
                    {phrase("audit", "the sum over the stations, %1"), reading_text(test, sum)});
        }
    }
}

void check_position(const CatchTest& test, const Catch& c, Findings& out) {
    const auto finite = [](const std::optional<double>& v) { return v && std::isfinite(*v); };
    const bool along_a_line = test.layout == Layout::pivot || test.layout == Layout::traveller ||
                              test.layout == Layout::lateral;
    if (test.layout == Layout::irregular && !(finite(c.x) && finite(c.y))) {
        out.can(c, "x, y", phrase("audit", "no position"), phrase("audit", "x and y of every can that counts"));
    }
    if (test.layout == Layout::grid && c.x.has_value() != c.y.has_value()) {
        out.can(c, "x, y", phrase("audit", "half a position"), phrase("audit", "x and y, or neither"));
    }
    // A lateral may be measured from anywhere along it, the others start at the machine.
    const bool may_be_negative = test.layout == Layout::lateral;
    if (along_a_line && !(finite(c.distance) && (may_be_negative || *c.distance >= 0.0))) {
        out.can(c, "distance",
                c.distance ? Sentence(format_shortest(*c.distance)) : Sentence(phrase("audit", "no distance")),
                may_be_negative ? phrase("audit", "a distance along the machine")
                                : phrase("audit", "a distance of zero or more"));
    }
    if (test.layout == Layout::traveller && c.side != Side::left && c.side != Side::right) {
        out.can(c, "side", phrase("audit", "no side"),
                phrase("audit", "left or right of the path, looking along the pull"));
    }
}

void check_duplicates(const CatchTest& test, Findings& out) {
    std::map<std::string, const Catch*> labels;
    std::map<std::pair<double, double>, const Catch*> places;
    for (const Catch& c : test.catches) {
        if (c.can.empty())
            out.can(c, "can", "", phrase("audit", "a label on every can"));
        else if (!labels.emplace(c.can, &c).second) {
            out.can(c, "can", phrase("audit", "the label a second time"), phrase("audit", "each can once"));
        }
        std::optional<std::pair<double, double>> place;
        if (test.layout == Layout::traveller && c.distance && c.side) {
            place = {*c.side == Side::left ? -*c.distance : *c.distance, 0.0};
        } else if ((test.layout == Layout::pivot || test.layout == Layout::lateral) && c.distance) {
            place = {*c.distance, 0.0};
        } else if (c.x && c.y && !c.distance) {
            place = {*c.x, *c.y};
        }
        if (!place || !c.excluded.empty()) continue;
        const auto [it, fresh] = places.emplace(*place, &c);
        if (!fresh) {
            out.can(c, "position", {phrase("audit", "the same place as can %1"), it->second->can},
                    phrase("audit", "a place of its own for every can"));
        }
    }
}

void check_lane(const CatchTest& test, Findings& out) {
    if (!test.lane_spacing) {
        out.whole("lane spacing", "", phrase("audit", "the distance between neighbouring paths"));
        return;
    }
    const double lane = test.lane_spacing->quantity().si();
    if (!std::isfinite(lane) || lane <= 0.0) {
        out.whole("lane spacing", test.lane_spacing->text(), phrase("audit", "a distance above zero"));
        return;
    }
    std::vector<double> at;
    for (const Catch& c : test.catches) {
        if (c.distance && c.side && c.excluded.empty()) {
            at.push_back((*c.side == Side::left ? -1.0 : 1.0) * *c.distance *
                         test.position_unit.unit.si());
        }
    }
    std::sort(at.begin(), at.end());
    std::vector<double> gaps;
    for (std::size_t i = 1; i < at.size(); ++i) gaps.push_back(at[i] - at[i - 1]);
    if (gaps.empty()) return;
    std::sort(gaps.begin(), gaps.end());
    const double spacing = gaps[gaps.size() / 2];
    if (lane < spacing) {
        out.whole("lane spacing", test.lane_spacing->text(),
                  {phrase("audit", "at least the can spacing, %1 m"), format_shortest(spacing)});
    }
}

void check_stations(const CatchTest& test, Findings& out) {
    std::map<std::string, int> known;
    for (const StationRun& run : test.stations) {
        if (run.station.empty() || !known.emplace(run.station, 0).second) {
            out.whole("station", run.station, phrase("audit", "a name of its own for every station"));
        }
        if (!std::isfinite(run.minutes) || run.minutes <= 0.0) {
            out.whole("minutes", format_shortest(run.minutes),
                      {phrase("audit", "a run time above zero for station %1"), run.station});
        }
    }
    const bool any = std::any_of(test.catches.begin(), test.catches.end(),
                                 [](const Catch& c) { return !c.by_station.empty(); });
    for (const Catch& c : test.catches) {
        if (!any || (c.by_station.empty() && !c.excluded.empty())) continue;
        std::map<std::string, int> seen;
        for (const StationCatch& s : c.by_station) {
            if (!known.contains(s.station)) {
                out.can(c, "station", s.station, phrase("audit", "one of the stations that ran"));
            }
            if (++seen[s.station] == 2) {
                out.can(c, "station", s.station, phrase("audit", "each station once for a can"));
            }
        }
        for (const auto& [station, unused] : known) {
            if (!seen.contains(station)) {
                out.can(c, "station", {phrase("audit", "no reading after station %1"), station},
                        phrase("audit", "a reading after every station, 0 when the can stayed dry"));
            }
        }
    }
}

}  // namespace

std::vector<Issue> check(const CatchTest& test) {
    Findings out(test);
    if (test.minutes && !(std::isfinite(*test.minutes) && *test.minutes > 0.0)) {
        out.whole("minutes", format_shortest(*test.minutes), phrase("audit", "a run time above zero"));
    }
    if (test.throat_area &&
        !(std::isfinite(test.throat_area->value) && test.throat_area->value > 0.0)) {
        out.whole("throat area", test.throat_area->text(), phrase("audit", "an area above zero"));
    } else if (!test.throat_area && test.catch_unit == CatchUnit::millilitre) {
        out.whole("throat area", "", phrase("audit", "the throat area of the cans, needed to turn mL into depth"));
    }
    std::size_t counting = 0;
    bool wet = false;
    for (const Catch& c : test.catches) {
        if (!c.excluded.empty()) continue;
        ++counting;
        wet = wet || c.reading > 0.0;
        check_reading(test, c, out);
        check_position(test, c, out);
    }
    check_duplicates(test, out);
    check_stations(test, out);
    if (test.layout == Layout::traveller) check_lane(test, out);
    if (counting < 4) {
        out.whole("", {phrase("audit", "%1 cans that count"), counting}, phrase("audit", "at least four"));
    } else if (!wet) {
        out.whole("", phrase("audit", "every can dry"),
                  phrase("audit", "water in at least one can: uniformity is undefined"));
    }
    return out.take();
}

units::Depth depth_of(const CatchTest& test, const Catch& can) {
    switch (test.catch_unit) {
        case CatchUnit::millimetre: return can.reading * units::millimetre;
        case CatchUnit::inch: return can.reading * units::inch;
        case CatchUnit::millilitre: break;
    }
    if (!test.throat_area) {
        throw InputError(phrase("audit", "volumes without a throat area"),
                         phrase("audit", "the throat area of the cans"));
    }
    return can.reading * units::millilitre / test.throat_area->quantity();
}

std::vector<units::Depth> depths_of(const CatchTest& test) {
    std::vector<units::Depth> depths;
    for (const Catch& c : test.catches) {
        if (c.excluded.empty()) depths.push_back(depth_of(test, c));
    }
    return depths;
}

}  // namespace evenfall::audit

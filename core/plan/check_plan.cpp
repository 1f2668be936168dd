// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/check_plan.h"

#include "core/plan/nozzle.h"
#include "core/plan/outline.h"
#include "core/plan/profile.h"

#include <cmath>
#include <map>
#include <set>

namespace evenfall::plan {
namespace {

constexpr std::size_t most_issues = 100;
/// No turf is 100 km wide: a coordinate that far out is a geographic one or a damaged number.
constexpr double most_extent_m = 100'000.0;
/// No sprinkler throws farther; the largest guns reach about a tenth of this.
constexpr double most_radius_m = 1000.0;

class Checker {
  public:
    Checker(const Plan& plan, const std::string& file) : plan_(plan), file_(file) {}

    std::vector<Issue> run() {
        check_units();
        if (issues_.empty()) {
            check_size();
        }
        if (issues_.empty()) {
            check_polygons(plan_.turf, "outline");
            check_polygons(plan_.no_water, "no_water");
            check_polygons(plan_.obstacles, "obstacles");
            check_nozzles();
            check_profiles();
        }
        if (issues_.empty()) check_heads();
        if (issues_.empty()) check_drawn();
        return std::move(issues_);
    }

  private:
    bool full() const { return issues_.size() > most_issues; }

    void add(const std::string& place, const Sentence& found, const Sentence& expected) {
        if (issues_.size() < most_issues) {
            issues_.push_back({{file_, 0, place}, found, expected});
        } else if (issues_.size() == most_issues) {
            issues_.push_back({{file_, 0, ""}, phrase("plan", "more of this kind"), phrase("plan", "the ones above put right first")});
        }
    }

    void check_units() {
        if (!(plan_.units.length.unit.si() > 0.0) || !(plan_.units.flow.unit.si() > 0.0)) {
            add("units", phrase("plan", "a unit of no size"), phrase("plan", "units of length and flow"));
        }
    }

    void check_size() {
        if (plan_.turf.empty()) add("outline", phrase("plan", "no outline"), phrase("plan", "at least one outline"));
        if (plan_.heads.empty()) add("heads", phrase("plan", "no head"), phrase("plan", "at least one head"));
        if (plan_.heads.size() > most_heads) {
            add("heads", {phrase("plan", "%1 heads"), plan_.heads.size()}, {phrase("plan", "at most %1"), most_heads});
        }
        std::size_t points = 0;
        for (const auto* polygons : {&plan_.turf, &plan_.no_water, &plan_.obstacles}) {
            for (const Polygon& polygon : *polygons) {
                for (const Ring& ring : polygon) points += ring.size();
            }
        }
        if (points > most_points) {
            add("outline", {phrase("plan", "%1 points"), points}, {phrase("plan", "at most %1 in all outlines together"), most_points});
        }
    }

    static std::string indexed(const std::string& what, std::size_t i) {
        return what + "[" + std::to_string(i) + "]";
    }

    void check_polygons(const std::vector<Polygon>& polygons, const std::string& what) {
        const double most = most_extent_m / plan_.units.length.unit.si();
        for (std::size_t i = 0; i < polygons.size() && !full(); ++i) {
            const std::string place =
                what == "outline" && i == 0 ? what
                : what == "outline"         ? indexed("more_outlines", i - 1)
                                            : indexed(what, i);
            bool near = true;
            for (const Ring& ring : polygons[i]) {
                for (const Point& p : ring) near = near && std::abs(p.x) < 1e12 && std::abs(p.y) < 1e12;
            }
            if (!near) {
                add(place, phrase("plan", "a coordinate beyond 1e12 or not a number"), phrase("plan", "finite coordinates"));
                continue;
            }
            const Sentence fault = outline_fault(polygons[i]);
            if (!fault.empty()) {
                add(place, {phrase("plan", "an outline that %1"), fault},
                    phrase("plan", "a ring of at least three points that does not cross itself, then its holes"));
                continue;
            }
            const Box box = box_of({polygons[i]});
            if (box.x1 - box.x0 > most || box.y1 - box.y0 > most) {
                add(place,
                    {phrase("plan", "an outline %1 %2 long"), units::format_shortest(std::max(box.x1 - box.x0, box.y1 - box.y0)), plan_.units.length.name},
                    {phrase("plan", "at most %1"), units::format_shortest(most)});
            }
        }
        if (what == "outline" && issues_.empty() && polygons.size() > 1) {
            const Box box = box_of(polygons);
            if (box.x1 - box.x0 > most || box.y1 - box.y0 > most) {
                add("more_outlines", phrase("plan", "outlines far apart"),
                    {phrase("plan", "all of them within %1 %2"), units::format_shortest(most), plan_.units.length.name});
            }
        }
    }

    void check_nozzles() {
        for (std::size_t i = 0; i < plan_.nozzles.size() && !full(); ++i) {
            const Nozzle& nozzle = plan_.nozzles[i];
            const std::string place = "nozzles." + printable(nozzle.name);
            if (nozzle.name.empty()) add("nozzles", phrase("plan", "a nozzle without a name"), phrase("plan", "a name"));
            if (!nozzles_.emplace(nozzle.name, &nozzle).second) {
                add(place, phrase("plan", "the same name twice"), phrase("plan", "one table per nozzle"));
            }
            if (nozzle.rows.empty()) add(place, phrase("plan", "no row"), phrase("plan", "at least one row of pressure, radius and flow"));
            double before = 0.0;
            for (std::size_t r = 0; r < nozzle.rows.size() && !full(); ++r) {
                const NozzleRow& row = nozzle.rows[r];
                const std::string where = indexed(place, r);
                check_positive(where + ".pressure", row.pressure);
                check_radius(where + ".radius", row.radius);
                check_positive(where + ".flow", row.flow);
                if (row.pressure <= before) {
                    add(where + ".pressure", units::format_shortest(row.pressure),
                        phrase("plan", "pressures that rise from row to row"));
                }
                before = row.pressure;
            }
            if (nozzle.lowest && nozzle.highest && !(*nozzle.lowest < *nozzle.highest)) {
                add(place, phrase("plan", "an operating range without width"), phrase("plan", "lowest below highest"));
            }
        }
    }

    void check_profiles() {
        for (const MeasuredLeg& leg : plan_.profiles) {
            if (full()) return;
            const std::string place = "profiles." + printable(leg.name);
            if (leg.name == "cone" || leg.name == "flat" || leg.name.empty()) {
                add(place, printable(leg.name), phrase("plan", "a name of its own, not empty, cone or flat"));
            }
            if (!profiles_.insert(leg.name).second) add(place, phrase("plan", "the same name twice"), phrase("plan", "one leg per name"));
            try {
                static_cast<void>(RadialProfile::measured(leg));
            } catch (const InputError& e) {
                add(place, e.issues().front().found, e.issues().front().expected);
            }
        }
    }

    void check_positive(const std::string& place, double value) {
        if (!(value > 0.0) || !(value < 1e12)) {
            add(place, units::format_shortest(value), phrase("plan", "a number above zero"));
        }
    }

    void check_radius(const std::string& place, double value) {
        check_positive(place, value);
        if (value * plan_.units.length.unit.si() > most_radius_m) {
            add(place, units::format_shortest(value),
                phrase("plan", "a radius of throw of at most 1000 m"));
        }
    }

    void check_throw(const Head& head, const std::string& place) {
        if (head.radius) check_radius(place + ".radius", *head.radius);
        if (head.flow) check_positive(place + ".flow", *head.flow);
        if (head.pressure) check_positive(place + ".pressure", *head.pressure);
        if (head.nozzle.empty()) {
            if (!head.radius) add(place + ".radius", phrase("plan", "nothing"), phrase("plan", "a radius, or a nozzle and a pressure"));
            if (!head.flow) add(place + ".flow", phrase("plan", "nothing"), phrase("plan", "a flow, or a nozzle and a pressure"));
            return;
        }
        if (head.radius && head.flow) return;  // as drawn; the nozzle is a label then
        const auto nozzle = nozzles_.find(head.nozzle);
        if (nozzle == nozzles_.end()) {
            add(place + ".nozzle", printable(head.nozzle), phrase("plan", "the name of a table under nozzles"));
            return;
        }
        if (!head.pressure) {
            add(place + ".pressure", phrase("plan", "nothing"), phrase("plan", "the pressure at the head"));
            return;
        }
        try {
            static_cast<void>(throw_at(*nozzle->second, *head.pressure, plan_.units));
        } catch (const InputError& e) {
            add(place + ".pressure", e.issues().front().found, e.issues().front().expected);
        }
    }

    void check_heads() {
        const Ground ground(plan_.turf);
        const double slack = head_slack_m / plan_.units.length.unit.si();
        std::map<std::string, std::size_t> seen;
        for (std::size_t i = 0; i < plan_.heads.size() && !full(); ++i) {
            const Head& head = plan_.heads[i];
            const std::string place = indexed("heads", i);
            if (head.id.empty()) add(place + ".id", phrase("plan", "nothing"), phrase("plan", "a name for the head"));
            const auto [other, fresh] = seen.emplace(head.id, i);
            if (!fresh) {
                add(place + ".id", printable(head.id),
                    {phrase("plan", "a name that no other head has (%1)"), indexed("heads", other->second)});
            }
            check_throw(head, place);
            if (!(head.arc > 0.0) || !(head.arc <= 360.0)) {
                add(place + ".arc", units::format_shortest(head.arc),
                    phrase("plan", "degrees above 0, up to 360 for a full circle"));
            }
            if (!(std::abs(head.facing) <= 360.0)) {
                add(place + ".facing", units::format_shortest(head.facing),
                    phrase("plan", "degrees clockwise from north, 0 to 360"));
            }
            if (head.profile != "cone" && head.profile != "flat" && !profiles_.contains(head.profile)) {
                add(place + ".profile", printable(head.profile),
                    phrase("plan", "cone, flat or the name of a leg under profiles"));
            }
            if (!std::isfinite(head.x) || !std::isfinite(head.y)) {
                add(place, phrase("plan", "a position that is not a number"), phrase("plan", "finite x and y"));
            } else if (!ground.covers({head.x, head.y}, slack)) {
                add(place,
                    units::format_shortest(head.x) + ", " + units::format_shortest(head.y),
                    phrase("plan", "a position inside the outline or within 0.1 m of it"));
            }
        }
    }

    void check_path(const std::string& place, const std::vector<Point>& path) {
        if (path.size() < 2 || path.size() > most_points) {
            add(place, {phrase("plan", "%1 points"), path.size()}, phrase("plan", "a path of two points or more"));
        }
        for (const Point& p : path) {
            if (!(std::abs(p.x) < 1e12) || !(std::abs(p.y) < 1e12)) {
                add(place, phrase("plan", "a point that is not finite"), phrase("plan", "finite coordinates"));
                return;
            }
        }
    }

    void check_drawn() {
        for (std::size_t i = 0; i < plan_.pipes.size() && !full(); ++i) {
            check_path(indexed("pipes", i), plan_.pipes[i].path);
        }
        for (std::size_t i = 0; i < plan_.lanes.size() && !full(); ++i) {
            check_path(indexed("lanes", i), plan_.lanes[i].path);
        }
        for (std::size_t i = 0; i < plan_.pivots.size() && !full(); ++i) {
            const Pivot& pivot = plan_.pivots[i];
            if (!(std::abs(pivot.centre.x) < 1e12) || !(std::abs(pivot.centre.y) < 1e12)) {
                add(indexed("pivots", i), phrase("plan", "a point that is not finite"), phrase("plan", "finite coordinates"));
            }
            if (pivot.spans.empty()) add(indexed("pivots", i) + ".spans", phrase("plan", "no span"), phrase("plan", "at least one length"));
            for (double span : pivot.spans) check_positive(indexed("pivots", i) + ".spans", span);
        }
    }

    const Plan& plan_;
    const std::string file_;
    std::vector<Issue> issues_;
    std::map<std::string, const Nozzle*> nozzles_;
    std::set<std::string> profiles_;
};

}  // namespace

std::vector<Issue> faults_of(const Plan& plan, const std::string& file) {
    return Checker(plan, file).run();
}

void require_sound(const Plan& plan, const std::string& file) {
    std::vector<Issue> faults = faults_of(plan, file);
    if (!faults.empty()) throw InputError(std::move(faults));
}

}  // namespace evenfall::plan

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_file.h"

#include "core/exchange/columns.h"
#include "core/exchange/json_screen.h"
#include "core/input_error.h"
#include "core/plan/assumption.h"
#include "core/plan/check_plan.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <span>

namespace evenfall::exchange {
namespace {

using nlohmann::json;
using namespace plan;

/// Walks the parsed file. Collects issues and goes on, so that one run shows all of them.
class PlanReader {
  public:
    PlanReader(const json& root, std::string file) : root_(root), file_(std::move(file)) {}

    Plan run() {
        read_ground();
        read_nozzles();
        read_profiles();
        read_heads();
        read_drawn();
        if (!issues_.empty()) throw InputError(std::move(issues_));
        require_sound(plan_, file_);
        return std::move(plan_);
    }

    /// Without heads.
    Plan run_outline() {
        read_ground();
        if (!issues_.empty()) throw InputError(std::move(issues_));
        return std::move(plan_);
    }

  private:
    void read_ground() {
        if (!root_.is_object()) {
            add("", shown(root_), phrase("exchange", "one object with \"evenfall_plan\": 1"));
            throw InputError(std::move(issues_));
        }
        check_version();
        check_keys(root_, "",
                   {"evenfall_plan", "name", "note", "units", "outline", "more_outlines", "no_water",
                    "obstacles", "heads", "nozzles", "profiles", "pipes", "lanes", "pivots", "assumed"});
        if (root_.contains("name")) plan_.name = text(root_["name"], "name");
        if (root_.contains("note")) static_cast<void>(text(root_["note"], "note"));
        read_assumed();
        read_units();
        read_outlines();
    }

    /// What was filled in when the plan was first read stays an assumption when it is read again.
    void read_assumed() {
        const json* sentences = list(root_, "assumed", "");
        if (!sentences) return;
        for (std::size_t i = 0; i < sentences->size() && issues_.size() < most_issues; ++i) {
            plan_.assumed.push_back(kept_assumption(text((*sentences)[i], indexed("assumed", i))));
        }
    }

    static constexpr std::size_t most_issues = 100;

    static Sentence shown(const json& value) {
        if (value.is_object()) return phrase("exchange", "an object");
        if (value.is_array()) return {phrase("exchange", "a list of %1"), value.size()};
        return printable(value.dump(-1, ' ', false, json::error_handler_t::replace));
    }

    void add(const std::string& path, const Sentence& found, const Sentence& expected) {
        if (issues_.size() >= most_issues) return;
        Issue& issue = issues_.emplace_back();
        issue.place.file = file_;
        issue.place.column = path;
        issue.found = found;
        issue.expected = expected;
    }

    static std::string join(const std::string& path, std::string_view key) {
        return path.empty() ? std::string(key) : path + "." + std::string(key);
    }
    static std::string indexed(const std::string& path, std::size_t i) {
        return path + "[" + std::to_string(i) + "]";
    }

    void check_version() {
        if (!root_.contains("evenfall_plan")) {
            add("evenfall_plan", phrase("exchange", "nothing"), phrase("exchange", "1, the version of the plan form"));
        } else if (root_["evenfall_plan"] != 1) {
            add("evenfall_plan", shown(root_["evenfall_plan"]), phrase("exchange", "1, the version of the plan form"));
        }
    }

    void check_keys(const json& object, const std::string& path,
                    std::initializer_list<std::string_view> known) {
        for (const auto& [key, value] : object.items()) {
            if (std::find(known.begin(), known.end(), key) != known.end()) continue;
            const std::string_view near =
                nearest_name(std::string_view(key).substr(0, 64), std::span(known.begin(), known.size()));
            add(join(path, printable(key)), phrase("exchange", "a key that is not known"),
                near.empty() ? Sentence(phrase("exchange", "one of the keys of the plan form"))
                             : Sentence(phrase("exchange", "the key \"%1\", which is the nearest known one"), near));
        }
    }

    std::string text(const json& value, const std::string& path) {
        if (value.is_string()) {
            const auto& s = value.get_ref<const std::string&>();
            if (s.size() <= 400) return s;
            add(path, printable(s), phrase("exchange", "a text of at most 400 bytes"));
            return "";
        }
        add(path, shown(value), phrase("exchange", "a text in quotes"));
        return "";
    }

    double number(const json& value, const std::string& path) {
        if (value.is_number()) {
            const double n = value.get<double>();
            if (std::isfinite(n)) return n;
        }
        add(path, shown(value), phrase("exchange", "a finite number"));
        return 0.0;
    }

    std::optional<double> maybe_number(const json& object, const char* key, const std::string& path) {
        if (!object.contains(key) || object[key].is_null()) return std::nullopt;
        return number(object[key], join(path, key));
    }

    std::string maybe_text(const json& object, const char* key, const std::string& path) {
        if (!object.contains(key) || object[key].is_null()) return "";
        return text(object[key], join(path, key));
    }

    const json* list(const json& object, const char* key, const std::string& path) {
        if (!object.contains(key)) return nullptr;
        if (object[key].is_array()) return &object[key];
        add(join(path, key), shown(object[key]), phrase("exchange", "a list in [ ]"));
        return nullptr;
    }

    bool object(const json& value, const std::string& path) {
        if (value.is_object()) return true;
        add(path, shown(value), phrase("exchange", "an object in { }"));
        return false;
    }

    template <class Q>
    void read_unit(const json& units, const char* key, bool needed, units::NamedUnit<Q>& into) {
        const std::string path = join("units", key);
        if (!units.contains(key)) {
            if (needed) add(path, phrase("exchange", "nothing"), {phrase("exchange", "the unit, such as \"%1\""), into.name});
            return;
        }
        const std::string name = text(units[key], path);
        try {
            into = units::unit_named<Q>(name);
        } catch (const InputError& e) {
            add(path, printable(name), e.issues().front().expected);
        }
    }

    void read_units() {
        if (!root_.contains("units")) {
            add("units", phrase("exchange", "nothing"),
                phrase("exchange", "{\"length\": \"ft\", \"flow\": \"gpm\", \"pressure\": \"psi\"} or other units"));
            return;
        }
        const json& units = root_["units"];
        if (!object(units, "units")) return;
        check_keys(units, "units", {"length", "flow", "pressure"});
        read_unit(units, "length", true, plan_.units.length);
        read_unit(units, "flow", true, plan_.units.flow);
        // A pressure stands only beside a nozzle table.
        const bool pressures = root_.contains("nozzles") && !root_["nozzles"].empty();
        read_unit(units, "pressure", pressures, plan_.units.pressure);
    }

    Point point(const json& value, const std::string& path) {
        if (!value.is_array() || value.size() != 2) {
            add(path, shown(value), phrase("exchange", "a point [x, y]"));
            return {};
        }
        return {number(value[0], indexed(path, 0)), number(value[1], indexed(path, 1))};
    }

    Ring ring(const json& value, const std::string& path) {
        Ring out;
        if (!value.is_array()) {
            add(path, shown(value), phrase("exchange", "a ring of points [[x, y], ...]"));
            return out;
        }
        out.reserve(value.size());
        for (std::size_t i = 0; i < value.size(); ++i) {
            if (issues_.size() >= most_issues) break;
            out.push_back(point(value[i], indexed(path, i)));
        }
        if (out.size() > 1 && out.front() == out.back()) out.pop_back();
        return out;
    }

    Polygon polygon(const json& value, const std::string& path) {
        Polygon out;
        if (!value.is_array() || value.empty()) {
            add(path, shown(value), phrase("exchange", "rings of points, the outer one first"));
            return out;
        }
        for (std::size_t i = 0; i < value.size(); ++i) out.push_back(ring(value[i], indexed(path, i)));
        return out;
    }

    /// A list whose entries are rings, or polygons with holes.
    std::vector<Polygon> polygons(const char* key) {
        std::vector<Polygon> out;
        const json* all = list(root_, key, "");
        if (!all) return out;
        for (std::size_t i = 0; i < all->size(); ++i) {
            const json& entry = (*all)[i];
            const std::string path = indexed(key, i);
            const bool plain = entry.is_array() && !entry.empty() && entry[0].is_array() &&
                               !entry[0].empty() && !entry[0][0].is_array();
            out.push_back(plain ? Polygon{ring(entry, path)} : polygon(entry, path));
        }
        return out;
    }

    void read_outlines() {
        if (!root_.contains("outline")) {
            add("outline", phrase("exchange", "nothing"),
                phrase("exchange", "the outer ring and then its holes, [[[x, y], ...], ...]"));
        } else {
            plan_.turf.push_back(polygon(root_["outline"], "outline"));
        }
        for (Polygon& more : polygons("more_outlines")) plan_.turf.push_back(std::move(more));
        plan_.no_water = polygons("no_water");
        plan_.obstacles = polygons("obstacles");
    }

    void read_nozzles() {
        if (!root_.contains("nozzles") || !object(root_["nozzles"], "nozzles")) return;
        for (const auto& [name, value] : root_["nozzles"].items()) {
            const std::string path = join("nozzles", printable(name));
            Nozzle nozzle;
            nozzle.name = name;
            const json* rows = &value;
            if (value.is_object()) {
                check_keys(value, path, {"rows", "lowest", "highest"});
                nozzle.lowest = maybe_number(value, "lowest", path);
                nozzle.highest = maybe_number(value, "highest", path);
                rows = list(value, "rows", path);
            }
            if (!rows || !rows->is_array()) {
                add(path, shown(value), phrase("exchange", "rows [[pressure, radius, flow], ...]"));
                continue;
            }
            for (std::size_t i = 0; i < rows->size(); ++i) {
                const json& row = (*rows)[i];
                const std::string where = indexed(path, i);
                if (!row.is_array() || row.size() != 3) {
                    add(where, shown(row), phrase("exchange", "a row [pressure, radius, flow]"));
                    continue;
                }
                nozzle.rows.push_back({number(row[0], indexed(where, 0)), number(row[1], indexed(where, 1)),
                                       number(row[2], indexed(where, 2))});
            }
            plan_.nozzles.push_back(std::move(nozzle));
        }
    }

    void read_profiles() {
        if (!root_.contains("profiles") || !object(root_["profiles"], "profiles")) return;
        for (const auto& [name, value] : root_["profiles"].items()) {
            const std::string path = join("profiles", printable(name));
            MeasuredLeg leg;
            leg.name = name;
            if (!value.is_array()) {
                add(path, shown(value), phrase("exchange", "readings [[distance, rate], ...]"));
                continue;
            }
            for (std::size_t i = 0; i < value.size(); ++i) {
                const Point reading = point(value[i], indexed(path, i));
                leg.readings.push_back({reading.x, reading.y});
            }
            plan_.profiles.push_back(std::move(leg));
        }
    }

    void read_heads() {
        const json* heads = list(root_, "heads", "");
        if (!root_.contains("heads")) add("heads", phrase("exchange", "nothing"), phrase("exchange", "a list of heads"));
        if (!heads) return;
        plan_.heads.reserve(std::min(heads->size(), most_heads));
        bool no_arc = false, no_profile = false;
        for (std::size_t i = 0; i < heads->size() && issues_.size() < most_issues; ++i) {
            const json& value = (*heads)[i];
            const std::string path = indexed("heads", i);
            if (!object(value, path)) continue;
            check_keys(value, path,
                       {"id", "x", "y", "radius", "flow", "nozzle", "pressure", "arc", "facing",
                        "station", "profile"});
            Head head;
            for (const char* key : {"id", "x", "y"}) {
                if (!value.contains(key)) add(join(path, key), phrase("exchange", "nothing"), phrase("exchange", "a value"));
            }
            head.id = maybe_text(value, "id", path);
            head.x = maybe_number(value, "x", path).value_or(0.0);
            head.y = maybe_number(value, "y", path).value_or(0.0);
            head.radius = maybe_number(value, "radius", path);
            head.flow = maybe_number(value, "flow", path);
            head.nozzle = maybe_text(value, "nozzle", path);
            head.pressure = maybe_number(value, "pressure", path);
            head.station = maybe_text(value, "station", path);
            const auto arc = maybe_number(value, "arc", path);
            const auto facing = maybe_number(value, "facing", path);
            head.arc = arc.value_or(360.0);
            head.facing = facing.value_or(0.0);
            if (arc && *arc < 360.0 && *arc > 0.0 && !facing) {
                add(join(path, "facing"), phrase("exchange", "nothing"),
                    phrase("exchange", "the middle of the arc, degrees clockwise from north"));
            }
            no_arc = no_arc || !arc;
            if (value.contains("profile")) head.profile = text(value["profile"], join(path, "profile"));
            no_profile = no_profile || !value.contains("profile");
            if (!head.radius && head.nozzle.empty()) fill_radius(head);
            plan_.heads.push_back(std::move(head));
        }
        if (no_arc) plan_.assumed.emplace_back(full_circles_assumed);
        if (no_profile) plan_.assumed.emplace_back(cones_assumed);
    }

    /// A measured leg says how far the water went.
    void fill_radius(Head& head) const {
        for (const MeasuredLeg& leg : plan_.profiles) {
            if (leg.name == head.profile && !leg.readings.empty()) head.radius = leg.readings.back().distance;
        }
    }

    std::vector<Point> path_of(const json& object, const char* key, const std::string& where) {
        std::vector<Point> out;
        if (const json* points = list(object, key, where)) {
            for (std::size_t i = 0; i < points->size(); ++i) {
                out.push_back(point((*points)[i], indexed(join(where, key), i)));
            }
        }
        return out;
    }

    void read_drawn() {
        if (const json* pipes = list(root_, "pipes", "")) {
            for (std::size_t i = 0; i < pipes->size() && issues_.size() < most_issues; ++i) {
                const json& value = (*pipes)[i];
                const std::string where = indexed("pipes", i);
                if (!object(value, where)) continue;
                check_keys(value, where, {"id", "path", "size"});
                plan_.pipes.push_back({maybe_text(value, "id", where), path_of(value, "path", where),
                                       maybe_text(value, "size", where)});
            }
        }
        if (const json* lanes = list(root_, "lanes", "")) {
            for (std::size_t i = 0; i < lanes->size() && issues_.size() < most_issues; ++i) {
                const json& value = (*lanes)[i];
                const std::string where = indexed("lanes", i);
                if (!object(value, where)) continue;
                check_keys(value, where, {"id", "path"});
                plan_.lanes.push_back({maybe_text(value, "id", where), path_of(value, "path", where)});
            }
        }
        if (const json* pivots = list(root_, "pivots", "")) {
            for (std::size_t i = 0; i < pivots->size() && issues_.size() < most_issues; ++i) {
                const json& value = (*pivots)[i];
                const std::string where = indexed("pivots", i);
                if (!object(value, where)) continue;
                check_keys(value, where, {"id", "x", "y", "spans"});
                Pivot pivot;
                pivot.id = maybe_text(value, "id", where);
                pivot.centre = {maybe_number(value, "x", where).value_or(0.0),
                                maybe_number(value, "y", where).value_or(0.0)};
                if (const json* spans = list(value, "spans", where)) {
                    for (std::size_t s = 0; s < spans->size(); ++s) {
                        pivot.spans.push_back(number((*spans)[s], indexed(join(where, "spans"), s)));
                    }
                }
                plan_.pivots.push_back(std::move(pivot));
            }
        }
    }

    const json& root_;
    std::string file_;
    Plan plan_;
    std::vector<Issue> issues_;
};

std::string text_in(const std::filesystem::path& path) {
    return read_text_file(path, 128U << 20U,
                          phrase("exchange", "a plan file of at most 128 MiB; the most heads a plan may have, 100000, take a fifth of that"));
}

}  // namespace

Plan parse_plan(std::string_view text, const std::string& file) {
    const char* const end = text.data() + text.size();
    screen_json(text, file, {{"heads", most_heads}, {"", 4'000'000}});
    // The screen has read all of it once: it is JSON.
    return PlanReader(json::parse(text.data(), end), file).run();
}

Plan read_plan(const std::filesystem::path& path) {
    return parse_plan(text_in(path), path.filename().string());
}

Plan read_plan_outline(const std::filesystem::path& path) {
    const std::string text = text_in(path);
    const std::string name = path.filename().string();
    screen_json(text, name, {{"heads", most_heads}, {"", 4'000'000}});
    return PlanReader(json::parse(text), name).run_outline();
}

}  // namespace evenfall::exchange

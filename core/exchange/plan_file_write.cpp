// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_file.h"
#include "core/sentences.h"

#include <nlohmann/json.hpp>

namespace evenfall::exchange {
namespace {

using nlohmann::json;
using namespace plan;

json point_json(const Point& p) { return json::array({p.x, p.y}); }

json polygon_json(const Polygon& polygon) {
    json rings = json::array();
    for (const Ring& ring : polygon) {
        json points = json::array();
        for (const Point& p : ring) points.push_back(point_json(p));
        rings.push_back(std::move(points));
    }
    return rings;
}

json path_json(const std::vector<Point>& path) {
    json points = json::array();
    for (const Point& p : path) points.push_back(point_json(p));
    return points;
}

json head_json(const Head& head) {
    json out = {{"id", head.id}, {"x", head.x}, {"y", head.y}, {"arc", head.arc},
                {"facing", head.facing}, {"profile", head.profile}};
    if (head.radius) out["radius"] = *head.radius;
    if (head.flow) out["flow"] = *head.flow;
    if (!head.nozzle.empty()) out["nozzle"] = head.nozzle;
    if (head.pressure) out["pressure"] = *head.pressure;
    if (!head.station.empty()) out["station"] = head.station;
    return out;
}

json nozzle_json(const Nozzle& nozzle) {
    json rows = json::array();
    for (const NozzleRow& r : nozzle.rows) rows.push_back(json::array({r.pressure, r.radius, r.flow}));
    if (!nozzle.lowest && !nozzle.highest) return rows;
    json out = {{"rows", rows}};
    if (nozzle.lowest) out["lowest"] = *nozzle.lowest;
    if (nozzle.highest) out["highest"] = *nozzle.highest;
    return out;
}

void add_drawn(json& root, const Plan& plan) {
    for (const Pipe& pipe : plan.pipes) {
        root["pipes"].push_back({{"id", pipe.id}, {"path", path_json(pipe.path)}, {"size", pipe.size}});
    }
    for (const Lane& lane : plan.lanes) root["lanes"].push_back({{"id", lane.id}, {"path", path_json(lane.path)}});
    for (const Pivot& pivot : plan.pivots) {
        root["pivots"].push_back({{"id", pivot.id}, {"x", pivot.centre.x}, {"y", pivot.centre.y},
                                  {"spans", pivot.spans}});
    }
}

}  // namespace

std::string plan_text(const Plan& plan) {
    json root = {{"evenfall_plan", 1},
                 {"units",
                  {{"length", plan.units.length.name}, {"flow", plan.units.flow.name},
                   {"pressure", plan.units.pressure.name}}}};
    if (!plan.name.empty()) root["name"] = plan.name;
    if (!plan.turf.empty()) root["outline"] = polygon_json(plan.turf.front());
    for (std::size_t i = 1; i < plan.turf.size(); ++i) root["more_outlines"].push_back(polygon_json(plan.turf[i]));
    root["no_water"] = json::array();
    for (const Polygon& p : plan.no_water) root["no_water"].push_back(polygon_json(p));
    for (const Polygon& p : plan.obstacles) root["obstacles"].push_back(polygon_json(p));
    root["heads"] = json::array();
    for (const Head& head : plan.heads) root["heads"].push_back(head_json(head));
    for (const Nozzle& nozzle : plan.nozzles) root["nozzles"][nozzle.name] = nozzle_json(nozzle);
    for (const MeasuredLeg& leg : plan.profiles) {
        json readings = json::array();
        for (const auto& r : leg.readings) readings.push_back(json::array({r.distance, r.rate}));
        root["profiles"][leg.name] = std::move(readings);
    }
    add_drawn(root, plan);
    if (!plan.assumed.empty()) root["assumed"] = english_of(plan.assumed);
    return root.dump(1) + "\n";
}

}  // namespace evenfall::exchange

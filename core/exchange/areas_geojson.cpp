// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/areas_geojson.h"

#include "core/input_error.h"
#include "core/site/shapes.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <stdexcept>

namespace evenfall::exchange {
namespace {

using nlohmann::json;
using site::Point;
using site::Polygon;
using site::Ring;

/// The book measures an outline from these very coordinates; a size in a table may be typed with few
/// digits. Taken for degrees, a drawing in feet or metres is larger by a factor of a thousand millions.
constexpr double same_size = 0.02;

/// Twice the area enclosed, above zero when the ring runs counter-clockwise: the shoelace formula.
double turn_of(const Ring& ring) {
    double sum = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point& a = ring[i];
        const Point& b = ring[(i + 1) % ring.size()];
        // From the first corner: far from the origin the products would lose digits.
        sum += (a[0] - ring[0][0]) * (b[1] - ring[0][1]) - (b[0] - ring[0][0]) * (a[1] - ring[0][1]);
    }
    return sum;
}

/// Closed, and the way round that RFC 7946 section 3.1.6 asks for.
Ring turned(Ring ring, bool outer) {
    if (ring.front() != ring.back()) ring.push_back(ring.front());
    if ((turn_of(ring) > 0.0) != outer) std::reverse(ring.begin(), ring.end());
    return ring;
}

std::vector<Polygon> polygons_of(const std::string& outline) {
    std::vector<Polygon> out;
    const json root = json::parse(outline);
    for (const json& polygon : root.at("coordinates")) {
        Polygon& rings = out.emplace_back();
        for (const json& ring : polygon) {
            Ring& points = rings.emplace_back();
            for (const json& p : ring) points.push_back({p.at(0).get<double>(), p.at(1).get<double>()});
        }
    }
    return out;
}

std::string text_of(const Polygon& polygon) {
    std::string out = "[";
    for (std::size_t r = 0; r < polygon.size(); ++r) {
        out += r == 0 ? "[" : ",[";
        const Ring ring = turned(polygon[r], r == 0);
        for (std::size_t i = 0; i < ring.size(); ++i) {
            out += i == 0 ? "[" : ",[";
            out += units::format_shortest(ring[i][0]) + "," + units::format_shortest(ring[i][1]) + "]";
        }
        out += "]";
    }
    return out + "]";
}

std::string geometry_of(const std::vector<Polygon>& polygons) {
    if (polygons.size() == 1) return R"({"type":"Polygon","coordinates":)" + text_of(polygons.front()) + "}";
    std::string out = R"({"type":"MultiPolygon","coordinates":[)";
    for (std::size_t p = 0; p < polygons.size(); ++p) out += (p == 0 ? "" : ",") + text_of(polygons[p]);
    return out + "]}";
}

bool lies_on_earth(const std::vector<Polygon>& polygons, units::Area measured) {
    try {
        const double ratio = site::area_on_ellipsoid(polygons) / measured;
        return std::abs(ratio - 1.0) < same_size;
    } catch (const InputError&) {
        return false;  // no longitude and latitude
    }
}

std::string quoted(const std::string& text) { return json(text).dump(-1, ' ', false, json::error_handler_t::replace); }

std::string text_of(const PropertyValue& value) {
    if (const auto* number = std::get_if<double>(&value)) {
        return std::isfinite(*number) ? units::format_shortest(*number) : std::string("null");
    }
    if (const auto* text = std::get_if<std::string>(&value)) return quoted(*text);
    return "null";
}

}  // namespace

MapOutline map_outline(const std::string& outline, units::Area measured) {
    if (outline.empty()) return {"null", "the book has no outline of it"};
    std::vector<Polygon> polygons;
    try {
        polygons = polygons_of(outline);
    } catch (const json::exception&) {
        return {"null", "its outline cannot be read"};
    }
    if (polygons.empty()) return {"null", "its outline is empty"};
    if (!lies_on_earth(polygons, measured)) {
        return {"null", "its outline is on the plane of a drawing, not in longitude and latitude"};
    }
    return {geometry_of(polygons), ""};
}

FeatureFile::FeatureFile(const std::filesystem::path& path)
    : path_(path), out_(path, std::ios::binary | std::ios::trunc) {
    if (!out_) throw std::runtime_error("cannot write " + path.string());
    out_ << R"({"type":"FeatureCollection","features":[)";
}

void FeatureFile::feature(const std::string& id, const std::string& geometry, const std::vector<Property>& properties) {
    out_ << (features_++ == 0 ? "\n" : ",\n") << R"({"type":"Feature","id":)" << quoted(id) << R"(,"geometry":)"
         << geometry << R"(,"properties":{)";
    const char* comma = "";
    for (const auto& [name, value] : properties) {
        out_ << comma << quoted(name) << ':' << text_of(value);
        comma = ",";
    }
    out_ << "}}";
}

void FeatureFile::close() {
    out_ << "\n]}\n";
    out_.close();
    if (!out_) throw std::runtime_error("cannot write " + path_.string());
}

}  // namespace evenfall::exchange

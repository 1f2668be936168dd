// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

#include <cstddef>
#include <filesystem>
#include <fstream>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

/// Areas of turf with their figures as GeoJSON, for a map: RFC 7946, so longitude and latitude on
/// WGS 84, no other reference system, rings closed, outer rings counter-clockwise and holes clockwise.
/// Tests: tests/exchange/areas_geojson_test.cpp; read back by GDAL: tests/exchange/gis_test.cpp
namespace evenfall::exchange {

/// A text, a number or nothing.
using PropertyValue = std::variant<std::monostate, double, std::string>;
using Property = std::pair<std::string, PropertyValue>;

/// The geometry object of an outline as the book keeps it: a Polygon when it is one piece, else a
/// MultiPolygon.
struct MapOutline {
    std::string geometry;   ///< "null" where there is none to show
    std::string why_none;   ///< a sentence then
};

/// @param outline   a GeoJSON MultiPolygon, any way round; empty: none in the book
/// @param measured  its size as the book has it. Whether the outline lies on the Earth or on the
///                  plane of a drawing is told by it: the sizes of the two are nothing alike.
MapOutline map_outline(const std::string& outline, units::Area measured);

/// A feature collection, written feature by feature.
class FeatureFile {
  public:
    /// @throws std::runtime_error when the file cannot be made
    explicit FeatureFile(const std::filesystem::path& path);
    /// @param geometry  a geometry object or "null"
    void feature(const std::string& id, const std::string& geometry, const std::vector<Property>& properties);
    std::size_t features() const { return features_; }
    /// @throws std::runtime_error when the disk is full
    void close();

  private:
    std::filesystem::path path_;
    std::ofstream out_;
    std::size_t features_ = 0;
};

}  // namespace evenfall::exchange

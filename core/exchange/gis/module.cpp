// SPDX-License-Identifier: GPL-3.0-or-later
// Workbooks and maps through GDAL/OGR. A file from a stranger must not reach the network, other
// files or the memory's end: names that mean something special to GDAL are refused, each ending is
// read by one driver only, unpacked sizes are added up first, and every error that GDAL notes
// while reading makes the whole file incomplete.
#include "core/exchange/gis_interface.h"

#include <cpl_error.h>
#include <cpl_http.h>
#include <cpl_vsi.h>
#include <ogr_srs_api.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <mutex>
#include <optional>

namespace evenfall::exchange::gis {
namespace {

constexpr std::uint64_t largest_unpacked = std::uint64_t{1} << 30U;  // 1 GiB
/// A KML document is held in memory as a whole, at some six times its size.
constexpr std::uint64_t largest_document = std::uint64_t{128} << 20U;
constexpr std::size_t most_packed_files = 10'000;
constexpr std::size_t most_features = 100'000;

/// Set when a file asked for something from the network: what it says cannot be relied on then.
thread_local bool asked_network = false;

CPLHTTPResult* refuse_network(const char*, CSLConstList, GDALProgressFunc, void*,
                              CPLHTTPFetchWriteFunc, void*, void*) {
    asked_network = true;
    auto* result = static_cast<CPLHTTPResult*>(CPLCalloc(1, sizeof(CPLHTTPResult)));
    result->nStatus = 1;
    result->pszErrBuf = CPLStrdup("the network is not used");
    return result;
}

void prepare() {
    static std::once_flag once;
    std::call_once(once, [] {
        GDALAllRegister();
        OSRSetPROJEnableNetwork(false);
        CPLHTTPPushFetchCallback(refuse_network, nullptr);
        CPLSetConfigOption("OGR_XLSX_HEADERS", "FORCE");
        CPLSetConfigOption("OGR_ODS_HEADERS", "FORCE");
        CPLPushErrorHandler(CPLQuietErrorHandler);
    });
}

struct Form {
    const char* ending;
    const char* driver;
    bool packed;
    std::uint64_t largest;  ///< bytes, unpacked; 0: the reader holds no more than a part in memory
};
constexpr std::array forms{Form{".xlsx", "XLSX", true, largest_unpacked},
                           Form{".ods", "ODS", true, largest_unpacked},
                           Form{".geojson", "GeoJSON", false, 0},
                           Form{".json", "GeoJSON", false, 0},
                           Form{".shp", "ESRI Shapefile", false, 0},
                           Form{".zip", "ESRI Shapefile", true, largest_unpacked},
                           Form{".kml", "LIBKML", false, largest_document},
                           Form{".kmz", "LIBKML", true, largest_document},
                           Form{".gpkg", "GPKG", false, 0},
                           Form{".dxf", "DXF", false, 0}};

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

const Form& form_of(const std::filesystem::path& path) {
    const std::string ending = lower(path.extension().string());
    for (const Form& f : forms) {
        if (ending == f.ending) return f;
    }
    throw Failure(phrase("exchange", "a file that ends in .xlsx, .ods, .geojson, .shp, .zip, .kml, .kmz, .gpkg or .dxf"));
}

/// "1 GiB", "128 MiB"
std::string size_text(std::uint64_t bytes) {
    const std::uint64_t mib = bytes >> 20U;
    return mib % 1024 == 0 && mib > 0 ? std::to_string(mib / 1024) + " GiB" : std::to_string(mib) + " MiB";
}

void check_size(std::uint64_t bytes, std::uint64_t largest) {
    if (bytes <= largest) return;
    throw Failure({phrase("exchange", "a file of at most %1 when unpacked; this one would take %2 MiB"), size_text(largest),
                   bytes >> 20U});
}

/// A packed file as a folder. The braces keep the name of the outer file apart from what is inside,
/// whatever it looks like; a name with braces of its own is told apart by its ending.
std::string inside(const std::string& path) {
    return path.find_first_of("{}") == std::string::npos ? "/vsizip/{" + path + "}" : "/vsizip/" + path;
}

/// What is packed inside, once its sizes are added up, without unpacking it.
std::vector<std::string> packed_names(const std::string& path, std::uint64_t largest) {
    const std::string archive = inside(path);
    char** listed = VSIReadDirRecursive(archive.c_str());
    std::vector<std::string> names;
    std::uint64_t sum = 0;
    for (char** n = listed; n != nullptr && *n != nullptr; ++n) {
        VSIStatBufL stat{};
        if (VSIStatExL((archive + "/" + *n).c_str(), &stat, VSI_STAT_SIZE_FLAG) == 0) {
            sum += static_cast<std::uint64_t>(stat.st_size);
        }
        names.emplace_back(*n);
    }
    CSLDestroy(listed);
    if (names.empty()) throw Failure(phrase("exchange", "a packed file that can be opened"));
    if (names.size() > most_packed_files) throw Failure(phrase("exchange", "a packed file with at most 10,000 files in it"));
    check_size(sum, largest);
    return names;
}

/// The folder in a zip that holds its Shapefiles, as GDAL is to open it.
std::string shapes_inside(const std::string& path, const std::vector<std::string>& names) {
    std::optional<std::string> folder;
    for (const std::string& name : names) {
        const std::filesystem::path entry(name);
        // Some systems pack a hidden companion beside each file.
        if (!lower(name).ends_with(".shp") || entry.filename().string().starts_with(".")) continue;
        const std::filesystem::path parent = entry.parent_path();
        const bool climbs = std::find(parent.begin(), parent.end(), "..") != parent.end() || parent.is_absolute();
        if (climbs || (folder && *folder != parent.string())) throw Failure(phrase("exchange", "a zip with its Shapefiles in one folder"));
        folder = parent.string();
    }
    if (!folder) throw Failure(phrase("exchange", "a zip with a Shapefile (.shp with .shx, .dbf and .prj) in it"));
    return folder->empty() ? inside(path) : inside(path) + "/" + *folder;
}

GDALDatasetUniquePtr open(const std::string& name) {
    prepare();
    std::error_code error;
    const std::filesystem::path path(name);
    if (name.starts_with("/vsi") || name.find("://") != std::string::npos ||
        !std::filesystem::is_regular_file(path, error)) {
        throw Failure(phrase("exchange", "an ordinary file of this machine"));
    }
    const Form& form = form_of(path);
    std::string full = std::filesystem::absolute(path).string();
    if (full.starts_with("/vsi")) throw Failure(phrase("exchange", "an ordinary file of this machine"));
    if (form.packed) {
        const auto names = packed_names(full, form.largest);
        if (std::string_view(form.ending) == ".zip") full = shapes_inside(full, names);
    } else if (form.largest > 0) {
        check_size(std::filesystem::file_size(path), form.largest);
    }
    const std::array<const char*, 2> allowed{form.driver, nullptr};
    CPLErrorReset();
    asked_network = false;
    GDALDatasetUniquePtr data(GDALDataset::Open(full.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, allowed.data(),
                                                nullptr, nullptr));
    if (!data) throw Failure({phrase("exchange", "a file in the form that its ending says: %1"), CPLGetLastErrorMsg()});
    return data;
}

void require_complete() {
    if (asked_network) throw Failure(phrase("exchange", "a file that needs nothing from the network"));
    if (CPLGetLastErrorType() < CE_Failure) return;
    throw Failure({phrase("exchange", "a file that can be read to its end; reading broke off with: %1"),
                   CPLGetLastErrorMsg()});
}

std::string text_of(double value) {
    std::array<char, 32> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return error == std::errc() && std::isfinite(value) ? std::string(buffer.data(), end) : std::string();
}

std::string date_text(const OGRFeature& f, int i, OGRFieldType type) {
    int y = 0;
    int mo = 0;
    int d = 0;
    int h = 0;
    int mi = 0;
    float s = 0;
    int zone = 0;
    if (f.GetFieldAsDateTime(i, &y, &mo, &d, &h, &mi, &s, &zone) == 0) return {};
    std::array<char, 40> out{};
    const int whole = static_cast<int>(std::lround(s));
    if (type == OFTDate) {
        std::snprintf(out.data(), out.size(), "%04d-%02d-%02d", y, mo, d);
    } else if (type == OFTTime) {
        std::snprintf(out.data(), out.size(), "%02d:%02d:%02d", h, mi, whole);
    } else {
        std::snprintf(out.data(), out.size(), "%04d-%02d-%02dT%02d:%02d:%02d%s", y, mo, d, h, mi,
                      std::min(whole, 59), zone == 100 ? "Z" : "");
    }
    return out.data();
}

std::string cell_text(const OGRFeature& f, int i) {
    if (!f.IsFieldSetAndNotNull(i)) return {};
    const OGRFieldType type = f.GetFieldDefnRef(i)->GetType();
    switch (type) {
        case OFTInteger:
        case OFTInteger64: return std::to_string(f.GetFieldAsInteger64(i));
        case OFTReal: return text_of(f.GetFieldAsDouble(i));
        case OFTDate:
        case OFTTime:
        case OFTDateTime: return date_text(f, i, type);
        default: return f.GetFieldAsString(i);
    }
}

class OgrSheet final : public Sheet {
  public:
    OgrSheet(GDALDatasetUniquePtr data, const std::string& name) : data_(std::move(data)) {
        layer_ = name.empty() ? data_->GetLayer(0) : data_->GetLayerByName(name.c_str());
        if (layer_ == nullptr && name.empty()) throw Failure(phrase("exchange", "a workbook with a sheet in it"));
        if (layer_ == nullptr) throw Failure({phrase("exchange", "a workbook with a sheet \"%1\""), name});
        const OGRFeatureDefn* definition = layer_->GetLayerDefn();
        for (int i = 0; i < definition->GetFieldCount(); ++i) {
            header_.emplace_back(definition->GetFieldDefn(i)->GetNameRef());
        }
        total_ = std::max<GIntBig>(1, layer_->GetFeatureCount());
        require_complete();
        layer_->ResetReading();
    }
    const std::vector<std::string>& header() const override { return header_; }
    bool next(std::vector<std::string>& cells) override {
        const OGRFeatureUniquePtr feature(layer_->GetNextFeature());
        require_complete();
        if (!feature) return false;
        ++row_;
        cells.resize(header_.size());
        for (std::size_t i = 0; i < cells.size(); ++i) cells[i] = cell_text(*feature, static_cast<int>(i));
        return true;
    }
    std::size_t row() const override { return row_; }
    double done() const override { return static_cast<double>(row_ - 1) / static_cast<double>(total_); }

  private:
    GDALDatasetUniquePtr data_;
    OGRLayer* layer_ = nullptr;
    std::vector<std::string> header_;
    std::size_t row_ = 1;  // the header
    GIntBig total_ = 1;
};

Ring ring_of(const OGRLinearRing& ring) {
    Ring out;
    out.reserve(static_cast<std::size_t>(ring.getNumPoints()));
    for (int i = 0; i < ring.getNumPoints(); ++i) out.push_back({ring.getX(i), ring.getY(i)});
    return out;
}

void add_polygon(const OGRPolygon& polygon, Feature& feature) {
    if (polygon.getExteriorRing() == nullptr) return;
    Polygon out{ring_of(*polygon.getExteriorRing())};
    for (int i = 0; i < polygon.getNumInteriorRings(); ++i) out.push_back(ring_of(*polygon.getInteriorRing(i)));
    feature.polygons.push_back(std::move(out));
}

void add_geometry(const OGRGeometry& geometry, Feature& feature) {
    const OGRwkbGeometryType type = wkbFlatten(geometry.getGeometryType());
    if (type == wkbPolygon) {
        add_polygon(*geometry.toPolygon(), feature);
    } else if (type == wkbMultiPolygon || type == wkbGeometryCollection) {
        const auto* many = geometry.toGeometryCollection();
        for (int i = 0; i < many->getNumGeometries(); ++i) add_geometry(*many->getGeometryRef(i), feature);
    } else if (type == wkbLineString && geometry.toLineString()->get_IsClosed() != 0) {
        // Drawings often have closed lines where an outline is meant.
        Ring ring;
        const auto* line = geometry.toLineString();
        for (int i = 0; i < line->getNumPoints(); ++i) ring.push_back({line->getX(i), line->getY(i)});
        feature.polygons.push_back({std::move(ring)});
    }
}

/// To longitude and latitude; null where none is needed or known.
std::unique_ptr<OGRCoordinateTransformation> to_degrees(const OGRSpatialReference* own, const std::string& crs,
                                                        bool& geographic) {
    OGRSpatialReference from;
    if (own != nullptr) {
        from = *own;
    } else if (!crs.empty()) {
        if (from.SetFromUserInput(crs.c_str(), OGRSpatialReference::SET_FROM_USER_INPUT_LIMITATIONS_get()) != OGRERR_NONE) {
            throw Failure({phrase("exchange", "a coordinate reference system such as EPSG:32612, not \"%1\""), crs});
        }
    } else {
        geographic = false;
        return nullptr;
    }
    OGRSpatialReference wgs84;
    wgs84.importFromEPSG(4326);
    from.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    wgs84.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    if (from.IsSame(&wgs84) != 0) return nullptr;
    return std::unique_ptr<OGRCoordinateTransformation>(OGRCreateCoordinateTransformation(&from, &wgs84));
}

Feature read_feature(const OGRFeature& f, OGRCoordinateTransformation* transform) {
    Feature out;
    for (int i = 0; i < f.GetFieldCount(); ++i) {
        out.attributes.emplace_back(f.GetFieldDefnRef(i)->GetNameRef(), cell_text(f, i));
    }
    const OGRGeometry* own = f.GetGeometryRef();
    if (own == nullptr || own->IsEmpty() != 0) {
        out.problem = phrase("exchange", "it has no outline");
        return out;
    }
    const std::unique_ptr<OGRGeometry> geometry(own->getLinearGeometry());
    geometry->flattenTo2D();
    if (wkbFlatten(geometry->getGeometryType()) != wkbLineString && geometry->IsValid() == 0) {
        out.problem = phrase("exchange", "its outline crosses itself or a hole lies outside it");
        CPLErrorReset();  // the check notes the place as a warning or error of its own
        return out;
    }
    if (transform != nullptr && geometry->transform(transform) != OGRERR_NONE) {
        out.problem = phrase("exchange", "its coordinates cannot be brought to longitude and latitude");
        CPLErrorReset();
        return out;
    }
    add_geometry(*geometry, out);
    if (out.polygons.empty()) out.problem = phrase("exchange", "it is a point or an open line, not an outline");
    return out;
}

class OgrModule final : public Module {
  public:
    int version() const override { return interface_version; }
    std::unique_ptr<Sheet> open_sheet(const std::string& path, const std::string& sheet) const override {
        return std::make_unique<OgrSheet>(open(path), sheet);
    }
    Outlines read_outlines(const std::string& path, const std::string& crs) const override {
        const GDALDatasetUniquePtr data = open(path);
        Outlines out;
        for (int i = 0; i < data->GetLayerCount(); ++i) {
            OGRLayer* layer = data->GetLayer(i);
            const auto transform = to_degrees(layer->GetSpatialRef(), crs, out.geographic);
            while (const OGRFeatureUniquePtr feature{layer->GetNextFeature()}) {
                if (out.features.size() >= most_features) throw Failure(phrase("exchange", "at most 100,000 outlines in a file"));
                out.features.push_back(read_feature(*feature, transform.get()));
            }
            require_complete();
        }
        if (out.features.empty()) throw Failure(phrase("exchange", "a map with at least one outline"));
        return out;
    }
};

}  // namespace

extern "C" const Module* evenfall_gis_module() {
    static const OgrModule module;
    return &module;
}

}  // namespace evenfall::exchange::gis

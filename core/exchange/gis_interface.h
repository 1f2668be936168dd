// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence_error.h"

#include <array>
#include <cstddef>
#include <memory>
#include <string>
#include <utility>
#include <vector>

/// Between the programs and the module that reads workbooks and maps. The module links GDAL,
/// which costs each program start some 30 ms, so it is loaded only when such a file is given (see
/// gis_loader.h). Nothing here needs a library on either side; core/sentence.cpp is built into both.
namespace evenfall::exchange::gis {

inline constexpr int interface_version = 2;

/// A file that the module cannot or will not read; the message says what was expected.
class Failure : public SentenceError {
  public:
    using SentenceError::SentenceError;
};

/// A sheet of a workbook, row by row. Cells are text: numbers in their shortest form, dates in
/// ISO 8601, an empty cell as an empty text.
class Sheet {
  public:
    Sheet() = default;
    Sheet(const Sheet&) = delete;
    Sheet& operator=(const Sheet&) = delete;
    virtual ~Sheet() = default;
    virtual const std::vector<std::string>& header() const = 0;
    /// @throws Failure when the sheet breaks off: what was read so far is then incomplete
    virtual bool next(std::vector<std::string>& cells) = 0;
    virtual std::size_t row() const = 0;
    virtual double done() const = 0;
};

using Point = std::array<double, 2>;
using Ring = std::vector<Point>;
using Polygon = std::vector<Ring>;  ///< the outer ring, then holes

struct Feature {
    std::vector<std::pair<std::string, std::string>> attributes;
    std::vector<Polygon> polygons;
    Sentence problem;  ///< why it is no valid outline; empty when it is one
};

struct Outlines {
    std::vector<Feature> features;
    bool geographic = true;  ///< longitude and latitude, WGS 84; else the drawing's own plane
};

class Module {
  public:
    Module() = default;
    Module(const Module&) = delete;
    Module& operator=(const Module&) = delete;
    virtual ~Module() = default;
    virtual int version() const = 0;
    /// @param sheet  its name; empty: the first one
    virtual std::unique_ptr<Sheet> open_sheet(const std::string& path, const std::string& sheet) const = 0;
    /// @param crs  what the coordinates are where the file does not say, such as "EPSG:32612";
    ///             empty: a file without a reference system is taken as a plane drawing
    virtual Outlines read_outlines(const std::string& path, const std::string& crs) const = 0;
};

/// The one symbol of the module.
extern "C" const Module* evenfall_gis_module();

}  // namespace evenfall::exchange::gis

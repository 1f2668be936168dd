// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The tables that can be read and their columns; an example of each is in schemas/tables.
/// A quantity's unit stands in the column's name: size_ac and size_m2 are two columns of the
/// group "size", of which a table has one. Tests: tests/exchange/columns_test.cpp
namespace evenfall::exchange {

enum class Kind {
    sites, meters, exchanges, areas, weather_stations, readings, weather, hourly_weather,
    catches, pressures, findings, bills, plantings, prices, energy, pumps, stations, watering_rules, area_settings
};

/// "readings"; what `--as` takes and what an import record says.
std::string_view name_of(Kind kind);
/// @throws InputError naming the known kinds
Kind kind_named(std::string_view name);

struct ColumnSpec {
    std::string_view name;   ///< as in the header, lower case
    std::string_view group;  ///< what it tells
    std::string_view unit;   ///< empty where there is none
};

struct KindSpec {
    Kind kind;
    std::string_view name;
    std::vector<ColumnSpec> columns;
    /// Groups that a table must have; any one of the sets will do.
    std::vector<std::vector<std::string_view>> needed;
};

std::span<const KindSpec> all_kinds();
const KindSpec& spec_of(Kind kind);

/// Where each group of a kind stands in a header.
class ColumnIndex {
  public:
    struct Found {
        std::size_t index;
        std::string_view unit;
        std::string_view name;
    };
    /// @param file  for messages
    /// @throws InputError with one issue for each unknown column (naming the nearest known one),
    ///   each missing column and each group that stands twice
    ColumnIndex(const KindSpec& spec, std::span<const std::string> header, const std::string& file,
                std::size_t header_row);

    const Found* find(std::string_view group) const;
    bool has(std::string_view group) const { return find(group) != nullptr; }
    const KindSpec& spec() const { return *spec_; }

  private:
    const KindSpec* spec_;
    std::vector<std::pair<std::string_view, Found>> found_;
};

/// The kind whose columns this header has. Where none fits wholly, the one that shares most
/// names with it is meant, so that the message can say what is wrong.
/// @throws InputError when two kinds fit or no column is known at all
Kind kind_of_header(std::span<const std::string> header, const std::string& file);

/// The name among `known` with the fewest typing errors to `typed` (letters_apart); empty when none
/// is near: at most a third of the letters, and at least two.
std::string_view nearest_name(std::string_view typed, std::span<const std::string_view> known);

/// Lower case (ASCII) without blanks at the ends: headers are compared so.
std::string column_key(std::string_view header);

}  // namespace evenfall::exchange

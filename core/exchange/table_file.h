// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/columns.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

/// CSV tables in the shapes that import reads, written row by row.
/// Tests: tests/exchange/export_test.cpp
namespace evenfall::exchange {

/// What was written.
struct ExportedFile {
    std::string name;      ///< below the folder, such as "readings.csv"
    std::string kind;      ///< as `import --as` calls it
    std::size_t rows = 0;  ///< below the header
};

/// One table. Memory stays flat: what was given is on its way to the disk.
class TableFile {
  public:
    /// Writes the header. @throws std::runtime_error when the file cannot be made
    TableFile(const std::filesystem::path& path, const std::vector<std::string>& header);
    /// As many cells as the header has.
    void row(std::initializer_list<std::string_view> cells);
    void row(const std::vector<std::string>& cells);
    std::size_t rows() const { return rows_; }
    /// @throws std::runtime_error when the disk is full
    void close();

  private:
    template <class Cells>
    void write(const Cells& cells);
    std::filesystem::path path_;
    std::ofstream out_;
    std::string line_;
    std::size_t rows_ = 0;
};

/// One field of a record: which column it belongs to and its text; empty where not recorded.
struct Field {
    std::string_view group;  ///< as in columns.h
    /// Empty where there is none, or where the value is not recorded.
    std::string_view unit;
    std::string text;
};
using Record = std::vector<Field>;
using TakeRecord = std::function<void(const Record&)>;

/// Writes the records of one kind. The unit of a value is part of its column's name, so records
/// typed in other units go to tables of their own: areas.csv, areas_2.csv ... Records that differ
/// only in what is not recorded share a table; so do rows whose fields are of the same groups only.
/// @param each  calls what it is given with every record; it is run twice and must give the same
/// @param stem  of the file names
/// @throws InputError  a value in a unit for which the table has no column
/// @throws std::runtime_error when a file cannot be written
void write_tables(const std::filesystem::path& folder, Kind kind, const std::string& stem,
                  const std::function<void(const TakeRecord&)>& each, std::vector<ExportedFile>& files);

}  // namespace evenfall::exchange

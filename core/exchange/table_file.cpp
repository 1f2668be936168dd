// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_file.h"

#include "core/exchange/csv_text.h"
#include "core/input_error.h"

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace evenfall::exchange {
namespace {

/// Which columns a table has: its groups and, once a record had one, the unit of each.
struct Shape {
    std::vector<std::string_view> groups;
    std::vector<std::string> units;  ///< its own: those of a record are gone with it

    bool has_groups_of(const Record& record) const {
        return std::equal(groups.begin(), groups.end(), record.begin(), record.end(),
                          [](std::string_view group, const Field& f) { return group == f.group; });
    }
    /// Whether every unit of the record is the table's or may still become it.
    bool fits(const Record& record) const {
        if (!has_groups_of(record)) return false;
        for (std::size_t i = 0; i < units.size(); ++i) {
            if (!record[i].unit.empty() && !units[i].empty() && units[i] != record[i].unit) return false;
        }
        return true;
    }
    void take(const Record& record) {
        for (std::size_t i = 0; i < units.size(); ++i) {
            if (units[i].empty()) units[i] = record[i].unit;
        }
    }
};

Shape shape_of(const Record& record) {
    Shape shape;
    for (const Field& f : record) {
        shape.groups.push_back(f.group);
        shape.units.emplace_back(f.unit);
    }
    return shape;
}

bool is_needed(const KindSpec& spec, std::string_view group) {
    return std::any_of(spec.needed.begin(), spec.needed.end(), [&](const auto& set) {
        return std::find(set.begin(), set.end(), group) != set.end();
    });
}

/// The column of a group in a unit; empty when the table can do without it.
std::string column_of(const KindSpec& spec, std::string_view group, std::string_view unit) {
    std::string first;
    std::string known;
    for (const ColumnSpec& c : spec.columns) {
        if (c.group != group) continue;
        if (c.unit == unit) return std::string(c.name);
        if (first.empty()) first = c.name;
        known += (known.empty() ? "" : ", ") + std::string(c.name);
    }
    if (unit.empty()) return is_needed(spec, group) ? first : std::string();
    throw InputError({phrase("exchange", "a value of %1 in %2"), spec.name, unit},
                     {phrase("exchange", "a unit that the table has a column for: %1"), known});
}

class Table {
  public:
    Table(std::filesystem::path path, const KindSpec& spec, const Shape& shape) {
        std::vector<std::string> header;
        for (std::size_t i = 0; i < shape.groups.size(); ++i) {
            std::string name = column_of(spec, shape.groups[i], shape.units[i]);
            if (name.empty()) continue;
            header.push_back(std::move(name));
            kept_.push_back(i);
        }
        file_ = std::make_unique<TableFile>(path, header);
        cells_.resize(kept_.size());
    }
    void row(const Record& record) {
        for (std::size_t i = 0; i < kept_.size(); ++i) cells_[i] = record[kept_[i]].text;
        file_->row(cells_);
    }
    TableFile& file() { return *file_; }

  private:
    std::unique_ptr<TableFile> file_;
    std::vector<std::size_t> kept_;
    std::vector<std::string> cells_;
};

}  // namespace

TableFile::TableFile(const std::filesystem::path& path, const std::vector<std::string>& header)
    : path_(path), out_(path, std::ios::binary | std::ios::trunc) {
    if (!out_) throw std::runtime_error("cannot write " + path.string());
    row(header);
    rows_ = 0;
}

template <class Cells>
void TableFile::write(const Cells& cells) {
    line_.clear();
    for (const std::string_view cell : cells) {
        line_ += csv_cell(cell);
        line_ += ',';
    }
    line_.back() = '\n';
    out_.write(line_.data(), static_cast<std::streamsize>(line_.size()));
    ++rows_;
}

void TableFile::row(std::initializer_list<std::string_view> cells) { write(cells); }
void TableFile::row(const std::vector<std::string>& cells) { write(cells); }

void TableFile::close() {
    out_.close();
    if (!out_) throw std::runtime_error("cannot write " + path_.string());
}

void write_tables(const std::filesystem::path& folder, Kind kind, const std::string& stem,
                  const std::function<void(const TakeRecord&)>& each, std::vector<ExportedFile>& files) {
    std::vector<Shape> shapes;
    const auto fitting = [&](const Record& record) {
        return std::find_if(shapes.begin(), shapes.end(), [&](const Shape& s) { return s.fits(record); });
    };
    each([&](const Record& record) {
        const auto found = fitting(record);
        if (found == shapes.end()) shapes.push_back(shape_of(record));
        else found->take(record);
    });
    const KindSpec& spec = spec_of(kind);
    std::vector<std::unique_ptr<Table>> tables(shapes.size());
    std::vector<std::string> names(shapes.size());
    each([&](const Record& record) {
        const auto at = static_cast<std::size_t>(fitting(record) - shapes.begin());
        if (!tables[at]) {
            names[at] = stem + (at == 0 ? "" : "_" + std::to_string(at + 1)) + ".csv";
            tables[at] = std::make_unique<Table>(folder / names[at], spec, shapes[at]);
        }
        tables[at]->row(record);
    });
    for (std::size_t i = 0; i < tables.size(); ++i) {
        if (!tables[i]) continue;
        tables[i]->file().close();
        files.push_back({names[i], std::string(spec.name), tables[i]->file().rows()});
    }
}

}  // namespace evenfall::exchange

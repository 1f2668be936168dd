// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reference/table.h"

#include "core/units/number.h"
#include "schemas/schemas.h"

#include <algorithm>
#include <array>
#include <map>
#include <memory>
#include <mutex>
#include <stdexcept>
#include <utility>

namespace evenfall::reference {
namespace {

constexpr std::array mark_names{std::pair{Mark::seen, phrase("reference", "seen")},
                                std::pair{Mark::part, phrase("reference", "part")},
                                std::pair{Mark::memory, phrase("reference", "memory")},
                                std::pair{Mark::derived, phrase("reference", "derived")},
                                std::pair{Mark::constructed, phrase("reference", "constructed")},
                                std::pair{Mark::practice, phrase("reference", "practice")}};

/// Cells of one line; a cell may be quoted, with "" for a quote. Our own files hold no line breaks
/// inside quotes; files from users are read by core/exchange.
std::vector<std::string> cells_of(std::string_view line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (quoted && c == '"' && i + 1 < line.size() && line[i + 1] == '"') {
            cells.back() += '"';
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            cells.emplace_back();
        } else {
            cells.back() += c;
        }
    }
    return cells;
}

}  // namespace

std::string_view text_of(Mark mark) { return words_of(mark).english(); }

Phrase words_of(Mark mark) {
    for (const auto& [m, name] : mark_names) {
        if (m == mark) return name;
    }
    return {};
}

const std::string& Row::cell(std::string_view column) const {
    const auto it = std::find(header_->begin(), header_->end(), column);
    if (it == header_->end()) throw std::logic_error("no reference column " + std::string(column));
    return cells_[static_cast<std::size_t>(it - header_->begin())];
}

std::string_view Row::text(std::string_view column) const { return cell(column); }

std::optional<double> Row::maybe_number(std::string_view column) const {
    const std::string_view cell = text(column);
    if (cell.empty()) return std::nullopt;
    const auto value = units::parse_number(cell);
    if (!value) throw std::logic_error("reference cell is no number: " + std::string(cell));
    return value;
}

double Row::number(std::string_view column) const {
    const auto value = maybe_number(column);
    if (!value) throw std::logic_error("reference cell is empty in " + std::string(column));
    return *value;
}

Mark Row::mark() const {
    const std::string_view name = text("mark");
    for (const auto& [m, known] : mark_names) {
        if (known.english() == name) return m;
    }
    throw std::logic_error("unknown mark " + std::string(name));
}

Table::Table(std::string_view text) {
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        std::string_view line = text.substr(0, end);
        text = end == std::string_view::npos ? "" : text.substr(end + 1);
        if (line.empty() || line.front() == '#') continue;
        auto cells = cells_of(line);
        if (header_.empty()) {
            header_ = std::move(cells);
        } else if (cells.size() != header_.size()) {
            throw std::logic_error("reference row has the wrong number of cells: " +
                                   std::string(line));
        } else {
            rows_.push_back(Row(&header_, std::move(cells)));
        }
    }
    for (const Row& row : rows_) {
        static_cast<void>(row.mark());
        if (row.source().empty()) throw std::logic_error("reference row without a source");
    }
}

const Row* Table::find(std::string_view column, std::string_view key) const {
    for (const Row& row : rows_) {
        if (row.text(column) == key) return &row;
    }
    return nullptr;
}

const Row* Table::find_typed(std::string_view text) const {
    std::string key;
    for (const char c : text) {
        if (c == ' ' || c == '-') key += '_';
        else if (c >= 'A' && c <= 'Z') key += static_cast<char>(c - 'A' + 'a');
        else key += c;
    }
    return find("key", key);
}

const Table& Table::named(std::string_view name) {
    static std::mutex mutex;
    static std::map<std::string, std::unique_ptr<const Table>, std::less<>> tables;
    const std::lock_guard lock(mutex);
    auto it = tables.find(name);
    if (it == tables.end()) {
        const std::string path = "reference/" + std::string(name);
        it = tables.emplace(name, std::make_unique<const Table>(schemas::text(path))).first;
    }
    return *it->second;
}

}  // namespace evenfall::reference

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Published coefficients, limits and bands, read from the files under schemas/reference that are
/// compiled in. Each file is CSV with "#" comment lines first, then a header; each row has the
/// columns `source` and `mark`, so that a figure can always say where it comes from.
/// Tests: tests/reference/table_test.cpp
namespace evenfall::reference {

/// How well a value is known: the mark of its row.
/// seen: read in the source. part: the source was read in part. memory: not checked in the source.
/// derived: follows from definitions. constructed: made for this project.
/// practice: common practice, no source.
enum class Mark { seen, part, memory, derived, constructed, practice };

std::string_view text_of(Mark mark);
Phrase words_of(Mark mark);

class Row {
  public:
    /// The cell of a column; empty text where the cell is empty.
    /// @throws std::logic_error for a column that the file does not have
    std::string_view text(std::string_view column) const;
    /// @throws std::logic_error when the cell is not a number
    double number(std::string_view column) const;
    /// Nothing when the cell is empty.
    std::optional<double> maybe_number(std::string_view column) const;
    std::string_view source() const { return text("source"); }
    /// A cell that holds words for people; they stand in app/desktop/data_words.cpp for translation.
    Phrase words(std::string_view column) const { return {"reference", cell(column).c_str()}; }
    Mark mark() const;

  private:
    friend class Table;
    const std::string& cell(std::string_view column) const;
    Row(const std::vector<std::string>* header, std::vector<std::string> cells)
        : header_(header), cells_(std::move(cells)) {}
    const std::vector<std::string>* header_;
    std::vector<std::string> cells_;
};

class Table {
  public:
    /// @param name  file below schemas/reference, such as "plants.csv"
    /// @throws std::logic_error when the file is not compiled in or is malformed: our own mistake
    static const Table& named(std::string_view name);

    explicit Table(std::string_view text);
    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;

    const std::vector<Row>& rows() const { return rows_; }
    /// The first row whose cell in `column` equals `key`, or null.
    const Row* find(std::string_view column, std::string_view key) const;
    /// For words that people type: the row whose `key` is `text` in lower case with "_" for blanks
    /// and hyphens ("Clay loam" finds clay_loam), or null.
    const Row* find_typed(std::string_view text) const;

  private:
    std::vector<std::string> header_;
    std::vector<Row> rows_;
};

}  // namespace evenfall::reference

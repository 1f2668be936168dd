// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/input_error.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall::exchange {

/// Rows of a table from somewhere: a CSV file, a sheet of a workbook, a wide table turned long.
/// The importers see nothing else, so the same data gives the same book whatever its form.
class RowSource {
  public:
    RowSource() = default;
    RowSource(const RowSource&) = delete;
    RowSource& operator=(const RowSource&) = delete;
    virtual ~RowSource() = default;

    /// As the user named it.
    virtual const std::string& file() const = 0;
    virtual const std::vector<std::string>& header() const = 0;
    /// Steps to the next row; false at the end.
    /// @throws InputError when what follows cannot be read at all
    virtual bool next() = 0;
    /// Cells of the current row, as many as the header has unless `row_issue` says otherwise.
    /// Valid until the next call of next().
    virtual std::span<const std::string_view> cells() const = 0;
    /// The column of the file that cell `i` of the current row comes from, for messages.
    virtual std::string column_name(std::size_t i) const { return header()[i]; }
    /// Line of the file (row of the sheet) where the current row starts, from 1.
    virtual std::size_t row() const = 0;
    /// What makes the current row unfit as a whole, such as a missing cell.
    virtual const std::optional<Issue>& row_issue() const = 0;
    /// How much of the file is behind us, 0 to 1.
    virtual double done() const = 0;
    /// What a careful person should know about the file though it is no error.
    virtual std::vector<Sentence> notes() const { return {}; }
};

}  // namespace evenfall::exchange

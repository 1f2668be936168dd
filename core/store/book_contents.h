// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <cstdint>
#include <string_view>
#include <vector>

/// What a book holds besides the records that stand: the rows that were replaced, the journal, the
/// list of imported files, filings and applications. For saying what an export leaves in the book.
/// Tests: tests/exchange/export_test.cpp
namespace evenfall::store {

struct KeptRows {
    std::string_view words;  ///< "Readings that were replaced by a correction"
    std::int64_t count = 0;
};

std::vector<KeptRows> rows_beside_tables(const Book& book);

}  // namespace evenfall::store

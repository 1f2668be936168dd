// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/meter/screens.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// Water bills in the book. Only ever added: a correction is the next revision.
/// Tests: tests/exchange/import_test.cpp
namespace evenfall::store {

/// superseded: an earlier revision says the same, and was corrected since.
enum class BillOutcome { added, unchanged, superseded, conflict, replaced };

/// @param correct  what differs from the latest revision becomes the next one; else it is only reported
/// @throws BookError when the meter is not in the book
BillOutcome add_bill(Book& book, const meter::Bill& bill, bool correct,
                     std::optional<std::int64_t> import);

/// Latest revisions, in order of their first day.
std::vector<meter::Bill> bills(const Book& book, const std::string& meter);

}  // namespace evenfall::store

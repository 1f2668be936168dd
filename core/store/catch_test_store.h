// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// Catch tests in the book, as they stand on their field sheets.
/// Tests: tests/store/records_test.cpp
namespace evenfall::store {

/// Codes of the tests of one area, or of all areas when `area` is empty, oldest test first.
std::vector<std::string> catch_test_codes(const Book& book, const std::string& area);
std::optional<audit::CatchTest> find_catch_test(const Book& book, const std::string& code);
/// Every test of a site's areas, oldest first.
std::vector<audit::CatchTest> catch_tests_of_site(const Book& book, const std::string& site);
/// @throws BookError when the code is taken or the area is not in the book
void add_catch_test(Book& book, const audit::CatchTest& test, std::optional<std::int64_t> import);

}  // namespace evenfall::store

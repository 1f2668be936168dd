// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/site/site.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// Sites and areas in the book. `import` is the id of the file a record came from, if any.
/// Tests: tests/store/records_test.cpp
namespace evenfall::store {

/// In alphabetical order of their codes.
std::vector<site::Site> sites(const Book& book);
std::optional<site::Site> find_site(const Book& book, const std::string& code);
/// @throws BookError when the code is taken
void add_site(Book& book, const site::Site& site, std::optional<std::int64_t> import);
/// Puts new values in place of the old ones; the caller writes the old ones to the journal.
void replace_site(Book& book, const site::Site& site, std::optional<std::int64_t> import);

/// Areas of one site, or of all when `site` is empty, in alphabetical order of their codes.
std::vector<site::Area> areas(const Book& book, const std::string& site);
std::optional<site::Area> find_area(const Book& book, const std::string& code);
/// @throws BookError when the code is taken or its site or meter is not in the book
void add_area(Book& book, const site::Area& area, std::optional<std::int64_t> import);
void replace_area(Book& book, const site::Area& area, std::optional<std::int64_t> import);

}  // namespace evenfall::store

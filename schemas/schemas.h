// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

/// The data files of this folder, compiled in, so that the programs need no data path.
namespace evenfall::schemas {

/// The text of a file by its path below schemas, such as "book/001_records.sql".
/// @throws std::logic_error for a name that was not compiled in: a mistake in the program
std::string_view text(std::string_view name);

/// The names below a folder, such as "book/", in alphabetical order.
std::vector<std::string_view> names(std::string_view folder);

}  // namespace evenfall::schemas

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace evenfall::reports {

/// Lines of at most `width` characters (at least 1), broken at blanks and line feeds; a word
/// longer than a line is cut. At least one line, which may be empty.
/// Tests: tests/reports/content_test.cpp
std::vector<std::string> wrap(const std::string& text, std::size_t width);

}  // namespace evenfall::reports

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>

namespace evenfall::exchange {

/// Where the first byte stands that is no part of well-formed UTF-8 (Unicode 15, table 3-7), or
/// that is a NUL, which no text holds; npos when there is none.
/// Tests: tests/exchange/csv_reader_test.cpp
std::size_t first_bad_byte(std::string_view text);

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace evenfall::reference {

/// Whether a cell of words with single blanks between them holds the word.
/// Tests: tests/reference/table_test.cpp
constexpr bool lists(std::string_view words, std::string_view word) {
    while (!words.empty()) {
        const auto end = words.find(' ');
        if (words.substr(0, end) == word) return true;
        words = end == std::string_view::npos ? std::string_view{} : words.substr(end + 1);
    }
    return false;
}

}  // namespace evenfall::reference

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string_view>

/// The Unicode checks that every writer needs. Tests: tests/reports/content_test.cpp
namespace evenfall::reports {

/// Whether `text` is well-formed UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing
/// above U+10FFFF) and holds no control characters besides tab and line feed. The latter are
/// refused because XML 1.0 has no way to write them.
bool is_clean_text(std::string_view text);

/// Bytes of the sequence that starts at `at`; 1 for a byte that starts none.
std::size_t sequence_length(std::string_view text, std::size_t at);

/// Code points in `text`: a good enough count of columns on a terminal for the scripts we print.
std::size_t length_in_characters(std::string_view text);

}  // namespace evenfall::reports

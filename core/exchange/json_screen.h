// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <cstddef>
#include <filesystem>
#include <initializer_list>
#include <string>
#include <string_view>

/// A first look at JSON from a stranger, before anything is built from it.
/// Tests: tests/plan/plan_file_test.cpp
namespace evenfall::exchange {

/// The most entries of the list under a top-level key; the empty key limits all values of a file.
struct JsonLimit {
    std::string_view key;
    std::size_t most;
};

/// Streams through the text once without building anything.
/// @throws InputError  not JSON (with row and column), not UTF-8, a number no double can hold, a key
///                     twice in one object, nested deeper than 32, or a limit passed
void screen_json(std::string_view text, const std::string& file, std::initializer_list<JsonLimit> limits);

/// The whole file.
/// @param most      bytes
/// @param expected  what to say when it is longer
/// @throws InputError  cannot be read, or longer than `most` bytes
std::string read_text_file(const std::filesystem::path& path, std::size_t most, const Sentence& expected);

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace evenfall::exchange {

/// SHA-256 (FIPS 180-4) of a file's bytes, 64 hexadecimal digits in lower case.
/// @throws InputError when the file cannot be read
/// Tests: tests/exchange/import_test.cpp
std::string sha256_of_file(const std::filesystem::path& path);

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string_view>

namespace evenfall::workflow {

/// A file that is there whole or not at all: written beside its place and renamed.
/// Tests: tests/app/review_desk_test.cpp
/// @throws std::runtime_error naming the file; what stood there before stays
void write_whole_file(const std::filesystem::path& path, std::string_view bytes);

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace evenfall::demo {

struct DemoOutcome {
    std::filesystem::path book;
    std::vector<std::filesystem::path> reports;
};

/// Writes the scenario's tables to OUT/data, imports them into OUT/demo.evenfall and writes the
/// season and audit reports of both sites to OUT/reports. Running it again replaces what it made.
/// @param print_program  evenfall-print; empty: beside the running program
/// @throws BookError when OUT/demo.evenfall is there and was not made by the demo
DemoOutcome make_demo(const std::filesystem::path& out, const std::vector<std::string>& formats,
                      const std::filesystem::path& print_program);

}  // namespace evenfall::demo

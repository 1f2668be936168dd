// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"

#include <filesystem>
#include <iostream>
#include <unistd.h>

int main(int argc, char** argv) {
    std::ios::sync_with_stdio(false);
    std::error_code ignored;
    const auto self = std::filesystem::read_symlink("/proc/self/exe", ignored);
    evenfall::cli::Streams streams{std::cout, std::cerr, isatty(STDERR_FILENO) == 1,
                                   self.parent_path().string()};
    return evenfall::cli::run_command_line(argc, argv, streams);
}

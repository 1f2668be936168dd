// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/command.h"

#include <sstream>
#include <string>
#include <vector>

namespace evenfall::tests {

struct Answer {
    int status = 0;
    std::string out;
    std::string err;
};

/// Runs a command as the program would, without starting a process.
inline Answer evenfall(const std::vector<std::string>& arguments) {
    std::vector<const char*> argv{"evenfall"};
    for (const std::string& a : arguments) argv.push_back(a.c_str());
    std::ostringstream out;
    std::ostringstream err;
    cli::Streams streams{out, err, false, EVENFALL_BINARY_DIR "/bin"};
    const int status =
        cli::run_command_line(static_cast<int>(argv.size()), argv.data(), streams);
    return {status, out.str(), err.str()};
}

}  // namespace evenfall::tests

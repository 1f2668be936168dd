// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/options.h"

#include <string>
#include <variant>

namespace evenfall::cli {

/// The program ends here: help was asked for (status 0) or the arguments are bad (status 2).
struct Stop {
    int status = 0;
    std::string text;
};

/// Reads the command line. Never throws for what a user typed.
std::variant<Invocation, Stop> parse_arguments(int argc, const char* const* argv);

}  // namespace evenfall::cli

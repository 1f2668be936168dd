// SPDX-License-Identifier: GPL-3.0-or-later
// Commands that are not written yet. Take a function out of here when its file is added.
#include "app/cli/command.h"

#include <stdexcept>

namespace evenfall::cli {
namespace {
[[noreturn]] int missing() { throw std::logic_error("this command is not part of this build"); }
}  // namespace

int run(const CheckOptions&, Streams&) { missing(); }

}  // namespace evenfall::cli

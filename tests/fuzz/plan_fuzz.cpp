// SPDX-License-Identifier: GPL-3.0-or-later
// Any text given as a design plan: a plan or InputError, nothing else.
#include "core/exchange/plan_file.h"
#include "core/input_error.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    try {
        static_cast<void>(evenfall::exchange::parse_plan(
            {reinterpret_cast<const char*>(data), size}, "fuzz.json"));
    } catch (const evenfall::InputError&) {
    }
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Any text given as a program file: a program or InputError, nothing else.
#include "core/budget/program.h"
#include "core/input_error.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    try {
        static_cast<void>(evenfall::budget::read_program(
            {reinterpret_cast<const char*>(data), size}, "fuzz.json"));
    } catch (const evenfall::InputError&) {
    }
    return 0;
}

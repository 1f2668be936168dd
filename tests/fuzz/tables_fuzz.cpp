// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes given as a catch sheet, a weather table or a table of conflicts: records or InputError, nothing else.
#include "core/exchange/conflict_table.h"
#include "core/exchange/plain_files.h"
#include "core/input_error.h"
#include "tests/fuzz/memory_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const evenfall::fuzz::MemoryFile file(data, size);
    try {
        static_cast<void>(evenfall::exchange::read_catches(file.path()));
    } catch (const evenfall::InputError&) {
    }
    try {
        static_cast<void>(evenfall::exchange::read_weather(file.path()));
    } catch (const evenfall::InputError&) {
    }
    try {
        static_cast<void>(evenfall::exchange::read_conflicts(file.path()));
    } catch (const evenfall::InputError&) {
    }
    return 0;
}

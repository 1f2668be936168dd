// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/utf8.h"

#include <cstdint>
#include <cstring>

namespace evenfall::exchange {
namespace {

/// Length of the well-formed sequence at the front, or 0.
std::size_t sequence_at(std::string_view s) {
    const auto byte = [&](std::size_t k) {
        return k < s.size() ? static_cast<std::uint8_t>(s[k]) : std::uint8_t{0};
    };
    const auto tail = [&](std::size_t k) { return (byte(k) & 0xC0U) == 0x80U; };
    const std::uint8_t b0 = byte(0);
    const std::uint8_t b1 = byte(1);
    if (b0 == 0) return 0;
    if (b0 < 0x80) return 1;
    if (b0 < 0xC2 || b0 > 0xF4 || !tail(1)) return 0;
    if (b0 < 0xE0) return 2;
    if ((b0 == 0xE0 && b1 < 0xA0) || (b0 == 0xED && b1 > 0x9F) || !tail(2)) return 0;
    if (b0 < 0xF0) return 3;
    if ((b0 == 0xF0 && b1 < 0x90) || (b0 == 0xF4 && b1 > 0x8F) || !tail(3)) return 0;
    return 4;
}

/// Eight bytes that are all ASCII and none of them NUL: the usual case, told at once.
bool plain_eight(const char* p) {
    std::uint64_t v = 0;
    std::memcpy(&v, p, sizeof v);
    constexpr std::uint64_t high = 0x8080808080808080ULL;
    constexpr std::uint64_t ones = 0x0101010101010101ULL;
    return ((v | (v - ones)) & high) == 0;
}

}  // namespace

std::size_t first_bad_byte(std::string_view text) {
    std::size_t i = 0;
    while (i < text.size()) {
        if (i + 8 <= text.size() && plain_eight(text.data() + i)) {
            i += 8;
            continue;
        }
        const std::size_t n = sequence_at(text.substr(i));
        if (n == 0) return i;
        i += n;
    }
    return std::string_view::npos;
}

}  // namespace evenfall::exchange

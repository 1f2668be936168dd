// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/utf8.h"

namespace evenfall::reports {
namespace {

unsigned byte_at(std::string_view text, std::size_t at) {
    return at < text.size() ? static_cast<unsigned char>(text[at]) : 0U;
}

/// Length of a well-formed sequence at `at`, 0 when there is none. RFC 3629, section 4.
std::size_t well_formed(std::string_view text, std::size_t at) {
    const unsigned lead = byte_at(text, at);
    const auto tail = [&](std::size_t i, unsigned low = 0x80, unsigned high = 0xBF) {
        const unsigned b = byte_at(text, at + i);
        return b >= low && b <= high;
    };
    if (lead < 0x80) return 1;
    if (lead >= 0xC2 && lead <= 0xDF) return tail(1) ? 2 : 0;
    if (lead == 0xE0) return tail(1, 0xA0) && tail(2) ? 3 : 0;
    if (lead == 0xED) return tail(1, 0x80, 0x9F) && tail(2) ? 3 : 0;
    if (lead >= 0xE1 && lead <= 0xEF) return tail(1) && tail(2) ? 3 : 0;
    if (lead == 0xF0) return tail(1, 0x90) && tail(2) && tail(3) ? 4 : 0;
    if (lead >= 0xF1 && lead <= 0xF3) return tail(1) && tail(2) && tail(3) ? 4 : 0;
    if (lead == 0xF4) return tail(1, 0x80, 0x8F) && tail(2) && tail(3) ? 4 : 0;
    return 0;
}

}  // namespace

bool is_clean_text(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t n = well_formed(text, i);
        if (n == 0) return false;
        const unsigned b = byte_at(text, i);
        if ((b < 0x20 && b != '\t' && b != '\n') || b == 0x7F) return false;
        // U+0080 to U+009F, the C1 controls, and U+FFFE, U+FFFF, which XML refuses.
        if (b == 0xC2 && byte_at(text, i + 1) < 0xA0) return false;
        if (b == 0xEF && byte_at(text, i + 1) == 0xBF && byte_at(text, i + 2) >= 0xBE) return false;
        i += n;
    }
    return true;
}

std::size_t sequence_length(std::string_view text, std::size_t at) {
    const std::size_t n = well_formed(text, at);
    return n == 0 ? 1 : n;
}

std::size_t length_in_characters(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); i += sequence_length(text, i)) ++count;
    return count;
}

}  // namespace evenfall::reports

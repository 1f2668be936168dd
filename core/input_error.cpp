// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/input_error.h"

#include <array>
#include <cstdint>
#include <utility>

namespace evenfall {
namespace {

constexpr std::size_t issues_shown = 20;

std::string joined(const std::vector<Issue>& issues) {
    std::string all;
    for (std::size_t i = 0; i < issues.size() && i < issues_shown; ++i) {
        if (i != 0) all += '\n';
        all += issues[i].text();
    }
    if (issues.size() > issues_shown) {
        all += "\nand " + std::to_string(issues.size() - issues_shown) + " more";
    }
    return all;
}

/// Length of the well-formed UTF-8 sequence that starts at `i`, or 0 (Unicode 15, table 3-7).
std::size_t sequence_length(const std::string& s, std::size_t i) {
    const auto byte = [&](std::size_t k) {
        return k < s.size() ? static_cast<std::uint8_t>(s[k]) : std::uint8_t{0};
    };
    const auto tail = [&](std::size_t k) { return (byte(k) & 0xC0U) == 0x80U; };
    const std::uint8_t b0 = byte(i);
    const std::uint8_t b1 = byte(i + 1);
    if (b0 < 0x80) return 1;
    if (b0 >= 0xC2 && b0 <= 0xDF) return tail(i + 1) ? 2 : 0;
    if (b0 >= 0xE0 && b0 <= 0xEF) {
        if (b0 == 0xE0 && b1 < 0xA0) return 0;
        if (b0 == 0xED && b1 > 0x9F) return 0;
        return tail(i + 1) && tail(i + 2) ? 3 : 0;
    }
    if (b0 >= 0xF0 && b0 <= 0xF4) {
        if (b0 == 0xF0 && b1 < 0x90) return 0;
        if (b0 == 0xF4 && b1 > 0x8F) return 0;
        return tail(i + 1) && tail(i + 2) && tail(i + 3) ? 4 : 0;
    }
    return 0;
}

void append_hex(std::string& out, char c) {
    static constexpr std::array<char, 17> digits{"0123456789ABCDEF"};
    const auto b = static_cast<std::uint8_t>(c);
    out += "\\x";
    out += digits[b >> 4U];
    out += digits[b & 0x0FU];
}

}  // namespace

std::string printable(const std::string& raw, std::size_t limit) {
    std::string out;
    std::size_t i = 0;
    while (i < raw.size()) {
        if (out.size() >= limit) return out + "...";
        const std::size_t n = sequence_length(raw, i);
        const auto b = static_cast<std::uint8_t>(raw[i]);
        if (n == 0 || b < 0x20 || b == 0x7F) {
            append_hex(out, raw[i]);
            ++i;
        } else {
            out.append(raw, i, n);
            i += n;
        }
    }
    return out;
}

Sentence printable_sentence(const Sentence& sentence, std::size_t limit) {
    if (sentence.values().empty()) {
        return sentence.form().form == nullptr ? Sentence(printable(sentence.english(), limit)) : sentence;
    }
    std::vector<Sentence> values;
    for (const Sentence& value : sentence.values()) values.push_back(printable_sentence(value, limit));
    return sentence.with(std::move(values));
}

Sentence Place::sentence() const {
    std::vector<Sentence> parts;
    if (!file.empty()) parts.emplace_back(printable(file, 200));
    if (row != 0) parts.push_back(Sentence(phrase("core", "row %1"), row));
    if (!column.empty()) parts.push_back(Sentence(phrase("core", "column %1"), printable(column)));
    return Sentence::joined(std::move(parts), ", ");
}

Sentence Issue::sentence() const {
    const Sentence where = place.sentence();
    Sentence what(phrase("core", "found \"%1\", expected %2"), printable_sentence(found), expected);
    if (where.empty()) return what;
    return Sentence::joined({where, std::move(what)}, ": ");
}

InputError::InputError(Issue issue) : InputError(std::vector<Issue>{std::move(issue)}) {}

InputError::InputError(std::vector<Issue> issues)
    : std::runtime_error(joined(issues)), issues_(std::move(issues)) {}

InputError::InputError(Sentence found, Sentence expected)
    : InputError(Issue{{}, std::move(found), std::move(expected)}) {}

}  // namespace evenfall

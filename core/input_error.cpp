// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/input_error.h"

#include "core/sentences.h"

#include <array>
#include <cstdint>
#include <utility>

namespace evenfall {
namespace {

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
    // What is too long is cut as one text, so that its parts are lost.
    std::string text = printable(sentence.english(), limit);
    if (sentence.values().empty()) {
        return sentence.form().form != nullptr && text == sentence.english() ? sentence : Sentence(std::move(text));
    }
    std::vector<Sentence> values;
    for (const Sentence& value : sentence.values()) values.push_back(printable_sentence(value, limit));
    Sentence whole = sentence.with(std::move(values));
    return whole == text ? whole : Sentence(std::move(text));
}

namespace {

/// A column as the reader named it. Where one of several is missing, or a text has no columns, the
/// core says so in its place: "size_ac or size_m2", "character 12", "byte 7".
Sentence column_words(const std::string& column) {
    const auto all_of = [](std::string_view text, std::string_view allowed) {
        return !text.empty() && text.find_first_not_of(allowed) == std::string_view::npos;
    };
    static constexpr std::string_view digits = "0123456789";
    static constexpr std::string_view names = "abcdefghijklmnopqrstuvwxyz0123456789_, ";
    const std::string_view text(column);
    if (text.starts_with("character ") && all_of(text.substr(10), digits)) {
        return {phrase("core", "character %1"), text.substr(10)};
    }
    if (text.starts_with("byte ") && all_of(text.substr(5), digits)) return {phrase("core", "byte %1"), text.substr(5)};
    const std::size_t last = text.rfind(" or ");
    if (last == std::string_view::npos || !all_of(text.substr(0, last), names) || !all_of(text.substr(last + 4), names)) {
        return printable(column);
    }
    return {phrase("core", "%1 or %2"), printable(column.substr(0, last)), printable(column.substr(last + 4))};
}

}  // namespace

Sentence Place::sentence() const {
    std::vector<Sentence> parts;
    if (!file.empty()) parts.emplace_back(printable(file, 200));
    if (row != 0) parts.push_back(Sentence(phrase("core", "row %1"), row));
    if (!column.empty()) parts.push_back(Sentence(phrase("core", "column %1"), column_words(column)));
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
    : std::runtime_error(sentence_of(issues).english()), issues_(std::move(issues)) {}

InputError::InputError(Sentence found, Sentence expected)
    : InputError(Issue{{}, std::move(found), std::move(expected)}) {}

}  // namespace evenfall

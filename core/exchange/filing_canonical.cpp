// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/filing_canonical.h"

#include "core/exchange/utf8.h"
#include "core/input_error.h"

#include <nlohmann/json.hpp>

#include <array>
#include <charconv>
#include <cmath>
#include <string_view>

namespace evenfall::exchange {
namespace {

using Json = nlohmann::json;

void write_string(std::string& out, const std::string& text) {
    static constexpr std::string_view digits = "0123456789abcdef";
    if (first_bad_byte(text) != std::string_view::npos) {
        throw InputError(printable(text), phrase("exchange", "UTF-8 text"));
    }
    out += '"';
    for (const char c : text) {
        switch (c) {
            case '"': out += "\\\""; break;
            case '\\': out += "\\\\"; break;
            case '\b': out += "\\b"; break;
            case '\t': out += "\\t"; break;
            case '\n': out += "\\n"; break;
            case '\f': out += "\\f"; break;
            case '\r': out += "\\r"; break;
            default: {
                const auto u = static_cast<unsigned char>(c);
                if (u < 0x20) {
                    out += "\\u00";
                    out += digits[u >> 4U];
                    out += digits[u & 15U];
                } else {
                    out += c;
                }
            }
        }
    }
    out += '"';
}

void write_value(std::string& out, const Json& json) {
    switch (json.type()) {
        case Json::value_t::null: out += "null"; return;
        case Json::value_t::boolean: out += json.get<bool>() ? "true" : "false"; return;
        case Json::value_t::number_integer:
        case Json::value_t::number_unsigned:
        case Json::value_t::number_float: out += canonical_number(json.get<double>()); return;
        case Json::value_t::string: write_string(out, json.get_ref<const std::string&>()); return;
        case Json::value_t::array: {
            out += '[';
            bool first = true;
            for (const Json& element : json) {
                if (!first) out += ',';
                first = false;
                write_value(out, element);
            }
            out += ']';
            return;
        }
        case Json::value_t::object: {
            out += '{';
            bool first = true;
            for (const auto& [name, value] : json.items()) {
                if (!first) out += ',';
                first = false;
                write_string(out, name);
                out += ':';
                write_value(out, value);
            }
            out += '}';
            return;
        }
        default: throw InputError(phrase("exchange", "a value that JSON does not have"), phrase("exchange", "a JSON value"));
    }
}

}  // namespace

std::string canonical_number(double value) {
    if (!std::isfinite(value)) {
        throw InputError(phrase("exchange", "a number that is not finite"), phrase("exchange", "a finite number"));
    }
    if (value == 0.0) return "0";
    std::array<char, 40> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::abs(value),
                                   std::chars_format::scientific);
    const std::string_view text(buffer.data(), static_cast<std::size_t>(end.ptr - buffer.data()));
    const std::size_t e = text.find('e');
    std::string digits;
    for (const char c : text.substr(0, e)) {
        if (c != '.') digits += c;
    }
    // value = 0.d1d2d3... x 10^point
    const bool negative_exponent = text[e + 1] == '-';
    int exponent = 0;
    std::from_chars(text.data() + e + 2, text.data() + text.size(), exponent);
    const int point = (negative_exponent ? -exponent : exponent) + 1;
    const int count = static_cast<int>(digits.size());
    const auto zeros = [](int n) { return std::string(static_cast<std::size_t>(n), '0'); };
    std::string out = value < 0.0 ? "-" : "";
    if (count <= point && point <= 21) return out + digits + zeros(point - count);
    if (0 < point && point <= 21) {
        digits.insert(static_cast<std::size_t>(point), 1, '.');
        return out + digits;
    }
    if (-6 < point && point <= 0) return out + "0." + zeros(-point) + digits;
    if (count > 1) digits.insert(1, 1, '.');
    out += digits;
    out += point - 1 < 0 ? "e-" : "e+";
    out += std::to_string(std::abs(point - 1));
    return out;
}

std::string canonical_text(const Json& json) {
    std::string out;
    write_value(out, json);
    return out;
}

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number.h"

#include <fast_float/fast_float.h>

#include <array>
#include <charconv>
#include <cmath>
#include <cstring>

namespace evenfall::units {

std::optional<double> parse_number(std::string_view text, char decimal_mark) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-') return std::nullopt;
    }
    if (text.empty()) return std::nullopt;
    double value = 0.0;
    const fast_float::parse_options options(fast_float::chars_format::general, decimal_mark);
    const auto [end, error] =
        fast_float::from_chars_advanced(text.data(), text.data() + text.size(), value, options);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

std::string format_shortest(double value) {
    if (std::isnan(value)) return "not a number";
    if (std::isinf(value)) return value > 0 ? "infinity" : "-infinity";
    std::array<char, 32> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    static_cast<void>(error);  // 32 characters hold every shortest double
    return {buffer.data(), end};
}

std::string format_fixed(double value, int decimals) {
    if (!std::isfinite(value)) return format_shortest(value);
    std::array<char, 400> buffer{};  // the largest double has 309 digits before the point
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                            std::chars_format::fixed, decimals);
    if (error != std::errc()) return format_shortest(value);
    std::string out(buffer.data(), end);
    if (out.front() == '-' && out.find_first_not_of("-0.") == std::string::npos) out.erase(0, 1);
    return out;
}

std::string format_grouped(double value, int decimals) {
    std::string out = format_fixed(value, decimals);
    if (!std::isfinite(value)) return out;
    const std::size_t first = out.front() == '-' ? 1 : 0;
    std::size_t point = out.find('.');
    if (point == std::string::npos) point = out.size();
    for (std::size_t i = point; i > first + 3;) {
        i -= 3;
        out.insert(i, 1, ',');
    }
    return out;
}

}  // namespace evenfall::units

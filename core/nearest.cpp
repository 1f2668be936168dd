// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/nearest.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace evenfall {

std::size_t letters_apart(std::string_view a, std::string_view b) {
    std::vector<std::size_t> before(b.size() + 1);
    std::vector<std::size_t> above(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) above[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t replace = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({replace, above[j] + 1, row[j - 1] + 1});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) {
                row[j] = std::min(row[j], before[j - 2] + 1);
            }
        }
        std::swap(before, above);
        std::swap(above, row);
    }
    return above[b.size()];
}

std::string_view nearest_of(std::string_view typed, std::span<const std::string_view> known) {
    constexpr std::size_t longest = 64;
    if (known.empty()) return {};
    const std::string_view start = typed.substr(0, longest);
    return *std::min_element(known.begin(), known.end(), [&](std::string_view a, std::string_view b) {
        return letters_apart(a, start) < letters_apart(b, start);
    });
}

}  // namespace evenfall

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/rating.h"

#include "core/reference/word_list.h"

#include <array>
#include <stdexcept>

namespace evenfall::audit {
namespace {

using reference::lists;

/// Kinds whose rows fit: the machine by its layout, otherwise the head that is known, or all fixed
/// heads when none is.
bool fits(std::string_view row_heads, Layout layout, std::string_view heads) {
    if (layout == Layout::pivot) return lists(row_heads, "pivot");
    if (layout == Layout::lateral) return lists(row_heads, "lateral");
    if (layout == Layout::traveller) return lists(row_heads, "traveller");
    if (row_heads == "any") return true;
    if (!heads.empty()) return lists(row_heads, heads);
    for (const std::string_view fixed : {"spray", "rotor", "impact", "solid_set"}) {
        if (lists(row_heads, fixed)) return true;
    }
    return false;
}

double figure_of(const UniformityResult& r, std::string_view name) {
    if (name == "du_lq") return r.du_lq.percent();
    if (name == "cu") return r.cu.percent();
    if (name == "statistical") return r.statistical_uniformity.percent();
    throw std::logic_error("unknown figure in rating_bands.csv: " + std::string(name));
}

}  // namespace

std::vector<Rating> ratings(const UniformityResult& result, Layout layout, std::string_view heads) {
    std::vector<Rating> found;
    for (const auto& row : reference::Table::named("rating_bands.csv").rows()) {
        if (!fits(row.text("heads"), layout, heads)) continue;
        const double percent = figure_of(result, row.text("figure"));
        const auto at_least = row.maybe_number("at_least");
        const auto below = row.maybe_number("below");
        // A figure on the border of a band is in the upper one; the slack is for ratios such as 0.7.
        constexpr double slack = 1e-9;
        if (at_least && percent < *at_least - slack) continue;
        if (below && percent >= *below - slack) continue;
        found.push_back({std::string(row.text("system")), std::string(row.text("heads")),
                         std::string(row.text("figure")), percent, std::string(row.text("rating")),
                         at_least, below, std::string(row.source()), row.mark()});
    }
    return found;
}

}  // namespace evenfall::audit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/multiplier.h"

#include "core/reference/table.h"

#include <algorithm>
#include <stdexcept>

namespace evenfall::audit {
namespace {

const reference::Row& form(std::string_view name) {
    const auto* row = reference::Table::named("multiplier_forms.csv").find("form", name);
    if (row == nullptr) throw std::logic_error("no multiplier form " + std::string(name));
    return *row;
}

}  // namespace

units::Multiplier linear_multiplier(units::LowQuarterDu du_lq) {
    const reference::Row& row = form("linear");
    return units::Multiplier::of(1.0 / (row.number("a") + row.number("b") * du_lq.value()));
}

units::LowHalfDu low_half_if_normal(units::LowQuarterDu du_lq) {
    const reference::Row& row = form("normal");
    const double du_lh = row.number("a") + row.number("b") * du_lq.value();
    return units::LowHalfDu::of(std::min(1.0, du_lh));
}

Multipliers multipliers(units::LowQuarterDu du_lq, units::LowHalfDu du_lh) {
    const reference::Row& row = form("linear");
    Multipliers m{std::nullopt,
                  linear_multiplier(du_lq),
                  std::nullopt,
                  {phrase("audit", "%1 [%2]"), row.words("source"), words_of(row.mark())}};
    if (du_lh.value() > 0.0) m.low_half = units::Multiplier::of(1.0 / du_lh.value());
    if (du_lq.value() > 0.0) m.low_quarter = units::Multiplier::of(1.0 / du_lq.value());
    return m;
}

}  // namespace evenfall::audit

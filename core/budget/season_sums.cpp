// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_sums.h"

namespace evenfall::budget {

using units::Volume;

namespace {

template <class Q>
void add_known(std::optional<Q>& sum, const std::optional<Q>& part) {
    if (part) sum = sum.value_or(Q{}) + *part;
}

}  // namespace

void add_if_known(std::optional<Volume>& sum, const std::optional<Volume>& part) {
    add_known(sum, part);
}

void add_if_known(std::optional<units::Depth>& sum, const std::optional<units::Depth>& part) {
    add_known(sum, part);
}

void add_volumes(SeasonFigures& sum, const SeasonFigures& part) {
    const double before = sum.use.value_or(Volume{}).si();
    const double more = part.use.value_or(Volume{}).si();
    if (before + more > 0.0) {
        sum.estimated_share = (sum.estimated_share * before + part.estimated_share * more) /
                              (before + more);
    }
    add_known(sum.use, part.use);
    add_known(sum.outside_account, part.outside_account);
    if (part.account) {
        if (!sum.account) sum.account.emplace();
        *sum.account += *part.account;
    }
    if (part.by_cans) {
        if (!sum.by_cans) sum.by_cans.emplace();
        *sum.by_cans += *part.by_cans;
    }
    add_flags(sum.flags, part.flags);
}

SeasonFigures total_of(std::span<const SeasonMonth* const> months) {
    SeasonFigures total;
    for (const SeasonMonth* month : months) {
        total.days += month->days;
        total.days_counted += month->days_counted;
        add_known(total.reference_et, month->reference_et);
        add_known(total.rain, month->rain);
        add_known(total.landscape_et, month->landscape_et);
        add_known(total.effective_rain, month->effective_rain);
        add_known(total.need_depth, month->need_depth);
        add_volumes(total, *month);
        add_known(total.need, month->need);
        add_known(total.budget, month->budget);
        add_known(total.over_budget, month->over_budget);
        if (!month->account) add_flag(total.flags, SeasonFlag::months_missing);
    }
    return total;
}

}  // namespace evenfall::budget

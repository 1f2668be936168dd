// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/waste_account.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace evenfall::budget {

using units::Volume;

namespace {

void check_volume(Volume volume, Phrase name) {
    if (std::isfinite(volume.si()) && volume.si() >= 0.0) return;
    throw InputError(units::format_shortest(volume.si()) + " m3", {phrase("budget", "%1 of zero or more"), name});
}

void check_multiplier(units::Multiplier multiplier, Phrase name) {
    if (multiplier.value() >= 1.0) return;
    throw InputError(units::format_shortest(multiplier.value()), {phrase("budget", "%1 of 1 or more"), name});
}

}  // namespace

Volume WasteAccount::use() const {
    return used_by_turf + uneven_unavoidable + uneven_avoidable + off_target + leak + over_scheduled;
}

Volume WasteAccount::avoidable() const {
    return uneven_avoidable + off_target + leak + over_scheduled;
}

WasteAccount& WasteAccount::operator+=(const WasteAccount& other) {
    for (const WasteLine& line : waste_lines()) this->*line.part += other.*line.part;
    return *this;
}

WasteAccount& WasteAccount::operator*=(double share) {
    for (const WasteLine& line : waste_lines()) this->*line.part *= share;
    return *this;
}

const std::array<WasteLine, 7>& waste_lines() {
    static constexpr std::array<WasteLine, 7> lines{{
        {"used_by_turf", phrase("budget", "used by the turf"), &WasteAccount::used_by_turf, true},
        {"uneven_unavoidable", phrase("budget", "uneven application, unavoidable"), &WasteAccount::uneven_unavoidable,
         true},
        {"uneven_avoidable", phrase("budget", "uneven application, avoidable"), &WasteAccount::uneven_avoidable,
         true},
        {"off_target", phrase("budget", "off target"), &WasteAccount::off_target, true},
        {"leak", phrase("budget", "leak"), &WasteAccount::leak, true},
        {"over_scheduled", phrase("budget", "over-scheduled"), &WasteAccount::over_scheduled, true},
        {"short", phrase("budget", "short of the need"), &WasteAccount::short_of_need, false},
    }};
    return lines;
}

WasteAccount waste_account(const WasteInputs& in) {
    check_volume(in.use, phrase("budget", "a metered volume"));
    check_volume(in.need, phrase("budget", "a need"));
    check_volume(in.leak, phrase("budget", "a leak"));
    check_multiplier(in.achieved, phrase("budget", "an achieved multiplier"));
    check_multiplier(in.target, phrase("budget", "a target multiplier"));

    const double m = in.achieved.value();
    const double attainable = std::min(m, in.target.value());
    WasteAccount account;
    account.leak = std::min(in.leak, in.use);
    const Volume after_leak = in.use - account.leak;
    account.off_target = after_leak * in.off_target.value();
    const Volume reached = after_leak - account.off_target;
    account.used_by_turf = std::min(reached, in.need);
    Volume excess = reached - account.used_by_turf;
    account.uneven_unavoidable = std::min(excess, in.need * (attainable - 1.0));
    excess -= account.uneven_unavoidable;
    account.uneven_avoidable = std::min(excess, in.need * (m - attainable));
    account.over_scheduled = excess - account.uneven_avoidable;
    account.short_of_need = std::max(Volume{}, in.need - reached);
    return account;
}

}  // namespace evenfall::budget

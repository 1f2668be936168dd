// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/station.h"

#include <algorithm>

namespace evenfall::schedule {

int WateringRule::days_a_week() const {
    return static_cast<int>(std::count(days.begin(), days.end(), true));
}

std::chrono::minutes WateringRule::window() const {
    const auto length = ends - starts;
    return length.count() > 0 ? length : length + std::chrono::hours{24};
}

}  // namespace evenfall::schedule

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/season/season_range.h"

#include "core/store/meter_store.h"
#include "core/store/reading_pages.h"

#include <algorithm>

namespace evenfall::desktop {

std::optional<MonthRange> months_with_readings(const store::Book& book, const std::string& site) {
    std::optional<store::RecordSpan> all;
    for (const auto& meter : store::meters(book, site)) {
        const auto span = store::record_span(book, meter.code);
        if (!span) continue;
        if (!all) all = span;
        all->first = std::min(all->first, span->first);
        all->last = std::max(all->last, span->last);
    }
    if (!all) return std::nullopt;
    const auto month = [](calendar::Instant at) {
        return calendar::month_of(std::chrono::floor<std::chrono::days>(at));
    };
    return MonthRange{month(all->first), month(all->last - std::chrono::hours{24})};
}

MonthRange last_year_of(const MonthRange& range) {
    const calendar::Month january = range.last.year() / std::chrono::January;
    return {std::max(range.first, january), std::max(range.first, range.last)};
}

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/sites/site_rows.h"

#include "app/desktop/core_words.h"
#include "app/desktop/finding_words.h"
#include "app/desktop/season/season_range.h"
#include "core/store/meter_store.h"
#include "core/store/reading_pages.h"
#include "core/store/site_store.h"

#include <algorithm>
#include <map>

namespace evenfall::desktop {

std::vector<SiteRow> site_rows(const store::Book& book) {
    std::vector<SiteRow> rows;
    std::map<std::string, std::size_t> at;
    for (const auto& site : store::sites(book)) {
        at[site.code] = rows.size();
        SiteRow row;
        row.code = site.code;
        row.name = site.name;
        row.organisation = site.organisation;
        rows.push_back(std::move(row));
    }
    for (const auto& area : store::areas(book, {})) {
        SiteRow& row = rows[at.at(area.site)];
        ++row.areas;
        row.size += area.size.quantity();
    }
    for (const auto& meter : store::meters(book, {})) {
        SiteRow& row = rows[at.at(meter.site)];
        ++row.meters;
        if (const auto span = store::record_span(book, meter.code)) {
            row.last_reading = std::max(row.last_reading.value_or(span->last), span->last);
        }
    }
    return rows;
}

void judge(const store::Book& book, SiteRow& row) {
    row.judged = true;
    const auto range = months_with_readings(book, row.code);
    if (!range) return;
    const auto year = last_year_of(*range);
    try {
        const auto answer = workflow::answer_season(
            book, {row.code, year.first, year.last, "general", "nrcs", audit::QuarterRule::whole_cans});
        row.over_budget = answer.result.total.over_budget;
        auto findings = answer.meter_findings;
        sort_by_urgency(findings);
        row.attention = std::move(findings);
    } catch (const std::exception& e) {
        row.not_judged_because = error_words(e);
    }
}

}  // namespace evenfall::desktop

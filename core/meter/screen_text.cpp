// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/screen_text.h"

#include "core/reference/table.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>
#include <utility>

namespace evenfall::meter {
namespace {

const reference::Row& limit_row(std::string_view name) {
    const auto* row = reference::Table::named("meter_screens.csv").find("name", name);
    if (row == nullptr) throw std::logic_error("no screen limit " + std::string(name));
    return *row;
}

}  // namespace

double screen_limit(std::string_view name) {
    // Asked for once for each interval of a record, so the table is turned into numbers only once.
    static const std::map<std::string_view, double> values = [] {
        std::map<std::string_view, double> all;
        for (const reference::Row& row : reference::Table::named("meter_screens.csv").rows()) {
            all[row.text("name")] = row.number("value");
        }
        return all;
    }();
    const auto found = values.find(name);
    if (found == values.end()) throw std::logic_error("no screen limit " + std::string(name));
    return found->second;
}

MeterFinding make_finding(FindingKind kind, const std::string& meter, calendar::Date from, calendar::Date to,
                          std::optional<units::Volume> volume, Sentence sentence, Confidence confidence,
                          std::string_view limit) {
    const reference::Row& row = limit_row(limit);
    const Sentence value = Sentence::joined({row.text("value"), row.words("unit")}, " ");
    Sentence crossed = Sentence::joined({row.words("meaning"), value}, ": ");
    Sentence source{phrase("meter", "%1 (%2)"), row.words("source"), reference::words_of(row.mark())};
    return {kind,       meter,          from, to, volume, std::move(sentence), confidence,
            std::move(crossed), std::move(source)};
}

std::string volume_text(units::Volume volume) {
    const double m3 = volume.in(units::cubic_metre);
    return units::format_grouped(volume.in(units::us_gallon), 0) + " gal (" +
           units::format_grouped(m3, std::abs(m3) < 100 ? 1 : 0) + " m3)";
}

std::string flow_text(units::Flow flow) {
    const double gpm = flow.in(units::gallon_per_minute);
    return units::format_grouped(gpm, std::abs(gpm) < 10 ? 2 : 1) + " gpm (" +
           units::format_grouped(flow.in(units::cubic_metre_per_hour), 2) + " m3/h)";
}

Sentence days_text(calendar::Date from, calendar::Date to) {
    if (from == to) return {phrase("meter", "on %1"), calendar::format_date(from)};
    return {phrase("meter", "from %1 to %2"), calendar::format_date(from), calendar::format_date(to)};
}

double median(std::vector<double> values) {
    if (values.empty()) return 0.0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    const double upper = *middle;
    if (values.size() % 2 == 1) return upper;
    return (*std::max_element(values.begin(), middle) + upper) / 2;
}

double percentile(std::vector<double> values, double share) {
    if (values.empty()) return 0.0;
    const auto n = static_cast<double>(values.size());
    const double rank = std::clamp(std::ceil(share * n), 1.0, n);
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(rank) - 1;
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

}  // namespace evenfall::meter

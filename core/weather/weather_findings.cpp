// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/weather_findings.h"

#include "core/reference/table.h"

#include <algorithm>
#include <chrono>
#include <stdexcept>
#include <tuple>
#include <utility>

namespace evenfall::weather {

using calendar::Date;
using std::chrono::days;

Limit Limits::read(std::string_view key) {
    const auto* row = reference::Table::named("weather_limits.csv").find("key", key);
    if (row == nullptr) throw std::logic_error("no weather limit " + std::string(key));
    return {row->number("value"), row->text("kind") == "impossible" ? Severity::impossible : Severity::suspect,
            row->words("source")};
}

const Limits& limits() {
    static const Limits all;
    return all;
}

void Findings::add(std::string_view kind, Severity severity, Phrase source, Date from, Date to, Sentence sentence) {
    const auto last = latest_.find(kind);
    if (last != latest_.end()) {
        WeatherFinding& f = all_[last->second];
        if (from >= f.from && from <= f.to + days{1}) {
            f.days += static_cast<int>((to - std::max(from, f.to + days{1})).count()) + 1;
            f.to = std::max(f.to, to);
            return;
        }
    }
    latest_.insert_or_assign(std::string(kind), all_.size());
    all_.push_back({std::string(kind), severity, from, to,
                    static_cast<int>((to - from).count()) + 1, std::move(sentence), source});
}

void Findings::add(std::string_view kind, const Limit& limit, Date day, Sentence sentence) {
    add(kind, limit.severity, limit.source, day, day, std::move(sentence));
}

std::vector<WeatherFinding> Findings::sorted() && {
    std::stable_sort(all_.begin(), all_.end(), [](const auto& a, const auto& b) {
        return std::tie(a.from, a.kind) < std::tie(b.from, b.kind);
    });
    return std::move(all_);
}

}  // namespace evenfall::weather

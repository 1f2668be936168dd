// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/finding.h"

#include "core/nearest.h"

#include <algorithm>
#include <array>
#include <utility>

namespace evenfall::audit {
namespace {

constexpr std::array severities{std::pair{Severity::minor, std::string_view{"minor"}},
                                std::pair{Severity::moderate, std::string_view{"moderate"}},
                                std::pair{Severity::severe, std::string_view{"severe"}}};

std::string nearest_key(std::string_view key) {
    std::string best;
    std::size_t least = key.size() + 100;
    for (const FindingKind& k : finding_kinds()) {
        const std::size_t d = letters_apart(key, k.key);
        if (d < least) {
            least = d;
            best = k.key;
        }
    }
    return best;
}

FindingKind kind_of(const reference::Row& row) {
    return {std::string(row.text("finding")), std::string(row.text("name")),
            std::string(row.text("look_for")), std::string(row.text("remedy")),
            std::string(row.text("caution"))};
}

}  // namespace

std::string_view text_of(Severity severity) {
    for (const auto& [s, name] : severities) {
        if (s == severity) return name;
    }
    return "";
}

std::optional<Severity> severity_named(std::string_view name) {
    for (const auto& [s, known] : severities) {
        if (known == name) return s;
    }
    return std::nullopt;
}

std::vector<FindingKind> finding_kinds() {
    std::vector<FindingKind> kinds;
    for (const auto& row : reference::Table::named("findings.csv").rows()) kinds.push_back(kind_of(row));
    return kinds;
}

std::optional<FindingKind> finding_kind(std::string_view key) {
    const auto* row = reference::Table::named("findings.csv").find("finding", key);
    if (row == nullptr) return std::nullopt;
    return kind_of(*row);
}

std::vector<Issue> check(std::span<const Finding> findings, const std::string& file) {
    std::vector<Issue> issues;
    for (const Finding& f : findings) {
        if (!finding_kind(f.kind)) {
            issues.push_back({{file, f.row, "finding"},
                              f.kind,
                              {phrase("audit", "a finding from the list; the nearest is %1"), nearest_key(f.kind)}});
        }
        if (f.count < 1) {
            issues.push_back({{file, f.row, "count"}, f.count, phrase("audit", "a count of one or more")});
        }
    }
    return issues;
}

std::vector<FindingSummary> summarise(std::span<const Finding> findings, const std::string& file) {
    if (auto issues = check(findings, file); !issues.empty()) throw InputError(std::move(issues));
    std::vector<FindingSummary> summary;
    for (const Finding& f : findings) {
        auto it = std::find_if(summary.begin(), summary.end(),
                               [&](const FindingSummary& s) { return s.kind.key == f.kind; });
        if (it == summary.end()) {
            summary.push_back({*finding_kind(f.kind), 0, 0, Severity::minor, {}});
            it = summary.end() - 1;
        }
        it->count += f.count;
        if (f.corrected) it->corrected += f.count;
        it->worst = std::max(it->worst, f.severity);
        if (!f.place.empty()) it->places.push_back(f.place);
    }
    std::stable_sort(summary.begin(), summary.end(), [](const auto& a, const auto& b) {
        return a.worst != b.worst ? a.worst > b.worst : a.count > b.count;
    });
    return summary;
}

}  // namespace evenfall::audit

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/finding.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <utility>

namespace evenfall::audit {
namespace {

constexpr std::array severities{std::pair{Severity::minor, std::string_view{"minor"}},
                                std::pair{Severity::moderate, std::string_view{"moderate"}},
                                std::pair{Severity::severe, std::string_view{"severe"}}};

/// Insertions, deletions and changes of one letter between two words.
std::size_t letters_apart(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({row[j] + 1, row[j - 1] + 1, change});
        }
    }
    return row.back();
}

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
            issues.push_back({{file, f.row, "finding"}, f.kind,
                              "a finding from the list; the nearest is " + nearest_key(f.kind)});
        }
        if (f.count < 1) {
            issues.push_back({{file, f.row, "count"}, std::to_string(f.count), "a count of one or more"});
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

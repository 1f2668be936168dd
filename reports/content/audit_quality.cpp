// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/audit_quality.h"

namespace evenfall::reports {
namespace {

std::string with_mark(const std::string& source, reference::Mark mark) {
    return source + " [" + std::string(reference::text_of(mark)) + "]";
}

std::string row_key(const Table& t) { return std::to_string(t.rows.size() + 1); }

Table rules(const audit::TestAnalysis& a, const std::string& key) {
    Table t{key + "_rules",
            "Was the test fit to be relied on",
            "Rules of others about how a test is done; what was not written down is not recorded.",
            {{"rule", "Rule", {}, true},
             {"outcome", "Outcome", {}, true},
             {"observed", "Observed", {1, ""}},
             {"unit", "Unit", {}, true},
             {"source", "Source", {}, true}},
            {}};
    for (const auto& r : a.rules) {
        t.add(row_key(t), {text(r.says), text(std::string(audit::text_of(r.outcome))),
                           r.observed ? number(*r.observed) : text(""), text(r.unit),
                           text(with_mark(r.source, r.mark))});
    }
    return t;
}

Table dry_spots(const audit::TestAnalysis& a, const std::string& key, const Shown& shown) {
    Table t{key + "_dry_spots",
            "The driest places",
            "Scheduling coefficient: mean depth over that of the place.",
            {{"spot", "Place", {}, true},
             {"where", "Where", {}, true},
             {"share", "Of the ground", {1, "", true}},
             {"depth", "Depth there", shown.depth_format()},
             {"coefficient", "Scheduling coefficient", {3, ""}},
             {"how", "How it was found", {}, true}},
            {}};
    for (const auto& s : a.scheduling) {
        Cell share = text(""), coefficient = text("stayed dry");
        if (s.window_share) share = number(*s.window_share);
        if (s.value) coefficient = number(s.value->value());
        t.add(row_key(t), {text(std::string(audit::text_of(s.spot))), text(s.where), share,
                           number(shown.depth(s.spot_mean)), coefficient, text(s.how)});
    }
    return t;
}

Table rating_table(const audit::TestAnalysis& a, const std::string& key) {
    Table t{key + "_ratings",
            "What the figures are called",
            "Each source by its own bands; they disagree, and no verdict is formed here.",
            {{"figure", "Figure", {}, true},
             {"percent", "Value", {1, "%"}},
             {"rating", "Rating", {}, true},
             {"heads", "For", {}, true},
             {"system", "Bands of", {}, true},
             {"source", "Source", {}, true}},
            {}};
    for (const auto& r : a.ratings) {
        t.add(row_key(t), {text(r.figure), number(r.percent), text(r.rating), text(r.heads),
                           text(r.system), text(with_mark(r.source, r.mark))});
    }
    return t;
}

}  // namespace

std::vector<Table> quality_tables(const audit::TestAnalysis& analysis, const std::string& key,
                                  const Shown& shown) {
    std::vector<Table> out;
    for (Table& t : std::vector<Table>{rules(analysis, key), dry_spots(analysis, key, shown),
                                       rating_table(analysis, key)}) {
        if (!t.rows.empty()) out.push_back(std::move(t));
    }
    return out;
}

}  // namespace evenfall::reports

// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/audit_report.h"

#include "reports/content/audit_section.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::reports {
namespace {

std::string fixed(double value, int decimals) { return units::format_fixed(value, decimals); }

const AuditedTest* worst_of(const std::vector<AuditedTest>& tests) {
    const AuditedTest* worst = nullptr;
    for (const auto& t : tests) {
        if (t.result && (worst == nullptr || t.result->du_lq < worst->result->du_lq)) worst = &t;
    }
    return worst;
}

Table overview(const std::vector<AuditedTest>& tests, const Shown& shown) {
    Table t{"tests",
            "The tests at a glance",
            "",
            {{"test", "Test", {}, true},
             {"area", "Area", {}, true},
             {"date", "Date", {}, true},
             {"cans", "Cans", {}},
             {"mean", "Mean depth", shown.depth_format()},
             {"du_lq", "DU_LQ", {3, ""}},
             {"du_lh", "DU_LH", {3, ""}},
             {"cu", "CU", {3, ""}},
             {"net_rate", "Net rate", shown.rate_format()},
             {"multiplier", "Multiplier, low half", {3, ""}}},
            {}};
    for (std::size_t i = 0; i < tests.size(); ++i) {
        const AuditedTest& a = tests[i];
        const std::string key = "t" + std::to_string(i + 1) + "_";
        const auto from = [&](const char* name, std::optional<double> value) {
            return computed(value, "{=" + key + name + "}");
        };
        std::vector<Cell> cells{text(a.test.code), text(a.area_name),
                                text(calendar::format_date(a.test.date))};
        if (a.result) {
            const auto& r = *a.result;
            const auto rate = r.net_rate ? std::optional(shown.rate(*r.net_rate)) : std::nullopt;
            const auto low = a.multipliers->low_half
                                 ? std::optional(a.multipliers->low_half->value())
                                 : std::nullopt;
            for (Cell cell : {from("cans_counted", static_cast<double>(r.cans)),
                              from("mean_depth", shown.depth(r.mean)), from("du_lq", r.du_lq.value()),
                              from("du_lh", r.du_lh.value()), from("uniformity_cu", r.cu.value()),
                              from("net_rate", rate), from("multiplier_low_half", low)}) {
                cells.push_back(std::move(cell));
            }
        } else {
            cells.resize(t.columns.size());
        }
        t.add(std::to_string(i + 1), std::move(cells));
    }
    return t;
}

void sentences(const std::vector<AuditedTest>& tests, const Frame& frame, Answer& answer) {
    const auto good = std::count_if(tests.begin(), tests.end(),
                                    [](const AuditedTest& t) { return t.result.has_value(); });
    if (tests.empty()) {
        answer.sentences.push_back("No catch test is recorded here, so nothing can be said about how "
                                   "evenly the water falls.");
        return;
    }
    answer.sentences.push_back(std::to_string(good) + " of " + std::to_string(tests.size()) +
                               (tests.size() == 1 ? " test" : " tests") + " could be worked out.");
    const AuditedTest* worst = worst_of(tests);
    std::size_t told = 0;
    for (const auto& t : tests) {
        if (!t.result && ++told <= 3) {
            answer.sentences.push_back("Test " + t.test.code + " (" + t.area_name + ") could not: " + t.problem + ".");
        }
    }
    if (worst == nullptr) return;
    const auto& r = *worst->result;
    const std::string name = tests.size() == 1 ? "The area" : "The least even area";
    answer.sentences.push_back(
        name + " is " + worst->area_name + " (test " + worst->test.code + ", " +
        calendar::format_date(worst->test.date) + "): its driest quarter got " +
        percent(r.du_lq.value()) + " of the mean of " + both(r.mean, frame.units) +
        " (DU_LQ " + fixed(r.du_lq.value(), 3) + ", CU " + fixed(r.cu.value(), 3) + ").");
    if (worst->interval) {
        answer.sentences.push_back("With so many cans DU_LQ may lie anywhere from " +
                                   fixed(worst->interval->low, 3) + " to " +
                                   fixed(worst->interval->high, 3) + " (" +
                                   worst->interval->method + ").");
    }
    if (worst->multipliers->low_half) {
        answer.sentences.push_back("To water the drier half of it enough, it has to run " +
                                   fixed(worst->multipliers->low_half->value(), 2) +
                                   " times as long as perfectly even ground would need.");
    }
    if (r.net_rate) {
        answer.sentences.push_back("It is watered at " + both(*r.net_rate, frame.units) + ".");
    }
}

/// What the analysis of one test says to do first.
std::vector<Fix> fixes_from_advice(const audit::TestAnalysis& analysis) {
    std::vector<Fix> fixes;
    for (const auto& sentence : audit::advice(analysis)) {
        if (fixes.size() == 3) break;
        fixes.push_back({sentence, "From the figures, pressures and findings of this test.",
                         unknown(), unknown()});
    }
    return fixes;
}

/// Without a season the worth is not known: the fixes then say where to look.
std::vector<Fix> fixes_from_tests(const std::vector<AuditedTest>& tests) {
    std::vector<const AuditedTest*> order;
    for (const auto& t : tests) {
        if (t.result) order.push_back(&t);
    }
    std::stable_sort(order.begin(), order.end(), [](const AuditedTest* a, const AuditedTest* b) {
        return a->result->du_lq < b->result->du_lq;
    });
    if (order.size() > 3) order.resize(3);
    std::vector<Fix> fixes;
    for (const AuditedTest* t : order) {
        const auto& r = *t->result;
        fixes.push_back({"Water " + t->area_name + " more evenly",
                         "DU_LQ is " + fixed(r.du_lq.value(), 3) +
                             ". Look at the driest cans on the map first: pressure, worn or mixed "
                             "nozzles, sunken or leaning heads, spacing. What this is worth takes "
                             "meter readings: see the season report.",
                         unknown(), unknown()});
    }
    return fixes;
}

std::vector<Note> notes_of(const std::vector<AuditedTest>& tests) {
    std::vector<Note> notes;
    const AuditedTest* any = worst_of(tests);
    if (any == nullptr) return notes;
    const std::string rule(audit::text_of(any->result->quarter_rule));
    notes.push_back({"DU_LQ", "mean of the driest quarter of the catches over their mean",
                     "low quarter by the rule " + rule +
                         "; published methods do not agree on quarters that end inside a can",
                     "Irrigation Association landscape auditor worksheet (ratio form)", false});
    notes.push_back({"DU_LH", "mean of the drier half over the mean", "exactly half; the middle can "
                     "counts in part", "Irrigation Association (ratio form)", false});
    notes.push_back({"CU", "Christiansen's coefficient, or Heermann and Hein's with weights",
                     std::string(any->result->weights.english()), "Zoldoske & Solomon 1988; Heermann & Hein 1968",
                     false});
    notes.push_back({"Run-time multiplier",
                     "1 / DU_LH from the cans, the linear form and the upper "
                     "bound beside it",
                     "the low-half form is the one used", any->multipliers->linear_source.english(), false});
    notes.push_back({"Net application rate", "mean depth over run time",
                     "only where the sprinklers stand still", "by definition", false});
    if (any->interval) {
        notes.push_back({"Interval of DU_LQ", any->interval->method, "two-sided", "resampling of the "
                         "cans", false});
    }
    return notes;
}

void gaps_of(const std::vector<AuditedTest>& tests, Report& report) {
    if (tests.empty()) report.gaps.push_back("No catch test is recorded.");
    for (const auto& t : tests) {
        const std::string who = "Test " + t.test.code + ": ";
        if (!t.result) report.gaps.push_back(who + t.problem + ".");
        if (!t.test.minutes) report.gaps.push_back(who + "no run time is recorded, so no rate.");
        if (!t.test.wind) report.gaps.push_back(who + "no wind is recorded.");
        std::size_t left_out = 0;
        for (const auto& c : t.test.catches) left_out += c.excluded.empty() ? 0U : 1U;
        if (left_out > 0) {
            report.gaps.push_back(who + std::to_string(left_out) + " of " +
                                  std::to_string(t.test.catches.size()) +
                                  " cans are left out, each with its reason in the table.");
        }
    }
}

}  // namespace

AuditedTest audited(const audit::CatchTest& test, std::string area_name, audit::QuarterRule rule) {
    AuditedTest out;
    out.test = test;
    out.area_name = std::move(area_name);
    try {
        out.analysis = audit::analyse_test(test, audit::usual_analysis(rule));
        const audit::TestAnalysis& a = *out.analysis;
        out.sample = a.sample;
        out.result = a.figures;
        out.multipliers = a.multipliers;
        if (const auto& du = a.widened.du_lq) {
            out.interval = DuInterval{du->low, du->high,
                                      percent(du->level, 0) + " BCa interval, widened for few cans; " +
                                          std::to_string(a.resamples) + " resamples, seed " +
                                          std::to_string(a.seed)};
        }
    } catch (const InputError& e) {
        for (const Issue& issue : e.issues()) {
            if (!out.problem.empty()) out.problem += "; ";
            out.problem += issue.text();
        }
    }
    return out;
}

Report audit_report(const std::vector<AuditedTest>& tests, const std::string& place,
                    const std::vector<Fix>& fixes, const Frame& frame) {
    const Shown shown(frame.units);
    Report report = framed("audit", "Catch test report", place, frame);
    sentences(tests, frame, report.answer);
    if (!tests.empty()) report.answer.figures = overview(tests, shown);
    report.answer.fixes = fixes;
    if (fixes.empty() && tests.size() == 1 && tests.front().analysis) {
        report.answer.fixes = fixes_from_advice(*tests.front().analysis);
    }
    if (report.answer.fixes.empty()) report.answer.fixes = fixes_from_tests(tests);
    for (std::size_t i = 0; i < tests.size(); ++i) {
        for (auto& section : audit_sections(tests[i], "t" + std::to_string(i + 1), shown)) {
            report.sections.push_back(std::move(section));
        }
    }
    report.notes = notes_of(tests);
    gaps_of(tests, report);
    return report;
}

}  // namespace evenfall::reports

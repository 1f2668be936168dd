// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/plans.h"

#include "app/workflow/moment.h"
#include "core/exchange/plain_files.h"
#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/plan/matched.h"
#include "core/store/journal_store.h"
#include "core/store/plan_store.h"

#include <filesystem>

namespace evenfall::workflow {

NamedPlan plan_named(const store::Book& book, const std::string& code_or_file) {
    if (const auto stored = store::find_plan(book, code_or_file)) return {stored->code, stored->plan};
    const std::filesystem::path path(code_or_file);
    if (!std::filesystem::exists(path)) {
        throw InputError(printable(code_or_file), phrase("workflow", "the code of a plan in the book, or a plan file"));
    }
    return {path.stem().string(), exchange::read_plan(path)};
}

int keep_plan(store::Book& book, const plan::Plan& plan, const std::string& site, const std::string& code,
              const std::string& who) {
    store::Transaction all(book);
    const int revision = store::add_plan(book, code, site, plan, std::nullopt);
    store::add_journal_entry(book, {present_moment(), who.empty() ? present_user() : who,
                                    "kept a design plan of " + std::to_string(plan.heads.size()) + " heads, revision " +
                                        std::to_string(revision),
                                    "plan " + code, ""});
    all.commit();
    return revision;
}

audit::CatchTest catch_test_in(const std::string& file, const std::string& test) {
    auto read = exchange::read_catches(file);
    std::string codes;
    for (auto& one : read.tests) {
        if (test.empty() ? read.tests.size() == 1 : one.code == test) return std::move(one);
        codes += (codes.empty() ? "" : ", ") + one.code;
    }
    const Sentence found = test.empty() ? Sentence(phrase("workflow", "%1 tests in %2"), read.tests.size(), printable(file)) : Sentence(printable(test));
    throw InputError(found, {phrase("workflow", "one of the tests %1"), printable(codes, 400)});
}

units::Depth difference_at(const plan::PlanAgainstAudit& audit, const plan::CanComparison& can) {
    return can.caught - audit.common_output * can.predicted;
}

Fell fell_at(const plan::PlanAgainstAudit& audit, const plan::CanComparison& can) {
    const double share = difference_at(audit, can) / audit.mean_caught;
    if (share < plan::plan_limit("island_dry") - 1.0) return Fell::drier;
    if (share > plan::plan_limit("island_wet") - 1.0) return Fell::wetter;
    return Fell::as_designed;
}

}  // namespace evenfall::workflow

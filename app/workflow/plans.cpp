// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/plans.h"

#include "app/workflow/moment.h"
#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/store/journal_store.h"
#include "core/store/plan_store.h"

#include <filesystem>

namespace evenfall::workflow {

NamedPlan plan_named(const store::Book& book, const std::string& code_or_file) {
    if (const auto stored = store::find_plan(book, code_or_file)) return {stored->code, stored->plan};
    const std::filesystem::path path(code_or_file);
    if (!std::filesystem::exists(path)) {
        throw InputError(printable(code_or_file), "the code of a plan in the book, or a plan file");
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

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/review_book.h"

#include "app/workflow/review_batch.h"
#include "app/workflow/review_desk.h"
#include "core/exchange/filing_json.h"
#include "core/input_error.h"
#include "core/review/application.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"

#include <utility>

namespace evenfall::workflow {
namespace {

/// The filings of an application together, as its officer sees them.
StoredReview review_of_application(const store::Book& book, const ReviewQuestion& question) {
    KnownPrograms known;
    if (!question.program.empty()) known.push_back(rebate_named(question.program));
    ReviewedCase found = review_case(book, question.application, known);
    if (!known.empty() && found.application.program != known.front().name) {
        throw InputError(printable(question.program), {phrase("workflow", "the program that application %1 is for, %2"),
                                                       printable(question.application), printable(found.application.program)});
    }
    if (!found.review) {
        throw InputError({phrase("workflow", "application %1"), printable(question.application)},
                         {phrase("workflow", "one that can be worked out: %1"), found.problem});
    }
    return {question.application, *std::move(found.review), std::move(found.program)};
}

}  // namespace

store::StoredFiling filing_named(const store::Book& book, const std::string& name) {
    if (auto stored = store::find_filing(book, name)) return *std::move(stored);
    std::string sha256;
    for (const store::StoredFiling& f : store::filings(book)) {
        if (f.code != name) continue;
        if (!sha256.empty()) {
            throw InputError(printable(name), phrase("workflow", "the SHA-256 of the filing: several in the book have that code"));
        }
        sha256 = f.sha256;
    }
    if (sha256.empty()) throw InputError(printable(name), phrase("workflow", "the code or SHA-256 of a filing in the book"));
    return *store::find_filing(book, sha256);
}

StoredReview review_in_book(const store::Book& book, const ReviewQuestion& question) {
    if (!question.application.empty()) return review_of_application(book, question);
    const store::StoredFiling stored = filing_named(book, question.filing);
    const review::Filing filing = exchange::read_filing_json(stored.json, "filing " + stored.code);
    StoredReview out;
    out.name = filing.code;
    std::optional<double> budget_left;
    if (!question.program.empty()) {
        out.program = rebate_named(question.program);
        budget_left = review::budget_left(out.program->budget, store::applications(book, out.program->name));
    }
    out.review = review::review_filing(filing, stored.sha256, !stored.key.empty(), out.program ? &*out.program : nullptr, budget_left);
    ask_about_earlier(out.review, traced_fingerprints(filing), book);
    return out;
}

}  // namespace evenfall::workflow

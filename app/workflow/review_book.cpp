// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/review_book.h"

#include "app/workflow/review_batch.h"
#include "core/exchange/filing_json.h"
#include "core/input_error.h"
#include "core/review/application.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"

#include <vector>

namespace evenfall::workflow {
namespace {

std::vector<store::StoredFiling> filings_of(const store::Book& book, const review::Application& application) {
    std::vector<store::StoredFiling> all;
    for (const review::ApplicationFiling& f : application.filings) {
        auto stored = store::find_filing(book, f.sha256);
        if (!stored) throw InputError("filing " + f.sha256, "a filing in the book");
        all.push_back(*std::move(stored));
    }
    if (all.empty()) throw InputError("application " + application.code, "an application with a filing");
    return all;
}

/// By its SHA-256, or by its code where one filing only has it.
store::StoredFiling filing_named(const store::Book& book, const std::string& name) {
    if (auto stored = store::find_filing(book, name)) return *std::move(stored);
    std::string sha256;
    for (const store::StoredFiling& f : store::filings(book)) {
        if (f.code != name) continue;
        if (!sha256.empty()) {
            throw InputError(printable(name), "the SHA-256 of the filing: several in the book have that code");
        }
        sha256 = f.sha256;
    }
    if (sha256.empty()) throw InputError(printable(name), "the code or SHA-256 of a filing in the book");
    return *store::find_filing(book, sha256);
}

}  // namespace

StoredReview review_in_book(const store::Book& book, const ReviewQuestion& question) {
    std::string program_name = question.program;
    std::vector<store::StoredFiling> stored;
    if (!question.application.empty()) {
        const auto application = store::find_application(book, question.application);
        if (!application) throw InputError(printable(question.application), "the number of an application in the book");
        if (program_name.empty()) program_name = application->program;
        stored = filings_of(book, *application);
    } else {
        stored.push_back(filing_named(book, question.filing));
    }
    StoredReview out;
    if (!program_name.empty()) out.program = rebate_named(program_name);
    std::vector<review::Filing> filings;
    std::string sha256;
    bool is_signed = true;
    for (const store::StoredFiling& s : stored) {
        filings.push_back(exchange::read_filing_json(s.json, "filing " + s.code));
        sha256 += (sha256.empty() ? "" : " + ") + s.sha256;
        is_signed = is_signed && !s.key.empty();
    }
    const review::Filing all = filings.size() == 1 ? filings.front() : review::together(filings);
    std::optional<double> budget_left;
    if (out.program) {
        budget_left = review::budget_left(out.program->budget, store::applications(book, out.program->name));
    }
    out.review = review::review_filing(all, sha256, is_signed, out.program ? &*out.program : nullptr, budget_left);
    ask_about_earlier(out.review, traced_fingerprints(all), book);
    out.name = question.application.empty() ? all.code : question.application;
    return out;
}

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/review_desk.h"

#include "app/workflow/error_sentence.h"
#include "app/workflow/review_batch.h"
#include "app/workflow/whole_file.h"
#include "core/exchange/filing_json.h"
#include "core/review/question.h"
#include "core/sentences.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"
#include "core/units/number.h"
#include "reports/content/review_report.h"

#include <algorithm>
#include <cmath>

namespace evenfall::workflow {
namespace {

using review::Application;
using review::Status;

std::optional<review::RebateProgram> program_of(const Application& a, const KnownPrograms& known) {
    for (const auto& program : known) {
        if (program.name == a.program) return program;
    }
    const auto names = review::built_in_rebate_names();
    if (std::find(names.begin(), names.end(), a.program) == names.end()) return std::nullopt;
    return review::built_in_rebate(a.program);
}

struct Frozen {
    review::Filing filing;
    std::string sha256;
    bool is_signed = false;
};

Frozen frozen(const store::Book& book, const std::string& sha256) {
    const auto stored = store::find_filing(book, sha256);
    if (!stored) throw store::BookError({phrase("workflow", "There is no filing %1 in the book."), sha256});
    return {exchange::read_filing_json(stored->json, stored->code), sha256, !stored->key.empty()};
}

/// All filings as one case, or the newest of them with a word about it.
Frozen case_of(const store::Book& book, const Application& a, Sentence& problem) {
    std::vector<review::Filing> filings;
    Frozen all;
    all.is_signed = true;
    for (const auto& f : a.filings) {
        Frozen one = frozen(book, f.sha256);
        all.sha256 += (all.sha256.empty() ? "" : " + ") + one.sha256;
        all.is_signed = all.is_signed && one.is_signed;
        filings.push_back(std::move(one.filing));
    }
    if (filings.empty()) throw InputError({phrase("workflow", "application %1 without a filing"), a.code}, phrase("workflow", "a filing of the applicant"));
    if (filings.size() == 1) {
        all.filing = std::move(filings.front());
        return all;
    }
    try {
        all.filing = review::together(filings);
        return all;
    } catch (const InputError& e) {
        problem = {phrase("workflow", "Its filings contradict each other, so the newest stands alone: %1"), sentence_of(e)};
        return frozen(book, a.filings.back().sha256);
    }
}

/// Asks about every fingerprint that stands in a filing of another application too.
void ask_about_shared(const store::Book& book, const Application& a, const review::Filing& filing, review::Review& review) {
    for (const review::Fingerprint& p : traced_fingerprints(filing)) {
        for (const auto& [code, sha256] : store::filings_with(book, {p.kind, p.key})) {
            const bool own = code == filing.code ||
                             std::any_of(a.filings.begin(), a.filings.end(), [&](const auto& f) { return f.sha256 == sha256; });
            if (own) continue;
            review.questions.push_back(review::shared_with(p, code));
            break;
        }
    }
}

ReviewedCase worked_out(const store::Book& book, Application a, const KnownPrograms& known) {
    ReviewedCase c;
    c.application = std::move(a);
    try {
        c.program = program_of(c.application, known);
        if (!c.program) {
            c.problem = c.application.program.empty()
                            ? Sentence(phrase("workflow", "It names no program, so only figures are checked."))
                            : Sentence(phrase("workflow", "The program %1 is not known here, so only figures are checked."), printable(c.application.program));
        }
        Frozen f = case_of(book, c.application, c.problem);
        std::optional<double> left;
        if (c.program) left = review::budget_left(c.program->budget, store::applications(book, c.program->name));
        c.review = review::review_filing(f.filing, f.sha256, f.is_signed, c.program ? &*c.program : nullptr, left);
        ask_about_shared(book, c.application, f.filing, *c.review);
        c.filing = std::move(f.filing);
    } catch (const std::exception& e) {
        // Whatever it is, it is about this one case; the others can still be worked on.
        c.review.reset();
        c.problem = error_sentence(e);
    }
    return c;
}

double weight(const ReviewedCase& c) {
    if (!c.review) return 0.0;
    return c.review->risk() * std::max(1.0, c.review->payment ? c.review->payment->total : 0.0);
}

double asked_for(const ReviewedCase& c) { return c.review && c.review->payment ? c.review->payment->total : 0.0; }

calendar::Instant since(const ReviewedCase& c) {
    return c.application.history.empty() ? calendar::Instant{} : c.application.history.back().at;
}

bool comes_first(const ReviewedCase& a, const ReviewedCase& b) {
    const bool open = waits_for_decision(a.application.status());
    if (open != waits_for_decision(b.application.status())) return open;
    if (!open) return since(a) > since(b);
    if (weight(a) != weight(b)) return weight(a) > weight(b);
    return asked_for(a) > asked_for(b);
}

review::Decision decision_of(Status status) {
    switch (status) {
        case Status::approved:
        case Status::paid: return review::Decision::approve;
        case Status::declined: return review::Decision::decline;
        case Status::incomplete: return review::Decision::send_more;
        case Status::received:
        case Status::under_review: break;
    }
    return review::Decision::none;
}

bool blank(const std::string& text) { return text.find_first_not_of(" \t\r\n") == std::string::npos; }

void check(const OfficerDecision& d) {
    if (needs_reason(d.says) && blank(d.reason)) {
        throw InputError(phrase("workflow", "a decision without a reason"), phrase("workflow", "the reason, for the applicant and the journal"));
    }
    if (blank(d.who)) throw InputError(phrase("workflow", "a decision by nobody"), phrase("workflow", "the name of whoever decides"));
    if (needs_amount(d.says) != d.amount.has_value()) {
        throw InputError(d.amount ? phrase("workflow", "an amount") : phrase("workflow", "a decision about money without an amount"),
                         phrase("workflow", "an amount with an approval or a payment, and only there"));
    }
    if (d.amount && (!std::isfinite(*d.amount) || *d.amount < 0.0)) {
        throw InputError(units::format_shortest(*d.amount), phrase("workflow", "an amount of money, not below zero"));
    }
}

}  // namespace

bool waits_for_decision(Status status) {
    return status == Status::received || status == Status::incomplete || status == Status::under_review;
}

ReviewedCase review_case(const store::Book& book, const std::string& application, const KnownPrograms& known) {
    auto found = store::find_application(book, application);
    if (!found) throw InputError(printable(application), phrase("workflow", "the number of an application in the book"));
    return worked_out(book, *std::move(found), known);
}

ReviewedCase filing_case(const store::Book& book, const std::string& sha256, const KnownPrograms& known) {
    const auto stored = store::find_filing(book, sha256);
    if (!stored) throw InputError(printable(sha256), phrase("workflow", "the SHA-256 of a filing in the book"));
    Application a;
    a.site = stored->site;
    a.filings.push_back({sha256, "both"});
    try {
        const auto filing = exchange::read_filing_json(stored->json, stored->code);
        a.applicant = filing.applicant.name;
        a.program = filing.request.program;
        if (const auto program = program_of(a, known)) a.currency = program->currency;
    } catch (const InputError&) {
        // Working it out says what is wrong with it.
    }
    return worked_out(book, std::move(a), known);
}

std::vector<ReviewedCase> review_queue(const store::Book& book, const KnownPrograms& known,
                                       const std::function<void(std::size_t, std::size_t)>& progress) {
    std::vector<ReviewedCase> queue;
    auto all = store::applications(book, "");
    for (Application& a : all) {
        queue.push_back(worked_out(book, std::move(a), known));
        queue.back().filing.reset();
        if (progress) progress(queue.size(), all.size());
    }
    std::stable_sort(queue.begin(), queue.end(), comes_first);
    return queue;
}

Status status_after(OfficerSays says) {
    switch (says) {
        case OfficerSays::approve: return Status::approved;
        case OfficerSays::decline: return Status::declined;
        case OfficerSays::send_more: return Status::incomplete;
        case OfficerSays::put_back: return Status::received;
        case OfficerSays::pay: return Status::paid;
        case OfficerSays::open_again:
        case OfficerSays::take_up: break;
    }
    return Status::under_review;
}

bool needs_reason(OfficerSays says) {
    return says == OfficerSays::approve || says == OfficerSays::decline || says == OfficerSays::send_more ||
           says == OfficerSays::open_again;
}

bool needs_amount(OfficerSays says) { return says == OfficerSays::approve || says == OfficerSays::pay; }

bool can_decide(Status now, OfficerSays says) {
    const Status wanted = status_after(says);
    switch (says) {
        case OfficerSays::open_again:
        case OfficerSays::pay: return !waits_for_decision(now) && review::may_follow(now, wanted);
        case OfficerSays::take_up:
        case OfficerSays::put_back: return waits_for_decision(now) && review::may_follow(now, wanted);
        case OfficerSays::approve:
        case OfficerSays::decline:
        case OfficerSays::send_more: break;
    }
    if (!waits_for_decision(now)) return false;
    return review::may_follow(now, wanted) ||
           (review::may_follow(now, Status::under_review) && review::may_follow(Status::under_review, wanted));
}

Application decide(store::Book& book, const OfficerDecision& d) {
    check(d);
    const auto at = calendar::parse_instant(d.at);
    if (!at) throw InputError(printable(d.at), phrase("workflow", "an instant such as 2024-06-30T12:00:00Z"));
    store::Transaction all(book);
    const auto known = store::find_application(book, d.application);
    if (!known) throw store::BookError({phrase("workflow", "There is no application %1 in the book."), d.application});
    if (!can_decide(known->status(), d.says)) {
        throw store::BookError({phrase("workflow", "Application %1 is %2; it cannot be made %3."), d.application,
                                review::text_of(known->status()), review::text_of(status_after(d.says))});
    }
    if (!review::may_follow(known->status(), status_after(d.says))) {
        store::add_status(book, d.application, {*at, d.who, Status::under_review, std::string(phrase("Core", "Taken up again.").english()), {}});
    }
    store::add_status(book, d.application, {*at, d.who, status_after(d.says), d.reason, d.amount});
    all.commit();
    return *store::find_application(book, d.application);
}

Application record_status(store::Book& book, const std::string& application, const review::StatusChange& change) {
    store::Transaction all(book);
    store::add_status(book, application, change);
    all.commit();
    return *store::find_application(book, application);
}

std::string case_letter(const ReviewedCase& c) {
    review::Review r = *c.review;
    const review::RebateProgram* program = c.program ? &*c.program : nullptr;
    const auto decided = decision_of(c.application.status());
    if (decided == review::Decision::none) return review::letter(r, program);
    const review::StatusChange& last = c.application.history.back();
    // Where the officer decides otherwise than the rules come out, the letter must not say that the
    // rules led there: it keeps the figures and states the decision.
    const bool as_the_rules = decided == r.decision;
    if (!as_the_rules) r.decision = review::Decision::none;
    if (as_the_rules && r.payment && last.amount) r.payment->total = *last.amount;
    std::string text = review::letter(r, program);
    text += "\nDecided on " + calendar::format_instant(last.at).substr(0, 10) + " by " + printable(last.who, 200) + ": " +
            std::string(review::text_of(c.application.status()).english()) + ".\n";
    if (last.amount) text += "Amount: " + units::format_grouped(*last.amount, 2) + " " + c.application.currency + "\n";
    if (!last.note.empty()) text += "Reason: " + printable(last.note, 4000) + "\n";
    return text;
}

std::vector<std::filesystem::path> write_review_papers(const review::Review& review, const std::string& letter,
                                                       const ReviewPapers& papers) {
    const std::string name = file_name_of(review.filing);
    const reports::Frame frame{papers.units, "", papers.created, papers.software, {}};
    auto files = write_report(reports::review_report(review, frame),
                              {papers.formats, papers.directory, "review-" + name, "letter", papers.print_program});
    files.push_back(papers.directory / ("letter-" + name + ".txt"));
    write_whole_file(files.back(), letter);
    return files;
}

}  // namespace evenfall::workflow

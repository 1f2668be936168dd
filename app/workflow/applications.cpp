// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/applications.h"

#include "app/workflow/review_batch.h"
#include "app/workflow/review_book.h"
#include "core/exchange/filing_json.h"
#include "core/input_error.h"
#include "core/sentence.h"
#include "core/store/application_store.h"

#include <algorithm>
#include <utility>

namespace evenfall::workflow {
namespace {

using review::Application;

std::string trimmed(const std::string& text) {
    static constexpr const char* blanks = " \t\r\n";
    const auto first = text.find_first_not_of(blanks);
    return first == std::string::npos ? std::string() : text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

/// A word that stands alone on a line wherever it is shown.
std::string required(const std::string& text, Phrase missing, Phrase expected) {
    std::string word = trimmed(text);
    if (word.empty()) throw InputError(missing, expected);
    if (printable(word, word.size()) != word) throw InputError(printable(word), expected);
    return word;
}

calendar::Instant moment(const std::string& at) {
    const auto when = calendar::parse_instant(at);
    if (!when) throw InputError(printable(at), phrase("workflow", "an instant such as 2024-06-30T12:00:00Z"));
    return *when;
}

Application application_named(const store::Book& book, const std::string& number) {
    auto found = store::find_application(book, number);
    if (!found) throw InputError(printable(number), phrase("workflow", "the number of an application in the book"));
    return *std::move(found);
}

/// Must be free, and of that site where one is given.
void require_free(const store::Book& book, const store::StoredFiling& filing, const std::string& site) {
    const auto taken = store::applications_with_filing(book, filing.sha256);
    if (!taken.empty()) {
        throw InputError({phrase("workflow", "filing %1 of application %2"), printable(filing.code), printable(taken.front())},
                         phrase("workflow", "a filing that belongs to no application"));
    }
    if (filing.site != site) {
        throw InputError({phrase("workflow", "filing %1 of site %2"), printable(filing.code), printable(filing.site)},
                         {phrase("workflow", "a filing of the application's site, %1"), printable(site)});
    }
}

review::Filing read(const store::StoredFiling& stored) { return exchange::read_filing_json(stored.json, stored.code); }

/// Received on that day: at the moment itself when it is written down on the same day.
calendar::Instant received_at(const OpenedByHand& opened, calendar::Instant now) {
    const auto today = calendar::parse_date(calendar::format_instant(now).substr(0, 10));
    if (today && opened.received > *today) {
        throw InputError(calendar::format_date(opened.received), {phrase("workflow", "a day that is not after %1"), calendar::format_date(*today)});
    }
    if (today && opened.received == *today) return now;
    return moment(calendar::format_date(opened.received) + "T00:00:00Z");
}

/// As filings that carry its number would leave it.
void review_at_once(store::Book& book, const Application& a, const review::RebateProgram& program, calendar::Instant now) {
    const auto c = review_case(book, a.code, {program});
    if (!c.review) return;
    const auto decision = c.review->decision;
    store::add_status(book, a.code,
                      {now, a.history.front().who,
                       decision == review::Decision::send_more ? review::Status::incomplete : review::Status::under_review,
                       note_of(decision), {}});
}

WaitingFiling worked_out(const store::Book& book, store::StoredFiling stored, const KnownPrograms& known) {
    WaitingFiling out;
    out.reviewed = filing_case(book, stored.sha256, known);
    stored.json.clear();
    out.filing = std::move(stored);
    return out;
}

}  // namespace

Application open_application(store::Book& book, const OpenedByHand& opened) {
    const std::string who = required(opened.who, phrase("workflow", "an application opened by nobody"), phrase("workflow", "the name of whoever opens it"));
    const calendar::Instant now = moment(opened.at);
    Application a;
    a.code = required(opened.number, phrase("workflow", "an application without a number"), phrase("workflow", "its number, in one line"));
    a.applicant = trimmed(opened.applicant);
    a.site = trimmed(opened.site);
    a.program = opened.program.name;
    a.currency = opened.program.currency;
    store::Transaction all(book);
    if (store::find_application(book, a.code)) throw InputError(printable(a.code), phrase("workflow", "a number that no application in the book has"));
    for (const std::string& name : opened.filings) {
        const auto stored = filing_named(book, name);
        if (a.site.empty()) a.site = stored.site;
        if (a.applicant.empty()) a.applicant = read(stored).applicant.name;
        require_free(book, stored, a.site);
        a.filings.push_back({stored.sha256, "both"});
    }
    required(a.applicant, phrase("workflow", "an application of nobody"), phrase("workflow", "the name of the applicant"));
    required(a.site, phrase("workflow", "an application without a site"), phrase("workflow", "the code of the site"));
    a.history.push_back({received_at(opened, now), who, review::Status::received, trimmed(opened.note), {}});
    store::add_application(book, a, opened.at);
    if (!a.filings.empty()) review_at_once(book, a, opened.program, now);
    all.commit();
    return *store::find_application(book, a.code);
}

Application attach_filings(store::Book& book, const FilingMove& move) {
    const std::string who = required(move.who, phrase("workflow", "a filing moved by nobody"), phrase("workflow", "the name of whoever does it"));
    moment(move.at);
    store::Transaction all(book);
    const Application a = application_named(book, move.application);
    for (const std::string& name : move.filings) {
        const auto stored = filing_named(book, name);
        require_free(book, stored, a.site);
        store::add_application_filing(book, a.code, {stored.sha256, "both"}, move.at, who);
    }
    all.commit();
    return *store::find_application(book, a.code);
}

Application take_out_filings(store::Book& book, const FilingMove& move) {
    const std::string who = required(move.who, phrase("workflow", "a filing moved by nobody"), phrase("workflow", "the name of whoever does it"));
    moment(move.at);
    store::Transaction all(book);
    const Application a = application_named(book, move.application);
    if (!waits_for_decision(a.status())) {
        throw InputError({phrase("workflow", "application %1, which is decided"), printable(a.code)},
                         phrase("workflow", "an application that waits for a decision"));
    }
    for (const std::string& name : move.filings) {
        const auto stored = filing_named(book, name);
        const bool own = std::any_of(a.filings.begin(), a.filings.end(), [&](const auto& f) { return f.sha256 == stored.sha256; });
        if (!own) throw InputError({phrase("workflow", "filing %1"), printable(stored.code)}, {phrase("workflow", "a filing of application %1"), printable(a.code)});
        store::remove_application_filing(book, a.code, stored.sha256, move.at, who);
    }
    all.commit();
    return *store::find_application(book, a.code);
}

WaitingFiling waiting_filing(const store::Book& book, const std::string& sha256, const KnownPrograms& known) {
    return worked_out(book, filing_named(book, sha256), known);
}

std::vector<WaitingFiling> waiting_filings(const store::Book& book, const KnownPrograms& known,
                                           const std::function<void(std::size_t, std::size_t)>& progress) {
    std::vector<WaitingFiling> all;
    auto stored = store::filings_without_application(book);
    for (store::StoredFiling& f : stored) {
        all.push_back(worked_out(book, std::move(f), known));
        all.back().reviewed.filing.reset();
        if (progress) progress(all.size(), stored.size());
    }
    return all;
}

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/applications.h"
#include "app/workflow/moment.h"
#include "app/workflow/review_batch.h"
#include "app/workflow/review_desk.h"
#include "core/input_error.h"
#include "core/store/application_store.h"
#include "core/units/number.h"

#include <ostream>

namespace evenfall::cli {
namespace {

Json application_json(const review::Application& a) {
    Json history = Json::array();
    for (const auto& h : a.history) {
        history.push_back({{"at", calendar::format_instant(h.at)}, {"who", h.who}, {"status", review::text_of(h.status).english()},
                           {"note", h.note}, {"amount", number_or_null(h.amount)}});
    }
    Json filings = Json::array();
    for (const auto& f : a.filings) filings.push_back(f.sha256);
    return {{"application", a.code}, {"applicant", a.applicant}, {"site", a.site}, {"program", a.program},
            {"status", review::text_of(a.status()).english()}, {"filings", std::move(filings)}, {"history", std::move(history)}};
}

void print_application(std::ostream& out, const review::Application& a, bool history) {
    out << printable(a.code) << "  " << review::text_of(a.status()).english() << "  " << printable(a.applicant) << ", site " << printable(a.site)
        << ", program " << printable(a.program) << '\n';
    if (!history) return;
    for (const auto& h : a.history) {
        out << "  " << calendar::format_instant(h.at) << "  " << review::text_of(h.status).english() << "  by " << printable(h.who);
        if (h.amount) out << "  " << units::format_grouped(*h.amount, 2) << " " << a.currency;
        if (!h.note.empty()) out << "  " << printable(h.note, 400);
        out << '\n';
    }
    for (const auto& f : a.filings) out << "  filing " << f.sha256 << '\n';
}

void print_waiting(std::ostream& out, const std::vector<store::StoredFiling>& waiting) {
    if (waiting.empty()) return;
    out << "Filings without an application\n";
    for (const auto& f : waiting) {
        out << "  " << printable(f.code) << "  site " << printable(f.site) << ", " << printable(f.file) << ", came in " << f.at << "  " << f.sha256 << '\n';
    }
}

void set_status(store::Book& book, const ApplicationOptions& o, const std::string& who) {
    const auto status = review::status_named(o.status);
    if (!status) throw InputError(o.status, "a status");
    const bool money = *status == review::Status::approved || *status == review::Status::paid;
    if (money != o.amount.has_value()) {
        throw ArgumentError("--amount belongs to --set approved and --set paid, and to nothing else");
    }
    workflow::record_status(book, o.code, {*calendar::parse_instant(workflow::present_moment()), who, *status, o.note, o.amount});
}

void open_by_hand(store::Book& book, const ApplicationOptions& o, const std::string& who) {
    workflow::OpenedByHand opened;
    opened.number = o.code;
    opened.applicant = o.applicant;
    opened.site = o.site;
    opened.program = workflow::rebate_named(o.program);
    opened.at = workflow::present_moment();
    opened.received = o.received ? *o.received : *calendar::parse_date(opened.at.substr(0, 10));
    opened.note = o.note;
    opened.filings = o.filings;
    opened.who = who;
    workflow::open_application(book, opened);
}

void change(store::Book& book, const ApplicationOptions& o) {
    if (o.code.empty()) throw ArgumentError("a change needs the number of an application");
    if (o.amount && o.status.empty()) throw ArgumentError("--amount belongs to --set approved and --set paid, and to nothing else");
    const std::string who = o.who.empty() ? workflow::present_user() : o.who;
    if (!o.status.empty()) set_status(book, o, who);
    else if (o.open) open_by_hand(book, o, who);
    else if (!o.filings.empty()) workflow::attach_filings(book, {o.code, o.filings, who, workflow::present_moment()});
    else workflow::take_out_filings(book, {o.code, o.take_out, who, workflow::present_moment()});
}

}  // namespace

int run(const ApplicationOptions& o, Streams& streams) {
    const bool changes = !o.status.empty() || o.open || !o.filings.empty() || !o.take_out.empty();
    auto book = store::Book::open(o.book, changes ? store::Access::read_write : store::Access::read_only);
    if (changes) change(book, o);
    auto all = store::applications(book, "");
    std::vector<store::StoredFiling> waiting;
    if (o.code.empty()) {
        waiting = store::filings_without_application(book);
    } else {
        const auto one = store::find_application(book, o.code);
        if (!one) throw InputError(o.code, "the number of an application in the book");
        all = {*one};
    }
    if (o.json) {
        Json list = Json::array();
        for (const auto& a : all) list.push_back(application_json(a));
        Json loose = Json::array();
        for (const auto& f : waiting) {
            loose.push_back({{"filing", f.code}, {"sha256", f.sha256}, {"site", f.site}, {"file", f.file}, {"at", f.at}});
        }
        Json out{{"applications", std::move(list)}};
        if (o.code.empty()) out["filings_without_application"] = std::move(loose);
        streams.out << print(out);
    } else {
        for (const auto& a : all) print_application(streams.out, a, !o.code.empty());
        print_waiting(streams.out, waiting);
    }
    return done;
}

}  // namespace evenfall::cli

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/moment.h"
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
        history.push_back({{"at", calendar::format_instant(h.at)}, {"who", h.who}, {"status", review::text_of(h.status)},
                           {"note", h.note}, {"amount", number_or_null(h.amount)}});
    }
    Json filings = Json::array();
    for (const auto& f : a.filings) filings.push_back(f.sha256);
    return {{"application", a.code}, {"applicant", a.applicant}, {"site", a.site}, {"program", a.program},
            {"status", review::text_of(a.status())}, {"filings", std::move(filings)}, {"history", std::move(history)}};
}

void print_application(std::ostream& out, const review::Application& a, bool history) {
    out << printable(a.code) << "  " << review::text_of(a.status()) << "  " << printable(a.applicant) << ", site " << printable(a.site)
        << ", program " << printable(a.program) << '\n';
    if (!history) return;
    for (const auto& h : a.history) {
        out << "  " << calendar::format_instant(h.at) << "  " << review::text_of(h.status) << "  by " << printable(h.who);
        if (h.amount) out << "  " << units::format_grouped(*h.amount, 2) << " " << a.currency;
        if (!h.note.empty()) out << "  " << printable(h.note, 400);
        out << '\n';
    }
    for (const auto& f : a.filings) out << "  filing " << f.sha256 << '\n';
}

}  // namespace

int run(const ApplicationOptions& o, Streams& streams) {
    const bool change = !o.status.empty();
    auto book = store::Book::open(o.book, change ? store::Access::read_write : store::Access::read_only);
    if (change) {
        if (o.code.empty()) throw ArgumentError("--set needs the number of an application");
        const auto status = review::status_named(o.status);
        if (!status) throw InputError(o.status, "a status");
        const bool money = *status == review::Status::approved || *status == review::Status::paid;
        if (money != o.amount.has_value()) {
            throw ArgumentError("--amount belongs to --set approved and --set paid, and to nothing else");
        }
        const std::string who = o.who.empty() ? workflow::present_user() : o.who;
        workflow::record_status(book, o.code, {*calendar::parse_instant(workflow::present_moment()), who, *status, o.note, o.amount});
    }
    auto all = store::applications(book, "");
    if (!o.code.empty()) {
        const auto one = store::find_application(book, o.code);
        if (!one) throw InputError(o.code, "the number of an application in the book");
        all = {*one};
    }
    if (o.json) {
        Json list = Json::array();
        for (const auto& a : all) list.push_back(application_json(a));
        streams.out << print(Json{{"applications", std::move(list)}});
    } else {
        for (const auto& a : all) print_application(streams.out, a, !o.code.empty());
    }
    return done;
}

}  // namespace evenfall::cli

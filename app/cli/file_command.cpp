// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/filing.h"
#include "app/workflow/moment.h"
#include "core/input_error.h"

#include <array>
#include <ostream>

namespace evenfall::cli {
namespace {

/// "photo=head-3.jpg"
exchange::AttachedFile attachment(const std::string& text) {
    static constexpr std::array kinds{"photo", "invoice", "report", "other"};
    const std::size_t at = text.find('=');
    const std::string kind = text.substr(0, at);
    for (const char* known : kinds) {
        if (at != std::string::npos && kind == known) return {text.substr(at + 1), kind, ""};
    }
    throw ArgumentError("--attach " + printable(text) + ": expected photo=FILE, invoice=FILE, report=FILE or other=FILE");
}

}  // namespace

int run(const FileOptions& o, Streams& streams) {
    const auto rule = audit::quarter_rule_named(o.quarter_rule);
    if (!rule) throw InputError(o.quarter_rule, "a quarter rule");
    if (o.site.empty() && o.tests.empty()) throw ArgumentError("file needs --site or --test");
    workflow::FilingOrder order{o.site, o.tests, o.code, o.words, {}, o.key, *rule, o.rain,
                                workflow::present_moment(), "Evenfall " EVENFALL_VERSION,
                                o.who.empty() ? workflow::present_user() : o.who, o.out};
    for (const std::string& text : o.attachments) order.attachments.push_back(attachment(text));
    auto book = store::Book::open(o.book, store::Access::read_write);
    const auto written = workflow::file_filing(book, order);
    if (o.json) {
        streams.out << print(Json{{"filing", o.out}, {"sha256", written.sha256}});
    } else {
        streams.out << "Filed " << o.out << "\nSHA-256 " << written.sha256 << '\n';
    }
    return done;
}

}  // namespace evenfall::cli

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "core/store/book_check.h"

#include <algorithm>
#include <ostream>

namespace evenfall::cli {

/// Damage and contradictions make the answer "no"; gaps are told, but a record of real life has some.
int run(const CheckOptions& o, Streams& streams) {
    const auto book = store::Book::open(o.book, store::Access::read_only);
    const auto problems = store::check_book(book);
    const bool sound = std::none_of(problems.begin(), problems.end(), [](const store::BookProblem& p) {
        return p.severity != store::Severity::gap;
    });
    if (o.json) {
        Json list = Json::array();
        for (const auto& p : problems) {
            list.push_back({{"severity", store::text_of(p.severity)}, {"record", p.record}, {"sentence", p.sentence.english()}});
        }
        streams.out << print({{"book", o.book}, {"sound", sound}, {"problems", std::move(list)}});
    } else {
        for (const auto& p : problems) {
            streams.out << store::text_of(p.severity) << ": " << p.record << ": " << p.sentence << '\n';
        }
        streams.out << (problems.empty() ? "Nothing to report.\n"
                        : sound          ? "The book is sound; the gaps above are worth a look.\n"
                                         : "The book needs attention.\n");
    }
    return sound ? done : answer_no;
}

}  // namespace evenfall::cli

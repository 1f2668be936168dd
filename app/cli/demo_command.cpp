// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/demo/make_demo.h"

#include <ostream>

namespace evenfall::cli {

int run(const DemoOptions& o, Streams& streams) {
    const auto outcome = demo::make_demo(
        o.out, o.formats, std::filesystem::path(streams.program_folder) / "evenfall-print");
    if (o.json) {
        Json reports = Json::array();
        for (const auto& file : outcome.reports) reports.push_back(file.string());
        streams.out << print({{"book", outcome.book.string()}, {"reports", std::move(reports)}});
        return done;
    }
    streams.out << "The book: " << outcome.book.string() << "\nThe reports:\n";
    for (const auto& file : outcome.reports) streams.out << "  " << file.string() << '\n';
    return done;
}

}  // namespace evenfall::cli

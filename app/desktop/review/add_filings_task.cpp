// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/add_filings_task.h"

#include "core/exchange/filing_file.h"

#include <utility>

namespace evenfall::desktop {
namespace {

using Groups = std::map<std::string, std::vector<std::filesystem::path>>;

/// Files by the program that judges them.
Groups by_program(const AddFilingsOrder& order, const TaskContext& context) {
    if (!order.program.empty()) return {{order.program, order.files}};
    Groups groups;
    for (const auto& file : order.files) {
        context.check();
        std::string program;
        try {
            const auto known = order.known.find(exchange::open_filing(file).filing.request.program);
            if (known != order.known.end()) program = known->second;
        } catch (const std::exception&) {
            // The review says what is wrong with the file.
        }
        groups[program].push_back(file);
    }
    return groups;
}

}  // namespace

AddedFilings add_filings(const AddFilingsOrder& order, const TaskContext& context) {
    auto book = store::Book::open(order.book, store::Access::read_write);
    std::vector<std::pair<workflow::ReviewOrder, workflow::Batch>> reviewed;
    std::size_t before = 0;
    for (auto& [program, files] : by_program(order, context)) {
        // One thread: stopping leaves by an exception, which only the calling thread can catch.
        const workflow::ReviewOrder review{files, program, false, 1, {}};
        auto batch = workflow::review_batch(review, &book, [&](std::size_t done) {
            context.check();
            context.report(static_cast<double>(before + done) / static_cast<double>(order.files.size()));
        });
        before += files.size();
        reviewed.emplace_back(review, std::move(batch));
    }
    context.check();
    AddedFilings result;
    for (auto& [review, batch] : reviewed) {
        result.added += workflow::store_batch(book, batch, review, order.at, order.who);
        result.refused += batch.refused;
        for (auto& item : batch.items) result.items.push_back(std::move(item));
    }
    return result;
}

}  // namespace evenfall::desktop

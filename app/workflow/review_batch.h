// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/bag.h"
#include "core/review/decision.h"
#include "core/store/book.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Many filings reviewed at once. Each is opened, verified, recomputed and judged on its own; what
/// stays of it is its review and its fingerprints, so memory grows by a few kilobytes a filing. A
/// file that cannot be used is one line of the answer and never stops the rest. The answer is the
/// same for any number of threads.
/// Tests: tests/app/review_batch_test.cpp. Speed: tests/bench/review_batch.cpp
namespace evenfall::workflow {

struct ReviewOrder {
    std::vector<std::filesystem::path> files;   ///< zips, or folders whose *.zip are taken
    std::string program;                        ///< name or file; empty: figures only
    bool together = false;                      ///< all files are one case
    unsigned threads = 2;
    exchange::BagLimits limits;
};

struct BatchItem {
    std::string file;
    std::optional<review::Review> review;
    Sentence refused;                           ///< why the file could not be used
};

struct Batch {
    std::vector<BatchItem> items;               ///< in the order given, folders in alphabetical order
    /// Indices in the order in which an officer should look: most risk points times money asked
    /// for first, where there are no points the most money; refused files at the end.
    std::vector<std::size_t> order;
    std::optional<review::RebateProgram> program;
    std::optional<double> budget_left;          ///< before this batch
    double money = 0.0;                         ///< of what would be approved
    std::size_t approve = 0, decline = 0, send_more = 0, refused = 0;
};

/// Called from time to time with how many files are done; from any thread, one at a time.
using Progress = std::function<void(std::size_t)>;

/// @param book  for fingerprints of earlier filings and the budget left; null: none
/// @throws InputError for a program that cannot be read or no file at all
Batch review_batch(const ReviewOrder& order, const store::Book* book, const Progress& progress);

/// Freezes the filings of a batch in the book and opens an application for each that carries a
/// number: received, and then incomplete or under review. What is there already stays as it is.
/// @return how many filings were added
/// @throws BookError; nothing is stored then
std::size_t store_batch(store::Book& book, const Batch& batch, const ReviewOrder& order, const std::string& at,
                        const std::string& who);

/// What the history says of an application that was reviewed as it came in: "Review: send more."
std::string note_of(review::Decision decision);

/// What may occur in one application only, its keys as the digests that the book keeps.
std::vector<review::Fingerprint> traced_fingerprints(const review::Filing& filing);

/// Asks about every fingerprint that an earlier filing in the book carries too.
void ask_about_earlier(review::Review& review, const std::vector<review::Fingerprint>& prints, const store::Book& book);

/// A rebate program by name, or from a file when the text ends in ".json".
review::RebateProgram rebate_named(const std::string& name_or_file);

}  // namespace evenfall::workflow

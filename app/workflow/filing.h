// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/filing_file.h"
#include "core/store/book.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// From the book to a filing, frozen in the book and written as one file.
/// Tests: tests/app/filing_test.cpp
namespace evenfall::workflow {

struct FilingOrder {
    std::string site;                  ///< with its areas, meters, readings and weather; may be empty
    std::vector<std::string> tests;    ///< empty with a site: all of its tests
    std::string code;                  ///< empty: made of site or test and day
    std::filesystem::path words;       ///< JSON of exchange::read_filing_words; empty: none
    std::vector<exchange::AttachedFile> attachments;
    std::filesystem::path key;         ///< PEM of the auditor's key; empty: not signed
    audit::QuarterRule quarter_rule;
    std::string rain;
    std::string written;               ///< instant
    std::string software;
    std::string who;
    std::filesystem::path out;
};

/// Collects, works out the results, writes the file, reads it back, and freezes it in the book. When
/// anything fails there is neither a file nor a record.
/// With a change date in the words, tests before it are filed as before, the others as after.
/// @throws InputError, BookError
exchange::WrittenFiling file_filing(store::Book& book, const FilingOrder& order);

/// Results and, where the sender claims nothing else, claims of every test and of the savings.
void work_out_results(review::Filing& filing, const std::string& version);

/// A text file of at most 16 MiB. @throws InputError
std::string text_of_file(const std::filesystem::path& file);

/// Kind and digest of what may occur in one application only, see store::FingerprintKey.
std::vector<std::pair<std::string, std::string>> fingerprint_keys(const review::Filing& filing);

}  // namespace evenfall::workflow

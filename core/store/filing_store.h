// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/weather/weather_sheet.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

/// Filings frozen in the book. A filing is never changed: its name is the digest of its contents.
/// Use the writing functions within a Transaction. Tests: tests/store/filing_store_test.cpp
namespace evenfall::store {

enum class Direction { sent, received };

struct StoredFiling {
    std::string code;
    std::string sha256;
    Direction direction = Direction::received;
    std::string site;      ///< code of the site inside the filing; need not be in this book
    std::string json;      ///< data/filing.json, byte for byte
    std::string key;       ///< public key of its signature; empty when not signed
    std::string file;
    std::string at;        ///< UTC, ISO 8601
    std::string who;
};

/// Kind and SHA-256 of what may occur in one application only.
using FingerprintKey = std::pair<std::string, std::string>;

/// Writes the filing and a line of the journal.
/// @throws BookError when a filing of that name is in the book
void add_filing(Book& book, const StoredFiling& filing, const std::vector<FingerprintKey>& fingerprints);
std::optional<StoredFiling> find_filing(const Book& book, const std::string& sha256);
/// In the order they came in, `json` left empty.
std::vector<StoredFiling> filings(const Book& book);
/// Received filings that belong to no application, in the order they came in, `json` left empty.
std::vector<StoredFiling> filings_without_application(const Book& book);
/// Code and name of the filings that carry a fingerprint.
std::vector<std::pair<std::string, std::string>> filings_with(const Book& book, const FingerprintKey& key);

/// Weather of a station as typed: the latest revision of each day in its units.
/// @throws BookError when days in that span were typed in more than one set of units
std::pair<weather::SheetUnits, std::vector<weather::SheetRow>> typed_weather(
    const Book& book, const std::string& station, const std::string& from, const std::string& to);

}  // namespace evenfall::store

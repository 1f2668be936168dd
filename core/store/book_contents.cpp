// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_contents.h"

#include "core/store/database.h"

#include <array>

namespace evenfall::store {
namespace {

struct Question {
    std::string_view words;
    const char* sql;
};

constexpr std::array questions{
    Question{"Readings that a correction replaced", "SELECT count(*) FROM reading WHERE revision > 0"},
    Question{"Days of weather that a correction replaced", "SELECT count(*) FROM weather_day WHERE revision > 0"},
    Question{"Hours of weather that a correction replaced", "SELECT count(*) FROM weather_hour WHERE revision > 0"},
    Question{"Bills that a correction replaced", "SELECT count(*) FROM bill WHERE revision > 0"},
    Question{"Plantings that a correction replaced", "SELECT count(*) FROM planting WHERE revision > 0"},
    Question{"Outlines that a newer one replaced", "SELECT count(*) FROM area_outline WHERE revision > 0"},
    Question{"Plans that a newer one replaced", "SELECT count(*) FROM design_plan WHERE revision > 0"},
    Question{"Entries of the journal", "SELECT count(*) FROM journal"},
    Question{"Names and digests of imported files", "SELECT count(*) FROM import"},
    Question{"Filings, which are sent as files of their own", "SELECT count(*) FROM filing"},
    Question{"Rebate applications with their history", "SELECT count(*) FROM application"}};

}  // namespace

std::vector<KeptRows> rows_beside_tables(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        std::vector<KeptRows> all;
        for (const Question& q : questions) {
            SQLite::Statement row(db, q.sql);
            row.executeStep();
            all.push_back({q.words, row.getColumn(0).getInt64()});
        }
        return all;
    });
}

}  // namespace evenfall::store

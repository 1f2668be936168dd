// SPDX-License-Identifier: GPL-3.0-or-later
// Any list of choices, any order of files: the book holds exactly the chosen values. All CONSTRUCTED.
#include "core/exchange/conflict_table.h"
#include "core/store/bill_store.h"
#include "core/store/meter_store.h"
#include "core/store/weather_store.h"
#include "core/units/number.h"
#include "tests/exchange/import_desk.h"
#include "tests/support/draw.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>

using namespace evenfall;
using namespace evenfall::exchange;
using store::Stands;
using Path = std::filesystem::path;
using tests::Draw;

namespace {

constexpr std::size_t records = 24;
constexpr int kinds = 3;

std::string two_digits(std::size_t n) { return (n < 10 ? "0" : "") + std::to_string(n); }

/// A table of one kind; a value below zero: no row.
std::string table(int kind, const std::vector<int>& values) {
    std::string text = kind == 0 ? "meter,time,register\n" : kind == 1 ? "meter,from,to,billed_kgal\n" : "station,date,rain_mm\n";
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (values[i] < 0) continue;
        const std::string day = two_digits(i + 1);
        const std::string value = std::to_string(values[i]);
        if (kind == 0) text += "M,2024-07-" + day + "T06:00:00Z," + value + "\n";
        if (kind == 1) text += "M,2024-" + two_digits(1 + i % 12) + "-01,2024-" + two_digits(1 + i % 12) + "-" +
                               two_digits(2 + i / 12) + "," + value + "\n";
        if (kind == 2) text += "W,2024-07-" + day + "," + value + "\n";
    }
    return text;
}

/// Record as conflicts name it, to the value that the book has.
std::map<std::string, std::string> held(const store::Book& book) {
    std::map<std::string, std::string> all;
    store::for_each_reading(book, "M", [&](const auto& r) {
        all["reading of M at " + calendar::format_instant(r.at)] = units::format_shortest(r.value);
    });
    for (const auto& b : store::bills(book, "M")) {
        all["bill of M from " + calendar::format_date(b.from) + " to " + calendar::format_date(b.to)] = b.volume.text();
    }
    for (const auto& d : store::weather_days(book, "W", calendar::make_date(2024, 1, 1), calendar::make_date(2024, 12, 31))) {
        all["weather of W on " + calendar::format_date(d.date)] =
            "rain " + units::format_shortest(std::round(d.rain->in(units::millimetre))) + " mm";
    }
    return all;
}

struct Desk : tests::ImportDesk {
    Desk() : ImportDesk({"site,name,latitude,elevation_m\nS,Site,40,100\n", "meter,site,unit\nM,S,gal\n"}) {
        for (int kind = 0; kind < kinds; ++kind) {
            std::vector<int> values;
            for (std::size_t i = 0; i < records; ++i) values.push_back(static_cast<int>(i));
            require_accepted(std::vector{put(table(kind, values))});
        }
    }
    std::vector<ImportResult> put_all(const std::vector<std::string>& texts, const ImportOptions& o) {
        std::vector<Path> files;
        for (const std::string& t : texts) files.push_back(scratch.write("f" + std::to_string(files.size()) + ".csv", t));
        return import_files(book, files, o);
    }
};

/// Files that say something else of some records, some of them in several files and ways.
std::vector<std::string> contrary_files(Draw& draw) {
    std::vector<std::string> texts;
    for (int kind = 0; kind < kinds; ++kind) {
        for (std::size_t file = 0; file < 1 + draw.below(3); ++file) {
            std::vector<int> values(records, -1);
            for (std::size_t i = 0; i < records; ++i) {
                if (draw.below(3) != 0) values[i] = static_cast<int>(i + 100 * draw.below(4));
            }
            values[0] = 0;  // never an empty table
            texts.push_back(table(kind, values));
        }
    }
    return texts;
}

}  // namespace

TEST_CASE("the book holds exactly the chosen values, in any order of the files", "[exchange][constructed]") {
    Draw draw(21);
    std::size_t chosen_of_file = 0;
    std::size_t contested = 0;
    for (int trial = 0; trial < 8; ++trial) {
        CAPTURE(trial);
        std::vector<std::string> texts = contrary_files(draw);
        Desk tried;
        ImportOptions o = tests::import_options();
        o.dry_run = true;
        o.list_conflicts = tried.scratch / "conflicts.csv";
        tried.put_all(texts, o);
        const auto list = read_conflicts(*o.list_conflicts);
        contested += list.contested().size();
        auto expected = held(tried.book);
        REQUIRE(expected.size() == records * kinds);
        std::set<std::string> taken;
        std::vector<Stands> choice;
        // Left out, and so left to "keep", is as good as "book".
        list.for_each([&](const store::ConflictRow& row) {
            const bool file = draw.below(2) == 0 && taken.insert(row.record).second;
            if (file) expected.at(row.record) = row.in_file;
            chosen_of_file += file ? 1 : 0;
            choice.push_back(file ? Stands::in_file : draw.below(3) == 0 ? Stands::undecided : Stands::in_book);
        });
        const auto filled = tried.scratch / "filled.csv";
        write_conflicts(filled, list, [&](std::int64_t at) { return choice.at(static_cast<std::size_t>(at)); });
        o = tests::import_options(ConflictChoice::keep);
        o.choices = filled;
        for (int order = 0; order < 3; ++order) {
            Desk desk;
            require_accepted(desk.put_all(texts, o));
            CHECK(held(desk.book) == expected);
            CHECK(desk.book.integrity_problems().empty());
            // Again, in this order and in another one, adds nothing.
            const std::string before = desk.bytes();
            require_accepted(desk.put_all(texts, o));
            const bool same = desk.bytes() == before;
            CHECK(same);
            draw.shuffle(texts);
            require_accepted(desk.put_all(texts, o));
            CHECK(held(desk.book) == expected);
        }
    }
    CHECK(chosen_of_file > 100);
    CHECK(contested > 100);
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Conflicts of an import settled one by one on the command line. All CONSTRUCTED.
#include "core/store/meter_store.h"
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace evenfall;
using Catch::Matchers::Contains;
using tests::bytes_of;
using tests::Scratch;

namespace {

struct Desk {
    Desk() {
        const auto sites = scratch.write("sites.csv", "site,name,latitude,elevation_m\nS,Site,40,100\n");
        const auto meters = scratch.write("meters.csv", "meter,site,unit\nM,S,gal\n");
        const auto first = scratch.write("june.csv", "meter,time,register\nM,2024-07-01T06:00:00Z,10\nM,2024-07-02T06:00:00Z,20\n");
        REQUIRE(tests::evenfall({"new", book}).status == 0);
        REQUIRE(import({sites.string(), meters.string(), first.string()}).status == 0);
    }
    tests::Answer import(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), {"import", book});
        return tests::evenfall(arguments);
    }
    std::vector<double> values() const {
        std::vector<double> all;
        const auto opened = store::Book::open(book, store::Access::read_only);
        store::for_each_reading(opened, "M", [&](const auto& r) { all.push_back(r.value); });
        return all;
    }
    Scratch scratch;
    std::string book = (scratch / "b.evenfall").string();
    std::string table = (scratch / "conflicts.csv").string();
    std::string july = scratch.write("july.csv", "meter,time,register\nM,2024-07-01T06:00:00Z,11\n"
                                                 "M,2024-07-02T06:00:00Z,21\n").string();
};

std::string filled(std::string text, const std::string& values, const std::string& choice) {
    const std::size_t at = text.find(values + ",\n");
    REQUIRE(at != std::string::npos);
    return text.replace(at, values.size() + 1, values + "," + choice);
}

}  // namespace

TEST_CASE("a try lists the conflicts, the table filled in settles them", "[app][constructed]") {
    Desk desk;
    const auto tried = desk.import({desk.july, "--dry-run", "--list-conflicts", desk.table});
    CHECK(tried.status == 0);
    CHECK_THAT(tried.out, Contains("0 would be added") && Contains("2 conflicts\n") && Contains("--choices"));
    const auto refused = desk.import({desk.july});
    CHECK(refused.status == 3);
    CHECK_THAT(refused.err, Contains("july.csv, row 2, column register: found \"11\""));
    desk.scratch.write("conflicts.csv", filled(filled(bytes_of(desk.table), "10,11", "file"), "20,21", "book"));
    CHECK_THAT(desk.import({desk.july, "--choices", desk.table, "--dry-run"}).out,
               Contains("2 conflicts, 1 would take the file's value\n"));
    for (const char* time : {"first", "again"}) {
        CAPTURE(time);
        const auto done = desk.import({desk.july, "--choices", desk.table, "--json"});
        CHECK(done.status == 0);
        const auto json = nlohmann::json::parse(done.out).at("files").at(0);
        CHECK(json.at("stored") == true);
        CHECK(json.at("open") == 0);
        CHECK(json.at("replaced") == (time == std::string("first") ? 1 : 0));
        CHECK(json.at("conflict_list").back().at("stands") == "book");
        CHECK(desk.values() == std::vector<double>{11, 20});
    }
    const auto plain = desk.import({desk.july});
    CHECK(plain.status == 0);
    CHECK_THAT(plain.out, Contains("1 there already, 1 decided before"));
}

TEST_CASE("choices that do not fit are bad input and change nothing", "[app][constructed]") {
    Desk desk;
    desk.import({desk.july, "--dry-run", "--list-conflicts", desk.table});
    const std::string listed = bytes_of(desk.table);
    const auto refusal = [&](const std::string& table, const std::vector<std::string>& more = {}) {
        desk.scratch.write("conflicts.csv", table);
        std::vector<std::string> arguments{desk.july, "--choices", desk.table};
        arguments.insert(arguments.end(), more.begin(), more.end());
        const auto answer = desk.import(arguments);
        CHECK(answer.status == 3);
        CHECK(desk.values() == std::vector<double>{10, 20});
        return answer.err;
    };
    CHECK_THAT(refusal(filled(listed, "10,11", "mine")),
               Contains("conflicts.csv, row 2, column choice: found \"mine\", expected book, file, or nothing"));
    CHECK_THAT(refusal(filled(listed, "10,11", "file")), Contains("row 3, column register: found \"21\""));
    const std::string stale = "record,in_book,in_file,choice\nreading of M at 2024-07-01T06:00:00Z,9,11,file\n";
    CHECK_THAT(refusal(stale), Contains("conflicts.csv, row 2, column in_book: found \"9\""));
    CHECK_THAT(refusal(stale, {"--conflicts", "replace"}), Contains("row 2, column in_book"));
    CHECK_THAT(refusal(stale, {"--dry-run"}), Contains("row 2, column in_book"));
    CHECK(desk.import({desk.july, "--choices", (desk.scratch / "none.csv").string()}).status == 3);
    CHECK(desk.import({desk.july, "--dry-run", "--list-conflicts", (desk.scratch / "no/c.csv").string()}).status == 3);
    CHECK(desk.import({desk.july, "--choices"}).status == 2);
}

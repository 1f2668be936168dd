// SPDX-License-Identifier: GPL-3.0-or-later
// Conflicts settled one by one, and values that were decided about before. All CONSTRUCTED.
#include "core/exchange/conflict_table.h"
#include "core/store/bill_store.h"
#include "core/store/hour_store.h"
#include "core/store/journal_store.h"
#include "core/store/meter_store.h"
#include "core/store/site_store.h"
#include "core/store/weather_store.h"
#include "tests/exchange/import_desk.h"

#include <nlohmann/json.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using store::Stands;
using tests::bytes_of;
using tests::import_options;

namespace {

constexpr const char* table_head = "record,in_book,in_file,choice\n";

struct Desk : tests::ImportDesk {
    Desk()
        : ImportDesk({"site,name,latitude,elevation_m\nS,Site,40,100\n", "meter,site,unit\nM,S,gal\n",
                      "meter,time,register\nM,2024-07-01T06:00:00Z,10\nM,2024-07-02T06:00:00Z,20\n"
                      "M,2024-07-03T06:00:00Z,30\n"}) {}
    /// Imports with a table of choices.
    ImportResult choose(const std::string& text, const std::string& choices,
                        ConflictChoice general = ConflictChoice::refuse) {
        ImportOptions o = import_options(general);
        o.choices = scratch.write("choices.csv", choices);
        return put(text, o);
    }
    std::string choice_refusal(const std::string& text, const std::string& choices,
                               ConflictChoice general = ConflictChoice::refuse) {
        ImportOptions o = import_options(general);
        o.choices = scratch.write("choices.csv", choices);
        return refusal(text, o);
    }
    /// The table of conflicts of a try.
    std::string listed(const std::string& text, ImportOptions o = import_options()) {
        o.dry_run = true;
        o.list_conflicts = scratch / "conflicts.csv";
        put(text, o);
        return bytes_of(*o.list_conflicts);
    }
    std::vector<double> values() const {
        std::vector<double> all;
        store::for_each_reading(book, "M", [&](const auto& r) { all.push_back(r.value); });
        return all;
    }
    weather::WeatherDay day() const {
        const auto date = calendar::make_date(2024, 7, 1);
        return store::weather_days(book, "W", date, date).at(0);
    }
    double tmax() const { return day().tmax->in_fahrenheit(); }
};

constexpr const char* two_changed =
    "meter,time,register\nM,2024-07-01T06:00:00Z,11\nM,2024-07-02T06:00:00Z,21\nM,2024-07-03T06:00:00Z,30\n";
const std::string first_record = "reading of M at 2024-07-01T06:00:00Z";
const std::string second_record = "reading of M at 2024-07-02T06:00:00Z";

}  // namespace

TEST_CASE("conflicts are listed in full, chosen one by one, and applied", "[exchange][constructed]") {
    Desk desk;
    const std::string table = desk.listed(two_changed);
    CHECK(table == "file,row,column,record,in_book,in_file,choice\n" +
                       (desk.scratch / "t.csv").string() + ",2,register," + first_record + ",10,11,\n" +
                       (desk.scratch / "t.csv").string() + ",3,register," + second_record + ",20,21,\n");
    std::string filled = table;
    filled.replace(filled.find("10,11,"), 6, "10,11,file");
    filled.replace(filled.find("20,21,"), 6, "20,21,book");
    const auto r = desk.choose(two_changed, filled);
    CHECK(r.stored);
    CHECK(r.conflicts == 2);
    CHECK(r.replaced == 1);
    CHECK(r.open == 0);
    CHECK(desk.values() == std::vector<double>{11, 20, 30});
    std::vector<store::JournalEntry> told;
    for (const auto& record : {first_record, second_record}) {
        const auto entries = store::journal_of(desk.book, record);
        REQUIRE(entries.size() == 1);
        told.push_back(entries.front());
    }
    CHECK_THAT(told[0].what, Contains("took the place"));
    CHECK_THAT(told[1].what, Contains("set aside"));
    const auto detail = nlohmann::json::parse(told[1].detail);
    CHECK(detail.at("in_book") == "20");
    CHECK(detail.at("in_file") == "21");
    CHECK(detail.at("stands") == "in_book");
    CHECK(detail.at("chosen") == "for this record");
    CHECK(told[1].who == "tester");

    SECTION("the same again with the same choices changes nothing, to the byte") {
        const std::string before = desk.bytes();
        const auto again = desk.choose(two_changed, filled);
        CHECK(again.stored);
        CHECK(again.added + again.conflicts + again.replaced == 0);
        CHECK(again.decided_before == 1);
        const bool same = desk.bytes() == before;
        CHECK(same);
    }
    SECTION("and without them asks nothing that was answered") {
        const std::string before = desk.bytes();
        const auto again = desk.put(two_changed);
        CHECK(again.stored);
        CHECK(again.unchanged == 2);
        CHECK(again.decided_before == 1);
        REQUIRE(again.notes.size() == 1);
        CHECK_THAT(again.notes[0].english(), Contains("1 value was replaced or set aside before"));
        const bool same = desk.bytes() == before;
        CHECK(same);
        CHECK_THAT(desk.listed(two_changed), Contains(second_record + ",20,21,book\n"));
    }
    SECTION("a value that was set aside is taken when all are to be replaced, or by name") {
        if (GENERATE(true, false)) CHECK(desk.put(two_changed, ConflictChoice::replace).replaced == 1);
        else CHECK(desk.choose(two_changed, table_head + second_record + ",20,21,file\n").replaced == 1);
        CHECK(desk.values() == std::vector<double>{11, 21, 30});
    }
    CHECK(desk.book.integrity_problems().empty());
}

TEST_CASE("what the table does not name falls to the general choice", "[exchange][constructed]") {
    Desk desk;
    const std::string one = table_head + first_record + ",10,11,file\n" + second_record + ",20,21,\n";
    CHECK_THAT(desk.choice_refusal(two_changed, one), Contains(second_record) && !Contains(first_record));
    SECTION("keep") {
        const auto r = desk.choose(two_changed, one, ConflictChoice::keep);
        CHECK(r.conflicts == 2);
        CHECK(r.replaced == 1);
        CHECK(desk.values() == std::vector<double>{11, 20, 30});
    }
    SECTION("replace") {
        CHECK(desk.choose(two_changed, table_head + first_record + ",10,11,book\n", ConflictChoice::replace).replaced == 1);
        CHECK(desk.values() == std::vector<double>{10, 21, 30});
    }
    SECTION("a try with choices lists what is left, with the choices made so far") {
        ImportOptions o = import_options();
        o.choices = desk.scratch.write("choices.csv", one);
        const std::string table = desk.listed(two_changed, o);
        CHECK_THAT(table, Contains(",10,11,file\n") && Contains(",20,21,\n"));
    }
    SECTION("the list may be written over the choices") {
        ImportOptions o = import_options();
        o.choices = desk.scratch.write("conflicts.csv", one);
        CHECK_THAT(desk.listed(two_changed, o), Contains(",10,11,file\n") && Contains(",20,21,\n"));
    }
}

TEST_CASE("a choice holds for the values it was made on", "[exchange][constructed]") {
    Desk desk;
    const std::string choices = table_head + first_record + ",10,11,file\n" + second_record + ",20,21,book\n";
    const auto general = GENERATE(ConflictChoice::refuse, ConflictChoice::keep, ConflictChoice::replace);
    SECTION("the book has another value since") {
        desk.put("meter,time,register\nM,2024-07-02T06:00:00Z,22\n", ConflictChoice::replace);
        CHECK_THAT(desk.choice_refusal(two_changed, choices, general),
                   Contains("choices.csv, row 3, column in_book: found \"20\"") && Contains("\"22\", which the book now has") &&
                       Contains(second_record) && !Contains("row 2"));
        CHECK(desk.values() == std::vector<double>{10, 22, 30});
    }
    SECTION("the file has another value since") {
        CHECK_THAT(desk.choice_refusal("meter,time,register\nM,2024-07-01T06:00:00Z,12\nM,2024-07-02T06:00:00Z,21\n",
                                       choices, general),
                   Contains("choices.csv, row 2, column in_file: found \"11\"") && Contains("\"12\", which the file now has"));
        CHECK(desk.values() == std::vector<double>{10, 20, 30});
    }
    SECTION("the record is in no conflict") {
        CHECK_THAT(desk.choice_refusal("meter,time,register\nM,2024-07-01T06:00:00Z,11\nM,2024-07-02T06:00:00Z,20\n",
                                       choices, general),
                   Contains("choices.csv, row 3, column record: found \"" + second_record + "\"") &&
                       Contains("another value than the book"));
        CHECK_THAT(desk.choice_refusal(two_changed, choices + "site Z,1,2,book\n", general),
                   Contains("row 4, column record: found \"site Z\""));
    }
    SECTION("a try says so too") {
        ImportOptions o = import_options(general);
        o.choices = desk.scratch.write("choices.csv", table_head + std::string("site Z,1,2,book\n"));
        o.dry_run = true;
        CHECK_THAT(desk.refusal(two_changed, o), Contains("site Z"));
    }
    SECTION("a bad table is found before anything else, and refused rows come before unused choices") {
        CHECK_THAT(desk.choice_refusal(two_changed, "record,choice\n", general), Contains("in_book"));
        CHECK_THAT(desk.choice_refusal("meter,time,register\nM,2024-07-01T06:00:00Z,1l\n", choices, general),
                   Contains("found \"1l\"") && !Contains("choices.csv"));
    }
}

TEST_CASE("one record with several values in several files", "[exchange][constructed]") {
    Desk desk;
    const auto a = desk.scratch.write("a.csv", "meter,time,register\nM,2024-07-01T06:00:00Z,11\n");
    const auto b = desk.scratch.write("b.csv", "meter,time,register\nM,2024-07-01T06:00:00Z,12\n");
    ImportOptions o = import_options();
    o.choices = desk.scratch.write("c.csv", table_head + first_record + ",10,11,file\n" + first_record + ",10,12,book\n");
    std::vector<std::filesystem::path> files{a, b};
    if (GENERATE(false, true)) std::swap(files[0], files[1]);
    require_accepted(import_files(desk.book, files, o));
    CHECK(desk.values() == std::vector<double>{11, 20, 30});
    const std::string before = desk.bytes();
    require_accepted(import_files(desk.book, files, o));
    std::swap(files[0], files[1]);
    require_accepted(import_files(desk.book, files, o));
    const bool same = desk.bytes() == before;
    CHECK(same);
}

TEST_CASE("an old file again after a correction undoes nothing and blocks nothing", "[exchange][constructed]") {
    Desk desk;
    const std::string old_days = "station,date,tmax_f,tmin_f\nW,2024-07-01,90,60\nW,2024-07-02,95,61\n";
    desk.put(old_days);
    const std::string corrected = "station,date,tmax_f\nW,2024-07-01,91\n";
    CHECK(desk.put(corrected, ConflictChoice::replace).replaced == 1);
    const auto general = GENERATE(ConflictChoice::refuse, ConflictChoice::keep, ConflictChoice::replace);
    SECTION("the very file") {
        const std::string before = desk.bytes();
        const auto r = desk.put(old_days, general);
        CHECK(r.stored);
        CHECK(r.unchanged == 1);
        CHECK(r.decided_before == 1);
        CHECK(r.conflicts == 0);
        CHECK_THAT(r.notes.at(0).english(), Contains("what the book has stands"));
        const bool same = desk.bytes() == before;
        CHECK(same);
        CHECK(desk.tmax() == Approx(91));
    }
    SECTION("value by value: what else the file says completes the day") {
        const auto r = desk.put("station,date,tmax_f,rain_in\nW,2024-07-01,90,0.2\n", general);
        CHECK(r.stored);
        CHECK(r.added == 1);
        CHECK(r.decided_before == 1);
        CHECK(desk.tmax() == Approx(91));
        CHECK(desk.day().rain->in(units::inch) == Approx(0.2));
    }
    SECTION("after two corrections of two values") {
        CHECK(desk.put("station,date,tmin_f\nW,2024-07-01,59\n", ConflictChoice::replace).replaced == 1);
        CHECK(desk.put(old_days, general).decided_before == 1);
        CHECK(desk.tmax() == Approx(91));
        CHECK(desk.day().tmin->in_fahrenheit() == Approx(59));
    }
    SECTION("after a correction in other units") {
        CHECK(desk.put("station,date,tmax_c,tmin_c\nW,2024-07-01,33,16\n", ConflictChoice::replace).replaced == 1);
        CHECK(desk.put(old_days, general).decided_before == 1);
        CHECK(desk.day().tmax->in_celsius() == Approx(33));
    }
    SECTION("one value that was replaced and one that never stood there") {
        const std::string mixed = "station,date,tmax_f,tmin_f\nW,2024-07-01,90,58\n";
        CHECK_THAT(desk.refusal(mixed), Contains("tmax 91 f, tmin 60 f") && Contains("tmax 90 f, tmin 58 f"));
    }
    SECTION("the earlier value comes back only by name") {
        const std::string table = desk.listed(old_days);
        CHECK_THAT(table, Contains("weather of W on 2024-07-01,tmax 91 f,tmax 90 f,book\n"));
        std::string filled = table;
        filled.replace(filled.find("90 f,book"), 9, "90 f,file");
        const auto r = desk.choose(old_days, filled, general);
        CHECK(r.replaced == 1);
        CHECK(desk.tmax() == Approx(90));
        CHECK(desk.put(corrected, general).decided_before == 1);
        CHECK(desk.tmax() == Approx(90));
    }
    CHECK(desk.book.integrity_problems().empty());
}

TEST_CASE("the same for hours, bills, readings and volumes", "[exchange][constructed]") {
    Desk desk;
    struct Case { const char* first; const char* second; };
    const auto c = GENERATE(values<Case>(
        {{"station,hour_start,tmean_f\nW,2024-07-01T13:00:00Z,68\n", "station,hour_start,tmean_f\nW,2024-07-01T13:00:00Z,69\n"},
         {"meter,from,to,billed_kgal\nM,2024-07-01,2024-08-01,310\n", "meter,from,to,billed_kgal\nM,2024-07-01,2024-08-01,311\n"},
         {"meter,time,register\nM,2024-07-05T06:00:00Z,40\n", "meter,time,register\nM,2024-07-05T06:00:00Z,41\n"},
         {"meter,time,minutes,volume\nM,2024-07-05T06:00:00Z,15,4\n", "meter,time,minutes,volume\nM,2024-07-05T06:00:00Z,15,5\n"}}));
    CAPTURE(c.first);
    CHECK(desk.put(c.first).added == 1);
    CHECK(desk.put(c.second, ConflictChoice::replace).replaced == 1);
    CHECK(desk.put(c.second).unchanged == 1);
    const std::string before = desk.bytes();
    for (const auto general : {ConflictChoice::refuse, ConflictChoice::keep, ConflictChoice::replace}) {
        const auto r = desk.put(c.first, general);
        CHECK(r.stored);
        CHECK(r.decided_before == 1);
        CHECK(r.conflicts == 0);
    }
    const bool same = desk.bytes() == before;
    CHECK(same);
    std::string table = desk.listed(c.first);
    table.replace(table.rfind(",book\n"), 6, ",file\n");
    CHECK(desk.choose(c.first, table).replaced == 1);
    CHECK(desk.put(c.first).unchanged == 1);
    CHECK(desk.put(c.second).decided_before == 1);
}

TEST_CASE("records without revisions are known from the journal", "[exchange][constructed]") {
    Desk desk;
    const std::string first = "area,site,size_ac\nA,S,18.4\n";
    const auto size = [&] { return store::find_area(desk.book, "A")->size.value; };
    desk.put(first);
    const auto sized = [](const char* ac) { return std::string("area,site,size_ac\nA,S,") + ac + "\n"; };
    CHECK(desk.put(sized("19"), ConflictChoice::replace).replaced == 1);
    CHECK(desk.put(sized("20"), ConflictChoice::replace).replaced == 1);
    for (const char* old : {"18.4", "19"}) {
        CAPTURE(old);
        CHECK(desk.put(sized(old)).decided_before == 1);
        CHECK(desk.put(sized(old), ConflictChoice::replace).decided_before == 1);
    }
    CHECK(size() == 20);
    CHECK_THAT(desk.refusal(sized("21")), Contains("size 20 ac") && Contains("size 21 ac"));
    CHECK(desk.put(sized("21"), ConflictChoice::keep).stored);
    CHECK(desk.put(sized("21")).decided_before == 1);
    // What was set aside for 20 acres is news again once the book has another size.
    CHECK(desk.put(sized("22"), ConflictChoice::replace).stored);
    CHECK_THAT(desk.refusal(sized("21")), Contains("size 22 ac"));
    CHECK(desk.choose(sized("18.4"), table_head + std::string("area A,size 22 ac,size 18.4 ac,file\n")).replaced == 1);
    CHECK(size() == 18.4);
}

TEST_CASE("the book's value stands and what else the row says goes in", "[exchange][constructed]") {
    Desk desk;
    desk.put("station,date,tmax_f\nW,2024-07-01,90\n");
    const std::string more = "station,date,tmax_f,rain_in\nW,2024-07-01,91,0.2\n";
    CHECK_FALSE(desk.put(more).stored);
    const auto r = desk.choose(more, table_head + std::string("weather of W on 2024-07-01,tmax 90 f,tmax 91 f,book\n"));
    CHECK(r.stored);
    CHECK(r.added == 1);
    CHECK(desk.tmax() == Approx(90));
    CHECK(desk.day().rain->in(units::inch) == Approx(0.2));
    const std::string before = desk.bytes();
    CHECK(desk.put(more).decided_before == 1);
    const bool same = desk.bytes() == before;
    CHECK(same);
}

TEST_CASE("all conflicts are in the table though few are in the result", "[exchange][constructed]") {
    Desk desk;
    std::string first = "meter,time,register\n";
    std::string second = first;
    for (int i = 0; i < 1000; ++i) {
        const std::string at = calendar::format_instant(*calendar::parse_instant("2025-01-01T00:00:00Z") + std::chrono::hours{i});
        first += "M," + at + "," + std::to_string(i) + "\n";
        second += "M," + at + "," + std::to_string(i + 1) + "\n";
    }
    desk.put(first);
    ImportOptions o = import_options(ConflictChoice::keep);
    // 700 are settled before those that wait come up.
    CHECK(desk.put(second.substr(0, second.find("M,2025-01-30T04")), o).conflicts == 700);
    o = import_options();
    o.list_conflicts = desk.scratch / "all.csv";
    const auto r = desk.put(second, o);
    CHECK_FALSE(r.stored);
    CHECK(r.decided_before == 700);
    CHECK(r.open == 300);
    CHECK(r.conflict_list.size() == 400);
    CHECK(std::count_if(r.conflict_list.begin(), r.conflict_list.end(),
                        [](const Conflict& c) { return c.stands == Stands::undecided; }) == 200);
    CHECK(read_conflicts(*o.list_conflicts).count() == 1000);
    // Filled in by a spreadsheet's fill-down, as a person would.
    std::string table = bytes_of(*o.list_conflicts);
    std::size_t filled = 0;
    for (std::size_t at = table.find(",\n"); at != std::string::npos; at = table.find(",\n", at), ++filled) {
        table.replace(at, 2, ",file\n");
    }
    CHECK(filled == 300);
    CHECK(desk.choose(second, table).replaced == 300);
}

TEST_CASE("long values that begin alike are told apart", "[exchange][constructed]") {
    Desk desk;
    const std::string start(1500, 'n');
    const auto site = [&](char end) { return "site,name,latitude,elevation_m\nS," + start + end + ",40,100\n"; };
    CHECK(desk.put(site('a'), ConflictChoice::replace).replaced == 1);
    const std::string of_b = desk.listed(site('b'));
    const std::string of_c = desk.listed(site('c'));
    CHECK(of_b != of_c);
    std::string filled = of_b;
    filled.insert(filled.size() - 1, "file");
    CHECK_THAT(desk.choice_refusal(site('c'), filled), Contains("choices.csv, row 2, column in_file"));
    CHECK(desk.choose(site('b'), filled).replaced == 1);
    CHECK(store::find_site(desk.book, "S")->name == start + "b");
}

TEST_CASE("volumes over different times are different records", "[exchange][constructed]") {
    Desk desk;
    const auto rows = [](int a, int b) {
        return "meter,time,minutes,volume\nM,2024-07-05T06:00:00Z,15," + std::to_string(a) +
               "\nM,2024-07-05T06:00:00Z,60," + std::to_string(b) + "\n";
    };
    desk.put(rows(4, 16));
    const std::string table = desk.listed(rows(5, 5));
    CHECK_THAT(table, Contains("volume of M in the 15 min to 2024-07-05T06:00:00Z,4,5,") &&
                          Contains("volume of M in the 60 min to 2024-07-05T06:00:00Z,16,5,"));
}

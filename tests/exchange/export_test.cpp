// SPDX-License-Identifier: GPL-3.0-or-later
// A book of everything that can be imported, CONSTRUCTED to be awkward: units mixed within a kind,
// names that need quotes or look like formulas, corrections, gaps. What comes back is compared by
// reading both files with SQLite alone (tests/support/book_dump.h).
#include "core/exchange/export.h"

#include "core/exchange/import.h"
#include "core/exchange/plan_file.h"
#include "core/store/catch_test_store.h"
#include "core/store/journal_store.h"
#include "core/store/meter_store.h"
#include "core/store/plan_store.h"
#include "core/store/snapshot.h"
#include "tests/support/book_dump.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using tests::Scratch;
using Path = std::filesystem::path;

namespace {

void put(store::Book& book, const std::vector<Path>& files, ConflictChoice choice = ConflictChoice::refuse) {
    ImportOptions o;
    o.at = "2024-08-01T12:00:00Z";
    o.who = "tester";
    o.conflicts = choice;
    require_accepted(import_files(book, files, o));
}

/// Tables and their order say nothing here: import sorts them by kind.
std::vector<Path> awkward_tables(const Scratch& s) {
    std::vector<Path> files;
    const auto add = [&](const std::string& name, const std::string& text) { files.push_back(s.write(name, text)); };
    add("s1.csv",
        "site,name,organisation,latitude,longitude,elevation_ft,time_zone,weather,weather_power\n"
        "OAK,\"Oak, \"\"old\"\" farm\",'=SUM(A1),39.46,-118.77,3965.25,\"PST8PDT,M3.2.0,M11.1.0\",OAKW; ELMW,1.5\n");
    add("s2.csv", "site,name,latitude,elevation_m\nELM,'-elm-,-33.871234567890123,0.1\n\"B,1\",\xD7\xA9\xD7\x93\xD7\x94,0,12\n");
    // M-3, in millimetres, hangs on M-1, in inches, and M-2, in inches again, on M-3: with one table for
    // each unit no order of the two would do.
    add("m1.csv", "meter,site,unit,digits,installed,size_in\nM-1,OAK,kgal,7,2019-04-01,6\n");
    add("m2.csv", "meter,site,unit,multiplier,parent,size_mm\nM-3,OAK,m3,0.1,M-1,50\n");
    add("m3.csv", "meter,site,unit,multiplier,digits,parent,installed,removed,replaces,size_in\n"
                  "M-2,OAK,gal,100,6,M-3,2019-04-01,2024-06-03,M-1,3\n");
    add("m4.csv", "meter,site,unit,digits,rated_flow_gpm\nM-P,ELM,h,5,450.5\n");
    add("x.csv", "meter,time,final,first,unit,multiplier,digits\nM-1,2024-05-14T17:30:00Z,48211.5,0,gal,100,5\n");
    add("a1.csv", "area,site,name,size_ac,plant,coefficient,head_type,soil,root_depth_in,slope_percent,meter,share\n"
                  "N,OAK,\"North\nblock\",18.4,cool_turf,,solid_set,loam,8,1,M-1,0.6\n"
                  "S,OAK,,12.3,@home,0.8,,,,,M-1,0.4\n");
    add("a2.csv", "area,site,size_m2,root_depth_mm\nE,ELM,1234.5678901234567,203.2\nF,ELM,10,\n");
    add("a3.csv", "area,outline,outline_m2\nE,\"{\"\"type\"\":\"\"MultiPolygon\"\",\"\"coordinates\"\":[[[[10,50],[10.001,50],"
                  "[10.001,50.001],[10,50]]]]}\",1230.25\n");
    add("ws.csv", "station,latitude,longitude,elevation_ft,wind_height_ft\nOAKW,39.458,-118.774,3965,10\n");
    add("w1.csv", "station,date,tmax_f,tmin_f,rs_langley,wind_mph,rain_in\n"
                  "OAKW,2024-06-29,91.2,54.3,702.4,4.8,0\nOAKW,2024-06-30,93,,,,0.12\n");
    add("w2.csv", "station,date,tmax_c,tmean_c,tdew_c,rhmax_percent,rhmin_percent,rhmean_percent,ea_kpa,sunshine_h,eto_mm\n"
                  "ELMW,2024-01-01,31.25,20.5,8.125,88,31,55.5,1.1,11.5,7.125\nOAKW,2024-07-01,,,,,,,,,6\n");
    add("r1.csv", "meter,time,register,kind\nM-1,2024-06-01T06:00,1204.2,\nM-1,2024-06-15T06:00,5630.8,estimated\n"
                  "M-P,2024-06-15T06:00:30Z,0.1,corrected\nM-3,2024-06-15,0,\n");
    add("r2.csv", "meter,start,end,volume,kind\nM-2,2024-05-30T06:00,2024-05-30T06:15,12.4,\n"
                  "M-2,2024-05-30T06:15,2024-05-30T06:30,-0.3,corrected\n");
    add("c1.csv", "test,area,date,throat_area_in2,minutes,wind_mph,can,x_ft,y_ft,volume_ml,excluded\n"
                  "T-1,N,2024-05-20,16.61,60,2.5,1,0,0,61,\nT-1,,,,,,2,20,0,12,\"knocked over, twice\"\nT-1,,,,,,3,0,20,66.5,\n");
    add("c2.csv", "test,area,date,throat_area_cm2,can,x_m,y_m,depth_mm,layout,can_size_ml,edge_offset_m\n"
                  "T-2,E,2023-05-20,107,a,0,0,12,irregular,500,1.5\nT-2,,,,b,3,1,13.25,,,\n");
    add("c3.csv", "test,area,date,can,distance_m,depth_in\nT-3,F,2024-05-21,1,30,0.5\nT-3,F,2024-05-21,2,60,0.25\n");
    add("c4.csv", "test,area,date,lane_spacing_ft,opposite_pulls,flow_gpm,travel_speed_ft_min,can,side,distance_ft,volume_ml\n"
                  "T-4,S,2024-05-22,270,yes,400,2,1,left,15,80\nT-4,,,,,,,2,right,15,82\n");
    add("c5.csv", "test,area,date,can,x_m,y_m,station,station_minutes,volume_ml,throat_area_cm2\n"
                  "T-5,N,2022-05-22,1,0,0,A,20,10.1,107\nT-5,,,2,1,0,A,,20.2,\nT-5,,,1,0,0,B,15,0.1,\nT-5,,,2,1,0,B,,0.2,\n");
    add("cp.csv", "test,place,pressure_psi,nozzle_low_psi,nozzle_high_psi\nT-1,\"first head, north\",52.5,45,60\nT-1,last head,44,,\n");
    add("cp2.csv", "test,place,pressure_bar\nT-2,inlet,3.1\n");
    add("cf.csv", "test,finding,place,count,severity,corrected,note\nT-1,tilted,row 2,3,minor,yes,\n"
                  "T-1,leaking_head,,,severe,no,'seal\nT-2,none,,,,,\n");
    add("wh.csv", "station,hour_end,utc_offset,tmean_f,rs_w_m2,rain_in\nOAKW,2024-06-30T13:00,-08:00,88.4,861.5,0\n");
    add("wh2.csv", "station,hour_start,minutes,tdew_c,rhmean_percent,ea_kpa,wind_m_s\nELMW,2024-01-01T00:15:00Z,15,11.25,88,1.25,2.5\n");
    add("b1.csv", "meter,from,to,billed_kgal\nM-1,2024-06-01,2024-07-01,9200\n");
    add("b2.csv", "meter,from,to,billed_ccf\nM-1,2024-07-01,2024-08-01,12.5\n");
    add("pl.csv", "area,kind,from,to,key,coefficient\nN,shade,2024-04-01,2024-09-01,,0.7\n"
                  "S,sod,2024-03-01,,seeded_cool,\n");
    add("pr.csv", "rate,site,from,to,unit,currency,tier_up_to,price,fixed_per_month,sewer_price,sewer_share\n"
                  "W-2024,,2024-01-01,2024-12-31,ccf,USD,100,2.85,42.00,1.10,0.2\n"
                  "W-2024,,2024-01-01,2024-12-31,ccf,USD,,4.95,42.00,1.10,0.2\n"
                  "W-ELM,ELM,2024-01-01,,m3,EUR,,1.2345,,,\n");
    add("en.csv", "rate,site,from,to,currency,price_per_kwh\nE-1,OAK,2024-01-01,2024-12-31,USD,0.162\n");
    add("pu.csv", "pump,site,lift_ft,pressure_psi,friction_ft,efficiency,share\nP-1,OAK,85,70,12,0.62,0.5\n");
    add("pu2.csv", "pump,site,lift_m,efficiency\nP-2,ELM,12.5,0.7\n");
    add("st.csv", "station,area,name,rate_in_h,rate_source,arc_degrees,flow_gpm\n12,N,north edge,0.55,catch test T-1,180,24\n13,N,,,,,\n");
    add("st2.csv", "station,area,rate_mm_h,flow_l_s\n14,E,11.5,1.25\n");
    add("wr.csv", "site,days,starts,ends,stations_at_once\nOAK,mon wed sun,22:05,06:00,2\n");
    add("as.csv", "area,off_target,off_target_source,special,water_ec_ds_m,soil_ec_limit_ds_m\n"
                  "N,0.06,gross against net,no,,\nS,,,yes,1.15,3.2\n");
    return files;
}

constexpr const char* plan_json = R"({"evenfall_plan":1,"name":"Terrace, upper","units":{"length":"ft","flow":"gpm","pressure":"psi"},
 "outline":[[[0,0],[90,0],[90,45],[0,45]],[[10,10],[12,10],[12,12]]],"no_water":[[[40,20],[50,20],[50,25]]],
 "nozzles":{"amber":{"rows":[[20,12,0.78],[30,15,0.95]],"lowest":20,"highest":40}},
 "profiles":{"leg":[[0,5],[10,3],[15,0]]},
 "pipes":[{"id":"main","path":[[0,0],[90,0]],"size":"2 in"}],"lanes":[{"id":"L1","path":[[5,5],[5,40]]}],
 "pivots":[{"id":"P1","x":45,"y":22,"spans":[10.5,10]}],
 "heads":[{"id":"A1","x":0,"y":0,"nozzle":"amber","pressure":25,"arc":90,"facing":45,"station":"A","profile":"cone"},
          {"id":"A2","x":45,"y":22.125,"radius":15,"flow":1.1},{"id":"A3","x":20,"y":20,"flow":1.5,"profile":"leg"}]})";

struct Two {
    Two() : book(store::Book::create(scratch / "one.evenfall")) {
        put(book, awkward_tables(scratch));
        store::Transaction t(book);
        store::add_plan(book, "P/1", "OAK", parse_plan(plan_json, "plan"), std::nullopt);
        store::add_plan(book, "P_1", "ELM", parse_plan(plan_json, "plan"), std::nullopt);
        t.commit();
        // A correction: what stands goes out, what it replaced stays.
        put(book, {scratch.write("r3.csv", "meter,time,register\nM-1,2024-06-01T06:00,1205\n")}, ConflictChoice::replace);
    }

    ExportResult write(const store::Book& from, const std::string& folder) {
        std::filesystem::create_directories(scratch / folder);
        return export_book(from, scratch / folder, {});
    }

    /// As a person would: all tables at once, in the order in which a shell lists them; then the plans.
    Path read_back(const ExportResult& written, const std::string& folder) {
        const Path file = scratch / "two.evenfall";
        auto fresh = store::Book::create(file);
        std::vector<Path> files;
        for (const auto& entry : std::filesystem::directory_iterator(scratch / folder)) {
            if (entry.path().extension() == ".csv") files.push_back(entry.path());
        }
        std::sort(files.begin(), files.end());
        put(fresh, files);
        store::Transaction t(fresh);
        for (const ExportedPlan& p : written.plans) {
            store::add_plan(fresh, p.code, p.site, read_plan(scratch / folder / p.file), std::nullopt);
        }
        t.commit();
        return file;
    }

    Scratch scratch;
    store::Book book;
};

bool any_of(const std::vector<std::string>& sentences, const std::string& part) {
    return std::any_of(sentences.begin(), sentences.end(), [&](const auto& s) { return s.find(part) != std::string::npos; });
}

}  // namespace

TEST_CASE("a book comes back from its tables as it was", "[exchange][constructed]") {
    Two two;
    const ExportResult written = two.write(two.book, "out");
    const Path copy = two.read_back(written, "out");
    auto before = tests::user_records(two.scratch / "one.evenfall");
    const auto after = tests::user_records(copy);
    // The one correction: its earlier revision stays behind, so the later one is the first there.
    auto& readings = before["reading"];
    const auto old = std::find_if(readings.begin(), readings.end(), [](const std::string& r) { return r.find("1204.2") != std::string::npos; });
    REQUIRE(old != readings.end());
    readings.erase(old);
    const auto corrected = std::find_if(readings.begin(), readings.end(), [](const std::string& r) { return r.find("| 1205.0") != std::string::npos; });
    REQUIRE(corrected != readings.end());
    corrected->replace(corrected->find("| 1 | 1205.0"), 5, "| 0 |");
    std::sort(readings.begin(), readings.end());
    REQUIRE(before.size() == after.size());
    for (const auto& [table, rows] : before) {
        CAPTURE(table);
        CHECK(after.at(table) == rows);
    }
    // Nothing was compared with nothing: some record fills in every column of every table.
    const auto never = tests::BookDumper(two.scratch / "one.evenfall").empty_columns(tests::tables_left_out());
    CHECK(never == std::vector<std::string>{});
    CHECK(any_of(written.left_out, "Readings that a correction replaced: 1"));
    CHECK(any_of(written.left_out, "Entries of the journal"));
    // The comparison can fail.
    {
        auto changed = store::Book::open(copy, store::Access::read_write);
        put(changed, {two.scratch.write("more.csv", "meter,time,register\nM-1,2024-07-01T06:00,9999\n")});
    }
    CHECK(tests::user_records(copy).at("reading") != after.at("reading"));
}

TEST_CASE("the copy of a book gives the same bytes again", "[exchange][constructed]") {
    Two two;
    const ExportResult first = two.write(two.book, "out");
    const ExportResult again = two.write(two.book, "again");
    const ExportResult copied = two.write(store::Book::open(two.read_back(first, "out"), store::Access::read_only), "copy");
    REQUIRE(first.files.size() == copied.files.size());
    for (const ExportedFile& f : first.files) {
        CAPTURE(f.name);
        const std::string bytes = tests::bytes_of(two.scratch / "out" / f.name);
        CHECK(bytes == tests::bytes_of(two.scratch / "again" / f.name));
        CHECK(bytes == tests::bytes_of(two.scratch / "copy" / f.name));
    }
    for (const ExportedPlan& p : first.plans) {
        CAPTURE(p.file);
        CHECK(tests::bytes_of(two.scratch / "out" / p.file) == tests::bytes_of(two.scratch / "copy" / p.file));
    }
    REQUIRE(first.plans.size() == 2);
    CHECK(first.plans[0].file != first.plans[1].file);
}

TEST_CASE("values stand in their own units, and a table has one unit for each value", "[exchange][constructed]") {
    Two two;
    const ExportResult written = two.write(two.book, "out");
    const auto text = [&](const std::string& name) { return tests::bytes_of(two.scratch / "out" / name); };
    CHECK_THAT(text("areas.csv"), Contains("size_m2") && Contains("root_depth_mm") && Contains("1234.5678901234567"));
    CHECK_THAT(text("areas_2.csv"), Contains("size_ac") && Contains("18.4"));
    CHECK_THAT(text("sites.csv"), Contains("'-elm-") && Contains("elevation_m"));
    CHECK_THAT(text("sites_2.csv"), Contains("\"Oak, \"\"old\"\" farm\",'=SUM(A1)"));
    CHECK_THAT(text("readings.csv"), Contains("M-1,2024-06-01T13:00:00Z,1205,measured\n"));
    CHECK_THAT(text("readings_volumes.csv"), Contains("M-2,2024-05-30T13:15:00Z,2024-05-30T13:30:00Z,-0.3,corrected\n"));
    CHECK(any_of({text("weather.csv"), text("weather_2.csv")}, "OAKW,2024-06-29,91.2,54.3,,,,,,,702.4,,4.8,0\n"));
    for (const ExportedFile& f : written.files) {
        CAPTURE(f.name);
        const std::string table = text(f.name);
        if (f.name != "areas_2.csv") CHECK(static_cast<std::size_t>(std::count(table.begin(), table.end(), '\n')) == f.rows + 1);
    }
}

TEST_CASE("an empty book gives no tables", "[exchange][constructed]") {
    const Scratch scratch;
    const auto book = store::Book::create(scratch / "b.evenfall");
    std::filesystem::create_directories(scratch / "out");
    const ExportResult written = export_book(book, scratch / "out", {});
    CHECK(written.files.empty());
    CHECK(written.left_out.empty());
    CHECK(std::filesystem::is_empty(scratch / "out"));
}

TEST_CASE("a snapshot keeps what it saw first", "[exchange][constructed]") {
    Two two;
    const auto reader = store::Book::open(two.scratch / "one.evenfall", store::Access::read_only);
    {
        const store::Snapshot snapshot(reader);
        const auto before = store::count_readings(reader, "M-1");
        put(two.book, {two.scratch.write("more.csv", "meter,time,register\nM-1,2024-07-01T06:00,9999\n")});
        CHECK(store::count_readings(reader, "M-1") == before);
    }
    CHECK(store::count_readings(reader, "M-1") == 3);
}

TEST_CASE("notes that a table cannot tell apart are said, and the rest reads back", "[exchange][constructed]") {
    Two two;
    audit::CatchTest sheet = *store::find_catch_test(two.book, "T-3");
    sheet.code = "T-9";
    const auto psi = units::parse_measure<units::Pressure>("50psi");
    sheet.pressures = {{"inlet", psi, {}, {}, 0}, {"inlet", units::parse_measure<units::Pressure>("48psi"), {}, {}, 0}, {"end", psi, {}, {}, 0}};
    const auto tilted = [](const char* place, int count) {
        audit::Finding f;
        f.kind = "tilted";
        f.place = place;
        f.count = count;
        return f;
    };
    sheet.findings = std::vector{tilted("row 1", 1), tilted("row 1", 3), tilted("row 2", 1)};
    store::Transaction t(two.book);
    store::add_catch_test(two.book, sheet, {});
    t.commit();
    const ExportResult written = two.write(two.book, "out");
    CHECK(any_of(written.left_out, "Catch test T-9: a second pressure at inlet"));
    CHECK(any_of(written.left_out, "Catch test T-9: a second finding tilted at row 1"));
    const auto copy = store::Book::open(two.read_back(written, "out"), store::Access::read_only);
    const auto test = store::find_catch_test(copy, "T-9");
    REQUIRE(test);
    REQUIRE(test->pressures);
    CHECK(test->pressures->size() == 2);
    CHECK(test->pressures->front().pressure.value == 50.0);
    CHECK(test->findings->size() == 2);
}

TEST_CASE("a table that cannot be written is an error", "[exchange][constructed]") {
    Two two;
    CHECK_THROWS_AS(export_book(two.book, two.scratch / "not-there", {}), std::runtime_error);
}

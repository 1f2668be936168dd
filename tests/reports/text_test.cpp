// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/audit_report.h"
#include "reports/content/raw_tables.h"
#include "reports/content/season_report.h"
#include "reports/text/report_json.h"
#include "reports/text/write_csv.h"
#include "reports/text/write_text.h"
#include "tests/reports/sample_reports.h"

#include "reports/content/utf8.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>
#include <memory>
#include <sstream>

using namespace evenfall;
using namespace evenfall::reports;
using Catch::Matchers::Contains;

namespace {

/// Compares with tests/golden/NAME; EVENFALL_GOLDEN=write renews the file instead.
void compare_golden(const std::string& name, const std::string& text) {
    const std::string path = std::string(EVENFALL_SOURCE_DIR) + "/tests/golden/" + name;
    const char* mode = std::getenv("EVENFALL_GOLDEN");
    if (mode != nullptr && std::string(mode) == "write") {
        std::ofstream(path, std::ios::binary) << text;
        return;
    }
    std::ifstream in(path, std::ios::binary);
    std::stringstream golden;
    golden << in.rdbuf();
    INFO("golden text " << name << "; EVENFALL_GOLDEN=write renews it");
    CHECK(text == golden.str());
}

std::size_t widest_line(const std::string& text) {
    std::size_t widest = 0;
    std::stringstream in(text);
    for (std::string line; std::getline(in, line);) {
        widest = std::max(widest, length_in_characters(line));
    }
    return widest;
}

}  // namespace

TEST_CASE("golden text of the season report", "[reports][constructed]") {
    compare_golden("season-us.txt", write_text(samples::season(UnitsShown::us)));
    compare_golden("season-metric.txt", write_text(samples::season(UnitsShown::metric)));
}

TEST_CASE("golden text of the audit report", "[reports][constructed]") {
    compare_golden("audit-us.txt", write_text(samples::audit(UnitsShown::us)));
    compare_golden("audit-metric.txt", write_text(samples::audit(UnitsShown::metric)));
}

TEST_CASE("golden text of the portfolio and the plan report", "[reports][constructed]") {
    compare_golden("portfolio-us.txt", write_text(samples::portfolio(UnitsShown::us, 12)));
    compare_golden("plan-us.txt", write_text(samples::plan(UnitsShown::us)));
}

TEST_CASE("text keeps its width", "[reports]") {
    for (const std::size_t width : {60U, 80U, 96U, 120U}) {
        CAPTURE(width);
        CHECK(widest_line(write_text(samples::season(UnitsShown::us), width)) <= width);
    }
}

TEST_CASE("caution comes before any figure", "[reports]") {
    const std::string text = write_text(samples::season(UnitsShown::us));
    CHECK(text.find("Read this first") < text.find("Answer"));
    CHECK(text.find("Answer") < text.find("Use against budget"));
}

TEST_CASE("CSV keeps numbers whole and text harmless", "[reports]") {
    Table t{"t", "T", "", {{"name", "Name", {}, true}, {"use", "Use", {0, "gal"}}}, {}};
    t.add("1", {text("=1+1"), number(0.1)});
    t.add("2", {text("a \"b\", c"), number(-2.5)});
    t.add("3", {text("-5"), unknown()});
    t.add("4", {text("plain"), number(1e300)});
    t.add("sum", {text("@x"), number(7.0)}, RowKind::total);
    CHECK(write_csv(t) ==
          "name,use_gal,row_kind\r\n"
          "'=1+1,0.1,data\r\n"
          "\"a \"\"b\"\", c\",-2.5,data\r\n"
          "'-5,,data\r\n"
          "plain,1e+300,data\r\n"
          "'@x,7,total\r\n");
    CHECK(csv_field("\tx") == "\"'\tx\"");
    CHECK(csv_field("+1") == "'+1");
}

TEST_CASE("raw tables stream into CSV", "[reports]") {
    RawTable raw{"raw", "Raw", "", {{"time", "Time", {}, true}, {"v", "Value", {0, "gal"}}}, {}};
    raw.produce = [](const RawTable::Sink& sink) {
        for (int i = 0; i < 3; ++i) {
            const RawValue row[] = {std::string_view("2024-01-01"), static_cast<double>(i)};
            sink(row);
        }
        const RawValue gap[] = {std::string_view("2024-01-04"), std::monostate()};
        sink(gap);
    };
    std::ostringstream out;
    write_csv(raw, out);
    CHECK(out.str() == "time,v_gal\r\n2024-01-01,0\r\n2024-01-01,1\r\n2024-01-01,2\r\n2024-01-04,\r\n");
}

TEST_CASE("the records of a season stream out, gaps as gaps", "[reports]") {
    auto in = samples::season_inputs();
    in.weather[1].rain.reset();
    std::ostringstream readings, weather;
    const auto shared = std::make_shared<const budget::SeasonInputs>(in);
    write_csv(readings_table(shared), readings);
    write_csv(weather_table(shared), weather);
    CHECK_THAT(readings.str(), Contains("SH-M1,2024-02-01T00:00:00Z,10000,gal,0,measured\r\n"));
    CHECK_THAT(weather.str(), Contains("2024-01-01,,,,,,,0,"));
    CHECK_THAT(weather.str(), Contains("2024-01-02,,,,,,,,"));
}

TEST_CASE("JSON carries the whole report there and back", "[reports]") {
    for (const Report& report : {samples::season(UnitsShown::us), samples::audit(UnitsShown::metric)}) {
        const std::string json = write_json(report);
        const Report back = read_json(json, "r.json");
        CHECK(write_json(back) == json);
        CHECK(back.sections == report.sections);
        CHECK(back.answer == report.answer);
        CHECK(back.notes == report.notes);
        CHECK(back.signatures == report.signatures);
        CHECK(write_text(back) == write_text(report));
    }
}

TEST_CASE("JSON from a stranger is refused by place", "[reports]") {
    const std::string json = write_json(samples::season(UnitsShown::us));
    const auto refused = [](const std::string& text) {
        try {
            read_json(text, "r.json");
        } catch (const InputError& e) {
            return e.issues().at(0).text();
        }
        return std::string("accepted");
    };
    const auto replaced = [&](const std::string& what, const std::string& with) {
        std::string copy = json;
        const auto at = copy.find(what);
        REQUIRE(at != std::string::npos);
        copy.replace(at, what.size(), with);
        return refused(copy);
    };
    CHECK_THAT(refused(""), Contains("r.json"));
    CHECK_THAT(refused("[]"), Contains("expected"));
    CHECK_THAT(refused(json.substr(0, json.size() / 2)), Contains("r.json"));
    CHECK_THAT(replaced("\"is_text\": false", "\"is_text\": 3"), Contains("is_text"));
    CHECK_THAT(replaced("\"draw\": 1", "\"draw\": 9"),
               Contains("sections[0].blocks[0].chart.content.series.series[0].draw"));
    CHECK_THAT(replaced("\"decimals\": 2", "\"decimals\": 200"), Contains("decimals"));
    CHECK_THAT(replaced("\"table\": \"months\"", "\"table\": \"nothing\""), Contains("nothing"));
}

TEST_CASE("what is missing is said and nothing breaks", "[reports]") {
    auto in = samples::season_inputs();
    const auto f = samples::frame(UnitsShown::us);
    SECTION("no catch test") {
        in.tests.clear();
        const auto text = write_text(season_report(budget::season(in), std::nullopt, f));
        CHECK_THAT(text, Contains("No catch test"));
    }
    SECTION("no weather") {
        in.weather.clear();
        const auto report = season_report(budget::season(in), std::nullopt, f);
        CHECK_NOTHROW(check(report));
        CHECK_THAT(write_text(report), Contains("The need of the turf is not known"));
        CHECK(report.answer.fixes.empty());
    }
    SECTION("no meters") {
        in.meters.clear();
        const auto report = season_report(budget::season(in), std::nullopt, f);
        CHECK_NOTHROW(check(report));
        CHECK_THAT(write_text(report), Contains("No metered use is recorded"));
    }
    SECTION("no areas") {
        in.areas.clear();
        in.settings.clear();
        in.tests.clear();
        CHECK_NOTHROW(check(season_report(budget::season(in), std::nullopt, f)));
    }
    SECTION("a month with no data is not a zero") {
        const auto report = season_report(budget::season(in), std::nullopt, f);
        const Table* months = report.find_table("months");
        REQUIRE(months != nullptr);
        CHECK_FALSE(months->values("use")[0].has_value());
        CHECK_THAT(write_text(*months), Contains("not known"));
    }
}

TEST_CASE("catch tests of any size make a report", "[reports]") {
    const auto f = samples::frame(UnitsShown::metric);
    const auto rule = audit::QuarterRule::whole_cans;
    for (const std::size_t n : {1U, 3U, 4U, 5U, 400U}) {
        CAPTURE(n);
        const auto report =
            audit_report({audited(samples::grid_of(n), "Lawn", rule)}, "Test", {}, f);
        CHECK_NOTHROW(check(report));
        const std::string text = write_text(report);
        if (n < 4) {
            CHECK_THAT(text, Contains("No figures"));
        } else {
            CHECK_THAT(text, Contains("DU_LQ"));
        }
    }
    const auto none = audit_report({}, "All tests", {}, f);
    CHECK_NOTHROW(check(none));
    CHECK_THAT(write_text(none), Contains("No catch test is recorded"));
}

TEST_CASE("long and right-to-left names are carried whole", "[reports]") {
    auto in = samples::season_inputs();
    in.site.name = std::string(200, 'W');
    in.areas[0].name = "\xD7\x9E\xD7\x93\xD7\xA9\xD7\x90\xD7\x94";  // Hebrew "lawn"
    in.areas[1].name = "=HYPERLINK(\"x\")";
    const auto report = season_report(budget::season(in), std::nullopt, samples::frame(UnitsShown::us));
    CHECK_NOTHROW(check(report));
    CHECK_THAT(write_json(report), Contains("\xD7\x9E\xD7\x93\xD7\xA9\xD7\x90\xD7\x94"));
    CHECK_THAT(write_csv(*report.find_table("areas")), Contains("\"'=HYPERLINK"));
    CHECK(widest_line(write_text(report, 96)) <= 96);
}

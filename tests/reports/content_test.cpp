// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/formula.h"
#include "reports/content/look.h"
#include "reports/content/report.h"
#include "reports/content/utf8.h"
#include "reports/content/wrap.h"
#include "tests/reports/sample_reports.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace evenfall;
using namespace evenfall::reports;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

Table& first_table(Report& report) { return std::get<Table>(report.sections.at(0).blocks.at(1)); }

}  // namespace

TEST_CASE("cells are printed with unit, share, mark and gap", "[reports]") {
    const NumberFormat gallons{0, "gal"}, share{1, "", true};
    CHECK(printed(number(1234567.4), gallons, true) == "1,234,567 gal");
    CHECK(printed(number(1234567.4), gallons, false) == "1,234,567");
    CHECK(printed(number(0.6254), share, true) == "62.5 %");
    CHECK(printed(number(0.6254), share, false) == "62.5");
    CHECK(printed(unknown(), gallons, true) == "not known");
    CHECK(printed(number(0.0), gallons, true) == "0 gal");
    CHECK(printed(number(-0.0001), gallons, false) == "0");
    Cell assumed = number(3.0);
    assumed.assumed = true;
    CHECK(printed(assumed, {1, "in"}, true) == "3.0 in*");
}

TEST_CASE("a formula without a value is no formula", "[reports]") {
    CHECK(computed(std::nullopt, "SUM({months.use})").formula.empty());
    CHECK(computed(1.0, "SUM({months.use})").formula == "SUM({months.use})");
}

TEST_CASE("formulas are taken apart", "[reports]") {
    const auto p = parse_formula("SUM({t.a})+{b}*{t[k 1].c}-{s[1..6].d}/{=e_f}");
    REQUIRE(p.size() == 10);
    CHECK(std::get<std::string>(p[0]) == "SUM(");
    CHECK(std::get<WholeColumn>(p[1]).table == "t");
    CHECK(std::get<WholeColumn>(p[1]).column == "a");
    CHECK(std::get<SameRow>(p[3]).column == "b");
    CHECK(std::get<OneCell>(p[5]).row == "k 1");
    CHECK(std::get<RowRange>(p[7]).first == "1");
    CHECK(std::get<RowRange>(p[7]).last == "6");
    CHECK(std::get<NamedCell>(p[9]).name == "e_f");
    CHECK_THROWS_AS(parse_formula("{a"), std::logic_error);
    CHECK_THROWS_AS(parse_formula("a}"), std::logic_error);
    CHECK_THROWS_AS(parse_formula("{}"), std::logic_error);
    CHECK_THROWS_AS(parse_formula("{t[1}"), std::logic_error);
}

TEST_CASE("the sample reports are whole", "[reports]") {
    CHECK_NOTHROW(check(samples::season(UnitsShown::us)));
    CHECK_NOTHROW(check(samples::season(UnitsShown::metric)));
    CHECK_NOTHROW(check(samples::audit(UnitsShown::us)));
    CHECK_NOTHROW(check(samples::audit(UnitsShown::metric)));
    CHECK_NOTHROW(check(samples::portfolio(UnitsShown::us, 300)));
    CHECK_NOTHROW(check(samples::portfolio(UnitsShown::us, 0)));
    CHECK_NOTHROW(check(samples::plan(UnitsShown::us)));
}

TEST_CASE("check names the cell that would spoil a file", "[reports]") {
    Report report = samples::season(UnitsShown::us);
    Table& table = first_table(report);
    SECTION("not a number") {
        table.rows[2].cells[3].value = std::numeric_limits<double>::quiet_NaN();
        try {
            check(report);
            FAIL("accepted");
        } catch (const InputError& e) {
            CHECK(e.issues().at(0).place == Place{"months", 3, "rain"});
        }
    }
    SECTION("infinity") {
        table.rows[0].cells[1].value = -std::numeric_limits<double>::infinity();
        CHECK_THROWS_AS(check(report), InputError);
    }
    SECTION("bytes that are not UTF-8") {
        table.rows[1].cells[0].value = std::string("Feb\xC3 2024");
        CHECK_THROWS_AS(check(report), InputError);
    }
    SECTION("a control character") {
        report.title = std::string("Season\x07");
        CHECK_THROWS_AS(check(report), InputError);
    }
}

TEST_CASE("check refuses what a builder must not do", "[reports]") {
    Report report = samples::season(UnitsShown::us);
    Table& table = first_table(report);
    SECTION("ragged row") { table.rows[0].cells.pop_back(); }
    SECTION("row key twice") { table.rows[1].key = table.rows[0].key; }
    SECTION("table key twice") { table.key = "areas"; }
    SECTION("formula to nowhere") { table.rows[0].cells[1].formula = "{nothing}"; }
    SECTION("formula to no cell") { table.rows[0].cells[1].formula = "{=no_such_cell}"; }
    SECTION("data below a total") { std::swap(table.rows.front(), table.rows.back()); }
    SECTION("chart without a sentence") {
        std::get<Chart>(report.sections[0].blocks[0]).sentence.clear();
    }
    SECTION("chart that mixes bars and lines") {
        auto& chart = std::get<Chart>(report.sections[0].blocks[0]);
        std::get<SeriesChart>(chart.content).series[1].draw = Draw::line;
    }
    SECTION("no caution") { report.caution.paragraphs.clear(); }
    SECTION("four things to fix first") { report.answer.fixes.resize(4); }
    CHECK_THROWS_AS(check(report), std::logic_error);
}

TEST_CASE("the caution covers what can hurt", "[reports]") {
    std::string all;
    for (const auto& p : usual_caution().paragraphs) all += p + "\n";
    for (const char* word : {"Backflow", "cross-connection", "Reclaimed", "Pressure", "Electricity",
                             "Buried lines", "Machinery", "Traffic", "overspray", "local codes",
                             "watering restrictions", "permits", "licensed"}) {
        CHECK_THAT(all, Contains(word));
    }
}

// RFC 3629, section 3 and 4: the shortest and the forbidden forms.
TEST_CASE("UTF-8 is told from other bytes", "[reports][published]") {
    CHECK(is_clean_text("plain, \t and \n"));
    CHECK(is_clean_text("\xC3\xA9 \xE2\x82\xAC \xF0\x9F\x8C\xB1"));
    CHECK_FALSE(is_clean_text("\xC0\x80"));          // overlong
    CHECK_FALSE(is_clean_text("\xE0\x80\x80"));
    CHECK_FALSE(is_clean_text("\xED\xA0\x80"));      // surrogate
    CHECK_FALSE(is_clean_text("\xF4\x90\x80\x80"));  // above U+10FFFF
    CHECK_FALSE(is_clean_text("\xFF"));
    CHECK_FALSE(is_clean_text("\xE2\x82"));          // cut
    CHECK_FALSE(is_clean_text(std::string_view("a\0b", 3)));
    CHECK_FALSE(is_clean_text("\xC2\x85"));          // C1 control
    CHECK(length_in_characters("\xC3\xA9\xE2\x82\xAC") == 2);
}

TEST_CASE("lines are wrapped by characters, not bytes", "[reports]") {
    CHECK(wrap("one two three", 7) == std::vector<std::string>{"one two", "three"});
    CHECK(wrap("", 7) == std::vector<std::string>{""});
    CHECK(wrap("abcdefghij", 4) == std::vector<std::string>{"abcd", "efgh", "ij"});
    CHECK(wrap("\xC3\xA9\xC3\xA9\xC3\xA9", 2) ==
          std::vector<std::string>{"\xC3\xA9\xC3\xA9", "\xC3\xA9"});
    CHECK(wrap("a\nb", 9) == std::vector<std::string>{"a", "b"});
}

// CONSTRUCTED: our own scale; the test is that grey print keeps its order.
TEST_CASE("the depth scale darkens all the way", "[reports][constructed]") {
    for (const Medium medium : {Medium::paper, Medium::dark_screen}) {
        double before = 2.0;
        for (int i = 0; i <= 100; ++i) {
            const double l = luminance(depth_colour(i / 100.0, medium));
            CHECK(l < before);
            before = l;
        }
        CHECK(depth_colour(-5.0, medium) == depth_colour(0.0, medium));
        CHECK(depth_colour(7.0, medium) == depth_colour(1.0, medium));
        CHECK(depth_colour(std::numeric_limits<double>::quiet_NaN(), medium) == depth_colour(0.0, medium));
    }
}

// WCAG 2.1: luminance of white 1, of black 0, of sRGB red 0.2126. Contrasts are in palette_test.cpp.
TEST_CASE("luminance at its known points", "[reports][published]") {
    CHECK_THAT(luminance(0xFFFFFF), WithinAbs(1.0, 1e-12));
    CHECK_THAT(luminance(0x000000), WithinAbs(0.0, 1e-12));
    CHECK_THAT(luminance(0xFF0000), WithinAbs(0.2126, 1e-12));
}

TEST_CASE("neighbouring parts of the waste bars differ in pattern or clearly in lightness",
          "[reports]") {
    const Tone order[] = {Tone::need, Tone::uneven, Tone::uneven_avoidable, Tone::off_target,
                          Tone::leak, Tone::over_scheduled};
    for (const Medium medium : {Medium::paper, Medium::dark_screen}) {
        for (std::size_t i = 1; i < std::size(order); ++i) {
            const Look a = look_of(order[i - 1], medium), b = look_of(order[i], medium);
            const bool lightness = std::abs(luminance(a.fill) - luminance(b.fill)) > 0.15;
            CAPTURE(static_cast<int>(medium), i);
            CHECK((a.pattern != b.pattern || lightness));
        }
    }
}

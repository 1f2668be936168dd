// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/xlsx/write_xlsx.h"
#include "tests/reports/sample_reports.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <sys/wait.h>
#include <unistd.h>

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>

using namespace evenfall;
using namespace evenfall::reports;
using Catch::Matchers::Contains;

namespace {

namespace fs = std::filesystem;

/// A directory of this process, gone at the end.
struct Scratch {
    fs::path path = fs::temp_directory_path() / ("evenfall-xlsx-" + std::to_string(::getpid()));
    Scratch() { fs::create_directories(path); }
    ~Scratch() { fs::remove_all(path); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    std::string file(const char* name) const { return (path / name).string(); }
};

std::string bytes_of(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::stringstream all;
    all << in.rdbuf();
    return all.str();
}

/// Text of one part of a zip, by the unzip that Python carries.
std::string part_of(const std::string& path, const std::string& part) {
    const std::string command = "/usr/bin/python3 -c 'import sys,zipfile;"
                                "sys.stdout.buffer.write(zipfile.ZipFile(sys.argv[1]).read("
                                "sys.argv[2]))' '" + path + "' '" + part + "'";
    FILE* pipe = ::popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string out;
    char buffer[4096];
    for (std::size_t n = 0; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;) out.append(buffer, n);
    REQUIRE(::pclose(pipe) == 0);
    return out;
}

Report small() {
    Report report = samples::season(UnitsShown::us);
    report.sections.clear();
    report.answer.figures = {};
    Table t{"t", "T", "", {{"name", "Name", {}, true}, {"use", "Use", {1, "gal"}}}, {}};
    t.add("1", {text("=1+1"), number(1.5)});
    t.add("2", {text("@x"), computed(3.0, "2*{t[1].use}")});
    report.sections.push_back({"s", "S", {t}});
    return report;
}

}  // namespace

TEST_CASE("the same report gives the same workbook bytes", "[reports]") {
    const Scratch scratch;
    const Report report = samples::season(UnitsShown::us);
    write_xlsx(report, scratch.file("a.xlsx"));
    write_xlsx(report, scratch.file("b.xlsx"));
    CHECK(bytes_of(scratch.file("a.xlsx")) == bytes_of(scratch.file("b.xlsx")));
    CHECK_FALSE(fs::exists(scratch.file("a.xlsx.part")));
}

TEST_CASE("text stays text, formulas carry their value", "[reports]") {
    const Scratch scratch;
    write_xlsx(small(), scratch.file("a.xlsx"));
    // Sheets: Caution, Answer, S, Notes.
    const std::string sheet = part_of(scratch.file("a.xlsx"), "xl/worksheets/sheet3.xml");
    CHECK_THAT(sheet, Contains("<f>2*'S'!$B$6</f><v>3</v>"));
    CHECK_THAT(sheet, Contains("<v>1.5</v>"));
    CHECK_THAT(sheet, !Contains("<f>1+1"));
    const std::string strings = part_of(scratch.file("a.xlsx"), "xl/sharedStrings.xml");
    CHECK_THAT(strings, Contains("<t>=1+1</t>"));
    const std::string book = part_of(scratch.file("a.xlsx"), "xl/workbook.xml");
    CHECK_THAT(book, Contains("<definedName name=\"t_use\">'S'!$B$6:$B$7</definedName>"));
}

// Under LC_NUMERIC with a decimal comma libxlsxwriter alone writes "1,5", and no program opens
// that.
TEST_CASE("a comma locale does not spoil the workbook", "[reports]") {
    const Scratch scratch;
    const char* comma = nullptr;
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "cs_CZ.UTF-8"}) {
        if ((comma = std::setlocale(LC_ALL, name)) != nullptr) break;
    }
    if (comma == nullptr) {
        const std::string make = "localedef -i de_DE -f UTF-8 '" + scratch.file("de_DE.UTF-8") + "'";
        ::setenv("LOCPATH", scratch.path.c_str(), 1);
        if (std::system(make.c_str()) == 0) comma = std::setlocale(LC_ALL, "de_DE.UTF-8");
        ::unsetenv("LOCPATH");
    }
    char probe[8];
    std::snprintf(probe, sizeof probe, "%.1f", 1.5);
    write_xlsx(small(), scratch.file("a.xlsx"));
    std::setlocale(LC_ALL, "C");
    if (comma == nullptr) {
        WARN("no locale with a decimal comma is installed; only \"C\" was tried");
    } else {
        REQUIRE(std::string(probe) == "1,5");  // the danger is there
    }
    CHECK_THAT(part_of(scratch.file("a.xlsx"), "xl/worksheets/sheet3.xml"), Contains("<v>1.5</v>"));
}

TEST_CASE("values that no workbook can hold are refused and nothing is left", "[reports]") {
    const Scratch scratch;
    Report report = small();
    Table& t = std::get<Table>(report.sections[0].blocks[0]);
    SECTION("a text beyond 32,767 characters") {
        t.rows[0].cells[0].value = std::string(40000, 'x');
        CHECK_THROWS_AS(write_xlsx(report, scratch.file("a.xlsx")), InputError);
    }
    SECTION("NaN") {
        t.rows[0].cells[1].value = std::numeric_limits<double>::quiet_NaN();
        CHECK_THROWS_AS(write_xlsx(report, scratch.file("a.xlsx")), InputError);
    }
    SECTION("NaN in a raw table") {
        report.raw_tables.push_back({"raw", "Raw", "", {{"v", "V", {}}}, [](const auto& sink) {
                                         const RawValue row[] = {
                                             std::numeric_limits<double>::quiet_NaN()};
                                         sink(row);
                                     }});
        CHECK_THROWS_AS(write_xlsx(report, scratch.file("a.xlsx")), InputError);
    }
    SECTION("a raw table that throws half way") {
        report.raw_tables.push_back(
            {"raw", "Raw", "", {{"v", "V", {}}},
             [](const RawTable::Sink&) { throw InputError("row 41,007", "a number"); }});
        CHECK_THROWS_AS(write_xlsx(report, scratch.file("a.xlsx")), InputError);
    }
    SECTION("a directory that is not there") {
        CHECK_THROWS_AS(write_xlsx(report, scratch.file("none/a.xlsx")), std::runtime_error);
    }
    CHECK(fs::is_empty(scratch.path));
}

TEST_CASE("a failed workbook leaves the one before in place", "[reports]") {
    const Scratch scratch;
    write_xlsx(small(), scratch.file("a.xlsx"));
    const std::string before = bytes_of(scratch.file("a.xlsx"));
    Report report = small();
    std::get<Table>(report.sections[0].blocks[0]).rows[0].cells[0].value = std::string(40000, 'x');
    CHECK_THROWS_AS(write_xlsx(report, scratch.file("a.xlsx")), InputError);
    CHECK(bytes_of(scratch.file("a.xlsx")) == before);
}

TEST_CASE("charts are native and carry alternative text", "[reports]") {
    const Scratch scratch;
    write_xlsx(samples::season(UnitsShown::us), scratch.file("a.xlsx"));
    CHECK_THAT(part_of(scratch.file("a.xlsx"), "xl/charts/chart1.xml"), Contains("Water, gal"));
    CHECK_THAT(part_of(scratch.file("a.xlsx"), "xl/drawings/drawing1.xml"),
               Contains("descr=\"Months whose dark bar"));
    CHECK_THAT(part_of(scratch.file("a.xlsx"), "xl/worksheets/sheet3.xml"), Contains("<pane "));
    CHECK_THAT(part_of(scratch.file("a.xlsx"), "docProps/core.xml"),
               Contains("2025-01-15T09:30:00Z"));
}

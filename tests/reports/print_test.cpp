// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/print_sibling.h"
#include "app/workflow/write_report.h"
#include "reports/content/audit_report.h"
#include "reports/content/season_report.h"
#include "tests/reports/sample_reports.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

/// The printing program as the others use it: started, fed, its files looked at with the tools
/// that readers have (poppler, qpdf).
namespace {

using namespace evenfall;
using namespace evenfall::reports;
using Catch::Matchers::Contains;
namespace fs = std::filesystem;

struct Scratch {
    fs::path path = fs::temp_directory_path() / ("evenfall-print-" + std::to_string(::getpid()));
    Scratch() { fs::create_directories(path); }
    ~Scratch() { fs::remove_all(path); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
};

std::string bytes_of(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::stringstream all;
    all << in.rdbuf();
    return all.str();
}

std::string output_of(const std::string& command, int expected = 0) {
    FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string out;
    char buffer[4096];
    for (std::size_t n = 0; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;) out.append(buffer, n);
    CAPTURE(command, out);
    CHECK(WEXITSTATUS(::pclose(pipe)) == expected);
    return out;
}

workflow::ReportOrder order(const Scratch& scratch, const std::string& name,
                            const std::string& format, const std::string& paper = "letter") {
    return {{format}, scratch.path, name, paper, EVENFALL_PRINT_PROGRAM};
}

}  // namespace

TEST_CASE("a PDF is whole, embedded, bookmarked and dated by the report", "[reports][print]") {
    const Scratch scratch;
    const auto files = workflow::write_report(samples::season(UnitsShown::us),
                                              order(scratch, "s", "pdf"));
    REQUIRE(files.size() == 1);
    const std::string path = files[0].string();
    CHECK_THAT(output_of("qpdf --check " + path), Contains("No syntax or stream encoding errors"));
    const std::string fonts = output_of("pdffonts " + path);
    std::stringstream lines(fonts);
    int count = 0;
    for (std::string line; std::getline(lines, line);) {
        if (line.find("DejaVu") == std::string::npos) continue;
        ++count;
        CHECK_THAT(line, Contains(" yes "));  // embedded
    }
    CHECK(count == 2);
    CHECK_THAT(fonts, !Contains("[none]"));
    const std::string info = output_of("pdfinfo -isodates " + path);
    CHECK_THAT(info, Contains("2025-01-15T09:30:00"));
    CHECK_THAT(info, Contains("PDF version:     1.4"));
    CHECK_THAT(info, Contains("letter"));
    CHECK(output_of("pdfimages -list " + path).find("image") == std::string::npos);
    const std::string outline = output_of("qpdf --json --json-key=outlines " + path);
    CHECK_THAT(outline, Contains("Use against budget"));
    CHECK_THAT(outline, Contains("Signatures"));
    const std::string text = output_of("pdftotext -layout " + path + " -");
    CHECK(text.find("Read this first") < text.find("Answer"));
    CHECK_THAT(text, Contains("Water, gal"));  // an axis title, selectable
    CHECK_THAT(text, Contains("Page 1 of "));
    // PDF/A-1 forbids transparency in any form.
    CHECK(output_of("qpdf --qdf --object-streams=disable " + path + " - | grep -a -c -E "
                    "'/(ca|CA) 0?\\.[0-9]|/SMask [0-9]' || true") == "0\n");
}

TEST_CASE("the same report gives the same PDF bytes", "[reports][print]") {
    const Scratch scratch;
    for (const char* format : {"pdf", "svg", "png"}) {
        CAPTURE(format);
        const Report report = samples::audit(UnitsShown::metric);
        const auto a = workflow::write_report(report, order(scratch, "a", format, "a4"));
        const auto b = workflow::write_report(report, order(scratch, "b", format, "a4"));
        REQUIRE(a.size() == b.size());
        for (std::size_t i = 0; i < a.size(); ++i) {
            CAPTURE(a[i].string());
            CHECK_FALSE(bytes_of(a[i]).empty());
            CHECK(bytes_of(a[i]) == bytes_of(b[i]));
        }
    }
    CHECK_THAT(output_of("pdfinfo " + (scratch.path / "a.pdf").string()), Contains("A4"));
}

TEST_CASE("hard cases still make pages", "[reports][print]") {
    const Scratch scratch;
    const auto rule = audit::QuarterRule::part_can;
    const auto f = samples::frame(UnitsShown::us);
    const auto text_of = [&](const Report& report) {
        const auto files = workflow::write_report(report, order(scratch, "h", "pdf"));
        return output_of("pdftotext -layout " + files[0].string() + " -");
    };
    SECTION("400 cans") {
        const auto text = text_of(audit_report({audited(samples::grid_of(400), "L", rule)}, "T", {}, f));
        CHECK_THAT(text, Contains("DU_LQ"));
    }
    SECTION("1 can") {
        const auto text = text_of(audit_report({audited(samples::grid_of(1), "L", rule)}, "T", {}, f));
        CHECK_THAT(text, Contains("No figures"));
    }
    SECTION("no test at all") {
        CHECK_THAT(text_of(audit_report({}, "T", {}, f)), Contains("No catch test is recorded"));
    }
    SECTION("no weather, no meters") {
        auto in = samples::season_inputs();
        in.weather.clear();
        in.meters.clear();
        CHECK_THAT(text_of(season_report(budget::season(in), std::nullopt, f)),
                   Contains("No metered use is recorded"));
    }
    SECTION("a site name of 200 letters without a blank, and Hebrew") {
        auto in = samples::season_inputs();
        in.site.name = std::string(200, 'W');
        in.areas[0].name = "\xD7\x9E\xD7\x93\xD7\xA9\xD7\x90\xD7\x94";
        CHECK_THAT(text_of(season_report(budget::season(in), std::nullopt, f)),
                   Contains("WWWWWWWW"));
    }
}

TEST_CASE("a missing or failing printing program is told", "[reports][print]") {
    const Scratch scratch;
    const Report report = samples::audit(UnitsShown::us);
    auto o = order(scratch, "x", "pdf");
    o.print_program = "/nowhere/evenfall-print";
    CHECK_THROWS_AS(workflow::write_report(report, o), workflow::PrintError);
    o.print_program = "/bin/false";
    CHECK_THROWS_AS(workflow::write_report(report, o), workflow::PrintError);
    CHECK(fs::is_empty(scratch.path));
    o = order(scratch, "x", "docx");
    CHECK_THROWS_AS(workflow::write_report(report, o), InputError);
    o = order(scratch, "x", "pdf", "a0");
    CHECK_THROWS_AS(workflow::write_report(report, o), InputError);
}

TEST_CASE("evenfall-print speaks exit statuses", "[reports][print]") {
    const Scratch scratch;
    const std::string program = EVENFALL_PRINT_PROGRAM;
    CHECK_THAT(output_of(program + " --version"), Contains("evenfall-print"));
    CHECK_THAT(output_of(program + " --format pdf", 2), Contains("--out"));
    const std::string out = " --out " + (scratch.path / "o.pdf").string();
    CHECK_THAT(output_of("echo '{}' | " + program + out, 3), Contains("kind"));
    CHECK_THAT(output_of("printf '' | " + program + out, 3), Contains("nothing"));
    CHECK_THAT(output_of(program + " /nowhere.json" + out, 3), Contains("/nowhere.json"));
}

TEST_CASE("a chart without a single value is a sentence, not empty axes", "[reports][print]") {
    const Scratch scratch;
    Report report = samples::season(UnitsShown::us);
    const auto text_in_pdf = [&](const std::string& name) {
        const auto files = workflow::write_report(report, order(scratch, name, "pdf"));
        return output_of("pdftotext -layout " + files[0].string() + " -");
    };
    CHECK_THAT(text_in_pdf("full"), !Contains("There are no data to draw.") && Contains("Months whose dark bar"));
    for (Section& section : report.sections) {
        if (section.key != "months") continue;
        for (Block& block : section.blocks) {
            auto* table = std::get_if<Table>(&block);
            if (table == nullptr) continue;
            for (Row& row : table->rows) {
                for (Cell& cell : row.cells) {
                    if (std::holds_alternative<double>(cell.value)) cell.value = std::monostate();
                }
            }
        }
    }
    CHECK_THAT(text_in_pdf("thin"), Contains("There are no data to draw.") && !Contains("Months whose dark bar"));
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Drawings to scale as PDF, looked at with poppler and qpdf. All CONSTRUCTED.
#include "app/workflow/print_sibling.h"
#include "app/workflow/reports.h"
#include "app/workflow/write_report.h"
#include "reports/text/plan_drawing.h"
#include "reports/text/svg_page.h"
#include "tests/plan/plans.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <array>
#include <cstdio>
#include <sstream>

#include <sys/wait.h>

using namespace evenfall;
using Catch::Matchers::Contains;
using reports::SvgPage;
using tests::Scratch;

namespace {

std::string output_of(const std::string& command) {
    FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string out;
    char buffer[4096];
    for (std::size_t n = 0; (n = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;) out.append(buffer, n);
    CAPTURE(command, out);
    CHECK(WEXITSTATUS(::pclose(pipe)) == 0);
    return out;
}

/// The first page as poppler draws it, four dots a millimetre.
class Picture {
  public:
    Picture(const Scratch& scratch, const std::string& pdf) {
        const std::string stem = (scratch / "picture").string();
        output_of("pdftoppm -r 101.6 -f 1 -l 1 -singlefile '" + pdf + "' '" + stem + "'");
        const std::string bytes = tests::bytes_of(stem + ".ppm");
        std::istringstream in(bytes);
        std::string form;
        int most = 0;
        in >> form >> width_ >> height_ >> most;
        REQUIRE(form == "P6");
        pixels_ = bytes.substr(static_cast<std::size_t>(in.tellg()) + 1);
    }
    /// @param x,y  millimetres from the top left
    std::array<int, 3> at(double x, double y) const {
        const auto column = static_cast<std::size_t>(x * 4.0), row = static_cast<std::size_t>(y * 4.0);
        const std::size_t i = 3 * (row * width_ + column);
        REQUIRE(i + 2 < pixels_.size());
        const auto part = [&](std::size_t k) { return static_cast<int>(static_cast<unsigned char>(pixels_[i + k])); };
        return {part(0), part(1), part(2)};
    }

  private:
    std::size_t width_ = 0, height_ = 0;
    std::string pixels_;
};

const std::array<int, 3> white{255, 255, 255};
const std::array<int, 3> red{255, 0, 0};
const std::array<int, 3> green{0, 255, 0};
const std::array<int, 3> blue{0, 0, 255};

std::string printed(const Scratch& scratch, const std::string& svg, const std::string& name = "sheet.pdf") {
    const auto pdf = scratch / name;
    workflow::print_sheet(svg, EVENFALL_PRINT_PROGRAM, pdf);
    return pdf.string();
}

}  // namespace

TEST_CASE("every shape of a sheet lands where the sheet says", "[reports][print][constructed]") {
    const Scratch scratch;
    SvgPage page(100.0, 60.0, "Shapes",
                 "<pattern id=\"spots\" width=\"4\" height=\"4\" patternUnits=\"userSpaceOnUse\"><rect width=\"4\" height=\"4\" "
                 "fill=\"#00ff00\"/><circle cx=\"2\" cy=\"2\" r=\"1\" fill=\"#0000ff\"/></pattern><pattern id=\"hatch\" width=\"4\" "
                 "height=\"4\" patternUnits=\"userSpaceOnUse\"><rect width=\"4\" height=\"4\" fill=\"#00ff00\"/>"
                 "<path d=\"M0 0L4 4\" stroke=\"#ff0000\" stroke-width=\"1\"/></pattern>");
    page.rectangle(4, 52, 16, 8, {"url(#hatch)"});
    page.rectangle(10, 10, 10, 10, {"#ff0000"});
    page.circle(35, 15, 5, {"#00ff00", "#0000ff", 1.0});
    // The lower half of a disc: from left to right over the top would be sweep 1, this is 0.
    page.path("M50 15A5 5 0 0 0 60 15Z", {"#ff0000"});
    // Three quarters of a disc, the upper right quarter missing.
    page.path("M75 15L75 10A5 5 0 1 0 80 15Z", {"#0000ff"});
    page.path("M10 30L30 30L30 50L10 50ZM15 35L25 35L25 45L15 45Z", {"#ff0000"}, true);
    page.rectangle(40, 32, 12, 12, {"url(#spots)"});
    page.rectangle(52, 32, 8, 12, {"url(#spots)"});
    page.open_clip(70, 30, 10, 10);
    page.rectangle(65, 25, 30, 30, {"#00ff00"});
    page.close_clip();
    page.line(85, 50, 95, 50, {"none", "#ff0000", 1.0, "2 2"});
    const Picture picture(scratch, printed(scratch, page.finish()));
    CHECK(picture.at(15, 15) == red);
    CHECK(picture.at(9, 15) == white);
    CHECK(picture.at(21, 15) == white);
    CHECK(picture.at(35, 15) == green);
    CHECK(picture.at(40, 15) == blue);   // its rim
    CHECK(picture.at(55, 17.5) == red);
    CHECK(picture.at(55, 12.5) == white);
    CHECK(picture.at(77, 12) == white);
    for (const auto& [x, y] : {std::pair{73.0, 12.0}, {73.0, 17.0}, {77.0, 17.0}}) CHECK(picture.at(x, y) == blue);
    CHECK(picture.at(12, 40) == red);
    CHECK(picture.at(20, 40) == white);  // the hole
    for (double x = 42.0; x < 60.0; x += 4.0) {
        CHECK(picture.at(x, 34) == blue);         // spots stand on the page's own grid, through both
        CHECK(picture.at(x + 1.75, 36.1) == green);
    }
    for (double step = 0.5; step < 4.0; step += 1.0) {
        CHECK(picture.at(8.0 + step, 52.0 + step) == red);      // the stroke runs from corner to corner of a tile
        CHECK(picture.at(10.0 + step / 4.0, 52.4) == green);
    }
    CHECK(picture.at(3.5, 54) == white);
    CHECK(picture.at(75, 35) == green);
    CHECK(picture.at(68, 35) == white);
    CHECK(picture.at(82, 35) == white);
    CHECK(picture.at(86, 50) == red);
    CHECK(picture.at(88, 50) == white);
}

TEST_CASE("a plan as PDF is a page to scale of vectors and searchable text", "[reports][print][constructed]") {
    const Scratch scratch;
    const plan::Plan lawn = plan_test::lawn();
    const plan::Overlap overlap = plan::overlap_of(lawn, {});
    for (const auto view : {reports::PlanView::layout, reports::PlanView::rate, reports::PlanView::islands}) {
        reports::PlanDrawing d;
        d.view = view;
        d.title = "Terrace \xC3\xA9t\xC3\xA9";
        d.overlap = &overlap;
        const std::string svg = reports::draw_plan(lawn, d);
        const std::string pdf = printed(scratch, svg);
        CHECK_THAT(output_of("qpdf --check " + pdf), Contains("No syntax or stream encoding errors"));
        // A3: 420 x 297 mm are 1190.55 x 841.89 pt, which Qt rounds to whole points.
        CHECK_THAT(output_of("pdfinfo " + pdf), Contains("1191 x 842 pts (A3)") && Contains("Pages:           1"));
        CHECK_THAT(output_of("pdffonts " + pdf), Contains("DejaVu") && !Contains("[none]"));
        CHECK(output_of("pdfimages -list " + pdf + " | tail -n +3").empty());  // no picture in it
        const std::string text = output_of("pdftotext -layout " + pdf + " -");
        for (const char* word : {"Terrace \xC3\xA9t\xC3\xA9", "Legend", "Head schedule", "Stations", "Scale 1 in = 10 ft", "H1/A"}) {
            CAPTURE(word);
            CHECK_THAT(text, Contains(word));
        }
        CHECK(tests::bytes_of(pdf) == tests::bytes_of(printed(scratch, svg, "again.pdf")));
    }
}

TEST_CASE("the report on a plan ends with its drawings", "[reports][print][constructed]") {
    const Scratch scratch;
    const reports::Frame frame{reports::UnitsShown::us, "", "2025-01-15T09:30:00Z", "Evenfall", {}};
    const auto report = workflow::plan_report_of(plan_test::lawn(), frame);
    REQUIRE(report.sheets.size() == 2);
    const auto files = workflow::write_report(report, {{"pdf"}, scratch.folder(), "plan", "letter", EVENFALL_PRINT_PROGRAM});
    const std::string pdf = files.at(0).string();
    const std::string info = output_of("pdfinfo " + pdf);
    const int pages = std::stoi(info.substr(info.find("Pages:") + 6));
    REQUIRE(pages > 4);
    const std::string last = std::to_string(pages);
    CHECK_THAT(output_of("pdfinfo -f " + last + " -l " + last + " " + pdf), Contains("1191 x 842 pts (A3)"));
    CHECK_THAT(output_of("pdftotext -f " + last + " -l " + last + " " + pdf + " -"),
               Contains("Dry and wet islands") && Contains("Page " + last + " of " + last));
    CHECK_THAT(output_of("pdftotext -f 1 -l 1 " + pdf + " -"), Contains("Page 1 of " + last));
}

TEST_CASE("what is no sheet of ours is refused", "[reports][print][constructed]") {
    const Scratch scratch;
    for (const char* text : {"nothing", "<html/>", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\"><image/></svg>",
                             "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10px\" height=\"10px\"/>",
                             "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\"><path d=\"M1 1C2 2 3 3 4 4\"/></svg>"}) {
        CAPTURE(text);
        CHECK_THROWS_AS(printed(scratch, text), workflow::PrintError);
        CHECK_FALSE(std::filesystem::exists(scratch / "sheet.pdf"));
    }
}

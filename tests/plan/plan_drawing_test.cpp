// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/plan_drawing.h"

#include "core/input_error.h"
#include "tests/plan/plans.h"

#include <boost/property_tree/ptree.hpp>
#include <boost/property_tree/xml_parser.hpp>
#include <catch2/catch.hpp>

#include <cmath>
#include <sstream>

using namespace evenfall;
using namespace evenfall::plan_test;
using reports::PlanDrawing;
using reports::PlanView;

namespace {

/// Reads the drawing with a general XML reader; throws when it is not well-formed.
boost::property_tree::ptree parsed(const std::string& svg) {
    std::istringstream in(svg);
    boost::property_tree::ptree tree;
    boost::property_tree::read_xml(in, tree);
    return tree;
}

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t n = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++n;
    return n;
}

}  // namespace

TEST_CASE("a plan is drawn to scale with legend, north, bar, schedule and stations", "[plan][reports][constructed]") {
    plan::Plan p = lawn();
    PlanDrawing d;
    d.title = "Terrace";
    const std::string svg = reports::draw_plan(p, d);
    const auto tree = parsed(svg);
    CHECK(tree.get<std::string>("svg.<xmlattr>.width") == "420mm");
    CHECK(tree.get<std::string>("svg.<xmlattr>.viewBox") == "0 0 420 297");
    for (const char* word : {"Legend", "Head schedule", "Stations", ">N<", "Scale 1 in =", "Terrace", "H1/A"}) {
        CAPTURE(word);
        CHECK(svg.find(word) != std::string::npos);
    }
    // 1 in = 10 ft is 1:120: 90 ft are 9 in, 228.6 mm; a head's radius of 15 ft is 38.1 mm.
    CHECK(svg.find("1 in = 10 ft (1:120)") != std::string::npos);
    CHECK(count_of(svg, "r=\"38.1\"") == 10);                  // full circles
    CHECK(count_of(svg, "A38.1 38.1") == 18);                  // part circles
    CHECK(count_of(svg, "r=\"0.9\"") == p.heads.size() + 2);   // symbols, two of them in the legend
}

TEST_CASE("rate, islands and differences are drawn from their results", "[plan][reports][constructed]") {
    plan::Plan p = lawn();
    p.heads.erase(p.heads.begin() + 9);  // leaves a dry spot; two on one place make a wet one
    p.heads.push_back(p.heads.back());
    p.heads.back().id = "twin";
    p.no_water = {rectangle(40.0, 20.0, 50.0, 25.0)};
    const plan::Overlap overlap = plan::overlap_of(p, {});
    PlanDrawing d;
    d.overlap = &overlap;
    d.view = PlanView::rate;
    const std::string rate = reports::draw_plan(p, d);
    parsed(rate);
    CHECK(rate.find("Predicted rate") != std::string::npos);
    CHECK(rate.find("paving, no water") != std::string::npos);
    d.view = PlanView::islands;
    d.units = reports::UnitsShown::metric;
    const std::string islands = reports::draw_plan(p, d);
    parsed(islands);
    CHECK(count_of(islands, "url(#dry)") > 1);  // more than the legend's own
    CHECK(count_of(islands, "url(#wet)") > 1);
    CHECK(islands.find("mm/h") != std::string::npos);
    CHECK(islands.size() < 5'000'000);
    d.view = PlanView::difference;
    CHECK_THROWS_AS(reports::draw_plan(p, d), std::logic_error);
    d.overlap = nullptr;
    d.view = PlanView::rate;
    CHECK_THROWS_AS(reports::draw_plan(p, d), std::logic_error);
}

TEST_CASE("what a user typed cannot become markup", "[plan][reports][constructed]") {
    plan::Plan p = lawn();
    p.heads[0].id = "</text><script>alert(1)</script>";
    p.heads[1].station = "A&B \"x\" \x01\xff";
    PlanDrawing d;
    d.title = "<b>&\x02";
    const std::string svg = reports::draw_plan(p, d);
    parsed(svg);
    CHECK(svg.find("<script") == std::string::npos);
    CHECK(svg.find("&lt;script&gt;") != std::string::npos);
    CHECK(svg.find('\x01') == std::string::npos);
    p.heads[0].arc = 0.0;
    CHECK_THROWS_AS(reports::draw_plan(p, d), InputError);
}

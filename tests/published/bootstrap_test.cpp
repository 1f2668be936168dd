// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/resample.h"
#include "core/units/number.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <sstream>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;

namespace {

std::vector<std::vector<std::string>> rows_of(const std::string& name) {
    std::ifstream in(std::string(EVENFALL_SOURCE_DIR) + "/tests/published/" + name);
    REQUIRE(in.good());
    std::vector<std::vector<std::string>> rows;
    bool header = true;
    for (std::string line; std::getline(in, line);) {
        if (line.empty() || line[0] == '#') continue;
        if (!std::exchange(header, false)) {
            rows.emplace_back();
            std::istringstream cells(line);
            for (std::string cell; std::getline(cells, cell, ',');) rows.back().push_back(cell);
        }
    }
    return rows;
}

double number(const std::string& text) {
    const auto value = units::parse_number(text);
    REQUIRE(value.has_value());
    return *value;
}

}  // namespace

// Against R's package boot, whose output is kept in bootstrap_intervals.csv (script beside it). The
// two programs draw different numbers, so end points agree to the noise of 10,000 resamples here
// and 50,000 there: 0.005.
TEST_CASE("BCa end points agree with R's package boot on five sets", "[audit][published]") {
    std::map<std::string, std::vector<double>> sets;
    for (const auto& row : rows_of("bootstrap_data.csv")) sets[row.at(0)].push_back(number(row.at(1)));
    REQUIRE(sets.size() == 5);
    const auto expected = rows_of("bootstrap_intervals.csv");
    REQUIRE(expected.size() == 15);
    for (const auto& row : expected) {
        const Sample s = sample_of(test::sheet(sets.at(row.at(0))), usual_choices());
        const auto r = resample_cans(s, QuarterRule::part_can, usual_resampling());
        const stats::Replicates& figure = row.at(1) == "du_lq"   ? r.du_lq
                                          : row.at(1) == "du_lh" ? r.du_lh
                                                                 : r.cu;
        const auto interval = figure.interval(0.90);
        REQUIRE(interval.has_value());
        CAPTURE(row.at(0), row.at(1));
        CHECK(interval->method == stats::IntervalMethod::bca);
        CHECK_THAT(figure.observed(), WithinAbs(number(row.at(2)), 5e-7));
        CHECK_THAT(interval->low, WithinAbs(number(row.at(3)), 0.005));
        CHECK_THAT(interval->high, WithinAbs(number(row.at(4)), 0.005));
    }
}

// The recorded table (tests/bench/coverage_table): what the documents say of it must be true of it.
TEST_CASE("the published coverage table holds what is said of it", "[audit][constructed]") {
    for (const auto& row : rows_of("coverage.csv")) {
        const bool random = row.at(1) == "random";
        const double cans = number(row.at(2));
        CAPTURE(row.at(0), row.at(1), cans);
        if (!random) continue;
        // Plain BCa from few cans is too short, from a hundred it holds.
        if (cans <= 24) CHECK(number(row.at(5)) < 0.89);
        if (cans >= 100) CHECK_THAT(number(row.at(5)), WithinAbs(0.90, 0.03));
        // Widened: from 16 cans on, every figure.
        for (std::size_t column = 9; column <= 12; ++column) {
            CHECK(number(row.at(column)) > 0.87);
            CHECK(number(row.at(column)) < 0.94);
        }
    }
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/soil.h"

#include "core/input_error.h"
#include "core/reference/table.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::units;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

site::Area area_of(const std::string& soil) {
    site::Area area;
    area.code = "north";
    area.soil = soil;
    return area;
}

}  // namespace

// PUBLISHED. FAO-56 example 36: available and readily available water of three crops on three soils.
// The print cuts or rounds RAW to whole millimetres (10.8 as 11, 112.2 as 112): within 0.5 mm.
TEST_CASE("FAO-56 example 36", "[budget][published]") {
    struct Row { double capacity_mm_m, root_m, p, taw, raw; };
    const Row rows[] = {{90, 0.4, 0.30, 36, 11},  {90, 0.8, 0.40, 72, 29},
                        {90, 1.2, 0.55, 108, 59}, {170, 0.4, 0.30, 68, 20},
                        {170, 0.8, 0.40, 136, 54}, {170, 1.2, 0.55, 204, 112},
                        {120, 0.4, 0.30, 48, 14}, {120, 0.8, 0.40, 96, 38},
                        {120, 1.2, 0.55, 144, 79}};
    for (const auto& r : rows) {
        const HoldingCapacity capacity{r.capacity_mm_m / 1000.0, "", "", false};
        const RootDepth roots{Depth::from_si(r.root_m), "", false};
        const double taw = available_water(capacity, roots).in(millimetre);
        CAPTURE(r.capacity_mm_m, r.root_m);
        CHECK_THAT(taw, WithinAbs(r.taw, 1e-9));
        CHECK_THAT(r.p * taw, WithinAbs(r.raw, 0.5));
    }
}

// PUBLISHED. FAO-56 Table 19 and the UC Davis table, as carried in the soil data.
TEST_CASE("holding capacity by texture", "[budget][published]") {
    CHECK_THAT(holding_capacity(area_of("sandy_loam")).share, WithinAbs(0.13, 1e-12));
    CHECK_THAT(holding_capacity(area_of("clay")).share, WithinAbs(0.16, 1e-12));
    // 1.75 to 2.50 in/ft; FAO-56 has no clay loam.
    const auto clay_loam = holding_capacity(area_of("clay_loam"));
    CHECK_THAT(clay_loam.share, WithinAbs(2.125 / 12.0, 1e-12));
    CHECK_THAT(clay_loam.method.english(), Contains("inches per foot"));
    const auto unknown = holding_capacity(area_of("moon dust"));
    CHECK(unknown.assumed);
    CHECK(unknown.share == holding_capacity(area_of("loam")).share);
    CHECK_THAT(unknown.method.english(), Contains("soil not in the data"));
}

// CONSTRUCTED, by the formula in the note to FAO-56 Table 22.
TEST_CASE("depletion share adjusted to crop ET", "[budget][constructed]") {
    CHECK_THAT(adjusted_depletion_share(0.40, 3.5 * millimetre), WithinAbs(0.46, 1e-12));
    CHECK_THAT(adjusted_depletion_share(0.50, 7.0 * millimetre), WithinAbs(0.42, 1e-12));
    CHECK(adjusted_depletion_share(0.15, 9.0 * millimetre) == 0.1);
    CHECK(adjusted_depletion_share(0.75, 0.0 * millimetre) == 0.8);
    site::Area area = area_of("loam");
    area.plant = "bermudagrass";
    CHECK(depletion_share(area).p == 0.50);
    area.plant = "moss";
    CHECK(depletion_share(area).assumed);
}

// FROM MEMORY: cells of the intake and accumulation tables; class limits by hand.
TEST_CASE("intake and accumulation by texture and slope", "[budget][constructed]") {
    site::Area area = area_of("clay_loam");
    area.slope_percent = 4.9;
    CHECK_THAT(intake_rate(area).rate.in(inch_per_hour), WithinAbs(0.25, 1e-12));
    CHECK_FALSE(intake_rate(area).assumed);
    CHECK_THAT(surface_accumulation(area).depth.in(inch), WithinAbs(0.22, 1e-12));
    area.slope_percent = 5.0;
    CHECK_THAT(intake_rate(area).rate.in(inch_per_hour), WithinAbs(0.20, 1e-12));
    area.slope_percent = 16.0;
    CHECK_THAT(intake_rate(area).rate.in(inch_per_hour), WithinAbs(0.06, 1e-12));
    area.slope_percent.reset();
    CHECK(intake_rate(area).assumed);
    area.slope_percent = -1.0;
    CHECK_THROWS_WITH(intake_rate(area), Contains("north"));
    area.slope_percent = 101.0;
    CHECK_THROWS_AS(surface_accumulation(area), InputError);
}

// CONSTRUCTED. The same case as the cycle and soak example: clay loam, 5 %, 1.60 in/h, intake 0.20:
// in 9.43 minutes one cycle fills the surface, 60 x 0.22/1.40.
TEST_CASE("most water that gets into the ground", "[budget][constructed]") {
    const Rate rate = 1.60 * inch_per_hour;
    const Rate intake = 0.20 * inch_per_hour;
    const Depth stand = 0.22 * inch;
    const Depth one_cycle = rate * (60.0 * 0.22 / 1.40 * minute);
    CHECK_THAT(most_infiltrated(one_cycle, rate, intake, stand, 1).in(inch),
               WithinRel(one_cycle.in(inch), 1e-12));
    // 0.40 in in one go: 15 min x 0.20 in/h + 0.22 = 0.27 in go in, 0.13 run off; two cycles hold.
    CHECK_THAT(most_infiltrated(0.40 * inch, rate, intake, stand, 1).in(inch),
               WithinAbs(0.27, 1e-12));
    CHECK(most_infiltrated(0.40 * inch, rate, intake, stand, 2) > 0.40 * inch);
    CHECK_THROWS_AS(most_infiltrated(0.4 * inch, Rate{}, intake, stand, 1), InputError);
    CHECK_THROWS_AS(most_infiltrated(0.4 * inch, rate, intake, stand, 0), InputError);
}

TEST_CASE("root depth of an area", "[budget][constructed]") {
    site::Area area = area_of("loam");
    CHECK(root_depth(area).assumed);
    CHECK_THAT(root_depth(area).depth.in(millimetre), WithinAbs(200.0, 1e-9));
    area.root_depth = parse_measure<Depth>("6in");
    CHECK_THAT(root_depth(area).depth.in(inch), WithinAbs(6.0, 1e-12));
    area.root_depth = parse_measure<Depth>("6000mm");
    CHECK_THROWS_WITH(root_depth(area), Contains("6000 mm"));
}

// CONSTRUCTED. Every soil yields a capacity within the range of mineral soils, every intake falls
// with slope.
TEST_CASE("soil data hang together", "[budget][constructed]") {
    for (const auto& row : reference::Table::named("soils.csv").rows()) {
        CAPTURE(std::string(row.text("key")));
        const auto capacity = holding_capacity(area_of(std::string(row.text("key"))));
        CHECK_FALSE(capacity.assumed);
        CHECK(capacity.share > 0.04);
        CHECK(capacity.share < 0.25);
        auto area = area_of(std::string(row.text("key")));
        double before = 1e9;
        for (const double slope : {0.0, 6.0, 10.0, 14.0, 20.0}) {
            area.slope_percent = slope;
            const auto intake = intake_rate(area);
            CHECK_FALSE(intake.assumed);
            CHECK(intake.rate.si() < before);
            before = intake.rate.si();
        }
    }
}

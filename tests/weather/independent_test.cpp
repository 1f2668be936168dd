// SPDX-License-Identifier: GPL-3.0-or-later
// The closed forms against independent computations, recorded under tests/published with the scripts
// that made them: scipy (quadrature, root finding, complex step) and R (the equations written again).
#include "core/weather/effective_rain.h"
#include "core/weather/penman_monteith.h"
#include "core/weather/reference_et.h"
#include "core/weather/sun.h"
#include "tests/weather/csv_data.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::weather;
using namespace evenfall::units;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

double ours(const std::string& form, double a, double b, double c) {
    if (form == "ra_day") return extraterrestrial(a, static_cast<int>(b));
    if (form == "daylight") return daylight_hours(a, static_cast<int>(b));
    if (form == "ra_hour") {
        return extraterrestrial(HourPlace{a, 0.0, 0.0, static_cast<int>(b), c, 1.0});
    }
    // 4098 e0/(T + 237.3)^2 rounds 17.27 x 237.3 = 4098.171; undone here to compare the derivative.
    if (form == "slope") return saturation_slope(a, Equation::fao_56) * 17.27 * 237.3 / 4098.0;
    if (form == "nrcs") return effective_rain_nrcs(a * inch, b * inch, c * inch).in(inch);
    if (form == "hargreaves") return hargreaves_samani(a, b, c);
    throw std::runtime_error("unknown form " + form);
}

}  // namespace

// INDEPENDENT (derived). Quadrature and root finding are good to about 1e-10.
TEST_CASE("closed forms against scipy", "[weather][derived]") {
    const auto rows = test::read_data("../../published/weather_forms.csv");
    REQUIRE(rows.size() == 449);
    for (const auto& row : rows) {
        CAPTURE(row.text("form"), row.text("a"), row.text("b"), row.text("c"));
        CHECK_THAT(ours(row.text("form"), row.number("a"), row.number("b"), row.number("c")),
                   WithinAbs(row.number("value"), 1e-9));
    }
}

// INDEPENDENT (derived). The same equations written in R, on made days of every latitude and season.
TEST_CASE("daily reference ET against R", "[weather][derived]") {
    const auto rows = test::read_data("../../published/reference_et_r.csv");
    REQUIRE(rows.size() > 200);
    for (const auto& row : rows) {
        WeatherDay day{calendar::make_date(2015, 1, 1) +
                       std::chrono::days{static_cast<int>(row.number("day_of_year")) - 1}};
        day.tmax = Temperature::celsius(row.number("tmax"));
        day.tmin = Temperature::celsius(row.number("tmin"));
        day.tdew = Temperature::celsius(row.number("tdew"));
        day.solar = row.number("rs_mj_m2") * megajoule_per_m2;
        day.wind = row.number("wind_m_s") * metre_per_second;
        StationSetting s;
        s.latitude = row.number("latitude");
        s.elevation = row.number("elevation_m") * metre;
        s.wind_height = row.number("wind_height_m") * metre;
        CAPTURE(s.latitude, row.text("day_of_year"));
        const auto mm = [&] { return reference_et(day, s).et.value().in(millimetre); };
        CHECK_THAT(mm(), WithinRel(row.number("etos"), 1e-11));
        s.surface = Surface::tall_alfalfa;
        CHECK_THAT(mm(), WithinRel(row.number("etrs"), 1e-11));
        s.surface = Surface::short_grass;
        s.equation = Equation::fao_56;
        CHECK_THAT(mm(), WithinRel(row.number("fao"), 1e-11));
    }
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/air.h"
#include "core/weather/sun.h"
#include "tests/weather/csv_data.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace evenfall;
using namespace evenfall::weather;
using Catch::Matchers::WithinAbs;

namespace {

/// Half a unit of the last digit of a printed number.
double half_a_digit(const std::string& printed) {
    const auto dot = printed.find('.');
    const auto decimals = dot == std::string::npos ? 0 : printed.size() - dot - 1;
    // The print is decimal, the computation binary: 1e-9 keeps an exact half on our side.
    return 0.5 * std::pow(10.0, -static_cast<double>(decimals)) + 1e-9;
}

double table_value(const std::string& table, double x) {
    if (table.starts_with("2.1")) return pressure_at(x);
    if (table.starts_with("2.3")) return saturation_pressure(x);
    if (table.starts_with("2.4")) return saturation_slope(x, Equation::fao_56);
    if (table.starts_with("2.8")) return black_body_of_day(x, Equation::fao_56);
    if (table.starts_with("2.9")) return wind_share_at_two_metres(x);
    throw std::runtime_error("unknown table " + table);
}

constexpr double rio = -22.90;
constexpr double bangkok = 13.73;
constexpr double lyon = 45.72;

}  // namespace

// PUBLISHED. FAO-56 annex 2, tables 2.1, 2.3, 2.4, 2.8, 2.9.
TEST_CASE("cells of FAO-56 annex 2", "[weather][published]") {
    const auto rows = test::read_data("fao56-annex2-cells.csv");
    REQUIRE(rows.size() == 51);
    for (const auto& row : rows) {
        CAPTURE(row.text("table"), row.text("x"));
        CHECK_THAT(table_value(row.text("table"), row.number("x")),
                   WithinAbs(row.number("published"), half_a_digit(row.text("published"))));
    }
}

// PUBLISHED. FAO-56 examples 2 to 6 and 14.
TEST_CASE("air: FAO-56 examples 2 to 6 and 14", "[weather][published]") {
    CHECK_THAT(pressure_at(1800.0), WithinAbs(81.8, 0.05));
    CHECK_THAT(psychrometric_constant(pressure_at(1800.0)), WithinAbs(0.054, 5e-4));
    CHECK_THAT(saturation_pressure(24.5), WithinAbs(3.075, 5e-4));
    CHECK_THAT(saturation_pressure(15.0), WithinAbs(1.705, 5e-4));
    CHECK_THAT(mean_saturation_pressure(24.5, 15.0), WithinAbs(2.39, 5e-3));
    CHECK_THAT(saturation_pressure(19.75), WithinAbs(2.30, 5e-3));
    CHECK_THAT(pressure_at(1200.0), WithinAbs(87.9, 0.05));
    CHECK_THAT(vapour_from_wet_bulb(25.6, 19.5, pressure_at(1200.0), Airing::ventilated),
               WithinAbs(1.91, 5e-3));
    CHECK_THAT(vapour_from_both_humidities(25.0, 18.0, 82.0, 54.0), WithinAbs(1.70, 5e-3));
    CHECK_THAT(vapour_from_mean_humidity(25.0, 18.0, 68.0), WithinAbs(1.78, 5e-3));
    CHECK_THAT(mean_saturation_pressure(25.0, 18.0) -
                   vapour_from_both_humidities(25.0, 18.0, 82.0, 54.0),
               WithinAbs(0.91, 5e-3));
    CHECK_THAT(wind_share_at_two_metres(10.0), WithinAbs(0.75, 5e-3));
    CHECK_THAT(3.2 * wind_share_at_two_metres(10.0), WithinAbs(2.4, 0.05));
}

// DERIVED. The other airings and single humidities have no printed example: by hand from Eq. 16
// and 18, with e0(19.5) = 2.2669, P = 87.897 and e0(18) = 2.06399.
TEST_CASE("air: wet bulb without a fan, single humidities", "[weather][derived]") {
    const double p = pressure_at(1200.0);
    CHECK_THAT(vapour_from_wet_bulb(25.6, 19.5, p, Airing::natural),
               WithinAbs(2.2669 - 0.0008 * 87.897 * 6.1, 1e-4));
    CHECK_THAT(vapour_from_wet_bulb(25.6, 19.5, p, Airing::indoor),
               WithinAbs(2.2669 - 0.0012 * 87.897 * 6.1, 1e-4));
    CHECK_THAT(vapour_from_highest_humidity(18.0, 82.0), WithinAbs(2.06399 * 0.82, 1e-5));
    CHECK_THAT(vapour_from_lowest_humidity(25.0, 54.0), WithinAbs(3.16778 * 0.54, 1e-5));
}

// PUBLISHED. FAO-56 examples 8 and 9, 3 September at 20 degrees south.
TEST_CASE("sun: FAO-56 examples 8 and 9", "[weather][published]") {
    CHECK_THAT(inverse_sun_distance(246), WithinAbs(0.985, 5e-4));
    CHECK_THAT(declination(246), WithinAbs(0.120, 5e-4));
    CHECK_THAT(sunset_angle(-20.0, 246), WithinAbs(1.527, 5e-4));
    CHECK_THAT(extraterrestrial(-20.0, 246), WithinAbs(32.2, 0.05));
    CHECK_THAT(0.408 * extraterrestrial(-20.0, 246), WithinAbs(13.1, 0.05));
    CHECK_THAT(daylight_hours(-20.0, 246), WithinAbs(11.7, 0.05));
}

// PUBLISHED. FAO-56 examples 10 to 13, 15 and 16.
TEST_CASE("radiation: FAO-56 examples 10 to 13, 15 and 16", "[weather][published]") {
    const auto fao = Equation::fao_56;
    const double ra = extraterrestrial(rio, 135);
    CHECK_THAT(ra, WithinAbs(25.1, 0.05));
    CHECK_THAT(daylight_hours(rio, 135), WithinAbs(10.9, 0.05));
    const double rs = solar_from_sunshine(220.0 / 31.0, daylight_hours(rio, 135), ra, 0.25, 0.50);
    CHECK_THAT(rs, WithinAbs(14.5, 0.05));
    const double rso = clear_sky(ra, 0.0);
    CHECK_THAT(rso, WithinAbs(18.8, 0.05));
    CHECK_THAT(clear_sky_calibrated(ra, 0.25, 0.50), WithinAbs(18.8, 0.05));
    CHECK_THAT(black_body_of_day(25.1, fao), WithinAbs(38.8, 0.05));
    CHECK_THAT(black_body_of_day(19.1, fao), WithinAbs(35.8, 0.05));
    CHECK_THAT(rs / rso, WithinAbs(0.77, 5e-3));
    CHECK_THAT(cloud_factor(rs / rso, fao), WithinAbs(0.69, 5e-3));
    const double rnl = longwave_of_day(25.1, 19.1, 2.1, cloud_factor(rs / rso, fao), fao);
    CHECK_THAT(rnl, WithinAbs(3.5, 0.05));
    CHECK_THAT(0.77 * rs, WithinAbs(11.1, 0.05));
    CHECK_THAT(0.77 * rs - rnl, WithinAbs(7.6, 0.05));
    CHECK_THAT(soil_heat_of_month(14.1, 18.8), WithinAbs(0.33, 5e-3));

    const double ra_lyon = extraterrestrial(lyon, 196);
    CHECK_THAT(ra_lyon, WithinAbs(40.6, 0.05));
    CHECK_THAT(solar_from_range(26.6, 14.8, ra_lyon, clear_sky(ra_lyon, 200.0), 0.16),
               WithinAbs(22.3, 0.05));
    const double ra_bangkok = extraterrestrial(bangkok, 105);
    CHECK_THAT(ra_bangkok, WithinAbs(38.1, 0.05));
    const double rs_bangkok =
        solar_from_range(34.8, 25.6, ra_bangkok, clear_sky(ra_bangkok, 2.0), 0.19);
    CHECK_THAT(rs_bangkok, WithinAbs(21.9, 0.05));
    const double rnl_bangkok = longwave_of_day(
        34.8, 25.6, 2.85, cloud_factor(rs_bangkok / clear_sky(ra_bangkok, 2.0), fao), fao);
    CHECK_THAT(rnl_bangkok, WithinAbs(3.0, 0.05));
    CHECK_THAT(0.77 * rs_bangkok - rnl_bangkok, WithinAbs(13.9, 0.05));
}

// DERIVED. Where the sun does not rise or set, N is 0 or 24 h by definition; at a pole on an
// all-day sun Ra is (24/pi) 4.92 dr pi sin(delta) = 24 x 4.92 dr sin(delta).
TEST_CASE("sun: polar day and night", "[weather][derived]") {
    CHECK(daylight_hours(80.0, 355) == 0.0);
    CHECK(extraterrestrial(80.0, 355) == 0.0);
    CHECK_THAT(daylight_hours(80.0, 172), WithinAbs(24.0, 1e-12));
    CHECK_THAT(extraterrestrial(90.0, 172),
               WithinAbs(24.0 * 4.92 * inverse_sun_distance(172) * std::sin(declination(172)),
                         1e-9));
}

// DERIVED. The hours of a day, cut anywhere, add up to the daily formula (Eq. 28 against Eq. 21).
TEST_CASE("sun: hourly radiation adds up to the day", "[weather][derived]") {
    for (const double latitude : {-60.0, -20.0, 0.0, 16.22, 45.72, 66.0, 75.0}) {
        for (const int j : {15, 80, 172, 274, 355}) {
            for (const double west : {0.0, 16.25, 118.77388, 240.0, 350.0}) {
                double total = 0.0;
                for (int h = 0; h < 24; ++h) {
                    const double zone = 15.0 * std::round(west / 15.0);
                    total += extraterrestrial(HourPlace{latitude, west, zone, j, h + 0.5, 1.0});
                }
                CAPTURE(latitude, j, west);
                CHECK_THAT(total, WithinAbs(extraterrestrial(latitude, j), 1e-9));
            }
        }
    }
}

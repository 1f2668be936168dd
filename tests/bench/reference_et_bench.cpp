// SPDX-License-Identifier: GPL-3.0-or-later
// Reference ET of 300 stations over 5 years of days, every input measured, against a bare loop of the
// same equation in the same run.
#include "core/weather/reference_et.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <vector>

using namespace evenfall;
using namespace evenfall::units;

namespace {

constexpr int stations = 300;
constexpr int day_count = 1826;

double draw(std::uint64_t& state) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<double>(state >> 11U) * 0x1p-53;
}

double seconds_of(auto work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double e0(double t) { return 0.6108 * std::exp(17.27 * t / (t + 237.3)); }

/// ASCE-EWRI 2005, short surface, in one piece [mm/d].
double bare(double lat, double z, double zw, int j, double tmax, double tmin, double tdew, double rs,
            double uz) {
    const double pi = 3.14159265358979323846;
    const double phi = lat * pi / 180.0;
    const double delta = 0.409 * std::sin(2.0 * pi / 365.0 * j - 1.39);
    const double ws = std::acos(-std::tan(phi) * std::tan(delta));
    const double ra = 24.0 / pi * 4.92 * (1.0 + 0.033 * std::cos(2.0 * pi / 365.0 * j)) *
                      (ws * std::sin(phi) * std::sin(delta) +
                       std::cos(phi) * std::cos(delta) * std::sin(ws));
    const double ratio = std::clamp(rs / ((0.75 + 2e-5 * z) * ra), 0.3, 1.0);
    const double t = 0.5 * (tmax + tmin);
    const double d = 2503.0 * std::exp(17.27 * t / (t + 237.3)) / ((t + 237.3) * (t + 237.3));
    const double g = 0.000665 * 101.3 * std::pow((293.0 - 0.0065 * z) / 293.0, 5.26);
    const double ea = e0(tdew);
    const double rnl = 4.901e-9 * 0.5 *
                       (std::pow(tmax + 273.16, 4) + std::pow(tmin + 273.16, 4)) *
                       (0.34 - 0.14 * std::sqrt(ea)) * (1.35 * ratio - 0.35);
    const double u2 = uz * 4.87 / std::log(67.8 * zw - 5.42);
    return (0.408 * d * (0.77 * rs - rnl) +
            g * 900.0 / (t + 273.0) * u2 * (0.5 * (e0(tmax) + e0(tmin)) - ea)) /
           (d + g * (1.0 + 0.34 * u2));
}

}  // namespace

int main() {
    std::uint64_t seed = 7;
    std::vector<weather::WeatherDay> days;
    for (int t = 0; t < day_count; ++t) {
        weather::WeatherDay d{calendar::make_date(2019, 1, 1) + std::chrono::days{t}};
        const double warm = 15.0 - 10.0 * std::cos(2.0 * 3.14159265 * t / 365.25);
        d.tmin = Temperature::celsius(warm - 4.0 * draw(seed));
        d.tmax = Temperature::celsius(warm + 12.0 + 4.0 * draw(seed));
        d.tdew = Temperature::celsius(d.tmin->in_celsius() - 3.0);
        d.solar = (6.0 + 4.0 * draw(seed)) * megajoule_per_m2;
        d.wind = (1.0 + 3.0 * draw(seed)) * metre_per_second;
        days.push_back(d);
    }
    double ours = 0.0, plain = 0.0, best_ours = 1e300, best_plain = 1e300;
    for (int round = 0; round < 3; ++round) {
        ours = plain = 0.0;
        best_ours = std::min(best_ours, seconds_of([&] {
            for (int s = 0; s < stations; ++s) {
                weather::StationSetting setting;
                setting.latitude = 25.0 + 0.06 * s;
                setting.elevation = static_cast<double>(3 * s) * metre;
                for (const auto& d : days) {
                    ours += weather::reference_et(d, setting).et->in(millimetre);
                }
            }
        }));
        best_plain = std::min(best_plain, seconds_of([&] {
            for (int s = 0; s < stations; ++s) {
                for (const auto& d : days) {
                    plain += bare(25.0 + 0.06 * s, 3.0 * s, 2.0, calendar::day_of_year(d.date),
                                  d.tmax->in_celsius(), d.tmin->in_celsius(),
                                  d.tdew->in_celsius(), d.solar->in(megajoule_per_m2),
                                  d.wind->in(metre_per_second));
                }
            }
        }));
    }
    const bool equal = std::abs(ours - plain) <= 1e-9 * std::abs(plain);
    std::printf("%d days: reference_et %.3f s, bare equation %.3f s, ratio %.2f, %.2f M days/s, sums %s\n",
                stations * day_count, best_ours, best_plain, best_ours / best_plain,
                stations * day_count / best_ours / 1e6, equal ? "equal" : "DIFFERENT");
    return equal ? EXIT_SUCCESS : EXIT_FAILURE;
}

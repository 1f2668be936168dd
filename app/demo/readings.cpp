// SPDX-License-Identifier: GPL-3.0-or-later
// Meter registers of the scenario, from the way each field is watered.
#include "app/demo/random.h"
#include "app/demo/scenario.h"
#include "core/units/number.h"
#include "core/units/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace evenfall::demo {
namespace {

using namespace units;
using calendar::Date;
using std::chrono::days;

/// What this part of the country asks of a lawn on a usual day, by month, mm. Managers water by
/// such a table, not by this year's weather; that is where much of the waste comes from.
constexpr std::array usual_et_mm{1.0, 1.8, 2.9, 4.2, 5.6, 6.7, 7.1, 6.3, 4.7, 3.0, 1.6, 1.0};

struct Watering {
    const char* meter;
    double acres;
    double coefficient;
    int every_days;
    double factor;        ///< depth applied over the usual need
    std::size_t station;  ///< in scenario_rain(): 0 farm, 1 campus
};

/// AV-M3 stands twice: its two lawns are watered on different days.
constexpr std::array waterings{
    Watering{"HB-M1", 30.7, 0.85, 2, 1.22, 0},  Watering{"HB-M2", 38.5, 0.68, 4, 1.30, 0},
    Watering{"HB-M3", 61.8, 0.85, 3, 1.12, 0},  Watering{"HB-M4", 30.7, 0.68, 3, 1.10, 0},
    Watering{"AV-M1", 3.2, 0.85, 2, 1.30, 1},   Watering{"AV-M2", 2.6, 0.85, 2, 1.62, 1},
    Watering{"AV-M3", 0.9, 0.85, 2, 1.45, 1},   Watering{"AV-M3", 0.6, 0.85, 2, 1.45, 1}};

/// The walk and the gates were set to July in 2025 and forgotten until the season closed.
bool left_at_july(const Watering& w, Date date) {
    return std::string_view(w.meter) == "AV-M3" && date >= calendar::make_date(2025, 8, 1);
}

Depth usual_depth(const Watering& w, Date date) {
    const auto month = static_cast<unsigned>(calendar::month_of(date).month());
    if (month < 3 || month > 11) return Depth{};
    const std::size_t row = left_at_july(w, date) ? 6 : month - 1;
    return usual_et_mm.at(row) * w.coefficient * w.factor * w.every_days * millimetre;
}

/// Volume on one day; none on days between, and none after good rain, which the crews do watch.
Volume watered_on(const Watering& w, std::size_t day_index, Date date,
                  const std::vector<double>& rain_mm, Random& random) {
    const auto offset = static_cast<std::size_t>(w.acres < 0.8 ? 1 : 0);
    if ((day_index + offset) % static_cast<std::size_t>(w.every_days) != 0) return Volume{};
    double recent = 0.0;
    for (std::size_t back = 0; back < 3 && back <= day_index; ++back) recent += rain_mm[day_index - back];
    if (recent > 7.0 && !left_at_july(w, date)) return Volume{};
    return usual_depth(w, date) * random.between(0.95, 1.05) * (w.acres * acre);
}

Volume leaked_on(std::string_view meter, Date date) {
    const bool leaks = meter == "AV-M1" && date >= calendar::make_date(2025, 6, 10) &&
                       date <= calendar::make_date(2025, 8, 20);
    return leaks ? 1.9 * gallon_per_minute * day : Volume{};
}

struct Register {
    const char* meter;
    double start;      ///< register on the first morning
    Volume count;      ///< volume of one count
    double modulus;    ///< where it rolls over
    int decimals;
    std::uint64_t seed;
};
constexpr std::array registers{Register{"HB-M1", 412.36, acre_foot, 1e6, 2, 101},
                               Register{"HB-M2", 88120, thousand_gallons, 1e7, 0, 102},
                               Register{"HB-M3", 641877, thousand_gallons, 1e7, 0, 103},
                               Register{"HB-M4", 205310, thousand_gallons, 1e7, 0, 104},
                               Register{"AV-M1", 7310450, us_gallon, 1e8, 0, 105},
                               Register{"AV-M2", 18655.2, hundred_cubic_feet, 1e6, 1, 106},
                               Register{"AV-M3", 96204, hundred_gallons, 1e5, 0, 107}};

/// The commons' meter has a logger that writes the register every hour through the warm months.
bool logged_hourly(std::string_view meter, Date date) {
    return meter == "AV-M1" && date >= calendar::make_date(2025, 5, 1) &&
           date < calendar::make_date(2025, 10, 1);
}

/// Each day is watered in the five hours from nine in the evening, hours 15 to 19 after six.
constexpr int first_watered_hour = 15;
constexpr int watered_hours = 5;

class RegisterTape {
  public:
    explicit RegisterTape(std::string& out) : out_(out) {}

    void write(std::string_view meter, calendar::LocalTime at, double register_value, int decimals,
               bool estimated) {
        out_ += std::string(meter) + "," + calendar::format_local_time(at).substr(0, 16) + "," +
                format_fixed(register_value, decimals) + (estimated ? ",estimated\n" : ",measured\n");
    }

  private:
    std::string& out_;
};

calendar::LocalTime six_in_the_morning(Date date) {
    return calendar::LocalTime{date.time_since_epoch()} + std::chrono::hours{6};
}

/// The 23 readings between two mornings.
void write_hours(RegisterTape& tape, const Register& reg, Date date, double value, Volume watered,
                 Volume leaked) {
    for (int h = 1; h < 24; ++h) {
        value += leaked / reg.count / 24.0;
        if (h > first_watered_hour && h <= first_watered_hour + watered_hours) {
            value += watered / reg.count / watered_hours;
        }
        tape.write(reg.meter, six_in_the_morning(date) + std::chrono::hours{h},
                   std::fmod(value, reg.modulus), reg.decimals, false);
    }
}

void append_register(std::string& out, const Register& reg, const std::vector<DailyRain>& rain) {
    RegisterTape tape(out);
    Random random(reg.seed);
    double value = reg.start;
    std::string meter = reg.meter;
    Date date = calendar::first_day(first_month);
    const Date end = calendar::last_day(last_month) + days{1};
    for (std::size_t i = 0; date <= end; ++i, date += days{1}) {
        // Now and then nobody reached this register and the value was put down by guess.
        const bool estimated = reg.seed == 106 && i % 100 >= 93 && i % 2 == 0;
        tape.write(meter, six_in_the_morning(date), std::fmod(value, reg.modulus), reg.decimals, estimated);
        if (meter == "HB-M3" && date == calendar::make_date(2025, 6, 18)) {
            meter = "HB-M3B";  // final reading above, first reading of the new meter here
            value = 12.0;
            tape.write(meter, six_in_the_morning(date), value, reg.decimals, false);
        }
        if (date == end) break;
        const Volume leaked = leaked_on(reg.meter, date);
        Volume watered{};
        for (const Watering& w : waterings) {
            if (std::string_view(w.meter) == reg.meter) {
                watered += watered_on(w, i, date, rain[w.station].mm, random);
            }
        }
        if (logged_hourly(reg.meter, date)) write_hours(tape, reg, date, value, watered, leaked);
        value += (watered + leaked) / reg.count;
    }
}

}  // namespace

std::string readings_table() {
    const auto rain = scenario_rain();
    std::string out = "meter,time,register,kind\n";
    for (const Register& reg : registers) append_register(out, reg, rain);
    return out;
}

}  // namespace evenfall::demo

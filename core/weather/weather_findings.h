// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/weather/weather_checks.h"

#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

/// Shared by the files of check_weather; not for use elsewhere.
namespace evenfall::weather {

struct Limit {
    double value;
    Severity severity;
    Phrase source;
};

/// Every row of weather_limits.csv that is used here, looked up once.
struct Limits {
    Limit dew_above_minimum = read("dew_above_minimum");
    Limit envelope_days = read("envelope_days");
    Limit humidity_excess = read("humidity_excess");
    Limit humidity_sensor_excess = read("humidity_sensor_excess");
    Limit rain_high = read("rain_high");
    Limit rain_impossible = read("rain_impossible");
    Limit range_high = read("range_high");
    Limit recorded_et_high = read("recorded_et_high");
    Limit rhmax_low = read("rhmax_low");
    Limit rhmean_low = read("rhmean_low");
    Limit rhmin_low = read("rhmin_low");
    Limit series_days = read("series_days");
    Limit series_mean_high = read("series_mean_high");
    Limit solar_clear_envelope = read("solar_clear_envelope");
    Limit solar_clear_excess = read("solar_clear_excess");
    Limit solar_low = read("solar_low");
    Limit stuck_days = read("stuck_days");
    Limit temperature_high = read("temperature_high");
    Limit temperature_low = read("temperature_low");
    Limit warm_minimum = read("warm_minimum");
    Limit wind_high = read("wind_high");
    Limit wind_impossible = read("wind_impossible");
    Limit wind_low = read("wind_low");
    Limit wind_low_days = read("wind_low_days");

    static Limit read(std::string_view key);
};

const Limits& limits();

/// Collects findings; days of one kind that follow each other are joined.
class Findings {
  public:
    void add(std::string_view kind, Severity severity, Phrase source, calendar::Date from, calendar::Date to,
             Sentence sentence);
    /// One day against a limit of the data.
    void add(std::string_view kind, const Limit& limit, calendar::Date day, Sentence sentence);
    std::vector<WeatherFinding> sorted() &&;

  private:
    std::vector<WeatherFinding> all_;
    std::map<std::string, std::size_t, std::less<>> latest_;
};

/// Source of what needs no limit: a lowest temperature above the highest is wrong by definition.
inline constexpr Phrase by_definition = phrase("weather", "by definition");

/// Gaps, days that come twice, stuck sensors, calm, radiation that never reaches a clear sky, wrong
/// units: what shows only over days. The days are in order of their dates.
void check_runs(std::span<const WeatherDay> days, const StationSetting& setting, Findings& out);

}  // namespace evenfall::weather

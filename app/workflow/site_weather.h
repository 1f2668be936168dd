// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// The weather of a site from the book: one station's daily record, its hours, or several stations
/// mixed by distance, as the site's record says. Tests: tests/app/site_weather_test.cpp
namespace evenfall::workflow {

struct SiteWeather {
    std::vector<weather::WeatherDay> days;  ///< of the daily record, where there is one station
    weather::StationSetting station;        ///< of that station, or of the site
    std::optional<std::vector<weather::PlaceDay>> place_days;  ///< from hours or several stations
    std::vector<budget::Note> notes;        ///< how; empty for one daily record
};

/// Weather days of the station that was asked for last, so that sites in a row which share a station
/// read its record once. For one book and one thread.
class WeatherAtHand {
  public:
    const std::vector<weather::WeatherDay>& days(const store::Book& book, const std::string& station,
                                                 calendar::Date from, calendar::Date to);

  private:
    std::string station_;
    calendar::Date from_{};
    calendar::Date to_{};
    std::vector<weather::WeatherDay> days_;
};

/// @throws InputError for a site without elevation whose station has none either; for stations to be
///   mixed of which one is not in the book or has no coordinates, or a site without longitude; for
///   hours of a station of which no longitude is known
SiteWeather weather_of_site(const store::Book& book, const site::Site& site, calendar::Date from,
                            calendar::Date to);
/// The same for one of many sites.
SiteWeather weather_of_site(const store::Book& book, const site::Site& site, calendar::Date from,
                            calendar::Date to, WeatherAtHand& at_hand);

}  // namespace evenfall::workflow

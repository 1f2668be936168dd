// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/site_weather.h"

#include "core/input_error.h"
#include "core/site/distance.h"
#include "core/store/hour_store.h"
#include "core/store/weather_store.h"
#include "core/units/number.h"

#include <chrono>
#include <utility>

namespace evenfall::workflow {
namespace {

using calendar::Date;
using store::WeatherStation;

constexpr Phrase mixing_source =
    phrase("workflow",
           "Shepard (1968) A two-dimensional interpolation function for irregularly-spaced data, 23rd ACM "
           "National Conference [memory]; common practice between weather stations");

/// Latitude and elevation of the station where it has its own, else of the site.
weather::StationSetting setting_of(const site::Site& site, const WeatherStation& station) {
    weather::StationSetting setting;
    setting.latitude = station.latitude.value_or(site.latitude);
    std::optional<units::Length> elevation;
    if (site.elevation) elevation = site.elevation->quantity();
    if (station.elevation) elevation = station.elevation->quantity();
    if (station.wind_height_m) setting.wind_height = *station.wind_height_m * units::metre;
    if (!elevation) {
        throw InputError({phrase("workflow", "no elevation for site %1"), site.code},
                         phrase("workflow",
                                "the elevation of the site or of its weather station; air pressure "
                                "follows from it"));
    }
    setting.elevation = *elevation;
    return setting;
}

/// A station's days, from its hours where it has some.
struct Record {
    std::vector<weather::WeatherDay> daily;
    std::vector<weather::WeatherHour> hours;
    weather::StationSetting setting;

    std::vector<weather::PlaceDay> place_days(const site::Site& site, const WeatherStation& station, Date from) const {
        if (hours.empty()) return weather::days_by_record(daily, setting);
        const auto longitude = station.longitude ? station.longitude : site.longitude;
        if (!longitude) {
            throw InputError({phrase("workflow", "hourly weather of station %1 without its longitude"), station.code},
                             {phrase("workflow",
                                     "the longitude of the station or of site %1; the angle of the sun "
                                     "follows from it"),
                              site.code});
        }
        const calendar::TimeZone zone(site.time_zone);
        auto days = weather::days_by_hours(hours, {setting, *longitude, {}}, zone, daily);
        std::erase_if(days, [&](const weather::PlaceDay& d) { return d.date < from; });
        return days;
    }
};

Record record_of(const store::Book& book, const site::Site& site, const WeatherStation& station, Date from, Date to,
                 WeatherAtHand& at_hand) {
    const calendar::TimeZone zone(site.time_zone);
    // From the day before on: the cloud cover of the evening is carried through the first night.
    return {at_hand.days(book, station.code, from, to),
            store::weather_hours(book, station.code, zone.start_of_day(from - std::chrono::days{1}),
                                 zone.start_of_day(to + std::chrono::days{1})),
            setting_of(site, station)};
}

std::string kilometres(units::Length distance) {
    return units::format_fixed(distance.in(units::kilometre), 1) + " km";
}

budget::Note hours_note(const std::string& code) {
    return {"weather station",
            {phrase("workflow",
                    "%1: reference ET and rain from its hours, summed by the site's day; a day "
                    "that the hours do not cover takes the station's daily record"),
             code},
            phrase("workflow", "FAO-56 Eq. 53 and chapter 4; ASCE-EWRI 2005"),
            false};
}

/// A station that may be mixed: it is in the book and has a place.
WeatherStation mixable(const store::Book& book, const site::Site& site, const std::string& code) {
    auto station = store::find_weather_station(book, code);
    if (!station) {
        throw InputError({phrase("workflow", "weather station %1, which site %2 mixes with others"), code, site.code},
                         phrase("workflow", "a weather station in the book"));
    }
    if (!station->latitude || !station->longitude) {
        const Sentence found = station->latitude
                                   ? Sentence(phrase("workflow", "weather station %1 without longitude"), code)
                                   : Sentence(phrase("workflow", "weather station %1 without latitude"), code);
        throw InputError(found, {phrase("workflow",
                                        "latitude and longitude of every station that site %1 mixes by "
                                        "distance"),
                                 site.code});
    }
    return *std::move(station);
}

class Mixing {
  public:
    Mixing(const store::Book& book, const site::Site& site, const std::vector<std::string>& codes)
        : site_(site), power_(site.weather_power.value_or(site::usual_weather_power)) {
        if (!site.longitude) {
            throw InputError({phrase("workflow", "site %1 without longitude"), site.code},
                             phrase("workflow", "its longitude: it mixes weather stations by distance"));
        }
        for (const std::string& code : codes) {
            stations_.push_back(mixable(book, site, code));
            const WeatherStation& s = stations_.back();
            distances_.push_back(site::distance_between({site.latitude, *site.longitude}, {*s.latitude, *s.longitude}));
        }
    }

    SiteWeather weather(const store::Book& book, Date from, Date to, WeatherAtHand& at_hand) const {
        SiteWeather out;
        std::vector<weather::StationDays> all;
        std::vector<budget::Note> hourly;
        for (std::size_t i = 0; i < stations_.size(); ++i) {
            const Record record = record_of(book, site_, stations_[i], from, to, at_hand);
            if (!record.hours.empty()) hourly.push_back(hours_note(stations_[i].code));
            all.push_back({stations_[i].code, distances_[i], record.place_days(site_, stations_[i], from)});
        }
        out.station.latitude = site_.latitude;
        if (site_.elevation) out.station.elevation = site_.elevation->quantity();
        out.place_days = weather::mixed_by_distance(all, power_);
        out.notes.push_back(note());
        out.notes.insert(out.notes.end(), hourly.begin(), hourly.end());
        return out;
    }

  private:
    budget::Note note() const {
        const auto weights = weather::distance_weights(distances_, power_);
        std::vector<Sentence> stations;
        for (std::size_t i = 0; i < stations_.size(); ++i) {
            const WeatherStation& s = stations_[i];
            const Sentence height = s.elevation ? Sentence(phrase("workflow", "elevation %1"), s.elevation->text())
                                                : Sentence(phrase("workflow", "the site's elevation taken"));
            stations.push_back({phrase("workflow", "%1 at %2 (%3 %, %4)"), s.code, kilometres(distances_[i]),
                                units::format_fixed(100.0 * weights[i], 1), height});
        }
        const std::string power = units::format_shortest(power_);
        const Sentence mixed =
            site_.weather_power
                ? Sentence(phrase("workflow", "mixed by inverse distance to the power %1: "), power)
                : Sentence(phrase("workflow", "mixed by inverse distance to the power %1 (usual): "), power);
        const Sentence site = site_.elevation ? Sentence(site_.elevation->text())
                                              : Sentence(phrase("workflow", "no recorded elevation"));
        const Sentence text = Sentence::joined(
            {mixed,
             Sentence::joined(std::move(stations), ", "),
             {phrase("workflow",
                     "; site at %1, nothing is corrected for height; each station's ET by its own record, "
                     "ET and rain mixed each by itself, a station's gap carried by the others' weights"),
              site}},
            "");
        return {"weather stations", text, mixing_source, false};
    }

    const site::Site& site_;
    double power_;
    std::vector<WeatherStation> stations_;
    std::vector<units::Length> distances_;
};

}  // namespace

const std::vector<weather::WeatherDay>& WeatherAtHand::days(const store::Book& book, const std::string& station,
                                                            Date from, Date to) {
    if (station != station_ || from != from_ || to != to_) {
        days_ = store::weather_days(book, station, from, to);
        station_ = station;
        from_ = from;
        to_ = to;
    }
    return days_;
}

SiteWeather weather_of_site(const store::Book& book, const site::Site& site, Date from, Date to) {
    WeatherAtHand at_hand;
    return weather_of_site(book, site, from, to, at_hand);
}

SiteWeather weather_of_site(const store::Book& book, const site::Site& site, Date from, Date to,
                            WeatherAtHand& at_hand) {
    const auto codes = site::weather_codes(site);
    if (codes.size() > 1) return Mixing(book, site, codes).weather(book, from, to, at_hand);
    const std::string code = codes.empty() ? std::string() : codes.front();
    const auto station = store::find_weather_station(book, code).value_or(WeatherStation{code, {}, {}, {}, {}});
    Record record = record_of(book, site, station, from, to, at_hand);
    SiteWeather out;
    if (!record.hours.empty()) {
        out.place_days = record.place_days(site, station, from);
        out.notes.push_back(hours_note(code));
    }
    out.days = std::move(record.daily);
    out.station = record.setting;
    return out;
}

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/place_weather.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <map>

namespace evenfall::weather {
namespace {

using calendar::Date;
using units::Depth;

constexpr double same_place_m = 1.0;
constexpr double highest_power = 10.0;

/// Sums of rain by the day of the zone, where every moment of the day has a value.
std::map<Date, Depth> rain_of(std::span<const WeatherHour> hours, const calendar::TimeZone& zone) {
    struct Sum {
        Depth rain;
        double seconds = 0.0;
    };
    std::map<Date, Sum> sums;
    for (const WeatherHour& h : hours) {
        if (!h.rain) continue;
        Sum& sum = sums[zone.day_of(h.start)];
        sum.rain += *h.rain;
        sum.seconds += h.length.in(units::second);
    }
    std::map<Date, Depth> whole;
    for (const auto& [date, sum] : sums) {
        const auto length = zone.start_of_day(date + std::chrono::days{1}) - zone.start_of_day(date);
        if (sum.seconds > static_cast<double>(length.count()) - 1.0) whole[date] = sum.rain;
    }
    return whole;
}

void remark(PlaceDay& day, Sentence said) {
    day.flags.push_back(said.english());
    day.remarks.push_back(std::move(said));
}

/// The day of the hours, or what the daily record says where they do not cover it.
PlaceDay day_of_both(const ReferenceEt* hourly, std::optional<Depth> rain, std::optional<PlaceDay> daily,
                     Date date) {
    PlaceDay out;
    out.date = date;
    if (hourly != nullptr && hourly->et) {
        out.et = hourly->et;
        out.method = hourly->method;
        out.source = hourly->source;
        out.flags = hourly->flags;
    } else {
        if (daily) out = std::move(*daily);
        if (hourly != nullptr) {
            // How much of the day the hours cover; what was assumed in them matters no more.
            if (!hourly->flags.empty()) out.flags.push_back(hourly->flags.back());
            remark(out, out.et ? phrase("weather", "hours incomplete: the station's daily record stands in")
                               : phrase("weather", "hours incomplete, and no daily record: no ET"));
        }
        daily.reset();
    }
    if (rain) out.rain = rain;
    else if (daily) out.rain = daily->rain;
    return out;
}

/// One value mixed over the stations that have it.
struct Mix {
    std::optional<Depth> value;
    std::string missing;  ///< codes of the stations without one
};

class Mixer {
  public:
    Mixer(std::span<const StationDays> stations, double power) : stations_(stations) {
        std::vector<units::Length> distances;
        for (const StationDays& s : stations) distances.push_back(s.distance);
        weights_ = distance_weights(distances, power);
        for (std::size_t i = 0; i < stations.size(); ++i) {
            all_ += (i == 0 ? "" : ", ") + stations[i].code;
            // A station at the place itself leaves the others no weight; these still fill its gaps.
            filling_.push_back(distances[i].in(units::metre) < same_place_m
                                   ? 0.0
                                   : std::pow(distances[i].in(units::kilometre), -power));
        }
    }

    PlaceDay day(const std::vector<const PlaceDay*>& days, Date date) const {
        PlaceDay out;
        out.date = date;
        const Mix et = mix(days, &PlaceDay::et);
        const Mix rain = mix(days, &PlaceDay::rain);
        out.et = et.value;
        out.rain = rain.value;
        for (std::size_t i = 0; i < days.size(); ++i) {
            if (days[i] == nullptr) continue;
            for (const std::string& flag : days[i]->flags) out.flags.push_back(stations_[i].code + ": " + flag);
        }
        if (et.value) {
            out.method = method_of(days);
            for (const PlaceDay* d : days) {
                if (d != nullptr && d->et && out.source.english().empty()) out.source = d->source;
            }
            if (!et.missing.empty()) {
                remark(out, {phrase("weather", "no ET of %1: the others' weights carry it"), et.missing});
            }
        }
        if (rain.value && !rain.missing.empty()) {
            out.remarks.push_back({phrase("weather", "no rain of %1: the others' weights carry it"), rain.missing});
        }
        return out;
    }

  private:
    Mix mix(const std::vector<const PlaceDay*>& days, std::optional<Depth> PlaceDay::* part) const {
        Mix out;
        Depth sum;
        double weight = 0.0;
        for (const auto* weights : {&weights_, &filling_}) {
            if (weight > 0.0) break;
            out.missing.clear();
            for (std::size_t i = 0; i < days.size(); ++i) {
                if (days[i] == nullptr || !(days[i]->*part)) {
                    // Who has no weight is not missed.
                    if (weights_[i] > 0.0) out.missing += (out.missing.empty() ? "" : ", ") + stations_[i].code;
                    continue;
                }
                sum += *(days[i]->*part) * (*weights)[i];
                weight += (*weights)[i];
            }
        }
        if (weight > 0.0) out.value = sum / weight;
        return out;
    }

    /// The stations' own method where it is one, by distance.
    Sentence method_of(const std::vector<const PlaceDay*>& days) const {
        std::vector<Sentence> methods;
        for (const PlaceDay* d : days) {
            if (d == nullptr || !d->et) continue;
            if (std::find(methods.begin(), methods.end(), d->method) == methods.end()) methods.push_back(d->method);
        }
        Sentence text = methods.front();
        for (std::size_t i = 1; i < methods.size(); ++i) text = {phrase("weather", "%1 and %2"), text, methods[i]};
        return {phrase("weather", "%1, mixed by distance from %2"), text, all_};
    }

    std::span<const StationDays> stations_;
    std::vector<double> weights_;
    std::vector<double> filling_;
    std::string all_;
};

}  // namespace

PlaceDay day_by_record(const WeatherDay& day, const StationSetting& setting) {
    ReferenceEt et = reference_et(day, setting);
    return {day.date, et.et, day.rain, std::move(et.method), et.source, std::move(et.flags), {}};
}

std::vector<PlaceDay> days_by_record(std::span<const WeatherDay> days, const StationSetting& setting) {
    check_setting(setting);
    std::vector<PlaceDay> out;
    out.reserve(days.size());
    for (const WeatherDay& day : days) out.push_back(day_by_record(day, setting));
    return out;
}

std::vector<PlaceDay> days_by_hours(std::span<const WeatherHour> hours, const HourlySetting& setting,
                                    const calendar::TimeZone& zone, std::span<const WeatherDay> daily) {
    const auto summed = days_of(hourly_reference_et(hours, setting), zone);
    const auto rain = rain_of(hours, zone);
    std::vector<PlaceDay> out;
    std::size_t h = 0;
    std::size_t d = 0;
    while (h < summed.size() || d < daily.size()) {
        const bool hour_first = d == daily.size() || (h < summed.size() && summed[h].date <= daily[d].date);
        const Date date = hour_first ? summed[h].date : daily[d].date;
        const ReferenceEt* hourly = hour_first ? &summed[h++] : nullptr;
        std::optional<PlaceDay> record;
        if (d < daily.size() && daily[d].date == date) record = day_by_record(daily[d++], setting.station);
        const auto wet = rain.find(date);
        out.push_back(day_of_both(hourly, wet == rain.end() ? std::nullopt : std::optional(wet->second),
                                  std::move(record), date));
    }
    return out;
}

std::vector<double> distance_weights(std::span<const units::Length> distances, double power) {
    if (distances.empty())
        throw InputError(phrase("weather", "no weather station"), phrase("weather", "at least one"));
    if (!(power > 0.0 && power <= highest_power)) {
        throw InputError(units::format_shortest(power),
                         phrase("weather", "a power of the distance above 0, at most 10; 2 is usual"));
    }
    std::vector<double> weights;
    std::size_t at_place = 0;
    for (const units::Length d : distances) {
        if (!(d.si() >= 0.0))
            throw InputError(units::format_shortest(d.si()) + " m", phrase("weather", "a distance of zero or more"));
        at_place += d.in(units::metre) < same_place_m ? 1 : 0;
    }
    double sum = 0.0;
    for (const units::Length d : distances) {
        const bool here = d.in(units::metre) < same_place_m;
        weights.push_back(at_place > 0 ? (here ? 1.0 : 0.0) : std::pow(d.in(units::kilometre), -power));
        sum += weights.back();
    }
    for (double& w : weights) w /= sum;
    return weights;
}

std::vector<PlaceDay> mixed_by_distance(std::span<const StationDays> stations, double power) {
    const Mixer mixer(stations, power);
    std::map<Date, std::vector<const PlaceDay*>> by_date;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        for (const PlaceDay& day : stations[i].days) {
            auto& days = by_date[day.date];
            days.resize(stations.size(), nullptr);
            days[i] = &day;
        }
    }
    std::vector<PlaceDay> out;
    out.reserve(by_date.size());
    for (const auto& [date, days] : by_date) out.push_back(mixer.day(days, date));
    return out;
}

}  // namespace evenfall::weather

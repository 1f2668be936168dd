// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/raw_tables.h"

#include <array>
#include <utility>

namespace evenfall::reports {
namespace {

template <class Q>
RawValue in_unit(const std::optional<Q>& q, Q unit) {
    if (!q) return std::monostate();
    return q->in(unit);
}

RawValue plain(const std::optional<double>& v) {
    if (!v) return std::monostate();
    return *v;
}

RawValue celsius(const std::optional<units::Temperature>& t) {
    if (!t) return std::monostate();
    return t->in_celsius();
}

std::string_view words_of(meter::ReadingKind kind) {
    switch (kind) {
        case meter::ReadingKind::estimated: return "estimated";
        case meter::ReadingKind::corrected: return "corrected";
        case meter::ReadingKind::measured: break;
    }
    return "measured";
}

}  // namespace

RawTable readings_table(std::shared_ptr<const budget::SeasonInputs> inputs) {
    RawTable t{"raw_readings",
               "Meter readings",
               "As read, before the multiplier. A reading with a span is the volume of that time; "
               "one without is what the register showed.",
               {{"meter", "Meter", {}, true},
                {"time", "Time, UTC", {}, true},
                {"value", "Reading", {2, ""}},
                {"unit", "Unit", {}, true},
                {"span_s", "Span", {0, "s"}},
                {"kind", "Kind", {}, true}},
               {}};
    t.produce = [inputs = std::move(inputs)](const RawTable::Sink& sink) {
        for (const auto& m : inputs->meters) {
            for (const auto& r : m.readings) {
                const std::string time = calendar::format_instant(r.at);
                const std::array<RawValue, 6> row{
                    std::string_view(m.meter.code), std::string_view(time), r.value,
                    m.meter.unit.name, static_cast<double>(r.span.count()), words_of(r.kind)};
                sink(row);
            }
        }
    };
    return t;
}

namespace {

/// Days that were worked out from hours or from several stations.
RawTable place_table(std::shared_ptr<const budget::SeasonInputs> inputs) {
    RawTable t{"raw_weather",
               "Weather record",
               "As the calculation took it; an empty cell is a gap, not zero.",
               {{"date", "Date", {}, true},
                {"rain", "Rain", {1, "mm"}},
                {"eto", "Reference ET", {2, "mm"}},
                {"method", "Method", {}, true}},
               {}};
    t.produce = [inputs = std::move(inputs)](const RawTable::Sink& sink) {
        for (const auto& d : *inputs->place_days) {
            const std::string date = calendar::format_date(d.date);
            const std::array<RawValue, 4> row{std::string_view(date), in_unit(d.rain, units::millimetre),
                                              in_unit(d.et, units::millimetre), std::string_view(d.method.english())};
            sink(row);
        }
    };
    return t;
}

}  // namespace

RawTable weather_table(std::shared_ptr<const budget::SeasonInputs> inputs) {
    if (inputs->place_days) return place_table(std::move(inputs));
    RawTable t{"raw_weather",
               "Weather record",
               "As the calculation took it; an empty cell is a gap, not zero.",
               {{"date", "Date", {}, true},
                {"tmax", "Highest temperature", {1, "deg C"}},
                {"tmin", "Lowest temperature", {1, "deg C"}},
                {"rhmax", "Highest humidity", {0, "percent"}},
                {"rhmin", "Lowest humidity", {0, "percent"}},
                {"solar", "Solar radiation", {2, "MJ/m2"}},
                {"wind", "Wind", {2, "m/s"}},
                {"rain", "Rain", {1, "mm"}},
                {"eto", "Reference ET of the station", {2, "mm"}}},
               {}};
    t.produce = [inputs = std::move(inputs)](const RawTable::Sink& sink) {
        for (const auto& d : inputs->weather) {
            const std::string date = calendar::format_date(d.date);
            const std::array<RawValue, 9> row{std::string_view(date),
                                              celsius(d.tmax),
                                              celsius(d.tmin),
                                              plain(d.rhmax_percent),
                                              plain(d.rhmin_percent),
                                              in_unit(d.solar, units::megajoule_per_m2),
                                              in_unit(d.wind, units::metre_per_second),
                                              in_unit(d.rain, units::millimetre),
                                              in_unit(d.reference_et, units::millimetre)};
            sink(row);
        }
    };
    return t;
}

}  // namespace evenfall::reports

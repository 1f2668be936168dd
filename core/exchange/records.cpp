// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/records.h"

#include "core/calendar/time_zone.h"
#include "core/site/shapes.h"
#include "core/units/number.h"

#include <algorithm>
#include <utility>

namespace evenfall::exchange {
namespace {

/// Codes are names for people and keys for us: no line breaks, not too long.
std::string code(RowReader& row, std::string_view group) {
    std::string text = row.needed_text(group);
    if (text.size() > 80 || text.find_first_of("\r\n\t") != std::string::npos) {
        row.refuse(group, text, phrase("exchange", "a code of at most 80 bytes in one line"));
    }
    return text;
}

template <class Q>
std::optional<units::Typed<Q>> positive(RowReader& row, std::string_view group) {
    auto value = row.measure<Q>(group);
    if (value && !(value->value > 0)) {
        row.refuse(group, row.text(group), phrase("exchange", "a value above zero"));
        return std::nullopt;
    }
    return value;
}

void read_register(RowReader& row, std::optional<units::NamedUnit<units::Volume>>& unit,
                   std::optional<double>& multiplier, std::optional<int>& digits) {
    const std::string_view name = row.text("unit");
    if (!name.empty()) {
        try {
            unit = units::unit_named<units::Volume>(column_key(name));
        } catch (const InputError& e) {
            row.refuse("unit", name, e.issues().front().expected);
        }
    }
    multiplier = row.number("multiplier");
    if (multiplier && !(*multiplier > 0)) {
        row.refuse("multiplier", row.text("multiplier"), phrase("exchange", "a multiplier above zero"));
    }
    digits = row.whole_number("digits", 1, 15);
}

}  // namespace

site::Site read_site(RowReader& row) {
    site::Site s;
    s.code = code(row, "site");
    s.name = row.needed_text("name");
    s.organisation = row.text("organisation");
    s.latitude = row.needed_number("latitude").value_or(0.0);
    static_cast<void>(row.number_within("latitude", -90, 90, phrase("exchange", "degrees north from -90 to 90")));
    s.longitude = row.number_within("longitude", -180, 180, phrase("exchange", "degrees east from -180 to 180"));
    s.elevation = row.measure<units::Length>("elevation");
    if (row.text("elevation").empty()) row.refuse("elevation", "", phrase("exchange", "the elevation above sea level"));
    if (s.elevation && (s.elevation->quantity() < -500.0 * units::metre ||
                        s.elevation->quantity() > 9000.0 * units::metre)) {
        row.refuse("elevation", row.text("elevation"), phrase("exchange", "an elevation from -500 m to 9000 m"));
    }
    const std::string_view zone = row.text("time_zone");
    if (!zone.empty()) {
        s.time_zone = zone;
        try {
            static_cast<void>(calendar::TimeZone(s.time_zone));
        } catch (const InputError& e) {
            row.refuse("time_zone", zone, e.issues().front().expected);
        }
    }
    s.weather = row.text("weather");
    s.weather_power = row.number_within("weather_power", 0.1, 10,
                                        phrase("exchange", "a power of the distance from 0.1 to 10; 2 is usual"));
    return s;
}

namespace {

void read_size(RowReader& row, site::Area& area) {
    const std::string_view shape = row.text("shape");
    if (const auto size = positive<units::Area>(row, "size")) {
        area.size = *size;
    } else if (!shape.empty()) {
        const auto unit = units::unit_named<units::Length>(row.unit("shape"));
        const auto square = units::unit_named<units::Area>(unit.name == "ft" ? "ft2" : "m2");
        try {
            area.size = {site::area_of_shapes(shape, unit.unit).in(square.unit), square};
        } catch (const InputError& e) {
            row.refuse("shape", e.issues().front().found, e.issues().front().expected);
        }
    } else if (const auto measured = row.number("outline_m2")) {
        area.size = {*measured, units::unit_named<units::Area>("m2")};
    } else if (row.text("size").empty()) {
        row.refuse(row.has("size") || !row.has("shape") ? "size" : "shape", "", phrase("exchange", "the size of the area"));
    }
}

}  // namespace

site::Area read_area(RowReader& row) {
    site::Area a;
    a.code = code(row, "area");
    // An outline may be added to an area that is in the book, which has its site already.
    const bool outlined = !row.text("outline").empty();
    a.site = outlined ? std::string(row.text("site")) : code(row, "site");
    a.name = row.text("name");
    read_size(row, a);
    a.plant = row.text("plant");
    a.coefficient = row.number_within("coefficient", 0, 2, phrase("exchange", "a coefficient from 0 to 2"));
    a.head_type = row.text("head_type");
    a.soil = row.text("soil");
    a.root_depth = positive<units::Depth>(row, "root_depth");
    a.slope_percent = row.number_within("slope_percent", 0, 200, phrase("exchange", "a slope from 0 to 200 percent"));
    a.meter = row.text("meter");
    a.share = row.number_within("share", 0, 1, phrase("exchange", "a share from 0 to 1, such as 0.4"));
    return a;
}

meter::Meter read_meter(RowReader& row) {
    meter::Meter m;
    m.code = code(row, "meter");
    m.site = code(row, "site");
    m.rated_flow = positive<units::Flow>(row, "rated_flow");
    std::optional<units::NamedUnit<units::Volume>> unit;
    std::optional<double> multiplier;
    if (m.rated_flow && row.text("unit") == "h") {
        // An hour counter: hours x rated flow, see core/meter/use.h.
        multiplier = row.number("multiplier");
        m.digits = row.whole_number("digits", 1, 15);
        unit = units::known_units<units::Volume>().front();
    } else {
        read_register(row, unit, multiplier, m.digits);
        if (row.text("unit").empty()) static_cast<void>(row.needed_text("unit"));
        if (m.rated_flow) {
            row.refuse("unit", row.text("unit"),
                       phrase("exchange", "h where a rated flow is given: the register then counts hours"));
        }
    }
    if (unit) m.unit = *unit;
    m.multiplier = multiplier.value_or(1.0);
    m.parent = row.text("parent");
    m.replaces = row.text("replaces");
    m.installed = row.date("installed");
    m.removed = row.date("removed");
    if (m.installed && m.removed && *m.removed < *m.installed) {
        row.refuse("removed", row.text("removed"), phrase("exchange", "a day not before the meter was installed"));
    }
    m.size = positive<units::Length>(row, "size");
    if (!m.parent.empty() && m.parent == m.code) {
        row.refuse("parent", m.parent, phrase("exchange", "another meter than the meter itself"));
    }
    if (!m.replaces.empty() && m.replaces == m.code) {
        row.refuse("replaces", m.replaces, phrase("exchange", "another meter than the meter itself"));
    }
    return m;
}

ExchangeRow read_exchange(RowReader& row) {
    ExchangeRow x;
    x.meter = code(row, "meter");
    if (const auto time = row.needed_time("time")) x.time = *time;
    x.exchange.final_value = row.needed_number("final").value_or(0.0);
    x.exchange.first_value = row.needed_number("first").value_or(0.0);
    read_register(row, x.exchange.unit, x.exchange.multiplier, x.exchange.digits);
    return x;
}

store::WeatherStation read_station(RowReader& row) {
    store::WeatherStation s;
    s.code = code(row, "station");
    if (s.code.find(';') != std::string::npos) {
        row.refuse("station", s.code,
                   phrase("exchange", "a code without a semicolon, which stands between the stations of a site"));
    }
    static_cast<void>(row.needed_number("latitude"));
    s.latitude = row.number_within("latitude", -90, 90, phrase("exchange", "degrees north from -90 to 90"));
    s.longitude = row.number_within("longitude", -180, 180, phrase("exchange", "degrees east from -180 to 180"));
    s.elevation = row.measure<units::Length>("elevation");
    if (const auto height = positive<units::Length>(row, "wind_height")) {
        s.wind_height_m = height->quantity().in(units::metre);
    }
    return s;
}

meter::Bill read_bill(RowReader& row) {
    meter::Bill b{code(row, "meter"), {}, {}, {}};
    b.from = row.needed_date("from").value_or(calendar::Date{});
    b.to = row.needed_date("to").value_or(calendar::Date{});
    if (row.ok() && b.to <= b.from) row.refuse("to", row.text("to"), phrase("exchange", "a day after the first one"));
    static_cast<void>(row.needed_number("billed"));
    if (const auto billed = row.measure<units::Volume>("billed")) b.volume = *billed;
    return b;
}

weather::SheetUnits sheet_units(const ColumnIndex& columns, const std::string& file) {
    weather::SheetUnits units;
    const auto unit = [&](std::string_view group) -> std::string {
        const auto* found = columns.find(group);
        return found == nullptr ? std::string{} : std::string(found->unit);
    };
    for (std::string_view group : {"tmax", "tmin", "tmean", "tdew"}) {
        const std::string u = unit(group);
        if (u.empty()) continue;
        if (!units.temperature.empty() && units.temperature != u) {
            const Place place{file, 1, std::string(group)};
            throw InputError(Issue{place, u, phrase("exchange", "all temperatures of a table in one unit")});
        }
        units.temperature = u;
    }
    units.radiation = unit("rs");
    units.wind = unit("wind");
    units.rain = unit("rain");
    units.reference_et = unit("eto");
    return units;
}

weather::SheetRow read_weather_day(RowReader& row) {
    weather::SheetRow d;
    d.date = row.needed_date("date").value_or(calendar::Date{});
    const auto temperature = [&](std::string_view group) {
        const bool f = row.unit(group) == "f";
        return row.number_within(group, f ? -130 : -90, f ? 140 : 60,
                                 f ? phrase("exchange", "a temperature from -130 to 140 F;"
                                                        " if it marks a missing value, leave the cell empty or name the mark in a map")
                                   : phrase("exchange", "a temperature from -90 to 60 C;"
                                                        " if it marks a missing value, leave the cell empty or name the mark in a map"));
    };
    const auto not_negative = [&](std::string_view group) {
        return row.number_within(group, 0, 1e6,
                                 phrase("exchange", "a value of zero or more;"
                                                    " if it marks a missing value, leave the cell empty or name the mark in a map"));
    };
    const auto humidity = [&](std::string_view group) {
        return row.number_within(group, 0, 110,
                                 phrase("exchange", "a relative humidity in percent;"
                                                    " if it marks a missing value, leave the cell empty or name the mark in a map"));
    };
    d.tmax = temperature("tmax");
    d.tmin = temperature("tmin");
    d.tmean = temperature("tmean");
    d.tdew = temperature("tdew");
    if (d.tmax && d.tmin && *d.tmin > *d.tmax) {
        row.refuse("tmin", row.text("tmin"), phrase("exchange", "a lowest temperature not above the highest of the day"));
    }
    d.rhmax = humidity("rhmax");
    d.rhmin = humidity("rhmin");
    d.rhmean = humidity("rhmean");
    d.ea_kpa = not_negative("ea");
    d.solar = not_negative("rs");
    d.sunshine_h = row.number_within("sunshine", 0, 24,
                                     phrase("exchange", "hours from 0 to 24;"
                                                        " if it marks a missing value, leave the cell empty or name the mark in a map"));
    d.wind = not_negative("wind");
    d.rain = not_negative("rain");
    d.reference_et = not_negative("eto");
    return d;
}

weather::SheetHour read_weather_hour(RowReader& row) {
    constexpr Phrase not_negative = phrase("exchange", "a value of zero or more");
    const auto temperature = [&](std::string_view group) {
        const bool f = row.unit(group) == "f";
        return row.number_within(group, f ? -130 : -90, f ? 140 : 60,
                                 f ? phrase("exchange", "a temperature from -130 to 140 F") : phrase("exchange", "a temperature from -90 to 60 C"));
    };
    weather::SheetHour h;
    h.temperature = temperature("tmean");
    h.tdew = temperature("tdew");
    const auto tmax = temperature("tmax");
    const auto tmin = temperature("tmin");
    if (tmax && tmin && *tmin > *tmax) {
        row.refuse("tmin", row.text("tmin"), phrase("exchange", "a lowest temperature not above the highest"));
    }
    if (!h.temperature && tmax && tmin) h.temperature = 0.5 * (*tmax + *tmin);
    h.rh_percent = row.number_within("rhmean", 0, 110, phrase("exchange", "a relative humidity in percent"));
    h.ea_kpa = row.number_within("ea", 0, 20, phrase("exchange", "a vapour pressure from 0 to 20 kPa"));
    // Sensors read a little below zero at night; less than that is a fault.
    h.solar = row.number_within("rs", -20, 1e6, not_negative);
    if (h.solar) h.solar = std::max(0.0, *h.solar);
    h.wind = row.number_within("wind", 0, 1e6, not_negative);
    h.rain = row.number_within("rain", 0, 1e6, not_negative);
    return h;
}

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/filing_canonical.h"
#include "core/exchange/filing_json.h"
#include "core/exchange/filing_words.h"
#include "core/exchange/utf8.h"
#include "core/review/json_object.h"

#include <algorithm>
#include <set>

namespace evenfall::exchange {
namespace {

using Json = nlohmann::json;
using namespace review;

// Stated limits; see schemas/filing/filing.md.
constexpr int deepest = 8;
constexpr std::size_t most_records = 500;      // areas, tests, meters, claims ...
constexpr std::size_t most_cans = 2000;        // of one test
constexpr std::size_t most_claims = 200;
constexpr std::size_t most_readings = 400000;  // of one meter
constexpr std::size_t most_days = 8000;
constexpr double largest = 1e12;

template <class E, std::size_t N>
E word_value(const JsonObject& object, const char* name, const Words<E, N>& words) {
    const std::string text = object.text(name);
    std::string known;
    for (const auto& [value, word] : words) {
        if (word == text) return value;
        known += known.empty() ? std::string(word) : ", " + std::string(word);
    }
    if (!text.empty()) object.problem(name, text, {phrase("exchange", "one of %1"), known});
    return words.front().first;
}

template <class Q>
units::NamedUnit<Q> unit(const JsonObject& object, const char* name) {
    const std::string text = object.text(name);
    return object.tried(name, [&] { return units::unit_named<Q>(text); });
}

std::optional<int> maybe_digits(const JsonObject& object) {
    const auto digits = object.maybe_number("digits", 1, 15);
    if (!digits) return std::nullopt;
    return static_cast<int>(*digits);
}

site::Site read_site(const JsonObject& o) {
    o.only({"code", "name", "organisation", "latitude", "longitude", "elevation", "time_zone", "weather"});
    site::Site s;
    s.code = o.text("code");
    s.name = o.text("name");
    s.organisation = o.text_or_empty("organisation");
    s.latitude = o.number("latitude", -90, 90);
    s.longitude = o.maybe_number("longitude", -180, 180);
    s.elevation = o.maybe_measure<units::Length>("elevation");
    s.time_zone = o.text("time_zone");
    s.weather = o.text_or_empty("weather");
    return s;
}

std::vector<std::pair<double, double>> read_outline(const JsonObject& o) {
    std::vector<std::pair<double, double>> outline;
    if (!o.has("outline")) return outline;
    o.each_value("outline", 20000, [&](const Json& point, const std::string& path) {
        const bool pair = point.is_array() && point.size() == 2 && point[0].is_number() && point[1].is_number();
        const double x = pair ? point[0].get<double>() : 999.0;
        const double y = pair ? point[1].get<double>() : 999.0;
        if (!(x >= -180 && x <= 180 && y >= -90 && y <= 90)) {
            o.problem("outline", path, phrase("exchange", "pairs of longitude and latitude in degrees"));
            return;
        }
        outline.emplace_back(x, y);
    });
    return outline;
}

FiledArea read_area(const JsonObject& o, const std::string& site) {
    o.only({"code", "name", "size", "plant", "coefficient", "head_type", "soil", "root_depth",
            "slope_percent", "meter", "share", "sector", "outline"});
    FiledArea filed;
    site::Area& a = filed.area;
    a.code = o.text("code");
    a.site = site;
    a.name = o.text_or_empty("name");
    const auto size = o.maybe_measure<units::Area>("size");
    if (!size || !(size->value > 0.0)) {
        o.problem("size", phrase("exchange", "no size above zero"), phrase("exchange", "the size of the area"));
    }
    if (size) a.size = *size;
    a.plant = o.text_or_empty("plant");
    a.coefficient = o.maybe_number("coefficient", 0, 2);
    a.head_type = o.text_or_empty("head_type");
    a.soil = o.text_or_empty("soil");
    a.root_depth = o.maybe_measure<units::Depth>("root_depth");
    a.slope_percent = o.maybe_number("slope_percent", -200, 200);
    a.meter = o.text_or_empty("meter");
    a.share = o.maybe_number("share", 0, 1);
    filed.sector = o.text_or_empty("sector");
    filed.outline = read_outline(o);
    return filed;
}

audit::Catch read_catch(const JsonObject& o) {
    o.only({"can", "reading", "x", "y", "distance", "side", "excluded", "by_station"});
    audit::Catch c;
    c.can = o.text("can", 60);
    c.reading = o.number("reading", 0, 1e6);
    c.x = o.maybe_number("x", -1e6, 1e6);
    c.y = o.maybe_number("y", -1e6, 1e6);
    c.distance = o.maybe_number("distance", 0, 1e6);
    if (o.has("side")) c.side = word_value(o, "side", side_words);
    c.excluded = o.text_or_empty("excluded");
    if (o.has("by_station")) {
        o.each("by_station", 100, [&](const JsonObject& s) {
            s.only({"station", "reading"});
            c.by_station.push_back({s.text("station"), s.number("reading", 0, 1e6)});
        });
    }
    return c;
}

FiledTest read_test(const JsonObject& o) {
    o.only({"code", "area", "date", "phase", "layout", "throat_area", "minutes", "wind", "lane_spacing",
            "opposite_pulls", "position_unit", "catch_unit", "can_size", "flow", "travel_speed",
            "edge_offset", "stations", "catches"});
    FiledTest filed;
    audit::CatchTest& t = filed.test;
    t.code = o.text("code");
    t.area = o.text("area");
    t.date = o.date("date");
    filed.phase = word_value(o, "phase", phase_words);
    t.layout = word_value(o, "layout", layout_words);
    t.throat_area = o.maybe_measure<units::Area>("throat_area");
    t.minutes = o.maybe_number("minutes", 0, 1e5);
    t.wind = o.maybe_measure<units::Speed>("wind");
    t.lane_spacing = o.maybe_measure<units::Length>("lane_spacing");
    t.opposite_pulls = o.boolean("opposite_pulls");
    t.position_unit = unit<units::Length>(o, "position_unit");
    t.catch_unit = word_value(o, "catch_unit", catch_unit_words);
    t.can_size = o.maybe_measure<units::Volume>("can_size");
    t.flow = o.maybe_measure<units::Flow>("flow");
    t.travel_speed = o.maybe_measure<units::Speed>("travel_speed");
    t.edge_offset = o.maybe_measure<units::Length>("edge_offset");
    o.each("stations", 100, [&](const JsonObject& s) {
        s.only({"station", "minutes"});
        t.stations.push_back({s.text("station"), s.number("minutes", 0, 1e5)});
    });
    o.each("catches", most_cans, [&](const JsonObject& c) { t.catches.push_back(read_catch(c)); });
    return filed;
}

meter::Exchange read_exchange(const JsonObject& o) {
    o.only({"at", "final_value", "first_value", "unit", "multiplier", "digits"});
    meter::Exchange e;
    e.at = o.instant("at");
    e.final_value = o.number("final_value", -largest, largest);
    e.first_value = o.number("first_value", -largest, largest);
    if (o.has("unit")) e.unit = unit<units::Volume>(o, "unit");
    e.multiplier = o.maybe_number("multiplier", 1e-9, 1e9);
    e.digits = maybe_digits(o);
    return e;
}

/// ["2024-05-01T07:00:00Z", 0, 12345, "measured"]
std::optional<meter::Reading> read_reading(const Json& json) {
    if (!json.is_array() || json.size() != 4 || !json[0].is_string() || !json[1].is_number() ||
        !json[2].is_number() || !json[3].is_string()) {
        return std::nullopt;
    }
    const auto at = calendar::parse_instant(json[0].get_ref<const std::string&>());
    const double span = json[1].get<double>();
    const double value = json[2].get<double>();
    const auto kind = std::find_if(reading_words.begin(), reading_words.end(), [&](const auto& w) {
        return w.second == json[3].get_ref<const std::string&>();
    });
    const bool sane = span >= 0 && span <= 400.0 * 86400.0 && span == std::floor(span) &&
                      std::abs(value) <= largest;
    if (!at || !sane || kind == reading_words.end()) return std::nullopt;
    return meter::Reading{*at, std::chrono::seconds(static_cast<long long>(span)), value, kind->first};
}

FiledMeter read_meter(const JsonObject& o, const std::string& site) {
    o.only({"code", "type", "unit", "multiplier", "digits", "parent", "installed", "removed", "replaces",
            "exchanges", "rated_flow", "size", "readings"});
    FiledMeter filed;
    meter::Meter& m = filed.meter;
    m.code = o.text("code");
    m.site = site;
    filed.type = o.text_or_empty("type");
    m.unit = unit<units::Volume>(o, "unit");
    m.multiplier = o.number("multiplier", 1e-9, 1e9);
    m.digits = maybe_digits(o);
    m.parent = o.text_or_empty("parent");
    m.installed = o.maybe_date("installed");
    m.removed = o.maybe_date("removed");
    m.replaces = o.text_or_empty("replaces");
    o.each("exchanges", 50, [&](const JsonObject& e) { m.exchanges.push_back(read_exchange(e)); });
    m.rated_flow = o.maybe_measure<units::Flow>("rated_flow");
    m.size = o.maybe_measure<units::Length>("size");
    o.each_value("readings", most_readings, [&](const Json& json, const std::string& path) {
        const auto reading = read_reading(json);
        if (!reading) {
            o.problem("readings", path, phrase("exchange", "[instant, seconds, value, \"measured\"] with sensible values"));
        } else if (!filed.readings.empty() && reading->at < filed.readings.back().at) {
            o.problem("readings", path, phrase("exchange", "readings in order of time"));
        } else {
            filed.readings.push_back(*reading);
        }
    });
    return filed;
}

void read_weather_units(const JsonObject& o, weather::SheetUnits& units) {
    o.only({"temperature", "radiation", "wind", "rain", "reference_et"});
    units.temperature = o.text_or_empty("temperature", 20);
    units.radiation = o.text_or_empty("radiation", 20);
    units.wind = o.text_or_empty("wind", 20);
    units.rain = o.text_or_empty("rain", 20);
    units.reference_et = o.text_or_empty("reference_et", 20);
    // A day with a value under each unit that is named shows whether it is known.
    weather::SheetRow probe;
    const auto where_named = [](const std::string& unit) {
        return unit.empty() ? std::optional<double>() : std::optional(1.0);
    };
    probe.tmax = where_named(units.temperature);
    probe.solar = where_named(units.radiation);
    probe.wind = where_named(units.wind);
    probe.rain = where_named(units.rain);
    probe.reference_et = where_named(units.reference_et);
    try {
        weather::converted(probe, units);
    } catch (const InputError& e) {
        o.problem("units", e.issues().front().found, e.issues().front().expected);
    }
}

/// A value whose unit is not named means nothing.
void check_units_named(const JsonObject& o, const weather::SheetRow& day, const weather::SheetUnits& units) {
    const auto need = [&](bool value, const std::string& unit, const char* member) {
        if (value && unit.empty()) {
            o.problem(member, phrase("exchange", "a value"), phrase("exchange", "its unit under weather.units"));
        }
    };
    need(day.tmax || day.tmin || day.tmean || day.tdew, units.temperature, "tmax");
    need(day.solar.has_value(), units.radiation, "solar");
    need(day.wind.has_value(), units.wind, "wind");
    need(day.rain.has_value(), units.rain, "rain");
    need(day.reference_et.has_value(), units.reference_et, "reference_et");
}

FiledWeather read_weather(const JsonObject& o) {
    o.only({"station", "latitude", "elevation", "wind_height", "units", "days"});
    FiledWeather w;
    w.station = o.text("station");
    w.latitude = o.maybe_number("latitude", -90, 90);
    w.elevation = o.maybe_measure<units::Length>("elevation");
    w.wind_height = o.maybe_measure<units::Length>("wind_height");
    read_weather_units(o.object("units"), w.units);
    o.each("days", most_days, [&](const JsonObject& d) {
        d.only({"date", "ea_kpa", "reference_et", "rain", "rhmax", "rhmean", "rhmin", "solar", "sunshine_h",
                "tdew", "tmax", "tmean", "tmin", "wind"});
        weather::SheetRow day;
        day.date = d.date("date");
        for (const WeatherMember& m : weather_members) day.*m.member = d.maybe_number(m.name, m.low, m.high);
        check_units_named(d, day, w.units);
        if (!w.days.empty() && day.date <= w.days.back().date) {
            d.problem("date", calendar::format_date(day.date), phrase("exchange", "days in order, each once"));
        }
        w.days.push_back(day);
    });
    return w;
}

FiledResult read_result(const JsonObject& o) {
    o.only({"name", "subject", "value", "unit", "low", "high", "confidence", "method", "version",
            "convention", "source", "assumed"});
    FiledResult r;
    r.name = o.text("name");
    r.subject = o.text_or_empty("subject");
    r.value = o.number("value", -1e15, 1e15);
    r.unit = o.text_or_empty("unit");
    r.low = o.maybe_number("low", -1e15, 1e15);
    r.high = o.maybe_number("high", -1e15, 1e15);
    r.confidence = o.maybe_number("confidence", 0, 1);
    r.method = o.text("method", 2000);
    r.version = o.text("version");
    r.convention = o.text_or_empty("convention", 2000);
    r.source = o.text_or_empty("source", 2000);
    r.assumed = o.boolean("assumed");
    return r;
}

Claim read_claim(const JsonObject& o) {
    o.only({"name", "subject", "text", "unit", "quarter_rule"});
    return {o.text("name"), o.text_or_empty("subject"), o.text("text", 40), o.text_or_empty("unit", 40),
            o.text_or_empty("quarter_rule", 40)};
}

Request read_request(const JsonObject& o) {
    o.only({"application", "program", "change", "note", "devices", "invoices"});
    Request r;
    r.application = o.text_or_empty("application");
    r.program = o.text_or_empty("program");
    r.change = o.maybe_date("change");
    r.note = o.text_or_empty("note", 10000);
    if (o.has("devices")) o.each("devices", most_records, [&](const JsonObject& d) {
        d.only({"kind", "count"});
        r.devices.push_back({d.text("kind"), d.number("count", 0, 1e6)});
    });
    if (o.has("invoices")) o.each("invoices", most_records, [&](const JsonObject& i) {
        i.only({"number", "vendor", "date", "amount", "currency", "attachment"});
        r.invoices.push_back({i.text("number"), i.text_or_empty("vendor"), i.maybe_date("date"),
                              i.number("amount", 0, 1e9), i.text("currency", 3),
                              i.text_or_empty("attachment")});
    });
    return r;
}

Person read_person(const JsonObject& o) {
    o.only({"name", "organisation", "contact"});
    return {o.text_or_empty("name"), o.text_or_empty("organisation"), o.text_or_empty("contact")};
}

Auditor read_auditor(const JsonObject& o) {
    o.only({"name", "certification", "expires"});
    return {o.text_or_empty("name"), o.text_or_empty("certification"), o.maybe_date("expires")};
}

Attachment read_attachment(const JsonObject& o) {
    o.only({"path", "kind", "sha256", "size", "note"});
    Attachment a;
    a.path = o.text("path");
    a.kind = o.text("kind", 40);
    a.sha256 = o.text("sha256", 64);
    a.size = static_cast<std::uint64_t>(o.number("size", 0, 1e12));
    a.note = o.text_or_empty("note", 2000);
    return a;
}

template <class Record, class Code>
std::set<std::string> codes_of(const std::vector<Record>& records, const char* kind, Code code,
                               Problems& problems) {
    std::set<std::string> codes;
    for (const Record& record : records) {
        if (!codes.insert(code(record)).second) {
            problems.add(kind, {phrase("exchange", "%1 twice"), printable(code(record))}, phrase("exchange", "each code once"));
        }
    }
    return codes;
}

void check_references(const Filing& f, Problems& problems) {
    const auto areas = codes_of(f.areas, "areas", [](const FiledArea& a) { return a.area.code; }, problems);
    const auto meters = codes_of(f.meters, "meters", [](const FiledMeter& m) { return m.meter.code; }, problems);
    codes_of(f.tests, "tests", [](const FiledTest& t) { return t.test.code; }, problems);
    const auto paths = codes_of(f.attachments, "attachments", [](const Attachment& a) { return a.path; }, problems);
    const auto known = [&](const std::set<std::string>& codes, const std::string& code, const char* where) {
        if (!code.empty() && codes.count(code) == 0) {
            problems.add(where, printable(code), phrase("exchange", "a code that the filing holds"));
        }
    };
    for (const FiledTest& t : f.tests) known(areas, t.test.area, "tests.area");
    for (const FiledArea& a : f.areas) known(meters, a.area.meter, "areas.meter");
    for (const FiledMeter& m : f.meters) known(meters, m.meter.parent, "meters.parent");
    for (const Invoice& i : f.request.invoices) known(paths, i.attachment, "request.invoices.attachment");
}

/// Names the first byte where the text is not what the canonical form of its own contents would be.
void check_canonical(std::string_view text, const Json& json, const std::string& file) {
    const std::string canonical = canonical_text(json);
    if (canonical == text) return;
    const auto [a, b] = std::mismatch(text.begin(), text.end(), canonical.begin(), canonical.end());
    const auto at = static_cast<std::size_t>(a - text.begin());
    throw InputError(Issue{{file, 0, "byte " + std::to_string(at + 1)},
                           printable(std::string(text.substr(at, 20))),
                           {phrase("exchange", "canonical form (RFC 8785), here %1"),
                            printable(std::string(b, canonical.end()).substr(0, 20))}});
}

}  // namespace

Filing read_filing_json(std::string_view text, const std::string& file) {
    if (const std::size_t bad = first_bad_byte(text); bad != std::string_view::npos) {
        throw InputError(Issue{{file, 0, "byte " + std::to_string(bad + 1)},
                               phrase("exchange", "a byte that is no UTF-8"), "UTF-8"});
    }
    const Json json = parse_json(text, file, deepest);
    Problems problems(file);
    const JsonObject o(json, "", problems);
    const double form = o.number("evenfall_filing", 1, 1e6);
    if (form > filing_form) {
        o.problem("evenfall_filing", units::format_shortest(form),
                  {phrase("exchange", "form %1 at most: this filing is from a newer program"), filing_form});
        problems.finish();
    }
    check_canonical(text, json, file);
    o.only({"evenfall_filing", "code", "written", "software", "applicant", "auditor", "signing_key", "site",
            "areas", "tests", "meters", "weather", "conventions", "results", "claims", "request", "attachments"});
    Filing f;
    f.code = o.text("code", 100);
    f.written = o.instant("written");
    f.software = o.text("software");
    f.applicant = read_person(o.object("applicant"));
    f.auditor = read_auditor(o.object("auditor"));
    f.signing_key = o.text_or_empty("signing_key", 64);
    f.site = read_site(o.object("site"));
    o.each("areas", most_records, [&](const JsonObject& a) { f.areas.push_back(read_area(a, f.site.code)); });
    o.each("tests", most_records, [&](const JsonObject& t) { f.tests.push_back(read_test(t)); });
    o.each("meters", most_records, [&](const JsonObject& m) { f.meters.push_back(read_meter(m, f.site.code)); });
    if (const auto weather = o.maybe_object("weather")) f.weather = read_weather(*weather);
    const JsonObject conventions = o.object("conventions");
    conventions.only({"quarter_rule", "rain"});
    f.conventions = {word_value(conventions, "quarter_rule", quarter_words), conventions.text("rain")};
    o.each("results", 10 * most_records, [&](const JsonObject& r) { f.results.push_back(read_result(r)); });
    o.each("claims", most_claims, [&](const JsonObject& c) { f.claims.push_back(read_claim(c)); });
    f.request = read_request(o.object("request"));
    o.each("attachments", most_records, [&](const JsonObject& a) { f.attachments.push_back(read_attachment(a)); });
    check_references(f, problems);
    problems.finish();
    return f;
}

FilingWords read_filing_words(std::string_view text, const std::string& file) {
    const Json json = parse_json(text, file, deepest);
    Problems problems(file);
    const JsonObject o(json, "", problems);
    o.only({"applicant", "auditor", "request", "claims", "sector", "meter_type"});
    FilingWords words;
    if (const auto applicant = o.maybe_object("applicant")) words.applicant = read_person(*applicant);
    if (const auto auditor = o.maybe_object("auditor")) words.auditor = read_auditor(*auditor);
    if (const auto request = o.maybe_object("request")) words.request = read_request(*request);
    if (o.has("claims")) {
        o.each("claims", most_claims, [&](const JsonObject& c) { words.claims.push_back(read_claim(c)); });
    }
    words.sector = o.text_or_empty("sector");
    words.meter_type = o.text_or_empty("meter_type");
    problems.finish();
    return words;
}

}  // namespace evenfall::exchange

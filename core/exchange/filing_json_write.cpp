// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/filing_canonical.h"
#include "core/exchange/filing_json.h"
#include "core/exchange/filing_words.h"

#include <nlohmann/json.hpp>

namespace evenfall::exchange {
namespace {

using Json = nlohmann::json;
using namespace review;

Json text_or_null(const std::string& text) { return text.empty() ? Json() : Json(text); }

template <class T>
Json or_null(const std::optional<T>& value) {
    return value ? Json(*value) : Json();
}

Json date_or_null(const std::optional<calendar::Date>& date) {
    return date ? Json(calendar::format_date(*date)) : Json();
}

template <class Q>
Json measure(const units::Typed<Q>& typed) {
    return {{"value", typed.value}, {"unit", std::string(typed.unit.name)}};
}

template <class Q>
Json measure_or_null(const std::optional<units::Typed<Q>>& typed) {
    return typed ? measure(*typed) : Json();
}

template <class Record, class Write>
Json array_of(const std::vector<Record>& records, Write write) {
    Json array = Json::array();
    for (const Record& record : records) array.push_back(write(record));
    return array;
}

template <class E, std::size_t N>
std::string word(const Words<E, N>& words, E value) {
    return std::string(word_of(words, value));
}

Json site_json(const site::Site& s) {
    return {{"code", s.code},
            {"name", s.name},
            {"organisation", text_or_null(s.organisation)},
            {"latitude", s.latitude},
            {"longitude", or_null(s.longitude)},
            {"elevation", measure_or_null(s.elevation)},
            {"time_zone", s.time_zone},
            {"weather", text_or_null(s.weather)}};
}

Json area_json(const FiledArea& filed) {
    const site::Area& a = filed.area;
    Json outline = Json::array();
    for (const auto& [x, y] : filed.outline) outline.push_back(Json::array({x, y}));
    return {{"code", a.code},
            {"name", text_or_null(a.name)},
            {"size", measure(a.size)},
            {"plant", text_or_null(a.plant)},
            {"coefficient", or_null(a.coefficient)},
            {"head_type", text_or_null(a.head_type)},
            {"soil", text_or_null(a.soil)},
            {"root_depth", measure_or_null(a.root_depth)},
            {"slope_percent", or_null(a.slope_percent)},
            {"meter", text_or_null(a.meter)},
            {"share", or_null(a.share)},
            {"sector", text_or_null(filed.sector)},
            {"outline", filed.outline.empty() ? Json() : std::move(outline)}};
}

Json catch_json(const audit::Catch& c) {
    Json by_station = array_of(c.by_station, [](const audit::StationCatch& s) {
        return Json{{"station", s.station}, {"reading", s.reading}};
    });
    Json json{{"can", c.can}, {"reading", c.reading}};
    // Members that say nothing are left out: a filing has hundreds of cans.
    if (c.x) json["x"] = *c.x;
    if (c.y) json["y"] = *c.y;
    if (c.distance) json["distance"] = *c.distance;
    if (c.side) json["side"] = word(side_words, *c.side);
    if (!c.excluded.empty()) json["excluded"] = c.excluded;
    if (!c.by_station.empty()) json["by_station"] = std::move(by_station);
    return json;
}

Json test_json(const FiledTest& filed) {
    const audit::CatchTest& t = filed.test;
    return {{"code", t.code},
            {"area", t.area},
            {"date", calendar::format_date(t.date)},
            {"phase", word(phase_words, filed.phase)},
            {"layout", word(layout_words, t.layout)},
            {"throat_area", measure_or_null(t.throat_area)},
            {"minutes", or_null(t.minutes)},
            {"wind", measure_or_null(t.wind)},
            {"lane_spacing", measure_or_null(t.lane_spacing)},
            {"opposite_pulls", t.opposite_pulls},
            {"position_unit", std::string(t.position_unit.name)},
            {"catch_unit", word(catch_unit_words, t.catch_unit)},
            {"can_size", measure_or_null(t.can_size)},
            {"flow", measure_or_null(t.flow)},
            {"travel_speed", measure_or_null(t.travel_speed)},
            {"edge_offset", measure_or_null(t.edge_offset)},
            {"stations", array_of(t.stations, [](const audit::StationRun& r) {
                 return Json{{"station", r.station}, {"minutes", r.minutes}};
             })},
            {"catches", array_of(t.catches, catch_json)}};
}

Json exchange_json(const meter::Exchange& e) {
    return {{"at", calendar::format_instant(e.at)},
            {"final_value", e.final_value},
            {"first_value", e.first_value},
            {"unit", e.unit ? Json(std::string(e.unit->name)) : Json()},
            {"multiplier", or_null(e.multiplier)},
            {"digits", or_null(e.digits)}};
}

Json meter_json(const FiledMeter& filed) {
    const meter::Meter& m = filed.meter;
    return {{"code", m.code},
            {"type", text_or_null(filed.type)},
            {"unit", std::string(m.unit.name)},
            {"multiplier", m.multiplier},
            {"digits", or_null(m.digits)},
            {"parent", text_or_null(m.parent)},
            {"installed", date_or_null(m.installed)},
            {"removed", date_or_null(m.removed)},
            {"replaces", text_or_null(m.replaces)},
            {"exchanges", array_of(m.exchanges, exchange_json)},
            {"rated_flow", measure_or_null(m.rated_flow)},
            {"size", measure_or_null(m.size)},
            {"readings", array_of(filed.readings, [](const meter::Reading& r) {
                 return Json::array({calendar::format_instant(r.at), r.span.count(), r.value,
                                     word(reading_words, r.kind)});
             })}};
}

Json weather_day_json(const weather::SheetRow& day) {
    Json json{{"date", calendar::format_date(day.date)}};
    for (const WeatherMember& m : weather_members) {
        if (const auto& value = day.*m.member) json[m.name] = *value;
    }
    return json;
}

Json weather_json(const FiledWeather& w) {
    if (w.station.empty()) return {};
    return {{"station", w.station},
            {"latitude", or_null(w.latitude)},
            {"elevation", measure_or_null(w.elevation)},
            {"wind_height", measure_or_null(w.wind_height)},
            {"units",
             {{"temperature", text_or_null(w.units.temperature)},
              {"radiation", text_or_null(w.units.radiation)},
              {"wind", text_or_null(w.units.wind)},
              {"rain", text_or_null(w.units.rain)},
              {"reference_et", text_or_null(w.units.reference_et)}}},
            {"days", array_of(w.days, weather_day_json)}};
}

Json result_json(const FiledResult& r) {
    return {{"name", r.name},
            {"subject", text_or_null(r.subject)},
            {"value", r.value},
            {"unit", text_or_null(r.unit)},
            {"low", or_null(r.low)},
            {"high", or_null(r.high)},
            {"confidence", or_null(r.confidence)},
            {"method", r.method},
            {"version", r.version},
            {"convention", text_or_null(r.convention)},
            {"source", text_or_null(r.source)},
            {"assumed", r.assumed}};
}

Json claim_json(const Claim& c) {
    return {{"name", c.name},
            {"subject", text_or_null(c.subject)},
            {"text", c.text},
            {"unit", text_or_null(c.unit)},
            {"quarter_rule", text_or_null(c.quarter_rule)}};
}

Json request_json(const Request& r) {
    return {{"application", text_or_null(r.application)},
            {"program", text_or_null(r.program)},
            {"change", date_or_null(r.change)},
            {"note", text_or_null(r.note)},
            {"devices", array_of(r.devices, [](const Device& d) {
                 return Json{{"kind", d.kind}, {"count", d.count}};
             })},
            {"invoices", array_of(r.invoices, [](const Invoice& i) {
                 return Json{{"number", i.number},       {"vendor", text_or_null(i.vendor)},
                             {"date", date_or_null(i.date)}, {"amount", i.amount},
                             {"currency", i.currency},   {"attachment", text_or_null(i.attachment)}};
             })}};
}

Json attachment_json(const Attachment& a) {
    return {{"path", a.path},
            {"kind", a.kind},
            {"sha256", a.sha256},
            {"size", a.size},
            {"note", text_or_null(a.note)}};
}

}  // namespace

std::string write_filing_json(const Filing& f) {
    const Json json{
        {"evenfall_filing", filing_form},
        {"code", f.code},
        {"written", calendar::format_instant(f.written)},
        {"software", f.software},
        {"applicant",
         {{"name", text_or_null(f.applicant.name)},
          {"organisation", text_or_null(f.applicant.organisation)},
          {"contact", text_or_null(f.applicant.contact)}}},
        {"auditor",
         {{"name", text_or_null(f.auditor.name)},
          {"certification", text_or_null(f.auditor.certification)},
          {"expires", date_or_null(f.auditor.expires)}}},
        {"signing_key", text_or_null(f.signing_key)},
        {"site", site_json(f.site)},
        {"areas", array_of(f.areas, area_json)},
        {"tests", array_of(f.tests, test_json)},
        {"meters", array_of(f.meters, meter_json)},
        {"weather", weather_json(f.weather)},
        {"conventions",
         {{"quarter_rule", word(quarter_words, f.conventions.quarter_rule)},
          {"rain", f.conventions.rain}}},
        {"results", array_of(f.results, result_json)},
        {"claims", array_of(f.claims, claim_json)},
        {"request", request_json(f.request)},
        {"attachments", array_of(f.attachments, attachment_json)}};
    return canonical_text(json);
}

}  // namespace evenfall::exchange

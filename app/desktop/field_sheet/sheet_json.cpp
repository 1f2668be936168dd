// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_data.h"

#include "app/desktop/shown.h"
#include "core/input_error.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace evenfall::desktop {
namespace {

QJsonValue json_of(const std::optional<double>& v) {
    return v ? QJsonValue(*v) : QJsonValue(QJsonValue::Null);
}

std::optional<double> number_in(const QJsonObject& o, const char* key) {
    const QJsonValue v = o.value(QLatin1String(key));
    return v.isDouble() ? std::optional(v.toDouble()) : std::nullopt;
}

std::string text_in(const QJsonObject& o, const char* key) {
    return utf8(o.value(QLatin1String(key)).toString());
}

/// The enumerator of that number, or nothing when it is none of the frozen ones.
template <class E>
std::optional<E> enum_in(const QJsonObject& o, const char* key, int last) {
    const int n = o.value(QLatin1String(key)).toInt(0);
    return n >= 1 && n <= last ? std::optional(static_cast<E>(n)) : std::nullopt;
}

QJsonObject json_of_can(const SheetCan& can) {
    QJsonObject o{{QStringLiteral("can"), q(can.label)},
                  {QStringLiteral("row"), can.row},
                  {QStringLiteral("column"), can.column}};
    if (can.x) o[QStringLiteral("x")] = *can.x;
    if (can.y) o[QStringLiteral("y")] = *can.y;
    if (can.distance) o[QStringLiteral("distance")] = *can.distance;
    if (can.side) o[QStringLiteral("side")] = static_cast<int>(*can.side);
    if (can.reading) o[QStringLiteral("reading")] = json_of(can.reading);
    if (!can.bad.empty()) o[QStringLiteral("bad")] = q(can.bad);
    if (!can.excluded.empty()) o[QStringLiteral("excluded")] = q(can.excluded);
    return o;
}

SheetCan can_from(const QJsonObject& o) {
    SheetCan can;
    can.label = text_in(o, "can");
    can.row = o.value(QLatin1String("row")).toInt();
    can.column = o.value(QLatin1String("column")).toInt();
    can.x = number_in(o, "x");
    can.y = number_in(o, "y");
    can.distance = number_in(o, "distance");
    can.side = enum_in<audit::Side>(o, "side", 2);
    can.reading = number_in(o, "reading");
    can.bad = text_in(o, "bad");
    can.excluded = text_in(o, "excluded");
    return can;
}

}  // namespace

QByteArray to_json(const SheetData& s) {
    QJsonArray cans;
    for (const SheetCan& can : s.cans) cans.append(json_of_can(can));
    QJsonArray pressures;
    for (const auto& p : s.pressures) {
        pressures.append(QJsonArray{q(p.place), q(p.value), q(p.nozzle_low), q(p.nozzle_high)});
    }
    QJsonArray findings;
    for (const auto& f : s.findings) {
        findings.append(QJsonArray{q(f.what), q(f.place), q(f.count), q(f.severity), q(f.corrected), q(f.note)});
    }
    QJsonArray photos;
    for (const auto& p : s.photos) photos.append(q(p));
    const QJsonObject o{{QStringLiteral("evenfall_sheet"), 1},
                        {QStringLiteral("code"), q(s.code)},
                        {QStringLiteral("area"), q(s.area)},
                        {QStringLiteral("date"), q(calendar::format_date(s.date))},
                        {QStringLiteral("layout"), static_cast<int>(s.layout)},
                        {QStringLiteral("rows"), s.rows},
                        {QStringLiteral("columns"), s.columns},
                        {QStringLiteral("spacing"), s.spacing},
                        {QStringLiteral("first"), s.first},
                        {QStringLiteral("position_unit"), q(s.position_unit.name)},
                        {QStringLiteral("walk"), static_cast<int>(s.walk)},
                        {QStringLiteral("catch_unit"), static_cast<int>(s.catch_unit)},
                        {QStringLiteral("throat_area"), q(s.throat_area)},
                        {QStringLiteral("minutes"), q(s.minutes)},
                        {QStringLiteral("wind"), q(s.wind)},
                        {QStringLiteral("lane_spacing"), q(s.lane_spacing)},
                        {QStringLiteral("opposite_pulls"), s.opposite_pulls},
                        {QStringLiteral("quarter_rule"), static_cast<int>(s.quarter_rule)},
                        {QStringLiteral("cans"), cans},
                        {QStringLiteral("pressures"), pressures},
                        {QStringLiteral("findings"), findings},
                        {QStringLiteral("inspected"), s.inspected},
                        {QStringLiteral("photos"), photos},
                        {QStringLiteral("notes"), q(s.notes)}};
    return QJsonDocument(o).toJson(QJsonDocument::Compact);
}

std::optional<SheetData> from_json(const QByteArray& json) {
    const QJsonObject o = QJsonDocument::fromJson(json).object();
    const auto date = calendar::parse_date(text_in(o, "date"));
    const auto layout = enum_in<audit::Layout>(o, "layout", 5);
    const auto walk = enum_in<Walk>(o, "walk", 2);
    const auto unit = enum_in<audit::CatchUnit>(o, "catch_unit", 3);
    const auto rule = enum_in<audit::QuarterRule>(o, "quarter_rule", 4);
    if (o.value(QLatin1String("evenfall_sheet")).toInt() != 1 || !date || !layout || !walk || !unit ||
        !rule) {
        return std::nullopt;
    }
    SheetData s;
    try {
        s.position_unit = units::unit_named<units::Length>(text_in(o, "position_unit"));
    } catch (const InputError&) {
        return std::nullopt;
    }
    s.code = text_in(o, "code");
    s.area = text_in(o, "area");
    s.date = *date;
    s.layout = *layout;
    s.walk = *walk;
    s.catch_unit = *unit;
    s.quarter_rule = *rule;
    s.rows = o.value(QLatin1String("rows")).toInt(1);
    s.columns = o.value(QLatin1String("columns")).toInt(1);
    s.spacing = o.value(QLatin1String("spacing")).toDouble();
    s.first = o.value(QLatin1String("first")).toDouble();
    s.throat_area = text_in(o, "throat_area");
    s.minutes = text_in(o, "minutes");
    s.wind = text_in(o, "wind");
    s.lane_spacing = text_in(o, "lane_spacing");
    s.opposite_pulls = o.value(QLatin1String("opposite_pulls")).toBool();
    s.notes = text_in(o, "notes");
    s.inspected = o.value(QLatin1String("inspected")).toBool();
    for (const auto& c : o.value(QLatin1String("cans")).toArray()) s.cans.push_back(can_from(c.toObject()));
    for (const auto& v : o.value(QLatin1String("pressures")).toArray()) {
        const QJsonArray a = v.toArray();
        const auto text = [&a](qsizetype n) { return utf8(a.at(n).toString()); };
        s.pressures.push_back({text(0), text(1), text(2), text(3)});
    }
    for (const auto& v : o.value(QLatin1String("findings")).toArray()) {
        const QJsonArray a = v.toArray();
        const auto text = [&a](qsizetype n) { return utf8(a.at(n).toString()); };
        s.findings.push_back({text(0), text(1), text(2), text(3), text(4), text(5)});
    }
    for (const auto& v : o.value(QLatin1String("photos")).toArray()) s.photos.push_back(utf8(v.toString()));
    return s;
}

}  // namespace evenfall::desktop

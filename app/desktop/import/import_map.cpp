// SPDX-License-Identifier: GPL-3.0-or-later
// The plan as a column map; the form is that of core/exchange/table_map.h.
#include "app/desktop/import/import_plan.h"
#include "app/desktop/shown.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace evenfall::desktop {
namespace {

QString name_of(exchange::DateOrder order) {
    switch (order) {
        case exchange::DateOrder::day_month_year: return QStringLiteral("day_month_year");
        case exchange::DateOrder::month_day_year: return QStringLiteral("month_day_year");
        case exchange::DateOrder::year_month_day: return QStringLiteral("year_month_day");
        case exchange::DateOrder::iso: break;
    }
    return QStringLiteral("iso");
}

QJsonObject wide_part(const ImportPlan& plan, QJsonArray& ignore) {
    QJsonObject wide;
    QJsonObject meters;
    for (std::size_t c = 0; c < plan.header.size(); ++c) {
        if (plan.meaning[c] == "time") {
            wide[QStringLiteral("time")] = q(plan.header[c]);
        } else if (plan.meter_of[c].empty()) {
            ignore.append(q(plan.header[c]));
        } else {
            meters[q(plan.header[c])] = q(plan.meter_of[c]);
        }
    }
    wide[QStringLiteral("meters")] = meters;
    wide[QStringLiteral("value")] = plan.volume_minutes ? QStringLiteral("volume") : QStringLiteral("register");
    if (plan.volume_minutes) wide[QStringLiteral("minutes")] = *plan.volume_minutes;
    return wide;
}

}  // namespace

QByteArray map_json(const ImportPlan& plan) {
    QJsonObject map{{QStringLiteral("evenfall_map"), 1}};
    if (plan.kind) map[QStringLiteral("kind")] = q(exchange::name_of(*plan.kind));
    if (!needs_map(plan)) return QJsonDocument(map).toJson();
    map[QStringLiteral("decimal_mark")] = QString(QLatin1Char(plan.decimal_mark));
    map[QStringLiteral("date_order")] = name_of(plan.date_order);
    if (plan.delimiter) map[QStringLiteral("delimiter")] = QString(QLatin1Char(*plan.delimiter));
    if (!plan.base.sheet.empty()) map[QStringLiteral("sheet")] = q(plan.base.sheet);
    if (!plan.base.crs.empty()) map[QStringLiteral("crs")] = q(plan.base.crs);
    if (plan.base.drawing_unit) map[QStringLiteral("drawing_unit")] = q(plan.base.drawing_unit->name);
    QJsonArray missing;
    for (const std::string& word : plan.missing_words) missing.append(q(word));
    if (!missing.isEmpty()) map[QStringLiteral("missing")] = missing;
    QJsonArray ignore;
    if (plan.wide()) {
        map[QStringLiteral("wide")] = wide_part(plan, ignore);
    } else {
        QJsonObject columns;
        for (std::size_t c = 0; c < plan.header.size(); ++c) {
            if (plan.meaning[c].empty()) ignore.append(q(plan.header[c]));
            else columns[q(plan.header[c])] = q(plan.meaning[c]);
        }
        QJsonObject constants;
        for (const auto& [name, text] : plan.constants) constants[q(name)] = q(text);
        map[QStringLiteral("columns")] = columns;
        if (!constants.isEmpty()) map[QStringLiteral("constants")] = constants;
    }
    if (!ignore.isEmpty()) map[QStringLiteral("ignore")] = ignore;
    return QJsonDocument(map).toJson();
}

}  // namespace evenfall::desktop

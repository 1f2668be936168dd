// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_plan.h"

#include "app/desktop/shown.h"
#include "core/exchange/csv_reader.h"
#include "core/input_error.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace evenfall::desktop {
namespace {

struct ImportPlanText {
    Q_DECLARE_TR_FUNCTIONS(ImportPlanText)
};

bool knows(const exchange::KindSpec& spec, const std::string& name) {
    return std::any_of(spec.columns.begin(), spec.columns.end(),
                       [&name](const exchange::ColumnSpec& c) { return c.name == name; });
}

std::string_view group_of(const exchange::KindSpec& spec, const std::string& name) {
    for (const auto& c : spec.columns) {
        if (c.name == name) return c.group;
    }
    return {};
}

}  // namespace

ImportPlan look_at(const QString& path, std::size_t rows) {
    ImportPlan plan;
    plan.path = path;
    try {
        exchange::CsvReader reader(path.toStdString());
        plan.header = reader.header();
        plan.meaning.assign(plan.header.size(), {});
        while (plan.rows.size() < rows && reader.next()) {
            const auto cells = reader.cells();
            plan.rows.emplace_back(cells.begin(), cells.end());
        }
    } catch (const std::exception& e) {
        plan.problem = QString::fromUtf8(e.what());
        return plan;
    }
    try {
        set_kind(plan, exchange::kind_of_header(plan.header, path.toStdString()));
    } catch (const InputError&) {
        plan.kind.reset();  // the user says what it is
    }
    return plan;
}

void set_kind(ImportPlan& plan, exchange::Kind kind) {
    plan.kind = kind;
    const auto& spec = exchange::spec_of(kind);
    for (std::size_t c = 0; c < plan.header.size(); ++c) {
        const std::string key = exchange::column_key(plan.header[c]);
        plan.meaning[c] = knows(spec, key) ? key : std::string();
    }
}

void set_meaning(ImportPlan& plan, std::size_t column, const std::string& name) {
    if (!plan.kind) return;
    if (!name.empty()) {
        const auto& spec = exchange::spec_of(*plan.kind);
        const auto group = group_of(spec, name);
        for (std::string& other : plan.meaning) {
            if (!other.empty() && group_of(spec, other) == group) other.clear();
        }
    }
    plan.meaning[column] = name;
}

QStringList missing(const ImportPlan& plan) {
    if (!plan.problem.isEmpty()) return {plan.problem};
    if (!plan.kind) return {ImportPlanText::tr("Say what kind of table this is.")};
    const auto& spec = exchange::spec_of(*plan.kind);
    QStringList best;
    bool first = true;
    for (const auto& set : spec.needed) {
        QStringList lacking;
        for (const auto group : set) {
            const bool has = std::any_of(plan.meaning.begin(), plan.meaning.end(), [&](const std::string& m) {
                return !m.empty() && group_of(spec, m) == group;
            });
            if (!has) lacking << ImportPlanText::tr("Point at the column that holds: %1").arg(q(group));
        }
        if (first || lacking.size() < best.size()) best = lacking;
        first = false;
    }
    return best;
}

bool needs_map(const ImportPlan& plan) {
    if (plan.decimal_mark != '.' || plan.date_order != exchange::DateOrder::iso) return true;
    for (std::size_t c = 0; c < plan.header.size(); ++c) {
        if (plan.meaning[c] != exchange::column_key(plan.header[c])) return true;
    }
    return false;
}

QByteArray map_json(const ImportPlan& plan) {
    // The form is that of core/exchange/table_map.h.
    QJsonObject columns;
    QJsonArray ignore;
    for (std::size_t c = 0; c < plan.header.size(); ++c) {
        if (plan.meaning[c].empty()) {
            ignore.append(q(plan.header[c]));
        } else {
            columns[q(plan.header[c])] = q(plan.meaning[c]);
        }
    }
    QString dates = QStringLiteral("iso");
    switch (plan.date_order) {
        case exchange::DateOrder::iso: break;
        case exchange::DateOrder::day_month_year: dates = QStringLiteral("day_month_year"); break;
        case exchange::DateOrder::month_day_year: dates = QStringLiteral("month_day_year"); break;
        case exchange::DateOrder::year_month_day: dates = QStringLiteral("year_month_day"); break;
    }
    QJsonObject map{{QStringLiteral("evenfall_map"), 1},
                    {QStringLiteral("decimal_mark"), QString(QLatin1Char(plan.decimal_mark))},
                    {QStringLiteral("date_order"), dates},
                    {QStringLiteral("columns"), columns},
                    {QStringLiteral("ignore"), ignore}};
    if (plan.kind) map[QStringLiteral("kind")] = q(exchange::name_of(*plan.kind));
    return QJsonDocument(map).toJson();
}

}  // namespace evenfall::desktop

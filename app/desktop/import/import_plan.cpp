// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_plan.h"

#include "app/desktop/core_words.h"
#include "app/desktop/shown.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/gis_loader.h"
#include "core/input_error.h"

#include <QCoreApplication>
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

std::unique_ptr<exchange::RowSource> open_rows(const ImportPlan& plan) {
    const std::filesystem::path path(plan.path.toStdString());
    switch (exchange::form_of(path)) {
        case exchange::FileForm::workbook: return exchange::workbook_rows(path, plan.base.sheet);
        case exchange::FileForm::map: return exchange::outline_rows(path, plan.base);
        case exchange::FileForm::text: break;
    }
    return std::make_unique<exchange::CsvReader>(path, plan.delimiter);
}

void read_head(ImportPlan& plan, std::size_t rows) {
    plan.header.clear();
    plan.rows.clear();
    plan.problem.clear();
    try {
        const auto source = open_rows(plan);
        plan.header = source->header();
        while (plan.rows.size() < rows && source->next()) {
            const auto cells = source->cells();
            plan.rows.push_back({source->row(), {cells.begin(), cells.end()}});
        }
    } catch (const std::exception& e) {
        plan.problem = error_words(e);
    }
    plan.meaning.assign(plan.header.size(), {});
    plan.meter_of.assign(plan.header.size(), {});
}

void check_names(const ImportPlan& plan, const std::string& theirs) {
    const std::string key = exchange::column_key(theirs);
    for (const std::string& h : plan.header) {
        if (exchange::column_key(h) == key) return;
    }
    throw InputError(Issue{{plan.path.toStdString(), 0, theirs}, "no such column", "the column that the map names"});
}

}  // namespace

bool ImportPlan::wide() const {
    return std::any_of(meter_of.begin(), meter_of.end(), [](const std::string& m) { return !m.empty(); });
}

ImportPlan look_at(const QString& path, std::size_t rows, std::optional<char> delimiter) {
    ImportPlan plan;
    plan.path = path;
    plan.delimiter = delimiter;
    read_head(plan, rows);
    if (!plan.problem.isEmpty()) return plan;
    try {
        set_kind(plan, exchange::kind_of_header(plan.header, path.toStdString()));
    } catch (const InputError&) {
        plan.kind.reset();  // the user says what it is
    }
    return plan;
}

std::vector<PlanRow> rows_from(const ImportPlan& plan, std::size_t line, std::size_t count) {
    std::vector<PlanRow> out;
    const auto source = open_rows(plan);
    while (out.size() < count && source->next()) {
        if (source->row() < line) continue;
        const auto cells = source->cells();
        out.push_back({source->row(), {cells.begin(), cells.end()}});
    }
    return out;
}

void set_kind(ImportPlan& plan, exchange::Kind kind) {
    plan.kind = kind;
    plan.constants.clear();
    plan.meter_of.assign(plan.header.size(), {});
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
        std::erase_if(plan.constants, [&](const auto& c) { return group_of(spec, c.first) == group; });
    }
    plan.meter_of[column].clear();
    plan.meaning[column] = name;
}

void set_meter(ImportPlan& plan, std::size_t column, const std::string& meter, std::optional<double> minutes) {
    if (!plan.kind || *plan.kind != exchange::Kind::readings) return;
    for (std::string& other : plan.meter_of) {
        if (other == meter) other.clear();
    }
    plan.meter_of[column] = meter;
    plan.volume_minutes = minutes;
    plan.constants.clear();
    for (std::size_t c = 0; c < plan.meaning.size(); ++c) {
        // Such a table has a time and meters; whatever else it holds is left out.
        if (c == column || plan.meaning[c] != "time") plan.meaning[c].clear();
    }
}

void set_constant(ImportPlan& plan, const std::string& name, const std::string& text) {
    if (!plan.kind) return;
    const auto& spec = exchange::spec_of(*plan.kind);
    const auto group = group_of(spec, name);
    std::erase_if(plan.constants, [&](const auto& c) { return group_of(spec, c.first) == group; });
    if (text.empty()) return;
    for (std::string& other : plan.meaning) {
        if (!other.empty() && group_of(spec, other) == group) other.clear();
    }
    plan.constants[name] = text;
}

QStringList missing(const ImportPlan& plan) {
    if (!plan.problem.isEmpty()) return {plan.problem};
    if (!plan.kind) return {ImportPlanText::tr("Say what kind of table this is.")};
    const auto& spec = exchange::spec_of(*plan.kind);
    const auto has = [&](std::string_view group) {
        for (const std::string& m : plan.meaning) {
            if (!m.empty() && group_of(spec, m) == group) return true;
        }
        return std::any_of(plan.constants.begin(), plan.constants.end(),
                           [&](const auto& c) { return group_of(spec, c.first) == group; });
    };
    if (plan.wide()) {
        if (has("time")) return {};
        return {ImportPlanText::tr("Point at the column that holds: %1").arg(QStringLiteral("time"))};
    }
    QStringList best;
    bool first = true;
    for (const auto& set : spec.needed) {
        QStringList lacking;
        for (const auto group : set) {
            if (!has(group)) lacking << ImportPlanText::tr("Point at the column that holds: %1").arg(q(group));
        }
        if (first || lacking.size() < best.size()) best = lacking;
        first = false;
    }
    return best;
}

bool needs_map(const ImportPlan& plan) {
    if (plan.decimal_mark != '.' || plan.date_order != exchange::DateOrder::iso || plan.delimiter) return true;
    if (plan.wide() || !plan.constants.empty() || !plan.missing_words.empty()) return true;
    if (!plan.base.sheet.empty() || !plan.base.crs.empty() || plan.base.drawing_unit) return true;
    for (std::size_t c = 0; c < plan.header.size(); ++c) {
        if (plan.meaning[c] != exchange::column_key(plan.header[c])) return true;
    }
    return false;
}

void apply_map(ImportPlan& plan, const exchange::TableMap& map) {
    ImportPlan next = plan;
    next.base = map;
    next.delimiter = map.delimiter;
    if (map.delimiter != plan.delimiter || map.sheet != plan.base.sheet) read_head(next, std::max<std::size_t>(plan.rows.size(), 1));
    if (!next.problem.isEmpty()) {
        plan = std::move(next);
        return;
    }
    std::vector<std::string> renamed = next.header;
    for (const auto& [theirs, ours] : map.columns) {
        check_names(next, theirs);
        for (std::string& h : renamed) {
            if (exchange::column_key(h) == exchange::column_key(theirs)) h = ours;
        }
    }
    for (const std::string& theirs : map.ignore) check_names(next, theirs);
    const auto kind = map.kind ? map.kind : map.wide ? std::optional(exchange::Kind::readings) : next.kind;
    set_kind(next, kind ? *kind : exchange::kind_of_header(renamed, next.path.toStdString()));
    const auto& spec = exchange::spec_of(*next.kind);
    for (std::size_t c = 0; c < renamed.size(); ++c) {
        const std::string key = exchange::column_key(renamed[c]);
        const bool left_out = std::any_of(map.ignore.begin(), map.ignore.end(), [&](const std::string& i) {
            return exchange::column_key(i) == exchange::column_key(next.header[c]);
        });
        next.meaning[c] = !left_out && knows(spec, key) ? key : std::string();
    }
    next.constants = map.constants;
    next.decimal_mark = map.format.decimal_mark;
    next.date_order = map.format.date_order;
    next.missing_words = map.format.missing;
    next.volume_minutes.reset();
    if (map.wide) {
        check_names(next, map.wide->time);
        for (const auto& [theirs, meter] : map.wide->meters) check_names(next, theirs);
        for (std::size_t c = 0; c < next.header.size(); ++c) {
            const std::string key = exchange::column_key(next.header[c]);
            next.meaning[c] = key == exchange::column_key(map.wide->time) ? "time" : "";
            for (const auto& [theirs, meter] : map.wide->meters) {
                if (key == exchange::column_key(theirs)) next.meter_of[c] = meter;
            }
        }
        next.volume_minutes = map.wide->minutes;
    }
    plan = std::move(next);
}

}  // namespace evenfall::desktop

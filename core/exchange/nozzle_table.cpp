// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/nozzle_table.h"

#include "core/exchange/csv_reader.h"
#include "core/exchange/row_reader.h"
#include "core/input_error.h"

#include <algorithm>
#include <map>

namespace evenfall::exchange {
namespace {

const KindSpec& nozzle_spec() {
    static const KindSpec spec{Kind::catches,  // told apart by name only: not a table of the book
                               "nozzles",
                               {{"nozzle", "nozzle", ""},
                                {"pressure_psi", "pressure", "psi"},
                                {"pressure_kpa", "pressure", "kpa"},
                                {"pressure_bar", "pressure", "bar"},
                                {"radius_ft", "radius", "ft"},
                                {"radius_m", "radius", "m"},
                                {"flow_gpm", "flow", "gpm"},
                                {"flow_l_min", "flow", "l_min"},
                                {"flow_l_s", "flow", "l_s"},
                                {"flow_m3_h", "flow", "m3_h"},
                                {"lowest_psi", "lowest", "psi"},
                                {"lowest_kpa", "lowest", "kpa"},
                                {"lowest_bar", "lowest", "bar"},
                                {"highest_psi", "highest", "psi"},
                                {"highest_kpa", "highest", "kpa"},
                                {"highest_bar", "highest", "bar"}},
                               {{"nozzle", "pressure", "radius", "flow"}}};
    return spec;
}

/// The value in the plan's unit; a value already in it stays as typed.
template <class Q>
double in_unit(const units::Typed<Q>& value, const units::NamedUnit<Q>& unit) {
    return value.unit.name == unit.name ? value.value : value.quantity().in(unit.unit);
}

template <class Q>
std::optional<double> above_zero(RowReader& row, std::string_view group, const units::NamedUnit<Q>& unit, bool needed) {
    if (needed && !row.needed_number(group)) return std::nullopt;
    const auto value = row.measure<Q>(group);
    if (!value) return std::nullopt;
    if (!(value->value > 0.0)) row.refuse(group, row.text(group), phrase("exchange", "a number above zero"));
    return in_unit(*value, unit);
}

class Tables {
  public:
    explicit Tables(const plan::PlanUnits& units) : units_(units) {}

    void add(RowReader& row) {
        const std::string name = row.needed_text("nozzle");
        const auto pressure = above_zero(row, "pressure", units_.pressure, true);
        const auto radius = above_zero(row, "radius", units_.length, true);
        const auto flow = above_zero(row, "flow", units_.flow, true);
        const auto lowest = row.has("lowest") ? above_zero(row, "lowest", units_.pressure, false) : std::nullopt;
        const auto highest = row.has("highest") ? above_zero(row, "highest", units_.pressure, false) : std::nullopt;
        if (!row.ok()) return;
        const auto [place, fresh] = by_name_.emplace(name, nozzles_.size());
        if (fresh) nozzles_.push_back({name, {}, {}, {}});
        plan::Nozzle& nozzle = nozzles_[place->second];
        agree(row, "lowest", nozzle.lowest, lowest);
        agree(row, "highest", nozzle.highest, highest);
        for (const plan::NozzleRow& other : nozzle.rows) {
            if (other.pressure == *pressure) {
                row.refuse("pressure", row.text("pressure"), phrase("exchange", "each pressure once per nozzle"));
            }
        }
        nozzle.rows.push_back({*pressure, *radius, *flow});
    }

    std::vector<plan::Nozzle> take() {
        for (plan::Nozzle& n : nozzles_) {
            std::sort(n.rows.begin(), n.rows.end(), [](const auto& a, const auto& b) { return a.pressure < b.pressure; });
        }
        return std::move(nozzles_);
    }

  private:
    static void agree(RowReader& row, std::string_view group, std::optional<double>& known, const std::optional<double>& now) {
        if (!now) return;
        if (known && *known != *now) {
            row.refuse(group, row.text(group), phrase("exchange", "the same operating range in every row of a nozzle"));
        }
        known = now;
    }

    const plan::PlanUnits& units_;
    std::vector<plan::Nozzle> nozzles_;
    std::map<std::string, std::size_t> by_name_;
};

}  // namespace

std::vector<plan::Nozzle> read_nozzles(const std::filesystem::path& path, const plan::PlanUnits& units) {
    CsvReader rows(path);
    const ColumnIndex columns(nozzle_spec(), rows.header(), rows.file(), rows.row());
    const CellFormat format;
    RowReader row(rows, columns, format);
    IssueLog log;
    Tables tables(units);
    std::size_t count = 0;
    while (rows.next()) {
        ++count;
        row.start();
        if (rows.row_issue()) {
            log.add(*rows.row_issue());
            continue;
        }
        tables.add(row);
        for (const Issue& issue : row.issues()) log.add(issue);
    }
    if (log.count > 0) throw InputError(std::move(log.kept));
    if (count == 0) {
        throw InputError(Issue{{rows.file(), 0, ""}, phrase("exchange", "a header and nothing below it"),
                               phrase("exchange", "at least one row")});
    }
    return tables.take();
}

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/database.h"
#include "core/units/number.h"
#include "core/weather/weather_sheet.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <tuple>

/// For the weather files of core/store only: a row of values as typed, with the unit of each group
/// of columns, and how a second row about the same time goes together with the first.
namespace evenfall::store {

using SheetUnit = std::string weather::SheetUnits::*;

/// A column of a weather table: its name in the book and the group whose unit it has; null: none.
struct CellColumn {
    const char* name;
    SheetUnit unit;
};

template <std::size_t n>
struct TypedCells {
    std::array<std::optional<double>, n> values{};
    weather::SheetUnits units;  ///< empty for a group without a value

    bool has_any(const std::array<CellColumn, n>& columns, SheetUnit unit) const {
        for (std::size_t i = 0; i < n; ++i) {
            if (columns[i].unit == unit && values[i]) return true;
        }
        return false;
    }
    /// Leaves a unit only where a value has it: a header may name units of columns that are empty.
    void drop_unused_units(const std::array<CellColumn, n>& columns) {
        using U = weather::SheetUnits;
        for (const SheetUnit u : {&U::temperature, &U::radiation, &U::wind, &U::rain, &U::reference_et}) {
            if (!has_any(columns, u)) (units.*u).clear();
        }
    }
};

enum class Fit {
    same,       ///< the second row says nothing new
    completes,  ///< it has values where the first has none
    conflicts   ///< it says something else; `first` and `second` say what
};

template <std::size_t n>
struct Joined {
    Fit fit = Fit::same;
    TypedCells<n> cells;  ///< of both; where they differ, those of the second
    std::string first;    ///< "tmax 90 f, rain 0.2 in"
    std::string second;
};

/// The values of `second` that cannot stand beside `first`: other ones than it has, and those in
/// another unit than their like, for one row keeps one unit for a group.
template <std::size_t n>
std::array<bool, n> contradictions(const TypedCells<n>& first, const TypedCells<n>& second,
                                   const std::array<CellColumn, n>& columns) {
    std::array<bool, n> found{};
    for (std::size_t i = 0; i < n; ++i) {
        if (!second.values[i]) continue;
        const SheetUnit u = columns[i].unit;
        const bool other_unit = u != nullptr && !(first.units.*u).empty() && first.units.*u != second.units.*u;
        found[i] = other_unit || (first.values[i] && first.values[i] != second.values[i]);
    }
    return found;
}

/// `cells` without those values.
template <std::size_t n>
TypedCells<n> without(TypedCells<n> cells, const std::array<bool, n>& left_out,
                      const std::array<CellColumn, n>& columns) {
    for (std::size_t i = 0; i < n; ++i) {
        if (left_out[i]) cells.values[i].reset();
    }
    cells.drop_unused_units(columns);
    return cells;
}

template <std::size_t n>
Joined<n> join(const TypedCells<n>& first, const TypedCells<n>& second,
               const std::array<CellColumn, n>& columns) {
    Joined<n> out{Fit::same, first, {}, {}};
    const auto text = [&](std::size_t i, const TypedCells<n>& cells) {
        std::string t = std::string(columns[i].name) + " ";
        const std::string unit = columns[i].unit == nullptr ? std::string() : cells.units.*columns[i].unit;
        if (!cells.values[i]) return t + "not recorded" + (unit.empty() ? "" : ", its like in " + unit);
        t += units::format_shortest(*cells.values[i]);
        return unit.empty() ? t : t + " " + unit;
    };
    const auto differ = [&](std::size_t i) {
        out.fit = Fit::conflicts;
        out.first += (out.first.empty() ? "" : ", ") + text(i, first);
        out.second += (out.second.empty() ? "" : ", ") + text(i, second);
    };
    const auto other_unit = [&](SheetUnit u) {
        return u != nullptr && !(first.units.*u).empty() && first.units.*u != second.units.*u;
    };
    const auto contrary = contradictions(first, second, columns);
    for (std::size_t i = 0; i < n; ++i) {
        if (!second.values[i]) continue;
        if (contrary[i]) {
            differ(i);
        } else if (!first.values[i] && out.fit == Fit::same) {
            out.fit = Fit::completes;
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        const SheetUnit u = columns[i].unit;
        if (u != nullptr && second.has_any(columns, u)) {
            if (other_unit(u)) out.cells.values[i].reset();
            out.cells.units.*u = second.units.*u;
        }
        if (second.values[i]) out.cells.values[i] = second.values[i];
    }
    return out;
}

/// The sets of units in a book, each looked up once.
class UnitSets {
  public:
    explicit UnitSets(SQLite::Database& db) : db_(db) {}

    std::int64_t id_of(const weather::SheetUnits& u) {
        const auto key = std::tuple(u.temperature, u.radiation, u.wind, u.rain, u.reference_et);
        const auto known = ids_.find(key);
        if (known != ids_.end()) return known->second;
        const auto bind = [&](SQLite::Statement& s) {
            s.bind(1, u.temperature);
            s.bind(2, u.radiation);
            s.bind(3, u.wind);
            s.bind(4, u.rain);
            s.bind(5, u.reference_et);
        };
        SQLite::Statement find(db_, "SELECT id FROM weather_units WHERE temperature=? AND radiation=? AND wind=?"
                                    " AND rain=? AND reference_et=?");
        bind(find);
        std::int64_t id = 0;
        if (find.executeStep()) {
            id = find.getColumn(0).getInt64();
        } else {
            SQLite::Statement add(db_, "INSERT INTO weather_units (temperature, radiation, wind, rain,"
                                       " reference_et) VALUES (?,?,?,?,?)");
            bind(add);
            add.exec();
            id = db_.getLastInsertRowid();
        }
        return ids_.emplace(key, id).first->second;
    }

    const weather::SheetUnits& of(std::int64_t id) {
        const auto known = units_.find(id);
        if (known != units_.end()) return known->second;
        SQLite::Statement find(db_, "SELECT temperature, radiation, wind, rain, reference_et FROM weather_units"
                                    " WHERE id = ?");
        find.bind(1, id);
        if (!find.executeStep()) throw BookError(phrase("store", "A weather record has no set of units; the book is damaged."));
        return units_
            .emplace(id, weather::SheetUnits{text_in(find.getColumn(0)), text_in(find.getColumn(1)),
                                             text_in(find.getColumn(2)), text_in(find.getColumn(3)),
                                             text_in(find.getColumn(4))})
            .first->second;
    }

  private:
    SQLite::Database& db_;
    std::map<std::tuple<std::string, std::string, std::string, std::string, std::string>, std::int64_t> ids_;
    std::map<std::int64_t, weather::SheetUnits> units_;
};

template <std::size_t n>
std::string names_of(const std::array<CellColumn, n>& columns) {
    std::string names;
    for (const CellColumn& c : columns) names += (names.empty() ? "" : ", ") + std::string(c.name);
    return names;
}

/// The values that `members` point at, with the units that they need.
template <class Row, std::size_t n>
TypedCells<n> cells_of(const Row& row, const std::array<std::optional<double> Row::*, n>& members,
                       const weather::SheetUnits& units, const std::array<CellColumn, n>& columns) {
    TypedCells<n> cells{{}, units};
    for (std::size_t i = 0; i < n; ++i) cells.values[i] = row.*members[i];
    cells.drop_unused_units(columns);
    return cells;
}

/// After a conflict: what the book says, and what the row says instead.
struct Difference {
    std::string in_book;
    std::string in_row;
};

/// Values from column `first` on.
template <std::size_t n>
std::array<std::optional<double>, n> values_in(SQLite::Statement& row, int first) {
    std::array<std::optional<double>, n> values{};
    for (std::size_t i = 0; i < n; ++i) values[i] = number_in(row.getColumn(first + static_cast<int>(i)));
    return values;
}

/// What is done with a row whose values contradict the book.
enum class Contrary {
    report,    ///< nothing
    replace,   ///< the row's values stand from now on
    leave_out  ///< those of its values that contradict nothing complete the book
};

/// Whether every value of `cells` that contradicts the newest revision is one that an earlier revision
/// had, in the same unit.
/// @param older  stands at the newest revision; steps to the earlier ones
template <std::size_t n>
bool all_known_before(SQLite::Statement& older, UnitSets& sets, const TypedCells<n>& cells,
                      std::array<bool, n> contrary, const std::array<CellColumn, n>& columns) {
    while (older.executeStep()) {
        const auto values = values_in<n>(older, 2);
        const weather::SheetUnits& units = sets.of(older.getColumn(1).getInt64());
        for (std::size_t i = 0; i < n; ++i) {
            const SheetUnit u = columns[i].unit;
            if (values[i] == cells.values[i] && (u == nullptr || units.*u == cells.units.*u)) contrary[i] = false;
        }
    }
    return std::none_of(contrary.begin(), contrary.end(), [](bool c) { return c; });
}

/// Sets a row against the newest revision of its time, and stores it where it says something new.
/// @param revisions  bound to station and time, newest first; gives revision, units and the values
/// @param store      store(cells, revision)
template <class Outcome, std::size_t n, class Store>
Outcome add_row(SQLite::Statement& revisions, UnitSets& sets, const TypedCells<n>& cells,
                const std::array<CellColumn, n>& columns, Contrary contrary, Difference& difference,
                const Store& store) {
    if (!revisions.executeStep()) {
        store(cells, 0);
        return Outcome::added;
    }
    const int revision = revisions.getColumn(0).getInt();
    TypedCells<n> known{values_in<n>(revisions, 2), sets.of(revisions.getColumn(1).getInt64())};
    known.drop_unused_units(columns);
    const auto apart = contradictions(known, cells, columns);
    const auto joined = join(known, contrary == Contrary::leave_out ? without(cells, apart, columns) : cells, columns);
    if (joined.fit == Fit::same) return Outcome::unchanged;
    if (joined.fit == Fit::completes || contrary == Contrary::replace) store(joined.cells, revision + 1);
    if (joined.fit == Fit::completes) return Outcome::completed;
    difference = {joined.first, joined.second};
    if (contrary == Contrary::replace) return Outcome::conflict;
    return all_known_before(revisions, sets, cells, apart, columns) ? Outcome::superseded : Outcome::conflict;
}

}  // namespace evenfall::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_map.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// What an import is going to do with one file: some of its rows, and which column is what. The
/// user points at columns; the file itself is never changed.
/// Tests: tests/app/desktop_import_test.cpp
namespace evenfall::desktop {

struct PlanRow {
    std::size_t line = 0;  ///< of the file (row of the sheet), as in messages
    std::vector<std::string> cells;
};

struct ImportPlan {
    QString path;
    std::optional<char> delimiter;                   ///< nothing: told from the header line
    std::vector<std::string> header;
    std::vector<PlanRow> rows;                       ///< the ones to look at
    std::optional<exchange::Kind> kind;              ///< as told from the header or chosen
    std::vector<std::string> meaning;                ///< per column: a known column name, or empty: not used
    std::map<std::string, std::string> constants;    ///< known column name to the text it has in every row
    /// A table with a column for each meter: per column the meter's code, or empty. `meaning` then
    /// names the time only.
    std::vector<std::string> meter_of;
    std::optional<double> volume_minutes;            ///< of such a table: its cells are volumes, this long
    char decimal_mark = '.';
    exchange::DateOrder date_order = exchange::DateOrder::iso;
    std::vector<std::string> missing_words;          ///< texts that mean "not recorded"
    exchange::TableMap base;                         ///< what a loaded map says beyond this: sheet, reference system
    QString problem;                                 ///< why the file cannot be read at all
    bool wide() const;
};

/// Reads the header and up to `rows` rows, tells the kind and takes over names that are known.
ImportPlan look_at(const QString& path, std::size_t rows, std::optional<char> delimiter = std::nullopt);
/// Up to `count` rows of the plan's file from about that line on, for looking at a place.
/// @throws InputError
std::vector<PlanRow> rows_from(const ImportPlan& plan, std::size_t line, std::size_t count);
/// Chooses another kind: known names are taken over, others are left out.
void set_kind(ImportPlan& plan, exchange::Kind kind);
/// Gives a column a meaning; a column that had it before loses it. Empty: not used.
void set_meaning(ImportPlan& plan, std::size_t column, const std::string& name);
/// Says that the column holds the readings of that meter (see ImportPlan::meter_of).
void set_meter(ImportPlan& plan, std::size_t column, const std::string& meter, std::optional<double> minutes);
/// The same text in every row; empty: no such thing.
void set_constant(ImportPlan& plan, const std::string& name, const std::string& text);
/// What is still missing before the file can be imported, one sentence each.
QStringList missing(const ImportPlan& plan);
/// False when the header and the formats can be taken as they are.
bool needs_map(const ImportPlan& plan);
/// The plan as a column map, for core/exchange and for use with the command line.
QByteArray map_json(const ImportPlan& plan);
/// Takes over what a map file says. @throws InputError when it names a column that the file lacks
void apply_map(ImportPlan& plan, const exchange::TableMap& map);

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/columns.h"
#include "core/exchange/row_reader.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

/// What an import is going to do with one file: its first rows, and which column is what. The
/// user points at columns; the file itself is never changed.
/// Tests: tests/app/desktop_import_test.cpp
namespace evenfall::desktop {

struct ImportPlan {
    QString path;
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows;      ///< the first ones, to look at
    std::optional<exchange::Kind> kind;              ///< as told from the header or chosen
    std::vector<std::string> meaning;                ///< per column: a known column name, or empty: not used
    char decimal_mark = '.';
    exchange::DateOrder date_order = exchange::DateOrder::iso;
    QString problem;                                 ///< why the file cannot be read at all
};

/// Reads the header and up to `rows` rows, tells the kind and takes over names that are known.
ImportPlan look_at(const QString& path, std::size_t rows);
/// Chooses another kind: known names are taken over, others are left out.
void set_kind(ImportPlan& plan, exchange::Kind kind);
/// Gives a column a meaning; a column that had it before loses it. Empty: not used.
void set_meaning(ImportPlan& plan, std::size_t column, const std::string& name);
/// What is still missing before the file can be imported, one sentence each.
QStringList missing(const ImportPlan& plan);
/// True when the header and the formats can be taken as they are.
bool needs_map(const ImportPlan& plan);
/// The plan as a column map, for core/exchange and for use with the command line.
QByteArray map_json(const ImportPlan& plan);

}  // namespace evenfall::desktop

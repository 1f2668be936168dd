// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/conflict_table.h"

#include "core/exchange/conflict_words.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_text.h"
#include "core/exchange/row_reader.h"

#include <fstream>
#include <limits>
#include <unistd.h>

namespace evenfall::exchange {
namespace {

using store::ConflictRow;
using store::ConflictRows;
using store::Stands;

const KindSpec& conflict_spec() {
    static const KindSpec spec{Kind::catches,  // told apart by name only: not a table of the book
                               "conflicts",
                               {{"file", "file", ""},
                                {"row", "row", ""},
                                {"column", "column", ""},
                                {"record", "record", ""},
                                {"in_book", "in_book", ""},
                                {"in_file", "in_file", ""},
                                {"choice", "choice", ""}},
                               {{"record", "in_book", "in_file", "choice"}}};
    return spec;
}

std::string_view word_of(Stands choice) {
    switch (choice) {
        case Stands::undecided: break;
        case Stands::in_book: return "book";
        case Stands::in_file: return "file";
    }
    return "";
}

ConflictRow read_row(RowReader& row) {
    ConflictRow c;
    c.file = row.text("file");
    if (row.has("row")) {
        c.row = static_cast<std::size_t>(row.whole_number("row", 0, std::numeric_limits<int>::max()).value_or(0));
    }
    c.column = row.text("column");
    c.record = row.needed_text("record");
    c.in_book = row.needed_text("in_book");
    c.in_file = row.needed_text("in_file");
    const std::string word = column_key(row.text("choice"));  // a spreadsheet makes "Book" of it
    if (word == word_of(Stands::in_book)) c.choice = Stands::in_book;
    else if (word == word_of(Stands::in_file)) c.choice = Stands::in_file;
    else if (!word.empty()) row.refuse("choice", row.text("choice"), phrase("exchange", "book, file, or nothing"));
    return c;
}

void add_row(ConflictRows& rows, RowReader& row, const ConflictRow& conflict) {
    const auto clash = rows.add(conflict, row.row());
    if (!clash) return;
    if (clash->same_value) {
        row.refuse("in_file", conflict.in_file,
                   {phrase("exchange", "each value of a record once; it stands in row %1 too"), clash->line});
    } else {
        row.refuse("choice", row.text("choice"),
                   {phrase("exchange", "file for one value of the %1 at most; row %2 says file as well"),
                    printable_sentence(record_words(conflict.record), 300), clash->line});
    }
}

}  // namespace

void write_conflicts(const std::filesystem::path& path, const ConflictRows& rows,
                     const std::function<Stands(std::int64_t)>& choice) {
    std::filesystem::path draft = path;
    draft += ".new-" + std::to_string(::getpid());
    std::ofstream out(draft, std::ios::binary);
    out << "file,row,column,record,in_book,in_file,choice\n";
    std::int64_t at = 0;
    rows.for_each([&](const ConflictRow& c) {
        out << csv_cell(c.file) << ',';
        if (c.row != 0) out << c.row;
        out << ',' << csv_cell(c.column) << ',' << csv_cell(c.record) << ',' << csv_cell(c.in_book) << ','
            << csv_cell(c.in_file) << ',' << word_of(choice ? choice(at) : c.choice) << '\n';
        ++at;
    });
    out.close();
    std::error_code error;
    if (!out.fail()) std::filesystem::rename(draft, path, error);
    if (out.fail() || error) {
        std::error_code ignored;
        std::filesystem::remove(draft, ignored);
        throw InputError(path.string(), phrase("exchange", "a file for the conflicts that can be written"));
    }
}

ConflictRows read_conflicts(const std::filesystem::path& path) {
    CsvReader source(path);
    const ColumnIndex columns(conflict_spec(), source.header(), source.file(), source.row());
    const CellFormat format;
    RowReader row(source, columns, format);
    IssueLog log;
    ConflictRows rows;
    while (source.next()) {
        row.start();
        if (source.row_issue()) {
            log.add(*source.row_issue());
            continue;
        }
        const ConflictRow conflict = read_row(row);
        if (row.ok()) add_row(rows, row, conflict);
        for (const Issue& issue : row.issues()) log.add(issue);
    }
    if (log.count > 0) throw InputError(std::move(log.kept));
    return rows;
}

}  // namespace evenfall::exchange

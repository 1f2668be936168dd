// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/xlsx/write_xlsx.h"

#include "reports/content/utf8.h"
#include "reports/content/wrap.h"
#include "reports/xlsx/layout.h"
#include "reports/xlsx/native_chart.h"
#include "reports/xlsx/safe_sheet.h"

#include "core/calendar/date.h"

#include <algorithm>
#include <clocale>
#include <filesystem>
#include <memory>
#include <set>
#include <stdexcept>

#include <locale.h>

namespace evenfall::reports {
namespace {

char* lend(const std::string& text) { return const_cast<char*>(text.c_str()); }

struct Discard {
    void operator()(lxw_workbook* book) const { lxw_workbook_free(book); }
};

constexpr std::size_t text_width = 42;  ///< characters of a line in a cell of running text

/// Widths of the columns of one sheet, in characters.
class Widths {
  public:
    void take(std::size_t column, std::size_t characters) {
        if (widths_.size() <= column) widths_.resize(column + 1, 9);
        widths_[column] = std::max(widths_[column], std::min<std::size_t>(characters + 2, 46));
    }
    void apply(const SafeSheet& sheet) const {
        for (std::size_t c = 0; c < widths_.size(); ++c) {
            need(worksheet_set_column(sheet.raw(), static_cast<lxw_col_t>(c),
                                      static_cast<lxw_col_t>(c), static_cast<double>(widths_[c]),
                                      nullptr),
                 "column width");
        }
    }
    std::size_t of(std::size_t column) const { return widths_.at(column); }

  private:
    std::vector<std::size_t> widths_;
};

/// libxlsxwriter prints numbers in the locale of the thread; under one with a decimal comma the
/// workbook would not open. Here the thread has a point for as long as the workbook is written.
class PlainNumbers {
  public:
    PlainNumbers() : plain_(newlocale(LC_NUMERIC_MASK, "C", duplocale(uselocale(nullptr)))) {
        if (plain_ != nullptr) before_ = uselocale(plain_);
    }
    ~PlainNumbers() {
        if (plain_ == nullptr) return;
        uselocale(before_);
        freelocale(plain_);
    }
    PlainNumbers(const PlainNumbers&) = delete;
    PlainNumbers& operator=(const PlainNumbers&) = delete;

  private:
    locale_t plain_;
    locale_t before_{};
};

class BookWriter {
  public:
    BookWriter(const Report& report, const std::string& path) : report_(report), layout_(report) {
        lxw_workbook_options options{};
        options.constant_memory = report.raw_tables.empty() ? LXW_FALSE : LXW_TRUE;
        options.use_zip64 = LXW_TRUE;
        book_.reset(workbook_new_opt(path.c_str(), &options));
        if (!book_) throw std::runtime_error("cannot make the workbook " + path);
        formats_ = std::make_unique<Formats>(book_.get());
        properties();
    }

    void write() {
        caution();
        answer();
        for (const Section& section : report_.sections) this->section(section);
        notes();
        names();
        for (const RawTable& raw : report_.raw_tables) this->raw(raw);
        // workbook_close frees the book whether it succeeds or not.
        need(workbook_close(book_.release()), "writing the file");
    }

  private:
    void properties() {
        lxw_doc_properties p{};
        p.title = lend(report_.title);
        p.subject = lend(report_.subtitle);
        p.company = lend(report_.organisation);
        p.author = lend(report_.program);
        p.category = lend(report_.kind);
        const auto created = calendar::parse_instant(report_.created);
        // 0 would mean "now" to the library and make two runs differ; 1 s is as good as unknown.
        p.created = created ? static_cast<time_t>(created->time_since_epoch().count()) : 1;
        need(workbook_set_properties(book_.get(), &p), "properties");
    }

    SafeSheet sheet(const std::string& name, const std::string& title, bool wide) {
        lxw_worksheet* s = workbook_add_worksheet(book_.get(), name.c_str());
        if (s == nullptr) throw std::runtime_error("workbook: sheet \"" + name + "\" refused");
        if (wide) worksheet_set_landscape(s);
        worksheet_set_paper(s, 0);  // the printer's own: Letter here, A4 there
        worksheet_fit_to_pages(s, 1, 0);
        worksheet_set_margins(s, 0.6, 0.6, 0.7, 0.7);
        worksheet_gridlines(s, LXW_HIDE_ALL_GRIDLINES);
        need(worksheet_set_footer(s, "&L&8&A&R&8page &P of &N"), "footer");
        SafeSheet safe(s, name);
        CellLook big;
        big.bold = true;
        big.size = 14;
        safe.text(0, 0, title, formats_->of(big));
        CellLook faint;
        faint.ink = ink_faint;
        safe.text(1, 0, report_.subtitle.empty() ? report_.title
                                                 : report_.title + ", " + report_.subtitle,
                  formats_->of(faint));
        return safe;
    }

    /// Running text as one row per line, so that it never needs a merged or a very tall cell.
    lxw_row_t lines(const SafeSheet& s, lxw_row_t row, const std::string& text, bool faint = false) {
        if (text.empty()) return row;
        CellLook look;
        if (faint) look.ink = ink_faint;
        for (const auto& line : wrap(text, Layout::line_width)) {
            s.text(row++, 0, line, formats_->of(look));
        }
        return row;
    }

    void caution() {
        const SafeSheet s = sheet(sheet_name("caution"), report_.caution.title, false);
        lxw_row_t row = 3;
        for (const auto& t : report_.caution.paragraphs) row = lines(s, row, t) + 1;
        Widths widths;
        widths.take(0, 44);
        widths.take(1, 44);
        widths.apply(s);
        worksheet_print_area(s.raw(), 0, 0, row, 2);
        worksheet_activate(s.raw());
    }

    void answer() {
        const SafeSheet s = sheet(sheet_name("answer"), "Answer", false);
        Widths widths;
        lxw_row_t row = 3;
        for (const auto& t : report_.answer.sentences) row = lines(s, row, t);
        ++row;
        if (!report_.answer.figures.rows.empty()) {
            row = table(s, report_.answer.figures, row, widths);
        }
        if (!report_.answer.fixes.empty()) row = table(s, fixes_table(report_.answer), row, widths);
        widths.take(0, 20);
        widths.apply(s);
        worksheet_print_area(s.raw(), 0, 0, row, 7);
    }

    void section(const Section& section) {
        const SafeSheet s = sheet(sheet_name(section.key), section.title, true);
        Widths widths;
        lxw_row_t row = 3;
        bool first = true;
        lxw_col_t last_column = 9;
        for (const Block& block : section.blocks) {
            if (const auto* p = std::get_if<Paragraph>(&block)) row = lines(s, row, p->text) + 1;
            if (const auto* t = std::get_if<Table>(&block)) {
                row = table(s, *t, row, widths);
                last_column = std::max(last_column, static_cast<lxw_col_t>(t->columns.size() - 1));
                if (first && layout_.of(t->key).head_row <= 14) freeze(s, *t);
                first = false;
            }
        }
        for (const Block& block : section.blocks) {
            if (const auto* chart = std::get_if<Chart>(&block)) row = this->chart(s, *chart);
        }
        widths.apply(s);
        worksheet_print_area(s.raw(), 0, 0, row, last_column);
    }

    void freeze(const SafeSheet& s, const Table& t) const {
        const lxw_row_t head = layout_.of(t.key).head_row;
        worksheet_freeze_panes(s.raw(), head + 1, 1);
        need(worksheet_repeat_rows(s.raw(), head, head), "repeated head");
    }

    lxw_row_t table(const SafeSheet& s, const Table& t, lxw_row_t row, Widths& widths) {
        CellLook title;
        title.bold = true;
        s.text(row++, 0, t.title, formats_->of(title));
        row = lines(s, row, t.sentence, true);
        head(s, t.columns, row++, widths);
        for (std::size_t r = 0; r < t.rows.size(); ++r, ++row) {
            grow(s, t.rows[r], row);
            for (std::size_t c = 0; c < t.columns.size(); ++c) cell(s, t, r, c, row, widths);
        }
        for (const auto& note : t.footnotes) row = lines(s, row, note, true);
        return row + 1;
    }

    /// Not every program makes rows taller for wrapped text.
    static void grow(const SafeSheet& s, const Row& row, lxw_row_t at) {
        std::size_t lines = 1;
        for (const Cell& cell : row.cells) {
            if (const auto* t = std::get_if<std::string>(&cell.value)) {
                lines = std::max(lines, wrap(*t, text_width).size());
            }
        }
        if (lines > 1) {
            need(worksheet_set_row(s.raw(), at, 13.5 * static_cast<double>(lines), nullptr), "row");
        }
    }

    void head(const SafeSheet& s, const std::vector<Column>& columns, lxw_row_t row,
              Widths& widths) {
        CellLook look;
        look.bold = true;
        look.wrap = true;
        look.fill = head_fill;
        std::size_t tallest = 1;
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const std::string text = columns[c].head();
            const std::size_t lines = length_in_characters(text) > 14 ? 3 : 1;
            widths.take(c, lines == 1 ? length_in_characters(text) : 12);
            tallest = std::max(tallest, lines);
        }
        need(worksheet_set_row(s.raw(), row, 15.0 * static_cast<double>(tallest), nullptr), "head");
        for (std::size_t c = 0; c < columns.size(); ++c) {
            s.text(row, static_cast<lxw_col_t>(c), columns[c].head(), formats_->of(look));
        }
    }

    void cell(const SafeSheet& s, const Table& t, std::size_t r, std::size_t c, lxw_row_t row,
              Widths& widths) {
        const Cell& cell = t.rows[r].cells[c];
        const auto column = static_cast<lxw_col_t>(c);
        const CellLook look = look_of_cell(t, r, c);
        const auto value = cell.number();
        const std::size_t length =
            length_in_characters(printed(cell, t.columns[c].format, look.unit_in_cell));
        widths.take(c, std::min<std::size_t>(length, text_width + 2));
        if (value && !cell.formula.empty()) {
            s.formula(row, column, layout_.formula(cell.formula, t, r), *value, formats_->of(look));
        } else if (value) {
            s.number(row, column, *value, formats_->of(look));
        } else if (const auto* text = std::get_if<std::string>(&cell.value)) {
            s.text(row, column, *text, formats_->of(look));
        } else {
            s.blank(row, column, formats_->of(look));
        }
        if (cell.limits) validate(s, row, column, *cell.limits);
    }

    static CellLook look_of_cell(const Table& t, std::size_t r, std::size_t c) {
        const Cell& cell = t.rows[r].cells[c];
        CellLook look;
        look.is_number = cell.number().has_value();
        look.assumed = cell.assumed && look.is_number;
        look.wrap = !look.is_number;
        look.unit_in_cell = cell.format.has_value();
        look.number = cell.format ? *cell.format : t.columns[c].format;
        if (!look.is_number) look.number = {};
        if (cell.role == CellRole::input) look.fill = input_fill;
        if (cell.role == CellRole::result) look.fill = result_fill;
        look.bold = cell.role == CellRole::result;
        look.unlocked = cell.role == CellRole::choice;
        if (t.rows[r].kind == RowKind::total) {
            look.bold = true;
            look.fill = total_fill;
            look.top_rule = true;
        }
        return look;
    }

    static void validate(const SafeSheet& s, lxw_row_t row, lxw_col_t column, const Limits& limits) {
        lxw_data_validation v{};
        v.validate = LXW_VALIDATION_TYPE_DECIMAL;
        v.criteria = LXW_VALIDATION_CRITERIA_BETWEEN;
        v.minimum_number = limits.low;
        v.maximum_number = limits.high;
        const std::string prompt = limits.prompt.substr(0, 255);
        v.input_message = lend(prompt);
        need(worksheet_data_validation_cell(s.raw(), row, column, &v), "data validation");
    }

    lxw_row_t chart(const SafeSheet& s, const Chart& chart) {
        lxw_row_t row = layout_.chart_row(chart.key);
        const bool drawn = has_values(chart, report_);
        row = lines(s, row, drawn ? chart.sentence : std::string(nothing_to_draw));
        if (!drawn) return row + Layout::chart_rows;
        if (const auto* series = std::get_if<SeriesChart>(&chart.content)) {
            const Table& t = *report_.find_table(series->categories.table);
            if (layout_.of(t.key).data_rows > 0) {
                insert_series_chart(book_.get(), s, layout_, t, chart, row);
            }
            return row + Layout::chart_rows;
        }
        const auto& map = std::get<MapChart>(chart.content);
        const Table& t = *report_.find_table(map.value.table);
        if (layout_.of(t.key).data_rows > 0) {
            insert_map(book_.get(), s, *formats_, layout_, t, chart, row);
        }
        const auto tall = static_cast<lxw_row_t>(grid_of_cans(t, map).ys.size());
        return row + std::max(Layout::chart_rows, tall + Layout::map_extra_rows);
    }

    void notes() {
        const SafeSheet s = sheet(sheet_name("notes"), "Notes", true);
        Widths widths;
        for (std::size_t c = 0; c < 4; ++c) widths.take(c, 34);
        lxw_row_t row = table(s, notes_table(report_.notes), 3, widths);
        CellLook bold;
        bold.bold = true;
        s.text(row++, 0, "Data gaps", formats_->of(bold));
        if (report_.gaps.empty()) row = lines(s, row, "None found.");
        for (const auto& gap : report_.gaps) row = lines(s, row, gap);
        s.text(++row, 0, "Cells", formats_->of(bold));
        row = lines(s, row + 1,
                    "Blue cells hold what was measured or typed, sand cells the results; the cells "
                    "between hold formulas that can be followed. Framed cells may be changed. An "
                    "empty cell means not known, which is not zero. * means that a figure rests on "
                    "an assumed or estimated input.");
        signatures(s, row + 1, bold);
        widths.apply(s);
    }

    void signatures(const SafeSheet& s, lxw_row_t row, const CellLook& bold) {
        if (report_.signatures.empty()) return;
        s.text(row++, 0, "Signatures", formats_->of(bold));
        CellLook plain;
        for (const Signature& sign : report_.signatures) {
            const auto field = [&](const char* name, const std::string& value) {
                s.text(row, 0, name, formats_->of(plain));
                s.text(row++, 1, value.empty() ? "____________________" : value,
                       formats_->of(plain));
            };
            field("Role", sign.role);
            field("Name", sign.name);
            field("Certification number", sign.certification);
            field("Expires", sign.expires);
            field("Signature and date", "");
            ++row;
        }
    }

    /// Names for cells and for the numeric columns of tables, which formulas and readers use.
    void names() {
        std::set<std::string> used;
        const auto define = [&](const std::string& name, const std::string& range) {
            if (!used.insert(name).second) throw std::logic_error("report: name " + name + " twice");
            std::string formula = "=";
            formula += range;
            need(workbook_define_name(book_.get(), name.c_str(), formula.c_str()), "name " + name);
        };
        for (const Table* t : report_.tables()) {
            for (std::size_t c = 0; c < t->columns.size(); ++c) {
                if (!t->rows.empty()) {
                    define(t->key + "_" + t->columns[c].key, layout_.column_range(*t, c));
                }
                for (std::size_t r = 0; r < t->rows.size(); ++r) {
                    const Cell& cell = t->rows[r].cells[c];
                    if (!cell.name.empty()) define(cell.name, layout_.cell_address(*t, r, c));
                }
            }
        }
    }

    void raw(const RawTable& t) {
        const SafeSheet s = sheet(sheet_name(t.key), t.title, true);
        lxw_row_t row = lines(s, 2, t.sentence);
        Widths widths;
        for (std::size_t c = 0; c < t.columns.size(); ++c) {
            widths.take(c, t.columns[c].is_text ? 22 : 14);
        }
        widths.apply(s);
        head(s, t.columns, row, widths);
        worksheet_freeze_panes(s.raw(), row + 1, 0);
        need(worksheet_repeat_rows(s.raw(), row, row), "repeated head");
        std::vector<lxw_format*> looks;
        for (const Column& column : t.columns) {
            CellLook look;
            look.number = column.format;
            look.is_number = !column.is_text;
            looks.push_back(formats_->of(look));
        }
        t.produce([&](std::span<const RawValue> values) {
            if (values.size() != looks.size()) {
                throw std::logic_error("raw table " + t.key + ": ragged");
            }
            if (++row >= LXW_ROW_MAX) {
                throw std::runtime_error("the table \"" + t.title +
                                         "\" has more rows than a sheet can hold (1,048,576)");
            }
            for (std::size_t c = 0; c < values.size(); ++c) {
                const auto column = static_cast<lxw_col_t>(c);
                if (const auto* v = std::get_if<double>(&values[c])) {
                    s.number(row, column, *v, looks[c]);
                } else if (const auto* v2 = std::get_if<std::string_view>(&values[c])) {
                    s.text(row, column, *v2, looks[c]);
                }
            }
        });
    }

    const Report& report_;
    Layout layout_;
    std::unique_ptr<lxw_workbook, Discard> book_;
    std::unique_ptr<Formats> formats_;
};

}  // namespace

void write_xlsx(const Report& report, const std::string& path) {
    check(report);
    const PlainNumbers numbers;
    const std::string part = path + ".part";
    try {
        BookWriter(report, part).write();
        std::filesystem::rename(part, path);
    } catch (...) {
        std::error_code ignored;
        std::filesystem::remove(part, ignored);
        throw;
    }
}

}  // namespace evenfall::reports

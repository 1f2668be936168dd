// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/write_text.h"

#include "reports/content/utf8.h"
#include "reports/content/wrap.h"

#include <algorithm>

namespace evenfall::reports {
namespace {

constexpr std::size_t widest_text_column = 40;

std::string pad(const std::string& t, std::size_t width, bool left) {
    const std::size_t n = length_in_characters(t);
    const std::string blanks(n < width ? width - n : 0, ' ');
    return left ? t + blanks : blanks + t;
}

class TextWriter {
  public:
    explicit TextWriter(std::size_t width) : width_(std::max<std::size_t>(width, 20)) {}

    std::string take() { return std::move(out_); }

    void report(const Report& r) {
        headline(r.title, '=');
        for (const std::string* t : {&r.subtitle, &r.organisation}) {
            if (!t->empty()) paragraph(*t);
        }
        if (!r.created.empty()) paragraph("Made " + r.created + " by " + r.program);
        blank();
        headline(r.caution.title, '-');
        for (const auto& t : r.caution.paragraphs) item(t);
        blank();
        answer(r.answer);
        for (const Section& s : r.sections) section(s);
        notes(r);
        for (const RawTable& raw : r.raw_tables) {
            paragraph("Raw data \"" + raw.title + "\" stands in the workbook and in CSV.");
        }
        signatures(r.signatures);
    }

    void table(const Table& t) {
        if (!t.title.empty()) paragraph(t.title);
        if (!t.sentence.empty()) paragraph(t.sentence);
        if (t.rows.empty()) {
            paragraph("No rows.");
            blank();
            return;
        }
        const std::size_t n = t.columns.size();
        std::vector<std::vector<std::string>> lines(t.rows.size());
        std::vector<std::size_t> widths(n);
        for (std::size_t c = 0; c < n; ++c) widths[c] = length_in_characters(t.columns[c].head());
        for (std::size_t r = 0; r < t.rows.size(); ++r) {
            for (std::size_t c = 0; c < n; ++c) {
                lines[r].push_back(printed_in(t.rows[r], c, t));
                widths[c] = std::max(widths[c], length_in_characters(lines[r][c]));
            }
        }
        for (std::size_t c = 0; c < n; ++c) {
            if (t.columns[c].is_text) widths[c] = std::min(widths[c], widest_text_column);
        }
        // Columns that do not fit go into further blocks, each with the first column repeated.
        std::size_t first = 1;
        do {
            std::vector<std::size_t> shown{0};
            std::size_t used = widths[0];
            while (first < n && (shown.size() == 1 || used + 2 + widths[first] <= width_)) {
                used += 2 + widths[first];
                shown.push_back(first++);
            }
            rows(t, lines, widths, shown, used);
        } while (first < n);
        for (const auto& note : t.footnotes) paragraph(note);
        blank();
    }

  private:
    void blank() { out_ += '\n'; }

    void paragraph(const std::string& t, const std::string& first = "",
                   const std::string& next = "") {
        bool started = false;
        for (const auto& line : wrap(t, width_ - next.size())) {
            out_ += (started ? next : first) + line + '\n';
            started = true;
        }
    }

    void item(const std::string& t) { paragraph(t, "- ", "  "); }

    void headline(const std::string& t, char rule) {
        std::size_t longest = 0;
        for (const auto& line : wrap(t, width_)) {
            out_ += line + '\n';
            longest = std::max(longest, length_in_characters(line));
        }
        out_ += std::string(longest, rule) + '\n';
    }

    void answer(const Answer& a) {
        headline("Answer", '-');
        for (const auto& t : a.sentences) paragraph(t);
        blank();
        if (!a.figures.rows.empty()) table(a.figures);
        if (!a.fixes.empty()) {
            headline("What to fix first", '-');
            int rank = 1;
            for (const Fix& fix : a.fixes) {
                paragraph(std::to_string(rank++) + ". " + fix.what, "", "   ");
                paragraph(fix.why, "   ", "   ");
                paragraph(worth(fix) + ".", "   ", "   ");
            }
            blank();
        }
    }

    void section(const Section& s) {
        headline(s.title, '-');
        for (const Block& block : s.blocks) {
            if (const auto* p = std::get_if<Paragraph>(&block)) {
                paragraph(p->text);
                blank();
            } else if (const auto* t = std::get_if<Table>(&block)) {
                table(*t);
            } else {
                const Chart& chart = std::get<Chart>(block);
                paragraph("[Chart: " + chart.title + "] " + chart.sentence);
                blank();
            }
        }
    }

    void notes(const Report& r) {
        headline("Methods, conventions and sources", '-');
        for (const Note& n : r.notes) {
            std::string t = n.subject + ": " + n.method + ".";
            if (!n.convention.empty()) t += " Convention: " + n.convention + ".";
            t += " Source: " + n.source + ".";
            if (n.assumed) t += " An input was assumed.";
            item(t);
        }
        blank();
        headline("Data gaps", '-');
        if (r.gaps.empty()) paragraph("None found.");
        for (const auto& gap : r.gaps) item(gap);
        blank();
    }

    void signatures(const std::vector<Signature>& signatures) {
        if (signatures.empty()) return;
        headline("Signatures", '-');
        const auto line = [](const std::string& t) { return t.empty() ? "____________" : t; };
        for (const Signature& s : signatures) {
            paragraph(s.role + ": " + line(s.name) + "   Certification number: " +
                      line(s.certification) + "   Expires: " + line(s.expires));
            paragraph("Signature: ________________________   Date: ____________");
            blank();
        }
    }

    void rows(const Table& t, const std::vector<std::vector<std::string>>& lines,
              const std::vector<std::size_t>& widths, const std::vector<std::size_t>& shown,
              std::size_t used) {
        std::vector<std::string> heads;
        for (const Column& column : t.columns) heads.push_back(column.head());
        one_row(t, heads, widths, shown);
        out_ += std::string(used, '-') + '\n';
        for (std::size_t r = 0; r < lines.size(); ++r) {
            if (t.rows[r].kind == RowKind::total) out_ += std::string(used, '-') + '\n';
            one_row(t, lines[r], widths, shown);
        }
        out_ += '\n';
    }

    void one_row(const Table& t, const std::vector<std::string>& cells,
                 const std::vector<std::size_t>& widths, const std::vector<std::size_t>& shown) {
        std::vector<std::vector<std::string>> wrapped(cells.size());
        std::size_t height = 1;
        for (const std::size_t c : shown) {
            wrapped[c] = wrap(cells[c], std::max<std::size_t>(widths[c], 1));
            height = std::max(height, wrapped[c].size());
        }
        for (std::size_t h = 0; h < height; ++h) {
            std::string line;
            for (const std::size_t c : shown) {
                if (!line.empty() || c != shown.front()) line += "  ";
                line += pad(h < wrapped[c].size() ? wrapped[c][h] : "", widths[c],
                            t.columns[c].is_text);
            }
            line.erase(line.find_last_not_of(' ') + 1);
            out_ += line + '\n';
        }
    }

    std::size_t width_;
    std::string out_;
};

}  // namespace

std::string write_text(const Report& report, std::size_t width) {
    TextWriter writer(width);
    writer.report(report);
    return writer.take();
}

std::string write_text(const Table& table, std::size_t width) {
    TextWriter writer(width);
    writer.table(table);
    return writer.take();
}

}  // namespace evenfall::reports

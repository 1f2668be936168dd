// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/write_report.h"
#include "reports/xlsx/write_xlsx.h"
#include "tests/reports/sample_reports.h"
#include "tests/support/scratch.h"

#include <xlsxwriter.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <vector>

/// Speed of the report writers, measured against the bare library in the same run.
/// Usage: report_bench [ROWS]
namespace {

using namespace evenfall;

double seconds(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double best_of(int times, const std::function<void()>& work) {
    double best = 1e300;
    for (int i = 0; i < times; ++i) best = std::min(best, seconds(work));
    return best;
}

double value_of(std::size_t row, std::size_t column) {
    return static_cast<double>((row * 31 + column * 17) % 9973) * 0.25;
}

void bare(const std::string& path, std::size_t rows) {
    lxw_workbook_options options{};
    options.constant_memory = LXW_TRUE;
    lxw_workbook* book = workbook_new_opt(path.c_str(), &options);
    lxw_worksheet* sheet = workbook_add_worksheet(book, "Raw");
    lxw_format* format = workbook_add_format(book);
    format_set_num_format(format, "#,##0.00");
    for (std::size_t r = 0; r < rows; ++r) {
        const auto row = static_cast<lxw_row_t>(r);
        worksheet_write_string(sheet, row, 0, "2024-07-01T12:00:00Z", nullptr);
        for (lxw_col_t c = 1; c < 5; ++c) worksheet_write_number(sheet, row, c, value_of(r, c), format);
    }
    workbook_close(book);
}

reports::Report with_raw_table(std::size_t rows) {
    reports::Report report = reports::samples::season(reports::UnitsShown::us);
    report.sections.clear();
    report.answer.figures = {};
    reports::RawTable raw{"readings", "Readings", "", {{"time", "Time", {}, true}}, {}};
    for (const char* key : {"a", "b", "c", "d"}) raw.columns.push_back({key, key, {2, "gal"}});
    raw.produce = [rows](const reports::RawTable::Sink& sink) {
        std::vector<reports::RawValue> row(5);
        for (std::size_t r = 0; r < rows; ++r) {
            row[0] = std::string_view("2024-07-01T12:00:00Z");
            for (std::size_t c = 1; c < 5; ++c) row[c] = value_of(r, c);
            sink(row);
        }
    };
    report.raw_tables.push_back(std::move(raw));
    return report;
}

}  // namespace

int main(int argc, char** argv) {
    const std::size_t rows = argc > 1 ? std::stoul(argv[1]) : 200000;
    const tests::Scratch scratch;
    const std::string a = (scratch / "bare.xlsx").string(), b = (scratch / "ours.xlsx").string();
    const reports::Report raw = with_raw_table(rows);
    const double floor = best_of(3, [&] { bare(a, rows); });
    const double ours = best_of(3, [&] { reports::write_xlsx(raw, b); });
    std::printf("raw sheet, %zu rows x 5: bare %.3f s, ours %.3f s, speed ratio %.2f\n", rows, floor,
                ours, floor / ours);

    const auto season = [&](const std::vector<std::string>& formats) {
        workflow::write_report(reports::samples::season(reports::UnitsShown::us),
                               {formats, scratch / "out", "season", "letter", EVENFALL_PRINT_PROGRAM});
    };
    std::printf("season report: xlsx %.3f s, pdf %.3f s, both %.3f s\n",
                best_of(3, [&] { season({"xlsx"}); }), best_of(3, [&] { season({"pdf"}); }),
                best_of(3, [&] { season({"xlsx", "pdf"}); }));
    const auto portfolio = [&] {
        workflow::write_report(
            reports::samples::portfolio(reports::UnitsShown::us, 300),
            {{"xlsx", "pdf"}, scratch / "out", "portfolio", "letter", EVENFALL_PRINT_PROGRAM});
    };
    std::printf("portfolio of 300 sites, xlsx and pdf: %.3f s\n", best_of(3, portfolio));
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/write_report.h"
#include "tests/reports/sample_reports.h"

#include <iostream>

/// Writes the sample reports in all formats to a directory, for looking at and for the test that
/// lets a spreadsheet program recalculate them.
/// Usage: draw_samples DIRECTORY PRINT_PROGRAM FORMAT...
int main(int argc, char** argv) {
    using namespace evenfall;
    if (argc < 4) return 2;
    try {
        for (const bool us : {true, false}) {
            const auto units = us ? reports::UnitsShown::us : reports::UnitsShown::metric;
            for (const auto& report :
                 {reports::samples::season(units), reports::samples::audit(units),
                  reports::samples::portfolio(units, 40), reports::samples::plan(units)}) {
                workflow::ReportOrder order;
                order.formats.assign(argv + 3, argv + argc);
                order.directory = argv[1];
                order.name = report.kind + (us ? "-us" : "-metric");
                order.paper = us ? "letter" : "a4";
                order.print_program = argv[2];
                for (const auto& file : workflow::write_report(report, order)) {
                    std::cout << file.string() << '\n';
                }
            }
        }
    } catch (const std::exception& e) {
        std::cerr << e.what() << '\n';
        return 1;
    }
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <filesystem>
#include <string>
#include <vector>

/// A report into files of the asked kinds. Tests: tests/reports/print_test.cpp
namespace evenfall::workflow {

struct ReportOrder {
    std::vector<std::string> formats;  ///< of: xlsx, pdf, csv, txt, json, png, svg
    std::filesystem::path directory;   ///< made when it is not there
    std::string name;                  ///< of the files, without ending: "season-HB-2025"
    std::string paper = "letter";      ///< letter, a4
    std::filesystem::path print_program;  ///< empty: beside the running program
};

/// The formats write_report knows.
const std::vector<std::string>& report_formats();

/// "a b/c" as "a-b-c": fit for the name of a file.
std::string file_name_of(const std::string& text);

/// Writes NAME.xlsx, NAME.pdf, NAME.txt, NAME.json, NAME-TABLE.csv for each table, and NAME-charts/
/// with PNG or SVG. Each file is written beside its place and renamed when whole.
/// @return the files in the order written
/// @throws InputError          for an unknown format or paper, and where reports::check() would
/// @throws PrintError          when the printing program is missing or fails
/// @throws std::runtime_error  when a file cannot be written
std::vector<std::filesystem::path> write_report(const reports::Report& report,
                                                const ReportOrder& order);

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence_error.h"
#include "reports/content/report.h"

#include <filesystem>
#include <string>

/// Runs evenfall-print, which draws with Qt what this program writes as JSON, so that this program
/// starts without Qt. Tests: tests/reports/print_test.cpp
namespace evenfall::workflow {

/// The printing program is missing or failed. Its own message is already on standard error.
class PrintError : public SentenceError {
  public:
    using SentenceError::SentenceError;
};

/// evenfall-print in the directory of the running program.
/// @throws PrintError when it is not there, naming the path that was tried
std::filesystem::path print_program();

struct PrintOrder {
    std::filesystem::path program;  ///< from print_program()
    std::string format;             ///< pdf, png, svg
    std::string paper = "letter";   ///< letter, a4
    std::filesystem::path out;      ///< file for pdf, directory for png and svg
};

/// @throws PrintError, InputError where check() would
void print(const reports::Report& report, const PrintOrder& order);

/// One sheet, SVG as reports/text/svg_page.h writes it, as the PDF `out`, vectors on a page of its size.
/// @param program  empty: print_program()
/// @throws PrintError
void print_sheet(const std::string& svg, const std::filesystem::path& program, const std::filesystem::path& out);

}  // namespace evenfall::workflow

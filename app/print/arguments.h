// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace evenfall::app {

struct PrintArguments {
    std::string input = "-";       ///< file, or "-" for standard input
    std::string format = "pdf";    ///< pdf, png, svg; sheet: one SVG sheet as PDF
    std::string paper = "letter";  ///< letter, a4
    std::string out;               ///< a file for pdf, a directory for png and svg
    bool plain_pdf = false;        ///< PDF 1.4 instead of PDF/A-1b
};

/// The program ends with this text and exit status: help, version or a wrong argument.
struct Stop {
    std::string text;
    int status;
};

/// @throws Stop
PrintArguments read_print_arguments(int argc, char** argv);

}  // namespace evenfall::app

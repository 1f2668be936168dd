// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/arguments.h"

#include <CLI/CLI.hpp>

#include <sstream>

namespace evenfall::app {

PrintArguments read_print_arguments(int argc, char** argv) {
    PrintArguments a;
    CLI::App app("Draws a report that evenfall wrote as JSON: PDF as a whole, PNG and SVG chart by "
                 "chart; or, with --format sheet, one drawing that it wrote as SVG, as a PDF.",
                 "evenfall-print");
    app.set_version_flag("--version", std::string("evenfall-print ") + EVENFALL_VERSION);
    app.add_option("report", a.input, "report in JSON, or a sheet in SVG; - reads standard input")->capture_default_str();
    app.add_option("--format", a.format, "what to draw")
        ->check(CLI::IsMember({"pdf", "png", "svg", "sheet"}))
        ->capture_default_str();
    app.add_option("--paper", a.paper, "paper of a PDF")
        ->check(CLI::IsMember({"letter", "a4"}))
        ->capture_default_str();
    app.add_flag("--plain-pdf", a.plain_pdf, "PDF 1.4 instead of PDF/A-1b");
    app.add_option("--out", a.out, "file for PDF and sheet, existing directory for PNG and SVG")->required();
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        std::ostringstream out, err;
        const int status = app.exit(e, out, err);
        if (status == 0) throw Stop{out.str(), 0};
        throw Stop{err.str(), 2};
    }
    return a;
}

}  // namespace evenfall::app

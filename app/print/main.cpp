// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/arguments.h"

#include "core/input_error.h"
#include "reports/print/write_pdf.h"
#include "reports/text/report_json.h"

#include <QApplication>
#include <QHashSeed>

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>

/// evenfall-print draws a report that `evenfall` hands over as JSON, so that `evenfall` itself need
/// not link Qt. Exit status as in `evenfall`: 0 done, 2 bad arguments, 3 bad input, 1 failed.
/// Tests: tests/reports/print_test.cpp
namespace {

using namespace evenfall;

std::string whole_input(const std::string& file) {
    std::string text;
    if (file == "-") {
        text.assign(std::istreambuf_iterator<char>(std::cin), {});
    } else {
        std::ifstream in(file, std::ios::binary);
        text.assign(std::istreambuf_iterator<char>(in), {});
        if (!in && !in.eof()) throw InputError(Issue{{file, 0, {}}, "no such file", "a report"});
    }
    if (text.empty()) throw InputError(Issue{{file, 0, {}}, "nothing", "a report in JSON, or a sheet in SVG"});
    return text;
}

/// Qt warns of things that do not matter off screen (no runtime directory, no size hints); a
/// command-line program must not print them.
void only_errors(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg) {
        std::fprintf(stderr, "evenfall-print: %s\n", text.toUtf8().constData());
    }
}

void draw(const app::PrintArguments& arguments, const std::string& text) {
    const reports::PdfOptions pdf{arguments.paper == "a4" ? reports::Paper::a4 : reports::Paper::letter,
                                  !arguments.plain_pdf};
    if (arguments.format == "sheet") {
        reports::write_sheet_pdf(text, arguments.out, pdf);
        return;
    }
    const reports::Report report = reports::read_json(text, arguments.input);
    if (arguments.format == "pdf") {
        reports::write_pdf(report, arguments.out, pdf);
        return;
    }
    for (const auto& section : report.sections) {
        for (const auto& block : section.blocks) {
            if (const auto* chart = std::get_if<reports::Chart>(&block)) {
                reports::write_chart_image(
                    report, *chart, arguments.out + "/" + chart->key + "." + arguments.format);
            }
        }
    }
}

}  // namespace

int main(int argc, char** argv) {
    // The order of glyphs in a PDF follows a hash; axes with dates follow the time zone.
    QHashSeed::setDeterministicGlobalSeed();
    qInstallMessageHandler(only_errors);
    qputenv("TZ", "UTC");
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    app::PrintArguments arguments;
    try {
        arguments = app::read_print_arguments(argc, argv);
    } catch (const app::Stop& stop) {
        std::fputs(stop.text.c_str(), stop.status == 0 ? stdout : stderr);
        return stop.status;
    }
    QApplication application(argc, argv);
    // QApplication takes over the locale of the machine, printf and strtod with it.
    std::setlocale(LC_NUMERIC, "C");
    try {
        draw(arguments, whole_input(arguments.input));
        return 0;
    } catch (const InputError& e) {
        for (const Issue& issue : e.issues()) std::fprintf(stderr, "%s\n", issue.text().c_str());
        return 3;
    } catch (const std::exception& e) {
        std::fprintf(stderr, "evenfall-print: %s\n", e.what());
        return 1;
    }
}

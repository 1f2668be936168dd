// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <string>

namespace evenfall::reports {

enum class Paper { letter, a4 };

struct PdfOptions {
    Paper paper = Paper::letter;
    /// Written in Qt's PDF/A-1b mode (ISO 19005-1, level B). No validator was at hand to confirm
    /// more than that.
    bool archival = true;
};

/// Writes the report as PDF: vector charts, embedded DejaVu Sans, selectable text, bookmarks,
/// "page x of y". Needs a QApplication; QHashSeed::setDeterministicGlobalSeed() before it makes the
/// bytes depend on the report alone, whose `created` is the only date inside.
/// Written to `path`.part and renamed when whole.
/// @throws InputError          where check() would
/// @throws std::runtime_error  the font is missing, or the file cannot be written
/// Tests: tests/reports/print_test.cpp
void write_pdf(const Report& report, const std::string& path, const PdfOptions& options);

/// Writes one sheet (see draw_sheet.h) as a PDF page of its own size, in the same mode. A sheet has no
/// date, so the bytes depend on it alone.
/// @throws InputError          for text that is no such sheet
/// @throws std::runtime_error  as write_pdf
void write_sheet_pdf(const std::string& svg, const std::string& path, const PdfOptions& options);

/// Writes one chart as PNG (300 dots an inch) or SVG, told by the ending of `path`.
/// @throws std::runtime_error  the font is missing, another ending, or the file cannot be written
void write_chart_image(const Report& report, const Chart& chart, const std::string& path);

}  // namespace evenfall::reports

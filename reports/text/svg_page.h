// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

/// Writes an SVG 1.1 page (W3C Recommendation, second edition) of a stated size in millimetres; all
/// coordinates are millimetres from the top left. Text is escaped and cleaned of control characters,
/// so nothing typed by a user can become markup.
/// Tests: tests/plan/plan_drawing_test.cpp
namespace evenfall::reports {

struct Pen {
    std::string fill = "none";    ///< "#rrggbb", "url(#name)" or "none"
    std::string stroke = "none";
    double width = 0.2;
    std::string dash = {};        ///< "2 1"; empty for a whole line
};

/// "#0a0b0c"
std::string hex(std::uint32_t rgb);

class SvgPage {
  public:
    /// @param definitions  patterns, written as they are
    SvgPage(double width_mm, double height_mm, std::string_view title, std::string_view definitions);

    void rectangle(double x, double y, double w, double h, const Pen& pen);
    void circle(double x, double y, double r, const Pen& pen);
    void line(double x1, double y1, double x2, double y2, const Pen& pen);
    /// Path data of our own making: numbers and commands only.
    void path(const std::string& data, const Pen& pen, bool even_odd = false);
    /// @param anchor  start, middle or end
    void text(double x, double y, double size, std::string_view text, std::string_view anchor = "start", bool bold = false);
    /// Everything until close_clip() is cut to this rectangle.
    void open_clip(double x, double y, double w, double h);
    void close_clip();

    std::string finish();

    /// Millimetres with at most three decimals.
    static std::string number(double value);

  private:
    void style(const Pen& pen);
    std::string out_;
    int clips_ = 0;
};

}  // namespace evenfall::reports

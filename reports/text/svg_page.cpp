// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/svg_page.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <cmath>

namespace evenfall::reports {
namespace {

std::string escaped(std::string_view raw) {
    std::string out;
    for (char c : printable(std::string(raw), 200)) {
        switch (c) {
            case '&': out += "&amp;"; break;
            case '<': out += "&lt;"; break;
            case '>': out += "&gt;"; break;
            case '"': out += "&quot;"; break;
            default: out += c;
        }
    }
    return out;
}

}  // namespace

std::string hex(std::uint32_t rgb) {
    constexpr char digits[] = "0123456789abcdef";
    std::string out = "#";
    for (int shift = 20; shift >= 0; shift -= 4) out += digits[(rgb >> shift) & 0xFU];
    return out;
}

std::string SvgPage::number(double value) {
    std::string text = units::format_fixed(value, 3);
    if (text.find('.') == std::string::npos) return text;
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

SvgPage::SvgPage(double width_mm, double height_mm, std::string_view title, std::string_view definitions) {
    const std::string w = number(width_mm);
    const std::string h = number(height_mm);
    out_ = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" + w +
           "mm\" height=\"" + h + "mm\" viewBox=\"0 0 " + w + " " + h + "\" font-family=\"DejaVu Sans, sans-serif\">\n<title>" + escaped(title) +
           "</title>\n<defs>" + std::string(definitions) + "</defs>\n";
    rectangle(0.0, 0.0, width_mm, height_mm, {"#ffffff"});
}

void SvgPage::style(const Pen& pen) {
    out_ += " fill=\"" + pen.fill + "\" stroke=\"" + pen.stroke + "\"";
    if (pen.stroke != "none") out_ += " stroke-width=\"" + number(pen.width) + "\"";
    if (!pen.dash.empty()) out_ += " stroke-dasharray=\"" + pen.dash + "\"";
}

void SvgPage::rectangle(double x, double y, double w, double h, const Pen& pen) {
    out_ += "<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(w) + "\" height=\"" + number(h) + "\"";
    style(pen);
    out_ += "/>\n";
}

void SvgPage::circle(double x, double y, double r, const Pen& pen) {
    out_ += "<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(r) + "\"";
    style(pen);
    out_ += "/>\n";
}

void SvgPage::line(double x1, double y1, double x2, double y2, const Pen& pen) {
    out_ += "<line x1=\"" + number(x1) + "\" y1=\"" + number(y1) + "\" x2=\"" + number(x2) + "\" y2=\"" + number(y2) + "\"";
    style(pen);
    out_ += "/>\n";
}

void SvgPage::path(const std::string& data, const Pen& pen, bool even_odd) {
    out_ += "<path d=\"" + data + "\"";
    if (even_odd) out_ += " fill-rule=\"evenodd\"";
    style(pen);
    out_ += "/>\n";
}

void SvgPage::text(double x, double y, double size, std::string_view text, std::string_view anchor, bool bold) {
    out_ += "<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" font-size=\"" + number(size) + "\" text-anchor=\"" +
            std::string(anchor) + "\"" + (bold ? " font-weight=\"bold\"" : "") + " fill=\"#1e2a33\">" + escaped(text) + "</text>\n";
}

void SvgPage::open_clip(double x, double y, double w, double h) {
    const std::string name = "clip" + std::to_string(++clips_);
    out_ += "<clipPath id=\"" + name + "\"><rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(w) +
            "\" height=\"" + number(h) + "\"/></clipPath>\n<g clip-path=\"url(#" + name + ")\">\n";
}

void SvgPage::close_clip() { out_ += "</g>\n"; }

std::string SvgPage::finish() { return out_ + "</svg>\n"; }

}  // namespace evenfall::reports

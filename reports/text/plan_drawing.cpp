// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/plan_drawing.h"

#include "core/input_error.h"
#include "core/plan/check_plan.h"
#include "core/plan/matched.h"
#include "core/plan/outline.h"
#include "reports/content/look.h"
#include "reports/text/plan_panel.h"
#include "reports/text/svg_page.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <stdexcept>

namespace evenfall::reports {
namespace {

using plan::Head;
using plan::Plan;
using plan::Point;
using units::format_fixed;

constexpr double page_w = 420.0, page_h = 297.0, margin = 10.0;
constexpr double panel_w = 112.0;  // at the right: legend and tables
constexpr double map_x = margin, map_y = margin + 14.0;
constexpr double map_w = page_w - panel_w - 3.0 * margin, map_h = page_h - map_y - margin - 16.0;
constexpr double panel_x = map_x + map_w + margin;
constexpr int most_blocks = 300;
constexpr std::size_t most_labels = 150;

constexpr const char* patterns =
    "<pattern id=\"paved\" width=\"3\" height=\"3\" patternUnits=\"userSpaceOnUse\"><rect width=\"3\" height=\"3\" "
    "fill=\"#e4e4e4\"/><path d=\"M0 3L3 0\" stroke=\"#9a9a9a\" stroke-width=\"0.25\"/></pattern>"
    "<pattern id=\"dry\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\"><rect width=\"2\" height=\"2\" "
    "fill=\"#f1dfb0\"/><path d=\"M0 0L2 2\" stroke=\"#7a5c17\" stroke-width=\"0.25\"/></pattern>"
    "<pattern id=\"wet\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\"><rect width=\"2\" height=\"2\" "
    "fill=\"#3f7fb5\"/><circle cx=\"1\" cy=\"1\" r=\"0.4\" fill=\"#ffffff\"/></pattern>";

class Drawer {
  public:
    Drawer(const Plan& plan, const PlanDrawing& drawing)
        : plan_(plan), drawing_(drawing), us_(drawing.units == UnitsShown::us),
          page_(page_w, page_h, drawing.title.empty() ? "Design plan" : drawing.title, patterns) {}

    std::string run() {
        plan::require_sound(plan_);
        choose_scale();
        page_.rectangle(map_x, map_y, map_w, map_h, {"#ffffff", "#6b747b", 0.25});
        page_.open_clip(map_x, map_y, map_w, map_h);
        draw_ground();
        if (drawing_.view == PlanView::rate || drawing_.view == PlanView::islands) draw_field();
        draw_lines();
        draw_heads();
        if (drawing_.view == PlanView::difference) draw_cans();
        page_.close_clip();
        draw_titles();
        draw_scale_bar();
        draw_north();
        draw_panel(page_, plan_, drawing_, {panel_x, map_y + 4.0, panel_w, page_h - margin - 8.0});
        return page_.finish();
    }

  private:
    double metres() const { return plan_.units.length.unit.si(); }

    /// The drawing covers the outline and what lies just outside it.
    void choose_scale() {
        std::vector<plan::Polygon> all = plan_.turf;
        all.insert(all.end(), plan_.no_water.begin(), plan_.no_water.end());
        box_ = plan::box_of(all);
        const double room = 0.03 * std::max(box_.x1 - box_.x0, box_.y1 - box_.y0);
        const double w = (box_.x1 - box_.x0 + 2.0 * room) * metres() * 1000.0;
        const double h = (box_.y1 - box_.y0 + 2.0 * room) * metres() * 1000.0;
        const double least = std::max(w / map_w, h / map_h);
        // Both systems step 1, 2, 2.5, 4, 5 within each ten; 1 in = 10 ft is 1:120.
        const double base = us_ ? 12.0 : 10.0;
        scale_ = base;
        for (double ten = 1.0; ten < 1e7; ten *= 10.0) {
            for (double step : {1.0, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0}) {
                scale_ = base * ten * step;
                if (scale_ >= least) {
                    mm_ = metres() * 1000.0 / scale_;
                    return;
                }
            }
        }
        mm_ = metres() * 1000.0 / scale_;
    }

    double px(double x) const { return map_x + map_w / 2.0 + (x - (box_.x0 + box_.x1) / 2.0) * mm_; }
    double py(double y) const { return map_y + map_h / 2.0 - (y - (box_.y0 + box_.y1) / 2.0) * mm_; }
    std::string at(double x, double y) const { return SvgPage::number(px(x)) + " " + SvgPage::number(py(y)); }

    std::string line_of(const std::vector<Point>& path, bool closed) const {
        std::string out;
        for (std::size_t i = 0; i < path.size(); ++i) out += (i == 0 ? "M" : "L") + at(path[i].x, path[i].y);
        return closed ? out + "Z" : out;
    }

    std::string shape_of(const plan::Polygon& polygon) const {
        std::string out;
        for (const auto& ring : polygon) out += line_of(ring, true);
        return out;
    }

    void draw_ground() {
        for (const auto& p : plan_.turf) page_.path(shape_of(p), {"#eef4e6"}, true);
    }

    void draw_lines() {
        for (const auto& p : plan_.no_water) page_.path(shape_of(p), {"url(#paved)", "#6b747b", 0.2}, true);
        for (const auto& p : plan_.obstacles) page_.path(shape_of(p), {"#c9ced2", "#1e2a33", 0.3}, true);
        for (const auto& p : plan_.turf) page_.path(shape_of(p), {"none", "#1e2a33", 0.5}, true);
        for (const auto& pipe : plan_.pipes) page_.path(line_of(pipe.path, false), {"none", "#1e2a33", 0.35, "3 1"});
        for (const auto& lane : plan_.lanes) page_.path(line_of(lane.path, false), {"none", "#1e2a33", 0.35, "4 1 1 1"});
        for (const auto& pivot : plan_.pivots) {
            double reach = 0.0;
            for (double span : pivot.spans) {
                reach += span;
                page_.circle(px(pivot.centre.x), py(pivot.centre.y), reach * mm_, {"none", "#1e2a33", 0.25, "4 1 1 1"});
            }
        }
    }

    /// The edge of what a head throws, from the head out and back where it is no full circle.
    std::string throw_of(const Head& h, double radius) const {
        const double from = (h.facing - h.arc / 2.0) * std::numbers::pi / 180.0;
        const double to = (h.facing + h.arc / 2.0) * std::numbers::pi / 180.0;
        const std::string r = SvgPage::number(radius * mm_);
        return "M" + at(h.x, h.y) + "L" + at(h.x + radius * std::sin(from), h.y + radius * std::cos(from)) + "A" + r + " " + r +
               " 0 " + (h.arc > 180.0 ? "1" : "0") + " 1 " + at(h.x + radius * std::sin(to), h.y + radius * std::cos(to)) + "Z";
    }

    void draw_heads() {
        const plan::Sprinklers all = plan::sprinklers_of(plan_);
        const bool quiet = drawing_.view != PlanView::layout;
        const std::string ink = quiet ? "#6b747b" : "#23638f";
        if (plan_.heads.size() <= 2000) {
            for (std::size_t i = 0; i < plan_.heads.size(); ++i) {
                const Head& h = plan_.heads[i];
                const double radius = all.heads[i].radius / metres();
                const Pen pen{"none", ink, quiet ? 0.1 : 0.15};
                if (h.arc >= 360.0) page_.circle(px(h.x), py(h.y), radius * mm_, pen);
                else page_.path(throw_of(h, radius), pen);
            }
        }
        const bool labels = plan_.heads.size() <= most_labels && drawing_.view != PlanView::difference;
        for (const Head& h : plan_.heads) {
            draw_head_symbol(page_, px(h.x), py(h.y), h.arc, h.facing);
            if (labels) page_.text(px(h.x) + 1.3, py(h.y) - 0.8, 2.0, h.station.empty() ? h.id : h.id + "/" + h.station);
        }
    }

    const plan::Overlap& overlap() const {
        if (!drawing_.overlap) throw std::logic_error("this view needs the predicted field");
        return *drawing_.overlap;
    }

    static constexpr int no_class = -1;
    /// Dry 0, even 1, wet 2; or the step of the rate scale.
    int class_of(double rate, double mean) const {
        if (drawing_.view == PlanView::islands) {
            return rate < dry_ * mean ? 0 : rate > wet_ * mean ? 2 : 1;
        }
        const double top = overlap().prediction.highest_rate.in(units::millimetre_per_hour);
        return top > 0.0 ? std::min(rate_steps - 1, static_cast<int>(rate / top * rate_steps)) : 0;
    }

    /// Blocks of cells, each the mean of its turf cells; neighbours of one class in one rectangle, and all
    /// rectangles of a class in one shape, so that no seam shows between them.
    void draw_field() {
        const auto& o = overlap();
        const plan::Raster& r = o.field.raster();
        const double mean = o.prediction.mean_rate.in(units::millimetre_per_hour);
        const int block = std::max(1, (std::max(r.columns, r.rows) + most_blocks - 1) / most_blocks);
        std::map<int, std::string> classes;
        for (int row = 0; row < r.rows; row += block) {
            int start = 0, kind = no_class;
            for (int c = 0; c <= r.columns + block; c += block) {
                const int now = c < r.columns ? block_class(c, row, block, mean) : no_class;
                if (now == kind) continue;
                if (kind != no_class) {
                    classes[kind] += field_run(start, std::min(c, r.columns), row, std::min(row + block, r.rows));
                }
                start = c;
                kind = now;
            }
        }
        for (const auto& [kind, shape] : classes) page_.path(shape, {fill_of(drawing_.view, kind)});
    }

    int block_class(int column, int row, int block, double mean) const {
        const auto& o = overlap();
        const plan::Raster& r = o.field.raster();
        double sum = 0.0;
        int count = 0;
        for (int y = row; y < std::min(row + block, r.rows); ++y) {
            for (int x = column; x < std::min(column + block, r.columns); ++x) {
                if (o.ground[r.index(x, y)] != plan::Surface::turf) continue;
                sum += static_cast<double>(o.field.rates()[r.index(x, y)]);
                ++count;
            }
        }
        return count == 0 ? no_class : class_of(sum / count, mean);
    }

    std::string field_run(int from, int to, int row, int end) const {
        const plan::Raster& r = overlap().field.raster();
        const double x0 = px((r.x0 + from * r.hx) / metres()), x1 = px((r.x0 + to * r.hx) / metres());
        const double y0 = py((r.y0 + end * r.hy) / metres()), y1 = py((r.y0 + row * r.hy) / metres());
        const auto corner = [](double x, double y) { return SvgPage::number(x) + " " + SvgPage::number(y); };
        return "M" + corner(x0, y0) + "L" + corner(x1, y0) + "L" + corner(x1, y1) + "L" + corner(x0, y1) + "Z";
    }

    void draw_cans() {
        if (!drawing_.audit) throw std::logic_error("this view needs the catches");
        const double mean = drawing_.audit->mean_caught.in(units::millimetre);
        for (const auto& can : drawing_.audit->cans) {
            const double difference = can.caught.in(units::millimetre) -
                                      drawing_.audit->common_output * can.predicted.in(units::millimetre);
            const int kind = difference < (dry_ - 1.0) * mean ? 0 : difference > (wet_ - 1.0) * mean ? 2 : 1;
            page_.circle(px(can.place.x), py(can.place.y), 1.6, {fill_of(drawing_.view, kind), "#1e2a33", 0.15});
            const double shown = us_ ? difference / 25.4 : difference;
            page_.text(px(can.place.x), py(can.place.y) + 3.7, 1.9, (difference > 0.0 ? "+" : "") + format_fixed(shown, us_ ? 2 : 1), "middle");
        }
        for (std::size_t i = 0; i < plan_.heads.size(); ++i) {
            const auto& h = drawing_.audit->heads[i];
            if (h.verdict != plan::Verdict::weak && h.verdict != plan::Verdict::strong) continue;
            const double x = px(plan_.heads[i].x), y = py(plan_.heads[i].y);
            page_.circle(x, y, 2.4, {"none", "#1e2a33", 0.6});
            page_.text(x + 2.8, y - 1.0, 2.6, h.head + " " + plan::text_of(h.verdict) + " " + format_fixed(100.0 * h.output, 0) + " %", "start", true);
        }
    }

    std::string view_name() const {
        switch (drawing_.view) {
            case PlanView::layout: return "Layout";
            case PlanView::rate: return "Predicted rate of application";
            case PlanView::islands: return "Dry and wet islands";
            case PlanView::difference: return "Caught less designed";
        }
        return "";
    }

    /// A title that is too long for the sheet gets smaller, down to what can be read, and is then cut.
    void draw_title() {
        const std::string title = drawing_.title.empty() ? "Design plan" : printable(drawing_.title, 200);
        const auto letters = static_cast<double>(std::count_if(title.begin(), title.end(), [](char c) {
            return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;  // of a letter of several bytes only the first
        }));
        // DejaVu Sans Bold is about 0.7 of its size wide.
        const double fits = (page_w - 2.0 * margin) / (0.7 * letters);
        const double size = std::clamp(fits, 2.8, 5.5);
        page_.text(margin, margin + 5.0, size, title, "start", true);
    }

    void draw_titles() {
        draw_title();
        page_.text(margin, margin + 11.0, 3.6, view_name() + (drawing_.overlap ? summary() : ""));
        page_.text(margin, page_h - margin + 2.0, 2.4,
                   "A drawing to check, not a permit: follow local codes on backflow, reclaimed water and setbacks; call before digging; "
                   "keep spray off roads, paths and electrical gear.");
    }

    std::string summary() const {
        const auto& p = drawing_.overlap->prediction;
        std::string out;
        if (p.du_lq) out += "; DU low quarter " + format_fixed(p.du_lq->percent(), 1) + " %";
        if (p.cu) out += ", CU " + format_fixed(p.cu->percent(), 1) + " %";
        return out + ", mean " + rate_text(p.mean_rate, drawing_.units) + ", off target " + format_fixed(p.off_target_share.percent(), 1) + " %";
    }

    /// Four steps of a round length, about a fifth of the drawing's width.
    void draw_scale_bar() {
        const double unit = us_ ? 0.3048 : 1.0;
        const double want = map_w / 5.0 / 1000.0 * scale_ / unit;
        const double ten = std::pow(10.0, std::floor(std::log10(want)));
        const double length = want / ten >= 5.0 ? 5.0 * ten : want / ten >= 2.0 ? 2.0 * ten : ten;
        const double mm = length * unit * 1000.0 / scale_;
        const double x = map_x, y = map_y + map_h + 5.0;
        for (int i = 0; i < 4; ++i) {
            page_.rectangle(x + mm * i / 4.0, y, mm / 4.0, 1.6, {i % 2 == 0 ? "#1e2a33" : "#ffffff", "#1e2a33", 0.2});
        }
        page_.text(x, y + 4.6, 2.8, "0");
        page_.text(x + mm, y + 4.6, 2.8, units::format_shortest(length) + (us_ ? " ft" : " m"), "middle");
        const std::string ratio = us_ ? "1 in = " + units::format_shortest(scale_ / 12.0) + " ft (1:" + units::format_shortest(scale_) + ")"
                                      : "1:" + units::format_shortest(scale_);
        page_.text(x + mm + 14.0, y + 2.0, 2.8, "Scale " + ratio + " on A3");
    }

    void draw_north() {
        const double x = map_x + map_w - 8.0, y = map_y + map_h + 12.0;
        page_.path("M" + SvgPage::number(x) + " " + SvgPage::number(y - 10.0) + "l2.4 9l-2.4 -1.8l-2.4 1.8Z", {"#1e2a33"});
        page_.text(x + 3.5, y - 5.0, 4.0, "N", "start", true);
    }

    const Plan& plan_;
    const PlanDrawing& drawing_;
    bool us_;
    SvgPage page_;
    plan::Box box_;
    double scale_ = 100.0;  ///< ground over paper
    double mm_ = 1.0;       ///< on paper for one plan unit
    const double dry_ = plan::plan_limit("island_dry");
    const double wet_ = plan::plan_limit("island_wet");
};

}  // namespace

std::string draw_plan(const Plan& plan, const PlanDrawing& drawing) { return Drawer(plan, drawing).run(); }

}  // namespace evenfall::reports

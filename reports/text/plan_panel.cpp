// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/plan_panel.h"

#include "core/input_error.h"
#include "core/plan/check_plan.h"
#include "core/plan/matched.h"
#include "core/plan/sprinkler.h"
#include "reports/content/look.h"

#include <cmath>
#include <map>
#include <numbers>
#include <tuple>
#include <utility>
#include <vector>

namespace evenfall::reports {
namespace {

using plan::Head;
using plan::Plan;
using units::format_fixed;

class Panel {
  public:
    Panel(SvgPage& page, const Plan& plan, const PlanDrawing& drawing, const PanelPlace& place)
        : page_(page), plan_(plan), drawing_(drawing), place_(place), us_(drawing.units == UnitsShown::us) {}

    void run() {
        double y = legend(place_.y);
        y = head_schedule(y + 7.0);
        stations(y + 7.0);
    }

  private:
    std::string length_text(double metre, int decimals) const {
        return us_ ? format_fixed(metre / 0.3048, decimals) + " ft" : format_fixed(metre, decimals) + " m";
    }
    std::string flow_text(units::Flow flow) const {
        return us_ ? format_fixed(flow.in(units::gallon_per_minute), 2) + " gpm" : format_fixed(flow.in(units::cubic_metre_per_hour), 3) + " m3/h";
    }

    double heading(double y, const std::string& text) {
        page_.text(place_.x, y, 3.4, text, "start", true);
        page_.line(place_.x, y + 1.2, place_.x + place_.width, y + 1.2, {"none", "#6b747b", 0.2});
        return y + 5.0;
    }

    double legend_box(double y, const Pen& pen, const std::string& text) {
        page_.rectangle(place_.x, y - 2.6, 6.0, 3.2, pen);
        page_.text(place_.x + 8.5, y, 2.7, text);
        return y + 4.6;
    }

    double legend(double y) {
        y = heading(y, "Legend");
        const auto head = [&](double arc, const std::string& text) {
            draw_head_symbol(page_, place_.x + 3.0, y - 1.0, arc, 0.0);
            page_.text(place_.x + 8.5, y, 2.7, text);
            y += 4.6;
        };
        head(360.0, "head, full circle");
        head(180.0, "head, part circle: black is watered");
        y = legend_box(y, {"#eef4e6", "#1e2a33", 0.3}, "turf");
        if (!plan_.no_water.empty()) y = legend_box(y, {"url(#paved)", "#6b747b", 0.2}, "paving, no water");
        if (!plan_.obstacles.empty()) y = legend_box(y, {"#c9ced2", "#1e2a33", 0.3}, "obstacle (its shadow is not computed)");
        if (!plan_.pipes.empty()) y = legend_line(y, "3 1", "pipe");
        if (!plan_.lanes.empty()) y = legend_line(y, "4 1 1 1", "lane of a travelling gun");
        if (!plan_.pivots.empty()) y = legend_line(y, "4 1 1 1", "towers of a centre pivot");
        if (drawing_.view == PlanView::rate) {
            const double top = drawing_.overlap->prediction.highest_rate.in(units::millimetre_per_hour);
            for (int i = 0; i < rate_steps; ++i) {
                y = legend_box(y, {fill_of(drawing_.view, i), "#6b747b", 0.1},
                               rate_text(top * i / rate_steps * units::millimetre_per_hour, drawing_.units) + " to " +
                                   rate_text(top * (i + 1) / rate_steps * units::millimetre_per_hour, drawing_.units));
            }
        } else if (drawing_.view == PlanView::islands || drawing_.view == PlanView::difference) {
            const std::string less = format_fixed(100.0 * (1.0 - dry_), 0), more = format_fixed(100.0 * (wet_ - 1.0), 0);
            const bool field = drawing_.view == PlanView::islands;
            y = legend_box(y, {"url(#dry)", "#6b747b", 0.1}, field ? "dry: more than " + less + " % below the mean" : "less than designed by over " + less + " % of the mean catch");
            y = legend_box(y, {"#d8e6ef", "#6b747b", 0.1}, "between");
            y = legend_box(y, {"url(#wet)", "#6b747b", 0.1}, field ? "wet: more than " + more + " % above the mean" : "more than designed by over " + more + " % of the mean catch");
            if (!field) {
                page_.text(place_.x, y, 2.7, std::string("numbers: caught less designed, ") + (us_ ? "in" : "mm") + "; design times the common " +
                                                format_fixed(100.0 * drawing_.audit->common_output, 0) + " %");
                y += 4.6;
            }
        }
        return y;
    }

    double legend_line(double y, const std::string& dash, const std::string& text) {
        page_.line(place_.x, y - 1.0, place_.x + 6.0, y - 1.0, {"none", "#1e2a33", 0.35, dash});
        page_.text(place_.x + 8.5, y, 2.7, text);
        return y + 4.6;
    }

    double table_row(double y, const std::vector<std::pair<double, std::string>>& cells, bool bold) {
        for (const auto& [x, text] : cells) page_.text(place_.x + x, y, 2.5, text, "start", bold);
        return y + 3.9;
    }

    double head_schedule(double y) {
        const plan::Sprinklers all = plan::sprinklers_of(plan_);
        y = heading(y, "Head schedule");
        y = table_row(y, {{0, "nozzle"}, {36, "arc"}, {50, "radius"}, {68, "flow"}, {90, "heads"}}, true);
        std::map<std::tuple<std::string, double, std::string, std::string>, std::size_t> kinds;
        for (std::size_t i = 0; i < plan_.heads.size(); ++i) {
            const Head& h = plan_.heads[i];
            ++kinds[{h.nozzle.empty() ? "as typed" : h.nozzle, h.arc, length_text(all.heads[i].radius, 1),
                     flow_text(units::Flow::from_si(all.heads[i].flow))}];
        }
        std::size_t shown = 0;
        for (const auto& [kind, count] : kinds) {
            if (++shown > 14) {
                return table_row(y, {{0, "and " + std::to_string(kinds.size() - 14) + " more kinds"}}, false);
            }
            const auto& [nozzle, arc, radius, flow] = kind;
            y = table_row(y, {{0, printable(nozzle, 24)}, {36, format_fixed(arc, 0)}, {50, radius}, {68, flow}, {90, std::to_string(count)}}, false);
        }
        return y;
    }

    void stations(double y) {
        y = heading(y, "Stations");
        y = table_row(y, {{0, "station"}, {26, "heads"}, {40, "flow"}, {64, "rates match"}}, true);
        const auto all = plan::matched_precipitation(plan_, plan::usual_matched_spread());
        std::size_t shown = 0;
        for (const auto& s : all) {
            if (y > place_.bottom || ++shown > 30) {
                table_row(y, {{0, "and " + std::to_string(all.size() - shown + 1) + " more stations"}}, false);
                return;
            }
            std::size_t heads = 0;
            for (const auto& g : s.groups) heads += g.heads.size();
            y = table_row(y, {{0, s.station.empty() ? "(none)" : printable(s.station, 16)}, {26, std::to_string(heads)}, {40, flow_text(s.flow)},
                              {64, s.matched ? "yes" : "no: " + std::to_string(s.groups.size()) + " rates"}}, false);
        }
    }

    SvgPage& page_;
    const Plan& plan_;
    const PlanDrawing& drawing_;
    const PanelPlace place_;
    bool us_;
    const double dry_ = plan::plan_limit("island_dry");
    const double wet_ = plan::plan_limit("island_wet");
};

}  // namespace

void draw_panel(SvgPage& page, const Plan& plan, const PlanDrawing& drawing, const PanelPlace& place) {
    Panel(page, plan, drawing, place).run();
}

void draw_head_symbol(SvgPage& page, double x, double y, double arc, double facing) {
    constexpr double r = 0.9;
    page.circle(x, y, r, {arc >= 360.0 ? "#1e2a33" : "#ffffff", "#1e2a33", 0.2});
    if (arc >= 360.0) return;
    const double from = (facing - arc / 2.0) * std::numbers::pi / 180.0;
    const double to = (facing + arc / 2.0) * std::numbers::pi / 180.0;
    const auto spot = [&](double a) { return SvgPage::number(x + r * std::sin(a)) + " " + SvgPage::number(y - r * std::cos(a)); };
    page.path("M" + SvgPage::number(x) + " " + SvgPage::number(y) + "L" + spot(from) + "A" + SvgPage::number(r) + " " +
                   SvgPage::number(r) + " 0 " + (arc > 180.0 ? "1" : "0") + " 1 " + spot(to) + "Z",
               {"#1e2a33"});
}

std::string fill_of(PlanView view, int kind) {
    if (view == PlanView::rate) return hex(depth_colour((kind + 0.5) / rate_steps, Medium::paper));
    return kind == 0 ? "url(#dry)" : kind == 2 ? "url(#wet)" : "#d8e6ef";
}

std::string rate_text(units::Rate rate, UnitsShown shown) {
    return shown == UnitsShown::us ? format_fixed(rate.in(units::inch_per_hour), 2) + " in/h"
                                   : format_fixed(rate.in(units::millimetre_per_hour), 1) + " mm/h";
}

}  // namespace evenfall::reports

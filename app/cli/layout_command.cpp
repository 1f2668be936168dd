// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/plan/layout.h"
#include "core/plan/overlap.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <ostream>
#include <stdexcept>

namespace evenfall::cli {
namespace {

using units::format_fixed;

plan::Pattern pattern_named(const std::string& name) {
    for (const auto p : {plan::Pattern::square, plan::Pattern::rectangular, plan::Pattern::equilateral}) {
        if (plan::name_of(p) == name) return p;
    }
    throw InputError(name, "square, rectangular or equilateral");
}

/// Beside its place first, so that a full disk leaves no half plan.
void write_plan(const plan::Plan& plan, const std::string& path) {
    const std::string part = path + ".part";
    std::ofstream file(part, std::ios::binary | std::ios::trunc);
    file << exchange::plan_text(plan);
    file.close();
    if (!file) throw std::runtime_error("cannot write " + path);
    std::filesystem::rename(part, path);
}

Json answer_json(const plan::Layout& l, const plan::Prediction& p, double metres) {
    Json stations = Json::array();
    for (const auto& s : l.stations) {
        stations.push_back({{"station", s.station}, {"heads", s.heads}, {"flow_gpm", s.flow.in(units::gallon_per_minute)}});
    }
    return {{"heads", l.plan.heads.size()},
            {"corner_heads", l.corner_heads},
            {"edge_heads", l.edge_heads},
            {"interior_heads", l.interior_heads},
            {"spacing_m", l.spacing * metres},
            {"row_spacing_m", l.row_spacing * metres},
            {"radius_m", l.radius * metres},
            {"spacing_share_of_diameter", l.share_of_diameter},
            {"stations", std::move(stations)},
            {"du_lq", p.du_lq ? Json(p.du_lq->value()) : Json(nullptr)},
            {"off_target_share", p.off_target_share.value()},
            {"warnings", l.warnings},
            {"method", l.method},
            {"source", l.source}};
}

void print_text(std::ostream& out, const plan::Layout& l, const plan::Prediction& p, const std::string& unit) {
    const auto length = [&](double v) { return format_fixed(v, 2) + " " + unit; };
    out << l.plan.heads.size() << " heads: " << l.corner_heads << " in corners, " << l.edge_heads << " along edges, "
        << l.interior_heads << " in the interior\n"
        << "  spacing " << length(l.spacing) << " in the row, " << length(l.row_spacing) << " between rows, radius "
        << length(l.radius) << " (" << format_fixed(100.0 * l.share_of_diameter, 0) << " % of the diameter)\n"
        << "  predicted DU, low quarter " << (p.du_lq ? format_fixed(p.du_lq->percent(), 1) + " %" : "-") << ", off target "
        << format_fixed(p.off_target_share.percent(), 1) << " %\n";
    for (std::size_t i = 0; i < std::min<std::size_t>(l.stations.size(), 30); ++i) {
        const auto& s = l.stations[i];
        out << "  station " << s.station << ": " << s.heads << " heads, " << format_fixed(s.flow.in(units::gallon_per_minute), 1)
            << " gpm (" << format_fixed(s.flow.in(units::cubic_metre_per_hour), 2) << " m3/h)\n";
    }
    if (l.stations.size() > 30) out << "  and " << l.stations.size() - 30 << " more stations\n";
    for (const auto& w : l.warnings) out << "Look at: " << w << '\n';
    out << "Method: " << l.method << "\nSource: " << l.source
        << "\nA first draft for a designer to check: pipes, pressure, slopes, setbacks from roads and buildings and local codes\n"
           "are not looked at.\n";
}

}  // namespace

int run(const LayoutOptions& o, Streams& streams) {
    const plan::Plan outline = exchange::read_plan_outline(o.outline);
    const double metres = outline.units.length.unit.si();
    plan::LayoutOrder order;
    order.pattern = pattern_named(o.pattern);
    order.shares = plan::spacing_for(order.pattern, o.wind.quantity());
    order.smallest_radius = o.smallest_radius->quantity().si() / metres;
    order.largest_radius = o.largest_radius->quantity().si() / metres;
    order.rate = o.rate->quantity();
    if (o.station_flow) order.most_flow = o.station_flow->quantity();
    const plan::Layout layout = plan::fit_layout(outline, order);
    const plan::Prediction prediction = plan::overlap_of(layout.plan, {}).prediction;
    write_plan(layout.plan, o.out);
    if (o.json) streams.out << print(answer_json(layout, prediction, metres));
    else print_text(streams.out, layout, prediction, std::string(outline.units.length.name));
    return done;
}

}  // namespace evenfall::cli

// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/plan_report.h"

#include "reports/content/field.h"

#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace evenfall::reports {
namespace {

using plan::Overlap;
using plan::Plan;
using plan::Prediction;
using units::Length;

constexpr std::size_t field_cells = 2500;   // of the picture; the prediction has its own raster
constexpr std::size_t sample_places = 100;

double shown_rate(const Shown& shown, double mm_per_hour) {
    return shown.rate(mm_per_hour * units::millimetre_per_hour);
}

/// Sums over the turf cells of a block of the raster.
struct Block {
    double turf = 0.0;              ///< cells
    double x = 0.0, y = 0.0;        ///< m
    double rate = 0.0;              ///< mm/h
};

int block_side(const plan::Raster& raster, std::size_t cells) {
    const double shrink = std::sqrt(static_cast<double>(raster.cells()) / static_cast<double>(cells));
    return std::max(1, static_cast<int>(std::ceil(shrink)));
}

/// Row by row from the south; about `cells` of them.
std::vector<Block> blocks_of(const Overlap& o, std::size_t cells) {
    const plan::Raster& raster = o.field.raster();
    const auto rates = o.field.rates();
    const int side = block_side(raster, cells);
    const int across = (raster.columns + side - 1) / side;
    std::vector<Block> blocks(static_cast<std::size_t>(across) *
                              static_cast<std::size_t>((raster.rows + side - 1) / side));
    for (int y = 0; y < raster.rows; ++y) {
        for (int x = 0; x < raster.columns; ++x) {
            const std::size_t cell = raster.index(x, y);
            if (o.ground[cell] != plan::Surface::turf) continue;
            Block& b = blocks[static_cast<std::size_t>((y / side) * across + x / side)];
            b.turf += 1.0;
            b.x += raster.x(x);
            b.y += raster.y(y);
            b.rate += static_cast<double>(rates[cell]);
        }
    }
    return blocks;
}

/// The predicted rates in blocks coarse enough for a picture: block means over turf.
Field picture(const Plan& p, const Overlap& o, const Shown& shown, std::size_t cells) {
    const plan::Raster& raster = o.field.raster();
    const Length unit = p.units.length.unit;
    const int side = block_side(raster, cells);
    Field f;
    f.columns = static_cast<std::size_t>((raster.columns + side - 1) / side);
    f.rows = static_cast<std::size_t>((raster.rows + side - 1) / side);
    f.dx = (side * raster.hx * units::metre).in(unit);
    f.dy = (side * raster.hy * units::metre).in(unit);
    f.x0 = (raster.x0 * units::metre).in(unit) + f.dx / 2.0;
    f.y0 = (raster.y0 * units::metre).in(unit) + f.dy / 2.0;
    f.method = "means of the prediction over blocks of " + std::to_string(side) + " by " +
               std::to_string(side) + " cells";
    for (const Block& b : blocks_of(o, cells)) {
        f.values.push_back(b.turf > 0.0 ? shown_rate(shown, b.rate / b.turf)
                                        : std::numeric_limits<double>::quiet_NaN());
    }
    return f;
}

Table samples(const Plan& p, const Overlap& o, const Shown& shown) {
    const std::string ground(p.units.length.name);
    Table t{"samples",
            "Predicted rate at sample places",
            "Means over blocks of turf, given for the middle of the turf in each; the numbers of the "
            "map.",
            {{"place", "Place", {}, true},
             {"x", "x", {1, ground}},
             {"y", "y", {1, ground}},
             {"rate", "Rate", shown.rate_format()}},
            {}};
    for (const Block& b : blocks_of(o, sample_places)) {
        if (!(b.turf > 0.0)) continue;
        const std::string key = std::to_string(t.rows.size() + 1);
        const Length unit = p.units.length.unit;
        t.add(key, {text("S" + key), number((b.x / b.turf * units::metre).in(unit)),
                    number((b.y / b.turf * units::metre).in(unit)),
                    number(shown_rate(shown, b.rate / b.turf))});
    }
    return t;
}

Table results(const Prediction& r, const Shown& shown) {
    Table t{"plan_results",
            "Predicted figures",
            "",
            {{"figure", "Figure", {}, true},
             {"value", "Value", {3, ""}},
             {"how", "How it is made", {}, true}},
            {}};
    const auto add = [&](const char* key, const char* figure, std::optional<double> value,
                         NumberFormat format, const char* how) {
        Cell c = number(value);
        c.format = std::move(format);
        c.role = CellRole::result;
        t.add(key, {text(figure), c, text(how)});
    };
    const NumberFormat ratio{3, ""}, share{1, "", true};
    const auto maybe = [](const auto& v) {
        return v ? std::optional(v->value()) : std::nullopt;
    };
    add("du_lq", "DU_LQ", maybe(r.du_lq), ratio, "mean of the lowest quarter of the turf over the mean");
    add("du_lh", "DU_LH", maybe(r.du_lh), ratio, "mean of the lowest half over the mean");
    add("cu", "CU", maybe(r.cu), ratio, "1 less the mean deviation over the mean");
    for (const auto& s : r.scheduling) {
        const std::string key = "sc_" + std::to_string(t.rows.size());
        Cell c = number(maybe(s.value));
        c.format = ratio;
        t.add(key, {text("Scheduling coefficient, window of " + percent(s.window_share, 0)), c,
                    text("mean over that of the driest square window of this share of the turf")});
    }
    add("mean_rate", "Mean rate", shown.rate(r.mean_rate), shown.rate_format(), "over the turf");
    add("lowest_rate", "Lowest rate", shown.rate(r.lowest_rate), shown.rate_format(), "of a cell");
    add("highest_rate", "Highest rate", shown.rate(r.highest_rate), shown.rate_format(), "of a cell");
    add("none", "Turf that no head reaches", r.coverage.none.value(), share, "by circle and arc");
    add("one", "Turf that one head reaches", r.coverage.one.value(), share, "by circle and arc");
    add("two", "Turf that two or more reach", r.coverage.two_or_more.value(), share,
        "by circle and arc");
    add("three", "Turf that three or more reach", r.coverage.three_or_more.value(), share,
        "by circle and arc");
    add("off_target", "Water off target", r.off_target_share.value(), share,
        "outside the turf or on no-water ground, of all water");
    add("no_water", "Water on no-water ground", r.on_no_water_share.value(), share,
        "part of the water off target");
    add("heads", "Heads", static_cast<double>(r.heads), {0, ""}, "in the plan");
    add("turf", "Turf", shown.size(r.turf), shown.size_format(), "inside the outlines");
    return t;
}

Table heads(const Plan& p) {
    const std::string ground(p.units.length.name), flow(p.units.flow.name);
    Table t{"heads",
            "Heads",
            "As drawn; radius and flow from the nozzle table where the plan names a nozzle.",
            {{"head", "Head", {}, true},
             {"station", "Station", {}, true},
             {"x", "x", {1, ground}},
             {"y", "y", {1, ground}},
             {"arc", "Arc", {0, "degrees"}},
             {"facing", "Facing", {0, "degrees"}},
             {"nozzle", "Nozzle", {}, true},
             {"radius", "Radius", {1, ground}},
             {"flow", "Flow", {2, flow}}},
            {}};
    for (std::size_t i = 0; i < p.heads.size(); ++i) {
        const plan::Head& h = p.heads[i];
        t.add(std::to_string(i + 1),
              {text(h.id), text(h.station), number(h.x), number(h.y), number(h.arc),
               number(h.facing), text(h.nozzle), number(h.radius), number(h.flow)});
    }
    return t;
}

Chart map(const Plan& p, const Overlap& o, const Shown& shown) {
    MapChart m;
    m.x = {"samples", "x"};
    m.y = {"samples", "y"};
    m.value = {"samples", "rate"};
    m.label = {"samples", "place"};
    const std::string ground(p.units.length.name);
    m.x_axis = {"x", ground};
    m.y_axis = {"y", ground};
    m.value_axis = {"Rate", shown.rate_format().unit};
    m.decimals = shown.us() ? 3 : 1;
    m.field = picture(p, o, shown, field_cells);
    m.contours = contours_of(*m.field, round_levels(*m.field, 6));
    return {"rate_map", "Predicted rate over the turf",
            "Sand is little water, blue is much; the lines join places of the same rate.", m};
}

std::vector<Fix> fixes_of(const Prediction& r) {
    std::vector<Fix> fixes;
    const auto add = [&](const std::string& what, const std::string& why) {
        fixes.push_back({what, why, unknown(), unknown()});
    };
    if (r.coverage.none.value() > 0.0) {
        add("Reach the turf that no head reaches",
            percent(r.coverage.none.value()) + " of the turf lies outside every circle and arc.");
    }
    if (r.coverage.one.value() > 0.0) {
        add("Overlap the turf that only one head reaches",
            percent(r.coverage.one.value()) + " of the turf gets water from one head alone.");
    }
    if (r.off_target_share.value() > 0.0) {
        add("Keep the water on the turf",
            percent(r.off_target_share.value()) + " of the water falls outside it, " +
                percent(r.on_no_water_share.value()) + " on no-water ground.");
    }
    return fixes;
}

}  // namespace

Report plan_report(const Plan& p, const Overlap& o, const Frame& frame) {
    const Shown shown(frame.units);
    const Prediction& r = o.prediction;
    Report report = framed("plan", "Plan report", p.name.empty() ? "Design plan" : p.name, frame);
    auto& say = report.answer.sentences;
    say.push_back("The plan has " + std::to_string(r.heads) + " heads over " +
                  both(r.turf, frame.units) + " of turf. These figures are predicted, not tested: "
                  "wind, wear and pressure loss are known only as far as the plan tells them.");
    if (r.du_lq && r.cu) {
        say.push_back("All heads running, the turf should get " + both(r.mean_rate, frame.units) +
                      " with a DU_LQ of " + units::format_fixed(r.du_lq->value(), 3) +
                      " and a CU of " + units::format_fixed(r.cu->value(), 3) + ".");
    } else {
        say.push_back("No water falls on the turf.");
    }
    say.push_back(percent(r.off_target_share.value()) + " of the water falls off target.");
    report.answer.fixes = fixes_of(r);
    report.sections.push_back({"prediction",
                               "What the plan should do",
                               {map(p, o, shown), results(r, shown), samples(p, o, shown)}});
    report.sections.push_back({"heads", "The heads", {heads(p)}});
    report.notes.push_back({"Prediction", r.method.english(), r.convention.english(), r.source.english(), !r.assumed.empty()});
    report.notes.push_back({"Water balance",
                            "water found on the raster less the flow of all heads, relative: " +
                                units::format_shortest(r.balance_error),
                            "", "conservation of volume", false});
    for (const auto& a : r.assumed) report.gaps.push_back(a.english());
    return report;
}

}  // namespace evenfall::reports

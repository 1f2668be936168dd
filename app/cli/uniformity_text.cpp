// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/uniformity_text.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <map>
#include <ostream>
#include <set>

namespace evenfall::cli {
namespace {

using audit::Sample;
using audit::SampleCan;
using audit::TestAnalysis;
using units::format_fixed;

constexpr std::size_t most_bars = 120;
constexpr int bar_length = 44;

std::string mm(units::Depth d) { return format_fixed(d.in(units::millimetre), 1); }

std::string both(units::Depth d) {
    return mm(d) + " mm (" + format_fixed(d.in(units::inch), 2) + " in)";
}

std::string range(const std::optional<stats::Interval>& i, int decimals) {
    return i ? format_fixed(i->low, decimals) + " to " + format_fixed(i->high, decimals) : "not to be had";
}

std::vector<const SampleCan*> by_depth(const Sample& sample) {
    std::vector<const SampleCan*> order;
    for (const SampleCan& c : sample.cans) order.push_back(&c);
    std::stable_sort(order.begin(), order.end(),
                     [](const SampleCan* a, const SampleCan* b) { return a->depth < b->depth; });
    return order;
}

/// Cans that lie wholly or in part in the low quarter.
std::set<const SampleCan*> low_quarter(const TestAnalysis& a) {
    std::set<const SampleCan*> low;
    double left = a.figures.cans_in_low_quarter;
    for (const SampleCan* c : by_depth(a.sample)) {
        if (left <= 1e-9) break;
        if (c->weight <= 0.0) continue;
        low.insert(c);
        left -= 1.0;
    }
    return low;
}

void print_bars(std::ostream& out, const TestAnalysis& a) {
    const auto order = by_depth(a.sample);
    const auto low = low_quarter(a);
    const double top = order.back()->depth.si();
    std::size_t width = 4;
    for (const SampleCan* c : order) width = std::max(width, std::min<std::size_t>(18, c->label.size()));
    const bool strips = a.sample.layout.english() == "traveller";
    out << "\nCatches, lowest first (* in the low quarter, | the mean)\n";
    const auto mark = static_cast<int>(std::lround(a.figures.mean.si() / top * bar_length));
    for (std::size_t i = 0; i < order.size() && i < most_bars; ++i) {
        const SampleCan& c = *order[i];
        std::string bar(static_cast<std::size_t>(std::lround(c.depth.si() / top * bar_length)), '=');
        bar.resize(bar_length + 1, ' ');
        bar[static_cast<std::size_t>(mark)] = '|';
        out << (low.contains(&c) ? " * " : "   ") << std::left << std::setw(static_cast<int>(width))
            << printable(c.label, 18) << std::right << std::setw(8) << mm(c.depth) << " mm  " << bar << '\n';
    }
    if (order.size() > most_bars) out << "   and " << order.size() - most_bars << " more\n";
    if (strips) out << "   Strips across the lane, each with the water of all lanes that reach it.\n";
}

/// Positions on an axis, those closer than a thousandth of its length as one.
std::vector<double> marks_of(std::vector<double> v) {
    std::sort(v.begin(), v.end());
    const double slack = 1e-3 * (v.back() - v.front());
    std::vector<double> marks;
    for (const double x : v) {
        if (marks.empty() || x - marks.back() > slack) marks.push_back(x);
    }
    return marks;
}

void print_table_map(std::ostream& out, const TestAnalysis& a, const std::vector<double>& xs,
                     const std::vector<double>& ys) {
    const auto low = low_quarter(a);
    const auto place = [](const std::vector<double>& marks, double v) {
        std::size_t best = 0;
        for (std::size_t i = 1; i < marks.size(); ++i) {
            if (std::abs(marks[i] - v) < std::abs(marks[best] - v)) best = i;
        }
        return best;
    };
    std::map<std::pair<std::size_t, std::size_t>, std::string> cells;
    for (const SampleCan& c : a.sample.cans) {
        std::string text = mm(c.depth) + (low.contains(&c) ? "*" : " ");
        cells[{place(ys, c.position->y.si()), place(xs, c.position->x.si())}] = std::move(text);
    }
    out << "\nMap, mm (* in the low quarter; up is +y; . no can that counts)\n";
    for (std::size_t r = ys.size(); r-- > 0;) {
        out << "  ";
        for (std::size_t c = 0; c < xs.size(); ++c) {
            const auto it = cells.find({r, c});
            out << std::setw(7) << (it == cells.end() ? std::string(". ") : it->second);
        }
        out << '\n';
    }
}

/// Cans at their places on a sheet of characters; a can that would cover another is left out.
void print_scatter_map(std::ostream& out, const TestAnalysis& a) {
    constexpr std::size_t wide = 76;
    constexpr std::size_t high = 24;
    double x0 = 1e300, x1 = -1e300, y0 = 1e300, y1 = -1e300;
    for (const SampleCan& c : a.sample.cans) {
        x0 = std::min(x0, c.position->x.si());
        x1 = std::max(x1, c.position->x.si());
        y0 = std::min(y0, c.position->y.si());
        y1 = std::max(y1, c.position->y.si());
    }
    std::vector<std::string> sheet(high, std::string(wide, ' '));
    std::size_t hidden = 0;
    const auto low = low_quarter(a);
    for (const SampleCan* c : by_depth(a.sample)) {
        const std::string text = mm(c->depth) + (low.contains(c) ? "*" : "");
        const double fx = x1 > x0 ? (c->position->x.si() - x0) / (x1 - x0) : 0.0;
        const double fy = y1 > y0 ? (c->position->y.si() - y0) / (y1 - y0) : 0.0;
        const auto column = static_cast<std::size_t>(fx * static_cast<double>(wide - 7));
        std::string& line = sheet[static_cast<std::size_t>((1.0 - fy) * static_cast<double>(high - 1))];
        const std::size_t from = column == 0 ? 0 : column - 1;
        if (line.substr(from, text.size() + 2).find_first_not_of(' ') != std::string::npos) {
            ++hidden;
            continue;
        }
        line.replace(column, text.size(), text);
    }
    out << "\nMap, mm (* in the low quarter; up is +y)\n";
    for (const std::string& line : sheet) out << "  " << line << '\n';
    if (hidden > 0) out << "  " << hidden << " cans lie too close to others to be shown.\n";
}

void print_line_map(std::ostream& out, const TestAnalysis& a) {
    std::vector<const SampleCan*> order;
    for (const SampleCan& c : a.sample.cans) order.push_back(&c);
    std::sort(order.begin(), order.end(), [](const SampleCan* l, const SampleCan* r) {
        return l->position->x < r->position->x;
    });
    const double top = by_depth(a.sample).back()->depth.si();
    out << "\nAlong the line\n";
    for (const SampleCan* c : order) {
        out << "  " << std::setw(8) << format_fixed(c->position->x.in(units::metre), 1) << " m "
            << std::setw(7) << mm(c->depth) << " mm  "
            << std::string(static_cast<std::size_t>(std::lround(c->depth.si() / top * bar_length)), '=')
            << '\n';
    }
}

void print_map(std::ostream& out, const TestAnalysis& a) {
    std::vector<double> x;
    std::vector<double> y;
    for (const SampleCan& c : a.sample.cans) {
        if (!c.position) {
            out << "\nNo map: the sheet gives no positions.\n";
            return;
        }
        x.push_back(c.position->x.si());
        y.push_back(c.position->y.si());
    }
    const auto xs = marks_of(x);
    const auto ys = marks_of(y);
    if (ys.size() == 1 && ys.front() == 0.0) print_line_map(out, a);
    else if (xs.size() <= 12 && ys.size() <= 60 && xs.size() * ys.size() <= 2 * x.size()) {
        print_table_map(out, a, xs, ys);
    } else print_scatter_map(out, a);
}

void line(std::ostream& out, const std::string& name, const std::string& value, const std::string& more) {
    out << "  " << std::left << std::setw(34) << name << std::right << std::setw(9) << value;
    if (!more.empty()) out << "   " << more;
    out << '\n';
}

void print_figures(std::ostream& out, const TestAnalysis& a) {
    const auto& f = a.figures;
    const std::string level = format_fixed(100.0 * (a.intervals.du_lq ? a.intervals.du_lq->level : 0.9), 0);
    out << "\nFigures (interval: " << level << " %, widened for few cans; plain BCa in brackets)\n";
    const auto interval = [&](const auto member) {
        return range(a.widened.*member, 3) + " (" + range(a.intervals.*member, 3) + ")";
    };
    line(out, "mean depth", mm(f.mean) + " mm", format_fixed(f.mean.in(units::inch), 3) + " in");
    line(out, "DU, low quarter (" + std::string(text_of(f.quarter_rule)) + ")",
         format_fixed(f.du_lq.value(), 3), interval(&audit::FigureIntervals::du_lq));
    line(out, "DU, low half", format_fixed(f.du_lh.value(), 3), interval(&audit::FigureIntervals::du_lh));
    line(out, std::string(f.coefficient.english()), format_fixed(f.cu.value(), 3),
         interval(&audit::FigureIntervals::cu));
    line(out, "coefficient of variation", format_fixed(f.cv.value(), 3),
         "statistical uniformity " + format_fixed(f.statistical_uniformity.value(), 3));
    if (f.net_rate) {
        line(out, "net rate", format_fixed(f.net_rate->in(units::millimetre_per_hour), 1) + " mm/h",
             format_fixed(f.net_rate->in(units::inch_per_hour), 2) + " in/h, " +
                 range(a.widened.net_rate_mm_h, 1) + " mm/h");
    } else {
        line(out, "net rate", "-", "needs a run time, one station and sprinklers that stand still");
    }
    if (a.blocks) {
        line(out, "DU_LQ by blocks of cans", "", range(a.blocks->du_lq, 3) + " (" + a.blocks->scheme.english() + ")");
    }
    if (a.confidence_of_least) {
        line(out, "sure of the DU_LQ asked for", format_fixed(100.0 * *a.confidence_of_least, 1) + " %", "");
    }
    for (const auto& s : a.scheduling) {
        std::string name = "SC, " + std::string(text_of(s.spot));
        if (s.spot == audit::DrySpot::window) {
            name += " of " + format_fixed(100.0 * *s.window_share, 1) + " %";
        }
        line(out, name, s.value ? format_fixed(s.value->value(), 2) : "none",
             s.value ? s.where : s.where + " stayed dry");
    }
    const auto& m = a.multipliers;
    line(out, "multiplier, low half (from cans)", m.low_half ? format_fixed(m.low_half->value(), 3) : "none", "");
    line(out, "multiplier, straight line", format_fixed(m.linear.value(), 3), m.linear_source.english());
    line(out, "multiplier, low quarter", m.low_quarter ? format_fixed(m.low_quarter->value(), 3) : "none",
         "upper bound");
    line(out, "ground with the mean or more", format_fixed(100.0 * a.share_at_mean, 0) + " %", "");
    for (const auto& l : a.adequacy) {
        line(out, "enough for " + format_fixed(100.0 * l.share, 0) + " % of the ground",
             l.times_target ? "x " + format_fixed(*l.times_target, 2) : "never",
             l.times_target ? "times the depth each spot should get" : "that much of the ground stays dry");
    }
    if (a.flow_depth) {
        line(out, "mean depth by flow and speed", mm(a.flow_depth->by_flow) + " mm",
             "the cans caught " + format_fixed(std::abs(100.0 * a.flow_depth->caught_less), 1) +
                 (a.flow_depth->caught_less < 0.0 ? " % more" : " % less"));
    }
}

void print_exclusions(std::ostream& out, const TestAnalysis& a) {
    if (a.excluded.empty()) return;
    out << "\nLeft out\n";
    for (const auto& c : a.excluded) out << "  can " << printable(c.can) << ": " << printable(c.excluded) << '\n';
    if (a.with_all) {
        const auto& w = *a.with_all;
        out << "  With them: DU_LQ " << format_fixed(w.du_lq.value(), 3) << ", DU_LH "
            << format_fixed(w.du_lh.value(), 3) << ", CU " << format_fixed(w.cu.value(), 3) << ", mean "
            << both(w.mean) << '\n';
    } else {
        out << "  Figures with them cannot be given: " << a.why_not_all << '\n';
    }
}

void print_field(std::ostream& out, const TestAnalysis& a) {
    if (a.pressures) {
        const auto& p = *a.pressures;
        out << "\nPressure, psi: mean " << format_fixed(p.mean.in(units::psi), 1) << ", lowest "
            << format_fixed(p.lowest.in(units::psi), 1) << ", highest "
            << format_fixed(p.highest.in(units::psi), 1) << "; flow spread by the square root "
            << format_fixed(100.0 * p.flow_spread, 1) << " %\n";
        for (const auto& r : p.readings) {
            out << "  " << printable(r.reading.place) << ": " << r.reading.pressure.text() << ", "
                << text_of(r.verdict) << '\n';
        }
        for (const auto& s : a.whole_system) {
            out << "  Whole system, " << (s.figure == "cu" ? "CU " : "DU_LQ ")
                << format_fixed(s.whole_system, 3) << " by " << s.form << " (" << s.source << " ["
                << text_of(s.mark) << "]); only if the pressures were read over the whole system\n";
        }
    }
    if (!a.stations.stations.empty()) {
        out << "\nStations" << (a.stations.why_not.empty() ? "" : ": " + a.stations.why_not) << '\n';
        for (const auto& s : a.stations.stations) {
            out << "  " << printable(s.station) << ", " << format_fixed(s.run.in(units::minute), 1) << " min";
            if (s.area_rate) {
                out << ": " << format_fixed(s.area_rate->in(units::millimetre_per_hour), 1) << " mm/h over the area";
                if (s.wetted_rate) {
                    out << ", " << format_fixed(s.wetted_rate->in(units::millimetre_per_hour), 1)
                        << " mm/h at the " << s.wetted << " cans it reached";
                }
            }
            out << '\n';
        }
    }
}

void print_judgement(std::ostream& out, const TestAnalysis& a) {
    out << "\nWas it a good test?\n";
    for (const auto& r : a.rules) {
        out << "  " << std::left << std::setw(14) << text_of(r.outcome) << std::right << r.says;
        if (r.observed) out << "; here " << format_fixed(*r.observed, 2) << ' ' << r.unit;
        out << '\n';
    }
    out << "\nRatings by several sources, which disagree\n";
    for (const auto& r : a.ratings) {
        out << "  " << (r.figure == "cu" ? "CU" : r.figure == "du_lq" ? "DU_LQ" : "statistical") << ' '
            << format_fixed(r.percent, 1) << " %: " << r.rating << " (" << r.system
            << (r.heads == "any" ? "" : ", " + r.heads) << "; " << r.source << " [" << text_of(r.mark) << "])\n";
    }
}

}  // namespace

void print_uniformity(std::ostream& out, const audit::CatchTest& test, const TestAnalysis& a,
                      const std::vector<std::string>& remarks) {
    const auto& f = a.figures;
    out << "Catch test" << (test.code.empty() ? "" : " " + printable(test.code)) << ": " << f.layout.english() << ", "
        << f.cans
        << (f.layout.english() == "traveller" ? " strips from " + std::to_string(f.cans_read) + " cans" : " cans")
        << (f.excluded > 0 ? ", " + std::to_string(f.excluded) + " left out" : "")
        << "; weights: " << f.weights.english() << '\n';
    print_bars(out, a);
    print_map(out, a);
    print_figures(out, a);
    print_exclusions(out, a);
    print_field(out, a);
    print_judgement(out, a);
    out << "\nWhat to do\n";
    for (const std::string& s : audit::advice(a)) out << "  - " << printable(s, 2000) << '\n';
    out << "\nRemarks\n";
    for (const Sentence& n : f.notes) out << "  - " << n << '\n';
    for (const std::string& n : remarks) out << "  - " << n << '\n';
    out << "  - intervals: " << a.resamples << " resamples, seed " << a.seed << ", " << a.intervals.scheme << '\n';
}

}  // namespace evenfall::cli

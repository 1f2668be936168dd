// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/audit_section.h"

#include "reports/content/audit_notes.h"
#include "reports/content/audit_quality.h"
#include "reports/content/field.h"

#include "core/audit/low_share.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <numeric>

namespace evenfall::reports {
namespace {

using audit::CatchUnit;
using audit::Layout;

/// A catch with its place in the order from dry to wet, and the part of the low quarter and the
/// low half that it makes up.
struct SortedCan {
    std::string label;
    double depth;   ///< in the unit shown
    double weight;
    double before;  ///< weight of the drier ones
    double in_quarter;
    double in_half;
};

class SectionMaker {
  public:
    SectionMaker(const AuditedTest& tested, const std::string& key, const Shown& shown)
        : tested_(tested), test_(tested.test), key_(key), shown_(shown) {}

    std::vector<Section> make() {
        const std::string name = "Test " + test_.code + ", " + tested_.area_name;
        Section section{key_ + "_figures", name, {}};
        if (tested_.result) {
            section.blocks.emplace_back(results());
            section.blocks.emplace_back(sorted_chart());
        } else {
            section.blocks.emplace_back(Paragraph{"No figures: " + tested_.problem + "."});
        }
        if (tested_.analysis) {
            for (Table& t : quality_tables(*tested_.analysis, key_, shown_)) {
                section.blocks.emplace_back(std::move(t));
            }
            for (Block& b : note_blocks(*tested_.analysis, key_, shown_)) {
                section.blocks.push_back(std::move(b));
            }
        }
        section.blocks.emplace_back(sheet());
        // On a sheet of their own: the workbook lays the map out in columns of one width.
        Section data{key_ + "_catches", name + ": the catches", {}};
        if (has_map()) data.blocks.emplace_back(map_chart());
        if (on_a_line()) data.blocks.emplace_back(line_chart());
        data.blocks.emplace_back(catches());
        if (tested_.result) data.blocks.emplace_back(sorted());
        return {section, data};
    }

  private:
    bool weighted() const { return tested_.sample && !tested_.sample->equal_weights; }
    /// Overlapped strips of a traveller stand for no single can.
    bool cans_are_sample() const { return test_.layout != Layout::traveller; }
    /// One or two cans make no map.
    bool has_map() const {
        return std::count_if(test_.catches.begin(), test_.catches.end(),
                             [](const audit::Catch& c) { return c.x && c.y; }) >= 3;
    }
    bool on_a_line() const {
        return tested_.result && (test_.layout == Layout::pivot || test_.layout == Layout::lateral ||
                                  test_.layout == Layout::traveller);
    }
    std::string named(const char* name) const { return key_ + "_" + name; }
    std::string ref(const char* name) const { return "{=" + named(name) + "}"; }
    std::string column(const char* table, const char* column) const {
        return "{" + key_ + "_" + table + "." + column + "}";
    }

    Table sheet() const {
        Table t{named("sheet"),
                "Field sheet",
                "As recorded in the field.",
                {{"item", "Item", {}, true}, {"value", "Value", {3, ""}, true}},
                {}};
        const auto add = [&](const char* row, const std::string& item, Cell value) {
            t.add(row, {text(item), std::move(value)});
        };
        add("code", "Test", text(test_.code));
        add("area", "Area", text(tested_.area_name));
        add("date", "Date", text(calendar::format_date(test_.date)));
        add("read", "Cans on the sheet", number(static_cast<double>(test_.catches.size()), {}));
        if (test_.minutes) {
            Cell c = number(*test_.minutes, {1, "min"});
            c.name = named("run_minutes");
            c.role = CellRole::input;
            add("minutes", "Run time", c);
        } else {
            add("minutes", "Run time", text("not recorded"));
        }
        if (test_.throat_area) {
            add("throat", "Throat area of a can, as typed", text(test_.throat_area->text()));
            Cell c = number(test_.throat_area->quantity().in(units::square_centimetre), {4, "cm2"});
            c.name = named("throat_cm2");
            c.role = CellRole::input;
            add("throat_cm2", "Throat area in the calculation", c);
        }
        add("wind", "Wind", text(test_.wind ? test_.wind->text() : "not recorded"));
        if (test_.lane_spacing) add("lane", "Lane spacing", text(test_.lane_spacing->text()));
        return t;
    }

    /// Depth of a can from what was read, as a formula.
    std::string depth_formula() const {
        switch (test_.catch_unit) {
            // 1 mL over 1 cm2 is 1 cm of water.
            case CatchUnit::millilitre:
                return shown_.us() ? "{reading}/" + ref("throat_cm2") + "/2.54"
                                   : "10*{reading}/" + ref("throat_cm2");
            case CatchUnit::millimetre: return shown_.us() ? "{reading}/25.4" : "{reading}";
            case CatchUnit::inch: return shown_.us() ? "{reading}" : "{reading}*25.4";
        }
        return {};
    }

    std::optional<double> depth_of(const audit::Catch& c) const {
        if (test_.catch_unit == CatchUnit::millilitre && !test_.throat_area) return std::nullopt;
        return shown_.depth(audit::depth_of(test_, c));
    }

    Table catches() const {
        const char* unit = test_.catch_unit == CatchUnit::millilitre   ? "mL"
                           : test_.catch_unit == CatchUnit::millimetre ? "mm"
                                                                       : "in";
        const std::string ground(test_.position_unit.name);
        Table t{named("catches"),
                "Catches as read",
                "One line for each can; left-out cans keep their reading and their reason.",
                {{"can", "Can", {}, true},
                 {"x", "x", {2, ground}},
                 {"y", "y", {2, ground}},
                 {"distance", "Distance", {2, ground}},
                 {"side", "Side", {}, true},
                 {"reading", "Reading", {2, unit}},
                 {"depth", "Depth", shown_.depth_format()},
                 {"left_out", "Left out because", {}, true}},
                {}};
        for (std::size_t i = 0; i < test_.catches.size(); ++i) {
            const audit::Catch& c = test_.catches[i];
            Cell reading = number(c.reading);
            reading.role = CellRole::input;
            Cell depth = c.excluded.empty() ? computed(depth_of(c), depth_formula()) : unknown();
            if (!c.excluded.empty()) depth = text("left out");
            depth.role = CellRole::working;
            t.add(row_key(i), {text(c.can), number(c.x), number(c.y), number(c.distance),
                               text(c.side ? (*c.side == audit::Side::left ? "left" : "right") : ""),
                               reading, depth, text(c.excluded)});
        }
        drop_empty(t, {"x", "y", "distance", "side", "left_out"});
        return t;
    }

    /// Columns in which no row has anything are left away.
    static void drop_empty(Table& t, const std::vector<std::string>& candidates) {
        for (const auto& key : candidates) {
            const std::size_t c = *t.column_index(key);
            const bool used = std::any_of(t.rows.begin(), t.rows.end(), [&](const Row& row) {
                const auto* words = std::get_if<std::string>(&row.cells[c].value);
                return row.cells[c].number() || (words != nullptr && !words->empty());
            });
            if (used) continue;
            t.columns.erase(t.columns.begin() + static_cast<std::ptrdiff_t>(c));
            for (Row& row : t.rows) row.cells.erase(row.cells.begin() + static_cast<std::ptrdiff_t>(c));
        }
    }

    static std::string row_key(std::size_t i) { return std::to_string(i + 1); }

    std::vector<SortedCan> sorted_cans() const {
        std::vector<SortedCan> cans;
        for (const audit::SampleCan& can : tested_.sample->cans) {
            cans.push_back({can.label, shown_.depth(can.depth), can.weight, 0.0, 0.0, 0.0});
        }
        std::stable_sort(cans.begin(), cans.end(), [](const SortedCan& a, const SortedCan& b) {
            return std::pair(a.depth, a.weight) < std::pair(b.depth, b.weight);
        });
        const double half = total_weight() / 2.0, quarter = quarter_weight();
        double before = 0.0;
        for (SortedCan& can : cans) {
            can.before = before;
            can.in_quarter = std::max(0.0, std::min(can.weight, quarter - before));
            can.in_half = std::max(0.0, std::min(can.weight, half - before));
            before += can.weight;
        }
        return cans;
    }

    double total_weight() const {
        return std::accumulate(tested_.sample->cans.begin(), tested_.sample->cans.end(), 0.0,
                               [](double sum, const auto& can) { return sum + can.weight; });
    }

    /// Weight of the low quarter under the rule of the result.
    double quarter_weight() const {
        std::vector<std::pair<double, double>> pairs;
        for (const auto& can : tested_.sample->cans) pairs.emplace_back(can.depth.si(), can.weight);
        std::sort(pairs.begin(), pairs.end());
        std::vector<double> depths, weights;
        for (const auto& [depth, weight] : pairs) {
            depths.push_back(depth);
            weights.push_back(weight);
        }
        return audit::low_share(depths, weights, 0.25, tested_.result->quarter_rule).weight;
    }

    Table sorted() const {
        Table t{named("sorted"),
                "Catches from dry to wet",
                "The order from which the low quarter and the low half are taken, with the part of "
                "each that a can makes up.",
                {{"rank", "Rank", {}},
                 {"can", "Can", {}, true},
                 {"depth", "Depth", shown_.depth_format()},
                 {"weight", "Weight", {3, ""}},
                 {"before", "Weight of the drier", {3, ""}},
                 {"in_quarter", "In the low quarter", {3, ""}},
                 {"in_half", "In the low half", {3, ""}},
                 {"mean", "Mean", shown_.depth_format()},
                 {"low_quarter_mean", "Low-quarter mean", shown_.depth_format()}},
                {}};
        const auto cans = sorted_cans();
        for (std::size_t i = 0; i < cans.size(); ++i) {
            const SortedCan& can = cans[i];
            const std::string k = row_key(i), prior = i == 0 ? "" : row_key(i - 1);
            const std::string here = key_ + "_sorted";
            Cell depth = cans_are_sample() ? computed(can.depth, source_of(can.label))
                                           : number(can.depth);
            Cell quarter_mean = text("");
            if (can.in_quarter > 0.0) {
                quarter_mean = computed(shown_.depth(tested_.result->low_quarter_mean),
                                        ref("low_quarter_mean"));
            }
            Cell before = i == 0 ? number(0.0)
                                 : computed(can.before, "{" + here + "[" + prior + "].before}+{" +
                                                            here + "[" + prior + "].weight}");
            t.add(k, {number(static_cast<double>(i + 1)), text(can.label), depth,
                      number(can.weight), before,
                      computed(can.in_quarter,
                               "MAX(0,MIN({weight}," + ref("quarter_weight") + "-{before}))"),
                      computed(can.in_half, "MAX(0,MIN({weight}," + ref("half_weight") + "-{before}))"),
                      computed(shown_.depth(tested_.result->mean), ref("mean_depth")),
                      quarter_mean});
        }
        if (weighted()) t.footnotes.push_back("Weights: " + std::string(tested_.sample->weights.english()) + ".");
        return t;
    }

    /// The catch row with that label.
    std::string source_of(const std::string& label) const {
        for (std::size_t i = 0; i < test_.catches.size(); ++i) {
            if (test_.catches[i].can == label) {
                return "{" + key_ + "_catches[" + row_key(i) + "].depth}";
            }
        }
        return {};
    }

    /// Weight of the low quarter for equal weights by each rule; other weights get the figure alone.
    std::string quarter_formula() const {
        const std::string n = ref("cans_counted");
        switch (tested_.result->quarter_rule) {
            case audit::QuarterRule::whole_cans: return "MAX(1,INT(" + n + "/4))";
            case audit::QuarterRule::nearest: return "MAX(1,INT(" + n + "/4+0.5))";
            case audit::QuarterRule::round_up: return "ROUNDUP(" + n + "/4,0)";
            case audit::QuarterRule::part_can: return n + "/4";
        }
        return {};
    }

    Table results() const {
        const audit::UniformityResult& r = *tested_.result;
        Table t{named("results"),
                "Figures of the test",
                "Each figure with the way it is made; in the workbook each is a formula over the "
                "catches.",
                {{"figure", "Figure", {}, true},
                 {"value", "Value", {3, ""}},
                 {"how", "How it is made", {}, true}},
                {}};
        const std::string d = column("sorted", "depth"), w = column("sorted", "weight");
        const std::string m = ref("mean_depth"), n = ref("cans_counted");
        const auto add = [&](const char* name, const std::string& figure, std::optional<double> value,
                             NumberFormat format, const std::string& formula, const std::string& how,
                             CellRole role) {
            Cell c = formula.empty() ? number(value) : computed(value, formula);
            c.format = std::move(format);
            c.name = value ? named(name) : "";
            c.role = role;
            t.add(name, {text(figure), c, text(how)});
        };
        const auto working = CellRole::working, result = CellRole::result;
        const NumberFormat depth = shown_.depth_format(), share{3, ""};
        add("du_lq", "DU_LQ, low-quarter distribution uniformity", r.du_lq.value(), share,
            ref("low_quarter_mean") + "/" + m,
            "low-quarter mean over mean; low quarter by the rule " +
                std::string(audit::text_of(r.quarter_rule)),
            result);
        if (tested_.interval) {
            add("du_low_end", "DU_LQ, lower end of its interval", tested_.interval->low, share, {},
                tested_.interval->method, working);
            add("du_high_end", "DU_LQ, upper end of its interval", tested_.interval->high, share, {},
                tested_.interval->method, working);
        }
        add("du_lh", "DU_LH, low-half distribution uniformity", r.du_lh.value(), share,
            "SUMPRODUCT(" + column("sorted", "in_half") + "," + d + ")/SUM(" +
                column("sorted", "in_half") + ")/" + m,
            "mean of the drier half over mean", result);
        add("uniformity_cu", "CU, " + std::string(r.coefficient.english()), r.cu.value(), share,
            "1-SUMPRODUCT(" + w + ",ABS(" + d + "-" + m + "))/(" + m + "*SUM(" + w + "))",
            "1 less the mean deviation over the mean", result);
        add("variation_cv", "CV, coefficient of variation", r.cv.value(), share,
            "SQRT(SUMPRODUCT(" + w + ",(" + d + "-" + m + ")^2)/SUM(" + w + ")*" + n + "/(" + n +
                "-1))/" + m,
            "sample standard deviation over the mean", working);
        add("mean_depth", "Mean depth", shown_.depth(r.mean), depth,
            "SUMPRODUCT(" + w + "," + d + ")/SUM(" + w + ")", "mean of the cans that count", working);
        add("low_quarter_mean", "Low-quarter mean", shown_.depth(r.low_quarter_mean), depth,
            "SUMPRODUCT(" + column("sorted", "in_quarter") + "," + d + ")/SUM(" +
                column("sorted", "in_quarter") + ")",
            "mean of the driest quarter", working);
        if (r.net_rate) {
            add("net_rate", "Net application rate", shown_.rate(*r.net_rate), shown_.rate_format(),
                m + "/" + ref("run_minutes") + "*60", "mean depth over run time", result);
        }
        multipliers(add);
        add("cans_counted", "Cans that count", static_cast<double>(r.cans), {0, ""},
            "COUNT(" + d + ")", std::to_string(r.excluded) + " left out", working);
        add("quarter_weight", "Weight of the low quarter", quarter_weight(), share,
            weighted() ? "" : quarter_formula(),
            "by the rule " + std::string(audit::text_of(r.quarter_rule)), working);
        add("half_weight", "Weight of the low half", total_weight() / 2.0, share, "SUM(" + w + ")/2",
            "half of all weight", working);
        for (const auto& note : r.notes) t.footnotes.push_back(note.english() + ".");
        if (weighted()) t.footnotes.push_back("Weights: " + std::string(r.weights.english()) + ".");
        return t;
    }

    template <class Add>
    void multipliers(const Add& add) const {
        const audit::Multipliers& m = *tested_.multipliers;
        const auto* row = reference::Table::named("multiplier_forms.csv").find("form", "linear");
        if (m.low_half) {
            add("multiplier_low_half", "Run-time multiplier, low half", m.low_half->value(),
                NumberFormat{3, ""}, "1/" + ref("du_lh"), "1 / DU_LH, from the cans",
                CellRole::result);
        }
        if (row != nullptr) {
            const std::string a = units::format_shortest(row->number("a"));
            const std::string b = units::format_shortest(row->number("b"));
            add("multiplier_linear", "Run-time multiplier, linear", m.linear.value(),
                NumberFormat{3, ""}, "1/(" + a + "+" + b + "*" + ref("du_lq") + ")",
                "1 / (" + a + " + " + b + " DU_LQ)", CellRole::result);
        }
        if (m.low_quarter) {
            add("multiplier_bound", "Run-time multiplier, upper bound", m.low_quarter->value(),
                NumberFormat{3, ""}, "1/" + ref("du_lq"), "1 / DU_LQ", CellRole::result);
        }
    }

    Chart sorted_chart() const {
        const audit::UniformityResult& r = *tested_.result;
        const std::string table = named("sorted");
        SeriesChart c;
        c.categories = {table, "rank"};
        c.series = {{"Catches", {table, "depth"}, Draw::line, Tone::use, {}, {}},
                    {"Mean", {table, "mean"}, Draw::line, Tone::reference, {}, {}},
                    {"Low-quarter mean", {table, "low_quarter_mean"}, Draw::line,
                     Tone::low_quarter, {}, {}}};
        c.x = {"Catches from the driest to the wettest", ""};
        c.y = {"Depth", shown_.depth_format().unit};
        return {named("sorted_catches"), "Sorted catches of test " + test_.code,
                "The driest quarter of the ground got " + percent(r.du_lq.value()) +
                    " of the mean depth; the flatter the line, the more even the water.",
                c};
    }

    Chart map_chart() const {
        const std::string table = named("catches");
        MapChart m;
        m.x = {table, "x"};
        m.y = {table, "y"};
        m.value = {table, "depth"};
        m.label = {table, "can"};
        const std::string ground(test_.position_unit.name);
        m.x_axis = {"x", ground};
        m.y_axis = {"y", ground};
        m.value_axis = {"Depth", shown_.depth_format().unit};
        m.decimals = shown_.us() ? 3 : 1;
        std::vector<FieldPoint> points;
        for (const auto& c : test_.catches) {
            const auto depth = c.excluded.empty() ? depth_of(c) : std::nullopt;
            if (c.x && c.y && depth) points.push_back({*c.x, *c.y, *depth});
        }
        m.field = field_between(points, 1600);
        if (m.field) m.contours = contours_of(*m.field, round_levels(*m.field, 5));
        return {named("can_map"), "Map of the catches of test " + test_.code,
                "The depth caught at each can; sand is dry, blue is wet, crossed squares were left "
                "out. The colours and lines between the cans are interpolated (inverse distance) "
                "for the eye alone.",
                m};
    }

    Chart line_chart() const {
        const std::string table = named("sorted");
        if (test_.layout == Layout::traveller) {
            SeriesChart c;
            c.categories = {table, "can"};
            c.series = {{"Depth", {table, "depth"}, Draw::bar, Tone::use, {}, {}}};
            c.x = {"Strip across the lane, driest first", ""};
            c.y = {"Depth", shown_.depth_format().unit};
            return {named("strips"), "Depth on each strip of the lane, test " + test_.code,
                    "The strips as they lie between two pulls, with the overlap of both.", c};
        }
        const std::string from = named("catches");
        SeriesChart c;
        c.categories = {from, "distance"};
        c.series = {{"Depth", {from, "depth"}, Draw::line, Tone::use, {}, {}}};
        c.x = {"Distance along the machine", std::string(test_.position_unit.name)};
        c.y = {"Depth", shown_.depth_format().unit};
        return {named("along"), "Depth along the machine, test " + test_.code,
                "Dips show where the machine waters too little; cans in the order of the sheet.", c};
    }

    const AuditedTest& tested_;
    const audit::CatchTest& test_;
    const std::string& key_;
    const Shown& shown_;
};

}  // namespace

std::vector<Section> audit_sections(const AuditedTest& tested, const std::string& key, const Shown& shown) {
    return SectionMaker(tested, key, shown).make();
}

}  // namespace evenfall::reports

// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/xlsx/native_chart.h"

#include "core/units/number.h"

#include <algorithm>
#include <stdexcept>

namespace evenfall::reports {
namespace {

/// "=" and a range.
std::string equals(const std::string& range) {
    std::string out = "=";
    out += range;
    return out;
}

/// The library takes char* but does not write through it.
char* lend(const std::string& text) { return const_cast<char*>(text.c_str()); }

std::uint8_t pattern_of(Pattern pattern) {
    switch (pattern) {
        case Pattern::diagonal_up: return LXW_CHART_PATTERN_WIDE_UPWARD_DIAGONAL;
        case Pattern::diagonal_down: return LXW_CHART_PATTERN_WIDE_DOWNWARD_DIAGONAL;
        case Pattern::cross: return LXW_CHART_PATTERN_SMALL_GRID;
        case Pattern::dots: return LXW_CHART_PATTERN_PERCENT_20;
        case Pattern::horizontal: return LXW_CHART_PATTERN_NARROW_HORIZONTAL;
        case Pattern::solid: break;
    }
    return LXW_CHART_PATTERN_NONE;
}

std::uint8_t dash_of(Dash dash) {
    switch (dash) {
        case Dash::dashed: return LXW_CHART_LINE_DASH_DASH;
        case Dash::dotted: return LXW_CHART_LINE_DASH_ROUND_DOT;
        case Dash::solid: break;
    }
    return LXW_CHART_LINE_DASH_SOLID;
}

std::uint8_t marker_of(Marker marker) {
    switch (marker) {
        case Marker::square: return LXW_CHART_MARKER_SQUARE;
        case Marker::diamond: return LXW_CHART_MARKER_DIAMOND;
        case Marker::triangle: return LXW_CHART_MARKER_TRIANGLE;
        case Marker::circle: break;
    }
    return LXW_CHART_MARKER_CIRCLE;
}

void dress_line(lxw_chart_series* s, const Look& look, bool with_marker, float width) {
    lxw_chart_line line{};
    line.color = look.ink;
    line.width = width;
    line.dash_type = dash_of(look.dash);
    chart_series_set_line(s, &line);
    std::uint8_t marker = LXW_CHART_MARKER_NONE;
    if (with_marker) marker = marker_of(look.marker);
    chart_series_set_marker_type(s, marker);
    if (with_marker) {
        lxw_chart_fill fill{};
        fill.color = look.ink;
        chart_series_set_marker_fill(s, &fill);
        chart_series_set_marker_size(s, 5);
        lxw_chart_line edge{};
        edge.color = look.ink;
        chart_series_set_marker_line(s, &edge);
    }
}

void dress_bar(lxw_chart_series* s, const Look& look) {
    if (look.pattern == Pattern::solid) {
        lxw_chart_fill fill{};
        fill.color = look.fill;
        chart_series_set_fill(s, &fill);
    } else {
        lxw_chart_pattern pattern{};
        pattern.fg_color = look.ink;
        pattern.bg_color = look.fill;
        pattern.type = pattern_of(look.pattern);
        chart_series_set_pattern(s, &pattern);
    }
    lxw_chart_line edge{};
    edge.color = look.ink;
    edge.width = 0.75F;
    chart_series_set_line(s, &edge);
}

lxw_chart* need_chart(lxw_chart* chart) {
    if (chart == nullptr) throw std::runtime_error("workbook: no room for a chart");
    return chart;
}

void dress_axes(lxw_chart* c, const SeriesChart& chart) {
    // The library names axes by where they lie: in a horizontal bar chart categories run along y.
    lxw_chart_axis* x = chart.horizontal ? c->y_axis : c->x_axis;
    lxw_chart_axis* y = chart.horizontal ? c->x_axis : c->y_axis;
    chart_axis_set_name(x, chart.x.text().c_str());
    chart_axis_set_name(y, chart.y.text().c_str());
    lxw_chart_font plain{};
    plain.size = 9;
    plain.color = ink_text;
    plain.bold = LXW_EXPLICIT_FALSE;
    for (lxw_chart_axis* axis : {x, y}) {
        chart_axis_set_name_font(axis, &plain);
        chart_axis_set_num_font(axis, &plain);
    }
    lxw_chart_line grid{};
    grid.color = grid_line;
    grid.width = 0.5F;
    chart_axis_major_gridlines_set_line(y, &grid);
    chart_axis_set_num_format(y, "#,##0.###");
    if (chart.horizontal) chart_axis_set_reverse(x);
}

class ChartBuilder {
  public:
    ChartBuilder(lxw_workbook* book, const Layout& layout, const Table& table,
                 const SeriesChart& chart)
        : book_(book), layout_(layout), table_(table), chart_(chart) {}

    /// All series of a chart are drawn alike; check() has seen to it.
    lxw_chart* build() const {
        switch (chart_.series.front().draw) {
            case Draw::bar:
                return chart_of(chart_.horizontal ? LXW_CHART_BAR : LXW_CHART_COLUMN, Draw::bar);
            case Draw::stacked:
                return chart_of(
                    chart_.horizontal ? LXW_CHART_BAR_STACKED : LXW_CHART_COLUMN_STACKED,
                    Draw::stacked);
            case Draw::line: break;
        }
        return chart_of(LXW_CHART_LINE, Draw::line);
    }

  private:
    lxw_chart_series* add(lxw_chart* c, const std::string& column, const std::string& name) const {
        const std::string categories =
            equals(layout_.column_range(table_, *table_.column_index(chart_.categories.column)));
        const std::string values =
            equals(layout_.column_range(table_, *table_.column_index(column)));
        lxw_chart_series* s = chart_add_series(c, categories.c_str(), values.c_str());
        if (s == nullptr) throw std::runtime_error("workbook: no room for a series");
        chart_series_set_name(s, name.c_str());
        return s;
    }

    lxw_chart* chart_of(std::uint8_t type, Draw draw) const {
        lxw_chart* c = need_chart(workbook_add_chart(book_, type));
        for (const Series& series : chart_.series) {
            lxw_chart_series* s = add(c, series.values.column, series.name);
            const Look look = look_of(series.tone, Medium::paper);
            if (draw == Draw::line) {
                dress_line(s, look, table_.rows.size() <= 40, 1.75F);
            } else {
                dress_bar(s, look);
            }
            if (!series.low || draw != Draw::line) continue;
            // The library has no error bars with values of their own: the ends become thin lines.
            dress_line(add(c, series.low->column, series.name + ", low"), look, false, 0.75F);
            dress_line(add(c, series.high->column, series.name + ", high"), look, false, 0.75F);
        }
        if (draw != Draw::line) chart_set_series_gap(c, 40);
        if (draw == Draw::stacked) chart_set_series_overlap(c, 100);
        return c;
    }

    lxw_workbook* book_;
    const Layout& layout_;
    const Table& table_;
    const SeriesChart& chart_;
};

void place_chart(lxw_chart* c, const SafeSheet& sheet, const Chart& chart, lxw_row_t row) {
    chart_title_set_name(c, chart.title.c_str());
    lxw_chart_font title{};
    title.size = 11;
    title.color = ink_text;
    chart_title_set_name_font(c, &title);
    lxw_chart_options options{};
    options.x_scale = 1.6;
    options.y_scale = 1.35;
    options.object_position = LXW_OBJECT_MOVE_DONT_SIZE;
    options.description = lend(chart.sentence);
    need(worksheet_insert_chart_opt(sheet.raw(), row, 0, c, &options), "chart " + chart.key);
}

void scatter(lxw_workbook* book, const SafeSheet& sheet, const Layout& layout, const Table& table,
             const Chart& chart, const MapChart& map, lxw_row_t row) {
    lxw_chart* c = need_chart(workbook_add_chart(book, LXW_CHART_SCATTER));
    const std::string x = equals(layout.column_range(table, *table.column_index(map.x.column)));
    const std::string y = equals(layout.column_range(table, *table.column_index(map.y.column)));
    lxw_chart_series* s = chart_add_series(c, x.c_str(), y.c_str());
    if (s == nullptr) throw std::runtime_error("workbook: no room for a series");
    chart_series_set_name(s, map.value_axis.text().c_str());
    dress_line(s, look_of(Tone::use, Medium::paper), true, 0.0F);
    lxw_chart_line nothing{};
    nothing.none = LXW_TRUE;
    chart_series_set_line(s, &nothing);
    // The number of each can stands beside its marker, taken from the value cell.
    const std::size_t value = *table.column_index(map.value.column);
    std::vector<std::string> addresses;
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        if (table.rows[r].kind == RowKind::data) {
            addresses.push_back(equals(layout.cell_address(table, r, value)));
        }
    }
    std::vector<lxw_chart_data_label> labels(addresses.size());
    std::vector<lxw_chart_data_label*> pointers;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        labels[i].value = lend(addresses[i]);
        pointers.push_back(&labels[i]);
    }
    pointers.push_back(nullptr);
    chart_series_set_labels(s);
    need(chart_series_set_labels_custom(s, pointers.data()), "labels of " + chart.key);
    chart_axis_set_name(c->x_axis, map.x_axis.text().c_str());
    chart_axis_set_name(c->y_axis, map.y_axis.text().c_str());
    chart_legend_set_position(c, LXW_CHART_LEGEND_NONE);
    place_chart(c, sheet, chart, row);
}

}  // namespace

void insert_series_chart(lxw_workbook* book, const SafeSheet& sheet, const Layout& layout,
                         const Table& table, const Chart& chart, lxw_row_t row) {
    const auto& content = std::get<SeriesChart>(chart.content);
    lxw_chart* c = ChartBuilder(book, layout, table, content).build();
    dress_axes(c, content);
    chart_legend_set_position(
        c, content.series.size() > 1 ? LXW_CHART_LEGEND_BOTTOM : LXW_CHART_LEGEND_NONE);
    chart_show_blanks_as(c, LXW_CHART_BLANKS_AS_GAP);
    place_chart(c, sheet, chart, row);
}

void insert_map(lxw_workbook* book, const SafeSheet& sheet, Formats& formats, const Layout& layout,
                const Table& table, const Chart& chart, lxw_row_t row) {
    const auto& map = std::get<MapChart>(chart.content);
    const GridOfCans grid = grid_of_cans(table, map);
    if (grid.xs.empty()) return scatter(book, sheet, layout, table, chart, map, row);
    CellLook title_look;
    title_look.bold = true;
    sheet.text(row, 0, chart.title + " (" + map.value_axis.text() + ")", formats.of(title_look));
    CellLook axis_look;
    axis_look.is_number = true;
    axis_look.centred = true;
    axis_look.ink = ink_faint;
    axis_look.number.decimals = 1;
    CellLook value_look = axis_look;
    value_look.ink = ink_text;
    value_look.number.decimals = map.decimals;
    const std::size_t value = *table.column_index(map.value.column);
    lxw_row_t at = row + 1;
    const lxw_row_t first = at;
    for (std::size_t r = 0; r < grid.ys.size(); ++r, ++at) {
        sheet.number(at, 0, grid.ys[grid.ys.size() - 1 - r], formats.of(axis_look));
        for (std::size_t c = 0; c < grid.xs.size(); ++c) {
            const std::size_t source = grid.row_of[r][c];
            if (source == GridOfCans::none) continue;
            const auto depth = table.rows[source].cells[value].number();
            if (!depth) continue;
            sheet.formula(at, static_cast<lxw_col_t>(c + 1),
                          equals(layout.cell_address(table, source, value)), *depth,
                          formats.of(value_look));
        }
    }
    CellLook name_look;
    name_look.ink = ink_faint;
    sheet.text(at, 0, map.y_axis.text(), formats.of(name_look));
    for (std::size_t c = 0; c < grid.xs.size(); ++c) {
        sheet.number(at, static_cast<lxw_col_t>(c + 1), grid.xs[c], formats.of(axis_look));
    }
    sheet.text(at + 1, 1, map.x_axis.text(), formats.of(name_look));
    lxw_conditional_format scale{};
    scale.type = LXW_CONDITIONAL_3_COLOR_SCALE;
    scale.min_color = depth_colour(0.0, Medium::paper);
    scale.mid_color = depth_colour(0.25, Medium::paper);
    scale.max_color = depth_colour(0.5, Medium::paper);  // no darker: the numbers are printed in dark ink
    need(worksheet_conditional_format_range(sheet.raw(), first, 1, at - 1,
                                            static_cast<lxw_col_t>(grid.xs.size()), &scale),
         "colour scale of " + chart.key);
}

}  // namespace evenfall::reports

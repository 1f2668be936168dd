// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_data.h"

#include "app/desktop/field_sheet/sheet_notes.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace evenfall::desktop {
namespace {

using audit::Layout;
using audit::Side;

template <class Q>
std::optional<units::Typed<Q>> measure_or_nothing(const std::string& text, const char* field,
                                                  std::vector<Issue>& issues) {
    if (text.empty()) return std::nullopt;
    try {
        return units::parse_measure<Q>(text);
    } catch (const InputError& e) {
        Issue issue = e.issues().front();
        issue.place.column = field;
        issues.push_back(std::move(issue));
        return std::nullopt;
    }
}

std::string label_at(const SheetData& sheet, int row, int column) {
    switch (sheet.layout) {
        case Layout::traveller: {
            std::string label(1, column == 0 ? 'L' : 'R');
            label += std::to_string(sheet.rows - row);
            return label;
        }
        case Layout::pivot:
        case Layout::lateral:
            return std::to_string(row * sheet.columns + column + 1);
        case Layout::grid:
        case Layout::irregular:
            break;
    }
    // Rows by letter from the top, past Z as AA, AB ...
    std::string letters;
    for (int n = row; n >= 0; n = n / 26 - 1) {
        letters.insert(letters.begin(), static_cast<char>('A' + n % 26));
    }
    letters += std::to_string(column + 1);
    return letters;
}

SheetCan can_at(const SheetData& sheet, int row, int column) {
    SheetCan can;
    can.label = label_at(sheet, row, column);
    can.row = row;
    can.column = column;
    switch (sheet.layout) {
        case Layout::traveller:
            can.side = column == 0 ? Side::left : Side::right;
            can.distance = sheet.first + sheet.spacing * (sheet.rows - 1 - row);
            break;
        case Layout::pivot:
        case Layout::lateral:
            can.distance = sheet.first + sheet.spacing * (row * sheet.columns + column);
            break;
        case Layout::grid:
        case Layout::irregular:
            can.x = sheet.spacing * column;
            can.y = sheet.spacing * (sheet.rows - 1 - row);
            break;
    }
    return can;
}

/// Rank of each value among the different ones, from 0.
std::map<double, int> ranks(const std::set<double>& values) {
    std::map<double, int> out;
    int n = 0;
    for (const double v : values) out[v] = n++;
    return out;
}

void place_on_screen(SheetData& sheet) {
    if (sheet.layout == Layout::traveller) {
        std::set<double> distances;
        for (const SheetCan& can : sheet.cans) distances.insert(can.distance.value_or(0.0));
        const auto rank = ranks(distances);
        sheet.columns = 2;
        sheet.rows = std::max(1, static_cast<int>(rank.size()));
        for (SheetCan& can : sheet.cans) {
            can.column = can.side == Side::right ? 1 : 0;
            can.row = sheet.rows - 1 - rank.at(can.distance.value_or(0.0));
        }
        return;
    }
    if (sheet.layout == Layout::pivot || sheet.layout == Layout::lateral) {
        sheet.columns = 6;
        sheet.rows = std::max(1, (static_cast<int>(sheet.cans.size()) + 5) / 6);
        for (std::size_t i = 0; i < sheet.cans.size(); ++i) {
            sheet.cans[i].row = static_cast<int>(i) / 6;
            sheet.cans[i].column = static_cast<int>(i) % 6;
        }
        return;
    }
    std::set<double> xs;
    std::set<double> ys;
    for (const SheetCan& can : sheet.cans) {
        xs.insert(can.x.value_or(0.0));
        ys.insert(can.y.value_or(0.0));
    }
    const auto x_rank = ranks(xs);
    const auto y_rank = ranks(ys);
    sheet.columns = std::max(1, static_cast<int>(x_rank.size()));
    sheet.rows = std::max(1, static_cast<int>(y_rank.size()));
    for (SheetCan& can : sheet.cans) {
        can.column = x_rank.at(can.x.value_or(0.0));
        can.row = sheet.rows - 1 - y_rank.at(can.y.value_or(0.0));
    }
    if (xs.size() > 1) sheet.spacing = *std::next(xs.begin()) - *xs.begin();
}

}  // namespace

SheetData empty_sheet(calendar::Date date) {
    SheetData sheet;
    sheet.date = date;
    sheet.position_unit = units::unit_named<units::Length>("ft");
    sheet.throat_area = "16.61 in2";
    lay_out(sheet);
    return sheet;
}

void lay_out(SheetData& sheet) {
    if (sheet.layout == Layout::traveller) sheet.columns = 2;
    std::map<std::pair<int, int>, const SheetCan*> old;
    for (const SheetCan& can : sheet.cans) old[{can.row, can.column}] = &can;
    std::vector<SheetCan> cans;
    cans.reserve(static_cast<std::size_t>(sheet.rows) * static_cast<std::size_t>(sheet.columns));
    for (int row = 0; row < sheet.rows; ++row) {
        for (int column = 0; column < sheet.columns; ++column) {
            SheetCan can = can_at(sheet, row, column);
            if (const auto it = old.find({row, column}); it != old.end()) {
                can.reading = it->second->reading;
                can.bad = it->second->bad;
                can.excluded = it->second->excluded;
            }
            cans.push_back(std::move(can));
        }
    }
    sheet.cans = std::move(cans);
}

std::vector<std::size_t> walking_order(const SheetData& sheet) {
    std::vector<std::size_t> order(sheet.cans.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const bool columns_first = sheet.layout == Layout::traveller;
    const bool back = sheet.walk == Walk::back_and_forth && sheet.layout != Layout::pivot &&
                      sheet.layout != Layout::lateral;
    // A traveller's cans stand in a line across the path: down the left side, then out on the right.
    const auto key = [&](std::size_t i) {
        const SheetCan& can = sheet.cans[i];
        const int line = columns_first ? can.column : can.row;
        int along = columns_first ? can.row : can.column;
        if (back && line % 2 == 1) along = -along;
        return std::pair(line, along);
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    return order;
}

audit::CatchTest to_catch_test(const SheetData& sheet) {
    audit::CatchTest test;
    std::vector<Issue> issues;
    test.code = sheet.code;
    test.area = sheet.area;
    test.date = sheet.date;
    test.layout = sheet.layout;
    test.position_unit = sheet.position_unit;
    test.catch_unit = sheet.catch_unit;
    test.opposite_pulls = sheet.opposite_pulls;
    if (sheet.catch_unit == audit::CatchUnit::millilitre) {
        test.throat_area = measure_or_nothing<units::Area>(sheet.throat_area, "throat area", issues);
    }
    test.wind = measure_or_nothing<units::Speed>(sheet.wind, "wind", issues);
    if (sheet.layout == Layout::traveller) {
        test.lane_spacing = measure_or_nothing<units::Length>(sheet.lane_spacing, "lane spacing", issues);
    }
    if (!sheet.minutes.empty()) {
        test.minutes = units::parse_number(sheet.minutes);
        if (!test.minutes) {
            issues.push_back({{"", 0, "minutes"}, printable(sheet.minutes), phrase("field sheet", "a number of minutes")});
        }
    }
    for (const SheetCan& can : sheet.cans) {
        if (!can.bad.empty()) {
            std::string where = "can ";
            where += can.label;
            issues.push_back({{"", 0, where}, printable(can.bad), phrase("field sheet", "a number, 0 or more")});
        }
        if (!can.reading) continue;
        audit::Catch c;
        c.can = can.label;
        c.x = can.x;
        c.y = can.y;
        c.distance = can.distance;
        c.side = can.side;
        c.reading = *can.reading;
        c.excluded = can.excluded;
        test.catches.push_back(std::move(c));
    }
    if (!issues.empty()) throw InputError(std::move(issues));
    return test;
}

SheetData from_catch_test(const audit::CatchTest& test) {
    SheetData sheet;
    sheet.code = test.code;
    sheet.area = test.area;
    sheet.date = test.date;
    sheet.layout = test.layout;
    sheet.position_unit = test.position_unit;
    sheet.catch_unit = test.catch_unit;
    sheet.opposite_pulls = test.opposite_pulls;
    if (test.throat_area) sheet.throat_area = test.throat_area->text();
    if (test.minutes) sheet.minutes = units::format_shortest(*test.minutes);
    if (test.wind) sheet.wind = test.wind->text();
    if (test.lane_spacing) sheet.lane_spacing = test.lane_spacing->text();
    for (const audit::Catch& c : test.catches) {
        SheetCan can;
        can.label = c.can;
        can.x = c.x;
        can.y = c.y;
        can.distance = c.distance;
        can.side = c.side;
        can.reading = c.reading;
        can.excluded = c.excluded;
        sheet.cans.push_back(std::move(can));
    }
    place_on_screen(sheet);
    show_notes(test, sheet);
    return sheet;
}

}  // namespace evenfall::desktop

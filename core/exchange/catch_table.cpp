// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/records.h"
#include "core/units/number.h"

#include <algorithm>
#include <utility>

namespace evenfall::exchange {
namespace {

using audit::CatchTest;
using audit::Layout;

/// More is no catch test; the search for a can that stands twice must stay short.
constexpr std::size_t most_cans = 10'000;

constexpr std::pair<std::string_view, Layout> layouts[]{{"grid", Layout::grid},
                                                        {"pivot", Layout::pivot},
                                                        {"traveller", Layout::traveller},
                                                        {"irregular", Layout::irregular},
                                                        {"lateral", Layout::lateral}};

Layout layout_of(const ColumnIndex& columns) {
    if (columns.has("side")) return Layout::traveller;
    if (columns.has("distance")) return Layout::pivot;
    return Layout::grid;
}

audit::CatchUnit catch_unit(std::string_view unit) {
    if (unit == "mm") return audit::CatchUnit::millimetre;
    if (unit == "in") return audit::CatchUnit::inch;
    return audit::CatchUnit::millilitre;
}

std::optional<bool> yes_no(std::string_view text) {
    const std::string key = column_key(text);
    if (key == "yes" || key == "true" || key == "1") return true;
    if (key == "no" || key == "false" || key == "0") return false;
    return std::nullopt;
}

/// Sets the field from the first row that has it; a later row may only repeat it.
template <class T, class Same>
void agree(RowReader& row, std::string_view group, std::optional<T>& field,
           const std::optional<T>& value, Same same) {
    if (!value) return;
    if (field && !same(*field, *value)) {
        row.refuse(group, row.text(group), phrase("exchange", "the same value in all rows of one test"));
        return;
    }
    field = value;
}

template <class Q>
void agree_measure(RowReader& row, std::string_view group, std::optional<units::Typed<Q>>& field) {
    auto value = row.measure<Q>(group);
    if (value && value->value < 0) {
        row.refuse(group, row.text(group), phrase("exchange", "a value of zero or more"));
        return;
    }
    agree(row, group, field, value,
          [](const auto& a, const auto& b) { return a.value == b.value && a.unit.name == b.unit.name; });
}

}  // namespace

CatchTableReader::CatchTableReader(const ColumnIndex& columns, std::string file, bool in_book)
    : columns_(columns), file_(std::move(file)), in_book_(in_book) {
    std::vector<Issue> issues;
    for (std::string_view group : {"test", "area", "date"}) {
        if (in_book && !columns.has(group)) {
            issues.push_back({{file_, 1, std::string(group)}, phrase("exchange", "no such column"),
                              {phrase("exchange", "a column %1, to keep the test in a book"), group}});
        }
    }
    if (columns.has("x") != columns.has("y")) {
        issues.push_back({{file_, 1, columns.has("x") ? "y" : "x"}, phrase("exchange", "no such column"),
                          phrase("exchange", "both x and y, in one unit")});
    } else if (columns.has("x") && columns.find("x")->unit != columns.find("y")->unit) {
        issues.push_back({{file_, 1, std::string(columns.find("y")->name)},
                          std::string(columns.find("y")->name), phrase("exchange", "x and y in one unit")});
    }
    if (columns.has("side") && !columns.has("distance")) {
        issues.push_back({{file_, 1, "distance"}, phrase("exchange", "no such column"),
                          phrase("exchange", "a distance from the path beside the side")});
    }
    if (!issues.empty()) throw InputError(std::move(issues));
}

CatchTest& CatchTableReader::test_of(RowReader& row) {
    const std::string code(row.text("test"));
    const auto [found, is_new] = by_code_.try_emplace(code, tests_.size());
    if (!is_new) return tests_[found->second];
    CatchTest t;
    t.code = code;
    t.file = file_;
    t.layout = layout_of(columns_);
    if (const auto* x = columns_.find(columns_.has("distance") ? "distance" : "x")) {
        t.position_unit = units::unit_named<units::Length>(x->unit);
    }
    t.catch_unit = catch_unit(row.unit("catch"));
    tests_.push_back(std::move(t));
    return tests_.back();
}

void CatchTableReader::read_test_fields(RowReader& row, CatchTest& test, bool first) {
    if (in_book_) static_cast<void>(row.needed_text("test"));
    const std::string_view area = row.text("area");
    if (first) {
        test.area = area;
        if (in_book_ && area.empty()) static_cast<void>(row.needed_text("area"));
        test.date = (in_book_ ? row.needed_date("date") : row.date("date")).value_or(calendar::Date{});
    } else {
        if (!area.empty() && area != test.area) {
            row.refuse("area", area, phrase("exchange", "the same area in all rows of one test"));
        }
        const auto date = row.date("date");
        if (date && *date != test.date) {
            row.refuse("date", row.text("date"), phrase("exchange", "the same day in all rows of one test"));
        }
    }
    agree_measure<units::Area>(row, "throat_area", test.throat_area);
    agree_measure<units::Speed>(row, "wind", test.wind);
    agree_measure<units::Length>(row, "lane_spacing", test.lane_spacing);
    agree_measure<units::Volume>(row, "can_size", test.can_size);
    agree_measure<units::Flow>(row, "flow", test.flow);
    agree_measure<units::Speed>(row, "travel_speed", test.travel_speed);
    agree_measure<units::Length>(row, "edge_offset", test.edge_offset);
    if (test.throat_area && !(test.throat_area->value > 0)) {
        row.refuse("throat_area", row.text("throat_area"), phrase("exchange", "a throat area above zero"));
    }
    const auto minutes = row.number_within("minutes", 1e-9, 1e5, phrase("exchange", "minutes above zero"));
    agree(row, "minutes", test.minutes, minutes, [](double a, double b) { return a == b; });
    const std::string_view layout = row.text("layout");
    if (!layout.empty()) {
        const auto* known = std::find_if(std::begin(layouts), std::end(layouts),
                                         [&](const auto& l) { return l.first == layout; });
        if (known == std::end(layouts)) {
            row.refuse("layout", layout, phrase("exchange", "grid, pivot, traveller, lateral or irregular"));
        } else if (!first && test.layout != known->second) {
            row.refuse("layout", layout, phrase("exchange", "the same value in all rows of one test"));
        } else {
            test.layout = known->second;
        }
    }
    const std::string_view pulls = row.text("opposite_pulls");
    if (!pulls.empty()) {
        const auto answer = yes_no(pulls);
        if (!answer) {
            row.refuse("opposite_pulls", pulls, phrase("exchange", "yes or no"));
        } else if (!first && test.opposite_pulls != *answer) {
            row.refuse("opposite_pulls", pulls, phrase("exchange", "the same value in all rows of one test"));
        } else {
            test.opposite_pulls = *answer;
        }
    }
}

void CatchTableReader::read_can(RowReader& row, CatchTest& test) {
    audit::Catch c;
    c.row = row.row();
    c.can = row.needed_text("can");
    c.excluded = row.text("excluded");
    const auto coordinate = [&](std::string_view group) {
        return row.has(group) ? row.needed_number(group) : std::nullopt;
    };
    c.x = coordinate("x");
    c.y = coordinate("y");
    c.distance = coordinate("distance");
    if (c.distance && *c.distance < 0 && test.layout != Layout::lateral) {
        row.refuse("distance", row.text("distance"), phrase("exchange", "a distance of zero or more"));
    }
    if (row.has("side")) {
        const std::string side = column_key(row.text("side"));
        if (side == "left") c.side = audit::Side::left;
        else if (side == "right") c.side = audit::Side::right;
        else row.refuse("side", row.text("side"), phrase("exchange", "left or right, looking along the pull"));
    }
    c.reading = row.needed_number("catch").value_or(0.0);
    if (c.reading < 0) row.refuse("catch", row.text("catch"), phrase("exchange", "a catch of zero or more"));
    const std::string station(row.text("station"));
    const auto run = row.number_within("station_minutes", 1e-9, 1e5, phrase("exchange", "minutes above zero"));
    const auto same = std::find_if(test.catches.begin(), test.catches.end(),
                                   [&](const audit::Catch& o) { return o.can == c.can; });
    if (!station.empty()) {
        const auto known = std::find_if(test.stations.begin(), test.stations.end(),
                                        [&](const auto& s) { return s.station == station; });
        if (known == test.stations.end()) {
            if (!run) row.refuse("station_minutes", row.text("station_minutes"), phrase("exchange", "minutes of this station"));
            test.stations.push_back({station, run.value_or(0.0)});
        } else if (run && known->minutes != *run) {
            row.refuse("station_minutes", row.text("station_minutes"),
                       phrase("exchange", "the same minutes in all rows of one station"));
        }
        const auto taken = [&](const audit::StationCatch& s) { return s.station == station; };
        if (same != test.catches.end() && !same->by_station.empty() &&
            std::none_of(same->by_station.begin(), same->by_station.end(), taken)) {
            if (same->x != c.x || same->y != c.y || same->distance != c.distance) {
                row.refuse("can", c.can, phrase("exchange", "one place for each can"));
            }
            same->by_station.push_back({station, c.reading});
            same->reading += c.reading;
            return;
        }
        c.by_station.push_back({station, c.reading});
    }
    if (same != test.catches.end()) {
        row.refuse("can", c.can, {phrase("exchange", "each can once in a test; this one stands in row %1 too"), same->row});
        return;
    }
    if (test.catches.size() >= most_cans) {
        row.refuse("can", c.can, {phrase("exchange", "at most %1 cans in a test"), most_cans});
        return;
    }
    test.catches.push_back(std::move(c));
}

void CatchTableReader::add(RowReader& row) {
    CatchTest& test = test_of(row);
    read_test_fields(row, test, test.catches.empty());
    read_can(row, test);
}

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
// Sites, meters, exchanges, areas, weather stations, catch tests and bills.
#include "core/calendar/time_zone.h"
#include "core/exchange/bag_digest.h"
#include "core/exchange/import_run.h"
#include "core/store/bill_store.h"
#include "core/store/catch_test_store.h"
#include "core/store/meter_store.h"
#include "core/store/outline_store.h"
#include "core/store/site_store.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace evenfall::exchange {
namespace {

/// Sizes are typed with two or three digits; more than this apart, one of the two is wrong.
constexpr double outline_slack = 0.02;

template <class Record>
struct Row {
    Record record;
    KeptRow kept;
};

/// Records of a file by code, each once: a code that stands twice with other values is refused.
template <class Record>
class ByCode {
  public:
    ByCode(ImportRun& run, std::string_view group) : run_(run), group_(group) {}
    void add(RowReader& row, Record record) {
        if (!row.ok()) return;
        const auto [found, is_new] = index_.try_emplace(record.code, rows_.size());
        if (is_new) {
            rows_.push_back({std::move(record), run_.keep_row()});
        } else if (fields_of(rows_[found->second].record) == fields_of(record)) {
            ++run_.result.unchanged;
        } else {
            row.refuse(group_, record.code,
                       {phrase("exchange", "each code once; row %1 says something else of it"), rows_[found->second].kept.row});
        }
    }
    std::vector<Row<Record>>& rows() { return rows_; }

  private:
    ImportRun& run_;
    std::string_view group_;
    std::vector<Row<Record>> rows_;
    std::unordered_map<std::string, std::size_t> index_;
};

/// Adds, leaves or replaces one record.
template <class Record, class Find, class Add, class Replace>
void put(ImportRun& run, const Row<Record>& row, PhraseOf<1> name, Find find, Add add,
         Replace replace) {
    const auto stored = find(run.book, row.record.code);
    if (!stored) {
        add(run.book, row.record, run.import);
        ++run.result.added;
        return;
    }
    const auto take_file = run.settle_fields({run.rows.file(), row.kept.row, ""},
                                             Sentence(name, row.record.code).english(),
                                             fields_of(*stored), fields_of(row.record));
    if (!take_file) {
        ++run.result.unchanged;
    } else if (*take_file) {
        replace(run.book, row.record, run.import);
    }
}

/// Refuses rows because `code`, which they name, is not in the book.
void refuse_unknown(ImportRun& run, std::span<const KeptRow> kept, std::string_view group,
                    const std::string& code, const Sentence& expected) {
    const auto* column = run.columns.find(group);
    std::string name(column == nullptr ? group : column->name);
    const std::size_t row = kept.empty() ? 0 : kept.front().row;
    run.refuse_later(kept, {{run.rows.file(), row, std::move(name)}, code, expected});
}

void refuse_unknown(ImportRun& run, const KeptRow& kept, std::string_view group, const std::string& code,
                    const Sentence& expected) {
    refuse_unknown(run, std::span(&kept, 1), group, code, expected);
}

}  // namespace

void import_sites(ImportRun& run) {
    ByCode<site::Site> sites(run, "site");
    run.each_row([&](RowReader& row) { sites.add(row, read_site(row)); });
    for (const auto& r : sites.rows()) {
        put(run, r, record_form::site, store::find_site, store::add_site, store::replace_site);
    }
}

void import_meters(ImportRun& run) {
    ByCode<meter::Meter> meters(run, "meter");
    run.each_row([&](RowReader& row) { meters.add(row, read_meter(row)); });
    // A meter may name others of the same file, in any order: those go in first.
    auto waiting = std::move(meters.rows());
    const auto known = [&](const std::string& code) {
        return code.empty() || store::find_meter(run.book, code).has_value();
    };
    for (bool moved = true; moved && !waiting.empty();) {
        moved = false;
        std::vector<Row<meter::Meter>> later;
        for (auto& r : waiting) {
            if (!known(r.record.parent) || !known(r.record.replaces)) {
                later.push_back(std::move(r));
                continue;
            }
            moved = true;
            if (!store::find_site(run.book, r.record.site)) {
                refuse_unknown(run, r.kept, "site", r.record.site, site_expected);
                continue;
            }
            put(run, r, record_form::meter, store::find_meter, store::add_meter, store::replace_meter);
        }
        waiting = std::move(later);
    }
    for (const auto& r : waiting) {
        const bool parent = !known(r.record.parent);
        refuse_unknown(run, r.kept, parent ? "parent" : "replaces",
                       parent ? r.record.parent : r.record.replaces, meter_expected);
    }
}

void import_exchanges(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        ExchangeRow x = read_exchange(row);
        if (!row.ok()) return;
        const auto meter = store::find_meter(run.book, x.meter);
        if (!meter) {
            row.refuse("meter", x.meter, meter_expected);
            return;
        }
        const auto site = store::find_site(run.book, meter->site);
        try {
            x.exchange.at = x.time.instant
                                ? *x.time.instant
                                : calendar::TimeZone(site->time_zone).to_instant(*x.time.local);
        } catch (const InputError& e) {
            row.refuse("time", row.text("time"), e.issues().front().expected);
            return;
        }
        const auto same = std::find_if(meter->exchanges.begin(), meter->exchanges.end(),
                                       [&](const auto& e) { return e.at == x.exchange.at; });
        if (same == meter->exchanges.end()) {
            store::add_exchange(run.book, x.meter, x.exchange, run.import);
            ++run.result.added;
        } else if (fields_of(*same) == fields_of(x.exchange)) {
            ++run.result.unchanged;
        } else {
            row.refuse("time", row.text("time"),
                       {phrase("exchange", "one exchange of meter %1 at a time; the book has another"), x.meter});
        }
    });
}

namespace {

struct OutlineRow {
    std::string area;
    store::AreaOutline outline;
    KeptRow kept;
};

/// The size for the eye, and a digest because another outline may measure the same.
std::string text_of(const store::AreaOutline& outline) {
    constexpr std::size_t digest = 16;
    return units::format_fixed(outline.measured.in(units::square_metre), 1) + " m2, SHA-256 " +
           sha256_of(outline.geojson).substr(0, digest);
}

/// Stores an outline, and says so when the size that was typed is another.
void put_outline(ImportRun& run, const OutlineRow& o) {
    const auto area = store::find_area(run.book, o.area);
    if (!area) {
        refuse_unknown(run, o.kept, "area", o.area, area_expected);
        return;
    }
    const double typed = area->size.quantity().in(units::square_metre);
    const double measured = o.outline.measured.in(units::square_metre);
    if (std::abs(measured / typed - 1) > outline_slack) {
        run.note({phrase("exchange", "Area %1: its size was given as %2, its outline measures %3 %4."), o.area,
                  area->size.text(), units::format_shortest(o.outline.measured.in(area->size.unit.unit)),
                  area->size.unit.name});
    }
    const auto stored = store::find_outline(run.book, o.area);
    if (stored && stored->geojson == o.outline.geojson) {
        ++run.result.unchanged;
    } else if (!stored) {
        store::add_outline(run.book, o.area, o.outline, run.import);
        ++run.result.added;
    } else if (run.settle({run.rows.file(), o.kept.row, "outline"}, Sentence(record_form::outline, o.area).english(),
                          text_of(*stored), text_of(o.outline))) {
        store::add_outline(run.book, o.area, o.outline, run.import);
    }
}

}  // namespace

void import_areas(ImportRun& run) {
    ByCode<site::Area> areas(run, "area");
    std::vector<OutlineRow> outlines;
    run.each_row([&](RowReader& row) {
        site::Area area = read_area(row);
        const std::string_view outline = row.text("outline");
        if (!outline.empty()) {
            const auto m2 = row.needed_number("outline_m2");
            if (!row.ok()) return;
            OutlineRow found{area.code, {std::string(outline), *m2 * units::square_metre}, run.keep_row()};
            // Of an area that is known only the outline is news.
            if (!store::find_area(run.book, area.code)) {
                if (area.site.empty()) {
                    row.refuse("area", area.code, phrase("exchange", "an area of the book, or a site for a new one"));
                }
                areas.add(row, std::move(area));
            }
            if (row.ok()) outlines.push_back(std::move(found));
            return;
        }
        areas.add(row, std::move(area));
    });
    std::set<std::size_t> refused;
    for (const auto& r : areas.rows()) {
        if (!store::find_site(run.book, r.record.site)) {
            refused.insert(r.kept.row);
            refuse_unknown(run, r.kept, "site", r.record.site, site_expected);
        } else if (!r.record.meter.empty() && !store::find_meter(run.book, r.record.meter)) {
            refused.insert(r.kept.row);
            refuse_unknown(run, r.kept, "meter", r.record.meter, meter_expected);
        } else {
            put(run, r, record_form::area, store::find_area, store::add_area, store::replace_area);
        }
    }
    for (const OutlineRow& o : outlines) {
        if (!refused.contains(o.kept.row)) put_outline(run, o);
    }
}

void import_stations(ImportRun& run) {
    ByCode<store::WeatherStation> stations(run, "station");
    run.each_row([&](RowReader& row) { stations.add(row, read_station(row)); });
    for (const auto& r : stations.rows()) {
        put(run, r, record_form::weather_station, store::find_weather_station,
            [](store::Book& book, const store::WeatherStation& s, std::int64_t) {
                store::add_weather_station(book, s);
            },
            [](store::Book& book, const store::WeatherStation& s, std::int64_t) {
                store::replace_weather_station(book, s);
            });
    }
}

void import_catches(ImportRun& run) {
    CatchTableReader table(run.columns, run.rows.file(), true);
    // A sheet with a bad row is no whole sheet: its test stays out even when the rest may go in.
    std::set<std::string> spoilt;
    std::size_t told = 0;
    std::map<std::string, std::vector<KeptRow>> sheets;
    run.each_row([&](RowReader& row) {
        table.add(row);
        std::string test(row.text("test"));
        if (row.ok()) {
            sheets[std::move(test)].push_back(run.keep_row());
        } else {
            spoilt.insert(std::move(test));
            ++told;
        }
    });
    // Of a row without all its cells nobody can say which test it belongs to.
    const bool any_test = run.result.rejected > told;
    for (const audit::CatchTest& t : table.take()) {
        const auto& sheet = sheets[t.code];
        if (any_test || spoilt.contains(t.code)) {
            run.note({phrase("exchange", "Catch test %1 stays out: some of its rows were refused."), t.code});
            run.leave_out(sheet, "left out with its test, of which other rows were refused");
            continue;
        }
        if (!store::find_area(run.book, t.area)) {
            refuse_unknown(run, sheet, "area", t.area, area_expected);
            continue;
        }
        const auto stored = store::find_catch_test(run.book, t.code);
        if (!stored) {
            store::add_catch_test(run.book, t, run.import);
            ++run.result.added;
        } else if (fields_of(*stored) == fields_of(t)) {
            ++run.result.unchanged;
        } else {
            // What was measured is not replaced: a second sheet is a second test.
            run.refuse_later(sheet, {{run.rows.file(), sheet.front().row, "test"}, t.code,
                                     phrase("exchange", "a code of its own for this sheet; the book has another sheet of "
                                     "that code, and a field sheet is not overwritten")});
        }
    }
}

void import_bills(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        const meter::Bill bill = read_bill(row);
        if (!row.ok()) return;
        if (!store::find_meter(run.book, bill.meter)) {
            row.refuse("meter", bill.meter, meter_expected);
            return;
        }
        const auto outcome = store::add_bill(run.book, bill, false, run.import);
        switch (outcome) {
            case store::BillOutcome::added: ++run.result.added; return;
            case store::BillOutcome::unchanged: ++run.result.unchanged; return;
            default: break;
        }
        const auto stored = store::bills(run.book, bill.meter);
        const auto old = std::find_if(stored.begin(), stored.end(), [&](const meter::Bill& b) {
            return b.from == bill.from && b.to == bill.to;
        });
        if (run.settle({run.rows.file(), row.row(), ""},
                       Sentence(record_form::bill, bill.meter, calendar::format_date(bill.from),
                                calendar::format_date(bill.to)).english(),
                       old->volume.text(), bill.volume.text(), outcome == store::BillOutcome::superseded)) {
            store::add_bill(run.book, bill, true, run.import);
        }
    });
}

}  // namespace evenfall::exchange

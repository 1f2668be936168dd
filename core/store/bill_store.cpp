// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/bill_store.h"

#include "core/store/database.h"

namespace evenfall::store {

BillOutcome add_bill(Book& book, const meter::Bill& bill, bool correct,
                     std::optional<std::int64_t> import) {
    return in_book(book, [&](SQLite::Database& db) {
        const std::int64_t meter = required_id(book, "meter", bill.meter);
        const std::string unit(bill.volume.unit.name);
        SQLite::Statement find(db, "SELECT revision, volume, unit FROM bill WHERE meter=? AND"
                                   " first_day=? AND end_day=? ORDER BY revision DESC");
        find.bind(1, meter);
        find.bind(2, calendar::format_date(bill.from));
        find.bind(3, calendar::format_date(bill.to));
        int revision = -1;
        bool known_before = false;
        while (find.executeStep()) {
            const bool same = find.getColumn(1).getDouble() == bill.volume.value &&
                              find.getColumn(2).getString() == unit;
            if (same && revision < 0) return BillOutcome::unchanged;
            revision = std::max(revision, find.getColumn(0).getInt());
            known_before = known_before || same;
        }
        if (revision >= 0 && !correct) return known_before ? BillOutcome::superseded : BillOutcome::conflict;
        SQLite::Statement add(db, "INSERT INTO bill (meter, first_day, end_day, revision, volume,"
                                  " unit, import) VALUES (?,?,?,?,?,?,?)");
        add.bind(1, meter);
        add.bind(2, calendar::format_date(bill.from));
        add.bind(3, calendar::format_date(bill.to));
        add.bind(4, revision + 1);
        add.bind(5, bill.volume.value);
        add.bind(6, unit);
        bind_id(add, 7, import);
        add.exec();
        return revision < 0 ? BillOutcome::added : BillOutcome::replaced;
    });
}

std::vector<meter::Bill> bills(const Book& book, const std::string& meter) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(db, "SELECT first_day, end_day, volume, unit FROM bill b WHERE meter=?"
                                   " AND NOT EXISTS (SELECT 1 FROM bill n WHERE n.meter=b.meter AND"
                                   " n.first_day=b.first_day AND n.end_day=b.end_day AND"
                                   " n.revision>b.revision) ORDER BY first_day, end_day");
        rows.bind(1, required_id(book, "meter", meter));
        std::vector<meter::Bill> all;
        while (rows.executeStep()) {
            const auto from = calendar::parse_date(text_in(rows.getColumn(0)));
            const auto to = calendar::parse_date(text_in(rows.getColumn(1)));
            if (!from || !to) throw BookError({phrase("store", "A bill of meter %1 has no days that can be read."), meter});
            all.push_back({meter, *from, *to,
                           {rows.getColumn(2).getDouble(),
                            units::unit_named<units::Volume>(text_in(rows.getColumn(3)))}});
        }
        return all;
    });
}

}  // namespace evenfall::store

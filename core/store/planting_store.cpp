// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/planting_store.h"

#include "core/store/database.h"

namespace evenfall::store {

PlantingOutcome add_planting(Book& book, const weather::Planting& p, bool correct,
                             std::optional<std::int64_t> import) {
    return in_book(book, [&](SQLite::Database& db) {
        const std::int64_t area = required_id(book, "area", p.area);
        const std::string from = calendar::format_date(p.from);
        const std::string to = p.to ? calendar::format_date(*p.to) : std::string();
        SQLite::Statement find(db, "SELECT revision, last_day, key, coefficient FROM planting WHERE"
                                   " area=? AND kind=? AND first_day=? ORDER BY revision DESC");
        find.bind(1, area);
        find.bind(2, static_cast<int>(p.kind));
        find.bind(3, from);
        int revision = -1;
        bool known_before = false;
        while (find.executeStep()) {
            const bool same = text_in(find.getColumn(1)) == to && text_in(find.getColumn(2)) == p.key &&
                              number_in(find.getColumn(3)) == p.coefficient;
            if (same && revision < 0) return PlantingOutcome::unchanged;
            revision = std::max(revision, find.getColumn(0).getInt());
            known_before = known_before || same;
        }
        if (revision >= 0 && !correct) {
            return known_before ? PlantingOutcome::superseded : PlantingOutcome::conflict;
        }
        SQLite::Statement add(db, "INSERT INTO planting (area, kind, first_day, revision, last_day,"
                                  " key, coefficient, import) VALUES (?,?,?,?,?,?,?,?)");
        add.bind(1, area);
        add.bind(2, static_cast<int>(p.kind));
        add.bind(3, from);
        add.bind(4, revision + 1);
        bind_text(add, 5, to);
        bind_text(add, 6, p.key);
        bind_number(add, 7, p.coefficient);
        bind_id(add, 8, import);
        add.exec();
        return revision < 0 ? PlantingOutcome::added : PlantingOutcome::replaced;
    });
}

std::vector<weather::Planting> plantings(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(
            db, "SELECT a.code, p.kind, p.first_day, p.last_day, p.key, p.coefficient FROM planting p"
                " JOIN area a ON a.id=p.area JOIN site s ON s.id=a.site WHERE s.code=? AND NOT EXISTS"
                " (SELECT 1 FROM planting n WHERE n.area=p.area AND n.kind=p.kind AND"
                " n.first_day=p.first_day AND n.revision>p.revision) ORDER BY a.code, p.first_day, p.kind");
        rows.bind(1, site);
        std::vector<weather::Planting> all;
        while (rows.executeStep()) {
            const std::string area = rows.getColumn(0).getString();
            const auto from = calendar::parse_date(text_in(rows.getColumn(2)));
            const std::string last = text_in(rows.getColumn(3));
            const auto to = calendar::parse_date(last);
            if (!from || (!last.empty() && !to)) {
                throw BookError({phrase("store", "A planting of area %1 has no days that can be read."), area});
            }
            all.push_back({area, static_cast<weather::PlantingKind>(rows.getColumn(1).getInt()),
                           *from, to, text_in(rows.getColumn(4)), number_in(rows.getColumn(5))});
        }
        return all;
    });
}

}  // namespace evenfall::store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/outline_store.h"

#include "core/store/database.h"

namespace evenfall::store {

std::optional<AreaOutline> find_outline(const Book& book, const std::string& area) {
    return in_book(book, [&](SQLite::Database& db) -> std::optional<AreaOutline> {
        SQLite::Statement find(db, "SELECT outline, measured_m2 FROM area_outline WHERE area = ?"
                                   " ORDER BY revision DESC LIMIT 1");
        find.bind(1, required_id(book, "area", area));
        if (!find.executeStep()) return std::nullopt;
        return AreaOutline{text_in(find.getColumn(0)),
                           find.getColumn(1).getDouble() * units::square_metre};
    });
}

void add_outline(Book& book, const std::string& area, const AreaOutline& outline,
                 std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO area_outline (area, revision, outline, measured_m2, import)"
                                  " SELECT ?1, coalesce(max(revision) + 1, 0), ?2, ?3, ?4"
                                  " FROM area_outline WHERE area = ?1");
        add.bind(1, required_id(book, "area", area));
        add.bind(2, outline.geojson);
        add.bind(3, outline.measured.in(units::square_metre));
        bind_id(add, 4, import);
        add.exec();
    });
}

}  // namespace evenfall::store

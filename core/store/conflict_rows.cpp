// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/conflict_rows.h"

#include "core/store/book_error.h"
#include "core/store/database.h"

namespace evenfall::store {
namespace {

constexpr const char* schema =
    "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -16384;"
    "CREATE TABLE conflict (id INTEGER PRIMARY KEY, line INTEGER, file TEXT, row INTEGER, col TEXT, record TEXT,"
    " in_book TEXT, in_file TEXT, choice INTEGER, used INTEGER DEFAULT 0, seen_book TEXT, seen_file TEXT,"
    " UNIQUE (record, in_file)) STRICT;"
    "CREATE UNIQUE INDEX chosen ON conflict (record) WHERE choice = 2;"
    "BEGIN";
static_assert(static_cast<int>(Stands::in_file) == 2);

constexpr const char* row_columns = "file, row, col, record, in_book, in_file, choice";

ConflictRow row_in(SQLite::Statement& s, int at) {
    return {s.getColumn(at).getString(),     static_cast<std::size_t>(s.getColumn(at + 1).getInt64()),
            s.getColumn(at + 2).getString(), s.getColumn(at + 3).getString(),
            s.getColumn(at + 4).getString(), s.getColumn(at + 5).getString(),
            static_cast<Stands>(s.getColumn(at + 6).getInt())};
}

void bind_view(SQLite::Statement& s, int at, std::string_view text) { s.bind(at, std::string(text)); }

template <class Work>
auto guarded(Work&& work) {
    try {
        return work();
    } catch (const SQLite::Exception& e) {
        throw BookError({phrase("store", "The list of conflicts could not be kept: %1."), sqlite_words(e.what())});
    }
}

}  // namespace

struct ConflictRows::Impl {
    // Without a name SQLite makes a file of its own that nobody else sees, and deletes it at the end.
    SQLite::Database db{"", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    bool ready = (db.exec(schema), true);
    SQLite::Statement insert{db, std::string("INSERT OR IGNORE INTO conflict (line, ") + row_columns +
                                     ") VALUES (?,?,?,?,?,?,?,?)"};
    SQLite::Statement find{db, "SELECT id, in_book, choice, line FROM conflict WHERE record = ? AND in_file = ?"};
    SQLite::Statement chosen{db, "SELECT in_book, in_file, line FROM conflict WHERE record = ? AND choice = 2"};
    SQLite::Statement used{db, "UPDATE conflict SET used = 1 WHERE id = ?"};
    SQLite::Statement seen{db, "UPDATE conflict SET seen_book = ?2, seen_file = ?3 WHERE record = ?1 AND used = 0"};
    std::int64_t count = 0;
};

ConflictRows::ConflictRows() : impl_(guarded([] { return std::make_unique<Impl>(); })) {}
ConflictRows::~ConflictRows() = default;
ConflictRows::ConflictRows(ConflictRows&&) noexcept = default;
ConflictRows& ConflictRows::operator=(ConflictRows&&) noexcept = default;

std::optional<ConflictRows::Clash> ConflictRows::add(const ConflictRow& row, std::size_t line) {
    return guarded([&]() -> std::optional<Clash> {
        SQLite::Statement& s = impl_->insert;
        s.reset();
        s.bind(1, static_cast<std::int64_t>(line));
        s.bind(2, row.file);
        s.bind(3, static_cast<std::int64_t>(row.row));
        s.bind(4, row.column);
        s.bind(5, row.record);
        s.bind(6, row.in_book);
        s.bind(7, row.in_file);
        s.bind(8, static_cast<int>(row.choice));
        if (s.exec() == 1) {
            ++impl_->count;
            return std::nullopt;
        }
        for (SQLite::Statement* other : {&impl_->find, &impl_->chosen}) {
            const bool same_value = other == &impl_->find;
            other->reset();
            bind_view(*other, 1, row.record);
            if (same_value) bind_view(*other, 2, row.in_file);
            if (other->executeStep()) {
                return Clash{static_cast<std::size_t>(other->getColumn(same_value ? 3 : 2).getInt64()), same_value};
            }
        }
        throw BookError(phrase("store", "The list of conflicts lost a row."));
    });
}

std::int64_t ConflictRows::count() const { return impl_->count; }

std::vector<ConflictRow> ConflictRows::page(std::int64_t first, std::size_t count) const {
    return guarded([&] {
        // Rows are never taken out, so their ids count from 1 without a gap.
        SQLite::Statement rows(impl_->db, std::string("SELECT ") + row_columns +
                                              " FROM conflict WHERE id > ? ORDER BY id LIMIT ?");
        rows.bind(1, first);
        rows.bind(2, static_cast<std::int64_t>(count));
        std::vector<ConflictRow> all;
        while (rows.executeStep()) all.push_back(row_in(rows, 0));
        return all;
    });
}

void ConflictRows::for_each(const std::function<void(const ConflictRow&)>& take) const {
    guarded([&] {
        SQLite::Statement rows(impl_->db, std::string("SELECT ") + row_columns + " FROM conflict ORDER BY id");
        while (rows.executeStep()) take(row_in(rows, 0));
    });
}

std::vector<std::pair<std::int64_t, std::int64_t>> ConflictRows::contested() const {
    return guarded([&] {
        SQLite::Statement rows(impl_->db,
                               "SELECT c.id - 1, g.first - 1 FROM (SELECT record, min(id) AS first FROM conflict"
                               " GROUP BY record HAVING count(*) > 1) g JOIN conflict c ON c.record = g.record"
                               " ORDER BY c.id");
        std::vector<std::pair<std::int64_t, std::int64_t>> all;
        while (rows.executeStep()) all.emplace_back(rows.getColumn(0).getInt64(), rows.getColumn(1).getInt64());
        return all;
    });
}

std::optional<ConflictRows::Found> ConflictRows::find(std::string_view record, std::string_view in_file) const {
    return guarded([&]() -> std::optional<Found> {
        SQLite::Statement& s = impl_->find;
        s.reset();
        bind_view(s, 1, record);
        bind_view(s, 2, in_file);
        if (!s.executeStep()) return std::nullopt;
        return Found{s.getColumn(0).getInt64(), s.getColumn(1).getString(),
                     static_cast<Stands>(s.getColumn(2).getInt())};
    });
}

std::optional<ConflictRows::Chosen> ConflictRows::chosen(std::string_view record) const {
    return guarded([&]() -> std::optional<Chosen> {
        SQLite::Statement& s = impl_->chosen;
        s.reset();
        bind_view(s, 1, record);
        if (!s.executeStep()) return std::nullopt;
        return Chosen{s.getColumn(0).getString(), s.getColumn(1).getString()};
    });
}

void ConflictRows::mark_used(std::int64_t id) {
    guarded([&] {
        SQLite::Statement& s = impl_->used;
        s.reset();
        s.bind(1, id);
        s.exec();
    });
}

void ConflictRows::mark_seen(std::string_view record, std::string_view in_book, std::string_view in_file) {
    guarded([&] {
        SQLite::Statement& s = impl_->seen;
        s.reset();
        bind_view(s, 1, record);
        bind_view(s, 2, in_book);
        bind_view(s, 3, in_file);
        s.exec();
    });
}

void ConflictRows::for_each_unused(const std::function<void(const Unused&)>& take) const {
    guarded([&] {
        SQLite::Statement rows(impl_->db, std::string("SELECT line, seen_book, seen_file, ") + row_columns +
                                              " FROM conflict WHERE choice <> 0 AND used = 0 ORDER BY id");
        while (rows.executeStep()) {
            Unused unused{static_cast<std::size_t>(rows.getColumn(0).getInt64()), row_in(rows, 3), std::nullopt};
            if (!rows.getColumn(2).isNull()) {
                unused.seen.emplace(rows.getColumn(1).getString(), rows.getColumn(2).getString());
            }
            take(unused);
        }
    });
}

}  // namespace evenfall::store

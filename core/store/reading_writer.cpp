// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reading_writer.h"

#include "core/store/database.h"

#include <sqlite3.h>

namespace evenfall::store {

// The plain C interface: one bind and step less per value than the wrapper does, and this loop
// runs once for each row of a season.
struct ReadingWriter::Impl {
    explicit Impl(Book& b) : book(b), handle(b.database().getHandle()) {}
    Impl(const Impl&) = delete;
    Impl& operator=(const Impl&) = delete;
    ~Impl() {
        sqlite3_finalize(insert);
        sqlite3_finalize(latest);
    }

    sqlite3_stmt* prepare(const char* sql) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v3(handle, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr) !=
            SQLITE_OK) {
            fail();
        }
        return statement;
    }

    [[noreturn]] void fail() const {
        throw BookError({phrase("store", "The book %1 could not be written: %2. Nothing of this import was kept."),
                         book.file().string(), sqlite_words(sqlite3_errmsg(handle))});
    }

    /// True when a row was added, false when the key is taken.
    bool try_insert(std::int64_t meter, const meter::Reading& r, int revision) {
        sqlite3_bind_int64(insert, 1, meter);
        sqlite3_bind_int64(insert, 2, r.at.time_since_epoch().count());
        sqlite3_bind_int64(insert, 3, r.span.count());
        sqlite3_bind_int(insert, 4, revision);
        sqlite3_bind_double(insert, 5, r.value);
        sqlite3_bind_int(insert, 6, static_cast<int>(r.kind));
        const int result = sqlite3_step(insert);
        const int reset = sqlite3_reset(insert);
        if (result == SQLITE_DONE) return true;
        if (reset == SQLITE_CONSTRAINT_PRIMARYKEY ||
            sqlite3_extended_errcode(handle) == SQLITE_CONSTRAINT_PRIMARYKEY) {
            return false;
        }
        fail();
    }

    /// Latest revision of the reading's key into `stored`; says whether an earlier one equals it.
    int read_latest(std::int64_t meter, const meter::Reading& r, bool& known_before) {
        sqlite3_bind_int64(latest, 1, meter);
        sqlite3_bind_int64(latest, 2, r.at.time_since_epoch().count());
        sqlite3_bind_int64(latest, 3, r.span.count());
        int revision = -1;
        known_before = false;
        int result = SQLITE_ROW;
        while ((result = sqlite3_step(latest)) == SQLITE_ROW) {
            const meter::Reading found{r.at, r.span, sqlite3_column_double(latest, 1),
                                       static_cast<meter::ReadingKind>(sqlite3_column_int(latest, 2))};
            if (revision < 0) {
                revision = sqlite3_column_int(latest, 0);
                stored = found;
            }
            known_before = known_before || found == r;
        }
        sqlite3_reset(latest);
        if (result != SQLITE_DONE) fail();
        return revision;
    }

    Book& book;
    sqlite3* handle;
    sqlite3_stmt* insert = nullptr;
    sqlite3_stmt* latest = nullptr;
    meter::Reading stored{};
};

ReadingWriter::ReadingWriter(Book& book, std::optional<std::int64_t> import)
    : impl_(std::make_unique<Impl>(book)) {
    impl_->insert = impl_->prepare(
        "INSERT INTO reading (meter, at, span, revision, value, kind, import)"
        " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)");
    impl_->latest = impl_->prepare(
        "SELECT revision, value, kind FROM reading WHERE meter = ?1 AND at = ?2 AND span = ?3"
        " ORDER BY revision DESC");
    if (import) sqlite3_bind_int64(impl_->insert, 7, *import);
}

ReadingWriter::~ReadingWriter() = default;

ReadingWriter::Outcome ReadingWriter::add(std::int64_t meter, const meter::Reading& reading,
                                          bool correct) {
    if (impl_->try_insert(meter, reading, 0)) return Outcome::added;
    bool known_before = false;
    const int revision = impl_->read_latest(meter, reading, known_before);
    if (impl_->stored == reading) return Outcome::unchanged;
    if (!correct) return known_before ? Outcome::superseded : Outcome::conflict;
    if (!impl_->try_insert(meter, reading, revision + 1)) impl_->fail();
    return Outcome::replaced;
}

const meter::Reading& ReadingWriter::in_book() const { return impl_->stored; }

}  // namespace evenfall::store

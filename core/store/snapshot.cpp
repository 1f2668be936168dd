// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/snapshot.h"

#include "core/store/database.h"

namespace evenfall::store {

Snapshot::Snapshot(const Book& book) : book_(book) {
    in_book(book, [](SQLite::Database& db) { db.exec("BEGIN DEFERRED"); });
}

Snapshot::~Snapshot() {
    // Nothing was written, so there is nothing to lose.
    static_cast<void>(book_.database().tryExec("COMMIT"));
}

}  // namespace evenfall::store

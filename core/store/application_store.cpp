// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/application_store.h"

#include "core/store/database.h"
#include "core/store/journal_store.h"

namespace evenfall::store {
namespace {

using review::Application;
using review::StatusChange;

/// @param entered  for the journal; empty: when the change was made
void insert_status(Book& book, std::int64_t id, const std::string& code, const StatusChange& change, const std::string& entered) {
    const std::string at = calendar::format_instant(change.at);
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db,
            "INSERT INTO application_status (application, number, at, who, status, note, amount) VALUES"
            " (?1, (SELECT coalesce(max(number), 0) + 1 FROM application_status WHERE application = ?1), ?2, ?3, ?4, ?5, ?6)");
        add.bind(1, id);
        add.bind(2, at);
        add.bind(3, change.who);
        add.bind(4, static_cast<int>(change.status));
        bind_text(add, 5, change.note);
        bind_number(add, 6, change.amount);
        add.exec();
    });
    const bool later = !entered.empty() && entered != at;
    std::string what = "Application " + code + ": " + std::string(review::text_of(change.status).english());
    if (later) what += " on " + at.substr(0, 10);
    what += ".";
    if (!change.note.empty()) what += " " + change.note;
    add_journal_entry(book, {later ? entered : at, change.who, what, "application " + code, ""});
}

/// False when it belongs to the application already.
bool insert_filing(Book& book, std::int64_t id, const review::ApplicationFiling& filing) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement find(db, "SELECT id FROM filing WHERE sha256 = ?");
        find.bind(1, filing.sha256);
        if (!find.executeStep()) throw BookError({phrase("store", "There is no filing %1 in the book."), filing.sha256});
        SQLite::Statement add(db, "INSERT OR IGNORE INTO application_filing (application, filing, role) VALUES (?,?,?)");
        add.bind(1, id);
        add.bind(2, find.getColumn(0).getInt64());
        add.bind(3, filing.role);
        return add.exec() > 0;
    });
}

Application read_application(SQLite::Database& db, SQLite::Statement& row) {
    Application a;
    const std::int64_t id = row.getColumn(0).getInt64();
    a.code = text_in(row.getColumn(1));
    a.applicant = text_in(row.getColumn(2));
    a.site = text_in(row.getColumn(3));
    a.program = text_in(row.getColumn(4));
    a.currency = text_in(row.getColumn(5));
    SQLite::Statement filing(db,
        "SELECT f.sha256, l.role FROM application_filing l JOIN filing f ON f.id = l.filing WHERE l.application = ? ORDER BY f.id");
    filing.bind(1, id);
    while (filing.executeStep()) a.filings.push_back({text_in(filing.getColumn(0)), text_in(filing.getColumn(1))});
    SQLite::Statement status(db,
        "SELECT at, who, status, note, amount FROM application_status WHERE application = ? ORDER BY number");
    status.bind(1, id);
    while (status.executeStep()) {
        a.history.push_back({calendar::parse_instant(text_in(status.getColumn(0))).value_or(calendar::Instant{}),
                             text_in(status.getColumn(1)), static_cast<review::Status>(status.getColumn(2).getInt()),
                             text_in(status.getColumn(3)), number_in(status.getColumn(4))});
    }
    return a;
}

constexpr const char* application_select = "SELECT id, code, applicant, site, program, currency FROM application";

}  // namespace

void add_application(Book& book, const Application& a, const std::string& entered) {
    if (a.history.empty()) throw BookError({phrase("store", "The application %1 has no status."), a.code});
    const std::int64_t id = in_book(book, [&](SQLite::Database& db) {
        if (id_of(db, "application", a.code)) {
            throw BookError({phrase("store", "There is an application %1 in the book already."), a.code});
        }
        SQLite::Statement add(db, "INSERT INTO application (code, applicant, site, program, currency) VALUES (?,?,?,?,?)");
        add.bind(1, a.code);
        add.bind(2, a.applicant);
        add.bind(3, a.site);
        add.bind(4, a.program);
        add.bind(5, a.currency);
        add.exec();
        return db.getLastInsertRowid();
    });
    for (const review::ApplicationFiling& f : a.filings) insert_filing(book, id, f);
    for (const StatusChange& change : a.history) insert_status(book, id, a.code, change, entered);
}

std::optional<Application> find_application(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement row(db, query(application_select, " WHERE code = ?"));
        row.bind(1, code);
        std::optional<Application> found;
        if (row.executeStep()) found = read_application(db, row);
        return found;
    });
}

std::vector<Application> applications(const Book& book, const std::string& program) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<Application> all;
        SQLite::Statement row(db, query(application_select, " WHERE ?1 = '' OR program = ?1 ORDER BY code"));
        row.bind(1, program);
        while (row.executeStep()) all.push_back(read_application(db, row));
        return all;
    });
}

void add_status(Book& book, const std::string& application, const StatusChange& change) {
    const auto known = find_application(book, application);
    if (!known) throw BookError({phrase("store", "There is no application %1 in the book."), application});
    if (!review::may_follow(known->status(), change.status)) {
        throw BookError({phrase("store", "Application %1 is %2; it cannot become %3 from there."), application,
                         review::text_of(known->status()), review::text_of(change.status)});
    }
    insert_status(book, required_id(book, "application", application), application, change, "");
}

void add_application_filing(Book& book, const std::string& application, const review::ApplicationFiling& filing,
                            const std::string& at, const std::string& who) {
    if (!insert_filing(book, required_id(book, "application", application), filing)) return;
    add_journal_entry(book, {at, who, "Application " + application + " got the filing " + filing.sha256 + ".",
                             "application " + application, ""});
}

void remove_application_filing(Book& book, const std::string& application, const std::string& sha256,
                               const std::string& at, const std::string& who) {
    const std::int64_t id = required_id(book, "application", application);
    const bool removed = in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement out(db, "DELETE FROM application_filing WHERE application = ? AND filing ="
                                  " (SELECT id FROM filing WHERE sha256 = ?)");
        out.bind(1, id);
        out.bind(2, sha256);
        return out.exec() > 0;
    });
    if (!removed) throw BookError({phrase("store", "The filing %1 is no filing of application %2."), sha256, application});
    add_journal_entry(book, {at, who, "The filing " + sha256 + " was taken out of application " + application + ".",
                             "application " + application, ""});
}

std::vector<std::string> applications_with_filing(const Book& book, const std::string& sha256) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<std::string> codes;
        SQLite::Statement row(db, "SELECT a.code FROM application_filing l JOIN application a ON a.id = l.application"
                                  " JOIN filing f ON f.id = l.filing WHERE f.sha256 = ? ORDER BY a.code");
        row.bind(1, sha256);
        while (row.executeStep()) codes.push_back(text_in(row.getColumn(0)));
        return codes;
    });
}

}  // namespace evenfall::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

namespace evenfall::tests {

inline exchange::ImportOptions import_options(exchange::ConflictChoice choice = exchange::ConflictChoice::refuse) {
    exchange::ImportOptions o;
    o.at = std::string("2026-05-01T12:00:00Z");
    o.who = std::string("tester");
    o.conflicts = choice;
    return o;
}

/// What the tests of imports share: a folder, an empty book in it, and tables that go in.
struct ImportDesk {
    ImportDesk() : book(store::Book::create(scratch / "b.evenfall")) {}
    /// With these tables in the book, each of which must go in.
    explicit ImportDesk(const std::vector<std::string>& texts) : ImportDesk() {
        for (const std::string& text : texts) exchange::require_accepted(std::vector{put(text)});
    }

    exchange::ImportResult put_file(const std::filesystem::path& file,
                                    const exchange::ImportOptions& o = import_options()) {
        const std::vector<std::filesystem::path> files{file};
        return exchange::import_files(book, files, o).front();
    }
    exchange::ImportResult put(const std::string& text, const exchange::ImportOptions& o = import_options(),
                               const std::string& name = "t.csv") {
        return put_file(scratch.write(name, text), o);
    }
    exchange::ImportResult put(const std::string& text, exchange::ConflictChoice choice) {
        return put(text, import_options(choice));
    }
    /// What is said against a table; the book must keep its bytes then.
    std::string refusal(const std::string& text, const exchange::ImportOptions& o = import_options()) {
        const std::string before = bytes();
        std::string message = "accepted";
        try {
            const std::vector results{put(text, o)};
            CHECK_FALSE(results[0].stored);
            exchange::require_accepted(results);
        } catch (const InputError& e) {
            message = e.what();
        }
        const bool same = bytes() == before;  // apart, so that a failure does not print the book
        CHECK(same);
        return message;
    }
    /// The book's bytes once everything of it is in its file.
    std::string bytes() {
        const std::filesystem::path file = book.file();
        { const store::Book closed = std::move(book); }
        std::string all = bytes_of(file);
        book = store::Book::open(file, store::Access::read_write);
        return all;
    }

    Scratch scratch;
    store::Book book;
};

}  // namespace evenfall::tests

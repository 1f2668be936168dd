// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book_error.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace evenfall::store {

enum class Access { read_only, read_write };

/// The record book: one SQLite file. This class opens, makes and migrates it; what stands inside
/// is read and written by the functions of site_store.h, meter_store.h, weather_store.h,
/// catch_test_store.h and journal_store.h, one header per noun.
///
/// A file is used only when its application id is ours, its version is known and its schema is,
/// word for word, the one our migrations make; nothing in a foreign file is run (triggers, views
/// and extensions are off, see harden in book.cpp).
///
/// Not thread-safe: one Book per thread. Errors are BookError with a sentence for the user.
/// Tests: tests/store/book_test.cpp
class Book {
  public:
    /// Makes an empty book. @throws BookError when the file exists or cannot be made
    static Book create(const std::filesystem::path& file);

    /// Opens a book; one from an earlier version is brought up to date when opened for writing.
    /// @throws BookError when it is missing, foreign, newer, damaged or locked
    static Book open(const std::filesystem::path& file, Access access);

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    const std::filesystem::path& file() const { return file_; }
    Access access() const { return access_; }
    /// Highest migration applied.
    int version() const;

    /// Problems found by the integrity and foreign-key checks; empty when the book is sound.
    std::vector<Sentence> integrity_problems() const;

    /// For the other files of core/store only.
    SQLite::Database& database() const { return *database_; }

  private:
    Book(std::filesystem::path file, Access access, std::unique_ptr<SQLite::Database> database);
    std::filesystem::path file_;
    Access access_;
    std::unique_ptr<SQLite::Database> database_;
};

/// Everything written between construction and commit() is kept, or nothing is. Takes the write
/// lock at once, so that two writers never find out late.
/// @throws BookError when another program holds the lock
class Transaction {
  public:
    explicit Transaction(Book& book);
    ~Transaction();  ///< rolls back unless committed; never throws
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    void commit();

  private:
    Book& book_;
    bool open_ = true;
};

}  // namespace evenfall::store

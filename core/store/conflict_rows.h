// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// The conflicts of an import and what was chosen for each, by the million. They lie in a database
/// of their own, which is no book, stays beside the memory and is gone with the object.
/// Tests: tests/exchange/conflict_table_test.cpp
namespace evenfall::store {

/// Which of two values stands.
enum class Stands : std::uint8_t { undecided, in_book, in_file };

struct ConflictRow {
    std::string file;      ///< where the value was found: as the user named it
    std::size_t row = 0;
    std::string column;
    std::string record;    ///< "reading of M-1 at 2024-06-30T13:00:00Z"
    std::string in_book;
    std::string in_file;
    Stands choice = Stands::undecided;
};

/// Each pair of a record and a value in a file once; of one record at most one value is to stand.
class ConflictRows {
  public:
    /// @throws BookError here and below when there is no room for it
    ConflictRows();
    ~ConflictRows();
    ConflictRows(ConflictRows&&) noexcept;
    ConflictRows& operator=(ConflictRows&&) noexcept;

    struct Clash {
        std::size_t line;  ///< of the row that is there already
        bool same_value;   ///< false: it is another value of the record, and both say in_file
    };
    /// @param line  where the row stands in a table, for messages
    /// @return what kept the row out; nothing when it went in
    std::optional<Clash> add(const ConflictRow& row, std::size_t line = 0);
    std::int64_t count() const;
    /// Up to `count` rows in the order in which they were added, from the one at `first` (from 0) on.
    std::vector<ConflictRow> page(std::int64_t first, std::size_t count) const;
    void for_each(const std::function<void(const ConflictRow&)>& take) const;
    /// Places (from 0) of rows whose record has more than one, with the place of the record's first.
    std::vector<std::pair<std::int64_t, std::int64_t>> contested() const;

    struct Found {
        std::int64_t id;
        std::string in_book;
        Stands choice;
    };
    std::optional<Found> find(std::string_view record, std::string_view in_file) const;
    /// The value that was chosen to stand in place of the one that the book has of a record.
    struct Chosen {
        std::string in_book;
        std::string in_file;
    };
    std::optional<Chosen> chosen(std::string_view record) const;

    /// Keeps in mind that the row's choice was applied.
    void mark_used(std::int64_t id);
    /// Keeps in mind how a record was found that the list has with other values.
    void mark_seen(std::string_view record, std::string_view in_book, std::string_view in_file);
    struct Unused {
        std::size_t line;
        ConflictRow row;
        std::optional<std::pair<std::string, std::string>> seen;  ///< in the book, in the file
    };
    /// Choices that were not applied, in the order in which they were added.
    void for_each_unused(const std::function<void(const Unused&)>& take) const;

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace evenfall::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/store/conflict_rows.h"

#include <filesystem>
#include <optional>
#include <string>

/// What was chosen about the conflicts of an import, now in a table or before in the journal; for
/// the importers of core/exchange.
namespace evenfall::exchange {

/// A table of choices while an import is running.
class Choices {
  public:
    /// @throws InputError as read_conflicts
    explicit Choices(const std::filesystem::path& table);

    /// What the table says of a conflict; undecided when it does not name it, leaves it open, or was
    /// filled in for another value of the book. A value that the table itself put in the book, by
    /// another of its rows about the record, is no other value.
    store::Stands of(const std::string& record, const std::string& in_book, const std::string& in_file);
    /// What the book had of a record before the table put `in_book` there; nothing where it did not.
    std::optional<std::string> before(const std::string& record, const std::string& in_book) const;

    /// Every choice must have found its conflict, unless the journal says that it was applied before.
    /// @throws InputError with each choice (the first 200) that was made on another value or names a
    ///   record that is in no conflict
    void require_used(const store::Book& book) const;

  private:
    std::string table_;
    store::ConflictRows rows_;
};

/// What the journal says of a value that is now found in a file while the book has another one.
enum class Before {
    nothing,
    set_aside,  ///< it was in a file before, and the book's very value was chosen to stand
    replaced    ///< the book had it, and another value was chosen in its place
};
Before settled_before(const store::Book& book, const std::string& record, const std::string& in_book,
                      const std::string& in_file);

/// The journal's words for what was chosen: JSON of both values and of which of them stands.
std::string choice_detail(const std::string& in_book, const std::string& in_file, const std::string& file,
                          std::size_t row, store::Stands stands, bool one_by_one);

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/conflict_rows.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <unordered_map>
#include <vector>

/// The conflicts that an import listed, and what is chosen for each: the texts lie beside the
/// memory, a choice is one byte. Tests: tests/app/desktop_conflicts_test.cpp
namespace evenfall::desktop {

class ConflictChoices {
  public:
    /// Takes over what the table of an import says. @throws InputError, store::BookError
    explicit ConflictChoices(const std::filesystem::path& table);

    std::int64_t count() const { return rows_->count(); }
    std::int64_t chosen(store::Stands stands) const { return chosen_[static_cast<std::size_t>(stands)]; }
    store::Stands at(std::int64_t row) const { return stands_[static_cast<std::size_t>(row)]; }
    const store::ConflictRows& rows() const { return *rows_; }

    /// Where several values are in question for a record, at most one of them can stand: choosing one
    /// sets the others to the book's.
    void set(std::int64_t row, store::Stands stands);
    /// Every row. Of values in question for one record none is taken for all: those rows stay as they
    /// are. @return how many
    std::int64_t set_all(store::Stands stands);
    /// Whether the row's record has other values in question.
    bool contested(std::int64_t row) const { return first_.contains(row); }
    /// Takes over what was chosen before for the same record and the same two values.
    void take_over(const ConflictChoices& before);
    /// As a table for an import. @throws InputError
    void write(const std::filesystem::path& table) const;

  private:
    void put(std::int64_t row, store::Stands stands);

    std::shared_ptr<const store::ConflictRows> rows_;  ///< shared by copies: nobody changes them
    std::vector<store::Stands> stands_;
    std::vector<std::int64_t> chosen_;
    std::unordered_map<std::int64_t, std::int64_t> first_;                ///< contested row to its record's first
    std::unordered_map<std::int64_t, std::vector<std::int64_t>> groups_;  ///< first row to all of the record
};

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/conflict_choices.h"

#include "core/exchange/conflict_table.h"

namespace evenfall::desktop {

using store::Stands;

ConflictChoices::ConflictChoices(const std::filesystem::path& table)
    : rows_(std::make_shared<const store::ConflictRows>(exchange::read_conflicts(table))), chosen_(3, 0) {
    stands_.reserve(static_cast<std::size_t>(rows_->count()));
    rows_->for_each([this](const store::ConflictRow& row) {
        stands_.push_back(row.choice);
        ++chosen_[static_cast<std::size_t>(row.choice)];
    });
    for (const auto& [row, first] : rows_->contested()) {
        first_.emplace(row, first);
        groups_[first].push_back(row);
    }
}

void ConflictChoices::put(std::int64_t row, Stands stands) {
    Stands& now = stands_[static_cast<std::size_t>(row)];
    --chosen_[static_cast<std::size_t>(now)];
    ++chosen_[static_cast<std::size_t>(stands)];
    now = stands;
}

void ConflictChoices::set(std::int64_t row, Stands stands) {
    if (stands == Stands::in_file && contested(row)) {
        for (const std::int64_t other : groups_.at(first_.at(row))) put(other, Stands::in_book);
    }
    put(row, stands);
}

std::int64_t ConflictChoices::set_all(Stands stands) {
    std::int64_t left = 0;
    for (std::int64_t row = 0; row < count(); ++row) {
        if (stands == Stands::in_file && contested(row)) ++left;
        else put(row, stands);
    }
    return left;
}

void ConflictChoices::take_over(const ConflictChoices& before) {
    std::int64_t at = 0;
    rows_->for_each([&](const store::ConflictRow& row) {
        const auto found = before.rows_->find(row.record, row.in_file);
        if (found && found->in_book == row.in_book) {
            const Stands then = before.at(found->id - 1);
            if (then != Stands::undecided) set(at, then);
        }
        ++at;
    });
}

void ConflictChoices::write(const std::filesystem::path& table) const {
    exchange::write_conflicts(table, *rows_, [this](std::int64_t row) { return at(row); });
}

}  // namespace evenfall::desktop

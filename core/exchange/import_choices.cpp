// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_choices.h"

#include "core/exchange/conflict_table.h"
#include "core/exchange/conflict_words.h"
#include "core/exchange/row_reader.h"
#include "core/store/journal_store.h"

#include <nlohmann/json.hpp>

namespace evenfall::exchange {
namespace {

using store::Stands;

constexpr const char* book_stands = "in_book";
constexpr const char* file_stands = "in_file";

/// A choice as the journal has it.
struct Settled {
    std::string in_book;
    std::string in_file;
    bool file;  ///< the file's value was chosen to stand
};

std::vector<Settled> settled(const store::Book& book, const std::string& record) {
    std::vector<Settled> all;
    for (const auto& entry : store::journal_of(book, record)) {
        const auto detail = nlohmann::json::parse(entry.detail, nullptr, false);
        if (!detail.is_object()) continue;
        const auto text = [&](const char* name) {
            const auto found = detail.find(name);
            return found != detail.end() && found->is_string() ? found->get<std::string>() : std::string();
        };
        const std::string stands = text("stands");
        if (stands != book_stands && stands != file_stands) continue;
        all.push_back({text("in_book"), text("in_file"), stands == file_stands});
    }
    return all;
}

Issue issue_of(const std::string& table, const store::ConflictRows::Unused& unused) {
    const store::ConflictRow& row = unused.row;
    constexpr std::size_t longest = 300;
    const Sentence record = printable_sentence(record_words(row.record), longest);
    const auto shown = [&](const std::string& value) { return printable_sentence(value_words(row.record, value), longest); };
    if (!unused.seen) {
        return {{table, unused.line, "record"}, record_words(row.record),
                phrase("exchange", "a record for which these files have another value than the book")};
    }
    const auto& [in_book, in_file] = *unused.seen;
    if (in_file != row.in_file) {
        return {{table, unused.line, "in_file"}, value_words(row.record, row.in_file),
                {phrase("exchange", "\"%1\", which the file now has for the %2; a choice holds for the values it "
                                    "was made on"), shown(in_file), record}};
    }
    return {{table, unused.line, "in_book"}, value_words(row.record, row.in_book),
            {phrase("exchange", "\"%1\", which the book now has for the %2; a choice holds for the values it "
                                "was made on"), shown(in_book), record}};
}

}  // namespace

Choices::Choices(const std::filesystem::path& table) : table_(table.string()), rows_(read_conflicts(table)) {}

Stands Choices::of(const std::string& record, const std::string& in_book, const std::string& in_file) {
    const auto found = rows_.find(record, in_file);
    if (!found || (found->in_book != in_book && !before(record, in_book))) {
        rows_.mark_seen(record, in_book, in_file);
        return Stands::undecided;
    }
    if (found->choice != Stands::undecided) rows_.mark_used(found->id);
    return found->choice;
}

std::optional<std::string> Choices::before(const std::string& record, const std::string& in_book) const {
    const auto chosen = rows_.chosen(record);
    return chosen && chosen->in_file == in_book ? std::optional(chosen->in_book) : std::nullopt;
}

void Choices::require_used(const store::Book& book) const {
    IssueLog log;
    rows_.for_each_unused([&](const store::ConflictRows::Unused& unused) {
        // A record that the table names with another value of the file is a conflict of its own.
        if (!unused.seen || unused.seen->second != unused.row.in_file) {
            for (const Settled& s : settled(book, unused.row.record)) {
                const bool file = unused.row.choice == Stands::in_file;
                if (s.in_book == unused.row.in_book && s.in_file == unused.row.in_file && s.file == file) return;
            }
        }
        log.add(issue_of(table_, unused));
    });
    if (log.count > 0) throw InputError(std::move(log.kept));
}

Before settled_before(const store::Book& book, const std::string& record, const std::string& in_book,
                      const std::string& in_file) {
    Before before = Before::nothing;
    for (const Settled& s : settled(book, record)) {
        if (s.file && s.in_book == in_file) return Before::replaced;
        if (!s.file && s.in_book == in_book && s.in_file == in_file) before = Before::set_aside;
    }
    return before;
}

std::string choice_detail(const std::string& in_book, const std::string& in_file, const std::string& file,
                          std::size_t row, Stands stands, bool one_by_one) {
    const nlohmann::json detail{{"in_book", in_book},
                                {"in_file", in_file},
                                {"file", file},
                                {"row", row},
                                {"stands", stands == Stands::in_file ? file_stands : book_stands},
                                {"chosen", one_by_one ? "for this record" : "for all"}};
    return detail.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace evenfall::exchange

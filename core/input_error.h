// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <cstddef>
#include <stdexcept>
#include <string>
#include <vector>

namespace evenfall {

/// Where in what the user gave us something is wrong. Rows and columns count from 1;
/// row 1 is the header line of a table. Zero or empty means "not known or not fitting".
struct Place {
    std::string file;    ///< as the user named it
    std::size_t row = 0;
    std::string column;  ///< header text, or a JSON path such as heads[3].arc

    /// "readings.csv, row 41007, column register"; empty when nothing is known.
    Sentence sentence() const;
    std::string text() const { return sentence().english(); }
    bool operator==(const Place&) const = default;
};

/// One thing wrong with the input, written for the person who typed it.
struct Issue {
    Place place;
    Sentence found;     ///< the offending text as it stands in the input, shortened if long
    Sentence expected;  ///< what would have been right

    /// "readings.csv, row 7, column register: found "12x", expected a number".
    Sentence sentence() const;
    std::string text() const { return sentence().english(); }
    bool operator==(const Issue&) const = default;
};

/// Input that cannot be used. Carries every issue found, not just the first.
/// Thrown before anything is stored; the command line turns it into exit status 3.
class InputError : public std::runtime_error {
  public:
    explicit InputError(Issue issue);
    explicit InputError(std::vector<Issue> issues);
    /// Input without a place, such as a value on the command line or a record from the book.
    InputError(Sentence found, Sentence expected);

    const std::vector<Issue>& issues() const noexcept { return issues_; }

  private:
    std::vector<Issue> issues_;
};

/// Makes text from a stranger fit for one line of a message: control characters and bytes that
/// are not UTF-8 become "\xNN", and more than `limit` bytes are cut with "..." at the end.
std::string printable(const std::string& raw, std::size_t limit = 80);
/// The same for the words in it that the core did not write.
Sentence printable_sentence(const Sentence& sentence, std::size_t limit = 80);

}  // namespace evenfall

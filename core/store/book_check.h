// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/store/book.h"

#include <cstddef>
#include <string>
#include <vector>

/// What is wrong with a book, beyond what single imports refuse: damage, gaps, values that cannot
/// be true together. Tests: tests/store/book_check_test.cpp
namespace evenfall::store {

enum class Severity {
    damage,   ///< the file itself: restore a copy
    mistake,  ///< records that contradict each other or cannot be true
    gap       ///< something is missing
};

std::string_view text_of(Severity severity);

struct BookProblem {
    Severity severity;
    std::string record;    ///< "meter M-1", "weather station W"; "book" for the file
    Sentence sentence;
};

/// Integrity and foreign keys; meters: gaps, falls, backward flow, overlaps, impossible flow,
/// readings outside installation and removal, circles of parents; areas: shares of a meter above
/// 1; weather: missing days, tmin above tmax; sites: weather station that is not in the book.
/// Damage ends the search, since what follows would be read from a damaged file.
std::vector<BookProblem> check_book(const Book& book);

}  // namespace evenfall::store

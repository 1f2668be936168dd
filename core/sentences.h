// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/input_error.h"
#include "core/sentence.h"

#include <string>
#include <vector>

/// Sentences made of others.
/// Tests: tests/units/sentence_test.cpp
namespace evenfall {

/// What an error says: a line for each issue, the first 20 of them. what() is its English.
Sentence sentence_of(const std::vector<Issue>& issues);
inline Sentence sentence_of(const InputError& error) { return sentence_of(error.issues()); }

/// For JSON, reports and columns of the book.
std::vector<std::string> english_of(const std::vector<Sentence>& sentences);

/// Puts a sentence behind the others unless it is empty or stands there already.
void add_once(std::vector<Sentence>& sentences, const Sentence& sentence);

}  // namespace evenfall

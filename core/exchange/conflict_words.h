// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <string>

/// The record and the values of a conflict are kept as English text, for that is what tables of
/// choices and the journal are compared by. Here the sentences are found again that such a text was
/// made by, so that a window can say it in another language.
/// A text that no importer makes stays as it is; each sentence's english() is the text.
/// Tests: tests/exchange/conflict_words_test.cpp
namespace evenfall::exchange {

/// "reading of M-1 at 2024-06-30T13:00:00Z"
Sentence record_words(const std::string& record);
/// @param record  what the value is of: it says which words of it are the importer's
Sentence value_words(const std::string& record, const std::string& value);

}  // namespace evenfall::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <stdexcept>
#include <utility>

namespace evenfall {

/// What went wrong, as a sentence that a window can say in another language; what() is its English.
/// Tests: tests/app/desktop_strings_test.cpp
class SentenceError : public std::runtime_error {
  public:
    explicit SentenceError(Sentence sentence) : std::runtime_error(sentence.english()), sentence_(std::move(sentence)) {}
    const Sentence& sentence() const noexcept { return sentence_; }

  private:
    Sentence sentence_;
};

}  // namespace evenfall

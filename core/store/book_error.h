// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <stdexcept>
#include <utility>

namespace evenfall::store {

/// A book that cannot be used: missing, not ours, newer than this program, damaged, in use or not
/// writable. The message is a whole sentence for the user; the command line exits with status 4.
class BookError : public std::runtime_error {
  public:
    explicit BookError(Sentence sentence)
        : std::runtime_error(sentence.english()), sentence_(std::move(sentence)) {}
    const Sentence& sentence() const noexcept { return sentence_; }

  private:
    Sentence sentence_;
};

}  // namespace evenfall::store

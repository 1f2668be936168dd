// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence_error.h"

namespace evenfall::store {

/// A book that cannot be opened, read or written: missing, foreign, newer, damaged, locked, not
/// writable. The message is a whole sentence for the user; the command line exits with status 4.
class BookError : public SentenceError {
  public:
    using SentenceError::SentenceError;
};

}  // namespace evenfall::store

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

namespace evenfall::exchange {

/// What the system says of a file that cannot be used, by its error number. The usual ones can be
/// said in another language; the others stay as the system has them.
/// Tests: tests/exchange/csv_reader_test.cpp
Sentence system_words(int error);

}  // namespace evenfall::exchange

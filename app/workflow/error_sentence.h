// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <exception>

namespace evenfall::workflow {

/// What an error says, to be kept with the one file or case that it is about; of errors that are
/// none of ours their own words. Tests: tests/app/review_desk_test.cpp
Sentence error_sentence(const std::exception& error);

}  // namespace evenfall::workflow

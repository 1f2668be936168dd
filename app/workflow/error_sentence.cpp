// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/error_sentence.h"

#include "core/sentences.h"
#include "core/store/book_error.h"

namespace evenfall::workflow {

Sentence error_sentence(const std::exception& error) {
    if (const auto* input = dynamic_cast<const InputError*>(&error)) return sentence_of(*input);
    if (const auto* book = dynamic_cast<const store::BookError*>(&error)) return book->sentence();
    return error.what();
}

}  // namespace evenfall::workflow

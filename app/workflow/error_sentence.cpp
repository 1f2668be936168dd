// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/error_sentence.h"

#include "core/sentence_error.h"
#include "core/sentences.h"

namespace evenfall::workflow {

Sentence error_sentence(const std::exception& error) {
    if (const auto* input = dynamic_cast<const InputError*>(&error)) return sentence_of(*input);
    if (const auto* said = dynamic_cast<const SentenceError*>(&error)) return said->sentence();
    return error.what();
}

}  // namespace evenfall::workflow

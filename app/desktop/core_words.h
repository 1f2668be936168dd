// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <QString>
#include <exception>
#include <string>
#include <string_view>

/// What the core says, in the language shown; English where the translation lacks it.
/// Tests: tests/app/desktop_strings_test.cpp, tests/app/desktop_error_words_test.cpp,
///   tests/app/desktop_spanish_test.cpp
namespace evenfall::desktop {

QString core_words(const Sentence& sentence);
QString core_words(Phrase phrase);
/// Fixed words that the core reads from its data (titles of programs) or keeps as text.
QString core_words(std::string_view english);
inline QString core_words(const std::string& english) { return core_words(std::string_view(english)); }
/// What went wrong: a line for each issue of an InputError, the sentence of a SentenceError.
QString error_words(const std::exception& error);

}  // namespace evenfall::desktop

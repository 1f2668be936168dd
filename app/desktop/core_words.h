// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <QString>
#include <exception>
#include <string>
#include <string_view>

/// What the core says, in the language shown; English where the translation lacks it.
/// Tests: tests/app/desktop_strings_test.cpp, tests/app/desktop_error_words_test.cpp
namespace evenfall::desktop {

QString core_words(const Sentence& sentence);
QString core_words(Phrase phrase);
/// Fixed words that the core reads from its data (titles of programs) or keeps as text.
QString core_words(std::string_view english);
inline QString core_words(const std::string& english) { return core_words(std::string_view(english)); }
/// What went wrong: a line for each issue of an InputError, the sentence of a SentenceError.
QString error_words(const std::exception& error);
/// "area A-1", "weather": what a finding speaks of.
QString record_words(std::string_view record);
/// "2025-01 to 2025-12: sentence." with its fixed sentence.
QString dated_words(std::string_view sentence);

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string_view>

/// Fixed sentences of the core (flags, lines of the account, titles of programs, layouts, methods)
/// in the language shown; English where the list in core_words.cpp lacks one.
/// Tests: tests/app/desktop_strings_test.cpp
namespace evenfall::desktop {

QString core_words(std::string_view english);
/// "area A-1", "weather": what a finding speaks of.
QString record_words(std::string_view record);
/// "2025-01 to 2025-12: sentence." with its fixed sentence.
QString dated_words(std::string_view sentence);

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string_view>

/// Fixed sentences of the core (flags, lines of the account, titles of programs, layouts, methods)
/// in the language shown; English where the list in core_words.cpp lacks one.
/// Tests: tests/app/desktop_strings_test.cpp
namespace evenfall::desktop {

QString core_words(std::string_view english);

}  // namespace evenfall::desktop

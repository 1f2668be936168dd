// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string_view>

/// Words of the published tables (soils, head types, findings) in the language shown; a word that the
/// list in table_words.cpp lacks is shown as it stands.
/// Tests: tests/app/desktop_strings_test.cpp
namespace evenfall::desktop {

/// A key such as "sandy_loam", or what a person wrote in its place.
QString key_words(std::string_view key);

}  // namespace evenfall::desktop

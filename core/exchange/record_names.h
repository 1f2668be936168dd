// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

/// What messages, the journal and tables of conflicts call a record. The English name is also what
/// tells records apart there, so it holds all that the book knows a record by.
/// Tests: tests/exchange/conflict_words_test.cpp
namespace evenfall::exchange::record_form {

inline constexpr Phrase site = phrase("exchange", "site %1");
inline constexpr Phrase meter = phrase("exchange", "meter %1");
inline constexpr Phrase area = phrase("exchange", "area %1");
inline constexpr Phrase weather_station = phrase("exchange", "weather station %1");
inline constexpr Phrase outline = phrase("exchange", "outline of area %1");
inline constexpr Phrase reading = phrase("exchange", "reading of %1 at %2");
inline constexpr Phrase volume = phrase("exchange", "volume of %1 in the %2 min to %3");
inline constexpr Phrase day = phrase("exchange", "weather of %1 on %2");
inline constexpr Phrase hour = phrase("exchange", "weather of %1 in the hour from %2");
inline constexpr Phrase bill = phrase("exchange", "bill of %1 from %2 to %3");
inline constexpr Phrase pressure = phrase("exchange", "pressure of test %1 at %2");
inline constexpr Phrase finding = phrase("exchange", "finding %1 of test %2 at %3");
inline constexpr Phrase finding_nowhere = phrase("exchange", "finding %1 of test %2");
inline constexpr Phrase findings = phrase("exchange", "findings of test %1");
inline constexpr Phrase watering_rule = phrase("exchange", "watering rule of %1");
inline constexpr Phrase settings = phrase("exchange", "settings of %1");
inline constexpr Phrase planting = phrase("exchange", "%1 of area %2 from %3");

}  // namespace evenfall::exchange::record_form

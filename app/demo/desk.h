// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "core/review/filing.h"
#include "core/store/book.h"

#include <string>
#include <vector>

/// The rest of the invented scenario: the drawing of Alder Vale's playing field, and the desk of an
/// officer of Tolland Reach Water District on which three rebate applications lie. All of it is made up.
///
/// Planted for the reviewer:
///   TR-118  meets the program
///   TR-121  the heads were changed and it is as uneven as before, and a higher DU is claimed
///   TR-125  the second sheet is a copy of the first, and nobody wrote the wind down
/// Tests: tests/app/demo_desk_test.cpp
namespace evenfall::demo {

/// Heads of AV-PLAY on a square of 55 ft, as drawn. In the frame in which T-PLAY-25 stands, where
/// heads C4 and D4 are worn to 30 % and 55 %, and D3 to 90 %.
plan::Plan playing_field_plan();

/// The filings of the three applications, each with one invoice at attachments/invoice-NUMBER.txt.
std::vector<review::Filing> desk_filings();

/// Puts plan and applications into a demo book: the filings are written as files, opened and
/// reviewed as any other.
/// @param at  instant at which they come in
void add_desk(store::Book& book, const std::string& at, const std::string& who);

}  // namespace evenfall::demo

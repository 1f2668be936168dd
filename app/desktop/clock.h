// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace evenfall::desktop {

/// Now, UTC, "2024-06-30T13:00:00Z"; asked of the clock here and nowhere else.
std::string now_text();
/// Who is working, for the book's journal.
std::string user_text();

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace evenfall::workflow {

/// The present moment, UTC, "2024-02-29T13:30:00Z"; the environment's SOURCE_DATE_EPOCH instead,
/// where it is set, so that the same inputs can give the same bytes.
std::string present_moment();

/// Who works here, for the journal, when the user did not say: the login name, or "unknown".
std::string present_user();

}  // namespace evenfall::workflow

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/field_sheet.h"
#include "app/desktop/figure.h"
#include "app/desktop/shown.h"

#include <vector>

namespace evenfall::desktop {

/// The figures of a catch test with how each came about. Values are the core's; where the test
/// gives none yet the cards stay in place and show a dash.
std::vector<Figure> sheet_figures(const FieldSheet& sheet, UnitsShown units);

/// What a quarter means under that rule, in words.
QString words_of(audit::QuarterRule rule);
/// The same for a narrow list.
QString short_words_of(audit::QuarterRule rule);

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

namespace evenfall::reports {

/// DejaVu Sans, named, so that the same report looks the same on every machine.
QFont house_font(double points, bool bold = false);

/// Without fonts Qt draws empty boxes and says nothing, and a generic name means another family
/// on each machine.
/// @throws std::runtime_error  when DejaVu Sans is not installed
void need_house_font();

}  // namespace evenfall::reports

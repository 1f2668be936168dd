// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"

#include <QString>

class QWidget;

namespace evenfall::desktop {

class Session;

/// Shows the readings of a meter, the days from `from` to `to` in view and marked.
void show_readings(Session& session, const std::string& meter, calendar::Date from, calendar::Date to,
                   const QString& why, QWidget* parent);

}  // namespace evenfall::desktop

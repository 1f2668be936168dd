// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"

#include <QString>

class QDialog;
class QWidget;

namespace evenfall::desktop {

/// The raw data behind a piece of evidence, side by side; null when there is nothing to lay out.
/// Tests: tests/app/desktop_review_test.cpp
QDialog* evidence_dialog(const review::Filing& filing, const QString& evidence, QWidget* parent);

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace evenfall::desktop {

/// Lets the lists of all combo boxes be as wide as their words, however narrow the box is, up to the
/// width of the screen. To be installed as an event filter of the application.
/// Tests: tests/app/desktop_window_test.cpp
class DropLists : public QObject {
  public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace evenfall::desktop

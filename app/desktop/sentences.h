// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QListWidget;

namespace evenfall::desktop {

/// Wraps the sentences of a list and gives each as many lines as it needs; the list's own reckoning
/// is now and then one short and cuts the end off.
/// Tests: tests/app/desktop_schedule_test.cpp
void show_whole_sentences(QListWidget* list);

}  // namespace evenfall::desktop

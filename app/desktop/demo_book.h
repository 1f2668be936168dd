// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace evenfall::desktop {

class TaskContext;

/// Makes a new book at `path` with the invented scenario, brought in through the ordinary import.
/// Where it fails or is stopped no file is left behind.
/// @throws store::BookError, InputError, TaskStopped
void write_demo_book(const QString& path, const TaskContext& context);

}  // namespace evenfall::desktop

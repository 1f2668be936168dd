// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/import_plan.h"
#include "app/desktop/task.h"
#include "core/exchange/import.h"

#include <filesystem>
#include <vector>

namespace evenfall::desktop {

struct ImportOrder {
    std::filesystem::path book;
    std::vector<ImportPlan> plans;
    std::filesystem::path rejects;  ///< where refused rows are written, if there are any
    bool dry_run = false;
    bool accept_rest = false;
    exchange::ConflictChoice conflicts = exchange::ConflictChoice::refuse;
};

/// Runs the import with a book of its own, in the thread it is called in: all files or none.
/// Stopping it undoes it. Tests: tests/app/desktop_import_test.cpp
/// @throws store::BookError, InputError, TaskStopped
std::vector<exchange::ImportResult> run_import(const ImportOrder& order, const TaskContext& context);

}  // namespace evenfall::desktop

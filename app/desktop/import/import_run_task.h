// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/conflict_choices.h"
#include "app/desktop/import/import_plan.h"
#include "app/desktop/task.h"
#include "core/exchange/import.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace evenfall::desktop {

struct ImportOrder {
    std::filesystem::path book;
    std::vector<ImportPlan> plans;
    std::filesystem::path rejects;  ///< where refused rows are written, if there are any
    bool dry_run = false;
    bool accept_rest = false;
    exchange::ConflictChoice conflicts = exchange::ConflictChoice::refuse;  ///< of what nobody chose
    std::shared_ptr<const ConflictChoices> choices;  ///< what was chosen one by one; null: nothing
};

struct ImportFound {
    std::vector<exchange::ImportResult> results;
    std::shared_ptr<ConflictChoices> conflicts;  ///< null: the book and the files do not differ, or all is stored
};

/// Runs the import with a book of its own, in the thread it is called in: all files or none.
/// Stopping it undoes it. A try looks at everything anew, and takes over what was chosen as far as
/// it still fits. Tests: tests/app/desktop_import_test.cpp, tests/app/desktop_conflicts_test.cpp
/// @throws store::BookError, InputError, TaskStopped
ImportFound run_import(const ImportOrder& order, const TaskContext& context);

}  // namespace evenfall::desktop

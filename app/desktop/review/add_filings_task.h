// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/task.h"
#include "app/workflow/review_batch.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace evenfall::desktop {

struct AddFilingsOrder {
    std::filesystem::path book;
    std::vector<std::filesystem::path> files;
    std::string program;   ///< name or file; empty: the one that each filing names
    std::map<std::string, std::string> known;  ///< name of a program to its name or file
    std::string at, who;
};

struct AddedFilings {
    std::vector<workflow::BatchItem> items;  ///< program by program
    std::size_t added = 0;                   ///< new in the book
    std::size_t refused = 0;
};

/// Opens, verifies and reviews the filings, and when all are done freezes those that can be used in
/// the book, in the thread it is called in. Stopping it leaves the book as it was. A filing that
/// names a program which is not known is reviewed without one, so it opens no application.
/// @throws InputError, store::BookError, TaskStopped
AddedFilings add_filings(const AddFilingsOrder& order, const TaskContext& context);

}  // namespace evenfall::desktop

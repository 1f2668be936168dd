// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/demo_book.h"

#include "app/demo/desk.h"
#include "app/demo/scenario.h"
#include "app/desktop/clock.h"
#include "app/desktop/task.h"
#include "core/exchange/import.h"
#include "core/sentence_error.h"

#include <QFile>
#include <QTemporaryDir>
#include <filesystem>
#include <fstream>
#include <vector>

namespace evenfall::desktop {

void write_demo_book(const QString& path, const TaskContext& context) {
    const QTemporaryDir folder;
    std::vector<std::filesystem::path> files;
    for (const demo::TableFile& table : demo::scenario_files()) {
        context.check();
        files.emplace_back(folder.filePath(QString::fromStdString(table.name)).toStdString());
        std::ofstream out(files.back(), std::ios::binary);
        out << table.text;
        out.close();
        if (!out) throw SentenceError({phrase("workflow", "could not write %1"), files.back().string()});
    }
    store::Book book = store::Book::create(path.toStdString());
    try {
        exchange::ImportOptions options;
        options.at = now_text();
        options.who = user_text();
        options.progress = [&context](const exchange::ImportProgress& p) {
            context.check();
            context.report(p.done, QString::fromStdString(std::filesystem::path(p.file).filename().string()));
        };
        exchange::require_accepted(exchange::import_files(book, files, options));
        context.check();
        demo::add_desk(book, options.at, options.who);
    } catch (...) {
        for (const char* tail : {"", "-wal", "-shm", "-journal"}) QFile::remove(path + QLatin1String(tail));
        throw;
    }
}

}  // namespace evenfall::desktop

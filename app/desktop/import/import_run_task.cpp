// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_run_task.h"

#include "app/desktop/clock.h"
#include "core/input_error.h"
#include "core/sentence_error.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>
#include <algorithm>

namespace evenfall::desktop {

namespace {

/// Writes the column map of each plan into the folder, for the import to read.
void write_maps(const ImportOrder& order, const QTemporaryDir& folder, exchange::ImportOptions& options) {
    for (const ImportPlan& plan : order.plans) {
        const QString name = folder.filePath(QStringLiteral("map-%1.json").arg(options.maps.size()));
        QFile map(name);
        const QByteArray text = map_json(plan);
        if (!map.open(QIODevice::WriteOnly | QIODevice::Truncate) || map.write(text) != text.size() || !map.flush()) {
            throw SentenceError({phrase("workflow", "could not write the column map: %1"), map.errorString().toStdString()});
        }
        options.maps.emplace_back(name.toStdString());
    }
}

/// Issues of the table of choices as the person sees them who never sees that file: by the row of the list.
[[noreturn]] void throw_as_shown(const InputError& error, const std::filesystem::path& table) {
    std::vector<Issue> issues = error.issues();
    for (Issue& issue : issues) {
        if (issue.place.file != table.string()) continue;
        issue.place.file = QCoreApplication::translate("ImportRun", "Where they differ").toStdString();
        issue.place.row = issue.place.row > 0 ? issue.place.row - 1 : 0;  // the header is none of the list's rows
    }
    throw InputError(std::move(issues));
}

}  // namespace

ImportFound run_import(const ImportOrder& order, const TaskContext& context) {
    auto book = store::Book::open(order.book, store::Access::read_write);
    exchange::ImportOptions options;
    options.dry_run = order.dry_run;
    options.accept_rest = order.accept_rest;
    options.conflicts = order.conflicts;
    options.rejects = order.rejects;
    options.at = now_text();
    options.who = user_text();
    // Stopping leaves the import by an exception; its transaction then undoes everything.
    options.progress = [&context](const exchange::ImportProgress& p) {
        context.check();
        context.report(p.done, QString::fromStdString(std::filesystem::path(p.file).filename().string()));
    };
    const QTemporaryDir folder;
    write_maps(order, folder, options);
    const std::filesystem::path chosen = folder.filePath(QStringLiteral("choices.csv")).toStdString();
    if (order.choices && !order.dry_run) {
        order.choices->write(chosen);
        options.choices = chosen;
    }
    options.list_conflicts = folder.filePath(QStringLiteral("conflicts.csv")).toStdString();
    std::vector<std::filesystem::path> files;
    for (const ImportPlan& plan : order.plans) files.emplace_back(plan.path.toStdString());
    ImportFound found;
    try {
        found.results = exchange::import_files(book, files, options);
    } catch (const InputError& error) {
        throw_as_shown(error, chosen);
    }
    const bool stored = std::any_of(found.results.begin(), found.results.end(), [](const auto& r) { return r.stored; });
    if (stored || !std::filesystem::exists(*options.list_conflicts)) return found;
    context.check();
    auto listed = std::make_shared<ConflictChoices>(*options.list_conflicts);
    if (listed->count() == 0) return found;
    if (order.choices) listed->take_over(*order.choices);
    found.conflicts = std::move(listed);
    return found;
}

}  // namespace evenfall::desktop

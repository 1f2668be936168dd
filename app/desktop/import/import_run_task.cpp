// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_run_task.h"

#include "app/desktop/clock.h"

#include <QFile>
#include <QTemporaryDir>
#include <stdexcept>

namespace evenfall::desktop {
namespace {

exchange::ImportOptions options_of(const ImportOrder& order, const TaskContext& context) {
    exchange::ImportOptions options;
    options.dry_run = order.dry_run;
    options.accept_rest = order.accept_rest;
    options.conflicts = order.conflicts;
    options.at = now_text();
    options.who = user_text();
    // Stopping leaves the import by an exception; its transaction then undoes everything.
    options.progress = [&context](const exchange::ImportProgress& p) {
        context.check();
        context.report(p.done, QString::fromStdString(std::filesystem::path(p.file).filename().string()));
    };
    return options;
}

}  // namespace

std::vector<exchange::ImportResult> run_import(const ImportOrder& order, const TaskContext& context) {
    auto book = store::Book::open(order.book, store::Access::read_write);
    // Files that can be taken as they are go in together, all or nothing. One with a map of its
    // own is a call of its own, after them.
    std::vector<std::filesystem::path> plain;
    std::optional<exchange::Kind> kind;
    for (const ImportPlan& plan : order.plans) {
        if (!needs_map(plan)) plain.emplace_back(plan.path.toStdString());
    }
    if (plain.size() == 1) {
        for (const ImportPlan& plan : order.plans) {
            if (!needs_map(plan)) kind = plan.kind;
        }
    }
    std::vector<exchange::ImportResult> results;
    if (!plain.empty()) {
        auto options = options_of(order, context);
        options.kind = kind;
        results = exchange::import_files(book, plain, options);
    }
    const QTemporaryDir folder;
    for (const ImportPlan& plan : order.plans) {
        if (!needs_map(plan)) continue;
        const QString map = folder.filePath(QStringLiteral("map.json"));
        QFile file(map);
        const QByteArray text = map_json(plan);
        if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(text) != text.size()) {
            throw std::runtime_error("could not write the column map: " + file.errorString().toStdString());
        }
        file.close();
        auto options = options_of(order, context);
        options.kind = plan.kind;
        options.map = std::filesystem::path(map.toStdString());
        const std::vector<std::filesystem::path> one{plan.path.toStdString()};
        for (auto& result : exchange::import_files(book, one, options)) results.push_back(std::move(result));
    }
    return results;
}

}  // namespace evenfall::desktop

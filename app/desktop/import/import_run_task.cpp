// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_run_task.h"

#include "app/desktop/clock.h"

#include <QFile>
#include <QTemporaryDir>
#include <stdexcept>

namespace evenfall::desktop {

std::vector<exchange::ImportResult> run_import(const ImportOrder& order, const TaskContext& context) {
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
    std::vector<std::filesystem::path> files;
    for (const ImportPlan& plan : order.plans) {
        files.emplace_back(plan.path.toStdString());
        const QString name = folder.filePath(QStringLiteral("map-%1.json").arg(files.size()));
        QFile map(name);
        const QByteArray text = map_json(plan);
        if (!map.open(QIODevice::WriteOnly | QIODevice::Truncate) || map.write(text) != text.size() || !map.flush()) {
            throw std::runtime_error("could not write the column map: " + map.errorString().toStdString());
        }
        options.maps.emplace_back(name.toStdString());
    }
    return exchange::import_files(book, files, options);
}

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_journal.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QStandardPaths>
#include <unistd.h>
#include <utility>

namespace evenfall::desktop {
namespace {

constexpr qint64 largest_journal = 1 << 20;

QByteArray sum_of(const QByteArray& json) {
    return QCryptographicHash::hash(json, QCryptographicHash::Sha256).toHex().left(8);
}

QByteArray line_of(const SheetData& sheet) {
    const QByteArray json = to_json(sheet);
    return sum_of(json) + ' ' + json + '\n';
}

}  // namespace

SheetJournal::SheetJournal(QString path) : path_(std::move(path)) {}

std::optional<SheetData> SheetJournal::recover() const {
    QFile file(path_);
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const QByteArray all = file.readAll();
    // From the end: the first line whose sum is right.
    qsizetype end = all.size();
    while (end > 0) {
        const qsizetype start = all.lastIndexOf('\n', end - 2) + 1;
        const QByteArray line = all.mid(start, end - start);
        if (line.endsWith('\n') && line.size() > 10) {
            const QByteArray json = line.mid(9, line.size() - 10);
            if (line.left(8) == sum_of(json)) {
                if (auto sheet = from_json(json)) return sheet;
            }
        }
        end = start;
    }
    return std::nullopt;
}

bool SheetJournal::claim() {
    if (lock_) return true;
    QDir().mkpath(QFileInfo(path_).absolutePath());
    auto lock = std::make_unique<QLockFile>(path_ + QStringLiteral(".lock"));
    lock->setStaleLockTime(0);
    if (!lock->tryLock(0)) return false;
    lock_ = std::move(lock);
    return true;
}

bool SheetJournal::write(const SheetData& sheet) {
    error_.clear();
    if (file_ && file_->size() > largest_journal) {
        QSaveFile fresh(path_);
        if (!fresh.open(QIODevice::WriteOnly) || fresh.write(line_of(sheet)) < 0 || !fresh.commit()) {
            error_ = fresh.errorString();
            return false;
        }
        file_.reset();
        return true;
    }
    if (!file_) {
        file_ = std::make_unique<QFile>(path_);
        if (!file_->open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered)) {
            error_ = file_->errorString();
            file_.reset();
            return false;
        }
        // A line that was cut off must not spoil the next one.
        if (file_->size() > 0) file_->write("\n");
    }
    const QByteArray line = line_of(sheet);
    if (file_->write(line) != line.size()) {
        error_ = file_->errorString();
        return false;
    }
    return true;
}

void SheetJournal::flush_to_disk() {
    if (file_) ::fsync(file_->handle());
}

void SheetJournal::clear() {
    file_.reset();
    QFile::remove(path_);
}

QString journal_path(const QString& book_path) {
    if (!book_path.isEmpty() && QFileInfo(QFileInfo(book_path).absolutePath()).isWritable()) {
        return book_path + QStringLiteral("-entries");
    }
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
           QStringLiteral("/field-sheet-entries");
}

}  // namespace evenfall::desktop

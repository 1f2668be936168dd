// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/session.h"

#include "app/desktop/task.h"

#include <QApplication>
#include <QDate>
#include <QFileInfo>
#include <QLocale>
#include <QSettings>
#include <utility>

namespace evenfall::desktop {
namespace {

constexpr int most_recent_books = 8;

bool folder_or_file_is_closed(const QString& path) {
    const QFileInfo file(path);
    return !file.isWritable() || !QFileInfo(file.absolutePath()).isWritable();
}

}  // namespace

Session::Session(QObject* parent) : QObject(parent), sheet_(empty_sheet(today())) {
    const QSettings settings;
    const QLocale here;
    // The "C" locale says nothing about the user; the trade's own units are US customary.
    const bool metric_here = here.language() != QLocale::C && here.measurementSystem() == QLocale::MetricSystem;
    units_ = settings.value(QStringLiteral("metric"), metric_here).toBool() ? UnitsShown::metric : UnitsShown::us;
    theme_ = settings.value(QStringLiteral("dark"), false).toBool() ? Theme::dark : Theme::light;
    language_ = settings
                    .value(QStringLiteral("language"), here.language() == QLocale::Spanish
                                                           ? QStringLiteral("es")
                                                           : QStringLiteral("en"))
                    .toString();
    flush_.setSingleShot(true);
    flush_.setInterval(300);
    connect(&flush_, &QTimer::timeout, this, [this] {
        if (journal_) journal_->flush_to_disk();
    });
    watch_sheet();
    change_journal();
}

Session::~Session() {
    if (journal_) journal_->flush_to_disk();
}

calendar::Date Session::today() {
    const QDate d = QDate::currentDate();
    return calendar::make_date(d.year(), static_cast<unsigned>(d.month()), static_cast<unsigned>(d.day()));
}

void Session::set_units(UnitsShown units) {
    if (units == units_) return;
    units_ = units;
    QSettings().setValue(QStringLiteral("metric"), units == UnitsShown::metric);
    Q_EMIT units_changed();
}

void Session::set_theme(Theme theme) {
    theme_ = theme;
    QSettings().setValue(QStringLiteral("dark"), theme == Theme::dark);
    apply_theme(*qApp, theme);
    Q_EMIT theme_changed();
}

void Session::set_language(const QString& language) {
    if (language == language_) return;
    language_ = language;
    QSettings().setValue(QStringLiteral("language"), language);
    Q_EMIT language_changed();
}

QString Session::book_path() const { return path_; }

void Session::open_book(const QString& path) {
    const QString full = QFileInfo(path).absoluteFilePath();
    std::unique_ptr<QLockFile> lock;
    QString reason;
    auto access = store::Access::read_write;
    if (QFileInfo::exists(full) && folder_or_file_is_closed(full)) {
        reason = tr("This book may not be written here, so it is open for reading only.");
        access = store::Access::read_only;
    } else if (QFileInfo::exists(full)) {
        lock = std::make_unique<QLockFile>(full + QStringLiteral("-open"));
        lock->setStaleLockTime(0);
        if (!lock->tryLock(0)) {
            qint64 pid = 0;
            QString host;
            QString program;
            lock->getLockInfo(&pid, &host, &program);
            reason = tr("This book is open in another window (%1 on %2), so it is open for reading only here.")
                         .arg(program.isEmpty() ? tr("a program") : program, host.isEmpty() ? tr("this computer") : host);
            access = store::Access::read_only;
            lock.reset();
        }
    }
    store::Book book = store::Book::open(full.toStdString(), access);
    lock_ = std::move(lock);
    read_only_reason_ = reason;
    adopt(std::move(book), full);
}

void Session::create_book(const QString& path) {
    const QString full = QFileInfo(path).absoluteFilePath();
    store::Book book = store::Book::create(full.toStdString());
    auto lock = std::make_unique<QLockFile>(full + QStringLiteral("-open"));
    lock->setStaleLockTime(0);
    lock->tryLock(0);
    lock_ = std::move(lock);
    read_only_reason_.clear();
    adopt(std::move(book), full);
}

void Session::adopt(store::Book book, const QString& path) {
    book_.emplace(std::move(book));
    path_ = path;
    remember(path);
    change_journal();
    Q_EMIT book_changed();
}

void Session::close_book() {
    book_.reset();
    lock_.reset();
    path_.clear();
    read_only_reason_.clear();
    change_journal();
    Q_EMIT book_changed();
}

void Session::book_was_changed() { Q_EMIT book_changed(); }

void Session::remember(const QString& path) {
    QSettings settings;
    QStringList list = settings.value(QStringLiteral("recent")).toStringList();
    list.removeAll(path);
    list.prepend(path);
    while (list.size() > most_recent_books) list.removeLast();
    settings.setValue(QStringLiteral("recent"), list);
}

QStringList Session::recent_books() const {
    QStringList out;
    for (const QString& path : QSettings().value(QStringLiteral("recent")).toStringList()) {
        if (QFileInfo::exists(path)) out << path;
    }
    return out;
}

void Session::watch_sheet() {
    const auto note = [this] {
        if (!journal_claimed_) return;
        unsaved_ = true;
        if (!journal_->write(sheet_.data())) {
            say(tr("Entries cannot be kept safe in %1: %2").arg(journal_->path(), journal_->error()));
        }
        flush_.start();
    };
    connect(&sheet_, &FieldSheet::can_changed, this, note);
    connect(&sheet_, &FieldSheet::shape_changed, this, note);
    connect(&sheet_, &FieldSheet::head_changed, this, note);
}

void Session::change_journal() {
    if (journal_) journal_->flush_to_disk();
    journal_claimed_ = false;
    journal_ = std::make_unique<SheetJournal>(journal_path(path_));
    entries_recovered_ = false;
    unsaved_ = false;
    if (!journal_->claim()) return;  // another window keeps its own entries there
    if (auto sheet = journal_->recover()) {
        sheet_.replace(std::move(*sheet));
        entries_recovered_ = true;
        unsaved_ = true;
    } else {
        sheet_.replace(empty_sheet(today()));
    }
    journal_claimed_ = true;
}

void Session::sheet_was_saved() {
    journal_->clear();
    unsaved_ = false;
    entries_recovered_ = false;
}

Task* Session::start(const QString& name, bool yields) {
    if (task_ && task_->running() && task_->yields() && !yields) {
        task_->disconnect();
        task_->stop();
    } else if (task_ && task_->running()) {
        say(tr("%1 is still going on. Stop it first, or wait.").arg(task_->name()));
        return nullptr;
    }
    // It may be one of its own signals that asks for the next piece of work.
    if (task_) task_->deleteLater();
    task_ = new Task(name, yields, this);
    Q_EMIT task_started(task_);
    return task_;
}

}  // namespace evenfall::desktop

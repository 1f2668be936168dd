// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/appearance.h"
#include "app/desktop/field_sheet/field_sheet.h"
#include "app/desktop/field_sheet/sheet_journal.h"
#include "app/desktop/shown.h"
#include "core/store/book.h"

#include <QLockFile>
#include <QObject>
#include <QStringList>
#include <QTimer>
#include <memory>
#include <optional>

/// What all pages share: the open book, how figures are shown, the field sheet being filled in.
/// Tests: tests/app/desktop_session_test.cpp
namespace evenfall::desktop {

class Task;

class Session : public QObject {
    Q_OBJECT

  public:
    explicit Session(QObject* parent = nullptr);
    ~Session() override;

    UnitsShown units() const { return units_; }
    void set_units(UnitsShown units);
    Theme theme() const { return theme_; }
    void set_theme(Theme theme);
    /// "en" or "es"; the window is made anew when it changes.
    const QString& language() const { return language_; }
    void set_language(const QString& language);

    bool has_book() const { return book_.has_value(); }
    store::Book& book() { return *book_; }
    bool can_write() const { return book_ && book_->access() == store::Access::read_write; }
    QString book_path() const;
    /// Why the book is open for reading only; empty when it is not.
    const QString& read_only_reason() const { return read_only_reason_; }
    /// Opens a book for writing, or for reading when another program has it or it cannot be
    /// written. @throws store::BookError
    void open_book(const QString& path);
    /// @throws store::BookError
    void create_book(const QString& path);
    void close_book();
    /// After an import or another change of the book by a page.
    void book_was_changed();
    QStringList recent_books() const;

    FieldSheet& sheet() { return sheet_; }
    /// True when entries of an earlier run were found and are shown now.
    bool entries_recovered() const { return entries_recovered_; }
    /// The sheet is in the book now: its journal is not needed any more.
    void sheet_was_saved();
    bool sheet_has_unsaved_entries() const { return unsaved_; }

    /// Starts work in the background; one at a time, with progress in the status line.
    /// Work that yields is stopped for it; what it has found so far stands.
    /// @return null when another piece of work is still running
    Task* start(const QString& name, bool yields = false);
    Task* task() const { return task_; }
    /// For the status line.
    void say(const QString& message) { Q_EMIT message_said(message); }

    /// Today, asked of the clock here and nowhere else.
    static calendar::Date today();

  Q_SIGNALS:
    void units_changed();
    void theme_changed();
    void language_changed();
    void book_changed();
    void message_said(const QString& message);
    void task_started(evenfall::desktop::Task* task);

  private:
    void adopt(store::Book book, const QString& path);
    void remember(const QString& path);
    void watch_sheet();
    void change_journal();

    UnitsShown units_ = UnitsShown::us;
    Theme theme_ = Theme::light;
    QString language_;
    std::optional<store::Book> book_;
    QString path_;
    QString read_only_reason_;
    std::unique_ptr<QLockFile> lock_;
    FieldSheet sheet_;
    std::unique_ptr<SheetJournal> journal_;
    QTimer flush_;
    bool entries_recovered_ = false;
    bool unsaved_ = false;
    bool journal_claimed_ = false;
    Task* task_ = nullptr;
};

}  // namespace evenfall::desktop

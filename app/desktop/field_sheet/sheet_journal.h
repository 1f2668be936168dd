// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/sheet_data.h"

#include <QFile>
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>

/// Keeps unsaved entries of a field sheet through a crash or a power cut.
///
/// One line per edit: eight hex digits of a SHA-256, a blank, the whole sheet as JSON. A line cut
/// off in the middle fails its sum and the one before it counts. The file is started anew (through
/// a temporary file that then takes its place) once it has grown past a limit, and removed when
/// the entries are saved or given up.
/// Tests: tests/app/desktop_journal_test.cpp
namespace evenfall::desktop {

class SheetJournal {
  public:
    /// @param path  of the journal file; nothing is opened yet
    explicit SheetJournal(QString path);

    /// The last whole sheet in the file, or nothing. Does not change the file.
    std::optional<SheetData> recover() const;
    /// Takes the journal for this program; false when another one holds it.
    bool claim();
    /// Adds a line. Handed to the system at once; on the disk after flush_to_disk().
    /// @return false with error() set when it cannot be written
    bool write(const SheetData& sheet);
    /// Waits until the disk has it.
    void flush_to_disk();
    /// Nothing is unsaved any more.
    void clear();

    const QString& path() const { return path_; }
    const QString& error() const { return error_; }

  private:
    QString path_;
    QString error_;
    std::unique_ptr<QFile> file_;
    std::unique_ptr<QLockFile> lock_;
};

/// Where the journal of a book lies: beside it; for no book, in the user's data folder.
QString journal_path(const QString& book_path);

}  // namespace evenfall::desktop

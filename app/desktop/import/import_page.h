// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/import_plan.h"
#include "app/desktop/page.h"
#include "core/exchange/import.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QTableWidget;

namespace evenfall::desktop {

/// Bringing tables into the book: look at them, point at columns, try, then import.
/// Tests: tests/app/desktop_import_test.cpp
class ImportPage : public Page {
    Q_OBJECT

  public:
    explicit ImportPage(Session& session, QWidget* parent = nullptr);
    void book_changed() override;
    /// Puts files on the list; the first one is shown.
    void add_files(const QStringList& paths);
    /// Gives the column of the shown file a meaning, as the menu on its head does.
    void point_at(int column, const QString& name);
    void run(bool dry);
    const std::vector<exchange::ImportResult>& results() const { return results_; }
    QTableWidget* preview() const { return preview_; }

  Q_SIGNALS:
    void finished();

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    ImportPlan* shown();
    void show_plan();
    void show_state();
    void show_results(const QString& error, bool dry);
    void column_menu(int column);
    void choose_files();

    std::vector<ImportPlan> plans_;
    std::vector<exchange::ImportResult> results_;
    QListWidget* files_;
    QComboBox* kind_;
    QComboBox* dates_;
    QComboBox* decimals_;
    QComboBox* conflicts_;
    QCheckBox* rest_;
    QTableWidget* preview_;
    QLabel* state_;
    QTableWidget* outcome_;
    QPushButton* try_;
    QPushButton* import_;
    QPushButton* remove_;
    bool filling_ = false;
};

}  // namespace evenfall::desktop

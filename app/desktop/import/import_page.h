// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/import_run_task.h"
#include "app/desktop/page.h"
#include "core/exchange/import.h"

#include <QTemporaryDir>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QMenu;
class QStackedWidget;
class QTabBar;
class QTableWidget;

namespace evenfall::desktop {

class ConflictsPanel;
class ImportOutcome;

/// Bringing tables into the book: look at them, point at columns, try, choose where they differ from
/// the book, then import. Tests: tests/app/desktop_import_test.cpp, tests/app/desktop_conflicts_test.cpp
class ImportPage : public Page {
    Q_OBJECT

  public:
    explicit ImportPage(Session& session, QWidget* parent = nullptr);
    void book_changed() override;
    void theme_changed() override;
    /// Puts files on the list; the first of them is shown.
    void add_files(const QStringList& paths);
    /// Gives the column of the shown file a meaning, as the menu on its head does.
    void point_at(int column, const QString& name);
    /// Takes over or writes a map file for the shown file. @throws InputError, std::runtime_error
    void load_map(const QString& path);
    void save_map(const QString& path);
    void run(bool dry);
    /// Shows that place of one of the files.
    void show_place(const QString& file, std::size_t row, const QString& column);
    const std::vector<exchange::ImportResult>& results() const { return results_; }
    ImportPlan* shown();
    QTableWidget* preview() const { return preview_; }
    ImportOutcome* outcome() const { return outcome_; }
    ConflictsPanel* differences() const { return differences_; }
    QTabBar* tabs() const { return tabs_; }
    QComboBox* dates() const { return dates_; }
    QComboBox* decimals() const { return decimals_; }
    QComboBox* conflicts() const { return conflicts_; }
    QCheckBox* rest() const { return rest_; }
    /// The menu on the head of a column; null when no kind of table is chosen yet.
    QMenu* make_column_menu(int column);

  Q_SIGNALS:
    void finished();

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    QWidget* make_files();
    QWidget* make_view();
    QWidget* make_choices();
    QWidget* make_below();
    void connect_choices();
    void show_plan();
    void show_rows();
    void show_state();
    void mark_issues();
    void show_found(ImportFound found, const QString& error, bool dry, const QString& rejects);
    void column_menu(int column);
    void meter_menu(QMenu& menu, int column);
    void ask_for_meter(int column, bool volumes);
    void ask_for_constant();
    void choose_files();
    void read_again();

    std::vector<ImportPlan> plans_;
    std::vector<exchange::ImportResult> results_;
    QTemporaryDir rejects_;
    QListWidget* files_;
    QComboBox* kind_;
    QComboBox* dates_;
    QComboBox* decimals_;
    QComboBox* delimiter_;
    QLineEdit* missing_;
    QComboBox* conflicts_;
    QCheckBox* rest_;
    QTableWidget* preview_;
    QLabel* state_;
    QTabBar* tabs_;
    ImportOutcome* outcome_;
    ConflictsPanel* differences_;
    QString differences_of_;  ///< the book that they are about
    QPushButton* try_;
    QPushButton* import_;
    QPushButton* remove_;
    QPushButton* constant_;
    QPushButton* load_;
    QPushButton* save_;
};

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"

#include <QMainWindow>
#include <QTranslator>
#include <QUndoGroup>
#include <functional>
#include <vector>

class QAction;
class QLabel;
class QListWidget;
class QMenu;
class QProgressBar;
class QPushButton;
class QStackedWidget;

/// The window: the strip of pages at the left, the page at the right, work and words below.
/// Pages are made when they are first shown, so that the first paint waits for one of them only.
/// Tests: tests/app/desktop_window_test.cpp
namespace evenfall::desktop {

class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    explicit MainWindow(Session& session, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a book and says so where it cannot be opened.
    void open_book(const QString& path);
    /// Shows the page of that key ("sites", "field_sheet", ...); the start page where there is none.
    void show_page(const QString& key);
    /// A catch test of the book on the field sheet; where the plan is shown, the plan against it.
    void show_test(const QString& code);
    Page* page() const;
    QStringList page_keys() const;

  protected:
    void closeEvent(QCloseEvent* event) override;

  private:
    struct Entry {
        QString key;
        QString name;
        std::function<Page*()> make;
        Page* page = nullptr;
    };
    void build();
    void build_pages();
    void build_menus();
    QWidget* build_side();
    void show_entry(int index);
    bool pages_may_close();
    void choose_book();
    void new_book();
    void make_demo_book();
    void fill_recent();
    void fill_actions();
    void book_changed();
    void units_changed();
    void task_started(Task* task);
    void print_preview();
    void copy();
    void guarded(const std::function<void()>& action);

    Session& session_;
    std::vector<Entry> entries_;
    int current_ = -1;
    QListWidget* strip_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    QLabel* banner_ = nullptr;
    QLabel* book_name_ = nullptr;
    QPushButton* us_ = nullptr;
    QPushButton* metric_ = nullptr;
    QPushButton* dark_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QLabel* work_ = nullptr;
    QPushButton* stop_ = nullptr;
    QMenu* recent_ = nullptr;
    QMenu* actions_ = nullptr;  ///< of the page that is shown
    QAction* close_book_ = nullptr;
    QUndoGroup undo_;
};

/// Loads the strings of that language into the application; English needs none.
void install_language(const QString& language);

}  // namespace evenfall::desktop

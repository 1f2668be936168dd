// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QTableView;

namespace evenfall::desktop {

class FigureTable;
class SitesFilter;
class SitesModel;

/// The sites one answers for: search, filter, what needs attention, the areas of the chosen one.
/// Tests: tests/app/desktop_window_test.cpp
class SitesPage : public Page {
    Q_OBJECT

  public:
    explicit SitesPage(Session& session, QWidget* parent = nullptr);
    void book_changed() override;
    void units_changed() override;
    bool copy() override;
    QTableView* table() const { return table_; }
    QLineEdit* search() const { return search_; }
    QCheckBox* only_attention() const { return only_; }

  Q_SIGNALS:
    void season_wanted(const std::string& site);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    /// What is found by search and filter: the first is chosen where none is, and none is said in words.
    void show_found();
    void judge_all();
    void show_chosen();
    std::string chosen() const;

    SitesModel* model_;
    SitesFilter* filter_;
    QLineEdit* search_;
    QCheckBox* only_;
    QLabel* none_;
    QTableView* table_;
    QLabel* name_;
    QLabel* attention_;
    FigureTable* areas_;
};

}  // namespace evenfall::desktop

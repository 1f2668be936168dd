// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/background_question.h"
#include "app/desktop/page.h"
#include "app/workflow/season.h"

#include <optional>

class QComboBox;
class QLabel;
class QListWidget;
class QTabWidget;

namespace evenfall::desktop {

class ChartPanel;
class FigureGrid;
class FigureTable;

/// Use against budget of one site, where the water went, and what the meters say is wrong.
/// Tests: tests/app/desktop_paths_test.cpp
class SeasonPage : public Page {
    Q_OBJECT

  public:
    explicit SeasonPage(Session& session, QWidget* parent = nullptr);

    void show_site(const std::string& site);
    void units_changed() override { show_answer(); }
    void theme_changed() override { show_tables(); }
    void book_changed() override;
    bool copy() override;
    bool can_print() const override { return answer_.has_value(); }
    bool print(QPrinter& printer) override;
    const std::optional<workflow::SeasonAnswer>& answer() const { return answer_; }
    QListWidget* findings() const { return findings_; }
    FigureGrid* figures() const { return figures_; }

  Q_SIGNALS:
    void answered();

  private:
    void site_chosen();
    void ask();
    void say(const QString& words);
    void show_answer();
    void show_tables();
    void show_findings();
    void open_finding();

    BackgroundQuestion asked_;
    QComboBox* site_;
    QComboBox* from_;
    QComboBox* to_;
    QComboBox* program_;
    FigureGrid* figures_;
    QTabWidget* tabs_;
    ChartPanel* use_;
    ChartPanel* cumulative_;
    ChartPanel* waste_;
    FigureTable* months_;
    FigureTable* areas_;
    QListWidget* findings_;
    QLabel* state_;
    std::optional<workflow::SeasonAnswer> answer_;
    bool filling_ = false;
};

}  // namespace evenfall::desktop

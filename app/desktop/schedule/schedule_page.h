// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/background_question.h"
#include "app/desktop/page.h"
#include "app/workflow/schedule.h"

#include <QTime>
#include <array>
#include <filesystem>
#include <functional>
#include <optional>

class QComboBox;
class QLabel;
class QListWidget;
class QTabWidget;

namespace evenfall::desktop {

class FigureGrid;
class FigureTable;
class ScheduleChoices;

/// The base schedule of a site: minutes per station and week, month by month, from which a person
/// goes on by weather and by eye. Written as a table and as a calendar.
/// Tests: tests/app/desktop_schedule_test.cpp
class SchedulePage : public Page {
    Q_OBJECT

  public:
    explicit SchedulePage(Session& session, QWidget* parent = nullptr);
    void units_changed() override { show_answer(); }
    void theme_changed() override { show_answer(); }
    void book_changed() override;
    bool copy() override;
    bool can_print() const override { return answer_.has_value(); }
    bool print(QPrinter& printer) override;

    void show_site(const std::string& site);
    /// Allowed days, Monday first, and the window, in place of the book's rule.
    void set_rule(const std::array<bool, 7>& days, const QTime& from, const QTime& to, int at_once);
    /// The answer as CSV, or as a calendar. False, and a word about it, when it could not be written.
    bool write_table(const QString& file);
    bool write_calendar(const QString& file);
    const std::optional<workflow::ScheduleAnswer>& answer() const { return answer_; }
    FigureTable* minutes() const { return minutes_; }
    QListWidget* findings() const { return findings_; }
    QString state() const;

  Q_SIGNALS:
    void answered();

  private:
    void build_answer();
    void ask();
    void say(const QString& words);
    void show_answer();
    void show_month();
    bool written(const QString& file, const std::function<void(const std::filesystem::path&)>& write);

    BackgroundQuestion asked_;
    ScheduleChoices* choices_;
    QLabel* state_;
    FigureGrid* figures_;
    QTabWidget* tabs_;
    FigureTable* minutes_;
    QComboBox* month_;
    FigureTable* month_stations_;
    FigureTable* starts_;
    QListWidget* findings_;
    QPushButton* write_table_;
    QPushButton* write_calendar_;
    std::optional<workflow::ScheduleAnswer> answer_;
};

}  // namespace evenfall::desktop

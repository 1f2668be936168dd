// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"
#include "app/workflow/schedule.h"

#include <QTime>
#include <QWidget>
#include <array>
#include <optional>
#include <string>

class QCheckBox;
class QComboBox;
class QSpinBox;
class QTimeEdit;

namespace evenfall::desktop {

/// What a schedule is asked for: site, months of weather, year, program and watering rule.
/// Tests: tests/app/desktop_schedule_test.cpp
class ScheduleChoices : public QWidget {
    Q_OBJECT

  public:
    explicit ScheduleChoices(Session& session, QWidget* parent = nullptr);
    /// Anew from the book; the site stays where it is still there. Says site_changed().
    void fill();
    void choose_site(const std::string& site);
    /// Allowed days, Monday first, and the window, in place of the book's rule.
    void set_rule(const std::array<bool, 7>& days, const QTime& from, const QTime& to, int at_once);
    /// Nothing when there is nothing to ask, for a reason that can be said.
    std::optional<workflow::ScheduleQuestion> question() const;
    QString why_no_question() const;
    QString site_title() const;

  Q_SIGNALS:
    void site_changed();
    /// After any choice, of a site too.
    void changed();

  private:
    void site_chosen();
    void rule_chosen();
    void say_changed();
    std::optional<schedule::WateringRule> own_rule() const;

    Session& session_;
    QComboBox* site_;
    QComboBox* from_;
    QComboBox* to_;
    QSpinBox* year_;
    QComboBox* program_;
    QComboBox* rule_;
    QWidget* own_;
    std::array<QCheckBox*, 7> days_{};
    QTimeEdit* opens_;
    QTimeEdit* closes_;
    QSpinBox* at_once_;
    bool filling_ = false;
};

}  // namespace evenfall::desktop

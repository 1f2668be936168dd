// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"
#include "app/workflow/review_desk.h"

#include <QWidget>
#include <array>

class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace evenfall::desktop {

/// Where the officer decides: what, why, who, and how much. Only what may follow is offered; answers
/// that somebody will want explained are not written without a reason.
/// Tests: tests/app/desktop_review_test.cpp
class DecisionBox : public QWidget {
    Q_OBJECT

  public:
    explicit DecisionBox(Session& session, QWidget* parent = nullptr);
    void show_case(const workflow::ReviewedCase* c);
    /// The keyboard goes to the first answer that can be given.
    void take_focus();
    void choose(workflow::OfficerSays says);
    void write();
    QPlainTextEdit* reason() const { return reason_; }
    QLineEdit* who() const { return who_; }
    QDoubleSpinBox* amount() const { return amount_; }
    QPushButton* button(workflow::OfficerSays says) const { return says_.at(static_cast<std::size_t>(says)); }
    QPushButton* write_button() const { return write_; }
    QString trouble() const;

  Q_SIGNALS:
    /// The decision is in the book.
    void written();

  private:
    void refresh();
    void answer_chosen();
    std::optional<workflow::OfficerSays> chosen() const;

    Session& session_;
    std::array<QPushButton*, workflow::officer_answers> says_{};
    QPlainTextEdit* reason_;
    QLineEdit* who_;
    QDoubleSpinBox* amount_;
    QPushButton* take_;
    QPushButton* write_;
    QLabel* trouble_;
    QLabel* over_;
    std::string application_;
    review::Status status_ = review::Status::received;
    std::string currency_;
    double by_the_rules_ = 0.0;          ///< payment, were it approved
    std::optional<double> approved_;     ///< what stands approved
    QString rule_reasons_;
};

}  // namespace evenfall::desktop

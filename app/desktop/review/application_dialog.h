// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"
#include "app/workflow/applications.h"

#include <QDialog>

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;

namespace evenfall::desktop {

/// An application opened by hand, for what came on paper or for a filing without a number.
/// Tests: tests/app/desktop_desk_test.cpp
class ApplicationDialog : public QDialog {
    Q_OBJECT

  public:
    /// @param waiting  the filing that it is opened for; null: none
    ApplicationDialog(Session& session, const workflow::KnownPrograms& known, const workflow::WaitingFiling* waiting,
                      QWidget* parent = nullptr);
    QLineEdit* number() const { return number_; }
    QLineEdit* applicant() const { return applicant_; }
    QComboBox* site() const { return site_; }
    QComboBox* program() const { return program_; }
    QDateEdit* received() const { return received_; }
    QLineEdit* note() const { return note_; }
    QLineEdit* who() const { return who_; }
    QPushButton* open_button() const { return open_; }
    QString trouble() const;

  Q_SIGNALS:
    /// The application is in the book.
    void opened_in_book(const QString& number);

  private:
    void fill(const workflow::WaitingFiling* waiting);
    void write();

    Session& session_;
    workflow::KnownPrograms programs_;  ///< in the order of the box
    std::vector<std::string> filings_;
    QLineEdit* number_;
    QLineEdit* applicant_;
    QComboBox* site_;
    QComboBox* program_;
    QDateEdit* received_;
    QLineEdit* note_;
    QLineEdit* who_;
    QLabel* trouble_;
    QPushButton* open_;
};

}  // namespace evenfall::desktop

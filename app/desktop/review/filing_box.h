// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"
#include "app/workflow/applications.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace evenfall::desktop {

/// Where a filing without an application is put into one, or gets a new one.
/// Tests: tests/app/desktop_desk_test.cpp
class FilingBox : public QWidget {
    Q_OBJECT

  public:
    explicit FilingBox(Session& session, QWidget* parent = nullptr);
    void show_filing(const workflow::WaitingFiling& waiting);
    QComboBox* application() const { return application_; }
    QLineEdit* who() const { return who_; }
    QPushButton* put_button() const { return put_; }
    QPushButton* new_button() const { return new_; }
    QString trouble() const;

  Q_SIGNALS:
    /// The filing belongs to that application now.
    void put(const QString& application);
    void new_wanted();

  private:
    void write();

    Session& session_;
    std::string sha256_;
    QComboBox* application_;
    QLineEdit* who_;
    QPushButton* put_;
    QPushButton* new_;
    QLabel* trouble_;
};

}  // namespace evenfall::desktop

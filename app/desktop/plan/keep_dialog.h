// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace evenfall::desktop {

/// Under which code, site and name a plan is kept in the book.
/// Tests: tests/app/desktop_plan_book_test.cpp
class KeepDialog : public QDialog {
    Q_OBJECT

  public:
    explicit KeepDialog(Session& session, QWidget* parent = nullptr);
    void fill(const std::string& name, const std::string& code, const std::string& site);
    /// What went wrong.
    void say(const QString& trouble);
    std::string plan_name() const;
    std::string plan_code() const;
    std::string plan_site() const;
    std::string by_whom() const;

    QLineEdit* name() const { return name_; }
    QLineEdit* code() const { return code_; }
    QComboBox* site() const { return site_; }
    QLineEdit* who() const { return who_; }
    QPushButton* keep_button() const { return keep_; }
    QString trouble() const;
    QString outlook() const;

  Q_SIGNALS:
    /// Everything that is needed has been typed.
    void keep_wanted();

  private:
    void code_typed();
    void press();

    Session& session_;
    QLineEdit* name_;
    QLineEdit* code_;
    QComboBox* site_;
    QLineEdit* who_;
    QLabel* outlook_;   ///< what keeping it will do
    QLabel* trouble_;
    QPushButton* keep_;
};

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/review/evidence_view.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace evenfall::desktop {

class FigureTable;

/// The raw data beside the claim, rule or question that is chosen.
/// Tests: tests/app/desktop_review_test.cpp
class EvidencePanel : public QWidget {
    Q_OBJECT

  public:
    explicit EvidencePanel(QWidget* parent = nullptr);
    /// @param filing  the raw data; null when there are none
    void show_evidence(const Evidence& evidence, const review::Filing* filing);
    std::vector<FigureTable*> tables() const { return tables_; }
    QString about() const;
    /// The table that has the focus, else the first. False when there is none.
    bool copy() const;

  private:
    void clear_tables();

    QLabel* about_;
    QLabel* why_;
    QLabel* where_;
    QLabel* none_;
    QVBoxLayout* rows_;
    std::vector<FigureTable*> tables_;
};

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/evidence_panel.h"

#include "app/desktop/figure_table.h"
#include "app/desktop/page.h"
#include "app/desktop/review/review_view.h"
#include "app/desktop/shown.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace evenfall::desktop {
namespace {

constexpr int least_table_height = 150;

QLabel* sentence(const QString& object) {
    auto* label = new QLabel;
    label->setObjectName(object);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

EvidencePanel::EvidencePanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap);
    about_ = sentence(QStringLiteral("heading"));
    about_->setAccessibleName(tr("What the evidence is about"));
    why_ = sentence({});
    where_ = sentence(QStringLiteral("faint"));
    none_ = sentence(QStringLiteral("faint"));
    for (QLabel* label : {about_, why_, where_, none_}) column->addWidget(label);
    auto* inside = new QWidget;
    rows_ = new QVBoxLayout(inside);
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setSpacing(gap);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("Evidence"));
    scroll->setWidget(inside);
    // The card shows through.
    inside->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    column->addWidget(scroll, 1);
}

void EvidencePanel::clear_tables() {
    tables_.clear();
    while (QLayoutItem* item = rows_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void EvidencePanel::show_evidence(const Evidence& evidence, const review::Filing* filing) {
    clear_tables();
    about_->setText(evidence.about.isEmpty() ? tr("Evidence") : evidence.about);
    why_->setText(evidence.why);
    why_->setVisible(!evidence.why.isEmpty());
    where_->setText(tr("Where it stands: %1").arg(place_words(evidence.where)));
    where_->setVisible(!evidence.where.empty());
    const auto shown = filing ? evidence_tables(*filing, q(evidence.where.english())) : std::vector<TitledRows>{};
    for (const TitledRows& one : shown) {
        rows_->addWidget(heading(one.title));
        auto* table = new FigureTable(one.title);
        table->setMinimumHeight(least_table_height);
        table->fill(one.heads, one.rows);
        rows_->addWidget(table, static_cast<int>(one.rows.size()) + 1);
        tables_.push_back(table);
    }
    if (evidence.about.isEmpty()) {
        none_->setText(tr("Choose a claim, a rule or a question to see the raw data that it speaks of."));
    } else if (evidence.where.empty()) {
        none_->setText(tr("It points at nothing in the filing."));
    } else {
        none_->setText(tr("The filing holds no raw data there."));
    }
    none_->setVisible(shown.empty());
}

QString EvidencePanel::about() const { return about_->text(); }

bool EvidencePanel::copy() const {
    for (const FigureTable* t : tables_) {
        if (t->hasFocus()) return t->copy();
    }
    return !tables_.empty() && tables_.front()->copy();
}

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/conflicts_panel.h"

#include "app/desktop/appearance.h"
#include "app/desktop/page.h"
#include "app/desktop/shown.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace evenfall::desktop {

using store::Stands;

ConflictsPanel::ConflictsPanel(QWidget* parent)
    : QWidget(parent), model_(new ConflictsModel(this)), table_(new QTableView), state_(faint({})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    table_->setModel(model_);
    table_->setAccessibleName(tr("Where the book and the files differ"));
    table_->setAccessibleDescription(
        tr("1 lets the book's value stand, 2 the file's, 0 neither yet; the space bar goes through the three. "
           "Press Return to see the place in the file"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setWordWrap(false);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setTabKeyNavigation(false);
    table_->setFrameShape(QFrame::NoFrame);
    table_->verticalHeader()->setDefaultSectionSize(26);
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table_->verticalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->setColumnWidth(ConflictsModel::place, 190);
    table_->setColumnWidth(ConflictsModel::record, 290);
    table_->setColumnWidth(ConflictsModel::choice, 120);
    for (const int values : {ConflictsModel::in_book, ConflictsModel::in_file}) {
        table_->horizontalHeader()->setSectionResizeMode(values, QHeaderView::Stretch);
    }
    table_->installEventFilter(this);
    column->addWidget(table_, 1);
    auto* row = new QHBoxLayout;
    row->setSpacing(gap);
    const auto add = [&](const QString& text, const QString& tip, auto action) {
        auto* button = new QPushButton(text);
        button->setToolTip(tip);
        connect(button, &QPushButton::clicked, this, action);
        row->addWidget(button);
    };
    add(tr("As in the book"), tr("For the selected rows; key 1"), [this] { choose(Stands::in_book); });
    add(tr("As in the file"), tr("For the selected rows; key 2"), [this] { choose(Stands::in_file); });
    add(tr("Not chosen"), tr("For the selected rows; key 0"), [this] { choose(Stands::undecided); });
    state_->setTextFormat(Qt::PlainText);
    state_->setWordWrap(true);
    row->addWidget(state_, 1);
    add(tr("All as in the book"), tr("For every row"), [this] { choose_all(Stands::in_book); });
    add(tr("All as in the file"), tr("For every row"), [this] { choose_all(Stands::in_file); });
    column->addLayout(row);
    connect(table_, &QTableView::activated, this, &ConflictsPanel::show_place);
}

void ConflictsPanel::show_choices(std::shared_ptr<ConflictChoices> choices) {
    left_ = 0;
    model_->show(std::move(choices));
    if (model_->rowCount() > 0) table_->setCurrentIndex(model_->index(0, 0));
    count();
}

void ConflictsPanel::choose(Stands stands) {
    model_->set(table_->selectionModel()->selection(), stands);
    left_ = 0;
    count();
}

void ConflictsPanel::choose_all(Stands stands) {
    left_ = model_->set_all(stands);
    count();
}

void ConflictsPanel::choose_next() {
    const QModelIndex at = table_->currentIndex();
    if (!at.isValid()) return;
    switch (choices()->at(at.row())) {
        case Stands::undecided: choose(Stands::in_book); return;
        case Stands::in_book: choose(Stands::in_file); return;
        case Stands::in_file: choose(Stands::undecided); return;
    }
}

void ConflictsPanel::show_place(const QModelIndex& index) {
    const auto row = model_->row(index.row());
    if (row && row->row != 0) Q_EMIT place_chosen(q(row->file), row->row, q(row->column));
}

void ConflictsPanel::count() {
    if (!choices()) {
        state_->clear();
        return;
    }
    const auto number = [this](Stands stands) { return shown_number(static_cast<double>(choices()->chosen(stands)), 0); };
    QString words = tr("%1 as in the book, %2 as in the file, %3 not chosen")
                        .arg(number(Stands::in_book), number(Stands::in_file), number(Stands::undecided));
    if (left_ > 0) {
        words += QLatin1Char('\n') + tr("Rows left as they were: %1. The files have several values for one record there, and "
                                        "one of them can stand. Choose it yourself.")
                                         .arg(shown_number(static_cast<double>(left_), 0));
    }
    state_->setText(words);
}

bool ConflictsPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress && choices()) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = (key->modifiers() & ~Qt::KeyboardModifiers(Qt::KeypadModifier)) == Qt::NoModifier;
        if (plain) {
            switch (key->key()) {
                case Qt::Key_1: choose(Stands::in_book); return true;
                case Qt::Key_2: choose(Stands::in_file); return true;
                case Qt::Key_0: choose(Stands::undecided); return true;
                case Qt::Key_Space: choose_next(); return true;
                default: break;
            }
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/can_grid.h"

#include "app/desktop/field_sheet/sheet_model.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QInputDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QStyledItemDelegate>

namespace evenfall::desktop {
namespace {

/// A plain line that takes any text: what is no number stays where it was typed and is marked.
class ReadingDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const override {
        auto* line = new QLineEdit(parent);
        line->setAlignment(Qt::AlignRight);
        line->setFrame(false);
        line->setStyleSheet(QStringLiteral("QLineEdit { padding: 0 3px; min-height: 0; }"));
        line->setAccessibleName(CanGrid::tr("Reading"));
        return line;
    }

    bool eventFilter(QObject* object, QEvent* event) override {
        auto* editor = qobject_cast<QLineEdit*>(object);
        if (editor && event->type() == QEvent::KeyPress) {
            auto* key = static_cast<QKeyEvent*>(event);
            const bool sideways = key->key() == Qt::Key_Left || key->key() == Qt::Key_Right;
            // Left and right move the cursor within a text that is being corrected.
            const bool at_edge = (key->key() == Qt::Key_Left && editor->cursorPosition() == 0) ||
                                 (key->key() == Qt::Key_Right && editor->cursorPosition() == editor->text().size());
            const bool moves = key->key() == Qt::Key_Up || key->key() == Qt::Key_Down ||
                               key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter ||
                               (sideways && at_edge);
            if (moves) {
                QWidget* view = editor->parentWidget()->parentWidget();
                Q_EMIT commitData(editor);
                Q_EMIT closeEditor(editor, QAbstractItemDelegate::NoHint);
                QKeyEvent again(QEvent::KeyPress, key->key(), key->modifiers(), key->text());
                QApplication::sendEvent(view, &again);
                return true;
            }
        }
        return QStyledItemDelegate::eventFilter(object, event);
    }
};

}  // namespace

CanGrid::CanGrid(SheetModel& model, QWidget* parent) : QTableView(parent), model_(model) {
    setModel(&model);
    setItemDelegate(new ReadingDelegate(this));
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                    QAbstractItemView::EditKeyPressed);
    setTabKeyNavigation(false);
    setAccessibleName(tr("Catch cans as they stand on the ground"));
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    horizontalHeader()->setMinimumSectionSize(48);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(34);
    horizontalHeader()->setHighlightSections(false);
    verticalHeader()->setHighlightSections(false);
    setCornerButtonEnabled(false);
    setCurrentIndex(model.first_of_walk());
    connect(&model, &QAbstractItemModel::modelReset, this, [this] { setCurrentIndex(model_.first_of_walk()); });
}

void CanGrid::walk(int steps) { setCurrentIndex(model_.along_walk(currentIndex(), steps)); }

void CanGrid::keyPressEvent(QKeyEvent* event) {
    if (state() != EditingState) {
        switch (event->key()) {
            case Qt::Key_Return:
            case Qt::Key_Enter:
                walk(event->modifiers() & Qt::ShiftModifier ? -1 : 1);
                event->accept();
                return;
            case Qt::Key_Delete:
            case Qt::Key_Backspace:
                model_.setData(currentIndex(), QString(), Qt::EditRole);
                event->accept();
                return;
            case Qt::Key_E:
                if (event->modifiers() & Qt::ControlModifier) {
                    exclude_current();
                    event->accept();
                    return;
                }
                break;
            default:
                break;
        }
    }
    QTableView::keyPressEvent(event);
}

void CanGrid::exclude_current() {
    const QModelIndex cell = currentIndex();
    const int n = model_.can_at(cell);
    if (n < 0) return;
    const QStringList usual{QString(), tr("tipped over"), tr("hit by a wheel"), tr("sprinkler struck the can"),
                            tr("leaves or soil in the can")};
    bool ok = false;
    const QString reason = QInputDialog::getItem(
        this, tr("Leave out a can"),
        tr("Why does this can not count? The reason is printed in the report. Empty: it counts."), usual, 0,
        true, &ok);
    if (ok) model_.exclude(cell, reason);
}

void CanGrid::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    menu.addAction(tr("Leave out or count again…"), this, &CanGrid::exclude_current);
    menu.addAction(tr("Empty"), this, [this] { model_.setData(currentIndex(), QString(), Qt::EditRole); });
    menu.exec(event->globalPos());
}

}  // namespace evenfall::desktop

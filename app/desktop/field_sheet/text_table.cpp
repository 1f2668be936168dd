// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/text_table.h"

#include "app/desktop/appearance.h"

#include <QComboBox>
#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

namespace evenfall::desktop {
namespace {

/// Property of an editor that has been used; it is still there until the next event.
constexpr const char* chosen = "chosen";

/// Enter takes what was typed and opens the next cell, so that a list can be typed without the mouse.
class WritingTable : public QTableWidget {
  public:
    using QTableWidget::QTableWidget;

  protected:
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override {
        QTableWidget::closeEditor(
            editor, hint == QAbstractItemDelegate::SubmitModelCache ? QAbstractItemDelegate::EditNextItem : hint);
    }
    void keyPressEvent(QKeyEvent* event) override {
        if (state() != EditingState && (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace)) {
            if (QTableWidgetItem* item = currentItem()) {
                item->setData(Qt::UserRole, QVariant());
                item->setText({});
            }
            event->accept();
            return;
        }
        if (state() != EditingState && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
            edit(currentIndex());
            event->accept();
            return;
        }
        QTableWidget::keyPressEvent(event);
    }
};

/// Lets one of the words be chosen; the first stands for nothing.
class ChoiceDelegate : public QStyledItemDelegate {
  public:
    ChoiceDelegate(Choices choices, QObject* parent) : QStyledItemDelegate(parent), choices_(std::move(choices)) {}
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const override {
        auto* box = new QComboBox(parent);
        box->addItem(QString(), QString());
        for (const auto& [value, words] : choices_) box->addItem(words, value);
        // Who opens the cell wants to see the words.
        QTimer::singleShot(0, box, [box] {
            if (box->property(chosen).toBool()) return;
            box->showPopup();
        });
        auto* self = const_cast<ChoiceDelegate*>(this);
        connect(box, &QComboBox::activated, self, [self, box] {
            box->setProperty(chosen, true);
            Q_EMIT self->commitData(box);
            Q_EMIT self->closeEditor(box, QAbstractItemDelegate::SubmitModelCache);
        });
        return box;
    }
    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        auto* box = static_cast<QComboBox*>(editor);
        box->setCurrentIndex(std::max(0, box->findData(index.data(Qt::UserRole).toString())));
    }
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
        const auto* box = static_cast<const QComboBox*>(editor);
        // An odd value from elsewhere stays until another one is chosen.
        if (box->currentIndex() == 0 && box->findData(index.data(Qt::UserRole).toString()) < 0) return;
        model->setItemData(index, {{Qt::UserRole, box->currentData()}, {Qt::EditRole, box->currentText()}});
    }

  private:
    Choices choices_;
};

}  // namespace

TextTable::TextTable(const QStringList& heads, const QString& name, QWidget* parent)
    : QWidget(parent),
      table_(new WritingTable(1, static_cast<int>(heads.size()), this)),
      problem_(new QLabel),
      choices_(static_cast<std::size_t>(heads.size())) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, gap, 0, 0);
    column->addWidget(table_, 1);
    problem_->setObjectName(QStringLiteral("warn"));
    problem_->setTextFormat(Qt::PlainText);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    table_->setHorizontalHeaderLabels(heads);
    table_->setAccessibleName(name);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->verticalHeader()->setHighlightSections(false);
    table_->verticalHeader()->setDefaultSectionSize(30);
    table_->setTabKeyNavigation(false);
    table_->setCurrentCell(0, 0);
    setFocusProxy(table_);
    connect(table_, &QTableWidget::itemChanged, this, [this] {
        if (filling_) return;
        mark();
        Q_EMIT edited();
    });
}

TextTable::~TextTable() { disconnect(table_, nullptr, this, nullptr); }

void TextTable::keep_narrow(const std::vector<int>& columns) {
    for (const int c : columns) table_->horizontalHeader()->setSectionResizeMode(c, QHeaderView::ResizeToContents);
}

void TextTable::set_choices(int column, Choices choices) {
    table_->setItemDelegateForColumn(column, new ChoiceDelegate(choices, this));
    choices_[static_cast<std::size_t>(column)] = std::move(choices);
}

QString TextTable::shown_for(int column, const QString& value) const {
    for (const auto& [kept, words] : choices_[static_cast<std::size_t>(column)]) {
        if (kept == value) return words;
    }
    return value;
}

QString TextTable::value_at(int row, int column) const {
    const QTableWidgetItem* item = table_->item(row, column);
    if (!item) return {};
    return choices_[static_cast<std::size_t>(column)].empty() ? item->text().trimmed() : item->data(Qt::UserRole).toString();
}

void TextTable::set_rows(const std::vector<QStringList>& rows) {
    if (rows == this->rows()) return;
    filling_ = true;
    table_->setRowCount(static_cast<int>(rows.size()) + 1);
    for (int r = 0; r < table_->rowCount(); ++r) {
        for (int c = 0; c < table_->columnCount(); ++c) {
            const QString value = r < static_cast<int>(rows.size()) ? rows[static_cast<std::size_t>(r)].value(c) : QString();
            auto* item = new QTableWidgetItem(shown_for(c, value));
            if (!choices_[static_cast<std::size_t>(c)].empty()) item->setData(Qt::UserRole, value);
            table_->setItem(r, c, item);
        }
    }
    filling_ = false;
    mark();
}

std::vector<QStringList> TextTable::rows() const {
    std::vector<QStringList> out;
    for (int r = 0; r < table_->rowCount(); ++r) {
        QStringList row;
        for (int c = 0; c < table_->columnCount(); ++c) row << value_at(r, c);
        if (!row.join(QString()).isEmpty()) out.push_back(row);
    }
    return out;
}

void TextTable::set_check(std::function<QString(int, const QStringList&)> check) {
    check_ = std::move(check);
    mark();
}

QString TextTable::problem() const { return problem_->text(); }

void TextTable::mark() {
    filling_ = true;
    QString first;
    if (static_cast<int>(rows().size()) == table_->rowCount()) table_->insertRow(table_->rowCount());
    for (int r = 0; r < table_->rowCount() && check_; ++r) {
        QStringList row;
        for (int c = 0; c < table_->columnCount(); ++c) row << value_at(r, c);
        const bool empty = row.join(QString()).isEmpty();
        for (int c = 0; c < table_->columnCount(); ++c) {
            const QString wrong = empty ? QString() : check_(c, row);
            if (!wrong.isEmpty() && !table_->item(r, c)) table_->setItem(r, c, new QTableWidgetItem);
            QTableWidgetItem* item = table_->item(r, c);
            if (!item) continue;
            item->setToolTip(wrong);
            item->setForeground(wrong.isEmpty() ? QBrush() : QBrush(look().warn));
            if (!wrong.isEmpty() && first.isEmpty()) {
                first = tr("Row %1, %2: %3").arg(r + 1).arg(table_->horizontalHeaderItem(c)->text(), wrong);
            }
        }
    }
    problem_->setText(first);
    problem_->setVisible(!first.isEmpty());
    filling_ = false;
}

void TextTable::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) mark();
}

}  // namespace evenfall::desktop

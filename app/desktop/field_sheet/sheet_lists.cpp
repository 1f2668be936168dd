// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_lists.h"

#include "app/desktop/appearance.h"
#include "app/desktop/shown.h"
#include "core/input_error.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace evenfall::desktop {

TextTable::TextTable(const QStringList& heads, const QString& name, QWidget* parent)
    : QWidget(parent), table_(new QTableWidget(1, static_cast<int>(heads.size()), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, gap, 0, 0);
    column->addWidget(table_);
    table_->setHorizontalHeaderLabels(heads);
    table_->setAccessibleName(name);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->verticalHeader()->setDefaultSectionSize(30);
    table_->setTabKeyNavigation(false);
    connect(table_, &QTableWidget::itemChanged, this, [this] {
        if (filling_) return;
        mark();
        Q_EMIT edited();
    });
}

void TextTable::set_rows(const std::vector<QStringList>& rows) {
    if (rows == this->rows()) return;
    filling_ = true;
    table_->setRowCount(static_cast<int>(rows.size()) + 1);
    for (int r = 0; r < table_->rowCount(); ++r) {
        for (int c = 0; c < table_->columnCount(); ++c) {
            const bool has = r < static_cast<int>(rows.size());
            table_->setItem(r, c, new QTableWidgetItem(has ? rows[static_cast<std::size_t>(r)].value(c) : QString()));
        }
    }
    filling_ = false;
    mark();
}

std::vector<QStringList> TextTable::rows() const {
    std::vector<QStringList> out;
    for (int r = 0; r < table_->rowCount(); ++r) {
        QStringList row;
        bool any = false;
        for (int c = 0; c < table_->columnCount(); ++c) {
            const QTableWidgetItem* item = table_->item(r, c);
            row << (item ? item->text().trimmed() : QString());
            any = any || !row.back().isEmpty();
        }
        if (any) out.push_back(row);
    }
    return out;
}

void TextTable::set_check(std::function<QString(int, const QString&)> check) {
    check_ = std::move(check);
    mark();
}

void TextTable::mark() {
    filling_ = true;
    if (static_cast<int>(rows().size()) == table_->rowCount()) table_->insertRow(table_->rowCount());
    for (int r = 0; r < table_->rowCount() && check_; ++r) {
        for (int c = 0; c < table_->columnCount(); ++c) {
            QTableWidgetItem* item = table_->item(r, c);
            if (!item) continue;
            const QString wrong = item->text().isEmpty() ? QString() : check_(c, item->text());
            item->setToolTip(wrong);
            item->setForeground(wrong.isEmpty() ? QBrush() : QBrush(look().warn));
        }
    }
    filling_ = false;
}

TextTable* make_pressure_table(FieldSheet& sheet, QWidget* parent) {
    auto* table = new TextTable({TextTable::tr("Where measured"), TextTable::tr("Pressure, with unit")},
                                TextTable::tr("Pressures"), parent);
    table->set_check([](int column, const QString& text) -> QString {
        if (column != 1) return {};
        try {
            (void)units::parse_measure<units::Pressure>(utf8(text));
            return {};
        } catch (const InputError& e) {
            return q(e.issues().front().text());
        }
    });
    const auto show = [&sheet, table] {
        std::vector<QStringList> rows;
        for (const auto& p : sheet.data().pressures) rows.push_back({q(p.place), q(p.value)});
        table->set_rows(rows);
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, table, show);
    QObject::connect(table, &TextTable::edited, &sheet, [&sheet, table] {
        std::vector<SheetPressure> out;
        for (const QStringList& r : table->rows()) out.push_back({utf8(r.value(0)), utf8(r.value(1))});
        sheet.set(&SheetData::pressures, out, TextTable::tr("Pressures"));
    });
    return table;
}

TextTable* make_finding_table(FieldSheet& sheet, QWidget* parent) {
    auto* table = new TextTable({TextTable::tr("What was seen"), TextTable::tr("Where"), TextTable::tr("How many")},
                                TextTable::tr("Findings"), parent);
    const auto show = [&sheet, table] {
        std::vector<QStringList> rows;
        for (const auto& f : sheet.data().findings) rows.push_back({q(f.what), q(f.place), q(f.count)});
        table->set_rows(rows);
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, table, show);
    QObject::connect(table, &TextTable::edited, &sheet, [&sheet, table] {
        std::vector<SheetFinding> out;
        for (const QStringList& r : table->rows()) {
            out.push_back({utf8(r.value(0)), utf8(r.value(1)), utf8(r.value(2))});
        }
        sheet.set(&SheetData::findings, out, TextTable::tr("Findings"));
    });
    return table;
}

QWidget* make_notes(FieldSheet& sheet, QWidget* parent) {
    auto* page = new QWidget(parent);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, gap, 0, 0);
    auto* notes = new QPlainTextEdit;
    notes->setAccessibleName(TextTable::tr("Notes"));
    notes->setPlaceholderText(TextTable::tr("Weather, soil, what to look at next time"));
    notes->setTabChangesFocus(true);
    column->addWidget(notes, 1);
    auto* photos = new QListWidget;
    photos->setAccessibleName(TextTable::tr("Photos"));
    photos->setMaximumHeight(90);
    auto* row = new QHBoxLayout;
    auto* add = new QPushButton(TextTable::tr("Add photos…"));
    auto* remove = new QPushButton(TextTable::tr("Remove from the list"));
    row->addWidget(add);
    row->addWidget(remove);
    row->addStretch(1);
    column->addWidget(photos);
    column->addLayout(row);
    const auto show = [&sheet, notes, photos] {
        if (utf8(notes->toPlainText()) != sheet.data().notes) notes->setPlainText(q(sheet.data().notes));
        photos->clear();
        for (const auto& p : sheet.data().photos) photos->addItem(q(p));
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, page, show);
    // A step per text when the field is left would lose words in a crash: a step per change, and
    // steps that follow each other in the same text are one.
    QObject::connect(notes, &QPlainTextEdit::textChanged, &sheet, [&sheet, notes] {
        sheet.set(&SheetData::notes, utf8(notes->toPlainText()), TextTable::tr("Notes"));
    });
    QObject::connect(add, &QPushButton::clicked, page, [&sheet, page] {
        const QStringList files = QFileDialog::getOpenFileNames(
            page, TextTable::tr("Add photos"), QString(), TextTable::tr("Pictures (*.jpg *.jpeg *.png)"));
        if (files.isEmpty()) return;
        auto list = sheet.data().photos;
        for (const QString& f : files) list.push_back(utf8(f));
        sheet.set(&SheetData::photos, list, TextTable::tr("Photos"));
    });
    QObject::connect(remove, &QPushButton::clicked, page, [&sheet, photos] {
        const int n = photos->currentRow();
        if (n < 0) return;
        auto list = sheet.data().photos;
        list.erase(list.begin() + n);
        sheet.set(&SheetData::photos, list, TextTable::tr("Photos"));
    });
    return page;
}

}  // namespace evenfall::desktop

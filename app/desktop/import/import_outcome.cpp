// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_outcome.h"

#include "app/desktop/appearance.h"
#include "app/desktop/core_words.h"
#include "app/desktop/shown.h"
#include "core/exchange/conflict_words.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFrame>
#include <QHeaderView>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <stdexcept>

namespace evenfall::desktop {
namespace {

/// The column alone, without "column" before it.
QString column_words(const Place& place) {
    if (place.column.empty()) return {};
    return core_words(Place{{}, 0, place.column}.sentence().values().front().values().front());
}

}  // namespace

ImportOutcome::ImportOutcome(QWidget* parent) : QWidget(parent), table_(new QTableWidget(0, 4)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    table_->setHorizontalHeaderLabels({tr("File"), tr("Row"), tr("Column"), tr("Outcome")});
    table_->setAccessibleName(tr("Outcome of the import"));
    table_->setAccessibleDescription(tr("Press Return to see the place in the file"));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setFrameShape(QFrame::NoFrame);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(26);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(table_, 1);
    refused_ = new QPushButton(tr("Write the refused rows to a file…"));
    refused_->hide();
    column->addWidget(refused_, 0, Qt::AlignLeft);
    connect(refused_, &QPushButton::clicked, this, [this] {
        const QString path = QFileDialog::getSaveFileName(this, tr("Write the refused rows to a file…"),
                                                          QStringLiteral("refused.csv"), tr("Tables (*.csv)"));
        if (path.isEmpty()) return;
        try {
            write_refused(path);
        } catch (const std::exception& e) {
            QMessageBox::warning(this, tr("The file was not written"), error_words(e));
        }
    });
    const auto choose = [this](int line) {
        const auto* file = table_->item(line, 0);
        const auto* row = table_->item(line, 1);
        if (!file || !row || row->text().isEmpty()) return;
        Q_EMIT place_chosen(file->data(Qt::UserRole).toString(), row->data(Qt::UserRole).toULongLong(),
                            table_->item(line, 2)->text());
    };
    connect(table_, &QTableWidget::currentCellChanged, this, [choose](int line) {
        if (line >= 0) choose(line);
    });
    connect(table_, &QTableWidget::cellActivated, this, choose);
}

void ImportOutcome::add(const QString& file, std::size_t row, const QString& column, const QString& words, bool bad) {
    const int at = table_->rowCount();
    table_->insertRow(at);
    const QStringList cells{QFileInfo(file).fileName(), row ? QString::number(row) : QString(), column, words};
    for (int c = 0; c < 4; ++c) {
        auto* item = new QTableWidgetItem(cells[c]);
        item->setToolTip(cells[c]);
        if (c == 3) item->setData(Qt::UserRole, bad);
        table_->setItem(at, c, item);
    }
    table_->item(at, 0)->setData(Qt::UserRole, file);
    table_->item(at, 1)->setData(Qt::UserRole, static_cast<qulonglong>(row));
}

QString ImportOutcome::difference_words(const exchange::Conflict& c) {
    const QStringList values{core_words(exchange::record_words(c.record)), core_words(exchange::value_words(c.record, c.in_book)),
                             core_words(exchange::value_words(c.record, c.in_file))};
    switch (c.stands) {
        case store::Stands::undecided: break;
        case store::Stands::in_book:
            return tr("%1: the book has %2, the file %3; the book's stands").arg(values[0], values[1], values[2]);
        case store::Stands::in_file:
            return tr("%1: the book has %2, the file %3; the file's stands").arg(values[0], values[1], values[2]);
    }
    return tr("%1: the book has %2, the file %3").arg(values[0], values[1], values[2]);
}

void ImportOutcome::add_result(const exchange::ImportResult& r, bool dry) {
    const QString file = q(r.file);
    const auto count = [](std::size_t n) { return shown_number(static_cast<double>(n), 0); };
    const QString what = r.stored ? tr("stored") : dry ? tr("tried, not stored") : tr("not stored");
    add(file, 0, {},
        tr("%1: %2 rows read, %3 new, %4 there already, %5 decided before, %6 with another value, %7 refused")
            .arg(what, count(r.read), count(r.added), count(r.unchanged), count(r.decided_before), count(r.conflicts),
                 count(r.rejected)),
        !r.stored && (r.rejected > 0 || r.open > 0 || !r.complete));
    for (const auto& issue : r.issues) {
        add(file, issue.place.row, column_words(issue.place),
            core_words(Issue{{}, issue.found, issue.expected}.sentence()), true);
    }
    if (r.rejected > r.issues.size()) {
        add(file, 0, {}, tr("and %1 more refused rows; the file of refused rows has all of them")
                             .arg(count(r.rejected - r.issues.size())), true);
    }
    for (const auto& c : r.conflict_list) {
        add(file, c.place.row, column_words(c.place), difference_words(c), c.stands == store::Stands::undecided);
    }
    const std::size_t differing = r.conflicts + r.decided_before;
    if (differing > r.conflict_list.size()) {
        add(file, 0, {}, tr("and %1 more with another value").arg(count(differing - r.conflict_list.size())), r.open > 0);
    }
    for (const auto& note : r.notes) add(file, 0, {}, core_words(note), false);
}

void ImportOutcome::show_results(const std::vector<exchange::ImportResult>& results, const QString& error, bool dry,
                                 const QString& rejects) {
    table_->setRowCount(0);
    rejects_ = rejects;
    refused_->setVisible(QFile::exists(rejects));
    if (!error.isEmpty()) add({}, 0, {}, error, true);
    for (const auto& r : results) add_result(r, dry);
    restyle();
    table_->resizeColumnsToContents();
    for (int c = 0; c < 3; ++c) table_->setColumnWidth(c, table_->columnWidth(c) + 8);
    table_->horizontalHeader()->setStretchLastSection(true);
}

void ImportOutcome::restyle() {
    for (int r = 0; r < table_->rowCount(); ++r) {
        QTableWidgetItem* words = table_->item(r, 3);
        if (words->data(Qt::UserRole).toBool()) words->setForeground(look().warn);
    }
}

bool ImportOutcome::write_refused(const QString& path) const {
    if (!QFile::exists(rejects_)) return false;
    if (QFile::exists(path) && !QFile::remove(path)) {
        throw std::runtime_error(utf8(tr("%1 cannot be replaced").arg(path)));
    }
    QFile from(rejects_);
    if (!from.copy(path)) throw std::runtime_error(utf8(from.errorString()));
    return true;
}

}  // namespace evenfall::desktop

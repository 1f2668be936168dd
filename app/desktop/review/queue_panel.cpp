// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/queue_panel.h"

#include "app/desktop/core_words.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/page.h"
#include "app/desktop/review/review_view.h"
#include "app/workflow/review_batch.h"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace evenfall::desktop {

QueuePanel::QueuePanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    program_ = new QComboBox;
    program_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    program_->setMinimumContentsLength(10);
    program_->addItem(tr("the one that each filing names"), QString());
    for (const auto& name : review::built_in_rebate_names()) {
        program_->addItem(core_words(review::built_in_rebate(name).title), q(name));
    }
    auto* from_file = new QPushButton(tr("From a &file…"));
    connect(from_file, &QPushButton::clicked, this, [this] {
        const QString file = QFileDialog::getOpenFileName(this, tr("Rebate program"), QString(), tr("Programs (*.json)"));
        if (!file.isEmpty()) add_program(file);
    });
    auto* row = new QHBoxLayout;
    row->addWidget(labelled(tr("&Program for new filings"), program_), 1);
    row->addWidget(from_file, 0, Qt::AlignBottom);
    column->addLayout(row);
    state_ = faint({});
    state_->setWordWrap(true);
    column->addWidget(state_);
    table_ = new FigureTable(tr("Applications, in the order in which to look at them"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->share_width({28, 27, 15, 30});
    column->addWidget(table_, 1);
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int now, int, int before) {
        if (now != before) row_chosen(now);
    });
}

void QueuePanel::show_queue(const std::vector<workflow::ReviewedCase>& queue, const std::vector<workflow::WaitingFiling>& waiting) {
    filling_ = true;
    table_->clearSpans();
    table_->fill(queue_table(queue, waiting));
    rows_.clear();
    for (const auto& c : queue) rows_.emplace_back(CaseName{false, c.application.code});
    if (!waiting.empty()) {
        const int heading = static_cast<int>(rows_.size());
        rows_.emplace_back();
        table_->setSpan(heading, 0, 1, table_->columnCount());
        for (int c = 0; c < table_->columnCount(); ++c) table_->item(heading, c)->setFlags(Qt::ItemIsEnabled);
        table_->item(heading, 0)->setToolTip({});
        table_->setRowHeight(heading, table_->verticalHeader()->defaultSectionSize());
    }
    for (const auto& w : waiting) rows_.emplace_back(CaseName{true, w.filing.sha256});
    filling_ = false;
}

bool QueuePanel::mark(const CaseName& name) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (rows_[i] != name) continue;
        filling_ = true;
        table_->setCurrentCell(static_cast<int>(i), 0);
        filling_ = false;
        return true;
    }
    return false;
}

void QueuePanel::step(int by) {
    for (int row = table_->currentRow() + by; row >= 0 && row < static_cast<int>(rows_.size()); row += by) {
        if (!rows_[static_cast<std::size_t>(row)]) continue;
        table_->setCurrentCell(row, 0);
        return;
    }
}

void QueuePanel::row_chosen(int row) {
    if (filling_ || row < 0 || row >= static_cast<int>(rows_.size())) return;
    if (const auto& name = rows_[static_cast<std::size_t>(row)]) Q_EMIT case_chosen(*name);
}

bool QueuePanel::add_program(const QString& file) {
    try {
        known_.push_back(workflow::rebate_named(utf8(file)));
    } catch (const std::exception& e) {
        say(error_words(e), true);
        return false;
    }
    files_[known_.back().name] = utf8(file);
    program_->addItem(core_words(known_.back().title), file);
    program_->setCurrentIndex(program_->count() - 1);
    Q_EMIT program_added();
    return true;
}

std::map<std::string, std::string> QueuePanel::sources() const {
    std::map<std::string, std::string> all;
    for (const auto& name : review::built_in_rebate_names()) all[name] = name;
    for (const auto& [name, path] : files_) all[name] = path;
    return all;
}

std::string QueuePanel::program() const { return utf8(program_->currentData().toString()); }

QString QueuePanel::program_name() const {
    for (const auto& [name, source] : sources()) {
        if (source == program()) return q(name);
    }
    return {};
}

void QueuePanel::say(const QString& words, bool warn) {
    state_->setText(words);
    state_->setObjectName(warn ? QStringLiteral("warn") : QStringLiteral("faint"));
    state_->style()->unpolish(state_);
    state_->style()->polish(state_);
    state_->setVisible(!words.isEmpty());
}

QString QueuePanel::said() const { return state_->text(); }

}  // namespace evenfall::desktop

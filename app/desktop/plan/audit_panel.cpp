// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plan/audit_panel.h"

#include "app/desktop/core_words.h"
#include "app/desktop/figure.h"
#include "app/desktop/page.h"
#include "app/desktop/task.h"
#include "core/exchange/plain_files.h"
#include "core/store/catch_test_store.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <memory>

namespace evenfall::desktop {

AuditPanel::AuditPanel(Session& session, PlanDocument& document, QWidget* parent)
    : QWidget(parent), session_(session), document_(document) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, gap, 0, 0);
    column->setSpacing(gap);
    test_ = new QComboBox;
    test_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    test_->setMinimumContentsLength(10);
    auto* file = new QPushButton(tr("Catches file…"));
    auto* row = new QHBoxLayout;
    row->addWidget(labelled(tr("Catch &test"), test_), 1);
    row->addWidget(file, 0, Qt::AlignBottom);
    column->addLayout(row);
    state_ = faint({});
    state_->setWordWrap(true);
    column->addWidget(state_);
    figures_ = new FigureGrid(2);
    column->addWidget(figures_);
    tabs_ = new QTabWidget;
    heads_ = new FigureTable(tr("Heads against the catch test"));
    cans_ = new FigureTable(tr("Cans: predicted against caught"));
    heads_->setSelectionBehavior(QAbstractItemView::SelectRows);
    tabs_->addTab(heads_, tr("Heads"));
    tabs_->addTab(cans_, tr("Cans"));
    column->addWidget(tabs_, 1);
    evidence_ = new QLabel;
    evidence_->setWordWrap(true);
    evidence_->setTextFormat(Qt::PlainText);
    evidence_->setAccessibleName(tr("Evidence about the chosen head"));
    column->addWidget(evidence_);
    later_.setSingleShot(true);
    later_.setInterval(300);
    connect(&later_, &QTimer::timeout, this, &AuditPanel::compare);
    connect(file, &QPushButton::clicked, this, &AuditPanel::choose_file);
    connect(test_, &QComboBox::currentIndexChanged, this, &AuditPanel::test_chosen);
    connect(heads_, &QTableWidget::currentCellChanged, this, &AuditPanel::show_evidence);
    connect(&document_, &PlanDocument::predicted, this, [this] {
        if (chosen_) later_.start();
    });
    book_changed();
    show_answer();
}

void AuditPanel::book_changed() {
    filling_ = true;
    const QString before = test_->currentData().toString();
    test_->clear();
    test_->addItem(tr("none chosen"), QString());
    if (session_.has_book()) {
        for (const auto& code : store::catch_test_codes(session_.book(), "")) test_->addItem(q(code), q(code));
    }
    test_->setCurrentIndex(std::max(0, test_->findData(before)));
    filling_ = false;
    test_chosen();
}

void AuditPanel::choose_test(const QString& code) { test_->setCurrentIndex(std::max(0, test_->findData(code))); }

void AuditPanel::test_chosen() {
    if (filling_) return;
    const QString code = test_->currentData().toString();
    chosen_ = code.isEmpty() ? std::nullopt : store::find_catch_test(session_.book(), utf8(code));
    compare();
}

void AuditPanel::choose_file() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Catches"), QString(), tr("Tables (*.csv *.tsv *.txt)"));
    if (path.isEmpty()) return;
    QStringList codes;
    try {
        for (const auto& test : exchange::read_catches(path.toStdString()).tests) codes << q(test.code);
    } catch (const std::exception& e) {
        state_->setText(error_words(e));
        state_->show();
        return;
    }
    bool chosen = true;
    const QString code = codes.size() < 2 ? QString()
                                          : QInputDialog::getItem(this, tr("Catches"), tr("Which test?"), codes, 0, false, &chosen);
    if (chosen) open_catches(path, code);
}

void AuditPanel::open_catches(const QString& path, const QString& test) {
    try {
        chosen_ = workflow::catch_test_in(path.toStdString(), utf8(test));
    } catch (const std::exception& e) {
        state_->setText(error_words(e));
        state_->show();
        return;
    }
    filling_ = true;
    test_->setItemText(0, tr("of the file %1").arg(QFileInfo(path).fileName()));
    test_->setCurrentIndex(0);
    filling_ = false;
    compare();
}

void AuditPanel::compare() {
    later_.stop();
    if (comparing_) {
        again_ = true;
        return;
    }
    if (!chosen_) {
        answer_.reset();
        state_->setText(tr("Choose a catch test made on this ground, with cans in the frame of the plan."));
        show_answer();
        return;
    }
    Task* task = session_.start(tr("Holding the plan against the catch test"));
    if (!task) {
        state_->setText(tr("Other work is going on; choose again when it has ended."));
        state_->show();
        return;
    }
    comparing_ = true;
    state_->setText(tr("Comparing…"));
    state_->show();
    auto found = std::make_shared<std::optional<plan::PlanAgainstAudit>>();
    const auto over = [this, found](const QString& words) {
        comparing_ = false;
        if (again_) {
            again_ = false;
            compare();
            return;
        }
        answer_ = std::move(*found);
        state_->setText(words);
        show_answer();
    };
    connect(task, &Task::stopped_by_user, this, [over] { over(tr("Stopped.")); });
    connect(task, &Task::finished, this, over);
    task->start([found, plan = document_.plan(), test = *chosen_](const TaskContext& context) {
        context.check();
        *found = plan::plan_against_audit(plan, test);
        context.check();
    });
}

void AuditPanel::show_answer() {
    figures_->setVisible(answer_.has_value());
    tabs_->setVisible(answer_.has_value());
    evidence_->setVisible(answer_.has_value());
    if (answer_) {
        const UnitsShown units = session_.units();
        figures_->set_figures(audit_figures(*answer_, units));
        const auto heads = heads_table(*answer_);
        heads_->fill(heads);
        const auto cans = cans_table(*answer_, units);
        cans_->fill(cans);
        QStringList notes;
        for (const auto& note : answer_->notes) notes << core_words(note);
        if (!notes.isEmpty()) state_->setText(notes.join(QLatin1Char('\n')));
    }
    state_->setVisible(!state_->text().isEmpty());
    show_evidence();
    Q_EMIT answered();
}

void AuditPanel::show_evidence() {
    const int row = heads_->currentRow();
    if (!answer_ || row < 0 || row >= static_cast<int>(answer_->heads.size())) {
        evidence_->setText(tr("Choose a head to see the evidence. It says where to look first; only a look at the head tells what is wrong."));
        return;
    }
    const std::size_t index = heads_in_order(*answer_)[static_cast<std::size_t>(row)];
    const plan::HeadOutput& h = answer_->heads[index];
    evidence_->setText(tr("Head %1, %2: %3").arg(q(h.head), verdict_text(h.verdict), core_words(h.evidence)));
    if (heads_->hasFocus()) Q_EMIT head_chosen(static_cast<int>(index));
}

bool AuditPanel::copy() const {
    const auto* table = qobject_cast<const FigureTable*>(tabs_->currentWidget());
    return answer_ && table && table->copy();
}

QString AuditPanel::state() const { return state_->text(); }
QString AuditPanel::evidence() const { return evidence_->text(); }

}  // namespace evenfall::desktop

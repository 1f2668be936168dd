// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/case_panel.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/page.h"
#include "app/desktop/review/decision_box.h"
#include "app/desktop/review/filing_box.h"
#include "app/desktop/review/review_view.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabWidget>
#include <QVBoxLayout>
#include <utility>

namespace evenfall::desktop {

CasePanel::CasePanel(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap);
    title_ = heading({});
    title_->setTextFormat(Qt::PlainText);
    title_->setWordWrap(true);
    summary_ = faint({});
    summary_->setWordWrap(true);
    column->addWidget(title_);
    column->addWidget(summary_);
    build_tables();
    column->addWidget(tabs_, 1);
    auto* row = new QHBoxLayout;
    where_ = faint({});
    where_->setWordWrap(true);
    take_out_ = new QPushButton(tr("Take this filing o&ut"));
    connect(take_out_, &QPushButton::clicked, this, &CasePanel::take_out);
    evidence_ = new QPushButton(tr("&Show the evidence"));
    evidence_->setCheckable(true);
    evidence_->setToolTip(tr("The raw data beside the chosen row (Ctrl+I)"));
    row->addWidget(where_, 1);
    row->addWidget(take_out_);
    row->addWidget(evidence_);
    column->addLayout(row);
    auto* line = new QFrame;
    line->setFrameShape(QFrame::HLine);
    line->setObjectName(QStringLiteral("rule"));
    column->addWidget(line);
    decision_ = new DecisionBox(session);
    filing_box_ = new FilingBox(session);
    box_ = new QStackedWidget;
    box_->addWidget(decision_);
    box_->addWidget(filing_box_);
    box_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    column->addWidget(box_);
    connect(decision_, &DecisionBox::written, this, &CasePanel::case_changed);
}

void CasePanel::build_tables() {
    tabs_ = new QTabWidget;
    const auto add_table = [this](FigureTable*& table, const QString& name, std::vector<int> parts) {
        table = new FigureTable(name);
        table->setSelectionBehavior(QAbstractItemView::SelectRows);
        table->share_width(std::move(parts));
        tabs_->addTab(table, name);
        connect(table, &QTableWidget::currentCellChanged, this, &CasePanel::row_changed);
    };
    add_table(claims_, tr("Figures"), {18, 15, 18, 18, 18, 20});
    add_table(rules_, tr("Rules"), {4, 7, 8, 5});
    add_table(questions_, tr("Questions"), {8, 4});
    add_table(payment_, tr("Payment"), {5, 6, 3});
    letter_ = new QPlainTextEdit;
    letter_->setReadOnly(true);
    letter_->setAccessibleName(tr("Letter to the applicant"));
    tabs_->addTab(letter_, tr("Letter"));
    add_table(history_, tr("History"), {6, 5, 5, 4, 7});
    add_table(filings_, tr("Filings"), {5, 6, 6, 4, 6});
    connect(tabs_, &QTabWidget::currentChanged, this, &CasePanel::row_changed);
}

void CasePanel::show_nothing() {
    case_.reset();
    waiting_.reset();
    fill();
}

void CasePanel::show_application(workflow::ReviewedCase c) {
    waiting_.reset();
    case_ = std::move(c);
    fill();
}

void CasePanel::show_filing(workflow::WaitingFiling waiting) {
    case_ = waiting.reviewed;
    waiting_ = std::move(waiting);
    fill();
}

void CasePanel::set_titles() {
    const auto& a = case_->application;
    const QString name = waiting_ ? tr("Filing %1").arg(stranger_text(waiting_->filing.code)) : stranger_text(a.code);
    title_->setText(tr("%1, %2, site %3").arg(name, stranger_text(a.applicant), stranger_text(a.site)));
    QStringList words;
    if (case_->program) words << tr("Program %1").arg(core_words(case_->program->title));
    else if (!a.program.empty()) words << tr("Program %1").arg(stranger_text(a.program));
    words << (waiting_ ? tr("no application") : tr("status: %1").arg(status_title(a.status())));
    if (case_->review) {
        words << tr("by the rules: %1").arg(decision_title(case_->review->decision))
              << (case_->review->is_signed ? tr("signed") : tr("not signed"))
              << tr("filing %1…").arg(q(case_->review->sha256).left(12));
    }
    if (waiting_ && case_->review && !case_->review->application.empty()) {
        words << tr("it carries the number %1").arg(stranger_text(case_->review->application));
    }
    if (!case_->problem.empty()) words << core_words(case_->problem);
    summary_->setText(words.join(QStringLiteral("  ·  ")));
}

void CasePanel::fill() {
    filling_ = true;
    fill_tables();
    filling_ = false;
    row_changed();
}

void CasePanel::fill_tables() {
    const bool any = case_.has_value();
    tabs_->setEnabled(any);
    decision_->show_case(any && !waiting_ ? &*case_ : nullptr);
    if (waiting_) filing_box_->show_filing(*waiting_);
    box_->setCurrentWidget(waiting_ ? static_cast<QWidget*>(filing_box_) : decision_);
    filings_of_case_.clear();
    if (!any) {
        title_->setText(tr("No application is chosen"));
        summary_->clear();
        for (FigureTable* t : {claims_, rules_, questions_, payment_, history_, filings_}) t->fill({}, {});
        letter_->clear();
        return;
    }
    set_titles();
    for (const auto& f : case_->application.filings) {
        if (auto stored = store::find_filing(session_.book(), f.sha256)) filings_of_case_.push_back(*std::move(stored));
    }
    claims_->fill(claims_table(*case_));
    rules_->fill(rules_table(*case_));
    questions_->fill(questions_table(*case_));
    payment_->fill(payment_table(*case_));
    history_->fill(history_table(*case_));
    filings_->fill(filings_table(filings_of_case_));
    tabs_->setTabText(tabs_->indexOf(questions_), tr("Questions (%1)").arg(case_->review ? case_->review->questions.size() : 0));
    letter_->setPlainText(case_->review ? q(workflow::case_letter(*case_)) : QString());
}

Evidence CasePanel::evidence() const {
    if (!case_) return {};
    const QWidget* tab = tabs_->currentWidget();
    if (tab == claims_) return claim_evidence(*case_, claims_->currentRow());
    if (tab == rules_) return rule_evidence(*case_, rules_->currentRow());
    if (tab == questions_) return question_evidence(*case_, questions_->currentRow());
    return {};
}

void CasePanel::choose_telling_row() {
    if (!case_) return;
    auto* table = qobject_cast<FigureTable*>(tabs_->currentWidget());
    if (!table || table->currentRow() >= 0 || table->rowCount() == 0) return;
    if (table == claims_) table->setCurrentCell(telling_claim(*case_), 0);
    if (table == rules_) table->setCurrentCell(telling_rule(*case_), 0);
    if (table == questions_) table->setCurrentCell(0, 0);
}

void CasePanel::row_changed() {
    // Half a case is no case.
    if (filling_) return;
    const bool on_filings = tabs_->currentWidget() == filings_;
    const Sentence where = evidence().where;
    where_->setText(on_filings      ? QString()
                    : where.empty() ? tr("Choose a row to see where its evidence stands.")
                                    : tr("Evidence: %1").arg(place_words(where)));
    take_out_->setVisible(on_filings && !waiting_);
    take_out_->setEnabled(case_ && !waiting_ && session_.can_write() && filings_->currentRow() >= 0 &&
                          workflow::waits_for_decision(case_->application.status()));
    Q_EMIT evidence_changed();
}

void CasePanel::take_out() {
    const int row = filings_->currentRow();
    if (!case_ || row < 0 || row >= static_cast<int>(filings_of_case_.size())) return;
    const auto& filing = filings_of_case_[static_cast<std::size_t>(row)];
    try {
        workflow::take_out_filings(session_.book(), {case_->application.code, {filing.sha256}, user_text(), now_text()});
    } catch (const std::exception& e) {
        QMessageBox::warning(this, tr("The filing was not taken out"), error_words(e));
        return;
    }
    session_.say(tr("Filing %1 belongs to no application now.").arg(stranger_text(filing.code)));
    Q_EMIT case_changed();
}

void CasePanel::decide() {
    if (waiting_) {
        (filing_box_->put_button()->isEnabled() ? filing_box_->put_button() : filing_box_->new_button())->setFocus(Qt::ShortcutFocusReason);
        return;
    }
    decision_->take_focus();
}

void CasePanel::write_decision() {
    if (!waiting_ && decision_->write_button()->isEnabled()) decision_->write();
}

FigureTable* CasePanel::table(const QString& name) const {
    if (name == QStringLiteral("claims")) return claims_;
    if (name == QStringLiteral("rules")) return rules_;
    if (name == QStringLiteral("questions")) return questions_;
    if (name == QStringLiteral("payment")) return payment_;
    if (name == QStringLiteral("filings")) return filings_;
    return name == QStringLiteral("history") ? history_ : nullptr;
}

QString CasePanel::title() const { return title_->text(); }
QString CasePanel::summary() const { return summary_->text(); }
QString CasePanel::letter() const { return letter_->toPlainText(); }

bool CasePanel::copy() const {
    if (!case_) return false;
    if (tabs_->currentWidget() == letter_) {
        copy_text(letter_->toPlainText());
        return true;
    }
    const auto* table = qobject_cast<const FigureTable*>(tabs_->currentWidget());
    return table && table->copy();
}

std::vector<TitledRows> CasePanel::paper() const {
    std::vector<TitledRows> tables;
    if (!case_) return tables;
    const auto add = [&tables](const QString& title, const FigureRows& t) {
        if (!t.rows.empty()) tables.push_back({title, t.heads, t.rows});
    };
    add(tr("Figures"), claims_table(*case_));
    add(tr("Rules"), rules_table(*case_));
    add(tr("Questions"), questions_table(*case_));
    add(tr("Payment"), payment_table(*case_));
    add(tr("History"), history_table(*case_));
    add(tr("Filings"), filings_table(filings_of_case_));
    return tables;
}

}  // namespace evenfall::desktop

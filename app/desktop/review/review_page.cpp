// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/review_page.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/paper.h"
#include "app/desktop/review/add_filings_task.h"
#include "app/desktop/review/decision_box.h"
#include "app/desktop/review/evidence_dialog.h"
#include "app/desktop/review/review_view.h"
#include "app/desktop/task.h"
#include "core/input_error.h"
#include "core/store/application_store.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDir>
#include <QFileDialog>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QStyle>
#include <QTabWidget>
#include <QVBoxLayout>
#include <memory>

namespace evenfall::desktop {

ReviewPage::ReviewPage(Session& session, QWidget* parent)
    : Page(session, tr("Review"),
           tr("Applications with every figure worked out again from the raw data. A question is not a finding: each has innocent answers."),
           parent) {
    add_ = add_action(tr("Add filings…"), true);
    papers_ = add_action(tr("Write memo and letter…"));
    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    auto* left = new QVBoxLayout;
    build_queue(left);
    columns->addWidget(card(left), 5);
    auto* right = new QVBoxLayout;
    right->setSpacing(gap);
    build_case(right);
    columns->addWidget(card(right), 9);
    body()->addLayout(columns, 1);

    retry_.setSingleShot(true);
    retry_.setInterval(60);
    connect(&retry_, &QTimer::timeout, this, &ReviewPage::work_out);
    connect(add_, &QPushButton::clicked, this, [this] {
        add_filings(QFileDialog::getOpenFileNames(this, tr("Filings"), QString(), tr("Filings (*.zip)")));
    });
    connect(papers_, &QPushButton::clicked, this, [this] {
        const QString folder = QFileDialog::getExistingDirectory(
            this, tr("Folder for memo and letter"), QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
        if (!folder.isEmpty()) write_papers(folder, {"pdf"});
    });
    book_changed();
}

void ReviewPage::build_queue(QVBoxLayout* column) {
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
    queue_table_ = new FigureTable(tr("Applications, in the order in which to look at them"));
    queue_table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    queue_table_->setSelectionMode(QAbstractItemView::SingleSelection);
    column->addWidget(queue_table_, 1);
    connect(queue_table_, &QTableWidget::currentCellChanged, this, [this](int row_now, int, int row_before) {
        if (row_now != row_before) queue_row_chosen(row_now);
    });
}

void ReviewPage::build_case(QVBoxLayout* column) {
    title_ = heading({});
    title_->setTextFormat(Qt::PlainText);
    summary_ = faint({});
    summary_->setWordWrap(true);
    column->addWidget(title_);
    column->addWidget(summary_);
    tabs_ = new QTabWidget;
    const auto add_table = [this](FigureTable*& table, const QString& name, std::vector<int> parts) {
        table = new FigureTable(name);
        table->setSelectionBehavior(QAbstractItemView::SelectRows);
        table->share_width(std::move(parts));
        tabs_->addTab(table, name);
        connect(table, &QTableWidget::currentCellChanged, this, &ReviewPage::evidence_changed);
    };
    add_table(claims_, tr("Figures"), {20, 14, 18, 19, 14, 24});
    add_table(rules_, tr("Rules"), {4, 7, 8, 5});
    add_table(questions_, tr("Questions"), {8, 4});
    add_table(payment_, tr("Payment"), {5, 6, 3});
    letter_ = new QPlainTextEdit;
    letter_->setReadOnly(true);
    letter_->setAccessibleName(tr("Letter to the applicant"));
    tabs_->addTab(letter_, tr("Letter"));
    add_table(history_, tr("History"), {6, 5, 5, 4, 7});
    connect(tabs_, &QTabWidget::currentChanged, this, &ReviewPage::evidence_changed);
    column->addWidget(tabs_, 1);
    auto* row = new QHBoxLayout;
    where_ = faint({});
    where_->setWordWrap(true);
    evidence_ = new QPushButton(tr("&Show the evidence"));
    connect(evidence_, &QPushButton::clicked, this, &ReviewPage::show_evidence);
    row->addWidget(where_, 1);
    row->addWidget(evidence_);
    column->addLayout(row);
    auto* line = new QFrame;
    line->setFrameShape(QFrame::HLine);
    line->setObjectName(QStringLiteral("rule"));
    column->addWidget(line);
    decision_ = new DecisionBox(session());
    connect(decision_, &DecisionBox::written, this, &ReviewPage::reload);
    column->addWidget(decision_);
}

void ReviewPage::book_changed() {
    case_.reset();
    queue_.clear();
    reload();
}

/// The queue as it stands in the book at once; worked out and in order when the background is done.
void ReviewPage::reload() {
    const QString before = case_ ? q(case_->application.code) : QString();
    add_->setEnabled(session().can_write());
    add_->setToolTip(session().has_book() && !session().can_write() ? session().read_only_reason() : QString());
    std::vector<workflow::ReviewedCase> next;
    if (session().has_book()) {
        for (auto& a : store::applications(session().book(), "")) {
            workflow::ReviewedCase c;
            c.application = std::move(a);
            next.push_back(std::move(c));
        }
    }
    queue_ = std::move(next);
    show_queue();
    if (!before.isEmpty()) show_application(before);
    if (!case_) show_case();
    say_outcome(!session().has_book() ? tr("No book is open.")
                : queue_.empty()      ? tr("No application yet. Choose the program and add the filings that came in.")
                                      : QString(),
                false);
    worked_out_ = queue_.empty();
    if (!worked_out_) work_out();
}

void ReviewPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    // Other work may have put an end to it while another page was looked at.
    if (!worked_out_) work_out();
}

void ReviewPage::work_out() {
    if (!session().has_book()) return;
    if (session().task() && session().task()->running()) {
        retry_.start();
        return;
    }
    Task* task = session().start(tr("Working out the applications"), true);
    if (!task) return;
    auto found = std::make_shared<std::vector<workflow::ReviewedCase>>();
    connect(task, &Task::finished, this, [this, found](const QString& error) {
        if (!error.isEmpty()) {
            say_outcome(error, true);
            return;
        }
        const QString before = case_ ? q(case_->application.code) : QString();
        queue_ = std::move(*found);
        worked_out_ = true;
        show_queue();
        show_application(before.isEmpty() && !queue_.empty() ? q(queue_.front().application.code) : before);
        Q_EMIT queue_ready();
    });
    const std::string path = session().book_path().toStdString();
    task->start([found, path, known = known_](const TaskContext& context) {
        const auto book = store::Book::open(path, store::Access::read_only);
        *found = workflow::review_queue(book, known, [&context](std::size_t done, std::size_t all) {
            context.check();
            context.report(static_cast<double>(done) / static_cast<double>(all));
        });
    });
}

void ReviewPage::show_queue() {
    filling_ = true;
    queue_table_->fill(queue_table(queue_));
    for (std::size_t i = 0; case_ && i < queue_.size(); ++i) {
        if (queue_[i].application.code == case_->application.code) queue_table_->setCurrentCell(static_cast<int>(i), 0);
    }
    filling_ = false;
}

void ReviewPage::show_application(const QString& code) {
    for (std::size_t i = 0; i < queue_.size(); ++i) {
        if (q(queue_[i].application.code) != code) continue;
        filling_ = true;
        queue_table_->setCurrentCell(static_cast<int>(i), 0);
        filling_ = false;
        queue_row_chosen(static_cast<int>(i));
        return;
    }
}

void ReviewPage::queue_row_chosen(int row) {
    if (filling_ || row < 0 || row >= static_cast<int>(queue_.size())) return;
    const auto& chosen = queue_[static_cast<std::size_t>(row)].application;
    // What is half written must survive the queue being put in order behind it.
    if (case_ && case_->application.code == chosen.code && case_->review &&
        case_->application.history.size() == chosen.history.size() && case_->application.filings.size() == chosen.filings.size()) {
        return;
    }
    try {
        case_ = workflow::review_case(session().book(), chosen.code, known_);
    } catch (const std::exception& e) {
        case_.reset();
        say_outcome(error_words(e), true);
    }
    show_case();
}

void ReviewPage::show_case() {
    const bool any = case_.has_value();
    tabs_->setEnabled(any);
    papers_->setEnabled(any && case_->review);
    decision_->show_case(any ? &*case_ : nullptr);
    if (!any) {
        title_->setText(tr("No application is chosen"));
        summary_->clear();
        for (FigureTable* t : {claims_, rules_, questions_, payment_, history_}) t->fill({}, {});
        letter_->clear();
        evidence_changed();
        return;
    }
    const auto& a = case_->application;
    title_->setText(tr("%1, %2, site %3").arg(q(printable(a.code)), q(printable(a.applicant)), q(printable(a.site))));
    QStringList words{tr("Program %1").arg(case_->program ? core_words(case_->program->title) : q(printable(a.program))),
                      tr("status: %1").arg(status_title(a.status()))};
    if (case_->review) {
        words << tr("by the rules: %1").arg(decision_title(case_->review->decision))
              << (case_->review->is_signed ? tr("signed") : tr("not signed"))
              << tr("filing %1…").arg(q(case_->review->sha256).left(12));
    }
    if (!case_->problem.empty()) words << q(case_->problem);
    summary_->setText(words.join(QStringLiteral("  ·  ")));
    claims_->fill(claims_table(*case_));
    rules_->fill(rules_table(*case_));
    questions_->fill(questions_table(*case_));
    payment_->fill(payment_table(*case_));
    history_->fill(history_table(*case_));
    tabs_->setTabText(2, tr("Questions (%1)").arg(case_->review ? case_->review->questions.size() : 0));
    letter_->setPlainText(case_->review ? q(workflow::case_letter(*case_)) : QString());
    evidence_changed();
}

QString ReviewPage::evidence() const {
    if (!case_) return {};
    QWidget* shown = tabs_->currentWidget();
    if (shown == claims_) return claim_evidence(*case_, claims_->currentRow());
    if (shown == rules_) return rule_evidence(*case_, rules_->currentRow());
    if (shown == questions_) return question_evidence(*case_, questions_->currentRow());
    return {};
}

void ReviewPage::evidence_changed() {
    const QString where = evidence();
    where_->setText(where.isEmpty() ? tr("Choose a row to see where its evidence stands.") : tr("Evidence: %1").arg(where));
    evidence_->setEnabled(case_ && case_->filing && !where.isEmpty() && !evidence_tables(*case_->filing, where).empty());
}

void ReviewPage::show_evidence() {
    const QString where = evidence();
    if (!case_ || !case_->filing || where.isEmpty()) return;
    if (QDialog* dialog = evidence_dialog(*case_->filing, where, this)) dialog->open();
}

void ReviewPage::say_outcome(const QString& words, bool warn) {
    state_->setText(words);
    state_->setObjectName(warn ? QStringLiteral("warn") : QStringLiteral("faint"));
    state_->style()->unpolish(state_);
    state_->style()->polish(state_);
    state_->setVisible(!words.isEmpty());
}

bool ReviewPage::add_program(const QString& file) {
    try {
        known_.push_back(workflow::rebate_named(utf8(file)));
    } catch (const std::exception& e) {
        say_outcome(error_words(e), true);
        return false;
    }
    known_files_[known_.back().name] = utf8(file);
    program_->addItem(core_words(known_.back().title), file);
    program_->setCurrentIndex(program_->count() - 1);
    // Cases of this program were figures only until now.
    const QString before = case_ ? q(case_->application.code) : QString();
    case_.reset();
    reload();
    show_application(before);
    return true;
}

void ReviewPage::add_filings(const QStringList& files) {
    if (files.isEmpty() || !session().can_write()) return;
    Task* task = session().start(tr("Reviewing the filings"));
    if (!task) return;
    AddFilingsOrder order;
    order.book = session().book_path().toStdString();
    for (const QString& file : files) order.files.emplace_back(file.toStdString());
    order.program = utf8(program_->currentData().toString());
    for (const auto& name : review::built_in_rebate_names()) order.known[name] = name;
    for (const auto& [name, path] : known_files_) order.known[name] = path;
    order.at = now_text();
    order.who = user_text();
    auto found = std::make_shared<AddedFilings>();
    connect(task, &Task::stopped_by_user, this, [this] { say_outcome(tr("Stopped; the book is as it was."), false); });
    connect(task, &Task::finished, this, [this, found](const QString& error) {
        reload();
        if (!error.isEmpty()) {
            say_outcome(error, true);
        } else {
            QStringList words{tr("%1 new in the book, %2 refused.").arg(found->added).arg(found->refused)};
            for (const auto& item : found->items) {
                const QString file = q(printable(item.file));
                if (!item.review) {
                    words << file + QStringLiteral(": ") + q(item.refused);
                } else if (item.review->application.empty()) {
                    words << tr("%1 carries no application number; it is kept, and stands in no queue.").arg(file);
                } else if (item.review->program.empty()) {
                    words << tr("%1 names no program that is known here; it is kept. Choose a program and add it again.").arg(file);
                }
            }
            say_outcome(words.join(QLatin1Char('\n')), found->refused > 0);
        }
        Q_EMIT filings_added();
    });
    task->start([found, order](const TaskContext& context) { *found = desktop::add_filings(order, context); });
}

void ReviewPage::write_papers(const QString& folder, const std::vector<std::string>& formats) {
    if (!case_ || !case_->review) return;
    Task* task = session().start(tr("Writing memo and letter"));
    if (!task) return;
    const workflow::ReviewPapers papers{folder.toStdString(), formats, session().units(), now_text(),
                                        "Evenfall " + utf8(QApplication::applicationVersion()), print_program_};
    connect(task, &Task::finished, this, [this, folder](const QString& error) {
        say_outcome(error.isEmpty() ? tr("Memo and letter are in %1.").arg(QDir::toNativeSeparators(folder)) : error, !error.isEmpty());
        Q_EMIT papers_written();
    });
    task->start([papers, review = *case_->review, letter = workflow::case_letter(*case_)](const TaskContext& context) {
        context.check();
        workflow::write_review_papers(review, letter, papers);
    });
}

FigureTable* ReviewPage::table(const QString& name) const {
    if (name == QStringLiteral("queue")) return queue_table_;
    if (name == QStringLiteral("claims")) return claims_;
    if (name == QStringLiteral("rules")) return rules_;
    if (name == QStringLiteral("questions")) return questions_;
    if (name == QStringLiteral("payment")) return payment_;
    return name == QStringLiteral("history") ? history_ : nullptr;
}

QString ReviewPage::state() const { return state_->text(); }
QString ReviewPage::letter() const { return letter_->toPlainText(); }

bool ReviewPage::copy() {
    if (queue_table_->hasFocus()) return queue_table_->copy();
    if (!case_) return false;
    if (tabs_->currentWidget() == letter_) {
        copy_text(letter_->toPlainText());
        return true;
    }
    auto* table = qobject_cast<FigureTable*>(tabs_->currentWidget());
    return table && table->copy();
}

bool ReviewPage::print(QPrinter& printer) {
    if (!case_) return false;
    std::vector<TitledRows> tables;
    const auto add = [&tables](const QString& title, const FigureRows& t) {
        if (!t.rows.empty()) tables.push_back({title, t.heads, t.rows});
    };
    add(tr("Figures"), claims_table(*case_));
    add(tr("Rules"), rules_table(*case_));
    add(tr("Questions"), questions_table(*case_));
    add(tr("Payment"), payment_table(*case_));
    add(tr("History"), history_table(*case_));
    print_paper(printer, title_->text(), tables, {summary_->text()});
    return true;
}

}  // namespace evenfall::desktop

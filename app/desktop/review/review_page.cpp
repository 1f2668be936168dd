// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/review_page.h"

#include "app/desktop/core_words.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/paper.h"
#include "app/desktop/review/application_dialog.h"
#include "app/desktop/review/case_panel.h"
#include "app/desktop/review/decision_box.h"
#include "app/desktop/review/evidence_panel.h"
#include "app/desktop/review/filing_box.h"
#include "app/desktop/task.h"
#include "core/store/application_store.h"

#include <QAction>
#include <QComboBox>
#include <QFileDialog>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeySequence>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>
#include <algorithm>
#include <memory>

namespace evenfall::desktop {
namespace {

constexpr int wide_page = 1400;  ///< from here on queue, case and evidence have room beside each other

QFrame* card_around(QWidget* inside) {
    auto* column = new QVBoxLayout;
    column->addWidget(inside);
    return card(column);
}

}  // namespace

ReviewPage::ReviewPage(Session& session, QWidget* parent)
    : Page(session, tr("Review"),
           tr("Applications with every figure worked out again from the raw data. A question is not a finding: each has innocent answers."),
           parent) {
    add_ = add_action(tr("Add filings…"), true);
    open_ = add_action(tr("New application…"));
    papers_ = add_action(tr("Write memo and letter…"));
    queue_panel_ = new QueuePanel;
    case_panel_ = new CasePanel(session);
    evidence_panel_ = new EvidencePanel;
    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    queue_card_ = card_around(queue_panel_);
    evidence_card_ = card_around(evidence_panel_);
    evidence_card_->hide();
    columns->addWidget(queue_card_, 23);
    columns->addWidget(card_around(case_panel_), 35);
    columns->addWidget(evidence_card_, 23);
    body()->addLayout(columns, 1);

    retry_.setSingleShot(true);
    retry_.setInterval(60);
    connect(&retry_, &QTimer::timeout, this, &ReviewPage::work_out);
    connect(add_, &QPushButton::clicked, this, [this] {
        add_filings(QFileDialog::getOpenFileNames(this, tr("Filings"), QString(), tr("Filings (*.zip)")));
    });
    connect(open_, &QPushButton::clicked, this, [this] { open_by_hand(false); });
    connect(papers_, &QPushButton::clicked, this, [this] {
        const QString folder = QFileDialog::getExistingDirectory(
            this, tr("Folder for memo and letter"), QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
        if (!folder.isEmpty()) write_papers(folder, {"pdf"});
    });
    connect(queue_panel_, &QueuePanel::case_chosen, this, &ReviewPage::show_named);
    connect(queue_panel_, &QueuePanel::program_added, this, [this] {
        // Cases of this program were figures only until now.
        const auto before = shown_name();
        case_panel_->show_nothing();
        reload();
        if (before) show_named(*before);
    });
    connect(case_panel_, &CasePanel::evidence_changed, this, &ReviewPage::evidence_changed);
    connect(case_panel_, &CasePanel::case_changed, this, &ReviewPage::reload);
    connect(case_panel_->evidence_button(), &QPushButton::clicked, this, &ReviewPage::show_evidence);
    connect(case_panel_->filing_box(), &FilingBox::new_wanted, this, [this] { open_by_hand(true); });
    connect(case_panel_->filing_box(), &FilingBox::put, this, [this](const QString& code) {
        reload();
        show_application(code);
    });
    build_actions();
    book_changed();
}

/// In the menu while the page is shown, where their keys stand beside them.
void ReviewPage::build_actions() {
    const auto add = [this](const QString& text, const char* keys, const std::function<void()>& work) {
        auto* action = new QAction(text, this);
        action->setShortcut(QKeySequence(QLatin1String(keys)));
        connect(action, &QAction::triggered, this, work);
        addAction(action);
    };
    add(tr("&Next case"), "Ctrl+PgDown", [this] { queue_panel_->step(1); });
    add(tr("&Previous case"), "Ctrl+PgUp", [this] { queue_panel_->step(-1); });
    add(tr("&Evidence beside the case"), "Ctrl+I", [this] { show_evidence(!case_panel_->evidence_button()->isChecked()); });
    add(tr("&Decide"), "Ctrl+D", [this] { case_panel_->decide(); });
    add(tr("&Write the decision"), "Ctrl+Return", [this] { case_panel_->write_decision(); });
    add(tr("New &application…"), "Ctrl+Shift+N", [this] { open_by_hand(false); });
}

void ReviewPage::book_changed() {
    case_panel_->show_nothing();
    queue_.clear();
    waiting_.clear();
    reload();
}

/// The queue as it stands in the book at once; worked out and in order when the background is done.
void ReviewPage::reload() {
    const auto before = shown_name();
    const bool open = session().can_write();
    for (QPushButton* b : {add_, open_}) {
        b->setEnabled(open);
        b->setToolTip(session().has_book() && !open ? session().read_only_reason() : QString());
    }
    queue_.clear();
    waiting_.clear();
    if (session().has_book()) {
        for (auto& a : store::applications(session().book(), "")) {
            queue_.emplace_back();
            queue_.back().application = std::move(a);
        }
        for (auto& f : store::filings_without_application(session().book())) {
            waiting_.emplace_back();
            waiting_.back().filing = std::move(f);
        }
    }
    show_queue();
    if (before && queue_panel_->mark(*before)) show_named(*before);
    else case_panel_->show_nothing();
    const bool empty = queue_.empty() && waiting_.empty();
    queue_panel_->say(!session().has_book() ? tr("No book is open.")
                      : empty               ? tr("No application yet. Choose the program and add the filings that came in.")
                                            : QString(),
                      false);
    worked_out_ = empty;
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
    struct Found {
        std::vector<workflow::ReviewedCase> queue;
        std::vector<workflow::WaitingFiling> waiting;
    };
    auto found = std::make_shared<Found>();
    connect(task, &Task::finished, this, [this, found](const QString& error) {
        if (!error.isEmpty()) {
            queue_panel_->say(error, true);
            return;
        }
        queue_ = std::move(found->queue);
        waiting_ = std::move(found->waiting);
        worked_out_ = true;
        show_queue();
        if (const auto before = shown_name()) show_named(*before);
        else if (!queue_.empty()) show_named({false, queue_.front().application.code});
        else if (!waiting_.empty()) show_named({true, waiting_.front().filing.sha256});
        Q_EMIT queue_ready();
    });
    const std::string path = session().book_path().toStdString();
    const double all = static_cast<double>(queue_.size() + waiting_.size());
    task->start([found, path, all, known = queue_panel_->known()](const TaskContext& context) {
        const auto book = store::Book::open(path, store::Access::read_only);
        std::size_t before = 0;
        const auto progress = [&](std::size_t done, std::size_t) {
            context.check();
            context.report(std::min(1.0, static_cast<double>(before + done) / all));
        };
        found->queue = workflow::review_queue(book, known, progress);
        before = found->queue.size();
        found->waiting = workflow::waiting_filings(book, known, progress);
    });
}

void ReviewPage::show_queue() {
    queue_panel_->show_queue(queue_, waiting_);
    if (const auto name = shown_name()) queue_panel_->mark(*name);
}

std::optional<CaseName> ReviewPage::shown_name() const {
    if (case_panel_->waiting()) return CaseName{true, case_panel_->waiting()->filing.sha256};
    if (case_panel_->shown()) return CaseName{false, case_panel_->shown()->application.code};
    return std::nullopt;
}

/// What is half written must survive the queue being put in order behind it.
bool ReviewPage::shown_stands(const CaseName& name) const {
    if (shown_name() != name || !case_panel_->shown()->review) return false;
    if (name.is_filing) return true;
    const auto& shown = case_panel_->shown()->application;
    const auto now = std::find_if(queue_.begin(), queue_.end(), [&](const auto& c) { return c.application.code == name.name; });
    return now != queue_.end() && now->application.history.size() == shown.history.size() &&
           now->application.filings.size() == shown.filings.size();
}

void ReviewPage::show_named(const CaseName& name) {
    if (!queue_panel_->mark(name) || shown_stands(name)) return;
    try {
        if (name.is_filing) {
            case_panel_->show_filing(workflow::waiting_filing(session().book(), name.name, queue_panel_->known()));
        } else {
            case_panel_->show_application(workflow::review_case(session().book(), name.name, queue_panel_->known()));
        }
    } catch (const std::exception& e) {
        case_panel_->show_nothing();
        queue_panel_->say(error_words(e), true);
    }
}

void ReviewPage::evidence_changed() {
    const auto& c = case_panel_->shown();
    papers_->setEnabled(c && c->review);
    if (evidence_card_->isHidden()) return;
    case_panel_->choose_telling_row();
    evidence_panel_->show_evidence(case_panel_->evidence(), c && c->filing ? &*c->filing : nullptr);
}

void ReviewPage::show_evidence(bool shown) {
    evidence_asked_ = true;
    case_panel_->evidence_button()->setChecked(shown);
    share_room();
}

/// On a narrow page the evidence stands in the queue's room.
void ReviewPage::share_room() {
    const bool shown = case_panel_->evidence_button()->isChecked();
    evidence_card_->setVisible(shown);
    queue_card_->setVisible(!shown || width() >= wide_page);
    evidence_changed();
}

void ReviewPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    if (!evidence_asked_) case_panel_->evidence_button()->setChecked(width() >= wide_page);
    share_room();
}

const std::optional<workflow::ReviewedCase>& ReviewPage::shown_case() const { return case_panel_->shown(); }
DecisionBox* ReviewPage::decision() const { return case_panel_->decision(); }
QString ReviewPage::letter() const { return case_panel_->letter(); }

FigureTable* ReviewPage::table(const QString& name) const {
    return name == QStringLiteral("queue") ? queue_panel_->table() : case_panel_->table(name);
}

ApplicationDialog* ReviewPage::open_by_hand(bool for_filing) {
    if (!session().can_write()) return nullptr;
    const auto& waiting = case_panel_->waiting();
    auto* dialog = new ApplicationDialog(session(), queue_panel_->known(), for_filing && waiting ? &*waiting : nullptr, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    // The program that new filings are judged by, unless the filing names another.
    if (const QString program = queue_panel_->program_name(); !program.isEmpty() && !(for_filing && waiting)) {
        dialog->program()->setCurrentIndex(std::max(0, dialog->program()->findData(program)));
    }
    connect(dialog, &ApplicationDialog::opened_in_book, this, [this](const QString& number) {
        reload();
        show_application(number);
    });
    dialog->open();
    return dialog;
}

bool ReviewPage::copy() {
    if (queue_panel_->table()->hasFocus()) return queue_panel_->table()->copy();
    if (evidence_panel_->isAncestorOf(focusWidget())) return evidence_panel_->copy();
    return case_panel_->copy();
}

bool ReviewPage::print(QPrinter& printer) {
    if (!case_panel_->shown()) return false;
    print_paper(printer, case_panel_->title(), case_panel_->paper(), {case_panel_->summary()});
    return true;
}

}  // namespace evenfall::desktop

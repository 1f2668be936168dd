// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_page.h"

#include "app/desktop/import/import_run_task.h"
#include "app/desktop/task.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>
#include <memory>

namespace evenfall::desktop {
namespace {

constexpr std::size_t preview_rows = 200;

QTableWidget* plain_table(const QString& name) {
    auto* table = new QTableWidget;
    table->setAccessibleName(name);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->setFrameShape(QFrame::NoFrame);
    table->verticalHeader()->setDefaultSectionSize(26);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return table;
}

}  // namespace

ImportPage::ImportPage(Session& session, QWidget* parent)
    : Page(session, tr("Import"), tr("Tables as you have them. Nothing goes into the book before you have seen what would happen."),
           parent) {
    setAcceptDrops(true);
    auto* choose = add_action(tr("Choose files…"));
    try_ = add_action(tr("Try without storing"));
    import_ = add_action(tr("Import"), true);
    auto* top = new QHBoxLayout;
    top->setSpacing(12);
    auto* list = new QVBoxLayout;
    list->addWidget(heading(tr("Files")));
    files_ = new QListWidget;
    files_->setAccessibleName(tr("Files"));
    files_->setFrameShape(QFrame::NoFrame);
    list->addWidget(files_, 1);
    remove_ = new QPushButton(tr("Take off the list"));
    list->addWidget(remove_, 0, Qt::AlignLeft);
    auto* left = card(list);
    left->setFixedWidth(230);
    top->addWidget(left);

    auto* right = new QVBoxLayout;
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    kind_ = new QComboBox;
    kind_->addItem(tr("not told yet"), -1);
    for (const auto& spec : exchange::all_kinds()) kind_->addItem(q(spec.name), static_cast<int>(spec.kind));
    dates_ = new QComboBox;
    dates_->addItem(tr("2024-06-30"), static_cast<int>(exchange::DateOrder::iso));
    dates_->addItem(tr("day, month, year"), static_cast<int>(exchange::DateOrder::day_month_year));
    dates_->addItem(tr("month, day, year"), static_cast<int>(exchange::DateOrder::month_day_year));
    dates_->addItem(tr("year, month, day"), static_cast<int>(exchange::DateOrder::year_month_day));
    decimals_ = new QComboBox;
    decimals_->addItem(tr("12.5 (point)"), QChar(QLatin1Char('.')));
    decimals_->addItem(tr("12,5 (comma)"), QChar(QLatin1Char(',')));
    row->addWidget(labelled(tr("&Kind of table"), kind_), 1);
    row->addWidget(labelled(tr("&Dates"), dates_), 1);
    row->addWidget(labelled(tr("Deci&mals"), decimals_), 1);
    right->addLayout(row);
    right->addWidget(faint(tr("Press the head of a column (or Return in it) to say what it holds.")));
    preview_ = plain_table(tr("First rows of the file"));
    preview_->horizontalHeader()->setSectionsClickable(true);
    preview_->horizontalHeader()->setCursor(Qt::PointingHandCursor);
    right->addWidget(preview_, 1);
    state_ = new QLabel;
    state_->setTextFormat(Qt::PlainText);
    state_->setWordWrap(true);
    right->addWidget(state_);
    top->addWidget(card(right), 1);
    body()->addLayout(top, 3);

    auto* below = new QVBoxLayout;
    auto* choices = new QHBoxLayout;
    choices->setSpacing(12);
    choices->addWidget(heading(tr("What happened")), 1);
    rest_ = new QCheckBox(tr("Store good rows though others are refused"));
    conflicts_ = new QComboBox;
    conflicts_->addItem(tr("other values: list them, store nothing"), static_cast<int>(exchange::ConflictChoice::refuse));
    conflicts_->addItem(tr("other values: keep the book's"), static_cast<int>(exchange::ConflictChoice::keep));
    conflicts_->addItem(tr("other values: take the file's"), static_cast<int>(exchange::ConflictChoice::replace));
    conflicts_->setAccessibleName(tr("Where the book has another value"));
    choices->addWidget(rest_);
    choices->addWidget(conflicts_);
    below->addLayout(choices);
    outcome_ = plain_table(tr("Outcome of the import"));
    outcome_->verticalHeader()->hide();
    below->addWidget(outcome_, 1);
    body()->addWidget(card(below), 2);

    connect(choose, &QPushButton::clicked, this, &ImportPage::choose_files);
    connect(try_, &QPushButton::clicked, this, [this] { run(true); });
    connect(import_, &QPushButton::clicked, this, [this] { run(false); });
    connect(remove_, &QPushButton::clicked, this, [this] {
        const int at = files_->currentRow();
        if (at < 0) return;
        plans_.erase(plans_.begin() + at);
        delete files_->takeItem(at);
        show_plan();
    });
    connect(files_, &QListWidget::currentRowChanged, this, &ImportPage::show_plan);
    connect(preview_->horizontalHeader(), &QHeaderView::sectionClicked, this, &ImportPage::column_menu);
    connect(preview_, &QTableWidget::cellActivated, this, [this](int, int column) { column_menu(column); });
    connect(kind_, &QComboBox::activated, this, [this] {
        if (ImportPlan* plan = shown(); plan && kind_->currentData().toInt() >= 0) {
            set_kind(*plan, static_cast<exchange::Kind>(kind_->currentData().toInt()));
            show_plan();
        }
    });
    connect(dates_, &QComboBox::activated, this, [this] {
        if (ImportPlan* plan = shown()) plan->date_order = static_cast<exchange::DateOrder>(dates_->currentData().toInt());
        show_state();
    });
    connect(decimals_, &QComboBox::activated, this, [this] {
        if (ImportPlan* plan = shown()) plan->decimal_mark = decimals_->currentData().toChar().toLatin1();
        show_state();
    });
    show_plan();
}

void ImportPage::book_changed() { show_state(); }

ImportPlan* ImportPage::shown() {
    const int at = files_->currentRow();
    return at < 0 || at >= static_cast<int>(plans_.size()) ? nullptr : &plans_[static_cast<std::size_t>(at)];
}

void ImportPage::choose_files() {
    add_files(QFileDialog::getOpenFileNames(this, tr("Choose files"), QString(),
                                            tr("Tables (*.csv *.tsv *.txt);;All files (*)")));
}

void ImportPage::add_files(const QStringList& paths) {
    for (const QString& path : paths) {
        plans_.push_back(look_at(path, preview_rows));
        files_->addItem(QFileInfo(path).fileName());
        files_->item(files_->count() - 1)->setToolTip(path);
    }
    if (files_->count() > 0) files_->setCurrentRow(files_->count() - static_cast<int>(paths.size()));
    show_plan();
}

void ImportPage::show_plan() {
    ImportPlan* plan = shown();
    preview_->clear();
    preview_->setColumnCount(plan ? static_cast<int>(plan->header.size()) : 0);
    preview_->setRowCount(plan ? static_cast<int>(plan->rows.size()) : 0);
    for (QComboBox* box : {kind_, dates_, decimals_}) box->setEnabled(plan != nullptr);
    remove_->setEnabled(plan != nullptr);
    if (plan) {
        kind_->setCurrentIndex(kind_->findData(plan->kind ? static_cast<int>(*plan->kind) : -1));
        dates_->setCurrentIndex(dates_->findData(static_cast<int>(plan->date_order)));
        decimals_->setCurrentIndex(plan->decimal_mark == ',' ? 1 : 0);
        for (int c = 0; c < preview_->columnCount(); ++c) {
            const std::string& meaning = plan->meaning[static_cast<std::size_t>(c)];
            const QString head = q(plan->header[static_cast<std::size_t>(c)]);
            auto* item = new QTableWidgetItem(meaning.empty() ? tr("%1\nnot used").arg(head)
                                                              : tr("%1\n= %2").arg(head, q(meaning)));
            if (meaning.empty()) item->setForeground(look().faint);
            else item->setForeground(look().accent);
            preview_->setHorizontalHeaderItem(c, item);
        }
        for (int r = 0; r < preview_->rowCount(); ++r) {
            const auto& cells = plan->rows[static_cast<std::size_t>(r)];
            for (int c = 0; c < preview_->columnCount() && c < static_cast<int>(cells.size()); ++c) {
                preview_->setItem(r, c, new QTableWidgetItem(q(printable(cells[static_cast<std::size_t>(c)]))));
            }
        }
        preview_->resizeColumnsToContents();
    }
    show_state();
}

void ImportPage::show_state() {
    const ImportPlan* plan = shown();
    QStringList words;
    bool ready = !plans_.empty();
    for (const ImportPlan& p : plans_) ready = ready && missing(p).isEmpty();
    if (!plan) words << tr("Choose files or drop them here.");
    else words = missing(*plan);
    if (plan && words.isEmpty()) words << tr("This file is ready.");
    state_->setText(words.join(QLatin1Char('\n')));
    state_->setObjectName(plan && !missing(*plan).isEmpty() ? QStringLiteral("warn") : QStringLiteral("faint"));
    state_->setStyleSheet(QString());
    const bool writable = session().can_write();
    try_->setEnabled(ready && writable);
    import_->setEnabled(ready && writable);
    const QString why = session().has_book() ? session().read_only_reason() : tr("Open or make a book first.");
    try_->setToolTip(writable ? QString() : why);
    import_->setToolTip(writable ? QString() : why);
}

void ImportPage::column_menu(int column) {
    ImportPlan* plan = shown();
    if (!plan || !plan->kind || column < 0) return;
    QMenu menu(this);
    menu.setAccessibleName(tr("What column %1 holds").arg(q(plan->header[static_cast<std::size_t>(column)])));
    menu.addAction(tr("not used"), this, [this, column] { point_at(column, {}); });
    menu.addSeparator();
    for (const auto& known : exchange::spec_of(*plan->kind).columns) {
        QAction* action = menu.addAction(q(known.name), this, [this, column, known] { point_at(column, q(known.name)); });
        action->setCheckable(true);
        action->setChecked(plan->meaning[static_cast<std::size_t>(column)] == known.name);
    }
    menu.exec(preview_->mapToGlobal(QPoint(preview_->columnViewportPosition(column) + preview_->verticalHeader()->width(),
                                           preview_->horizontalHeader()->height())));
}

void ImportPage::point_at(int column, const QString& name) {
    ImportPlan* plan = shown();
    if (!plan) return;
    set_meaning(*plan, static_cast<std::size_t>(column), utf8(name));
    show_plan();
}

void ImportPage::run(bool dry) {
    if (plans_.empty() || !session().can_write()) return;
    Task* task = session().start(dry ? tr("Trying the import") : tr("Importing"));
    if (!task) return;
    ImportOrder order;
    order.book = session().book_path().toStdString();
    order.plans = plans_;
    order.dry_run = dry;
    order.accept_rest = rest_->isChecked();
    order.conflicts = static_cast<exchange::ConflictChoice>(conflicts_->currentData().toInt());
    auto found = std::make_shared<std::vector<exchange::ImportResult>>();
    connect(task, &Task::finished, this, [this, found, dry](const QString& error) {
        results_ = std::move(*found);
        show_results(error, dry);
        const bool stored = std::any_of(results_.begin(), results_.end(), [](const auto& r) { return r.stored; });
        Q_EMIT finished();
        if (stored) session().book_was_changed();
    });
    task->start([order, found](const TaskContext& context) { *found = run_import(order, context); });
}

void ImportPage::show_results(const QString& error, bool dry) {
    outcome_->clear();
    const QStringList heads{tr("File"), tr("Row"), tr("Column"), tr("Outcome")};
    outcome_->setColumnCount(static_cast<int>(heads.size()));
    outcome_->setHorizontalHeaderLabels(heads);
    outcome_->setRowCount(0);
    const auto add = [this](const QString& file, const QString& row, const QString& column, const QString& words, bool bad) {
        const int at = outcome_->rowCount();
        outcome_->insertRow(at);
        const QStringList cells{file, row, column, words};
        for (int c = 0; c < 4; ++c) {
            auto* item = new QTableWidgetItem(cells[c]);
            item->setToolTip(cells[c]);
            if (bad) item->setForeground(look().warn);
            outcome_->setItem(at, c, item);
        }
    };
    if (!error.isEmpty()) add({}, {}, {}, error, true);
    for (const auto& r : results_) {
        const QString file = QFileInfo(q(r.file)).fileName();
        const QString what = r.stored ? tr("stored") : dry ? tr("tried, not stored") : tr("not stored");
        add(file, {}, {},
            tr("%1: %2 rows read, %3 new, %4 there already, %5 with another value, %6 refused")
                .arg(what, shown_number(static_cast<double>(r.read), 0), shown_number(static_cast<double>(r.added), 0),
                     shown_number(static_cast<double>(r.unchanged), 0), shown_number(static_cast<double>(r.conflicts), 0),
                     shown_number(static_cast<double>(r.rejected), 0)),
            r.rejected > 0 || (r.conflicts > 0 && !r.stored));
        for (const auto& issue : r.issues) {
            add(file, issue.place.row ? QString::number(issue.place.row) : QString(), q(issue.place.column),
                tr("found \"%1\", expected %2").arg(q(issue.found), q(issue.expected)), true);
        }
        for (const auto& c : r.conflict_list) {
            add(file, c.place.row ? QString::number(c.place.row) : QString(), q(c.place.column),
                tr("%1: the book has %2, the file %3").arg(q(c.record), q(c.in_book), q(c.in_file)), true);
        }
        for (const auto& note : r.notes) add(file, {}, {}, q(note), false);
    }
    outcome_->resizeColumnsToContents();
    outcome_->horizontalHeader()->setStretchLastSection(true);
}

void ImportPage::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void ImportPage::dropEvent(QDropEvent* event) {
    QStringList paths;
    for (const QUrl& url : event->mimeData()->urls()) {
        if (url.isLocalFile()) paths << url.toLocalFile();
    }
    add_files(paths);
}

}  // namespace evenfall::desktop

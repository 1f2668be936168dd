// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/import_page.h"

#include "app/desktop/core_words.h"
#include "app/desktop/finding_words.h"
#include "app/desktop/import/conflicts_panel.h"
#include "app/desktop/import/import_outcome.h"
#include "app/desktop/task.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabBar>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <memory>

namespace evenfall::desktop {
namespace {

constexpr std::size_t preview_rows = 200;
/// Rows shown above a place that is looked for.
constexpr std::size_t rows_before = 6;

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
    top->addWidget(make_files());
    top->addWidget(make_view(), 1);
    body()->addLayout(top, 3);
    body()->addWidget(make_below(), 2);
    connect(choose, &QPushButton::clicked, this, &ImportPage::choose_files);
    connect(try_, &QPushButton::clicked, this, [this] { run(true); });
    connect(import_, &QPushButton::clicked, this, [this] { run(false); });
    connect_choices();
    show_plan();
}

QWidget* ImportPage::make_files() {
    auto* list = new QVBoxLayout;
    list->addWidget(heading(tr("Files")));
    files_ = new QListWidget;
    files_->setAccessibleName(tr("Files"));
    files_->setFrameShape(QFrame::NoFrame);
    list->addWidget(files_, 1);
    remove_ = new QPushButton(tr("Take off the list"));
    list->addWidget(remove_);
    auto* left = card(list);
    left->setFixedWidth(200);
    connect(files_, &QListWidget::currentRowChanged, this, &ImportPage::show_plan);
    connect(remove_, &QPushButton::clicked, this, [this] {
        const int at = files_->currentRow();
        if (at < 0) return;
        plans_.erase(plans_.begin() + at);
        delete files_->takeItem(at);
        show_plan();
    });
    return left;
}

QWidget* ImportPage::make_view() {
    auto* right = new QVBoxLayout;
    right->addWidget(make_choices());
    preview_ = new QTableWidget;
    preview_->setAccessibleName(tr("First rows of the file"));
    preview_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    preview_->setAlternatingRowColors(true);
    preview_->setShowGrid(false);
    preview_->setTabKeyNavigation(false);
    preview_->setFrameShape(QFrame::NoFrame);
    preview_->verticalHeader()->setDefaultSectionSize(24);
    preview_->verticalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignVCenter);
    preview_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    preview_->horizontalHeader()->setSectionsClickable(true);
    preview_->horizontalHeader()->setCursor(Qt::PointingHandCursor);
    right->addWidget(preview_, 1);
    state_ = new QLabel;
    state_->setTextFormat(Qt::PlainText);
    state_->setWordWrap(true);
    auto* foot = new QHBoxLayout;
    foot->addWidget(state_, 1);
    constant_ = new QPushButton(tr("Same in every row…"));
    constant_->setToolTip(tr("For what the file does not say, such as the meter of its readings"));
    load_ = new QPushButton(tr("Load a map…"));
    save_ = new QPushButton(tr("Save as a map…"));
    for (QPushButton* b : {constant_, load_, save_}) foot->addWidget(b);
    right->addLayout(foot);
    connect(preview_->horizontalHeader(), &QHeaderView::sectionClicked, this, &ImportPage::column_menu);
    connect(preview_, &QTableWidget::cellActivated, this, [this](int, int column) { column_menu(column); });
    return card(right);
}

QWidget* ImportPage::make_choices() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    kind_ = new QComboBox;
    kind_->addItem(tr("not told yet"), -1);
    for (const auto& spec : exchange::all_kinds()) kind_->addItem(table_words(spec.kind), static_cast<int>(spec.kind));
    dates_ = new QComboBox;
    dates_->addItem(tr("2024-06-30"), static_cast<int>(exchange::DateOrder::iso));
    dates_->addItem(tr("day, month, year"), static_cast<int>(exchange::DateOrder::day_month_year));
    dates_->addItem(tr("month, day, year"), static_cast<int>(exchange::DateOrder::month_day_year));
    dates_->addItem(tr("year, month, day"), static_cast<int>(exchange::DateOrder::year_month_day));
    decimals_ = new QComboBox;
    decimals_->addItem(tr("12.5 (point)"), QChar(QLatin1Char('.')));
    decimals_->addItem(tr("12,5 (comma)"), QChar(QLatin1Char(',')));
    delimiter_ = new QComboBox;
    delimiter_->addItem(tr("as the header shows"), QString());
    delimiter_->addItem(tr("comma"), QStringLiteral(","));
    delimiter_->addItem(tr("semicolon"), QStringLiteral(";"));
    delimiter_->addItem(tr("tab"), QStringLiteral("\t"));
    delimiter_->addItem(tr("bar |"), QStringLiteral("|"));
    missing_ = new QLineEdit;
    missing_->setMinimumWidth(70);
    missing_->setPlaceholderText(tr("-6999; n/a"));
    missing_->setToolTip(tr("Texts that stand for no value, parted by semicolons; an empty cell does anyway"));
    for (QComboBox* b : {kind_, dates_, decimals_, delimiter_}) {
        b->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        b->setMinimumContentsLength(5);
    }
    row->addWidget(labelled(tr("&Kind of table"), kind_), 4);
    row->addWidget(labelled(tr("&Dates"), dates_), 4);
    row->addWidget(labelled(tr("Deci&mals"), decimals_), 3);
    row->addWidget(labelled(tr("Columns &parted by"), delimiter_), 4);
    row->addWidget(labelled(tr("&Not recorded"), missing_), 3);
    column->addLayout(row);
    column->addWidget(faint(tr("Press the head of a column (or Return in it) to say what it holds.")));
    return box;
}

QWidget* ImportPage::make_below() {
    auto* below = new QVBoxLayout;
    auto* choices = new QHBoxLayout;
    choices->setSpacing(12);
    tabs_ = new QTabBar;
    tabs_->setAccessibleName(tr("What happened, and where the book and the files differ"));
    tabs_->setDrawBase(false);
    tabs_->setExpanding(false);
    tabs_->addTab(tr("What happened"));
    tabs_->addTab(tr("Where they differ"));
    tabs_->setTabVisible(1, false);
    choices->addWidget(tabs_, 1);
    rest_ = new QCheckBox(tr("Store good rows though others are refused"));
    conflicts_ = new QComboBox;
    conflicts_->addItem(tr("other values: list them, store nothing"), static_cast<int>(exchange::ConflictChoice::refuse));
    conflicts_->addItem(tr("other values: keep the book's"), static_cast<int>(exchange::ConflictChoice::keep));
    conflicts_->addItem(tr("other values: take the file's"), static_cast<int>(exchange::ConflictChoice::replace));
    conflicts_->setAccessibleName(tr("Where the book has another value"));
    conflicts_->setToolTip(tr("For those that nobody chose one by one"));
    conflicts_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    conflicts_->setMinimumContentsLength(30);
    choices->addWidget(rest_);
    choices->addWidget(conflicts_);
    below->addLayout(choices);
    outcome_ = new ImportOutcome;
    differences_ = new ConflictsPanel;
    auto* shown_below = new QStackedWidget;
    shown_below->addWidget(outcome_);
    shown_below->addWidget(differences_);
    below->addWidget(shown_below, 1);
    connect(tabs_, &QTabBar::currentChanged, shown_below, &QStackedWidget::setCurrentIndex);
    connect(outcome_, &ImportOutcome::place_chosen, this, &ImportPage::show_place);
    connect(differences_, &ConflictsPanel::place_chosen, this, &ImportPage::show_place);
    return card(below);
}

void ImportPage::book_changed() {
    if (session().book_path() != differences_of_) {
        differences_->show_choices(nullptr);
        tabs_->setTabVisible(1, false);
    }
    show_state();
}

void ImportPage::theme_changed() {
    show_plan();
    outcome_->restyle();
    differences_->restyle();
}

ImportPlan* ImportPage::shown() {
    const int at = files_->currentRow();
    return at < 0 || at >= static_cast<int>(plans_.size()) ? nullptr : &plans_[static_cast<std::size_t>(at)];
}

void ImportPage::choose_files() {
    add_files(QFileDialog::getOpenFileNames(
        this, tr("Choose files"), QString(),
        tr("Tables and maps (*.csv *.tsv *.txt *.xlsx *.ods *.geojson *.shp *.kml *.gpkg);;All files (*)")));
}

void ImportPage::add_files(const QStringList& paths) {
    if (paths.isEmpty()) return;
    for (const QString& path : paths) {
        plans_.push_back(look_at(path, preview_rows));
        files_->addItem(QFileInfo(path).fileName());
        files_->item(files_->count() - 1)->setToolTip(path);
    }
    files_->setCurrentRow(files_->count() - static_cast<int>(paths.size()));
    show_plan();
}

void ImportPage::read_again() {
    ImportPlan* plan = shown();
    if (!plan) return;
    const QString chosen = delimiter_->currentData().toString();
    ImportPlan next = look_at(plan->path, preview_rows,
                              chosen.isEmpty() ? std::nullopt : std::optional(chosen.at(0).toLatin1()));
    next.decimal_mark = plan->decimal_mark;
    next.date_order = plan->date_order;
    next.missing_words = plan->missing_words;
    *plan = std::move(next);
    show_plan();
}

void ImportPage::show_rows() {
    const ImportPlan* plan = shown();
    preview_->clear();
    preview_->setColumnCount(plan ? static_cast<int>(plan->header.size()) : 0);
    preview_->setRowCount(plan ? static_cast<int>(plan->rows.size()) : 0);
    if (!plan) return;
    for (int c = 0; c < preview_->columnCount(); ++c) {
        const auto at = static_cast<std::size_t>(c);
        const std::string& meaning = plan->meaning[at];
        const QString head = q(plan->header[at]);
        const bool used = !meaning.empty() || !plan->meter_of[at].empty();
        const QString holds = plan->meter_of[at].empty() ? q(meaning) : tr("meter %1").arg(q(plan->meter_of[at]));
        auto* item = new QTableWidgetItem(used ? tr("%1\n= %2").arg(head, holds) : tr("%1\nnot used").arg(head));
        item->setForeground(used ? look().accent : look().faint);
        preview_->setHorizontalHeaderItem(c, item);
    }
    for (int r = 0; r < preview_->rowCount(); ++r) {
        const PlanRow& row = plan->rows[static_cast<std::size_t>(r)];
        preview_->setVerticalHeaderItem(r, new QTableWidgetItem(QString::number(row.line)));
        for (int c = 0; c < preview_->columnCount() && c < static_cast<int>(row.cells.size()); ++c) {
            preview_->setItem(r, c, new QTableWidgetItem(q(printable(row.cells[static_cast<std::size_t>(c)]))));
        }
    }
    preview_->resizeColumnsToContents();
    mark_issues();
}

void ImportPage::mark_issues() {
    const ImportPlan* plan = shown();
    if (!plan) return;
    const auto mark = [&](const Place& place, const QString& words) {
        if (place.file != plan->path.toStdString()) return;
        for (int r = 0; r < preview_->rowCount(); ++r) {
            if (plan->rows[static_cast<std::size_t>(r)].line != place.row) continue;
            for (int c = 0; c < preview_->columnCount(); ++c) {
                if (!place.column.empty() && plan->header[static_cast<std::size_t>(c)] != place.column) continue;
                QTableWidgetItem* item = preview_->item(r, c);
                if (!item) continue;
                QFont font = item->font();
                font.setBold(true);
                font.setUnderline(true);
                item->setFont(font);
                item->setForeground(look().warn);
                item->setToolTip(words);
            }
        }
    };
    for (const auto& result : results_) {
        for (const auto& issue : result.issues) mark(issue.place, core_words(issue.sentence()));
        if (result.stored) continue;
        for (const auto& c : result.conflict_list) {
            if (c.stands == store::Stands::undecided) mark(c.place, ImportOutcome::difference_words(c));
        }
    }
}

void ImportPage::show_place(const QString& file, std::size_t row, const QString& column) {
    for (std::size_t i = 0; i < plans_.size(); ++i) {
        ImportPlan& plan = plans_[i];
        if (plan.path != file) continue;
        files_->setCurrentRow(static_cast<int>(i));
        const auto here = [&plan, row] {
            return std::find_if(plan.rows.begin(), plan.rows.end(), [row](const PlanRow& r) { return r.line == row; });
        };
        if (here() == plan.rows.end()) {
            try {
                plan.rows = rows_from(plan, row > rows_before ? row - rows_before : 0, preview_rows);
            } catch (const std::exception& e) {
                session().say(error_words(e));
                return;
            }
            show_rows();
        }
        if (here() == plan.rows.end()) return;
        const auto at = static_cast<int>(here() - plan.rows.begin());
        int cell = 0;
        for (int c = 0; c < preview_->columnCount(); ++c) {
            if (q(plan.header[static_cast<std::size_t>(c)]) == column) cell = c;
        }
        preview_->setCurrentCell(at, cell);
        preview_->scrollTo(preview_->model()->index(at, cell), QAbstractItemView::PositionAtCenter);
        return;
    }
}

void ImportPage::run(bool dry) {
    if (plans_.empty() || !session().can_write()) return;
    Task* task = session().start(dry ? tr("Trying the import") : tr("Importing"));
    if (!task) return;
    const QString rejects = rejects_.filePath(QStringLiteral("refused.csv"));
    QFile::remove(rejects);
    ImportOrder order;
    order.book = session().book_path().toStdString();
    order.plans = plans_;
    order.rejects = rejects.toStdString();
    order.dry_run = dry;
    order.accept_rest = rest_->isChecked();
    order.conflicts = static_cast<exchange::ConflictChoice>(conflicts_->currentData().toInt());
    // A copy: the work reads it while the rows may be chosen on.
    if (const auto& chosen = differences_->choices()) order.choices = std::make_shared<const ConflictChoices>(*chosen);
    auto found = std::make_shared<ImportFound>();
    connect(task, &Task::finished, this, [this, found, dry, rejects](const QString& error) {
        show_found(std::move(*found), error, dry, rejects);
    });
    task->start([order, found](const TaskContext& context) { *found = run_import(order, context); });
}

void ImportPage::show_found(ImportFound found, const QString& error, bool dry, const QString& rejects) {
    results_ = std::move(found.results);
    outcome_->show_results(results_, error, dry, rejects);
    // After an error nothing new is known; what was chosen stays for another try.
    if (error.isEmpty()) {
        differences_of_ = session().book_path();
        const std::int64_t count = found.conflicts ? found.conflicts->count() : 0;
        const std::int64_t open = found.conflicts ? found.conflicts->chosen(store::Stands::undecided) : 0;
        differences_->show_choices(std::move(found.conflicts));
        tabs_->setTabText(1, tr("Where they differ (%1)").arg(shown_number(static_cast<double>(count), 0)));
        tabs_->setTabVisible(1, count > 0);
        tabs_->setCurrentIndex(open > 0 ? 1 : 0);
    } else {
        tabs_->setCurrentIndex(0);
    }
    show_rows();
    const bool stored = std::any_of(results_.begin(), results_.end(), [](const auto& r) { return r.stored; });
    Q_EMIT finished();
    if (stored) session().book_was_changed();
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/main_window.h"

#include "app/desktop/core_words.h"
#include "app/desktop/drop_lists.h"
#include "app/desktop/field_sheet/field_sheet_page.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/plan/audit_panel.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/reports_page/reports_page.h"
#include "app/desktop/review/review_page.h"
#include "app/desktop/schedule/schedule_page.h"
#include "app/desktop/season/season_page.h"
#include "app/desktop/sites/sites_page.h"
#include "app/desktop/start_page.h"
#include "app/desktop/task.h"
#include "core/input_error.h"

#include <QApplication>
#include <QButtonGroup>
#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLibraryInfo>
#include <QListWidget>
#include <QMenuBar>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QStatusBar>
#include <QUndoStack>
#include <QVBoxLayout>
#include <memory>
#include <utility>

namespace evenfall::desktop {

void install_language(const QString& language) {
    static std::vector<std::unique_ptr<QTranslator>> installed;
    installed.clear();  // a translator takes itself out when it goes
    if (language == QStringLiteral("en")) return;
    const auto install = [](const QString& file, const QString& folder) {
        auto translator = std::make_unique<QTranslator>();
        if (!translator->load(file, folder)) return;
        QCoreApplication::installTranslator(translator.get());
        installed.push_back(std::move(translator));
    };
    // The buttons of Qt's own dialogs, where the system has them.
    install(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(QStringLiteral("evenfall_") + language, QStringLiteral(":/i18n"));
}

MainWindow::MainWindow(Session& session, QWidget* parent) : QMainWindow(parent), session_(session) {
    resize(1280, 800);
    qApp->installEventFilter(new DropLists(this));
    build();
    connect(&session_, &Session::book_changed, this, &MainWindow::book_changed);
    connect(&session_, &Session::units_changed, this, &MainWindow::units_changed);
    connect(&session_, &Session::theme_changed, this, [this] {
        dark_->setChecked(session_.theme() == Theme::dark);
        for (Entry& e : entries_) {
            if (e.page) e.page->theme_changed();
        }
    });
    connect(&session_, &Session::language_changed, this, [this] {
        const QString key = current_ >= 0 ? entries_[static_cast<std::size_t>(current_)].key : QString();
        install_language(session_.language());
        build();
        show_page(key);
    });
    connect(&session_, &Session::message_said, this,
            [this](const QString& text) { statusBar()->showMessage(text, 15000); });
    connect(&session_, &Session::task_started, this, &MainWindow::task_started);
}

MainWindow::~MainWindow() = default;

void MainWindow::build() {
    current_ = -1;
    entries_.clear();
    undo_.setActiveStack(nullptr);
    menuBar()->clear();
    build_pages();
    auto* all = new QWidget;
    auto* column = new QVBoxLayout(all);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    banner_ = new QLabel;
    banner_->setObjectName(QStringLiteral("banner"));
    banner_->setWordWrap(true);
    banner_->hide();
    column->addWidget(banner_);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    row->addWidget(build_side());
    stack_ = new QStackedWidget;
    row->addWidget(stack_, 1);
    column->addLayout(row, 1);
    setCentralWidget(all);
    delete work_;
    delete progress_;
    delete stop_;
    work_ = new QLabel;
    progress_ = new QProgressBar;
    progress_->setFixedWidth(220);
    stop_ = new QPushButton(tr("Stop"));
    stop_->setStyleSheet(QStringLiteral("padding: 1px 10px; min-height: 0;"));
    statusBar()->setSizeGripEnabled(false);
    statusBar()->addPermanentWidget(work_);
    statusBar()->addPermanentWidget(progress_);
    statusBar()->addPermanentWidget(stop_);
    for (QWidget* w : {static_cast<QWidget*>(work_), static_cast<QWidget*>(progress_), static_cast<QWidget*>(stop_)}) {
        w->hide();
    }
    build_menus();
    book_changed();
}

void MainWindow::build_pages() {
    entries_.push_back({QStringLiteral("start"), tr("Start"), [this]() -> Page* {
                            auto* page = new StartPage(session_);
                            connect(page, &StartPage::open_wanted, this, &MainWindow::choose_book);
                            connect(page, &StartPage::new_wanted, this, &MainWindow::new_book);
                            connect(page, &StartPage::demo_wanted, this, &MainWindow::make_demo_book);
                            connect(page, &StartPage::book_wanted, this, &MainWindow::open_book);
                            return page;
                        }, nullptr});
    entries_.push_back({QStringLiteral("sites"), tr("Sites"), [this]() -> Page* {
                            auto* page = new SitesPage(session_);
                            connect(page, &SitesPage::season_wanted, this, [this](const std::string& site) {
                                show_page(QStringLiteral("season"));
                                if (auto* season = qobject_cast<SeasonPage*>(this->page())) season->show_site(site);
                            });
                            return page;
                        }, nullptr});
    entries_.push_back({QStringLiteral("field_sheet"), tr("Field sheet"),
                        [this] { return new FieldSheetPage(session_); }, nullptr});
    entries_.push_back({QStringLiteral("season"), tr("Season"), [this] { return new SeasonPage(session_); }, nullptr});
    entries_.push_back({QStringLiteral("plan"), tr("Plan"), [this] { return new PlanPage(session_); }, nullptr});
    entries_.push_back({QStringLiteral("schedule"), tr("Schedule"), [this] { return new SchedulePage(session_); }, nullptr});
    entries_.push_back({QStringLiteral("review"), tr("Review"), [this] { return new ReviewPage(session_); }, nullptr});
    entries_.push_back({QStringLiteral("import"), tr("Import"), [this] { return new ImportPage(session_); }, nullptr});
    entries_.push_back({QStringLiteral("reports"), tr("Reports"), [this] { return new ReportsPage(session_); }, nullptr});
}

QWidget* MainWindow::build_side() {
    auto* side = new QWidget;
    side->setFixedWidth(186);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 16, 0, 12);
    auto* name = new QLabel(QStringLiteral("Evenfall"));
    name->setObjectName(QStringLiteral("title"));
    name->setContentsMargins(20, 0, 8, 0);
    column->addWidget(name);
    book_name_ = new QLabel;
    book_name_->setObjectName(QStringLiteral("faint"));
    book_name_->setContentsMargins(20, 0, 8, 10);
    column->addWidget(book_name_);
    strip_ = new QListWidget;
    strip_->setObjectName(QStringLiteral("strip"));
    strip_->setAccessibleName(tr("Pages"));
    strip_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const Entry& e : entries_) strip_->addItem(e.name);
    connect(strip_, &QListWidget::currentRowChanged, this, &MainWindow::show_entry);
    column->addWidget(strip_, 1);
    auto* units = new QHBoxLayout;
    units->setContentsMargins(12, 0, 12, 0);
    units->setSpacing(0);
    us_ = new QPushButton(tr("US"));
    metric_ = new QPushButton(tr("Metric"));
    us_->setAccessibleName(tr("Show US customary units"));
    metric_->setAccessibleName(tr("Show metric units"));
    auto* group = new QButtonGroup(side);
    for (QPushButton* b : {us_, metric_}) {
        b->setCheckable(true);
        group->addButton(b);
        units->addWidget(b);
    }
    (session_.units() == UnitsShown::us ? us_ : metric_)->setChecked(true);
    connect(us_, &QPushButton::clicked, this, [this] { session_.set_units(UnitsShown::us); });
    connect(metric_, &QPushButton::clicked, this, [this] { session_.set_units(UnitsShown::metric); });
    column->addLayout(units);
    auto* tone = new QHBoxLayout;
    tone->setContentsMargins(12, 0, 12, 0);
    dark_ = new QPushButton(tr("Dark"));
    dark_->setCheckable(true);
    dark_->setChecked(session_.theme() == Theme::dark);
    dark_->setAccessibleName(tr("Dark colours"));
    connect(dark_, &QPushButton::clicked, this,
            [this](bool on) { session_.set_theme(on ? Theme::dark : Theme::light); });
    auto* language = new QPushButton(session_.language() == QStringLiteral("es") ? QStringLiteral("English")
                                                                                 : QStringLiteral("Español"));
    connect(language, &QPushButton::clicked, this, [this] {
        // The pages are made anew.
        if (!pages_may_close()) return;
        session_.set_language(session_.language() == QStringLiteral("es") ? QStringLiteral("en")
                                                                          : QStringLiteral("es"));
    }, Qt::QueuedConnection);
    tone->setSpacing(0);
    tone->addWidget(dark_);
    tone->addWidget(language);
    column->addLayout(tone);
    return side;
}

void MainWindow::show_entry(int index) {
    if (index < 0 || index >= static_cast<int>(entries_.size()) || index == current_) return;
    Entry& entry = entries_[static_cast<std::size_t>(index)];
    if (!entry.page) {
        entry.page = entry.make();
        stack_->addWidget(entry.page);
    }
    current_ = index;
    stack_->setCurrentWidget(entry.page);
    undo_.setActiveStack(entry.page->undo_stack());
    if (entry.page->undo_stack()) undo_.addStack(entry.page->undo_stack());
    undo_.setActiveStack(entry.page->undo_stack());
    fill_actions();
    if (strip_->currentRow() != index) strip_->setCurrentRow(index);
    if (!strip_->hasFocus()) entry.page->setFocus();
}

void MainWindow::show_page(const QString& key) {
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        if (entries_[i].key == key) {
            show_entry(static_cast<int>(i));
            return;
        }
    }
    show_entry(0);
}

void MainWindow::show_test(const QString& code) {
    if (auto* plan = qobject_cast<PlanPage*>(page())) {
        plan->show_audit();
        plan->audit().choose_test(code);
        return;
    }
    show_page(QStringLiteral("field_sheet"));
    auto* sheet = qobject_cast<FieldSheetPage*>(page());
    if (sheet && session_.has_book()) sheet->show_test(utf8(code));
}

Page* MainWindow::page() const {
    return current_ < 0 ? nullptr : entries_[static_cast<std::size_t>(current_)].page;
}

QStringList MainWindow::page_keys() const {
    QStringList keys;
    for (const Entry& e : entries_) keys << e.key;
    return keys;
}

void MainWindow::guarded(const std::function<void()>& action) {
    try {
        action();
    } catch (const std::exception& e) {
        QMessageBox::warning(this, tr("This did not work"), error_words(e));
    }
}

void MainWindow::open_book(const QString& path) {
    guarded([this, &path] {
        session_.open_book(path);
        show_page(QStringLiteral("sites"));
    });
}

void MainWindow::book_changed() {
    const bool has = session_.has_book();
    book_name_->setText(has ? QFileInfo(session_.book_path()).completeBaseName() : tr("no book open"));
    book_name_->setToolTip(session_.book_path());
    setWindowTitle(has ? QFileInfo(session_.book_path()).fileName() + QStringLiteral(" – Evenfall")
                       : QStringLiteral("Evenfall"));
    banner_->setText(session_.entries_recovered()
                         ? tr("Entries of the field sheet that were not saved when the program last ended are back. "
                              "Save them to the book or start a new test.")
                         : session_.read_only_reason());
    banner_->setVisible(!banner_->text().isEmpty());
    if (close_book_) close_book_->setEnabled(has);
    for (Entry& e : entries_) {
        if (e.page) e.page->book_changed();
    }
}

void MainWindow::units_changed() {
    (session_.units() == UnitsShown::us ? us_ : metric_)->setChecked(true);
    for (Entry& e : entries_) {
        if (e.page) e.page->units_changed();
    }
}

void MainWindow::task_started(Task* task) {
    work_->setText(task->name());
    progress_->setRange(0, 0);  // at work, how far is not known until the work says so
    for (QWidget* w : {static_cast<QWidget*>(work_), static_cast<QWidget*>(progress_), static_cast<QWidget*>(stop_)}) {
        w->show();
    }
    stop_->disconnect();
    connect(stop_, &QPushButton::clicked, task, &Task::stop);
    connect(task, &Task::progressed, this, [this, task](double share, const QString& what) {
        progress_->setRange(0, 1000);
        progress_->setValue(static_cast<int>(share * 1000.0));
        work_->setText(what.isEmpty() ? task->name() : what);
    });
    const auto over = [this] {
        work_->hide();
        progress_->hide();
        stop_->hide();
    };
    connect(task, &Task::finished, this, over);
    connect(task, &Task::stopped_by_user, this, [this, over, task] {
        over();
        session_.say(tr("%1 was stopped; nothing was changed.").arg(task->name()));
    });
}

bool MainWindow::pages_may_close() {
    for (const Entry& e : entries_) {
        if (e.page && !e.page->may_close()) return false;
    }
    return true;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    // Entries of the field sheet stay in their journal and are back at the next start; a plan has none.
    if (!pages_may_close()) {
        event->ignore();
        return;
    }
    if (session_.task() && session_.task()->running()) session_.task()->stop();
    event->accept();
}

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/reports_page/reports_page.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/season/season_range.h"
#include "app/desktop/site_choice.h"
#include "app/desktop/task.h"
#include "app/workflow/write_report.h"
#include "core/store/catch_test_store.h"
#include "reports/print/page_flow.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QStandardPaths>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

namespace evenfall::desktop {

ReportsPage::ReportsPage(Session& session, QWidget* parent)
    : Page(session, tr("Reports"), tr("Papers to sign, send and keep: look at the pages, then write the files."), parent),
      asked_(session, [this] { preview(); }),
      printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
    printer_->setFullPage(true);
    printer_->setPageMargins(QMarginsF(0, 0, 0, 0));
    write_ = add_action(tr("Write the files…"), true);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    auto* left = new QVBoxLayout;
    left->setSpacing(gap);
    kind_ = new QComboBox;
    kind_->addItem(tr("season of a site"), static_cast<int>(ReportKind::season));
    kind_->addItem(tr("catch tests of a site"), static_cast<int>(ReportKind::audit_of_site));
    kind_->addItem(tr("one catch test"), static_cast<int>(ReportKind::audit_of_test));
    site_ = new QComboBox;
    test_ = new QComboBox;
    from_ = new QComboBox;
    to_ = new QComboBox;
    program_ = new QComboBox;
    for (const auto& name : budget::built_in_program_names()) {
        program_->addItem(core_words(budget::built_in_program(name).title), q(name));
    }
    program_->setCurrentIndex(program_->findData(QStringLiteral("general")));
    for (QComboBox* box : {site_, program_, test_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(14);
    }
    paper_ = new QComboBox;
    paper_->addItem(tr("Letter"), QStringLiteral("letter"));
    paper_->addItem(tr("A4"), QStringLiteral("a4"));
    left->addWidget(labelled(tr("&Report"), kind_));
    left->addWidget(labelled(tr("&Site"), site_));
    test_box_ = labelled(tr("&Test"), test_);
    left->addWidget(test_box_);
    season_box_ = new QWidget;
    auto* season = new QVBoxLayout(season_box_);
    season->setContentsMargins(0, 0, 0, 0);
    auto* months = new QHBoxLayout;
    months->addWidget(labelled(tr("&From"), from_));
    months->addWidget(labelled(tr("&To"), to_));
    season->addLayout(months);
    season->addWidget(labelled(tr("&Program"), program_));
    left->addWidget(season_box_);
    left->addWidget(labelled(tr("Pape&r"), paper_));
    left->addWidget(heading(tr("Files")));
    xlsx_ = new QCheckBox(tr("Workbook (xlsx), figures with their formulas"));
    pdf_ = new QCheckBox(tr("PDF, to print and sign"));
    csv_ = new QCheckBox(tr("Tables (csv)"));
    xlsx_->setChecked(true);
    pdf_->setChecked(true);
    for (QCheckBox* box : {xlsx_, pdf_, csv_}) left->addWidget(box);
    state_ = new QLabel;
    state_->setWordWrap(true);
    state_->setTextFormat(Qt::PlainText);
    left->addWidget(state_);
    files_ = new QListWidget;
    files_->setAccessibleName(tr("Files written"));
    files_->setFrameShape(QFrame::NoFrame);
    files_->hide();
    left->addWidget(files_, 1);
    left->addStretch(0);
    auto* choices = card(left);
    choices->setFixedWidth(std::max(320, choices->sizeHint().width()));
    columns->addWidget(choices);
    auto* right = new QVBoxLayout;
    auto* tools = new QHBoxLayout;
    auto* smaller = new QPushButton(tr("Smaller"));
    auto* larger = new QPushButton(tr("Larger"));
    auto* width = new QPushButton(tr("Page width"));
    tools->addWidget(heading(tr("Pages")), 1);
    for (QPushButton* b : {smaller, larger, width}) tools->addWidget(b);
    right->addLayout(tools);
    pages_ = new QPrintPreviewWidget(printer_.get());
    pages_->setAccessibleName(tr("Pages of the report"));
    pages_->setZoomMode(QPrintPreviewWidget::FitToWidth);
    right->addWidget(pages_, 1);
    columns->addWidget(card(right), 1);
    body()->addLayout(columns, 1);

    connect(smaller, &QPushButton::clicked, pages_, [this] { pages_->zoomOut(); });
    connect(larger, &QPushButton::clicked, pages_, [this] { pages_->zoomIn(); });
    connect(width, &QPushButton::clicked, pages_, &QPrintPreviewWidget::fitToWidth);
    connect(pages_, &QPrintPreviewWidget::paintRequested, this, &ReportsPage::paint);
    connect(kind_, &QComboBox::currentIndexChanged, this, &ReportsPage::kind_changed);
    connect(site_, &QComboBox::currentIndexChanged, this, &ReportsPage::site_changed);
    for (QComboBox* box : {test_, from_, to_, program_}) {
        connect(box, &QComboBox::currentIndexChanged, this, &ReportsPage::preview);
    }
    connect(paper_, &QComboBox::currentIndexChanged, this, [this] {
        printer_->setPageSize(QPageSize(paper_->currentIndex() == 1 ? QPageSize::A4 : QPageSize::Letter));
        pages_->updatePreview();
    });
    printer_->setPageSize(QPageSize(QPageSize::Letter));
    connect(write_, &QPushButton::clicked, this, [this] {
        const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        const QString folder = QFileDialog::getExistingDirectory(
            this, tr("Folder for the files"), QFileInfo::exists(documents) ? documents : QDir::homePath());
        if (!folder.isEmpty()) write(folder);
    });
    connect(files_, &QListWidget::itemActivated, this, [](QListWidgetItem* item) {
        QDesktopServices::openUrl(QUrl::fromLocalFile(item->data(Qt::UserRole).toString()));
    });
    connect(&asked_, &BackgroundQuestion::said, state_, &QLabel::setText);
    kind_changed();
    book_changed();
}

ReportsPage::~ReportsPage() = default;

void ReportsPage::book_changed() {
    filling_ = true;
    fill_sites(*site_, session());
    filling_ = false;
    site_changed();
}

void ReportsPage::kind_changed() {
    const auto kind = static_cast<ReportKind>(kind_->currentData().toInt());
    season_box_->setVisible(kind == ReportKind::season);
    test_box_->setVisible(kind == ReportKind::audit_of_test);
    preview();
}

void ReportsPage::site_changed() {
    if (filling_) return;
    filling_ = true;
    for (QComboBox* box : {test_, from_, to_}) box->clear();
    const std::string site = utf8(site_->currentData().toString());
    if (session().has_book() && !site.empty()) {
        for (const auto& test : store::catch_tests_of_site(session().book(), site)) test_->addItem(q(test.code));
        if (const auto range = months_with_readings(session().book(), site)) {
            for (calendar::Month m = range->first; m <= range->last; m = calendar::plus_months(m, 1)) {
                for (QComboBox* box : {from_, to_}) box->addItem(q(calendar::format_month(m)));
            }
            const auto usual = last_year_of(*range);
            from_->setCurrentText(q(calendar::format_month(usual.first)));
            to_->setCurrentText(q(calendar::format_month(usual.last)));
        }
    }
    filling_ = false;
    preview();
}

void ReportsPage::choose(ReportKind kind, const QString& site, const QString& test) {
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(kind)));
    if (!site.isEmpty()) site_->setCurrentIndex(site_->findData(site));
    if (!test.isEmpty()) test_->setCurrentText(test);
}

ReportOrder ReportsPage::order() const {
    ReportOrder o;
    o.kind = static_cast<ReportKind>(kind_->currentData().toInt());
    o.site = utf8(site_->currentData().toString());
    o.test = utf8(test_->currentText());
    if (const auto m = calendar::parse_month(utf8(from_->currentText()))) o.from = *m;
    if (const auto m = calendar::parse_month(utf8(to_->currentText()))) o.to = *m;
    o.program = utf8(program_->currentData().toString());
    o.created = now_text();
    o.made_by = "Evenfall " + utf8(QApplication::applicationVersion());
    return o;
}

void ReportsPage::preview() {
    if (filling_) return;
    ReportOrder wanted = order();
    wanted.units = session().units();
    wanted.quarter_rule = session().sheet().data().quarter_rule;
    const bool ready = session().has_book() && !wanted.site.empty() &&
                       (wanted.kind != ReportKind::season || from_->count() > 0) &&
                       (wanted.kind != ReportKind::audit_of_test || !wanted.test.empty()) &&
                       (wanted.kind != ReportKind::audit_of_site || test_->count() > 0);
    if (!ready) {
        asked_.forget();
        report_.reset();
        state_->setText(!session().has_book()                     ? tr("No book is open.")
                        : wanted.site.empty()                     ? tr("There is no site in this book yet.")
                        : wanted.kind == ReportKind::season       ? tr("The meters of this site have no readings yet.")
                                                                  : tr("This site has no catch test yet."));
        write_->setEnabled(false);
        pages_->updatePreview();
        return;
    }
    if (!asked_.free()) return;
    asked_.put<reports::Report>(
        tr("Making the report"), tr("Making the report…"),
        [wanted](const store::Book& book) { return build_report(book, wanted); },
        [this](std::optional<reports::Report> report, const QString& error) {
            report_ = std::move(report);
            state_->setText(error);
            write_->setEnabled(report_.has_value());
            pages_->updatePreview();
            Q_EMIT previewed();
        });
}

void ReportsPage::paint(QPrinter* printer) const {
    if (!report_) return;
    reports::PageGeometry geometry;
    const QSizeF points = printer->pageLayout().fullRectPoints().size();
    geometry.width = points.width();
    geometry.height = points.height();
    reports::PageFlow measured(printer, nullptr, geometry, [] {}, 0);
    measured.report(*report_);
    QPainter painter(printer);
    reports::PageFlow flow(printer, &painter, geometry, [printer] { printer->newPage(); }, measured.pages());
    flow.report(*report_);
}

bool ReportsPage::print(QPrinter& printer) {
    if (!report_) return false;
    printer.setFullPage(true);
    paint(&printer);
    return true;
}

void ReportsPage::write(const QString& folder) {
    if (!report_) return;
    Task* task = session().start(tr("Writing the files"));
    if (!task) return;
    workflow::ReportOrder files;
    if (xlsx_->isChecked()) files.formats.emplace_back("xlsx");
    if (pdf_->isChecked()) files.formats.emplace_back("pdf");
    if (csv_->isChecked()) files.formats.emplace_back("csv");
    files.directory = folder.toStdString();
    files.name = report_file_name(order());
    files.paper = utf8(paper_->currentData().toString());
    files.print_program = print_program_;
    auto done = std::make_shared<std::vector<std::filesystem::path>>();
    connect(task, &Task::finished, this, [this, done, folder](const QString& error) {
        written_ = std::move(*done);
        files_->clear();
        for (const auto& file : written_) {
            auto* item = new QListWidgetItem(q(file.filename().string()));
            item->setData(Qt::UserRole, q(file.string()));
            files_->addItem(item);
        }
        files_->setVisible(files_->count() > 0);
        state_->setText(error.isEmpty() ? tr("Written to %1:").arg(QDir::toNativeSeparators(folder)) : error);
        Q_EMIT files_written();
    });
    task->start([done, files, report = *report_](const TaskContext& context) {
        context.check();
        *done = workflow::write_report(report, files);
    });
}

}  // namespace evenfall::desktop

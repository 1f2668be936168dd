// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/schedule/schedule_page.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/month_words.h"
#include "app/desktop/paper.h"
#include "app/desktop/schedule/schedule_choices.h"
#include "app/desktop/schedule/schedule_view.h"
#include "app/desktop/sentences.h"
#include "app/workflow/schedule_files.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStandardPaths>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>

namespace evenfall::desktop {

SchedulePage::SchedulePage(Session& session, QWidget* parent)
    : Page(session, tr("Schedule"),
           tr("The base from which to go on: minutes for each station and week, month by month. Adjust it to the "
              "weather and to what the ground shows; local watering rules come first."),
           parent),
      asked_(session, std::bind_front(&SchedulePage::ask, this)) {  // a lambda here hides the class from lupdate
    write_table_ = add_action(tr("Write the table…"));
    write_calendar_ = add_action(tr("Write the calendar…"), true);
    choices_ = new ScheduleChoices(session);
    body()->addWidget(choices_);
    state_ = faint({});
    state_->setWordWrap(true);
    body()->addWidget(state_);
    build_answer();
    const auto choose = [this](const QString& title, const QString& name, const QString& filter) {
        const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        return QFileDialog::getSaveFileName(this, title, folder + QLatin1Char('/') + name, filter);
    };
    connect(write_table_, &QPushButton::clicked, this, [this, choose] {
        const QString file = choose(tr("Write the table"), QStringLiteral("schedule.csv"), tr("Tables (*.csv)"));
        if (!file.isEmpty()) write_table(file);
    });
    connect(write_calendar_, &QPushButton::clicked, this, [this, choose] {
        const QString file = choose(tr("Write the calendar"), QStringLiteral("schedule.ics"), tr("Calendars (*.ics)"));
        if (!file.isEmpty()) write_calendar(file);
    });
    connect(choices_, &ScheduleChoices::site_changed, this, [this] { answer_.reset(); });
    connect(choices_, &ScheduleChoices::changed, this, &SchedulePage::ask);
    connect(&asked_, &BackgroundQuestion::said, this, &SchedulePage::say);
    book_changed();
}

void SchedulePage::build_answer() {
    figures_ = new FigureGrid(4);
    body()->addWidget(figures_);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    tabs_ = new QTabWidget;
    minutes_ = new FigureTable(tr("Minutes a week, by station and month"));
    month_stations_ = new FigureTable(tr("Stations in one month"));
    starts_ = new FigureTable(tr("Start times in one month"));
    month_ = new QComboBox;
    month_->setAccessibleName(tr("Month shown"));
    month_->setMinimumContentsLength(10);
    connect(month_, &QComboBox::currentIndexChanged, this, &SchedulePage::show_month);
    tabs_->addTab(minutes_, tr("Minutes a week"));
    tabs_->addTab(month_stations_, tr("One month"));
    tabs_->addTab(starts_, tr("Start times"));
    tabs_->setCornerWidget(month_);
    connect(tabs_, &QTabWidget::currentChanged, this, [this](int tab) { month_->setEnabled(tab > 0); });
    month_->setEnabled(false);
    auto* left = new QVBoxLayout;
    left->addWidget(tabs_);
    columns->addWidget(card(left), 7);
    auto* right = new QVBoxLayout;
    right->addWidget(heading(tr("What to look at")));
    findings_ = new QListWidget;
    findings_->setAccessibleName(tr("Findings"));
    show_whole_sentences(findings_);
    findings_->setFrameShape(QFrame::NoFrame);
    findings_->setSpacing(3);
    findings_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    right->addWidget(findings_, 1);
    auto* caution = faint(tr("A schedule is no permit: mind local watering days, reclaimed water signs, people on the "
                             "turf and spray on roads. Do not water where rain has done it."));
    caution->setWordWrap(true);
    right->addWidget(caution);
    columns->addWidget(card(right), 3);
    body()->addLayout(columns, 1);
}

void SchedulePage::book_changed() { choices_->fill(); }

void SchedulePage::show_site(const std::string& site) { choices_->choose_site(site); }

void SchedulePage::set_rule(const std::array<bool, 7>& days, const QTime& from, const QTime& to, int at_once) {
    choices_->set_rule(days, from, to, at_once);
}

void SchedulePage::say(const QString& words) {
    state_->setText(words);
    state_->setVisible(!words.isEmpty());
}

void SchedulePage::ask() {
    const auto question = choices_->question();
    if (!question) {
        asked_.forget();
        answer_.reset();
        say(choices_->why_no_question());
        show_answer();
        return;
    }
    if (!asked_.free()) return;
    asked_.put<workflow::ScheduleAnswer>(
        tr("Working out the schedule"), tr("Working out…"),
        [question = *question](const store::Book& book) { return workflow::answer_schedule(book, question); },
        [this](std::optional<workflow::ScheduleAnswer> answer, const QString& error) {
            answer_ = std::move(answer);
            say(error);
            show_answer();
            Q_EMIT answered();
        });
}

void SchedulePage::show_answer() {
    figures_->setVisible(answer_.has_value());
    tabs_->setVisible(answer_.has_value());
    write_table_->setEnabled(answer_.has_value());
    write_calendar_->setEnabled(answer_ && answer_->schedule.rule);
    write_calendar_->setToolTip(answer_ && !answer_->schedule.rule
                                    ? tr("A calendar needs days and a window: choose \"set here\" as the watering rule.")
                                    : QString());
    findings_->clear();
    if (!answer_) return;
    figures_->set_figures(schedule_figures(*answer_));
    const auto minutes = minutes_table(*answer_, session().units());
    minutes_->fill(minutes);
    findings_->addItems(schedule_findings(*answer_));
    if (findings_->count() == 0) findings_->addItem(tr("Nothing stands out: every run fits."));
    const QString before = month_->currentText();
    const QSignalBlocker quiet(month_);
    month_->clear();
    for (const auto& m : answer_->schedule.months) month_->addItem(month_title(m.month));
    month_->setCurrentIndex(std::max(0, month_->findText(before)));
    show_month();
}

void SchedulePage::show_month() {
    if (!answer_ || month_->currentIndex() < 0) return;
    const auto index = static_cast<std::size_t>(month_->currentIndex());
    const auto stations = month_table(*answer_, index, session().units());
    month_stations_->fill(stations);
    const auto starts = starts_table(*answer_, index);
    starts_->fill(starts);
}

bool SchedulePage::written(const QString& file, const std::function<void(const std::filesystem::path&)>& write) {
    if (!answer_) return false;
    try {
        write(file.toStdString());
    } catch (const std::exception& e) {
        say(tr("Not written: %1").arg(error_words(e)));
        return false;
    }
    session().say(tr("Written: %1").arg(QDir::toNativeSeparators(file)));
    return true;
}

bool SchedulePage::write_table(const QString& file) {
    return written(file, [this](const auto& path) { workflow::write_schedule_table(answer_->schedule, path); });
}

bool SchedulePage::write_calendar(const QString& file) {
    return written(file, [this](const auto& path) {
        workflow::write_schedule_calendar(answer_->schedule, *calendar::parse_instant(now_text()), path);
    });
}

QString SchedulePage::state() const { return state_->text(); }

bool SchedulePage::copy() {
    if (!answer_) return false;
    auto* table = qobject_cast<FigureTable*>(tabs_->currentWidget());
    return table && table->copy();
}

bool SchedulePage::print(QPrinter& printer) {
    if (!answer_) return false;
    std::vector<TitledRows> tables;
    const auto minutes = minutes_table(*answer_, session().units());
    tables.push_back({tr("Minutes a week"), minutes.heads, minutes.rows});
    for (std::size_t i = 0; i < answer_->schedule.months.size(); ++i) {
        const auto month = month_table(*answer_, i, session().units());
        tables.push_back({month_title(answer_->schedule.months[i].month), month.heads, month.rows});
    }
    QStringList notes = schedule_findings(*answer_);
    notes << core_words(answer_->schedule.method) << core_words(answer_->schedule.source)
          << tr("Adjust to the weather; do not water where rain has done it. Local watering rules come first.");
    print_paper(printer, tr("Base schedule of site %1").arg(choices_->site_title()), tables, notes);
    return true;
}

}  // namespace evenfall::desktop

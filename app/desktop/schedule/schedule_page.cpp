// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/schedule/schedule_page.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/month_words.h"
#include "app/desktop/paper.h"
#include "app/desktop/schedule/schedule_view.h"
#include "app/desktop/season/season_range.h"
#include "app/desktop/sentences.h"
#include "app/desktop/task.h"
#include "app/workflow/schedule_files.h"
#include "app/workflow/site_weather.h"
#include "core/input_error.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <memory>

namespace evenfall::desktop {
namespace {

constexpr int of_the_book = 0;
constexpr int own_rule_chosen = 1;

/// The months for which the site's weather, of one station or of several, has days. Nothing too where
/// it cannot be put together: asking for a schedule then says why.
std::optional<MonthRange> months_with_weather(const store::Book& book, const std::string& code) {
    const auto site = store::find_site(book, code);
    if (!site || site->weather.empty()) return std::nullopt;
    const auto range = [](const auto& days) -> std::optional<MonthRange> {
        if (days.empty()) return std::nullopt;
        return MonthRange{calendar::month_of(days.front().date), calendar::month_of(days.back().date)};
    };
    try {
        const auto weather = workflow::weather_of_site(book, *site, calendar::make_date(calendar::first_year, 1, 1),
                                                       calendar::make_date(calendar::last_year, 12, 31));
        return weather.place_days ? range(*weather.place_days) : range(weather.days);
    } catch (const InputError&) {
        return std::nullopt;
    }
}

QComboBox* narrow_box() {
    auto* box = new QComboBox;
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(8);
    return box;
}

std::chrono::minutes minutes_of(const QTime& time) { return std::chrono::minutes{time.hour() * 60 + time.minute()}; }

}  // namespace

SchedulePage::SchedulePage(Session& session, QWidget* parent)
    : Page(session, tr("Schedule"),
           tr("The base from which to go on: minutes for each station and week, month by month. Adjust it to the "
              "weather and to what the ground shows; local watering rules come first."),
           parent) {
    write_table_ = add_action(tr("Write the table…"));
    write_calendar_ = add_action(tr("Write the calendar…"), true);
    build_choices();
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
    book_changed();
}

void SchedulePage::build_choices() {
    site_ = narrow_box();
    from_ = narrow_box();
    to_ = narrow_box();
    program_ = narrow_box();
    rule_ = narrow_box();
    for (const auto& name : budget::built_in_program_names()) {
        program_->addItem(core_words(budget::built_in_program(name).title), q(name));
    }
    program_->setCurrentIndex(program_->findData(QStringLiteral("general")));
    year_ = new QSpinBox;
    year_->setRange(calendar::first_year, calendar::last_year);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(labelled(tr("&Site"), site_), 4);
    row->addWidget(labelled(tr("Weather &from"), from_), 2);
    row->addWidget(labelled(tr("&To"), to_), 2);
    row->addWidget(labelled(tr("For the &year"), year_), 1);
    row->addWidget(labelled(tr("&Program"), program_), 4);
    body()->addLayout(row);

    auto* second = new QHBoxLayout;
    second->setSpacing(12);
    second->addWidget(labelled(tr("&Watering rule"), rule_), 3);
    own_ = new QWidget;
    auto* own = new QHBoxLayout(own_);
    own->setContentsMargins(0, 0, 0, 0);
    own->setSpacing(10);
    for (std::size_t d = 0; d < 7; ++d) {
        days_[d] = new QCheckBox(day_title(static_cast<int>(d)));
        days_[d]->setChecked(d == 0 || d == 2 || d == 4);
        days_[d]->setAccessibleName(tr("Watering allowed on %1").arg(day_title(static_cast<int>(d))));
        own->addWidget(days_[d], 0, Qt::AlignBottom);
        connect(days_[d], &QCheckBox::toggled, this, &SchedulePage::ask);
    }
    opens_ = new QTimeEdit(QTime(22, 0));
    closes_ = new QTimeEdit(QTime(6, 0));
    at_once_ = new QSpinBox;
    at_once_->setRange(1, 1000);
    for (QTimeEdit* time : {opens_, closes_}) {
        time->setDisplayFormat(QStringLiteral("HH:mm"));
        time->setKeyboardTracking(false);
        connect(time, &QTimeEdit::timeChanged, this, &SchedulePage::ask);
    }
    for (QSpinBox* box : {year_, at_once_}) {
        box->setKeyboardTracking(false);
        connect(box, &QSpinBox::valueChanged, this, &SchedulePage::ask);
    }
    own->addWidget(labelled(tr("W&indow opens"), opens_));
    own->addWidget(labelled(tr("&closes"), closes_));
    own->addWidget(labelled(tr("St&ations at once"), at_once_));
    second->addWidget(own_, 5);
    body()->addLayout(second);
    state_ = faint({});
    state_->setWordWrap(true);
    body()->addWidget(state_);
    connect(site_, &QComboBox::currentIndexChanged, this, &SchedulePage::site_chosen);
    connect(rule_, &QComboBox::currentIndexChanged, this, &SchedulePage::rule_chosen);
    connect(from_, &QComboBox::currentIndexChanged, this, &SchedulePage::ask);
    connect(program_, &QComboBox::currentIndexChanged, this, &SchedulePage::ask);
    connect(to_, &QComboBox::currentIndexChanged, this, [this] {
        if (filling_) return;
        // As on the command line: the year after the last month, until another is typed.
        if (const auto m = calendar::parse_month(utf8(to_->currentText()))) {
            const QSignalBlocker quiet(year_);
            year_->setValue(static_cast<int>(m->year()) + 1);
        }
        ask();
    });
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

void SchedulePage::book_changed() {
    const QString before = site_->currentData().toString();
    filling_ = true;
    site_->clear();
    if (session().has_book()) {
        for (const auto& site : store::sites(session().book())) {
            site_->addItem(q(site.name) + QStringLiteral("  (") + q(site.code) + QLatin1Char(')'), q(site.code));
        }
    }
    const int at = site_->findData(before);
    site_->setCurrentIndex(at < 0 ? (site_->count() > 0 ? 0 : -1) : at);
    filling_ = false;
    site_chosen();
}

void SchedulePage::show_site(const std::string& site) { site_->setCurrentIndex(site_->findData(q(site))); }

void SchedulePage::set_rule(const std::array<bool, 7>& days, const QTime& from, const QTime& to, int at_once) {
    filling_ = true;
    for (std::size_t d = 0; d < 7; ++d) days_[d]->setChecked(days[d]);
    opens_->setTime(from);
    closes_->setTime(to);
    at_once_->setValue(at_once);
    rule_->setCurrentIndex(rule_->findData(own_rule_chosen));
    filling_ = false;
    rule_chosen();
}

void SchedulePage::site_chosen() {
    if (filling_) return;
    filling_ = true;
    from_->clear();
    to_->clear();
    const QVariant rule_before = rule_->currentData();
    rule_->clear();
    answer_.reset();
    std::optional<MonthRange> range;
    if (site_->currentIndex() >= 0) {
        const std::string site = utf8(site_->currentData().toString());
        range = months_with_weather(session().book(), site);
        const auto kept = store::watering_rule(session().book(), site);
        rule_->addItem(kept ? tr("of the book: %1").arg(rule_text(*kept)) : tr("none: every day, no window"), of_the_book);
        rule_->addItem(tr("set here"), own_rule_chosen);
        rule_->setCurrentIndex(std::max(0, rule_->findData(rule_before)));
    }
    if (range) {
        const auto usual = last_year_of(*range);
        for (calendar::Month m = range->first; m <= range->last; m = calendar::plus_months(m, 1)) {
            for (QComboBox* box : {from_, to_}) box->addItem(q(calendar::format_month(m)));
        }
        from_->setCurrentText(q(calendar::format_month(usual.first)));
        to_->setCurrentText(q(calendar::format_month(usual.last)));
        year_->setValue(static_cast<int>(usual.last.year()) + 1);
    }
    filling_ = false;
    own_->setEnabled(rule_->currentData().toInt() == own_rule_chosen);
    if (!range) {
        state_->setText(!session().has_book() ? tr("No book is open.")
                        : site_->count() == 0 ? tr("There is no site in this book yet. Bring some in on the Import page.")
                                              : tr("The weather station of this site has no days yet."));
        show_answer();
        return;
    }
    ask();
}

void SchedulePage::rule_chosen() {
    if (filling_) return;
    own_->setEnabled(rule_->currentData().toInt() == own_rule_chosen);
    ask();
}

std::optional<schedule::WateringRule> SchedulePage::own_rule() const {
    if (rule_->currentData().toInt() != own_rule_chosen) return std::nullopt;
    schedule::WateringRule rule;
    rule.site = utf8(site_->currentData().toString());
    for (std::size_t d = 0; d < 7; ++d) rule.days[d] = days_[d]->isChecked();
    rule.starts = minutes_of(opens_->time());
    rule.ends = minutes_of(closes_->time());
    rule.stations_at_once = at_once_->value();
    return rule;
}

void SchedulePage::ask() {
    if (filling_ || site_->currentIndex() < 0 || from_->count() == 0) return;
    if (asking_) {
        again_ = true;
        return;
    }
    const workflow::ScheduleQuestion question{
        .site = utf8(site_->currentData().toString()),
        .from = *calendar::parse_month(utf8(from_->currentText())),
        .to = *calendar::parse_month(utf8(to_->currentText())),
        .program = utf8(program_->currentData().toString()),
        .rain = "nrcs",
        .quarter_rule = audit::QuarterRule::whole_cans,
        .year = year_->value(),
        .rule = own_rule(),
    };
    const std::string path = session().book_path().toStdString();
    auto found = std::make_shared<std::optional<workflow::ScheduleAnswer>>();
    Task* task = session().start(tr("Working out the schedule"));
    if (!task) {
        state_->setText(tr("Other work is going on; choose again when it has ended."));
        state_->show();
        return;
    }
    state_->setText(tr("Working out…"));
    state_->show();
    asking_ = true;
    connect(task, &Task::stopped_by_user, this, [this] {
        asking_ = false;
        state_->setText(tr("Stopped."));
    });
    connect(task, &Task::finished, this, [this, found](const QString& error) {
        asking_ = false;
        if (again_) {
            again_ = false;
            ask();
            return;
        }
        answer_ = std::move(*found);
        state_->setText(error);
        show_answer();
        Q_EMIT answered();
    });
    // The worker has a book of its own: one connection must not be shared by two threads.
    task->start([found, question, path](const TaskContext& context) {
        const auto book = store::Book::open(path, store::Access::read_only);
        context.check();
        *found = workflow::answer_schedule(book, question);
        context.check();
    });
}

void SchedulePage::show_answer() {
    state_->setVisible(!state_->text().isEmpty());
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
    filling_ = true;
    month_->clear();
    for (const auto& m : answer_->schedule.months) month_->addItem(month_title(m.month));
    month_->setCurrentIndex(std::max(0, month_->findText(before)));
    filling_ = false;
    show_month();
}

void SchedulePage::show_month() {
    if (filling_ || !answer_ || month_->currentIndex() < 0) return;
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
        state_->setText(tr("Not written: %1").arg(error_words(e)));
        state_->show();
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
    print_paper(printer, tr("Base schedule of site %1").arg(site_->currentText()), tables, notes);
    return true;
}

}  // namespace evenfall::desktop

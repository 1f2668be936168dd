// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/schedule/schedule_choices.h"

#include "app/desktop/core_words.h"
#include "app/desktop/page.h"
#include "app/desktop/schedule/schedule_view.h"
#include "app/desktop/season/season_range.h"
#include "app/desktop/site_choice.h"
#include "app/workflow/site_weather.h"
#include "core/input_error.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <algorithm>

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

ScheduleChoices::ScheduleChoices(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(12);
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
    rows->addLayout(row);

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
        connect(days_[d], &QCheckBox::toggled, this, &ScheduleChoices::say_changed);
    }
    opens_ = new QTimeEdit(QTime(22, 0));
    closes_ = new QTimeEdit(QTime(6, 0));
    at_once_ = new QSpinBox;
    at_once_->setRange(1, 1000);
    for (QTimeEdit* time : {opens_, closes_}) {
        time->setDisplayFormat(QStringLiteral("HH:mm"));
        time->setKeyboardTracking(false);
        connect(time, &QTimeEdit::timeChanged, this, &ScheduleChoices::say_changed);
    }
    for (QSpinBox* box : {year_, at_once_}) {
        box->setKeyboardTracking(false);
        connect(box, &QSpinBox::valueChanged, this, &ScheduleChoices::say_changed);
    }
    own->addWidget(labelled(tr("W&indow opens"), opens_));
    own->addWidget(labelled(tr("&closes"), closes_));
    own->addWidget(labelled(tr("St&ations at once"), at_once_));
    second->addWidget(own_, 5);
    rows->addLayout(second);
    connect(site_, &QComboBox::currentIndexChanged, this, &ScheduleChoices::site_chosen);
    connect(rule_, &QComboBox::currentIndexChanged, this, &ScheduleChoices::rule_chosen);
    connect(from_, &QComboBox::currentIndexChanged, this, &ScheduleChoices::say_changed);
    connect(program_, &QComboBox::currentIndexChanged, this, &ScheduleChoices::say_changed);
    connect(to_, &QComboBox::currentIndexChanged, this, [this] {
        if (filling_) return;
        // As on the command line: the year after the last month, until another is typed.
        if (const auto m = calendar::parse_month(utf8(to_->currentText()))) {
            const QSignalBlocker quiet(year_);
            year_->setValue(static_cast<int>(m->year()) + 1);
        }
        say_changed();
    });
}

void ScheduleChoices::fill() {
    filling_ = true;
    fill_sites(*site_, session_);
    filling_ = false;
    site_chosen();
}

void ScheduleChoices::choose_site(const std::string& site) { site_->setCurrentIndex(site_->findData(q(site))); }

void ScheduleChoices::set_rule(const std::array<bool, 7>& days, const QTime& from, const QTime& to, int at_once) {
    filling_ = true;
    for (std::size_t d = 0; d < 7; ++d) days_[d]->setChecked(days[d]);
    opens_->setTime(from);
    closes_->setTime(to);
    at_once_->setValue(at_once);
    rule_->setCurrentIndex(rule_->findData(own_rule_chosen));
    filling_ = false;
    rule_chosen();
}

void ScheduleChoices::site_chosen() {
    if (filling_) return;
    filling_ = true;
    from_->clear();
    to_->clear();
    const QVariant rule_before = rule_->currentData();
    rule_->clear();
    std::optional<MonthRange> range;
    if (site_->currentIndex() >= 0) {
        const std::string site = utf8(site_->currentData().toString());
        range = months_with_weather(session_.book(), site);
        const auto kept = store::watering_rule(session_.book(), site);
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
    Q_EMIT site_changed();
    Q_EMIT changed();
}

void ScheduleChoices::say_changed() {
    if (!filling_) Q_EMIT changed();
}

void ScheduleChoices::rule_chosen() {
    if (filling_) return;
    own_->setEnabled(rule_->currentData().toInt() == own_rule_chosen);
    Q_EMIT changed();
}

std::optional<schedule::WateringRule> ScheduleChoices::own_rule() const {
    if (rule_->currentData().toInt() != own_rule_chosen) return std::nullopt;
    schedule::WateringRule rule;
    rule.site = utf8(site_->currentData().toString());
    for (std::size_t d = 0; d < 7; ++d) rule.days[d] = days_[d]->isChecked();
    rule.starts = minutes_of(opens_->time());
    rule.ends = minutes_of(closes_->time());
    rule.stations_at_once = at_once_->value();
    return rule;
}

std::optional<workflow::ScheduleQuestion> ScheduleChoices::question() const {
    if (site_->currentIndex() < 0 || from_->count() == 0) return std::nullopt;
    return workflow::ScheduleQuestion{
        .site = utf8(site_->currentData().toString()),
        .from = *calendar::parse_month(utf8(from_->currentText())),
        .to = *calendar::parse_month(utf8(to_->currentText())),
        .program = utf8(program_->currentData().toString()),
        .rain = "nrcs",
        .quarter_rule = audit::QuarterRule::whole_cans,
        .year = year_->value(),
        .rule = own_rule(),
    };
}

QString ScheduleChoices::why_no_question() const {
    if (!session_.has_book()) return tr("No book is open.");
    return site_->count() == 0 ? tr("There is no site in this book yet. Bring some in on the Import page.")
                               : tr("The weather station of this site has no days yet.");
}

QString ScheduleChoices::site_title() const { return site_->currentText(); }

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/season/season_page.h"

#include "app/desktop/chart_panel.h"
#include "app/desktop/core_words.h"
#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/finding_words.h"
#include "app/desktop/season/readings_dialog.h"
#include "app/desktop/season/season_range.h"
#include "app/desktop/season/season_view.h"
#include "app/desktop/site_choice.h"

#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QPrinter>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace evenfall::desktop {

SeasonPage::SeasonPage(Session& session, QWidget* parent)
    : Page(session, tr("Season"), tr("What the turf needed, what was granted, what was used, and where the difference went."),
           parent),
      asked_(session, [this] { ask(); }) {
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    site_ = new QComboBox;
    from_ = new QComboBox;
    to_ = new QComboBox;
    program_ = new QComboBox;
    for (const auto& name : budget::built_in_program_names()) {
        program_->addItem(core_words(budget::built_in_program(name).title), q(name));
    }
    program_->setCurrentIndex(program_->findData(QStringLiteral("general")));
    for (QComboBox* box : {site_, from_, to_, program_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(9);
    }
    row->addWidget(labelled(tr("&Site"), site_), 3);
    row->addWidget(labelled(tr("&From"), from_), 1);
    row->addWidget(labelled(tr("&To"), to_), 1);
    row->addWidget(labelled(tr("&Program"), program_), 4);
    body()->addLayout(row);
    state_ = faint({});
    state_->setWordWrap(true);
    body()->addWidget(state_);
    figures_ = new FigureGrid(6);
    body()->addWidget(figures_);

    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    tabs_ = new QTabWidget;
    use_ = new ChartPanel;
    cumulative_ = new ChartPanel;
    waste_ = new ChartPanel;
    months_ = new FigureTable(tr("Months of the season"));
    areas_ = new FigureTable(tr("Areas of the site"));
    tabs_->addTab(use_, tr("Use and budget"));
    tabs_->addTab(cumulative_, tr("Added up"));
    tabs_->addTab(waste_, tr("Where it went"));
    tabs_->addTab(months_, tr("Months"));
    tabs_->addTab(areas_, tr("Areas"));
    auto* left = new QVBoxLayout;
    left->addWidget(tabs_);
    columns->addWidget(card(left), 7);
    auto* right = new QVBoxLayout;
    right->addWidget(heading(tr("What to look at")));
    findings_ = new QListWidget;
    findings_->setAccessibleName(tr("Findings"));
    findings_->setWordWrap(true);
    findings_->setTextElideMode(Qt::ElideNone);
    findings_->setResizeMode(QListView::Adjust);
    findings_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    findings_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    findings_->setFrameShape(QFrame::NoFrame);
    findings_->setSpacing(3);
    findings_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    right->addWidget(findings_, 1);
    auto* show = new QPushButton(tr("Show me the readings"));
    right->addWidget(show, 0, Qt::AlignLeft);
    columns->addWidget(card(right), 3);
    body()->addLayout(columns, 1);

    connect(site_, &QComboBox::currentIndexChanged, this, &SeasonPage::site_chosen);
    for (QComboBox* box : {from_, to_, program_}) connect(box, &QComboBox::currentIndexChanged, this, &SeasonPage::ask);
    connect(show, &QPushButton::clicked, this, &SeasonPage::open_finding);
    connect(findings_, &QListWidget::itemActivated, this, &SeasonPage::open_finding);
    connect(findings_, &QListWidget::currentItemChanged, this, [show](QListWidgetItem* item) {
        show->setEnabled(item && item->data(Qt::UserRole).isValid());
    });
    connect(&asked_, &BackgroundQuestion::said, this, &SeasonPage::say);
    show->setEnabled(false);
    book_changed();
}

void SeasonPage::book_changed() {
    filling_ = true;
    fill_sites(*site_, session());
    filling_ = false;
    site_chosen();
}

void SeasonPage::show_site(const std::string& site) { site_->setCurrentIndex(site_->findData(q(site))); }

void SeasonPage::site_chosen() {
    if (filling_) return;
    filling_ = true;
    from_->clear();
    to_->clear();
    answer_.reset();
    std::optional<MonthRange> range;
    if (site_->currentIndex() >= 0) {
        range = months_with_readings(session().book(), utf8(site_->currentData().toString()));
    }
    if (range) {
        const auto usual = last_year_of(*range);
        for (calendar::Month m = range->first; m <= range->last; m = calendar::plus_months(m, 1)) {
            for (QComboBox* box : {from_, to_}) box->addItem(q(calendar::format_month(m)));
        }
        from_->setCurrentText(q(calendar::format_month(usual.first)));
        to_->setCurrentText(q(calendar::format_month(usual.last)));
    }
    filling_ = false;
    if (!range) {
        asked_.forget();
        say(!session().has_book() ? tr("No book is open.")
                        : site_->count() == 0 ? tr("There is no site in this book yet. Bring some in on the Import page.")
                                              : tr("The meters of this site have no readings yet."));
        show_answer();
        return;
    }
    ask();
}

void SeasonPage::ask() {
    if (filling_ || site_->currentIndex() < 0 || from_->count() == 0 || !asked_.free()) return;
    workflow::SeasonQuestion question{
        .site = utf8(site_->currentData().toString()),
        .from = *calendar::parse_month(utf8(from_->currentText())),
        .to = *calendar::parse_month(utf8(to_->currentText())),
        .program = utf8(program_->currentData().toString()),
        .rain = "nrcs",
        .quarter_rule = session().sheet().data().quarter_rule,
    };
    asked_.put<workflow::SeasonAnswer>(
        tr("Adding up the season"), tr("Adding up…"),
        [question](const store::Book& book) { return workflow::answer_season(book, question); },
        [this](std::optional<workflow::SeasonAnswer> answer, const QString& error) {
            answer_ = std::move(answer);
            if (answer_) sort_by_urgency(answer_->meter_findings);
            say(error);
            show_answer();
            Q_EMIT answered();
        });
}

void SeasonPage::say(const QString& words) {
    state_->setText(words);
    state_->setVisible(!words.isEmpty());
}

void SeasonPage::show_answer() {
    figures_->setVisible(answer_.has_value());
    tabs_->setVisible(answer_.has_value());
    show_findings();
    if (!answer_) return;
    const UnitsShown units = session().units();
    figures_->set_figures(season_figures(*answer_, units));
    const auto show = [](ChartPanel* panel, const ChartView& view) {
        panel->set_chart(view.chart, view.table, view.sentence);
    };
    show(use_, use_chart(*answer_, units));
    show(cumulative_, cumulative_chart(*answer_, units));
    show(waste_, waste_chart(*answer_, units));
    show_tables();
}

void SeasonPage::show_tables() {
    if (!answer_) return;
    const UnitsShown units = session().units();
    const auto months = months_table(*answer_, units);
    months_->fill(months.heads, months.rows);
    const auto areas = areas_table(*answer_, units);
    areas_->fill(areas.heads, areas.rows);
}

void SeasonPage::show_findings() {
    findings_->clear();
    if (!answer_) return;
    for (std::size_t i = 0; i < answer_->meter_findings.size(); ++i) {
        const auto& f = answer_->meter_findings[i];
        auto* item = new QListWidgetItem(core_words(f.sentence));
        item->setData(Qt::UserRole, static_cast<int>(i));
        item->setToolTip(
            tr("Limit: %1\nSource: %2\nHow sure: %3")
                .arg(core_words(f.limit), core_words(f.source), core_words(meter::text_of(f.confidence))));
        findings_->addItem(item);
    }
    for (const auto& f : answer_->result.findings) {
        findings_->addItem(core_words(f.record) + QStringLiteral(": ") + core_words(f.sentence));
    }
    if (findings_->count() == 0) findings_->addItem(tr("Nothing stands out."));
    findings_->setCurrentRow(0);
}

void SeasonPage::open_finding() {
    QListWidgetItem* item = findings_->currentItem();
    if (!item || !item->data(Qt::UserRole).isValid() || !answer_) return;
    const auto& f = answer_->meter_findings[static_cast<std::size_t>(item->data(Qt::UserRole).toInt())];
    show_readings(session(), f.meter, f.from, f.to, item->text(), this);
}

bool SeasonPage::copy() {
    if (!answer_) return false;
    QWidget* shown = tabs_->currentWidget();
    if (auto* chart = qobject_cast<ChartPanel*>(shown)) return chart->copy();
    if (auto* table = qobject_cast<FigureTable*>(shown)) return table->copy();
    return false;
}

bool SeasonPage::print(QPrinter& printer) {
    if (!answer_) return false;
    QPainter painter(&printer);
    const double dots = printer.resolution();
    // The painter begins at the margins.
    const QSizeF page = printer.pageRect(QPrinter::DevicePixel).size();
    const double line = dots / 4.0;
    QFont font = painter.font();
    font.setPointSizeF(12.0);
    font.setBold(true);
    painter.setFont(font);
    painter.drawText(QRectF(0, 0, page.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                     site_->currentText() + QStringLiteral("  ") + from_->currentText() + QStringLiteral(" – ") +
                         to_->currentText());
    font.setPointSizeF(9.0);
    font.setBold(false);
    const double height = (page.height() - line) / 3.0;
    double top = line;
    for (const ChartPanel* chart : {use_, cumulative_, waste_}) {
        painter.setFont(font);
        painter.setPen(Qt::black);
        painter.drawText(QRectF(0, top, page.width(), 2 * line), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap,
                         chart->sentence());
        chart->draw(painter, QRectF(0, top + 2 * line, page.width(), height - 2.5 * line), dots);
        top += height;
    }
    return true;
}

}  // namespace evenfall::desktop

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/sites/sites_page.h"

#include "app/desktop/figure_table.h"
#include "app/desktop/sites/sites_model.h"
#include "app/desktop/table_words.h"
#include "app/desktop/task.h"
#include "core/store/site_store.h"

#include <QApplication>
#include <QCheckBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace evenfall::desktop {

SitesPage::SitesPage(Session& session, QWidget* parent)
    : Page(session, tr("Sites"), tr("The places you answer for, and what to look at first."), parent),
      model_(new SitesModel(this)), filter_(new SitesFilter(this)) {
    filter_->setSourceModel(model_);
    filter_->setSortRole(SitesModel::sort_role);
    search_ = new QLineEdit;
    search_->setPlaceholderText(tr("Search by name, code or organisation"));
    search_->setAccessibleName(tr("Search"));
    search_->setClearButtonEnabled(true);
    only_ = new QCheckBox(tr("Only what needs attention"));
    auto* row = new QHBoxLayout;
    row->addWidget(search_, 1);
    row->addWidget(only_);
    body()->addLayout(row);
    table_ = new QTableView;
    table_->setModel(filter_);
    table_->setSortingEnabled(true);
    table_->sortByColumn(SitesModel::over_budget, Qt::DescendingOrder);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setWordWrap(false);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setTabKeyNavigation(false);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setAccessibleName(tr("Sites"));
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(30);
    table_->horizontalHeader()->setObjectName(QStringLiteral("sorted"));
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    const int widths[] = {180, 145, 66, 92, 104, 176};
    for (int c = 0; c < 6; ++c) {
        // Words of another language may be longer; the arrow of the sorting is above them.
        table_->setColumnWidth(c, std::max(widths[c], table_->horizontalHeader()->sectionSizeHint(c)));
    }
    none_ = faint({});
    none_->setWordWrap(true);
    auto* list = new QVBoxLayout;
    list->addWidget(table_);
    list->addWidget(none_);
    auto* below = new QVBoxLayout;
    auto* head = new QHBoxLayout;
    name_ = heading({});
    head->addWidget(name_, 1);
    auto* season = new QPushButton(tr("Season of this site"));
    head->addWidget(season);
    below->addLayout(head);
    attention_ = faint({});
    attention_->setWordWrap(true);
    below->addWidget(attention_);
    areas_ = new FigureTable(tr("Areas of the site"));
    below->addWidget(areas_, 1);
    body()->addWidget(card(list), 3);
    body()->addWidget(card(below), 2);

    connect(search_, &QLineEdit::textChanged, filter_, &SitesFilter::set_words);
    connect(only_, &QCheckBox::toggled, filter_, &SitesFilter::set_only_attention);
    connect(search_, &QLineEdit::textChanged, this, &SitesPage::show_found);
    connect(only_, &QCheckBox::toggled, this, &SitesPage::show_found);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &SitesPage::show_chosen);
    connect(table_, &QTableView::activated, this, [this] {
        if (!chosen().empty()) Q_EMIT season_wanted(chosen());
    });
    connect(season, &QPushButton::clicked, this, [this] {
        if (!chosen().empty()) Q_EMIT season_wanted(chosen());
    });
    connect(model_, &QAbstractItemModel::dataChanged, this, &SitesPage::show_chosen);
    setFocusProxy(table_);
    book_changed();
}

void SitesPage::book_changed() {
    model_->set_rows(session().has_book() ? site_rows(session().book()) : std::vector<SiteRow>(), session().units());
    table_->selectRow(0);
    show_found();
    show_chosen();
    if (model_->rowCount() > 0) QMetaObject::invokeMethod(this, &SitesPage::judge_all, Qt::QueuedConnection);
}

void SitesPage::show_found() {
    const bool any = filter_->rowCount() > 0;
    if (any && !table_->currentIndex().isValid()) table_->selectRow(0);
    none_->setVisible(!any);
    if (any) return;
    none_->setText(!session().has_book()      ? tr("No book is open.")
                   : model_->rowCount() == 0  ? tr("There is no site in this book yet. Bring some in on the Import page.")
                   : only_->isChecked()       ? tr("No site that needs attention matches.")
                                              : tr("No site matches \"%1\".").arg(search_->text()));
}

void SitesPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    if (model_->rowCount() > 0) QMetaObject::invokeMethod(this, &SitesPage::judge_all, Qt::QueuedConnection);
}

void SitesPage::units_changed() {
    model_->set_units(session().units());
    show_chosen();
}

void SitesPage::judge_all() {
    std::vector<SiteRow> rows;
    bool any = false;
    for (int r = 0; r < model_->rowCount(); ++r) {
        rows.push_back(model_->row(r));
        any = any || !rows.back().judged;
    }
    if (!any || (session().task() && session().task()->running())) return;
    // Anything that the user asks for goes first; the rest is looked through when they are back.
    Task* task = session().start(tr("Looking through the sites"), true);
    if (!task) return;
    const std::string path = session().book_path().toStdString();
    const QPointer<SitesPage> self(this);
    task->start([rows, path, self](const TaskContext& context) {
        const auto book = store::Book::open(path, store::Access::read_only);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            context.check();
            SiteRow row = rows[i];
            if (row.judged) continue;
            judge(book, row);
            context.report(static_cast<double>(i + 1) / static_cast<double>(rows.size()));
            QMetaObject::invokeMethod(
                qApp,
                [self, i, row] {
                    // Another book may have been opened meanwhile.
                    if (self && static_cast<int>(i) < self->model_->rowCount() &&
                        self->model_->row(static_cast<int>(i)).code == row.code) {
                        self->model_->set_row(i, row);
                    }
                },
                Qt::QueuedConnection);
        }
    });
}

std::string SitesPage::chosen() const {
    const QModelIndex at = filter_->mapToSource(table_->currentIndex());
    return at.isValid() ? model_->row(at.row()).code : std::string();
}

void SitesPage::show_chosen() {
    const QModelIndex at = filter_->mapToSource(table_->currentIndex());
    name_->parentWidget()->setVisible(at.isValid());
    if (!at.isValid()) return;
    const SiteRow& row = model_->row(at.row());
    name_->setText(q(row.name) + QStringLiteral("  (") + q(row.code) + QLatin1Char(')'));
    QStringList lines;
    for (std::size_t i = 0; i < row.attention.size() && i < 3; ++i) lines << SitesModel::line_of(row.attention[i]);
    attention_->setText(lines.join(QLatin1Char('\n')));
    attention_->setVisible(!lines.isEmpty());
    std::vector<std::vector<FigureCell>> cells;
    for (const auto& a : store::areas(session().book(), row.code)) {
        const auto plain = [](const QString& text, bool number = false) {
            return FigureCell{text, std::nullopt, number, false, false};
        };
        cells.push_back({plain(q(a.code)), plain(q(a.name)), plain(shown(a.size.quantity(), session().units()), true),
                         plain(a.plant.empty() ? not_recorded() : key_words(a.plant)),
                         plain(a.head_type.empty() ? not_recorded() : key_words(a.head_type)),
                         plain(a.soil.empty() ? not_recorded() : key_words(a.soil)),
                         plain(a.meter.empty() ? not_recorded() : q(a.meter))});
    }
    areas_->fill({tr("Area"), tr("Name"), tr("Size"), tr("Plant"), tr("Heads"), tr("Soil"), tr("Meter")}, cells);
}

bool SitesPage::copy() {
    if (areas_->hasFocus()) return areas_->copy();
    if (model_->rowCount() == 0) return false;
    QStringList lines;
    QStringList cells;
    for (int c = 0; c < SitesModel::columns; ++c) cells << model_->headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
    lines << cells.join(QLatin1Char('\t'));
    for (int r = 0; r < filter_->rowCount(); ++r) {
        cells.clear();
        for (int c = 0; c < SitesModel::columns; ++c) cells << filter_->index(r, c).data().toString();
        lines << cells.join(QLatin1Char('\t'));
    }
    copy_text(lines.join(QLatin1Char('\n')));
    return true;
}

}  // namespace evenfall::desktop

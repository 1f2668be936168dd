// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/season/readings_dialog.h"

#include "app/desktop/page.h"
#include "app/desktop/season/readings_model.h"
#include "app/desktop/session.h"
#include "core/store/meter_store.h"
#include "core/store/site_store.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace evenfall::desktop {

void show_readings(Session& session, const std::string& code, calendar::Date from, calendar::Date to,
                   const QString& why, QWidget* parent) {
    const auto meter = store::find_meter(session.book(), code);
    if (!meter) {
        session.say(ReadingsModel::tr("Meter %1 is not in the book.").arg(q(code)));
        return;
    }
    const auto site = store::find_site(session.book(), meter->site);
    QDialog dialog(parent);
    dialog.setWindowTitle(ReadingsModel::tr("Readings of meter %1").arg(q(code)));
    dialog.resize(720, 560);
    auto* column = new QVBoxLayout(&dialog);
    auto* words = new QLabel(why);
    words->setWordWrap(true);
    words->setTextFormat(Qt::PlainText);
    column->addWidget(words);
    auto* model = new ReadingsModel(session.book(), *meter, calendar::TimeZone(site ? site->time_zone : "UTC0"), &dialog);
    auto* view = new QTableView;
    view->setModel(model);
    view->setAccessibleName(ReadingsModel::tr("Readings"));
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setAlternatingRowColors(true);
    view->setShowGrid(false);
    view->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view->verticalHeader()->setDefaultSectionSize(24);
    view->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    column->addWidget(view, 1);
    column->addWidget(faint(ReadingsModel::tr("%1 readings; the days in question are marked.")
                                .arg(shown_number(model->rowCount(), 0))));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    column->addWidget(buttons);
    if (model->rowCount() > 0) {
        const int first = model->row_of(from);
        const int last = std::max(first, model->row_of(to + std::chrono::days{1}) - 1);
        view->selectionModel()->select(QItemSelection(model->index(first, 0), model->index(last, 3)),
                                       QItemSelectionModel::Select);
        view->selectionModel()->setCurrentIndex(model->index(first, 0), QItemSelectionModel::NoUpdate);
        view->scrollTo(model->index(first, 0), QAbstractItemView::PositionAtCenter);
    }
    dialog.exec();
}

}  // namespace evenfall::desktop

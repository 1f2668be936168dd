// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/start_page.h"

#include "app/desktop/field_sheet/sheet_journal.h"

#include <QDir>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace evenfall::desktop {

StartPage::StartPage(Session& session, QWidget* parent)
    : Page(session, tr("Start"), tr("A book keeps the water of all your sites in one file."), parent) {
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    const auto offer = [row](const QString& name, const QString& words, const QString& button, bool main) {
        auto* column = new QVBoxLayout;
        column->addWidget(heading(name));
        auto* text = faint(words);
        text->setWordWrap(true);
        column->addWidget(text, 1, Qt::AlignTop);
        auto* press = new QPushButton(button);
        if (main) press->setObjectName(QStringLiteral("main"));
        column->addWidget(press, 0, Qt::AlignLeft);
        auto* frame = card(column);
        frame->setMinimumHeight(150);
        row->addWidget(frame, 1);
        return press;
    };
    auto* demo = offer(tr("Look around"),
                       tr("A book with an invented sod farm and campus: two seasons of readings, weather and catch "
                          "tests, with a few faults to find."),
                       tr("Make the demo book…"), true);
    auto* fresh = offer(tr("Begin your own"),
                        tr("An empty book. Bring your sites, meters, readings and weather as tables, or fill in a "
                           "field sheet right away."),
                        tr("New book…"), false);
    auto* open = offer(tr("Go on"), tr("Open a book from this computer or from a shared folder."),
                       tr("Open a book…"), false);
    connect(demo, &QPushButton::clicked, this, &StartPage::demo_wanted);
    connect(fresh, &QPushButton::clicked, this, &StartPage::new_wanted);
    connect(open, &QPushButton::clicked, this, &StartPage::open_wanted);
    body()->addLayout(row);

    auto* column = new QVBoxLayout;
    column->addWidget(heading(tr("Recent books")));
    recent_ = new QListWidget;
    recent_->setAccessibleName(tr("Recent books"));
    recent_->setFrameShape(QFrame::NoFrame);
    how_ = faint(tr("Double click or Return opens one."));
    none_ = faint(tr("None yet. Books that you open are listed here."));
    column->addWidget(none_);
    column->addWidget(how_);
    column->addWidget(recent_, 1);
    column->addStretch(0);
    column->setAlignment(Qt::AlignTop);
    body()->addWidget(card(column), 1);
    connect(recent_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        Q_EMIT book_wanted(item->data(Qt::UserRole).toString());
    });
    book_changed();
}

void StartPage::book_changed() {
    recent_->clear();
    for (const QString& path : session().recent_books()) {
        auto* item = new QListWidgetItem(
            QFileInfo(path).completeBaseName() + QStringLiteral("   ") +
            QDir::toNativeSeparators(QFileInfo(path).absolutePath()));
        item->setData(Qt::UserRole, path);
        const QFileInfo entries(journal_path(path));
        if (entries.exists() && entries.size() > 0) {
            item->setText(item->text() + QStringLiteral("   ") + tr("with entries of the field sheet that are not in the book"));
        }
        recent_->addItem(item);
    }
    none_->setVisible(recent_->count() == 0);
    how_->setVisible(recent_->count() > 0);
    recent_->setVisible(recent_->count() > 0);
    recent_->setCurrentRow(0);
}

}  // namespace evenfall::desktop

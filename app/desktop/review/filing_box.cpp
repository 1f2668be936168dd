// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/filing_box.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/page.h"
#include "app/desktop/review/review_view.h"
#include "core/store/application_store.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace evenfall::desktop {

FilingBox::FilingBox(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap);
    column->addWidget(heading(tr("This filing belongs to no application")));
    auto* words = faint(tr("Put it into an application of its site, or open a new one for it. Nothing is decided on before."));
    words->setWordWrap(true);
    column->addWidget(words);
    application_ = new QComboBox;
    application_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    application_->setMinimumContentsLength(14);
    who_ = new QLineEdit(q(user_text()));
    put_ = new QPushButton(tr("P&ut it there"));
    new_ = new QPushButton(tr("New app&lication…"));
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(labelled(tr("&Application of its site"), application_), 3);
    row->addWidget(labelled(tr("&Who"), who_), 2);
    row->addWidget(put_, 0, Qt::AlignBottom);
    row->addWidget(new_, 0, Qt::AlignBottom);
    column->addLayout(row);
    trouble_ = new QLabel;
    trouble_->setObjectName(QStringLiteral("warn"));
    trouble_->setWordWrap(true);
    trouble_->setTextFormat(Qt::PlainText);
    column->addWidget(trouble_);
    column->addStretch(1);
    connect(put_, &QPushButton::clicked, this, &FilingBox::write);
    connect(new_, &QPushButton::clicked, this, &FilingBox::new_wanted);
}

void FilingBox::show_filing(const workflow::WaitingFiling& waiting) {
    sha256_ = waiting.filing.sha256;
    trouble_->clear();
    application_->clear();
    for (const auto& a : store::applications(session_.book(), "")) {
        if (a.site != waiting.filing.site) continue;
        application_->addItem(tr("%1, %2").arg(stranger_text(a.code), status_title(a.status())), q(a.code));
    }
    const bool any = application_->count() > 0;
    if (!any) application_->addItem(tr("none yet"), QString());
    const bool open = session_.can_write();
    const QString reason = open ? QString() : session_.read_only_reason();
    application_->setEnabled(open && any);
    put_->setEnabled(open && any);
    put_->setToolTip(open && !any ? tr("There is no application of site %1.").arg(stranger_text(waiting.filing.site)) : reason);
    new_->setEnabled(open);
    new_->setToolTip(reason);
    who_->setEnabled(open);
}

void FilingBox::write() {
    trouble_->clear();
    const QString code = application_->currentData().toString();
    try {
        workflow::attach_filings(session_.book(), {utf8(code), {sha256_}, utf8(who_->text()), now_text()});
    } catch (const std::exception& e) {
        trouble_->setText(error_words(e));
        return;
    }
    session_.say(tr("The filing belongs to application %1 now.").arg(code));
    Q_EMIT put(code);
}

QString FilingBox::trouble() const { return trouble_->text(); }

}  // namespace evenfall::desktop
